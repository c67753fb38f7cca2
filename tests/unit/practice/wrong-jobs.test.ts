import { describe, expect, it } from "vitest";
import type { Given, PracticeTopic } from "../../../src/practice/index.ts";
import { TOPICS } from "../../../src/practice/topics/all.ts";
import { sizesIn } from "../../../src/practice/topics/sizes.ts";
import { qty, type UnitSystem } from "../../../src/units/index.ts";
import { expectWrongAnswers } from "../../helpers/wrong-answers.ts";

const percent = (value: number) => ({ ...qty(value, "%"), basis: "v/v" as const });
const treated = (value: number, unit: "ac" | "ha") => ({ value, unit, of: "treated" as const });

/** Whether such figures are drawn for a class. */
const fits = (name: PracticeTopic, given: Given, system: UnitSystem = "us") =>
  TOPICS[name].fits?.(given, sizesIn(system));

// 43,560 sq ft to the acre and 4,840 sq yd; 0.40468564224 ha to the acre. 128 fl oz to the US gallon, 160 to the imperial one.
// 16 fl oz to the US pint, 20 to the imperial one. 10,000 sq m to the hectare.
describe("the wrong answers of bands, by hand", () => {
  it("are those of an acre", () => {
    const given = {
      rows: 12,
      rowLength: qty(198, "ft"),
      bandWidth: qty(24, "in"),
      rowSpacing: qty(6, "ft"),
      rate: qty(1.5, "pt/ac"),
    };
    const feet = 12 * 198 * 2;
    const acres = feet / 43_560;
    const perAcre = 1.5 * 16;
    const wrong = {
      "ground-for-treated": ((12 * 198 * 6) / 43_560) * perAcre,
      "one-row-too-few": ((11 * 198 * 2) / 43_560) * perAcre,
      "one-row-only": ((198 * 2) / 43_560) * perAcre,
      "width-in-small-unit": ((12 * 198 * 24) / 43_560) * perAcre,
      "length-and-spacing": ((12 * 6 * 2) / 43_560) * perAcre,
      "unscaled-product": perAcre,
      "label-unit-left": acres * 1.5,
      "pint-of-8": acres * 1.5 * 8,
      "pint-of-other-system": acres * 1.5 * 20,
      "pint-of-32": acres * 1.5 * 32,
      "per-lawn-for-land": (feet / 1000) * perAcre,
      "rate-per-other-land": acres * 0.40468564224 * perAcre,
      "land-unit-left": feet * perAcre,
      "wrong-land-factor": (feet / 4840) * perAcre,
      "other-land-unit": acres * 0.40468564224 * perAcre,
      "land-factor-inverted": feet * 43_560 * perAcre,
      "land-unit-from-other": (feet / 10_000) * perAcre,
      "area-for-product": acres,
      "divided-by-area": perAcre / acres,
      // 0.109 ac taken as 0.1 ac.
      "rounded-early": 0.1 * perAcre,
    };
    expectWrongAnswers("band", "us", given, acres * perAcre, wrong);
    // 0.009 ac round to nothing, which nobody goes on with.
    const { "one-row-too-few": _, "one-row-only": __, "rounded-early": ___, ...ofOneRow } = wrong;
    const perRow = Object.entries(ofOneRow).map(([code, answer]) => [code, answer / 12]);
    expectWrongAnswers("band", "us", { ...given, rows: 1 }, (acres / 12) * perAcre, {
      ...Object.fromEntries(perRow),
      "unscaled-product": perAcre,
      "divided-by-area": perAcre / (acres / 12),
    });
    const imperial = { ...given, rate: qty(1.5, "imp_pt/ac") };
    const inImperial = Object.entries(wrong).map(([code, answer]) => [code, (answer / 16) * 20]);
    expectWrongAnswers("band", "imperial", imperial, acres * 1.5 * 20, {
      ...Object.fromEntries(inImperial),
      "label-unit-left": acres * 1.5,
      "pint-of-8": acres * 1.5 * 8,
      "pint-of-other-system": acres * 1.5 * 16,
      "pint-of-32": acres * 1.5 * 32,
      "area-for-product": acres,
    });
  });

  it("are those of a hectare", () => {
    const given = {
      rows: 24,
      rowLength: qty(110, "m"),
      bandWidth: qty(80, "cm"),
      rowSpacing: qty(2, "m"),
      rate: qty(2, "L/ha"),
    };
    const meters = 24 * 110 * 0.8;
    const hectares = meters / 10_000;
    expectWrongAnswers("band", "metric", given, hectares * 2000, {
      "ground-for-treated": ((24 * 110 * 2) / 10_000) * 2000,
      "one-row-too-few": ((23 * 110 * 0.8) / 10_000) * 2000,
      "one-row-only": ((110 * 0.8) / 10_000) * 2000,
      "width-in-small-unit": ((24 * 110 * 80) / 10_000) * 2000,
      "length-and-spacing": ((24 * 2 * 0.8) / 10_000) * 2000,
      "unscaled-product": 2000,
      "label-unit-left": hectares * 2,
      "liter-of-100": hectares * 2 * 100,
      "per-lawn-for-land": (meters / 100) * 2000,
      "rate-per-other-land": (hectares / 0.40468564224) * 2000,
      "land-unit-left": meters * 2000,
      "wrong-land-factor": (meters / 1000) * 2000,
      "other-land-unit": (hectares / 0.40468564224) * 2000,
      "land-factor-inverted": meters * 10_000 * 2000,
      "land-unit-from-other": (meters / 43_560) * 2000,
      "area-for-product": hectares,
      "divided-by-area": 2000 / hectares,
      // 0.2112 ha taken as 0.2 ha.
      "rounded-early": 0.2 * 2000,
    });
  });

  it("need ground between the bands, and no spacing for the answer", () => {
    const given = { rows: 12, rowLength: qty(198, "ft"), rowSpacing: qty(5, "ft"), rate: qty(1.5, "pt/ac") };
    // 42 in of 60 in are 0.7 of the spacing.
    expect(fits("band", { ...given, bandWidth: qty(42, "in") })).toBe(true);
    expect(fits("band", { ...given, bandWidth: qty(43, "in") })).toBe(false);
    expect(TOPICS.band.notNeeded).toEqual(["rowSpacing"]);
  });

  it("are seen on a drawing with as many rows as can be told apart", () => {
    const given = { rowLength: qty(198, "ft"), bandWidth: qty(24, "in"), rowSpacing: qty(6, "ft") };
    const drawn = (rows: number) => TOPICS.band.drawing?.({ ...given, rows });
    // Two rows on 12 ft: each band is 2 ft wide, in the middle of its 6 ft.
    const sides = drawn(2)?.areas.map(({ corners }) => [corners[0]?.y, corners[2]?.y]);
    expect(sides).toEqual([
      [0, 12],
      [2, 4],
      [8, 10],
    ]);
    expect(drawn(2)?.labels.map(({ length }) => length)).toEqual([qty(198, "ft")]);
    expect([drawn(60)?.areas.length, drawn(61)]).toEqual([61, undefined]);
  });
});

