import { alongBeds, BED_WIDTHS, type BedsInput } from "../area/beds.js";
import { BOUNDARY, type BoundaryInput } from "../area/boundary.js";
import { MOST_SHAPES } from "../area/composite.js";
import { OFFSETS, type OffsetsInput, UNEQUAL_OFFSETS, type UnequalOffsetsInput } from "../area/offsets.js";
import { BANDS, type RowBandsInput } from "../area/row-bands.js";
import {
  CIRCLE,
  type CircleInput,
  ELLIPSE,
  type EllipseInput,
  RECTANGLE,
  type RectangleInput,
  RING,
  type RingInput,
  SECTOR,
  type SectorInput,
  TRAPEZOID,
  type TrapezoidInput,
  type TriangleInput,
  triangleWith,
} from "../area/shapes.js";
import { SPOTS, type SpotsInput } from "../area/spots.js";
import { alongRows } from "../area/strips.js";
import { treatedFits } from "../area/treated.js";
import { TREE_STRIPS, type TreeRowsInput } from "../area/tree-rows.js";
import type { Field } from "../units/check.js";
import {
  choice,
  type EitherField,
  either,
  joined,
  type Kinds,
  kinds,
  list,
  named,
  number,
  type ObjectField,
  object,
  ofKind,
  optional,
  text,
} from "../units/fields.js";
import { groundArea, treatedArea } from "../units/quantity-field.js";
import type { GroundArea, Length, TreatedArea } from "../units/types.js";

/** The sizes of each shape of ground. */
interface ShapeInputs {
  /** A rectangle. */
  readonly rectangle: RectangleInput;
  /** A triangle, by base and height or by three sides. */
  readonly triangle: TriangleInput;
  /** A four-sided plot with two parallel sides. */
  readonly trapezoid: TrapezoidInput;
  /** A circle. */
  readonly circle: CircleInput;
  /** An ellipse. */
  readonly ellipse: EllipseInput;
  /** A circle with a hole in its middle. */
  readonly ring: RingInput;
  /** A part of a circle. */
  readonly sector: SectorInput;
  /** Offsets from a baseline, equally spaced. */
  readonly offsets: OffsetsInput;
  /** Offsets from a baseline at any stations. */
  readonly "unequal-offsets": UnequalOffsetsInput;
  /** The corners of a boundary on a plane. */
  readonly boundary: BoundaryInput;
}

/** The sizes of each way to lay spray in rows, beds or spots. */
interface PartInputs {
  /** Bands along rows. */
  readonly "row-bands": RowBandsInput;
  /** Beds. */
  readonly beds: BedsInput;
  /** Strips along tree rows. */
  readonly "tree-rows": TreeRowsInput;
  /** Spots. */
  readonly spots: SpotsInput;
}

/** A shape of ground. */
export type Shape = {
  [K in keyof ShapeInputs]: {
    /** Says how it is measured. */
    readonly kind: K;
  } & ShapeInputs[K];
}[keyof ShapeInputs];

/** Shapes put together, and shapes cut out of them: a field with a pond in it. */
export interface CompositeShape {
  /** Says that shapes are put together. */
  readonly kind: "composite";
  /** The shapes that are added up; they must not overlap. */
  readonly add: readonly Shape[];
  /** The shapes that are cut out. */
  readonly subtract?: readonly Shape[] | undefined;
}

/** Ground whose area is known, such as one walked with a phone (`swath-to-spoon/area/geodesic`). */
export interface KnownGround {
  /** Says that the ground area is known. */
  readonly kind: "ground-area";
  /** The ground area. */
  readonly ground: GroundArea;
}

/** A treated area that is known, such as one on a work order. */
export interface KnownTreated {
  /** Says that the treated area is known. */
  readonly kind: "treated-area";
  /** The treated area. */
  readonly treated: TreatedArea;
  /** The ground it lies on. */
  readonly ground?: GroundArea | undefined;
}

/** Ground of which all, or a part that is known, is sprayed. */
export type GroundPlot = (Shape | CompositeShape | KnownGround) & {
  /** The part that is sprayed: more than 0, at most 1. All of it unless given. */
  readonly fraction?: number | undefined;
};

/** Rows, beds or spots. */
export type PartPlot = {
  [K in keyof PartInputs]: {
    /** Says how it is measured. */
    readonly kind: K;
  } & PartInputs[K];
}[keyof PartInputs];

/** A plot: what is sprayed, and on what ground. `kind` says how it is measured. */
export type Plot = (GroundPlot | PartPlot | KnownTreated) & {
  /** What the plot is called. */
  readonly name?: string | undefined;
};

const KIND = "Says how it is measured.";

type Named = Pick<Plot, "name">;
type SprayedPart = Pick<GroundPlot, "fraction">;

const NAMED: ObjectField<Named> = object<Named>({ name: optional(text("What the plot is called.")) });

const NAMED_PART: ObjectField<SprayedPart & Named> = /* @__PURE__ */ joined(
  /* @__PURE__ */ object<SprayedPart>({
    fraction: optional(
      number("The part that is sprayed: more than 0, at most 1. All of it unless given.", {
        above: 0,
        max: 1,
      }),
    ),
  }),
  NAMED,
);

