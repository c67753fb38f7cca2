import type { Figures, Issue } from "../errors.js";
import { checked } from "../units/check.js";
import { inUnit } from "../units/convert.js";
import { moreThan } from "../units/decide.js";
import { flag, type ObjectField, object } from "../units/fields.js";
import { messageOf } from "../units/message.js";
import type { MassUnit, Quantity, Volume, VolumeUnit } from "../units/types.js";
import { conversionLines, type WorkingLine } from "../units/working-line.js";
import { type Kit, kitFor } from "./kit.js";
import { nearestFills, percentOff, type Way } from "./measure.js";
import { amountOf, isWeight, type MeasuringTool } from "./measuring-tool.js";
import type { KitTool, MeasuredPart } from "./parts.js";
import { MEASURING, type MeasuringInput, toolsFit, wayOf } from "./request.js";

/** The input of {@link stockDilution}. */
export interface StockDilutionInput<U extends VolumeUnit | MassUnit = VolumeUnit | MassUnit>
  extends MeasuringInput<U> {
  /** Whether the label permits diluting the product before it goes into the tank. Where it does not say, it does not. */
  readonly labelPermitsDilution: boolean;
}

const STOCK: ObjectField<StockDilutionInput> = /* @__PURE__ */ object<StockDilutionInput>(
  {
    ...MEASURING,
    labelPermitsDilution: flag(
      "Whether the label permits diluting the product before it goes into the tank. Where it does not say, it does not.",
    ),
  },
  [toolsFit],
);

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
  /** The error in percent of the amount. */
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
 * Of all stocks that the tools make, takes the one with the least product in it, so that little is left over. Among these it
 * takes one that is close enough, then the fewest scoops, then the smallest error to a tenth of a percent, then the smallest
 * stock. A stock is never stronger than one part of product in ten (mL in mL, or g in mL), so that it mixes and pours evenly:
 * common practice, no source. Water is added up to the mark, so that no room taken by the product counts.
 *
 * Formula: strength = product / stock; part to take = amount / strength; measured = strength × taken (dilution,
 * C1 V1 = C2 V2).
 *
 * @param input - see {@link StockDilutionInput}; `tools` hold those for the product and those for the stock
 * @returns the stock and the part, or why there is none (as data, for the same reason as {@link measureOut})
 * @throws SprayMathError `missing` or `not-a-quantity` (`labelPermitsDilution` is not true or false), or what
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
  return stockOf(checked(input, STOCK) as StockDilutionInput<U>);
}

function stockOf<U extends VolumeUnit | MassUnit>(
  asked: StockDilutionInput<U>,
): ({ readonly ok: true } & StockDilution<U>) | NoStockDilution {
  const { amount, labelPermitsDilution } = asked;
  if (!labelPermitsDilution) {
    return noStock(
      "dilution-not-permitted",
      "The label must permit diluting this product first. Use a finer tool, or mix a larger batch.",
      {},
    );
  }
  const stock = findStock(asked);
  if (stock) return { ok: true, ...stock };
  const { way } = wayOf(asked);
  return noStock(
    "no-stock",
    "These tools can't measure {amount} within {limit}, even diluted. Use a measure larger than {amount} and a container 10 times that size.",
    {
      amount: { value: Number(amount.value.toPrecision(3)), unit: amount.unit },
      limit: { value: way.limitPercent, unit: "%" },
    },
  );
}

function noStock(key: string, template: string, figures: Figures): NoStockDilution {
  return {
    ok: false,
    issue: { code: "not-measurable", key, path: "amount", figures, message: messageOf(template, figures) },
  };
}

/** The stock that {@link stockDilution} describes, or nothing where none does within the limit. Trusts its input. */
export function findStock<U extends VolumeUnit | MassUnit>(
  asked: MeasuringInput<U>,
): StockDilution<U> | undefined {
  const { amount } = asked;
  const { kit, way } = wayOf(asked);
  const vessels = kitFor(asked.tools, "volume");
  if (vessels === undefined) return undefined;
  const products = kit.tools
    .flatMap(smallFills)
    .map((part) => ({ part, size: inUnit(part.amount, amount.unit) }))
    .filter(({ size }) => moreThan(size, amount.value))
    .sort((a, b) => a.size - b.size);
  for (const { part, size } of products) {
    const stock = bestStock(amount, way, vessels, part, size);
    if (stock) return stock;
  }
  return undefined;
}

/** The fills of a tool that a stock is made from: the whole of it, or 1, 2, 5, 10, 20, 50 ... marks from the least up. */
function smallFills({ tool, least, most }: KitTool): MeasuredPart[] {
  const { graduation } = tool;
  if (graduation === undefined) return [{ tool, count: 1, amount: tool.capacity }];
  // Stryker disable next-line ArrayDeclaration: what is no number is no mark below
  const marks: number[] = [];
  for (let ten = 1; ten <= most; ten *= 10) marks.push(ten, 2 * ten, 5 * ten);
  return marks
    .filter((mark) => mark >= least && mark <= most)
    .map((mark) => {
      const amount = amountOf(graduation, mark);
      return { tool, count: 1, each: amount, amount };
    });
}

function bestStock<U extends VolumeUnit | MassUnit>(
  amount: Quantity<U>,
  way: Way,
  vessels: Kit,
  product: MeasuredPart,
  size: number,
): StockDilution<U> | undefined {
  const least = 10 * inUnit(product.amount, isWeight(product.amount) ? "g" : "mL");
  let best: StockDilution<U> | undefined;
  for (const { tool: makeUpIn, most } of vessels.tools) {
    const stock = amountOf(makeUpIn.graduation ?? makeUpIn.capacity, most) as Volume;
    if (moreThan(least, inUnit(stock, "mL"))) continue;
    const strength = size / stock.value;
    const part = { value: amount.value / strength, unit: stock.unit };
    // One fill of this tool is more than that part, so something is found while there is effort left.
    const found = nearestFills(part, vessels, way);
    if (found === undefined) continue;
    const value = found.value === part.value ? amount.value : strength * found.value;
    const errorPercent = percentOff(value, amount.value);
    if (moreThan(Math.abs(errorPercent), way.limitPercent)) continue;
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
    if (best === undefined || isBetter(one, best, way)) best = one;
  }
  return best;
}

function isBetter(one: StockDilution, best: StockDilution, { closeEnoughPercent }: Way): boolean {
  const rank = ({ errorPercent, scoops, stock }: StockDilution): number[] => {
    // Tenths of a percent: a person can't tell two stocks apart that are closer.
    const tenths = Math.round(Math.abs(errorPercent) * 10);
    const far = moreThan(Math.abs(errorPercent), closeEnoughPercent);
    return [...(far ? [1, tenths, scoops] : [0, scoops, tenths]), inUnit(stock, "L")];
  };
  const [ones, bests] = [rank(one), rank(best)];
  const apart = ones.map((part, i) => part - (bests[i] as number)).find((difference) => difference !== 0);
  return apart !== undefined && apart < 0;
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
 * import { qty } from "swath-to-spoon/units";
 * import { stockDilution } from "swath-to-spoon/working";
 *
 * const lines = stockDilution({
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
  const asked = checked(input, STOCK);
  const answer = stockOf(asked);
  if (!answer.ok) return [];
  const { amount } = asked;
  const { product, stock, taken, measured } = answer;
  const size = { value: inUnit(product.amount, amount.unit), unit: amount.unit };
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
