import { SprayMathError, shown } from "../errors.js";
import { dimensionInWords } from "../units/dimensions.js";
import { checkedChoice, checkedNumber, checkedObject } from "../units/guard.js";
import { resolveUnit } from "../units/resolve.js";
import { checkShape } from "../units/shape.js";
import type {
  BasedFraction,
  Concentration,
  Density,
  MassFraction,
  MassPerLength,
  MassRate,
  Quantity,
  Unit,
  VolumePerLength,
  VolumeRate,
} from "../units/types.js";

/** Whether a product is measured by volume or by weight. */
export type Form = "liquid" | "dry";

/**
 * Which area a rate is per: `treated` the area that spray lands on; `broadcast` the same, where the label gives a
 * broadcast rate that a band gets on its own area; `ground` the field with the ground between bands ("per crop acre").
 */
export type RateArea = "treated" | "broadcast" | "ground";

/** A rate per area that says which area. A bare rate per area is per treated area. */
export interface AreaRate<R extends VolumeRate | MassRate = VolumeRate | MassRate> {
  /** The rate as the label prints it. */
  readonly rate: R;
  /** Which area it is per. */
  readonly per: RateArea;
}

/**
 * A ratio by volume. `1:100` means two things, so `of` is never left out: `mix`, one part product in 100 parts of mix;
 * `water`, one part product to 100 parts of water, which make 101 parts of mix.
 */
export interface PartsRate {
  /** Parts of product. */
  readonly parts: number;
  /** Parts of what it goes into. */
  readonly to: number;
  /** What it goes into. */
  readonly of: "mix" | "water";
}

/** A rate by weight: all that active ingredient can be told in. */
export type WeightRate = MassRate | AreaRate<MassRate> | Density | BasedFraction | MassPerLength;

/** How much active ingredient a product contains: `lb/gal`, `g/L`, `g/kg`, or per cent by weight (`w/w`) or in volume (`w/v`). */
export type Content = Density | MassFraction | BasedFraction;

/** A rate told as active ingredient, with what the product contains. */
export interface ActiveIngredientRate {
  /** The rate of active ingredient. */
  readonly activeIngredient: WeightRate;
  /** What the product contains. */
  readonly contains: Content;
  /** What the product weighs: needed for a liquid whose content is told by weight (`% w/w`, `g/kg`). */
  readonly density?: Density;
}

/** A rate as a label gives it, one figure. */
export type SingleRate =
  | VolumeRate
  | MassRate
  | AreaRate
  | Concentration
  | BasedFraction
  | PartsRate
  | VolumePerLength
  | MassPerLength
  | ActiveIngredientRate;

/** A range of rates as a label gives it, and the one chosen. All three are told in the same way. */
export interface RateRange {
  /** The label's lowest rate. */
  readonly low: SingleRate;
  /** The label's highest rate. */
  readonly high: SingleRate;
  /** The rate that is used. */
  readonly chosen: SingleRate;
}

/** A rate as a label gives it: per area, per volume of carrier, per cent, ratio, per row length, active ingredient, or a range. */
export type LabelRate = SingleRate | RateRange;

/** Whether a rate is a range. */
export function isRange(rate: LabelRate): rate is RateRange {
  return typeof rate === "object" && rate !== null && ("low" in rate || "high" in rate || "chosen" in rate);
}

/** A single rate, taken apart by what it is told in. `quantity` keeps the label's own figure and unit. */
export type ReadRate =
  | { readonly kind: "area"; readonly quantity: Quantity; readonly per: RateArea; readonly path: string }
  | { readonly kind: "carrier"; readonly quantity: Quantity; readonly path: string }
  | { readonly kind: "length"; readonly quantity: Quantity; readonly path: string }
  | { readonly kind: "fraction"; readonly quantity: BasedFraction; readonly path: string }
  | { readonly kind: "parts"; readonly parts: PartsRate; readonly path: string }
  | { readonly kind: "active"; readonly active: ActiveIngredientRate; readonly path: string };

