import type { Check } from "./check.js";
import { dimensionInWords, dimensionOf } from "./dimensions.js";
import type { Quantity } from "./types.js";

/** What an amount of spray, product or granules may be. */
export const AMOUNT: readonly ["volume", "mass"] = ["volume", "mass"];

/** Notes amounts that are not of one kind with the first: weights among volumes, or the reverse. */
export function amountsAgree(
  amounts: readonly (Quantity | undefined)[],
  placeOf: (at: number) => string,
  check: Check,
): void {
  const [first] = amounts;
  if (first === undefined) return;
  const kind = dimensionOf(first.unit);
  amounts.forEach((amount, at) => {
    if (amount === undefined || dimensionOf(amount.unit) === kind) return;
    check.fault(
      "wrong-dimension",
      "amounts-differ",
      placeOf(at),
      "{given} is {is}, but {first} is {other}. Use all volumes or all weights: oz (weight) and fl oz (volume) are different.",
      {
        given: { value: amount.value, unit: amount.unit },
        is: dimensionInWords(dimensionOf(amount.unit)),
        first: { value: first.value, unit: first.unit },
        other: dimensionInWords(kind),
      },
    );
  });
}