/** The fields of every shape, with more of a plot's own. */
/* @__NO_SIDE_EFFECTS__ */
function shapesWith<T extends object>(more: ObjectField<T>): Kinds<Shape & T> {
  const shape = <S extends object>(kind: Shape["kind"], sizes: ObjectField<S>): Field<S> =>
    joined(ofKind(kind, KIND, more), sizes);
  return {
    rectangle: shape("rectangle", RECTANGLE),
    triangle: triangleWith(ofKind("triangle", KIND, more)),
    trapezoid: shape("trapezoid", TRAPEZOID),
    circle: shape("circle", CIRCLE),
    ellipse: shape("ellipse", ELLIPSE),
    ring: shape("ring", RING),
    sector: shape("sector", SECTOR),
    offsets: shape("offsets", OFFSETS),
    "unequal-offsets": shape("unequal-offsets", UNEQUAL_OFFSETS),
    boundary: shape("boundary", BOUNDARY),
  } satisfies { [K in keyof ShapeInputs]: Field<ShapeInputs[K]> } as unknown as Kinds<Shape & T>;
}

const SHAPE: EitherField<Shape> = /* @__PURE__ */ named(
  "Shape",
  /* @__PURE__ */ kinds<Shape>(
    "A shape of ground.",
    /* @__PURE__ */ shapesWith(/* @__PURE__ */ object<object>({})),
  ),
);

const COMPOSITE: ObjectField<CompositeShape> = /* @__PURE__ */ object<CompositeShape>({
  kind: choice("Says that shapes are put together.", ["composite"]),
  add: list("The shapes that are added up; they must not overlap.", SHAPE, { most: MOST_SHAPES }),
  subtract: optional(list("The shapes that are cut out.", SHAPE, { least: 0, most: MOST_SHAPES })),
});

const KNOWN_GROUND: ObjectField<KnownGround> = /* @__PURE__ */ object<KnownGround>({
  kind: choice("Says that the ground area is known.", ["ground-area"]),
  ground: groundArea("The ground area.", { unmarked: true }),
});

const KNOWN_TREATED: ObjectField<KnownTreated> = /* @__PURE__ */ object<KnownTreated>(
  {
    kind: choice("Says that the treated area is known.", ["treated-area"]),
    treated: treatedArea("The treated area.", { unmarked: true }),
    ground: optional(groundArea("The ground it lies on.", { unmarked: true })),
  },
  [treatedFits],
);

/** A plot of any kind. */
export const PLOT: EitherField<Plot> = /* @__PURE__ */ plotField();

/* @__NO_SIDE_EFFECTS__ */
function plotField(): EitherField<Plot> {
  return named(
    "Plot",
    kinds<Plot>("A plot: what is sprayed, and on what ground.", {
      ...shapesWith(NAMED_PART),
      composite: joined(COMPOSITE, NAMED_PART),
      "row-bands": alongRows(joined(ofKind("row-bands", KIND, BANDS), NAMED)),
      beds: alongBeds(joined(ofKind("beds", KIND, BED_WIDTHS), NAMED)),
      "tree-rows": alongRows(joined(ofKind("tree-rows", KIND, TREE_STRIPS), NAMED)),
      spots: joined(ofKind("spots", KIND, SPOTS), NAMED),
      "ground-area": joined(KNOWN_GROUND, NAMED_PART),
      "treated-area": joined(KNOWN_TREATED, NAMED),
    }),
  );
}

/** Far more plots than one mix is for: past it an input is a mistake. */
export const MOST_PLOTS = 100_000;

/** One plot, or all plots that one mix is for. */
export const PLOTS: EitherField<Plot | readonly Plot[]> = /* @__PURE__ */ either<Plot | readonly Plot[]>(
  "The plot, or all plots that one mix is for.",
  [PLOT, /* @__PURE__ */ list("The plots.", PLOT, { most: MOST_PLOTS })],
  (input) => (Array.isArray(input) ? 1 : 0),
);

/** The plots of a job, which may be given one alone. */
export function plotsOf(plot: Plot | readonly Plot[]): readonly Plot[] {
  return Array.isArray(plot) ? plot : [plot as Plot];
}

/** What a plot is called: by its number, from 1, where it has no name. Each language has its own word for that. */
export type PlotName = string | number;

/** What the plots of a job are called. */
export function plotNames(plot: Plot | readonly Plot[]): PlotName[] {
  return plotsOf(plot).map(({ name }, i) => name ?? i + 1);
}

/** A plot's name in English. */
export function plotInEnglish(name: PlotName): string {
  return typeof name === "number" ? `plot ${name}` : name;
}

/** Where each plot of a job stands in its input. */
export function plotPath(plot: Plot | readonly Plot[], i: number): string {
  return Array.isArray(plot) ? `plot[${i}]` : "plot";
}

/** How many rows, bands or beds a plot has, where all are of one length. */
export function equalRows(plot: Plot): number | undefined {
  if (plot.kind === "beds") return plot.bedLength && plot.beds;
  if (plot.kind === "row-bands" || plot.kind === "tree-rows") return plot.rowLength && plot.rows;
  return undefined;
}

/** The lengths of a plot's rows, bands or beds, where they are listed. */
export function rowLengthsOf(plot: Plot): readonly Length[] | undefined {
  if (plot.kind === "beds") return plot.bedLengths;
  if (plot.kind === "row-bands" || plot.kind === "tree-rows") return plot.rowLengths;
  return undefined;
}
