import { describe, expect, it } from "vitest";
import { type MeasureOutInput, measureOut, suggestMeasures } from "../../../src/household/index.ts";
import { qty } from "../../../src/units/index.ts";
import { refusal } from "../../helpers/refusal.ts";

const ASK: MeasureOutInput = {
  amount: qty(0.17, "tsp"),
  tools: "us-spoons",
  rule: "never-over",
  load: qty(0.41, "gal"),
  tank: qty(1, "gal"),
};

describe("a load that is suggested, on a tank with marks", () => {
  it("is the nearest mark with which the dose can be measured, as the tank has it", () => {
    // 0.41463 tsp in a gallon: 0.25 tsp are in 0.603 gal, so 2.5 qt take 0.2591 and 1/4 teaspoon is 3.5 % under.
    const [batch] = suggestMeasures({ ...ASK, marks: qty(0.5, "qt") });
    expect(batch).toMatchObject({ kind: "batch", load: qty(2.5, "qt"), scoops: 1 });
    expect(batch?.message).toBe("Mix 2.5 qt instead of 0.41 gal.");
    if (batch?.kind !== "batch") throw new Error("a batch");
    expect(measureOut({ ...ASK, amount: batch.amount }).ok).toBe(true);
    expect(batch.times).toBeCloseTo(2.5 / 4 / 0.41, 12);
  });

  it("is the nearest of several, above or below", () => {
    // 0.25 tsp are in 0.603 gal, and 0.125 tsp in 0.301 gal: both marks will do. Of a load of 0.41 gal they are 1.5 and 0.74
    // times as much, and twice and half as much are as far away.
    const load = (marks: number[], gallons = 0.41): unknown => {
      const amount = qty((0.17 / 0.41) * gallons, "tsp");
      const asked = {
        ...ASK,
        amount,
        load: qty(gallons, "gal"),
        marks: marks.map((mark) => qty(mark, "gal")),
      };
      const batch = suggestMeasures(asked).find(({ kind }) => kind === "batch");
      return batch?.kind === "batch" && batch.load;
    };
    expect(load([0.303, 0.605])).toEqual(qty(0.303, "gal"));
    expect(load([0.605, 0.303])).toEqual(qty(0.303, "gal"));
    expect(load([0.303, 0.605], 0.5)).toEqual(qty(0.605, "gal"));
    expect(load([0.605, 0.303], 0.5)).toEqual(qty(0.605, "gal"));
  });

  it("is none where no mark will do", () => {
    const kinds = suggestMeasures({ ...ASK, marks: [qty(0.4, "gal")] }).map(({ kind }) => kind);
    expect(kinds).toEqual(["tool"]);
  });

  it("needs the load and the tank", () => {
    const { load: _, tank: __, ...alone } = ASK;
    const error = refusal(() => suggestMeasures({ ...alone, marks: qty(1, "pt") }));
    expect(error.issues.map(({ path, message }) => [path, message])).toEqual([
      ["load", "With the tank's marks, enter this too, such as 4 gal."],
      ["tank", "With the tank's marks, enter this too, such as 4 gal."],
    ]);
    expect(
      refusal(() => suggestMeasures({ ...ASK, load: qty(0, "gal"), marks: qty(1, "pt") })).issues,
    ).toHaveLength(1);
    expect(error.issues.map(({ code, key }) => `${code} ${key}`)).toEqual([
      "missing marks-of-a-load",
      "missing marks-of-a-load",
    ]);
    expect(refusal(() => suggestMeasures({ ...ASK, marks: qty(2, "gal") })).path).toBe("marks");
    const metric = { ...alone, amount: qty(1, "mL"), marks: qty(0.5, "L") };
    expect(refusal(() => suggestMeasures(metric)).message).toContain("such as 4 L.");
  });
});
