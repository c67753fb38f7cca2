import type { Issue } from "../errors.js";
import { valueIn } from "../units/convert.js";
import { moreThan } from "../units/decide.js";
import type { MassUnit, Quantity, Volume, VolumeUnit } from "../units/types.js";
import { conversionLines, type WorkingLine } from "../units/working.js";
import { fullFill, type Measured, type MeasuredPart, measure, percentOff, smallFills } from "./measure.js";
import { checkedPermission, checkedRequest, type MeasuringInput, type MeasuringRequest } from "./request.js";
import { dimensionMeasured, type MeasuringTool } from "./tools.js";

/** What {@link stockDilution} is asked. */
export interface StockDilutionInput<U extends VolumeUnit | MassUnit = VolumeUnit | MassUnit>
  extends MeasuringInput<U> {
  /** Whether the label permits diluting the product before it goes into the tank. Where it does not say, it does not. */
  readonly labelPermitsDilution: boolean;
}

/** A dose too small to measure, taken as a part of a stock that is large enough to measure. */
export interface StockDilution<U extends VolumeUnit | MassUnit = VolumeUnit | MassUnit> {
  /** First: the product that goes into the stock, one fill of a tool. */
  readonly product: MeasuredPart;
  /** Second: the tool or container in which water is added to it. */
  readonly makeUpIn: MeasuringTool;
  /** The volume that product and water are made up to: the full mark of `makeUpIn`. */
  readonly stock: Volume;
  /** Third: what to take of the stock, well stirred, for this dose. */
  readonly take: readonly MeasuredPart[];
  /** What the parts of `take` come to. */
  readonly taken: Volume;
  /** How many scoops of the stock are taken. */
  readonly scoops: number;
  /** The product in what is taken, in the unit of the amount. */
  readonly measured: Quantity<U>;
  /** `measured` less the amount: less than 0 where under. */
  readonly error: Quantity<U>;
  /** The error in per cent of the amount. */
  readonly errorPercent: number;
  /** The stock that is left over. It is the product: to be used on the site by the label, or kept as the label says. */
  readonly left: Volume;
}

/** Why no stock is offered. */
export interface NoStockDilution {
  /** False: no stock. */
  readonly ok: false;
  /** What is wrong and what to do, with the code `not-measurable`. */
  readonly issue: Issue;
}

/**
 * Measures a very small dose from a stock: one measurable amount of product, made up with water to a measurable volume,
 * and then a measurable part of that. Only where the label permits diluting first, which the caller says.
 *
 * Of all stocks that the tools make, takes the one with the least product in it, so that little is left over; among
 * these the smallest error to a tenth of a per cent, then the fewest scoops, then the smallest stock. A stock is never
 * stronger than one part of product in ten (mL in mL, or g in mL), so that it mixes and pours evenly: common practice,
 * no source. Water is added up to the mark, so that no room taken by the product counts.
 *
 * Formula: strength = product / stock; part to take = amount / strength; measured = strength × taken (dilution,
 * C1 V1 = C2 V2).
 *
 * @param input - see {@link StockDilutionInput}; `tools` hold those for the product and those for the stock
 * @returns the stock and the part, or why there is none (as data, for the same reason as {@link measureOut})
 * @throws SprayMathError `missing` or `unknown-choice` (`labelPermitsDilution` is not true or false), or what
 *   {@link measureOut} throws
 *
 * @example
 * ```ts
 * import { stockDilution, toolSet } from "swath-to-spoon/household";
 * import { qty } from "swath-to-spoon/units";
 *
 * const tools = [...toolSet("syringes"), ...toolSet("cylinders")];
 * const dose = { amount: qty(0.015, "mL"), tools, rule: "never-over", labelPermitsDilution: true } as const;
 * const stock = stockDilution(dose);
 * if (stock.ok) {
 *   console.log(stock.product.amount, stock.stock, stock.taken); // { value: 0.02, unit: 'mL' } { value: 10, unit: 'mL' } { value: 7.5, unit: 'mL' }
 * }
 * ```
 */
export function stockDilution<U extends VolumeUnit | MassUnit>(
  input: StockDilutionInput<U>,
):
  | ({
      /** Says that there is a stock mix. */
      readonly ok: true;
    } & StockDilution<U>)
  | NoStockDilution {
  const request = checkedRequest(input);
  if (!checkedPermission(input.labelPermitsDilution)) {
    return refused(
      "Diluting a product before it goes into the tank is only for labels that permit it; use a finer tool, or make a larger batch.",
    );
  }
  const stock = findStock(request);
  if (stock) return { ok: true, ...stock };
  const { amount, limitPercent } = request;
  return refused(
    `Given ${amount.value} ${amount.unit}, which no stock made with these tools measures within ${limitPercent} %; wanted an amount smaller than one fill of a tool, and a tool for volumes that holds at least ten times as much.`,
  );
}

