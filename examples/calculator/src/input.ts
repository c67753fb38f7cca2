import { type Issue, isSprayMathError } from "swath-to-spoon";
import { type ToolSetName, toolSet } from "swath-to-spoon/household";
import {
  type AnyPlan,
  type ApplicationRecord,
  type JobInput,
  type LoadChoice,
  loadChoices,
  type PlanInput,
  planApplication,
  planSpreading,
  type SpreadingPlan,
  seasonSoFar,
} from "swath-to-spoon/plan";
import { parseBatchInput, parsePlanInput, parseSpreadingInput } from "swath-to-spoon/schema";
import { type Quantity, sumQuantities } from "swath-to-spoon/units";
import { ask, calibrationOf, isBySize, isCanopy, runPath, sharedWidth, startOf } from "./asks.ts";
import { entryOf, type Field, fieldOf, steps } from "./field.ts";
import { chosen, isChosen, isDry, type Job, type KnownJob } from "./job.ts";
import { inUnit, numberText, quantityIn, shown, times, written } from "./units.ts";
import { locale } from "./words.ts";

/** A plan of any job, granules too. */
export type JobPlan = AnyPlan | SpreadingPlan;

/** A way to mix: how the job is split, the loads, and what it costs to measure them where that is known. */
export interface Way {
  readonly split?: PlanInput["split"];
  readonly loads: AnyPlan["loads"];
  readonly cost?: LoadChoice["cost"] | undefined;
}

/** The plan of a job, or every error that stops it. */
export type Checked =
  | { readonly plan: JobPlan; readonly ways: readonly Way[]; readonly faults?: never }
  | { readonly plan?: never; readonly ways?: never; readonly faults: readonly Issue[] };

/** Whether a plan must not be mixed or spread. */
export function isRefused({ warnings }: JobPlan): boolean {
  return warnings.some(({ severity }) => severity === "refusal");
}

/** Where the chosen way to mix is kept: among the job's entries, as the library's `split`. */
export const WAY = "split";

/** A way to mix as it is kept. */
export function textOf({ split }: Way): string {
  return split === undefined ? "" : JSON.stringify(split);
}

/** Checks everything in the form, and plans the job if nothing is wrong. */
export function check(job: Job, records: readonly ApplicationRecord[]): Checked {
  if (!isChosen(job)) return { faults: [] };
  try {
    const input = inputOf(job, records);
    const options = { locale, system: job.system };
    if (job.kind === "granules")
      return { plan: planSpreading(parseSpreadingInput(input, options)), ways: [] };
    const parse = isBySize(job) ? parseBatchInput : parsePlanInput;
    const parsed: JobInput = parse(input, options);
    const ways = waysOf(parsed);
    // One that was chosen for another size of job is no longer among them.
    const way = ways.find((one) => textOf(one) === job.entries[WAY]?.text) ?? ways[0];
    return { plan: planApplication({ ...parsed, split: way?.split } as PlanInput), ways };
  } catch (error) {
    if (!isSprayMathError(error)) throw error;
    return { faults: error.issues.map((issue) => ({ ...issue, path: fieldAt(issue.path, job) })) };
  }
}

/** The ways to mix: full tanks and a rest, and what is easiest to measure on the tank's marks. Without marks, equal loads for a small rest. */
function waysOf(input: JobInput): Way[] {
  const planned = (split?: "equal"): AnyPlan => planApplication({ ...input, split } as PlanInput);
  const { loads, warnings } = planned();
  const isSmall = warnings.some(({ code }) => code === "last-load-small");
  const equal = (): Way[] => (isSmall ? [{ split: "equal", loads: planned("equal").loads }] : []);
  const others: readonly Way[] = input.sprayer.marks === undefined ? equal() : loadChoices(input);
  const same = others.find((way) => fillsText(way) === fillsText({ loads }));
  return [{ loads, cost: same?.cost }, ...others.filter((way) => way !== same)];
}

/** The fills, alike ones together: `2 × 3.25 gal + 1.5 gal`. */
export function fillsText({ loads }: Way): string {
  const times = new Map<string, number>();
  for (const { mark, carrier } of loads) {
    const text = shown(mark ?? carrier);
    times.set(text, (times.get(text) ?? 0) + 1);
  }
  return [...times].map(([text, n]) => (n === 1 ? text : `${n} × ${text}`)).join(" + ");
}

type Tree = { [key: string]: unknown };

