import { type Check, checked } from "../units/check.js";
import { inUnit } from "../units/convert.js";
import { moreThan } from "../units/decide.js";
import {
  about,
  choice,
  number,
  type ObjectField,
  object,
  optional,
  type Partly,
  type TextField,
  text,
} from "../units/fields.js";
import { formulaLines, type GivenTerm } from "../units/formula-lines.js";
import { refusal } from "../units/message.js";
import { called, quantity } from "../units/quantity-field.js";
import { positive } from "../units/result.js";
import type { Mass, MassPerCount, MassPerLength, MassRate, Quantity } from "../units/types.js";
import type { WorkingLine } from "../units/working-line.js";
import { ACTIVE_EXAMPLES } from "./label-rate.js";

/**
 * A plant nutrient, as a label declares it. Phosphorus, potassium and some others are declared as the oxide in most countries
 * (`P2O5`, `K2O`, `SO3`, `MgO`, `CaO`) and as the element in others (`P`, `K`, `S`, `Mg`, `Ca`).
 */
export type Nutrient = "N" | "P2O5" | "K2O" | "P" | "K" | "S" | "SO3" | "Mg" | "MgO" | "Ca" | "CaO";

/** What a fertilizer contains, in percent by weight: the three numbers on a bag, and others where the label has them. */
export type FertilizerContent = Readonly<Partial<Record<Nutrient, number | undefined>>>;

/** Every nutrient that a label may declare. */
export const NUTRIENTS: readonly Nutrient[] = [
  "N",
  "P2O5",
  "K2O",
  "P",
  "K",
  "S",
  "SO3",
  "Mg",
  "MgO",
  "Ca",
  "CaO",
];

/** An element and its oxide: how much of the one is in the other. */
interface Oxide {
  readonly element: Nutrient;
  readonly oxide: Nutrient;
  /** Parts by weight of the element in so many of the oxide. */
  readonly parts: number;
  readonly of: number;
}

// From abridged standard atomic weights: O 15.999, P 30.974, K 39.098, S 32.06, Mg 24.305, Ca 40.078.
const OXIDES: readonly Oxide[] = [
  { element: "P", oxide: "P2O5", parts: 61.948, of: 141.943 },
  { element: "K", oxide: "K2O", parts: 78.196, of: 94.195 },
  { element: "S", oxide: "SO3", parts: 32.06, of: 80.057 },
  { element: "Mg", oxide: "MgO", parts: 24.305, of: 40.304 },
  { element: "Ca", oxide: "CaO", parts: 40.078, of: 56.077 },
];

const ATOMIC_WEIGHTS = "Standard atomic weights 2021, abridged (IUPAC)";

/** The pair that one nutrient is converted to another by; none where they are not of one element. */
function oxideBetween(from: Nutrient, to: Nutrient): Oxide | undefined {
  return OXIDES.find(
    ({ element, oxide }) => (element === from && oxide === to) || (element === to && oxide === from),
  );
}

/** The other way that a nutrient may be declared. */
function counterpart(nutrient: Nutrient): Nutrient | undefined {
  const pair = OXIDES.find(({ element, oxide }) => element === nutrient || oxide === nutrient);
  return pair && (pair.element === nutrient ? pair.oxide : pair.element);
}

/** An amount of one nutrient as the other of its pair. */
function converted(value: number, to: Nutrient, { element, parts, of }: Oxide): number {
  return to === element ? (value * parts) / of : (value * of) / parts;
}

/* @__NO_SIDE_EFFECTS__ */
function percents(): ObjectField<FertilizerContent> {
  const percent = number("Percent by weight. From 0 to 100.", { unit: "percent", min: 0, max: 100 });
  return object<FertilizerContent>(
    Object.fromEntries(NUTRIENTS.map((nutrient) => [nutrient, optional(percent)])) as never,
    [contentFits],
  );
}

