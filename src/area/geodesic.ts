import * as loaded from "geographiclib-geodesic";
import { type Check, checked } from "../units/check.js";
import {
  choice,
  either,
  type FieldsOf,
  type ListField,
  list,
  NumberField,
  number,
  ObjectField,
  type Pick,
  type TupleField,
  tuple,
} from "../units/fields.js";
import { refusal } from "../units/message.js";
import { groundOf } from "../units/result.js";
import type { GroundArea, Length } from "../units/types.js";
import { ringCorners } from "./corners.js";
import { type Corner, findCrossing } from "./crossing.js";

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

const MOST_PLACES = 20_000;

/** A GeoJSON object: members that are not looked at may stand beside those that are (RFC 7946, section 6.1). */
class MembersField<T extends object> extends ObjectField<T> {
  constructor(fields: FieldsOf<T>, sentence = "") {
    super(fields, [], sentence);
  }

  override read(input: unknown, check: Check): T | undefined {
    if (typeof input !== "object" || input === null || Array.isArray(input)) return super.read(input, check);
    const members = this.names.map((name) => [name, (input as Record<string, unknown>)[name]]);
    return super.read(Object.fromEntries(members), check);
  }
}

/** A latitude: where it is none, it is mostly a longitude. */
class LatitudeField extends NumberField {
  override read(input: unknown, check: Check): number | undefined {
    const given = super.read(input, check);
    if (given === undefined || Math.abs(given) <= 90) return given;
    return check.fault(
      "out-of-range",
      "latitude",
      "",
      "A latitude is -90 to 90 degrees. GeoJSON puts the longitude first.",
      { given },
    );
  }
}

const POSITION: TupleField<Corner> = /* @__PURE__ */ tuple<Corner>(
  "Longitude and latitude, in degrees.",
  "place",
  [
    number("The longitude, in degrees.", { min: -360, max: 360 }),
    /* @__PURE__ */ new LatitudeField("The latitude, in degrees.", {}),
  ],
  { open: true },
);

type Positions = readonly Corner[];

const RINGS: ListField<Positions> = /* @__PURE__ */ list(
  "The outer ring, then the rings of the holes.",
  list("A ring.", POSITION, { least: 3 }),
);

/** Which shape it is, by its type. */
/* @__NO_SIDE_EFFECTS__ */
function byType(names: readonly string[]): Pick {
  const field = new MembersField<{ readonly type: string }>({ type: choice("What it is.", names) });
  return (input, check) => {
    const found = field.read(input, check);
    return found && names.indexOf(found.type);
  };
}

type Polygon = { readonly type: "Polygon"; readonly coordinates: readonly Positions[] };
type MultiPolygon = {
  readonly type: "MultiPolygon";
  readonly coordinates: readonly (readonly Positions[])[];
};
type Geometry = Polygon | MultiPolygon;
type Feature = { readonly type: "Feature"; readonly geometry: Geometry };

const POLYGON = /* @__PURE__ */ new MembersField<Polygon>({
  type: choice("What it is.", ["Polygon"]),
  coordinates: RINGS,
});
const MULTI_POLYGON = /* @__PURE__ */ new MembersField<MultiPolygon>({
  type: choice("What it is.", ["MultiPolygon"]),
  coordinates: list("The coordinates of each polygon.", RINGS),
});
const FEATURE = /* @__PURE__ */ new MembersField<Feature>({
  type: choice("What it is.", ["Feature"]),
  geometry: either<Geometry>("Its shape.", [POLYGON, MULTI_POLYGON], byType(["Polygon", "MultiPolygon"])),
});
const GEOJSON = /* @__PURE__ */ either<Geometry | Feature>(
  "",
  [POLYGON, MULTI_POLYGON, FEATURE],
  byType(["Polygon", "MultiPolygon", "Feature"]),
);

/** What a boundary on the earth encloses. */
export interface GeodesicArea {
  /** The ground inside, holes taken out; in m². */
  readonly ground: GroundArea;
  /** The length of all rings together, those of the holes included; in m. */
  readonly perimeter: Length;
}

