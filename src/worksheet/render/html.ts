import { type Check, checked, Field } from "../../units/check.js";
import { list as listField, type ObjectField, object, optional, text } from "../../units/fields.js";
import { STYLE } from "./html-style.js";
import { type Page, partsInOrder, partsOf } from "./page.js";
import { plain } from "./plain.js";
import { SHEET } from "./sheet-fields.js";
import type { PrintableSheet, SheetBlock } from "./sheets.js";

/** How an HTML page is made. */
export interface HtmlOptions {
  /** The nonce that the page's Content-Security-Policy names for styles, in base64; none unless given. */
  readonly nonce?: string | undefined;
}

const HTML_OPTIONS: ObjectField<HtmlOptions> = object<HtmlOptions>(
  {
    nonce: optional(
      text(
        "The nonce that the page's Content-Security-Policy names for styles, in base64; none unless given.",
      ),
    ),
  },
  [isBase64],
);

// A class has no more students, nor a season more jobs.
const MOST_SHEETS = 1000;

/** A sheet, or a list of them. */
class SheetsField extends Field<readonly PrintableSheet[]> {
  read(input: unknown, check: Check): readonly PrintableSheet[] | undefined {
    // None is no sheet.
    if (Array.isArray(input) && input.length > 0)
      return listField("", SHEET, { most: MOST_SHEETS }).read(input, check);
    const sheet = SHEET.read(input, check);
    return sheet && [sheet];
  }

  missing(check: Check): undefined {
    return SHEET.missing(check);
  }
}

function isBase64({ nonce }: Partial<HtmlOptions>, check: Check): void {
  if (nonce !== undefined && !/^[A-Za-z0-9+/_-]+={0,2}$/.test(nonce))
    check.fault("unreadable", "nonce-unreadable", "nonce", "This isn't a nonce in base64, such as c3ByYXk=.");
}

/**
 * Writes a sheet, or several, as one HTML page that needs nothing else: no script, no image file, no address, its style in one `<style>`
 * element. Headings are in order, tables have captions and header cells, boxes can be ticked; printed, an ordinary job
 * takes one sheet of paper. Of several sheets each begins on a page of its own.
 *
 * A strict Content-Security-Policy lets it pass in either of two ways: by `SHEET_STYLE_HASH`, which is the same for every page
 * (`default-src 'none'; style-src 'sha256-…'`), or by a nonce (`default-src 'none'; style-src 'nonce-…'`).
 *
 * Everything in names that HTML would read as its own is escaped. Source: HTML Living Standard (WHATWG); Content Security
 * Policy Level 3 (W3C).
 *
 * @param sheet - a worksheet, a sheet of working, a field card or a practice sheet, or up to 1,000 of them
 * @param options - see {@link HtmlOptions}
 * @returns the page, from `<!doctype html>` on, with the title and the language of the first sheet
 * @throws SprayMathError `not-a-quantity` for what is no sheet, `out-of-range` for too many, `unreadable` for a nonce that is not base64, `unknown-field` for an option that there is not
 *
 * @example
 * ```ts
 * import { qty } from "swath-to-spoon/units";
 * import { stripRate } from "swath-to-spoon/working";
 * import { renderHtml, workingSheet } from "swath-to-spoon/worksheet";
 *
 * const lines = stripRate({ used: qty(3, "L"), swath: qty(1, "m"), distance: qty(100, "m") });
 * const html = renderHtml(workingSheet({ title: "Test strip <1>", lines }), { nonce: "c3ByYXk=" });
 * console.log(html.includes("<h1>Test strip &lt;1&gt;</h1>")); // true
 * console.log(html.includes('<style nonce="c3ByYXk=">')); // true
 * ```
 */
export function renderHtml(
  sheet: PrintableSheet | readonly PrintableSheet[],
  options: HtmlOptions = {},
): string {
  const sheets = checked(sheet, new SheetsField(""), "sheet");
  const { nonce } = checked(options, HTML_OPTIONS, "options");
  const [{ language, title }] = sheets as readonly [PrintableSheet];
  return [
    "<!doctype html>",
    `<html lang="${escaped(language)}">`,
    "<head>",
    '<meta charset="utf-8">',
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    `<title>${escaped(title)}</title>`,
    `<style${nonce === undefined ? "" : ` nonce="${nonce}"`}>${STYLE}</style>`,
    "</head>",
    "<body>",
    "<main>",
    ...sheets.flatMap(article),
    "</main>",
    "</body>",
    "</html>",
    "",
  ].join("\n");
}

