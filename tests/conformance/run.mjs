// Writes docs/conformance.md and the table of worst errors in docs/accuracy.md from a run of the tests.
//   node tests/conformance/run.mjs            runs the tests with their full number of inputs, writes the pages
//   node tests/conformance/run.mjs --check    takes the outcomes of the run just done, which had fewer random inputs, and fails
//                                             where the pages say otherwise
import { execFileSync } from "node:child_process";
import { readFileSync, rmSync, writeFileSync } from "node:fs";
import { formatted, write, writtenIn } from "../helpers/written.mjs";
import { conformancePage, contradictions, readJson, readRun, worstErrors } from "./page.mjs";

const OUT = ".tmp/conformance";
const check = process.argv.includes("--check");

if (!check) {
  rmSync(OUT, { recursive: true, force: true });
  const vitest = ["node_modules/vitest/vitest.mjs", "run", "--config", "tests/vitest.config.ts"];
  execFileSync(process.execPath, [...vitest, "--project", "handbook", "--project", "property"], {
    stdio: "inherit",
    env: { ...process.env, CONFORMANCE_OUT: OUT, PROPERTY_RUNS: "1" },
  });
}

const { outcomes, ulp } = readRun(OUT);
const CONFORMANCE = "docs/conformance.md";
const text = conformancePage({
  cases: readJson("tests/handbook/cases.json"),
  more: readJson("tests/handbook/more.json"),
  outcomes,
  scores: readJson("tests/mutation/score.json"),
});
const page = formatted(CONFORMANCE, text);
const ACCURACY = "docs/accuracy.md";
const ERRORS = "worst errors";
if (!check) {
  writeFileSync(CONFORMANCE, page);
  write(ACCURACY, ERRORS, worstErrors(ulp));
} else {
  if (readFileSync(CONFORMANCE, "utf8") !== page) differs(CONFORMANCE);
  const wrong = contradictions(writtenIn(readFileSync(ACCURACY, "utf8"), ERRORS), ulp);
  if (wrong.length > 0) differs(ACCURACY, `: ${wrong.join(", ")}`);
}

function differs(path, where = "") {
  console.log(
    `${path} is not what the tests give${where}. Run \`npm run conformance\`, and read what has changed.`,
  );
  process.exitCode = 1;
}
