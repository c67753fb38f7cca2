import { describe, expect, it } from "vitest";
import { planApplication } from "../../../src/plan/index.ts";
import { qty } from "../../../src/units/index.ts";
import { planApplication as planLines } from "../../../src/working/index.ts";
import { ENGLISH_WORDS, renderText, worksheet } from "../../../src/worksheet/index.ts";

const plan = planApplication({
  plot: [
    {
      kind: "row-bands",
      rows: 14,
      rowLength: qty(160, "ft"),
      bandWidth: qty(30, "in"),
      rowSpacing: qty(5, "ft"),
    },
    { kind: "rectangle", length: qty(20, "yd"), width: qty(30, "ft") },
  ],
  calibration: { kind: "strip", used: qty(34, "fl_oz"), swath: qty(30, "in"), distance: qty(120, "ft") },
  sprayer: { tank: qty(4, "gal"), workingFill: qty(3.5, "gal"), lineVolume: qty(10, "fl_oz") },
  reserve: { percent: 5 },
  products: [
    { name: "Product A", form: "liquid", rate: qty(1.5, "pt/ac") },
    { name: "Product B", form: "dry", rate: qty(12, "oz/ac") },
  ],
  tools: "us-spoons",
});
const sheet = worksheet(plan);
const text = renderText(sheet);

describe("planWorking", () => {
  it("goes from the plot to the spoon", () => {
    const steps = planLines(plan).map(({ step }) => step);
    expect(steps.slice(0, 5)).toEqual(["area", "rate", "carrier", "loads", "product"]);
    expect(steps.at(-1)).toBe("dose");
  });

  it("ends each step with what the plan says", () => {
    const results = planLines(plan).map(({ lines }) => lines.at(-1)?.result);
    expect(results[0]).toEqual(plan.area.treated);
    expect(results[1]).toEqual(plan.rate);
    expect(results[2]).toEqual(plan.carrier.total);
    expect(results[3]).toBe(plan.loads.length);
  });
});

describe("worksheet", () => {
  it("has English words for every line and every term, and leaves no id standing", () => {
    const words = sheet.steps.flatMap(({ lines }) => lines.flatMap(({ found, words }) => [found, words]));
    expect(words.length).toBeGreaterThan(20);
    for (const word of words) expect(word).not.toMatch(/[a-z]\.[a-z]|[a-z][A-Z]/);
  });

  it("works out no measure that it says is not to be used", () => {
    // 0.144 fl oz: the spoons come to 0.125, 13% under.
    const row = planApplication({
      size: {
        kind: "row-length",
        length: qty(480, "ft"),
        rate: { used: qty(1, "gal"), length: qty(60, "ft") },
      },
      sprayer: { tank: qty(8, "gal") },
      products: [
        { name: "Product A", form: "liquid", rate: qty(0.3, "fl_oz/1000ft") },
        { name: "Product B", form: "liquid", rate: qty(6, "fl_oz/1000ft") },
      ],
      tools: "us-cups-and-spoons",
    });
    expect(row.loads[0]?.products.map(({ measured }) => measured.ok)).toEqual([false, true]);
    const titles = worksheet(row, { measuringErrors: true }).steps.map(({ title }) => title);
    expect(titles.filter((title) => /measured|how far/.test(title))).toEqual([
      "Product B, measured for load 1",
      "Product B, load 1: how far the dose is off",
    ]);
  });

  it("prints amounts that add up to the printed total", () => {
    for (const [i, { value }] of sheet.totals.entries()) {
      const amounts = sheet.loads.map(({ doses }) => doses[i]?.amount ?? "");
      const [decimals] = amounts
        .map((amount) => (/\.(\d+)/.exec(amount)?.[1] ?? "").length)
        .sort((a, b) => b - a);
      const sum = amounts.reduce((total, amount) => total + Number.parseFloat(amount), 0);
      expect(Number.parseFloat(value).toFixed(decimals)).toBe(sum.toFixed(decimals));
    }
  });

  it("gives an order of mixing to several products only, and lists each load's in it", () => {
    const sheetOf = (formulations: readonly ("EC" | "WG")[]) =>
      worksheet(
        planApplication({
          ...plan.input,
          products: plan.input.products
            .slice(0, formulations.length)
            .map((product, i) => ({ ...product, formulation: formulations[i] })),
        }),
      );
    const { mixing, loads } = sheetOf(["EC", "WG"]);
    expect(mixing).toContain("Product B, Product A");
    expect(loads[0]?.doses.map(({ product }) => product)).toEqual(["Product B", "Product A"]);
    expect(sheetOf(["EC"]).mixing).toBeUndefined();
  });

  it("shows warnings, loads, measured doses, working and cautions as text", () => {
    for (const part of [
      "Treated area",
      "Load 1 of 2: 3.5 gal in the tank, products included",
      "4 tablespoons",
      "Working",
      "The label is the law",
    ]) {
      expect(text).toContain(part);
    }
    for (const { message } of plan.cautions) expect(text.replace(/\s+/g, " ")).toContain(message);
  });

  it("stays within 80 columns", () => {
    expect(text.split("\n").filter((line) => line.length > 80)).toEqual([]);
  });

  it("writes numbers for another locale and words from another table", () => {
    const other = worksheet(plan, {
      locale: "de-DE",
      words: { ...ENGLISH_WORDS, text: { ...ENGLISH_WORDS.text, title: "Spritzauftrag" } },
    });
    expect(other.title).toBe("Spritzauftrag");
    expect(other.summary.some(({ value }) => value.includes("7.400 sq ft"))).toBe(true);
  });
});
