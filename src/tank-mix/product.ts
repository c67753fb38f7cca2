import { SprayMathError, within } from "../errors.js";
import { convertValue } from "../units/convert.js";
import { moreThan } from "../units/decide.js";
import { areaIn, checkedObject, inUnit } from "../units/guard.js";
import { refusal } from "../units/message.js";
import { resolveUnit } from "../units/resolve.js";
import { checkShape } from "../units/shape.js";
import { systemOf, unitsLike } from "../units/systems.js";
import type {
  BasedFraction,
  Concentration,
  GroundArea,
  Length,
  Mass,
  MassRate,
  MassUnit,
  Quantity,
  TreatedArea,
  Unit,
  Volume,
  VolumeRate,
  VolumeUnit,
} from "../units/types.js";
import { conversionLines, type WorkingLine } from "../units/working.js";
import {
  type ProductRateInput,
  productRateIn,
  productRateWorkingIn,
  productUnit,
  toDensity,
} from "./active-ingredient.js";
import {
  type ActiveIngredientRate,
  checkedActive,
  checkedFormName,
  checkedRange,
  type Form,
  isRange,
  type LabelRate,
  type ReadRate,
  readRate,
  type SingleRate,
} from "./label-rate.js";

/** What {@link productAmount} is given. Which of the optional fields are needed goes by how the label tells the rate. */
export interface ProductInput {
  /** The rate as the label gives it. */
  readonly rate: LabelRate;
  /** Whether the product is measured by volume or by weight. */
  readonly form: Form;
  /** How much finished mix the product is for: the job's total, reserve and lines included. */
  readonly carrier: Volume;
  /** What the sprayer puts out per treated area: needed for rates per area or per row length. */
  readonly carrierRate?: VolumeRate;
  /** The treated area of the whole plot: needed for rates per ground area or per row length. */
  readonly area?: TreatedArea;
  /** The ground area of the whole plot: needed for rates per ground area. */
  readonly ground?: GroundArea;
  /** The length of all treated rows together: needed for rates per row length. */
  readonly rowLength?: Length;
}

/** How much of a product goes into a mix. */
export interface ProductAmount {
  /** The product in the whole mix, unrounded. */
  readonly amount: Volume | Mass;
  /** The product in one unit of the mix: what must be the same in every load. */
  readonly strength: Concentration;
}

// The label's figure and the job's, each converted once into units that match; `amount` and `carrier` name them.
type Terms = {
  readonly amount: VolumeUnit | MassUnit;
  readonly carrier: VolumeUnit;
} & (
  | { readonly kind: "area"; readonly rate: number; readonly carrierRate: number; readonly per: string }
  | {
      readonly kind: "plot";
      readonly rate: number;
      readonly measure: Quantity;
      readonly name: "ground" | "rowLength";
      readonly carrierRate: number;
      readonly area: TreatedArea;
    }
  | { readonly kind: "carrier"; readonly rate: number }
  | { readonly kind: "fraction"; readonly part: number; readonly size: number }
  | { readonly kind: "parts"; readonly parts: number; readonly of: number; readonly size: number }
);

function needed<T>(value: T | undefined, path: string, why: string): T {
  if (value === undefined || value === null) {
    throw new SprayMathError("missing", path, `Nothing given; wanted for ${why}.`);
  }
  return value;
}

/** The rate in use: the chosen one of a range. */
function singleOf(rate: LabelRate): { readonly rate: SingleRate; readonly path: string } {
  return isRange(rate)
    ? { rate: checkedRange(rate, "rate").chosen, path: "rate.chosen" }
    : { rate, path: "rate" };
}

type ProductRead = Exclude<ReadRate, { kind: "active" }>;

// A rate told as active ingredient, told as product instead: the rest of the sum is the same.
function asProduct(read: ReadRate, input: ProductInput): ProductRead {
  if (read.kind !== "active") return read;
  const { inner, product, unit } = activeParts(read, input);
  const quantity = within(read.path, () => productRateIn(product, unit)) as Quantity;
  return inner.kind === "fraction"
    ? { kind: "carrier", quantity, path: read.path }
    : ({ ...inner, quantity, path: read.path } as ProductRead);
}

