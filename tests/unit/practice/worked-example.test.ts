import { describe, expect, it } from "vitest";
import {
  type ExampleOptions,
  type PracticeProblem,
  type PracticeTopic,
  type ProblemOptions,
  practiceProblem,
  practiceSet,
  practiceSheet,
  practiceTopics,
  problemFrom,
  workedExample,
} from "../../../src/practice/index.ts";
import type { Given } from "../../../src/practice/topics/topic.ts";
import { convert, formatQuantity, type Quantity, qty } from "../../../src/units/index.ts";
import { SPANISH_PRACTICE_WORDS } from "../../../src/words/es-practice.ts";
import { renderHtml, renderMarkdown, renderText, type SheetOfBlocks } from "../../../src/worksheet/index.ts";
import { counterpart } from "../../../src/worksheet/job/counterparts.ts";
import { renderLatex } from "../../../src/worksheet/latex.ts";
import { expectRefused } from "../../helpers/refusal.ts";

const strip = { used: qty(64, "fl_oz"), swath: qty(36, "in"), distance: qty(363, "ft") };

/** The headings of a check, on one slide or on two. */
const CHECKS = ["Check in other units", "Check in other units, continued"];

/** The slides of an example of one's own figures: heading and texts. */
function slidesOf(
  topic: PracticeTopic,
  given: Given,
  { detail, ...options }: ExampleOptions & ProblemOptions = {},
): [heading: string, texts: string[]][] {
  const { wording: _, units: __, ...writing } = options;
  return slides(workedExample(problemFrom(topic, given, options), { ...writing, detail }));
}

/** Heading and texts of slides. */
function slides({ blocks }: SheetOfBlocks): [heading: string, texts: string[]][] {
  return blocks.map((block) => {
    if (block.kind !== "group") throw new Error("not a slide");
    const [heading, ...others] = block.blocks;
    return [
      heading?.kind === "heading" ? heading.text : "",
      others.flatMap((one) =>
        one.kind === "text" ? [one.text] : one.kind === "table" ? one.rows.flat() : [],
      ),
    ];
  });
}

/** The number that a text begins with. */
function numberIn(text = ""): number {
  return Number(text.split(/ |%/)[0]?.replaceAll(",", ""));
}

/** A figure in the metric units that a check shows it in. */
function inMetric(figure: Given[string]): Given[string] {
  if (typeof figure === "number" || typeof figure === "string") return figure;
  if (Array.isArray(figure)) return figure.map((one) => inMetric(one)) as unknown as Given[string];
  const { value, unit, ...rest } = figure as Quantity;
  const metric = counterpart(unit, "metric");
  return { ...rest, ...convert({ value, unit }, metric as never) } as Quantity;
}

