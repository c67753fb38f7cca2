import { describe, expect, it } from "vitest";
import {
  bandsWidth,
  boomWidth,
  effectiveWidth,
  treeRowWidth,
  widthPerNozzle,
} from "../../../src/swath/index.ts";
import { convert, qty } from "../../../src/units/index.ts";
import {
  bandsWidth as bandsWidthLines,
  boomWidth as boomWidthLines,
  effectiveWidth as effectiveWidthLines,
  treeRowWidth as treeRowWidthLines,
  widthPerNozzle as widthPerNozzleLines,
} from "../../../src/working/index.ts";
import { refusesMisuse } from "../../helpers/bad-input.ts";
import { expectRefused } from "../../helpers/refusal.ts";
import { expectLinesTrue } from "../../helpers/working.ts";

const inches = (value: number) => qty(value, "in");
const ft = (value: number) => qty(value, "ft");
const m = (value: number) => qty(value, "m");

describe("the width of a pass", () => {
  it("is nozzles by spacing for a boom", () => {
    expect(boomWidth({ nozzles: 12, nozzleSpacing: inches(20) })).toEqual(ft(20));
    // Spray Application Manual, Grains Research and Development Corporation, module 8.3: a spacing of 20 inches is 50.8 cm,
    // and a chart for 50 cm is wrong by 1.6 per cent.
    const real = boomWidth({ nozzles: 48, nozzleSpacing: qty(50.8, "cm") }).value;
    const chart = boomWidth({ nozzles: 48, nozzleSpacing: qty(50, "cm") }).value;
    expect(real / chart - 1).toBeCloseTo(0.016, 12);
  });

  it("is two widths for bands: what is treated, and the ground below", () => {
    const bands = { bands: 4, bandWidth: inches(12), rowSpacing: inches(30) };
    expect(bandsWidth(bands)).toEqual({ treated: ft(4), ground: ft(10) });
    expect(bandsWidth({ bands: 4, bandWidth: inches(12) })).toEqual({ treated: ft(4) });
    const solid = bandsWidth({ bands: 4, bandWidth: qty(76.2, "cm"), rowSpacing: inches(30) });
    expect(solid.treated).toEqual(solid.ground);
  });

  it("is shared by the nozzles of a row", () => {
    expect(convert(widthPerNozzle({ width: inches(15), nozzles: 3 }), "in").value).toBeCloseTo(5, 12);
    expect(widthPerNozzle({ width: boomWidth({ nozzles: 8, nozzleSpacing: m(0.5) }), nozzles: 8 })).toEqual(
      m(0.5),
    );
  });

  it("is half a row spacing for each open side between rows of trees", () => {
    expect(treeRowWidth({ rowSpacing: ft(16), sides: 2 })).toEqual(ft(16));
    expect(treeRowWidth({ rowSpacing: ft(16), sides: 1 })).toEqual(ft(8));
  });

  it("is the measured width less the overlap, told as a length or as a part", () => {
    expect(effectiveWidth({ width: ft(5), overlap: inches(6) })).toEqual(ft(4.5));
    expect(effectiveWidth({ width: m(4), overlap: qty(25, "%") })).toEqual(m(3));
    expect(effectiveWidth({ width: m(4), overlap: qty(0, "%") })).toEqual(m(4));
    expect(effectiveWidth({ width: m(4), overlap: m(0) })).toEqual(m(4));
  });

  it("comes in feet or metres as the first length is told", () => {
    expect(boomWidth({ nozzles: 1, nozzleSpacing: qty(50, "cm") }).unit).toBe("m");
    expect(bandsWidth({ bands: 1, bandWidth: qty(1, "yd") }).treated.unit).toBe("ft");
  });

  it("has working that is true and ends at its own result", () => {
    const all = [
      [boomWidth, boomWidthLines, { nozzles: 7, nozzleSpacing: inches(19) }],
      [widthPerNozzle, widthPerNozzleLines, { width: inches(15), nozzles: 4 }],
      [treeRowWidth, treeRowWidthLines, { rowSpacing: qty(12, "yd"), sides: 1 }],
      [effectiveWidth, effectiveWidthLines, { width: ft(5), overlap: qty(20, "cm") }],
      [effectiveWidth, effectiveWidthLines, { width: qty(60, "in"), overlap: qty(15, "%") }],
    ] as const;
    for (const [width, working, input] of all) {
      const lines = working(input as never);
      expectLinesTrue(lines);
      expect(lines.at(-1)?.result).toEqual(width(input as never));
    }
    const bands = { bands: 4, bandWidth: qty(30, "cm"), rowSpacing: inches(30) };
    const lines = bandsWidthLines(bands);
    expectLinesTrue(lines);
    expect(lines.at(-1)?.result).toEqual(bandsWidth(bands).treated);
    expect(lines.find(({ id }) => id === "swath.bands.ground")?.result).toEqual(bandsWidth(bands).ground);
    const alone = { bands: 4, bandWidth: qty(30, "cm") };
    expect(bandsWidthLines({ ...alone, rowSpacing: null } as never)).toEqual(bandsWidthLines(alone));
    expect(bandsWidthLines(alone).map(({ id }) => id)).toEqual(["units.convert", "swath.bands.treated"]);
    expect(bandsWidthLines(alone).at(-1)?.result).toEqual(bandsWidth(alone).treated);
  });
});

