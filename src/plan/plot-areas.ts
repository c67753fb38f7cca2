import { areasOfBeds, linesOfBeds } from "../area/beds.js";
import { groundOfBoundary, linesOfBoundary } from "../area/boundary.js";
import { type CompositeInput, groundOfComposite, linesOfComposite } from "../area/composite.js";
import {
  groundOfOffsets,
  groundOfUnequalOffsets,
  linesOfOffsets,
  linesOfUnequalOffsets,
} from "../area/offsets.js";
import { areasOfBands, linesOfBands } from "../area/row-bands.js";
import {
  groundOfCircle,
  groundOfEllipse,
  groundOfRectangle,
  groundOfRing,
  groundOfSector,
  groundOfTrapezoid,
  groundOfTriangle,
  linesOfCircle,
  linesOfEllipse,
  linesOfRectangle,
  linesOfRing,
  linesOfSector,
  linesOfTrapezoid,
  linesOfTriangle,
} from "../area/shapes.js";
import { areasOfSpots, linesOfSpots } from "../area/spots.js";
import { allTreated, fractionTreated, linesOfPart, partTreated } from "../area/treated.js";
import { areasOfTreeRows, linesOfTreeRows } from "../area/tree-rows.js";
import { joinPath } from "../errors.js";
import { sumOf } from "../units/quantity.js";
import type { GroundArea, Length, TreatedArea } from "../units/types.js";
import type { WorkingLine } from "../units/working-line.js";
import {
  type CompositeShape,
  type KnownGround,
  type PartPlot,
  type Plot,
  plotPath,
  plotsOf,
  type Shape,
} from "./plot.js";

/** A plot's two areas. */
export interface PlotAreas {
  /** What the spray lands on. */
  readonly treated: TreatedArea;
  /** The ground it lies on, where it is known. */
  readonly ground?: GroundArea | undefined;
  /** The treated part of the ground, where that is known. */
  readonly fraction?: number | undefined;
  /** The length of all its rows, where it has rows. */
  readonly rowLength?: Length | undefined;
}

/** The areas of a job. */
export interface JobArea {
  /** All plots together. */
  readonly treated: TreatedArea;
  /** The ground of all plots together, where every plot has it. */
  readonly ground?: GroundArea | undefined;
  /** Treated / ground. */
  readonly fraction?: number | undefined;
  /** The length of all rows, where every plot has rows. */
  readonly rowLength?: Length | undefined;
  /** Each plot's own areas, in the order given. */
  readonly plots: readonly PlotAreas[];
}

type OfKind<T, K> = Extract<T, { readonly kind: K }>;

const SHAPES: {
  readonly [K in Shape["kind"]]: {
    readonly ground: (shape: OfKind<Shape, K>, at: string) => GroundArea;
    readonly lines: (shape: OfKind<Shape, K>) => WorkingLine[];
  };
} = {
  rectangle: { ground: groundOfRectangle, lines: linesOfRectangle },
  triangle: { ground: groundOfTriangle, lines: linesOfTriangle },
  trapezoid: { ground: groundOfTrapezoid, lines: linesOfTrapezoid },
  circle: { ground: groundOfCircle, lines: linesOfCircle },
  ellipse: { ground: groundOfEllipse, lines: linesOfEllipse },
  ring: { ground: groundOfRing, lines: linesOfRing },
  sector: { ground: groundOfSector, lines: linesOfSector },
  offsets: { ground: groundOfOffsets, lines: linesOfOffsets },
  "unequal-offsets": { ground: groundOfUnequalOffsets, lines: linesOfUnequalOffsets },
  boundary: { ground: groundOfBoundary, lines: linesOfBoundary },
};

const PARTS: {
  readonly [K in PartPlot["kind"]]: {
    readonly areas: (plot: OfKind<PartPlot, K>, at: string) => PlotAreas;
    readonly lines: (plot: OfKind<PartPlot, K>) => WorkingLine[];
  };
} = {
  "row-bands": { areas: areasOfBands, lines: linesOfBands },
  beds: { areas: areasOfBeds, lines: linesOfBeds },
  "tree-rows": { areas: areasOfTreeRows, lines: linesOfTreeRows },
  spots: { areas: areasOfSpots, lines: linesOfSpots },
};

