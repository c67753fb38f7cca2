// The page as one HTML file, for a web master to drop into any site or frame: nothing is loaded, not even Spanish.
import { createHash } from "node:crypto";
import { readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import { FORM_LABELS, formFields } from "swath-to-spoon/schema";
import { SPANISH_WORDS } from "swath-to-spoon/words/es";
import { minify } from "terser";
import { build } from "vite";

/** Has Spanish within instead of loading it, which would keep apart all that it shares; and no indents, which templates have too. */
const ONE_SCRIPT = {
  name: "one-script",
  enforce: "pre",
  transform(code, id) {
    if (!id.endsWith(".ts")) return undefined;
    const within = code.replace('await import("swath-to-spoon/words/es")', "loaded");
    const load = within === code ? "" : 'import * as loaded from "swath-to-spoon/words/es";';
    return load + within.replace(/\n\s+/g, "\n");
  },
};

/** Builds the one file into a folder, and returns its size in bytes, zipped as a server sends it. */
export async function buildSingleFile(root, folder, name) {
  const { output } = await build({
    root,
    mode: "single",
    logLevel: "warn",
    plugins: [ONE_SCRIPT],
    build: { write: false },
  });
  const text = (ending) => {
    const file = output.find(({ fileName }) => fileName.endsWith(ending));
    return String(file.code ?? file.source);
  };
  // Inside a script element only its end has to be written otherwise.
  const compress = { passes: 4, unsafe_arrows: true, unsafe_methods: true, pure_getters: true };
  const { code } = await minify(lean(text(".js")), { module: true, ecma: 2022, compress });
  const script = code.replaceAll("</script", "<\\/script");
  const style = text(".css");
  const icon = await readFile(join(root, "public/icon.svg"), "utf8");
  const hash = (content) => `'sha256-${createHash("sha256").update(content).digest("base64")}'`;
  const policy =
    `default-src 'none'; script-src ${hash(script)}; style-src ${hash(style)}; ` +
    "img-src data:; base-uri 'none'; form-action 'none'";
  const html = text(".html")
    .replace(/ {4}<(?:script|link|meta name="description")[^>]*>(?:<\/script>)?\n/g, "")
    .replace(/content="default-src[^"]*"/, () => `content="${policy}"`)
    .replace(
      "</head>",
      () =>
        `<link rel="icon" href="data:image/svg+xml,${encodeURIComponent(icon)}">` +
        `<style>${style}</style></head>`,
    )
    .replace("</body>", () => `<script type="module">${script}</script></body>`);
  await writeFile(join(folder, name), html);
  return gzipSync(html).length;
}

// Working and errors of what the page has no questions for, and errors of programs. Whoever adds a question takes its own out of here.
const NEVER_SHOWN = new RegExp(
  [
    "^area\\.(triangle|trapezoid|circle|ellipse|ring|sector|composite|offsets|unequalOffsets|beds)",
    "^output-rate\\.(plant|direct|hand|solve|tree-row-(volume|plant)|spreader-(area|row|catch(?!-strip)))",
    "^tank-mix\\.(nutrient|productRate|granules-(rowLength|plants))|^household\\.volumeOfWeight",
    "^(simpson|offsets|station|sides-apart|hole|lengths|price|nutrient|step-twice|bulk-density|density|content)",
    "^(range-upside|chosen|choose-rate|zone|tool|set-in|json|object|field|fields|plan|result-for|schema|words|figure)-",
    "^(applications|interval|calibration-|nozzle-(low|high)|boom|water-without|least-over|load-too|part-load|fill-(under|off|over-most))",
    "^(fills-too|whole-bags|formulation|used-without|limits-|carrier-(limits|over)|rate-under-min)",
    "^(rate-for-(count|row)-spreading|test-(for|along|over)|plants-not|(rows|plots)-of-one|piece|left-(and|or)|used-of)",
    "^(date-not|wait-before|text-blank|limit-needs|rate-needs-ground|rate-per-ground|volume-and-weight|record-after)",
    "^(ratio-upside|parts-un|number-of-degrees|latitude|spots-over|treated-over|plant-spacing|marks-(missing|not)|tool-)",
    "^(price-|density-|unit-dimension|quantity-not-text|list-(missing|of|expected)|choice-|choose$|no-mark(-from-least)?$|mark-twice)",
    "^(nozzles-over|nozzle-width|swath-is|all-ground|carrier-(under|near)-least-batch|overlap-too-wide|no-ground-left|no-stock|too-many-marks|reserve-(kind|range))",
    "^(yes-or-no|resolution-and|areas-of|bases-|divided-|locale-|version-|formula-|input-unreadable|spreader-set-for|area-(un|is))",
    "^(text-(expected|such)|choose-(unit|fields)|quantity-expected|number-not-text|finite-number|rows-incomplete)",
    "^(enter-time|time-unreadable|start-after-end|day-too-early|choose-rate$|marks-needed|active-not-by-weight|ratio-for-dry|rate-needs-plot|row-spacing$|list-(short|long))",
    "^(Simpson|Heron|mid-ordinate|trapezoidal)",
  ].join("|"),
);

// Lines of cards for several plots, for beds, bags that dissolve, nutrients and rates as ratios or of active ingredient: the page has one
// plot and asks for none of them.
const NEVER_WRITTEN =
  /(?<=[{,])(?:plotOrder|plotNumber|lastPasses|placeInPlot|partOf|fillsAndPlots|spreadRow|spreadRun|pourBags|wholeBags|beds|bedNumber|rowOrder|nutrient|rateOfMix|rateOfWater|rateOfActive|rateOnGround):(?:`[^`]*`|"[^"]*"),/g;

// The names under which the library has the labels of the page's fields: a table that says its own names shows which one a field
// takes. A place alone, such as `.rate` or `label.max`, is a product's.
const ASKS = await readFile(join(import.meta.dirname, "src/asks.ts"), "utf8");
const PLACES = [...ASKS.matchAll(/["`.]([A-Za-z][\w.[\]]*)["`]/g)].flatMap(([, place]) => {
  const path = place.replace(/\[\d+\]/g, "[]");
  return [path, `product.${path}`, `products[].${path}`];
});
const labels = Object.fromEntries(Object.keys(FORM_LABELS).map((name) => [name, name]));
const ASKED = new Set(
  ["plan", "batch", "spreading"]
    .flatMap((form) => formFields(form, { labels }))
    .flatMap(({ path, label }) => (PLACES.includes(path) ? [label] : [])),
);

