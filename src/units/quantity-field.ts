import { shown } from "../errors.js";
import { type Check, Field } from "./check.js";
import { dimensionInWords } from "./dimensions.js";
import { isBlank, refuseUnknownField } from "./fields.js";
import { nearestUnit, resolvedUnit, resolveUnit } from "./resolve.js";
import { type Marked, remade } from "./shape.js";
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
  UnitsByDimension,
} from "./types.js";

/** What values a quantity may have. `any` is any finite number. */
export type Range = "positive" | "nonnegative" | "any";

/** What a quantity must be. */
export interface Demand {
  /** What it may measure. */
  readonly dimensions: readonly Dimension[];
  /** What values it may have. */
  readonly range: Range;
  /** What an area must be an area of. */
  readonly of?: AreaKind;
  /** Whether an area without a mark is taken for one of that kind. */
  readonly unmarked?: boolean;
  /** Whether a fraction must say what it is a part of, by which of these. */
  readonly bases?: readonly FractionBasis[];
  /** Whether it may say how it was read: its resolution or its uncertainty. */
  readonly measured?: boolean;
}

const BASES: readonly FractionBasis[] = ["v/v", "w/v", "w/w"];

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
    if (isBlank(input)) return this.missing(check);
    const given = typeof input === "string" && check.texts ? this.fromText(input, check) : input;
    if (given === undefined) return undefined;
    if (typeof given !== "object" || given === null || Array.isArray(given))
      return check.fault(
        "not-a-quantity",
        "enter-quantity",
        "",
        "Enter {expected}, with its unit, such as {example}.",
        {
          given: shown(given),
          ...this.expected(check),
        },
      );
    const { value, unit } = given as Quantity;
    const known = resolvedUnit(unit);
    if (known === undefined) return noUnit(unit, value, this, check);
    check.system ??= known.system;
    const { dimensions, range, measured } = this.demand;
    if (!dimensions.includes(known.dimension))
      return this.wrongDimension(given as Quantity, known.dimension, check);
    if (typeof value !== "number" || !Number.isFinite(value)) return noNumber(value, check);
    if (!inRange(value, given as Quantity, range, check)) return undefined;
    const marks = this.marks(given as Marked, known.dimension, check);
    if (marks === undefined) return undefined;
    const before = check.issues.length;
    this.refuseUnknown(given, known.dimension, check);
    if (check.issues.length > before) return undefined;
    const clean = remade(marks, value + 0, unit) as Q;
    return measured ? this.withReadings(given as Measured<Quantity>, clean, check) : clean;
  }

  missing(check: Check): undefined {
    return check.fault(
      "missing",
      "enter-quantity",
      "",
      "Enter {expected}, such as {example}.",
      this.expected(check),
    );
  }

  /** What is expected here, in words and by an example. */
  expected(check: Check): { readonly expected: string; readonly example: Quantity } {
    const { dimensions } = this.demand;
    return {
      expected: dimensions.map(dimensionInWords).join(" or "),
      example: { value: 5, unit: usualUnit(dimensions[0] as Dimension, unitsIn(check.system ?? "us")) },
    };
  }

  private fromText(text: string, check: Check): Quantity | undefined {
    try {
      return check.texts?.quantity(text, this.demand.dimensions);
    } catch (error) {
      return check.caught(error);
    }
  }

  private wrongDimension({ value, unit }: Quantity, dimension: Dimension, check: Check): undefined {
    const { expected, example } = this.expected(check);
    return check.fault(
      "wrong-dimension",
      "dimension",
      "",
      isOunceMixUp(unit, dimension, this.demand.dimensions)
        ? "{given} is {is}. Enter {expected}, such as {example}: oz (weight) and fl oz (volume) are different."
        : "{given} is {is}. Enter {expected}, such as {example}.",
      { given: { value, unit }, is: dimensionInWords(dimension), expected, example },
    );
  }

  /** The mark of an area, the basis of a fraction: as an object that has just these. */
  private marks(given: Marked, dimension: Dimension, check: Check): Marked | undefined {
    const { value, unit, of, basis } = given;
    const { of: kind, unmarked, bases } = this.demand;
    if (kind !== undefined) {
      if ((of ?? (unmarked ? kind : undefined)) === kind) return { value, unit, of: kind };
      return wrongArea(of, kind, check);
    }
    if (bases === undefined || dimension !== "fraction") return { value, unit };
    if (basis !== undefined && bases.includes(basis)) return { value, unit, basis };
    return wrongBasis(given, bases, check);
  }

  private refuseUnknown(given: object, dimension: Dimension, check: Check): void {
    const { bases, measured } = this.demand;
    for (const name in given) {
      if (name === "value" || name === "unit") continue;
      if (name === "of" && dimension === "area") continue;
      if (name === "basis" && bases !== undefined && dimension === "fraction") continue;
      if (measured && (name === "resolution" || name === "uncertainty")) continue;
      const other = (given as Record<string, unknown>)[name];
      if (other === undefined || other === null || !Object.hasOwn(given, name)) continue;
      const known = ["value", "unit", ...(measured ? ["resolution", "uncertainty"] : [])];
      refuseUnknownField(name, known, check);
    }
  }

  private withReadings(given: Measured<Quantity>, clean: Q, check: Check): Q | undefined {
    const { resolution, uncertainty } = given;
    if ((resolution ?? uncertainty ?? undefined) === undefined) return clean;
    const found: Record<string, Quantity> = {};
    for (const [name, reading] of Object.entries({ resolution, uncertainty })) {
      if (reading === undefined || reading === null) continue;
      const range = name === "resolution" ? "positive" : "nonnegative";
      check.path.push(name);
      const read = new QuantityField("", { dimensions: this.demand.dimensions, range }).read(reading, check);
      check.path.pop();
      if (read === undefined) return undefined;
      found[name] = read;
    }
    if (found.resolution !== undefined && found.uncertainty !== undefined)
      return check.fault(
        "conflict",
        "resolution-and-uncertainty",
        "",
        "Enter the resolution or the uncertainty, not both. The uncertainty already counts the resolution.",
      );
    return { ...clean, ...found };
  }
}