describe("the wrong answers of a whole job, by hand", () => {
  it("are those of an acre", () => {
    const given = {
      rows: 30,
      rowLength: qty(231, "ft"),
      bandWidth: qty(24, "in"),
      rowSpacing: qty(6, "ft"),
      distance: qty(242, "ft"),
      used: qty(32, "fl_oz"),
      fill: qty(3, "gal"),
      rate: qty(1.5, "pt/ac"),
    };
    // The strip is 242 x 2 = 484 sq ft, which is 1/90 ac.
    const carrier = (32 / 128) * 90;
    const acres = (30 * 231 * 2) / 43_560;
    // 7.16 gal of mix in 3 loads; 6.92 gal for 29 rows in 3 loads; 21.5 gal for all of the ground in 8.
    const last = acres * carrier - 2 * 3;
    const withoutOne = ((29 * 231 * 2) / 43_560) * carrier - 2 * 3;
    const onGround = ((30 * 231 * 6) / 43_560) * carrier - 7 * 3;
    const lastAcres = last / carrier;
    const wrongAt = (perAcre: number) => ({
      "full-tank-dose": (3 / carrier) * perAcre,
      "all-in-last-load": acres * perAcre,
      "equal-loads": (acres * perAcre) / 3,
      "unscaled-last-load": perAcre,
      "ground-for-treated-loads": (onGround / carrier) * perAcre,
      "one-row-too-few": (withoutOne / carrier) * perAcre,
      "label-unit-left": lastAcres * 1.5,
      "pint-of-8": lastAcres * 1.5 * 8,
      "pint-of-32": lastAcres * 1.5 * 32,
      "per-lawn-for-land": (lastAcres * 43_560 * perAcre) / 1000,
      "rate-per-other-land": lastAcres * 0.40468564224 * perAcre,
    });
    expectWrongAnswers("whole-job", "us", given, lastAcres * 1.5 * 16, {
      ...wrongAt(1.5 * 16),
      "mix-for-product": [last, last * 128],
      "pint-of-other-system": lastAcres * 1.5 * 20,
    });
    // 40 of 160 fl oz are a quarter of a gallon too.
    const measured = { used: qty(40, "imp_fl_oz"), fill: qty(3, "imp_gal"), rate: qty(1.5, "imp_pt/ac") };
    expectWrongAnswers("whole-job", "imperial", { ...given, ...measured }, lastAcres * 1.5 * 20, {
      ...wrongAt(1.5 * 20),
      "mix-for-product": [last, last * 160],
      "pint-of-other-system": lastAcres * 1.5 * 16,
    });
    // All of the mix without the two full tanks.
    const lines = TOPICS["whole-job"].working(given, sizesIn("us"));
    expect(lines.find(({ id }) => id === "practice.lastLoad")).toMatchObject({
      terms: { loads: 3, fill: qty(3, "gal") },
      result: { value: expect.closeTo(last, 9), unit: "gal" },
      source: "common practice, no source",
    });
  });

  it("are those of a hectare", () => {
    const given = {
      rows: 22,
      rowLength: qty(100, "m"),
      bandWidth: qty(60, "cm"),
      rowSpacing: qty(2, "m"),
      distance: qty(50, "m"),
      used: qty(900, "mL"),
      fill: qty(15, "L"),
      rate: qty(2, "L/ha"),
    };
    // The strip is 50 x 0.6 = 30 sq m: 0.9 L there are 300 L/ha. 39.6 L in 3 loads, 37.8 L in 3, 132 L in 9.
    const last = ((22 * 100 * 0.6) / 10_000) * 300 - 2 * 15;
    const withoutOne = ((21 * 100 * 0.6) / 10_000) * 300 - 2 * 15;
    const onGround = ((22 * 100 * 2) / 10_000) * 300 - 8 * 15;
    const hectares = last / 300;
    expectWrongAnswers("whole-job", "metric", given, hectares * 2000, {
      "full-tank-dose": (15 / 300) * 2000,
      "all-in-last-load": ((22 * 100 * 0.6) / 10_000) * 2000,
      "equal-loads": (((22 * 100 * 0.6) / 10_000) * 2000) / 3,
      "unscaled-last-load": 2000,
      "mix-for-product": [last, last * 1000],
      "ground-for-treated-loads": (onGround / 300) * 2000,
      "one-row-too-few": (withoutOne / 300) * 2000,
      "label-unit-left": hectares * 2,
      "liter-of-100": hectares * 2 * 100,
      "per-lawn-for-land": ((hectares * 10_000) / 100) * 2000,
      "rate-per-other-land": (hectares / 0.40468564224) * 2000,
    });
  });

  it("are of 2 to 6 loads at a usual rate, the last of them not too small, with ground between the bands", () => {
    const given = {
      rows: 30,
      rowLength: qty(231, "ft"),
      bandWidth: qty(24, "in"),
      rowSpacing: qty(6, "ft"),
      distance: qty(242, "ft"),
      used: qty(32, "fl_oz"),
      fill: qty(3, "gal"),
      rate: qty(1.5, "pt/ac"),
    };
    // 22.5 gal/ac, and 7.159 gal in all.
    const filled = (gallons: number) => fits("whole-job", { ...given, fill: qty(gallons, "gal") });
    expect(fits("whole-job", given)).toBe(true);
    expect(fits("whole-job", { ...given, rowSpacing: qty(2.8, "ft") })).toBe(false);
    // One load; 2 with 0.39 and 0.19 of a tank in the last; 6 with 0.5 of one; 7 with 0.5 of one.
    expect([7.2, 5.15, 6, 1.3, 1.1].map(filled)).toEqual([false, true, false, true, false]);
    // 10 gal/ac are 14.22 fl oz on the strip, 60 gal/ac are 85.33 fl oz; 3.18 and 19.1 gal in all, each in 2 loads or more.
    const used = (ounces: number, gallons: number) =>
      fits("whole-job", { ...given, used: qty(ounces, "fl_oz"), fill: qty(gallons, "gal") });
    expect([used(14.1, 2), used(14.3, 2), used(85.2, 10), used(85.5, 10)]).toEqual([
      false,
      true,
      true,
      false,
    ]);
    expect(TOPICS["whole-job"].notNeeded).toEqual(["rowSpacing"]);
  });
});

