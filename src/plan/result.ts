import type { Measurable, NotMeasurable } from "../household/measure-out.js";
import type { SpreaderCheck } from "../output-rate/spreader.js";
import type { BatchVolume } from "../tank-mix/batch-volume.js";
import type { Carrier } from "../tank-mix/carrier.js";
import type { Bags, HopperLoads } from "../tank-mix/granules.js";
import type { NutrientsBrought } from "../tank-mix/nutrients.js";
import type { Concentration, Count, Length, Mass, TreatedArea, Volume, VolumeRate } from "../units/types.js";
import type { BatchInput } from "./batch-input.js";
import type { Caution } from "./cautions.js";
import type { PlanInput } from "./input.js";
import type { Currency, MixCost, PlanCost } from "./money.js";
import type { JobArea } from "./plot-areas.js";
import type { GranulesRate, SpreadingInput } from "./spreading-input.js";
import type { Warning } from "./warnings.js";

/** A product's share of one load. */
export interface LoadAmount {
  /** The product. */
  readonly name: string;
  /** How much of it goes into this load. */
  readonly amount: Volume | Mass;
}

/** A dose as a person measures it, or why it can't be. */
export type DoseMeasure = (Measurable | NotMeasurable) & {
  /** For a dry product that is spooned by its own bulk density: the volume that the dose fills. */
  readonly volume?: Volume | undefined;
  /** True if the tools include no scale: the dose is then shown for a common one. */
  readonly scaleAssumed?: true | undefined;
  /** True if the plan refuses its job. Do not show the dose then; `doseText` says not to mix. */
  readonly refused?: true | undefined;
};

/** A product's share of one load, and how it is measured. */
export interface LoadProduct extends LoadAmount {
  /** The same as a person can measure it, never over. */
  readonly measured: DoseMeasure;
}

/** A tank load, whatever it covers. */
export interface LoadOf<P extends LoadAmount> {
  /** The load's place in the order of mixing, from 1. */
  readonly number: number;
  /** The finished mix: fill the tank to this mark. */
  readonly carrier: Volume;
  /** The water it takes: the mix less the liquid products. */
  readonly water: Volume;
  /** How many rows, plots or plants this load is for, if the mix is split by them. */
  readonly pieces?: number | undefined;
  /** The mark to fill to, as the tank has it: if its marks, or the fills, are given. The same volume as `carrier`. */
  readonly mark?: Volume | undefined;
  /** Each product's share. */
  readonly products: readonly P[];
}

/** What a load sprays of the job's area; of what is left over, what the extra mix could still treat. */
export interface CoversArea {
  /** The area. What a load holds for the hose, and what is extra, isn't counted. */
  readonly area: TreatedArea;
}

/** One tank load. */
export type MixLoad<P extends LoadAmount = LoadAmount> = LoadOf<P> & CoversArea;

/** One tank load with its doses. */
export type PlannedLoad = MixLoad<LoadProduct>;

/** A product in the whole job. */
export interface ProductTotal {
  /** The product. */
  readonly name: string;
  /** How much of it all loads take together, to the last printed digit. */
  readonly amount: Volume | Mass;
  /** How much is in one unit of the mix: the same in every load. */
  readonly strength: Concentration;
}

/** A tank mix worked out, whatever gives its size. */
export interface MixOf<P extends LoadAmount, C extends object> {
  /** The finished mix: sprayed, extra, in the lines, and the total. */
  readonly carrier: Carrier;
  /** The tank loads, in the order of mixing. */
  readonly loads: readonly (LoadOf<P> & C)[];
  /** The products' names in the order of mixing, where every product's formulation is known. The label's order takes precedence. */
  readonly mixingOrder?: readonly string[] | undefined;
  /** What the loads come to. */
  readonly totals: {
    /** All loads' mix. */
    readonly carrier: Volume;
    /** Each product in all loads. */
    readonly products: readonly ProductTotal[];
  };
  /**
   * What the mix went up by, for loads that end on marks: how much, and what that could still treat. It is part of the reserve.
   * Left out where the mix didn't go up.
   */
  readonly toMark?:
    | ({
        /** How much mix. */
        readonly carrier: Volume;
      } & C)
    | undefined;
  /** The mix left over when the job is done: reserve and lines. With a reserve, also what the reserve could still treat. */
  readonly leftover: {
    /** How much mix. */
    readonly carrier: Volume;
  } & Partial<C>;
}

