import { type Check, checked } from "../units/check.js";
import { inUnit } from "../units/convert.js";
import { moreThan } from "../units/decide.js";
import {
  about,
  byGiven,
  type Complete,
  choice,
  type EitherField,
  either,
  number,
  type ObjectField,
  object,
  optional,
  type Partly,
} from "../units/fields.js";
import { formulaLines } from "../units/formula-lines.js";
import { refusal } from "../units/message.js";
import { basedOr, called, measured, quantity } from "../units/quantity-field.js";
import { perUnit } from "../units/resolve.js";
import { finite, positive, positiveIn } from "../units/result.js";
import { unitsLike } from "../units/systems.js";
import type {
  BasedFraction,
  Concentration,
  Fraction,
  Mass,
  Measured,
  Quantity,
  Volume,
} from "../units/types.js";
import type { WorkingLine } from "../units/working-line.js";
import { PRODUCT_FORM, type ProductForm } from "./content.js";
import { rateFitsForm, SINGLE_RATE, type SingleRate, sizesFor } from "./label-rate.js";
import { isMixable, linesOfAmount, productAmountOf, productInOne } from "./product.js";

/**
 * The setting of a ratio injector (proportioner). `1:100` means two things, so `of` is never left out. With `mix` it is one part of
 * stock in 100 parts of what comes out of the hose, as fact sheets of the Universities of Maryland and Massachusetts have it. With
 * `water` it is one part of stock to 100 parts of water, as many pumps are built. A setting of 2% is 2 parts to 100.
 */
export interface InjectorRatio {
  /** Parts of stock. More than 0. */
  readonly parts: number;
  /** Parts of what it goes into. More than the parts of stock. */
  readonly to: number;
  /** What it goes into: 1 in 100 parts of what comes out (mix), or 1 to 100 parts of water. */
  readonly of: "mix" | "water";
}

const RATIO: ObjectField<InjectorRatio> = object<InjectorRatio>(
  {
    parts: number("Parts of stock. More than 0.", { above: 0 }),
    to: number("Parts of what it goes into. More than the parts of stock.", { above: 0 }),
    of: choice("What it goes into: 1 in 100 parts of what comes out (mix), or 1 to 100 parts of water.", [
      "mix",
      "water",
    ]),
  },
  [
    ({ parts, to }, check) => {
      if (parts !== undefined && to !== undefined && parts >= to)
        check.fault(
          "conflict",
          "injector-upside-down",
          "",
          "A setting of {parts}:{to} would be more stock than water. Is it upside down?",
          { parts, to },
        );
    },
  ],
  "The injector's setting: 1:100 of mix or of water.",
);

/** What an injector does to a part of stock: the parts of water that it goes into, and of what comes out. */
interface Parts {
  readonly parts: number;
  readonly water: number;
  readonly whole: number;
}

function partsOf({ parts, to, of }: InjectorRatio): Parts {
  return of === "mix" ? { parts, water: to - parts, whole: to } : { parts, water: to, whole: parts + to };
}

const ERROR_PERCENT = optional(
  number("How far the injector may draw too much or too little stock, in percent. 0 to 50.", {
    min: 0,
    max: 50,
  }),
);

/** The stock for a run: how strong what comes out is to be, and how much of it, or how much stock there is to be. */
export interface InjectorInput {
  /** The rate in what comes out of the hose: ppm or percent, per volume, a ratio, or active ingredient. */
  readonly rate: SingleRate;
  /** Whether it is measured by volume (liquid) or by weight (dry). */
  readonly form: ProductForm;
  /** The injector's setting: 1:100 of mix or of water. */
  readonly ratio: InjectorRatio;
  /** What is to come out of the hose in the run. More than 0. */
  readonly finished?: Volume | undefined;
  /** The stock that is made up, such as the stock tank. More than 0. */
  readonly stock?: Volume | undefined;
  /** How far the injector may draw too much or too little stock, in percent. 0 to 50. */
  readonly errorPercent?: number | undefined;
}

type Sized<K extends "finished" | "stock"> = Omit<InjectorInput, "finished" | "stock"> &
  Complete<Pick<InjectorInput, K>>;

const COMMON = {
  rate: about(
    "The rate in what comes out of the hose: ppm or percent, per volume, a ratio, or active ingredient.",
    SINGLE_RATE,
  ),
  form: PRODUCT_FORM,
  ratio: RATIO,
  errorPercent: ERROR_PERCENT,
};