describe("the wrong answers of timing a plant, by hand", () => {
  it("are those of gallons", () => {
    const given = { caught: qty(1.5, "gal"), time: qty(30, "s"), each: qty(24, "fl_oz") };
    const right = (24 / 128 / 1.5) * 30;
    const wrong = {
      "volumes-in-two-units": (24 / 1.5) * 30,
      "minutes-for-seconds": (24 / 128 / 1.5) * 0.5,
      "time-taken-as-minute": (24 / 128 / 1.5) * 60,
      "flow-multiplied": [(24 / 128) * (1.5 / 30), 24 * (1.5 / 30)],
      "time-of-catch": 30,
      "plants-from-catch": (1.5 * 128) / 24,
      "fraction-inverted": (1.5 * 128) / (24 * 30),
      "volume-factor-inverted": ((24 * 128) / 1.5) * 30,
      "other-gallon": (24 / 160 / 1.5) * 30,
    };
    expectWrongAnswers("plant-timing", "us", given, right, wrong);
    const { "time-taken-as-minute": _, ...ofMinute } = wrong;
    expectWrongAnswers("plant-timing", "us", { ...given, time: qty(60, "s") }, right * 2, {
      ...ofMinute,
      "volumes-in-two-units": (24 / 1.5) * 60,
      "minutes-for-seconds": 24 / 128 / 1.5,
      "flow-multiplied": [(24 / 128) * (1.5 / 60), 24 * (1.5 / 60)],
      "time-of-catch": 60,
      "fraction-inverted": (1.5 * 128) / (24 * 60),
      "volume-factor-inverted": ((24 * 128) / 1.5) * 60,
      "other-gallon": (24 / 160 / 1.5) * 60,
    });
  });

  it("are those of imperial gallons", () => {
    const given = { caught: qty(1.5, "imp_gal"), time: qty(30, "s"), each: qty(24, "imp_fl_oz") };
    expectWrongAnswers("plant-timing", "imperial", given, (24 / 160 / 1.5) * 30, {
      "volumes-in-two-units": (24 / 1.5) * 30,
      "minutes-for-seconds": (24 / 160 / 1.5) * 0.5,
      "time-taken-as-minute": (24 / 160 / 1.5) * 60,
      "flow-multiplied": [(24 / 160) * (1.5 / 30), 24 * (1.5 / 30)],
      "time-of-catch": 30,
      "plants-from-catch": (1.5 * 160) / 24,
      "fraction-inverted": (1.5 * 160) / (24 * 30),
      "volume-factor-inverted": ((24 * 160) / 1.5) * 30,
      "other-gallon": (24 / 128 / 1.5) * 30,
    });
  });

  it("are those of liters", () => {
    const given = { caught: qty(4, "L"), time: qty(40, "s"), each: qty(500, "mL") };
    expectWrongAnswers("plant-timing", "metric", given, (0.5 / 4) * 40, {
      "volumes-in-two-units": (500 / 4) * 40,
      "minutes-for-seconds": ((0.5 / 4) * 40) / 60,
      "time-taken-as-minute": (0.5 / 4) * 60,
      "flow-multiplied": [0.5 * (4 / 40), 500 * (4 / 40)],
      "time-of-catch": 40,
      "plants-from-catch": 4 / 0.5,
      "fraction-inverted": 4 / (0.5 * 40),
      "volume-factor-inverted": ((500 * 1000) / 4) * 40,
    });
  });

  it("are of a hand gun's flow, and of a time that a person can keep", () => {
    const timed = (caught: number, time: number, each: number) =>
      fits(
        "plant-timing",
        { caught: qty(caught, "L"), time: qty(time, "s"), each: qty(each, "L") },
        "metric",
      );
    // 2 and 20 L/min, and a little beyond.
    expect([timed(1, 30, 1), timed(10, 30, 1)]).toEqual([true, true]);
    expect([timed(0.99, 30, 1), timed(10.1, 30, 1)]).toEqual([false, false]);
    // At 6 L/min, 0.2 L are 2 s and 6 L are 60 s.
    expect([timed(3, 30, 0.21), timed(3, 30, 5.9)]).toEqual([true, true]);
    expect([timed(3, 30, 0.19), timed(3, 30, 6.1)]).toEqual([false, false]);
  });
});

