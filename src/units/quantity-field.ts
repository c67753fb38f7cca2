import { shown } from "../errors.js";
import { type Check, Field, isGiven, isLeftOut } from "./check.js";
import { alone, dimensionOf } from "./dimensions.js";
import { choice, optional } from "./fields.js";
import { type Marked, type Marks, remade } from "./marks.js";
import type { ExpectedName } from "./names.js";
import { isBlank, resolvedUnit, resolveUnit, unknownUnit } from "./resolve.js";
import { unitsIn, usualUnit } from "./systems.js";
import type {
  AreaKind,
  BasedFraction,
  Dimension,
  FractionBasis,
  GroundArea,
  Measured,
  Quantity,
  TreatedArea,
  Unit,
  UnitSystem,
  UnitsByDimension,
} from "./types.js";

/** What values a quantity may have. `any` is any number that formulas can go on with, `finite` any at all. */
export type Range = "positive" | "nonnegative" | "any" | "finite";

/** An example for each system. */
export type Examples = Readonly<Record<UnitSystem, Quantity>>;

/** Examples for a place, where what stands beside it decides; nothing where the usual ones fit. */
export type ExamplesAt = (check: Check) => Examples | undefined;

/** What a quantity must be. */
export interface Demand {
  /** What it may measure. */
  readonly dimensions: readonly Dimension[];
  /** What values it may have. */
  readonly range: Range;
  /** What an area must be an area of. */
  readonly of?: AreaKind | undefined;
  /** Whether an area without a mark is taken for one of that kind. */
  readonly unmarked?: boolean | undefined;
  /** Whether a fraction must say what it is a part of, by which of these. */
  readonly bases?: readonly FractionBasis[] | undefined;
  /** Whether it may say how it was read: its resolution or its uncertainty. */
  readonly measured?: boolean | undefined;
  /** Whether a volume is of a jug or a spoon rather than a tank, as all that is measured is: for examples in messages. */
  readonly small?: boolean | undefined;
  /** What messages call it, with an example for each system: where naming all that it may measure would say too little. */
  readonly called?:
    | {
        readonly name: ExpectedName;
        readonly examples: Examples;
        readonly examplesAt?: ExamplesAt | undefined;
      }
    | undefined;
}

const BASES: readonly FractionBasis[] = ["v/v", "w/v", "w/w"];
const PARTS = ["value", "unit", "of", "basis", "resolution", "uncertainty"];
const NO_MARKS: Marks = {};

// Past these, a product of a few terms runs out of the numbers that a float holds; no plot or tank comes near them.
const LARGEST = 1e75;
const SMALLEST = 1e-75;

/** A number with its unit. */
export class QuantityField<Q extends Quantity> extends Field<Q> {
  constructor(
    about: string,
    readonly demand: Demand,
  ) {
    super(about);
  }

  read(input: unknown, check: Check): Q | undefined {
    const given = typeof input === "string" && check.texts ? this.fromText(input, check) : input;
    if (given === undefined) return undefined;
    if (typeof given === "string")
      return check.fault(
        "not-a-quantity",
        "quantity-not-text",
        "",
        "This is text. Enter {expected.expected} as an object with value and unit.",
        { given: shown(given), ...this.expected(check) },
      );
    if (typeof given !== "object" || given === null || Array.isArray(given))
      return check.fault(
        "not-a-quantity",
        "quantity-expected",
        "",
        "Enter {expected.expected} with its unit, such as {example}.",
        { given: shown(given), ...this.expected(check) },
      );
    const { value, unit } = given as Partial<Quantity>;
    if ((value ?? undefined) === undefined && isBlank(unit)) return this.missing(check);
    const before = check.issues.length;
    const known = resolvedUnit(unit);
    if (known === undefined) noUnit(unit, value, this, check);
    if (typeof value !== "number" || !Number.isFinite(value)) return noValue(value, check);
    if (known === undefined) return undefined;
    const { dimension } = known;
    const { dimensions, range } = this.demand;
    if (dimensions.length > 0 && !dimensions.includes(dimension))
      return refuseDimension({ value, unit: unit as Unit }, dimensions, check, "", this.expected(check));
    if (range !== "positive" || value < SMALLEST || value > LARGEST)
      checkRange({ value, unit: unit as Unit }, range, check);
    // Most quantities are a number and a unit, and can have no mark.
    const isPlain = dimension !== "area" && dimension !== "fraction";
    const marks = isPlain ? NO_MARKS : this.marks(given as Marked, dimension, check);
    const readings = this.demand.measured && this.readings(given as Measured<Quantity>, dimension, check);
    for (const name in given)
      if (!this.knows(name, dimension) && isGiven(name, given))
        check.unknownField(
          name,
          PARTS.filter((part) => this.knows(part, dimension)),
          given,
        );
    if (check.issues.length > before) return undefined;
    const clean = remade(marks, value + 0, unit as Unit);
    return (readings ? { ...clean, ...readings } : clean) as Q;
  }

