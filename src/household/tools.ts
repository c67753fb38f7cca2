import { frozen } from "../frozen.js";
import { type Check, checked, type Field } from "../units/check.js";
import { type ChoiceField, choice, either, ListField, named } from "../units/fields.js";
import { orderOf } from "../units/quantity.js";
import type { Mass, Quantity, UnitSystem, Volume } from "../units/types.js";
import { MEASURING_TOOL, type MeasuringTool } from "./measuring-tool.js";

/**
 * The names of the sets of tools.
 *
 * - `us-spoons`: ⅛, ¼, ½ and 1 teaspoon, 1 tablespoon (US customary)
 * - `us-cups-and-spoons`: these and ¼, ⅓, ½ and 1 cup
 * - `us-household`: these and a pint, a quart and a gallon measure
 * - `us-ounce-measures`: 1, 2, 4, 8 and 16 fluid ounces (US customary)
 * - `us-legal-cups-and-spoons`: teaspoon 5 mL, tablespoon 15 mL, cup 240 mL, as US nutrition labels use them
 * - `metric-spoons`: ⅛, ¼, ½ and 1 teaspoon of 5 mL, 1 tablespoon of 15 mL
 * - `metric-cups-and-spoons`: these and ¼, ½ and 1 cup of 250 mL
 * - `metric-measures`: 10, 25, 50, 100, 250, 500 and 1000 mL, each filled to one line
 * - `australian-spoons`: ¼, ½ and 1 teaspoon of 5 mL, ½ and 1 tablespoon of 20 mL
 * - `imperial-measures`: 1 fluid ounce, ¼, ½ and 1 pint, 1 quart, 1 gallon (imperial)
 * - `syringes`: 1, 5, 10, 20 and 50 mL, with their marks
 * - `cylinders`: 10, 25, 50, 100, 250, 500 and 1000 mL, with their marks
 * - `scales`: one of 200 g that reads 0.1 g from 2 g up, one of 5 kg that reads 1 g from 20 g up
 * - `us-scales`: one of 5 lb that reads 0.1 oz from 2 oz up, one of 50 lb that reads 1 oz from 20 oz up
 * - `fine-scales`: one of 100 g that reads 0.01 g from 0.2 g up
 */
export type ToolSetName =
  | "us-spoons"
  | "us-cups-and-spoons"
  | "us-household"
  | "us-ounce-measures"
  | "us-legal-cups-and-spoons"
  | "metric-spoons"
  | "metric-cups-and-spoons"
  | "metric-measures"
  | "australian-spoons"
  | "imperial-measures"
  | "syringes"
  | "cylinders"
  | "scales"
  | "us-scales"
  | "fine-scales";

/* @__NO_SIDE_EFFECTS__ */
function tool(
  name: string,
  value: number,
  unit: Volume["unit"] | Mass["unit"],
  marks?: { readonly graduation: number; readonly least?: number | undefined },
): MeasuringTool {
  const of = (amount: number): Volume | Mass => Object.freeze({ value: amount, unit }) as Volume | Mass;
  if (marks === undefined) return Object.freeze({ name, capacity: of(value) });
  const { graduation, least } = marks;
  return Object.freeze({
    name,
    capacity: of(value),
    graduation: of(graduation),
    ...(least !== undefined && { least: of(least) }),
  });
}

// US customary: 1 gal = 231 in³ = 4 qt = 8 pt = 16 cups = 128 fl oz = 256 tbsp = 768 tsp (NIST Handbook 44 (2024),
// Appendix C). A third of a cup is 16 teaspoons, and is given so because its decimal in cups does not end.
const US_SPOONS = [
  tool("1/8 teaspoon", 0.125, "tsp"),
  tool("1/4 teaspoon", 0.25, "tsp"),
  tool("1/2 teaspoon", 0.5, "tsp"),
  tool("teaspoon", 1, "tsp"),
  tool("tablespoon", 1, "tbsp"),
];
const US_CUPS = [
  tool("1/4 cup", 0.25, "cup"),
  tool("1/3 cup", 16, "tsp"),
  tool("1/2 cup", 0.5, "cup"),
  tool("cup", 1, "cup"),
];
const US_JUGS = [
  tool("pint measure", 1, "pt"),
  tool("quart measure", 1, "qt"),
  tool("gallon measure", 1, "gal"),
];

