import { describe, expect, it } from "vitest";
import { bedsArea, rowBandsArea, treeRowsArea } from "../../../src/area/index.ts";
import { qty, valueIn } from "../../../src/units/index.ts";
import {
  bedsArea as bedsAreaLines,
  rowBandsArea as rowBandsAreaLines,
  treeRowsArea as treeRowsAreaLines,
} from "../../../src/working/index.ts";
import { refusesMisuse } from "../../helpers/bad-input.ts";
import { expectRefused } from "../../helpers/refusal.ts";
import { expectLinesFrom, expectLinesTrue } from "../../helpers/working.ts";

const ft = (value: number) => qty(value, "ft");
const m = (value: number) => qty(value, "m");

const bands = { rows: 14, rowLength: ft(160), bandWidth: qty(30, "in"), rowSpacing: ft(5) };
const beds = { beds: 6, bedLength: m(30), bedWidth: qty(75, "cm"), bedSpacing: m(1.2) };
const trees = { rows: 10, rowLength: m(100), stripWidth: m(0.6), sides: 2, rowSpacing: m(4.8) } as const;

describe("rows, beds and tree rows", () => {
  it("tell treated from ground in the type of each", () => {
    expect(rowBandsArea(bands)).toEqual({
      treated: { value: 5600, unit: "ft2", of: "treated" },
      ground: { value: 11200, unit: "ft2", of: "ground" },
      fraction: 0.5,
      rowLength: ft(2240),
    });
    expect(bedsArea(beds)).toEqual({
      treated: { value: 135, unit: "m2", of: "treated" },
      ground: { value: 216, unit: "m2", of: "ground" },
      fraction: 0.625,
      rowLength: m(180),
    });
    expect(treeRowsArea(trees)).toEqual({
      treated: { value: 1200, unit: "m2", of: "treated" },
      ground: { value: 4800, unit: "m2", of: "ground" },
      fraction: 0.25,
      rowLength: m(1000),
    });
  });

  it("leave the ground out where the spacing is not known", () => {
    const { rowSpacing, ...rest } = bands;
    expect(rowBandsArea(rest)).toEqual({
      treated: { value: 5600, unit: "ft2", of: "treated" },
      rowLength: ft(2240),
    });
  });

  it("have no line for the ground either then, and begin with what was given", () => {
    const { rowSpacing: _, ...noBands } = bands;
    const { bedSpacing: __, ...noBeds } = beds;
    const { rowSpacing: ___, ...noTrees } = trees;
    for (const [lines, without, given] of [
      [rowBandsAreaLines(bands), rowBandsAreaLines(noBands), bands],
      [bedsAreaLines(beds), bedsAreaLines(noBeds), beds],
      [treeRowsAreaLines(trees), treeRowsAreaLines(noTrees), trees],
    ] as const) {
      const found = (all: typeof lines): string[] =>
        all.flatMap(({ id }) => (id === "units.convert" ? [] : [id.replace(/^.*\./, "")]));
      expect(found(lines)).toEqual(["ground", "fraction", "treated"]);
      expect(found(without)).toEqual(["treated"]);
      expectLinesFrom(lines, given);
      expectLinesFrom(without, given);
    }
  });

  it("add up rows of different lengths", () => {
    const lengths = { rowLengths: [ft(100), ft(60), m(30.48)], bandWidth: ft(2), rowSpacing: ft(4) };
    expect(rowBandsArea(lengths)).toEqual({
      treated: { value: 520, unit: "ft2", of: "treated" },
      ground: { value: 1040, unit: "ft2", of: "ground" },
      fraction: 0.5,
      rowLength: ft(260),
    });
    expect(rowBandsArea({ ...lengths, rows: 3 })).toEqual(rowBandsArea(lengths));
  });

  it("give the printed strip area of an orchard of 3,320 trees", () => {
    // How to calculate the area of herbicide-strip for the application of weedkillers, Growers Update, cider growers' page,
    // 2010: 3320 trees at 2.5 m with a strip of 1.5 m, "1.25 hectares" (1.245 exactly); at 8 ft with 5 ft, "3.05 acres".
    const metric = treeRowsArea({ rows: 3320, rowLength: m(2.5), stripWidth: m(1.5), sides: 1 });
    expect(Math.abs(valueIn(metric.treated, "ha") - 1.25)).toBeLessThanOrEqual(0.005000001);
    const us = treeRowsArea({ rows: 3320, rowLength: ft(8), stripWidth: ft(5), sides: 1 });
    expect(Math.abs(valueIn(us.treated, "ac") - 3.05)).toBeLessThanOrEqual(0.005);
  });

  it("allow bands as wide as their spacing, whatever units they are told in, and then treat all of the ground", () => {
    const { treated, ground, fraction } = rowBandsArea({ ...bands, bandWidth: qty(152.4, "cm") });
    expect(fraction).toBe(1);
    expect(treated.value).toBe(ground?.value);
  });

  it("refuse bands wider than their spacing, for the double dose in the overlap", () => {
    expectRefused(
      () => rowBandsArea({ ...bands, bandWidth: ft(5.001) }),
      "conflict",
      "bandWidth",
      "double dose",
    );
    expectRefused(() => bedsArea({ ...beds, bedWidth: m(1.21) }), "conflict", "bedWidth", "overlap");
    expectRefused(
      () => treeRowsArea({ ...trees, stripWidth: m(2.5) }),
      "conflict",
      "stripWidth",
      "Two sides of",
    );
    expect(treeRowsArea({ ...trees, stripWidth: m(2.5), sides: 1 }).fraction).toBeLessThan(1);
  });

  it("refuse a list of lengths that does not go with the rest", () => {
    const { rowLength, rows, ...rest } = bands;
    expectRefused(() => rowBandsArea({ ...rest, rowLengths: [] }), "too-few", "rowLengths");
    expectRefused(
      () => rowBandsArea({ ...rest, rowLengths: [ft(3), ft(0)] }),
      "out-of-range",
      "rowLengths[1]",
    );
    expectRefused(() => rowBandsArea({ ...rest, rows: 3, rowLengths: [ft(3)] }), "conflict", "rows");
    expectRefused(() => rowBandsArea({ ...bands, rowLengths: [ft(3)] } as never), "conflict", "rowLengths");
  });

  it("refuse a part of a row, and sides other than one or two", () => {
    expectRefused(() => rowBandsArea({ ...bands, rows: 2.5 }), "out-of-range", "rows");
    expectRefused(() => rowBandsArea({ ...bands, rows: 0 }), "out-of-range", "rows");
    expectRefused(() => treeRowsArea({ ...trees, sides: 3 as never }), "unknown-choice", "sides");
    expectRefused(() => treeRowsArea({ ...trees, sides: undefined as never }), "missing", "sides");
  });

  it("show working that is true and ends at the treated area", () => {
    const { rowLength, rows, ...rest } = bands;
    const all = [
      [rowBandsArea, rowBandsAreaLines, bands],
      [rowBandsArea, rowBandsAreaLines, { ...rest, rowLengths: [ft(10), m(10), qty(10, "yd")] }],
      [bedsArea, bedsAreaLines, beds],
      [treeRowsArea, treeRowsAreaLines, { ...trees, rowSpacing: ft(16) }],
    ] as const;
    for (const [area, working, input] of all) {
      const lines = working(input as never);
      expectLinesTrue(lines);
      expect(lines.at(-1)?.result).toEqual(area(input as never).treated);
      expect(lines.find((line) => line.id.endsWith(".ground"))?.result).toEqual(area(input as never).ground);
      expect(lines.find((line) => line.id.endsWith(".fraction"))?.result).toEqual(
        area(input as never).fraction,
      );
    }
  });
});

refusesMisuse("rowBandsArea", rowBandsArea, bands, ["rows", "rowLength", "bandWidth", "rowSpacing"]);
refusesMisuse("rowBandsArea by lengths", rowBandsArea, { rowLengths: [ft(3), ft(4)], bandWidth: ft(1) }, [
  "rowLengths.0",
  "rowLengths.1",
  "bandWidth",
]);
refusesMisuse("bedsArea", bedsArea, beds, ["beds", "bedLength", "bedWidth", "bedSpacing"]);
refusesMisuse("treeRowsArea", treeRowsArea, trees, [
  "rows",
  "rowLength",
  "stripWidth",
  "sides",
  "rowSpacing",
]);