/** Notes a fertilizer that is declared twice over, or that has more in it than it weighs, or nothing at all. */
function contentFits(content: Partly<FertilizerContent>, check: Check): void {
  const declared = NUTRIENTS.filter((nutrient) => (content[nutrient] ?? 0) > 0);
  for (const { element, oxide } of OXIDES)
    if (declared.includes(element) && declared.includes(oxide))
      check.fault("conflict", "nutrient-twice", element, "Enter {element} or {oxide}, not both.", {
        element,
        oxide,
      });
  const total = declared.reduce((sum, nutrient) => sum + (content[nutrient] as number), 0);
  if (moreThan(total, 100))
    check.fault(
      "out-of-range",
      "nutrients-over-whole",
      "",
      "A fertilizer can't be {given} nutrients. Check the numbers on the bag.",
      { given: { value: total, unit: "%" } },
    );
  if (declared.length === 0 && !NUTRIENTS.some((nutrient) => check.hasFault(nutrient)))
    check.fault("missing", "nutrients-missing", "", "Enter what the fertilizer contains, such as 28-0-0.");
}

/** What a fertilizer contains. */
export const CONTAINS: ObjectField<FertilizerContent> = /* @__PURE__ */ percents();

/** How {@link readGrade} is to understand a grade. */
export interface GradeOptions {
  /**
   * What the second and third number declare: `oxides` (P2O5 and K2O), as in the Americas, Europe and most of Asia, or `elements`
   * (P and K), as in Australia, New Zealand and South Africa. `oxides` unless given.
   */
  readonly as?: "oxides" | "elements" | undefined;
}

const GRADE_OPTIONS: ObjectField<GradeOptions> = /* @__PURE__ */ object<GradeOptions>({
  as: optional(
    choice(
      "What the second and third number declare: `oxides` (P2O5 and K2O), as in the Americas, Europe and most of Asia, or `elements` " +
        "(P and K), as in Australia, New Zealand and South Africa. `oxides` unless given.",
      ["oxides", "elements"],
    ),
  ),
});

const GRADE: TextField = /* @__PURE__ */ text("The grade on the bag, such as 28-0-0.");

const GRADE_TEXT =
  /^(\d{1,3}(?:\.\d{1,3})?)[-–:](\d{1,3}(?:\.\d{1,3})?)[-–:](\d{1,3}(?:\.\d{1,3})?)(?:[-–:+](\d{1,3}(?:\.\d{1,3})?)S?)?$/i;

/**
 * Reads the grade of a fertilizer: `28-0-0`, `10-10-10`, `21-0-0-24S`, `0:8.8:0:11`. A fourth number is sulfur.
 *
 * @param grade - three or four numbers with a hyphen or colon between them: nitrogen, phosphorus, potassium, sulfur
 * @param options - whether phosphorus and potassium are declared as oxides or elements
 * @returns what it contains, in percent by weight
 * @throws SprayMathError `missing` for blank text or a grade of nothing but 0, `unreadable`, `out-of-range` for more than 100%, or
 * `unknown-choice` for an option
 *
 * @example
 * ```ts
 * import { readGrade } from "swath-to-spoon/tank-mix";
 *
 * console.log(readGrade("28-0-0")); // { N: 28, P2O5: 0, K2O: 0 }
 * console.log(readGrade("0:8.8:0:11", { as: "elements" })); // { N: 0, P: 8.8, K: 0, S: 11 }
 * ```
 */
export function readGrade(grade: string, options?: GradeOptions): FertilizerContent {
  const { as = "oxides" } = checked(options ?? {}, GRADE_OPTIONS, "options");
  const written = checked(grade, GRADE, "grade");
  const match = GRADE_TEXT.exec(written.replace(/\s/g, ""));
  if (match === null)
    throw refusal("unreadable", "grade-unreadable", "grade", "Enter the grade on the bag, such as 28-0-0.");
  const [n, p, k, s] = match.slice(1).map((part) => (part === undefined ? undefined : Number(part)));
  const main = as === "oxides" ? { N: n, P2O5: p, K2O: k } : { N: n, P: p, K: k };
  return checked<FertilizerContent>({ ...main, ...(s !== undefined && { S: s }) }, CONTAINS, "grade");
}

