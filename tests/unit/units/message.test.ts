import { describe, expect, it } from "vitest";
import { SprayMathError } from "../../../src/errors.ts";
import { messageOf, refusal, textOf } from "../../../src/units/message.ts";

describe("a figure in a message", () => {
  it("is a number of six digits at most", () => {
    expect(textOf(4.95)).toBe("4.95");
    expect(textOf(1 / 3)).toBe("0.333333");
    expect(textOf(43560)).toBe("43560");
    expect(textOf(-0)).toBe("0");
  });

  it("is a quantity with its unit as people write it", () => {
    expect(textOf({ value: 5, unit: "fl_oz/1000ft2" })).toBe("5 fl oz/1,000 sq ft");
    expect(textOf({ value: 2, unit: "oz" })).toBe("2 oz wt");
    expect(textOf({ value: 1.5, unit: "%" })).toBe("1.5%");
    expect(textOf({ value: 0.25, unit: "1" })).toBe("0.25");
    expect(textOf({ value: 3, unit: "loads" })).toBe("3 loads");
  });

  it("is text as it is, and a list with commas", () => {
    expect(textOf("Product A")).toBe("Product A");
    expect(textOf(["strip", "catch"])).toBe("strip, catch");
    expect(textOf([])).toBe("");
    expect(textOf(undefined)).toBe("");
  });
});

describe("a message", () => {
  it("has each figure at its place, once and never twice over", () => {
    const figures = { given: { value: 5, unit: "gal" }, limit: "{given}" };
    expect(messageOf("{given} of {limit}, {given}.", figures)).toBe("5 gal of {given}, 5 gal.");
  });

  it("keeps a place that has no figure, whatever objects inherit", () => {
    expect(messageOf("{limit} {constructor} {}", {})).toBe("{limit} {constructor} {}");
  });

  it("makes an error with its figures as data", () => {
    const figures = { limit: { value: 4, unit: "gal" } };
    const error = refusal("out-of-range", "at-most", "sprayer.tank", "Must be {limit} or less.", figures);
    expect(error).toBeInstanceOf(SprayMathError);
    const data = { code: "out-of-range", key: "at-most", path: "sprayer.tank", figures };
    expect(error.issues).toEqual([{ ...data, message: "Must be 4 gal or less." }]);
    expect(refusal("missing", "enter-plot", "", "Enter a plot.").figures).toEqual({});
  });
});