function activeParts(
  read: { readonly active: ActiveIngredientRate; readonly path: string },
  input: ProductInput,
): {
  readonly inner: Exclude<ReadRate, { kind: "active" | "parts" }>;
  readonly product: ProductRateInput;
  readonly unit: VolumeUnit | MassUnit;
} {
  const { activeIngredient, contains, density } = checkedActive(read.active, read.path);
  const inner = readRate(activeIngredient, "dry", `${read.path}.activeIngredient`);
  if (inner.kind === "active" || inner.kind === "parts") {
    throw new SprayMathError(
      "wrong-dimension",
      `${read.path}.activeIngredient`,
      "Given a ratio or another rate of active ingredient; wanted a weight per area, per volume of carrier or per row length.",
    );
  }
  const carrierUnits = unitsLike(input.carrier.unit);
  const quantity =
    inner.kind === "fraction"
      ? within(inner.path, () => densityLike(inner.quantity, carrierUnits.density))
      : inner.quantity;
  checkShape(contains, `${read.path}.contains`);
  const own = productUnit(quantity.unit, contains, density, input.form);
  const imperial = own === "fl_oz" && systemOf(input.carrier.unit) === "imperial";
  return {
    inner,
    product: {
      activeIngredient: quantity as MassRate,
      contains,
      form: input.form,
      ...(density !== undefined && { density }),
    },
    unit: imperial ? "imp_fl_oz" : own,
  };
}

function densityLike(fraction: BasedFraction, unit: "lb/gal" | "lb/imp_gal" | "kg/L"): Quantity {
  const inKilograms = toDensity(fraction);
  return { value: convertValue(inKilograms.value, inKilograms.unit, unit), unit };
}

function termsOf(rate: SingleRate, path: string, input: ProductInput): Terms {
  const read = asProduct(readRate(rate, input.form, path), input);
  const carrier = input.carrier.unit;
  if (read.kind === "fraction" || read.kind === "parts") {
    const units = unitsLike(carrier);
    const amount = input.form === "liquid" ? units.smallVolume : units.smallMass;
    const [from, to] =
      input.form === "liquid" ? [carrier, amount] : (["kg/L", `${amount}/${carrier}`] as [Unit, Unit]);
    const size = convertValue(1, from, to, path, path);
    if (read.kind === "fraction")
      return { kind: "fraction", amount, carrier, part: inUnit(read.quantity, "1", path), size };
    const { parts, to: other, of } = read.parts;
    return { kind: "parts", amount, carrier, parts, of: of === "mix" ? other : parts + other, size };
  }
  const units = unitsLike(read.quantity.unit);
  const amount = input.form === "liquid" ? units.smallVolume : units.smallMass;
  const into = (per: string): number =>
    inUnit(read.quantity as Quantity<"lb/ac">, `${amount}/${per}` as "lb/ac", read.path);
  if (read.kind === "carrier") return { kind: "carrier", amount, carrier, rate: into(carrier) };
  const given = needed(input.carrierRate, "carrierRate", "a rate per area or per row length");
  inUnit(given, "gal/ac", "carrierRate");
  const per = resolveUnit(given.unit, "carrierRate.unit").per as "ac";
  const carrierRate = (area: "ac"): number => inUnit(given, `${carrier}/${area}`, "carrierRate");
  if (read.kind === "area" && read.per !== "ground")
    return { kind: "area", amount, carrier, rate: into(per), carrierRate: carrierRate(per), per };
  const area = needed(input.area, "area", "a rate per ground area or per row length");
  areaIn(area, "treated", "ac", "area");
  const name = read.kind === "length" ? "rowLength" : "ground";
  const measure = plotMeasure(input, name);
  return {
    kind: "plot",
    amount,
    carrier,
    rate: into(measure.unit),
    measure,
    name,
    carrierRate: carrierRate(area.unit as "ac"),
    area,
  };
}

function plotMeasure(input: ProductInput, name: "ground" | "rowLength"): Quantity {
  if (name === "rowLength") {
    const rowLength = needed(input.rowLength, "rowLength", "a rate per row length");
    inUnit(rowLength, "ft", "rowLength");
    return rowLength;
  }
  const ground = needed(input.ground, "ground", "a rate per ground area");
  areaIn(ground, "ground", "ac", "ground");
  return ground;
}

function strengthFrom(terms: Terms): number {
  switch (terms.kind) {
    case "area":
      return terms.rate / terms.carrierRate;
    case "plot":
      return (terms.rate * terms.measure.value) / (terms.carrierRate * terms.area.value);
    case "carrier":
      return terms.rate;
    case "fraction":
      return terms.part * terms.size;
    case "parts":
      return (terms.parts * terms.size) / terms.of;
  }
}

function checkedInput(input: ProductInput): ProductInput {
  checkedObject(input, "");
  checkedFormName(input.form);
  inUnit(input.carrier, "gal", "carrier");
  return input;
}

function strengthAt(
  rate: SingleRate,
  path: string,
  input: ProductInput,
): { readonly terms: Terms; readonly strength: number } {
  const terms = termsOf(rate, path, input);
  const strength = strengthFrom(terms);
  if (!Number.isFinite(strength) || strength === 0) {
    throw new SprayMathError(
      "not-finite",
      path,
      "The strength that comes out is too large or too small to compute with.",
    );
  }
  return { terms, strength };
}

