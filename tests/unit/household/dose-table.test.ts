import { describe, expect, it } from "vitest";
import { doseTable, evenSteps } from "../../../src/household/index.ts";
import { qty, type TreatedArea } from "../../../src/units/index.ts";
import { faultOf } from "./fault.ts";

const treated = (value: number, unit: TreatedArea["unit"]): TreatedArea => ({ value, unit, of: "treated" });

describe("doseTable", () => {
  it("gives fluid ounces per 100 gallons as spoons per gallon", () => {
    const [row] = doseTable({
      rates: [qty(32, "fl_oz/100gal")],
      sizes: [qty(25, "gal"), qty(1, "gal")],
      tools: "us-cups-and-spoons",
      rule: "never-over",
    });
    expect(row?.cells.map(({ amount }) => amount)).toEqual([qty(8, "fl_oz"), qty(0.32, "fl_oz")]);
    // 1.92 tsp: the handbook's "2 tsp" is over the rate.
    expect(row?.cells[1]?.dose).toMatchObject({ ok: true, scoops: 4 });
    expect(row?.cells[0]?.dose).toMatchObject({ ok: true, scoops: 1, errorPercent: 0 });
  });

  it("gives pints per acre as spoons per 1,000 square feet", () => {
    const rows = doseTable({
      rates: evenSteps({ first: qty(1, "pt/ac"), last: qty(4, "pt/ac"), step: qty(1, "pt/ac") }),
      sizes: [treated(1000, "ft2")],
      tools: "us-spoons",
      rule: "never-over",
    });
    expect(rows.map(({ rate }) => rate.value)).toEqual([1, 2, 3, 4]);
    for (const { rate, cells } of rows) {
      // A pint is 96 teaspoons, an acre 43,560 square feet.
      const spoons = (rate.value * 96) / 43.56;
      const dose = cells[0]?.dose;
      expect(dose?.ok).toBe(true);
      if (dose?.ok) {
        expect(dose.measured.value * 96).toBeLessThanOrEqual(spoons);
        expect(dose.measured.value * 96).toBeGreaterThan(spoons - 0.125);
      }
    }
  });

  it("weighs rates by weight", () => {
    const [row] = doseTable({
      rates: [qty(2, "lb/100gal")],
      sizes: [qty(25, "gal")],
      tools: "us-scales",
      rule: "never-over",
    });
    expect(row?.cells[0]).toMatchObject({ amount: qty(0.5, "lb"), dose: { ok: true, errorPercent: 0 } });
  });

  it("keeps a cell that cannot be measured, with what would do", () => {
    const [row] = doseTable({
      rates: [qty(1, "fl_oz/100gal")],
      sizes: [qty(1, "gal")],
      tools: "us-spoons",
      rule: "never-over",
    });
    expect(row?.cells[0]?.dose).toMatchObject({ ok: false, issue: { code: "not-measurable" } });
  });

  it("says of which size a dose can't be measured", () => {
    const [row] = doseTable({
      rates: [qty(1, "fl_oz/100gal")],
      sizes: [qty(25, "gal"), qty(1, "gal")],
      tools: "us-spoons",
      rule: "never-over",
    });
    // A quarter of a fluid ounce is a teaspoon and a half.
    expect(row?.cells.map(({ dose }) => (dose.ok ? dose.scoops : dose.issue.path))).toEqual([2, "sizes[1]"]);
  });

  const good = {
    rates: [qty(1, "pt/ac")],
    sizes: [treated(1, "ac")],
    tools: "us-household",
    rule: "never-over",
  };
  it.each([
    ["no input", undefined, "missing "],
    ["no rates", { ...good, rates: [] }, "too-few rates"],
    ["no sizes", { ...good, sizes: [] }, "too-few sizes"],
    ["a bare number for a rate", { ...good, rates: [2] }, "not-a-quantity rates[0]"],
    ["an amount for a rate", { ...good, rates: [qty(1, "pt")] }, "wrong-dimension rates[0]"],
    ["a rate of nothing", { ...good, rates: [qty(0, "pt/ac")] }, "out-of-range rates[0]"],
    ["a volume for a rate per area", { ...good, sizes: [qty(1, "gal")] }, "wrong-dimension sizes[0]"],
    ["an area for a rate per volume", { ...good, rates: [qty(1, "pt/100gal")] }, "wrong-dimension sizes[0]"],
    ["ground area", { ...good, sizes: [{ value: 1, unit: "ac", of: "ground" }] }, "wrong-area sizes[0]"],
    ["an area of nothing", { ...good, sizes: [treated(0, "ac")] }, "out-of-range sizes[0]"],
    ["spoons for a weight", { ...good, rates: [qty(1, "oz/ac")] }, "wrong-dimension tools"],
    ["an unknown rule", { ...good, rule: "roughly" }, "unknown-choice rule"],
    ["a limit over 50", { ...good, limitPercent: 60 }, "out-of-range limitPercent"],
    [
      "amounts out of reach",
      { ...good, rates: [qty(1e300, "pt/ac")], sizes: [treated(1e300, "ac")] },
      "not-finite rates[0]",
    ],
  ])("throws at %s", (_, input, fault) => {
    expect(faultOf(() => doseTable(input as never))).toBe(fault);
  });
});

