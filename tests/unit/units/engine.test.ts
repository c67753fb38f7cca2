import { afterEach, describe, expect, it, vi } from "vitest";
import { TWO_PRODUCTS } from "../../helpers/jobs.ts";

const GUIDE = '"What it needs" in docs/getting-started.md';

/** The library as an engine has it that lacks something; what is cached was cached by another. */
async function afresh() {
  vi.resetModules();
  return {
    ...(await import("../../../src/index.ts")),
    ...(await import("../../../src/schema/index.ts")),
  };
}

afterEach(() => {
  vi.unstubAllGlobals();
  vi.restoreAllMocks();
  vi.resetModules();
});

function without(holder: object, method: string): () => void {
  const was = Object.getOwnPropertyDescriptor(holder, method) as PropertyDescriptor;
  delete (holder as Record<string, unknown>)[method];
  return () => Object.defineProperty(holder, method, was);
}

describe("an engine that lacks a method", () => {
  it.each([
    ["Object.hasOwn", Object, "hasOwn"],
    ["Array.prototype.at", Array.prototype, "at"],
    ["String.prototype.replaceAll", String.prototype, "replaceAll"],
  ])("is said to lack %s, at the first use and where to read on", async (name, holder, method) => {
    const { convert, isSprayMathError, parsePlanInput, planInputSchema, qty, rectangleArea } = await afresh();
    const restore = without(holder, method);
    const faults: unknown[] = [];
    try {
      for (const use of [
        () => qty(1, "ft"),
        () => convert({ value: 1, unit: "ft" }, "m"),
        () => rectangleArea({ length: { value: 1, unit: "ft" }, width: { value: 1, unit: "ft" } }),
        () => parsePlanInput(TWO_PRODUCTS),
        () => planInputSchema().safeParse(TWO_PRODUCTS),
      ])
        try {
          use();
          faults.push(undefined);
        } catch (error) {
          faults.push(error);
        }
    } finally {
      restore();
    }
    for (const fault of faults) {
      expect(String(fault)).toContain(`no ${name}, which swath-to-spoon needs here`);
      expect(String(fault)).toContain(GUIDE);
      // No input is at fault, so nothing is to be shown beside a field.
      expect(isSprayMathError(fault)).toBe(false);
    }
    expect(qty(1, "ft")).toEqual({ value: 1, unit: "ft" });
  });
});

describe("an engine that computes big integers wrong", () => {
  it("is refused, since doses are measured by them", async () => {
    const { qty } = await afresh();
    const wrong = (value: unknown) => (typeof value === "bigint" ? 2.819131140549582e29 : Number(value));
    vi.stubGlobal("Number", new Proxy(Number, { apply: (_, __, [value]) => wrong(value) }));
    expect(() => qty(1, "ft")).toThrow(
      `no correct Number(BigInt), which swath-to-spoon needs here. ${GUIDE}`,
    );
    vi.unstubAllGlobals();
    expect(qty(1, "ft")).toEqual({ value: 1, unit: "ft" });
  });
});

describe("an engine without Intl", () => {
  it("plans a job of objects, and says what it lacks where text is read or written", async () => {
    const library = await afresh();
    vi.stubGlobal("Intl", undefined);
    expect(library.planApplication(TWO_PRODUCTS).loads.length).toBeGreaterThan(0);
    expect(library.parsePlanInput(TWO_PRODUCTS)).toEqual(TWO_PRODUCTS);
    const lacks = `This JavaScript engine has no Intl, which swath-to-spoon needs here. ${GUIDE} lists all.`;
    const text = { ...TWO_PRODUCTS, sprayer: { tank: "4 gal" } };
    expect(() => library.parsePlanInput(text)).toThrow(lacks);
    expect(() => library.planInputSchema().safeParse(text)).toThrow(lacks);
    expect(() => library.formatQuantity(library.qty(1, "ft"))).toThrow(lacks);
    expect(() => library.formatQuantity(library.qty(1, "ft"), { locale: "de" })).toThrow(lacks);
  });

  it("says so where only a part is there", async () => {
    const library = await afresh();
    vi.stubGlobal("Intl", {
      ...Intl,
      NumberFormat: Intl.NumberFormat,
    });
    const plan = library.planApplication(TWO_PRODUCTS);
    expect(() => library.worksheet(plan)).toThrow(/no Intl\.(PluralRules|ListFormat), which/);
  });
});
