import { describe, expect, it } from "vitest";
import { bagsFor, granulesCover, granulesFor, hopperLoads } from "../../../src/tank-mix/index.ts";
import { qty } from "../../../src/units/index.ts";
import * as working from "../../../src/working/index.ts";
import { refusesMisuse } from "../../helpers/bad-input.ts";
import { expectRefused } from "../../helpers/refusal.ts";
import { expectLinesTrue } from "../../helpers/working.ts";

const bed = { value: 120, unit: "ft2", of: "treated" } as const;

describe("granulesFor", () => {
  it("multiplies the rate by what it is per", () => {
    expect(granulesFor({ rate: qty(1.5, "lb/100ft2"), area: bed }).value).toBeCloseTo(1.8, 12);
    expect(granulesFor({ rate: qty(8, "oz/1000ft"), rowLength: qty(250, "ft") })).toEqual(qty(2, "oz"));
    expect(granulesFor({ rate: qty(20, "g/tree"), plants: 45 })).toEqual(qty(900, "g"));
    expect(granulesFor({ rate: qty(40, "g/1000plant"), plants: 250 })).toEqual(qty(10, "g"));
  });

  it("refuses a rate that is per something else than what is given, and the ground for the treated area", () => {
    const call = (input: object) => () => granulesFor(input as never);
    expectRefused(call({ rate: qty(20, "g/tree"), area: bed }), "wrong-dimension", "rate");
    expectRefused(call({ rate: qty(20, "lb/ac"), plants: 45 }), "wrong-dimension", "rate");
    expectRefused(call({ rate: qty(20, "lb/ac"), rowLength: qty(9, "ft") }), "wrong-dimension", "rate");
    expectRefused(call({ rate: qty(2, "fl_oz/1000ft2"), area: bed }), "wrong-dimension", "rate");
    expectRefused(call({ rate: qty(20, "lb/ac"), area: { ...bed, of: "ground" } }), "wrong-area", "area");
    expectRefused(call({ rate: qty(20, "lb/ac") }), "missing", "");
    expectRefused(call({ rate: qty(20, "lb/ac"), area: bed, plants: 4 }), "conflict", "plants");
    expectRefused(call({ rate: qty(20, "g/tree"), plants: 4.5 }), "out-of-range", "plants");
  });

  it("shows working that is true and ends at its own result", () => {
    for (const input of [
      { rate: qty(1.5, "lb/100ft2"), area: { value: 3, unit: "m2", of: "treated" } },
      { rate: qty(8, "oz/1000ft"), rowLength: qty(80, "m") },
      { rate: qty(40, "g/1000plant"), plants: 45 },
    ] as const) {
      const lines = working.granulesFor(input);
      expectLinesTrue(lines);
      expect(lines.at(-1)?.result).toEqual(granulesFor(input));
    }
  });

  refusesMisuse("granulesFor an area", granulesFor, { rate: qty(1.5, "lb/100ft2"), area: bed }, [
    "rate",
    "area",
  ]);
  refusesMisuse("granulesFor rows", granulesFor, { rate: qty(8, "oz/1000ft"), rowLength: qty(9, "ft") }, [
    "rate",
    "rowLength",
  ]);
  refusesMisuse("granulesFor plants", granulesFor, { rate: qty(8, "g/pot"), plants: 9 }, ["rate"]);
});

describe("granulesCover", () => {
  it("divides the weight by the rate", () => {
    expect(granulesCover({ amount: qty(50, "lb"), rate: qty(4, "lb/1000ft2") })).toEqual({
      value: 12_500,
      unit: "ft2",
      of: "treated",
    });
    expect(granulesCover({ amount: qty(25, "kg"), rate: qty(50, "kg/ha") })).toEqual({
      value: 5000,
      unit: "m2",
      of: "treated",
    });
  });

  it("shows working that is true and ends at its own result", () => {
    const input = { amount: qty(25, "kg"), rate: qty(4, "lb/1000ft2") };
    const lines = working.granulesCover(input);
    expectLinesTrue(lines);
    const { value, unit } = granulesCover(input);
    expect(lines.at(-1)?.result).toEqual({ value, unit });
  });

  refusesMisuse("granulesCover", granulesCover, { amount: qty(50, "lb"), rate: qty(4, "lb/1000ft2") }, [
    "amount",
    "rate",
  ]);
});