describe("the wrong answers of spots, by hand", () => {
  it("are those of fluid ounces", () => {
    const given = { spots: 20, each: qty(6, "fl_oz"), percent: percent(3) };
    const mix = 20 * 6;
    const right = mix * 0.03;
    const wrong = {
      "percent-as-part": mix * 3,
      "per-mille": mix * 0.003,
      "volume-unit-left": right / 128,
      inverted: mix / 0.03,
      "one-spot-only": 6 * 0.03,
      "took-the-water": mix - right,
      "added-on-top": (mix + right) * 0.03,
      "mix-for-product": mix,
    };
    expectWrongAnswers("spot-tank", "us", given, right, wrong);
    // One spot is all of them, and 1% more is too near to tell.
    expectWrongAnswers("spot-tank", "us", { spots: 1, each: qty(6, "fl_oz"), percent: percent(1) }, 0.06, {
      "percent-as-part": 6,
      "per-mille": 0.006,
      "volume-unit-left": 0.06 / 128,
      inverted: 6 / 0.01,
      "took-the-water": 5.94,
      "mix-for-product": 6,
    });
    expectWrongAnswers("spot-tank", "imperial", { ...given, each: qty(6, "imp_fl_oz") }, right, {
      ...wrong,
      "volume-unit-left": right / 160,
    });
  });

  it("are those of milliliters", () => {
    const mix = 24 * 150;
    const given = { spots: 24, each: qty(150, "mL"), percent: percent(5) };
    expectWrongAnswers("spot-tank", "metric", given, mix * 0.05, {
      "percent-as-part": mix * 5,
      "per-mille": mix * 0.005,
      "volume-unit-left": (mix * 0.05) / 1000,
      inverted: mix / 0.05,
      "one-spot-only": 150 * 0.05,
      "took-the-water": mix * 0.95,
      "added-on-top": mix * 1.05 * 0.05,
      "mix-for-product": mix,
    });
  });
});