const AGREE = [
  ({ rate, form }: Partly<InjectorInput>, check: Check): void => rateFitsForm(rate, form, "rate", check),
  rateIsInMix,
];

const INJECTOR: EitherField<InjectorInput> = either<InjectorInput>(
  "The stock for a run: how strong what comes out is to be, and how much of it, or how much stock there is to be.",
  [
    object<Sized<"finished">>(
      {
        ...COMMON,
        finished: quantity("What is to come out of the hose in the run. More than 0.", "volume"),
      },
      AGREE,
    ) as ObjectField<InjectorInput>,
    object<Sized<"stock">>(
      {
        ...COMMON,
        stock: quantity("The stock that is made up, such as the stock tank. More than 0.", "volume"),
      },
      AGREE,
    ) as ObjectField<InjectorInput>,
  ],
  byGiven([["finished"], ["stock"]]),
);

/** Notes a rate that goes by an area or a row: an injector knows of neither. */
function rateIsInMix({ rate }: Partly<InjectorInput>, check: Check): void {
  if (rate === undefined || sizesFor(rate).length === 0) return;
  check.fault(
    "wrong-dimension",
    "rate-not-in-mix",
    "rate",
    "An injector mixes by volume. Enter the rate in what comes out, such as {example}.",
    {
      example:
        check.system === "metric" ? { value: 50, unit: "mL/100L" } : { value: 8, unit: "fl_oz/100gal" },
    },
  );
}

/** The weakest and the strongest that comes out of an injector that may be off. */
export interface StrengthRange<S extends Quantity = Concentration> {
  /** Where it draws too little stock. */
  readonly low: S;
  /** Where it draws too much. */
  readonly high: S;
}

/** The stock for an injector, and what comes out. */
export interface InjectorStock {
  /** The stock to make up: product and water together. */
  readonly stock: Volume;
  /** The product in that stock. */
  readonly product: Volume | Mass;
  /** The product in one unit of stock. */
  readonly strength: Concentration;
  /** What comes out of the hose until the stock is used up. */
  readonly finished: Volume;
  /** The product in one unit of what comes out. */
  readonly finishedStrength: Concentration;
  /** What may come out instead, where the injector's error was given. */
  readonly range?: StrengthRange | undefined;
}

/**
 * Returns the stock for a ratio injector (proportioner): how much to make up, and how much product goes into it, for a finished ppm,
 * percent or rate per volume. From the run that is to come out of the hose, or from the size of the stock tank.
 *
 * Formula: stock = finished × parts / whole, where whole is `to` of mix and parts + `to` of water; product = finished strength ×
 * finished; strength = product / stock. Where the injector draws e percent too much of the stock into the same water, what comes
 * out has strength × parts × (1 + e) / (parts × (1 + e) + water).
 * Source: Care and Calibration of Injector Pumps (University of Maryland Extension, FS-1121, 2020).
 *
 * @param input - the rate in what comes out, the setting, and the run or the stock
 * @returns volumes in `gal`, `imp_gal` or `L`, by the system of the one that is given; the product and strengths as {@link productAmount}
 * has them; each within 8 ulp of the exact value
 * @throws SprayMathError `conflict` for a setting upside down, or for a stock that can't hold the product, `wrong-dimension` for a
 * rate per area or row, `missing`, `not-a-quantity`, `not-finite`, `unknown-unit`, `unknown-field`, `unknown-choice` or `out-of-range`
 *
 * @example
 * ```ts
 * import { injectorStock } from "swath-to-spoon/tank-mix";
 * import { qty } from "swath-to-spoon/units";
 *
 * const { stock, product, strength } = injectorStock({
 *   rate: qty(2, "mL/L"),
 *   form: "liquid",
 *   ratio: { parts: 1, to: 100, of: "mix" },
 *   finished: qty(500, "L"),
 * });
 * console.log(stock, product); // { value: 5, unit: 'L' } { value: 1000, unit: 'mL' }
 * console.log(strength); // { value: 200, unit: 'mL/L' }
 * ```
 */
export function injectorStock(input: InjectorInput): InjectorStock {
  return stockOf(checked(input, INJECTOR));
}

