import { linesOfTiming, PLANT_TIMING, type PlantTiming, volumeOfTiming } from "../output-rate/timing.js";
import { type Check, checked } from "../units/check.js";
import { inUnit } from "../units/convert.js";
import { dimensionOf } from "../units/dimensions.js";
import {
  choice,
  count,
  type EitherField,
  either,
  hasField,
  kinds,
  named,
  type ObjectField,
  object,
} from "../units/fields.js";
import { formulaLines } from "../units/formula-lines.js";
import { called, measured, quantity, smallVolume } from "../units/quantity-field.js";
import { perUnit, resolveUnit } from "../units/resolve.js";
import { positive } from "../units/result.js";
import { unitsLike } from "../units/systems.js";
import type {
  Count,
  CountUnit,
  Length,
  LengthUnit,
  Measured,
  Quantity,
  Volume,
  VolumePerCount,
  VolumePerLength,
  VolumeUnit,
} from "../units/types.js";
import { conversionLines, type WorkingLine } from "../units/working-line.js";

/** A volume of mix, given: a spot tank, a hand gun's tank to spray to run-off. */
export interface VolumeSize {
  /** Says what sizes the job. */
  readonly kind: "volume";
  /** The mix that is to be sprayed or poured. More than 0. */
  readonly volume: Volume;
}

/** What was used on some plants, pots or trees, with clean water. */
export interface UsedOnPlants {
  /** What was used on all of them together. More than 0. */
  readonly used: Measured<Volume>;
  /** How many they were: a whole number, 1 or more. */
  readonly plants: number;
}

/** What one plant gets: a volume, a time at a known flow, or what was used on several. */
export type EachPlant = Volume | VolumePerCount | PlantTiming | UsedOnPlants;

/** A number of plants, pots, trees or spots, and what each of them gets. */
export interface CountSize {
  /** Says what sizes the job. */
  readonly kind: "count";
  /** How many there are, such as 300 pots. A whole number, 1 or more. */
  readonly count: Count;
  /** The mix that each of them gets: a volume, a time at a known flow, or what was used on several. */
  readonly each: EachPlant;
}

/** What was used on a length of row, with clean water. */
export interface UsedOnRow {
  /** What was used on it. More than 0. */
  readonly used: Measured<Volume>;
  /** The length of row that it was used on. More than 0. */
  readonly length: Measured<Length>;
}

/** A length of row, and what it gets: a drench in the furrow, transplants watered in. */
export interface RowSize {
  /** Says what sizes the job. */
  readonly kind: "row-length";
  /** The length of all rows together. More than 0. */
  readonly length: Length;
  /** The mix per length of row, or what was used on a length of it. More than 0. */
  readonly rate: VolumePerLength | UsedOnRow;
}

/** What sizes a job that isn't an area: a volume of mix, a count with the volume for each, or a length of row. */
export type BatchSize = VolumeSize | CountSize | RowSize;

const EACH_EXAMPLES = {
  us: { value: 4, unit: "fl_oz" },
  imperial: { value: 4, unit: "imp_fl_oz" },
  metric: { value: 100, unit: "mL" },
} as const;

const EACH: EitherField<EachPlant> = /* @__PURE__ */ either<EachPlant>(
  "The mix that each of them gets: a volume, a time at a known flow, or what was used on several.",
  [
    called(
      smallVolume(quantity("The mix that each of them gets. More than 0.", ["volume", "volumePerCount"])),
      "volume",
      EACH_EXAMPLES,
    ),
    PLANT_TIMING,
    object<UsedOnPlants>({
      used: measured("What was used on all of them together. More than 0.", "volume"),
      plants: count("How many they were: a whole number, 1 or more."),
    }),
  ],
  (input) => (hasField(input, ["flow", "time"]) ? 1 : hasField(input, ["used", "plants"]) ? 2 : 0),
);

const PER_LENGTH: EitherField<VolumePerLength | UsedOnRow> = /* @__PURE__ */ either<
  VolumePerLength | UsedOnRow
>(
  "The mix per length of row, or what was used on a length of it. More than 0.",
  [
    quantity("The mix per length of row. More than 0.", "volumePerLength"),
    object<UsedOnRow>({
      used: measured("What was used on it. More than 0.", "volume"),
      length: measured("The length of row that it was used on. More than 0.", "length"),
    }),
  ],
  (input) => (hasField(input, ["used", "length"]) ? 1 : 0),
);

const VOLUME_SIZE: ObjectField<VolumeSize> = /* @__PURE__ */ object<VolumeSize>({
  kind: choice("Says what sizes the job.", ["volume"]),
  volume: quantity("The mix that is to be sprayed or poured. More than 0.", "volume"),
});

