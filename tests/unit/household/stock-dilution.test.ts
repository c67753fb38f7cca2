import { describe, expect, it } from "vitest";
import { measureOut, type StockDilutionInput, stockDilution, toolSet } from "../../../src/household/index.ts";
import { qty, valueIn } from "../../../src/units/index.ts";
import { stockDilution as stockDilutionLines } from "../../../src/working/index.ts";
import { HOUSEHOLD_WORDS } from "../../../src/worksheet/words/household.ts";
import { expectLinesTrue } from "../../helpers/working.ts";
import { faultOf } from "./fault.ts";

const permitted = { rule: "never-over", labelPermitsDilution: true } as const;

describe("stockDilution", () => {
  it("measures a twentieth of a teaspoon with spoons and cups", () => {
    const input = { ...permitted, amount: qty(0.05, "tsp"), tools: "us-cups-and-spoons" } as const;
    expect(measureOut(input).ok).toBe(false);
    const stock = stockDilution(input);
    if (!stock.ok) throw new Error(stock.issue.message);
    // An eighth of a teaspoon in a cup, 48 teaspoons; two fifths of it, 19.2 teaspoons, are the dose. A third of a cup and
    // a tablespoon, 19 teaspoons, are 1 % under it: close enough with two scoops.
    expect(stock.product.amount).toEqual(qty(0.125, "tsp"));
    expect([stock.stock, stock.taken]).toEqual([qty(1, "cup"), qty(19 / 48, "cup")]);
    expect(stock.left.value).toBeCloseTo(stock.stock.value - stock.taken.value, 12);
    expect(stock.measured.value).toBeLessThanOrEqual(0.05);
    expect(
      stock.take.reduce((sum, { amount }) => sum + valueIn(amount as never, stock.stock.unit as never), 0),
    ).toBeCloseTo(stock.taken.value, 12);
  });

  it("weighs a tenth of a gram from a stock in a cylinder", () => {
    const tools = [...toolSet("scales"), ...toolSet("cylinders")];
    const stock = stockDilution({ ...permitted, amount: qty(0.1, "g"), tools });
    if (!stock.ok) throw new Error(stock.issue.message);
    // The scale's least is 2 g: a twentieth of the stock is the dose.
    expect(stock.product).toMatchObject({ amount: qty(2, "g"), tool: { name: "200 g scale" } });
    expect(stock.taken.value).toBe(stock.stock.value / 20);
    expect([stock.measured, stock.errorPercent]).toEqual([qty(0.1, "g"), 0]);
    // Never stronger than one in ten: 2 g in 20 mL or more.
    expect(valueIn(stock.stock, "mL")).toBeGreaterThanOrEqual(20);
  });

  it("keeps to the rule on the other side", () => {
    const ask = { ...permitted, amount: qty(0.037, "tsp"), tools: "us-household" } as const;
    const under = stockDilution({ ...ask, rule: "never-under" });
    const over = stockDilution(ask);
    expect(under.ok && under.error.value).toBeGreaterThanOrEqual(0);
    expect(over.ok && over.error.value).toBeLessThanOrEqual(0);
  });

  it("offers no stock of which less than one spoon would be taken", () => {
    // A teaspoon in a gallon, 768 teaspoons: a thousandth of a teaspoon is in less than one of them.
    const tools = [
      { name: "teaspoon", capacity: qty(1, "tsp") },
      { name: "jug", capacity: qty(1, "gal") },
    ];
    expect(stockDilution({ ...permitted, amount: qty(0.001, "tsp"), tools }).ok).toBe(false);
    expect(stockDilution({ ...permitted, amount: qty(0.002, "tsp"), tools, limitPercent: 50 }).ok).toBe(true);
  });

  it("refuses where the label does not permit it, and says so", () => {
    const stock = stockDilution({
      amount: qty(0.05, "tsp"),
      tools: "us-cups-and-spoons",
      rule: "never-over",
      labelPermitsDilution: false,
    });
    expect(stock).toMatchObject({ ok: false, issue: { code: "not-measurable" } });
    expect(!stock.ok && stock.issue.message).toContain("The label must permit diluting this product first.");
  });

  it("makes the stock up to the highest mark, where the rim is none", () => {
    const tools = [
      { name: "teaspoon", capacity: qty(5, "mL") },
      { name: "jar", capacity: qty(100, "mL"), graduation: qty(30, "mL") },
    ];
    const stock = stockDilution({ ...permitted, amount: qty(4, "mL"), tools, limitPercent: 50 });
    expect(stock.ok && stock.stock).toEqual(qty(90, "mL"));
  });

  it("says in one sentence why there is none, and what would do", () => {
    const said = (change: object): unknown => {
      const stock = stockDilution({ ...permitted, amount: qty(2, "gal"), tools: "us-household", ...change });
      return !stock.ok && stock.issue;
    };
    expect(said({})).toEqual({
      code: "not-measurable",
      key: "no-stock",
      path: "amount",
      figures: { amount: qty(2, "gal"), limit: qty(5, "%") },
      message:
        "These tools can't measure 2 gal within 5%, even diluted. Use a measure larger than 2 gal and a container 10 times that size.",
    });
    expect(said({ labelPermitsDilution: false })).toEqual({
      code: "not-measurable",
      key: "dilution-not-permitted",
      path: "amount",
      figures: {},
      message: "The label must permit diluting this product first. Use a finer tool, or mix a larger batch.",
    });
  });

  it("takes the smallest fill that is more than the dose, and the smallest vessel that does as well", () => {
    // Half a milliliter: a teaspoon is more; ten times as much and better is a cup of 100 mL, and one of 200 mL is no truer.
    const tools = [
      { name: "large cup", capacity: qty(200, "mL") },
      { name: "tablespoon", capacity: qty(15, "mL") },
      { name: "cup", capacity: qty(100, "mL") },
      { name: "teaspoon", capacity: qty(5, "mL") },
    ];
    const stock = stockDilution({ ...permitted, amount: qty(0.5, "mL"), tools });
    if (!stock.ok) throw new Error(stock.issue.message);
    expect([stock.product.tool.name, stock.makeUpIn.name, stock.taken, stock.scoops]).toEqual([
      "teaspoon",
      "cup",
      qty(10, "mL"),
      2,
    ]);
    expect([stock.measured, stock.error, stock.errorPercent, stock.left]).toEqual([
      qty(0.5, "mL"),
      qty(0, "mL"),
      0,
      qty(90, "mL"),
    ]);
  });

  it("refuses an amount that is no smaller than every fill, and one without a vessel for the stock", () => {
    expect(stockDilution({ ...permitted, amount: qty(2, "gal"), tools: "us-household" }).ok).toBe(false);
    expect(stockDilution({ ...permitted, amount: qty(0.1, "g"), tools: "scales" }).ok).toBe(false);
    const spoon = [{ name: "spoon", capacity: qty(1, "mL") }];
    expect(stockDilution({ ...permitted, amount: qty(0.1, "mL"), tools: spoon }).ok).toBe(false);
  });

  it("wants to be told whether the label permits it", () => {
    const ask = { amount: qty(0.05, "tsp"), tools: "us-spoons", rule: "never-over" };
    expect(faultOf(() => stockDilution(ask as never))).toBe("missing labelPermitsDilution");
    expect(faultOf(() => stockDilution({ ...ask, labelPermitsDilution: 1 } as never))).toBe(
      "not-a-quantity labelPermitsDilution",
    );
    expect(
      faultOf(() => stockDilution({ ...ask, amount: undefined, labelPermitsDilution: true } as never)),
    ).toBe("missing amount");
    expect(faultOf(() => stockDilution(null as never))).toBe("missing ");
  });

  const asks: StockDilutionInput[] = [
    { ...permitted, amount: qty(0.05, "tsp"), tools: "us-cups-and-spoons" },
    { ...permitted, amount: qty(0.004, "oz"), tools: [...toolSet("scales"), ...toolSet("cylinders")] },
    { ...permitted, amount: qty(0.002, "fl_oz"), tools: [...toolSet("syringes"), ...toolSet("cylinders")] },
  ];
  it.each(asks)("shows working that is true, with words for every term: $amount", (ask) => {
    const lines = stockDilutionLines(ask);
    expectLinesTrue(lines);
    const stock = stockDilution(ask);
    expect(lines.at(-1)?.result).toEqual(stock.ok && stock.measured);
    for (const line of lines.filter(({ id }) => id !== "units.convert")) {
      expect(Object.keys(line.terms)).toEqual(Object.keys(HOUSEHOLD_WORDS[line.id]?.terms ?? {}));
    }
  });

  it("has no working where there is no stock", () => {
    expect(stockDilutionLines({ ...permitted, amount: qty(0.1, "g"), tools: "scales" })).toEqual([]);
  });
});
