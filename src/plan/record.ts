import { joinPath } from "../errors.js";
import type { BatchSize } from "../tank-mix/batch-volume.js";
import { type Check, checked } from "../units/check.js";
import { date } from "../units/date-field.js";
import {
  choice,
  type FieldsOf,
  holderOf,
  list,
  type ObjectField,
  object,
  optional,
  type Partly,
  TextField,
  text,
} from "../units/fields.js";
import { quantity, treatedArea } from "../units/quantity-field.js";
import type {
  Concentration,
  Count,
  Length,
  Mass,
  MassPerCount,
  MassPerLength,
  MassRate,
  TreatedArea,
  Volume,
  VolumePerCount,
  VolumePerLength,
  VolumeRate,
} from "../units/types.js";
import { version } from "../units/version-field.js";
import { ACTIVE_INGREDIENT, type Product, RE_ENTRY_HOURS } from "./input.js";
import { daysAfter, hoursAfter, localTime, timeOf, timeZone } from "./local-time.js";
import { MOST_PLOTS, type Plot } from "./plot.js";
import type { SpreadingSize } from "./spreading-input.js";

/** Who applied, where, on what: what a record asks for besides the numbers. */
export interface ApplicationDetails {
  /** When the last of it was applied, as local time, with its offset where that is known: `2026-05-02T09:30-05:00`. */
  readonly finished: string;
  /** When the work began, written like the end. */
  readonly started?: string | undefined;
  /** The IANA name of the time zone, such as `America/Chicago`, for times without an offset: hours then count across a clock change. */
  readonly timeZone?: string | undefined;
  /** Who applied it. */
  readonly applicator?: string | undefined;
  /** The certification number of the applicator, or of the person who supervised. */
  readonly certification?: string | undefined;
  /** Where: a description or number by which the place can be found. */
  readonly location?: string | undefined;
  /** The crop, commodity or site. */
  readonly crop?: string | undefined;
  /** What it was against. */
  readonly target?: string | undefined;
  /** Wind, temperature and the like, as noted. */
  readonly weather?: string | undefined;
  /** Anything else. */
  readonly notes?: string | undefined;
}

/** A text that may well be left out: a form's is often blank. */
class NoteField extends TextField {
  override missing(check: Check): undefined {
    return check.fault("missing", "text-blank", "", "This is blank. Enter some text, or leave it out.");
  }
}

/* @__NO_SIDE_EFFECTS__ */
function note(about: string): TextField {
  return new NoteField(about);
}

/** The fields of {@link ApplicationDetails}. */
export const DETAILS: FieldsOf<ApplicationDetails> = {
  finished: localTime(
    "When the last of it was applied, as local time, with its offset where that is known: `2026-05-02T09:30-05:00`.",
  ),
  started: optional(localTime("When the work began, written like the end.")),
  timeZone: optional(
    timeZone(
      "The IANA name of the time zone, such as `America/Chicago`, for times without an offset: hours then count across a clock change.",
    ),
  ),
  applicator: optional(note("Who applied it.")),
  certification: optional(
    note("The certification number of the applicator, or of the person who supervised."),
  ),
  location: optional(note("Where: a description or number by which the place can be found.")),
  crop: optional(note("The crop, commodity or site.")),
  target: optional(note("What it was against.")),
  weather: optional(note("Wind, temperature and the like, as noted.")),
  notes: optional(note("Anything else.")),
};

/** Notes an end before the start. */
export function endFollows({ started, finished, timeZone }: Partly<ApplicationDetails>, check: Check): void {
  if (started === undefined || finished === undefined || check.hasFault("timeZone")) return;
  if (timeOf(started, timeZone).instant <= timeOf(finished, timeZone).instant) return;
  check.fault(
    "conflict",
    "start-after-end",
    "started",
    "The start, {started}, is after the end, {finished}.",
    { started, finished },
  );
}

/** A product as a record holds it. */
export interface RecordedProduct {
  /** The product. */
  readonly name: string;
  /** Its registration number. */
  readonly registration?: string | undefined;
  /** Its active ingredient, or all of them, as the label names them. */
  readonly activeIngredient?: string | undefined;
  /** The label's restricted-entry interval in hours, 0 or more. */
  readonly reEntryHours?: number | undefined;
  /** How much of the product itself was applied, water not counted. */
  readonly applied: Volume | Mass;
  /** How much per treated area, on the plot that had most. Left out where no area was given. */
  readonly rate?: VolumeRate | MassRate | undefined;
  /** How much per plant, per length of row, or per volume of mix, where that sized the job. */
  readonly each?: VolumePerCount | MassPerCount | VolumePerLength | MassPerLength | Concentration | undefined;
}

