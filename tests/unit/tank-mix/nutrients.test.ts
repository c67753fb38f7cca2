import { describe, expect, it } from "vitest";
import { convertNutrient, fertilizerFor, nutrientsFrom, readGrade } from "../../../src/tank-mix/index.ts";
import { qty } from "../../../src/units/index.ts";
import * as working from "../../../src/working/index.ts";
import { refusesMisuse } from "../../helpers/bad-input.ts";
import { expectRefused, refusal } from "../../helpers/refusal.ts";
import { expectLinesTrue } from "../../helpers/working.ts";

describe("readGrade", () => {
  it.each([
    ["28-0-0", { N: 28, P2O5: 0, K2O: 0 }],
    [" 10 - 10 - 10 ", { N: 10, P2O5: 10, K2O: 10 }],
    ["20:10:10", { N: 20, P2O5: 10, K2O: 10 }],
    ["5–10.5–15", { N: 5, P2O5: 10.5, K2O: 15 }],
    ["21-0-0-24S", { N: 21, P2O5: 0, K2O: 0, S: 24 }],
    ["21-0-0+24s", { N: 21, P2O5: 0, K2O: 0, S: 24 }],
  ])("reads %s", (grade, content) => {
    expect(readGrade(grade)).toEqual(content);
  });

  it("reads phosphorus and potassium as elements where they are declared so", () => {
    expect(readGrade("14:12.7:0:11", { as: "elements" })).toEqual({ N: 14, P: 12.7, K: 0, S: 11 });
    expect(readGrade("14:12.7:0", { as: "oxides" })).toEqual({ N: 14, P2O5: 12.7, K2O: 0 });
  });

  it("refuses what is no grade", () => {
    for (const text of ["28", "28-0", "28/0/0", "a-b-c", "28-0-0-1-2", "-1-0-0", "1e2-0-0"])
      expectRefused(() => readGrade(text), "unreadable", "grade", "such as 28-0-0");
    expectRefused(() => readGrade("  "), "missing", "grade");
    expectRefused(() => readGrade(undefined as never), "missing", "grade");
    expectRefused(() => readGrade("0-0-0"), "missing", "grade", "such as 28-0-0");
    expectRefused(() => readGrade("60-30-20"), "out-of-range", "grade", "can't be 110% nutrients");
    expectRefused(() => readGrade("160-0-0"), "out-of-range", "grade.N");
    expectRefused(() => readGrade("28-0-0", { as: "atoms" } as never), "unknown-choice", "options.as");
  });
});

describe("fertilizerFor", () => {
  const one = qty(1, "lb/1000ft2");

  it("divides the nutrient by the content, and says what comes along", () => {
    expect(fertilizerFor({ nutrient: "N", amount: one, contains: readGrade("20-5-10") })).toEqual({
      product: qty(5, "lb/1000ft2"),
      brings: { N: one, P2O5: qty(0.25, "lb/1000ft2"), K2O: qty(0.5, "lb/1000ft2") },
    });
  });

  it("keeps the unit of the amount, whatever it is per", () => {
    for (const amount of [qty(1, "lb"), qty(9, "kg/ha"), qty(1, "oz/100ft"), qty(2, "g/tree")])
      expect(fertilizerFor({ nutrient: "K2O", amount, contains: { K2O: 50 } }).product).toEqual({
        value: amount.value * 2,
        unit: amount.unit,
      });
  });

  it("converts between the element that is asked for and the oxide that is declared", () => {
    // P is 0.436 of P2O5, K is 0.830 of K2O: Conversion Factors Needed for Common Fertilizer Calculations (Virginia Cooperative Extension,
    // SPES-201NP).
    const phosphorus = fertilizerFor({ nutrient: "P", amount: qty(20, "kg/ha"), contains: { P2O5: 46 } });
    expect(phosphorus.product.value / (20 / (0.46 * 0.436))).toBeCloseTo(1, 2);
    expect(Object.keys(phosphorus.brings)).toEqual(["P2O5"]);
    const potash = fertilizerFor({ nutrient: "K2O", amount: qty(20, "kg/ha"), contains: { K: 50 } });
    expect(potash.product.value / (20 / (0.5 / 0.83))).toBeCloseTo(1, 2);
  });

  it("refuses a fertilizer without the nutrient, declared twice, empty or more than whole", () => {
    const call = (nutrient: string, contains: object) => () =>
      fertilizerFor({ nutrient, amount: one, contains } as never);
    expectRefused(call("K2O", { N: 46 }), "conflict", "contains", "There's no K2O in this fertilizer.");
    expectRefused(call("K2O", { N: 46, K2O: 0 }), "conflict", "contains", "There's no K2O");
    expectRefused(
      call("N", { N: 10, P: 5, P2O5: 10 }),
      "conflict",
      "contains.P",
      "Enter P or P2O5, not both.",
    );
    expectRefused(call("N", {}), "missing", "contains", "such as 28-0-0");
    expectRefused(call("N", { N: 60, P2O5: 30, K2O: 20 }), "out-of-range", "contains", "can't be 110%");
    expectRefused(call("N", { N: -1 }), "out-of-range", "contains.N");
    expectRefused(call("N", { N: 101 }), "out-of-range", "contains.N");
    expectRefused(call("N", { N: 28, Q: 1 }), "unknown-field", "contains.Q");
    expectRefused(call("Q", { N: 28 }), "unknown-choice", "nutrient");
  });

  it("refuses an amount by volume", () => {
    expectRefused(
      () => fertilizerFor({ nutrient: "N", amount: qty(1, "gal/ac"), contains: { N: 28 } } as never),
      "wrong-dimension",
      "amount",
    );
  });

  it("shows working that is true, with a line for each nutrient that comes along", () => {
    for (const [nutrient, contains] of [
      ["N", { N: 20, P2O5: 5, K2O: 10 }],
      ["P", { N: 20, P2O5: 5, MgO: 10 }],
      ["SO3", { S: 24, N: 21, CaO: 0 }],
    ] as const) {
      const input = { nutrient, amount: one, contains };
      const lines = working.fertilizerFor(input);
      expectLinesTrue(lines);
      const { product, brings } = fertilizerFor(input);
      expect(lines.find(({ id }) => id === `tank-mix.fertilizer-${nutrient}`)?.result).toEqual(product);
      const along = lines.filter(({ formula }) => formula === "product * content");
      const { [nutrient]: _, ...others } = brings;
      expect(along.map(({ result }) => result)).toEqual(Object.values(others));
    }
  });

  refusesMisuse(
    "fertilizerFor",
    fertilizerFor as never,
    { nutrient: "N", amount: one, contains: { N: 28 } },
    ["amount", "contains"],
  );
});

