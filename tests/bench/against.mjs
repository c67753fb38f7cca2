// This build against another one, in one run: node tests/bench/against.mjs <folder that has the other's dist>
// Different jobs, none repeated; the two take turns, so that a busy machine slows both. Least of all turns.
import { spawnSync } from "node:child_process";
import { mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { pathToFileURL } from "node:url";
import { root } from "../package/pack.mjs";

const [other] = process.argv.slice(2);
if (other === undefined) {
  // `npm run bench` calls every file here.
  console.log("needs the folder of another version: node tests/bench/against.mjs <folder>");
  process.exit();
}
const BUILDS = { here: root, other: resolve(other) };
const at = (build, file) => pathToFileURL(join(BUILDS[build], "dist", file)).href;
const q = (value, unit) => ({ value, unit });

const TOOLS = [
  { name: "tablespoon", capacity: q(1, "tbsp") },
  { name: "teaspoon", capacity: q(1, "tsp") },
  { name: "1/2 teaspoon", capacity: q(0.5, "tsp") },
  { name: "1/4 teaspoon", capacity: q(0.25, "tsp") },
  { name: "scale", capacity: q(500, "g"), graduation: q(0.1, "g") },
];

/** The nth job; quantities as `as` makes them. */
function job(n, as = q) {
  return {
    plot: {
      kind: "row-bands",
      rows: 14,
      rowLength: as(100 + (n % 997) / 10, "ft"),
      bandWidth: as(30, "in"),
      rowSpacing: as(5, "ft"),
    },
    calibration: {
      kind: "strip",
      used: as(34 + (n % 101) / 100, "fl_oz"),
      swath: as(30, "in"),
      distance: as(120, "ft"),
    },
    sprayer: { tank: as(4, "gal"), lineVolume: as(10, "fl_oz") },
    reserve: { percent: 5 },
    products: [
      { name: "Product A", form: "liquid", rate: as(1.5, "pt/ac"), label: { max: as(2, "pt/ac") } },
      { name: "Product B", form: "dry", rate: as(12, "oz/ac") },
    ],
    tools: TOOLS,
  };
}
const typed = (value, unit) => `${value} ${unit.replace("fl_oz", "fl oz").replace("oz/", "oz wt/")}`;

const WORK = {
  "planApplication, own tools":
    ({ plan }) =>
    (n) =>
      plan(job(n)),
  "planApplication, a set of tools":
    ({ plan }) =>
    (n) =>
      plan({ ...job(n), tools: "us-spoons" }),
  "parsePlanInput and planApplication, objects":
    ({ plan, parse }) =>
    (n) =>
      plan(parse(job(n))),
  "parsePlanInput and planApplication, text":
    ({ plan, parse }) =>
    (n) =>
      plan(parse({ ...job(n, typed), tools: "us-spoons" })),
  stripRate:
    ({ strip }) =>
    (n) =>
      strip({ used: q(34 + (n % 101), "fl_oz"), swath: q(30, "in"), distance: q(120, "ft") }),
  convert:
    ({ convert }) =>
    (n) =>
      convert(q(n, "ac"), "ha"),
};

async function partsOf(build) {
  const { planApplication: plan } = await import(at(build, "plan/index.js"));
  const { parsePlanInput: parse } = await import(at(build, "schema/index.js"));
  const { stripRate: strip } = await import(at(build, "output-rate/index.js"));
  const { convert } = await import(at(build, "units/index.js"));
  return { plan, parse, strip, convert };
}

const parts = { here: await partsOf("here"), other: await partsOf("other") };
const least = (build, name) => {
  const work = WORK[name](parts[build]);
  const calls = name === "convert" || name === "stripRate" ? 20_000 : 500;
  let n = 0;
  const turn = () => {
    const start = performance.now();
    for (let i = 0; i < calls; i++) work(n++);
    return ((performance.now() - start) * 1000) / calls;
  };
  return turn;
};
for (const name of Object.keys(WORK)) {
  const [here, there] = [least("here", name), least("other", name)];
  const times = { here: [], there: [] };
  for (let turn = 0; turn < 40; turn++) {
    times.here.push(here());
    times.there.push(there());
  }
  const [a, b] = [Math.min(...times.here), Math.min(...times.there)];
  console.log(
    `${name.padEnd(46)} ${a.toFixed(2).padStart(9)} µs, ${(a / b).toFixed(2).padStart(5)} of the other's ${b.toFixed(2)}`,
  );
}

const folder = mkdtempSync(join(tmpdir(), "against-"));
const program = (name, code) => {
  const file = join(folder, `${name}.mjs`);
  writeFileSync(file, code);
  return file;
};
const empty = program("empty", "");
const once = (file) => {
  const start = performance.now();
  spawnSync(process.execPath, [file]);
  return performance.now() - start;
};
for (const file of ["index.js", "units/index.js"]) {
  const programs = Object.keys(BUILDS).map((build) =>
    program(`${build}-${file.replace("/", "-")}`, `import ${JSON.stringify(at(build, file))};`),
  );
  const times = [[], [], []];
  for (let i = 0; i < 20; i++)
    for (const [k, one] of [empty, ...programs].entries()) times[k].push(once(one));
  const [base, here, there] = times.map((list) => Math.min(...list));
  const share = (time) => ((time - base) / base).toFixed(2);
  console.log(
    `importing ${file.padEnd(36)} ${share(here)} of an empty program's ${base.toFixed(0)} ms; the other ${share(there)}`,
  );
}