describe("the wrong answers of an injector, by hand", () => {
  it("are those of 100 gallons", () => {
    const given = { rate: qty(8, "fl_oz/100gal"), ratio: 64, stock: qty(2.5, "gal") };
    const solution = 64 * 2.5;
    expectWrongAnswers("injector", "us", given, (solution / 100) * 8, {
      "ratio-ignored": (2.5 / 100) * 8,
      "one-unit-of-stock": (64 / 100) * 8,
      "ratio-inverted": (2.5 / 64 / 100) * 8,
      "volume-unit-left": ((solution / 100) * 8) / 128,
      "mix-for-product": [solution, solution * 128],
      "per-hundred-left-out": solution * 8,
      "rate-per-unit-of-stock": 2.5 * 8,
    });
    // A gallon of stock for an injector of 1:100 takes what the label says for 100 gallons.
    expectWrongAnswers("injector", "us", { ...given, ratio: 100, stock: qty(1, "gal") }, 8, {
      "ratio-ignored": 8 / 100,
      "ratio-inverted": 8 / 10_000,
      "volume-unit-left": 8 / 128,
      "mix-for-product": [100, 100 * 128],
      "per-hundred-left-out": 800,
    });
  });

  it("are those of an imperial gallon, which no label gives by the hundred", () => {
    const given = { rate: qty(0.08, "imp_fl_oz/imp_gal"), ratio: 64, stock: qty(2.5, "imp_gal") };
    expectWrongAnswers("injector", "imperial", given, 64 * 2.5 * 0.08, {
      "ratio-ignored": 2.5 * 0.08,
      "one-unit-of-stock": 64 * 0.08,
      "ratio-inverted": (2.5 / 64) * 0.08,
      "volume-unit-left": (64 * 2.5 * 0.08) / 160,
      "mix-for-product": [64 * 2.5, 64 * 2.5 * 160],
    });
  });

  it("are those of 100 liters", () => {
    const given = { rate: qty(60, "mL/100L"), ratio: 128, stock: qty(15, "L") };
    const solution = 128 * 15;
    expectWrongAnswers("injector", "metric", given, (solution / 100) * 60, {
      "ratio-ignored": (15 / 100) * 60,
      "one-unit-of-stock": (128 / 100) * 60,
      "ratio-inverted": (15 / 128 / 100) * 60,
      "volume-unit-left": ((solution / 100) * 60) / 1000,
      "mix-for-product": [solution, solution * 1000],
      "per-hundred-left-out": solution * 60,
      "rate-per-unit-of-stock": 15 * 60,
    });
  });

  it("are of a stock that is mostly water", () => {
    // 0.1% of the solution makes 19.9% of the stock at 1:199, and 20.1% at 1:201.
    const at = (ratio: number) =>
      fits("injector", { rate: qty(100, "mL/100L"), ratio, stock: qty(5, "L") }, "metric");
    expect([at(199), at(201)]).toEqual([true, false]);
  });
});