/** Takes a rate apart, and refuses one that does not fit the product's form: weight against volume. */
export function readRate(rate: SingleRate, form: Form, path: string): ReadRate {
  if (typeof rate === "object" && rate !== null && !Array.isArray(rate)) {
    if ("activeIngredient" in rate) return { kind: "active", active: rate as ActiveIngredientRate, path };
    if ("parts" in rate || "to" in rate) {
      return { kind: "parts", parts: checkedParts(rate as PartsRate, form, path), path };
    }
    if ("rate" in rate || "per" in rate) {
      const { rate: figure, per } = rate as AreaRate;
      checkedChoice(per, ["treated", "broadcast", "ground"], `${path}.per`);
      return { kind: "area", quantity: checkedRate(figure, form, `${path}.rate`), per, path: `${path}.rate` };
    }
  }
  return readQuantity(rate as Quantity, form, path);
}

/** The unit that the label tells a rate in, where that is per area: what a person can hold against the label. */
export function ownAreaUnit(rate: SingleRate, form: Form, path: string): Unit | undefined {
  const read = readRate(rate, form, path);
  return read.kind === "area" ? read.quantity.unit : undefined;
}

/** Whether a rate is a strength of the mix, which pace and nozzles do not change. */
export function isOfMix(rate: SingleRate, form: Form, path: string): boolean {
  return ["carrier", "fraction", "parts"].includes(readRate(rate, form, path).kind);
}

function readQuantity(quantity: Quantity, form: Form, path: string): ReadRate {
  if (quantity === undefined || quantity === null) {
    throw new SprayMathError(
      "missing",
      path,
      'Nothing given; wanted the label\'s rate, such as { value: 1.5, unit: "pt/ac" }.',
    );
  }
  checkShape(quantity, path);
  positive(quantity, path);
  switch (resolveUnit(quantity.unit, `${path}.unit`).dimension) {
    case "volumeRate":
    case "massRate":
      return {
        kind: "area",
        quantity: checkedRate(quantity as VolumeRate, form, path),
        per: "treated",
        path,
      };
    case "volumeConcentration":
    case "density":
      return { kind: "carrier", quantity: checkedForm(quantity, form, path), path };
    case "volumePerLength":
    case "massPerLength":
      return { kind: "length", quantity: checkedForm(quantity, form, path), path };
    case "fraction":
      return { kind: "fraction", quantity: checkedFraction(quantity as BasedFraction, form, path), path };
    default:
      throw wrongKind(quantity, path);
  }
}

function wrongKind(quantity: Quantity, path: string): SprayMathError {
  const given = dimensionInWords(resolveUnit(quantity.unit, `${path}.unit`).dimension);
  return new SprayMathError(
    "wrong-dimension",
    path,
    `Given ${quantity.value} ${quantity.unit}, ${given}; wanted a label rate: per area (pt/ac), per volume of carrier ` +
      "(pt/100gal), per row length (mL/m), per cent or parts per million with a basis, a ratio, or active ingredient.",
  );
}

function positive(quantity: Quantity, path: string): void {
  if (quantity.value <= 0) {
    throw new SprayMathError(
      "out-of-range",
      path,
      `Given ${quantity.value} ${quantity.unit}; wanted more than 0.`,
    );
  }
}

function checkedRate(quantity: VolumeRate | MassRate, form: Form, path: string): Quantity {
  checkShape(quantity, path);
  positive(quantity, path);
  const { dimension } = resolveUnit(quantity.unit, `${path}.unit`);
  if (dimension !== "volumeRate" && dimension !== "massRate") throw wrongKind(quantity, path);
  return checkedForm(quantity, form, path);
}

const BY_VOLUME = ["volumeRate", "volumeConcentration", "volumePerLength"];