/**
 * Returns the ground area inside a boundary that was walked with a phone or drawn on a map. It is a GeoJSON Polygon or MultiPolygon, or
 * a Feature of one, in longitude and latitude on WGS 84.
 *
 * Sides are geodesics, the shortest lines on the ellipsoid; the area is that of the ellipsoid's surface, with a rounding
 * error far below what a phone can measure. A slope has more ground than the map shows; labels go by the map. Method:
 * C. F. F. Karney, Algorithms for geodesics, Journal of Geodesy 87 (2013), through `geographiclib-geodesic`.
 *
 * An open ring is closed. Which way round a ring runs does not matter; the smaller of the two parts it cuts the earth into
 * is meant. Rings may cross the antimeridian (179° to −179°, or to 181°) or go round a pole. A ring that crosses or touches
 * itself is refused where all of it lies within a degree (110 km) of its middle, as plots do; larger rings are not looked
 * at. Polygons of one MultiPolygon are added up; whether they overlap is not looked at.
 *
 * @param shape - the GeoJSON object, of up to 20,000 places; members that are not needed are not looked at
 * @returns the ground in m² and the length of the boundary in m
 * @throws SprayMathError `out-of-range` for a latitude past 90°, a longitude past 360° or too many places, `conflict` where a ring crosses
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
  const given = checked(shape, GEOJSON);
  const geometry = given.type === "Feature" ? given.geometry : given;
  const at = given.type === "Feature" ? "geometry.coordinates" : "coordinates";
  const polygons = geometry.type === "Polygon" ? [geometry.coordinates] : geometry.coordinates;
  const places = polygons.flat().reduce((sum, ring) => sum + ring.length, 0);
  if (places > MOST_PLACES)
    throw refusal("out-of-range", "places-many", at, "Enter at most {limit} places, not {given}.", {
      given: places,
      limit: MOST_PLACES,
    });
  const parts = polygons.map((rings, i) =>
    polygonArea(rings, geometry.type === "Polygon" ? at : `${at}[${i}]`),
  );
  const total = (name: keyof RingArea): number => parts.reduce((sum, part) => sum + part[name], 0);
  return { ground: groundOf(total("area"), "m2"), perimeter: { value: total("perimeter"), unit: "m" } };
}

interface RingArea {
  readonly area: number;
  readonly perimeter: number;
}

function polygonArea(coordinates: readonly Positions[], at: string): RingArea {
  const rings = coordinates.map((ring, i) => ringOf(ring, `${at}[${i}]`));
  const [outer, ...holes] = rings.map(ringArea) as [RingArea, ...RingArea[]];
  let { area, perimeter } = outer;
  for (const [i, hole] of holes.entries()) {
    if (!startsInside(rings[i + 1] as Ring, rings[0] as Ring))
      throw refusal(
        "conflict",
        "hole-outside",
        `${at}[${i + 1}]`,
        "This hole lies outside its plot. List the plot's own ring first, then its holes; another plot is another polygon.",
      );
    area -= hole.area;
    perimeter += hole.perimeter;
  }
  if (holes.length > 0 && area <= 0)
    throw refusal(
      "conflict",
      "holes-too-large",
      at,
      "The holes are as large as the plot or larger. List the plot's own ring first, then its holes.",
    );
  return { area, perimeter };
}

type Geographiclib = typeof loaded;

/** GeographicLib, however it was loaded. To a page without a bundler it is a script: nothing is exported, its name is a global one. */
function geographiclib(): Geographiclib {
  const { default: whole } = loaded as { readonly default?: Geographiclib };
  return whole ?? (globalThis as unknown as { readonly geodesic: Geographiclib }).geodesic;
}

function ringArea(ring: Ring): RingArea {
  const polygon = geographiclib().Geodesic.WGS84.Polygon(false);
  for (const [longitude, latitude] of ring.corners) polygon.AddPoint(latitude, longitude);
  const { area = 0, perimeter } = polygon.Compute(false, true);
  return { area: Math.abs(area), perimeter };
}

interface Ring {
  /** Longitude and latitude. */
  readonly corners: readonly Corner[];
  readonly middle: Vector;
}

function ringOf(positions: Positions, at: string): Ring {
  const kept = ringCorners(positions);
  if (kept.length < 3)
    throw refusal(
      "too-few",
      "places-alike",
      at,
      "{count} different {count:one=place;other=places} can't enclose any ground. Enter at least {limit}.",
      { count: kept.length, limit: 3 },
    );
  const corners = kept.map(({ corner }) => corner);
  const ring = { corners, middle: middleOf(corners) };
  const crossing = isLocal(ring) ? findCrossing(onPlane(ring, ring.middle)) : undefined;
  if (crossing === undefined) return ring;
  const { first, second } = crossing;
  const place = (i: number): number => (kept[i % kept.length] as { index: number }).index;
  const [longitude, latitude] = corners[second] as Corner;
  throw refusal(
    "conflict",
    "ring-crosses",
    `${at}[${place(second)}]`,
    "The side from place {a} to {b} meets the one from {c} to {d} (counted from 0). Enter the places in the order you walk them.",
    {
      a: place(first),
      b: place(first + 1),
      c: place(second),
      d: place(second + 1),
      longitude: String(longitude),
      latitude: String(latitude),
    },
  );
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
