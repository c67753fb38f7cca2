import { moved, SprayMathError, shown, within } from "../errors.js";
import { checkDimension, dimensionInWords } from "../units/dimensions.js";
import { areaIn, checkedChoice, inUnit, type Range, wrongDimension } from "../units/guard.js";
import { parseQuantity } from "../units/parse.js";
import { resolveUnit } from "../units/resolve.js";
import { checkShape, type Marked, remade } from "../units/shape.js";
import { COMPOUNDS, type SimpleDimension, TABLE } from "../units/table.js";
import type {
  AreaKind,
  AreaUnit,
  BasedFraction,
  Dimension,
  GroundArea,
  Measured,
  Quantity,
  TreatedArea,
  Unit,
  UnitsByDimension,
} from "../units/types.js";
import { named, reader, type Schema } from "./fields.js";
import { madeOnce, type ReadingOptions } from "./options.js";

/** A quantity of any of these dimensions. */
type Of<D extends Dimension> = { [K in D]: Quantity<UnitsByDimension[K]> }[D];

/** What a quantity must be to be accepted. */
interface Demand {
  readonly dimensions: readonly Dimension[];
  readonly range?: Range;
  /** What an area must be an area of. */
  readonly of?: AreaKind;
  /** Whether the field's own name says what the area is an area of, so that the area need not say it again. */
  readonly unmarked?: boolean;
  /** Whether a fraction must say what it is a part of. */
  readonly based?: boolean;
  /** Whether it may say how finely it was read. */
  readonly measured?: boolean;
  /** Fields of the other things that may stand in its place: what has one of them beside a value is neither. */
  readonly notWith?: readonly string[];
}

const EXAMPLES: Readonly<Record<Dimension, Unit>> = {
  length: "ft",
  area: "ac",
  volume: "gal",
  mass: "oz",
  time: "s",
  pressure: "psi",
  fraction: "%",
  speed: "mph",
  flow: "gal/min",
  massFlow: "lb/min",
  volumeRate: "gal/ac",
  massRate: "oz/ac",
  density: "lb/gal",
  volumeConcentration: "pt/100gal",
  massFraction: "g/kg",
  volumePerLength: "mL/m",
  massPerLength: "g/m",
};

function read(input: unknown, demand: Demand, options: ReadingOptions): Marked {
  const given = typeof input === "string" ? fromText(input, demand, options) : asGiven(input, demand);
  checkUnitGiven(given, demand);
  checkAlone(given, demand);
  checkShape(given, "");
  const { value, unit } = given;
  const { dimension } = resolveUnit(unit, "unit");
  if (!demand.dimensions.includes(dimension)) throw unwanted(given, demand.dimensions);
  const clean = remade(onlyMarks(given, demand), value + 0, unit) as Marked;
  const { of, range = "positive" } = demand;
  if (of === undefined) inUnit<Unit>(clean, unit, "", range);
  else areaIn(clean as Quantity<AreaUnit> & { of: typeof of }, of, unit as AreaUnit, "", range);
  return demand.measured ? { ...clean, ...howRead(given as Measured<Quantity>, demand, options) } : clean;
}

function asGiven(input: unknown, { dimensions }: Demand): Marked {
  if (typeof input === "object" && input !== null && !Array.isArray(input)) return input as Marked;
  const nothing = input === undefined || input === null;
  throw new SprayMathError(
    nothing ? "missing" : "not-a-quantity",
    "",
    `${nothing ? "Nothing given" : `Given ${shown(input)}`}; wanted ${inWords(dimensions)}, with its unit.`,
  );
}

function checkUnitGiven({ value, unit }: Marked, { dimensions }: Demand): void {
  if (unit !== undefined && unit !== null) return;
  throw new SprayMathError(
    "missing",
    "unit",
    `Given ${value === undefined ? "nothing" : shown(value)} without a unit; wanted ${inWords(dimensions)}.`,
  );
}

