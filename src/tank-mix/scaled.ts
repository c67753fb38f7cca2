// Amounts that must add up as printed are shared out as whole numbers of a small unit, a power of ten, so that nothing
// is lost between the parts and the total.

/** A number as a whole number of units of `10 ^ exponent`. */
export interface Scaled {
  readonly units: number;
  readonly exponent: number;
}

/** A positive number in whole units of its own last significant digit, of `digits` in all; the nearest such number. */
export function scaled(value: number, digits: number): Scaled {
  const [mantissa = "", exponent = ""] = value.toExponential(digits - 1).split("e");
  return { units: Number(mantissa.replace(".", "")), exponent: Number(exponent) - (digits - 1) };
}

/** The same number in whole units of `10 ^ exponent`, rounded down (`floor`) or up (`ceil`). */
export function rescaled(from: Scaled, exponent: number, round: "floor" | "ceil"): number {
  const shift = from.exponent - exponent;
  return shift >= 0 ? from.units * 10 ** shift : Math[round](from.units / 10 ** -shift);
}

/** Back to the float whose shortest print is that decimal. */
export function unscaled(units: number, exponent: number): number {
  return Number(`${units}e${exponent}`);
}

/** `units × part / whole`, rounded to the nearest whole number; exact however large the product. */
export function shareOf(units: number, part: number, whole: number): number {
  const twice = 2n * BigInt(units) * BigInt(part) + BigInt(whole);
  return Number(twice / (2n * BigInt(whole)));
}