/** A weight of nutrient or of fertilizer: on a plot, per area, per length of row, or per plant. */
export type NutrientAmount = Mass | MassRate | MassPerLength | MassPerCount;

const AMOUNTS = ["mass", "massRate", "massPerLength", "massPerCount"] as const;

/** The input of {@link fertilizerFor}. */
export interface FertilizerInput<A extends NutrientAmount = NutrientAmount> {
  /** The nutrient that is needed, as the recommendation gives it. */
  readonly nutrient: Nutrient;
  /** How much of the nutrient: per area, per length of row, per plant, or in all. More than 0. */
  readonly amount: A;
  /** What the fertilizer contains, in percent by weight. */
  readonly contains: FertilizerContent;
}

const FERTILIZER: ObjectField<FertilizerInput> = /* @__PURE__ */ object<FertilizerInput>(
  {
    nutrient: choice("The nutrient that is needed, as the recommendation gives it.", NUTRIENTS),
    amount: called(
      quantity(
        "How much of the nutrient: per area, per length of row, per plant, or in all. More than 0.",
        AMOUNTS,
      ),
      "amount",
      ACTIVE_EXAMPLES,
    ),
    contains: about("What the fertilizer contains, in percent by weight.", CONTAINS),
  },
  [nutrientIn],
);

/** Notes a fertilizer without the nutrient that is needed. */
export function nutrientIn({ nutrient, contains }: Partly<FertilizerInput>, check: Check): void {
  if (nutrient === undefined || contains === undefined) return;
  if (declaredAs(nutrient, contains as FertilizerContent) === undefined && !check.hasFault("contains"))
    check.fault(
      "conflict",
      "nutrient-absent",
      "contains",
      "There's no {nutrient} in this fertilizer. Choose one that has it, or check its grade.",
      { nutrient },
    );
}

/** The nutrient, or its counterpart, as a fertilizer declares it. */
function declaredAs(nutrient: Nutrient, contains: FertilizerContent): Nutrient | undefined {
  const other = counterpart(nutrient);
  return [nutrient, ...(other ? [other] : [])].find((one) => (contains[one] ?? 0) > 0);
}

/** The weight of each nutrient that a fertilizer brings. */
export type NutrientsBrought<A extends NutrientAmount = NutrientAmount> = Readonly<
  Partial<Record<Nutrient, A>>
>;

/** A rate of fertilizer, and what it brings. */
export interface FertilizerRate<A extends NutrientAmount = NutrientAmount> {
  /** How much fertilizer, in the unit of the nutrient's amount. */
  readonly product: A;
  /** Every nutrient that it brings, as the fertilizer declares it: the one that is needed, and those that come along. */
  readonly brings: NutrientsBrought<A>;
}

/**
 * Returns how much fertilizer brings so much of a nutrient: 1 lb of nitrogen per 1,000 sq ft from 28-0-0. The rate on a soil test is
 * most often of the nutrient; what goes into the spreader is the fertilizer.
 *
 * Phosphorus asked for as `P` and declared as `P2O5`, or the reverse, is converted by weight; so are the other oxides.
 *
 * Formula: fertilizer = nutrient / content. Source: Lawn Fertilizer Calculations (University of Nebraska-Lincoln Extension); Fertiliser
 * Calculations (NSW Department of Primary Industries, DPI 496, 2004).
 *
 * @param input - the nutrient, its amount, and what the fertilizer contains
 * @returns the fertilizer and all that it brings, in the unit of `amount`; within 8 ulp of the exact value
 * @throws SprayMathError `conflict` for a fertilizer without the nutrient, `out-of-range`, `missing`, `not-a-quantity`,
 * `not-finite`, `unknown-unit`, `unknown-field`, `unknown-choice` or `wrong-dimension`
 *
 * @example
 * ```ts
 * import { fertilizerFor, readGrade } from "swath-to-spoon/tank-mix";
 * import { qty } from "swath-to-spoon/units";
 *
 * const { product, brings } = fertilizerFor({
 *   nutrient: "N",
 *   amount: qty(1, "lb/1000ft2"),
 *   contains: readGrade("20-5-10"),
 * });
 * console.log(product); // { value: 5, unit: 'lb/1000ft2' }
 * console.log(brings.P2O5, brings.K2O); // { value: 0.25, unit: 'lb/1000ft2' } { value: 0.5, unit: 'lb/1000ft2' }
 * ```
 */
