import type { BoundaryInput } from "../area/boundary.js";
import type { OffsetRule, OffsetsInput, UnequalOffsetsInput } from "../area/offsets.js";
import type {
  CircleInput,
  EllipseInput,
  RectangleInput,
  RingInput,
  SectorInput,
  TrapezoidInput,
  TriangleInput,
} from "../area/shapes.js";
import type { SpotGroup } from "../area/spots.js";
import type { Shape as GroundShape, Plot } from "../plan/plot.js";
import type { Length } from "../units/types.js";
import {
  about,
  choice,
  count,
  fields,
  type Kinds,
  kindOf,
  list,
  maybe,
  name,
  named,
  number,
  only,
  pair,
  type Schema,
  type Shape,
  sides,
  triple,
  words,
} from "./fields.js";
import { madeOnce, type ReadingOptions } from "./options.js";
import { byGiven } from "./picks.js";
import { type Quantities, quantities } from "./quantity.js";

type PlotOf<K extends Plot["kind"]> = Extract<Plot, { readonly kind: K }>;
type ShapeOf<K extends GroundShape["kind"]> = Extract<GroundShape, { readonly kind: K }>;

interface ByBase {
  readonly base: Length;
}
interface BySides {
  readonly sides: readonly [Length, Length, Length];
}
interface OneLength {
  readonly rowLength: Length;
}
interface EachLength {
  readonly rowLengths: readonly Length[];
}
interface OneBed {
  readonly bedLength: Length;
}
interface EachBed {
  readonly bedLengths: readonly Length[];
}

/** The measures of the shapes of ground, which may be a plot by themselves or a part of one. */
interface Measures {
  readonly rectangle: Shape<RectangleInput>;
  readonly byBase: Shape<Extract<TriangleInput, ByBase>>;
  readonly bySides: Shape<Extract<TriangleInput, BySides>>;
  readonly trapezoid: Shape<TrapezoidInput>;
  readonly circle: Shape<CircleInput>;
  readonly ellipse: Shape<EllipseInput>;
  readonly ring: Shape<RingInput>;
  readonly sector: Shape<SectorInput>;
  readonly offsets: Shape<OffsetsInput>;
  readonly unequal: Shape<UnequalOffsetsInput>;
  readonly boundary: Shape<BoundaryInput>;
}

function measuresOf({ of, orZero, unit }: Quantities): Measures {
  const length = of("length");
  const numbersIn = about(unit("length"), "The one unit of all these numbers.");
  return {
    rectangle: {
      length: about(length, "One side. More than 0."),
      width: about(length, "The side that meets it. More than 0."),
    },
    byBase: {
      base: about(length, "Any side. More than 0."),
      height: about(length, "From that side to the corner opposite, square to the side. More than 0."),
    },
    bySides: {
      sides: about(triple(length), "The three sides, each shorter than the other two together."),
    },
    trapezoid: {
      base: about(length, "One of the two parallel sides. More than 0."),
      top: about(length, "The other parallel side. More than 0."),
      height: about(length, "The distance between them, square to both. More than 0."),
    },
    circle: { diameter: about(length, "The distance across. More than 0.") },
    ellipse: {
      length: about(length, "The longest distance across. More than 0."),
      width: about(length, "The distance across, square to it. More than 0."),
    },
    ring: {
      outerDiameter: about(length, "The distance across the whole. More than 0."),
      innerDiameter: about(length, "The distance across the hole. More than 0, less than the outer one."),
    },
    sector: {
      radius: about(length, "From the middle to the edge. More than 0."),
      angleDegrees: about(
        number({ above: 0, max: 360 }),
        "The angle at the middle, in degrees. More than 0, at most 360.",
      ),
    },
    offsets: {
      offsets: about(
        list(orZero("length")),
        "From the base line to the boundary at each station, in order. 0 or more, not all 0.",
      ),
      spacing: about(length, "From one station to the next. More than 0."),
      rule: about(
        name<OffsetRule>({ trapezoidal: 1, simpson: 1, "mid-strip": 1 }),
        "How the offsets are joined: by straight lines, by Simpson's curves (an odd number of offsets), or each as the width of a strip of its own.",
      ),
    },
    unequal: {
      stations: about(
        list(pair(), 2),
        "How far along the base line, and how far from there to the boundary; in order.",
      ),
      unit: numbersIn,
    },
    boundary: {
      corners: about(
        list(pair(), 3),
        "The corners in the order they are walked: to the right of, and ahead of, one fixed point.",
      ),
      unit: numbersIn,
    },
  };
}

const BY_BASE_OR_SIDES = byGiven([["base", "height"], ["sides"]], 0);