/** The job as the library expects it, still as it was typed. The library reports what is wrong. */
function inputOf(job: KnownJob, records: readonly ApplicationRecord[]): Tree {
  const fields = steps(job).flatMap(({ asks }) => asks.map((ask) => fieldOf(job, ask)));
  const field = (path: string): Field | undefined => fields.find((one) => one.path === path);
  const valueAt = (path: string): unknown => valueIn(job, field(path));
  const quantityAt = (path: string): Quantity | undefined => {
    const at = field(path);
    return at && quantityIn(entryOf(job, at), job.system);
  };

  const input: Tree = structuredClone(startOf(job));
  for (const { path, optional } of fields) {
    const value = valueAt(path);
    // What is needed and empty still has its part around it: the library then names the very field.
    if (!/^calibration|^[^.]+$/.test(path) && !(optional && value === undefined)) put(input, path, value);
  }
  if (!isBySize(job)) put(input, "plot.name", job.name);
  else input.name = job.name;
  if (job.kind === "granules") return { ...input, product: withSeason(input.product as Tree, "product") };

  input.products = (input.products as Tree[]).map((one, i) => withSeason(one, `products[${i}]`));
  input.tools = toolsOf(job);
  if (isBySize(job)) return input;
  // The trees fill their row's ground: half the spacing on either side.
  if (isCanopy(job)) put(input, "plot.stripWidth", times(quantityAt("plot.rowSpacing"), 0.5));
  return { ...input, calibration: calibration() };

  /** A product with what this place has had of it this year: what is recorded, and what was entered besides. */
  function withSeason(product: Tree, at: string): Tree {
    const here = recordsOf(job.name, records);
    if (typeof product.name !== "string" || here.length === 0) return product;
    const soFar = seasonSoFar({ product: product.name, records: here, today: today() });
    if (product.soFar === undefined) return { ...product, soFar };
    const entered = quantityAt(`${at}.soFar.rate`);
    const rates = [entered, soFar.rate] as Quantity<"pt/ac">[];
    return entered && soFar.rate ? { ...product, soFar: { rate: sumQuantities(rates) } } : product;
  }

  function calibration(): Tree {
    const how = calibrationOf(job);
    if (how === "known") return { kind: "known", rate: valueAt("calibration.rate") };
    if (how === "row") {
      const [sides, rowLength] = [valueAt("calibration.sides"), valueAt("calibration.rowLength")];
      return { kind: "tree-row", used: used(0), sides, rowLength, rowSpacing: valueAt("plot.rowSpacing") };
    }
    const width = sharedWidth(job);
    if (how === "catch") {
      const nozzles = valueAt("calibration.nozzlesPerRow");
      // The average of all nozzles stands for each one that sprays the row.
      const each = Array.from({ length: Math.min(Number(nozzles) || 1, 99) }, () =>
        valueAt("calibration.catches[0]"),
      );
      return {
        kind: "catch",
        catches: each,
        nozzlesPerRow: nozzles,
        time: valueAt("calibration.time"),
        speed: { distance: valueAt("calibration.speed.distance"), time: valueAt("calibration.speed.time") },
        width: valueAt(width ?? "calibration.width"),
      };
    }
    const rows = Number(valueAt("sprayer.rowsPerPass") ?? 1);
    // The band is as wide as the pass, and is entered once.
    const swath = width === undefined ? valueAt("calibration.swath") : times(quantityAt(width), rows);
    const runs = Array.from({ length: job.runs }, (_, i) => ({
      used: used(i),
      swath,
      distance: valueAt("calibration.distance"),
    }));
    return job.runs === 1 ? { kind: "strip", ...runs[0] } : { kind: "strip-runs", runs };
  }

  /** What a run took, with the jug's marks where they are known. */
  function used(run: number): unknown {
    const [read, jug] = [quantityAt(runPath(run)), quantityAt(JUG)];
    return read && jug ? { ...read, resolution: jug } : valueAt(runPath(run));
  }
}

const JUG = "calibration.jug";

function valueIn(job: Job, field: Field | undefined): unknown {
  if (field === undefined) return undefined;
  const { text, unit, typed } = entryOf(job, field);
  // Of a part with several shapes the library knows by the field's name, even empty, which one is meant.
  if (text.trim() === "")
    return /^plot\.spots|^size\..*\.|^calibration\.speed/.test(field.path) ? "" : undefined;
  if (field.kind === "choice") return /^\d+$/.test(text) ? Number(text) : text;
  if (field.kind === "text") return text.trim();
  if (field.kind === "number") return numberText(text).replace(/\s*%$/, "");
  return typed ? inUnit(typed.quantity, unit) : written({ text, unit }, isDry(job, field.path));
}

/** Puts a value at a place such as `products[0].rate`. */
function put(tree: Tree, path: string, value: unknown): void {
  const names = path.split(/[.[\]]+/);
  const last = names.pop() as string;
  let at = tree;
  for (const [i, name] of names.entries()) {
    at[name] ??= /^\d+$/.test(names[i + 1] ?? last) ? [] : {};
    at = at[name] as Tree;
  }
  if (value !== undefined) at[last] = value;
}

function toolsOf(job: Job): unknown {
  const set = chosen(job, ask("tools")) as ToolSetName;
  const more = (["scales", "syringes"] as const).filter((name) => job.entries[name]?.text && name !== set);
  return more.length === 0 ? set : [set, ...more].flatMap((name) => toolSet(name));
}

/** The records of a place in this year. */
export function recordsOf(place: string, records: readonly ApplicationRecord[]): ApplicationRecord[] {
  const year = today().slice(0, 4);
  return records.filter(({ plots, date }) => plots?.includes(place) && date.startsWith(year));
}

/** The present moment as the clock on the wall has it, to the minute. */
export function now(): string {
  const date = new Date();
  return new Date(date.getTime() - date.getTimezoneOffset() * 60_000).toISOString().slice(0, 16);
}

function today(): string {
  return now().slice(0, 10);
}

/** The field of the page for a place in the input: some are entered once and stand in several places. */
function fieldAt(path: string, job: KnownJob): string {
  const width = sharedWidth(job);
  const place = path
    .replace(/^calibration\.runs\[\d+\]\.(distance|swath)/, "calibration.$1")
    .replace("calibration.runs[0].used", "calibration.used")
    .replace(/^calibration\..*resolution.*/, JUG)
    .replace(/^calibration\.(?:swath|width)/, width ?? "$&")
    .replace("calibration.rowSpacing", "plot.rowSpacing");
  return isCanopy(job) ? place.replace("plot.stripWidth", "plot.rowSpacing") : place;
}
