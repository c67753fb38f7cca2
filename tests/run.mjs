// Runs the project's checks and closes with one line, `N passed, N failed`, and how many were skipped where some were.
//   node tests/run.mjs check   types, lint, unit tests: the inner loop
//   node tests/run.mjs all     the same, and the build, the packed package and every other test
import { spawn } from "node:child_process";
import { mkdirSync, readFileSync, rmSync } from "node:fs";

const all = process.argv[2] !== "check";
const CONFORMANCE_OUT = ".tmp/conformance";
const bin = (name) => `node_modules/.bin/${name}`;

let passed = 0;
let failed = 0;
let skipped = 0;

function run(command, args) {
  return new Promise((resolve) => {
    const child = spawn(command, args, {
      stdio: ["ignore", "pipe", "pipe"],
      env: { ...process.env, NO_COLOR: "1", CONFORMANCE_OUT },
    });
    let output = "";
    child.stdout.on("data", (chunk) => (output += chunk));
    child.stderr.on("data", (chunk) => (output += chunk));
    child.on("error", (error) => resolve({ code: 1, output: String(error) }));
    child.on("close", (code) => resolve({ code: code ?? 1, output }));
  });
}

async function step(name, command, args) {
  const start = performance.now();
  const { code, output } = await run(command, args);
  const took = ((performance.now() - start) / 1000).toFixed(1);
  console.log(`${code === 0 ? "passed" : "FAILED"}  ${name}  (${took} s)`);
  if (code === 0) passed++;
  else {
    failed++;
    console.log(output);
  }
  return code === 0;
}

async function vitest(name, projects, more = []) {
  const report = `.tmp/vitest-${name}.json`;
  rmSync(report, { force: true });
  const chosen = projects.flatMap((project) => ["--project", project]);
  const options = [
    "--config",
    "tests/vitest.config.ts",
    "--reporter=default",
    "--reporter=json",
    `--outputFile.json=${report}`,
    ...more,
  ];
  const { code, output } = await run(bin("vitest"), ["run", ...options, ...chosen]);
  console.log(output);
  try {
    const { numPassedTests, numFailedTests, numPendingTests } = JSON.parse(readFileSync(report, "utf8"));
    passed += numPassedTests;
    failed += numFailedTests;
    skipped += numPendingTests;
    // A suite that could not start, or a floor that was not met, fails without a failing test.
    if (code !== 0 && numFailedTests === 0) failed++;
  } catch {
    failed++;
  }
}

mkdirSync(".tmp", { recursive: true });

const types = () => step("types of src and tests", bin("tsc"), ["-b", "tests"]);
const lint = () => step("lint and format", bin("biome"), ["ci", "."]);

async function inTurn(steps) {
  for (let next = steps.shift(); next !== undefined; next = steps.shift()) await next();
}
/** Two of them at work, each on the next that is left: more would only get in each other's way. */
async function twoAtATime(steps) {
  await Promise.all([inTurn(steps), inTurn(steps)]);
}

if (!all) {
  // One worker loads the modules once; the type check takes the other core.
  await Promise.all([inTurn([lint, types]), vitest("unit", ["unit"], ["--maxWorkers=1"])]);
} else {
  rmSync(CONFORMANCE_OUT, { recursive: true, force: true });
  let typed;
  let packed;
  /** A step that needs what another makes; where that failed, it would only say so again. */
  const after = (needed, next) => async () => {
    if (await needed()) await next();
  };
  const withTypes = (next) => after(() => typed, next);
  const withPackage = (next) => after(() => packed, next);
  // What others wait for comes first, then the longest.
  await twoAtATime([
    () => (typed = types()),
    () => (packed = step("build and pack", process.execPath, ["tests/package/build.mjs"])),
    () => vitest("unit", ["unit", "handbook"], ["--maxWorkers=1", "--coverage"]),
    withPackage(() => vitest("browser", ["browser"], ["--maxWorkers=1"])),
    withPackage(() => vitest("package", ["package"], ["--maxWorkers=1"])),
    withTypes(() => vitest("random", ["property", "docs"], ["--maxWorkers=1"])),
    withPackage(async () => {
      if (await step("site of guides and API", "npm", ["run", "docs"]))
        await vitest("site", ["site"], ["--maxWorkers=1"]);
    }),
    withPackage(() => step("public API as committed", process.execPath, ["tests/api/run.mjs", "--check"])),
    withPackage(() => step("types of the package", bin("attw"), [".tmp/package.tgz"])),
    withPackage(() => step("package manifest", bin("publint"), ["--strict"])),
    withPackage(() => step("sizes as committed", process.execPath, ["tests/size/run.mjs", "--check"])),
    () => step("nothing unused", bin("knip"), []),
    lint,
  ]);
  await step("conformance page as committed", process.execPath, ["tests/conformance/run.mjs", "--check"]);
}
if (skipped > 0) {
  console.log(
    `${skipped} tests were skipped: they need a Chrome or Chromium, or Python's jsonschema, and found none.`,
  );
  console.log("On Debian and Ubuntu: sudo apt-get install -y chromium python3-jsonschema");
}
console.log(`${passed} passed, ${failed} failed${skipped > 0 ? `, ${skipped} skipped` : ""}`);
process.exitCode = failed === 0 ? 0 : 1;
