import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import {
  ENGLISH_PRACTICE_WORDS,
  type Given,
  type PracticeTopic,
  practiceProblem,
  practiceTopics,
  problemFrom,
} from "../../../src/practice/index.ts";
import { TOPICS } from "../../../src/practice/topics/all.ts";
import { sizesIn } from "../../../src/practice/topics/sizes.ts";
import { qty } from "../../../src/units/index.ts";
import { SPANISH_PRACTICE_WORDS } from "../../../src/words/es-practice.ts";
import { expectRefused, refusal } from "../../helpers/refusal.ts";

describe("the words of a topic", () => {
  it("put the unit that is asked for right behind no figure", () => {
    for (const { topics } of [ENGLISH_PRACTICE_WORDS, SPANISH_PRACTICE_WORDS])
      for (const { problems } of Object.values(topics))
        for (const one of problems)
          expect(one.replaceAll("{farm}", "")).not.toMatch(/\{\w+\}(?: of treated area)? \(\{unit\}\)/);
  });

  it("speak of no label where the problem has none", () => {
    const { fertilizer, injector } = Object.fromEntries(
      (["fertilizer", "injector"] as const).map((topic) => [topic, practiceProblem(topic, 3).mistakes]),
    );
    expect(JSON.stringify([fertilizer, injector])).not.toMatch(/\blabel\b/);
  });
});

const percent = (value: number) => ({ ...qty(value, "%"), basis: "v/v" as const });

