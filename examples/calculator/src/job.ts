import type { Unit, UnitSystem } from "swath-to-spoon/units";
import type { Entry } from "./units.ts";
import type { Text } from "./words.ts";

export type JobKind =
  | "bands"
  | "block"
  | "area"
  | "boundary"
  | "spots"
  | "tank"
  | "pots"
  | "drench"
  | "orchard"
  | "granules";

/** Everything entered in the form. Plain data, kept for the next visit. */
export interface Job {
  readonly name: string;
  readonly system: UnitSystem;
  readonly kind?: JobKind;
  readonly products: number;
  readonly runs: number;
  /** What is in each field, by its place. Other jobs' fields stay until they are needed again. */
  readonly entries: Readonly<Record<string, Entry>>;
}

/** A job whose kind is chosen. */
export type KnownJob = Job & { readonly kind: JobKind };

export type BySystem<T> = Readonly<Record<UnitSystem, T>>;

/** A field: where it stands in the job that the library plans, and what this page adds. The library's schema has the rest. */
export interface Ask {
  /** Its place in the input, such as `plot.rows`; an error finds its way to it by this. */
  readonly path: string;
  /** What it is called, where that isn't what the library calls it. */
  readonly label?: Text;
  readonly hint?: Text;
  /** The unit that the trade uses for it, where that isn't the first that the library offers. */
  readonly first?: BySystem<Unit>;
  /** What to choose from, by the library's name. */
  readonly options?: Readonly<Record<string, Text>>;
  /** What is chosen at first, where that isn't the first of them. */
  readonly usual?: string | BySystem<string>;
  /** The field that it takes its units from, where it is the page's own. */
  readonly like?: string;
  /** Whether this job needs it, although the library could do without. */
  readonly needed?: boolean;
  /** Whether it is shown with the label's limits, out of the way. */
  readonly more?: true;
}

/** A part of the form that is open at a time. */
export interface Step {
  /** The place in the input that all of it belongs to. */
  readonly path: string;
  readonly title: Text;
  readonly hint?: Text | undefined;
  readonly asks: readonly Ask[];
}

export function emptyJob(system: UnitSystem, name: string): Job {
  return { name, system, products: 1, runs: 1, entries: {} };
}

export function isChosen(job: Job): job is KnownJob {
  return job.kind !== undefined;
}

/** What is chosen at a field with options: the first one until another is. */
export function chosen({ entries, system }: Job, { path, options = {}, usual }: Omit<Ask, "label">): string {
  const first = usual ?? Object.keys(options)[0] ?? "";
  return entries[path]?.text || (typeof first === "string" ? first : first[system]);
}

/** Whether a product is weighed, by the place of one of its fields. */
export function isDry(job: Job, path: string): boolean {
  return job.entries[path.replace(/\]\..*$/, "].form")]?.text === "dry";
}

export function withEntry(job: Job, path: string, entry: Entry): Job {
  return { ...job, entries: { ...job.entries, [path]: entry } };
}

/** The job with a product measured in another way. An amount by volume says nothing of one by weight, so its rates are cleared. */
export function withForm(job: Job, path: string, entry: Entry): Job {
  const product = path.replace(/form$/, "");
  const kept = Object.entries(job.entries).filter(
    ([name]) => !(name.startsWith(product) && /rate$|max$/i.test(name)),
  );
  return withEntry({ ...job, entries: Object.fromEntries(kept) }, path, entry);
}

/** The job without one of its products. */
export function withoutProduct(job: Job, gone: number): Job {
  const entries = Object.entries(job.entries).flatMap(([path, entry]): [string, Entry][] => {
    const at = Number(/^products\[(\d+)\]/.exec(path)?.[1] ?? -1);
    if (at === gone) return [];
    return [[at > gone ? path.replace(`[${at}]`, `[${at - 1}]`) : path, entry]];
  });
  return { ...job, products: job.products - 1, entries: Object.fromEntries(entries) };
}