describe("the wrong answers of a mix with some to spare, by hand", () => {
  it("are those of an acre", () => {
    const given = {
      area: treated(0.5, "ac"),
      carrierRate: qty(20, "gal/ac"),
      extra: 10,
      rate: qty(1.5, "pt/ac"),
    };
    const mix = 0.5 * 20 * 1.1;
    const perGallon = (1.5 * 16) / 20;
    const wrong = {
      "reserve-without-product": 0.5 * 1.5 * 16,
      "product-for-reserve-only": 0.5 * 20 * 0.1 * perGallon,
      "reserve-subtracted": 0.5 * 20 * 0.9 * perGallon,
      "unscaled-reserve": 1.5 * 16,
      "mix-for-product": [mix, mix * 128],
      "label-unit-left": (mix / 20) * 1.5,
      "pint-of-8": (mix / 20) * 1.5 * 8,
      "pint-of-other-system": (mix / 20) * 1.5 * 20,
      "pint-of-32": (mix / 20) * 1.5 * 32,
      "per-lawn-for-land": ((mix / 20) * 43_560 * 1.5 * 16) / 1000,
      "rate-per-other-land": (mix / 20) * 0.40468564224 * 1.5 * 16,
    };
    expectWrongAnswers("reserve", "us", given, mix * perGallon, wrong);
    const imperial = { ...given, carrierRate: qty(20, "imp_gal/ac"), rate: qty(1.5, "imp_pt/ac") };
    expectWrongAnswers("reserve", "imperial", imperial, (mix / 20) * 1.5 * 20, {
      "reserve-without-product": 0.5 * 1.5 * 20,
      "product-for-reserve-only": 0.5 * 0.1 * 1.5 * 20,
      "reserve-subtracted": 0.5 * 0.9 * 1.5 * 20,
      "unscaled-reserve": 1.5 * 20,
      "mix-for-product": [mix, mix * 160],
      "label-unit-left": (mix / 20) * 1.5,
      "pint-of-8": (mix / 20) * 1.5 * 8,
      "pint-of-other-system": (mix / 20) * 1.5 * 16,
      "pint-of-32": (mix / 20) * 1.5 * 32,
      "per-lawn-for-land": ((mix / 20) * 43_560 * 1.5 * 20) / 1000,
      "rate-per-other-land": (mix / 20) * 0.40468564224 * 1.5 * 20,
    });
  });

  it("are those of a hectare", () => {
    const given = {
      area: treated(0.8, "ha"),
      carrierRate: qty(240, "L/ha"),
      extra: 15,
      rate: qty(2.5, "L/ha"),
    };
    const mix = 0.8 * 240 * 1.15;
    expectWrongAnswers("reserve", "metric", given, (mix / 240) * 2500, {
      "reserve-without-product": 0.8 * 2500,
      "product-for-reserve-only": 0.8 * 0.15 * 2500,
      "reserve-subtracted": 0.8 * 0.85 * 2500,
      "unscaled-reserve": 2500,
      "mix-for-product": [mix, mix * 1000],
      "label-unit-left": (mix / 240) * 2.5,
      "liter-of-100": (mix / 240) * 2.5 * 100,
      "per-lawn-for-land": ((mix / 240) * 10_000 * 2500) / 100,
      "rate-per-other-land": (mix / 240 / 0.40468564224) * 2500,
    });
  });
});