  missing(check: Check): undefined {
    return check.fault(
      "missing",
      "enter-quantity",
      "",
      "Enter {expected.expected}, such as {example}.",
      this.expected(check),
    );
  }

  /** What is expected here, by name and by an example. */
  expected(check: Check): Expected {
    const { dimensions, called } = this.demand;
    if (called === undefined) return expectedOf(dimensions, check);
    const { name, examples, examplesAt } = called;
    return { expected: name, example: (examplesAt?.(check) ?? examples)[check.system] };
  }

  private fromText(text: string, check: Check): Quantity | undefined {
    const { dimensions, measured, small = measured, called } = this.demand;
    // Most texts are right, and need no example.
    const asked = (): Unit | "small" | undefined =>
      called?.examplesAt?.(check)?.[check.system].unit ?? (small ? "small" : undefined);
    return check.fromText((texts) => texts.quantity(text, dimensions, asked, called?.name));
  }

  /** The mark of an area, the basis of a fraction. */
  private marks(given: Marked, dimension: Dimension, check: Check): Marks {
    const { dimensions, of: kind, unmarked, bases } = this.demand;
    if (kind !== undefined) return areaMark(given.of ?? (unmarked ? kind : undefined), kind, check);
    if (dimension === "fraction" && bases !== undefined) return basisMark(given, bases, check);
    const of = dimension === "area" ? check.readAt("of", AREA_KIND, given) : undefined;
    if (dimensions.length > 0) return {};
    const basis = dimension === "fraction" ? check.readAt("basis", BASIS, given) : undefined;
    return { of, basis };
  }

  private knows(name: string, dimension: Dimension): boolean {
    if (name === "value" || name === "unit") return true;
    const { dimensions, bases, measured } = this.demand;
    const any = dimensions.length === 0;
    if (name === "of") return dimension === "area";
    if (name === "basis") return dimension === "fraction" && (any || bases !== undefined);
    return (name === "resolution" || name === "uncertainty") && (any || measured === true);
  }

  private readings(given: Measured<Quantity>, dimension: Dimension, check: Check): object | undefined {
    if ((given.resolution ?? given.uncertainty ?? undefined) === undefined) return undefined;
    const reading = (range: Range): Field<Quantity> =>
      optional(new QuantityField("", { dimensions: alone(dimension), range }));
    const resolution = check.readAt("resolution", reading("positive"), given);
    const uncertainty = check.readAt("uncertainty", reading("nonnegative"), given);
    if (resolution === undefined) return uncertainty && { uncertainty };
    if (uncertainty === undefined) return { resolution };
    return check.fault(
      "conflict",
      "resolution-and-uncertainty",
      "",
      "Enter the resolution or the uncertainty, not both. The uncertainty already counts the resolution.",
    );
  }
}

const AREA_KIND = /* @__PURE__ */ optional(choice("What it is an area of.", ["treated", "ground"]));
const BASIS = /* @__PURE__ */ optional(choice("What it is a part of.", BASES));

/** What is expected at a place, by name and by an example. */
export type Expected = {
  readonly expected: ExpectedName | readonly ExpectedName[];
  readonly example: Quantity;
};

// More kinds than that are no list that anybody reads.
const MOST_NAMES = 6;

/** Names and example for one of these dimensions; for any where there is none. */
function expectedOf(dimensions: readonly Dimension[], check: Check): Expected {
  const [first = "length", ...others] = dimensions;
  const any = dimensions.length === 0 || dimensions.length > MOST_NAMES;
  return {
    expected: any ? "amount" : others.length === 0 ? first : dimensions,
    example: { value: 5, unit: usualUnit(first, unitsIn(check.system)) },
  };
}

function noUnit(unit: unknown, value: unknown, field: QuantityField<Quantity>, check: Check): undefined {
  if (isBlank(unit))
    return check.fault(
      "missing",
      "unit-missing",
      "unit",
      "The unit is missing. Enter {expected.expected}, such as {example}.",
      { given: shown(value), ...field.expected(check) },
    );
  return refuseUnit(unit, "unit", field.expected(check).example.unit, check);
}

function refuseUnit(unit: unknown, at: string, example: Unit, check: Check): undefined {
  const { key, template, figures } = unknownUnit(unit, example);
  return check.fault("unknown-unit", key, at, template, figures);
}

