import type { SeasonSoFar } from "../tank-mix/label-limits.js";
import { type Check, checked } from "../units/check.js";
import { inUnit } from "../units/convert.js";
import { date } from "../units/date-field.js";
import { dimensionOf } from "../units/dimensions.js";
import { list, type ObjectField, object, optional, type Partly, text } from "../units/fields.js";
import { nearest } from "../units/nearest.js";
import type { MassRate, VolumeRate } from "../units/types.js";
import { sameName } from "./input.js";
import { known } from "./plot-areas.js";
import { type ApplicationRecord, RECORD, type RecordedProduct } from "./record.js";

/** The input of {@link seasonSoFar}. */
export interface SeasonInput {
  /** The product's name. Capitals and spaces make no difference. */
  readonly product: string;
  /** The records of one plot and one season, in any order; other products in them don't count. */
  readonly records: readonly ApplicationRecord[];
  /** The day of the next application, as year-month-day: the days since the last one are counted to it. Not counted unless given. */
  readonly today?: string | undefined;
}

const SEASON: ObjectField<SeasonInput> = /* @__PURE__ */ object<SeasonInput>(
  {
    product: text("The product's name. Capitals and spaces make no difference."),
    records: list(
      "The records of one plot and one season, in any order; other products in them don't count.",
      RECORD,
      { least: 0, most: 1000 },
    ),
    today: optional(
      date(
        "The day of the next application, as year-month-day: the days since the last one are counted to it. Not counted unless given.",
      ),
    ),
  },
  [namesAreAlike, ratesAddUp, recordsCameBefore],
);

interface Applied {
  readonly at: string;
  readonly date: string;
  readonly rate: RecordedProduct["rate"];
}

/** The applications of a product: not those where nothing of it went out. */
function applicationsOf({ product = "", records = [] }: Partly<SeasonInput>): Applied[] {
  const name = sameName(product);
  return records.flatMap(({ date, products }, i) =>
    products.flatMap((one, k): Applied[] => {
      if (sameName(one.name) !== name || one.applied.value === 0) return [];
      return [{ at: `records[${i}].products[${k}].rate`, date, rate: one.rate }];
    }),
  );
}

/**
 * Notes a product whose name is almost the one that is looked for: what it had would not be counted. A product that the plot
 * hasn't had yet is no fault, and neither are names that differ by a number or a short word.
 */
function namesAreAlike({ product, records = [] }: Partly<SeasonInput>, check: Check): void {
  if (product === undefined) return;
  const name = sameName(product);
  const names = records.flatMap(({ products }, i) =>
    products.map((one, k) => ({ at: `records[${i}].products[${k}].name`, recorded: one.name })),
  );
  const found = names.find(({ recorded }) => isAlmost(sameName(recorded), name));
  if (found === undefined) return;
  // The name that stands alone is the likelier mistake.
  const isKnown = names.some(({ recorded }) => sameName(recorded) === name);
  const [given, meant] = isKnown ? [found.recorded, product] : [product, found.recorded];
  check.fault(
    "unknown-choice",
    "names-alike",
    isKnown ? found.at : "product",
    "Are {given} and {meant} the same product? Write both names the same way.",
    { given: given.trim(), meant: meant.trim() },
  );
}

/** Whether two names differ by blanks and punctuation alone, or by one slip in words of five letters or more. */
function isAlmost(one: string, other: string): boolean {
  if (one === other) return false;
  const [words, others] = [wordsOf(one), wordsOf(other)];
  if (words.length === 0) return false;
  if (words.join("") === others.join("")) return true;
  return (
    words.length === others.length &&
    words.every((word, i) => {
      const second = others[i] as string;
      return word === second || (/^\D{5,}$/.test(word) && nearest(word, [second], 1) === second);
    })
  );
}

function wordsOf(name: string): string[] {
  return name.split(/[^\p{L}\p{N}]+/u).filter((word) => word !== "");
}

/** Notes a product that was recorded by volume once and by weight another time. */
function ratesAddUp(given: Partly<SeasonInput>, check: Check): void {
  const [first, ...others] = applicationsOf(given);
  for (const { at, rate } of others)
    if (
      rate !== undefined &&
      first?.rate !== undefined &&
      dimensionOf(rate.unit) !== dimensionOf(first.rate.unit)
    )
      check.fault(
        "conflict",
        "volume-and-weight",
        at,
        "This record has {given} and another has {first}: one is by volume, the other by weight. Check which product it is.",
        { given: rate, first: first.rate },
      );
}

/** Notes a record from after the day of the next application. */
function recordsCameBefore(given: Partly<SeasonInput>, check: Check): void {
  const { records = [], today } = given;
  records.forEach((record, i) => {
    // Days written this way sort as they follow one another.
    if (today !== undefined && record.date > today)
      check.fault(
        "conflict",
        "record-after-today",
        `records[${i}].date`,
        "This record is from {given}, after {today}. Check the two dates.",
        { given: record.date, today },
      );
  });
}

const DAY = 24 * 60 * 60_000;

/**
 * Returns what a plot has had of a product so far in a season, from the records that were kept: what a plan takes as `soFar`.
 *
 * Formula: rate = Σ recorded rates, each on the plot that had most; applications = records in which some of it was applied;
 * days since the last = today − the latest date. Source: by definition of a season's total.
 *
 * @param input - the product, the records of the plot, and the day of the next application
 * @returns the rate in the unit of the first record (none where an application was recorded without an area), the number of applications, and the days since the last one
 * @throws SprayMathError `unknown-choice` where the records have almost the same name, so that nothing goes uncounted; leave out the
 *   records of a product that really is another. `conflict` where the records don't add up or are from after `today`, or what {@link readRecord} throws
 *
 * @example
 * ```ts
 * import { planApplication, reconcile, seasonSoFar } from "swath-to-spoon/plan";
 * import { qty } from "swath-to-spoon/units";
 *
 * const plan = planApplication({
 *   plot: { kind: "rectangle", length: qty(100, "m"), width: qty(50, "m") },
 *   calibration: { kind: "known", rate: qty(200, "L/ha") },
 *   sprayer: { tank: qty(150, "L") },
 *   products: [{ name: "Product A", form: "liquid", rate: qty(2, "L/ha") }],
 *   tools: "cylinders",
 * });
 * const { record } = reconcile(plan, { finished: "2026-05-02T09:30", left: qty(0, "L") });
 * const soFar = seasonSoFar({ product: "Product A", records: [record], today: "2026-05-12" });
 * console.log(soFar); // { rate: { value: 2, unit: 'L/ha' }, applications: 1, daysSinceLast: 10 }
 * ```
 */
export function seasonSoFar(input: SeasonInput): SeasonSoFar {
  const given = checked(input, SEASON);
  const applied = applicationsOf(given);
  const [first] = applied;
  if (first === undefined) return { applications: 0 };
  const rate = rateOfAll(applied);
  const last = Math.max(...applied.map(({ date }) => Date.parse(date)));
  return {
    ...(rate && { rate }),
    applications: applied.length,
    ...(given.today !== undefined && { daysSinceLast: (Date.parse(given.today) - last) / DAY }),
  };
}

/** All applications together; nothing where one of them was recorded without an area. */
function rateOfAll(applied: readonly Applied[]): VolumeRate | MassRate | undefined {
  const rates = known(applied.map(({ rate }) => rate));
  if (rates === undefined) return undefined;
  const { unit } = rates[0] as VolumeRate | MassRate;
  const value = rates.reduce((sum, rate) => sum + inUnit(rate, unit), 0);
  return { value, unit } as VolumeRate | MassRate;
}
