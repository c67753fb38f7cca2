import { describe, expect, it } from "vitest";
import { type GeoJsonPolygon, geodesicArea } from "../../../src/area/geodesic.ts";
import { boundaryArea } from "../../../src/area/index.ts";
import { valueIn } from "../../../src/units/index.ts";
import { expectRefused } from "../../helpers/refusal.ts";

type Ring = readonly (readonly number[])[];

const polygon = (...coordinates: readonly Ring[]): GeoJsonPolygon => ({ type: "Polygon", coordinates });
/** The sources write latitude first. */
const latitudeFirst = (...corners: readonly (readonly [number, number])[]): Ring =>
  corners.map(([latitude, longitude]) => [longitude, latitude]);
const square = (x: number, y: number, side: number): Ring => [
  [x, y],
  [x + side, y],
  [x + side, y + side],
  [x, y + side],
];

describe("geodesicArea, against published areas on WGS 84", () => {
  // GeographicLib documentation, JavaScript examples, "Measuring areas".
  const antarctica = latitudeFirst(
    [-63.1, -58],
    [-72.9, -74],
    [-71.9, -102],
    [-74.9, -102],
    [-74.3, -131],
    [-77.5, -163],
    [-77.4, 163],
    [-71.7, 172],
    [-65.9, 140],
    [-65.7, 113],
    [-66.6, 88],
    [-66.9, 59],
    [-69.8, 25],
    [-70.0, -4],
    [-71.0, -14],
    [-77.3, -33],
    [-77.9, -46],
    [-74.7, -61],
  );

  // Antarctica goes round a pole and over the antimeridian. The others: GeographicLib test suite, cases Planimeter0 and
  // Planimeter5, made for faults at the poles.
  it.each([
    ["Antarctica", antarctica, 16831067.893, 0.0005, 13662703680020.1, 0.05],
    [
      "a degree round the north pole",
      latitudeFirst([89, 0], [89, 90], [89, 180], [89, 270]),
      631819.8745,
      1e-4,
      24952305678,
      1,
    ],
    [
      "a degree round the south pole",
      latitudeFirst([-89, 0], [-89, 90], [-89, 180], [-89, 270]),
      631819.8745,
      1e-4,
      24952305678,
      1,
    ],
    [
      "a diamond on the equator",
      latitudeFirst([0, -1], [-1, 0], [0, 1], [1, 0]),
      627598.2731,
      1e-4,
      24619419146,
      1,
    ],
    ["an eighth of the earth", latitudeFirst([90, 0], [0, 0], [0, 90]), 30022685, 1, 63758202715511, 1],
    ["a side over the pole", latitudeFirst([89, 0.1], [89, 90.1], [89, -179.9]), 539297, 1, 12476152838.5, 1],
  ] as const)("gives %s", (_, ring, perimeter, nearPerimeter, area, nearArea) => {
    const ours = geodesicArea(polygon(ring));
    expect(Math.abs(ours.perimeter.value - perimeter)).toBeLessThanOrEqual(nearPerimeter);
    expect(Math.abs(ours.ground.value - area)).toBeLessThanOrEqual(nearArea);
    expect(ours.ground).toMatchObject({ unit: "m2", of: "ground" });
    expect(ours.perimeter.unit).toBe("m");
  });
});