/** The script without words that this page never shows. */
function lean(script) {
  // What the library says of each field and object: the page shows the label alone, and hints of its own. A call takes it first,
  // after a list or after the name of a type, which it never does with a message.
  let text = script.replace(
    /((?<![\w$.])[\w$]+\(|\],|\("[a-z-]+","[A-Z][A-Za-z]+",)(?:`[A-Z][^`$]*\.`|"[A-Z][^"]*\.")(?=[,)])/g,
    "$1``",
  );
  text = text.replace(NEVER_WRITTEN, "");
  // Methods of the engine of units that nothing calls: the best unit, and the lists of units.
  text = text
    .replace(/(?<=\})toBest\(.*?\}(?=getUnit\()/s, "")
    .replace(/(?<=\})describe\(\w+\)\{let \w+=this\.getUnit.*?\}(?=throwUnsupportedUnitError\()/s, "")
    .replace(/(?<=\})possibilities\(.*?measures\(\)\{.*?\}/s, "");
  // Names of what can be chosen: the page asks for a product's form, and for all else it has something chosen.
  text = text.replace(/(?<=choice:\{liquid:[^,]*,dry:[^,]*),[^{}]*/, "");
  // Names of fields for messages on lists, and on one field or another: the page makes its lists itself, and asks for one of them.
  // The table must have those that English has.
  text = text.replace(/(?<=field:\{)add:[^{}]*/, (names) =>
    [...names.matchAll(/\b(?:used|swath|caught):[^,]*/g)].join(","),
  );
  // Labels of fields that the page doesn't ask for, in both languages' tables.
  const [first] = Object.keys(FORM_LABELS);
  text = text.replace(new RegExp(`\\{"${first}":[^{}]*\\}`, "g"), (table) =>
    table.replace(/"?([\w.[\]]+)"?:(?:"[^"]*"|`[^`]*`),?/g, (entry, end) => (ASKED.has(end) ? entry : "")),
  );
  // Words for errors that nothing in the script raises, and for lines of working that nothing in it works out: beside the keys of
  // the tables it has neither the name nor, where names are put together, the beginning of one. So for the sources of lines.
  const { issues, lines, sources } = SPANISH_WORDS;
  const names = [...Object.keys(issues), ...Object.keys(lines), ...Object.keys(sources)];
  const rest = names.reduce((left, name) => left.replaceAll(`"${name}":`, ""), text);
  const isUsed = (name) =>
    rest.includes(/^[a-z-]+\.[A-Za-z]+/.exec(name)?.[0] ?? name) ||
    rest.includes(`${name.split("-")[0]}-\${`);
  for (const name of names.filter((one) => NEVER_SHOWN.test(one) || !isUsed(one)))
    text = text.replace(new RegExp(`(?<=[{,])"?${name.replace(/[*+]/g, "\\$&")}"?:(?:${ENTRY}),?`, "g"), "");
  // And the English of those errors: after their name come a place and, of a warning, how grave it is. A short sentence stays,
  // should one be shown after all.
  for (const name of Object.keys(issues).filter((one) => NEVER_SHOWN.test(one)))
    text = text.replace(
      new RegExp(`(["\`]${name}["\`],(?:template:|(?:[\\w$]+,|(?:${TEXT}),){1,2}))${SENTENCE}`, "g"),
      '$1"Check this entry."',
    );
  // The name of an error only has to be the same where it is raised and in the Spanish table: a number is shorter. Not of a name
  // that others are put together from.
  for (const [i, name] of Object.keys(issues).entries()) {
    const parts = text.split(new RegExp(`["\`]${name}["\`]`));
    const isApart = name.includes("-") && !names.some((other) => other !== name && other.includes(name));
    if (isApart && parts.length === 3) text = parts.join(`"${i}"`);
  }
  return text;
}

const TEXT = '`[^`]*`|"[^"]*"';
const SENTENCE = "`[A-Z{][^`]* [^`]*`";
const TERMS = `\\{(?:${TEXT}|[^{}\`"])*\\}`;
// A text, a call that makes an entry, or what a line finds and its terms.
const ENTRY = `${TEXT}|[\\w$]+\\((?:${TEXT}|[^()\`"])*\\)|\\{(?:${TEXT}|${TERMS}|[^{}\`"])*\\}`;
