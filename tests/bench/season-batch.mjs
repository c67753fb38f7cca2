// A file of 1,000,000 plots to a file of doses, as examples/season-batch does it: rows per second and peak memory, beside
// the same file only read and written, and one worker beside the pool.
//   node tests/bench/season-batch.mjs [rows]
import { spawnSync } from "node:child_process";
import { mkdirSync, rmSync, statSync } from "node:fs";
import { availableParallelism, loadavg } from "node:os";
import { join } from "node:path";
import { installInto, root } from "../package/pack.mjs";

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
  return stdout + stderr;
}

// The baseline: through the same parser and the same writer, row by row, and nothing worked out.
const COPY = `
  import { createReadStream, createWriteStream } from "node:fs";
  import { pipeline } from "node:stream/promises";
  import { parse } from "csv-parse";
  import { stringify } from "csv-stringify";
  const [from, to] = process.argv.slice(1);
  await pipeline(createReadStream(from), parse(), stringify(), createWriteStream(to));
  console.log(Math.round(process.resourceUsage().maxRSS / 1024) + " MB of memory");`;

const inputs = Object.fromEntries([rows, few].map((count) => [count, join(folder, `plots-${count}.csv`)]));
for (const [count, file] of Object.entries(inputs)) node(["generate.mjs", count, file]);

function timed(count, args) {
  const start = performance.now();
  const printed = node(args);
  const perSecond = Number(count) / ((performance.now() - start) / 1000);
  const [, memory] = /([\d,]+) MB of memory/.exec(printed) ?? [];
  return { count, perSecond, memory: Number(memory.replaceAll(",", "")) };
}

const outputs = ["--doses", join(folder, "doses.csv"), "--refused", join(folder, "refused.csv")];
const season = (count, workers) =>
  timed(count, ["main.mjs", inputs[count], ...outputs, "--workers", workers]);
const all = String(availableParallelism());
const COPIED = "only read and written";
const runs = {
  [COPIED]: timed(rows, ["--input-type=module", "-e", COPY, inputs[rows], join(folder, "copy.csv")]),
  "doses, 1 worker": season(few, "1"),
  [`doses, ${all} workers, a tenth of the rows`]: season(few, all),
  [`doses, ${all} workers`]: season(rows, all),
};

const size = (statSync(inputs[rows]).size / 2 ** 20).toFixed(0);
console.log(`${size} MB of CSV; load of the machine ${loadavg()[0].toFixed(1)} on ${all} cores at the end`);
console.log(`(ratio of the time a row takes to "${COPIED}")`);
for (const [name, { count, perSecond, memory }] of Object.entries(runs)) {
  const ratio = (runs[COPIED].perSecond / perSecond).toFixed(1);
  console.log(
    `  ${name.padEnd(38)} ${Number(count).toLocaleString("en").padStart(9)} rows ` +
      `${Math.round(perSecond).toLocaleString("en").padStart(9)} rows/s ${String(memory).padStart(5)} MB at most ${ratio.padStart(7)}x`,
  );
}
rmSync(folder, { recursive: true });
