import { describe, expect, it } from "vitest";
import { geodesicArea } from "../../../src/area/geodesic.ts";
import * as area from "../../../src/area/index.ts";
import { qty } from "../../../src/units/index.ts";
import { expectRefused, refusal } from "../../helpers/refusal.ts";

const ft = (value: number) => qty(value, "ft");
const ground = { value: 100, unit: "ft2", of: "ground" } as const;
const rows = { rows: 2, rowLength: ft(10), bandWidth: ft(1) };
const beds = { beds: 2, bedLength: ft(10), bedWidth: ft(1) };
const trees = { rows: 2, rowLength: ft(10), stripWidth: ft(1), sides: 2 } as const;
const corners = [
  [0, 0],
  [200, 0],
  [200, 120],
] as const;

const faults = (work: () => unknown): (readonly [string, string])[] =>
  refusal(work).issues.map(({ key, path }) => [key, path] as const);

describe("what area is given", () => {
  it.each<[string, (more: object) => unknown]>([
    ["rectangleArea", (more) => area.rectangleArea({ length: ft(1), width: ft(1), ...more })],
    ["triangleArea", (more) => area.triangleArea({ base: ft(1), height: ft(1), ...more })],
    ["triangleArea by sides", (more) => area.triangleArea({ sides: [ft(1), ft(1), ft(1)], ...more })],
    ["trapezoidArea", (more) => area.trapezoidArea({ base: ft(1), top: ft(1), height: ft(1), ...more })],
    ["circleArea", (more) => area.circleArea({ diameter: ft(1), ...more })],
    ["ellipseArea", (more) => area.ellipseArea({ length: ft(1), width: ft(1), ...more })],
    ["ringArea", (more) => area.ringArea({ outerDiameter: ft(2), innerDiameter: ft(1), ...more })],
    ["sectorArea", (more) => area.sectorArea({ radius: ft(2), angleDegrees: 9, ...more })],
    [
      "offsetsArea",
      (more) => area.offsetsArea({ offsets: [ft(1)], spacing: ft(1), rule: "mid-strip", ...more }),
    ],
    [
      "unequalOffsetsArea",
      (more) =>
        area.unequalOffsetsArea({ stations: corners.slice(0, 2).map(([x]) => [x, 1]), unit: "m", ...more }),
    ],
    ["boundaryArea", (more) => area.boundaryArea({ corners, unit: "m", ...more })],
    ["compositeArea", (more) => area.compositeArea({ add: [ground], ...more })],
    ["rowBandsArea", (more) => area.rowBandsArea({ ...rows, ...more })],
    [
      "rowBandsArea by lengths",
      (more) => area.rowBandsArea({ rowLengths: [ft(1)], bandWidth: ft(1), ...more }),
    ],
    ["bedsArea", (more) => area.bedsArea({ ...beds, ...more })],
    ["treeRowsArea", (more) => area.treeRowsArea({ ...trees, ...more })],
    ["spotsArea", (more) => area.spotsArea({ spots: [{ count: 1, each: qty(1, "ft2") }], ...more })],
    ["treatPart", (more) => area.treatPart({ ground, fraction: 0.5, ...more })],
    [
      "treatedFraction",
      (more) => area.treatedFraction({ ground, treated: { ...ground, of: "treated" }, ...more }),
    ],
    ["rowLengthOn", (more) => area.rowLengthOn({ ground, rowSpacing: ft(1), ...more })],
    ["plantCount", (more) => area.plantCount({ ground, rowSpacing: ft(1), plantSpacing: ft(1), ...more })],
    [
      "cropRate",
      (more) =>
        area.cropRate({ treatedRate: qty(1, "gal/ac"), bandWidth: ft(1), rowSpacing: ft(2), ...more }),
    ],
    [
      "treatedRate",
      (more) =>
        area.treatedRate({ cropRate: qty(1, "gal/ac"), bandWidth: ft(1), rowSpacing: ft(2), ...more }),
    ],
  ])("%s refuses a field that it does not know, and takes none that is not given", (_, call) => {
    expectRefused(() => call({ color: "red" }), "unknown-field", "color");
    expect(call({ color: undefined })).toEqual(call({}));
    expect(call({ color: null })).toEqual(call({}));
  });

  it("is refused with every fault, at any depth", () => {
    expect(
      faults(() =>
        area.rowBandsArea({ ...rows, rows: 0, rowLength: qty(1, "gal"), bandwidth: ft(1) } as never),
      ),
    ).toEqual([
      ["whole-number", "rows"],
      ["dimension", "rowLength"],
      ["field-unknown", "bandwidth"],
    ]);
    const spots = [
      { count: 0, diameter: ft(1), shape: "round" },
      { count: 1, length: { ...ft(1), units: "ft" } },
    ];
    expect(faults(() => area.spotsArea({ spots } as never))).toEqual([
      ["whole-number", "spots[0].count"],
      ["field-unknown", "spots[0].shape"],
      ["field-unknown", "spots[1].length.units"],
      ["enter-quantity", "spots[1].width"],
    ]);
    expect(
      faults(() => area.boundaryArea({ corners: [[0, "1"], [1], [2, 2]], unit: "gal" } as never)),
    ).toEqual([
      ["number-not-text", "corners[0][1]"],
      ["list-of-so-many", "corners[1]"],
      ["unit-dimension", "unit"],
    ]);
  });

  it("is looked at together also where another part is at fault", () => {
    const crossed = [
      [0, 0],
      [1, 1],
      [1, 0],
      [0, 1],
    ] as const;
    expect(faults(() => area.boundaryArea({ corners: crossed, unit: "gal" as never }))).toEqual([
      ["unit-dimension", "unit"],
      ["boundary-crosses", "corners[2]"],
    ]);
    expect(faults(() => area.bedsArea({ ...beds, beds: -1, bedWidth: ft(5), bedSpacing: ft(4) }))).toEqual([
      ["whole-number", "beds"],
      ["bands-overlap", "bedWidth"],
    ]);
    expect(
      faults(() =>
        area.unequalOffsetsArea({
          stations: [
            [0, 0],
            [2, 0],
            [1, 0],
          ],
          unit: "m",
        }),
      ),
    ).toEqual([
      ["station-not-farther", "stations[2][0]"],
      ["offsets-zero", "stations"],
    ]);
  });

  it("may be null or undefined where it is optional", () => {
    expect(area.rowBandsArea({ ...rows, rowSpacing: null, rowLengths: null } as never)).toEqual(
      area.rowBandsArea(rows),
    );
    expect(area.bedsArea({ ...beds, bedSpacing: undefined, bedLengths: null } as never)).toEqual(
      area.bedsArea(beds),
    );
    expect(area.treeRowsArea({ ...trees, rowSpacing: null } as never)).toEqual(area.treeRowsArea(trees));
    expect(area.compositeArea({ add: [ground], subtract: null } as never)).toEqual(ground);
    expect(
      area.spotsArea({ spots: [{ count: 1, each: qty(1, "ft2"), diameter: null }], ground: null } as never),
    ).toEqual({ treated: { value: 1, unit: "ft2", of: "treated" } });
    expect(area.triangleArea({ base: ft(2), height: ft(1), sides: null } as never).value).toBe(1);
    expectRefused(() => area.triangleArea({ sides: null } as never), "missing", "base");
    expectRefused(
      () => area.rowBandsArea({ rowLengths: null, bandWidth: ft(1) } as never),
      "missing",
      "rows",
    );
  });

  it("is not shared with the result, and not changed", () => {
    const given = Object.freeze({ ...ground });
    const marked = area.groundArea(given);
    expect(marked).toEqual(given);
    expect(marked).not.toBe(given);
    const spots = Object.freeze([Object.freeze({ count: 1, each: Object.freeze(qty(1, "ft2")) })]);
    const found = area.spotsArea({ spots, ground: given });
    expect(found.ground).toEqual(given);
    expect(found.ground).not.toBe(given);
    expect(area.treatAll(given)).toEqual({ value: 100, unit: "ft2", of: "treated" });
  });

  it("is up to so many rows, spots, shapes, corners and places", () => {
    const many = <T>(count: number, one: T): T[] => Array.from({ length: count }, () => one);
    const round = (count: number) =>
      Array.from({ length: count }, (_, i) => {
        const angle = (2 * Math.PI * i) / count;
        return [7 + 0.01 * Math.cos(angle), 50 + 0.01 * Math.sin(angle)] as const;
      });
    expect(area.rowBandsArea({ rowLengths: many(10_000, ft(1)), bandWidth: ft(1) }).treated.value).toBe(
      10_000,
    );
    expect(area.boundaryArea({ corners: round(10_000), unit: "ft" }).value).toBeCloseTo(Math.PI / 1e4, 8);
    expect(geodesicArea({ type: "Polygon", coordinates: [round(20_000)] }).ground.value).toBeGreaterThan(2e6);
    for (const [call, path] of [
      [() => area.rowBandsArea({ rowLengths: many(10_001, ft(1)), bandWidth: ft(1) }), "rowLengths"],
      [() => area.bedsArea({ bedLengths: many(10_001, ft(1)), bedWidth: ft(1) }), "bedLengths"],
      [() => area.spotsArea({ spots: many(1001, { count: 1, diameter: ft(1) }) }), "spots"],
      [() => area.compositeArea({ add: many(1001, ground) }), "add"],
      [
        () => area.offsetsArea({ offsets: many(10_001, ft(1)), spacing: ft(1), rule: "mid-strip" }),
        "offsets",
      ],
      [() => area.boundaryArea({ corners: round(10_001), unit: "ft" }), "corners"],
      [() => geodesicArea({ type: "Polygon", coordinates: [round(20_001)] }), "coordinates"],
    ] as const)
      expectRefused(call, "out-of-range", path, "at most");
  });
});

describe("GeoJSON", () => {
  it("may have members that are not needed", () => {
    const coordinates = [corners.map(([x, y]) => [x / 1e4, y / 1e4])];
    const plain = { type: "Polygon", coordinates } as const;
    const { ground } = geodesicArea(plain);
    const rich = { ...plain, bbox: [0, 0, 1, 1], crs: null };
    expect(geodesicArea(rich).ground).toEqual(ground);
    const feature = { type: "Feature", id: 7, properties: { name: "Home field" }, geometry: rich } as const;
    expect(geodesicArea(feature).ground).toEqual(ground);
  });

  it("is refused with every fault of its places", () => {
    const wrong = [
      [
        [7, 50],
        [400, "x"],
        [7, -91],
      ],
    ];
    expect(
      faults(() =>
        geodesicArea({ type: "Feature", geometry: { type: "Polygon", coordinates: wrong } } as never),
      ),
    ).toEqual([
      ["at-most", "geometry.coordinates[0][1][0]"],
      ["number-not-text", "geometry.coordinates[0][1][1]"],
      ["latitude", "geometry.coordinates[0][2][1]"],
    ]);
  });
});