// Measures as sold with products, each of twice the one before (common practice, no source).
const US_OUNCES = [1, 2, 4, 8, 16].map((ounces) => tool(`${ounces} fl oz measure`, ounces, "fl_oz"));

// For nutrition labelling only: teaspoon 5 mL, tablespoon 15 mL, cup 240 mL (21 CFR 101.9(b)(5)(viii)). Spoons and cups
// sold with milliliters on them follow these figures.
const US_LEGAL = [
  tool("1/4 teaspoon (1.25 mL)", 1.25, "mL"),
  tool("1/2 teaspoon (2.5 mL)", 2.5, "mL"),
  tool("teaspoon (5 mL)", 5, "mL"),
  tool("tablespoon (15 mL)", 15, "mL"),
  tool("1/4 cup (60 mL)", 60, "mL"),
  tool("1/3 cup (80 mL)", 80, "mL"),
  tool("1/2 cup (120 mL)", 120, "mL"),
  tool("cup (240 mL)", 240, "mL"),
];

// Metric kitchen measure: teaspoon 5 mL, tablespoon 15 mL, cup 250 mL (common practice, no source: in use in Canada,
// New Zealand and the United Kingdom, where no law fixes them).
const METRIC_SPOONS = [
  tool("1/8 metric teaspoon", 0.125, "metric_tsp"),
  tool("1/4 metric teaspoon", 0.25, "metric_tsp"),
  tool("1/2 metric teaspoon", 0.5, "metric_tsp"),
  tool("metric teaspoon", 1, "metric_tsp"),
  tool("metric tablespoon", 1, "metric_tbsp"),
];
const METRIC_CUPS = [
  tool("1/4 metric cup", 0.25, "metric_cup"),
  tool("1/2 metric cup", 0.5, "metric_cup"),
  tool("metric cup", 1, "metric_cup"),
];

// Measures as farm shops have them (common practice, no source).
const METRIC_MEASURES = [10, 25, 50, 100, 250, 500, 1000].map((size) =>
  tool(`${size} mL measure`, size, "mL"),
);

// Australian: ¼, ½ and 1 teaspoon of 5 mL, 1 tablespoon of 20 mL (conversion chart, "spoon sets approved by the Standards
// Association of Australia", Healthy Kids, NSW Ministry of Health, year not shown). The half tablespoon is common practice.
const AUSTRALIAN_SPOONS = [
  tool("1/4 Australian teaspoon", 1.25, "mL"),
  tool("1/2 Australian teaspoon", 2.5, "mL"),
  tool("Australian teaspoon", 5, "mL"),
  tool("1/2 Australian tablespoon", 0.5, "au_tbsp"),
  tool("Australian tablespoon", 1, "au_tbsp"),
];

// 1 imperial gallon = 4.54609 L = 4 qt = 8 pt = 160 fl oz (Weights and Measures Act 1985, Schedule 1).
const IMPERIAL_MEASURES = [
  tool("imperial fluid ounce measure", 1, "imp_fl_oz"),
  tool("1/4 imperial pint measure", 0.25, "imp_pt"),
  tool("1/2 imperial pint measure", 0.5, "imp_pt"),
  tool("imperial pint measure", 1, "imp_pt"),
  tool("imperial quart measure", 1, "imp_qt"),
  tool("imperial gallon measure", 1, "imp_gal"),
];

// Marks as on syringes in trade (common practice, no source).
const SYRINGES = [
  tool("1 mL syringe", 1, "mL", { graduation: 0.02 }),
  tool("5 mL syringe", 5, "mL", { graduation: 0.2 }),
  tool("10 mL syringe", 10, "mL", { graduation: 0.5 }),
  tool("20 mL syringe", 20, "mL", { graduation: 1 }),
  tool("50 mL syringe", 50, "mL", { graduation: 1 }),
];