/** The stock for an injector. Trusts its input. */
function stockOf(input: InjectorInput): InjectorStock {
  const { rate, form, errorPercent } = input;
  const { parts, water, whole } = partsOf(input.ratio);
  const given = (input.finished ?? input.stock) as Volume;
  const { volume: unit } = unitsLike(given.unit);
  const size = inUnit(given, unit);
  const [finished, stock] =
    input.finished === undefined
      ? [positive((size * whole) / parts), size]
      : [size, positive((size * parts) / whole)];
  const run: Volume = { value: finished, unit };
  const { amount, strength: finishedStrength } = productAmountOf({ rate, form, carrier: run });
  const strength = positiveIn(amount.value / stock, perUnit(amount.unit, unit)) as Concentration;
  if (!isMixable(strength))
    throw refusal(
      "conflict",
      "stock-too-strong",
      "rate",
      "The stock would have {product} of product in {mix}, more than it can hold. Check the rate, or set the injector to draw more.",
      productInOne(strength),
    );
  return {
    stock: { value: stock, unit },
    product: amount,
    strength,
    finished: run,
    finishedStrength,
    ...(errorPercent !== undefined && { range: rangeOf(strength, { parts, water, whole }, errorPercent) }),
  };
}

function rangeOf<S extends Quantity>(
  strength: S,
  { parts, water }: Parts,
  percent: number,
): StrengthRange<S> {
  const at = (drawn: number): S => ({
    ...strength,
    value: positive((strength.value * parts * drawn) / (parts * drawn + water)),
  });
  return { low: at(1 - percent / 100), high: at(1 + percent / 100) };
}

const SOURCE = "Care and Calibration of Injector Pumps, University of Maryland Extension, FS-1121, 2020";

/**
 * The working of {@link injectorStock}.
 *
 * @param input - as for {@link injectorStock}
 * @returns the lines, in order, with the stock, the product and its strength; and the range where the injector's error was given
 * @throws SprayMathError what {@link injectorStock} throws
 *
 * @example
 * ```ts
 * import { qty } from "swath-to-spoon/units";
 * import { injectorStock } from "swath-to-spoon/working";
 *
 * const ratio = { parts: 1, to: 100, of: "mix" } as const;
 * const lines = injectorStock({ rate: qty(2, "mL/L"), form: "liquid", ratio, finished: qty(500, "L") });
 * console.log(lines[0]?.formula, lines[0]?.result); // finished * parts / whole { value: 5, unit: 'L' }
 * ```
 */
export function injectorStockWorking(input: InjectorInput): WorkingLine[] {
  const given = checked(input, INJECTOR);
  const { rate, form, ratio, errorPercent } = given;
  const { stock, finished, product, strength, range } = stockOf(given);
  const { parts, whole } = partsOf(ratio);
  return [
    ...(given.finished === undefined
      ? formulaLines({
          id: "tank-mix.injectorFinished",
          formula: "stock * whole / parts",
          terms: { stock: [given.stock as Volume, stock.unit], whole, parts },
          result: finished,
          source: SOURCE,
        })
      : formulaLines({
          id: "tank-mix.injectorStock",
          formula: "finished * parts / whole",
          terms: { finished: [given.finished, finished.unit], parts, whole },
          result: stock,
          source: SOURCE,
        })),
    ...linesOfAmount({ rate, form, carrier: finished }),
    {
      id: "tank-mix.stockStrength",
      formula: "product / stock",
      terms: { product, stock },
      result: strength,
      source: SOURCE,
    },
    ...rangeLines(strength, ratio, errorPercent, range),
  ];
}

function rangeLines(
  strength: Quantity,
  ratio: InjectorRatio,
  percent: number | undefined,
  range: StrengthRange<Quantity> | undefined,
): WorkingLine[] {
  if (percent === undefined || range === undefined) return [];
  const { parts, water } = partsOf(ratio);
  const line = (id: string, sign: "-" | "+", result: Quantity): WorkingLine => ({
    id,
    formula: `strength * parts * (1 ${sign} percent / 100) / (parts * (1 ${sign} percent / 100) + water)`,
    terms: { strength: plain(strength), parts, percent, water },
    result: plain(result),
    source: "the same water, with more or less of the stock drawn into it",
  });
  return [line("tank-mix.injectedLow", "-", range.low), line("tank-mix.injectedHigh", "+", range.high)];
}

function plain({ value, unit }: Quantity): Quantity {
  return { value, unit };
}

/** A stock and the injector that it is drawn by. */
export interface InjectedInput<S extends Concentration | BasedFraction = Concentration | BasedFraction> {
  /** The strength of the stock: product per volume, or percent or ppm v/v or w/v. More than 0. */
  readonly stock: S;
  /** The injector's setting: 1:100 of mix or of water. */
  readonly ratio: InjectorRatio;
  /** How far the injector may draw too much or too little stock, in percent. 0 to 50. */
  readonly errorPercent?: number | undefined;
}

