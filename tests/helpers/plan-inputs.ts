import fc from "fast-check";
import type { Calibration } from "../../src/output-rate/index.ts";
import type { DryProduct, LiquidProduct, PlanInput, Plot, Product } from "../../src/plan/index.ts";
import type { LabelRate } from "../../src/tank-mix/index.ts";
import { qty } from "../../src/units/index.ts";
import { CONDITIONS, MEASUREMENTS } from "./output-rate-samples.ts";

const ft = (value: number) => qty(value, "ft");
const m = (value: number) => qty(value, "m");
const ground = { value: 2, unit: "ac", of: "ground" } as const;

/** A plot of every kind, and in every way that a kind is told. */
export const PLOTS: readonly Plot[] = [
  { kind: "rectangle", name: "North field", length: ft(121), width: ft(90), fraction: 0.5 },
  { kind: "triangle", base: ft(40), height: ft(25) },
  { kind: "triangle", sides: [m(30), m(40), m(50)] },
  { kind: "trapezoid", base: ft(40), top: ft(30), height: ft(20) },
  { kind: "circle", diameter: m(20) },
  { kind: "ellipse", length: m(20), width: m(12) },
  { kind: "ring", outerDiameter: m(20), innerDiameter: m(12) },
  { kind: "sector", radius: m(20), angleDegrees: 90 },
  { kind: "offsets", offsets: [m(0), m(12), m(14)], spacing: m(10), rule: "simpson" },
  { kind: "unequal-offsets", stations: [[0, 12], [20, 18], [50, 10]], unit: "m" }, // biome-ignore format: pairs
  { kind: "boundary", corners: [[0, 0], [30, 0], [30, 20]], unit: "ft" }, // biome-ignore format: pairs
  {
    kind: "composite",
    add: [{ kind: "rectangle", length: m(40), width: m(25) }],
    subtract: [{ kind: "circle", diameter: m(10) }],
  },
  { kind: "row-bands", rows: 14, rowLength: ft(160), bandWidth: qty(30, "in"), rowSpacing: ft(5) },
  { kind: "row-bands", rowLengths: [m(50), m(30)], rows: 2, bandWidth: m(0.5) },
  { kind: "beds", beds: 4, bedLength: m(25), bedWidth: m(1.2), bedSpacing: m(1.5) },
  { kind: "beds", bedLengths: [m(25), m(20)], bedWidth: m(1.2) },
  { kind: "tree-rows", rows: 5, rowLength: m(40), stripWidth: m(1), sides: 2, rowSpacing: m(4) },
  { kind: "tree-rows", rowLengths: [m(40), m(30)], stripWidth: m(1), sides: 1 },
  {
    kind: "spots",
    spots: [
      { count: 20, length: m(1), width: m(2) },
      { count: 5, diameter: m(1) },
      { count: 3, each: qty(2, "m2") },
    ],
    ground,
  },
  { kind: "ground-area", ground, fraction: 0.25 },
  { kind: "treated-area", treated: { value: 0.5, unit: "ac", of: "treated" }, ground },
];

/** A calibration of every kind. */
export const CALIBRATIONS: readonly Calibration[] = [
  ...Object.values(MEASUREMENTS),
  { kind: "hand", used: qty(4, "L"), area: { value: 200, unit: "m2", of: "treated" } },
  { kind: "hand", used: qty(4, "L"), rowLength: m(50), rowSpacing: m(4) },
  {
    kind: "catch",
    catches: [qty(30, "fl_oz")],
    time: qty(1, "min"),
    speed: qty(3, "mph"),
    width: qty(20, "in"),
  },
  {
    kind: "record",
    record: { version: 1, date: "2026-04-01", measurement: MEASUREMENTS.strip, conditions: CONDITIONS },
  },
];

/** A rate of every kind that a label of a liquid tells. */
export const LIQUID_RATES: readonly LabelRate[] = [
  qty(2, "pt/ac"),
  { rate: qty(2, "L/ha"), per: "broadcast" },
  qty(1, "pt/100gal"),
  { value: 1, unit: "%", basis: "v/v" },
  { parts: 1, to: 100, of: "water" },
  qty(0.1, "mL/m"),
  { activeIngredient: qty(0.8, "kg/ha"), contains: qty(400, "g/L") },
  {
    activeIngredient: { rate: qty(0.8, "kg/ha"), per: "treated" },
    contains: qty(400, "g/kg"),
    density: qty(1.1, "kg/L"),
  },
  { low: qty(1, "L/ha"), high: qty(3, "L/ha"), chosen: qty(2, "L/ha") },
];

