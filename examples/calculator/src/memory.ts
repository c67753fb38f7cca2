import type { UnitSystem } from "swath-to-spoon/units";
import { type Field, JOB_FIELDS, type Job, PLOT_KINDS, productFields, TOOLS } from "./job.ts";
import { type Entry, inUnit, unitsFor } from "./units.ts";

const KEY = "spray-job-1";

/** Keeps the job for the next visit. A browser that can't (a private window, a full disk) is not an error. */
export function keep(job: Job, locale: string): void {
  try {
    localStorage.setItem(KEY, JSON.stringify({ locale, job }));
  } catch {
    // The page works on without a memory.
  }
}

/** Returns the job of the last visit, if this page can still read it. */
export function kept(locale: string): Job | undefined {
  try {
    const found = JSON.parse(localStorage.getItem(KEY) ?? "null");
    // Numbers written for another country would be misread.
    if (found === null || found.locale !== locale || !isJob(found.job)) return undefined;
    return found.job;
  } catch {
    return undefined;
  }
}

function isJob(value: Job): value is Job {
  const { system, plot, tools, scale, entries, products } = value;
  const whole = (fields: readonly Field[], given: Job["entries"]): boolean =>
    fields.every((field) => isEntry(given[field.key], field, system));
  return (
    ["us", "imperial", "metric"].includes(system) &&
    Object.hasOwn(PLOT_KINDS, plot) &&
    Object.hasOwn(TOOLS, tools) &&
    typeof scale === "boolean" &&
    whole(JOB_FIELDS, entries) &&
    products.length > 0 &&
    products.every(
      ({ name, form, entries }) =>
        typeof name === "string" &&
        (form === "liquid" || form === "dry") &&
        whole(productFields(form), entries),
    )
  );
}

// A quantity that can't be converted to the field's unit throws, and then the job is not read.
function isEntry(value: Entry | undefined, { kind }: Field, system: UnitSystem): boolean {
  if (typeof value?.text !== "string") return false;
  if (value.typed) inUnit(value.typed.quantity, value.unit);
  return kind === undefined || unitsFor(kind, system).includes(value.unit);
}
