import type { ApplicationRecord } from "swath-to-spoon/plan";
import type { Unit, UnitSystem } from "swath-to-spoon/units";
import { type Checked, check } from "./input.ts";
import { type Job, withEntry } from "./job.ts";
import { type Marks, marksOf } from "./places.ts";
import { type Kept, keep, lastVisit, once } from "./store.ts";
import { type Language, locale } from "./words.ts";

/** What a first visit starts with, by the browser's language and country. */
export const START: { readonly language: Language; readonly system: UnitSystem } = {
  language: locale.startsWith("es") ? "es" : "en",
  system: /-US\b/.test(locale) ? "us" : "metric",
};

/** All that the page shows. */
export const state: {
  kept: Kept;
  /** Everything as it was before something was cleared or deleted, until the next change. */
  before: Kept | undefined;
  checked: Checked;
  marks: Marks;
} = {
  kept: lastVisit() ?? { locale, language: START.language, jobs: [], open: 0, records: [] },
  before: undefined,
  checked: { faults: [] },
  marks: { texts: new Map(), open: [] },
};

/** The job that is open. */
export const job = (): Job => state.kept.jobs[state.kept.open] as Job;

let show = (): void => undefined;

/** Says what shows the page: it runs after each change. */
export function showBy(render: () => void): void {
  show = render;
}

/** Shows the page again where only the state of a part is another. */
export function showAgain(): void {
  show();
}

/** Plans the job again and shows it. It takes a few milliseconds, so it runs at each key. */
export function refresh(): void {
  state.checked = check(job(), state.kept.records);
  state.marks = marksOf(job(), state.checked);
  show();
}

/** Puts something else in place of what is kept. `undo` lets the person take it back. */
export function put(next: Partial<Kept>, undo = false): void {
  state.before = undo ? state.kept : undefined;
  state.kept = { ...state.kept, ...next };
  keep(state.kept);
  refresh();
}

/** Keeps a record. The answer stays until the next change: it says what was just done. */
export function addRecord(record: ApplicationRecord): void {
  state.kept = { ...state.kept, records: once([...state.kept.records, record]) };
  keep(state.kept);
  show();
}

/** The jobs with another in place of the one that is open. */
export function jobsWith(next: Job): Job[] {
  return state.kept.jobs.map((one, i) => (i === state.kept.open ? next : one));
}

/** Puts a changed job in place of the one that is open. */
export function change(next: Job, undo = false): void {
  put({ jobs: jobsWith(next) }, undo);
}

/** Puts something into a field of the open job. */
export function enter(path: string, text: string, unit: Unit = "1"): void {
  change(withEntry(job(), path, { text, unit }));
}