function shapeSchema(m: Measures): Schema<GroundShape> {
  const kinds: Kinds<GroundShape> = {
    rectangle: fields<ShapeOf<"rectangle">>({ kind: only("rectangle"), ...m.rectangle }),
    triangle: choice<ShapeOf<"triangle">>()(
      [
        fields<Extract<ShapeOf<"triangle">, ByBase>>({ kind: only("triangle"), ...m.byBase }),
        fields<Extract<ShapeOf<"triangle">, BySides>>({ kind: only("triangle"), ...m.bySides }),
      ],
      BY_BASE_OR_SIDES,
    ),
    trapezoid: fields<ShapeOf<"trapezoid">>({ kind: only("trapezoid"), ...m.trapezoid }),
    circle: fields<ShapeOf<"circle">>({ kind: only("circle"), ...m.circle }),
    ellipse: fields<ShapeOf<"ellipse">>({ kind: only("ellipse"), ...m.ellipse }),
    ring: fields<ShapeOf<"ring">>({ kind: only("ring"), ...m.ring }),
    sector: fields<ShapeOf<"sector">>({ kind: only("sector"), ...m.sector }),
    offsets: fields<ShapeOf<"offsets">>({ kind: only("offsets"), ...m.offsets }),
    "unequal-offsets": fields<ShapeOf<"unequal-offsets">>({ kind: only("unequal-offsets"), ...m.unequal }),
    boundary: fields<ShapeOf<"boundary">>({ kind: only("boundary"), ...m.boundary }),
  };
  return named("GroundShape", kindOf<GroundShape>(kinds), "A shape of ground.");
}

/** What every plot may have besides its measures. */
function commonOf() {
  const called = { name: maybe(words(), "What the plot is called.") };
  const fraction = maybe(
    number({ above: 0, max: 1 }),
    "The part that is sprayed: more than 0, at most 1. All of it unless given.",
  );
  return { called, ground: { ...called, fraction } };
}

function groundPlots(q: Quantities): { readonly [K in GroundKind]: Schema<PlotOf<K>> } {
  const m = measuresOf(q);
  const { ground: common } = commonOf();
  const shape = shapeSchema(m);
  return {
    rectangle: fields<PlotOf<"rectangle">>({ kind: only("rectangle"), ...m.rectangle, ...common }),
    triangle: choice<PlotOf<"triangle">>()(
      [
        fields<Extract<PlotOf<"triangle">, ByBase>>({ kind: only("triangle"), ...m.byBase, ...common }),
        fields<Extract<PlotOf<"triangle">, BySides>>({ kind: only("triangle"), ...m.bySides, ...common }),
      ],
      BY_BASE_OR_SIDES,
    ),
    trapezoid: fields<PlotOf<"trapezoid">>({ kind: only("trapezoid"), ...m.trapezoid, ...common }),
    circle: fields<PlotOf<"circle">>({ kind: only("circle"), ...m.circle, ...common }),
    ellipse: fields<PlotOf<"ellipse">>({ kind: only("ellipse"), ...m.ellipse, ...common }),
    ring: fields<PlotOf<"ring">>({ kind: only("ring"), ...m.ring, ...common }),
    sector: fields<PlotOf<"sector">>({ kind: only("sector"), ...m.sector, ...common }),
    offsets: fields<PlotOf<"offsets">>({ kind: only("offsets"), ...m.offsets, ...common }),
    "unequal-offsets": fields<PlotOf<"unequal-offsets">>({
      kind: only("unequal-offsets"),
      ...m.unequal,
      ...common,
    }),
    boundary: fields<PlotOf<"boundary">>({ kind: only("boundary"), ...m.boundary, ...common }),
    composite: fields<PlotOf<"composite">>({
      kind: only("composite"),
      add: about(list(shape), "The shapes that are added up; they must not overlap."),
      subtract: maybe(list(shape), "The shapes that are cut out."),
      ...common,
    }),
    "ground-area": fields<PlotOf<"ground-area">>({
      kind: only("ground-area"),
      ground: about(q.ground, "The ground area. More than 0."),
      ...common,
    }),
  };
}

type GroundKind = GroundShape["kind"] | "composite" | "ground-area";
type PartKind = Exclude<Plot["kind"], GroundKind>;

