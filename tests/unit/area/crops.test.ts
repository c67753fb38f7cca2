import { describe, expect, it } from "vitest";
import { cropRate, groundArea, plantCount, rowLengthOn, treatedRate } from "../../../src/area/index.ts";
import { qty } from "../../../src/units/index.ts";
import {
  cropRate as cropRateLines,
  plantCount as plantCountLines,
  rowLengthOn as rowLengthOnLines,
  treatedRate as treatedRateLines,
} from "../../../src/working/index.ts";
import { refusesMisuse } from "../../helpers/bad-input.ts";
import { expectRefused } from "../../helpers/refusal.ts";
import { expectLinesTrue } from "../../helpers/working.ts";

const acre = groundArea(qty(1, "ac"));
const hectare = groundArea(qty(1, "ha"));
const inches = (value: number) => qty(value, "in");

describe("rows and plants on the ground", () => {
  it("gives the row length of an acre of 30-inch rows", () => {
    // Planting Considerations and Stand Assessments, Penn State Extension: 17,424 feet of row.
    expect(rowLengthOn({ ground: acre, rowSpacing: inches(30) })).toEqual(qty(17424, "ft"));
    expect(rowLengthOn({ ground: hectare, rowSpacing: qty(50, "cm") })).toEqual(qty(20000, "m"));
  });

  // The Farm and Garden Rule-Book, L. H. Bailey, number of plants required to set an acre of ground; it cuts, not rounds.
  it.each([
    [1, 1, 6272640],
    [1, 5, 1254528],
    [1, 7, 896091],
    [2, 3, 1045440],
    [3, 7, 298697],
    [4, 4, 392040],
    [4, 7, 224022],
    [24, 36, 7260],
  ])("sets the acre with plants at %s by %s inches", (plantSpacing, rowSpacing, plants) => {
    const input = { ground: acre, rowSpacing: inches(rowSpacing), plantSpacing: inches(plantSpacing) };
    expect(Math.floor(plantCount(input) + 1e-6)).toBe(plants);
  });

  it("takes ground area only", () => {
    const treated = { value: 1, unit: "ac", of: "treated" } as never;
    expectRefused(() => rowLengthOn({ ground: treated, rowSpacing: inches(30) }), "wrong-area", "ground");
    const input = { ground: treated, rowSpacing: inches(30), plantSpacing: inches(3) };
    expectRefused(() => plantCount(input), "wrong-area", "ground");
  });

  it("refuses sizes that lead beyond the range of numbers", () => {
    const far = { ground: { value: 1e300, unit: "ac", of: "ground" }, rowSpacing: inches(1) } as const;
    expectRefused(() => rowLengthOn(far), "not-finite", "ground");
    expectRefused(() => plantCount({ ...far, plantSpacing: inches(1) }), "not-finite", "ground");
    expectRefused(
      () => rowLengthOn({ ground: acre, rowSpacing: qty(1e-300, "in") }),
      "out-of-range",
      "rowSpacing",
    );
  });
});

describe("banded against broadcast rates", () => {
  const bands = { bandWidth: inches(14), rowSpacing: inches(40) };

  it("spreads the label's rate over the field, and gathers it again", () => {
    // 20 gal/acre in 14-inch bands on 40-inch rows: 20 × 14 / 40.
    expect(cropRate({ ...bands, treatedRate: qty(20, "gal/ac") })).toEqual(qty(7, "gal/ac"));
    expect(treatedRate({ ...bands, cropRate: qty(7, "gal/ac") })).toEqual(qty(20, "gal/ac"));
    const metric = { bandWidth: qty(35, "cm"), rowSpacing: qty(1, "m") };
    expect(cropRate({ ...metric, treatedRate: qty(4, "kg/ha") })).toEqual(qty(1.4, "kg/ha"));
  });

  it("leaves the rate as it is where bands are as wide as their spacing", () => {
    const solid = { bandWidth: qty(101.6, "cm"), rowSpacing: inches(40) };
    expect(cropRate({ ...solid, treatedRate: qty(3, "pt/ac") })).toEqual(qty(3, "pt/ac"));
    expect(treatedRate({ ...solid, cropRate: qty(3, "pt/ac") })).toEqual(qty(3, "pt/ac"));
  });

  it("refuses bands wider than their spacing, and what is no rate per area", () => {
    const wide = { bandWidth: inches(41), rowSpacing: inches(40) };
    expectRefused(() => cropRate({ ...wide, treatedRate: qty(3, "pt/ac") }), "conflict", "bandWidth");
    expectRefused(() => treatedRate({ ...wide, cropRate: qty(3, "pt/ac") }), "conflict", "bandWidth");
    expectRefused(
      () => cropRate({ ...bands, treatedRate: qty(3, "gal") as never }),
      "wrong-dimension",
      "treatedRate",
    );
    expectRefused(
      () => treatedRate({ ...bands, cropRate: qty(3, "lb/gal") as never }),
      "wrong-dimension",
      "cropRate",
    );
    expectRefused(() => cropRate({ ...bands, treatedRate: qty(0, "gal/ac") }), "out-of-range", "treatedRate");
  });
});

describe("the working of rows, plants and band rates", () => {
  it("is true and ends at its own result", () => {
    const ground = groundArea(qty(0.3, "ha"));
    const plants = { ground, rowSpacing: inches(30), plantSpacing: inches(8) };
    const rates = { bandWidth: inches(14), rowSpacing: qty(1, "m") };
    const all = [
      [rowLengthOn, rowLengthOnLines, { ground: acre, rowSpacing: qty(70, "cm") }],
      [plantCount, plantCountLines, plants],
      [cropRate, cropRateLines, { ...rates, treatedRate: qty(20, "gal/ac") }],
      [treatedRate, treatedRateLines, { ...rates, cropRate: qty(2, "lb/ac") }],
    ] as const;
    for (const [result, working, input] of all) {
      const lines = working(input as never);
      expectLinesTrue(lines);
      expect(lines.at(-1)?.result).toEqual(result(input as never));
    }
  });
});

refusesMisuse("rowLengthOn", rowLengthOn, { ground: acre, rowSpacing: inches(30) }, ["ground", "rowSpacing"]);
refusesMisuse("plantCount", plantCount, { ground: acre, rowSpacing: inches(30), plantSpacing: inches(8) }, [
  "ground",
  "rowSpacing",
  "plantSpacing",
]);
refusesMisuse(
  "cropRate",
  cropRate,
  { treatedRate: qty(2, "qt/ac"), bandWidth: inches(15), rowSpacing: inches(30) },
  ["treatedRate", "bandWidth", "rowSpacing"],
);
refusesMisuse(
  "treatedRate",
  treatedRate,
  { cropRate: qty(2, "qt/ac"), bandWidth: inches(15), rowSpacing: inches(30) },
  ["cropRate", "bandWidth", "rowSpacing"],
);
