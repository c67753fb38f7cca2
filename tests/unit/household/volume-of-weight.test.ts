import { describe, expect, it } from "vitest";
import { volumeOfWeight } from "../../../src/household/index.ts";
import { qty, valueIn } from "../../../src/units/index.ts";
import { volumeOfWeight as volumeOfWeightLines } from "../../../src/working/index.ts";
import { HOUSEHOLD_WORDS } from "../../../src/worksheet/words/household.ts";
import { expectRefused } from "../../helpers/refusal.ts";
import { expectLinesTrue } from "../../helpers/working.ts";
import { faultOf } from "./fault.ts";

describe("volumeOfWeight", () => {
  it("gives the volume of a weight in the small unit of its system", () => {
    expect(volumeOfWeight({ mass: qty(12, "g"), bulkDensity: qty(0.6, "g/mL") })).toEqual(qty(20, "mL"));
    expect(volumeOfWeight({ mass: qty(8, "oz"), bulkDensity: qty(0.5, "oz/fl_oz") })).toEqual(
      qty(16, "fl_oz"),
    );
    expect(volumeOfWeight({ mass: qty(1, "lb"), bulkDensity: qty(32, "lb/ft3") }).unit).toBe("fl_oz");
  });

  it("gives 62.4 pounds of a powder as light as water as about one cubic foot", () => {
    const volume = volumeOfWeight({ mass: qty(62.4, "lb"), bulkDensity: qty(62.4, "lb/ft3") });
    expect(valueIn(volume, "ft3")).toBeCloseTo(1, 12);
  });

  it("refuses to guess a density and says to weigh", () => {
    expectRefused(
      () => volumeOfWeight({ mass: qty(1, "oz") } as never),
      "missing",
      "bulkDensity",
      "weigh the product",
    );
    expectRefused(
      () => volumeOfWeight({ mass: qty(1, "oz"), bulkDensity: null } as never),
      "missing",
      "bulkDensity",
    );
  });

  it("refuses a bulk density that no dry product has", () => {
    for (const bulkDensity of [qty(5, "lb/ft3"), qty(4, "oz/fl_oz"), qty(600, "kg/L")])
      expectRefused(
        () => volumeOfWeight({ mass: qty(1, "oz"), bulkDensity }),
        "out-of-range",
        "bulkDensity",
        "No product weighs",
      );
  });

  it("refuses a volume where the weight is meant", () => {
    expectRefused(
      () => volumeOfWeight({ mass: qty(1, "fl_oz"), bulkDensity: qty(1, "g/mL") } as never),
      "wrong-dimension",
      "mass",
      "oz (weight) and fl oz (volume) are different",
    );
  });

  it.each([
    ["no input", undefined, "missing "],
    ["no weight", { bulkDensity: qty(1, "g/mL") }, "missing mass"],
    ["a weight of nothing", { mass: qty(0, "g"), bulkDensity: qty(1, "g/mL") }, "out-of-range mass"],
    ["a density of nothing", { mass: qty(1, "g"), bulkDensity: qty(0, "g/mL") }, "out-of-range bulkDensity"],
    [
      "a density below nothing",
      { mass: qty(1, "g"), bulkDensity: qty(-1, "g/mL") },
      "out-of-range bulkDensity",
    ],
    ["a bare density", { mass: qty(1, "g"), bulkDensity: 0.6 }, "not-a-quantity bulkDensity"],
    [
      "a density the wrong way up",
      { mass: qty(1, "g"), bulkDensity: { value: 1, unit: "mL/g" } },
      "unknown-unit bulkDensity.unit",
    ],
    ["a rate", { mass: qty(1, "g"), bulkDensity: qty(1, "g/ha") }, "wrong-dimension bulkDensity"],
    ["too thin a powder", { mass: qty(1e300, "g"), bulkDensity: qty(1e-300, "g/mL") }, "not-finite mass"],
  ])("throws at %s", (_, input, fault) => {
    expect(faultOf(() => volumeOfWeight(input as never))).toBe(fault);
  });

  it("shows its working", () => {
    const input = { mass: qty(12, "oz"), bulkDensity: qty(0.6, "kg/L") };
    const lines = volumeOfWeightLines(input);
    expectLinesTrue(lines);
    expect(lines.at(-1)?.result).toEqual(volumeOfWeight(input));
    expect(lines.map(({ id }) => id)).toEqual(["units.convert", "household.volumeOfWeight"]);
    expect(Object.keys(lines.at(-1)?.terms ?? {})).toEqual(
      Object.keys(HOUSEHOLD_WORDS["household.volumeOfWeight"]?.terms ?? {}),
    );
  });
});
