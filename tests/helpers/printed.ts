import { Rational } from "./rational.ts";

/** Exactly the decimal that a number prints as: what a person reads, and what must add up. */
export function printed(value: number): Rational {
  const [mantissa = "0", exponent = "0"] = String(value).split("e");
  const power = Number(exponent);
  const ten = Rational.of(10n ** BigInt(Math.abs(power)));
  const digits = Rational.fromDecimal(mantissa);
  return power < 0 ? digits.over(ten) : digits.times(ten);
}
