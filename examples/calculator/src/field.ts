import { type FormField, formFields } from "swath-to-spoon/schema";
import { isUnit, type Unit, type UnitSystem, unitsOf } from "swath-to-spoon/units";
import { ask, isBySize, JOBS, startOf, stepsOf } from "./asks.ts";
import { type Ask, chosen, emptyJob, isChosen, isDry, type Job, type KnownJob, type Step } from "./job.ts";
import { type Entry, inUnit, switched } from "./units.ts";
import { labels, say } from "./words.ts";

/** A field with what the library's schema says of it. */
export interface Field extends Omit<Ask, "label"> {
  readonly label: string;
  readonly kind: FormField["kind"];
  readonly optional: boolean;
  readonly whole: boolean;
  /** The units to offer, what the trade uses first. */
  readonly units: readonly Unit[];
}

/** The parts of the form; none until the kind of job is chosen. */
export function steps(job: Job): Step[] {
  return isChosen(job) ? stepsOf(job) : [];
}

type FormName = "plan" | "batch" | "spreading";

// A form of the library is the same for every job, so it is asked for once in each language.
const forms: Partial<Record<string, readonly FormField[]>> = {};

function formOf(name: FormName, system: UnitSystem): readonly FormField[] {
  const key = `${name} ${system} ${document.documentElement.lang}`;
  forms[key] ??= formFields(name, { system, labels: labels() });
  return forms[key];
}

// Kitchen measures of liquids that are entered in jugs, units no farm measures in, and such as 1,000 sq ft, which only rates are in.
const RARE = /^(?:\d\w*|mi|km|mm|yd2|mg|kg\/L|cup|tbsp|tsp|metric_\w+)$/;

// Labels give rates per area in these far more often than in the largest unit, which the library offers first.
const USUAL_RATES: readonly Unit[] = ["fl_oz/ac", "imp_fl_oz/ac", "L/ha"];

/** A field of the form, from the library's schema and what the page says of it. */
export function fieldOf(job: KnownJob, ask: Ask): Field {
  const place = (ask.like ?? ask.path).replace(/\[\d+\]/g, "[]");
  const shape = startOf(job)[place.split(".")[0] ?? ""]?.kind;
  const form = job.kind === "granules" ? "spreading" : isBySize(job) ? "batch" : "plan";
  // Of the shapes that have this place, the one that was chosen; of several sizes of it the first, which have the same units.
  const found = formOf(form, job.system).find(
    ({ path, when }) => path === place && (shape === undefined || when.some(({ is }) => is === shape)),
  );
  // A path that is misspelled here would be an error of the grower's later.
  if (!found && !ask.options) throw new Error(`The library's form has no field ${place}.`);
  const units = (found?.units ?? []).filter((unit) => !RARE.test(unit) && fits(unit, ask, job));
  const isRate = /^products.*(?:rate|max)$/i.test(ask.path);
  const first = ask.first?.[job.system] ?? units.find((unit) => isRate && USUAL_RATES.includes(unit));
  return {
    ...ask,
    label: ask.label ? say(ask.label) : (found?.label ?? ""),
    kind: ask.options ? "choice" : (found?.kind ?? "text"),
    optional: !ask.needed && (found?.optional === true || ask.path === "calibration.jug"),
    whole: found?.limits?.whole ?? false,
    units: first === undefined ? units : [first, ...units.filter((unit) => unit !== first)],
  };
}

/** Whether a unit suits a product's form and the size of the job. Other fields take all that the library offers. */
function fits(unit: Unit, { path }: Ask, job: KnownJob): boolean {
  if (path === "size.each") return !unit.includes("/");
  if (!/^products?(?:\[\d+\])?\.(?:(?:soFar\.)?rate|label\.(?:max|seasonMax))$/.test(path)) return true;
  const [amount = "", per] = unit.split("/");
  if (per === undefined) return unit === "%";
  const dry = job.kind === "granules" || isDry(job, path);
  if ((unitsOf("mass") as readonly string[]).includes(amount) !== dry) return false;
  if (/(?:ac|ha|ft2|m2)$/.test(per)) return !isBySize(job);
  if (/(?:plant|tree|pot|spot)$/.test(per)) return job.kind === "pots";
  if (/\d*(?:ft|m)$/.test(per)) return job.kind === "drench" || job.kind === "bands";
  return true;
}

/** What a field holds. */
export function entryOf(job: Job, field: Field): Entry {
  return (
    job.entries[field.path] ?? { text: field.options ? chosen(job, field) : "", unit: field.units[0] ?? "1" }
  );
}

/** The same job with every field in the units of another system. The measuring tools of a job stay: they are the ones at hand. */
export function switchedJob(job: Job, to: UnitSystem): Job {
  const fields = [...formOf("plan", to), ...formOf("batch", to), ...formOf("spreading", to)];
  const units = [...new Set(fields.flatMap(({ units = [] }) => units))].filter((unit) => !RARE.test(unit));
  const tools: Entry = { text: chosen(job, ask("tools")), unit: "1" };
  const entries = Object.entries({ ...job.entries, ...(job.kind && { tools }) }).map(([path, entry]) => [
    path,
    switched(entry, job.system, units),
  ]);
  return { ...job, system: to, entries: Object.fromEntries(entries) };
}

/** Whether what was kept, or came from a file, is a job that this page can show. */
export function isJob(value: unknown): value is Job {
  const { name, system, kind, products, runs, entries } = value as Job;
  const small = (n: number): boolean => Number.isInteger(n) && n >= 1 && n <= 20;
  return (
    typeof name === "string" &&
    ["us", "imperial", "metric"].includes(system) &&
    (kind === undefined || Object.hasOwn(JOBS, kind)) &&
    small(products) &&
    small(runs) &&
    Object.values(entries).every(isEntry)
  );
}

// A quantity that can't be converted to the field's unit throws, and then the job is not read.
function isEntry({ text, unit, typed }: Entry): boolean {
  if (typed) inUnit(typed.quantity, unit);
  return typeof text === "string" && isUnit(unit);
}

const EXAMPLE: readonly (readonly [path: string, text: string, unit?: Unit])[] = [
  ["plot.rows", "14"],
  ["plot.rowLength", "160", "ft"],
  ["plot.bandWidth", "30", "in"],
  ["plot.rowSpacing", "5", "ft"],
  ["calibration.distance", "120", "ft"],
  ["calibration.used", "34", "fl_oz"],
  ["sprayer.tank", "4", "gal"],
  ["sprayer.workingFill", "3 1/2", "gal"],
  ["sprayer.lineVolume", "10", "fl_oz"],
  ["reserve.percent", "5"],
  ["products[0].name", "Product A"],
  ["products[0].rate", "1 1/2", "pt/ac"],
  ["products[1].name", "Product B"],
  ["products[1].form", "dry"],
  ["products[1].rate", "12", "oz/ac"],
  ["tools", "us-cups-and-spoons"],
  ["scales", "yes"],
];

/** An invented job that shows what the page does. */
export function exampleJob(system: UnitSystem, name: string): Job {
  const entries = Object.fromEntries(EXAMPLE.map(([path, text, unit = "1"]) => [path, { text, unit }]));
  const job: Job = { ...emptyJob("us", name), kind: "bands", products: 2, entries };
  return system === "us" ? job : switchedJob(job, system);
}
