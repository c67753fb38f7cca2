import { type RowBandsInput, rowBandsArea, rowBandsAreaWorking } from "../area/row-bands.js";
import { type RectangleInput, rectangleArea, rectangleAreaWorking } from "../area/shapes.js";
import { treatAll } from "../area/treated.js";
import { checkedChoice, checkedObject } from "../units/guard.js";
import type { GroundArea, TreatedArea } from "../units/types.js";
import type { WorkingLine } from "../units/working.js";

/** What a plot may be told as. */
interface PlotInputs {
  /** A rectangle that is sprayed all over. */
  readonly rectangle: RectangleInput;
  /** Bands along rows. */
  readonly "row-bands": RowBandsInput;
}

/** A plot: what is sprayed, and on what ground. */
export type Plot = {
  [K in keyof PlotInputs]: { readonly kind: K; readonly name?: string } & PlotInputs[K];
}[keyof PlotInputs];

/** A plot's two areas. */
export interface PlotAreas {
  /** What the spray lands on. */
  readonly treated: TreatedArea;
  /** The ground it lies on, where it is known. */
  readonly ground?: GroundArea;
}

type Readers = {
  readonly [K in keyof PlotInputs]: {
    readonly areas: (plot: PlotInputs[K]) => PlotAreas;
    readonly working: (plot: PlotInputs[K]) => WorkingLine[];
  };
};

function broadcast(ground: GroundArea): PlotAreas {
  return { treated: treatAll(ground), ground };
}

const READERS: Readers = {
  rectangle: { areas: (plot) => broadcast(rectangleArea(plot)), working: rectangleAreaWorking },
  "row-bands": { areas: rowBandsArea, working: rowBandsAreaWorking },
};

/** The kinds of plot. */
export const PLOT_KINDS = Object.keys(READERS) as Plot["kind"][];

/** The areas of one plot. */
export function plotAreas(plot: Plot): PlotAreas {
  checkedObject(plot, "");
  checkedChoice(plot.kind, PLOT_KINDS, "kind");
  return READERS[plot.kind].areas(plot as never);
}

/** The working of {@link plotAreas}. */
export function plotAreasWorking(plot: Plot): WorkingLine[] {
  return READERS[plot.kind].working(plot as never);
}

/** The plots of a job, which may be given one alone. */
export function plotsOf(plot: Plot | readonly Plot[]): readonly Plot[] {
  return Array.isArray(plot) ? plot : [plot as Plot];
}