/** A rate of every kind that a label of a dry product tells. */
export const DRY_RATES: readonly LabelRate[] = [
  qty(12, "oz/ac"),
  { rate: qty(2, "kg/ha"), per: "treated" },
  qty(1, "lb/100gal"),
  { value: 1, unit: "%", basis: "w/v" },
  { activeIngredient: qty(1, "kg/ha"), contains: { value: 50, unit: "%", basis: "w/w" } },
];

const PRODUCT: fc.Arbitrary<Omit<Product, "name">> = fc.oneof(
  fc.record<Omit<LiquidProduct, "name">, "form" | "rate">(
    {
      form: fc.constant("liquid"),
      rate: fc.constantFrom(...LIQUID_RATES) as fc.Arbitrary<LiquidProduct["rate"]>,
      label: fc.constant({
        min: qty(1, "pt/ac"),
        max: qty(4, "pt/ac"),
        leastCarrier: qty(5, "gal/ac"),
        mostCarrier: qty(100, "gal/ac"),
        seasonMax: qty(8, "pt/ac"),
        mostApplications: 3,
        daysBetween: 7,
      }),
      soFar: fc.constant({ rate: qty(2, "pt/ac"), applications: 1, daysSinceLast: 10 }),
      formulation: fc.constantFrom("EC", "SC", "adjuvant"),
      price: fc.constant({ amount: 42.5, per: qty(1, "gal") }),
      labelPermitsDilution: fc.boolean(),
    },
    { requiredKeys: ["form", "rate"] },
  ),
  fc.record<Omit<DryProduct, "name">, "form" | "rate">(
    {
      form: fc.constant("dry"),
      rate: fc.constantFrom(...DRY_RATES) as fc.Arbitrary<DryProduct["rate"]>,
      formulation: fc.constantFrom("WG", "WP", "fertilizer"),
      inSolubleBag: fc.boolean(),
      bulkDensity: fc.constant(qty(0.5, "kg/L")),
      registration: fc.constant("0000-000"),
      reEntryHours: fc.constant(12),
      preHarvestDays: fc.constant(3),
      price: fc.constant({ amount: 10, per: qty(5, "lb") }),
    },
    { requiredKeys: ["form", "rate"] },
  ),
);

/** Jobs of every shape, right field by field. (Only planning them shows whether they also go together.) */
export const JOBS: fc.Arbitrary<PlanInput> = fc.record<
  PlanInput,
  "plot" | "calibration" | "sprayer" | "products" | "tools"
>(
  {
    plot: fc.oneof(
      fc.constantFrom(...PLOTS),
      fc.array(fc.constantFrom(...PLOTS), { minLength: 1, maxLength: 3 }),
    ),
    calibration: fc.constantFrom(...CALIBRATIONS),
    sprayer: fc.record(
      {
        tank: fc.constantFrom(qty(4, "gal"), qty(15, "L"), qty(100, "imp_gal")),
        workingFill: fc.constant(qty(3, "gal")),
        lineVolume: fc.constantFrom(qty(0, "fl_oz"), qty(10, "fl_oz")),
        leastLoad: fc.constant(qty(1, "qt")),
      },
      { requiredKeys: ["tank"] },
    ),
    reserve: fc.constantFrom({ percent: 5 }, { volume: qty(1, "qt") }, { roundUpTo: qty(0.25, "gal") }),
    split: fc.constantFrom("full-then-part", "equal", "whole-rows", "whole-plots"),
    products: fc
      .array(PRODUCT, { minLength: 1, maxLength: 3 })
      .map((list) => list.map((product, i) => ({ name: `Product ${"ABC"[i]}`, ...product }) as Product)),
    tools: fc.constantFrom("us-spoons", "scales", [
      { name: "jug", capacity: qty(1, "L"), graduation: qty(50, "mL"), least: qty(100, "mL") },
      { name: "spoon", capacity: qty(1, "metric_tsp") },
    ]) as fc.Arbitrary<PlanInput["tools"]>,
    today: fc.constant({ date: "2026-05-01", conditions: CONDITIONS, longestAge: 90 }),
    addedWater: fc.constant(qty(1, "gal")),
    currency: fc.constantFrom({ code: "USD" }, { code: "JPY", decimals: 0 }),
    thresholds: fc.constantFrom({}, { leastRate: qty(1, "gal/ac"), calibrationDays: 30 }),
  },
  { requiredKeys: ["plot", "calibration", "sprayer", "products", "tools"] },
);

