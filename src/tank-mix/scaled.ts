// Amounts that must add up as printed are shared out as whole numbers of a small unit, a power of ten, so that nothing
// is lost between the parts and the total.

/** A number as a whole number of units of `10 ^ exponent`. */
export interface Scaled {
  readonly units: number;
  readonly exponent: number;
}

// The powers of ten that a float holds exactly: a product or a quotient with one is rounded once.
// Stryker disable next-line ArrayDeclaration: for the time alone
const TENS = [
  1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15, 1e16, 1e17, 1e18, 1e19,
  1e20, 1e21, 1e22,
];

/** A positive number in whole units of its own last significant digit, of `digits` in all; the nearest such number. */
export function scaled(value: number, digits: number): Scaled {
  // Stryker disable all: the short way decides on the time alone; where it is not taken, text says the same
  const exponent = Math.floor(Math.log10(value)) - (digits - 1);
  const ten = TENS[Math.abs(exponent)];
  if (ten !== undefined) {
    const exact = exponent < 0 ? value * ten : value / ten;
    const units = Math.round(exact);
    // So far from a half that the one rounding cannot have moved it: text would say the same and takes longer.
    const plain = Math.abs(exact - Math.floor(exact) - 0.5) > 0.1;
    if (plain && units >= (TENS[digits - 1] as number) && units < (TENS[digits] as number))
      return { units, exponent };
  }
  // Stryker restore all
  // Stryker disable next-line StringLiteral: there are two parts always
  const [mantissa = "", power = ""] = value.toExponential(digits - 1).split("e");
  return { units: Number(mantissa.replace(".", "")), exponent: Number(power) - (digits - 1) };
}

/** The same number in whole units of `10 ^ exponent`, rounded down (`floor`) or up (`ceil`). */
export function rescaled(from: Scaled, exponent: number, round: "floor" | "ceil"): number {
  const shift = from.exponent - exponent;
  // Stryker disable next-line ConditionalExpression,EqualityOperator: a quotient by a part of one is the same, and rounded twice
  return shift >= 0 ? from.units * 10 ** shift : Math[round](from.units / 10 ** -shift);
}

/** Back to the float whose shortest print is that decimal. */
export function unscaled(units: number, exponent: number): number {
  const ten = TENS[-exponent];
  // Stryker disable next-line ConditionalExpression: text says the same and takes longer
  if (ten !== undefined) return units / ten;
  return Number(`${units}e${exponent}`);
}

/** `units × part / whole`, rounded to the nearest whole number; exact however large the product. */
export function shareOf(units: number, part: number, whole: number): number {
  // Stryker disable next-line ConditionalExpression: for the time alone
  if (part === whole) return units;
  const twice = 2n * BigInt(units) * BigInt(part) + BigInt(whole);
  return Number(twice / (2n * BigInt(whole)));
}
