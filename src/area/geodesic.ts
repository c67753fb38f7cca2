import geographiclib from "geographiclib-geodesic";
import { SprayMathError, shown, within } from "../errors.js";
import { checkedChoice, checkedList, checkedObject } from "../units/guard.js";
import { checkNumber } from "../units/shape.js";
import type { GroundArea, Length } from "../units/types.js";
import { ringCorners } from "./corners.js";
import { type Corner, findCrossing } from "./crossing.js";
import { madeGround } from "./made.js";

/** A place as GeoJSON writes it: longitude first, then latitude, in degrees on WGS 84; a height after them is ignored. */
export type GeoJsonPosition = readonly number[];

/** A GeoJSON polygon: one plot, its holes after it (RFC 7946, section 3.1.6). */
export interface GeoJsonPolygon {
  /** What it is. */
  readonly type: "Polygon";
  /** The outer ring, then the rings of the holes. */
  readonly coordinates: readonly (readonly GeoJsonPosition[])[];
}

/** Several GeoJSON polygons as one plot; they must not overlap (RFC 7946, section 3.1.7). */
export interface GeoJsonMultiPolygon {
  /** What it is. */
  readonly type: "MultiPolygon";
  /** The coordinates of each polygon. */
  readonly coordinates: readonly (readonly (readonly GeoJsonPosition[])[])[];
}

/** A GeoJSON feature with a polygon or several as its shape (RFC 7946, section 3.2); its properties are not looked at. */
export interface GeoJsonFeature {
  /** What it is. */
  readonly type: "Feature";
  /** Its shape. */
  readonly geometry: GeoJsonPolygon | GeoJsonMultiPolygon;
}

/** What a boundary on the earth encloses. */
export interface GeodesicArea {
  /** The ground inside, holes taken out; in m². */
  readonly ground: GroundArea;
  /** The length of all rings together, those of the holes included; in m. */
  readonly perimeter: Length;
}

/**
 * The ground area inside a boundary that was walked with a phone or drawn on a map: a GeoJSON Polygon or MultiPolygon, or
 * a Feature of one, in longitude and latitude on WGS 84.
 *
 * Sides are geodesics, the shortest lines on the ellipsoid; the area is that of the ellipsoid's surface, with a rounding
 * error far below what a phone can tell. A slope has more ground than the map shows; labels go by the map. Method:
 * C. F. F. Karney, Algorithms for geodesics, Journal of Geodesy 87 (2013), through `geographiclib-geodesic`.
 *
 * An open ring is closed. Which way round a ring runs does not matter; the smaller of the two parts it cuts the earth into
 * is meant. Rings may cross the antimeridian (179° to −179°, or to 181°) or go round a pole. A ring that crosses or touches
 * itself is refused where all of it lies within a degree (110 km) of its middle, as plots do; larger rings are not looked
 * at. Polygons of one MultiPolygon are added up; whether they overlap is not looked at.
 *
 * @param shape - the GeoJSON object
 * @returns the ground in m² and the length of the boundary in m
 * @throws SprayMathError `out-of-range` for a latitude past 90° or a longitude past 360°, `conflict` where a ring crosses
 * or touches itself or a hole lies outside its plot or is not smaller, `too-few` for fewer than 3 different places,
 * `unknown-choice` for another type of GeoJSON, `missing`, `not-a-quantity` or `not-finite`
 *
 * @example
 * ```ts
 * import { geodesicArea } from "swath-to-spoon/area/geodesic";
 *
 * const plot = {
 *   type: "Polygon",
 *   coordinates: [[[7.0, 50.0], [7.001, 50.0], [7.001, 50.001], [7.0, 50.001], [7.0, 50.0]]],
 * } as const;
 * const { ground, perimeter } = geodesicArea(plot);
 * console.log(ground.value.toFixed(1), ground.unit, ground.of); // 7974.6 m2 ground
 * console.log(perimeter.value.toFixed(1), perimeter.unit); // 365.8 m
 * ```
 */
