import { decided } from "./decide.js";
import type { Quantity } from "./types.js";

// What a person reads off a tank, a jug or a tape.
const FIGURES = 3;
// Loads that share a mix differ by noise in the digits behind these, and read alike.
const SURE = 9;

const DOWN = 0;
const UP = 3;

/** An amount without the noise in the digits that nobody reads. */
export function withoutNoise<Q extends Quantity>(quantity: Q): Q {
  return { ...quantity, value: Number(quantity.value.toPrecision(SURE)) };
}

function rounded<Q extends Quantity>(quantity: Q, mode: typeof DOWN | typeof UP): Q {
  const { value } = withoutNoise(quantity);
  if (value === 0) return { ...quantity, value };
  const decimals = FIGURES - 1 - Math.floor(Math.log10(Math.abs(value)));
  return { ...quantity, value: decided(value).round(decimals, mode).toNumber() };
}

/** Three figures, not more than the amount: for product, and for whatever a person must not go over. */
export function atMost<Q extends Quantity>(quantity: Q): Q {
  return rounded(quantity, DOWN);
}

/** Three figures, not less than the amount: for mix, which more water only weakens. */
export function atLeast<Q extends Quantity>(quantity: Q): Q {
  return rounded(quantity, UP);
}