/** A rate as the strength it gives the mix; both in `amount` units to one unit of the carrier as given. */
export function strengthFor(
  rate: SingleRate,
  path: string,
  input: ProductInput,
): { readonly value: number; readonly amount: VolumeUnit | MassUnit } {
  const { terms, strength } = strengthAt(rate, path, input);
  return { value: strength, amount: terms.amount };
}

/**
 * How much of a product a mix takes, from the rate as the label gives it.
 *
 * Formulas, with strength = product in one unit of mix, and amount = strength × carrier:
 * per treated or broadcast area rate / carrier rate; per ground area rate × ground / (carrier rate × treated area); per
 * row length rate × row length / (carrier rate × treated area); per volume of carrier the rate itself; per cent or ppm
 * the part itself, by volume for a liquid (`v/v`) and weight in volume for a dry product (`w/v`, 1 % is 1 kg in 100 L);
 * ratio parts / to (of mix) or parts / (parts + to) (of water); active ingredient by {@link productRate} first.
 * Source: each by definition of its rate. "Carrier" is the finished mix.
 *
 * @param input - every quantity more than 0; of a range, the chosen rate is used
 * @returns the amount in fl_oz, imp_fl_oz or mL for a liquid, oz or g for a dry product, by the rate's own system (the
 * carrier's for per cent and ratios), and the strength per unit of the carrier given; both within 8 ulp of the exact value
 * @throws SprayMathError `missing` (a field that the rate needs, a basis), `wrong-dimension` (weight for volume),
 * `wrong-area`, `conflict` (more product than mix, a range upside down), `out-of-range` (zero or negative; chosen over the
 * label's highest), `not-a-quantity`, `not-finite`, `unknown-unit` or `unknown-choice`
 *
 * @example
 * ```ts
 * import { productAmount } from "swath-to-spoon/tank-mix";
 * import { qty } from "swath-to-spoon/units";
 *
 * const product = productAmount({
 *   rate: qty(1.5, "pt/ac"),
 *   form: "liquid",
 *   carrier: qty(10, "gal"),
 *   carrierRate: qty(20, "gal/ac"),
 * });
 * console.log(product.amount); // { value: 12, unit: 'fl_oz' }
 * console.log(product.strength); // { value: 1.2, unit: 'fl_oz/gal' }
 * ```
 */
export function productAmount(input: ProductInput): ProductAmount {
  checkedInput(input);
  const { rate, path } = singleOf(input.rate);
  const { terms, strength } = strengthAt(rate, path, input);
  if (isRange(input.rate)) refuseOutside(input.rate, strength, terms.amount, input);
  refuseOverfull(strength, terms, path);
  const value = strength * input.carrier.value;
  if (!Number.isFinite(value)) {
    throw new SprayMathError("not-finite", path, "The amount that comes out is too large to compute with.");
  }
  return {
    amount: { value, unit: terms.amount } as Volume | Mass,
    strength: { value: strength, unit: `${terms.amount}/${terms.carrier}` } as Concentration,
  };
}

// A kilogram in each liter is more than dissolves or stays stirred up: common practice, no source.
const MOST_DRY: Quantity<"kg/L"> = { value: 1, unit: "kg/L" };

function refuseOverfull(strength: number, { amount, carrier }: Terms, path: string): void {
  const isLiquid = resolveUnit(amount, path).dimension === "volume";
  const full = isLiquid
    ? convertValue(1, carrier, amount, path, path)
    : convertValue(MOST_DRY.value, MOST_DRY.unit, `${amount}/${carrier}` as Unit, path, path);
  if (isLiquid ? !moreThan(full, strength) : moreThan(strength, full)) {
    throw refusal(
      "conflict",
      isLiquid ? "no-room-for-water" : "too-much-to-mix",
      path,
      isLiquid
        ? "That's {product} of product in each {mix} of mix, which leaves no room for water. Check the rate's unit and the output rate."
        : "That's {product} of product in each {mix} of mix, more than can be mixed in. Check the rate's unit and the output rate.",
      { product: { value: strength, unit: amount }, mix: { value: 1, unit: carrier } },
    );
  }
}