describe("evenSteps", () => {
  it("counts in exact decimals, the last among them where a step ends on it", () => {
    const tenths = evenSteps({ first: qty(0.1, "pt/ac"), last: qty(1, "pt/ac"), step: qty(0.1, "pt/ac") });
    expect(tenths.map(({ value }) => value)).toEqual([0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1]);
    const odd = evenSteps({ first: qty(1, "gal"), last: qty(5, "gal"), step: qty(3, "gal") });
    expect(odd.map(({ value }) => value)).toEqual([1, 4]);
  });

  it("begins or ends at nothing, and below it", () => {
    const values = (first: number, last: number): number[] =>
      evenSteps({ first: qty(first, "L"), last: qty(last, "L"), step: qty(1, "L") }).map(
        ({ value }) => value,
      );
    expect(values(0, 2)).toEqual([0, 1, 2]);
    expect(values(-1, 0)).toEqual([-1, 0]);
  });

  it("takes units of one dimension", () => {
    expect(evenSteps({ first: qty(1, "gal"), last: qty(2, "gal"), step: qty(2, "qt") })).toEqual([
      qty(1, "gal"),
      qty(1.5, "gal"),
      qty(2, "gal"),
    ]);
  });

  it.each([
    [
      "a range upside down",
      { first: qty(2, "gal"), last: qty(1, "gal"), step: qty(1, "gal") },
      "out-of-range last",
    ],
    ["no step", { first: qty(1, "gal"), last: qty(2, "gal"), step: qty(0, "gal") }, "out-of-range step"],
    [
      "a step below nothing",
      { first: qty(1, "gal"), last: qty(2, "gal"), step: qty(-1, "gal") },
      "out-of-range step",
    ],
    [
      "too many steps",
      { first: qty(1, "gal"), last: qty(2, "gal"), step: qty(0.0001, "gal") },
      "out-of-range step",
    ],
    [
      "a weight among volumes",
      { first: qty(1, "gal"), last: qty(2, "lb"), step: qty(1, "gal") },
      "wrong-dimension last",
    ],
    ["nothing", undefined, "missing "],
    ["no first", { last: qty(2, "gal"), step: qty(1, "gal") }, "missing first"],
  ])("throws at %s", (_, range, fault) => {
    expect(faultOf(() => evenSteps(range as never))).toBe(fault);
  });

  it("makes a thousand steps, and no more", () => {
    const count = (last: number): number =>
      evenSteps({ first: qty(1, "mL"), last: qty(last, "mL"), step: qty(1, "mL") }).length;
    expect(count(1000)).toBe(1000);
    expect(faultOf(() => count(1001))).toBe("out-of-range step");
  });
});