describe("the wrong answers of a season's limit, by hand", () => {
  it("are those of pints", () => {
    const given = { limit: qty(10, "pt/ac"), rate: qty(1.5, "pt/ac"), done: 3 };
    // 6.67 applications in all, 5.67 after one, 3.67 after three.
    expectWrongAnswers("season-limit", "us", given, 3, {
      "applied-ignored": 6,
      "limit-passed": 4,
      "limit-unrounded": (10 - 3 * 1.5) / 1.5,
      "one-application-subtracted": 5,
      "rate-left-for-count": 10 - 3 * 1.5,
    });
    // Six fit the limit, and one was made: nothing to round, and one is what to subtract.
    expectWrongAnswers("season-limit", "us", { ...given, limit: qty(9, "pt/ac"), done: 1 }, 5, {
      "applied-ignored": 6,
      "rate-left-for-count": 9 - 1.5,
    });
  });

  it("are those of liters", () => {
    const given = { limit: qty(7, "L/ha"), rate: qty(0.75, "L/ha"), done: 4 };
    // 9.33 applications in all, 8.33 after one, 5.33 after four.
    expectWrongAnswers("season-limit", "metric", given, 5, {
      "applied-ignored": 9,
      "limit-passed": 6,
      "limit-unrounded": (7 - 4 * 0.75) / 0.75,
      "one-application-subtracted": 8,
      "rate-left-for-count": 7 - 4 * 0.75,
    });
  });

  it("leave from 1 to 8 applications", () => {
    const left = (limit: number) =>
      fits("season-limit", { limit: qty(limit, "pt/ac"), rate: qty(2, "pt/ac"), done: 2 });
    // 0.95, 1, 8 and 8.05 more.
    expect([5.9, 6, 20, 20.1].map(left)).toEqual([false, true, true, false]);
  });
});