function article(sheet: PrintableSheet): string[] {
  const page = partsInOrder(sheet);
  return [
    `<article class="${sheet.kind}" lang="${escaped(page.language)}">`,
    `<h1>${escaped(page.title)}</h1>`,
    ...page.blocks.map((block) => laidOut(block, page)),
    "</article>",
  ];
}

function laidOut(block: SheetBlock, page: Page): string {
  const { sources } = page;
  switch (block.kind) {
    case "heading":
      return `<h${block.level}>${escaped(block.text)}</h${block.level}>`;
    case "text":
      return `<p>${escaped(block.text)}</p>`;
    case "alerts":
      return list(
        block.items.map(
          ({ severity, name, value }) =>
            `<li class="${severity}"><strong>${escaped(name)}:</strong> ${escaped(value)}</li>`,
        ),
        "alerts",
      );
    case "list":
      return list(block.items.map(item), "notes");
    case "boxes":
      return list(
        block.items.map(
          (one) => `<li><label><input type="checkbox"> <span>${escaped(one)}</span></label></li>`,
        ),
        "boxes",
      );
    case "table":
    case "facts":
      return table(block);
    case "lines":
      return list(
        block.lines.map((line) => {
          const [found, ...parts] = partsOf(line).map(escaped);
          const spans = parts.map((part, i) =>
            i === parts.length - 1
              ? `<span>= <strong>${part}</strong> [${sources.indexOf(line.source) + 1}]</span>`
              : `<span>= ${part}</span>`,
          );
          return `<li><span>${found}</span> ${spans.join(" ")}</li>`;
        }),
        "working",
      );
    case "sources":
      return list(sources.map(item), "sources", true);
    case "blanks":
      return `<p class="blanks">${block.items.map((one) => `<span>${escaped(one)}:</span>`).join(" ")}</p>`;
    case "room":
      return `<div class="room" aria-hidden="true">${"<p></p>".repeat(block.lines)}</div>`;
    case "drawing":
      return drawing(block);
    case "group":
      return `<section class="${block.as}">\n${block.blocks.map((one) => laidOut(one, page)).join("\n")}\n</section>`;
  }
}

function item(text: string): string {
  return `<li>${escaped(text)}</li>`;
}

function list(items: readonly string[], name: string, ordered = false): string {
  const tag = ordered ? "ol" : "ul";
  return `<${tag} class="${name}">\n${items.join("\n")}\n</${tag}>`;
}

function table({ kind, caption, columns, rows }: Extract<SheetBlock, { kind: "table" | "facts" }>): string {
  const head = columns.map((column) => `<th scope="col">${escaped(column)}</th>`).join("");
  const body = rows.map(([name = "", ...cells]) => {
    const others = cells.map((cell) => `<td>${escaped(cell)}</td>`).join("");
    return `<tr><th scope="row">${escaped(name)}</th>${others}</tr>`;
  });
  return [
    `<table class="${kind}">`,
    `<caption>${escaped(caption)}</caption>`,
    `<thead><tr>${head}</tr></thead>`,
    "<tbody>",
    ...body,
    "</tbody>",
    "</table>",
  ].join("\n");
}

// Across and down, of 100: room for the labels around what is drawn.
const DRAWN = 44;
const EDGE = { across: 28, down: 15 };
const DECIMALS = 2;

/** A drawing as an image with a name: the larger side takes the same room whatever is drawn. */
function drawing({
  caption,
  width,
  height,
  areas,
  labels,
}: Extract<SheetBlock, { kind: "drawing" }>): string {
  const scale = DRAWN / Math.max(width, height);
  const placed = (value: number, edge: number): number => Number((edge + value * scale).toFixed(DECIMALS));
  const [right, bottom] = [placed(width, 2 * EDGE.across), placed(height, 2 * EDGE.down)];
  const across = (value: number): number => placed(value, EDGE.across);
  const down = (value: number): number => placed(value, EDGE.down);
  const shapes = areas.map(
    ({ of, corners }) =>
      `<polygon class="${of}" points="${corners.map(({ x, y }) => `${across(x)},${down(y)}`).join(" ")}"></polygon>`,
  );
  const texts = labels.map(
    ({ at: { x, y }, text }) => `<text x="${across(x)}" y="${down(y)}">${escaped(text)}</text>`,
  );
  return [
    `<svg class="drawing" role="img" aria-label="${escaped(caption)}" viewBox="0 0 ${right} ${bottom}">`,
    ...shapes,
    ...texts,
    "</svg>",
  ].join("\n");
}

const ENTITIES: Readonly<Record<string, string>> = {
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  '"': "&quot;",
  "'": "&#39;",
};

function escaped(text: string): string {
  return plain(text).replace(/[&<>"']/g, (sign) => ENTITIES[sign] ?? sign);
}