describe("geodesicArea", () => {
  const plot = square(7, 50, 0.001);
  const { ground, perimeter } = geodesicArea(polygon(plot));

  it("closes open rings, takes either winding, and starts anywhere", () => {
    for (const ring of [
      [...plot, plot[0] as readonly number[]],
      [...plot].reverse(),
      [...plot.slice(2), ...plot.slice(0, 2)],
      [plot[0] as readonly number[], ...plot],
    ]) {
      expect(geodesicArea(polygon(ring)).ground.value).toBeCloseTo(ground.value, 6);
      expect(geodesicArea(polygon(ring)).perimeter.value).toBeCloseTo(perimeter.value, 6);
    }
  });

  it("ignores a height behind longitude and latitude", () => {
    expect(geodesicArea(polygon(plot.map(([x = 0, y = 0]) => [x, y, 312]))).ground).toEqual(ground);
  });

  it("takes holes out, and adds their edge to the perimeter", () => {
    const hole = square(7.0002, 50.0002, 0.0001);
    const alone = geodesicArea(polygon(hole));
    const both = geodesicArea(polygon(plot, hole));
    expect(both.ground.value).toBeCloseTo(ground.value - alone.ground.value, 6);
    expect(both.perimeter.value).toBeCloseTo(perimeter.value + alone.perimeter.value, 6);
    expect(geodesicArea(polygon(plot, [...hole].reverse())).ground).toEqual(both.ground);
  });

  it("adds up the polygons of a MultiPolygon, and looks into a Feature", () => {
    const other = square(7.01, 50, 0.001);
    const multi = { type: "MultiPolygon", coordinates: [[plot], [other]] } as const;
    expect(geodesicArea(multi).ground.value).toBeCloseTo(2 * ground.value, 4);
    const feature = { type: "Feature", properties: { name: "Home field" }, geometry: polygon(plot) } as const;
    expect(geodesicArea(feature).ground).toEqual(ground);
    expect(geodesicArea({ type: "Feature", geometry: multi }).ground).toEqual(geodesicArea(multi).ground);
  });

  it("gives one area on both sides of the antimeridian, written either way", () => {
    const here = geodesicArea(polygon(square(9.9995, 10, 0.001))).ground.value;
    const across: Ring = [
      [179.9995, 10],
      [-179.9995, 10],
      [-179.9995, 10.001],
      [179.9995, 10.001],
    ];
    expect(geodesicArea(polygon(across)).ground.value).toBeCloseTo(here, 4);
    expect(geodesicArea(polygon(square(179.9995, 10, 0.001))).ground.value).toBeCloseTo(here, 4);
  });

  it.each([0, 30, 60, -45])("agrees with the plane on a small plot at latitude %s", (latitude) => {
    // The length of a degree of longitude and of latitude on WGS 84, from its radii of curvature (J. P. Snyder, Map
    // Projections: A Working Manual, USGS Professional Paper 1395, 1987, equations 4-18 and 4-21).
    const [a, e2] = [6378137, 0.00669437999014];
    const sin2 = Math.sin((latitude * Math.PI) / 180) ** 2;
    const north = ((Math.PI / 180) * (a * (1 - e2))) / (1 - e2 * sin2) ** 1.5;
    const east = ((Math.PI / 180) * (a * Math.cos((latitude * Math.PI) / 180))) / Math.sqrt(1 - e2 * sin2);
    const degrees: Ring = [
      [0, 0],
      [0.0012, 0.0001],
      [0.0014, 0.0009],
      [0.0006, 0.0014],
      [-0.0002, 0.0008],
    ];
    const corners = degrees.map(([x = 0, y = 0]) => [x * east, y * north] as const);
    const plane = boundaryArea({ corners, unit: "m" }).value;
    const ours = geodesicArea(polygon(degrees.map(([x = 0, y = 0]) => [12 + x, latitude + y]))).ground.value;
    expect(Math.abs(ours / plane - 1)).toBeLessThan(5e-5);
  });

  // A plot like an L on a field of 5 by 5 squares: the two lower rows and the two left columns.
  it.each([
    ["in the middle of a country", 7, 50],
    ["south and west", -170, -40],
    ["across the antimeridian", 179.9975, 10],
    ["across the equator and the first meridian", -0.0025, -0.0025],
    ["near the pole", 30, 89.9],
  ])("knows a hole in the plot from one in its corner: %s", (_, x, y) => {
    // Turned a little, so that no side runs with a meridian.
    const at = (column: number, row: number): readonly number[] => [
      x + (0.8 * column - 0.6 * row) / 1000,
      y + (0.6 * column + 0.8 * row) / 1000,
    ];
    const plot = [at(0, 0), at(5, 0), at(5, 2), at(2, 2), at(2, 5), at(0, 5)];
    for (let column = 0; column < 5; column++) {
      for (let row = 0; row < 5; row++) {
        const [left, lower] = [column + 0.25, row + 0.3];
        const hole = [
          at(left, lower),
          at(left + 0.5, lower),
          at(left + 0.5, lower + 0.4),
          at(left, lower + 0.4),
        ];
        const shape = polygon(plot, hole);
        if (column < 2 || row < 2) expect(geodesicArea(shape).ground.value).toBeGreaterThan(0);
        else expectRefused(() => geodesicArea(shape), "conflict", "coordinates[1]", "outside its plot");
      }
    }
  });

  it("looks at rings up to a degree from their middle, and at no larger ones", () => {
    const crossed = (size: number): GeoJsonPolygon =>
      polygon([
        [7, 1],
        [7 + size, 1 + size],
        [7 + size, 1],
        [7, 1 + size / 2],
      ]);
    expectRefused(() => geodesicArea(crossed(1.2)), "conflict", "coordinates[0][2]");
    expect(geodesicArea(crossed(2.4)).ground.value).toBeGreaterThan(0);
  });

  it("takes a longitude all round the earth, written as 360", () => {
    const here = geodesicArea(polygon(square(-0.001, 50, 0.001))).ground.value;
    expect(geodesicArea(polygon(square(359.999, 50, 0.001))).ground.value).toBeCloseTo(here, 4);
  });

  it("takes a hole out of ground too large to be looked at on a plane", () => {
    const country = square(7, 50, 5);
    const lake = square(8, 51, 0.5);
    const [all, out] = [country, lake].map((ring) => geodesicArea(polygon(ring)).ground.value) as [
      number,
      number,
    ];
    expect(geodesicArea(polygon(country, lake)).ground.value).toBeCloseTo(all - out, 0);
  });

  it("finds no ground between places whose directions cancel out", () => {
    const round: Ring = [
      [0, 0],
      [180, 0],
      [0, 0],
      [-180, 0],
    ];
    expectRefused(() => geodesicArea(polygon(round)), "not-finite", "", "too large or too small");
  });

  it("measures a degree square as large as a degree square is", () => {
    // About 111 km a side on the equator (from memory).
    expect(valueIn(geodesicArea(polygon(square(0, 0, 1))).ground, "km2")).toBeCloseTo(12309, -1);
  });
});

