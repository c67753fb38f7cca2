import { TOOLS, type Tools } from "../household/tools.js";
import { BATCH_SIZE, type BatchSize } from "../tank-mix/batch-volume.js";
import { RESERVE, type Reserve } from "../tank-mix/carrier.js";
import { type FillList, fillFits } from "../tank-mix/loads.js";
import type { MixingRules } from "../tank-mix/mixing-order.js";
import { marksFit } from "../tank-mix/tank-marks.js";
import type { Check } from "../units/check.js";
import {
  about,
  byGiven,
  choice,
  type EitherField,
  either,
  type FieldsOf,
  list,
  named,
  type ObjectField,
  object,
  optional,
  type Partly,
  text,
} from "../units/fields.js";
import { quantity, treatedArea } from "../units/quantity-field.js";
import type { TreatedArea, Volume } from "../units/types.js";
import {
  DEFAULT_SPLIT,
  easiestHasMarks,
  FILL_LIST,
  fillsOfJobFit,
  isPlan,
  MIXING,
  MOST_PRODUCTS,
  namesDiffer,
  PLAN_INPUT,
  type PlanInput,
  PRODUCT,
  type Product,
  SPRAYER,
  type Sprayer,
} from "./input.js";
import { CURRENCY, type Currency } from "./money.js";

/** The tank, watering can or bucket that a mix by volume, count or row is made in. */
export type BatchSprayer = Omit<Sprayer, "rowsPerPass">;

/**
 * How a mix by volume, count or row is split: full tanks and a part load, equal loads, or whole plants to a load. `easiest` is
 * the first that `loadChoices` finds on the tank's marks; or give the fill of each load.
 */
export type BatchSplit = "full-then-part" | "equal" | "whole-plants" | "easiest" | FillList;

/** A job whose size isn't an area: a volume of mix, a count of plants, pots or trees, or a length of row. */
export interface BatchInput {
  /** What sizes the job: a volume of mix, a count with the volume for each, or a length of row. */
  readonly size: BatchSize;
  /** The treated area that it goes on: for rates and limits per area, and for the record. None unless given. */
  readonly area?: TreatedArea | undefined;
  /** What the place is called, for the record. */
  readonly name?: string | undefined;
  /** The tank, watering can or bucket that it is mixed in. */
  readonly sprayer: BatchSprayer;
  /** Extra mix, beyond what the job needs. None unless given. */
  readonly reserve?: Reserve | undefined;
  /** How the mix is split: full tanks and a part load unless given. */
  readonly split?: BatchSplit | undefined;
  /** The products, at least one. */
  readonly products: readonly Product[];
  /** What the order of mixing goes by besides the formulations: the label's own order, for one. */
  readonly mixing?: MixingRules | undefined;
  /** The tools that doses are measured with: the name of a set, or a list. */
  readonly tools: Tools;
  /** Water to be added without product. It raises a warning and changes no number. None unless given. */
  readonly addedWater?: Volume | undefined;
  /** The currency of the prices; two decimals and no name unless given. */
  readonly currency?: Currency | undefined;
}

/** A job by volume, count or row. */
export const BATCH_INPUT: ObjectField<BatchInput> = /* @__PURE__ */ named(
  "BatchInput",
  /* @__PURE__ */ object<BatchInput>(
    {
      size: BATCH_SIZE,
      area: optional(
        treatedArea(
          "The treated area that it goes on: for rates and limits per area, and for the record. None unless given.",
          { unmarked: true },
        ),
      ),
      name: optional(text("What the place is called, for the record.")),
      sprayer: about(
        "The tank, watering can or bucket that it is mixed in.",
        object<BatchSprayer>(tankFields(), [fillFits, marksFit]),
      ),
      reserve: optional(about("Extra mix, beyond what the job needs. None unless given.", RESERVE)),
      split: optional(
        either<BatchSplit>(
          "How the mix is split: full tanks and a part load unless given.",
          [
            choice("How the mix is split: full tanks and a part load unless given.", [
              "full-then-part",
              "equal",
              "whole-plants",
              "easiest",
            ]),
            FILL_LIST,
          ],
          (input) => (typeof input === "object" ? 1 : 0),
        ),
        DEFAULT_SPLIT,
      ),
      products: list("The products, at least one.", PRODUCT, { most: MOST_PRODUCTS }),
      mixing: optional(MIXING),
      tools: TOOLS,
      addedWater: optional(
        quantity(
          "Water to be added without product. It raises a warning and changes no number. None unless given.",
          "volume",
          "nonnegative",
        ),
      ),
      currency: optional(
        about("The currency of the prices; two decimals and no name unless given.", CURRENCY),
      ),
    },
    [namesDiffer, wholePlants, easiestHasMarks, fillsOfJobFit],
    "",
    isPlan,
  ),
);

function tankFields(): FieldsOf<BatchSprayer> {
  const { rowsPerPass: _, ...fields } = SPRAYER.fields;
  return fields;
}

/** A job of any size: on an area, or by volume, count or row. */
export type JobInput = PlanInput | BatchInput;

/** A job of any size. */
export const JOB_INPUT: EitherField<JobInput> = /* @__PURE__ */ either<JobInput>(
  "A whole job.",
  [PLAN_INPUT, BATCH_INPUT],
  /* @__PURE__ */ byGiven([["plot", "calibration"], ["size"]], 0),
);

/** Notes whole plants to a load where nothing is counted. */
function wholePlants({ size, split }: Partly<BatchInput>, check: Check): void {
  if (split !== "whole-plants" || size === undefined || size.kind === "count") return;
  check.fault(
    "conflict",
    "plants-not-counted",
    "split",
    "Whole plants to a load need a job by count. Choose equal loads instead.",
  );
}