// Marks as on laboratory cylinders (ISO 4788; from memory). Read from a tenth of the capacity up: below that the width
// of a mark is too large a part of the reading (common practice, no source).
const CYLINDERS = [
  tool("10 mL cylinder", 10, "mL", { graduation: 0.2, least: 1 }),
  tool("25 mL cylinder", 25, "mL", { graduation: 0.5, least: 2.5 }),
  tool("50 mL cylinder", 50, "mL", { graduation: 1, least: 5 }),
  tool("100 mL cylinder", 100, "mL", { graduation: 1, least: 10 }),
  tool("250 mL cylinder", 250, "mL", { graduation: 2, least: 26 }),
  tool("500 mL cylinder", 500, "mL", { graduation: 5, least: 50 }),
  tool("1000 mL cylinder", 1000, "mL", { graduation: 10, least: 100 }),
];

// A scale is not to be used below 20 of its divisions (NIST Handbook 44, Section 2.20, Table 8, class III; from memory).
const SCALES = [
  tool("200 g scale", 200, "g", { graduation: 0.1, least: 2 }),
  tool("5 kg scale", 5000, "g", { graduation: 1, least: 20 }),
];
const US_SCALES = [
  tool("5 lb scale", 80, "oz", { graduation: 0.1, least: 2 }),
  tool("50 lb scale", 800, "oz", { graduation: 1, least: 20 }),
];

// A pocket scale as shops have it (common practice, no source).
const FINE_SCALES = [tool("0.01 g scale", 100, "g", { graduation: 0.01, least: 0.2 })];

const SETS: Readonly<Record<ToolSetName, readonly MeasuringTool[]>> = {
  "us-spoons": US_SPOONS,
  "us-cups-and-spoons": [...US_SPOONS, ...US_CUPS],
  "us-household": [...US_SPOONS, ...US_CUPS, ...US_JUGS],
  "us-ounce-measures": US_OUNCES,
  "us-legal-cups-and-spoons": US_LEGAL,
  "metric-spoons": METRIC_SPOONS,
  "metric-cups-and-spoons": [...METRIC_SPOONS, ...METRIC_CUPS],
  "metric-measures": METRIC_MEASURES,
  "australian-spoons": AUSTRALIAN_SPOONS,
  "imperial-measures": IMPERIAL_MEASURES,
  syringes: SYRINGES,
  cylinders: CYLINDERS,
  scales: SCALES,
  "us-scales": US_SCALES,
  "fine-scales": FINE_SCALES,
};

/** The names of the sets, in a fixed order: for a form's list of choices. */
export const toolSetNames: readonly ToolSetName[] = /* @__PURE__ */ Object.freeze(
  Object.keys(SETS) as ToolSetName[],
);

/**
 * The set for a form to begin with, by the system of units: what most kitchens and farm shops have. A person with another
 * set chooses that. Common practice, no source.
 *
 * @example
 * ```ts
 * import { measureOut, usualTools } from "swath-to-spoon/household";
 * import { qty } from "swath-to-spoon/units";
 *
 * const dose = measureOut({ amount: qty(10.24, "fl_oz"), tools: usualTools.us, rule: "never-over" });
 * if (dose.ok) console.log(dose.parts.map((part) => `${part.count} × ${part.tool.name}`).join(" + ")); // 1 × cup + 1 × 1/4 cup + 1 × teaspoon
 * ```
 */
export const usualTools: Readonly<Record<UnitSystem, ToolSetName>> = /* @__PURE__ */ Object.freeze({
  us: "us-cups-and-spoons",
  imperial: "metric-cups-and-spoons",
  metric: "metric-cups-and-spoons",
});

const TOOL_SET: ChoiceField<ToolSetName> = choice("The name of a set of tools.", toolSetNames, usualTools);

/**
 * Returns the tools of a named set, smallest first, as a new list that may be added to or cut down.
 *
 * Each capacity is exact by its standard: US customary (NIST Handbook 44 (2024), Appendix C), US legal for nutrition
 * labels (21 CFR 101.9(b)(5)(viii)), imperial (Weights and Measures Act 1985, Schedule 1); metric kitchen measure is
 * common practice.
 *
 * @param name - a set's name
 * @returns its tools
 * @throws SprayMathError `unknown-choice` or `missing`
 *
 * @example
 * ```ts
 * import { toolSet } from "swath-to-spoon/household";
 *
 * const spoons = toolSet("australian-spoons");
 * console.log(spoons.map((tool) => tool.name).at(-1)); // Australian tablespoon
 * console.log(spoons.at(-1)?.capacity); // { value: 1, unit: 'au_tbsp' }
 * ```
 */
