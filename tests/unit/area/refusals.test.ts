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
      "Bands or beds 31 in wide and 30 in apart overlap: a double dose there. Check both numbers, or choose whole block if you spray it all.",
    ],
    [
      () => area.cropRate({ treatedRate: qty(20, "gal") as never, ...bands }),
      "wrong-dimension",
      "treatedRate",
      "20 gal is a volume. Enter a volume per area or a weight per area, such as 5 gal/ac. (2 errors.)",
    ],
    [
      () => area.cropRate({ treatedRate: { value: 20, unit: "gallons" } as never, ...bands }),
      "unknown-unit",
      "treatedRate.unit",
      'The unit "gallons" isn\'t known here. Did you mean "gal"? (2 errors.)',
    ],
    [
      () => area.rowBandsArea({ ...rows, ...bands }),
      "conflict",
      "bandWidth",
      "Bands or beds 31 in wide and 30 in apart overlap: a double dose there. Check both numbers, or choose whole block if you spray it all.",
    ],
    [
      () => area.bedsArea({ beds: 2, bedLength: ft(10), bedWidth: ft(5), bedSpacing: ft(4) }),
      "conflict",
      "bedWidth",
      "Bands or beds 5 ft wide and 4 ft apart overlap: a double dose there. Check both numbers, or choose whole block if you spray it all.",
    ],
    [
      () => area.treeRowsArea({ ...rows, stripWidth: ft(3), sides: 2, rowSpacing: ft(5) }),
      "conflict",
      "stripWidth",
      "Two sides of 3 ft on rows 5 ft apart overlap: a double dose there. Check both numbers, or choose whole block if you spray it all.",
    ],
    [
      () => area.treeRowsArea({ ...rows, stripWidth: ft(6), sides: 1, rowSpacing: ft(5) }),
      "conflict",
      "stripWidth",
      "Bands or beds 6 ft wide and 5 ft apart overlap: a double dose there. Check both numbers, or choose whole block if you spray it all.",
    ],
    [
      () => area.rowBandsArea({ rowLengths: [ft(10), ft(0)], bandWidth: ft(1) }),
      "out-of-range",
      "rowLengths[1]",
      "Must be more than 0.",
    ],
    [
      () => area.bedsArea({ bedLengths: [ft(10), ft(0)], bedWidth: ft(1) }),
      "out-of-range",
      "bedLengths[1]",
      "Must be more than 0.",
    ],
    [
      () => area.treeRowsArea({ rowLengths: [ft(10), ft(0)], stripWidth: ft(1), sides: 1 }),
      "out-of-range",
      "rowLengths[1]",
      "Must be more than 0.",
    ],
    [
      () => area.rowBandsArea({ rowLengths: [ft(10), ft(20)], rows: 3, bandWidth: ft(1) }),
      "conflict",
      "rows",
      "The number is 3, but you entered 2 lengths. Enter one length for each.",
    ],
    [
      () => area.bedsArea({ bedLengths: [ft(10), ft(20)], beds: 3, bedWidth: ft(1) }),
      "conflict",
      "beds",
      "The number is 3, but you entered 2 lengths. Enter one length for each.",
    ],
    [
      () => area.treeRowsArea({ rowLengths: [ft(10), ft(20)], rows: 3, stripWidth: ft(1), sides: 1 }),
      "conflict",
      "rows",
      "The number is 3, but you entered 2 lengths. Enter one length for each.",
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
      'Choose a unit, such as "ft".',
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
      '"ac" is a unit for an area. Choose one for a length, such as "ft".',
    ],
    [
      () => boundary([[0, 0], undefined, [1, 1]]),
      "missing",
      "corners[1]",
      "Enter two numbers, such as [0, 120].",
    ],
    [() => boundary([[0, 0], null, [1, 1]]), "missing", "corners[1]", "Enter two numbers, such as [0, 120]."],
    [
      () =>
        boundary([
          [0, 0],
          [1, 0, 1],
          [1, 1],
        ]),
      "not-a-quantity",
      "corners[1]",
      "Enter two numbers, such as [0, 120], not a list of 3.",
    ],
    [
      () => boundary([[0, 0], { x: 1 }, [1, 1]]),
      "not-a-quantity",
      "corners[1]",
      "Enter two numbers, such as [0, 120], not an object.",
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
      "2 different corners can't enclose any ground. Enter at least 3.",
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
      "The side from corner 1 to corner 2 meets the side from corner 3 to corner 4 at (0.5, 0.5) ft. Enter the corners in the order you walk them.",
    ],
    [
      () =>
        boundary([
          [0, 0],
          [1e200, 0],
          [1e200, 1e200],
        ]),
      "out-of-range",
      "corners[1][0]",
      "Must be 1e+75 or less. (3 errors.)",
    ],
    [
      () => area.compositeArea({ add: [ground], subtract: [ground] }),
      "conflict",
      "subtract",
      "You can't cut 100 sq ft out of 100 sq ft. Some ground must be left.",
    ],
    [() => area.compositeArea({ add: [] }), "too-few", "add", 'Enter at least 1 under "add".'],
    [
      () => area.compositeArea({ add: [treated as never] }),
      "wrong-area",
      "add[0]",
      "This is treated area. Enter the ground area: the whole plot, sprayed or not.",
    ],
    [
      () => area.compositeArea({ add: [ground], subtract: [treated as never] }),
      "wrong-area",
      "subtract[0]",
      "This is treated area. Enter the ground area: the whole plot, sprayed or not.",
    ],
    [
      () =>
        area.spotsArea({
          spots: [{ count: 2, each: qty(6, "ft2") }],
          ground: { ...qty(1, "ac"), of: "treated" } as never,
        }),
      "wrong-area",
      "ground",
      "This is treated area. Enter the ground area: the whole plot, sprayed or not.",
    ],
    [
      () => area.treatedArea(ground as never),
      "wrong-area",
      "area",
      "This is ground area. Enter the treated area: only the part that is really sprayed.",
    ],
    [
      () => area.groundArea(treated as never),
      "wrong-area",
      "area",
      "This is treated area. Enter the ground area: the whole plot, sprayed or not.",
    ],
    [
      () => area.treatedFraction({ treated: { ...treated, value: 101 }, ground }),
      "conflict",
      "treated",
      "101 sq ft treated is more than the 100 sq ft of ground. Count a plot once even if you spray it twice.",
    ],
    [() => area.treatPart({ ground, fraction: 1.5 }), "out-of-range", "fraction", "Must be 1 or less."],
    [
      () => area.spotsArea({ spots: [{ count: 2, each: qty(60, "ft2") }], ground }),
      "conflict",
      "spots",
      "The spots add up to 120 sq ft, more than the 100 sq ft of ground. Check their number and size.",
    ],
    [
      () => area.spotsArea({ spots: [{ count: 2, diameter: ft(1), each: qty(1, "ft2") } as never] }),
      "conflict",
      "spots[0].each",
      "Enter diameter or each, not both.",
    ],
    [
      () => area.spotsArea({ spots: [{ count: 2, each: qty(1, "ft2"), length: ft(1) } as never] }),
      "conflict",
      "spots[0].each",
      "Enter length + width or each, not both.",
    ],
    [
      () => area.spotsArea({ spots: [{ count: 2, diameter: ft(1), width: ft(1) } as never] }),
      "conflict",
      "spots[0].width",
      "Enter diameter or length + width, not both.",
    ],
    [
      () => area.spotsArea({ spots: [{ count: 2, length: ft(1) } as never] }),
      "missing",
      "spots[0].width",
      "Enter a length, such as 5 ft.",
    ],
    [
      () => area.spotsArea({ spots: [{ count: 2, width: ft(1) } as never] }),
      "missing",
      "spots[0].length",
      "Enter a length, such as 5 ft.",
    ],
    [
      () => area.spotsArea({ spots: [{ count: 2 } as never] }),
      "missing",
      "spots[0]",
      "Enter one of: diameter, length + width, each.",
    ],
    [
      () => area.spotsArea({ spots: [{ count: 2, each: null } as never] }),
      "missing",
      "spots[0]",
      "Enter one of: diameter, length + width, each.",
    ],
    [
      () => area.spotsArea({ spots: [{ count: 2, diameter: ft(1) }, { count: 1, each: ft(1) } as never] }),
      "wrong-dimension",
      "spots[1].each",
      "1 ft is a length. Enter an area, such as 5 sq ft.",
    ],
    [
      () => area.triangleArea({ sides: [ft(1), ft(2), ft(4)] }),
      "conflict",
      "sides",
      "Sides of 4 ft, 2 ft and 1 ft don't meet. Each side must be shorter than the other two together.",
    ],
    [
      () => area.offsetsArea({ offsets: [ft(1), ft(2)], spacing: ft(1), rule: "simpson" }),
      "too-few",
      "offsets",
      'Enter at least 3 under "offsets".',
    ],
    [
      () => area.offsetsArea({ offsets: [ft(0), ft(0)], spacing: ft(1), rule: "trapezoidal" }),
      "out-of-range",
      "offsets",
      "All offsets are 0. Enter the widths of the plot.",
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
      "Must be farther along than the station before it, at 0.",
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
      "Must be 0 or more.",
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
      "All offsets are 0. Enter the widths of the plot.",
    ],
    [
      () => area.rectangleArea({ length: ft(1e200), width: ft(1e200) }),
      "not-finite",
      "length",
      "This is too large to compute with. (2 errors.)",
    ],
    [
      () => area.rectangleArea({ length: ft(1e-200), width: ft(1e-200) }),
      "out-of-range",
      "length",
      "This is too small to compute with. (2 errors.)",
    ],
    [
      () => area.ringArea({ outerDiameter: ft(10), innerDiameter: ft(10) }),
      "conflict",
      "innerDiameter",
      "Must be less than the outer diameter of 10 ft.",
    ],
    [
      () => area.sectorArea({ radius: ft(10), angleDegrees: 361 }),
      "out-of-range",
      "angleDegrees",
      "Must be 360 or less.",
    ],
  ])("%s", (call, code, path, message) => {
    const error = refusal(call);
    expect({ code: error.code, path: error.path, message: error.message }).toEqual({ code, path, message });
  });
});