function noUnit(unit: unknown, value: unknown, field: QuantityField<Quantity>, check: Check): undefined {
  if (unit === undefined || unit === null)
    return check.fault(
      "missing",
      "unit-missing",
      "unit",
      "Enter {expected} with its unit, such as {example}.",
      { given: shown(value), ...field.expected(check) },
    );
  const meant = typeof unit === "string" ? nearestUnit(unit) : undefined;
  return check.fault(
    "unknown-unit",
    "unit-unknown",
    "unit",
    meant === undefined
      ? "The unit {given} isn't known here. Use one such as {example}."
      : "The unit {given} isn't known here. Did you mean {meant}?",
    {
      given: shown(unit),
      example: field.expected(check).example.unit,
      ...(meant !== undefined && { meant }),
    },
  );
}

function noNumber(value: unknown, check: Check): undefined {
  if (value === undefined || value === null)
    return check.fault("missing", "enter-number", "value", "Enter a number here.");
  if (typeof value === "number")
    return check.fault("not-finite", "finite-number", "value", "Enter a finite number.", {
      given: String(value),
    });
  const template = typeof value === "string" ? "Enter a number, not text." : "Enter a number here.";
  return check.fault("not-a-quantity", "enter-number", "value", template, { given: shown(value) });
}

function inRange(value: number, { unit }: Quantity, range: Range, check: Check): boolean {
  const size = Math.abs(value);
  if (
    range === "any"
      ? size <= LARGEST
      : value <= LARGEST && (value >= SMALLEST || (range === "nonnegative" && value === 0))
  )
    return true;
  const given = { value, unit };
  if (range !== "any" && value < 0 && range === "nonnegative")
    check.fault("out-of-range", "at-least", "", "Must be {limit} or more.", { given, limit: 0 });
  else if (range === "positive" && value <= 0)
    check.fault("out-of-range", "more-than", "", "Must be more than {limit}.", { given, limit: 0 });
  else if (size > LARGEST)
    check.fault("not-finite", "too-large", "", "This is too large to compute with.", { given });
  else check.fault("out-of-range", "too-small", "", "This is too small to compute with.", { given });
  return false;
}

