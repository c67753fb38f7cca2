import { describe, it } from "vitest";
import { qty } from "../../../src/units/index.ts";
import { expectWrongAnswers } from "../../helpers/wrong-answers.ts";

// 128 fl oz to the gallon and 160 to the imperial one, 43,560 sq ft to the acre and 4,840 sq yd, 0.40468564224 ha to the acre.
// 5,280 ft or 1.609344 km to the mile: 88 ft a minute are 1 mph.
describe("the wrong answers of rates, by hand", () => {
  it("are those of a timed speed", () => {
    const feet = { distance: qty(176, "ft"), time: qty(40, "s") };
    expectWrongAnswers("timed-speed", "us", feet, 3, {
      "per-second-left": 176 / 40,
      "speed-inverted": 40 / 3600 / (176 / 5280),
      "speed-factor-inverted": ((176 / 40) * 5280) / 3600,
      "per-minute-left": 176 / (40 / 60),
      "seconds-as-minutes": 176 / 5280 / (40 / 60),
      "time-taken-as-minute": 176 / 88,
      "other-speed-unit": 3 * 1.609344,
    });
    const meters = { distance: qty(50, "m"), time: qty(37.5, "s") };
    expectWrongAnswers("timed-speed", "metric", meters, 4.8, {
      "per-second-left": 50 / 37.5,
      "speed-inverted": 37.5 / 3600 / (50 / 1000),
      "speed-factor-inverted": ((50 / 37.5) * 1000) / 3600,
      "per-minute-left": 50 / (37.5 / 60),
      "seconds-as-minutes": 50 / 1000 / (37.5 / 60),
      "time-taken-as-minute": 50 / 1000 / (1 / 60),
      "other-speed-unit": 4.8 / 1.609344,
    });
  });

  it("are those of a test strip", () => {
    // 36 in are 3 ft; 43,560 / 1,089 = 40 strips to the acre, a whole number.
    const given = { used: qty(64, "fl_oz"), swath: qty(36, "in"), distance: qty(363, "ft") };
    const feet = 3 * 363;
    expectWrongAnswers("strip-calibration", "us", given, 20, {
      "small-unit-as-large": 64 / (feet / 43_560),
      "width-in-small-unit": 64 / 128 / ((36 * 363) / 43_560),
      "rate-inverted": [
        feet / 43_560 / (64 / 128),
        feet / (64 / 128),
        feet / 64,
        (feet / 64) * (43_560 / 128),
      ],
      "width-left-out": 64 / 128 / (363 / 43_560),
      multiplied: (64 / 128) * (feet / 43_560),
      "land-unit-left": 64 / 128 / feet,
      "wrong-land-factor": 64 / 128 / (feet / 4840),
      "other-land-unit": 20 / 0.40468564224,
      "volume-factor-inverted": (64 * 128) / (feet / 43_560),
      "land-factor-inverted": 64 / 128 / (feet * 43_560),
      "other-gallon": 64 / 160 / (feet / 43_560),
    });
    // 96 in are 8 ft; 43,560 / 11,616 = 3.75 strips to the acre, rounded to 4.
    const wide = { used: qty(480, "imp_fl_oz"), swath: qty(96, "in"), distance: qty(1452, "ft") };
    const ground = 8 * 1452;
    expectWrongAnswers("strip-calibration", "imperial", wide, 3 * 3.75, {
      "small-unit-as-large": 480 * 3.75,
      "width-in-small-unit": (3 * 3.75) / 12,
      "rate-inverted": [1 / 3.75 / 3, ground / 3, ground / 480, (ground / 480) * (43_560 / 160)],
      "width-left-out": 3 / (1452 / 43_560),
      multiplied: 3 / 3.75,
      "land-unit-left": 3 / ground,
      "wrong-land-factor": 3 / (ground / 4840),
      "other-land-unit": (3 * 3.75) / 0.40468564224,
      "volume-factor-inverted": 480 * 160 * 3.75,
      "land-factor-inverted": 3 / (ground * 43_560),
      "rounded-early": 3 * 4,
      "other-gallon": (480 / 128) * 3.75,
    });
    const meters = 1.5 * 80;
    const inMeters = { used: qty(4800, "mL"), swath: qty(150, "cm"), distance: qty(80, "m") };
    expectWrongAnswers("strip-calibration", "metric", inMeters, 400, {
      "small-unit-as-large": 4800 / (meters / 10_000),
      "width-in-small-unit": 4.8 / ((150 * 80) / 10_000),
      "rate-inverted": [
        meters / 10_000 / 4.8,
        meters / 4.8,
        meters / 4800,
        (meters / 4800) * (10_000 / 1000),
      ],
      "width-left-out": 4.8 / (80 / 10_000),
      multiplied: 4.8 * (meters / 10_000),
      "land-unit-left": 4.8 / meters,
      "wrong-land-factor": 4.8 / (meters / 1000),
      "other-land-unit": 400 * 0.40468564224,
      "volume-factor-inverted": (4800 * 1000) / (meters / 10_000),
      "land-factor-inverted": 4.8 / (meters * 10_000),
    });
  });

  // 3.3 mph are 4.84 ft/s: a gallon a minute over a foot is 43,560 / (4.84 x 60) = 150 gal/ac.
  it("are those of one nozzle's catch", () => {
    const given = {
      caught: qty(16, "fl_oz"),
      time: qty(40, "s"),
      width: qty(15, "in"),
      speed: qty(3.3, "mph"),
    };
    const flow = (16 / 128) * (60 / 40);
    expectWrongAnswers("catch-calibration", "us", given, (150 * flow) / 1.25, {
      "small-unit-as-large": (150 * 16 * (60 / 40)) / 1.25,
      "time-taken-as-minute": (150 * (16 / 128)) / 1.25,
      "width-in-small-unit": (150 * flow) / 15,
      "seconds-as-minutes": (150 * (16 / 128 / 40)) / 1.25,
      "width-in-large-unit": (5940 * flow) / (3.3 * 1.25),
      "rate-inverted": [
        1.25 / (150 * flow),
        (1.25 * 4.84 * 60) / flow,
        (1.25 * 4.84 * 40) / 16,
        ((1.25 * 4.84 * 40) / 16) * (43_560 / 128),
      ],
      "speed-in-other-unit": (43_560 * flow) / (3.3 * 60 * 1.25),
      "width-left-out": 150 * flow,
      "factors-left-out": flow / (3.3 * 15),
      "other-land-unit": (150 * flow) / 1.25 / 0.40468564224,
      "volume-factor-inverted": (150 * 16 * 128 * (60 / 40)) / 1.25,
      // 0.1875 gal/min.
      "rounded-early": (150 * 0.2) / 1.25,
    });
    // In a whole minute no time is mistaken for one, and 0.5 gal/min are round.
    const minute = { ...given, caught: qty(64, "fl_oz"), time: qty(60, "s") };
    expectWrongAnswers("catch-calibration", "us", minute, 60, {
      "small-unit-as-large": (150 * 64) / 1.25,
      "width-in-small-unit": (150 * 0.5) / 15,
      "seconds-as-minutes": (150 * (0.5 / 60)) / 1.25,
      "width-in-large-unit": (5940 * 0.5) / (3.3 * 1.25),
      "rate-inverted": [
        1 / 60,
        (1.25 * 4.84 * 60) / 0.5,
        (1.25 * 4.84 * 60) / 64,
        ((1.25 * 4.84 * 60) / 64) * (43_560 / 128),
      ],
      "speed-in-other-unit": (43_560 * 0.5) / (3.3 * 60 * 1.25),
      "width-left-out": 150 * 0.5,
      "factors-left-out": 0.5 / (3.3 * 15),
      "other-land-unit": 60 / 0.40468564224,
      "volume-factor-inverted": (150 * 64 * 128) / 1.25,
    });
    // 4.8 km/h are 80 m/min: a liter a minute over a meter is 10,000 / 80 = 125 L/ha.
    const inMeters = {
      caught: qty(320, "mL"),
      time: qty(30, "s"),
      width: qty(50, "cm"),
      speed: qty(4.8, "km/h"),
    };
    expectWrongAnswers("catch-calibration", "metric", inMeters, (125 * 0.64) / 0.5, {
      "small-unit-as-large": (125 * 640) / 0.5,
      "time-taken-as-minute": (125 * 0.32) / 0.5,
      "width-in-small-unit": (125 * 0.64) / 50,
      "seconds-as-minutes": (125 * (0.32 / 30)) / 0.5,
      "width-in-large-unit": (60_000 * 0.64) / (4.8 * 0.5),
      "rate-inverted": [1 / 160, 10_000 / 160, 10_000 / 160 / 1000, (10_000 / 160 / 1000) * (10_000 / 1000)],
      "speed-in-other-unit": (10_000 * 0.64) / (4.8 * 60 * 0.5),
      "width-left-out": 125 * 0.64,
      "factors-left-out": 0.64 / (4.8 * 50),
      "other-land-unit": 160 * 0.40468564224,
      "volume-factor-inverted": (125 * 640_000) / 0.5,
      "rounded-early": (125 * 0.6) / 0.5,
    });
  });

  it("are those of the catches of a boom", () => {
    const catches = [30, 33, 33].map((value) => qty(value, "fl_oz"));
    const given = { catches, time: qty(30, "s"), width: qty(20, "in"), speed: qty(3.3, "mph") };
    // In half a minute: as many gallons a minute as 64ths of a gallon.
    const [flow, one, wide] = [(30 + 33 + 33) / 64, 30 / 64, 20 / 12];
    const right = (150 * flow) / (3 * wide);
    expectWrongAnswers("boom-catch", "us", given, right, {
      "boom-on-one-width": (150 * flow) / wide,
      "average-for-boom": (150 * (flow / 3)) / (3 * wide),
      "one-nozzle-for-boom": (150 * one) / (3 * wide),
      "boom-one-spacing-short": (150 * flow) / (2 * wide),
      "first-nozzle-only": (150 * one) / wide,
      "small-unit-as-large": (150 * 2 * (30 + 33 + 33)) / (3 * wide),
      "width-in-small-unit": (150 * flow) / (3 * 20),
      "time-taken-as-minute": (150 * (flow / 2)) / (3 * wide),
      "seconds-as-minutes": (150 * (96 / 128 / 30)) / (3 * wide),
      "speed-in-other-unit": (43_560 * flow) / (3.3 * 60 * 3 * wide),
      "nozzles-squared": (150 * flow * 3) / wide,
      "width-in-large-unit": (5940 * (flow / 3)) / (3.3 * wide),
      "rate-inverted": [
        1 / right,
        43_560 / right,
        43_560 / right / 128,
        (43_560 / right / 128) * (43_560 / 128),
      ],
    });
    // The first nozzle gives the average, and in a whole minute no time is mistaken for one.
    const even = { ...given, catches: [66, 64, 68].map((value) => qty(value, "fl_oz")), time: qty(60, "s") };
    const half = 66 / 128;
    expectWrongAnswers("boom-catch", "us", even, (150 * half) / wide, {
      "boom-on-one-width": (150 * 3 * half) / wide,
      "average-for-boom": (150 * half) / (3 * wide),
      "one-nozzle-for-boom": (150 * half) / (3 * wide),
      "boom-one-spacing-short": (150 * 3 * half) / (2 * wide),
      "small-unit-as-large": (150 * 66) / wide,
      "width-in-small-unit": (150 * half) / 20,
      "seconds-as-minutes": (150 * (half / 60)) / wide,
      "speed-in-other-unit": (43_560 * half) / (3.3 * 60 * wide),
      "nozzles-squared": (150 * half * 3 * 3) / wide,
      "width-in-large-unit": (5940 * half) / (3.3 * wide),
      "rate-inverted": [
        wide / (150 * half),
        (wide * 4.84 * 60) / half,
        (wide * 4.84 * 60) / 66,
        ((wide * 4.84 * 60) / 66) * (43_560 / 128),
      ],
    });
    const inMeters = {
      catches: [600, 640, 650, 670].map((value) => qty(value, "mL")),
      time: qty(45, "s"),
      width: qty(50, "cm"),
      speed: qty(4.8, "km/h"),
    };
    const [all, first] = [(0.6 + 0.64 + 0.65 + 0.67) / 0.75, 0.6 / 0.75];
    const rate = (125 * all) / 2;
    expectWrongAnswers("boom-catch", "metric", inMeters, rate, {
      "boom-on-one-width": (125 * all) / 0.5,
      "average-for-boom": (125 * (all / 4)) / 2,
      "one-nozzle-for-boom": (125 * first) / 2,
      "boom-one-spacing-short": (125 * all) / 1.5,
      "first-nozzle-only": (125 * first) / 0.5,
      "small-unit-as-large": (125 * 1000 * all) / 2,
      "width-in-small-unit": (125 * all) / (4 * 50),
      "time-taken-as-minute": (125 * 0.75 * all) / 2,
      "seconds-as-minutes": (125 * (2.56 / 45)) / 2,
      "speed-in-other-unit": (10_000 * all) / (4.8 * 60 * 2),
      "nozzles-squared": (125 * all * 4) / 0.5,
      "width-in-large-unit": (60_000 * (all / 4)) / (4.8 * 0.5),
      "rate-inverted": [
        1 / rate,
        10_000 / rate,
        10_000 / rate / 1000,
        (10_000 / rate / 1000) * (10_000 / 1000),
      ],
    });
  });

  it("are those of a rate read off a catch", () => {
    const given = { walk: qty(24, "s"), caught: qty(25, "fl_oz"), time: qty(30, "s") };
    expectWrongAnswers("strip-reading", "us", given, 20, {
      "catch-unscaled": 25,
      "times-upside-down": (25 * 30) / 24,
      "catch-per-minute": 25 * (60 / 30),
      "reading-divided": 20 / 128,
      "reading-multiplied": 20 * 128,
    });
    // The strip takes a whole minute, so the catch of a minute is right.
    expectWrongAnswers("strip-reading", "us", { ...given, walk: qty(60, "s") }, 50, {
      "catch-unscaled": 25,
      "times-upside-down": (25 * 30) / 60,
      "reading-divided": 50 / 128,
      "reading-multiplied": 50 * 128,
    });
    const metric = { walk: qty(18, "s"), caught: qty(500, "mL"), time: qty(45, "s") };
    expectWrongAnswers("strip-reading", "metric", metric, 200, {
      "catch-unscaled": 500,
      "times-upside-down": (500 * 45) / 18,
      "catch-per-minute": 500 * (60 / 45),
      "reading-divided": 200 / 1000,
      "reading-multiplied": 200 * 1000,
    });
  });

  it("are those of a nozzle check", () => {
    const caught = (unit: "fl_oz" | "mL", ...values: number[]) => ({
      catches: values.map((one) => qty(one, unit)),
    });
    // The average is 40, that of the three others 38.
    expectWrongAnswers("nozzle-check", "us", caught("fl_oz", 40, 46, 38, 36), 15, {
      "difference-as-percent": 46 - 40,
      "off-itself": (100 * (46 - 40)) / 46,
      "off-the-others": (100 * (46 - 38)) / 38,
      "share-of-average": (100 * 46) / 40,
      "spread-taken": (100 * (46 - 36)) / 40,
      "off-the-lowest": (100 * (46 - 36)) / 36,
      "part-not-percent": (46 - 40) / 40,
    });
    // The worst one is below the average of 20; the others have 21.
    expectWrongAnswers("nozzle-check", "us", caught("fl_oz", 21, 17, 20, 22), 15, {
      "difference-as-percent": 20 - 17,
      "off-itself": (100 * (20 - 17)) / 17,
      "off-the-others": (100 * (21 - 17)) / 21,
      "share-of-average": (100 * 17) / 20,
      "spread-taken": (100 * (22 - 17)) / 20,
      "off-the-lowest": (100 * (22 - 17)) / 17,
      "part-not-percent": (20 - 17) / 20,
    });
    expectWrongAnswers("nozzle-check", "metric", caught("mL", 620, 480, 620, 640, 640), 20, {
      "difference-as-percent": 600 - 480,
      "off-itself": (100 * (600 - 480)) / 480,
      "off-the-others": (100 * (630 - 480)) / 630,
      "share-of-average": (100 * 480) / 600,
      "spread-taken": (100 * (640 - 480)) / 600,
      "off-the-lowest": (100 * (640 - 480)) / 480,
      "part-not-percent": (600 - 480) / 600,
    });
    // In quarts the difference is no 24 fl oz. Of two nozzles that are as far off, the first one counts.
    const quarts = { catches: [4.25, 5, 5.75].map((one) => qty(one, "qt")) };
    expectWrongAnswers("nozzle-check", "us", quarts, 15, {
      "off-itself": (100 * (5 - 4.25)) / 4.25,
      "off-the-others": (100 * ((5 + 5.75) / 2 - 4.25)) / ((5 + 5.75) / 2),
      "share-of-average": (100 * 4.25) / 5,
      "spread-taken": (100 * (5.75 - 4.25)) / 5,
      "off-the-lowest": (100 * (5.75 - 4.25)) / 4.25,
      "part-not-percent": (5 - 4.25) / 5,
    });
  });
});
