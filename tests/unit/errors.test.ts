import { runInNewContext } from "node:vm";
import { describe, expect, it } from "vitest";
import { errorOf, type Issue, isSprayMathError, joinPath, SprayMathError, shown } from "../../src/errors.ts";

const limit = { value: 4, unit: "gal" };
const issue = (path: string): Issue => ({
  code: "out-of-range",
  key: "at-most",
  path,
  figures: { limit },
  message: "Must be 4 gal or less.",
});

describe("SprayMathError", () => {
  it("has its own code for a key, no figures and itself for its only issue, unless it is given more", () => {
    const plain = new SprayMathError("missing", "plot", "Enter a plot.");
    expect(plain).toMatchObject({
      name: "SprayMathError",
      code: "missing",
      key: "missing",
      path: "plot",
      figures: {},
    });
    expect(plain.issues).toEqual([
      { code: "missing", key: "missing", path: "plot", figures: {}, message: "Enter a plot." },
    ]);
    const full = new SprayMathError("missing", "a", "One.", {
      key: "k",
      figures: { limit },
      issues: [issue("a")],
    });
    expect(full).toMatchObject({ key: "k", figures: { limit }, issues: [issue("a")] });
  });

  it("goes through JSON with all that it says", () => {
    const error = errorOf([issue("sprayer.tank"), issue("tools[0]")]);
    const sent = JSON.parse(JSON.stringify(error));
    expect(sent).toEqual({
      name: "SprayMathError",
      ...issue("sprayer.tank"),
      message: "Must be 4 gal or less. (2 errors.)",
      issues: [issue("sprayer.tank"), issue("tools[0]")],
    });
    expect(structuredClone(error.toJSON())).toEqual(sent);
    expect(isSprayMathError(sent)).toBe(true);
  });
});

describe("errorOf", () => {
  it("says a single fault in its own words, and of several how many there are", () => {
    expect(errorOf([issue("a")]).message).toBe("Must be 4 gal or less.");
    expect(errorOf([issue("a"), issue("b"), issue("c")]).message).toBe("Must be 4 gal or less. (3 errors.)");
  });
});

describe("isSprayMathError", () => {
  it("knows this copy's errors, those of its subclasses, and those of another copy of the library", () => {
    expect(isSprayMathError(new SprayMathError("missing", "", "Enter a plot."))).toBe(true);
    class Other extends SprayMathError {}
    expect(isSprayMathError(new Other("missing", "", "Enter a plot."))).toBe(true);
    const copied = Object.assign(new Error("Enter a plot."), {
      [Symbol.for("swath-to-spoon.SprayMathError")]: true,
    });
    expect(copied instanceof SprayMathError).toBe(false);
    expect(isSprayMathError(copied)).toBe(true);
  });

  it("knows one from another realm", () => {
    const foreign = runInNewContext(`
      const error = new Error("Enter a plot.");
      Object.defineProperty(error, Symbol.for("swath-to-spoon.SprayMathError"), { value: true });
      error
    `);
    expect(foreign instanceof Error).toBe(false);
    expect(isSprayMathError(foreign)).toBe(true);
    expect(isSprayMathError(runInNewContext(`({ name: "SprayMathError", issues: [] })`))).toBe(true);
  });

  it("takes nothing else for one", () => {
    const proxy = Proxy.revocable({}, {});
    proxy.revoke();
    const trap = {
      get name(): string {
        throw new Error("no name");
      },
    };
    const others = [
      undefined,
      null,
      5,
      "SprayMathError",
      () => 1,
      Symbol("x"),
      {},
      [],
      new Error("x"),
      proxy.proxy,
      trap,
    ];
    for (const other of [...others, { name: "SprayMathError" }, { name: "SprayMathError", issues: {} }])
      expect(isSprayMathError(other)).toBe(false);
  });
});

describe("shown", () => {
  it("tells text from a number, and names what is neither", () => {
    expect(shown("5")).toBe('"5"');
    expect(shown(5)).toBe("5");
    expect(shown(null)).toBe("null");
    expect(shown(undefined)).toBe("undefined");
    expect(shown([])).toBe("a list");
    expect(shown({})).toBe("an object");
    expect(shown(Object.create(null))).toBe("an object");
    expect(shown(() => 1)).toBe("a function");
    expect(shown(Symbol("x"))).toBe("Symbol(x)");
  });

  it("is short, whatever it shows", () => {
    for (const long of ["x".repeat(1e6), Symbol("x".repeat(1e6)), 10n ** 1000n])
      expect(shown(long).length).toBeLessThan(50);
  });
});

describe("joinPath", () => {
  it("puts a point before a field and none before a place in a list", () => {
    expect(joinPath("products[1]", "rate")).toBe("products[1].rate");
    expect(joinPath("products", "[1].rate")).toBe("products[1].rate");
    expect(joinPath("", "rate")).toBe("rate");
    expect(joinPath("rate", "")).toBe("rate");
  });
});
