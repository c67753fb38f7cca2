import type { Carrier } from "../tank-mix/carrier.js";
import type {
  Concentration,
  GroundArea,
  Length,
  Mass,
  TreatedArea,
  Volume,
  VolumeRate,
} from "../units/types.js";
import type { Caution } from "./cautions.js";
import type { DoseMeasure } from "./dose.js";
import type { PlanInput } from "./input.js";
import type { PlanCost } from "./money.js";
import type { PlotAreas } from "./plot.js";
import type { Warning } from "./warnings.js";

/** A product's share of one load. */
export interface LoadProduct {
  /** The product. */
  readonly name: string;
  /** How much of it goes into this load. */
  readonly amount: Volume | Mass;
  /** The same as a person can measure it, never over. */
  readonly measured: DoseMeasure;
}

/** One tank load. */
export interface PlannedLoad {
  /** The load's place in the order of mixing, from 1. */
  readonly number: number;
  /** The finished mix: fill the tank to this mark. */
  readonly carrier: Volume;
  /** The water it takes: the mix less the liquid products. */
  readonly water: Volume;
  /** How many rows or plots it is for, where the mix is parted by them. */
  readonly pieces?: number;
  /** What this load could treat at the output rate. */
  readonly area: TreatedArea;
  /** Each product's share. */
  readonly products: readonly LoadProduct[];
}

/** A product in the whole job. */
export interface ProductTotal {
  /** The product. */
  readonly name: string;
  /** How much of it all loads take together, to the last printed digit. */
  readonly amount: Volume | Mass;
  /** How much is in one unit of the mix: the same in every load. */
  readonly strength: Concentration;
}

/** A whole job worked out. Plain data. */
export interface Plan {
  /** What is treated, on what ground, and which part of the ground that is. */
  readonly area: {
    /** All plots together. */
    readonly treated: TreatedArea;
    /** The ground of all plots together, where every plot tells it. */
    readonly ground?: GroundArea;
    /** Treated / ground. */
    readonly fraction?: number;
    /** The length of all rows, where every plot has rows. */
    readonly rowLength?: Length;
    /** Each plot's own areas, in the order given. */
    readonly plots: readonly PlotAreas[];
  };
  /** What the sprayer puts out per treated area. */
  readonly rate: VolumeRate;
  /** The finished mix: sprayed, to spare, in the lines, in all. */
  readonly carrier: Carrier;
  /** The tank loads, in the order of mixing. */
  readonly loads: readonly PlannedLoad[];
  /** The products' names in the order of mixing, where every product's formulation is known. The label's order goes before it. */
  readonly mixingOrder?: readonly string[];
  /** What the loads come to. */
  readonly totals: {
    /** All loads' mix. */
    readonly carrier: Volume;
    /** Each product in all loads. */
    readonly products: readonly ProductTotal[];
  };
  /** What is left when the plot is done: reserve and lines. */
  readonly leftover: {
    /** How much mix. */
    readonly carrier: Volume;
    /** What the reserve could still treat at the output rate; nothing where there is none. */
    readonly area?: TreatedArea;
  };
  /** What the products cost, where a price is given. */
  readonly cost?: PlanCost;
  /** What a careful colleague would question. A warning changes no number. */
  readonly warnings: readonly Warning[];
  /** The usual cautions. */
  readonly cautions: readonly Caution[];
  /** What was given, with what was left out filled in. */
  readonly input: PlanInput;
}