// Dropping `per: "ground"` from { value: 2, unit: "pt/ac", per: "ground" } would change the dose.
function checkAlone(given: object, { notWith = [] }: Demand): void {
  const other = notWith.find((name) => (given as Record<string, unknown>)[name] !== undefined);
  if (other === undefined) return;
  throw new SprayMathError(
    "conflict",
    other,
    `Given ${other} beside a value and a unit; wanted the quantity alone, or in an object of its own beside ${other}.`,
  );
}

/** Dimensions as a message names them, each with a unit of it. */
function inWords(dimensions: readonly Dimension[]): string {
  return dimensions
    .map((dimension) => `${dimensionInWords(dimension)} (${EXAMPLES[dimension]})`)
    .join(", or ");
}

function fromText(text: string, { dimensions }: Demand, options: ReadingOptions): Marked {
  const [dimension, ...others] = dimensions;
  return moved(
    () => "",
    () =>
      dimension !== undefined && others.length === 0
        ? parseQuantity(text, { ...options, dimension })
        : parseQuantity(text, options),
  );
}

function onlyMarks(given: Marked, { of: wanted, unmarked, based }: Demand): Marked {
  const { value, unit } = given;
  const of = wanted && ((unmarked && given.of === undefined ? wanted : given.of) as AreaKind);
  const marks = of === undefined ? {} : { of };
  if (!based || resolveUnit(unit, "unit").dimension !== "fraction") return { value, unit, ...marks };
  const { basis } = given;
  if (basis === undefined || basis === null) {
    throw new SprayMathError(
      "missing",
      "basis",
      `Given ${value} ${unit} that does not say what it is a part of; wanted a basis: "v/v" by volume, "w/v" weight in volume, "w/w" by weight.`,
    );
  }
  return { value, unit, basis: checkedChoice(basis, ["v/v", "w/v", "w/w"], "basis") as "v/v" };
}

function unwanted(given: Quantity, dimensions: readonly Dimension[]): SprayMathError {
  const [only, ...others] = dimensions as [Dimension, ...Dimension[]];
  if (others.length === 0) return wrongDimension(given, EXAMPLES[only], "");
  return new SprayMathError(
    "wrong-dimension",
    "",
    `Given ${given.value} ${given.unit}, ${dimensionInWords(resolveUnit(given.unit, "unit").dimension)}; wanted ${inWords(dimensions)}.`,
  );
}

function howRead(
  given: Measured<Quantity>,
  { dimensions }: Demand,
  options: ReadingOptions,
): Pick<Measured<Quantity>, "resolution" | "uncertainty"> {
  const found: Record<string, Quantity> = {};
  for (const part of ["resolution", "uncertainty"] as const) {
    const range = part === "resolution" ? "positive" : "nonnegative";
    const told = given[part];
    if (told !== undefined)
      found[part] = within(part, () => read(told, { dimensions, range }, options) as Quantity);
  }
  if (found.resolution !== undefined && found.uncertainty !== undefined)
    throw new SprayMathError(
      "conflict",
      "",
      "Enter the resolution or the uncertainty, not both. The uncertainty already counts the resolution.",
    );
  return found;
}

function readUnit(input: unknown, dimension: Dimension): Unit {
  const wanted = `wanted a unit of ${dimensionInWords(dimension).replace(/^an? /, "")}, such as "${EXAMPLES[dimension]}".`;
  if (input === undefined || input === null)
    throw new SprayMathError("missing", "", `Nothing given; ${wanted}`);
  if (resolveUnit(input, "").dimension !== dimension)
    throw new SprayMathError("wrong-dimension", "", `Given ${shown(input)}; ${wanted}`);
  return input as Unit;
}

const TEXT = { type: "string", minLength: 1, maxLength: 200 } as const;

