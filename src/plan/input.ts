import type { MeasuringTool } from "../household/measuring-tool.js";
import type { ToolSetName } from "../household/tools.js";
import type { Calibration } from "../output-rate/calibration.js";
import type { TodaysConditions } from "../output-rate/what-changed.js";
import type { Reserve } from "../tank-mix/carrier.js";
import type { LabelLimits, SeasonSoFar } from "../tank-mix/label-limits.js";
import type { Form, LabelRate } from "../tank-mix/label-rate.js";
import type { MixingProduct } from "../tank-mix/mixing-order.js";
import type { Density, Volume } from "../units/types.js";
import type { Currency, Price } from "./money.js";
import type { Plot } from "./plot.js";
import type { Thresholds } from "./thresholds.js";

/** The sprayer that does the job. */
export interface Sprayer {
  /** What the tank holds. More than 0. */
  readonly tank: Volume;
  /** How far it is filled, not over what it holds. The tank's capacity unless given. */
  readonly workingFill?: Volume;
  /** What hoses and boom hold: mixed, and not sprayed. None unless given. */
  readonly lineVolume?: Volume;
  /** The smallest load that the pump draws to the end. Any unless given. */
  readonly leastLoad?: Volume;
  /** How many rows, beds or tree rows one pass sprays: the width of the test strip is the band's times these. 1 unless given. */
  readonly rowsPerPass?: number;
}

/** A product that goes into the tank, adjuvants included. */
export interface Product {
  /** What it is called; each product of a job has its own name. */
  readonly name: string;
  /** Whether it is measured by volume or by weight. */
  readonly form: Form;
  /** The rate as the label gives it. A bare rate per area is per treated area. */
  readonly rate: LabelRate;
  /** The limits that the label sets. None are checked unless given. */
  readonly label?: LabelLimits;
  /** What the plot has had of it already this season. */
  readonly soFar?: SeasonSoFar;
  /** The formulation code on the label, `adjuvant` or `fertilizer`, for the order of mixing. */
  readonly formulation?: MixingProduct["code"];
  /** Whether it comes in a bag that dissolves in water. */
  readonly inSolubleBag?: boolean;
  /** For a dry product: what this very product weighs by volume, so that it can be spooned where there is no scale. */
  readonly bulkDensity?: Density;
  /** Its registration number, such as the EPA's, for the record. */
  readonly registration?: string;
  /** The label's restricted-entry interval in hours, 0 or more. */
  readonly reEntryHours?: number;
  /** The label's days from the last application to harvest, a whole number, 0 or more. */
  readonly preHarvestDays?: number;
  /** What it costs. The plan has no costs unless given. */
  readonly price?: Price;
  /** Whether the label permits diluting it before it goes into the tank, for doses too small to measure. */
  readonly labelPermitsDilution?: boolean;
}

/**
 * How a job's mix is parted into loads: full tanks and a part load; equal loads; or whole rows or whole plots to a load,
 * so that none ends in the middle of a tank. For the last two the rows, or the plots, must be of one size.
 */
export type Split = "full-then-part" | "equal" | "whole-rows" | "whole-plots";

/** A whole spray job, as a form collects it. */
export interface PlanInput {
  /** The plot, or all plots that one mix is for. */
  readonly plot: Plot | readonly Plot[];
  /** How the sprayer was calibrated. */
  readonly calibration: Calibration;
  /** The sprayer. */
  readonly sprayer: Sprayer;
  /** What is mixed to spare. None unless given. */
  readonly reserve?: Reserve;
  /** How the mix is parted: full tanks and a part load unless said otherwise. */
  readonly split?: Split;
  /** The products, at least one. */
  readonly products: readonly Product[];
  /** The tools that doses are measured with: a named set, or a list. */
  readonly tools: ToolSetName | readonly MeasuringTool[];
  /** The day of spraying and its conditions: what a calibration record is compared with. Not compared unless given. */
  readonly today?: TodaysConditions;
  /** Water that someone means to add without product. None unless given; it is warned of, and changes no number. */
  readonly addedWater?: Volume;
  /** The currency of the prices; two decimals and no name unless given. */
  readonly currency?: Currency;
  /** The thresholds of warnings that are to be other than usual. */
  readonly thresholds?: Partial<Thresholds>;
}
