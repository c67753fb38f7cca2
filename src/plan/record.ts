import { SprayMathError, shown } from "../errors.js";
import { checked } from "../units/check.js";
import { date } from "../units/date-field.js";
import { checkedCount, checkedNumber } from "../units/guard.js";
import type { Mass, TreatedArea, Volume } from "../units/types.js";
import type { Product } from "./input.js";

/** Who applied, where, on what: what a record asks for besides the numbers. */
export interface ApplicationDetails {
  /** When the last of it was sprayed, as local time: `2026-05-02T09:30`. */
  readonly finished: string;
  /** When spraying began, as local time. */
  readonly started?: string;
  /** Who applied it. */
  readonly applicator?: string;
  /** The certification number of the applicator, or of the person who supervised. */
  readonly certification?: string;
  /** Where: a description or number by which the place can be found. */
  readonly location?: string;
  /** The crop, commodity or site. */
  readonly crop?: string;
  /** What it was against. */
  readonly target?: string;
  /** Wind, temperature and the like, as noted. */
  readonly weather?: string;
  /** Anything else. */
  readonly notes?: string;
}

/** A product as a record holds it. */
export interface RecordedProduct {
  /** The product. */
  readonly name: string;
  /** Its registration number. */
  readonly registration?: string;
  /** How much of the product itself was applied, water not counted. */
  readonly applied: Volume | Mass;
}

/**
 * The record of an application: plain data with the fields that rules ask for. Local rules decide which records must be
 * kept, for how long, and in which form.
 *
 * Source: 7 CFR 110.3(a) for product, registration number, amount, location, size of area, crop or site, date, and the
 * name and certification number of the applicator.
 */
export interface ApplicationRecord extends ApplicationDetails {
  /** The version of this layout. */
  readonly version: 1;
  /** The day, as year-month-day. */
  readonly date: string;
  /** The products and how much of each. */
  readonly products: readonly RecordedProduct[];
  /** The size of the area treated. */
  readonly treated: TreatedArea;
  /**
   * When people may go in again without the label's early-entry protection, as local time: the longest interval of the
   * products counts (40 CFR 170.112(a)(3) as of 2007). Left out where no product tells one.
   */
  readonly reEntry?: string;
  /** The first day of harvest, by the product with the longest wait. Left out where no product tells one. */
  readonly firstHarvest?: string;
  /** What 7 CFR 110.3(a) asks for and this record has not. */
  readonly missing: readonly string[];
}

/** How long the products of a plan want people and harvest to wait, where they tell it. */
export interface Waits {
  /** The hours until people may go in again. */
  readonly hours?: number;
  /** The days until harvest. */
  readonly days?: number;
}

/** The longest waits of the products. */
export function longestWaits(products: readonly Product[]): Waits {
  const hours = longest(products, "reEntryHours", (value, path) =>
    checkedNumber(value, path, { min: 0, max: 24_000 }),
  );
  const days = longest(products, "preHarvestDays", (value, path) =>
    checkedNumber(checkedCount(value, path, 0), path, { max: 1000 }),
  );
  return { ...(hours !== undefined && { hours }), ...(days !== undefined && { days }) };
}

/** Puts a record together. */
export function applicationRecord(
  details: ApplicationDetails,
  products: readonly Product[],
  { hours, days }: Waits,
  applied: readonly (Volume | Mass)[],
  treated: TreatedArea,
): ApplicationRecord {
  const finished = checkedTime(details.finished, "finished");
  const started = details.started === undefined ? undefined : checkedTime(details.started, "started");
  if (started !== undefined && started > finished) {
    throw new SprayMathError(
      "conflict",
      "started",
      `Given ${details.started}, after ${details.finished}; wanted it before the end.`,
    );
  }
  const { applicator, certification, location, crop, target, weather, notes } = details;
  const texts = { applicator, certification, location, crop, target, weather, notes };
  for (const [name, text] of Object.entries(texts)) checkText(text, name);
  return {
    version: 1,
    date: details.finished.slice(0, 10),
    ...details,
    products: products.map(({ name, registration }, i) => ({
      name,
      ...(registration !== undefined && { registration }),
      applied: applied[i] as Volume | Mass,
    })),
    treated,
    ...(hours !== undefined && { reEntry: local(finished + hours * HOUR) }),
    ...(days !== undefined && { firstHarvest: local(finished + days * 24 * HOUR).slice(0, 10) }),
    missing: [
      ...products.flatMap(({ registration }, i) => (registration ? [] : [`products[${i}].registration`])),
      ...(["location", "crop", "applicator", "certification"] as const).filter((name) => !texts[name]),
    ],
  };
}

const HOUR = 3_600_000;
const DAY = date("The day of a local time.");

// Local times are counted as if there were no daylight saving: the clock's hour may be off by one across a change, and
// the wait in hours is what the label asks for.
function checkedTime(text: string, path: string): number {
  if (text === undefined || text === null) {
    throw new SprayMathError("missing", path, "Nothing given; wanted a local time such as 2026-05-02T09:30.");
  }
  const match =
    typeof text === "string" ? /^(\d{4}-\d{2}-\d{2})T([01]\d|2[0-3]):([0-5]\d)$/.exec(text) : null;
  if (match === null) {
    throw new SprayMathError(
      "unreadable",
      path,
      `Given ${shown(text)}; wanted a local time such as 2026-05-02T09:30.`,
    );
  }
  checked(match[1], DAY, path);
  return Date.parse(`${text}:00Z`);
}

function local(time: number): string {
  return new Date(time).toISOString().slice(0, 16);
}

function checkText(text: string | undefined, path: string): void {
  if (text !== undefined && typeof text !== "string") {
    throw new SprayMathError("not-a-quantity", path, `Given ${shown(text)}; wanted text.`);
  }
}

function longest(
  products: readonly Product[],
  name: "reEntryHours" | "preHarvestDays",
  checked: (value: number, path: string) => number,
): number | undefined {
  const waits = products.flatMap((product, i) => {
    const wait = product[name];
    return wait === undefined ? [] : [checked(wait, `products[${i}].${name}`)];
  });
  return waits.length === 0 ? undefined : Math.max(...waits);
}
