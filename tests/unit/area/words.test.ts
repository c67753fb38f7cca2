import { describe, expect, it } from "vitest";
import * as area from "../../../src/area/index.ts";
import * as swath from "../../../src/swath/index.ts";
import { qty } from "../../../src/units/index.ts";
import type { WorkingLine } from "../../../src/units/working.ts";
import { AREA_WORDS } from "../../../src/worksheet/words/area.ts";
import { SWATH_WORDS } from "../../../src/worksheet/words/swath.ts";

const ft = qty(5, "ft");
const m = qty(1, "m");
const ground = area.groundArea(qty(1, "ac"));
const bands = { bandWidth: m, rowSpacing: ft };
const pattern = { catches: [qty(1, "mL"), qty(3, "mL")], spacing: m, travel: "one-way" } as const;
const boom = { angleDegrees: 80, nozzleSpacing: ft };

const LINES: readonly WorkingLine[] = [
  ...area.rectangleAreaWorking({ length: ft, width: m }),
  ...area.triangleAreaWorking({ base: ft, height: m }),
  ...area.triangleAreaWorking({ sides: [ft, ft, m] }),
  ...area.trapezoidAreaWorking({ base: ft, top: m, height: m }),
  ...area.circleAreaWorking({ diameter: ft }),
  ...area.ellipseAreaWorking({ length: ft, width: m }),
  ...area.ringAreaWorking({ outerDiameter: ft, innerDiameter: m }),
  ...area.sectorAreaWorking({ radius: ft, angleDegrees: 90 }),
  ...area.compositeAreaWorking({ add: [ground, ground], subtract: [area.groundArea(qty(1, "m2"))] }),
  ...area.boundaryAreaWorking({
    corners: [
      [0, 0],
      [1, 0],
      [1, 1],
    ],
    unit: "ft",
  }),
  ...area.offsetsAreaWorking({ offsets: [ft, m], spacing: ft, rule: "trapezoidal" }),
  ...area.unequalOffsetsAreaWorking({
    stations: [
      [0, 1],
      [2, 3],
    ],
    unit: "ft",
  }),
  ...area.treatPartWorking({ ground, fraction: 0.5 }),
  ...area.treatedFractionWorking({ ground, treated: area.treatedArea(qty(1, "m2")) }),
  ...area.rowBandsAreaWorking({ rows: 3, rowLength: m, ...bands }),
  ...area.rowBandsAreaWorking({ rowLengths: [ft, m], ...bands }),
  ...area.bedsAreaWorking({ beds: 3, bedLength: m, bedWidth: m, bedSpacing: ft }),
  ...area.bedsAreaWorking({ bedLengths: [ft, m], bedWidth: m, bedSpacing: ft }),
  ...area.treeRowsAreaWorking({ rows: 3, rowLength: m, stripWidth: qty(1, "ft"), sides: 2, rowSpacing: ft }),
  ...area.treeRowsAreaWorking({ rowLengths: [ft, m], stripWidth: m, sides: 1, rowSpacing: ft }),
  ...area.spotsAreaWorking({
    spots: [
      { count: 2, diameter: m },
      { count: 2, each: qty(1, "m2") },
      { count: 2, length: ft, width: m },
    ],
  }),
  ...area.rowLengthOnWorking({ ground, rowSpacing: ft }),
  ...area.plantCountWorking({ ground, rowSpacing: ft, plantSpacing: m }),
  ...area.cropRateWorking({ ...bands, treatedRate: qty(1, "gal/ac") }),
  ...area.treatedRateWorking({ ...bands, cropRate: qty(1, "gal/ac") }),
  ...swath.boomWidthWorking({ nozzles: 2, nozzleSpacing: ft }),
  ...swath.bandsWidthWorking({ bands: 2, ...bands }),
  ...swath.widthPerNozzleWorking({ width: ft, nozzles: 2 }),
  ...swath.treeRowWidthWorking({ rowSpacing: ft, sides: 1 }),
  ...swath.effectiveWidthWorking({ width: ft, overlap: m }),
  ...swath.passesOverWorking({
    length: ft,
    width: m,
    swath: qty(4, "ft"),
    overlap: qty(1, "in"),
    speed: qty(1, "mph"),
  }),
  ...swath.boomHeightWorking({ ...boom, overlap: qty(30, "%") }),
  ...swath.boomCoverageWorking({ ...boom, height: qty(50, "ft") }),
  ...swath.boomCoverageWorking({ ...boom, height: qty(1, "ft") }),
  ...swath.patternUniformityWorking({ ...pattern, swath: qty(2, "m") }),
];
const WORDS = { ...AREA_WORDS, ...SWATH_WORDS };
const own = LINES.filter(({ id }) => id !== "units.convert");

describe("the wording of area and swath", () => {
  it.each(own)("names what $id finds, and every symbol of $formula", ({ id, terms, formula }) => {
    const words = WORDS[id];
    expect(words?.found).toMatch(/\w/);
    for (const symbol of Object.keys(terms)) {
      // x1, x2 … are named by x.
      expect(words?.terms[symbol] ?? words?.terms[symbol.replace(/\d+$/, "")], symbol).toMatch(/\w/);
      expect(formula).toContain(symbol);
    }
  });

  it("words no line that there is not", () => {
    expect(Object.keys(WORDS).sort()).toEqual([...new Set(own.map(({ id }) => id))].sort());
    for (const [id, { terms }] of Object.entries(WORDS)) {
      const used = own.filter((line) => line.id === id).flatMap((line) => Object.keys(line.terms));
      for (const symbol of Object.keys(terms))
        expect(
          used.flatMap((name) => [name, name.replace(/\d+$/, "")]),
          `${id}: ${symbol}`,
        ).toContain(symbol);
    }
  });

  it("shows each change of unit for a term of a line of its own", () => {
    for (const { about } of LINES.filter(({ id }) => id === "units.convert")) {
      const [, id = "", symbol = ""] = /^(.+)\.([^.]+)$/.exec(about ?? "") ?? [];
      expect(
        own.some((line) => line.id === id && symbol in line.terms),
        about,
      ).toBe(true);
    }
  });
});