const COUNT_SIZE: ObjectField<CountSize> = /* @__PURE__ */ object<CountSize>(
  {
    kind: choice("Says what sizes the job.", ["count"]),
    count: quantity("How many there are, such as 300 pots. A whole number, 1 or more.", "count"),
    each: EACH,
  },
  [countIsWhole],
);

const ROW_SIZE: ObjectField<RowSize> = /* @__PURE__ */ object<RowSize>({
  kind: choice("Says what sizes the job.", ["row-length"]),
  length: quantity("The length of all rows together. More than 0.", "length"),
  rate: PER_LENGTH,
});

/** What sizes a job that isn't an area. */
export const BATCH_SIZE: EitherField<BatchSize> = /* @__PURE__ */ named(
  "BatchSize",
  /* @__PURE__ */ kinds<BatchSize>(
    "What sizes the job: a volume of mix, a count with the volume for each, or a length of row.",
    { volume: VOLUME_SIZE, count: COUNT_SIZE, "row-length": ROW_SIZE },
  ),
);

/** Notes a number of plants that is not whole. */
export function countIsWhole({ count: given }: { readonly count?: Count | undefined }, check: Check): void {
  if (given === undefined || Number.isSafeInteger(inUnit(given, "plant"))) return;
  check.fault("out-of-range", "whole-count", "count", "Enter a whole number, 1 or more.", { given });
}

/** The spray mix for a job by volume, count or row, and the mix per plant or per length. */
export interface BatchVolume {
  /** The mix that is sprayed or poured. */
  readonly volume: Volume;
  /** The mix that each plant, pot or tree gets, where they are counted. */
  readonly carrierPerCount?: VolumePerCount | undefined;
  /** The mix per length of row, where it is for rows. */
  readonly carrierPerLength?: VolumePerLength | undefined;
}

/**
 * Returns the spray mix for a job sized by a volume, a count of plants, pots or trees, or a length of row.
 *
 * Formulas: the volume itself; count × volume for each; length × volume per length. What each gets is a volume, flow ×
 * time, or used ÷ plants; the volume per length is given, or used ÷ length. Source: by definition of each rate.
 *
 * @param size - volumes, lengths, counts and times more than 0
 * @returns the mix in gal, `imp_gal` or L, by the system of the volume that was entered, and what each plant or length gets
 * @throws SprayMathError `missing`, `not-a-quantity`, `not-finite`, `unknown-unit`, `unknown-field`, `unknown-choice`,
 * `wrong-dimension` or `out-of-range`
 *
 * @example
 * ```ts
 * import { batchVolume } from "swath-to-spoon/tank-mix";
 * import { qty } from "swath-to-spoon/units";
 *
 * const pots = batchVolume({ kind: "count", count: qty(300, "pot"), each: qty(4, "fl_oz") });
 * console.log(pots.volume); // { value: 9.375, unit: 'gal' }
 * console.log(pots.carrierPerCount); // { value: 4, unit: 'fl_oz/pot' }
 * ```
 */
export function batchVolume(size: BatchSize): BatchVolume {
  return volumeOfBatch(checked(size, BATCH_SIZE));
}

/**
 * The working of {@link batchVolume}.
 *
 * @param size - as for {@link batchVolume}
 * @returns the lines, in order, ending with the mix; none for a volume in the unit that it is reported in
 * @throws SprayMathError what {@link batchVolume} throws
 *
 * @example
 * ```ts
 * import { qty } from "swath-to-spoon/units";
 * import { batchVolume } from "swath-to-spoon/working";
 *
 * const lines = batchVolume({ kind: "count", count: qty(300, "pot"), each: qty(4, "fl_oz") });
 * console.log(lines.map((line) => line.formula)[0]); // each * count
 * ```
 */
export function batchVolumeWorking(size: BatchSize): WorkingLine[] {
  return linesOfBatch(checked(size, BATCH_SIZE));
}

/** A rate times what it is per, and the steps on the way. */
interface BatchSteps {
  /** What one plant or one length gets; nothing where the volume is given. */
  readonly rate?: Quantity | undefined;
  /** The plants, or the length, in the unit that the rate is per. */
  readonly times?: Quantity | undefined;
  /** Rate times these, in the rate's own volume. */
  readonly product: Volume;
  readonly result: BatchVolume;
}

