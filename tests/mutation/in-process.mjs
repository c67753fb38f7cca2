// A Stryker test runner that calls the tests itself, in the process that Stryker starts. The library is pure functions and
// its tests are plain calls, so a mutant takes milliseconds; starting Vitest anew for each one takes a second.
import { createRequire } from "node:module";
import { join } from "node:path";
import { Script } from "node:vm";
import { commonTokens, declareClassPlugin, PluginKind, tokens } from "@stryker-mutator/api/plugin";
import { determineHitLimitReached, toMutantRunResult } from "@stryker-mutator/api/test-runner";
import { build } from "esbuild";

// Where the code that Stryker wrote into the library looks up which mutant is on.
globalThis.__stryker__ ??= {};
const stryker = globalThis.__stryker__;
const COMPLETE = "complete";
const [SUCCESS, FAILED] = [0, 1];

class InProcess {
  static inject = tokens(commonTokens.options);

  constructor({ inProcess }) {
    this.settings = inProcess;
    /** Of each file of src, the test file that noticed the last fault in it. */
    this.killers = new Map();
  }

  // Everything but the packages is evaluated again for each mutant: nothing that one leaves behind reaches the next.
  capabilities() {
    return { reloadEnvironment: true };
  }

  async init() {
    const load = this.settings.files.map((file) => `"${file}": () => require("./${file}")`);
    const contents = `
      export { collect } from "./tests/mutation/as-vitest.mjs";
      export const files = { ${load.join(", ")} };`;
    const { outputFiles } = await build({
      stdin: { contents, resolveDir: process.cwd() },
      // Not where the process started, which is what esbuild goes by otherwise.
      absWorkingDir: process.cwd(),
      bundle: true,
      write: false,
      format: "cjs",
      platform: "node",
      alias: { vitest: "./tests/mutation/as-vitest.mjs" },
      external: ["mathjs", "fast-check", "@vitest/expect"],
      logLevel: "error",
    });
    const { text } = outputFiles[0];
    this.counting = evaluated(text);
    // Counting what a test reaches takes ten times as long as the test in a search, and is over after the first run.
    this.evaluate = evaluated(text.replace(/function stryCov_\w+\(\) \{/g, "$& return;"));
    this.require = createRequire(join(process.cwd(), "tests/mutation/bundle.cjs"));
  }

  async dryRun() {
    // The code of the library keeps the object that it has found at first.
    for (const part of Object.values(stryker.mutantCoverage ?? {})) for (const id in part) delete part[id];
    const tests = [];
    for (const file of this.settings.files)
      for (const test of this.load(file, this.counting)) tests.push(await resultOf(test));
    return { status: COMPLETE, tests, mutantCoverage: stryker.mutantCoverage };
  }

  async mutantRun({ testFilter, hitLimit, activeMutant, mutantActivation }) {
    const wanted = testFilter && new Set(testFilter);
    const files = new Set(wanted ? testFilter.map((id) => id.split("#")[0]) : this.settings.files);
    // What noticed the last fault in that file most often notices the next one too, and the first that does ends the run.
    const { fileName } = activeMutant;
    const likely = this.killers.get(fileName);
    const inOrder = files.has(likely) ? new Set([likely, ...files]) : files;
    Object.assign(stryker, { hitCount: hitLimit === undefined ? undefined : 0, hitLimit });
    const tests = [];
    for (const file of inOrder) {
      stryker.activeMutant = mutantActivation === "static" ? activeMutant.id : undefined;
      const loaded = this.load(file);
      stryker.activeMutant = activeMutant.id;
      for (const test of loaded) {
        if (wanted && !wanted.has(test.id)) continue;
        tests.push(await resultOf(test));
        if (tests.at(-1).status === FAILED) break;
      }
      stryker.activeMutant = undefined;
      if (tests.at(-1)?.status !== FAILED) continue;
      this.killers.set(fileName, file);
      break;
    }
    const stopped = determineHitLimitReached(stryker.hitCount, hitLimit);
    return toMutantRunResult(stopped ?? { status: COMPLETE, tests });
  }

  /** The tests of a file, from modules that are loaded afresh. */
  load(file, evaluate = this.evaluate) {
    const module = { exports: {} };
    const fileName = join(process.cwd(), file);
    try {
      evaluate(this.require, module, module.exports);
      const tests = module.exports.collect(module.exports.files[file]);
      return tests.map(({ name, run }) => ({ id: `${file}#${name}`, name, fileName, run }));
    } catch (error) {
      const run = () => {
        throw error;
      };
      return [{ id: `${file}#`, name: `${file} loads`, fileName, run }];
    }
  }
}

function evaluated(text) {
  const wrapped = `(function (require, module, exports) {${text}\n})`;
  return new Script(wrapped, { filename: "bundle.cjs" }).runInThisContext();
}

async function resultOf({ run, ...test }) {
  stryker.currentTestId = test.id;
  const start = performance.now();
  const result = (more) => ({ ...test, timeSpentMs: performance.now() - start, ...more });
  try {
    await run();
    return result({ status: SUCCESS });
  } catch (error) {
    return result({ status: FAILED, failureMessage: String(error?.message ?? error) });
  } finally {
    stryker.currentTestId = undefined;
  }
}

export const strykerValidationSchema = { properties: { inProcess: { type: "object" } } };
export const strykerPlugins = [declareClassPlugin(PluginKind.TestRunner, "in-process", InProcess)];