describe("a worked example", () => {
  it("goes from the problem over an estimate and the steps to the answer, a check and the mistakes", () => {
    expect(slidesOf("strip-calibration", strip)).toEqual([
      ["The problem", [problemFrom("strip-calibration", strip).problem]],
      // 60 x 4,083.75 / (40 x 400) = 15.3.
      [
        "Estimate",
        ["Round 64 fl oz to 60 fl oz, 36 in to 40 in, and 363 ft to 400 ft. It comes to about 15 gal/ac."],
      ],
      [
        "Step 1: width of the pass in ft",
        ["36 in ÷ 12 = 3 ft", "Units: in × ft/in = ft", "in cancels.", "1 ft = 12 in"],
      ],
      [
        "Step 2: output rate on the test strip",
        [
          "output rate on the test strip = amount used ÷ (width of the pass × distance traveled)",
          "64 fl oz ÷ (3 ft × 363 ft) = 0.0587695 fl oz/sq ft",
          "Units: fl oz ÷ (ft × ft) = fl oz/sq ft",
        ],
      ],
      [
        "Step 3: output rate on the test strip in gal/ac",
        [
          "0.0587695 fl oz/sq ft × 340.313 = 20 gal/ac",
          "Units: fl oz/sq ft × gal/fl oz × sq ft/ac = gal/ac",
          "fl oz and sq ft cancel.",
          "1 gal = 128 fl oz",
          "1 ac = 43,560 sq ft",
          "340.313 = 43,560 ÷ 128",
        ],
      ],
      ["Answer", ["20 gal/ac"]],
      // 64 x 29.5735 mL; 36 x 2.54 cm; 363 x 0.3048 m; 1.89271 L / (0.9144 x 110.642 m2) x 10,000.
      [
        "Check in other units",
        [
          "In the other units: 1,893 mL, 91.44 cm, and 110.6 m.",
          "91.44 cm ÷ 100 = 0.9144 m",
          "1,892.71 mL ÷ (0.9144 m × 110.642 m) = 18.7079 mL/m²",
          "18.7079 mL/m² × 10 = 187.079 L/ha",
          "187.079 L/ha = 20 gal/ac",
        ],
      ],
      [
        "Common wrong answers",
        [
          "2,560 gal/ac",
          "The amount in fl oz was used as if it were gal.",
          "1.667 gal/ac",
          "The width was not converted (in to ft).",
          "0.05 gal/ac",
          "The fraction was turned upside down.",
        ],
      ],
    ]);
  });

  it("can be short: the estimate and the sums alone", () => {
    const short = slidesOf("strip-calibration", strip, { detail: "short" });
    expect(short.map(([heading]) => heading)).toEqual([
      "The problem",
      "Estimate",
      "Step 1: width of the pass in ft",
      "Step 2: output rate on the test strip",
      "Step 3: output rate on the test strip in gal/ac",
      "Answer",
    ]);
    expect(short[4]?.[1]).toEqual(["0.0587695 fl oz/sq ft × 340.313 = 20 gal/ac"]);
  });

  it.each(practiceTopics)("of %s checks itself in other units, and estimates what is near", (topic) => {
    for (const units of ["us", "metric", "imperial"] as const)
      for (let seed = 0; seed < 4; seed++) {
        const { given, answer } = practiceProblem(topic, seed, { units });
        const slides = new Map(slidesOf(topic, given, { units, digits: 12 }));
        const right = typeof answer === "object" ? answer.value : answer;
        const numbers = (text = "") =>
          (text.match(/\d[\d,]*\.?\d*/g) ?? []).map((one) => Number(one.replaceAll(",", "")));
        const [first = [], more = []] = CHECKS.map((heading) => slides.get(heading));
        const checks = [...first, ...more];
        const check = checks.at(-1) === "That is the same answer." ? checks.at(-2) : checks.at(-1);
        if (check !== undefined) {
          expect(checks.length).toBeGreaterThan(2);
          const last = numbers(check.replace("1,000 sq ft", "").replace(/\/\d[\d,]* /g, "/")).at(
            -1,
          ) as number;
          expect(Math.abs(last / (right as number) - 1), check).toBeLessThan(0.001);
        } else expect(["strip-reading", "mixing-order", "season-limit"]).toContain(topic);
        const [estimate] = slides.get("Estimate") ?? [];
        if (estimate === undefined) continue;
        const about = numbers(estimate).at(-1) as number;
        expect(Math.abs(about / (right as number) - 1), estimate).toBeLessThan(0.36);
      }
  });

  it.each(practiceTopics)("of %s estimates from figures that are rounded, and from those alone", (topic) => {
    for (const units of ["us", "metric", "imperial"] as const)
      for (let seed = 0; seed < 16; seed++) {
        const { given, answer } = practiceProblem(topic, seed, { units });
        const [text] = new Map(slidesOf(topic, given, { units, detail: "short" })).get("Estimate") ?? [];
        if (text === undefined) continue;
        const [, listed = "", others, about] =
          /^Round (.+?)\. (With the other figures as given, it|It) comes to about (.+)\.$/.exec(text) ?? [];
        const rounded = new Map(
          listed.split(/, and |, | and /).map((one) => one.split(" to ") as [string, string]),
        );
        const left = new Set(rounded.keys());
        let asGiven = 0;
        const change = (figure: Given[string]): Given[string] => {
          if (Array.isArray(figure)) return figure.map((one) => change(one)) as unknown as Given[string];
          const shown = typeof figure === "object" ? formatQuantity(figure as Quantity) : "";
          const round = rounded.get(shown);
          if (round === undefined) asGiven++;
          left.delete(shown);
          return round === undefined ? figure : { ...(figure as Quantity), value: numberIn(round) };
        };
        const changed = Object.fromEntries(
          Object.entries(given).map(([name, figure]) => [name, change(figure)]),
        );
        // Each was given, none is called rounded that is as it was, and the sum comes out with no other figures.
        expect([...left], text).toEqual([]);
        for (const [figure, round] of rounded) expect(round, text).not.toBe(figure);
        const again = problemFrom(topic, changed, { units }).answer;
        const value = typeof again === "object" ? again.value : (again as number);
        expect(numberIn(about), text).toBe(Number(value.toPrecision(2)));
        // The spacing of rows, the whole field, and what a product weighs are given, but not needed.
        if (!["tank-loads", "product-per-tank", "band", "whole-job"].includes(topic))
          expect(asGiven > 0, text).toBe(others !== "It");
        // An amount that comes out as it is was not estimated.
        if (typeof answer === "object" && typeof again === "object")
          expect(Math.abs(again.value / answer.value - 1), text).toBeGreaterThan(1e-9);
      }
  });

  it("estimates nothing with a figure that the answer does not need, or that cancels", () => {
    // 2 x 60 x 0.5 m of rows, of which only the spacing is not round.
    const rows = { rows: 2, rowLength: qty(60, "m"), bandWidth: qty(50, "cm"), rowSpacing: qty(1.5, "m") };
    expect(new Map(slidesOf("band", { ...rows, rate: qty(2, "L/ha") })).has("Estimate")).toBe(false);
    const loads = {
      ground: qty(3.5, "ac"),
      area: qty(2, "ac"),
      rate: qty(20, "gal/ac"),
      fill: qty(10, "gal"),
    };
    expect(new Map(slidesOf("tank-loads", loads)).has("Estimate")).toBe(false);
    // 2 ac x 1 pt/ac x 1.1, at any output rate.
    const extra = { area: qty(2, "ac"), carrierRate: qty(32, "gal/ac"), extra: 10 };
    expect(new Map(slidesOf("reserve", { ...extra, rate: qty(1, "pt/ac") })).has("Estimate")).toBe(false);
  });

  it("says once what is the same in all units", () => {
    const fl_oz = (value: number) => qty(value, "fl_oz");
    const slides = slidesOf("nozzle-check", { catches: [40, 46, 38, 36].map(fl_oz) });
    // 160 / 4 = 40; 6 / 40 = 15%.
    const check = new Map(slides).get("Check in other units") ?? [];
    expect(check.slice(-2)).toEqual([
      "100 × (1,360.38 mL − 1,182.94 mL) ÷ 1,182.94 mL = 15%",
      "That is the same answer.",
    ]);
  });

  it("has no more lines on a slide of the check than a printed page holds", () => {
    const long = slidesOf("whole-job", practiceProblem("whole-job", 5).given);
    const checks = long.filter(([heading]) => CHECKS.includes(heading));
    expect(checks.map(([heading, texts]) => [heading, texts.length])).toEqual(CHECKS.map((one) => [one, 8]));
  });

  it.each(practiceTopics)("of %s checks itself with the sums of a board in the other units", (topic) => {
    const { given } = practiceProblem(topic, 5);
    const checks = slidesOf(topic, given).flatMap(([heading, texts]) =>
      CHECKS.includes(heading) ? texts : [],
    );
    const shown = checks[0]?.replace("In the other units: ", "").replace(/\.$/, "") ?? "";
    if (shown === "") return;
    const metric = Object.entries(given).map(([name, figure]) => [name, inMetric(figure)]);
    const board = slidesOf(topic, Object.fromEntries(metric), { units: "metric", detail: "short" });
    const sums = board.flatMap(([heading, texts]) =>
      heading.startsWith("Step ") ? texts.filter((one) => /\d.*= /.test(one)) : [],
    );
    expect(checks.slice(1, -1)).toEqual(sums.length > 0 ? sums : ["none"]);
  });

  it("lists no figures that the answer does not need", () => {
    // 2 x 16 / 20 x 3 = 4.8.
    const tank = { rate: qty(2.25, "pt/ac"), carrierRate: qty(18, "gal/ac"), fill: qty(3, "gal") };
    const slides = new Map(slidesOf("product-per-tank", { ...tank, density: qty(9.4, "lb/gal") }));
    expect(slides.get("Estimate")).toEqual([
      "Round 2.25 pt/ac to 2 pt/ac and 18 gal/ac to 20 gal/ac. With the other figures as given, it comes to about 4.8 fl oz.",
    ]);
    expect(slides.get("Check in other units")?.[0]).toBe(
      "In the other units: 2.631 L/ha, 168.4 L/ha, and 11.36 L.",
    );
  });

  it("names the worst nozzle, in its step and beside the answer", () => {
    const catches = [40, 46, 38, 36].map((value) => qty(value, "fl_oz"));
    const slides = slidesOf("nozzle-check", { catches });
    expect(slides.find(([heading]) => heading.startsWith("Step 1"))?.[1].slice(0, 2)).toEqual([
      "average catch = (catch of nozzle 1 + catch of nozzle 2 + catch of nozzle 3 + catch of nozzle 4) ÷ number of nozzles",
      "(40 fl oz + 46 fl oz + 38 fl oz + 36 fl oz) ÷ 4 = 40 fl oz",
    ]);
    expect(slides.find(([heading]) => heading.startsWith("Step 2"))?.[1].slice(0, 2)).toEqual([
      "deviation from the average (larger − smaller) = 100 × (catch of worst nozzle 2 − average catch) ÷ average catch",
      "100 × (46 fl oz − 40 fl oz) ÷ 40 fl oz = 15%",
    ]);
    expect(new Map(slides).get("Answer")).toEqual([
      "15%",
      "Nozzle 2 is the furthest off: it gave 46 fl oz, and the average is 40 fl oz.",
    ]);
    const below = [40, 34, 42, 44].map((value) => qty(value, "fl_oz"));
    expect(slidesOf("nozzle-check", { catches: below }).flat(2)).toContain(
      "100 × (40 fl oz − 34 fl oz) ÷ 40 fl oz = 15%",
    );
  });

  it("calls fertilizer by one name", () => {
    const given = { needed: qty(1, "lb/1000ft2"), area: qty(5000, "ft2"), nitrogen: 20 };
    const texts = slidesOf("fertilizer", given).flatMap(([, lines]) => lines);
    expect(texts).toContain("fertilizer for the plot = fertilizer × area of the plot");
  });

  it("divides one nozzle's catch by one nozzle's width, and a boom's by all of them", () => {
    const others = { time: qty(45, "s"), width: qty(15, "in"), speed: qty(3, "mph") };
    const one = slidesOf("catch-calibration", { caught: qty(24, "fl_oz"), ...others }).flat(2);
    expect(one).toContain(
      "output rate from the catch = total catch ÷ (catch time × speed × width per nozzle or row)",
    );
    expect(one.join()).not.toContain("all nozzles");
    const catches = [qty(24, "fl_oz"), qty(25, "fl_oz")];
    expect(slidesOf("boom-catch", { catches, ...others }).flat(2)).toContain(
      "output rate from the catch = total catch ÷ (catch time × speed × number of nozzles or rows × width per nozzle or row)",
    );
  });

  it("estimates with no catches that rounding makes alike", () => {
    const estimateOf = (...args: Parameters<typeof slidesOf>) =>
      new Map(slidesOf(...args)).get("Estimate")?.[0];
    const caught = (...values: number[]) => values.map((value) => qty(value, "fl_oz"));
    // To one figure these would be 30, 40, 30 and 30, and the worst 23% off instead of 20%.
    expect(estimateOf("nozzle-check", { catches: caught(28.5, 36, 28.5, 27) })).toBeUndefined();
    expect(estimateOf("nozzle-check", { catches: caught(19, 19, 29, 19) })).toBe(
      "Round 19 fl oz to 20 fl oz and 29 fl oz to 30 fl oz. It comes to about 33%.",
    );
    const boom = { time: qty(30, "s"), width: qty(20, "in"), speed: qty(3, "mph") };
    expect(estimateOf("boom-catch", { ...boom, catches: caught(32.5, 31.5, 32) })).toBeUndefined();
    expect(estimateOf("boom-catch", { ...boom, width: qty(18, "in"), catches: caught(32, 31, 33) })).toMatch(
      /^Round 18 in to 20 in\. With the other/,
    );
  });

  it("estimates with figures for the head alone", () => {
    const limit = { limit: qty(6, "pt/ac"), done: 2, rate: qty(1.25, "pt/ac") };
    // (6 - 2 x 1) / 1 = 4 is twice the answer, and 1.3 is no rounder than 1.25.
    expect(new Map(slidesOf("season-limit", limit)).get("Estimate")).toBeUndefined();
    const lawn = { length: qty(210, "ft"), width: qty(70, "ft"), rate: qty(1.5, "fl_oz/1000ft2") };
    // 200 x 70 / 1,000 x 2 = 28 is 27% off: 22.05.
    expect(new Map(slidesOf("lawn-rate", lawn)).get("Estimate")).toEqual([
      "Round 210 ft to 200 ft and 1.5 fl oz/1,000 sq ft to 2 fl oz/1,000 sq ft. With the other figures as given, it comes to about 28 fl oz.",
    ]);
    // 200 x 70 / 1,000 x 1.4 is near; the same with a rate rounded to 1 is not.
    expect(
      new Map(slidesOf("lawn-rate", { ...lawn, rate: qty(1.4, "fl_oz/1000ft2") })).get("Estimate"),
    ).toEqual(["Round 210 ft to 200 ft. With the other figures as given, it comes to about 20 fl oz."]);
  });

  it("reads a rate off a catch without units that would not cancel", () => {
    const given = { walk: qty(30, "s"), caught: qty(40, "fl_oz"), time: qty(60, "s") };
    expect(slidesOf("strip-reading", given).flat(2)).toContain("20 × 1 gal/ac = 20 gal/ac");
  });

  it("takes a percentage of the mix itself", () => {
    const given = { spots: 12, each: qty(11, "fl_oz"), percent: { ...qty(2, "%"), basis: "v/v" as const } };
    const texts = slidesOf("spot-tank", given, { detail: "short" }).flat(2);
    expect(texts).toContain("0.02 × 132 fl oz = 2.64 fl oz");
    // Half of "2% ÷ 100" is in the sign.
    expect(texts).toContain("2 ÷ 100 = 0.02");
    expect(texts.join()).not.toContain("fl oz/fl oz");
  });

  it("has a line for each step, which ends in the answer", () => {
    for (const topic of practiceTopics) {
      const { given, working } = practiceProblem(topic, 6);
      const steps = slidesOf(topic, given).filter(([heading]) => heading.startsWith("Step "));
      // A sum of one is a line of the working, but no step.
      const sums = working.filter(({ formula }) => !/^\w+$/.test(formula));
      // An order of mixing has no sums, but its rule.
      expect(steps.length).toBe(topic === "mixing-order" ? 1 : sums.length);
      for (const [heading] of steps) expect(heading).toMatch(/^Step \d+: .*[\w)]$/);
      expect(new Set(steps.map(([heading]) => heading.replace(/^Step \d+: /, ""))).size).toBe(steps.length);
      for (const [, texts] of steps) for (const one of texts) expect(one).not.toMatch(/^(.+) = \1$/);
      const [answer] = slidesOf(topic, given).find(([heading]) => heading === "Answer")?.[1] ?? [];
      if (working.length > 0) expect(steps.at(-1)?.[1].join(" ")).toContain(`= ${answer}`);
    }
  });

  it("puts products in order by the rule", () => {
    const slides = slidesOf("mixing-order", { products: ["EC", "adjuvant", "WP"] });
    expect(slides[1]).toEqual([
      "Step 1: Mixing order",
      [
        "Unless the label says otherwise: conditioner first, then wettable powders, granules, suspensions, emulsions, and adjuvants last.",
        "(C) a wettable powder (WP)",
        "(A) an emulsifiable concentrate (EC)",
        "(B) an adjuvant",
      ],
    ]);
    expect(slides[2]).toEqual(["Answer", ["CAB"]]);
  });

  it("says what a whole job's last load is, and nothing that the answer does not need", () => {
    // 18 L in fills of 12 L: see the arithmetic in problem.test.ts.
    const slides = slidesOf("whole-job", {
      rows: 12,
      rowLength: qty(100, "m"),
      bandWidth: qty(50, "cm"),
      rowSpacing: qty(2, "m"),
      distance: qty(100, "m"),
      used: qty(1500, "mL"),
      fill: qty(12, "L"),
      rate: qty(2, "L/ha"),
    });
    const sums = slides.flatMap(([, texts]) => texts);
    expect(sums).toContain("total mix to make = output rate × treated area");
    expect(sums.join()).not.toContain("mix needed");
    expect(sums).toContain("mix in the last load = total mix to make − (number of loads − 1) × tank fill");
    expect(sums).toContain("18 L − (2 − 1) × 12 L = 6 L");
    expect(sums.filter((one) => one.startsWith("product in the load ="))).toHaveLength(1);
    expect(sums.join()).not.toContain("row spacing =");
  });

  it("checks a rate per so many feet or square meters in whole units of the other system", () => {
    const check = (...args: Parameters<typeof slidesOf>) =>
      new Map(slidesOf(...args)).get("Check in other units")?.[0];
    const rows = { rows: 10, rowLength: qty(100, "ft"), rate: qty(3, "fl_oz/1000ft") };
    // 3 x 29.5735 mL / 3.048.
    expect(check("row-length", rows)).toContain("29.11 mL/100 m");
    const lawn = { length: qty(20, "m"), width: qty(10, "m"), rate: qty(10, "mL/100m2") };
    // 10 mL / 29.5735 x 0.9290304.
    expect(check("lawn-rate", lawn)).toContain("0.3141 fl oz/1,000 sq ft");
  });

  it("leaves out the units of a change to so many of the same", () => {
    const lawn = { length: qty(100, "ft"), width: qty(50, "ft"), rate: qty(1.5, "fl_oz/1000ft2") };
    const slides = new Map(slidesOf("lawn-rate", lawn));
    // Step 1 finds the ground area.
    expect(slides.get("Step 2: ground area in thousands of sq ft")).toEqual([
      "5,000 sq ft ÷ 1,000 = 5 thousands of sq ft",
    ]);
    expect(slides.get("Step 3: product for the plot")).toEqual([
      "product for the plot = product rate × ground area",
      "1.5 fl oz/1,000 sq ft × 5 thousands of sq ft = 7.5 fl oz",
      "Units: fl oz/1,000 sq ft × 1,000 sq ft = fl oz",
      "1,000 sq ft cancels.",
    ]);
  });

  it.each([
    ["lawn-rate", "hundreds of m²", "centenares de m²"],
    ["granules", "hundreds of m²", "centenares de m²"],
    ["fertilizer", "hundreds of m²", "centenares de m²"],
    ["row-length", "hundreds of m", "centenares de m"],
    ["tree-row-volume", "hundreds of m³/ha", "centenares de m³/ha"],
  ] as const)("counts in words what a rate of %s is for", (topic, english, spanish) => {
    const { given } = practiceProblem(topic, 5, { units: "metric" });
    const inSpanish = { words: SPANISH_PRACTICE_WORDS, locale: "es-US" };
    for (const [options, counted] of [
      [{}, english],
      [inSpanish, spanish],
    ] as const) {
      const sums = slidesOf(topic, given, options).flatMap(([, texts]) => texts);
      expect(sums.some((one) => one.endsWith(` ${counted}`))).toBe(true);
      // "3 × 100 m²" beside a rate per 100 m² reads as 300.
      expect(sums.join("\n")).not.toMatch(/\d × 100 m/);
    }
  });

  it("is shown one slide a screen in HTML, and one below the other elsewhere", () => {
    const example = workedExample(problemFrom("strip-calibration", strip));
    const html = renderHtml(example);
    expect(html.match(/<section class="slide">/g)?.length).toBe(8);
    expect(html).toContain('<article class="board" lang="en">');
    expect(html).toContain("<svg");
    for (const text of [renderText(example), renderMarkdown(example), renderLatex(example)])
      expect(text).toContain("43,560");
    expect(renderMarkdown(example).match(/^## /gm)?.length).toBe(8);
  });

  it("speaks Spanish", () => {
    const slides = slidesOf("strip-calibration", strip, { words: SPANISH_PRACTICE_WORDS, locale: "es-US" });
    expect(slides[1]?.[0]).toBe("Estimación");
    expect(slides[2]?.[1]).toEqual([
      "36 pulgadas ÷ 12 = 3 pies",
      "Unidades: pulgadas × pies/pulgada = pies",
      "Se cancela: pulgadas.",
      "1 pie = 12 pulgadas",
    ]);
  });

  it("is of the problem on the sheet: the same farm, in the same words", () => {
    const spanish = { words: SPANISH_PRACTICE_WORDS, locale: "es-US" };
    for (const writing of [{}, spanish])
      for (const units of ["us", "metric", "imperial"] as const)
        for (const problem of practiceSet(7, { ...writing, units }).problems) {
          const [first] = slides(workedExample(problem, writing));
          expect(first?.[1]).toContain(problem.problem);
          expect(renderText(practiceSheet([problem], writing)).replace(/\s+/g, " ")).toContain(
            problem.problem,
          );
        }
  });

  it("has no check in the units that it is in already, and no table of mistakes that there are not", () => {
    const headings = (problem: PracticeProblem) =>
      [...renderMarkdown(workedExample(problem)).matchAll(/^## (.*)$/gm)].map(([, heading]) => heading);
    const meters = { length: qty(100, "m"), width: qty(100, "m") };
    expect(headings(problemFrom("rectangle-area", meters))).toContain("Check in other units");
    expect(headings(problemFrom("rectangle-area", meters, { units: "us" }))).not.toContain(
      "Check in other units",
    );
    // One cup is one cup, whichever way a student works it out.
    const cup = problemFrom("household-measure", { amount: qty(30, "mL"), spoon: qty(30, "mL") });
    expect(cup.mistakes).toEqual([]);
    expect(headings(cup)).not.toContain("Common wrong answers");
  });

  it("refuses what is no problem, and an option that there is not", () => {
    const problem = problemFrom("strip-calibration", strip);
    expectRefused(() => workedExample({ ...problem, given: {} }), "missing", "problem.given.used");
    expectRefused(
      () => workedExample({ ...problem, topic: "boat" as never }),
      "unknown-choice",
      "problem.topic",
    );
    expectRefused(
      () => workedExample(problem, { detail: "long" as never }),
      "unknown-choice",
      "options.detail",
    );
    expectRefused(() => workedExample(problem, { key: "long" } as never), "unknown-field", "options.key");
    expect(workedExample(problem, { detail: "full" })).toEqual(workedExample(problem));
  });

  it("puts products in their right order, whatever a kept problem says of it", () => {
    const order = practiceProblem("mixing-order", 3);
    const right = renderText(workedExample(order)).match(/\([A-G]\)[^\n]*/g);
    expect(renderText(workedExample({ ...order, answer: "ZZ" })).match(/\([A-G]\)[^\n]*/g)).toEqual(right);
    expect(() => workedExample({ ...practiceProblem("band", 3), answer: "AB" })).not.toThrow(TypeError);
  });
});
