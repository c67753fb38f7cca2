/**
 * The oracle: exact arithmetic on fractions of big integers, written apart from the library, against which its
 * floating-point results are measured in ulp.
 */
export class Rational {
  readonly n: bigint;
  readonly d: bigint;

  private constructor(n: bigint, d: bigint) {
    if (d === 0n) throw new Error("a denominator of zero");
    const sign = d < 0n ? -1n : 1n;
    const g = gcd(n < 0n ? -n : n, d < 0n ? -d : d) || 1n;
    this.n = (sign * n) / g;
    this.d = (sign * d) / g;
  }

  /** Exactly the fraction n/d. */
  static of(n: bigint | number, d: bigint | number = 1n): Rational {
    return new Rational(BigInt(n), BigInt(d));
  }

  /** Exactly the value of a float, every bit of it. */
  static fromNumber(x: number): Rational {
    if (!Number.isFinite(x)) throw new Error(`not finite: ${x}`);
    let exponent = 0;
    let m = x;
    while (!Number.isInteger(m)) {
      m *= 2;
      exponent++;
    }
    return new Rational(BigInt(m), 2n ** BigInt(exponent));
  }

  /** Exactly what decimal text says: "0.45359237". */
  static fromDecimal(text: string): Rational {
    const match = /^(-?)(\d+)(?:\.(\d+))?$/.exec(text);
    if (match === null) throw new Error(`not a decimal: ${text}`);
    const [, sign = "", whole = "0", part = ""] = match;
    return new Rational(BigInt(`${sign}${whole}${part}`), 10n ** BigInt(part.length));
  }

  plus(o: Rational): Rational {
    return new Rational(this.n * o.d + o.n * this.d, this.d * o.d);
  }
  minus(o: Rational): Rational {
    return new Rational(this.n * o.d - o.n * this.d, this.d * o.d);
  }
  times(o: Rational): Rational {
    return new Rational(this.n * o.n, this.d * o.d);
  }
  over(o: Rational): Rational {
    return new Rational(this.n * o.d, this.d * o.n);
  }
  abs(): Rational {
    return new Rational(this.n < 0n ? -this.n : this.n, this.d);
  }
  lessThan(o: Rational): boolean {
    return this.n * o.d < o.n * this.d;
  }
  /** The nearest float, near enough to print. */
  toNumber(): number {
    const scale = BigInt(Math.max(0, 60 - (this.n.toString(2).length - this.d.toString(2).length)));
    return Number((this.n << scale) / this.d) / 2 ** Number(scale);
  }
}

function gcd(a: bigint, b: bigint): bigint {
  let [x, y] = [a, b];
  while (y !== 0n) [x, y] = [y, x % y];
  return x;
}

/** The distance from a float to the exact value, in units of the float's last place. */
export function ulpError(actual: number, exact: Rational): number {
  return Rational.fromNumber(actual)
    .minus(exact)
    .abs()
    .over(Rational.fromNumber(ulp(exact.toNumber())))
    .toNumber();
}

/** The gap between floats at x. */
function ulp(x: number): number {
  const view = new DataView(new ArrayBuffer(8));
  view.setFloat64(0, Math.abs(x));
  view.setBigInt64(0, view.getBigInt64(0) + 1n);
  return view.getFloat64(0) - Math.abs(x);
}