const INJECTED: ObjectField<InjectedInput> = object<InjectedInput>({
  stock: called(
    basedOr(
      "The strength of the stock: product per volume, or percent or ppm v/v or w/v. More than 0.",
      ["volumeConcentration", "density"],
      ["v/v", "w/v"],
    ),
    "strength",
    {
      us: { value: 8, unit: "oz/gal" },
      imperial: { value: 8, unit: "oz/imp_gal" },
      metric: { value: 50, unit: "g/L" },
    },
  ),
  ratio: RATIO,
  errorPercent: ERROR_PERCENT,
});

/** What comes out of an injector. */
export interface InjectedStrength<S extends Concentration | BasedFraction = Concentration | BasedFraction> {
  /** The strength of what comes out of the hose. */
  readonly finished: S;
  /** What may come out instead, where the injector's error was given. */
  readonly range?: StrengthRange<S> | undefined;
}

/**
 * Returns the strength of what comes out of an injector, from the strength of the stock: the reverse of {@link injectorStock}.
 *
 * Formula: finished = stock × parts / whole, where whole is `to` of mix and parts + `to` of water.
 * Source: Care and Calibration of Injector Pumps (University of Maryland Extension, FS-1121, 2020).
 *
 * @param input - the strength of the stock, the setting, and how far the injector may be off
 * @returns the strength in the unit of the stock's, within 8 ulp of the exact value
 * @throws SprayMathError `conflict` for a setting upside down, `missing`, `not-a-quantity`, `not-finite`, `unknown-unit`,
 * `unknown-field`, `unknown-choice`, `wrong-dimension` or `out-of-range`
 *
 * @example
 * ```ts
 * import { injectedStrength } from "swath-to-spoon/tank-mix";
 * import { qty } from "swath-to-spoon/units";
 *
 * const ratio = { parts: 1, to: 100, of: "mix" } as const;
 * const { finished, range } = injectedStrength({ stock: qty(20, "g/L"), ratio, errorPercent: 10 });
 * console.log(finished); // { value: 0.2, unit: 'g/L' }
 * console.log(range?.high.value.toFixed(4)); // 0.2198
 * ```
 */
export function injectedStrength<S extends Concentration | BasedFraction>(
  input: InjectedInput<S>,
): InjectedStrength<S> {
  return injectedOf(checked<InjectedInput>(input, INJECTED)) as InjectedStrength<S>;
}

function injectedOf({ stock, ratio, errorPercent }: InjectedInput): InjectedStrength {
  const all = partsOf(ratio);
  return {
    finished: { ...stock, value: positive((stock.value * all.parts) / all.whole) },
    ...(errorPercent !== undefined && { range: rangeOf(stock, all, errorPercent) }),
  };
}

/**
 * The working of {@link injectedStrength}.
 *
 * @param input - as for {@link injectedStrength}
 * @returns the lines, in order; the first one's result is the strength that comes out
 * @throws SprayMathError what {@link injectedStrength} throws
 *
 * @example
 * ```ts
 * import { qty } from "swath-to-spoon/units";
 * import { injectedStrength } from "swath-to-spoon/working";
 *
 * const ratio = { parts: 1, to: 100, of: "mix" } as const;
 * console.log(injectedStrength({ stock: qty(20, "g/L"), ratio })[0]?.formula); // stock * parts / whole
 * ```
 */
export function injectedStrengthWorking(input: InjectedInput): WorkingLine[] {
  const given = checked(input, INJECTED);
  const { stock, ratio, errorPercent } = given;
  const { finished, range } = injectedOf(given);
  const { parts, whole } = partsOf(ratio);
  return [
    {
      id: "tank-mix.injectedStrength",
      formula: "stock * parts / whole",
      terms: { stock: plain(stock), parts, whole },
      result: plain(finished),
      source: SOURCE,
    },
    ...rangeLines(stock, ratio, errorPercent, range),
  ];
}

/** What an injector drew, and what came out in the same time. */
export interface InjectorCheckInput {
  /** The injector's setting: 1:100 of mix or of water. */
  readonly ratio: InjectorRatio;
  /** What was drawn from the stock. More than 0. */
  readonly drawn: Measured<Volume>;
  /** What came out of the hose in the same time, stock and water together. More than was drawn. */
  readonly caught: Measured<Volume>;
}

