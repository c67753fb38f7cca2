import type { ToolSetName } from "swath-to-spoon/household";
import type { Unit, UnitSystem } from "swath-to-spoon/units";
import { type Entry, type Kind, switched, unitsFor, type Writing } from "./units.ts";

/** A field of the form. `key` is its place in the job that the library plans, so a fault finds its way to it. */
export interface Field {
  readonly key: string;
  readonly label: string;
  readonly hint?: string;
  /** What is measured; a plain number without it. */
  readonly kind?: Kind;
  readonly whole?: true;
  readonly optional?: true;
}

export type PlotKind = "row-bands" | "rectangle" | "treated-area";
export type Form = "liquid" | "dry";

export const PLOT_KINDS: Readonly<Record<PlotKind, string>> = {
  "row-bands": "A band along each row",
  rectangle: "A whole block, edge to edge",
  "treated-area": "I know the sprayed area",
};

export const PLOT_FIELDS: Readonly<Record<PlotKind, readonly Field[]>> = {
  "row-bands": [
    { key: "plot.rows", label: "Number of rows", whole: true },
    { key: "plot.rowLength", label: "Length of one row", kind: "long" },
    { key: "plot.bandWidth", label: "Width of the sprayed band", hint: "On one row.", kind: "short" },
    {
      key: "plot.rowSpacing",
      label: "Row spacing",
      hint: "From the middle of one row to the middle of the next.",
      kind: "short",
    },
  ],
  rectangle: [
    { key: "plot.length", label: "Length of the block", hint: "The way you walk.", kind: "long" },
    { key: "plot.width", label: "Width of the block", kind: "long" },
  ],
  "treated-area": [
    {
      key: "plot.treated",
      label: "Sprayed area",
      hint: "Only the ground that spray lands on.",
      kind: "area",
    },
  ],
};

export const STRIP_FIELDS: readonly Field[] = [
  { key: "calibration.distance", label: "Length of the strip", kind: "long" },
  {
    key: "calibration.swath",
    label: "Width wetted in one pass",
    hint: "With a band: the band.",
    kind: "short",
  },
  {
    key: "calibration.used",
    label: "Water used on it",
    hint: "What it took to fill up to the mark again.",
    kind: "refill",
  },
];

export const SPRAYER_FIELDS: readonly Field[] = [
  { key: "sprayer.tank", label: "The tank holds", kind: "tank" },
  {
    key: "sprayer.workingFill",
    label: "You fill it to",
    hint: "Leave empty to fill it up.",
    kind: "tank",
    optional: true,
  },
  {
    key: "sprayer.lineVolume",
    label: "Left in hose and boom",
    hint: "Mixed, but never sprayed.",
    kind: "lines",
    optional: true,
  },
  {
    key: "reserve.percent",
    label: "Extra to be sure, in %",
    hint: "On top of what the plot takes.",
    optional: true,
  },
];

export function rateField(form: Form): Field {
  const kind: Kind = form === "liquid" ? "liquid-rate" : "dry-rate";
  return { key: "rate", label: "Rate", hint: "As the label gives it, for the sprayed area.", kind };
}

/** What the label sets limits to. */
export function limitFields(form: Form): readonly Field[] {
  const { kind } = rateField(form) as { kind: Kind };
  return [
    {
      key: "label.max",
      label: "Highest rate",
      kind,
      optional: true,
    },
    {
      key: "label.leastCarrier",
      label: "Least water",
      kind: "water-rate",
      optional: true,
    },
  ];
}

export function productFields(form: Form): readonly Field[] {
  return [rateField(form), ...limitFields(form)];
}

export const TOOLS: Readonly<Partial<Record<ToolSetName, string>>> = {
  "us-spoons": "US spoons",
  "us-cups-and-spoons": "US cups and spoons",
  "metric-spoons": "Metric spoons (5 and 15 mL)",
  "metric-cups-and-spoons": "Metric cups and spoons",
  "australian-spoons": "Australian spoons (5 and 20 mL)",
  "imperial-measures": "Imperial ounces and pints",
  syringes: "Syringes, 1 to 50 mL",
  cylinders: "Measuring cylinders, 10 to 1000 mL",
};