function noValue(value: unknown, check: Check): undefined {
  if (value === undefined || value === null)
    return check.fault("missing", "enter-number", "value", "Enter a number here.");
  if (typeof value === "number")
    return check.fault("not-finite", "finite-number", "value", "Enter a number here.", {
      given: String(value),
    });
  return check.noNumber(value, "value");
}

/** Notes a quantity of a dimension that is not among the expected ones. */
export function refuseDimension(
  given: Quantity,
  dimensions: readonly Dimension[],
  check: Check,
  at = "",
  expected: Expected = expectedOf(dimensions, check),
): undefined {
  const ounces = ouncesMixedUp(given.unit, dimensions);
  return check.fault(
    "wrong-dimension",
    ounces ? "dimension-ounces" : "dimension",
    at,
    ounces
      ? "{given} is {is.dimension}. Enter {expected.expected}, such as {example}: oz (weight) and fl oz (volume) are different."
      : "{given} is {is.dimension}. Enter {expected.expected}, such as {example}.",
    { given, is: dimensionOf(given.unit), ...expected },
  );
}

/** Notes a unit of another dimension than the expected one. */
export function refuseUnitDimension(given: Unit, dimension: Dimension, check: Check, at = ""): undefined {
  const ounces = ouncesMixedUp(given, [dimension]);
  return check.fault(
    "wrong-dimension",
    ounces ? "unit-dimension-ounces" : "unit-dimension",
    at,
    ounces
      ? '"{given}" is a unit for {is.dimension}. Choose one for {expected.expected}, such as "{example}": oz (weight) and fl oz (volume) are different.'
      : '"{given}" is a unit for {is.dimension}. Choose one for {expected.expected}, such as "{example}".',
    {
      given,
      is: dimensionOf(given),
      expected: dimension,
      example: usualUnit(dimension, unitsIn(check.system)),
    },
  );
}

/** Whether an ounce of weight was given for a fluid ounce, or the reverse. */
function ouncesMixedUp(given: Unit, expected: readonly Dimension[]): boolean {
  const { dimension, over } = resolveUnit(given);
  const other = COUNTERPART[dimension];
  return /^oz$|fl_oz$/.test(over) && other !== undefined && expected.includes(other);
}

function checkRange(given: Quantity, range: Range, check: Check): void {
  if (range === "finite") return;
  const { value } = given;
  const size = Math.abs(value);
  if (size > LARGEST)
    check.fault("not-finite", "too-large", "", "This is too large to compute with.", { given });
  else if (range === "any" || (value === 0 && range === "nonnegative")) return;
  else if (value <= 0 && range === "positive")
    check.fault("out-of-range", "more-than", "", "Must be more than {limit}.", { given, limit: 0 });
  else if (value < 0)
    check.fault("out-of-range", "at-least", "", "Must be {limit} or more.", { given, limit: 0 });
  else if (size < SMALLEST)
    check.fault("out-of-range", "too-small", "", "This is too small to compute with.", { given });
}

function areaMark(of: AreaKind | undefined, kind: AreaKind, check: Check): Marks {
  if (of === kind) return { of: kind };
  const figures = { expected: kind, given: shown(of) };
  if (of !== "treated" && of !== "ground")
    check.fault(
      "wrong-area",
      "area-unmarked",
      "",
      "Is this treated area (what is really sprayed) or ground area (the whole plot)? Only {expected.area} goes here.",
      figures,
    );
  else
    check.fault(
      "wrong-area",
      kind === "treated" ? "area-is-ground" : "area-is-treated",
      "",
      kind === "treated"
        ? "This is ground area. Enter the treated area: only the part that is really sprayed."
        : "This is treated area. Enter the ground area: the whole plot, sprayed or not.",
      figures,
    );
  return { of: kind };
}

function basisMark(given: Marked, bases: readonly FractionBasis[], check: Check): Marks {
  const { value, unit, basis } = given;
  if (basis !== undefined && bases.includes(basis)) return { basis };
  if (basis !== undefined && BASES.includes(basis))
    // Without a suggestion: each basis means another amount of product.
    check.fault(
      "wrong-dimension",
      "basis-unfit",
      "basis",
      "Enter this percentage as {choices.expected}, not {given}: v/v is by volume, w/v weight in volume, w/w by weight.",
      { given: basis, choices: bases },
    );
  else if (!isLeftOut(basis, check)) check.readAt("basis", BASIS, given);
  else
    check.fault(
      "missing",
      "basis-missing",
      "basis",
      "{given} of what? Write {choices.expected} after it: v/v is by volume, w/v weight in volume, w/w by weight.",
      { given: { value, unit }, choices: bases },
    );
  return {};
}

