import { type ToolSetName, usualTools } from "swath-to-spoon/household";
import type { Unit, UnitSystem } from "swath-to-spoon/units";
import { type Entry, type Kind, switched, unitsFor, type Writing } from "./units.ts";

/** A field of the form. `key` is its place in the job that the library plans, so an error finds its way to it. */
export interface Field {
  readonly key: string;
  readonly label: string;
  readonly hint?: string | Readonly<Record<UnitSystem, string>>;
  /** What is measured. A field without it holds a plain number. */
  readonly kind?: Kind;
  readonly whole?: true;
  readonly optional?: true;
}

export type PlotKind = "row-bands" | "rectangle" | "treated-area";
export type Form = "liquid" | "dry";

export const PLOT_KINDS: Readonly<Record<PlotKind, string>> = {
  "row-bands": "A band on each row",
  rectangle: "Whole block (broadcast)",
  "treated-area": "I know the treated area",
};

export const PLOT_FIELDS: Readonly<Record<PlotKind, readonly Field[]>> = {
  "row-bands": [
    { key: "plot.rows", label: "Number of rows", whole: true },
    { key: "plot.rowLength", label: "Row length", kind: "long" },
    { key: "plot.bandWidth", label: "Band width", hint: "Width you spray on each row.", kind: "short" },
    {
      key: "plot.rowSpacing",
      label: "Row spacing",
      hint: "Center to center.",
      kind: "short",
    },
  ],
  rectangle: [
    { key: "plot.length", label: "Block length", hint: "The direction you walk.", kind: "long" },
    { key: "plot.width", label: "Block width", kind: "long" },
  ],
  "treated-area": [
    {
      key: "plot.treated",
      label: "Treated area",
      hint: "Only the ground you spray.",
      kind: "area",
    },
  ],
};

export const STRIP_FIELDS: readonly Field[] = [
  { key: "calibration.distance", label: "Strip length", kind: "long" },
  {
    key: "calibration.swath",
    label: "Spray width in one pass",
    hint: "If you spray a band, enter the band width.",
    kind: "short",
  },
  {
    key: "calibration.used",
    label: "Water used (refill)",
    hint: "How much it took to refill to the mark.",
    kind: "refill",
  },
];

export const SPRAYER_FIELDS: readonly Field[] = [
  { key: "sprayer.tank", label: "Tank size", kind: "tank" },
  {
    key: "sprayer.workingFill",
    label: "Fill the tank to",
    hint: "Leave blank to fill the tank all the way.",
    kind: "tank",
    optional: true,
  },
  {
    key: "sprayer.lineVolume",
    label: "Held in hose, wand and boom",
    hint: "Mix that stays in the hose and can't be sprayed out.",
    kind: "lines",
    optional: true,
  },
  {
    key: "reserve.percent",
    label: "Extra mix to allow, %",
    hint: "On top of what the plot needs.",
    optional: true,
  },
];

const RATE_HINT: Record<UnitSystem, string> = {
  us: "As printed on the label, per treated acre (or per gallon of mix).",
  imperial: "As printed on the label, per treated acre (or per gallon of mix).",
  metric: "As printed on the label, per treated hectare (or per liter of mix).",
};

export function rateField(form: Form): Field {
  const kind: Kind = form === "liquid" ? "liquid-rate" : "dry-rate";
  return { key: "rate", label: "Label rate", hint: RATE_HINT, kind };
}

/** The limits that a label sets. */
export function limitFields(form: Form): readonly Field[] {
  const { kind } = rateField(form) as { kind: Kind };
  return [
    {
      key: "label.max",
      label: "Maximum label rate",
      kind,
      optional: true,
    },
    {
      key: "label.leastCarrier",
      label: "Minimum water",
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
  "us-ounce-measures": "US ounce measures (1 to 16 fl oz)",
  "metric-spoons": "Metric spoons (5 and 15 mL)",
  "metric-cups-and-spoons": "Metric cups and spoons",
  "metric-measures": "Metric measures, 10 to 1,000 mL",
  "australian-spoons": "Australian spoons (5 and 20 mL)",
  "imperial-measures": "Imperial ounces and pints",
  syringes: "Syringes, 1 to 50 mL",
  cylinders: "Graduated cylinders, 10 to 1,000 mL",
};

/** A product as entered in the form. */
export interface ProductEntries {
  readonly name: string;
  readonly form: Form;
  readonly entries: Readonly<Record<string, Entry>>;
}

/** Everything entered in the form. Plain data, kept for the next visit. */
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

export function emptyJob(system: UnitSystem): Job {
  return {
    system,
    plot: "row-bands",
    entries: empty(JOB_FIELDS, system),
    products: [emptyProduct(system)],
    tools: usualTools[system],
    scale: false,
  };
}

/** An invented job that shows what the page does. */
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

/** The same job with every field in the units of another system. The measuring tools stay: they are the ones at hand. */
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