function refused(message: string): NoStockDilution {
  return {
    ok: false,
    issue: { code: "not-measurable", key: "no-stock", path: "amount", figures: {}, message },
  };
}

/** The stock that {@link stockDilution} describes, or nothing where none does within the limit. */
export function findStock<U extends VolumeUnit | MassUnit>(
  request: MeasuringRequest<U>,
): StockDilution<U> | undefined {
  const { amount, tools, allTools } = request;
  const volumeTools = allTools.filter(({ capacity }) => dimensionMeasured(capacity.unit) === "volume");
  if (volumeTools.length === 0) return undefined;
  const products = tools
    .flatMap(smallFills)
    .map((part) => ({ part, size: valueIn(part.amount as Quantity, amount.unit as never) }))
    .filter(({ size }) => moreThan(size, amount.value))
    .sort((a, b) => a.size - b.size);
  for (const { part, size } of products) {
    const stock = bestStock(request, volumeTools, part, size);
    if (stock) return stock;
  }
  return undefined;
}

function bestStock<U extends VolumeUnit | MassUnit>(
  request: MeasuringRequest<U>,
  volumeTools: readonly MeasuringTool[],
  product: MeasuredPart,
  size: number,
): StockDilution<U> | undefined {
  const { amount, limitPercent } = request;
  const small = dimensionMeasured(product.amount.unit) === "mass" ? "g" : "mL";
  const least = 10 * valueIn(product.amount as Quantity, small as never);
  let best: StockDilution<U> | undefined;
  for (const makeUpIn of volumeTools) {
    const stock = fullFill(makeUpIn) as Volume;
    if (moreThan(least, valueIn(stock, "mL"))) continue;
    const strength = size / stock.value;
    const wanted = { value: amount.value / strength, unit: stock.unit };
    // One fill of this tool is more than is wanted, so something is found, and no more than the stock.
    const found = measure({ ...request, amount: wanted, tools: volumeTools }) as Measured;
    const value = found.value === wanted.value ? amount.value : strength * found.value;
    const errorPercent = percentOff(value, amount.value);
    if (moreThan(Math.abs(errorPercent), limitPercent)) continue;
    const one: StockDilution<U> = {
      product,
      makeUpIn,
      stock,
      take: found.parts,
      taken: { value: found.value, unit: stock.unit },
      scoops: found.scoops,
      measured: { value, unit: amount.unit },
      error: { value: value - amount.value, unit: amount.unit },
      errorPercent,
      left: { value: stock.value - found.value, unit: stock.unit },
    };
    if (best === undefined || isBetter(one, best)) best = one;
  }
  return best;
}

function isBetter(one: StockDilution, best: StockDilution): boolean {
  const told = ({ errorPercent }: StockDilution): number => Math.round(Math.abs(errorPercent) * 10);
  const liters = ({ stock }: StockDilution): number => valueIn(stock, "L");
  return (told(one) - told(best) || one.scoops - best.scoops || liters(one) - liters(best)) < 0;
}

/**
 * The working of {@link stockDilution}.
 *
 * @param input - see {@link StockDilutionInput}
 * @returns its lines, or none where no stock is offered
 * @throws SprayMathError as {@link stockDilution}
 *
 * @example
 * ```ts
 * import { stockDilutionWorking } from "swath-to-spoon/household";
 * import { qty } from "swath-to-spoon/units";
 *
 * const lines = stockDilutionWorking({
 *   amount: qty(0.06, "tsp"),
 *   tools: "us-cups-and-spoons",
 *   rule: "never-over",
 *   labelPermitsDilution: true,
 * });
 * console.log(lines.map((line) => line.id).join(" ")); // household.stock.strength household.stock.part household.stock.measured
 * ```
 */
export function stockDilutionWorking<U extends VolumeUnit | MassUnit>(
  input: StockDilutionInput<U>,
): WorkingLine[] {
  const answer = stockDilution(input);
  if (!answer.ok) return [];
  const { amount } = input;
  const { product, stock, taken, measured } = answer;
  const size = { value: valueIn(product.amount as Quantity, amount.unit as never), unit: amount.unit };
  const strength = { value: size.value / stock.value, unit: `${amount.unit}/${stock.unit}` } as Quantity;
  const source = "dilution, C1 V1 = C2 V2";
  return [
    ...conversionLines("household.stock.strength.product", product.amount, amount.unit),
    {
      id: "household.stock.strength",
      formula: "product / stock",
      terms: { product: size, stock },
      result: strength,
      source,
    },
    {
      id: "household.stock.part",
      formula: "amount / strength",
      terms: { amount, strength },
      result: { value: amount.value / strength.value, unit: stock.unit },
      source,
    },
    {
      id: "household.stock.measured",
      formula: "strength * taken",
      terms: { strength, taken },
      result: measured,
      source,
    },
  ];
}