describe("widths that cannot be", () => {
  it("are bands wider than their spacing", () => {
    const wide = { bands: 2, bandWidth: inches(31), rowSpacing: inches(30) };
    expectRefused(() => bandsWidth(wide), "conflict", "bandWidth", "overlap");
  });

  it("are parts of a nozzle, no nozzles, and sides other than one or two", () => {
    expectRefused(() => boomWidth({ nozzles: 2.5, nozzleSpacing: inches(20) }), "out-of-range", "nozzles");
    expectRefused(() => boomWidth({ nozzles: 0, nozzleSpacing: inches(20) }), "out-of-range", "nozzles");
    expectRefused(() => treeRowWidth({ rowSpacing: ft(16), sides: 0 as never }), "unknown-choice", "sides");
    expectRefused(() => treeRowWidth({ rowSpacing: ft(16) } as never), "missing", "sides");
  });

  it("are overlaps as wide as the pass, negative ones, and other dimensions", () => {
    // One width in two units: a conversion may leave the overlap a hair short of it.
    for (const [width, overlap] of [
      [ft(1), inches(12)],
      [inches(12), ft(1)],
    ] as const)
      expectRefused(() => effectiveWidth({ width, overlap }), "out-of-range", "overlap");
    const of = (overlap: unknown) => () => effectiveWidth({ width: ft(5), overlap: overlap as never });
    expectRefused(of(ft(5)), "out-of-range", "overlap", "whole pass");
    expectRefused(of(qty(100, "%")), "out-of-range", "overlap");
    expectRefused(of(ft(-1)), "out-of-range", "overlap");
    expectRefused(of(qty(-1, "%")), "out-of-range", "overlap");
    expectRefused(of(qty(1, "gal")), "wrong-dimension", "overlap");
  });

  it("are those beyond the range of numbers", () => {
    expectRefused(
      () => boomWidth({ nozzles: 1000, nozzleSpacing: ft(1e306) }),
      "not-finite",
      "nozzleSpacing",
    );
    expectRefused(() => widthPerNozzle({ width: ft(5e-324), nozzles: 3 }), "out-of-range", "width");
  });
});

refusesMisuse("boomWidth", boomWidth, { nozzles: 2, nozzleSpacing: ft(2) }, ["nozzles", "nozzleSpacing"]);
refusesMisuse("bandsWidth", bandsWidth, { bands: 2, bandWidth: ft(1), rowSpacing: ft(2) }, [
  "bands",
  "bandWidth",
  "rowSpacing",
]);
refusesMisuse("widthPerNozzle", widthPerNozzle, { width: ft(2), nozzles: 2 }, ["width", "nozzles"]);
refusesMisuse("treeRowWidth", treeRowWidth, { rowSpacing: ft(2), sides: 2 }, ["rowSpacing", "sides"]);
refusesMisuse("effectiveWidth", effectiveWidth, { width: ft(2), overlap: ft(1) }, ["width", "overlap"]);
