// Keeps the table of sizes in docs/performance.md, and the limit on what an area function may weigh.
//   node tests/size/run.mjs            measures dist, writes the table
//   node tests/size/run.mjs --check    fails where a size is past its limit, or not what the table says
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { bundleSize } from "../helpers/bundle.mjs";
import { table, write, writtenIn } from "../helpers/written.mjs";
import { build, root } from "../package/pack.mjs";

/** The ways in, with a usual use of each. */
const USES = {
  ".": ["planApplication"],
  "./units": ["convert", "qty"],
  "./area": ["rectangleArea"],
  "./swath": ["passesOver"],
  "./output-rate": ["stripRate"],
  "./tank-mix": ["carrierFor", "splitLoads"],
  "./household": ["measureOut"],
  "./plan": ["planApplication"],
  "./worksheet": ["worksheet", "renderText"],
  "./worksheet/latex": ["renderLatex"],
  "./working": ["stripRate"],
  "./practice": ["practiceProblem"],
  "./schema": ["parsePlanInput"],
  "./area/geodesic": ["geodesicArea"],
  "./words/es": ["SPANISH_WORDS"],
  "./words/es-practice": ["SPANISH_PRACTICE_WORDS"],
};

// Beyond what converting a unit takes: whoever wants one area should not pay for the rest.
const MOST_FOR_AN_AREA = 2;

// What weighs little alone, in kB: it shows where a bundler can no longer leave out the rest of a folder.
const LIGHT = {
  "./worksheet": ["renderText", 13.7],
  "./plan": ["THRESHOLDS", 1],
  "./schema": ["toJsonSchema", 15.8],
};

// The calculator of docs/getting-started.md, which says the limit.
const CALCULATOR = {
  limit: 50,
  imports: {
    ".": ["SprayMathError"],
    "./household": ["measureOut"],
    "./tank-mix": ["productAmount"],
    "./units": ["formatQuantity", "parseQuantity"],
    "./worksheet": ["doseText"],
  },
};

// Not every word that changes has to be told: the larger of these, as a part and in kB.
const TOLERANCE = { part: 0.05, size: 0.3 };

build();
const { exports } = JSON.parse(readFileSync(join(root, "package.json"), "utf8"));
const entries = Object.entries(exports).filter(([, target]) => target.import);
const fileOf = (path) => exports[path].import.default.replace("./dist/", "./");
const units = `export { convert, qty } from "${fileOf("./units")}";`;
const base = await bundleSize(units);

const rows = [];
for (const [path] of entries) {
  const names = USES[path];
  if (names === undefined) throw new Error(`${path} has no use in tests/size/run.mjs`);
  const use = `export { ${names.join(", ")} } from "${fileOf(path)}";`;
  rows.push({
    path,
    names,
    all: await bundleSize(`export * from "${fileOf(path)}";`),
    use: await bundleSize(use),
    beyond: path === "./units" ? 0 : (await bundleSize(use + units)) - base,
  });
}

const kB = (size) => size.toFixed(1);
const sizes = table(
  ["import from", "everything in it:", "a usual use", "of it alone:", "beyond `convert` and `qty`:"],
  rows.map(({ path, names, all, use, beyond }) => [
    `\`${path.replace(".", "swath-to-spoon")}\``,
    kB(all),
    names.map((name) => `\`${name}\``).join(", "),
    kB(use),
    kB(beyond),
  ]),
);

const PAGE = "docs/performance.md";
if (!process.argv.includes("--check")) {
  write(PAGE, "sizes", sizes);
} else if (!agree(cells(writtenIn(readFileSync(join(root, PAGE), "utf8"), "sizes")), cells(sizes))) {
  console.log(`${PAGE} has other sizes than these:\n\n${sizes}\n`);
  console.log("See what has grown (esbuild's --analyze tells), then run `npm run size`.");
  process.exitCode = 1;
}

const { beyond } = rows.find(({ path }) => path === "./area");
if (beyond >= MOST_FOR_AN_AREA) {
  console.log(`rectangleArea is ${kB(beyond)} kB beyond its units; the limit is ${MOST_FOR_AN_AREA} kB.`);
  process.exitCode = 1;
}

for (const [path, [name, limit]] of Object.entries(LIGHT)) {
  const size = await bundleSize(`export { ${name} } from "${fileOf(path)}";`);
  if (size < limit) continue;
  console.log(`${name} alone weighs ${kB(size)} kB; the limit is ${limit} kB.`);
  process.exitCode = 1;
}

const calculator = await bundleSize(
  Object.entries(CALCULATOR.imports)
    .map(([path, names]) => `export { ${names.join(", ")} } from "${fileOf(path)}";`)
    .join("\n"),
);
if (calculator >= CALCULATOR.limit) {
  console.log(
    `What the calculator imports weighs ${kB(calculator)} kB; the limit is ${CALCULATOR.limit} kB.`,
  );
  process.exitCode = 1;
}

function cells(markdown) {
  const lines = markdown.split("\n").filter((line) => line.startsWith("| `"));
  return lines.map((line) => line.split("|").map((cell) => cell.trim()));
}

function agree(a, b) {
  const same = (x, y) => x === y || Math.abs(x - y) <= Math.max(TOLERANCE.size, TOLERANCE.part * Number(y));
  return a.length === b.length && a.every((row, i) => row.every((cell, j) => same(cell, b[i][j])));
}
