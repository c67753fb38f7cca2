import { shown } from "../errors.js";
import type { Check } from "../units/check.js";
import { date } from "../units/date-field.js";
import { intl } from "../units/engine.js";
import { TextField } from "../units/fields.js";
import { refusal } from "../units/message.js";

const TIME = /^(\d{4}-\d{2}-\d{2})T((?:[01]\d|2[0-3]):[0-5]\d)(Z|[+-](?:0\d|1[0-4]):[0-5]\d)?$/;
const EXAMPLE = "2026-05-02T09:30";
const DAY: TextField = /* @__PURE__ */ date("The day of a local time.");

/** A local time, with its offset from UTC or without: `2026-05-02T09:30-05:00`. */
class LocalTimeField extends TextField {
  constructor(about: string) {
    super(about, { name: "local-time", example: EXAMPLE, check: isTime });
  }

  override missing(check: Check): undefined {
    return check.fault("missing", "enter-time", "", "Enter a local time, such as {example}.", {
      example: EXAMPLE,
    });
  }
}

function isTime(text: string, check: Check): boolean {
  const [, day] = TIME.exec(text) ?? [];
  if (day !== undefined) return DAY.read(day, check) !== undefined;
  check.fault(
    "unreadable",
    "time-unreadable",
    "",
    "Couldn't read {given}. Enter a local time, such as {example}.",
    { given: shown(text), example: EXAMPLE },
  );
  return false;
}

/** A local time. */
/* @__NO_SIDE_EFFECTS__ */
export function localTime(sentence: string): TextField {
  return new LocalTimeField(sentence);
}

/** The IANA name of a time zone. */
/* @__NO_SIDE_EFFECTS__ */
export function timeZone(sentence: string): TextField {
  return new TextField(sentence, { name: "time-zone", example: "America/Chicago", check: isZone });
}

function isZone(zone: string, check: Check): boolean {
  const Format = intl("DateTimeFormat");
  try {
    new Format("en-US", { timeZone: zone });
    return true;
  } catch {
    check.fault(
      "unknown-choice",
      "zone-unknown",
      "",
      "There is no time zone {given}. Enter one such as America/Chicago.",
      { given: shown(zone) },
    );
    return false;
  }
}

const MINUTE = 60_000;
const DAYS = 24 * 60 * MINUTE;

/** A time as it was written: the instant, and the offset or the zone that it was written in. Without either, UTC stands in. */
export interface WrittenTime {
  readonly instant: number;
  readonly offset?: string | undefined;
  readonly zone?: string | undefined;
}

/** The instant of a local time. Trusts its input. */
export function timeOf(text: string, zone: string | undefined): WrittenTime {
  const [, day, time, offset] = TIME.exec(text) as RegExpExecArray;
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
  const parts = new (intl("DateTimeFormat"))("en-US", {
    timeZone: zone,
    hourCycle: "h23",
    year: "numeric",
    month: "2-digit",
    day: "2-digit",
    hour: "2-digit",
    minute: "2-digit",
  }).formatToParts(instant);
  const part = (type: string): string =>
    (parts.find((one) => one.type === type) as Intl.DateTimeFormatPart).value;
  return `${part("year").padStart(4, "0")}-${part("month")}-${part("day")}T${part("hour")}:${part("minute")}`;
}

/** So many hours later, rounded up to the minute, as the clock shows it that the time was written by. */
export function hoursAfter(time: WrittenTime, hours: number, at: string): string {
  const { instant, offset, zone } = time;
  const later = Math.ceil(instant / MINUTE + hours * 60) * MINUTE;
  checkYear(later, at);
  if (zone !== undefined) return clockIn(zone, later);
  const clock = new Date(later + (offset === undefined ? 0 : minutesOf(offset) * MINUTE));
  return clock.toISOString().slice(0, 16) + (offset ?? "");
}

/** So many days after the day of a time. */
export function daysAfter(text: string, days: number, at: string): string {
  const day = Date.parse(`${text.slice(0, 10)}T00:00Z`) + days * DAYS;
  checkYear(day, at);
  return new Date(day).toISOString().slice(0, 10);
}

const LAST_INSTANT = /* @__PURE__ */ Date.parse("9999-12-30T00:00Z");

function checkYear(instant: number, at: string): void {
  if (instant <= LAST_INSTANT) return;
  throw refusal("out-of-range", "year-too-late", at, "This wait ends after the year 9999. Check the date.");
}
