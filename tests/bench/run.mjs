// Prints every benchmark's ratios, and writes the table of speeds in docs/performance.md from them.
//   node tests/bench/run.mjs           all; those with a row in the table run in three fresh processes
//   node tests/bench/run.mjs <name>    one, once; the table stays as it is
// A bench that has a table of its own in another page writes it each time. Builds first where src has changed.
import { fork } from "node:child_process";
import { once } from "node:events";
import { readdirSync } from "node:fs";
import { availableParallelism } from "node:os";
import { join } from "node:path";
import { write } from "../helpers/written.mjs";
import { build, root } from "../package/pack.mjs";
import { rowsOf, speedTable } from "./speed.mjs";

const RUNS = 3;
const HELPERS = ["run.mjs", "measure.mjs", "speed.mjs"];

build();
const [only] = process.argv.slice(2);
const names = readdirSync(join(root, "tests/bench")).filter(
  (name) => name.endsWith(".mjs") && !HELPERS.includes(name),
);

/** Runs a bench in a process of its own: the rows that it reports, or none. */
async function run(name) {
  console.log(`\n== ${name}`);
  const child = fork(join(root, "tests/bench", name), { cwd: root });
  let rows = [];
  child.on("message", (message) => {
    rows = message;
  });
  const [status] = await once(child, "close");
  if (status !== 0) throw new Error(`${name} failed`);
  return rows;
}

if (only !== undefined) await run(`${only}.mjs`);
else {
  const rows = [];
  for (const name of names) {
    const runs = [await run(name)];
    if (runs[0].length === 0) continue;
    while (runs.length < RUNS) runs.push(await run(name));
    rows.push(...rowsOf(runs));
  }
  const machine = `Node ${process.versions.node.split(".")[0]} on ${availableParallelism()} cores`;
  write(
    "docs/performance.md",
    "speed",
    `The least and the most of ${RUNS} fresh processes, to two digits. ${machine}; ratios hold better elsewhere than times do.\n\n${speedTable(rows)}`,
  );
}