function stepsOf(size: BatchSize, at: string): BatchSteps {
  if (size.kind === "volume") return { product: size.volume, result: { volume: reported(size.volume, at) } };
  if (size.kind === "count") {
    const carrierPerCount = eachOf(size, at);
    const steps = timesSteps(carrierPerCount, size.count, at);
    return { ...steps, result: { volume: reported(steps.product, at), carrierPerCount } };
  }
  const carrierPerLength = perLengthOf(size.rate, at);
  const steps = timesSteps(carrierPerLength, size.length, at);
  return { ...steps, result: { volume: reported(steps.product, at), carrierPerLength } };
}

function timesSteps(rate: Quantity, size: Count | Length, at: string) {
  const { over, per } = resolveUnit(rate.unit);
  const times = { value: inUnit(size, per as CountUnit & LengthUnit), unit: per as CountUnit | LengthUnit };
  const product: Volume = { value: positive(rate.value * times.value, at), unit: over as VolumeUnit };
  return { rate, times, product };
}

function reported(volume: Volume, at: string): Volume {
  const { volume: unit } = unitsLike(volume.unit);
  return { value: positive(inUnit(volume, unit), at), unit };
}

/** What each of a count gets, per one of what is counted. */
function eachOf({ count: { unit }, each }: CountSize, at: string): VolumePerCount {
  if ("used" in each) {
    const { smallVolume } = unitsLike(each.used.unit);
    return perOne(inUnit(each.used, smallVolume) / each.plants, smallVolume, unit, at);
  }
  const given = "flow" in each ? volumeOfTiming(each, at) : each;
  if (isPerCount(given)) return given;
  return perOne(given.value, given.unit, unit, at);
}

function isPerCount(each: Volume | VolumePerCount): each is VolumePerCount {
  return dimensionOf(each.unit) === "volumePerCount";
}

// Of thousands, too, each gets the volume.
function perOne(value: number, volume: VolumeUnit, of: CountUnit, at: string): VolumePerCount {
  const unit = perUnit(volume, of === "1000plant" ? "plant" : of) as VolumePerCount["unit"];
  return { value: positive(value, at), unit };
}

function perLengthOf(rate: VolumePerLength | UsedOnRow, at: string): VolumePerLength {
  if (!("used" in rate)) return rate;
  const { used, length } = rate;
  const { smallVolume } = unitsLike(used.unit);
  const unit = perUnit(smallVolume, length.unit) as VolumePerLength["unit"];
  return { value: positive(inUnit(used, smallVolume) / length.value, at), unit };
}

/** The mix that a job by volume, count or row takes; `at` is the size's place. Trusts its input. */
export function volumeOfBatch(size: BatchSize, at = ""): BatchVolume {
  return stepsOf(size, at).result;
}

/** The working of {@link volumeOfBatch}. Trusts its input. */
export function linesOfBatch(size: BatchSize): WorkingLine[] {
  const { rate, times, product, result } = stepsOf(size, "");
  const source = "by definition of the rate";
  const inMix = conversionLines("tank-mix.carrier.sprayed", product, result.volume.unit);
  if (size.kind === "volume" || rate === undefined || times === undefined) return inMix;
  if (size.kind === "count")
    return [
      ...linesOfEach(size, result.carrierPerCount as VolumePerCount),
      {
        id: "tank-mix.batchOfCount",
        formula: "each * count",
        terms: { each: rate, count: times },
        result: product,
        source,
      },
      ...inMix,
    ];
  return [
    ...linesOfPerLength(size.rate, rate),
    ...conversionLines("tank-mix.batchOfRow.length", size.length, times.unit),
    {
      id: "tank-mix.batchOfRow",
      formula: "rate * length",
      terms: { rate, length: times },
      result: product,
      source,
    },
    ...inMix,
  ];
}

function linesOfEach({ each }: CountSize, result: VolumePerCount): WorkingLine[] {
  if ("flow" in each) return linesOfTiming(each);
  if (!("used" in each)) return [];
  const { used, plants } = each;
  const { over } = resolveUnit(result.unit);
  return formulaLines({
    id: "tank-mix.each",
    formula: "used / plants",
    terms: { used: [used, over as VolumeUnit], plants },
    result,
    source: "definition of a mean",
  });
}

function linesOfPerLength(rate: VolumePerLength | UsedOnRow, result: Quantity): WorkingLine[] {
  if (!("used" in rate)) return [];
  const { used, length } = rate;
  return formulaLines({
    id: "tank-mix.perLength",
    formula: "used / length",
    terms: {
      used: [used, resolveUnit(result.unit).over as VolumeUnit],
      length: [length, length.unit],
    },
    result,
    source: "by definition of the rate",
  });
}
