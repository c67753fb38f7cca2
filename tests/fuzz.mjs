// Runs the properties with their full number of fresh random inputs, again and again, for as long as asked.
//   npm run fuzz -- --minutes 20                 fails at the end where a seed has failed, and lists the seeds
//   npm run fuzz -- --seed 123456 [name of a file]   one seed once more
import { spawnSync } from "node:child_process";
import { randomInt } from "node:crypto";
import { parseArgs } from "node:util";

const { values, positionals } = parseArgs({
  options: { minutes: { type: "string" }, seed: { type: "string" } },
  allowPositionals: true,
});
const minutes = Number(values.minutes ?? 0);
if (values.seed === undefined && !(minutes > 0)) throw new Error("say how long: --minutes 20");

const end = Date.now() + minutes * 60_000;
const failed = [];
let rounds = 0;
do {
  const seed = values.seed ?? String(randomInt(2 ** 31));
  rounds++;
  const vitest = ["node_modules/vitest/vitest.mjs", "run", "--config", "tests/vitest.config.ts"];
  const options = ["--project", "property", "--testTimeout", "1200000", "--reporter", "dot", ...positionals];
  const { status, stdout } = spawnSync(process.execPath, [...vitest, ...options], {
    encoding: "utf8",
    maxBuffer: 1e9,
    stdio: ["ignore", "pipe", "inherit"],
    env: {
      ...process.env,
      NO_COLOR: "1",
      PROPERTY_SEED: seed,
      PROPERTY_RUNS: process.env.PROPERTY_RUNS ?? "1",
    },
  });
  console.log(`seed ${seed}: ${status === 0 ? "passed" : "FAILED"}`);
  if (status === 0) continue;
  failed.push(seed);
  console.log(stdout);
} while (Date.now() < end);

const told =
  failed.length === 0 ? "no seed failed" : `failed: ${failed.map((seed) => `--seed ${seed}`).join(", ")}`;
console.log(`${rounds} rounds; ${told}`);
process.exitCode = failed.length === 0 ? 0 : 1;