function asJson(demand: Demand): object {
  const { dimensions, range = "positive", of, unmarked, based, measured, notWith = [] } = demand;
  const amount = (least: Range): object => ({
    type: "number",
    ...(least === "positive" && { exclusiveMinimum: 0 }),
    ...(least === "nonnegative" && { minimum: 0 }),
  });
  const object = (units: readonly Dimension[], least: Range, more: object = {}, required: string[] = []) => ({
    type: "object",
    properties: { value: amount(least), unit: unitJson(units), ...more },
    required: ["value", "unit", ...required],
  });
  const none = Object.fromEntries(notWith.map((name) => [name, false]));
  const readings = (least: Range): object => ({ anyOf: [object(dimensions, least), TEXT] });
  const how = measured && {
    properties: { resolution: readings("positive"), uncertainty: readings("nonnegative") },
    not: { required: ["resolution", "uncertainty"] },
  };
  const marked = of && object(dimensions, range, { of: { const: of } }, unmarked ? [] : ["of"]);
  const plain = dimensions.filter((dimension) => !(based && dimension === "fraction"));
  const shapes = [
    ...(marked ? [marked] : plain.length > 0 ? [object(plain, range)] : []),
    ...(based ? [object(["fraction"], range, { basis: { enum: ["v/v", "w/v", "w/w"] } }, ["basis"])] : []),
  ].map((shape) => ({
    ...shape,
    ...how,
    properties: { ...shape.properties, ...(how ? how.properties : {}), ...none },
  }));
  return { anyOf: [...shapes, ...(of && !unmarked ? [] : [TEXT])] };
}

function unitJson(dimensions: readonly Dimension[]): object {
  const simple = (dimension: SimpleDimension): string[] => Object.keys(TABLE[dimension]);
  const patterns = dimensions.map((dimension) => {
    if (Object.hasOwn(TABLE, dimension)) return simple(dimension as SimpleDimension).join("|");
    const { over, per } = COMPOUNDS[dimension as keyof typeof COMPOUNDS];
    const compound = `(${simple(over).join("|")})/(${simple(per).join("|")})`;
    return dimension === "speed" ? `mph|${compound}` : compound;
  });
  const [only, ...others] = dimensions;
  if (others.length === 0 && Object.hasOwn(TABLE, only as Dimension))
    return { enum: simple(only as SimpleDimension) };
  // A pattern tells a program what fits, and a person nothing.
  const examples = dimensions.map((dimension) => EXAMPLES[dimension]);
  return { type: "string", pattern: `^(${patterns.join("|")})$`, examples };
}

const AS_TEXT =
  "An object with a number and a unit, or text as a person writes it, such as “2 1/2 gal”. A sum such as “3 ft 6 in” counts in its first unit.";

const READ_OFF =
  "More than 0. It may say the smallest step of the instrument (resolution) or the standard uncertainty. ";

/** The quantities that a job is told in, each with its schema. */
export interface Quantities {
  /** Of one of these dimensions; more than 0. */
  readonly of: <D extends Dimension>(...dimensions: readonly [D, ...D[]]) => Schema<Of<D>>;
  /** 0 or more. */
  readonly orZero: <D extends Dimension>(dimension: D) => Schema<Of<D>>;
  /** Read off an instrument, and able to say how finely. */
  readonly measured: <D extends Dimension>(dimension: D) => Schema<Measured<Of<D>>>;
  /** The unit alone. */
  readonly unit: <D extends Dimension>(dimension: D) => Schema<UnitsByDimension[D]>;
  /** A treated area in a field whose name says that it is one. */
  readonly treated: Schema<TreatedArea>;
  /** Ground in a field whose name says that it is ground. */
  readonly ground: Schema<GroundArea>;
  /** A treated area that must say so itself. */
  readonly measuredTreated: Schema<Measured<TreatedArea>>;
  /** Where other things may stand in its place, told by the fields `notWith`: of one of the dimensions, more than 0. */
  readonly orElse: <D extends Dimension>(
    id: string,
    notWith: readonly string[],
    dimensions: readonly D[],
  ) => Schema<Of<D>>;
  /** The same, read off an instrument. */
  readonly measuredOrElse: <D extends Dimension>(
    id: string,
    notWith: readonly string[],
    dimension: D,
  ) => Schema<Measured<Of<D>>>;
  /** The same, or a per cent or ppm that says what it is a part of. */
  readonly basedOrElse: <D extends Dimension>(
    id: string,
    notWith: readonly string[],
    dimensions: readonly D[],
  ) => Schema<BasedFraction | Of<D>>;
}

