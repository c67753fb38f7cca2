import { type Issue, SprayMathError } from "swath-to-spoon";
import { toolSet } from "swath-to-spoon/household";
import { type Plan, planApplication } from "swath-to-spoon/plan";
import { parsePlanInput } from "swath-to-spoon/schema";
import { type Field, type Job, PLOT_FIELDS, productFields, SPRAYER_FIELDS, STRIP_FIELDS } from "./job.ts";
import { type Entry, inUnit, numberText, type Writing, written } from "./units.ts";

/** The plan of a job, or every error that stops it. */
export type Checked =
  | { readonly plan: Plan; readonly faults?: never }
  | { readonly plan?: never; readonly faults: readonly Issue[] };

/** Checks everything in the form, and plans the job if nothing is wrong. */
export function check(job: Job, writing: Writing): Checked {
  try {
    const options = { locale: writing.locale, system: writing.system };
    return { plan: planApplication(parsePlanInput(inputOf(job, writing.locale), options)) };
  } catch (error) {
    if (!(error instanceof SprayMathError)) throw error;
    return { faults: error.issues };
  }
}

/** The job as the library expects it, still as it was typed. The library reports what is wrong. */
function inputOf(job: Job, locale: string): object {
  const { entries, products, tools, scale } = job;
  const plot = fieldsOf(PLOT_FIELDS[job.plot], entries, locale);
  const rest = fieldsOf([...STRIP_FIELDS, ...SPRAYER_FIELDS], entries, locale);
  return {
    // Choosing the whole block says that all of it is sprayed. Without this the library asks.
    plot: { kind: job.plot, ...plot.plot, ...(job.plot === "rectangle" && { fraction: 1 }) },
    calibration: { kind: "strip", ...rest.calibration },
    sprayer: { ...rest.sprayer },
    reserve: rest.reserve,
    products: products.map(({ name, form, entries }) => ({
      name: name.trim() === "" ? undefined : name.trim(),
      form,
      ...fieldsOf(productFields(form), entries, locale),
    })),
    tools: scale ? [...toolSet(tools), ...toolSet("scales")] : tools,
  };
}

type Nested = { readonly [key: string]: unknown };

/** Puts `plot.rows` into `rows` of `plot`. An empty field is left out. */
function fieldsOf(
  fields: readonly Field[],
  entries: Readonly<Record<string, Entry>>,
  locale: string,
): Record<string, Nested> {
  const found: Record<string, Nested> = {};
  for (const field of fields) {
    const value = valueIn(field, entries[field.key] as Entry, locale);
    if (value === undefined) continue;
    const [first = "", second] = field.key.split(".");
    found[first] = second === undefined ? (value as Nested) : { ...found[first], [second]: value };
  }
  return found;
}

function valueIn({ kind }: Field, entry: Entry, locale: string): unknown {
  if (entry.text.trim() === "") return undefined;
  if (kind === undefined) return numberText(entry.text).replace(/\s*%$/, "");
  if (entry.typed) return inUnit(entry.typed.quantity, entry.unit);
  return written(entry, locale);
}
