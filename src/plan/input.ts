import type { MeasuringTool, ToolSetName } from "../household/tools.js";
import type { StripRun } from "../output-rate/strip.js";
import type { Reserve } from "../tank-mix/carrier.js";
import type { Form, LabelRate } from "../tank-mix/label-rate.js";
import type { Volume } from "../units/types.js";
import type { Plot } from "./plot.js";

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
}

/** A product that goes into the tank. */
export interface Product {
  /** What it is called; each product of a job has its own name. */
  readonly name: string;
  /** Whether it is measured by volume or by weight. */
  readonly form: Form;
  /** The rate as the label gives it. A bare rate per area is per treated area. */
  readonly rate: LabelRate;
}

/** What was measured to calibrate: `used` over `swath` times `distance`. */
export type Calibration = { readonly kind: "strip" } & StripRun;

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
  /** How the mix is parted: full tanks and a part load (what is done unless said otherwise), or equal loads. */
  readonly split?: "full-then-part" | "equal";
  /** The products, at least one. */
  readonly products: readonly Product[];
  /** The tools that doses are measured with: a named set, or a list. */
  readonly tools: ToolSetName | readonly MeasuringTool[];
}
