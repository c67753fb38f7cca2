import { isSprayMathError } from "swath-to-spoon";
import { boundaryArea } from "swath-to-spoon/area";
import { issueText } from "swath-to-spoon/worksheet";
import { el } from "./dom.ts";
import type { Keeper } from "./form.ts";
import { withEntry } from "./job.ts";
import { inUnit, shortNumber } from "./units.ts";
import { say, type Text, W, writing } from "./words.ts";

// A phone's position that is off by more than this says nothing of a plot's edge.
const WORST_METERS = 15;

const STEP_METERS = 3;

/** The ways to get a boundary: a GeoJSON file, or the phone carried around the plot. Either fills in the area. */
export function boundaryTools(keeper: Keeper): HTMLElement {
  const status = el("p", { class: "hint", role: "status" });
  const file = el("input", {
    type: "file",
    accept: ".geojson,.json,application/geo+json",
    id: "boundary-file",
  });
  file.addEventListener("change", async () => {
    const text = (await file.files?.[0]?.text()) ?? "";
    enter(plotIn(text), keeper, status);
  });
  return el(
    "div",
    { class: "field" },
    el("label", { for: file.id }, say(W.boundaryFile)),
    file,
    walkButton(keeper, status),
    status,
  );
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
function enter(plot: unknown, keeper: Keeper, status: HTMLElement): void {
  const shape = (plot as { geometry?: unknown } | undefined)?.geometry ?? plot;
  const { type, coordinates } = (shape ?? {}) as { type?: string; coordinates?: Place[][] };
  try {
    const start = coordinates?.[0]?.[0];
    if (type !== "Polygon" || !coordinates?.flat(2).every(Number.isFinite) || start === undefined)
      throw new TypeError(say(W.notGeoJson));
    const [ground = 0, ...holes] = coordinates.map(
      (ring) => boundaryArea({ corners: metersOf(ring, start), unit: "m" }).value,
    );
    const value = holes.reduce((rest, hole) => rest - hole, ground);
    const { system } = keeper.job();
    // A field is measured in acres or hectares, a garden in square feet or meters.
    const [small, large] = system === "metric" ? (["m2", "ha"] as const) : (["ft2", "ac"] as const);
    const unit = value < 4000 ? small : large;
    const quantity = { value, unit: "m2" } as const;
    const entry = { text: shortNumber(inUnit(quantity, unit).value), unit };
    keeper.change(
      withEntry(keeper.job(), "plot.ground", { ...entry, typed: { text: shortNumber(value), quantity } }),
      true,
    );
  } catch (error) {
    status.textContent = isSprayMathError(error) ? issueText(error, writing()) : (error as Error).message;
  }
}

/** Asks for the phone's position on a tap, and takes a corner each time that it moves. */
function walkButton(keeper: Keeper, status: HTMLElement): HTMLElement {
  const button = el("button", { type: "button", id: "walk" }, say(W.walk));
  const corners: Place[] = [];
  let watch: number | undefined;
  const show = (text: Text, figures?: Record<string, string | number>): void => {
    status.textContent = say(text, figures);
  };
  button.addEventListener("click", () => {
    if (watch !== undefined) {
      navigator.geolocation.clearWatch(watch);
      watch = undefined;
      button.textContent = say(W.walk);
      enter({ type: "Polygon", coordinates: [corners.splice(0)] }, keeper, status);
      return;
    }
    button.textContent = say(W.walkStop);
    show(W.walkWait);
    watch = navigator.geolocation.watchPosition(
      ({ coords: { longitude, latitude, accuracy } }) => {
        if (accuracy > WORST_METERS) return show(W.walkWait);
        const here: Place = [longitude, latitude];
        const [[x, y] = [0, 0]] = metersOf([here], corners.at(-1) ?? here);
        // Standing still, a position jitters, and the boundary would cross itself.
        if (corners.length === 0 || Math.hypot(x, y) > STEP_METERS) corners.push(here);
        show(W.walking, { n: corners.length, meters: Math.round(accuracy) });
      },
      ({ message }) => show(W.noPosition, { reason: message }),
      { enableHighAccuracy: true },
    );
  });
  return button;
}