export function fertilizerFor<A extends NutrientAmount>(input: FertilizerInput<A>): FertilizerRate<A> {
  return fertilizerOf(checked(input, FERTILIZER)) as FertilizerRate<A>;
}

/** The fertilizer that brings a nutrient. Trusts its input. */
export function fertilizerOf(input: FertilizerInput, at = "amount"): FertilizerRate {
  const { amount, contains } = input;
  const value = positive(amount.value / contentOf(input).part, at);
  const product = { value, unit: amount.unit } as NutrientAmount;
  return { product, brings: nutrientsOf({ product, contains }) };
}

/** The part of a fertilizer that is the nutrient needed. */
interface WorkedContent {
  readonly percent: Quantity<"%">;
  readonly pair: Oxide | undefined;
  /** As a part of one. */
  readonly part: number;
}

function contentOf({ nutrient, contains }: FertilizerInput): WorkedContent {
  const declared = declaredAs(nutrient, contains) as Nutrient;
  const percent = { value: contains[declared] as number, unit: "%" } as const;
  const pair = oxideBetween(declared, nutrient);
  const part = inUnit(percent, "1");
  return { percent, pair, part: pair ? converted(part, nutrient, pair) : part };
}

/**
 * The working of {@link fertilizerFor}.
 *
 * @param input - as for {@link fertilizerFor}
 * @returns the lines: the content, the fertilizer, and each nutrient that comes with it
 * @throws SprayMathError what {@link fertilizerFor} throws
 *
 * @example
 * ```ts
 * import { qty } from "swath-to-spoon/units";
 * import { fertilizerFor } from "swath-to-spoon/working";
 *
 * const lines = fertilizerFor({ nutrient: "N", amount: qty(1, "lb/1000ft2"), contains: { N: 25 } });
 * console.log(lines.map((line) => line.formula)); // [ 'value / size', 'nutrient / content' ]
 * ```
 */
export function fertilizerForWorking(input: FertilizerInput): WorkingLine[] {
  return linesOfFertilizer(checked(input, FERTILIZER));
}

/** The working of {@link fertilizerOf}. Trusts its input. */
export function linesOfFertilizer(input: FertilizerInput): WorkingLine[] {
  const { nutrient, amount, contains } = input;
  const { percent, pair, part } = contentOf(input);
  const { product } = fertilizerOf(input);
  const content: Quantity = { value: part, unit: "1" };
  const others = Object.fromEntries(Object.entries(contains).filter(([name]) => name !== nutrient));
  return [
    ...(pair
      ? formulaLines({
          id: "tank-mix.nutrient-content",
          formula: nutrient === pair.element ? "content * parts / whole" : "content * whole / parts",
          terms: { content: [percent, "1"], parts: pair.parts, whole: pair.of },
          result: content,
          source: ATOMIC_WEIGHTS,
        })
      : []),
    ...formulaLines({
      id: `tank-mix.fertilizer-${nutrient}`,
      formula: "nutrient / content",
      terms: { nutrient: [amount, amount.unit], content: pair ? [content, "1"] : [percent, "1"] },
      result: product,
      source: BY_CONTENT,
    }),
    ...linesOfNutrients({ product, contains: others }),
  ];
}

const BY_CONTENT = "by definition of what a product contains";

/** The input of {@link nutrientsFrom}. */
export interface NutrientsInput<A extends NutrientAmount = NutrientAmount> {
  /** How much fertilizer: per area, per length of row, per plant, or in all. More than 0. */
  readonly product: A;
  /** What the fertilizer contains, in percent by weight. */
  readonly contains: FertilizerContent;
}

