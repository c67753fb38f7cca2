// Works out the doses of a season's plots: node main.mjs [plots.csv] [--doses doses.csv] [--refused refused.csv] [--workers 2]
//   [--batch 500] [--restart]
// After a stop, the same command continues where it left off. Progress and errors go to stderr.
import { availableParallelism } from "node:os";
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";
import { BatchError } from "./src/header.mjs";
import { runSeason } from "./src/season.mjs";

const MOST_FAULTS_SHOWN = 20;

const count = (text, name) => {
  if (/^[1-9]\d{0,5}$/.test(text)) return Number(text);
  throw new BatchError(`--${name}: Enter a whole number from 1 to 999999, not ${text}.`);
};
const grouped = (value) => Math.round(value).toLocaleString("en");

const startedAt = performance.now();
let seen;
let shownAt = Number.NEGATIVE_INFINITY;
let faultsFound = 0;

function report({ counts, faults, part }) {
  for (const { line, column, message } of faults) {
    faultsFound++;
    if (faultsFound > MOST_FAULTS_SHOWN) continue;
    console.error(`line ${line}${column ? `, ${column}` : ""}: ${message}`);
    if (faultsFound === MOST_FAULTS_SHOWN) console.error("more errors: see the file of refused rows");
  }
  const now = performance.now();
  // Rows of an earlier run don't count for this run's speed.
  seen ??= { ...counts, part, now };
  if (now - shownAt < 1000) return;
  shownAt = now;
  const pace = (counts.rows - seen.rows) / ((now - seen.now) / 1000);
  const left = ((1 - part) / (part - seen.part)) * ((now - seen.now) / 1000);
  const more = pace > 0 ? `, ${grouped(pace)} rows/s, ${grouped(left)} s to go` : "";
  console.error(
    `${(100 * part).toFixed(1)}%: ${grouped(counts.rows)} rows, ${grouped(counts.refused)} refused${more}`,
  );
}

try {
  const { values, positionals } = parseArgs({
    allowPositionals: true,
    options: {
      doses: { type: "string", default: "doses.csv" },
      refused: { type: "string", default: "refused.csv" },
      workers: { type: "string", default: String(availableParallelism()) },
      batch: { type: "string", default: "500" },
      restart: { type: "boolean", default: false },
    },
  });
  const { doses, refused, restart } = values;
  const [input = fileURLToPath(new URL("plots.csv", import.meta.url))] = positionals;
  const workers = count(values.workers, "workers");
  const batch = count(values.batch, "batch");
  const counts = await runSeason({ input, doses, refused, workers, batch, restart, report });
  const seconds = (performance.now() - startedAt) / 1000;
  console.error(
    `${doses}: ${grouped(counts.rows - counts.refused)} doses. ${refused}: ${grouped(counts.refused)} rows to fix. ` +
      `${seconds.toFixed(1)} s, ${grouped(process.resourceUsage().maxRSS / 1024)} MB of memory at peak.`,
  );
} catch (error) {
  const expected =
    error instanceof BatchError || ["ENOENT", "EACCES", "EISDIR", "ENOSPC"].includes(error.code);
  console.error(expected ? error.message : error);
  process.exitCode = 1;
}