function checkedForm(quantity: Quantity, form: Form, path: string): Quantity {
  const { dimension, per } = resolveUnit(quantity.unit, `${path}.unit`);
  const given: Form = BY_VOLUME.includes(dimension) ? "liquid" : "dry";
  if (given !== form) {
    throw new SprayMathError(
      "wrong-dimension",
      path,
      `Given ${quantity.value} ${quantity.unit}, ${dimensionInWords(dimension)}, for a ${form} product; wanted ` +
        (form === "dry" ? `a weight, such as oz/${per}` : `a volume, such as fl_oz/${per}`) +
        ". An ounce of weight (oz) is not a fluid ounce (fl_oz): see how the label tells the rate.",
    );
  }
  return quantity;
}

function checkedFraction(fraction: BasedFraction, form: Form, path: string): BasedFraction {
  if (fraction.basis === undefined || fraction.basis === null) {
    throw new SprayMathError(
      "missing",
      `${path}.basis`,
      `Given ${fraction.value} ${fraction.unit} that does not say what it is a part of; wanted a basis: "v/v" by volume, ` +
        '"w/v" weight in volume (1 % is 1 kg in 100 L), "w/w" by weight.',
    );
  }
  checkedChoice(fraction.basis, ["v/v", "w/v", "w/w"], `${path}.basis`);
  const wanted = form === "liquid" ? "v/v" : "w/v";
  if (fraction.basis !== wanted) {
    throw new SprayMathError(
      "wrong-dimension",
      `${path}.basis`,
      `Given ${fraction.basis} for a ${form} product; wanted ${wanted}, since a ${form} product is measured by ` +
        `${form === "liquid" ? "volume" : "weight"} into a volume of mix. Look up on the label what the per cent is of.`,
    );
  }
  return fraction;
}

function checkedParts(rate: PartsRate, form: Form, path: string): PartsRate {
  checkedNumber(rate.parts, `${path}.parts`, { above: 0 });
  checkedNumber(rate.to, `${path}.to`, { above: 0 });
  if (rate.of === undefined || rate.of === null) {
    throw new SprayMathError(
      "missing",
      `${path}.of`,
      `Given ${rate.parts}:${rate.to} that does not say of what; wanted of: "mix" (${rate.parts} in ${rate.to} parts of mix) ` +
        `or of: "water" (${rate.parts} to ${rate.to} parts of water).`,
    );
  }
  checkedChoice(rate.of, ["mix", "water"], `${path}.of`);
  if (rate.of === "mix" && rate.parts > rate.to) {
    throw new SprayMathError(
      "conflict",
      path,
      `Given ${rate.parts} parts of product in ${rate.to} parts of mix; wanted no more product than mix. Is the ratio upside down?`,
    );
  }
  if (form === "dry") {
    throw new SprayMathError(
      "wrong-dimension",
      path,
      `Given a ratio by volume (${rate.parts}:${rate.to}) for a dry product; wanted a weight, such as oz/gal or g/L.`,
    );
  }
  return rate;
}

/** The three single rates of a range, present. */
export function checkedRange(rate: RateRange, path: string): RateRange {
  for (const name of ["low", "high", "chosen"] as const) {
    if (rate[name] === undefined || rate[name] === null) {
      throw new SprayMathError(
        "missing",
        `${path}.${name}`,
        "Nothing given; a range is told by low, high and the rate chosen.",
      );
    }
  }
  return rate;
}

/** One of `liquid` and `dry`. */
export function checkedFormName(form: Form): Form {
  return checkedChoice(form, ["liquid", "dry"], "form");
}

/** Refuses anything but an active-ingredient rate with its content. */
export function checkedActive(rate: ActiveIngredientRate, path: string): ActiveIngredientRate {
  checkedObject(rate, path);
  for (const name of ["activeIngredient", "contains"] as const) {
    if (rate[name] === undefined || rate[name] === null) {
      throw new SprayMathError(
        "missing",
        `${path}.${name}`,
        `Nothing given (${shown(rate[name])}); wanted the rate of active ingredient and what the product contains.`,
      );
    }
  }
  return rate;
}