// Source of each: hand arithmetic, which stands beside it. 43,560 sq ft to the acre, 128 fl oz to the gallon, 16 fl oz to the pint.
const BY_HAND: readonly [PracticeTopic, Given, number, string][] = [
  [
    "rectangle-area",
    { length: qty(330, "ft"), width: qty(264, "ft") },
    2,
    "330 x 264 = 87,120; / 43,560 = 2",
  ],
  [
    "triangle-area",
    { base: qty(242, "ft"), height: qty(180, "ft") },
    0.5,
    "242 x 180 = 43,560; / 2 / 43,560 = 0.5",
  ],
  [
    "trapezoid-area",
    { base: qty(80, "m"), top: qty(40, "m"), height: qty(50, "m") },
    0.3,
    "(80 + 40) / 2 = 60; x 50 = 3,000; / 10,000 = 0.3",
  ],
  [
    "strip-calibration",
    { used: qty(64, "fl_oz"), swath: qty(36, "in"), distance: qty(363, "ft") },
    20,
    "64 / 128 = 0.5 gal; 3 x 363 = 1,089 sq ft = 1/40 ac; 0.5 x 40 = 20",
  ],
  [
    "catch-calibration",
    { caught: qty(32, "fl_oz"), time: qty(30, "s"), width: qty(20, "in"), speed: qty(3.3, "mph") },
    45,
    "32 fl oz in 30 s = 0.5 gal/min; 5,940 x 0.5 / (3.3 x 20) = 2,970 / 66 = 45",
  ],
  [
    "tank-loads",
    { ground: qty(3, "ac"), area: qty(1.2, "ac"), rate: qty(30, "gal/ac"), fill: qty(15, "gal") },
    3,
    "1.2 x 30 = 36 gal; 36 / 15 = 2.4, so 3",
  ],
  [
    "product-per-tank",
    {
      rate: qty(2, "pt/ac"),
      carrierRate: qty(20, "gal/ac"),
      fill: qty(25, "gal"),
      density: qty(9, "lb/gal"),
    },
    40,
    "25 / 20 = 1.25 ac; x 2 pt = 2.5 pt; x 16 = 40 fl oz",
  ],
  ["household-measure", { amount: qty(1.6, "fl_oz"), spoon: qty(1, "tsp") }, 9, "1.6 x 6 = 9.6 tsp, so 9"],
  [
    "band",
    {
      rows: 20,
      rowLength: qty(363, "ft"),
      bandWidth: qty(30, "in"),
      rowSpacing: qty(10, "ft"),
      rate: qty(1.5, "pt/ac"),
    },
    10,
    "20 x 363 x 2.5 = 18,150 sq ft = 5/12 ac; x 1.5 pt x 16 = 10 fl oz",
  ],
  [
    "timed-speed",
    { distance: qty(176, "ft"), time: qty(40, "s") },
    3,
    "176 / 40 = 4.4 ft/s; x 3,600 / 5,280 = 3",
  ],
  [
    "strip-reading",
    { walk: qty(24, "s"), caught: qty(25, "fl_oz"), time: qty(30, "s") },
    20,
    "25 x 24 / 30 = 20 fl oz on the strip: 20 gal/ac",
  ],
  [
    "season-limit",
    { limit: qty(8, "pt/ac"), rate: qty(1.5, "pt/ac"), done: 2 },
    3,
    "8 - 3 = 5; 5 / 1.5 = 3.33, so 3",
  ],
  [
    "boom-catch",
    {
      catches: [31, 33, 32].map((value) => qty(value, "fl_oz")),
      time: qty(30, "s"),
      width: qty(20, "in"),
      speed: qty(3.3, "mph"),
    },
    45,
    "(31 + 33 + 32) / 3 = 32 fl oz a nozzle; then as above",
  ],
  [
    "nozzle-check",
    { catches: [40, 46, 38, 36].map((value) => qty(value, "fl_oz")) },
    15,
    "160 / 4 = 40; 46 - 40 = 6; 6 / 40 = 15%",
  ],
  [
    "lawn-rate",
    { length: qty(100, "ft"), width: qty(50, "ft"), rate: qty(1.5, "fl_oz/1000ft2") },
    7.5,
    "5,000 sq ft = 5 x 1,000; 5 x 1.5 = 7.5",
  ],
  [
    "granules",
    { length: qty(20, "m"), width: qty(15, "m"), rate: qty(2, "kg/100m2") },
    6,
    "300 m2 = 3 x 100; 3 x 2 = 6",
  ],
  [
    "fertilizer",
    { needed: qty(1, "lb/1000ft2"), area: qty(6000, "ft2"), nitrogen: 24 },
    25,
    "6,000 sq ft = 6 x 1,000; 6 x 1 = 6 lb of nitrogen; / 0.24 = 25",
  ],
  [
    "row-length",
    { rows: 12, rowLength: qty(250, "ft"), rate: qty(1.5, "fl_oz/1000ft") },
    4.5,
    "12 x 250 = 3,000 ft = 3 x 1,000; 3 x 1.5 = 4.5",
  ],
  [
    "dry-product",
    { area: qty(0.75, "ac"), rate: qty(1.25, "lb/ac") },
    15,
    "0.75 x 1.25 = 0.9375 lb; x 16 = 15 oz",
  ],
  [
    "plant-timing",
    { caught: qty(2, "gal"), time: qty(40, "s"), each: qty(48, "fl_oz") },
    7.5,
    "2 gal = 256 fl oz in 40 s = 6.4 fl oz/s; 48 / 6.4 = 7.5",
  ],
  [
    "spot-tank",
    { spots: 40, each: qty(6, "fl_oz"), percent: percent(1.5) },
    3.6,
    "40 x 6 = 240 fl oz; x 1.5 / 100 = 3.6",
  ],
  [
    "injector",
    { rate: qty(8, "fl_oz/100gal"), ratio: 128, stock: qty(2.5, "gal") },
    25.6,
    "2.5 x 128 = 320 gal of solution; 320 / 100 x 8 = 25.6",
  ],
  [
    "reserve",
    { area: qty(0.5, "ac"), carrierRate: qty(20, "gal/ac"), extra: 10, rate: qty(2, "pt/ac") },
    17.6,
    "0.5 x 20 x 1.1 = 11 gal for 0.55 ac; x 2 x 16 = 17.6",
  ],
  [
    "tree-row-volume",
    {
      height: qty(10, "ft"),
      width: qty(6, "ft"),
      rowSpacing: qty(18, "ft"),
      spray: qty(0.75, "gal/1000ft3"),
    },
    108.9,
    "43,560 / 18 = 2,420 ft of row; x 10 x 6 = 145,200 cu ft; / 1,000 x 0.75 = 108.9",
  ],
  ["percent-mix", { percent: percent(0.5), fill: qty(25, "gal") }, 16, "25 x 128 = 3,200 fl oz; / 200 = 16"],
  [
    "dilution",
    { from: percent(10), to: percent(2), volume: qty(5, "L") },
    1000,
    "5,000 mL x 2 / 10 = 1,000 mL",
  ],
  [
    "whole-job",
    {
      rows: 12,
      rowLength: qty(100, "m"),
      bandWidth: qty(50, "cm"),
      rowSpacing: qty(2, "m"),
      distance: qty(100, "m"),
      used: qty(1500, "mL"),
      fill: qty(12, "L"),
      rate: qty(2, "L/ha"),
    },
    40,
    "1.5 L on 50 m2 = 300 L/ha; 12 x 100 x 0.5 = 600 m2; 0.06 x 300 = 18 L: 12 + 6; 6 / 300 = 0.02 ha; x 2 L = 40 mL",
  ],
];