/** A product as it stands in the form. */
export interface ProductEntries {
  readonly name: string;
  readonly form: Form;
  readonly entries: Readonly<Record<string, Entry>>;
}

/** Everything that stands in the form. Plain data, kept for the next visit. */
export interface Job {
  readonly system: UnitSystem;
  readonly plot: PlotKind;
  readonly entries: Readonly<Record<string, Entry>>;
  readonly products: readonly ProductEntries[];
  readonly tools: ToolSetName;
  readonly scale: boolean;
}

/** The fields that have one place in every job. */
export const JOB_FIELDS: readonly Field[] = [
  ...Object.values(PLOT_FIELDS).flat(),
  ...STRIP_FIELDS,
  ...SPRAYER_FIELDS,
];

/** The fields that this job shows, products left out. */
export function shownFields(job: Job): readonly Field[] {
  return [...PLOT_FIELDS[job.plot], ...STRIP_FIELDS, ...SPRAYER_FIELDS];
}

function empty(fields: readonly Field[], system: UnitSystem): Record<string, Entry> {
  return Object.fromEntries(
    fields.map(({ key, kind }) => [
      key,
      { text: "", unit: kind ? (unitsFor(kind, system)[0] as Unit) : "1" } satisfies Entry,
    ]),
  );
}

export function emptyProduct(system: UnitSystem, form: Form = "liquid"): ProductEntries {
  return { name: "", form, entries: empty(productFields(form), system) };
}

const FIRST_TOOLS: Record<UnitSystem, ToolSetName> = {
  us: "us-spoons",
  imperial: "imperial-measures",
  metric: "syringes",
};

export function emptyJob(system: UnitSystem): Job {
  return {
    system,
    plot: "row-bands",
    entries: empty(JOB_FIELDS, system),
    products: [emptyProduct(system)],
    tools: FIRST_TOOLS[system],
    scale: false,
  };
}

/** An invented job, to see what the page does. */
export function exampleJob(writing: Writing): Job {
  const blank = emptyJob("us");
  const filled = (
    entries: Readonly<Record<string, Entry>>,
    given: Readonly<Record<string, [string, Unit]>>,
  ) => ({
    ...entries,
    ...Object.fromEntries(Object.entries(given).map(([key, [text, unit]]) => [key, { text, unit }])),
  });
  const product = (name: string, form: Form, rate: [string, Unit]): ProductEntries => {
    const { entries } = emptyProduct("us", form);
    return { name, form, entries: filled(entries, { rate }) };
  };
  const job: Job = {
    ...blank,
    entries: filled(blank.entries, {
      "plot.rows": ["14", "1"],
      "plot.rowLength": ["160", "ft"],
      "plot.bandWidth": ["30", "in"],
      "plot.rowSpacing": ["5", "ft"],
      "calibration.distance": ["120", "ft"],
      "calibration.swath": ["30", "in"],
      "calibration.used": ["34", "fl_oz"],
      "sprayer.tank": ["4", "gal"],
      "sprayer.workingFill": ["3 1/2", "gal"],
      "sprayer.lineVolume": ["10", "fl_oz"],
      "reserve.percent": ["5", "1"],
    }),
    products: [
      product("Product A", "liquid", ["1 1/2", "pt/ac"]),
      product("Product B", "dry", ["12", "oz/ac"]),
    ],
    scale: true,
  };
  return switchedJob(job, writing.system, { ...writing, system: "us" });
}

/** The same job with every field in the units of another system. What is measured with stays: it is in the hand. */
export function switchedJob(job: Job, to: UnitSystem, from: Writing): Job {
  const all = (
    entries: Readonly<Record<string, Entry>>,
    fields: readonly Field[],
  ): Record<string, Entry> => ({
    ...entries,
    ...Object.fromEntries(
      fields.map(({ key, kind }) => {
        const entry = entries[key] as Entry;
        return [key, kind === undefined ? entry : switched(entry, kind, to, from)];
      }),
    ),
  });
  return {
    ...job,
    system: to,
    entries: all(job.entries, JOB_FIELDS),
    products: job.products.map((product) => ({
      ...product,
      entries: all(product.entries, productFields(product.form)),
    })),
  };
}
