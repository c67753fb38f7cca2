import { describe, expect, it } from "vitest";
import { passesOver } from "../../../src/swath/index.ts";
import { qty } from "../../../src/units/index.ts";
import { passesOver as passesOverLines } from "../../../src/working/index.ts";
import { refusesMisuse } from "../../helpers/bad-input.ts";
import { expectRefused } from "../../helpers/refusal.ts";
import { expectLinesTrue } from "../../helpers/working.ts";

const ft = (value: number) => qty(value, "ft");
const m = (value: number) => qty(value, "m");
const plot = { length: ft(200), width: ft(50), swath: ft(4) };

describe("passesOver", () => {
  it("lays passes along and across, and tells how far the last one overlaps", () => {
    expect(passesOver(plot)).toEqual({
      along: { passes: 13, lastOverlap: ft(2), pastEdge: ft(0), distance: ft(2600) },
      across: { passes: 50, lastOverlap: ft(0), pastEdge: ft(0), distance: ft(2500) },
    });
  });

  it("tells the time at a speed", () => {
    // 88 feet a minute is a mile an hour: 5,280 / 60.
    const { along } = passesOver({ ...plot, speed: qty(1, "mph") });
    expect(along.time?.value).toBeCloseTo(2600 / 88, 12);
    expect(along.time?.unit).toBe("min");
    expect(passesOver({ length: m(60), width: m(2), swath: m(2), speed: qty(1, "m/s") }).along.time).toEqual(
      qty(1, "min"),
    );
  });

  it("takes the planned overlap off all passes but the first", () => {
    // Passes of 4 m that overlap by 1 m cover 4, 7, 10, 13, 16 m.
    const overlapping = { length: m(10), width: m(16), swath: m(4), overlap: m(1) };
    expect(passesOver(overlapping).along).toMatchObject({ passes: 5, lastOverlap: m(1) });
    expect(passesOver({ ...overlapping, width: m(15) }).along).toMatchObject({
      passes: 5,
      lastOverlap: m(2),
    });
    expect(passesOver({ ...overlapping, width: m(17) }).along).toMatchObject({
      passes: 6,
      lastOverlap: m(3),
    });
    expect(passesOver({ ...overlapping, overlap: qty(25, "%") })).toEqual(passesOver(overlapping));
  });

  it("needs one pass for a plot no wider than the swath, and says what lands past the edge", () => {
    const narrow = { length: m(100), width: m(3), swath: m(4), overlap: m(1) };
    expect(passesOver(narrow).along).toEqual({
      passes: 1,
      lastOverlap: m(0),
      pastEdge: m(1),
      distance: m(100),
    });
    expect(passesOver({ ...narrow, width: m(4) }).along).toMatchObject({ passes: 1, pastEdge: m(0) });
    expect(passesOver({ ...narrow, width: m(0.5) }).along).toMatchObject({ passes: 1, pastEdge: m(3.5) });
  });

  it("adds no pass and tells no overlap for noise in the sixteenth digit", () => {
    // 1.2 / 0.1 is 11.999999999999998 in floats, and 0.3 / 0.1 is 2.9999999999999996; 2.1 / 0.3 is 7.000000000000001.
    for (const [width, swath, passes] of [
      [1.2, 0.1, 12],
      [0.3, 0.1, 3],
      [2.1, 0.3, 7],
    ] as const) {
      expect(passesOver({ length: m(1), width: m(width), swath: m(swath) }).along).toMatchObject({
        passes,
        lastOverlap: m(0),
      });
    }
  });

  it("shows working that is true for every number it tells", () => {
    const inputs = [
      { ...plot, speed: qty(2.5, "mph") },
      {
        length: qty(70, "yd"),
        width: m(16),
        swath: qty(80, "in"),
        overlap: qty(20, "cm"),
        speed: qty(4, "km/h"),
      },
      { length: m(70), width: m(3), swath: m(4), overlap: qty(10, "%") },
      { length: m(1), width: m(1.2), swath: m(0.1) },
    ];
    for (const input of inputs) {
      const lines = passesOverLines(input);
      expectLinesTrue(lines);
      const found = passesOver(input);
      const results = (name: string) =>
        lines.filter(({ id }) => id === `swath.passes.${name}`).map((l) => l.result);
      const both = [found.along, found.across];
      expect(results("count")).toEqual(both.map((way) => way.passes));
      expect(results("distance")).toEqual(both.map((way) => way.distance));
      expect(results("time")).toEqual(both.flatMap((way) => (way.time === undefined ? [] : [way.time])));
      expect(results("lastOverlap")).toEqual(
        both.filter((way) => way.passes > 1).map((way) => way.lastOverlap),
      );
      expect(results("pastEdge")).toEqual(both.filter((way) => way.passes === 1).map((way) => way.pastEdge));
    }
  });

  it("shows one pass that fits the plot, and a last pass without a further overlap, as they are", () => {
    const lines = passesOverLines({ length: ft(8), width: ft(4), swath: ft(4) });
    expectLinesTrue(lines);
    const formulas = lines.map(({ formula }) => formula);
    expect(formulas).toContain("max(0, swath - side)");
    expect(formulas).toContain("overlap");
    const narrow = passesOverLines({ length: ft(9), width: ft(3), swath: ft(4) });
    expectLinesTrue(narrow);
    expect(narrow.map(({ formula }) => formula)).toEqual(
      expect.arrayContaining(["swath - side", "overlap + (passes * (swath - overlap) + overlap - side)"]),
    );
  });

  it("refuses an overlap as wide as the swath, and more passes than can be counted", () => {
    expectRefused(() => passesOver({ ...plot, overlap: ft(4) }), "out-of-range", "overlap");
    expectRefused(() => passesOver({ ...plot, overlap: qty(100, "%") }), "out-of-range", "overlap");
    expectRefused(() => passesOver({ ...plot, swath: ft(1e-300) }), "out-of-range", "swath");
    expectRefused(() => passesOver({ ...plot, speed: qty(0, "mph") }), "out-of-range", "speed");
    expectRefused(() => passesOver({ ...plot, speed: qty(1, "min") as never }), "wrong-dimension", "speed");
    expectRefused(() => passesOver({ ...plot, swath: ft(0) }), "out-of-range", "swath");
  });
});

refusesMisuse("passesOver", passesOver, { ...plot, overlap: ft(1), speed: qty(2, "mph") }, [
  "length",
  "width",
  "swath",
  "overlap",
  "speed",
]);

describe("passes beyond counting", () => {
  it("are refused at the swath", () => {
    const side = qty(1e70, "ft");
    expectRefused(
      () => passesOver({ length: side, width: side, swath: qty(1e-70, "ft") }),
      "out-of-range",
      "swath",
      "too many passes",
    );
  });
});
