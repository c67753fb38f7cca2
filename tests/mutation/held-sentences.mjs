// The sentence of a field is held to its docstring, letter for letter, by tests/unit/docstrings.test.ts. That test reads the source,
// which has every fault in it at once while Stryker runs. So faults in the sentences that it compares are left out here.
import { createRequire } from "node:module";
import { commonTokens, declareClassPlugin, PluginKind, tokens } from "@stryker-mutator/api/plugin";
import { buildSync } from "esbuild";

class HeldSentences {
  static inject = tokens(commonTokens.options);

  constructor() {
    this.held = new Set(heldSentences());
  }

  shouldIgnore({ node }) {
    if (node.type !== "StringLiteral") return undefined;
    const { line, column } = node.loc.start;
    return this.held.has(`${line}:${column} ${node.value}`)
      ? "held to its docstring by tests/unit/docstrings.test.ts"
      : undefined;
  }
}

function heldSentences() {
  const { outputFiles } = buildSync({
    entryPoints: ["tests/helpers/sentences.ts"],
    bundle: true,
    write: false,
    format: "cjs",
    platform: "node",
    external: ["typescript"],
  });
  const module = { exports: {} };
  new Function("require", "module", outputFiles[0].text)(createRequire(import.meta.url), module);
  const { libraryProgram, mismatches } = module.exports;
  const program = libraryProgram();
  return mismatches(
    program,
    program.getSourceFiles().filter(({ fileName }) => fileName.includes("/src/")),
  ).held;
}

export const strykerPlugins = [declareClassPlugin(PluginKind.Ignore, "held-sentences", HeldSentences)];