/**
 * The record of an application: plain data with the fields that two rules of the United States ask for. Local rules decide
 * which records must be kept, for how long, and in which form; other countries have rules of their own.
 *
 * - Restricted-use products, 7 CFR 110.3(a): product, registration number, amount, location, size of area, crop or site, date,
 *   and the name and certification number of the applicator.
 * - Worker Protection Standard, 40 CFR 170.311(b), as revised in 2015 (80 FR 67496): product, registration number, active
 *   ingredient, crop or site, location, start and end with their times, and restricted-entry interval. An employer displays
 *   these, with the safety data sheet, within 24 hours of the end, and keeps them for two years after the interval.
 */
export interface ApplicationRecord extends ApplicationDetails {
  /** The version of this layout. A reader refuses one that it does not know. */
  readonly version: 1;
  /** The day, as year-month-day. */
  readonly date: string;
  /** What the plots are called: of those that have a name. */
  readonly plots?: readonly string[] | undefined;
  /** The products and how much of each. */
  readonly products: readonly RecordedProduct[];
  /** The size of the area treated. Left out where none was given. */
  readonly treated?: TreatedArea | undefined;
  /** How many plants, pots or trees were treated, where they were counted. */
  readonly count?: Count | undefined;
  /** The length of row treated, where that sized the job. */
  readonly rowLength?: Length | undefined;
  /** The mix that was used, where a job was sized by volume, count or row. */
  readonly mix?: Volume | undefined;
  /**
   * When people may go in again without the label's early-entry protection, as local time. It is the longest interval of the
   * products (United States: 40 CFR 170.407(c), as revised in 2015), rounded up to the minute. Left out where no product gives one.
   */
  readonly reEntry?: string | undefined;
  /** Whether the hours to re-entry count across a change of the clock: only where an offset or a time zone is given. */
  readonly clockChange: "counted" | "not-counted";
  /** The first day of harvest, by the product with the longest wait. Left out where no product gives one. */
  readonly firstHarvest?: string | undefined;
  /** What the rules of the United States ask for (7 CFR 110.3(a), 40 CFR 170.311(b)) and this record lacks. With it, each product's wait to harvest where only other products give one. */
  readonly missing: readonly string[];
}

/** A record that was kept. */
export const RECORD: ObjectField<ApplicationRecord> = /* @__PURE__ */ object<ApplicationRecord>(
  {
    ...DETAILS,
    version: version("The version of this layout. A reader refuses one that it does not know.", 1),
    date: date("The day, as year-month-day."),
    plots: optional(
      list("What the plots are called: of those that have a name.", text("What a plot is called."), {
        most: MOST_PLOTS,
      }),
    ),
    products: list(
      "The products and how much of each.",
      object<RecordedProduct>({
        name: text("The product."),
        registration: optional(text("Its registration number.")),
        activeIngredient: optional(ACTIVE_INGREDIENT),
        reEntryHours: optional(RE_ENTRY_HOURS),
        applied: quantity(
          "How much of the product itself was applied, water not counted.",
          ["volume", "mass"],
          "nonnegative",
        ),
        rate: optional(
          quantity(
            "How much per treated area, on the plot that had most. Left out where no area was given.",
            ["volumeRate", "massRate"],
            "nonnegative",
          ),
        ),
        each: optional(
          quantity(
            "How much per plant, per length of row, or per volume of mix, where that sized the job.",
            [
              "volumePerCount",
              "massPerCount",
              "volumePerLength",
              "massPerLength",
              "volumeConcentration",
              "density",
            ],
            "nonnegative",
          ),
        ),
      }),
    ),
    treated: optional(treatedArea("The size of the area treated. Left out where none was given.")),
    count: optional(
      quantity("How many plants, pots or trees were treated, where they were counted.", "count"),
    ),
    rowLength: optional(quantity("The length of row treated, where that sized the job.", "length")),
    mix: optional(
      quantity(
        "The mix that was used, where a job was sized by volume, count or row.",
        "volume",
        "nonnegative",
      ),
    ),
    reEntry: optional(
      localTime(
        "When people may go in again without the label's early-entry protection, as local time. It is the longest interval of the products (United States: 40 CFR 170.407(c), as revised in 2015), rounded up to the minute. Left out where no product gives one.",
      ),
    ),
    clockChange: choice(
      "Whether the hours to re-entry count across a change of the clock: only where an offset or a time zone is given.",
      ["counted", "not-counted"],
    ),
    firstHarvest: optional(
      date(
        "The first day of harvest, by the product with the longest wait. Left out where no product gives one.",
      ),
    ),
    missing: list(
      "What the rules of the United States ask for (7 CFR 110.3(a), 40 CFR 170.311(b)) and this record lacks. With it, each product's wait to harvest where only other products give one.",
      text("A field that is missing."),
      { least: 0 },
    ),
  },
  [endFollows, daysFollow],
  "",
  holderOf("record", {
    key: "result-for-record",
    template: "This only holds a record. Pass its record: done.record.",
  }),
);

