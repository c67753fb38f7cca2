// Mutation tests of folders or single files of src:  npm run mutation -- [--workers 1] [folder | folder/file.ts ...]
// Without a name, of the six folders that compute. The tool is installed beside this file at the first run, by a lock file of
// its own: nothing else here needs it. The score of each whole folder goes into score.json, which docs/conformance.md shows.
import { spawnSync } from "node:child_process";
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { parseArgs } from "node:util";
import { changed, npm } from "../package/pack.mjs";

const FOLDERS = ["area", "swath", "output-rate", "tank-mix", "household", "plan"];
const HERE = "tests/mutation";
const SCORES = `${HERE}/score.json`;
const { values: options, positionals: asked } = parseArgs({
  options: { workers: { type: "string" } },
  allowPositionals: true,
});
const unknown = asked.filter((name) => !existsSync(`tests/unit/${name.split("/")[0]}`));
if (unknown.length > 0) throw new Error(`no folder with unit tests: ${unknown.join(", ")}`);

const installed = `${HERE}/node_modules/.package-lock.json`;
if (!existsSync(installed) || changed(installed) < changed(`${HERE}/package-lock.json`)) {
  console.log(`Installing what mutation testing needs into ${HERE} …`);
  npm(["ci"], HERE);
}

mkdirSync(".tmp", { recursive: true });
let below = false;
for (const name of asked.length > 0 ? asked : FOLDERS) {
  const [folder, ...rest] = name.split("/");
  const file = rest.join("/") || "**/*.ts";
  const report = `.tmp/mutation-${folder}.json`;
  const config = JSON.parse(readFileSync(`${HERE}/stryker.config.json`, "utf8"));
  const own = `.tmp/stryker-${folder}.config.json`;
  const settings = {
    ...config,
    ...(options.workers && { concurrency: Number(options.workers) }),
    mutate: [`src/${folder}/${file}`],
    tempDirName: `.tmp/stryker-${folder}`,
    // A second run tries what changed since the first.
    incrementalFile: `.tmp/stryker-${folder}.incremental.json`,
    jsonReporter: { fileName: report },
    inProcess: { files: testsOf(folder) },
  };
  rmSync(report, { force: true });
  writeFileSync(own, JSON.stringify(settings));
  const { status } = spawnSync(`${HERE}/node_modules/.bin/stryker`, ["run", own], { stdio: "inherit" });
  // Stopped, or some test fails on the code as it is.
  if (status === null || !existsSync(report)) process.exit(1);
  below ||= status !== 0;
  if (name === folder) note(folder, report);
}
process.exitCode = below ? 1 : 0;

/**
 * A folder's own unit tests and the published values must find its mutants. Tests of other folders do not help, nor do the
 * properties, which take seconds and would be asked of each mutant again.
 */
function testsOf(folder) {
  return [`tests/unit/${folder}`, "tests/handbook"].flatMap((path) =>
    readdirSync(path)
      .filter((name) => name.endsWith(".test.ts"))
      .sort()
      .map((name) => `${path}/${name}`),
  );
}

/** Keeps a folder's score, with the day it was measured. */
function note(folder, report) {
  const counts = { killed: 0, survived: 0, notCovered: 0, ignored: 0 };
  for (const { mutants } of Object.values(JSON.parse(readFileSync(report, "utf8")).files)) {
    for (const { status } of mutants) {
      if (status === "Killed" || status === "Timeout") counts.killed++;
      else if (status === "Survived") counts.survived++;
      else if (status === "NoCoverage") counts.notCovered++;
      else if (status === "Ignored") counts.ignored++;
    }
  }
  const tried = counts.killed + counts.survived + counts.notCovered;
  const score = Number(((100 * counts.killed) / tried).toFixed(2));
  const scores = JSON.parse(readFileSync(SCORES, "utf8"));
  scores[folder] = { score, ...counts, date: new Date().toISOString().slice(0, 10) };
  writeFileSync(SCORES, `${JSON.stringify(scores, null, 2)}\n`);
}