describe("geodesicArea refuses", () => {
  const of =
    (...rings: unknown[]) =>
    () =>
      geodesicArea({ type: "Polygon", coordinates: rings } as never);
  const plot = square(7, 50, 0.001);

  it("a latitude past 90, with a hint at the order", () => {
    expectRefused(
      of([
        [50, 7],
        [50, 91],
        [51, 7],
      ]),
      "out-of-range",
      "coordinates[0][1][1]",
      "longitude first",
    );
    expectRefused(
      of([
        [361, 7],
        [50, 9],
        [51, 7],
      ]),
      "out-of-range",
      "coordinates[0][0][0]",
    );
  });

  it("rings that cross or touch themselves, at the pole and the antimeridian too", () => {
    expectRefused(
      of([
        [7, 50],
        [7.001, 50.001],
        [7.001, 50],
        [7, 50.001],
      ]),
      "conflict",
      "coordinates[0][2]",
      "The side from place 0 to 1 meets the one from 2 to 3 (counted from 0). Enter the places in the order you walk them.",
    );
    const across = [
      [179.999, 10],
      [-179.999, 10.001],
      [-179.999, 10],
      [179.999, 10.001],
    ];
    expectRefused(of(across), "conflict", "coordinates[0][2]");
    const pole = [
      [0, 89.99],
      [180, 89.99],
      [90, 89.99],
      [270, 89.99],
    ];
    expectRefused(of(pole), "conflict", "coordinates[0][2]");
  });

  it("holes outside their plot, and holes as large as it", () => {
    expectRefused(of(plot, square(7.01, 50, 0.0001)), "conflict", "coordinates[1]", "outside its plot");
    expectRefused(of(plot, square(27, 10, 0.0001)), "conflict", "coordinates[1]", "outside its plot");
    expectRefused(
      of(square(7.0002, 50.0002, 0.0005), plot),
      "conflict",
      "coordinates[1]",
      "outside its plot",
    );
    const half = [square(7.0001, 50.0001, 0.0008), square(7.00005, 50.00005, 0.0009)];
    expectRefused(of(plot, ...half), "conflict", "coordinates", "as large as the plot");
  });

  it("holes on the other side of the earth, where a plane shows them in the plot", () => {
    expectRefused(of(square(0, 0, 0.01), square(-179.997, -0.007, 0.004)), "conflict", "coordinates[1]");
  });

  it("holes at their place in a feature, and in one of several polygons", () => {
    const [out, geometry] = [square(7.01, 50, 0.0001), polygon(plot, square(7.01, 50, 0.0001))];
    expectRefused(
      () => geodesicArea({ type: "Feature", geometry } as never),
      "conflict",
      "geometry.coordinates[1]",
    );
    const coordinates = [[plot], [plot, out]];
    expectRefused(
      () => geodesicArea({ type: "MultiPolygon", coordinates } as never),
      "conflict",
      "coordinates[1][1]",
    );
    expectRefused(
      () => geodesicArea({ type: "Feature", geometry: { type: "MultiPolygon", coordinates } } as never),
      "conflict",
      "geometry.coordinates[1][1]",
    );
  });

  it("rings of fewer than three places, and empty lists", () => {
    expectRefused(
      of([
        [7, 50],
        [7.001, 50],
        [7, 50],
      ]),
      "too-few",
      "coordinates[0]",
      "2 different places",
    );
    expectRefused(of([[7, 50]]), "too-few", "coordinates[0]");
    expectRefused(of(), "too-few", "coordinates");
    expectRefused(() => geodesicArea({ type: "MultiPolygon", coordinates: [] }), "too-few", "coordinates");
    expectRefused(
      () => geodesicArea({ type: "MultiPolygon", coordinates: [[]] }),
      "too-few",
      "coordinates[0]",
    );
  });

  it("other GeoJSON, and what is none", () => {
    expectRefused(
      () => geodesicArea({ type: "Point", coordinates: [7, 50] } as never),
      "unknown-choice",
      "type",
    );
    expectRefused(() => geodesicArea({ coordinates: [plot] } as never), "missing", "type");
    expectRefused(() => geodesicArea(null as never), "missing", "");
    expectRefused(() => geodesicArea("{}" as never), "not-a-quantity", "");
    expectRefused(() => geodesicArea({ type: "Polygon" } as never), "missing", "coordinates");
    expectRefused(() => geodesicArea({ type: "Feature", geometry: null } as never), "missing", "geometry");
    const line = { type: "Feature", geometry: { type: "LineString", coordinates: plot } };
    expectRefused(() => geodesicArea(line as never), "unknown-choice", "geometry.type");
    const bad = {
      type: "Feature",
      geometry: {
        type: "Polygon",
        coordinates: [
          [
            [7, 50],
            [7, "50"],
            [8, 50],
          ],
        ],
      },
    };
    expectRefused(() => geodesicArea(bad as never), "not-a-quantity", "geometry.coordinates[0][1][1]");
  });

  it("places that are no pairs of finite numbers", () => {
    expectRefused(of([[7, 50], [7], [8, 50]]), "not-a-quantity", "coordinates[0][1]");
    expectRefused(of([[7, 50], null, [8, 50]]), "missing", "coordinates[0][1]");
    expectRefused(of([[7, 50], { lon: 7, lat: 51 }, [8, 50]]), "not-a-quantity", "coordinates[0][1]");
    expectRefused(
      of([
        [7, 50],
        [Number.NaN, 51],
        [8, 50],
      ]),
      "not-finite",
      "coordinates[0][1][0]",
    );
    expectRefused(of("ring"), "not-a-quantity", "coordinates[0]");
    expectRefused(of([[7, 50], undefined, [8, 50]]), "missing", "coordinates[0][1]", "[longitude, latitude]");
    expectRefused(of([[7, 50], [7], [8, 50]]), "not-a-quantity", "coordinates[0][1]", "not a list of 1.");
    expectRefused(of([[7, 50], "x", [8, 50]]), "not-a-quantity", "coordinates[0][1]", 'not "x".');
  });
});
