import { emptyJob, JOB_FIELDS, type Job, PLOT_KINDS, productFields, TOOLS } from "./job.ts";
import type { Entry, Writing } from "./units.ts";

const KEY = "spray-job-1";

/** Keeps the job for the next visit. A browser that keeps nothing (a private window, a full disk) is no fault. */
export function keep(job: Job, locale: string): void {
  try {
    localStorage.setItem(KEY, JSON.stringify({ locale, job }));
  } catch {
    // The page works on without a memory.
  }
}

/** The job of the last visit, if there is one that this page can still read. */
export function kept({ locale }: Pick<Writing, "locale">): Job | undefined {
  try {
    const found = JSON.parse(localStorage.getItem(KEY) ?? "null");
    // Numbers that were written for another country would be read wrongly.
    if (found === null || found.locale !== locale || !isJob(found.job)) return undefined;
    const blank = emptyJob(found.job.system);
    return { ...found.job, entries: { ...blank.entries, ...found.job.entries } };
  } catch {
    return undefined;
  }
}

function isJob(value: Job): value is Job {
  return (
    ["us", "imperial", "metric"].includes(value.system) &&
    Object.hasOwn(PLOT_KINDS, value.plot) &&
    Object.hasOwn(TOOLS, value.tools) &&
    typeof value.scale === "boolean" &&
    JOB_FIELDS.every(({ key }) => isEntry(value.entries[key])) &&
    value.products.length > 0 &&
    value.products.every(
      ({ name, form, entries }) =>
        typeof name === "string" &&
        (form === "liquid" || form === "dry") &&
        productFields(form).every(({ key }) => isEntry(entries[key])),
    )
  );
}

function isEntry(value: Entry | undefined): boolean {
  if (typeof value?.text !== "string" || typeof value.unit !== "string") return false;
  const { typed } = value;
  return typed === undefined || (typeof typed.text === "string" && typeof typed.quantity.value === "number");
}
