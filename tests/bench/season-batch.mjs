// A file of 1,000,000 plots to a file of doses, as examples/season-batch does it: rows per second, processor time and peak
// memory, beside the same file only read and written, and one worker beside the pool.
// Writes docs/large-batches.md, unless a number of rows is given.
//   node tests/bench/season-batch.mjs [rows]
import { spawnSync } from "node:child_process";
import { mkdirSync, rmSync, statSync } from "node:fs";
import { availableParallelism, loadavg } from "node:os";
import { join } from "node:path";
import { table, write } from "../helpers/written.mjs";
import { installInto, root } from "../package/pack.mjs";
import { rounded } from "./speed.mjs";

const [rows = "1000000"] = process.argv.slice(2);
const few = String(Math.ceil(Number(rows) / 10));
const example = join(root, "examples/season-batch");
const folder = join(root, ".tmp/season-batch");
rmSync(folder, { recursive: true, force: true });
mkdirSync(folder, { recursive: true });
installInto(example);

function node(args) {
  const { status, stdout, stderr } = spawnSync(process.execPath, args, {
    cwd: example,
    encoding: "utf8",
    maxBuffer: 1e9,
  });
  if (status !== 0) throw new Error(stderr);
  return stdout;
}

// The baseline: through the same parser and the same writer, row by row, and nothing worked out.
const COPY = `
  import { createReadStream, createWriteStream } from "node:fs";
  import { pipeline } from "node:stream/promises";
  import { parse } from "csv-parse";
  import { stringify } from "csv-stringify";
  const [from, to] = process.argv.slice(1);
  await pipeline(createReadStream(from), parse(), stringify(), createWriteStream(to));`;

// Loaded into each run: what it took of processor and memory. All threads count, and only the main one tells.
const METER = `data:text/javascript,${encodeURIComponent(`
  import { isMainThread } from "node:worker_threads";
  const told = () => JSON.stringify({ ...process.cpuUsage(), ...process.resourceUsage() });
  if (isMainThread) process.on("exit", () => console.log("\\nMETER " + told()));`)}`;

const inputs = Object.fromEntries([rows, few].map((count) => [count, join(folder, `plots-${count}.csv`)]));
for (const [count, file] of Object.entries(inputs)) node(["generate.mjs", count, file]);

function timed(count, args) {
  const start = performance.now();
  const printed = node(["--import", METER, ...args]);
  const perSecond = Number(count) / ((performance.now() - start) / 1000);
  const { user, system, maxRSS } = JSON.parse(/^METER (.*)$/m.exec(printed)[1]);
  return { count, perSecond, processor: (user + system) / Number(count), memory: (maxRSS * 1024) / 1e6 };
}

const outputs = ["--doses", join(folder, "doses.csv"), "--refused", join(folder, "refused.csv")];
const season = (count, workers) =>
  timed(count, ["main.mjs", inputs[count], ...outputs, "--workers", workers]);
const all = String(availableParallelism());
const COPIED = "only read and written";
const runs = {
  [COPIED]: timed(rows, ["--input-type=module", "-e", COPY, inputs[rows], join(folder, "copy.csv")]),
  "doses, 1 worker": season(few, "1"),
  [`doses, ${all} workers, fewer rows`]: season(few, all),
  [`doses, ${all} workers`]: season(rows, all),
};

const size = statSync(inputs[rows]).size / 1e6;
console.log(
  `${size.toFixed(0)} MB of CSV; load of the machine ${loadavg()[0].toFixed(1)} on ${all} cores at the end`,
);
console.log(`(ratio of the processor time of a row to "${COPIED}")`);
for (const [name, { count, perSecond, processor, memory }] of Object.entries(runs)) {
  const columns = [
    name.padEnd(38),
    `${Number(count).toLocaleString("en").padStart(9)} rows`,
    `${Math.round(perSecond).toLocaleString("en").padStart(8)} rows/s`,
    `${processor.toFixed(0).padStart(5)} µs of processor a row`,
    `${(processor / runs[COPIED].processor).toFixed(1).padStart(6)}x`,
    `${memory.toFixed(0).padStart(5)} MB at most`,
  ];
  console.log(`  ${columns.join(" ")}`);
}
if (process.argv[2] === undefined)
  write(
    "docs/large-batches.md",
    "batches",
    [
      `A million rows are ${rounded(size)} MB. One run, on ${all} cores:`,
      table(
        ["", "Rows:", "Rows per second:", "Memory at most:"],
        Object.entries(runs).map(([name, { count, perSecond, memory }]) => [
          name,
          Number(count).toLocaleString("en"),
          rounded(perSecond),
          `${rounded(memory)} MB`,
        ]),
      ),
    ].join("\n\n"),
  );
rmSync(folder, { recursive: true });
