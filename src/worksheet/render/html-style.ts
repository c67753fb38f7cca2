/**
 * The style of every page. Fonts are the reader's own; colours have a contrast of at least 7 to 1 on white (WCAG 2.2, 1.4.6).
 * On paper the working runs in two columns of small type.
 */
export const STYLE: string = `
:root { color-scheme: light; }
* { box-sizing: border-box; }
body { margin: 0; background: #fff; color: #1a1a1a; font: 1rem/1.45 system-ui, sans-serif; }
article { max-width: 46rem; margin: 0 auto; padding: 1rem; overflow-wrap: anywhere; }
h1 { font-size: 1.5rem; line-height: 1.2; margin: 0 0 1rem; }
h2 { font-size: 1.2rem; margin: 1.75rem 0 0.5rem; border-bottom: 2px solid #2f4f2f; padding-bottom: 0.15rem; }
h3 { font-size: 1rem; margin: 1.25rem 0 0.35rem; }
p { margin: 0.35rem 0; }
table { width: 100%; border-collapse: collapse; margin: 0.5rem 0; }
caption, .facts thead { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); white-space: nowrap; }
th, td { text-align: start; vertical-align: top; padding: 0.3rem 0.5rem 0.3rem 0; border-bottom: 1px solid #c9c9c9; }
thead th { font-size: 0.8rem; color: #4a4a4a; }
tbody th { font-weight: 600; width: 32%; }
.table td:nth-child(2):nth-last-child(2) { white-space: nowrap; }
thead th { overflow-wrap: normal; }
ul, ol { margin: 0.35rem 0; padding-inline-start: 1.25rem; }
.alerts { list-style: none; padding: 0; }
.alerts li { border-inline-start: 0.35rem solid #595959; padding: 0.35rem 0.6rem; margin: 0.35rem 0; background: #f4f4f4; }
.alerts .warning { border-color: #8a5300; background: #fff6e5; }
.alerts .refusal { border-color: #a00000; background: #fdecec; }
.boxes, .working { list-style: none; padding: 0; }
.boxes label { display: flex; gap: 0.6rem; padding: 0.35rem 0; align-items: flex-start; }
.boxes input { flex: none; width: 1.25rem; height: 1.25rem; margin: 0.1rem 0 0; }
.working li { margin: 0.5rem 0; font-size: 0.95rem; font-variant-numeric: tabular-nums; }
.working span { display: block; padding-inline-start: 1.5rem; }
.working span:first-child { padding: 0; font-weight: 600; }
.blanks { display: flex; gap: 1.5rem; margin: 0.75rem 0 1.25rem; }
.blanks span { flex: 1; border-bottom: 1px solid #1a1a1a; }
.room p { height: 2rem; margin: 0; border-bottom: 1px dotted #8a8a8a; }
.card { border: 1px dashed #595959; padding: 0.5rem 1rem 1rem; margin: 1rem 0; }
.card h2 { margin-top: 0.25rem; }
.drawing { display: block; width: 100%; max-width: 22rem; max-height: 22rem; margin: 0.5rem 0; }
.drawing .ground { fill: #f4f4f4; stroke: #1a1a1a; stroke-width: 0.5; }
.drawing .treated { fill: #c8dcc8; stroke: #2f4f2f; stroke-width: 0.3; }
.drawing text { font: 3.7px system-ui, sans-serif; text-anchor: middle; dominant-baseline: middle; }
.board { max-width: 60rem; font-size: 1.75rem; line-height: 1.35; }
.board h1 { font-size: 2.25rem; }
.board h2 { font-size: 2rem; margin-top: 0; }
.board p { margin: 0.75rem 0; }
.slide { min-height: 92vh; padding: 2rem 0; scroll-snap-align: start; }
.board .drawing { max-width: 34rem; max-height: 55vh; }
@media print {
  @page { margin: 8mm; }
  body { font-size: 7.25pt; line-height: 1.15; }
  article { max-width: none; padding: 0; }
  article + article { break-before: page; }
  h1 { font-size: 13pt; margin: 0 0 1.5mm; }
  h2 { font-size: 9pt; margin: 1.5mm 0 0.6mm; padding: 0; border-width: 1px; }
  h3 { font-size: 7.75pt; margin: 0.9mm 0 0.2mm; }
  h2, h3 { break-after: avoid; }
  p, ul, ol, table { margin: 0.4mm 0; }
  th, td { padding: 0.2mm 1.5mm 0.2mm 0; }
  thead th { font-size: 6.5pt; }
  tr, li { break-inside: avoid; }
  .alerts li { padding: 0.4mm 1.5mm; margin: 0.5mm 0; background: none; border-inline-start-width: 1mm; }
  .working li { font-size: 6.8pt; margin: 0.2mm 0; }
  .working span, .working span:first-child { display: inline; padding: 0; }
  .notes li, .sources li { font-size: 6.8pt; }
  .worksheet { columns: 2; column-gap: 6mm; }
  .worksheet h1 { column-span: all; }
  .worksheet .notes { padding-inline-start: 3mm; }
  .worksheet .sources { padding: 0; counter-reset: source; }
  .worksheet .sources li { display: inline; counter-increment: source; }
  .worksheet .sources li::before { content: "[" counter(source) "] "; }
  .field-card, .practice { font-size: 11pt; line-height: 1.3; }
  .field-card { font-size: 10.5pt; line-height: 1.22; }
  .field-card h1, .practice h1 { font-size: 18pt; }
  .field-card h2, .practice h2 { font-size: 13pt; margin: 4mm 0 1mm; }
  .field-card h3, .practice h3 { font-size: 11.5pt; margin: 2.5mm 0 0.5mm; }
  .field-card .boxes label { padding: 0.6mm 0; }
  .field-card .boxes input { width: 4mm; height: 4mm; }
  .field-card .notes li { font-size: 9pt; }
  .part, .card { break-inside: avoid; }
  .room p { height: 8mm; }
  .card { padding: 2mm 4mm 4mm; margin: 0 0 6mm; }
  .drawing { max-width: 80mm; max-height: 70mm; }
  .board { font-size: 22pt; line-height: 1.3; }
  .board h1 { font-size: 26pt; }
  .board h2 { font-size: 24pt; margin: 0 0 4mm; }
  .board p { margin: 3mm 0; }
  .board th, .board td { font-size: 16pt; }
  .slide { min-height: 0; padding: 0; break-after: page; break-inside: avoid; }
  .slide:last-child { break-after: auto; }
  .practice .working li, .practice thead th { font-size: 9pt; }
}
`;

/** What a Content-Security-Policy names to let the style of every page pass: `style-src 'sha256-ak7Ply9VdXFcn469dt09rEfuG/gbX1uZWME2rAIrdEg='`. */
export const SHEET_STYLE_HASH: string = "'sha256-ak7Ply9VdXFcn469dt09rEfuG/gbX1uZWME2rAIrdEg='";