function partPlots(q: Quantities): { readonly [K in PartKind]: Schema<PlotOf<K>> } {
  const length = q.of("length");
  const { called } = commonOf();
  const rows = about(count(), "How many rows. A whole number, 1 or more.");
  const oneLength = { rows, rowLength: about(length, "The length of each row. More than 0.") };
  const eachLength = {
    rowLengths: about(list(length), "The length of each row, where they differ; each more than 0."),
    rows: maybe(count(), "How many rows, as a check on the list; may be left out."),
  };
  const bands = {
    bandWidth: about(length, "The treated width on one row. More than 0, at most the row spacing."),
    rowSpacing: maybe(length, "From one row to the next. More than 0; needed for the ground."),
    ...called,
  };
  const strips = {
    stripWidth: about(length, "The treated width on one side of the row, from the trunks. More than 0."),
    sides: about(sides(), "How many sides of the row are treated: 1 or 2."),
    rowSpacing: maybe(length, "From one row of trees to the next. More than 0; needed for the ground."),
    ...called,
  };
  const beds = {
    bedWidth: about(length, "The treated width of a bed. More than 0, at most the bed spacing."),
    bedSpacing: maybe(length, "From the middle of one bed to the middle of the next. More than 0."),
    ...called,
  };
  const byRowLength = byGiven([["rowLength"], ["rowLengths"]], 0);
  return {
    "row-bands": choice<PlotOf<"row-bands">>()(
      [
        fields<Extract<PlotOf<"row-bands">, OneLength>>({ kind: only("row-bands"), ...oneLength, ...bands }),
        fields<Extract<PlotOf<"row-bands">, EachLength>>({
          kind: only("row-bands"),
          ...eachLength,
          ...bands,
        }),
      ],
      byRowLength,
    ),
    beds: choice<PlotOf<"beds">>()(
      [
        fields<Extract<PlotOf<"beds">, OneBed>>({
          kind: only("beds"),
          beds: about(count(), "How many beds. A whole number, 1 or more."),
          bedLength: about(length, "The length of each bed. More than 0."),
          ...beds,
        }),
        fields<Extract<PlotOf<"beds">, EachBed>>({
          kind: only("beds"),
          bedLengths: about(list(length), "The length of each bed, where they differ; each more than 0."),
          beds: maybe(count(), "How many beds, as a check on the list; may be left out."),
          ...beds,
        }),
      ],
      byGiven([["bedLength"], ["bedLengths"]], 0),
    ),
    "tree-rows": choice<PlotOf<"tree-rows">>()(
      [
        fields<Extract<PlotOf<"tree-rows">, OneLength>>({ kind: only("tree-rows"), ...oneLength, ...strips }),
        fields<Extract<PlotOf<"tree-rows">, EachLength>>({
          kind: only("tree-rows"),
          ...eachLength,
          ...strips,
        }),
      ],
      byRowLength,
    ),
    spots: fields<PlotOf<"spots">>({
      kind: only("spots"),
      spots: about(list(spotGroup(q)), "The spots, one entry for each size. They must not overlap."),
      ground: maybe(q.ground, "The ground they lie on; may be left out."),
      ...called,
    }),
    "treated-area": fields<PlotOf<"treated-area">>({
      kind: only("treated-area"),
      treated: about(q.treated, "The area that is treated. More than 0."),
      ground: maybe(q.ground, "The ground it lies on."),
      ...called,
    }),
  };
}

function spotGroup({ of }: Quantities): Schema<SpotGroup> {
  const length = of("length");
  const group = { count: about(count(), "How many spots of this size. A whole number, 1 or more.") };
  return named(
    "SpotGroup",
    choice<SpotGroup>()(
      [
        fields<Extract<SpotGroup, { readonly diameter: Length }>>({
          ...group,
          diameter: about(length, "The distance across a round spot. More than 0."),
        }),
        fields<Extract<SpotGroup, { readonly length: Length }>>({
          ...group,
          length: about(length, "One side of a rectangular spot. More than 0."),
          width: about(length, "The side that meets it. More than 0."),
        }),
        fields<Extract<SpotGroup, { readonly each: unknown }>>({
          ...group,
          each: about(of("area"), "The area of one spot of any shape. More than 0."),
        }),
      ],
      byGiven([["diameter"], ["length", "width"], ["each"]]),
    ),
    "Spots of one size: by their diameter, by their sides, or by the area of one.",
  );
}

/**
 * The schema of one plot, of any kind.
 *
 * @param options - whose numbers and measures text is in; see {@link ReadingOptions}
 * @returns the schema; the same one each time for the same options
 * @throws SprayMathError `unknown-choice` for an option
 *
 * @example
 * ```ts
 * import { plotSchema } from "swath-to-spoon/schema";
 *
 * const plot = plotSchema().parse({ kind: "rectangle", length: "40 m", width: "25 m" });
 * console.log(plot.kind === "rectangle" && plot.length); // { value: 40, unit: 'm' }
 * ```
 */
export const plotSchema: (options?: ReadingOptions) => Schema<Plot> = /* @__PURE__ */ madeOnce((options) => {
  const q = quantities(options);
  const kinds: Kinds<Plot> = { ...groundPlots(q), ...partPlots(q) };
  return named(
    "Plot",
    kindOf<Plot>(kinds),
    "A plot: what is sprayed, and on what ground. Its kind tells how it is measured.",
  );
});
