import { type BedsInput, bedsArea, bedsAreaWorking } from "../area/beds.js";
import { type BoundaryInput, boundaryArea, boundaryAreaWorking } from "../area/boundary.js";
import { compositeArea, compositeAreaWorking } from "../area/composite.js";
import { groundArea, treatedArea } from "../area/marked-area.js";
import {
  type OffsetsInput,
  offsetsArea,
  offsetsAreaWorking,
  type UnequalOffsetsInput,
  unequalOffsetsArea,
  unequalOffsetsAreaWorking,
} from "../area/offsets.js";
import { type RowBandsInput, rowBandsArea, rowBandsAreaWorking } from "../area/row-bands.js";
import {
  type CircleInput,
  circleArea,
  circleAreaWorking,
  type EllipseInput,
  ellipseArea,
  ellipseAreaWorking,
  type RectangleInput,
  type RingInput,
  rectangleArea,
  rectangleAreaWorking,
  ringArea,
  ringAreaWorking,
  type SectorInput,
  sectorArea,
  sectorAreaWorking,
  type TrapezoidInput,
  type TriangleInput,
  trapezoidArea,
  trapezoidAreaWorking,
  triangleArea,
  triangleAreaWorking,
} from "../area/shapes.js";
import { type SpotsInput, spotsArea, spotsAreaWorking } from "../area/spots.js";
import { treatAll, treatedFraction, treatPart, treatPartWorking } from "../area/treated.js";
import { type TreeRowsInput, treeRowsArea, treeRowsAreaWorking } from "../area/tree-rows.js";
import { relocated, within } from "../errors.js";
import { checkedChoice, checkedList, checkedObject } from "../units/guard.js";
import type { GroundArea, Length, TreatedArea } from "../units/types.js";
import type { WorkingLine } from "../units/working.js";

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
    /** Which shape it is. */
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
  readonly subtract?: readonly Shape[];
}

/** Ground whose area is known, such as one walked with a phone (`swath-to-spoon/area/geodesic`). */
export interface KnownGround {
  /** Says that the ground area is known. */
  readonly kind: "ground-area";
  /** The ground area. */
  readonly ground: GroundArea;
}

/** A treated area that is known, such as one told on a work order. */
export interface KnownTreated {
  /** Says that the treated area is known. */
  readonly kind: "treated-area";
  /** The treated area. */
  readonly treated: TreatedArea;
  /** The ground it lies on. */
  readonly ground?: GroundArea;
}

/** Ground of which all, or a part that is known, is sprayed. */
export type GroundPlot = (Shape | CompositeShape | KnownGround) & {
  /** The part that is sprayed: more than 0, at most 1. All of it unless given. */
  readonly fraction?: number;
};

/** Rows, beds or spots. */
export type PartPlot = {
  [K in keyof PartInputs]: {
    /** Which way it is. */
    readonly kind: K;
  } & PartInputs[K];
}[keyof PartInputs];

/** A plot: what is sprayed, and on what ground. `kind` tells which way it is measured. */
export type Plot = (GroundPlot | PartPlot | KnownTreated) & {
  /** What the plot is called. */
  readonly name?: string;
};

/** A plot's two areas. */
export interface PlotAreas {
  /** What the spray lands on. */
  readonly treated: TreatedArea;
  /** The ground it lies on, where it is known. */
  readonly ground?: GroundArea;
  /** The treated part of the ground, where that is known. */
  readonly fraction?: number;
  /** The length of all its rows, where it has rows. */
  readonly rowLength?: Length;
}

interface Reader<Input, Output> {
  readonly area: (input: Input) => Output;
  readonly working: (input: Input) => WorkingLine[];
}

const SHAPES: { readonly [K in keyof ShapeInputs]: Reader<ShapeInputs[K], GroundArea> } = {
  rectangle: { area: rectangleArea, working: rectangleAreaWorking },
  triangle: { area: triangleArea, working: triangleAreaWorking },
  trapezoid: { area: trapezoidArea, working: trapezoidAreaWorking },
  circle: { area: circleArea, working: circleAreaWorking },
  ellipse: { area: ellipseArea, working: ellipseAreaWorking },
  ring: { area: ringArea, working: ringAreaWorking },
  sector: { area: sectorArea, working: sectorAreaWorking },
  offsets: { area: offsetsArea, working: offsetsAreaWorking },
  "unequal-offsets": { area: unequalOffsetsArea, working: unequalOffsetsAreaWorking },
  boundary: { area: boundaryArea, working: boundaryAreaWorking },
};

