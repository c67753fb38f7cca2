import { execFileSync } from "node:child_process";
import { mkdirSync, rmSync, writeFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { format } from "node:util";
import { afterEach, beforeAll, describe, expect, it, vi } from "vitest";
import { allExamples, folded } from "../helpers/examples.ts";

const folder = resolve(".tmp/examples");
const examples = allExamples();
const fileOf = (index: number) => join(folder, `example-${index}.ts`);

beforeAll(() => {
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(folder, { recursive: true });
  for (const [index, { place, code }] of examples.entries()) {
    writeFileSync(fileOf(index), `// ${place}\n${code}\nexport {};\n`);
  }
  writeFileSync(
    join(folder, "tsconfig.json"),
    JSON.stringify({
      extends: "../../tests/tsconfig.json",
      compilerOptions: {
        noUnusedLocals: false,
        rootDir: "../..",
        tsBuildInfoFile: "../types/examples.tsbuildinfo",
        paths: {
          "swath-to-spoon": ["../../src/index.ts"],
          "swath-to-spoon/area/geodesic": ["../../src/area/geodesic.ts"],
          "swath-to-spoon/worksheet/latex": ["../../src/worksheet/latex.ts"],
          "swath-to-spoon/*": ["../../src/*/index.ts"],
        },
      },
      include: ["."],
      references: [{ path: "../.." }],
    }),
  );
});

afterEach(() => {
  vi.restoreAllMocks();
});

describe("examples in docstrings and pages", () => {
  it("are found", () => {
    expect(examples.length).toBeGreaterThan(5);
  });

  it("pass the type checker", { timeout: 240_000 }, () => {
    let faults = "";
    try {
      // Against the declarations of src, which are made anew where src has changed.
      execFileSync("node_modules/.bin/tsc", ["-b", folder], { encoding: "utf8" });
    } catch (error) {
      faults = (error as { stdout: string }).stdout;
    }
    expect(faults).toBe("");
  });

  it.each(examples.map((example, index) => ({ ...example, index })))(
    "$place prints what it says",
    async ({ index, prints }) => {
      const lines: string[] = [];
      vi.spyOn(console, "log").mockImplementation((...args) => lines.push(format(...args)));
      await import(fileOf(index));
      expect(prints, "an example says what it prints").not.toBe("");
      expect(folded(lines.join(" "))).toBe(prints);
    },
  );
});
