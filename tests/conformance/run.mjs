// Writes docs/conformance.md and the table of worst errors in docs/accuracy.md from a run of the tests.
//   node tests/conformance/run.mjs            runs the tests, writes the pages
//   node tests/conformance/run.mjs --check    takes the outcomes of the run just done, fails where the pages differ
import { execFileSync } from "node:child_process";
import { readFileSync, rmSync, writeFileSync } from "node:fs";
import { conformancePage, readJson, readRun, worstErrors } from "./page.mjs";

const OUT = ".tmp/conformance";
const check = process.argv.includes("--check");

if (!check) {
  rmSync(OUT, { recursive: true, force: true });
  const vitest = ["node_modules/vitest/vitest.mjs", "run", "--config", "tests/vitest.config.ts"];
  execFileSync(process.execPath, [...vitest, "--project", "handbook", "--project", "property"], {
    stdio: "inherit",
    env: { ...process.env, CONFORMANCE_OUT: OUT },
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
const marks = /(<!-- worst errors:[^>]*-->\n)[\s\S]*?(\n<!-- end -->)/;
if (!marks.test(accuracy)) throw new Error("docs/accuracy.md has no place for the table of worst errors");
keep(
  "docs/accuracy.md",
  accuracy.replace(marks, (_, start, end) => `${start}\n${worstErrors(ulp)}\n${end}`),
);

function keep(path, text) {
  const formatted = execFileSync("node_modules/.bin/biome", ["format", `--stdin-file-path=${path}`], {
    input: text,
    encoding: "utf8",
    maxBuffer: 1e8,
  });
  if (!check) writeFileSync(path, formatted);
  else if (readFileSync(path, "utf8") !== formatted) {
    console.log(
      `${path} is not what the tests give: run \`npm run conformance\`, and read what has changed.`,
    );
    process.exitCode = 1;
  }
}