export function geodesicArea(shape: GeoJsonPolygon | GeoJsonMultiPolygon | GeoJsonFeature): GeodesicArea {
  checkedChoice(checkedObject(shape, "").type, ["Polygon", "MultiPolygon", "Feature"], "type");
  if (shape.type === "Feature") {
    return within("geometry", () => {
      const geometry = checkedObject(shape.geometry, "");
      checkedChoice(geometry.type, ["Polygon", "MultiPolygon"], "type");
      return geodesicArea(geometry);
    });
  }
  const parts =
    shape.type === "Polygon"
      ? [polygonArea(shape.coordinates, "coordinates")]
      : checkedList(shape.coordinates, "coordinates").map((polygon, i) =>
          polygonArea(polygon, `coordinates[${i}]`),
        );
  const total = (name: keyof RingArea): number => parts.reduce((sum, part) => sum + part[name], 0);
  return { ground: madeGround(total("area"), "m2"), perimeter: { value: total("perimeter"), unit: "m" } };
}

interface RingArea {
  readonly area: number;
  readonly perimeter: number;
}

function polygonArea(coordinates: readonly (readonly GeoJsonPosition[])[], path: string): RingArea {
  const rings = checkedList(coordinates, path).map((ring, i) => checkedRing(ring, `${path}[${i}]`));
  const [outer, ...holes] = rings.map(ringArea) as [RingArea, ...RingArea[]];
  let { area, perimeter } = outer;
  for (const [i, hole] of holes.entries()) {
    if (!startsInside(rings[i + 1] as Ring, rings[0] as Ring)) {
      throw new SprayMathError(
        "conflict",
        `${path}[${i + 1}]`,
        "Given a hole that lies outside its plot. The first ring is the plot, the rings after it are holes in it; another plot is another polygon.",
      );
    }
    area -= hole.area;
    perimeter += hole.perimeter;
  }
  if (holes.length > 0 && area <= 0) {
    throw new SprayMathError(
      "conflict",
      path,
      "Given holes that are as large as the plot or larger; wanted the plot's own ring first, then its holes.",
    );
  }
  return { area, perimeter };
}

function ringArea(ring: Ring): RingArea {
  const polygon = geographiclib.Geodesic.WGS84.Polygon(false);
  for (const [longitude, latitude] of ring.corners) polygon.AddPoint(latitude, longitude);
  const { area = 0, perimeter } = polygon.Compute(false, true);
  return { area: Math.abs(area), perimeter };
}

interface Ring {
  /** Longitude and latitude. */
  readonly corners: readonly Corner[];
  readonly middle: Vector;
}

function checkedRing(positions: readonly GeoJsonPosition[], path: string): Ring {
  const all = checkedList(positions, path, 3).map((position, i) =>
    checkedPosition(position, `${path}[${i}]`),
  );
  const kept = ringCorners(all);
  if (kept.length < 3) {
    throw new SprayMathError(
      "too-few",
      path,
      `Given ${kept.length} different places; wanted at least 3, to enclose any ground.`,
    );
  }
  const corners = kept.map(({ corner }) => corner);
  const ring = { corners, middle: middleOf(corners) };
  const crossing = isLocal(ring) ? findCrossing(onPlane(ring, ring.middle)) : undefined;
  if (crossing !== undefined) {
    const place = (i: number): number => (kept[i % kept.length] as { index: number }).index;
    const { first, second } = crossing;
    const [longitude, latitude] = corners[second] as Corner;
    throw new SprayMathError(
      "conflict",
      `${path}[${place(second)}]`,
      `Given a ring that crosses or touches itself on the side that starts at longitude ${longitude}, latitude ${latitude}: ` +
        `the side from place ${place(first)} to ${place(first + 1)} meets the one from ${place(second)} to ${place(second + 1)} ` +
        "(counted from 0). Walk round the plot without crossing your own way.",
    );
  }
  return ring;
}

