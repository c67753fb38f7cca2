import BigCtor, { type Big as BigNumber } from "big.js";
import configureMeasurements, { type Measure } from "convert-units";
import { TABLE } from "./table.js";
import type { SimpleUnit } from "./types.js";

/** An exact decimal. Stays inside the library: no public type names it. */
export type Decimal = BigNumber;

// A private constructor, so that neither an app's big.js settings nor ours touch the other's. 60 decimal places
// leave more than 40 significant digits in the smallest quotient that two units of the table can give.
const Big = /* @__PURE__ */ ownBig();

function ownBig(): typeof BigCtor {
  const own = BigCtor();
  own.DP = 60;
  return own;
}

/** Makes an exact decimal of a number or of decimal text. */
export function decimal(value: number | string): Decimal {
  return new Big(value);
}

/** The arithmetic that convert-units is given, so that it computes in exact decimals and not in floats. */
export const decimalWrapper = {
  create: (value: string | number): Decimal => new Big(value),
  add: (left: Decimal | string | number, right: Decimal | string | number): Decimal =>
    new Big(left).plus(right),
  sub: (left: Decimal | string | number, right: Decimal | string | number): Decimal =>
    new Big(left).minus(right),
  mul: (left: Decimal | string | number, right: Decimal | string | number): Decimal =>
    new Big(left).times(right),
  div: (left: Decimal | string | number, right: Decimal | string | number): Decimal =>
    new Big(left).div(right),
  lt: (left: Decimal | string | number, right: Decimal | string | number): boolean => new Big(left).lt(right),
  lte: (left: Decimal | string | number, right: Decimal | string | number): boolean =>
    new Big(left).lte(right),
  gt: (left: Decimal | string | number, right: Decimal | string | number): boolean => new Big(left).gt(right),
  gte: (left: Decimal | string | number, right: Decimal | string | number): boolean =>
    new Big(left).gte(right),
};

type Engine = (value: number) => { from(unit: string): { to(unit: string): Decimal } };

let engine: Engine | undefined;

// Made on first use: an app that never converts pays nothing at import.
function conversionEngine(): Engine {
  if (engine === undefined) {
    const measures: Record<string, Measure<string, string>> = {};
    for (const [dimension, units] of Object.entries(TABLE)) {
      const system = Object.fromEntries(
        Object.entries(units).map(([unit, { singular, plural, factor }]) => [
          unit,
          { name: { singular, plural }, to_anchor: factor },
        ]),
      );
      // One system, anchored on SI, keeps every pair exact: nothing goes through a second ratio.
      measures[dimension] = { systems: { all: system } };
    }
    engine = configureMeasurements(measures, decimalWrapper) as Engine;
  }
  return engine;
}

/** How many `to` are in one `from`, to more than 40 significant digits. Both must be simple units of one dimension. */
export function exactRatio(from: SimpleUnit, to: SimpleUnit): Decimal {
  return conversionEngine()(1).from(from).to(to);
}