/** A tank mix for an area, worked out. Plain data. */
export type Mix<P extends LoadAmount = LoadAmount> = MixOf<P, CoversArea>;

/**
 * What a load is for, in a job that isn't an area; of what is left over, what the extra mix would be enough for. Nothing where only
 * the volume is known.
 */
export interface CoversBatch {
  /** How many plants, pots, trees or spots. */
  readonly count?: Count | undefined;
  /** What length of row. */
  readonly rowLength?: Length | undefined;
  /** What area, where the job's is given. */
  readonly area?: TreatedArea | undefined;
}

/** A job sized by volume, count or row, worked out. Plain data. */
export interface BatchPlan extends MixOf<LoadProduct, CoversBatch>, Omit<BatchVolume, "volume"> {
  /** The version of this layout. A reader refuses one that it does not know. */
  readonly version: 1;
  /** The mix per treated area, where the area is given. */
  readonly rate?: VolumeRate | undefined;
  /** What the products cost, where a price is given. */
  readonly cost?: MixCost | undefined;
  /** What a careful colleague would question. A warning changes no number. */
  readonly warnings: readonly Warning[];
  /** The usual cautions. */
  readonly cautions: readonly Caution[];
  /** The input, with defaults filled in. */
  readonly input: BatchInput;
}

/** A whole job worked out. Plain data. */
export interface Plan extends Mix<LoadProduct> {
  /** The version of this layout. A reader refuses one that it does not know. */
  readonly version: 1;
  /** What is treated, on what ground, and which part of the ground that is. */
  readonly area: JobArea;
  /** What the sprayer puts out per treated area. */
  readonly rate: VolumeRate;
  /** What the products cost, where a price is given. */
  readonly cost?: PlanCost | undefined;
  /** What a careful colleague would question. A warning changes no number. */
  readonly warnings: readonly Warning[];
  /** The usual cautions. */
  readonly cautions: readonly Caution[];
  /** The input, with defaults filled in. */
  readonly input: PlanInput;
}

/** A job of granules or dry fertilizer, worked out. Plain data. */
export interface SpreadingPlan {
  /** The version of this layout. A reader refuses one that it does not know. */
  readonly version: 1;
  /** What is treated, on what ground, and which part of the ground that is; for a job on plots. */
  readonly area?: JobArea | undefined;
  /** The rate of product: what the spreader is set for, all directions together. */
  readonly rate: GranulesRate;
  /** For a rate of a nutrient: every nutrient that comes with the product, in the unit of the rate. */
  readonly nutrients?: NutrientsBrought | undefined;
  /** All the product that is spread. */
  readonly total: Mass;
  /** What goes on each plot, in the order given; for a job on plots. */
  readonly plots?: readonly PlotAmount[] | undefined;
  /** The fills of the hopper. */
  readonly hopper: HopperLoads;
  /** The bags to buy, where the size of one is given. */
  readonly bags?: Bags | undefined;
  /** How the spreader's test compares with the rate, where there was one. */
  readonly check?: SpreaderCheck | undefined;
  /** What the product that is spread costs, where a price is given. */
  readonly cost?: SpreadingCost | undefined;
  /** What a careful colleague would question. A warning changes no number. */
  readonly warnings: readonly Warning[];
  /** The usual cautions. */
  readonly cautions: readonly Caution[];
  /** What was given. */
  readonly input: SpreadingInput;
}

/** What goes on one plot. */
export interface PlotAmount {
  /** The product for the whole plot. */
  readonly amount: Mass;
  /** How many beds or rows it has, where they are of one length. */
  readonly pieces?: number | undefined;
  /** The product for one of them. */
  readonly each?: Mass | undefined;
  /** The product for each bed or row in the order given, where their lengths are listed. */
  readonly rows?: readonly Mass[] | undefined;
}

/** What granules cost. */
export interface SpreadingCost {
  /** The currency. */
  readonly currency: Currency;
  /** The product that is spread; what is left in a bag isn't counted. */
  readonly total: number;
}

/** A plan of any job. */
export type AnyPlan = Plan | BatchPlan;