describe("problems from figures of one's own", () => {
  it.each(BY_HAND)("%s has the answer worked by hand", (topic, given, answer, _arithmetic) => {
    const problem = problemFrom(topic, given);
    const value = typeof problem.answer === "object" ? problem.answer.value : (problem.answer as number);
    expect(value).toBeCloseTo(answer, 9);
    expect(problem.given).toMatchObject(
      topic === "tank-loads"
        ? {
            ...given,
            ground: { value: 3, unit: "ac", of: "ground" },
            area: { value: 1.2, unit: "ac", of: "treated" },
          }
        : given,
    );
    expect(problem.seed).toBeUndefined();
  });

  it("are tried on every topic", () => {
    expect(new Set([...BY_HAND.map(([topic]) => topic), "mixing-order"])).toEqual(new Set(practiceTopics));
  });

  it("puts products in the order of mixing", () => {
    const { answer, problem, mistakes } = problemFrom("mixing-order", { products: ["EC", "adjuvant", "WP"] });
    expect(answer).toBe("CAB");
    expect(problem).toContain(
      "(A) an emulsifiable concentrate (EC), (B) an adjuvant, and (C) a wettable powder (WP)",
    );
    expect(mistakes.map((one) => [one.mistake, one.answer])).toEqual([
      ["order-as-listed", "ABC"],
      ["order-reversed", "BAC"],
      ["adjuvant-first", "BCA"],
      ["adjuvant-first", "CBA"],
      ["liquids-before-powders", "ACB"],
    ]);
    expectRefused(
      () => problemFrom("mixing-order", { products: ["EC", "EC"] }),
      "conflict",
      "given.products",
    );
    expectRefused(() => problemFrom("mixing-order", { products: ["EC"] }), "too-few", "given.products");
    expectRefused(
      () => problemFrom("mixing-order", { products: ["EC", "XX"] }),
      "unknown-choice",
      "given.products[1]",
    );
  });

  it("refuses a season in which nothing is left", () => {
    const season = { limit: qty(4, "pt/ac"), rate: qty(2, "pt/ac"), done: 2 };
    expectRefused(() => problemFrom("season-limit", season), "conflict", "given.done");
  });

  it("are put in the wording asked for", () => {
    const [topic, given] = BY_HAND.find(([name]) => name === "strip-calibration") as (typeof BY_HAND)[number];
    const said = [1, 2, 3, 4].map((wording) => problemFrom(topic, given, { wording }).problem);
    expect(new Set(said).size).toBe(4);
    for (const one of said)
      for (const figure of ["64 fl oz", "36 in", "363 ft"]) expect(one).toContain(figure);
    expect(problemFrom(topic, given).problem).toBe(said[0]);
    expectRefused(() => problemFrom(topic, given, { wording: 5 }), "out-of-range", "options.wording");
  });

  it("need every figure of the topic, of its kind, and no other", () => {
    const given = { used: qty(64, "fl_oz"), swath: qty(36, "in"), distance: qty(363, "ft") };
    const { used: _, ...less } = given;
    expectRefused(() => problemFrom("strip-calibration", less), "missing", "given.used");
    expectRefused(
      () => problemFrom("strip-calibration", { ...given, width: qty(3, "ft") }),
      "unknown-field",
      "given.width",
    );
    expectRefused(
      () => problemFrom("strip-calibration", { ...given, used: qty(64, "oz/ac") }),
      "wrong-dimension",
      "given.used",
    );
    expect(refusal(() => problemFrom("band", {})).issues.map(({ path }) => path)).toEqual(
      ["rows", "rowLength", "bandWidth", "rowSpacing", "rate"].map((name) => `given.${name}`),
    );
    expectRefused(() => problemFrom("band", undefined as never), "missing", "given");
    // As many nozzles as a person reads: 2 to 20.
    const caught = (many: number) => Array.from({ length: many }, () => qty(32, "fl_oz"));
    const boom = { time: qty(30, "s"), width: qty(20, "in"), speed: qty(3.3, "mph") };
    for (const [topic, others] of [
      ["nozzle-check", {}],
      ["boom-catch", boom],
    ] as const) {
      const of = (many: number) => () => problemFrom(topic, { ...others, catches: caught(many) });
      expectRefused(of(1), "too-few", "given.catches");
      expectRefused(of(21), "out-of-range", "given.catches");
      for (const many of [2, 20]) expect(of(many)).not.toThrow();
    }
    expectRefused(
      () => problemFrom("dilution", { from: percent(2), to: percent(10), volume: qty(5, "L") }),
      "conflict",
      "given.to",
    );
    expectRefused(
      () => problemFrom("strip-calibration", given, { unit: "us" } as never),
      "unknown-field",
      "options.unit",
    );
    expectRefused(() => problemFrom("cooking" as never, given), "unknown-choice", "topic");
  });

  it("take their system from the figures", () => {
    const { units, answer } = problemFrom("percent-mix", { percent: percent(1), fill: qty(10, "imp_gal") });
    expect([units, answer]).toEqual(["imperial", { value: 16, unit: "imp_fl_oz" }]);
    const sides = { length: qty(330, "ft"), width: qty(264, "ft") };
    expect(problemFrom("rectangle-area", sides).units).toBe("us");
    // 87,120 sq ft x 0.09290304 m2 / 10,000.
    const inHectares = problemFrom("rectangle-area", sides, { units: "metric" }).answer;
    expect(inHectares).toMatchObject({ unit: "ha" });
    expect((inHectares as { value: number }).value).toBeCloseTo(0.809371284, 8);
  });
});