/** The dimension that the other ounce leads to. */
const COUNTERPART: Partial<Record<Dimension, Dimension>> = {
  mass: "volume",
  volume: "mass",
  massRate: "volumeRate",
  volumeRate: "massRate",
  density: "volumeConcentration",
  volumeConcentration: "density",
  massPerLength: "volumePerLength",
  volumePerLength: "massPerLength",
  massPerCount: "volumePerCount",
  volumePerCount: "massPerCount",
  massFlow: "flow",
  flow: "massFlow",
};

type Of<D extends Dimension> = { [K in D]: Quantity<UnitsByDimension[K]> }[D];

function listOf<D extends Dimension>(dimensions: D | readonly D[]): readonly D[] {
  return typeof dimensions === "string" ? alone(dimensions) : dimensions;
}

/** A quantity of a dimension, or of one of several: more than 0 unless the range says otherwise. */
/* @__NO_SIDE_EFFECTS__ */
export function quantity<const D extends Dimension>(
  about: string,
  dimensions: D | readonly D[],
  range: Range = "positive",
): QuantityField<Of<D>> {
  return new QuantityField(about, { dimensions: listOf(dimensions), range });
}

/** A quantity read from an instrument, which may say how coarsely. */
/* @__NO_SIDE_EFFECTS__ */
export function measured<const D extends Dimension>(
  about: string,
  dimensions: D | readonly D[],
): QuantityField<Measured<Of<D>>> {
  return new QuantityField(about, { dimensions: listOf(dimensions), range: "positive", measured: true });
}

/** Treated area. */
/* @__NO_SIDE_EFFECTS__ */
export function treatedArea(
  about: string,
  more: Pick<Demand, "unmarked" | "measured"> = {},
): QuantityField<TreatedArea> {
  return new QuantityField(about, { dimensions: ["area"], range: "positive", of: "treated", ...more });
}

/** Ground area. */
/* @__NO_SIDE_EFFECTS__ */
export function groundArea(about: string, more: Pick<Demand, "unmarked"> = {}): QuantityField<GroundArea> {
  return new QuantityField(about, { dimensions: ["area"], range: "positive", of: "ground", ...more });
}

/** A fraction that says what it is a part of, or a quantity of one of these dimensions. */
/* @__NO_SIDE_EFFECTS__ */
export function basedOr<const D extends Dimension = never>(
  about: string,
  others: readonly D[] = [],
  bases: readonly FractionBasis[] = BASES,
): QuantityField<BasedFraction | Of<D>> {
  return new QuantityField(about, { dimensions: [...others, "fraction"], range: "positive", bases });
}

/** The same field, of a volume that nobody has gallons of: for examples in messages. */
/* @__NO_SIDE_EFFECTS__ */
export function smallVolume<Q extends Quantity>(field: QuantityField<Q>): QuantityField<Q> {
  return new QuantityField(field.about, { ...field.demand, small: true });
}

/** The same field, with a name and examples of its own in messages; `examplesAt` where others may fit. */
/* @__NO_SIDE_EFFECTS__ */
export function called<Q extends Quantity>(
  field: QuantityField<Q>,
  name: ExpectedName,
  examples: Examples,
  examplesAt?: ExamplesAt,
): QuantityField<Q> {
  return new QuantityField(field.about, { ...field.demand, called: { name, examples, examplesAt } });
}

/** Any quantity, with its marks. Says nothing of its size. */
/* @__NO_SIDE_EFFECTS__ */
export function anyQuantity(about: string): QuantityField<Quantity> {
  return new QuantityField(about, { dimensions: [], range: "finite" });
}

/** The name of a unit: of one dimension, or of any. */
export class UnitField<U extends Unit> extends Field<U> {
  constructor(
    about: string,
    readonly dimension: Dimension | undefined = undefined,
  ) {
    super(about);
  }

  read(input: unknown, check: Check): U | undefined {
    if (isBlank(input)) return this.missing(check);
    const known = resolvedUnit(input);
    if (known === undefined) return refuseUnit(input, "", this.example(check), check);
    if (this.dimension === undefined || known.dimension === this.dimension) return input as U;
    return refuseUnitDimension(input as Unit, this.dimension, check);
  }

  missing(check: Check): undefined {
    return check.fault("missing", "choose-unit", "", 'Choose a unit, such as "{example}".', {
      example: this.example(check),
    });
  }

  private example(check: Check): Unit {
    return usualUnit(this.dimension ?? "length", unitsIn(check.system));
  }
}

/** The name of a unit of one dimension. */
/* @__NO_SIDE_EFFECTS__ */
export function unitOf<D extends Dimension>(about: string, dimension: D): UnitField<UnitsByDimension[D]> {
  return new UnitField(about, dimension);
}

/** The name of any unit. */
/* @__NO_SIDE_EFFECTS__ */
export function anyUnit(about: string): UnitField<Unit> {
  return new UnitField(about);
}