describe("nutrientsFrom", () => {
  it("multiplies the fertilizer by what it contains, and leaves out what is not in it", () => {
    expect(nutrientsFrom({ product: qty(50, "kg"), contains: readGrade("18-46-0") })).toEqual({
      N: qty(9, "kg"),
      P2O5: qty(23, "kg"),
    });
  });

  it("takes back what fertilizerFor gives", () => {
    const contains = readGrade("16-4-8");
    const { product } = fertilizerFor({ nutrient: "P2O5", amount: qty(3, "g/plant"), contains });
    expect(nutrientsFrom({ product, contains }).P2O5).toEqual(qty(3, "g/plant"));
  });

  it("shows working that is true", () => {
    const input = { product: qty(50, "kg"), contains: readGrade("18-46-0") };
    const lines = working.nutrientsFrom(input);
    expectLinesTrue(lines);
    expect(lines.at(-1)?.result).toEqual(nutrientsFrom(input).P2O5);
  });

  refusesMisuse("nutrientsFrom", nutrientsFrom as never, { product: qty(5, "lb"), contains: { N: 28 } }, [
    "product",
    "contains",
  ]);
});

describe("convertNutrient", () => {
  // To three figures, from Conversion Factors Needed for Common Fertilizer Calculations (Virginia Cooperative Extension, SPES-201NP), and
  // 1/2.5 for sulfur, from LMI AB (Sweden), Recalculate the nutrient content from oxides to pure substance.
  it.each([
    ["P2O5", "P", 0.436],
    ["K2O", "K", 0.83],
    ["CaO", "Ca", 0.715],
    ["MgO", "Mg", 0.603],
    ["SO3", "S", 0.4],
  ] as const)("turns %s into %s", (oxide, element, factor) => {
    const amount = qty(1, "kg/ha");
    const converted = convertNutrient({ amount, from: oxide, to: element });
    expect(converted.unit).toBe("kg/ha");
    expect(Math.abs(converted.value - factor)).toBeLessThanOrEqual(0.0005);
    const back = convertNutrient({ amount: converted, from: element, to: oxide });
    expect(back.value).toBeCloseTo(1, 14);
  });

  it("refuses two nutrients that are not one", () => {
    for (const [from, to] of [
      ["P", "K2O"],
      ["N", "P"],
      ["N", "N"],
      ["P", "P"],
    ] as const)
      expectRefused(
        () => convertNutrient({ amount: qty(1, "kg"), from, to }),
        "conflict",
        "to",
        `${from} and ${to} aren't the same nutrient.`,
      );
  });

  it("shows working that is true and ends at its own result", () => {
    for (const [from, to] of [
      ["P", "P2O5"],
      ["K2O", "K"],
    ] as const) {
      const input = { amount: qty(20, "kg/ha"), from, to };
      const lines = working.convertNutrient(input);
      expectLinesTrue(lines);
      expect(lines.at(-1)?.result).toEqual(convertNutrient(input));
    }
  });

  refusesMisuse(
    "convertNutrient",
    convertNutrient as never,
    { amount: qty(1, "kg"), from: "P", to: "P2O5" },
    ["amount"],
  );
});

describe("a form that isn't filled in", () => {
  it("asks for what is missing, and for nothing else", () => {
    const pathsOf = (work: () => unknown) => refusal(work).issues.map(({ path }) => path);
    const amount = qty(1, "lb/1000ft2");
    expect(pathsOf(() => convertNutrient({ amount, from: "P" } as never))).toEqual(["to"]);
    expect(pathsOf(() => convertNutrient({ amount, to: "P" } as never))).toEqual(["from"]);
    expect(pathsOf(() => fertilizerFor({ nutrient: "N", amount } as never))).toEqual(["contains"]);
    expect(pathsOf(() => fertilizerFor({ amount, contains: { N: 20 } } as never))).toEqual(["nutrient"]);
  });
});
