import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { stripRate } from "../../../src/output-rate/index.ts";
import { qty } from "../../../src/units/index.ts";
import * as working from "../../../src/working/index.ts";

/** Those that are not named for a function: what they show the working of. */
const NAMED: Readonly<Record<string, string>> = {
  planWorking: "planApplication",
  spreadingWorking: "planSpreading",
  waterWorking: "loadWater",
};
/** Those whose lines stand in the working of another function. */
const INNER = ["lanesWorking", "measuredRateWorking", "plotAreasWorking"];

const files = readdirSync("src", { recursive: true, encoding: "utf8" }).filter(
  (name) =>
    name.endsWith(".ts") && /^export function \w+Working\b/m.test(readFileSync(`src/${name}`, "utf8")),
);

describe("swath-to-spoon/working", () => {
  it("has the working of every function that has one, under the function's name", async () => {
    const modules: Record<string, unknown>[] = await Promise.all(
      files.map((file) => import(`../../../src/${file}`)),
    );
    const all = modules
      .flatMap((module) => Object.entries(module))
      .filter(([name]) => name.endsWith("Working") && !INNER.includes(name))
      .map(([name, lines]) => [NAMED[name] ?? name.replace(/Working$/, ""), lines] as const);
    expect(all.length).toBeGreaterThan(60);
    const exported: Readonly<Record<string, unknown>> = { ...working };
    for (const [name, lines] of all) expect(exported[name], name).toBe(lines);
    expect(Object.keys(exported).sort()).toEqual(all.map(([name]) => name).sort());
  });

  it("gives lines whose last result is what the function of that name returns", () => {
    const strip = { used: qty(64, "fl_oz"), swath: qty(4, "ft"), distance: qty(272.25, "ft") };
    expect(working.stripRate(strip).at(-1)?.result).toEqual(stripRate(strip));
  });

  it("is the only way in that has them", async () => {
    const indexes = files.map((file) => `${file.split("/")[0]}/index.ts`);
    for (const index of new Set(indexes)) {
      const exports = Object.keys(await import(`../../../src/${index}`));
      expect(exports.filter((name) => name.endsWith("Working"))).toEqual([]);
    }
  });
});
