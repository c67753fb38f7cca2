import { type ApplicationRecord, readRecord } from "swath-to-spoon/plan";
import { isJob } from "./field.ts";
import type { Job } from "./job.ts";
import { type Language, locale } from "./words.ts";

/** Everything that is kept on the device: nothing leaves it but in a file that the person saves. */
export interface Kept {
  /** Whose numbers the texts are in. */
  readonly locale: string;
  readonly language: Language;
  readonly jobs: readonly Job[];
  /** Which of the jobs is open. */
  readonly open: number;
  readonly records: readonly ApplicationRecord[];
}

const KEY = "swath-to-spoon-2";

/** Keeps everything for the next visit. A browser that can't (a private window, a full disk) is not an error. */
export function keep(kept: Kept): void {
  try {
    localStorage.setItem(KEY, JSON.stringify(kept));
  } catch {
    // The page works on without a memory.
  }
}

/** Returns what the last visit left, if this page can still read it. */
export function lastVisit(): Kept | undefined {
  try {
    return read(localStorage.getItem(KEY) ?? "");
  } catch {
    return undefined;
  }
}

/** Reads what was kept or saved to a file; nothing where it isn't this page's. */
export function read(text: string): Kept | undefined {
  try {
    const found = JSON.parse(text) as Kept;
    // Numbers written for another country would be misread.
    if (found.locale !== locale || !found.jobs.every(isJob) || found.jobs[found.open] === undefined)
      return undefined;
    return {
      ...found,
      language: found.language === "es" ? "es" : "en",
      records: found.records.map(readRecord),
    };
  } catch {
    return undefined;
  }
}

/** What is kept, with what a file holds put in: a job of the same name is replaced, a record that is there stays once. */
export function merged(kept: Kept, added: Kept): Kept {
  const names = new Set(added.jobs.map(({ name }) => name));
  const jobs = [...kept.jobs.filter(({ name }) => !names.has(name)), ...added.jobs];
  return { ...kept, jobs, open: jobs.length - 1, records: once([...kept.records, ...added.records]) };
}

/** The records without those that say the same: a file read again, or a button pressed twice. */
export function once(records: readonly ApplicationRecord[]): ApplicationRecord[] {
  return [...new Map(records.map((record) => [JSON.stringify(record), record])).values()];
}

/** Offers everything as a file. */
export function saveFile(kept: Kept): void {
  const address = URL.createObjectURL(
    new Blob([JSON.stringify(kept, null, 2)], { type: "application/json" }),
  );
  const link = document.createElement("a");
  link.href = address;
  link.download = "swath-to-spoon.json";
  link.click();
  URL.revokeObjectURL(address);
}