function checkedPosition(position: GeoJsonPosition, path: string): Corner {
  if (position === undefined || position === null)
    throw new SprayMathError("missing", path, "Nothing given; wanted [longitude, latitude].");
  if (!Array.isArray(position) || position.length < 2) {
    throw new SprayMathError(
      "not-a-quantity",
      path,
      `Given ${Array.isArray(position) ? `a list of ${position.length}` : shown(position)}; wanted [longitude, latitude].`,
    );
  }
  const [longitude, latitude] = position as unknown as Corner;
  checkNumber(longitude, `${path}[0]`);
  checkNumber(latitude, `${path}[1]`);
  if (Math.abs(longitude) > 360)
    throw new SprayMathError(
      "out-of-range",
      `${path}[0]`,
      `Given longitude ${longitude}; wanted -180 to 180 degrees.`,
    );
  if (Math.abs(latitude) > 90) {
    throw new SprayMathError(
      "out-of-range",
      `${path}[1]`,
      `Given latitude ${latitude}; wanted -90 to 90 degrees. GeoJSON puts the longitude first.`,
    );
  }
  return [longitude, latitude];
}

type Vector = readonly [number, number, number];

const dot = (a: Vector, b: Vector): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];

function direction([longitude, latitude]: Corner): Vector {
  const [lambda, phi] = [(longitude * Math.PI) / 180, (latitude * Math.PI) / 180];
  return [Math.cos(phi) * Math.cos(lambda), Math.cos(phi) * Math.sin(lambda), Math.sin(phi)];
}

// Of corners that lie evenly all round the earth it is NaN, and no corner is near it.
function middleOf(corners: readonly Corner[]): Vector {
  const sum = corners.map(direction).reduce((a, b) => [a[0] + b[0], a[1] + b[1], a[2] + b[2]]);
  const size = Math.sqrt(dot(sum, sum));
  return [sum[0] / size, sum[1] / size, sum[2] / size];
}

// Within 1 degree of its middle all round. Farther out a geodesic of the ellipsoid is no straight line on the plane below.
function isLocal(ring: Ring): boolean {
  const near = Math.cos(Math.PI / 180);
  return ring.corners.every((corner) => dot(direction(corner), ring.middle) >= near);
}

// The gnomonic projection (J. P. Snyder, Map Projections: A Working Manual, USGS Professional Paper 1395, 1987), on which
// the shortest lines of a sphere are straight, at the poles and the antimeridian as anywhere else.
function onPlane({ corners }: Ring, middle: Vector): Corner[] {
  const [x, y, z] = middle;
  const longitude = Math.atan2(y, x);
  const east: Vector = [-Math.sin(longitude), Math.cos(longitude), 0];
  const north: Vector = [-z * east[1], z * east[0], x * east[1] - y * east[0]];
  return corners.map((corner) => {
    const place = direction(corner);
    const up = dot(place, middle);
    return [dot(place, east) / up, dot(place, north) / up];
  });
}

// Whether any corner of the hole lies inside the plot, where both are small enough to be seen on one plane.
function startsInside(hole: Ring, outer: Ring): boolean {
  const near = Math.cos((3 * Math.PI) / 180);
  if (!isLocal(outer)) return true;
  if (!hole.corners.every((corner) => dot(direction(corner), outer.middle) >= near)) return false;
  const plot = onPlane(outer, outer.middle);
  return onPlane(hole, outer.middle).some((corner) => isInside(corner, plot));
}

// A ray to the right meets the sides of the plot an odd number of times.
function isInside([x, y]: Corner, plot: readonly Corner[]): boolean {
  let inside = false;
  for (let i = 0; i < plot.length; i++) {
    const [ax, ay] = plot[i] as Corner;
    const [bx, by] = plot[(i + 1) % plot.length] as Corner;
    if (ay > y !== by > y && x < ax + ((y - ay) / (by - ay)) * (bx - ax)) inside = !inside;
  }
  return inside;
}
