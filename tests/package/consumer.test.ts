import { execFile, execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { promisify } from "node:util";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import {
  batchInputSchema,
  calibrationRecordSchema,
  planInputSchema,
  spreadingInputSchema,
  toJsonSchema,
} from "../../src/schema/index.ts";
import { installInto } from "./pack.mjs";

const execNode = promisify(execFile);

/** A stranger's project: an empty folder outside this tree, with nothing but the packed tarball installed. */
const folder = mkdtempSync(join(tmpdir(), "consumer-"));
const { exports } = JSON.parse(readFileSync("package.json", "utf8")) as { exports: Record<string, unknown> };
const subpaths = Object.keys(exports)
  .filter((path) => !path.endsWith(".json"))
  .map((path) => path.replace(/^\./, "swath-to-spoon"));

function node(file: string, code: string): string {
  writeFileSync(join(folder, file), code);
  return execFileSync(process.execPath, [file], { cwd: folder, encoding: "utf8" }).trim();
}

beforeAll(() => {
  writeFileSync(
    join(folder, "package.json"),
    JSON.stringify({ name: "consumer", private: true, type: "module" }),
  );
  installInto(folder);
});

afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});

// publint and the type checks do not see a default import that breaks at call time: each way in must call a function.
const CALL = "JSON.stringify(convert(qty(1, 'psi'), 'kPa'))";

describe("the packed package", () => {
  it("works by import", () => {
    const code = `import { convert, qty } from "swath-to-spoon/units";\nconsole.log(${CALL});`;
    expect(node("main.mjs", code)).toBe('{"value":6.894757293168361,"unit":"kPa"}');
  });

  it("works by require", () => {
    const code = `const { convert, qty } = require("swath-to-spoon");\nconsole.log(${CALL});`;
    expect(node("main.cjs", code)).toBe('{"value":6.894757293168361,"unit":"kPa"}');
  });

  it("opens every way in both ways, with the same exports", () => {
    const list = "Object.keys(m).filter((k) => k !== 'default' && k !== '__esModule').sort()";
    const all = JSON.stringify(subpaths);
    const byImport = node(
      "list.mjs",
      `const all = {};\nfor (const path of ${all}) { const m = await import(path); all[path] = ${list}; }\nconsole.log(JSON.stringify(all));`,
    );
    const byRequire = node(
      "list.cjs",
      `const all = {};\nfor (const path of ${all}) { const m = require(path); all[path] = ${list}; }\nconsole.log(JSON.stringify(all));`,
    );
    const exported = JSON.parse(byImport) as Record<string, string[]>;
    expect(Object.keys(exported)).toEqual(subpaths);
    expect(Object.values(exported).every((names) => names.length > 0)).toBe(true);
    expect(JSON.parse(byRequire)).toEqual(exported);
  });

  // In a process of its own, so that nothing that another way in loads first helps it.
  it.each(subpaths)("opens %s alone, both ways", async (path) => {
    const open = (type: string, code: string) =>
      execNode(process.execPath, [`--input-type=${type}`, "-e", code], { cwd: folder });
    await Promise.all([open("module", `await import("${path}")`), open("commonjs", `require("${path}")`)]);
  });

  it.each([
    ["plan-input", planInputSchema()],
    ["batch-input", batchInputSchema()],
    ["spreading-input", spreadingInputSchema()],
    ["calibration-record", calibrationRecordSchema()],
  ])("ships the JSON Schema %s as the schemas tell it", (name, schema) => {
    const code = `console.log(JSON.stringify(require("swath-to-spoon/schema/${name}.schema.json")))`;
    expect(JSON.parse(node("schema.cjs", code))).toEqual(toJsonSchema(schema));
  });

  // The first looks through the declarations too, the others use them. node10 is what ts-jest and older set-ups resolve by.
  it.each([
    ["node16", "node16", ["--skipDefaultLibCheck"]],
    ["esnext", "bundler", ["--skipLibCheck"]],
    ["commonjs", "node10", ["--skipLibCheck", "--ignoreDeprecations", "6.0"]],
  ])(
    "type-checks under module %s, moduleResolution %s, and refuses a wrong unit",
    (module, moduleResolution, more) => {
      const imports = subpaths
        .map((path, index) => `import * as m${index} from "${path}";\nvoid m${index};`)
        .join("\n");
      const use = `
import planInput from "swath-to-spoon/schema/plan-input.schema.json";
import { convert, qty, type Volume } from "swath-to-spoon";
import { stripRate } from "swath-to-spoon/output-rate";
const right: Volume = convert(qty(2, "gal"), "L");
// @ts-expect-error an ounce of weight is no volume
const wrong: Volume = qty(5, "oz");
// @ts-expect-error a length is no volume, by a subpath as by the root
stripRate({ used: qty(5, "ft"), swath: qty(2, "ft"), distance: qty(100, "ft") });
void [right, wrong, planInput];`;
      for (const extension of ["mts", "cts"])
        writeFileSync(join(folder, `check.${extension}`), `${imports}\n${use}\n`);
      const options = [
        "--noEmit",
        "--strict",
        "--target",
        "es2022",
        "--lib",
        "es2022,dom",
        "--resolveJsonModule",
      ];
      const files = {
        node16: ["check.mts", "check.cts"],
        bundler: ["check.mts"],
        node10: ["check.cts"],
      }[moduleResolution] as string[];
      const tsc = resolve("node_modules/typescript/bin/tsc");
      const how = ["--module", module, "--moduleResolution", moduleResolution, "--esModuleInterop", ...more];
      execFileSync(process.execPath, [tsc, ...options, ...how, ...files], { cwd: folder, encoding: "utf8" });
    },
  );
});

describe("npm start", () => {
  it("runs the main job on the example file and prints its worksheet", () => {
    const printed = execFileSync(process.execPath, ["examples/run.mjs", "market-garden"], {
      encoding: "utf8",
    });
    for (const part of ["Treated area", "Output rate", "Load 1", "Product A", "label"])
      expect(printed).toContain(part);
    // What it does is said beside it.
    expect(printed).not.toContain("Installing");
  });
});