describe("hopperLoads", () => {
  it("fills the hopper until the product is spread", () => {
    expect(hopperLoads({ total: qty(45, "lb"), hopper: qty(20, "lb") })).toEqual({
      perDirection: qty(45, "lb"),
      fills: 3,
      lastFill: qty(5, "lb"),
    });
    expect(hopperLoads({ total: qty(5, "kg"), hopper: qty(20, "kg") })).toEqual({
      perDirection: qty(5, "kg"),
      fills: 1,
      lastFill: qty(5, "kg"),
    });
  });

  it("gives each of two directions its half", () => {
    expect(hopperLoads({ total: qty(90, "lb"), hopper: qty(20, "lb"), directions: 2 })).toEqual({
      perDirection: qty(45, "lb"),
      fills: 3,
      lastFill: qty(5, "lb"),
    });
  });

  it("comes out even without a fill for noise", () => {
    // 0.7 lb in 0.1 lb is 6.999999999999999 in floats, 0.3 in 0.1 is 2.9999999999999996, and 0.3 less 2 × 0.1 is not 0.1.
    expect(hopperLoads({ total: qty(0.7, "lb"), hopper: qty(0.1, "lb") })).toEqual({
      perDirection: qty(0.7, "lb"),
      fills: 7,
      lastFill: qty(0.1, "lb"),
    });
    expect(hopperLoads({ total: qty(0.1 * 3, "lb"), hopper: qty(0.1, "lb") }).fills).toBe(3);
    expect(hopperLoads({ total: qty(60, "lb"), hopper: qty(20, "lb") }).lastFill).toEqual(qty(20, "lb"));
  });

  it("refuses more fills than can be counted", () => {
    expectRefused(
      () => hopperLoads({ total: qty(1e60, "lb"), hopper: qty(1e-60, "lb") }),
      "out-of-range",
      "hopper",
      "too many times",
    );
  });

  it("shows working that is true and ends at the last fill", () => {
    for (const directions of [1, 2] as const) {
      const input = { total: qty(90, "lb"), hopper: qty(9, "kg"), directions };
      const lines = working.hopperLoads(input);
      expectLinesTrue(lines);
      expect(lines.at(-1)?.result).toEqual(hopperLoads(input).lastFill);
      expect(lines.at(-1)?.formula).toBe("perDirection - (fills - 1) * hopper");
    }
    // One fill is all of it; and noise in an even last fill shows no more than the hopper holds.
    for (const [total, hopper, formula] of [
      [qty(5, "lb"), qty(9, "lb"), "perDirection"],
      [qty(0.1 * 3, "lb"), qty(0.1, "lb"), "min(hopper, perDirection - (fills - 1) * hopper)"],
    ] as const) {
      const lines = working.hopperLoads({ total, hopper });
      expectLinesTrue(lines);
      expect(lines.at(-1)?.formula).toBe(formula);
    }
  });

  refusesMisuse("hopperLoads", hopperLoads, { total: qty(50, "lb"), hopper: qty(4, "lb"), directions: 2 }, [
    "total",
    "hopper",
  ]);
});

describe("bagsFor", () => {
  it("buys whole bags and says what is left", () => {
    expect(bagsFor({ total: qty(107, "lb"), bag: qty(40, "lb") })).toEqual({
      bags: 3,
      leftOver: qty(13, "lb"),
    });
    expect(bagsFor({ total: qty(120, "lb"), bag: qty(40, "lb") })).toEqual({
      bags: 3,
      leftOver: qty(0, "lb"),
    });
    expect(bagsFor({ total: qty(0.7, "kg"), bag: qty(100, "g") })).toEqual({
      bags: 7,
      leftOver: qty(0, "kg"),
    });
  });

  it("refuses more bags than can be counted", () => {
    expectRefused(
      () => bagsFor({ total: qty(1e60, "lb"), bag: qty(1e-60, "lb") }),
      "out-of-range",
      "bag",
      "too many times",
    );
  });

  it("shows working that is true and ends at what is left", () => {
    const input = { total: qty(107, "lb"), bag: qty(20, "kg") };
    const lines = working.bagsFor(input);
    expectLinesTrue(lines);
    expect(lines.at(-1)?.result).toEqual(bagsFor(input).leftOver);
    // 7 × 0.1 is more than 0.7 in floats, 3 × 0.1 too: nothing is left of either.
    for (const [total, bag] of [
      [0.7, 0.1],
      [0.3, 0.1],
      [120, 40],
    ] as const) {
      const even = working.bagsFor({ total: qty(total, "lb"), bag: qty(bag, "lb") }).at(-1);
      expect([even?.formula, even?.result]).toEqual(["max(0, bags * bag - total)", qty(0, "lb")]);
    }
  });

  refusesMisuse("bagsFor", bagsFor, { total: qty(50, "lb"), bag: qty(4, "lb") }, ["total", "bag"]);
});
