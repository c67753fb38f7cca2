import type { Check } from "../units/check.js";
import { inUnit } from "../units/convert.js";
import { ceilDecided, floorDecided } from "../units/decide.js";
import { dimensionOf } from "../units/dimensions.js";
import {
  type Complete,
  named,
  type ObjectField,
  object,
  optional,
  type Partly,
  text,
} from "../units/fields.js";
import { type QuantityField, quantity, smallVolume } from "../units/quantity-field.js";
import type { Mass, Quantity, Volume } from "../units/types.js";
import { type Exact, exactSize, timesExactly } from "./exact-sizes.js";

/** Something that a person measures a product with: a spoon, a cup, a syringe, a cylinder, a scale. */
export interface MeasuringTool {
  /** What it is called, as it is to be printed. */
  readonly name: string;
  /** What it holds when full, or the most that a scale weighs. More than 0. */
  readonly capacity: Volume | Mass;
  /** For a tool with marks: the amount between two marks. A tool without it is always filled whole. */
  readonly graduation?: Volume | Mass | undefined;
  /** For a tool with marks: the least that it reads. One graduation unless given. */
  readonly least?: Volume | Mass | undefined;
}

/* @__NO_SIDE_EFFECTS__ */
function size(sentence: string): QuantityField<Volume | Mass> {
  return smallVolume(quantity(sentence, ["volume", "mass"]));
}

/** A tool's fields. */
export const MEASURING_TOOL: ObjectField<MeasuringTool> = named(
  "MeasuringTool",
  object<MeasuringTool>(
    {
      name: text("What it is called, as it is to be printed."),
      capacity: size("What it holds when full, or the most that a scale weighs. More than 0."),
      graduation: optional(
        size(
          "For a tool with marks: the amount between two marks. A tool without it is always filled whole.",
        ),
      ),
      least: optional(size("For a tool with marks: the least that it reads. One graduation unless given.")),
    },
    [leastHasMarks, marksAreOfOneKind, marksCanBeCounted],
    "Something to measure with: a spoon, a cup, a syringe, a cylinder, a scale.",
  ),
);

function leastHasMarks({ graduation, least }: Partly<MeasuringTool>, check: Check): void {
  if (least === undefined || graduation !== undefined || check.hasFault("graduation")) return;
  check.fault(
    "missing",
    "marks-missing",
    "graduation",
    "You gave the smallest reading, {least}, but not the spacing of the marks. Enter the spacing too.",
    { least },
  );
}

function marksAreOfOneKind(given: Partly<MeasuringTool>, check: Check): void {
  const { capacity } = given;
  if (capacity === undefined) return;
  for (const field of ["graduation", "least"] as const) {
    const amount = given[field];
    if (amount === undefined || isWeight(amount) === isWeight(capacity)) continue;
    check.fault(
      "wrong-dimension",
      isWeight(capacity) ? "marks-not-weight" : "marks-not-volume",
      field,
      isWeight(capacity)
        ? "{given} is a volume and the tool weighs up to {capacity}. Enter a weight."
        : "{given} is a weight and the tool holds {capacity}. Enter a volume.",
      { given: amount, capacity },
    );
  }
}

// No instrument shows more: past it a unit is wrong.
const MOST_MARKS = 1_000_000;

function marksCanBeCounted(given: Partly<MeasuringTool>, check: Check): void {
  const { capacity, graduation, least } = given;
  if (capacity === undefined || graduation === undefined) return;
  if ([graduation, least].some((amount) => amount && isWeight(amount) !== isWeight(capacity))) return;
  const tool = { capacity, graduation, least: least ?? graduation } as MarkedTool;
  for (const field of ["capacity", "least"] as const) {
    if (exactMarks(tool, field) <= MOST_MARKS) continue;
    check.fault(
      "out-of-range",
      "too-many-marks",
      field === "capacity" ? "graduation" : "least",
      "Marks {graduation} apart up to {given} make more than {limit} marks. Check the units.",
      { graduation, given: tool[field], limit: MOST_MARKS },
    );
    return;
  }
  const marks = marksOf(tool);
  if (marks.least <= marks.most) return;
  check.fault(
    "out-of-range",
    least === undefined ? "no-mark" : "no-mark-from-least",
    least === undefined ? "graduation" : "least",
    least === undefined
      ? "A tool that holds {capacity} can't have marks {graduation} apart."
      : "A tool that holds {capacity}, with marks {graduation} apart, has no mark at {least} or above.",
    { capacity, graduation, ...(least !== undefined && { least }) },
  );
}

/** Whether an amount is weighed; otherwise it is a volume. */
export function isWeight({ unit }: Quantity): boolean {
  return dimensionOf(unit) === "mass";
}

/** A tool with marks: every size in it is of one dimension. */
type MarkedTool = Complete<Omit<MeasuringTool, "name">>;

/** What one fill of a tool can be: `step`, in liters or kilograms, a whole number of times from `least` to `most`. */
export interface Marks {
  readonly step: Exact;
  readonly least: number;
  readonly most: number;
}

/** How many marks there are up to a tool's capacity or its least reading, noise and all. */
function exactMarks({ graduation, ...tool }: MarkedTool, upTo: "capacity" | "least"): number {
  return inUnit(tool[upTo], graduation.unit) / graduation.value;
}

/** The marks of a tool, counted noise aside: a tenth of 0.3 mL is there three times. A tool without marks has one. */
export function marksOf(tool: Omit<MeasuringTool, "name">): Marks {
  const { capacity, graduation, least } = tool;
  if (graduation === undefined) return { step: exactSize(capacity), least: 1, most: 1 };
  return {
    step: exactSize(graduation),
    least: least === undefined ? 1 : ceilDecided(exactMarks(tool as MarkedTool, "least")),
    most: floorDecided(exactMarks(tool as MarkedTool, "capacity")),
  };
}

/** So many marks, or so many fills of a tool without marks, as an amount. */
export function amountOf({ value, unit }: Volume | Mass, marks: number): Volume | Mass {
  return { value: timesExactly(value, marks), unit } as Volume | Mass;
}