const FROM: ObjectField<NutrientsInput> = /* @__PURE__ */ object<NutrientsInput>({
  product: called(
    quantity("How much fertilizer: per area, per length of row, per plant, or in all. More than 0.", AMOUNTS),
    "amount",
    ACTIVE_EXAMPLES,
  ),
  contains: about("What the fertilizer contains, in percent by weight.", CONTAINS),
});

/**
 * Returns the nutrients that so much fertilizer brings, each as the fertilizer declares it.
 *
 * Formula: nutrient = fertilizer × content. Source: Applying Fertilizers on Your Home Gardens (University of Maine Cooperative Extension,
 * Bulletin 2287).
 *
 * @param input - the fertilizer, and what it contains
 * @returns the weight of each nutrient, in the unit of `product`; within 8 ulp of the exact value
 * @throws SprayMathError `conflict` for a nutrient that is declared twice, `out-of-range`, `missing`, `not-a-quantity`,
 * `not-finite`, `unknown-unit`, `unknown-field` or `wrong-dimension`
 *
 * @example
 * ```ts
 * import { nutrientsFrom, readGrade } from "swath-to-spoon/tank-mix";
 * import { qty } from "swath-to-spoon/units";
 *
 * console.log(nutrientsFrom({ product: qty(80, "lb"), contains: readGrade("5-10-15") }).K2O); // { value: 12, unit: 'lb' }
 * ```
 */
export function nutrientsFrom<A extends NutrientAmount>(input: NutrientsInput<A>): NutrientsBrought<A> {
  return nutrientsOf(checked(input, FROM)) as NutrientsBrought<A>;
}

/** The nutrients that a fertilizer brings. Trusts its input. */
export function nutrientsOf({ product, contains }: NutrientsInput): NutrientsBrought {
  return Object.fromEntries(
    declaredIn(contains).map(([nutrient, percent]) => [
      nutrient,
      { value: positive(product.value * inUnit(percent, "1"), "product"), unit: product.unit },
    ]),
  );
}

/** The nutrients that there are some of. */
function declaredIn(contains: FertilizerContent): [Nutrient, Quantity<"%">][] {
  return NUTRIENTS.flatMap((nutrient): [Nutrient, Quantity<"%">][] => {
    const value = contains[nutrient] ?? 0;
    return value > 0 ? [[nutrient, { value, unit: "%" }]] : [];
  });
}

/**
 * The working of {@link nutrientsFrom}.
 *
 * @param input - as for {@link nutrientsFrom}
 * @returns the lines: each nutrient, as the fertilizer declares it
 * @throws SprayMathError what {@link nutrientsFrom} throws
 *
 * @example
 * ```ts
 * import { qty } from "swath-to-spoon/units";
 * import { nutrientsFrom } from "swath-to-spoon/working";
 *
 * const lines = nutrientsFrom({ product: qty(50, "kg"), contains: { N: 46 } });
 * console.log(lines.at(-1)?.result); // { value: 23, unit: 'kg' }
 * ```
 */
export function nutrientsFromWorking(input: NutrientsInput): WorkingLine[] {
  return linesOfNutrients(checked(input, FROM));
}

/** The working of {@link nutrientsOf}. Trusts its input. */
export function linesOfNutrients({ product, contains }: NutrientsInput): WorkingLine[] {
  const brought = nutrientsOf({ product, contains });
  return declaredIn(contains).flatMap(([nutrient, percent]) =>
    formulaLines({
      id: `tank-mix.nutrient-${nutrient}`,
      formula: "product * content",
      terms: { product: [product, product.unit], content: [percent, "1"] },
      result: brought[nutrient] as Quantity,
      source: BY_CONTENT,
    }),
  );
}

