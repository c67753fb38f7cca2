import { describe, expect, it } from "vitest";
import * as area from "../../../src/area/index.ts";
import type { ErrorCode } from "../../../src/errors.ts";
import { qty } from "../../../src/units/index.ts";
import { refusal } from "../../helpers/refusal.ts";

const ft = (value: number) => qty(value, "ft");
const ground = { value: 100, unit: "ft2", of: "ground" } as const;
const treated = { value: 100, unit: "ft2", of: "treated" } as const;
const bands = { bandWidth: qty(31, "in"), rowSpacing: qty(30, "in") };
const rows = { rows: 2, rowLength: ft(10) };
const boundary = (corners: unknown, unit: unknown = "ft"): unknown =>
  area.boundaryArea({ corners, unit } as never);

// A form shows these sentences as they are: each says what was given, what is wanted, and what may be wrong.
describe("what area says of input that cannot be", () => {
  it.each<[() => unknown, ErrorCode, string, string]>([
    [
      () => area.cropRate({ treatedRate: qty(20, "gal/ac"), ...bands }),
      "conflict",
      "bandWidth",
      "Given bands of 31 in on rows 30 in apart: they overlap. Check the two widths; where all of the ground is sprayed, the broadcast rate holds as it is.",
    ],
    [
      () => area.cropRate({ treatedRate: qty(20, "gal") as never, ...bands }),
      "wrong-dimension",
      "treatedRate",
      "Given 20 gal, a volume; wanted a rate per area, such as gal/ac or lb/ac.",
    ],
    [
      () => area.cropRate({ treatedRate: { value: 20, unit: "gallons" } as never, ...bands }),
      "unknown-unit",
      "treatedRate.unit",
      'The unit "gallons" isn\'t known here. Did you mean gal?',
    ],
    [
      () => area.rowBandsArea({ ...rows, ...bands }),
      "conflict",
      "bandWidth",
      "Given 31 in at a spacing of 30 in: they overlap, and what lies in two of them gets a double dose. Check the two widths; where all of the ground is sprayed, it is a broadcast spray.",
    ],
    [
      () => area.bedsArea({ beds: 2, bedLength: ft(10), bedWidth: ft(5), bedSpacing: ft(4) }),
      "conflict",
      "bedWidth",
      "Given 5 ft at a spacing of 4 ft: they overlap, and what lies in two of them gets a double dose. Check the two widths; where all of the ground is sprayed, it is a broadcast spray.",
    ],
    [
      () => area.treeRowsArea({ ...rows, stripWidth: ft(3), sides: 2, rowSpacing: ft(5) }),
      "conflict",
      "stripWidth",
      "Given two sides of 3 ft at a spacing of 5 ft: they overlap, and what lies in two of them gets a double dose. Check the two widths; where all of the ground is sprayed, it is a broadcast spray.",
    ],
    [
      () => area.treeRowsArea({ ...rows, stripWidth: ft(6), sides: 1, rowSpacing: ft(5) }),
      "conflict",
      "stripWidth",
      "Given 6 ft at a spacing of 5 ft: they overlap, and what lies in two of them gets a double dose. Check the two widths; where all of the ground is sprayed, it is a broadcast spray.",
    ],
    [
      () => area.rowBandsArea({ rowLengths: [ft(10), ft(0)], bandWidth: ft(1) }),
      "out-of-range",
      "rowLengths[1]",
      "Given 0 ft; wanted more than 0.",
    ],
    [
      () => area.bedsArea({ bedLengths: [ft(10), ft(0)], bedWidth: ft(1) }),
      "out-of-range",
      "bedLengths[1]",
      "Given 0 ft; wanted more than 0.",
    ],
    [
      () => area.treeRowsArea({ rowLengths: [ft(10), ft(0)], stripWidth: ft(1), sides: 1 }),
      "out-of-range",
      "rowLengths[1]",
      "Given 0 ft; wanted more than 0.",
    ],
    [
      () => area.rowBandsArea({ rowLengths: [ft(10), ft(20)], rows: 3, bandWidth: ft(1) }),
      "conflict",
      "rows",
      "Given 3 with 2 lengths; wanted one length for each.",
    ],
    [
      () => area.bedsArea({ bedLengths: [ft(10), ft(20)], beds: 3, bedWidth: ft(1) }),
      "conflict",
      "beds",
      "Given 3 with 2 lengths; wanted one length for each.",
    ],
    [
      () => area.treeRowsArea({ rowLengths: [ft(10), ft(20)], rows: 3, stripWidth: ft(1), sides: 1 }),
      "conflict",
      "rows",
      "Given 3 with 2 lengths; wanted one length for each.",
    ],
    [
      () =>
        boundary(
          [
            [0, 0],
            [1, 0],
            [1, 1],
          ],
          null,
        ),
      "missing",
      "unit",
      'Nothing given; wanted a unit of length, such as "ft".',
    ],
    [
      () =>
        boundary(
          [
            [0, 0],
            [1, 0],
            [1, 1],
          ],
          "ac",
        ),
      "wrong-dimension",
      "unit",
      'Given "ac"; wanted a unit of length, such as ft.',
    ],
    [
      () => boundary([[0, 0], undefined, [1, 1]]),
      "missing",
      "corners[1]",
      "Nothing given; wanted two numbers, such as [0, 120].",
    ],
    [
      () => boundary([[0, 0], null, [1, 1]]),
      "missing",
      "corners[1]",
      "Nothing given; wanted two numbers, such as [0, 120].",
    ],
    [
      () =>
        boundary([
          [0, 0],
          [1, 0, 1],
          [1, 1],
        ]),
      "not-a-quantity",
      "corners[1]",
      "Given a list of 3; wanted two numbers, such as [0, 120].",
    ],
    [
      () => boundary([[0, 0], { x: 1 }, [1, 1]]),
      "not-a-quantity",
      "corners[1]",
      "Given an object; wanted two numbers, such as [0, 120].",
    ],
    [
      () =>
        boundary([
          [0, 0],
          [1, 1],
          [0, 0],
        ]),
      "too-few",
      "corners",
      "Given 2 different corners; wanted at least 3, to enclose any ground.",
    ],
    [
      () =>
        boundary([
          [0, 0],
          [1, 1],
          [1, 0],
          [0, 1],
        ]),
      "conflict",
      "corners[2]",
      "Given a boundary that crosses or touches itself at (0.5, 0.5) ft: the side from corner 1 to corner 2 meets the side from corner 3 to corner 4. List the corners in the order in which you walk round the plot.",
    ],
    [
      () =>
        boundary([
          [0, 0],
          [1e200, 0],
          [1e200, 1e200],
        ]),
      "not-finite",
      "corners",
      "The corners lie too far apart to compute with in ft.",
    ],
    [
      () => area.compositeArea({ add: [ground], subtract: [ground] }),
      "conflict",
      "subtract",
      "Given 100 ft2 to take out of 100 ft2; wanted some ground to be left.",
    ],
    [() => area.compositeArea({ add: [] }), "too-few", "add", "Given 0 of them; wanted at least 1."],
    [
      () => area.compositeArea({ add: [treated as never] }),
      "wrong-area",
      "add[0]",
      "Given treated area; wanted ground area. Product and carrier go by the area that is really treated; the ground between bands is not.",
    ],
    [
      () => area.compositeArea({ add: [ground], subtract: [treated as never] }),
      "wrong-area",
      "subtract[0]",
      "Given treated area; wanted ground area. Product and carrier go by the area that is really treated; the ground between bands is not.",
    ],
    [
      () => area.treatedArea(ground as never),
      "wrong-area",
      "area",
      "Given ground area; wanted an area that is not marked, or marked as treated. Only the part of the ground that is sprayed is treated.",
    ],
    [
      () => area.groundArea(treated as never),
      "wrong-area",
      "area",
      "Given treated area; wanted an area that is not marked, or marked as ground. Only the part of the ground that is sprayed is treated.",
    ],
    [
      () => area.treatedFraction({ treated: { ...treated, value: 101 }, ground }),
      "conflict",
      "treated",
      "Given 101 ft2 treated on 100 ft2 of ground; wanted no more than the ground. A plot sprayed twice is two jobs on the same area.",
    ],
    [
      () => area.treatPart({ ground, fraction: 1.5 }),
      "out-of-range",
      "fraction",
      "Given 1.5; wanted 1 or less.",
    ],
    [
      () => area.spotsArea({ spots: [{ count: 2, each: qty(60, "ft2") }], ground }),
      "conflict",
      "spots",
      "Given spots of 120 ft2 together on 100 ft2 of ground; wanted no more than the ground.",
    ],
    [
      () => area.spotsArea({ spots: [{ count: 2, diameter: ft(1), each: qty(1, "ft2") } as never] }),
      "conflict",
      "spots[0]",
      "Given more than one size for a spot; wanted a diameter, or length and width, or the area of each.",
    ],
    [
      () => area.spotsArea({ spots: [{ count: 2, each: qty(1, "ft2"), length: ft(1) } as never] }),
      "conflict",
      "spots[0]",
      "Given more than one size for a spot; wanted a diameter, or length and width, or the area of each.",
    ],
    [
      () => area.spotsArea({ spots: [{ count: 2, diameter: ft(1), width: ft(1) } as never] }),
      "conflict",
      "spots[0]",
      "Given more than one size for a spot; wanted a diameter, or length and width, or the area of each.",
    ],
    [
      () => area.spotsArea({ spots: [{ count: 2, length: ft(1) } as never] }),
      "missing",
      "spots[0].width",
      'Nothing given; wanted a number with its unit, such as { value: 5, unit: "ft" }.',
    ],
    [
      () => area.spotsArea({ spots: [{ count: 2, width: ft(1) } as never] }),
      "missing",
      "spots[0].length",
      'Nothing given; wanted a number with its unit, such as { value: 5, unit: "ft" }.',
    ],
    [
      () => area.spotsArea({ spots: [{ count: 2 } as never] }),
      "missing",
      "spots[0].length",
      'Nothing given; wanted a number with its unit, such as { value: 5, unit: "ft" }.',
    ],
    [
      () => area.spotsArea({ spots: [{ count: 2, each: null } as never] }),
      "missing",
      "spots[0].each",
      'Nothing given; wanted a number with its unit, such as { value: 5, unit: "ft" }.',
    ],
    [
      () => area.spotsArea({ spots: [{ count: 2, diameter: ft(1) }, { count: 1, each: ft(1) } as never] }),
      "wrong-dimension",
      "spots[1].each",
      "Given 1 ft, a length; wanted an area, such as ft2.",
    ],
    [
      () => area.triangleArea({ sides: [ft(1), ft(2), ft(4)] }),
      "conflict",
      "sides",
      "Given a side of 4 ft with others of 2 and 1 ft; each side of a triangle is shorter than the other two together. Measure again.",
    ],
    [
      () => area.offsetsArea({ offsets: [ft(1), ft(2)], spacing: ft(1), rule: "simpson" }),
      "too-few",
      "offsets",
      "Given 2 of them; wanted at least 3.",
    ],
    [
      () => area.offsetsArea({ offsets: [ft(0), ft(0)], spacing: ft(1), rule: "trapezoidal" }),
      "out-of-range",
      "offsets",
      "Given offsets of 0 only; wanted some ground to measure.",
    ],
    [
      () =>
        area.unequalOffsetsArea({
          stations: [
            [0, 1],
            [0, 2],
          ],
          unit: "ft",
        }),
      "conflict",
      "stations[1][0]",
      "Given 0 ft along the base line after 0 ft; wanted each station farther along than the one before it.",
    ],
    [
      () =>
        area.unequalOffsetsArea({
          stations: [
            [0, 1],
            [5, -2],
          ],
          unit: "ft",
        }),
      "out-of-range",
      "stations[1][1]",
      "Given an offset of -2 ft; wanted 0 or more.",
    ],
    [
      () =>
        area.unequalOffsetsArea({
          stations: [
            [0, 0],
            [5, 0],
          ],
          unit: "ft",
        }),
      "out-of-range",
      "stations",
      "Given offsets of 0 only; wanted some ground to measure.",
    ],
    [
      () => area.rectangleArea({ length: ft(1e200), width: ft(1e200) }),
      "not-finite",
      "",
      "The sizes given lead to Infinity ft2; wanted sizes that a plot of ground can have.",
    ],
    [
      () => area.rectangleArea({ length: ft(1e-200), width: ft(1e-200) }),
      "not-finite",
      "",
      "The sizes given lead to 0 ft2; wanted sizes that a plot of ground can have.",
    ],
    [
      () => area.ringArea({ outerDiameter: ft(10), innerDiameter: ft(10) }),
      "conflict",
      "innerDiameter",
      "Given 10 ft across inside and 10 ft outside; wanted less inside.",
    ],
    [
      () => area.sectorArea({ radius: ft(10), angleDegrees: 361 }),
      "out-of-range",
      "angleDegrees",
      "Given 361; wanted 360 or less.",
    ],
  ])("%s", (call, code, path, message) => {
    const error = refusal(call);
    expect({ code: error.code, path: error.path, message: error.message }).toEqual({ code, path, message });
  });
});
