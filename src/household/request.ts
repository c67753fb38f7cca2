import type { Check } from "../units/check.js";
import {
  type ChoiceField,
  choice,
  count,
  type FieldsOf,
  number,
  type Optional,
  optional,
  type Partly,
} from "../units/fields.js";
import { type QuantityField, quantity } from "../units/quantity-field.js";
import type { Mass, MassUnit, Quantity, Volume, VolumeUnit } from "../units/types.js";
import { type Kind, type Kit, kitFor } from "./kit.js";
import { CLOSE_ENOUGH_PERCENT, LIMIT_PERCENT, type MeasuringRule, MOST_SCOOPS, type Way } from "./measure.js";
import { isWeight } from "./measuring-tool.js";
import { type Effort, newEffort } from "./search.js";
import { TOOLS, type Tools } from "./tools.js";

/** The input of every measuring function. */
export interface MeasuringInput<U extends VolumeUnit | MassUnit = VolumeUnit | MassUnit> {
  /** The amount of product: a volume or a weight. More than 0. */
  readonly amount: Quantity<U>;
  /** The tools that doses are measured with: the name of a set, or a list. */
  readonly tools: Tools;
  /** `never-over` where the amount is a label's maximum, `never-under` where it is a minimum, or `nearest`. */
  readonly rule: MeasuringRule;
  /** The largest error that will do, in percent of the amount, 0.1 to 50. 5 unless given. */
  readonly limitPercent?: number | undefined;
  /** The error up to which the fewest measures win, in percent of the amount, 0 to 50. 2 unless given. */
  readonly closeEnoughPercent?: number | undefined;
  /** The most scoops to count, 1 to 100. 16 unless given. */
  readonly maxScoops?: number | undefined;
}

/** The names of the rules, for a form's list of choices. */
export const measuringRules: readonly MeasuringRule[] = /* @__PURE__ */ Object.freeze<MeasuringRule[]>([
  "never-over",
  "never-under",
  "nearest",
]);

/** An amount of product. */
const AMOUNT: QuantityField<Volume | Mass> = quantity(
  "The amount of product: a volume or a weight. More than 0.",
  ["volume", "mass"],
);

/** The rule of measuring. */
export const RULE: ChoiceField<MeasuringRule> = choice(
  "`never-over` where the amount is a label's maximum, `never-under` where it is a minimum, or `nearest`.",
  measuringRules,
);

/** The largest error. */
export const ERROR_LIMIT: Optional<number> = optional(
  number("The largest error that will do, in percent of the amount, 0.1 to 50. 5 unless given.", {
    min: 0.1,
    max: 50,
  }),
);

/** The error that is close enough. */
export const CLOSE_ENOUGH: Optional<number> = optional(
  number(
    "The error up to which the fewest measures win, in percent of the amount, 0 to 50. 2 unless given.",
    { min: 0, max: 50 },
  ),
);

/** The fields that every measuring function has. */
export const MEASURING: FieldsOf<MeasuringInput> = {
  amount: AMOUNT,
  tools: TOOLS,
  rule: RULE,
  limitPercent: ERROR_LIMIT,
  closeEnoughPercent: CLOSE_ENOUGH,
  maxScoops: optional(count("The most scoops to count, 1 to 100. 16 unless given.", 1, 100)),
};

/** What an amount is: measured with spoons and cylinders, or on a scale. */
export function kindOf(amount: Quantity<VolumeUnit | MassUnit>): Kind {
  return isWeight(amount) ? "weight" : "volume";
}

/** Notes that no tool measures the amount's kind. */
export function toolsFit({ amount, tools }: Partly<MeasuringInput>, check: Check): void {
  if (amount !== undefined && tools !== undefined) kindIsMeasured(amount, tools, check);
}

/** Notes that no tool measures an amount's kind. */
export function kindIsMeasured(amount: Quantity<VolumeUnit | MassUnit>, tools: Tools, check: Check): void {
  const kind = kindOf(amount);
  if (kitFor(tools, kind) !== undefined) return;
  check.fault(
    "wrong-dimension",
    kind === "weight" ? "no-scale" : "no-volume-tool",
    "tools",
    kind === "weight"
      ? "{amount} is a weight and none of these tools is a scale: weigh it, or enter the product's bulk density. oz (weight) and fl oz (volume) are different."
      : "{amount} is a volume and these tools only weigh: choose spoons, a syringe or a cylinder. oz (weight) and fl oz (volume) are different.",
    { amount },
  );
}

/** The tools for an amount, and how it is to be measured. Trusts its input. */
export function wayOf(
  {
    amount,
    tools,
    rule,
    limitPercent = LIMIT_PERCENT,
    closeEnoughPercent = CLOSE_ENOUGH_PERCENT,
    maxScoops = MOST_SCOOPS,
  }: MeasuringInput,
  effort: Effort = newEffort(),
): { readonly kit: Kit; readonly way: Way } {
  return {
    kit: kitFor(tools, kindOf(amount)) as Kit,
    way: { rule, limitPercent, closeEnoughPercent, maxScoops, effort },
  };
}
