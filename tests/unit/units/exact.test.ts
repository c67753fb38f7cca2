import { createRequire } from "node:module";
import Big from "big.js";
import { describe, expect, it } from "vitest";
import { decimal, decimalWrapper, exactRatio } from "../../../src/units/exact.ts";
import { Rational } from "../../helpers/rational.ts";

// convert-units does not export it, and silently computes in floats where a wrapper is not accepted.
const folder = createRequire(import.meta.url)
  .resolve("convert-units")
  .replace(/lib.*$/, "lib");
const { isWrapper } = createRequire(import.meta.url)(`${folder}/cjs/wrapper.js`) as {
  isWrapper(x: unknown): boolean;
};

describe("the decimal arithmetic given to convert-units", () => {
  it("is accepted by it, and would not be without any one of its methods", () => {
    expect(isWrapper(decimalWrapper)).toBe(true);
    for (const name of Object.keys(decimalWrapper)) {
      expect(isWrapper({ ...decimalWrapper, [name]: undefined }), name).toBe(false);
    }
  });

  it("computes in exact decimals, from numbers, text and decimals alike", () => {
    const { create, add, sub, mul, div } = decimalWrapper;
    for (const make of [(x: string) => x, (x: string) => Number(x), (x: string) => decimal(x)]) {
      expect(add(make("0.1"), make("0.2")).toString()).toBe("0.3");
      expect(sub(make("0.3"), make("0.1")).toString()).toBe("0.2");
      expect(mul(make("0.1"), make("0.2")).toString()).toBe("0.02");
      expect(div(make("1"), make("8")).toString()).toBe("0.125");
    }
    expect(create("0.45359237").toString()).toBe("0.45359237");
    expect(create(0.1).toString()).toBe("0.1");
  });

  it("compares", () => {
    const { lt, lte, gt, gte } = decimalWrapper;
    const signs = (a: string, b: string): boolean[] => [lt(a, b), lte(a, b), gt(a, b), gte(a, b)];
    expect(signs("1", "2")).toEqual([true, true, false, false]);
    expect(signs("2", "2")).toEqual([false, true, false, true]);
    expect(signs("3", "2")).toEqual([false, false, true, true]);
  });

  it("keeps its settings apart from an app's", () => {
    const before = Big.DP;
    Big.DP = 2;
    expect(decimal(1).div(decimal(3)).toString().length).toBeGreaterThan(50);
    Big.DP = before;
  });
});

describe("exactRatio", () => {
  it("agrees with rational arithmetic to 40 digits where the decimal does not end", () => {
    const pounds = Rational.fromDecimal("4.4482216152605").over(Rational.fromDecimal("0.64516"));
    const digits = (pounds.n * 10n ** 45n) / pounds.d;
    expect(exactRatio("psi", "kPa").times(decimal("1e45")).toFixed(0).slice(0, 40)).toBe(
      digits.toString().slice(0, 40),
    );
  });

  it("is exact where the decimal ends", () => {
    expect(exactRatio("ac", "m2").toString()).toBe("4046.8564224");
    expect(exactRatio("gal", "in3").toString()).toBe("231");
    expect(exactRatio("imp_gal", "mL").toString()).toBe("4546.09");
  });
});