const INJECTOR_CHECK: ObjectField<InjectorCheckInput> = object<InjectorCheckInput>(
  {
    ratio: RATIO,
    drawn: measured("What was drawn from the stock. More than 0.", "volume"),
    caught: measured(
      "What came out of the hose in the same time, stock and water together. More than was drawn.",
      "volume",
    ),
  },
  [
    ({ drawn, caught }, check) => {
      if (drawn === undefined || caught === undefined) return;
      if (!moreThan(caught.value, inUnit(drawn, caught.unit)))
        check.fault(
          "conflict",
          "drawn-over-caught",
          "caught",
          "{caught} came out, but {drawn} was drawn from the stock. Are the two swapped?",
          { drawn: plain(drawn), caught: plain(caught) },
        );
    },
  ],
);

/** How an injector works against its setting. */
export interface InjectorCheck {
  /** The ratio that it really gives, as one part, of mix or of water like the setting. */
  readonly ratio: InjectorRatio;
  /** How far what comes out is from its strength, in percent of it; below 0 where it is too weak. */
  readonly strengthOff: Fraction;
}

/**
 * Checks an injector by volume: what it drew from a measured jug of stock (or water) against what came out of the hose.
 *
 * Formula: ratio = 1 : caught / drawn of mix, 1 : (caught − drawn) / drawn of water; strength off = 100 × (drawn × whole / (caught ×
 * parts) − 1). Source: Care and Calibration of Injector Pumps (University of Maryland Extension, FS-1121, 2020).
 *
 * @param input - the setting, what was drawn, and what came out
 * @returns the ratio that it gives, and how far the strength is off
 * @throws SprayMathError `conflict` for a setting upside down, or where no more came out than was drawn, `missing`,
 * `not-a-quantity`, `not-finite`, `unknown-unit`, `unknown-field`, `unknown-choice`, `wrong-dimension` or `out-of-range`
 *
 * @example
 * ```ts
 * import { checkInjector } from "swath-to-spoon/tank-mix";
 * import { qty } from "swath-to-spoon/units";
 *
 * const check = checkInjector({
 *   ratio: { parts: 1, to: 100, of: "mix" },
 *   drawn: qty(160, "mL"),
 *   caught: qty(20, "L"),
 * });
 * console.log(check.ratio.to, check.strengthOff.value.toFixed(0)); // 125 -20
 * ```
 */
export function checkInjector(input: InjectorCheckInput): InjectorCheck {
  return checkOf(checked(input, INJECTOR_CHECK));
}

function checkOf({ ratio, drawn, caught }: InjectorCheckInput): InjectorCheck {
  const { parts, whole } = partsOf(ratio);
  const out = inUnit(caught, drawn.unit);
  const times = positive(out / drawn.value);
  return {
    ratio: {
      parts: 1,
      to: ratio.of === "mix" ? times : positive((out - drawn.value) / drawn.value),
      of: ratio.of,
    },
    strengthOff: { value: finite(100 * (whole / (times * parts) - 1)), unit: "%" },
  };
}

/**
 * The working of {@link checkInjector}.
 *
 * @param input - as for {@link checkInjector}
 * @returns the lines, in order; the last one's result is how far the strength is off
 * @throws SprayMathError what {@link checkInjector} throws
 *
 * @example
 * ```ts
 * import { qty } from "swath-to-spoon/units";
 * import { checkInjector } from "swath-to-spoon/working";
 *
 * const ratio = { parts: 1, to: 100, of: "mix" } as const;
 * const lines = checkInjector({ ratio, drawn: qty(160, "mL"), caught: qty(16000, "mL") });
 * console.log(lines[0]?.formula); // caught / drawn
 * ```
 */
export function checkInjectorWorking(input: InjectorCheckInput): WorkingLine[] {
  const given = checked(input, INJECTOR_CHECK);
  const { ratio, drawn, caught } = given;
  const { ratio: actual, strengthOff } = checkOf(given);
  const { parts, whole } = partsOf(ratio);
  const terms = { caught: [caught, drawn.unit], drawn: [drawn, drawn.unit] } as const;
  return [
    ...formulaLines({
      id: "tank-mix.injectorRatio",
      formula: ratio.of === "mix" ? "caught / drawn" : "(caught - drawn) / drawn",
      terms,
      result: actual.to,
      source: SOURCE,
    }),
    {
      id: "tank-mix.injectorOff",
      formula: "100 * (drawn * whole / (caught * parts) - 1)",
      terms: {
        drawn: plain(drawn),
        whole,
        caught: { value: inUnit(caught, drawn.unit), unit: drawn.unit },
        parts,
      },
      result: strengthOff,
      source: "definition of a deviation in percent",
    },
  ];
}
