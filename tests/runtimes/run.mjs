// The packed package on other runtimes: every maintained line of Node, other engines, a browser.
//   npm run runtimes
// Each must give what this Node gives, to the last digit, by import and, where there is such a thing, by require.
import { execFileSync } from "node:child_process";
import { mkdirSync, rmSync, writeFileSync } from "node:fs";
import { createServer } from "node:http";
import { join } from "node:path";
import { buildSync } from "esbuild";
import { chromium as playwright } from "playwright-core";
import typescript from "typescript";
import { chromium, FLAGS } from "../browser/chromium.mjs";
import { installInto, root } from "../package/pack.mjs";

// Maintained or still to be met with: 20 is past its end, and the oldest that package.json promises.
const NODES = [20, 22, 24, 26];
const folder = join(root, ".tmp/runtimes");

rmSync(folder, { recursive: true, force: true });
mkdirSync(folder, { recursive: true });
writeFileSync(join(folder, "package.json"), JSON.stringify({ private: true, type: "module" }));
installInto(folder);

// The job is bundled without the package, so that each runtime resolves the package by its own rules.
const source = { entryPoints: ["tests/runtimes/job.mjs"], bundle: true, logLevel: "error" };
const printing = 'console.log("RESULT " + job());';
function bundled(name, format, packages, target = "es2022") {
  const [{ text }] = buildSync({
    ...source,
    target,
    format,
    packages,
    globalName: "entry",
    write: false,
    nodePaths: [join(folder, "node_modules")],
  }).outputFiles;
  writeFileSync(join(folder, name), text);
  return text;
}
const esm = bundled("job.js", "esm", "external");
writeFileSync(join(folder, "job.mjs"), `${esm}\n${printing}\n`);
const cjs = bundled("job.cjs", "cjs", "external");
writeFileSync(join(folder, "numbers.mjs"), `${esm}\n${printing.replace("job()", "job({ text: false })")}\n`);
writeFileSync(join(folder, "job.cjs"), `${cjs}\n${printing}\n`);
const alone = bundled("alone.js", "iife", "bundle");

const run = (command, args) =>
  execFileSync(command, args, {
    cwd: folder,
    encoding: "utf8",
    maxBuffer: 1e8,
    stdio: ["ignore", "pipe", "pipe"],
  });
const resultOf = (printed) => /^RESULT (.*)$/m.exec(printed)?.[1];
const wanted = resultOf(run(process.execPath, ["job.mjs"]));
if (wanted === undefined) throw new Error("this Node gives no result to compare with");

let failed = 0;
let passed = 0;
async function same(name, work, expected = wanted) {
  const start = performance.now();
  let told;
  try {
    const result = await work();
    told = result === expected ? "passed" : `FAILED: ${firstDifference(result, expected)}`;
  } catch (error) {
    told = `FAILED: ${error.stderr || error}`;
  }
  if (told === "passed") passed++;
  else failed++;
  console.log(`${name}: ${told}  (${((performance.now() - start) / 1000).toFixed(1)} s)`);
}

function firstDifference(result, expected) {
  if (typeof result !== "string") return "no result";
  let at = 0;
  while (result[at] === expected[at]) at++;
  return `${result.slice(Math.max(0, at - 60), at + 40)} where ${expected.slice(Math.max(0, at - 60), at + 40)} is wanted`;
}

for (const line of NODES) {
  const node = (file) => resultOf(run("npx", ["-y", "-p", `node@${line}`, "node", file]));
  await same(`Node ${line}, import`, () => node("job.mjs"));
  await same(`Node ${line}, require`, () => node("job.cjs"));
  await same(`Node ${line}, the consumer's tests`, () => {
    const vitest = ["node_modules/vitest/vitest.mjs", "run", "--config", "tests/vitest.config.ts"];
    const tests = ["--project", "package", "consumer"];
    execFileSync("npx", ["-y", "-p", `node@${line}`, "node", ...vitest, ...tests], {
      cwd: root,
      stdio: "pipe",
    });
    return wanted;
  });
}
// JavaScriptCore, and V8 under another roof.
await same("Bun, import", () => resultOf(run("npx", ["-y", "bun@1", "run", "job.mjs"])));
await same("Deno, import", () => resultOf(run("npx", ["-y", "deno@2", "run", "--allow-read", "job.mjs"])));