/** Refuses a range whose low end is over its high end, or a chosen rate over the high end. */
function refuseOutside(
  range: { readonly low: SingleRate; readonly high: SingleRate },
  chosen: number,
  amount: VolumeUnit | MassUnit,
  input: ProductInput,
): void {
  const [low, high] = (["low", "high"] as const).map((end) => {
    const { value, amount: unit } = strengthFor(range[end], `rate.${end}`, input);
    return convertValue(value, unit, amount, `rate.${end}`, `rate.${end}`);
  }) as [number, number];
  if (moreThan(low, high)) {
    throw new SprayMathError(
      "conflict",
      "rate",
      "Given a range whose low rate is more than its high rate; wanted the lower one first. Are they the wrong way round?",
    );
  }
  if (moreThan(chosen, high)) {
    throw new SprayMathError(
      "out-of-range",
      "rate.chosen",
      "Given a chosen rate over the label's highest; wanted no more than the label allows.",
    );
  }
}

const BY_DEFINITION = "by definition of the rate";

/**
 * The working of {@link productAmount}.
 *
 * @param input - as for {@link productAmount}
 * @returns the lines, in order, ending with the result
 * @throws SprayMathError what {@link productAmount} throws
 *
 * @example
 * ```ts
 * import { qty } from "swath-to-spoon/units";
 * import { productAmount } from "swath-to-spoon/working";
 *
 * const job = { carrier: qty(10, "gal"), carrierRate: qty(20, "gal/ac") };
 * const lines = productAmount({ rate: qty(24, "fl_oz/ac"), form: "liquid", ...job });
 * console.log(lines.map((line) => line.formula)); // [ 'rate / carrierRate', 'strength * carrier' ]
 * ```
 */
export function productAmountWorking(input: ProductInput): WorkingLine[] {
  const { amount, strength } = productAmount(input);
  const { rate, path } = singleOf(input.rate);
  const read = readRate(rate, input.form, path);
  const before = read.kind === "active" ? activeLines(read, input) : [];
  return [
    ...before,
    ...strengthLines(termsOf(rate, path, input), asProduct(read, input), input, strength),
    {
      id: "tank-mix.amount",
      formula: "strength * carrier",
      terms: { strength, carrier: input.carrier },
      result: amount,
      source: BY_DEFINITION,
    },
  ];
}

function activeLines(read: Parameters<typeof activeParts>[0], input: ProductInput): WorkingLine[] {
  const { inner, product, unit } = activeParts(read, input);
  if (inner.kind !== "fraction") return productRateWorkingIn(product, unit);
  const about = "tank-mix.productRate.activeIngredient";
  return [
    ...conversionLines(about, inner.quantity, "1"),
    ...conversionLines(about, toDensity(inner.quantity), product.activeIngredient.unit),
    ...productRateWorkingIn(product, unit),
  ];
}

function strengthLines(
  terms: Terms,
  read: ProductRead,
  input: ProductInput,
  strength: Quantity,
): WorkingLine[] {
  const { amount, carrier } = terms;
  const line = (id: string, formula: string, values: WorkingLine["terms"]): WorkingLine => ({
    id,
    formula,
    terms: values,
    result: strength,
    source: BY_DEFINITION,
  });
  switch (terms.kind) {
    case "fraction":
      return [
        ...conversionLines("tank-mix.strengthOfPart.part", (read as { quantity: Quantity }).quantity, "1"),
        line("tank-mix.strengthOfPart", "part * size", {
          part: terms.part,
          size: { value: terms.size, unit: strength.unit },
        }),
      ];
    case "parts":
      return [
        line("tank-mix.strengthOfRatio", "parts * size / whole", {
          parts: terms.parts,
          whole: terms.of,
          size: { value: terms.size, unit: strength.unit },
        }),
      ];
    case "carrier":
      return conversionLines(
        "tank-mix.amount.strength",
        (read as { quantity: Quantity }).quantity,
        strength.unit,
      );
    case "area":
    case "plot": {
      const id =
        terms.kind === "area"
          ? "tank-mix.strength"
          : terms.name === "ground"
            ? "tank-mix.strengthByGround"
            : "tank-mix.strengthByRow";
      const rateUnit = `${amount}/${terms.kind === "area" ? terms.per : terms.measure.unit}` as Unit;
      const carrierRateUnit = `${carrier}/${terms.kind === "area" ? terms.per : terms.area.unit}` as Unit;
      const rate: Quantity = { value: terms.rate, unit: rateUnit };
      const carrierRate: Quantity = { value: terms.carrierRate, unit: carrierRateUnit };
      return [
        ...conversionLines(`${id}.rate`, (read as { quantity: Quantity }).quantity, rateUnit),
        ...conversionLines(`${id}.carrierRate`, input.carrierRate as VolumeRate, carrierRateUnit),
        terms.kind === "area"
          ? line(id, "rate / carrierRate", { rate, carrierRate })
          : line(id, `rate * ${terms.name} / (carrierRate * area)`, {
              rate,
              [terms.name]: terms.measure,
              carrierRate,
              area: terms.area,
            }),
      ];
    }
  }
}
