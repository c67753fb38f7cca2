import { describe, expect, it } from "vitest";
import { formulaText, parseFormula } from "../../../src/worksheet/lines/formula.ts";
import { ENGLISH_WORDS } from "../../../src/worksheet/words/english.ts";

const written = (formula: string) =>
  formulaText(parseFormula(formula), (symbol) => `<${symbol}>`, ENGLISH_WORDS.functions);

describe("a formula, taken apart and written", () => {
  it.each([
    ["used / (swath * distance)", "<used> ÷ (<swath> × <distance>)"],
    ["a - b - c", "<a> − <b> − <c>"],
    ["x1 + 2.5 * x2 ^ 2", "<x1> + <2.5> × <x2>^<2>"],
    ["ceil(total / fill)", "round up(<total> ÷ <fill>)"],
    ["floor(min(most, pieces))", "round down(smallest of(<most>; <pieces>))"],
    ["pi * sqrt(r)", "π × √(<r>)"],
  ])("%s", (formula, text) => {
    expect(written(formula)).toBe(text);
  });

  it("keeps to the usual order of operations", () => {
    expect(parseFormula("a + b * c")).toMatchObject({
      kind: "sum",
      rest: [{ sign: "+", node: { operator: "*" } }],
    });
    expect(parseFormula("a / b / c")).toMatchObject({ operator: "/", left: { operator: "/" } });
  });

  it("takes a sum of 100,000 terms, as a job of many plots is", () => {
    const formula = Array.from({ length: 100_000 }, (_, i) => `x${i}`).join(" + ");
    expect(written(formula).split(" + ")).toHaveLength(100_000);
  });

  it("puts brackets round a number that has a sign or is to be squared", () => {
    const values: Record<string, string> = { a: "5 ft", b: "-2 ft", c: "3" };
    const text = (formula: string) =>
      formulaText(parseFormula(formula), (leaf) => values[leaf] ?? leaf, ENGLISH_WORDS.functions);
    expect(text("a - b")).toBe("5 ft − (-2 ft)");
    expect(text("b - a")).toBe("-2 ft − 5 ft");
    expect(text("a * b")).toBe("5 ft × (-2 ft)");
    expect(text("a^2 + c^2")).toBe("(5 ft)^2 + 3^2");
    expect(text("b^2")).toBe("(-2 ft)^2");
  });

  it.each(["", "a +", "(a", "a b", "a )", "* a", "a $ b", "ceil(a", "f(,)"])("refuses %j", (formula) => {
    expect(() => parseFormula(formula)).toThrow(expect.objectContaining({ code: "unreadable" }));
  });
});