/** Notes a day that isn't the one of the end, and a wait that is over before it: whoever mends one of them has to mend the others. */
function daysFollow(
  { date, finished, reEntry, firstHarvest }: Partly<ApplicationRecord>,
  check: Check,
): void {
  if (finished === undefined) return;
  const day = finished.slice(0, 10);
  if (date !== undefined && date !== day)
    check.fault(
      "conflict",
      "date-not-of-end",
      "date",
      "The date, {given}, isn't the day of the end, {finished}. Enter the same day.",
      { given: date, finished },
    );
  for (const [name, wait] of Object.entries({ reEntry, firstHarvest }))
    if (wait !== undefined && wait.slice(0, 10) < day)
      check.fault("conflict", "wait-before-end", name, "{wait} is before the end, {finished}. Check both.", {
        wait,
        finished,
      });
}

/**
 * Reads a record that was saved, from a file or another program.
 *
 * @param saved - what was saved, such as what `JSON.parse` returns
 * @returns the record, a copy
 * @throws SprayMathError `unknown-choice` for a version that isn't known, or what is wrong with a field, with its path
 *
 * @example
 * ```ts
 * import { readRecord } from "swath-to-spoon/plan";
 *
 * const saved = `{ "version": 1, "date": "2026-05-02", "finished": "2026-05-02T09:30", "clockChange": "not-counted",
 *   "products": [{ "name": "Product A", "applied": { "value": 900, "unit": "mL" }, "rate": { "value": 1.8, "unit": "L/ha" } }],
 *   "treated": { "value": 5000, "unit": "m2", "of": "treated" }, "missing": ["location"] }`;
 * console.log(readRecord(JSON.parse(saved)).products[0]?.applied); // { value: 900, unit: 'mL' }
 * ```
 */
export function readRecord(saved: unknown): ApplicationRecord {
  return checked(saved, RECORD);
}

/** What a record asks of a product, sprayed or spread. */
type OnRecord = Pick<
  Product,
  "name" | "registration" | "activeIngredient" | "reEntryHours" | "preHarvestDays"
>;

/** What a job that isn't on plots was sized by, as a record has it. */
export function sizeOnRecord(
  size: BatchSize | SpreadingSize,
): Pick<ApplicationRecord, "count" | "rowLength"> {
  if (size.kind === "count") return { count: size.count };
  return size.kind === "row-length" ? { rowLength: size.length } : {};
}

/** Puts a record together; `at` is the place of the details. Trusts its input. */
export function recordOf(
  details: ApplicationDetails,
  plots: readonly Pick<Plot, "name">[],
  products: readonly OnRecord[],
  applied: readonly Pick<RecordedProduct, "applied" | "rate" | "each">[],
  sizes: Pick<ApplicationRecord, "treated" | "count" | "rowLength" | "mix">,
  at: string,
): ApplicationRecord {
  const time = timeOf(details.finished, details.timeZone);
  const finishedAt = joinPath(at, "finished");
  const hours = longest(products, "reEntryHours");
  const days = longest(products, "preHarvestDays");
  const names = plots.flatMap(({ name }) => name ?? []);
  return {
    version: 1,
    date: details.finished.slice(0, 10),
    ...details,
    ...(names.length > 0 && { plots: names }),
    products: products.map(({ name, registration, activeIngredient, reEntryHours }, i) => ({
      name,
      ...(registration !== undefined && { registration }),
      ...(activeIngredient !== undefined && { activeIngredient }),
      ...(reEntryHours !== undefined && { reEntryHours }),
      ...(applied[i] as Pick<RecordedProduct, "applied" | "rate" | "each">),
    })),
    ...sizes,
    ...(hours !== undefined && { reEntry: hoursAfter(time, hours, finishedAt) }),
    clockChange: time.zone === undefined && time.offset === undefined ? "not-counted" : "counted",
    ...(days !== undefined && { firstHarvest: daysAfter(details.finished, days, finishedAt) }),
    missing: [
      ...(days === undefined ? [] : without(products, "preHarvestDays")),
      ...(["reEntryHours", "registration", "activeIngredient"] as const).flatMap((name) =>
        without(products, name),
      ),
      ...(sizes.treated === undefined ? ["treated"] : []),
      ...(["started", "location", "crop", "applicator", "certification"] as const).filter(
        (name) => !details[name],
      ),
    ],
  };
}

/** The longest wait of the products; nothing where none gives one. */
export function longest<N extends "reEntryHours" | "preHarvestDays">(
  products: readonly { readonly [K in N]?: number | undefined }[],
  name: N,
): number | undefined {
  const waits = products.flatMap((product) => product[name] ?? []);
  return waits.length === 0 ? undefined : Math.max(...waits);
}

/** The places of the products that lack a field. */
function without(
  products: readonly OnRecord[],
  name: "reEntryHours" | "preHarvestDays" | "registration" | "activeIngredient",
): string[] {
  return products.flatMap((product, i) => (product[name] === undefined ? [`products[${i}].${name}`] : []));
}