function wrongArea(of: AreaKind | undefined, kind: AreaKind, check: Check): undefined {
  const figures = { expected: kind, given: shown(of) };
  if (of === undefined || of === null)
    return check.fault(
      "wrong-area",
      "area-unmarked",
      "",
      "Is this treated area (what is really sprayed) or ground area? Mark it as {expected} area.",
      figures,
    );
  return check.fault(
    "wrong-area",
    "area-kind",
    "",
    kind === "treated"
      ? "This is ground area. Enter the treated area: only the part that is really sprayed."
      : "This is treated area. Enter the ground area: the whole plot, sprayed or not.",
    figures,
  );
}

function wrongBasis(
  { value, unit, basis }: Marked,
  bases: readonly FractionBasis[],
  check: Check,
): undefined {
  const given = { value, unit };
  if (basis === undefined || basis === null)
    return check.fault(
      "missing",
      "basis-missing",
      "basis",
      "{given} of what? Write {given} v/v (by volume) or {given} w/v (weight in volume).",
      { given, choices: bases },
    );
  return check.fault(
    "unknown-choice",
    "choice-unknown",
    "basis",
    "There is no choice {given}. Choose one of: {choices}.",
    {
      given: shown(basis),
      choices: bases,
    },
  );
}

function isOunceMixUp(unit: Unit, dimension: Dimension, expected: readonly Dimension[]): boolean {
  const { over } = resolveUnit(unit, "unit");
  const fluid = over === "fl_oz" || over === "imp_fl_oz";
  if (over !== "oz" && !fluid) return false;
  const other = COUNTERPART[dimension];
  return other !== undefined && expected.includes(other);
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
  massFlow: "flow",
  flow: "massFlow",
};

type Of<D extends Dimension> = { [K in D]: Quantity<UnitsByDimension[K]> }[D];

function listOf<D extends Dimension>(dimensions: D | readonly D[]): readonly D[] {
  return typeof dimensions === "string" ? [dimensions] : dimensions;
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
  return new QuantityField(about, { dimensions: ["fraction", ...others], range: "positive", bases });
}

/** The name of a unit of one dimension. */
export class UnitField<D extends Dimension> extends Field<UnitsByDimension[D]> {
  constructor(
    about: string,
    readonly dimension: D,
  ) {
    super(about);
  }

  read(input: unknown, check: Check): UnitsByDimension[D] | undefined {
    const known = resolvedUnit(input);
    const example = usualUnit(this.dimension, unitsIn(check.system ?? known?.system ?? "us"));
    const expected = dimensionInWords(this.dimension).replace(/^an? /, "");
    if (known === undefined) {
      const meant = typeof input === "string" ? nearestUnit(input) : undefined;
      return check.fault(
        "unknown-unit",
        "unit-unknown",
        "",
        meant === undefined
          ? "The unit {given} isn't known here. Use one such as {example}."
          : "The unit {given} isn't known here. Did you mean {meant}?",
        { given: shown(input), example, ...(meant !== undefined && { meant }) },
      );
    }
    check.system ??= known.system;
    if (known.dimension === this.dimension) return input as UnitsByDimension[D];
    return check.fault(
      "wrong-dimension",
      "unit-dimension",
      "",
      "The unit {given} isn't one of {expected}. Use one such as {example}.",
      {
        given: shown(input),
        expected,
        example,
      },
    );
  }

  missing(check: Check): undefined {
    const example = usualUnit(this.dimension, unitsIn(check.system ?? "us"));
    const expected = dimensionInWords(this.dimension).replace(/^an? /, "");
    return check.fault("missing", "choose-unit", "", "Choose a unit of {expected}, such as {example}.", {
      expected,
      example,
    });
  }
}

/** The name of a unit. */
/* @__NO_SIDE_EFFECTS__ */
export function unitOf<D extends Dimension>(about: string, dimension: D): UnitField<D> {
  return new UnitField(about, dimension);
}