// What an engine without Intl works out: nothing of it is read from text.
const numbers = resultOf(run(process.execPath, ["numbers.mjs"]));
function install(...packages) {
  run("npm", [
    "install",
    "--no-save",
    "--ignore-scripts",
    "--no-audit",
    "--no-fund",
    "--prefer-offline",
    ...packages,
  ]);
}

// QuickJS: a small interpreter that shares no code with the others. It has no Intl, so it reads no typed text.
await same(
  "QuickJS, bundled",
  async () => {
    install("quickjs-emscripten@0.32");
    const host = `
import { readFileSync } from "node:fs";
import { getQuickJS } from "quickjs-emscripten";
const engine = await getQuickJS();
console.log("RESULT " + engine.evalCode(readFileSync("alone.js", "utf8") + ";entry.job({ text: false })"));`;
    writeFileSync(join(folder, "quick.mjs"), host);
    return resultOf(run(process.execPath, ["quick.mjs"]));
  },
  numbers,
);

// An app's own build for older engines: classes, spread and powers in the language of 2009, big integers as calls.
const older = bundled("older.js", "iife", "bundle", "es2017");
const { outputText: lowered } = typescript.transpileModule(older, {
  compilerOptions: {
    target: typescript.ScriptTarget.ES5,
    downlevelIteration: true,
    ignoreDeprecations: "6.0",
  },
});
const asked = ';(typeof print === "function" ? print : console.log)("RESULT " + entry.job({ text: false }));';
writeFileSync(join(folder, "lowered.cjs"), lowered + asked);
await same("Node, lowered to ECMAScript 5", () => resultOf(run(process.execPath, ["lowered.cjs"])), numbers);

// Hermes: the registry has the compiler of today's React Native, and of the engine only version 0.12. That one turns large big
// integers into wrong numbers, so the library must say so and compute nothing. It reads no Unicode classes in a pattern either.
install("hermes-compiler@260318099", "hermes-engine-cli@0.12.0");
const POLYFILLS = `
Object.hasOwn = function (o, key) { return Object.prototype.hasOwnProperty.call(o, key); };
Array.prototype.at = function (i) { return this[i < 0 ? this.length + i : i]; };
String.prototype.replaceAll = function (a, b) { return this.split(a).join(b); };`;
const hermes = (name) => join(folder, `node_modules/${name}`);
await same("Hermes, compiled", () => {
  run(hermes("hermes-compiler/hermesc/linux64-bin/hermesc"), [
    "-w",
    "-emit-binary",
    "-out",
    "job.hbc",
    "alone.js",
  ]);
  return wanted;
});
await same(
  "Hermes 0.12, refused",
  () => {
    const program = lowered.replaceAll("\\p{L}", "a-zA-Z");
    writeFileSync(join(folder, "hermes.js"), POLYFILLS + program + asked);
    try {
      return run(hermes("hermes-engine-cli/linux64-bin/hermes"), ["-w", "hermes.js"]);
    } catch ({ stderr }) {
      return /EngineError: This JavaScript engine has no correct Number\(BigInt\)/.exec(stderr)?.[0];
    }
  },
  "EngineError: This JavaScript engine has no correct Number(BigInt)",
);

const browser = chromium();
if (browser === undefined) {
  console.log("Chromium: skipped, none found; set CHROMIUM to the path of one");
  if (process.env.CI) failed++;
} else {
  await same("Chromium, bundled", async () => {
    const page = `<!doctype html><meta charset="utf-8"><script>${alone.replaceAll("</script", "<\\/script")}</script>`;
    const server = createServer((_, response) => {
      // No eval: the policy that a careful app has.
      response.setHeader("content-security-policy", "default-src 'none'; script-src 'unsafe-inline'");
      response.setHeader("content-type", "text/html");
      response.end(page);
    }).listen(0, "127.0.0.1");
    const started = await playwright.launch({ executablePath: browser, args: FLAGS });
    try {
      const tab = await started.newPage();
      await tab.goto(`http://127.0.0.1:${server.address().port}/`);
      return await tab.evaluate("entry.job()");
    } finally {
      await started.close();
      server.close();
    }
  });
}

console.log(`${passed} passed, ${failed} failed`);
process.exitCode = failed === 0 ? 0 : 1;
