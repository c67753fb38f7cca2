import { describe, expect, it } from "vitest";
import { problemFrom } from "../../../src/practice/index.ts";
import { TOPICS } from "../../../src/practice/topics/all.ts";
import { sizesIn } from "../../../src/practice/topics/sizes.ts";
import { allWrongAnswers } from "../../../src/practice/wrong-answers.ts";
import { qty } from "../../../src/units/index.ts";
import { expectWrongAnswers } from "../../helpers/wrong-answers.ts";

const percentage = (value: number) => ({ ...qty(value, "%"), basis: "v/v" as const });

// 128 US fl oz to the gallon and 16 to the pint; 160 imperial ones and 20. 16 oz to the pound, 0.45359237 kg to it.
// 43,560 sq ft to the acre, 0.40468564224 ha to it. Water weighs 8.34 lb to the US gallon, 10 lb to the imperial one.
describe("the wrong answers of products, by hand", () => {
  it("are those of a full tank", () => {
    const given = {
      rate: qty(2, "pt/ac"),
      carrierRate: qty(36, "gal/ac"),
      fill: qty(15, "gal"),
      density: qty(9.2, "lb/gal"),
    };
    const acres = 15 / 36;
    const right = 2 * 16 * acres;
    expectWrongAnswers("product-per-tank", "us", given, right, {
      "unscaled-tank": 2 * 16,
      "weighed-as-volume": (right / 16 / 9.2) * 128,
      "weighed-as-water": ((right / 128) * 8.34 * 128) / 9.2,
      "weight-for-volume": [(right / 128) * 9.2 * 16, (right / 128) * 9.2],
      "label-unit-left": 2 * acres,
      "pint-of-8": 2 * 8 * acres,
      "pint-of-other-system": 2 * 20 * acres,
      "pint-of-32": 2 * 32 * acres,
      "per-lawn-for-land": 2 * 16 * ((acres * 43_560) / 1000),
      "rate-per-other-land": 2 * 16 * acres * 0.40468564224,
      "area-for-product": acres,
      inverted: (2 * 16) / acres,
      "rate-per-volume": 2 * 16 * 15,
      "rounded-early": 2 * 16 * 0.4,
    });
  });

  it("are those of a full tank for 1.2 acres, where nothing is rounded and the estimate shows no step turned around", () => {
    const given = {
      rate: qty(2, "pt/ac"),
      carrierRate: qty(20, "gal/ac"),
      fill: qty(24, "gal"),
      density: qty(9.2, "lb/gal"),
    };
    expectWrongAnswers("product-per-tank", "us", given, 2 * 16 * 1.2, {
      "unscaled-tank": 2 * 16,
      "weighed-as-volume": ((2 * 16 * 1.2) / 16 / 9.2) * 128,
      "weighed-as-water": (2 * 16 * 1.2 * 8.34) / 9.2,
      "weight-for-volume": [((2 * 16 * 1.2) / 128) * 9.2 * 16, ((2 * 16 * 1.2) / 128) * 9.2],
      "label-unit-left": 2 * 1.2,
      "pint-of-8": 2 * 8 * 1.2,
      "pint-of-other-system": 2 * 20 * 1.2,
      "pint-of-32": 2 * 32 * 1.2,
      "per-lawn-for-land": 2 * 16 * 1.2 * 43.56,
      "rate-per-other-land": 2 * 16 * 1.2 * 0.40468564224,
      "area-for-product": 1.2,
      "rate-per-volume": 2 * 16 * 24,
    });
  });

  it("are those of a full tank whose label gives fluid ounces: none of them takes a pint for something else", () => {
    const given = {
      rate: qty(32, "fl_oz/ac"),
      carrierRate: qty(36, "gal/ac"),
      fill: qty(15, "gal"),
      density: qty(9.2, "lb/gal"),
    };
    const acres = 15 / 36;
    expectWrongAnswers("product-per-tank", "us", given, 32 * acres, {
      "unscaled-tank": 32,
      "weighed-as-water": (32 * acres * 8.34) / 9.2,
      "weight-for-volume": [((32 * acres) / 128) * 9.2 * 16, ((32 * acres) / 128) * 9.2],
      "area-for-product": acres,
      inverted: 32 / acres,
      "rounded-early": 32 * 0.4,
    });
  });

  it("are those of a full tank in imperial units", () => {
    const given = {
      rate: qty(2, "imp_pt/ac"),
      carrierRate: qty(36, "imp_gal/ac"),
      fill: qty(12, "imp_gal"),
      density: qty(11.5, "lb/imp_gal"),
    };
    const acres = 12 / 36;
    const right = 2 * 20 * acres;
    expectWrongAnswers("product-per-tank", "imperial", given, right, {
      "unscaled-tank": 2 * 20,
      "weighed-as-volume": (right / 16 / 11.5) * 160,
      "weighed-as-water": ((right / 160) * 10 * 160) / 11.5,
      "weight-for-volume": [(right / 160) * 11.5 * 16, (right / 160) * 11.5],
      "label-unit-left": 2 * acres,
      "pint-of-8": 2 * 8 * acres,
      "pint-of-other-system": 2 * 16 * acres,
      "pint-of-32": 2 * 32 * acres,
      "per-lawn-for-land": 2 * 20 * ((acres * 43_560) / 1000),
      "rate-per-other-land": 2 * 20 * acres * 0.40468564224,
      "area-for-product": acres,
      inverted: (2 * 20) / acres,
      "rate-per-volume": 2 * 20 * 12,
      "rounded-early": 2 * 20 * 0.3,
    });
  });

  it("are those of a full tank in metric units", () => {
    const given = {
      rate: qty(1.5, "L/ha"),
      carrierRate: qty(360, "L/ha"),
      fill: qty(50, "L"),
      density: qty(1.2, "kg/L"),
    };
    const hectares = 50 / 360;
    const right = 1500 * hectares;
    expectWrongAnswers("product-per-tank", "metric", given, right, {
      "unscaled-tank": 1500,
      // As many grams as milliliters, which is what water weighs too.
      "weighed-as-volume": right / 1.2,
      "weighed-as-water": right / 1.2,
      "weight-for-volume": [right * 1.2, (right * 1.2) / 1000],
      "label-unit-left": 1.5 * hectares,
      "liter-of-100": 150 * hectares,
      "per-lawn-for-land": 1500 * hectares * 100,
      "rate-per-other-land": (1500 * hectares) / 0.40468564224,
      "area-for-product": hectares,
      inverted: 1500 / hectares,
      "rate-per-volume": 1500 * 50,
      "rounded-early": 1500 * 0.1,
    });
  });

  it("are not a dose of 0, where a step rounded to one decimal would be 0", () => {
    // 12 L at 300 L/ha are 0.04 ha.
    const given = {
      rate: qty(1.5, "L/ha"),
      carrierRate: qty(300, "L/ha"),
      fill: qty(12, "L"),
      density: qty(1.2, "kg/L"),
    };
    const wrong = allWrongAnswers(TOPICS["product-per-tank"], given, sizesIn("metric"));
    expect(wrong.flatMap(({ mistakes }) => mistakes)).not.toContain("rounded-early");
  });

  it("are those of a dry product", () => {
    const given = { area: { ...qty(0.6, "ac"), of: "treated" as const }, rate: qty(3, "lb/ac") };
    const pounds = 3 * 0.6;
    const wrong = {
      "mass-unit-left": pounds,
      "unscaled-product": 3 * 16,
      "divided-by-area": (3 * 16) / 0.6,
      "rate-per-other-land": pounds * 16 * 0.40468564224,
      "per-lawn-for-land": 3 * 16 * ((0.6 * 43_560) / 1000),
      "pound-of-12": pounds * 12,
    };
    expectWrongAnswers("dry-product", "us", given, pounds * 16, {
      ...wrong,
      "weighed-by-water": (pounds / 8.34) * 128,
    });
    // An imperial fluid ounce of water weighs an ounce.
    expectWrongAnswers("dry-product", "imperial", given, pounds * 16, wrong);
  });

  it("are those of a dry product in metric units", () => {
    const given = { area: { ...qty(0.6, "ha"), of: "treated" as const }, rate: qty(1.5, "kg/ha") };
    const grams = 1500 * 0.6;
    expectWrongAnswers("dry-product", "metric", given, grams, {
      "mass-unit-left": 1.5 * 0.6,
      "unscaled-product": 1500,
      "divided-by-area": 1500 / 0.6,
      "rate-per-other-land": grams / 0.40468564224,
      "per-lawn-for-land": 1500 * ((0.6 * 10_000) / 100),
    });
  });

  it("are those of a liquid on a lawn", () => {
    const given = { length: qty(120, "ft"), width: qty(60, "ft"), rate: qty(1.5, "fl_oz/1000ft2") };
    const feet = 120 * 60;
    expectWrongAnswers("lawn-rate", "us", given, (1.5 * feet) / 1000, {
      "land-for-lawn": (1.5 * feet) / 43_560,
      "lawn-size-left-out": 1.5 * feet,
      "unscaled-lawn": 1.5,
      "sides-added": (1.5 * (120 + 60)) / 1000,
      "divided-by-area": 1.5 / (feet / 1000),
      "lawn-ten-times": (1.5 * feet) / 100,
      "area-for-product": [feet / 1000, feet],
      "volume-unit-left": (1.5 * feet) / 1000 / 128,
    });
  });

  it("are those of a liquid on a lawn in metric units", () => {
    const given = { length: qty(35, "m"), width: qty(20, "m"), rate: qty(15, "mL/100m2") };
    const meters = 35 * 20;
    expectWrongAnswers("lawn-rate", "metric", given, (15 * meters) / 100, {
      "land-for-lawn": (15 * meters) / 10_000,
      "lawn-size-left-out": 15 * meters,
      "unscaled-lawn": 15,
      "sides-added": (15 * (35 + 20)) / 100,
      "divided-by-area": 15 / (meters / 100),
      "lawn-ten-times": (15 * meters) / 10,
      "area-for-product": [meters / 100, meters],
      "volume-unit-left": (15 * meters) / 100 / 1000,
    });
  });

  it("are those of granules", () => {
    const given = { length: qty(120, "ft"), width: qty(60, "ft"), rate: qty(2.5, "lb/1000ft2") };
    const feet = 120 * 60;
    const pounds = (2.5 * feet) / 1000;
    expectWrongAnswers("granules", "us", given, pounds, {
      "land-for-lawn": (2.5 * feet) / 43_560,
      "lawn-size-left-out": 2.5 * feet,
      "unscaled-lawn": 2.5,
      "sides-added": (2.5 * (120 + 60)) / 1000,
      "divided-by-area": 2.5 / (feet / 1000),
      "lawn-ten-times": (2.5 * feet) / 100,
      "area-for-product": [feet / 1000, feet],
      "small-mass-for-large": pounds * 16,
      "pounds-as-kilograms": pounds * 0.45359237,
    });
  });

  it("are those of granules in metric units", () => {
    const given = { length: qty(35, "m"), width: qty(20, "m"), rate: qty(1.5, "kg/100m2") };
    const meters = 35 * 20;
    expectWrongAnswers("granules", "metric", given, (1.5 * meters) / 100, {
      "land-for-lawn": (1.5 * meters) / 10_000,
      "lawn-size-left-out": 1.5 * meters,
      "unscaled-lawn": 1.5,
      "sides-added": (1.5 * (35 + 20)) / 100,
      "divided-by-area": 1.5 / (meters / 100),
      "lawn-ten-times": (1.5 * meters) / 10,
      "area-for-product": [meters / 100, meters],
      "small-mass-for-large": (1500 * meters) / 100,
    });
  });

  it("are those of a fertilizer", () => {
    const given = {
      needed: qty(0.75, "lb/1000ft2"),
      area: { ...qty(6000, "ft2"), of: "treated" as const },
      nitrogen: 25,
    };
    const bag = 0.75 / 0.25;
    expectWrongAnswers("fertilizer", "us", given, bag * 6, {
      "nutrient-for-product": 0.75 * 6,
      "content-multiplied": 0.75 * 0.25 * 6,
      "unscaled-lawn": bag,
      "land-for-lawn": (bag * 6000) / 43_560,
      "lawn-size-left-out": bag * 6000,
      "lawn-ten-times": bag * 60,
      "small-mass-for-large": bag * 6 * 16,
      "pounds-as-kilograms": bag * 6 * 0.45359237,
    });
  });

  it("are those of a fertilizer in metric units", () => {
    const given = {
      needed: qty(0.4, "kg/100m2"),
      area: { ...qty(700, "m2"), of: "treated" as const },
      nitrogen: 16,
    };
    const bag = 0.4 / 0.16;
    expectWrongAnswers("fertilizer", "metric", given, bag * 7, {
      "nutrient-for-product": 0.4 * 7,
      "content-multiplied": 0.4 * 0.16 * 7,
      "unscaled-lawn": bag,
      "land-for-lawn": (bag * 700) / 10_000,
      "lawn-size-left-out": bag * 700,
      "lawn-ten-times": bag * 70,
      "small-mass-for-large": bag * 7 * 1000,
    });
  });

  it("are those of rows", () => {
    const given = { rows: 12, rowLength: qty(250, "ft"), rate: qty(2, "fl_oz/1000ft") };
    expectWrongAnswers("row-length", "us", given, (2 * 12 * 250) / 1000, {
      "one-row-only": (2 * 250) / 1000,
      "row-size-left-out": 2 * 12 * 250,
      "unscaled-row": 2,
      "row-ten-times": (2 * 12 * 250) / 100,
      "divided-by-rows": 2 / ((12 * 250) / 1000),
      "volume-unit-left": (2 * 12 * 250) / 1000 / 128,
    });
  });

  it("are those of rows in metric units", () => {
    const given = { rows: 8, rowLength: qty(60, "m"), rate: qty(25, "mL/100m") };
    expectWrongAnswers("row-length", "metric", given, (25 * 8 * 60) / 100, {
      "one-row-only": (25 * 60) / 100,
      "row-size-left-out": 25 * 8 * 60,
      "unscaled-row": 25,
      "row-ten-times": (25 * 8 * 60) / 10,
      "divided-by-rows": 25 / ((8 * 60) / 100),
      "volume-unit-left": (25 * 8 * 60) / 100 / 1000,
    });
  });

  it("are those of a percentage of a mix", () => {
    const given = { percent: percentage(0.5), fill: qty(50, "gal") };
    expectWrongAnswers("percent-mix", "us", given, 50 * 128 * 0.005, {
      "percent-as-part": 50 * 128 * 0.5,
      "per-mille": 50 * 128 * 0.0005,
      "volume-unit-left": 50 * 0.005,
      "pint-for-gallon": 50 * 16 * 0.005,
      "other-gallon": 50 * 160 * 0.005,
      inverted: (50 * 128) / 0.005,
      "one-unit-only": 128 * 0.005,
    });
  });

  it("are those of a percentage of a mix in imperial and in metric units", () => {
    const percent = percentage(0.75);
    expectWrongAnswers("percent-mix", "imperial", { percent, fill: qty(40, "imp_gal") }, 40 * 160 * 0.0075, {
      "percent-as-part": 40 * 160 * 0.75,
      "per-mille": 40 * 160 * 0.00075,
      "volume-unit-left": 40 * 0.0075,
      "pint-for-gallon": 40 * 20 * 0.0075,
      "other-gallon": 40 * 128 * 0.0075,
      inverted: (40 * 160) / 0.0075,
      "one-unit-only": 160 * 0.0075,
    });
    expectWrongAnswers("percent-mix", "metric", { percent, fill: qty(200, "L") }, 200_000 * 0.0075, {
      "percent-as-part": 200_000 * 0.75,
      "per-mille": 200_000 * 0.00075,
      "volume-unit-left": 200 * 0.0075,
      inverted: 200_000 / 0.0075,
      "one-unit-only": 1000 * 0.0075,
    });
  });

  it("are those of a dilution", () => {
    const strengths = { from: percentage(10), to: percentage(2) };
    const us = 3 * 128;
    expectWrongAnswers("dilution", "us", { ...strengths, volume: qty(3, "gal") }, (us * 2) / 10, {
      "took-the-water": us - (us * 2) / 10,
      "strength-ignored": us * 0.02,
      // 2 parts of the concentrate to 10 parts of water.
      "parts-of-water": (us * 2) / (2 + 10),
      "strengths-subtracted": (us * (10 - 2)) / 10,
      "volume-unit-left": (3 * 2) / 10,
      "final-percent-only": us * 2,
      "strengths-swapped": (us * 10) / 2,
    });
    expectWrongAnswers("dilution", "metric", { ...strengths, volume: qty(12, "L") }, (12_000 * 2) / 10, {
      "took-the-water": 12_000 - (12_000 * 2) / 10,
      "strength-ignored": 12_000 * 0.02,
      "parts-of-water": (12_000 * 2) / (2 + 10),
      "strengths-subtracted": (12_000 * (10 - 2)) / 10,
      "volume-unit-left": (12 * 2) / 10,
      "final-percent-only": 12_000 * 2,
      "strengths-swapped": (12_000 * 10) / 2,
    });
  });

  it("are those of loads", () => {
    const us = {
      ground: { ...qty(5, "ac"), of: "ground" as const },
      area: { ...qty(2.5, "ac"), of: "treated" as const },
      rate: qty(20, "gal/ac"),
      fill: qty(15, "gal"),
    };
    expectWrongAnswers("tank-loads", "us", us, 4, {
      "rounded-down": 3,
      "loads-unrounded": (20 * 2.5) / 15,
      "ground-for-area": 7,
      "fraction-inverted": 15 / (20 * 2.5),
      "area-left-out": 20 / 15,
      "total-for-count": 20 * 2.5,
    });
    const metric = {
      ground: { ...qty(1.6, "ha"), of: "ground" as const },
      area: { ...qty(0.8, "ha"), of: "treated" as const },
      rate: qty(250, "L/ha"),
      fill: qty(60, "L"),
    };
    expectWrongAnswers("tank-loads", "metric", metric, 4, {
      "rounded-down": 3,
      "loads-unrounded": (250 * 0.8) / 60,
      "ground-for-area": 7,
      "fraction-inverted": 60 / (250 * 0.8),
      "area-left-out": 250 / 60,
      "total-for-count": 250 * 0.8,
    });
  });

  it("are those of whole loads, where rounding changes nothing", () => {
    const given = {
      ground: { ...qty(5, "ac"), of: "ground" as const },
      area: { ...qty(2.4, "ac"), of: "treated" as const },
      rate: qty(25, "gal/ac"),
      fill: qty(15, "gal"),
    };
    expectWrongAnswers("tank-loads", "us", given, 4, {
      "ground-for-area": 9,
      "fraction-inverted": 15 / (25 * 2.4),
      "area-left-out": 25 / 15,
      "total-for-count": 25 * 2.4,
    });
  });

  // 6 teaspoons and 2 tablespoons to the US fluid ounce; 28.4130625 mL to the imperial one.
  it("are those of spoons", () => {
    expectWrongAnswers("household-measure", "us", { amount: qty(1.3, "fl_oz"), spoon: qty(1, "tsp") }, 7, {
      "rounded-up": 8,
      "spoons-unrounded": 1.3 * 6,
      "tablespoon-for-teaspoon": 2,
      "fraction-inverted": 1 / (1.3 * 6),
    });
    expectWrongAnswers("household-measure", "us", { amount: qty(4.7, "fl_oz"), spoon: qty(1, "tbsp") }, 9, {
      "rounded-up": 10,
      "spoons-unrounded": 4.7 * 2,
      "teaspoon-for-tablespoon": 28,
      "fraction-inverted": 1 / (4.7 * 2),
    });
    expectWrongAnswers(
      "household-measure",
      "imperial",
      { amount: qty(1.5, "imp_fl_oz"), spoon: qty(5, "mL") },
      8,
      {
        "rounded-up": 9,
        "spoons-unrounded": (1.5 * 28.4130625) / 5,
        "tablespoon-for-teaspoon": 2,
        "fraction-inverted": 5 / (1.5 * 28.4130625),
      },
    );
    expectWrongAnswers("household-measure", "metric", { amount: qty(64, "mL"), spoon: qty(15, "mL") }, 4, {
      "rounded-up": 5,
      "spoons-unrounded": 64 / 15,
      "teaspoon-for-tablespoon": 12,
      "fraction-inverted": 15 / 64,
    });
  });

  it("are those of whole spoons, where rounding changes nothing", () => {
    expectWrongAnswers("household-measure", "metric", { amount: qty(60, "mL"), spoon: qty(15, "mL") }, 4, {
      "teaspoon-for-tablespoon": 12,
      "fraction-inverted": 15 / 60,
    });
  });

  it("are those of a cup, which is neither a teaspoon nor a tablespoon", () => {
    expectWrongAnswers("household-measure", "metric", { amount: qty(100, "mL"), spoon: qty(30, "mL") }, 3, {
      "rounded-up": 4,
      "spoons-unrounded": 100 / 30,
      "fraction-inverted": 30 / 100,
    });
  });

  it("stand beside a working that changes the amount to spoons first", () => {
    const { working } = problemFrom("household-measure", { amount: qty(1.3, "fl_oz"), spoon: qty(1, "tsp") });
    const [toSpoons, whole] = working;
    expect(toSpoons).toMatchObject({ about: "practice.spoons.amount", result: { unit: "tsp" } });
    expect(toSpoons?.result).toHaveProperty("value", expect.closeTo(1.3 * 6, 9));
    expect(whole?.result).toBe(7);
  });
});
