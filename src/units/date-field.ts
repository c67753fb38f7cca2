import { shown } from "../errors.js";
import type { Check } from "./check.js";
import { TextField } from "./fields.js";

/** A day, written as year-month-day with a year of four digits: `2025-04-12`. */
/* @__NO_SIDE_EFFECTS__ */
export function date(sentence: string): TextField {
  return new TextField(sentence, { name: "date", example: "2025-04-12", check: isDay });
}

function isDay(text: string, check: Check): boolean {
  const day = /^\d{4}-\d{2}-\d{2}$/.test(text) ? Date.parse(`${text}T00:00:00Z`) : Number.NaN;
  // A day that no month has, such as February 30, would pass for one of the next month.
  if (!Number.isNaN(day) && new Date(day).toISOString().startsWith(text)) return true;
  check.fault(
    "unreadable",
    "date-unreadable",
    "",
    "There is no date {given}. Write year-month-day, such as 2025-04-12.",
    { given: shown(text) },
  );
  return false;
}
