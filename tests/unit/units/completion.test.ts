import { resolve } from "node:path";
import ts from "typescript";
import { describe, expect, it } from "vitest";
import { countUnits } from "../../../src/units/dimensions.ts";
import { unitsOf } from "../../../src/units/index.ts";

const FILE = resolve("src/units/typed-by-somebody.ts");
let typed = "";
let version = 0;

const { config } = ts.readConfigFile("tsconfig.json", ts.sys.readFile);
const { options } = ts.parseJsonConfigFileContent(config, ts.sys, ".");
const editor = ts.createLanguageService({
  fileExists: ts.sys.fileExists,
  readFile: ts.sys.readFile,
  getCompilationSettings: () => options,
  getScriptFileNames: () => [FILE],
  getScriptVersion: (name) => (name === FILE ? String(version) : "0"),
  getScriptSnapshot: (name) => {
    const text = name === FILE ? typed : ts.sys.readFile(name);
    return text === undefined ? undefined : ts.ScriptSnapshot.fromString(text);
  },
  getCurrentDirectory: () => resolve("."),
  getDefaultLibFileName: (settings) => ts.getDefaultLibFilePath(settings),
});

/** What an editor offers at the cursor, which stands at `^`. */
function offered(line: string): string[] {
  const head = `import { qty } from "./quantity.js";
    import type { Length, MassRate, Measured, TreatedArea, Volume, VolumeRate } from "./types.js";
    declare function take(input: { width?: Length; used?: Measured<Volume>; rate?: VolumeRate | MassRate; area?: TreatedArea }): void;
  `;
  typed = head + line.replace("^", "");
  version++;
  return (
    editor
      .getCompletionsAtPosition(FILE, head.length + line.indexOf("^"), {})
      ?.entries.map(({ name }) => name) ?? []
  );
}

const sorted = (list: readonly string[]): string[] => [...list].sort();

describe("the units that an editor offers", () => {
  it("are those that fit, where the object is written out", () => {
    expect(sorted(offered(`take({ width: { value: 1, unit: "^" } });`))).toEqual(sorted(unitsOf("length")));
    expect(sorted(offered(`take({ used: { value: 1, unit: "^" } });`))).toEqual(sorted(unitsOf("volume")));
    expect(sorted(offered(`take({ area: { value: 1, unit: "^", of: "treated" } });`))).toEqual(
      sorted(unitsOf("area")),
    );
    const rates = [...unitsOf("volumeRate"), ...unitsOf("massRate")];
    expect(sorted(offered(`take({ rate: { value: 1, unit: "^" } });`))).toEqual(sorted(rates));
    expect(sorted(offered(`const width: Length = { value: 1, unit: "^" };`))).toEqual(
      sorted(unitsOf("length")),
    );
  });

  it("are all of them inside qty, which the docs therefore don't lead with", () => {
    expect(offered(`take({ width: qty(1, "^") });`)).toHaveLength(countUnits());
  });
});