// The compiler can't see that a table's entry for a kind takes what is of that kind.
function shapeOf({ kind }: Shape): {
  ground: (shape: Shape, at: string) => GroundArea;
  lines: (shape: Shape) => WorkingLine[];
} {
  return SHAPES[kind] as never;
}

function partOf({ kind }: PartPlot): {
  areas: (plot: PartPlot, at: string) => PlotAreas;
  lines: (plot: PartPlot) => WorkingLine[];
} {
  return PARTS[kind] as never;
}

function isPart(plot: Plot): plot is PartPlot {
  return plot.kind in PARTS;
}

/** The areas of one plot; `at` is its place. Trusts its input. */
export function areasOfPlot(plot: Plot, at: string): PlotAreas {
  if (isPart(plot)) return partOf(plot).areas(plot, at);
  if (plot.kind === "treated-area") {
    const { treated, ground } = plot;
    if (ground === undefined) return { treated };
    return { treated, ground, fraction: fractionTreated({ treated, ground }, at) };
  }
  const ground = groundOfPlot(plot, at);
  const { fraction } = plot;
  if (fraction === undefined) return { treated: allTreated(ground), ground, fraction: 1 };
  return { treated: partTreated({ ground, fraction }, at), ground, fraction };
}

function groundOfPlot(plot: Shape | CompositeShape | KnownGround, at: string): GroundArea {
  if (plot.kind === "ground-area") return plot.ground;
  return plot.kind === "composite"
    ? groundOfComposite(shapesOf(plot, at), at)
    : shapeOf(plot).ground(plot, at);
}

function shapesOf({ add, subtract }: CompositeShape, at = ""): CompositeInput {
  const areas = (shapes: readonly Shape[], name: string): GroundArea[] =>
    shapes.map((shape, i) => shapeOf(shape).ground(shape, joinPath(at, `${name}[${i}]`)));
  return { add: areas(add, "add"), ...(subtract && { subtract: areas(subtract, "subtract") }) };
}

/** The areas of a job's plots, one by one and together. Trusts its input. */
export function areasOfJob(plot: Plot | readonly Plot[]): JobArea {
  return togetherOf(plotsOf(plot).map((one, i) => areasOfPlot(one, plotPath(plot, i))));
}

/** Plots added up. */
export function togetherOf(plots: readonly PlotAreas[]): JobArea {
  const together: { -readonly [K in keyof JobArea]: JobArea[K] } = {
    treated: sumOf(plots.map(({ treated }) => treated)),
    plots,
  };
  const { treated } = together;
  const grounds = known(plots.map(({ ground }) => ground));
  if (grounds !== undefined) {
    const ground = sumOf(grounds);
    together.ground = ground;
    together.fraction = fractionTreated({ treated, ground }, "plot");
  }
  const lengths = known(plots.map(({ rowLength }) => rowLength));
  if (lengths !== undefined) together.rowLength = sumOf(lengths);
  return together;
}

/** The list, where none of it is missing. */
export function known<T>(list: readonly (T | undefined)[]): T[] | undefined {
  return list.includes(undefined) ? undefined : (list as T[]);
}

/** The working of {@link areasOfPlot}. Trusts its input. */
export function linesOfPlot(plot: Plot): WorkingLine[] {
  if (isPart(plot)) return partOf(plot).lines(plot);
  if (plot.kind === "treated-area") return [];
  const lines = linesOfGround(plot);
  const { fraction } = plot;
  return fraction === undefined
    ? lines
    : [...lines, ...linesOfPart({ ground: groundOfPlot(plot, ""), fraction })];
}

function linesOfGround(plot: Shape | CompositeShape | KnownGround): WorkingLine[] {
  if (plot.kind === "ground-area") return [];
  if (plot.kind !== "composite") return shapeOf(plot).lines(plot);
  const shapes = [...plot.add, ...(plot.subtract ?? [])];
  return [...shapes.flatMap((shape) => shapeOf(shape).lines(shape)), ...linesOfComposite(shapesOf(plot))];
}
