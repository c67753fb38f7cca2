import { describe, expect, it } from "vitest";
import { ENGLISH } from "../../../src/worksheet/english.ts";
import { parseFormula } from "../../../src/worksheet/formula.ts";
import { formulaText } from "../../../src/worksheet/write.ts";

const written = (formula: string) =>
  formulaText(parseFormula(formula), (symbol) => `<${symbol}>`, ENGLISH.functions);

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
    expect(parseFormula("a + b * c")).toMatchObject({ operator: "+", right: { operator: "*" } });
    expect(parseFormula("a / b / c")).toMatchObject({ operator: "/", left: { operator: "/" } });
  });

  it.each(["", "a +", "(a", "a b", "a )", "* a", "a $ b", "ceil(a", "f(,)"])("refuses %j", (formula) => {
    expect(() => parseFormula(formula)).toThrow(expect.objectContaining({ code: "unreadable" }));
  });
});