const PARTS: { readonly [K in keyof PartInputs]: Reader<PartInputs[K], PlotAreas> } = {
  "row-bands": { area: rowBandsArea, working: rowBandsAreaWorking },
  beds: { area: bedsArea, working: bedsAreaWorking },
  "tree-rows": { area: treeRowsArea, working: treeRowsAreaWorking },
  spots: { area: spotsArea, working: spotsAreaWorking },
};

/** What the functions of a shape take: the plot without what only a plot has. */
function sizesOf(plot: Shape | PartPlot): never {
  const { kind: _, ...sizes } = plot;
  const { name: __, fraction: ___, ...rest } = sizes as typeof sizes & { name?: string; fraction?: number };
  return rest as never;
}

/* @__NO_SIDE_EFFECTS__ */
function names<K extends string>(table: Readonly<Record<K, unknown>>): K[] {
  return Object.keys(table) as K[];
}

/** The kinds of shape. */
const SHAPE_KINDS: readonly Shape["kind"][] = names(SHAPES);

/** The kinds of plot. */
const PLOT_KINDS: readonly Plot["kind"][] = /* @__PURE__ */ ([] as Plot["kind"][]).concat(
  SHAPE_KINDS,
  "composite",
  names(PARTS),
  "ground-area",
  "treated-area",
);

function isPart(plot: Plot): plot is PartPlot {
  return Object.hasOwn(PARTS, plot.kind);
}

/** The areas of one plot. */
export function plotAreas(plot: Plot): PlotAreas {
  checkedObject(plot, "");
  checkedChoice(plot.kind, PLOT_KINDS, "kind");
  if (isPart(plot)) return PARTS[plot.kind].area(sizesOf(plot));
  if (plot.kind === "treated-area") {
    const treated = relocated({ area: "treated" }, () => treatedArea(plot.treated));
    const { ground } = plot;
    return ground === undefined
      ? { treated }
      : { treated, ground, fraction: treatedFraction({ treated, ground }) };
  }
  const ground = groundOf(plot);
  const { fraction } = plot;
  if (fraction === undefined) return { treated: treatAll(ground), ground, fraction: 1 };
  return { treated: treatPart({ ground, fraction }), ground, fraction };
}

function groundOf(plot: Shape | CompositeShape | KnownGround): GroundArea {
  if (plot.kind === "ground-area") return relocated({ area: "ground" }, () => groundArea(plot.ground));
  return plot.kind === "composite" ? compositeArea(compositeInput(plot)) : shapeArea(plot);
}

function compositeInput({ add, subtract }: CompositeShape): { add: GroundArea[]; subtract?: GroundArea[] } {
  const areas = (shapes: readonly Shape[], path: string): GroundArea[] =>
    checkedList(shapes, path).map((shape, i) => within(`${path}[${i}]`, () => shapeArea(shape)));
  return { add: areas(add, "add"), ...(subtract !== undefined && { subtract: areas(subtract, "subtract") }) };
}

function shapeArea(shape: Shape): GroundArea {
  checkedObject(shape, "");
  checkedChoice(shape.kind, SHAPE_KINDS, "kind");
  return SHAPES[shape.kind].area(sizesOf(shape));
}

/** The working of {@link plotAreas}. */
export function plotAreasWorking(plot: Plot): WorkingLine[] {
  if (isPart(plot)) return PARTS[plot.kind].working(sizesOf(plot));
  if (plot.kind === "treated-area") return [];
  const lines = groundWorking(plot);
  if (plot.fraction === undefined) return lines;
  return [...lines, ...treatPartWorking({ ground: groundOf(plot), fraction: plot.fraction })];
}

function groundWorking(plot: Shape | CompositeShape | KnownGround): WorkingLine[] {
  if (plot.kind === "ground-area") return [];
  if (plot.kind !== "composite") return SHAPES[plot.kind].working(sizesOf(plot));
  const shapes = [...plot.add, ...(plot.subtract ?? [])];
  return [
    ...shapes.flatMap((shape) => SHAPES[shape.kind].working(sizesOf(shape))),
    ...compositeAreaWorking(compositeInput(plot)),
  ];
}

/** The plots of a job, which may be given one alone. */
export function plotsOf(plot: Plot | readonly Plot[]): readonly Plot[] {
  return Array.isArray(plot) ? plot : [plot as Plot];
}

/** How many rows, bands or beds a plot has, where all are of one length. */
export function equalRows(plot: Plot): number | undefined {
  if (plot.kind === "beds") return plot.bedLength && plot.beds;
  if (plot.kind === "row-bands" || plot.kind === "tree-rows") return plot.rowLength && plot.rows;
  return undefined;
}