/** The schemas of quantities, for text in one locale and system of measure. Each is made once. */
export const quantities: (options?: ReadingOptions) => Quantities = /* @__PURE__ */ madeOnce((options) => {
  const made = new Map<string, Schema<unknown>>();
  const schema = <Q>(id: string, demand: Demand, more = ""): Schema<Q> => {
    const known = made.get(id);
    if (known !== undefined) return known as Schema<Q>;
    const fresh = reader(
      (input) => read(input, demand, options) as Q,
      // Evaluated when somebody asks for the JSON Schema, and not by those who only parse.
      () => asJson(demand),
    );
    const kinds = demand.dimensions.map(dimensionInWords).join(", or ");
    made.set(id, named(id, fresh, `${capital(kinds)}. ${more}${AS_TEXT}`));
    return fresh;
  };
  const area = (of: AreaKind, unmarked: boolean): Demand => ({ dimensions: ["area"], of, unmarked });
  return {
    of: <D extends Dimension>(...dimensions: readonly D[]) =>
      schema<Of<D>>(dimensions.map(capital).join("Or"), { dimensions }, "More than 0. "),
    orZero: <D extends Dimension>(dimension: D) =>
      schema<Of<D>>(
        `${capital(dimension)}OrZero`,
        { dimensions: [dimension], range: "nonnegative" },
        "0 or more. ",
      ),
    measured: <D extends Dimension>(dimension: D) =>
      schema<Measured<Of<D>>>(
        `Measured${capital(dimension)}`,
        { dimensions: [dimension], measured: true },
        READ_OFF,
      ),
    unit: <D extends Dimension>(dimension: D) =>
      reader(
        (input) => readUnit(input, dimension) as UnitsByDimension[D],
        () => unitJson([dimension]),
      ),
    treated: schema<TreatedArea>("TreatedArea", area("treated", true), "What the spray lands on. "),
    ground: schema<GroundArea>("GroundArea", area("ground", true), "The ground, sprayed or not. "),
    measuredTreated: schema<Measured<TreatedArea>>(
      "MeasuredTreatedArea",
      { ...area("treated", false), measured: true },
      'What the spray lands on; it says so itself, by of: "treated". ',
    ),
    orElse: <D extends Dimension>(id: string, notWith: readonly string[], dimensions: readonly D[]) =>
      schema<Of<D>>(id, { dimensions, notWith }, "More than 0. "),
    measuredOrElse: <D extends Dimension>(id: string, notWith: readonly string[], dimension: D) =>
      schema<Measured<Of<D>>>(id, { dimensions: [dimension], measured: true, notWith }, READ_OFF),
    basedOrElse: <D extends Dimension>(id: string, notWith: readonly string[], others: readonly D[]) =>
      schema<BasedFraction | Of<D>>(
        id,
        { dimensions: ["fraction", ...others], based: true, notWith },
        "More than 0; a fraction says by its basis what it is a part of. ",
      ),
  };
});

/**
 * The schema of a quantity of one dimension, more than 0: an object or text.
 *
 * @param dimension - what it is to measure
 * @param options - whose numbers and measures text is in; see {@link ReadingOptions}
 * @returns the schema; the same one each time for the same dimension and options
 * @throws SprayMathError `unknown-choice` for a dimension or an option
 *
 * @example
 * ```ts
 * import { quantitySchema } from "swath-to-spoon/schema";
 *
 * console.log(quantitySchema("volume").parse("2 1/2 gal")); // { value: 2.5, unit: 'gal' }
 * console.log(quantitySchema("volumeRate", { locale: "de" }).parse("1,5 l/ha")); // { value: 1.5, unit: 'L/ha' }
 * ```
 */
export function quantitySchema<D extends Dimension>(
  dimension: D,
  options?: ReadingOptions,
): Schema<Quantity<UnitsByDimension[D]>> {
  checkDimension(dimension, "dimension");
  return quantities(options).of(dimension) as Schema<Quantity<UnitsByDimension[D]>>;
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