export function toolSet(name: ToolSetName): MeasuringTool[] {
  return [...SETS[checked(name, TOOL_SET, "name")]];
}

/** What doses are measured with. */
export type Tools = ToolSetName | readonly MeasuringTool[];

/** The tools of a set, or of a list. Trusts its input. */
export function toolsIn(tools: Tools): readonly MeasuringTool[] {
  return typeof tools === "string" ? SETS[tools] : tools;
}

/** The coarser of the usual scales that weighs an amount, else the finer one. */
export function scaleFor(amount: Quantity): "scales" | "fine-scales" {
  const [ordinary] = toolsIn("scales") as readonly [MeasuringTool];
  return orderOf(amount, ordinary.least as Quantity) === -1 ? "fine-scales" : "scales";
}

// A caller gives the same list with every dose: it is read again only where it changed. Whatever is worked out for its
// copy, which nobody can change, is kept with the copy.
const READ = new WeakMap<object, readonly MeasuringTool[]>();

class ToolListField extends ListField<MeasuringTool> {
  override read(input: unknown, check: Check): readonly MeasuringTool[] | undefined {
    const before = Array.isArray(input) ? READ.get(input) : undefined;
    if (saysTheSame(input, before)) return before;
    const faults = check.issues.length;
    // A list that is too long is not looked at.
    const listed: readonly unknown[] = Array.isArray(input) && input.length <= this.most ? input : [];
    const set = listed.find(isSet);
    if (set !== undefined)
      return check.fault(
        "not-a-quantity",
        "set-in-list",
        "",
        "A list holds tools, not names of sets. Write {example} for the tools of a set.",
        { example: `...toolSet("${set}")` },
      );
    const tools = super.read(input, check);
    refuseNamesAlike(listed, check);
    if (check.issues.length > faults) return undefined;
    READ.set(input as object, frozen(tools as readonly MeasuringTool[]));
    return tools;
  }
}

function isSet(tool: unknown): tool is ToolSetName {
  return typeof tool === "string" && Object.hasOwn(SETS, tool);
}

// A dose names its tools: of two that are called alike nobody knows which one is meant.
function refuseNamesAlike(tools: readonly unknown[], check: Check): void {
  const names = new Map<string, unknown>();
  for (const [i, tool] of tools.entries()) {
    const name = (tool as Partial<MeasuringTool> | null | undefined)?.name;
    if (typeof name !== "string") continue;
    const plain = plainName(name);
    if (plain !== "" && names.has(plain)) {
      const isTwice = saysTheSame(tool, names.get(plain));
      check.fault(
        "conflict",
        isTwice ? "tool-twice" : "tool-names-alike",
        `[${i}].name`,
        isTwice
          ? "The tool {name.tool} is in the list twice. Remove one."
          : "Two tools are called {name.tool}. Give each its own name.",
        { name: name.trim().slice(0, 40) },
      );
    }
    names.set(plain, tool);
  }
}

/** A tool's name as names are compared: small and capital letters are the same, and so are spaces around it. */
export function plainName(name: string): string {
  return name.trim().toLowerCase();
}

/** Whether an input holds what its copy holds, and nothing else. */
function saysTheSame(input: unknown, copy: unknown): boolean {
  if (typeof copy !== "object" || typeof input !== "object") return input === copy;
  const given = input as Record<string, unknown>;
  let fields = 0;
  for (const name in given) {
    const value = given[name];
    if (value === undefined || value === null) continue;
    if (!saysTheSame(value, (copy as Record<string, unknown>)[name])) return false;
    fields++;
  }
  return fields === Object.keys(copy as object).length;
}

/** The tools that doses are measured with: the name of a set, or a list. */
export const TOOLS: Field<Tools> = /* @__PURE__ */ named(
  "Tools",
  /* @__PURE__ */ either<Tools>(
    "The tools that doses are measured with: the name of a set, or a list.",
    [TOOL_SET, /* @__PURE__ */ new ToolListField("The tools, in any order.", MEASURING_TOOL, 1, 50)],
    (input) => (typeof input === "string" ? 0 : 1),
  ),
);