describe("the topics", () => {
  it("draw plots and catches that a person may well meet", () => {
    const isFair = (topic: PracticeTopic, given: Given, units: "us" | "metric") =>
      TOPICS[topic].fits?.(given, sizesIn(units));
    const ft = (value: number) => qty(value, "ft");
    const fl_oz = (...values: number[]) => values.map((value) => qty(value, "fl_oz"));
    // A nozzle gives up to 4 L/min. In a minute, 4.8 L over 1 m at 4.8 km/h are 600 L/ha, a rate, but too much for one.
    const mL = (caught: number) => ({ caught: qty(caught, "mL"), time: qty(60, "s") });
    const [walk, width, speed] = [qty(24, "s"), qty(100, "cm"), qty(4.8, "km/h")];
    const boom = (...values: number[]) => ({
      ...{ width, speed, time: qty(60, "s") },
      catches: values.map((value) => qty(value, "mL")),
    });
    for (const [topic, units, fair, unfair] of [
      ["rectangle-area", "us", { length: ft(99), width: ft(66) }, { length: ft(66), width: ft(66) }],
      ["trapezoid-area", "us", { base: ft(99), top: ft(66) }, { base: ft(66), top: ft(66) }],
      ["catch-calibration", "metric", mL(4000), mL(4020)],
      ["strip-reading", "metric", { walk, ...mL(4000) }, { walk, ...mL(4020) }],
      ["strip-reading", "metric", { walk, ...mL(4000) }, { walk: qty(60, "s"), ...mL(4000) }],
      // 3.2 L/min are 400 L/ha, 3.3 are 412.5.
      ["boom-catch", "metric", boom(3190, 3210), boom(3290, 3310)],
      ["boom-catch", "metric", boom(4000, 4000), boom(4800, 4800)],
      // 12 off an average of 40 are 30%, and 13 off one of 40.25 more.
      ["nozzle-check", "us", { catches: fl_oz(52, 36, 36, 36) }, { catches: fl_oz(53, 36, 36, 36) }],
    ] as const) {
      expect(isFair(topic, fair, units), topic).toBe(true);
      expect(isFair(topic, unfair, units), topic).toBe(false);
    }
  });

  it("go from easy to hard", () => {
    const hard = practiceTopics.map((topic) => practiceProblem(topic, 1).difficulty);
    expect(hard).toEqual([...hard].sort());
    expect(new Set(hard)).toEqual(new Set([1, 2, 3]));
  });

  it.each([
    ["English", ENGLISH_PRACTICE_WORDS],
    ["Spanish", SPANISH_PRACTICE_WORDS],
  ])("have four wordings each in %s, with all figures and the unit in every one", (_, { topics }) => {
    for (const topic of practiceTopics) {
      const { given, answer } = practiceProblem(topic, 1);
      const names = [
        ...Object.keys(given),
        ...(typeof answer === "object" && answer.unit !== "%" ? ["unit"] : []),
        "farm",
      ];
      expect(new Set(topics[topic].problems).size).toBe(4);
      for (const text of topics[topic].problems) {
        const places = [...text.matchAll(/\{(\w+)/g)].map(([, name]) => name as string);
        expect([...new Set([...places, "farm"])].sort(), text).toEqual([...names].sort());
      }
    }
  });

  it("have words for every mistake, with places that are filled", () => {
    for (const words of [ENGLISH_PRACTICE_WORDS, SPANISH_PRACTICE_WORDS])
      for (const topic of practiceTopics)
        for (const units of ["us", "metric", "imperial"] as const)
          for (const { what, see, mend } of practiceProblem(topic, 5, { units, words }).mistakes)
            for (const text of [what, see, mend]) expect(text).toMatch(/^[^{}]{10,170}\.$/);
  });
});

// The sum that a mend says, on the figures above, and what it comes to.
type Mend = readonly [PracticeTopic, string, RegExp, RegExp, number, string];
const MENDS: readonly Mend[] = [
  [
    "product-per-tank",
    "unscaled-tank",
    /product per gal of mix by what the tank is filled to/,
    /producto por galón de mezcla por el llenado del tanque/,
    40,
    "2 x 16 / 20 = 1.6 fl oz/gal; x 25",
  ],
  [
    "reserve",
    "unscaled-reserve",
    /product per gal of mix by all of the mix, the extra too/,
    /producto por galón de mezcla por toda la mezcla, también la mezcla extra/,
    17.6,
    "2 x 16 / 20 = 1.6 fl oz/gal; x 11",
  ],
  ...["unscaled-last-load", "full-tank-dose", "all-in-last-load"].map(
    (code): Mend => [
      "whole-job",
      code,
      /product per L of mix by the mix in the last load/,
      /producto por L de mezcla por la mezcla de la última carga/,
      40,
      "2,000 / 300 = 6.667 mL/L; x 6",
    ],
  ),
  [
    "plant-timing",
    "flow-multiplied",
    /volume for a plant by the time of the catch, and divide by the amount caught/,
    /volumen para una planta por el tiempo en que se recogió y divida entre lo recogido/,
    7.5,
    "48 x 40 / 256",
  ],
  [
    "tree-row-volume",
    "canopy-for-spray",
    /Divide the canopy by 1,000 cu ft, and multiply by the spray/,
    /Divida la copa entre 1,000 pies cúbicos y multiplique por la mezcla/,
    108.9,
    "145,200 / 1,000 x 0.75",
  ],
];

describe("mends", () => {
  it.each(MENDS)(
    "on %s, %s, say a sum of the working that is right",
    (topic, code, english, spanish, sum, _arithmetic) => {
      const [, given] = BY_HAND.find(([name]) => name === topic) as (typeof BY_HAND)[number];
      for (const [words, locale, mend] of [
        [ENGLISH_PRACTICE_WORDS, "en-US", english],
        [SPANISH_PRACTICE_WORDS, "es-US", spanish],
      ] as const) {
        const { mistakes, answer } = problemFrom(topic, given, { words, locale });
        const shown = mistakes.filter(({ mistake }) => mistake === code);
        expect(shown.length).toBeGreaterThan(0);
        for (const one of shown) expect(one.mend).toMatch(mend);
        expect((answer as { value: number }).value).toBeCloseTo(sum, 9);
        for (const one of mistakes)
          expect(Math.abs((one.answer as { value: number }).value / sum - 1)).toBeGreaterThan(0.01);
      }
    },
  );

  it("of no mistake in the mix are the area times the rate, where that is a listed mistake", () => {
    for (const topic of ["reserve", "whole-job"] as const)
      for (let seed = 0; seed < 20; seed++)
        for (const { mend } of practiceProblem(topic, seed).mistakes)
          expect(mend).not.toMatch(/by the (sprayed )?area|area that is covered/);
  });

  it("and what is said of a mistake name the units of the system", () => {
    const said = (topic: PracticeTopic, code: string, units: "us" | "metric" | "imperial") =>
      practiceProblem(topic, 5, { units }).mistakes.find(({ mistake }) => mistake === code);
    expect(said("lawn-rate", "lawn-ten-times", "us")?.what).toMatch(/ per 100 sq ft\.$/);
    expect(said("lawn-rate", "lawn-ten-times", "metric")?.what).toMatch(/ per 10 m²\.$/);
    expect(said("row-length", "row-ten-times", "us")?.what).toMatch(/ per 100 ft of row\.$/);
    expect(said("row-length", "row-ten-times", "metric")?.what).toMatch(/ per 10 m of row\.$/);
    // 43,560 x 12 / 88 ft/min to the mile per hour; 10,000 x 100 / 16.667 m/min to the kilometer per hour.
    for (const [units, formula] of [
      ["us", "5,940"],
      ["imperial", "5,940"],
      ["metric", "60,000"],
    ] as const)
      expect(said("catch-calibration", "width-in-large-unit", units)?.mend).toContain(
        `The formula with ${formula} takes the width as given`,
      );
  });
});

describe("the guide page", () => {
  it("lists every topic with its difficulty and the figures that it gives", () => {
    const rows = [
      ...readFileSync("docs/teaching.md", "utf8").matchAll(/^\| `([\w-]+)` +\| (\d) +\|.*\| (.*?) +\|$/gm),
    ];
    const listed = rows.map(([, topic, difficulty, names = ""]) => [
      topic,
      Number(difficulty),
      [...names.matchAll(/`(\w+)`/g)].map(([, name]) => name),
    ]);
    expect(listed).toEqual(
      Object.entries(TOPICS).map(([topic, { difficulty, fields }]) => [topic, difficulty, fields.names]),
    );
  });
});