/** The input of {@link convertNutrient}. */
export interface ConvertNutrientInput<A extends NutrientAmount = NutrientAmount> {
  /** The weight of nutrient: per area, per length of row, per plant, or in all. More than 0. */
  readonly amount: A;
  /** What it is the weight of. */
  readonly from: Nutrient;
  /** What to convert it to: the oxide of that element, or the element of that oxide. */
  readonly to: Nutrient;
}

const AS: ObjectField<ConvertNutrientInput> = /* @__PURE__ */ object<ConvertNutrientInput>(
  {
    amount: called(
      quantity(
        "The weight of nutrient: per area, per length of row, per plant, or in all. More than 0.",
        AMOUNTS,
      ),
      "amount",
      ACTIVE_EXAMPLES,
    ),
    from: choice("What it is the weight of.", NUTRIENTS),
    to: choice("What to convert it to: the oxide of that element, or the element of that oxide.", NUTRIENTS),
  },
  [
    ({ from, to }, check) => {
      if (from === undefined || to === undefined || oxideBetween(from, to) !== undefined) return;
      check.fault(
        "conflict",
        "nutrients-differ",
        "to",
        "{from} and {to} aren't the same nutrient. Choose an element and its oxide, such as P and P2O5.",
        { from, to },
      );
    },
  ],
);

/**
 * Returns a weight of phosphorus as P2O5, of K2O as potassium, and the like: a soil test gives the element and a bag the oxide, or
 * the reverse.
 *
 * Formula: element = oxide × (atomic weight of the element in it) / (weight of the oxide). P is 0.4364 of P2O5, K 0.8302 of K2O, S 0.4005
 * of SO3, Mg 0.6030 of MgO, Ca 0.7147 of CaO. Source: standard atomic weights 2021, abridged to five figures (IUPAC).
 *
 * @param input - the weight, and the two nutrients
 * @returns the weight in the same unit; within 8 ulp of the exact value
 * @throws SprayMathError `conflict` for nutrients that are not an element and its oxide, `missing`, `not-a-quantity`, `not-finite`,
 * `unknown-unit`, `unknown-field`, `unknown-choice`, `wrong-dimension` or `out-of-range`
 *
 * @example
 * ```ts
 * import { convertNutrient } from "swath-to-spoon/tank-mix";
 * import { qty } from "swath-to-spoon/units";
 *
 * const { value, unit } = convertNutrient({ amount: qty(20, "kg/ha"), from: "P", to: "P2O5" });
 * console.log(value.toFixed(1), unit); // 45.8 kg/ha
 * ```
 */
export function convertNutrient<A extends NutrientAmount>(input: ConvertNutrientInput<A>): A {
  return convertedNutrient(checked(input, AS)) as A;
}

/** A nutrient as the other of its pair. Trusts its input. */
function convertedNutrient({ amount, from, to }: ConvertNutrientInput): NutrientAmount {
  const value = converted(amount.value, to, oxideBetween(from, to) as Oxide);
  return { value: positive(value, "amount"), unit: amount.unit } as NutrientAmount;
}

/**
 * The working of {@link convertNutrient}.
 *
 * @param input - as for {@link convertNutrient}
 * @returns the line
 * @throws SprayMathError what {@link convertNutrient} throws
 *
 * @example
 * ```ts
 * import { qty } from "swath-to-spoon/units";
 * import { convertNutrient } from "swath-to-spoon/working";
 *
 * const lines = convertNutrient({ amount: qty(20, "kg/ha"), from: "P", to: "P2O5" });
 * console.log(lines[0]?.formula); // amount * whole / parts
 * ```
 */
export function convertNutrientWorking(input: ConvertNutrientInput): WorkingLine[] {
  const given = checked(input, AS);
  const { amount, from, to } = given;
  const { element, parts, of } = oxideBetween(from, to) as Oxide;
  const terms: Record<string, GivenTerm> = { amount: [amount, amount.unit], parts, whole: of };
  return formulaLines({
    id: "tank-mix.nutrient-convert",
    formula: to === element ? "amount * parts / whole" : "amount * whole / parts",
    terms,
    result: convertedNutrient(given),
    source: ATOMIC_WEIGHTS,
  });
}