type Tree = Record<string, unknown>;

/** Quantities in the given words where a person could have typed them: those without further marks. */
export function asText(input: unknown): unknown {
  if (typeof input !== "object" || input === null) return input;
  if (Array.isArray(input)) return input.map(asText);
  const { value, unit, basis, ...more } = input as Tree;
  if (value !== undefined && Object.keys(more).length === 0)
    return `${value} ${String(unit).replace(/(^|\/)oz/, "$1oz wt")}${basis === undefined ? "" : ` ${basis}`}`;
  return Object.fromEntries(Object.entries(input).map(([key, inner]) => [key, asText(inner)]));
}

function pathsOf(tree: unknown, path: readonly string[] = []): (readonly string[])[] {
  if (typeof tree !== "object" || tree === null) return [path];
  return [path, ...Object.entries(tree).flatMap(([key, inner]) => pathsOf(inner, [...path, key]))];
}

const JUNK: fc.Arbitrary<unknown> = fc.oneof(
  fc.constantFrom<unknown>(
    ...[
      null,
      true,
      "",
      " ",
      "x",
      "constructor",
      "__proto__",
      "5",
      "5 oz",
      "2 1/2 gal",
      "-3 ft",
      "1,5 l",
      "0 L",
    ],
    ...[0, -0, -1, 0.5, 1e308, -1e308, 5e-324, 2 ** 53, 1e21, [], {}, [[]], [null], { kind: "constructor" }],
    ...[
      qty(5, "ft"),
      qty(0, "gal"),
      qty(-1, "L/ha"),
      qty(1e308, "mi"),
      qty(5e-324, "mm"),
      { value: "5", unit: "ft" },
    ],
    ...[
      { value: 5, unit: "oz" },
      { value: 5, unit: "__proto__" },
      { value: 1, unit: "ac", of: "ground" },
    ],
    JSON.parse('{"__proto__": {"kind": "rectangle"}}'),
  ),
  fc.jsonValue({ maxDepth: 3 }),
);

const FIELD = fc.constantFrom(
  "__proto__",
  "constructor",
  "toString",
  "lable",
  "kind",
  "value",
  "rate",
  "of",
  "rows",
  "area",
);

/** The same tree with one place changed: replaced, left out, or given one more field. */
function changed(tree: unknown): fc.Arbitrary<unknown> {
  const places = pathsOf(tree);
  return fc
    .tuple(fc.constantFrom(...places), fc.constantFrom("replace", "drop", "add"), JUNK, FIELD)
    .map(([path, how, junk, field]) => at(tree, path, how, junk, field));
}

function at(tree: unknown, path: readonly string[], how: string, junk: unknown, field: string): unknown {
  const [first, ...rest] = path;
  const isTree = typeof tree === "object" && tree !== null;
  if (first === undefined || !isTree) return how === "add" && isTree ? withField(tree, field, junk) : junk;
  if (how === "drop" && rest.length === 0) {
    // A clean list: junk may have given this one a constructor.
    if (Array.isArray(tree)) return Array.from(tree).filter((_, i) => String(i) !== first);
    return Object.fromEntries(Object.entries(tree).filter(([key]) => key !== first));
  }
  return withField(tree, first, at((tree as Tree)[first], rest, how, junk, field));
}

// An own field whatever its name: `__proto__` too, as JSON.parse makes it.
function withField(tree: object, name: string, value: unknown): unknown {
  const copy = Array.isArray(tree) ? [...tree] : { ...tree };
  return Object.defineProperty(copy, name, { value, enumerable: true, configurable: true, writable: true });
}

/** Nearly right jobs: one of {@link JOBS}, as objects or as text, with up to four places changed. */
export const NEARLY_RIGHT: fc.Arbitrary<unknown> = fc
  .tuple(JOBS, fc.boolean(), fc.integer({ min: 0, max: 4 }))
  .chain(([job, text, changes]) => {
    let result: fc.Arbitrary<unknown> = fc.constant(text ? asText(job) : job);
    for (let i = 0; i < changes; i++) result = result.chain(changed);
    return result;
  });
