import { frozen } from "../frozen.js";
import type { MeasuredRate } from "../output-rate/measurement.js";
import { type ChoiceField, choice } from "../units/fields.js";
import { multipleOf } from "../units/multiples.js";
import { resolveUnit } from "../units/resolve.js";
import type { AreaUnit, VolumeRate } from "../units/types.js";
import { type Plot, plotsOf } from "./plot.js";
import { PRACTICE, type Threshold } from "./thresholds.js";

/** A kind of spraying, for how much mix is usual. */
export type ApplicationKind = "broadcast" | "band" | "tree-rows" | "hand" | "turf" | "drench";

/** The most that is usual for each kind of spraying. A plan goes by these alone, and carries no reasons. */
export const MOST: Readonly<Record<ApplicationKind, VolumeRate>> = /* @__PURE__ */ frozen<
  Readonly<Record<ApplicationKind, VolumeRate>>
>({
  broadcast: { value: 200, unit: "gal/ac" },
  band: { value: 200, unit: "gal/ac" },
  "tree-rows": { value: 600, unit: "gal/ac" },
  hand: { value: 600, unit: "gal/ac" },
  turf: { value: 10, unit: "gal/1000ft2" },
  drench: { value: 2, unit: "pt/ft2" },
});

const PENN_STATE =
  "Penn State Extension, Tree Fruit Production Guide: 400 gal/ac is the dilute spray of standard trees";
const SPRAY_GUN =
  "Spray Gun, Pesticide Environmental Stewardship: 5.25 gal/1000 ft² (229 gal/ac) in its example";

/** The most that is usual for each kind of spraying, with reason and source. */
export const MOST_RATES: Readonly<Record<ApplicationKind, Threshold<VolumeRate>>> = /* @__PURE__ */ (() =>
  frozen({
    broadcast: {
      value: MOST.broadcast,
      reason:
        "Twice what covers a tall crop; often a strip measured in yards or a refill read in the wrong unit.",
      source:
        "Backpack Sprayer Use, Vegetable Crops Hotline, Purdue University: 100 gal/ac on fully grown staked tomatoes; twice that is common practice, no source",
    },
    band: {
      value: MOST.band,
      reason: "As broadcast: the rate counts the band alone, and not the ground between.",
      source: PRACTICE,
    },
    "tree-rows": {
      value: MOST["tree-rows"],
      reason: "Half more than a dilute spray of standard trees; past it most of the spray runs off.",
      source: `${PENN_STATE}; half more is common practice, no source`,
    },
    hand: {
      value: MOST.hand,
      reason: "A hand gun sprays until the foliage drips, shrubs and trees too.",
      source: `${SPRAY_GUN}; ${PENN_STATE}; half more is common practice, no source`,
    },
    turf: {
      value: MOST.turf,
      reason: "Twice the most that lawns are sprayed with; more is a drench.",
      source: `${SPRAY_GUN}; twice that is common practice, no source`,
    },
    drench: {
      value: MOST.drench,
      reason: "What wets the root zone of a bed or a bench; more runs through.",
      source: "labels ask for 1 to 2 pints per square foot: from memory",
    },
  }))();

/** A kind of spraying. */
export const APPLICATION: ChoiceField<ApplicationKind> = /* @__PURE__ */ choice(
  "What kind of spraying it is, for how much mix is usual. Taken from the plot and the calibration unless given.",
  /* @__PURE__ */ Object.keys(MOST) as ApplicationKind[],
);

/** The kind of spraying that a job is: as given, or by how it is measured and what is sprayed. */
export function applicationOf(
  {
    plot,
    application,
  }: { readonly plot: Plot | readonly Plot[]; readonly application?: ApplicationKind | undefined },
  { measurement, rate }: Pick<MeasuredRate, "measurement" | "rate">,
): ApplicationKind {
  if (application !== undefined) return application;
  if (measurement.kind === "hand") return "hand";
  const kinds = plotsOf(plot).map(({ kind }) => kind);
  if (measurement.kind === "tree-row" || kinds.includes("tree-rows")) return "tree-rows";
  if (kinds.every((kind) => kind === "row-bands" || kind === "beds")) return "band";
  // Per 100 or 1,000 ft², or per 100 m²: nobody gives a field's rate per so little land.
  return multipleOf(resolveUnit(rate.unit).per as AreaUnit) === undefined ? "broadcast" : "turf";
}
