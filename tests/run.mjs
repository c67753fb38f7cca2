// Runs the project's checks and closes with one line, `N passed, N failed`.
//   node tests/run.mjs check   types, lint, unit tests: the inner loop
//   node tests/run.mjs all     the same, and the build, the packed package and every other test
import { spawn } from "node:child_process";
import { mkdirSync, readFileSync, rmSync } from "node:fs";
import { tarball } from "./package/pack.mjs";

const all = process.argv[2] !== "check";
const CONFORMANCE_OUT = ".tmp/conformance";
const bin = (name) => `node_modules/.bin/${name}`;

let passed = 0;
let failed = 0;

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
    const { numPassedTests, numFailedTests } = JSON.parse(readFileSync(report, "utf8"));
    passed += numPassedTests;
    failed += numFailedTests;
    // A suite that could not start, or a floor that was not met, fails without a failing test.
    if (code !== 0 && numFailedTests === 0) failed++;
  } catch {
    failed++;
  }
}

mkdirSync(".tmp", { recursive: true });

// What tsc found is kept, so that the next run looks only at what changed.
const incremental = (name) => ["--incremental", "--tsBuildInfoFile", `.tmp/${name}.tsbuildinfo`];

const fast = [
  () => step("lint and format", bin("biome"), ["ci", "."]),
  () => step("types of src", bin("tsc"), ["-p", ".", ...incremental("src")]),
  () => step("types of tests", bin("tsc"), ["-p", "tests", ...incremental("tests")]),
];
async function inTurn(steps) {
  for (let next = steps.shift(); next !== undefined; next = steps.shift()) await next();
}
/** Two of them at work, each on the next that is left. */
async function twoAtATime(steps) {
  await Promise.all([inTurn(steps), inTurn(steps)]);
}

if (!all) {
  // One worker loads the modules once; the type checks take the other core.
  await Promise.all([inTurn(fast), vitest("unit", ["unit"], ["--maxWorkers=1"])]);
} else if (await step("build", process.execPath, ["tests/package/build.mjs"])) {
  const packed = tarball();
  rmSync(CONFORMANCE_OUT, { recursive: true, force: true });
  // The longest first, and two at a time: more would only get in each other's way.
  await twoAtATime([
    () => vitest("random", ["property", "docs"], ["--maxWorkers=1"]),
    () => vitest("browser", ["browser"], ["--maxWorkers=1"]),
    () => vitest("package", ["package"], ["--maxWorkers=1"]),
    () => vitest("unit", ["unit", "handbook"], ["--maxWorkers=1", "--coverage"]),
    ...fast,
    () => step("package manifest", bin("publint"), ["--strict"]),
    // node10 resolution knows no subpath exports and is not supported (docs/decisions.md).
    () => step("types of the package", bin("attw"), [packed, "--profile", "node16"]),
    () => step("nothing unused", bin("knip"), []),
    () => step("site of guides and API", "npm", ["run", "docs"]),
    () => step("sizes as committed", process.execPath, ["tests/size/run.mjs", "--check"]),
    () => step("public API as committed", process.execPath, ["tests/api/run.mjs", "--check"]),
  ]);
  await step("conformance page as committed", process.execPath, ["tests/conformance/run.mjs", "--check"]);
}
console.log(`${passed} passed, ${failed} failed`);
process.exitCode = failed === 0 ? 0 : 1;