describe("the wrong answers of an orchard's canopy, by hand", () => {
  it("are those of an acre", () => {
    const given = {
      height: qty(12, "ft"),
      width: qty(8, "ft"),
      rowSpacing: qty(16.5, "ft"),
      spray: qty(0.8, "gal/1000ft3"),
    };
    const canopy = (12 * 8 * 43_560) / 16.5;
    const wrong = {
      "canopy-size-left-out": canopy * 0.8,
      "alleys-as-canopy": ((12 * 43_560) / 1000) * 0.8,
      "canopy-for-spray": [canopy, canopy / 1000],
      "canopy-height-left-out": ((8 * 43_560) / 16.5 / 1000) * 0.8,
      "rows-counted-twice": ((2 * canopy) / 1000) * 0.8,
      "spacing-multiplied": ((12 * 8 * 16.5 * 43_560) / 1000) * 0.8,
      "land-unit-left": ((12 * 8) / 16.5 / 1000) * 0.8,
      "wrong-land-factor": ((12 * 8 * 4840) / 16.5 / 1000) * 0.8,
      "other-land-unit": (canopy / 0.40468564224 / 1000) * 0.8,
      "canopy-width-left-out": ((12 * 43_560) / 16.5 / 1000) * 0.8,
    };
    expectWrongAnswers("tree-row-volume", "us", given, (canopy / 1000) * 0.8, wrong);
    const imperial = { ...given, spray: qty(0.8, "imp_gal/1000ft3") };
    expectWrongAnswers("tree-row-volume", "imperial", imperial, (canopy / 1000) * 0.8, wrong);
  });

  it("are those of a hectare", () => {
    const given = {
      height: qty(3.5, "m"),
      width: qty(1.5, "m"),
      rowSpacing: qty(4, "m"),
      spray: qty(12, "L/100m3"),
    };
    const canopy = (3.5 * 1.5 * 10_000) / 4;
    expectWrongAnswers("tree-row-volume", "metric", given, (canopy / 100) * 12, {
      "canopy-size-left-out": canopy * 12,
      "alleys-as-canopy": ((3.5 * 10_000) / 100) * 12,
      "canopy-for-spray": [canopy, canopy / 100],
      "canopy-height-left-out": ((1.5 * 10_000) / 4 / 100) * 12,
      "rows-counted-twice": ((2 * canopy) / 100) * 12,
      "spacing-multiplied": ((3.5 * 1.5 * 4 * 10_000) / 100) * 12,
      "land-unit-left": ((3.5 * 1.5) / 4 / 100) * 12,
      "wrong-land-factor": ((3.5 * 1.5 * 1000) / 4 / 100) * 12,
      "other-land-unit": (canopy * 0.40468564224 * 12) / 100,
      "canopy-width-left-out": ((3.5 * 10_000) / 4 / 100) * 12,
    });
  });

  it("are of trees from a quarter to two thirds of the spacing wide", () => {
    const wide = (width: number) =>
      fits("tree-row-volume", {
        height: qty(12, "ft"),
        width: qty(width, "ft"),
        rowSpacing: qty(12, "ft"),
        spray: qty(0.8, "gal/1000ft3"),
      });
    expect([2.9, 3, 8, 8.1].map(wide)).toEqual([false, true, true, false]);
  });
});

describe("the wrong answers of a mixing order, by hand", () => {
  it("are those of all kinds", () => {
    const products = ["adjuvant", "WG", "WP", "EC", "SC", "water-conditioner"];
    const wrong = {
      "order-as-listed": "ABCDEF",
      "order-reversed": "ADEBCF",
      "adjuvant-first": ["AFCBED", "FACBED", "FCABED", "FCBAED", "FCBEAD"],
      "conditioner-last": ["CFBEDA", "CBFEDA", "CBEFDA", "CBEDFA", "CBEDAF"],
      "liquids-before-powders": ["DFCBEA", "FDCBEA", "FCDBEA", "FCBDEA", "EFCBDA", "FECBDA", "FCEBDA"],
      "powders-swapped": ["BFCEDA", "FBCEDA"],
    };
    for (const system of ["us", "metric"] as const)
      expectWrongAnswers("mixing-order", system, { products }, "FCBEDA", wrong);
  });

  it("name no kind that is not there", () => {
    expectWrongAnswers("mixing-order", "us", { products: ["SC", "WP"] }, "BA", {
      "order-as-listed": "AB",
      "order-reversed": "AB",
      "liquids-before-powders": "AB",
    });
    // Granules before the conditioner are before no wettable powder.
    expectWrongAnswers("mixing-order", "us", { products: ["WG", "water-conditioner"] }, "BA", {
      "order-as-listed": "AB",
      "order-reversed": "AB",
      "conditioner-last": "AB",
    });
  });
});
