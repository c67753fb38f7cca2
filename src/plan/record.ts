import { SprayMathError, shown } from "../errors.js";
import { checked } from "../units/check.js";
import { date } from "../units/date-field.js";
import { checkedCount, checkedNumber } from "../units/guard.js";
import { refusal } from "../units/message.js";
import type { Mass, TreatedArea, Volume } from "../units/types.js";
import type { Product } from "./input.js";

/** Who applied, where, on what: what a record asks for besides the numbers. */
export interface ApplicationDetails {
  /** When the last of it was sprayed, as local time, with its offset where that is known: `2026-05-02T09:30-05:00`. */
  readonly finished: string;
  /** When spraying began, written like the end. */
  readonly started?: string;
  /** The IANA name of the time zone, such as `America/Chicago`, for times without an offset: hours then count across a clock change. */
  readonly timeZone?: string;
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

/** The names of the details. */
export const DETAIL_NAMES: readonly (keyof ApplicationDetails)[] = [
  "finished",
  "started",
  "timeZone",
  "applicator",
  "certification",
  "location",
  "crop",
  "target",
  "weather",
  "notes",
];

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
   * products counts (40 CFR 170.112(a)(3) as of 2007), rounded up to the minute. Left out where no product gives one.
   */
  readonly reEntry?: string;
  /** Whether the hours to re-entry count across a change of the clock: only where an offset or a time zone is given. */
  readonly clockChange: "counted" | "not-counted";
  /** The first day of harvest, by the product with the longest wait. Left out where no product gives one. */
  readonly firstHarvest?: string;
  /** What 7 CFR 110.3(a) asks for and this record lacks, and each product's waits where only other products give them. */
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
  const { timeZone } = details;
  if (timeZone !== undefined) checkZone(timeZone);
  const finished = checkedTime(details.finished, "finished", timeZone);
  const started =
    details.started === undefined ? undefined : checkedTime(details.started, "started", timeZone);
  if (started !== undefined && started.instant > finished.instant) {
    throw refusal(
      "conflict",
      "start-after-end",
      "started",
      "The start, {started}, is after the end, {finished}.",
      {
        started: details.started as string,
        finished: details.finished,
      },
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
    ...(hours !== undefined && {
      reEntry: localTime(Math.ceil(finished.instant / MINUTE + hours * 60) * MINUTE, finished),
    }),
    clockChange: finished.zone === undefined && finished.offset === undefined ? "not-counted" : "counted",
    ...(days !== undefined && { firstHarvest: dateAfter(details.finished, days) }),
    missing: [
      ...(hours === undefined ? [] : without(products, "reEntryHours")),
      ...(days === undefined ? [] : without(products, "preHarvestDays")),
      ...products.flatMap(({ registration }, i) => (registration ? [] : [`products[${i}].registration`])),
      ...(["location", "crop", "applicator", "certification"] as const).filter((name) => !texts[name]),
    ],
  };
}

/** The places of the products that don't give a wait. */
function without(products: readonly Product[], name: "reEntryHours" | "preHarvestDays"): string[] {
  return products.flatMap((product, i) => (product[name] === undefined ? [`products[${i}].${name}`] : []));
}

const MINUTE = 60_000;

/** A time as it was written: the instant, and the offset or the zone that it was written in. Without either, UTC stands in. */
interface WrittenTime {
  readonly instant: number;
  readonly offset?: string;
  readonly zone?: string;
}

const TIME = /^(\d{4}-\d{2}-\d{2})T((?:[01]\d|2[0-3]):[0-5]\d)(Z|[+-](?:0\d|1[0-4]):[0-5]\d)?$/;
const EXAMPLE = "2026-05-02T09:30";
const DAY = date("The day of a local time.");

function checkedTime(text: string, path: string, zone: string | undefined): WrittenTime {
  if (text === undefined || text === null)
    throw refusal("missing", "enter-time", path, "Enter a local time, such as {example}.", {
      example: EXAMPLE,
    });
  const [, day, time, offset] = (typeof text === "string" && TIME.exec(text)) || [];
  if (day === undefined || time === undefined) {
    throw refusal(
      "unreadable",
      "time-unreadable",
      path,
      "Couldn't read {given}. Enter a local time, such as {example}.",
      {
        given: shown(text),
        example: EXAMPLE,
      },
    );
  }
  checked(day, DAY, path);
  const clock = Date.parse(`${day}T${time}Z`);
  if (offset !== undefined) return { instant: clock - minutesOf(offset) * MINUTE, offset };
  if (zone === undefined) return { instant: clock };
  // The zone's offset at the clock's reading; twice, where the first guess lies on the other side of a clock change.
  let instant = clock - offsetIn(zone, clock);
  instant = clock - offsetIn(zone, instant);
  return { instant, zone };
}

function minutesOf(offset: string): number {
  if (offset === "Z") return 0;
  const [hours, minutes] = offset.slice(1).split(":").map(Number) as [number, number];
  return (offset.startsWith("-") ? -1 : 1) * (60 * hours + minutes);
}

/** How far a zone's clock is ahead of UTC at an instant, in milliseconds. */
function offsetIn(zone: string, instant: number): number {
  return Date.parse(`${clockIn(zone, instant)}Z`) - Math.floor(instant / MINUTE) * MINUTE;
}

/** What a zone's clock reads at an instant, to the minute. */
function clockIn(zone: string, instant: number): string {
  const parts = new Intl.DateTimeFormat("en-US", {
    timeZone: zone,
    hourCycle: "h23",
    year: "numeric",
    month: "2-digit",
    day: "2-digit",
    hour: "2-digit",
    minute: "2-digit",
  }).formatToParts(instant);
  const part = (type: string): string => parts.find((one) => one.type === type)?.value ?? "";
  return `${part("year").padStart(4, "0")}-${part("month")}-${part("day")}T${part("hour")}:${part("minute")}`;
}

function checkZone(zone: string): void {
  try {
    if (typeof zone === "string") new Intl.DateTimeFormat("en-US", { timeZone: zone });
    if (typeof zone === "string") return;
  } catch {
    // Refused below.
  }
  throw refusal(
    "unknown-choice",
    "zone-unknown",
    "timeZone",
    "There is no time zone {given}. Enter one such as America/Chicago.",
    {
      given: shown(zone),
    },
  );
}

/** An instant as the clock shows it that a time was written by. */
function localTime(instant: number, { offset, zone }: WrittenTime): string {
  checkYear(instant);
  if (zone !== undefined) return clockIn(zone, instant);
  const clock = new Date(instant + (offset === undefined ? 0 : minutesOf(offset) * MINUTE));
  return clock.toISOString().slice(0, 16) + (offset ?? "");
}

function dateAfter(finished: string, days: number): string {
  const day = Date.parse(`${finished.slice(0, 10)}T00:00Z`) + days * 24 * 60 * MINUTE;
  checkYear(day);
  return new Date(day).toISOString().slice(0, 10);
}

const LAST_INSTANT = Date.parse("9999-12-30T00:00Z");

function checkYear(instant: number): void {
  if (instant <= LAST_INSTANT) return;
  throw refusal(
    "out-of-range",
    "year-too-late",
    "finished",
    "This wait ends after the year 9999. Check the date.",
  );
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
