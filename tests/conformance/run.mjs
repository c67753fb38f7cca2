// Writes docs/conformance.md and the table of worst errors in docs/accuracy.md from a run of the tests.
//   node tests/conformance/run.mjs            runs the tests with their full number of inputs, writes the pages
//   node tests/conformance/run.mjs --check    takes the outcomes of the run just done, which had fewer random inputs, and fails
//                                             where the pages say otherwise
import { execFileSync } from "node:child_process";
import { readFileSync, rmSync, writeFileSync } from "node:fs";
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
const page = conformancePage({
  cases: readJson("tests/handbook/cases.json"),
  more: readJson("tests/handbook/more.json"),
  outcomes,
  scores: readJson("tests/mutation/score.json"),
});
keep("docs/conformance.md", page);

const accuracy = readFileSync("docs/accuracy.md", "utf8");
const marks = /(<!-- worst errors:[^>]*-->\n)([\s\S]*?)(\n<!-- end -->)/;
const table = marks.exec(accuracy)?.[2];
if (table === undefined) throw new Error("docs/accuracy.md has no place for the table of worst errors");
if (!check) {
  keep(
    "docs/accuracy.md",
    accuracy.replace(marks, (_, start, __, end) => `${start}\n${worstErrors(ulp)}\n${end}`),
  );
} else {
  const wrong = contradictions(table, ulp);
  if (wrong.length > 0) differs("docs/accuracy.md", `: ${wrong.join(", ")}`);
}

function keep(path, text) {
  const formatted = execFileSync("node_modules/.bin/biome", ["format", `--stdin-file-path=${path}`], {
    input: text,
    encoding: "utf8",
    maxBuffer: 1e8,
  });
  if (!check) writeFileSync(path, formatted);
  else if (readFileSync(path, "utf8") !== formatted) differs(path);
}

function differs(path, where = "") {
  console.log(
    `${path} is not what the tests give${where}. Run \`npm run conformance\`, and read what has changed.`,
  );
  process.exitCode = 1;
}
