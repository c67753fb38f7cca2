import { describe, expect, it } from "vitest";
import {
  type BatchInput,
  comparePlans,
  type PlanInput,
  planApplication,
  planMix,
  planSensitivity,
  readPlan,
} from "../../../src/plan/index.ts";
import { qty } from "../../../src/units/index.ts";
import { planApplication as stepsOf } from "../../../src/working/index.ts";
import { TWO_PRODUCTS } from "../../helpers/jobs.ts";
import { refusal } from "../../helpers/refusal.ts";
import { expectLinesTrue } from "../../helpers/working.ts";

const MARKS = { ...TWO_PRODUCTS.sprayer, marks: qty(0.25, "gal") };
const planned = (change: Partial<PlanInput>) =>
  planApplication({ ...TWO_PRODUCTS, sprayer: MARKS, ...change });
const POTS: BatchInput = {
  size: { kind: "count", count: qty(300, "pot"), each: qty(4, "fl_oz") },
  sprayer: { tank: qty(4, "gal"), marks: qty(1, "qt") },
  products: [{ name: "Product A", form: "liquid", rate: qty(8, "fl_oz/100gal") }],
  tools: "us-spoons",
};

describe("a job whose tank has marks", () => {
  it("takes more mix for them, at the same strength, and says what that would cover", () => {
    const plain = planApplication(TWO_PRODUCTS);
    const plan = planned({});
    // 5.284375 gal: a load of 3.5 gal, and 1.784375 gal up to the next quarter.
    expect(plan.loads.map(({ mark }) => mark)).toEqual([qty(3.5, "gal"), qty(2, "gal")]);
    expect(plan.carrier.total).toEqual(qty(5.5, "gal"));
    expect(plan.carrier.sprayed).toEqual(plain.carrier.sprayed);
    expect(plan.carrier.lines).toEqual(plain.carrier.lines);
    const { sprayed, lines, reserve, total } = plan.carrier;
    expect(sprayed.value + lines.value + reserve.value).toBeCloseTo(total.value, 12);
    expect(plan.toMark?.carrier.value).toBeCloseTo(0.215625, 12);
    // At the output rate of the strip, in square feet.
    expect(plan.toMark?.area.value).toBeCloseTo((0.215625 / plan.rate.value) * 43_560, 9);
    expect(plan.leftover.carrier.value).toBeCloseTo(reserve.value + lines.value, 12);
    for (const [k, { strength }] of plan.totals.products.entries())
      expect(strength).toEqual(plain.totals.products[k]?.strength);
    expect(planApplication(TWO_PRODUCTS)).not.toHaveProperty("toMark");
  });

  it("splits pots as it splits land", () => {
    const plan = planApplication({ ...POTS, split: "equal" });
    expect(plan.loads.map(({ mark }) => mark)).toEqual(Array(3).fill(qty(13, "qt")));
    // 9.375 gal come to 9.75: three eighths of a gallon are 12 pots.
    expect(plan.toMark?.count?.value).toBeCloseTo(12, 9);
    expect(
      planApplication({ ...POTS, split: { fills: [qty(15, "qt"), qty(3, "gal"), qty(11, "qt")] } }).carrier
        .total.value,
    ).toBe(9.5);
    expect(planApplication({ ...POTS, split: "easiest" }).loads.every(({ mark }) => mark !== undefined)).toBe(
      true,
    );
  });

  it("has a working whose every line is true, however it is split", () => {
    for (const split of [
      "equal",
      "whole-rows",
      "easiest",
      { rowsPerLoad: 5 },
      { fills: [qty(3, "gal"), qty(2.5, "gal")] },
    ] as const) {
      const plan = planned({ split });
      for (const { lines } of stepsOf(plan)) expectLinesTrue(lines);
      const loads = stepsOf(plan).find(({ step }) => step === "loads");
      expect(loads?.lines.find(({ id }) => id === "tank-mix.markedTotal")?.result).toEqual(
        plan.carrier.total,
      );
    }
    for (const { lines } of stepsOf(
      planned({ split: "easiest", plot: { kind: "rectangle", length: qty(50, "ft"), width: qty(90, "ft") } }),
    ))
      expectLinesTrue(lines);
  });

  it("is read again from what was saved, and refused where a mark was changed", () => {
    const plan = planned({ split: "easiest" });
    const saved = JSON.parse(JSON.stringify(plan));
    expect(readPlan(saved)).toEqual(plan);
    saved.loads[0].mark.value = 3.75;
    expect(refusal(() => readPlan(saved)).path).toBe("loads[0].mark");
  });

  it("holds what it goes up by while an input moves", () => {
    const paths = planSensitivity(planned({})).map(({ path }) => path);
    expect(paths).not.toContain("reserve.percent");
    expect(paths).toContain("calibration.used");
    expect(planSensitivity(planApplication(TWO_PRODUCTS)).map(({ path }) => path)).toContain(
      "reserve.percent",
    );
  });

  it("is compared with the same job on other marks", () => {
    const { results } = comparePlans(planned({}), planned({ sprayer: { ...MARKS, marks: qty(0.5, "gal") } }));
    expect(results).toEqual([]);
  });

  it("is mixed on marks where area and rate are known", () => {
    const mix = planMix({
      area: { value: 0.26, unit: "ac", of: "treated" },
      rate: qty(20, "gal/ac"),
      sprayer: { tank: qty(4, "gal"), marks: [qty(1, "gal"), qty(2, "gal"), qty(4, "gal")] },
      products: [{ name: "Product A", form: "liquid", rate: qty(2, "pt/ac") }],
      split: { pieces: 4, perLoad: 1 },
    });
    expect(mix.loads.map(({ carrier, pieces }) => [carrier.value, pieces])).toEqual(Array(4).fill([2, 1]));
    expect(mix.loads.map(({ products }) => products[0]?.amount.value)).toEqual(Array(4).fill(3.2));
  });

  it("is mixed in the fills that a person chose", () => {
    const job = {
      area: { value: 0.26, unit: "ac", of: "treated" },
      rate: qty(20, "gal/ac"),
      sprayer: { tank: qty(4, "gal") },
      products: [{ name: "Product A", form: "liquid", rate: qty(2, "pt/ac") }],
    } as const;
    const mix = planMix({ ...job, split: { fills: [qty(3, "gal"), qty(10, "qt")] } });
    expect(mix.loads.map(({ carrier }) => carrier.value)).toEqual([3, 2.5]);
    expect(refusal(() => planMix({ ...job, split: { fills: [qty(5, "gal")] } })).path).toBe("split.fills[0]");
    expect(refusal(() => planMix({ ...job, split: "thirds" } as never)).path).toBe("split");
  });

  it.each<[Partial<PlanInput>, string, string]>([
    [
      { sprayer: TWO_PRODUCTS.sprayer, split: "easiest" },
      "sprayer.marks",
      "This needs the tank's marks. Enter how far apart they are, such as 1 qt.",
    ],
    [
      { sprayer: { tank: qty(15, "L") }, split: "easiest" },
      "sprayer.marks",
      "This needs the tank's marks. Enter how far apart they are, such as 1 L.",
    ],
    [
      { split: { fills: [qty(3.5, "gal"), qty(1.8, "gal")] } },
      "split.fills[1]",
      "The tank has no mark at 1.8 gal. Choose a fill that has one.",
    ],
    [
      { split: { fills: [qty(3.5, "gal")] } },
      "split.fills",
      "These loads come to 3.5 gal, and the job takes 5.28 gal. Add a load, or fill them higher.",
    ],
    [
      { split: { rowsPerLoad: 3 }, plot: { kind: "rectangle", length: qty(50, "ft"), width: qty(90, "ft") } },
      "split",
      "Whole rows to a load need one plot with rows of one length. Choose equal loads instead.",
    ],
    [{ split: { rowsPerLoad: 0 } }, "split.rowsPerLoad", "Enter a whole number, 1 or more."],
    [{ reserve: { percent: 5, upTo: 4 } }, "reserve.upTo", "The most can't be less than 5%."],
    [
      { reserve: { percent: 0, upTo: 2 }, sprayer: { ...MARKS, marks: qty(1, "gal") }, split: "easiest" },
      "reserve",
      "Ending each load on a mark takes 6 gal of mix, and your extra mix allows only 5.14 gal. Allow more extra mix.",
    ],
  ])("is refused where it can't be: %j", (change, path, message) => {
    const error = refusal(() => planned(change));
    expect({ path: error.path, message: error.message }).toEqual({ path, message });
  });
});
