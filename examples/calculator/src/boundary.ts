import { html, type TemplateResult } from "lit-html";
import { isSprayMathError } from "swath-to-spoon";
import { boundaryArea } from "swath-to-spoon/area";
import { issueText } from "swath-to-spoon/worksheet";
import { withEntry } from "./job.ts";
import { change, job, showAgain } from "./state.ts";
import { inUnit, shortNumber } from "./units.ts";
import { say, W, writing } from "./words.ts";

// A phone's position that is off by more than this says nothing of a plot's edge.
const WORST_METERS = 15;

const STEP_METERS = 3;

/** The walk around a plot: the phone's watch while it lasts, and the corners so far. */
let watch: number | undefined;
let corners: Place[] = [];
let status = "";

/** The ways to get a boundary: a GeoJSON file, or the phone carried around the plot. Either fills in the area. */
export function boundaryTools(): TemplateResult {
  const read = async ({ target }: Event): Promise<void> =>
    enter(plotIn((await (target as HTMLInputElement).files?.[0]?.text()) ?? ""));
  return html`<div class="field">
    <label for="boundary-file">${say(W.boundaryFile)}</label>
    <input type="file" id="boundary-file" accept=".geojson,.json,application/geo+json" @change=${read} />
    <button type="button" id="walk" @click=${walk}>${say(watch === undefined ? W.walk : W.walkStop)}</button>
    <p class="hint" role="status">${status}</p>
  </div>`;
}

function showStatus(text: string): void {
  status = text;
  showAgain();
}

/** The one plot in a file; a collection of one feature is that feature. */
function plotIn(text: string): unknown {
  try {
    const found = JSON.parse(text);
    return found?.type === "FeatureCollection" && found.features?.length === 1 ? found.features[0] : found;
  } catch {
    return undefined;
  }
}

type Place = readonly [longitude: number, latitude: number];

/**
 * Places on the earth in meters from the first, on a plane that touches it there. Over a kilometer the area is off by less than
 * one part in a million. Places from the earth's center by longitude and latitude, on the WGS 84 ellipsoid: from memory.
 */
function metersOf(ring: readonly Place[], start: Place): [east: number, north: number][] {
  const [radius, flattening, degree] = [6378137, 1 / 298.257223563, Math.PI / 180];
  const e2 = flattening * (2 - flattening);
  /** Toward the start's meridian, east of it, and along the axis. */
  const fromCenter = ([longitude, latitude]: Place): [number, number, number] => {
    const [turn, tilt] = [(longitude - start[0]) * degree, latitude * degree];
    const normal = radius / Math.sqrt(1 - e2 * Math.sin(tilt) ** 2);
    const out = normal * Math.cos(tilt);
    return [out * Math.cos(turn), out * Math.sin(turn), normal * (1 - e2) * Math.sin(tilt)];
  };
  const [out, , up] = fromCenter(start);
  const tilt = start[1] * degree;
  return ring.map((place) => {
    const [x, east, z] = fromCenter(place);
    return [east, (z - up) * Math.cos(tilt) - (x - out) * Math.sin(tilt)];
  });
}

/** Puts the ground inside a boundary, holes taken out, into the form. */
function enter(plot: unknown): void {
  const shape = (plot as { geometry?: unknown } | undefined)?.geometry ?? plot;
  const { type, coordinates } = (shape ?? {}) as { type?: string; coordinates?: Place[][] };
  try {
    const start = coordinates?.[0]?.[0];
    if (type !== "Polygon" || !coordinates?.flat(2).every(Number.isFinite) || start === undefined)
      throw new TypeError("No polygon");
    const [ground = 0, ...holes] = coordinates.map(
      (ring) => boundaryArea({ corners: metersOf(ring, start), unit: "m" }).value,
    );
    const value = holes.reduce((rest, hole) => rest - hole, ground);
    // A field is measured in acres or hectares, a garden in square feet or meters.
    const [small, large] = job().system === "metric" ? (["m2", "ha"] as const) : (["ft2", "ac"] as const);
    const unit = value < 4000 ? small : large;
    const quantity = { value, unit: "m2" } as const;
    const typed = { text: shortNumber(value), quantity };
    status = "";
    change(withEntry(job(), "plot.ground", { text: shortNumber(inUnit(quantity, unit).value), unit, typed }));
  } catch (error) {
    // A file may hold anything.
    showStatus(isSprayMathError(error) ? issueText(error, writing()) : say(W.notGeoJson));
  }
}

/** Starts the walk at a tap, and ends it at the next. */
function walk(): void {
  if (watch === undefined) {
    corners = [];
    watch = watchCorners();
    showStatus(say(W.walkWait));
  } else {
    navigator.geolocation.clearWatch(watch);
    watch = undefined;
    enter({ type: "Polygon", coordinates: [corners] });
  }
}

/** Asks for the phone's position, and takes a corner each time that it moves. */
function watchCorners(): number {
  return navigator.geolocation.watchPosition(
    ({ coords: { longitude, latitude, accuracy } }) => {
      if (accuracy > WORST_METERS) return showStatus(say(W.walkWait));
      const here: Place = [longitude, latitude];
      const [[x, y] = [0, 0]] = metersOf([here], corners.at(-1) ?? here);
      // Standing still, a position jitters, and the boundary would cross itself.
      if (corners.length === 0 || Math.hypot(x, y) > STEP_METERS) corners.push(here);
      showStatus(say(W.walking, { n: corners.length, meters: Math.round(accuracy) }));
    },
    ({ message }) => showStatus(say(W.noPosition, { reason: message })),
    { enableHighAccuracy: true },
  );
}
