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

  /** A tool that is filled whole, or one with marks 1 mL apart. */
  const whole = (mL: number) => ({ name: `${mL} mL`, capacity: qty(mL, "mL") });
  const marked = (mL: number, least = 1) => ({
    ...whole(mL),
    graduation: qty(1, "mL"),
    least: qty(least, "mL"),
  });
  it.each([
    // Of all that do the least product, in whichever order the tools are: 5 mL in 100 mL, of which two spoons.
    [0.5, [whole(10), whole(5), whole(1000), whole(100)], [5, 100, 10]],
    // 0.6 mL in 100 mL: 83.3 mL, of which 16 scoops measure 80, is too far off.
    [0.5, [whole(0.6), whole(5), whole(100)], [5, 100, 10]],
    // The smaller of two vessels that do as well, in whichever order.
    [0.5, [whole(5), whole(100), whole(200)], [5, 100, 10]],
    // More than 125 mL of what is 100 mL cannot be taken.
    [0.5, [whole(0.4), whole(25), whole(100)], undefined],
    // The full mark of 10 mL, with 9 mL in 90 mL of the stock.
    [9, [marked(10), whole(100)], [10, 100, 90]],
    [45, [marked(60), whole(500)], [50, 500, 450]],
    [18, [marked(20), whole(200)], [20, 200, 180]],
    // 2 mL are below the least that it reads.
    [1.5, [marked(10, 4), whole(100)], [5, 100, 30]],
    // It has no mark at 10 mL.
    [6, [marked(8), whole(100)], undefined],
    // 5 mL in 20 mL are stronger than one part in ten.
    [1.25, [whole(5), whole(20)], undefined],
  ])("makes %f mL from product, in a vessel, of which so much: %#", (mL, tools, wanted) => {
    const stock = stockDilution({ ...permitted, amount: qty(mL, "mL"), tools, limitPercent: 1 });
    expect(stock.ok ? [stock.product.amount, stock.stock, stock.taken] : undefined).toEqual(
      wanted?.map((each) => qty(each, "mL")),
    );
  });

  it("takes the truer of two stocks that take as many scoops, though it is larger", () => {
    // 5 mL hold 0.73 mL in 14.6 mL of 100 mL and in 17.52 mL of 120 mL: 14.8 mL would be over, so one spoon of 14.5 mL is
    // 0.68 % under, and one of 17.5 mL 0.11 %.
    const tools = [5, 14.5, 17.5, 100, 120].map(whole);
    const stock = stockDilution({ ...permitted, amount: qty(0.73, "mL"), tools });
    expect(stock.ok && [stock.stock, stock.taken, stock.scoops]).toEqual([
      qty(120, "mL"),
      qty(17.5, "mL"),
      1,
    ]);
    // Past what is close enough too; 2 % are the limit of that.
    const far = [5, 14, 17, 100, 120].map(whole);
    const farther = stockDilution({ ...permitted, amount: qty(0.73, "mL"), tools: far });
    expect(farther.ok && [farther.stock, farther.taken]).toEqual([qty(120, "mL"), qty(17, "mL")]);
  });

  it("takes the first of two vessels that are alike", () => {
    const tools = [whole(5), { ...whole(100), name: "left cup" }, { ...whole(100), name: "right cup" }];
    const stock = stockDilution({ ...permitted, amount: qty(0.5, "mL"), tools });
    expect(stock.ok && stock.makeUpIn.name).toBe("left cup");
  });

  // 5 mL in 70 mL: each milliliter is in 14 mL. In floats, there and back, these are 1e-16 off.
  it.each([0.7, 0.83, 0.87, 0.91])(
    "measures the amount itself where the part is taken exactly: %f mL",
    (mL) => {
      const amount = qty(mL, "mL");
      const tools = [whole(5), whole(70), { name: "part", capacity: qty((mL * 1400) / 100, "mL") }];
      const stock = stockDilution({ ...permitted, amount, tools, closeEnoughPercent: 0, limitPercent: 0.1 });
      expect(stock).toMatchObject({
        product: { amount: qty(5, "mL") },
        measured: amount,
        error: qty(0, "mL"),
        errorPercent: 0,
      });
    },
  );

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

  it("names the line that turns the product's unit into the amount's", () => {
    const lines = stockDilutionLines({
      ...permitted,
      amount: qty(0.002, "fl_oz"),
      tools: asks[2]?.tools as never,
    });
    expect(lines[0]).toMatchObject({
      id: "units.convert",
      about: "household.stock.strength.product",
      terms: { value: qty(0.1, "mL") },
    });
  });

  it("has no working where there is no stock", () => {
    expect(stockDilutionLines({ ...permitted, amount: qty(0.1, "g"), tools: "scales" })).toEqual([]);
  });
});
