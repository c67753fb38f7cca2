import { describe, expect, it, vi } from "vitest";
import {
  checkAnswer,
  type PracticeProblem,
  practiceProblem,
  practiceSet,
  practiceSheet,
  problemFrom,
  workedExample,
} from "../../../src/practice/index.ts";
import { type Quantity, qty } from "../../../src/units/index.ts";
import { SPANISH_PRACTICE_WORDS } from "../../../src/words/es-practice.ts";
import { renderText } from "../../../src/worksheet/index.ts";
import { expectRefused, refusal } from "../../helpers/refusal.ts";

const percent = (value: number) => ({ ...qty(value, "%"), basis: "v/v" as const });
const strip = problemFrom("strip-calibration", {
  used: qty(64, "fl_oz"),
  swath: qty(36, "in"),
  distance: qty(363, "ft"),
});
// 2 pt/ac x 16 x 25 gal / 30 gal/ac = 26.666 fl oz.
const tank = problemFrom("product-per-tank", {
  rate: qty(2, "pt/ac"),
  carrierRate: qty(30, "gal/ac"),
  fill: qty(25, "gal"),
  density: qty(9, "lb/gal"),
});
const plot = problemFrom("rectangle-area", { length: qty(350, "ft"), width: qty(380, "ft") });
// 35 gal/ac x 1.8 ac = 63 gal; / 15 = 4.2.
const loads = problemFrom("tank-loads", {
  ground: qty(4.5, "ac"),
  area: qty(1.8, "ac"),
  rate: qty(35, "gal/ac"),
  fill: qty(15, "gal"),
});
const spoons = problemFrom("household-measure", { amount: qty(1.6, "fl_oz"), spoon: qty(1, "tsp") });

/** The verdict, and the mistakes that were found. */
const checked = (...args: Parameters<typeof checkAnswer>) => {
  const { verdict, mistakes } = checkAnswer(...args);
  return [verdict, ...mistakes.map(({ mistake }) => mistake)];
};

describe("checkAnswer", () => {
  it("takes a quantity, a number in the unit of the question, and text", () => {
    for (const answer of [qty(20, "gal/ac"), 20, "20", "20 gal/ac", "20.0", " 20 gallons per acre "])
      expect(checkAnswer(strip, answer)).toMatchObject({ verdict: "right", says: "Right.", mistakes: [] });
    expect(checkAnswer(strip, "20 gal/ac").answer).toEqual(qty(20, "gal/ac"));
    expect(checkAnswer(strip, "20,0", { locale: "de-DE" }).verdict).toBe("right");
    // 350 x 380 / 43,560 = 3.0533.
    expect(checked(plot, "3.0533")).toEqual(["right"]);
  });

  it("reads the units of a Spanish sheet, with or without accents, and numbers as the locale writes them", () => {
    const us = { words: SPANISH_PRACTICE_WORDS, locale: "es-US" };
    const spain = { words: SPANISH_PRACTICE_WORDS, locale: "es-ES" };
    // 5% of 2.5 gal is 16 fl oz.
    const mix = problemFrom("percent-mix", { percent: percent(5), fill: qty(2.5, "gal") });
    for (const answer of ["16 onzas líquidas", "16 ONZAS LIQUIDAS", "16 fl oz"])
      expect(checkAnswer(mix, answer, us)).toMatchObject({ verdict: "right", answer: qty(16, "fl_oz") });
    expect(checkAnswer(mix, "1 pinta", us).verdict).toBe("other-unit");
    for (const answer of ["20 galones/acre", "20 galones por acre"])
      expect(checkAnswer(strip, answer, us).answer).toEqual(qty(20, "gal/ac"));
    // 5% of 30 L is 1.5 L.
    const metric = problemFrom("percent-mix", { percent: percent(5), fill: qty(30, "L") });
    expect(checkAnswer(metric, "1,5 litros", spain).answer).toEqual(qty(1.5, "L"));
    expect(checkAnswer(metric, "1500 mililitros", spain).verdict).toBe("right");
    expect(refusal(() => checkAnswer(metric, "1,5 litros", us)).issues[0]?.key).toBe("unread-decimal-sign");
    expect(checkAnswer(plot, "133000 pies cuadrados", us).verdict).toBe("other-unit");
    expect(checkAnswer(plot, "5 pies", us).mistakes[0]?.mistake).toBe("other-kind-of-unit");
    // Whose gallon is the problem's, as in English; a bare ounce is asked about.
    const imperial = problemFrom("percent-mix", { percent: percent(5), fill: qty(2, "imp_gal") });
    expect(checkAnswer(imperial, "0.1 galones", us).answer).toEqual(qty(0.1, "imp_gal"));
    expect(checkAnswer(imperial, "0.1 galones imperiales", us).answer).toEqual(qty(0.1, "imp_gal"));
    expect(refusal(() => checkAnswer(mix, "16 onzas", us)).issues[0]?.key).toBe("which-ounce");
    expect(checkAnswer(mix, "16 onzas líquidas").verdict).toBe("right");
    // Names of an app's own units, and signs in names, do no harm.
    const own = {
      ...SPANISH_PRACTICE_WORDS,
      units: { ...SPANISH_PRACTICE_WORDS.units, crate: "caja (40)", gal: "gal (EE. UU.)" },
    };
    expect(checkAnswer(strip, "20 gal (EE. UU.)/acre", { ...us, words: own }).answer).toEqual(
      qty(20, "gal/ac"),
    );
  });

  it("reads text by a table of words that has no names of units", () => {
    const words = { ...SPANISH_PRACTICE_WORDS, units: {}, spellings: {} };
    expect(checkAnswer(strip, "20 gal/ac", { words }).answer).toEqual(qty(20, "gal/ac"));
  });

  it("says of an error of the engine that nothing can be read, and not what is wrong with the answer", () => {
    // No other test has this locale, so its numbers are looked up here.
    const engine = vi.spyOn(Intl, "NumberFormat").mockImplementation(function broken() {
      throw new RangeError("no such format");
    });
    try {
      expect(() => checkAnswer(loads, "5", { locale: "gsw-LI" })).toThrow("This can't be read");
    } finally {
      engine.mockRestore();
    }
    expect(checked(loads, "5", { locale: "gsw-LI" })).toEqual(["right"]);
  });

  it("knows the result of a step whose number is near the right one", () => {
    // 2 pt x 16 / 20 gal = 1.6 fl oz in a gallon; x 0.985 gal = 1.576 fl oz.
    const problem = problemFrom("product-per-tank", {
      rate: qty(2, "pt/ac"),
      carrierRate: qty(20, "gal/ac"),
      fill: qty(0.985, "gal"),
      density: qty(9, "lb/gal"),
    });
    expect(checked(problem, "1.6 fl oz/gal")).toEqual(["mistake", "step-for-answer"]);
  });

  it("reads an amount with words that say it is rounded, with the sum before it, and at the end of a sentence", () => {
    for (const typed of [
      "about 20",
      "~20",
      "≈ 20 gal/ac",
      "approx. 20",
      "20 or so",
      "20.",
      "20?",
      "x = 20",
      "Around 20 gpa.",
    ])
      expect(checked(strip, typed), typed).toEqual(["right"]);
    expect(checked(plot, "350 x 380 / 43,560 = 3.05 acres")).toEqual(["rounded"]);
    expect(checked(plot, "133,000 sf")).toEqual(["other-unit"]);
    expect(checked(loads, "about 5 loads.")).toEqual(["right"]);
    expect(checked(loads, "63 / 15 = 4.2")).toEqual(["mistake", "loads-unrounded"]);
    const us = { words: SPANISH_PRACTICE_WORDS, locale: "es-US" };
    for (const typed of [
      "unos 20 galones por acre",
      "más o menos 20",
      "mas o menos 20 gal/acre",
      "aprox. 20",
      "20 aproximadamente",
    ])
      expect(checked(strip, typed, us), typed).toEqual(["right"]);
    expect(checked(spoons, "9 cditas", us)).toEqual(["right"]);
    expect(checked(spoons, "9 cdas.", us)).toEqual(["mistake", "right-number"]);
    const mix = problemFrom("percent-mix", { percent: percent(2), fill: qty(15, "gal") });
    expect(checked(mix, "38.4 oz. fl.", us)).toEqual(["right"]);
    const wand = problemFrom("plant-timing", {
      caught: qty(2, "gal"),
      time: qty(40, "s"),
      each: qty(32, "fl_oz"),
    });
    expect(checked(wand, "5 seg.", us)).toEqual(["right"]);
    const turf = problemFrom("granules", {
      length: qty(100, "ft"),
      width: qty(50, "ft"),
      rate: qty(3, "lb/1000ft2"),
    });
    expect(checked(turf, "15#")).toEqual(["right"]);
    expect(checked(turf, "15 #", us)).toEqual(["right"]);
  });

  it("adds which nozzle it is", () => {
    const catches = [40, 46, 38, 36].map((value) => qty(value, "fl_oz"));
    const nozzles = problemFrom("nozzle-check", { catches });
    expect(checkAnswer(nozzles, "15%").says).toBe(
      "Right. Nozzle 2 is the furthest off: it gave 46 fl oz, and the average is 40 fl oz.",
    );
  });

  it("takes a minus before the deviation of a nozzle that gives too little, and of no other", () => {
    // 460 of an average of 500 mL; 46 of 40 fl oz.
    const low = problemFrom("nozzle-check", { catches: [460, 510, 510, 520].map((one) => qty(one, "mL")) });
    expect(checked(low, "-8%")).toEqual(["right"]);
    expect(checked(low, -8)).toEqual(["right"]);
    expect(checked(low, "-8.7%")).toEqual(["mistake", "off-itself"]);
    const high = problemFrom("nozzle-check", { catches: [40, 46, 38, 36].map((one) => qty(one, "fl_oz")) });
    expect(checkAnswer(high, "-15%")).toMatchObject({
      verdict: "unknown",
      says: "Not right. The number is right without the minus. Nozzle 2 is the furthest off: it gave 46 fl oz, and the average is 40 fl oz.",
    });
    expect(checkAnswer(high, "-10%").says).toMatch(/^Not right\. Nozzle 2/);
    for (const answer of ["-20", "-20.1 gal/ac", "-2560 fl oz/ac"])
      expect(checkAnswer(strip, answer).says).toBe("Not right. The number is right without the minus.");
    // 1% off, without the minus, and more.
    for (const answer of ["-19.8", "-20.2"])
      expect(checkAnswer(strip, answer).says).toBe("Not right. The number is right without the minus.");
    for (const answer of ["-19.79", "-20.21"]) expect(checkAnswer(strip, answer).says).toBe("Not right.");
    expect(checkAnswer(loads, "-5").says).toBe("Not right. The number is right without the minus.");
    expect(checkAnswer(loads, "-4").says).toBe("Not right.");
  });

  it("takes a rounding that the sheet allows before a mistake that leads near it", () => {
    const rows = { rows: 37, rowLength: qty(40, "m"), bandWidth: qty(50, "cm"), rowSpacing: qty(2, "m") };
    // 37 x 40 x 0.5 = 740 m2 x 0.7 L/ha = 51.8 mL; one row too few: 36 / 37 of it, 50.4.
    const band = problemFrom("band", { ...rows, rate: qty(0.7, "L/ha") });
    expect(checked(band, "50")).toEqual(["rounded"]);
    expect(checked(band, "50.4")).toEqual(["mistake", "one-row-too-few"]);
    // With no tolerance nothing is rounded.
    expect(checked(band, "50", { tolerancePercent: 0 })).not.toEqual(["rounded"]);
    // 36 / 37 of 51.388... would be 50 itself: a key does not call it wrong.
    const exact = problemFrom("band", { ...rows, rate: qty(50 / 72, "L/ha") });
    expect(checked(exact, "50")).toEqual(["rounded"]);
    expect(exact.mistakes.map(({ mistake }) => mistake)).not.toContain("one-row-too-few");
  });

  it("reports what is right but rounded", () => {
    const { verdict, says, off } = checkAnswer(plot, "3.05");
    expect([verdict, says]).toEqual(["rounded", "Right, but rounded. The exact answer is 3.053 ac."]);
    expect(off).toBeCloseTo(3.05 / ((350 * 380) / 43_560) - 1, 12);
    expect(checked(plot, 3.1)).toEqual(["rounded"]);
    expect(checked(plot, 3)).toEqual(["rounded"]);
    expect(checked(plot, 3.2)).toEqual(["unknown"]);
    expect(checked(plot, 3.2, { tolerancePercent: 5 })).toEqual(["rounded"]);
    expect(checked(plot, 3.06, { tolerancePercent: 0 })).toEqual(["unknown"]);
  });

  it("takes a dose that is rounded up for the mistake that it is", () => {
    expect(checked(tank, "26.6")).toEqual(["rounded"]);
    expect(checked(tank, "26.7")).toEqual(["mistake", "dose-rounded-up"]);
    expect(checked(tank, 27)).toEqual(["mistake", "dose-rounded-up"]);
    expect(checked(tank, 26)).toEqual(["rounded"]);
    expect(checked(tank, 25.9)).toEqual(["unknown"]);
    expect(checked(tank, qty(1.7, "pt"))).toEqual(["mistake", "dose-rounded-up"]);
    expect(checkAnswer(tank, 27).says).toMatch(/^Not right\. The dose was rounded up.*Always round.*down\.$/);
  });

  it("reports what is right in another unit, said or not", () => {
    // 384 fl oz are 3 gal; 3.0533 ac are 133,000 sq ft.
    const mix = problemFrom("percent-mix", { percent: percent(2), fill: qty(150, "gal") });
    expect(mix.answer).toEqual(qty(384, "fl_oz"));
    expect(checked(mix, "3 gal")).toEqual(["other-unit"]);
    expect(checked(mix, "24 pints")).toEqual(["other-unit"]);
    expect(checkAnswer(mix, "3 gal").says).toBe(
      "Right, but in another unit. In the unit of the question it is 384 fl oz.",
    );
    expect(checked(plot, "133,000 sq ft")).toEqual(["other-unit"]);
    // A number alone is in the unit of the question.
    expect(checkAnswer(mix, "24").says).toBe(
      "Not right. The number is right in another unit, but not in fl oz. Without a unit, a number is in the unit of the question. Write your unit with the number, or change it to fl oz.",
    );
    // An are is no unit that a student has in mind: that is a decimal point.
    const field = problemFrom(
      "rectangle-area",
      { length: qty(50, "m"), width: qty(35, "m") },
      { units: "metric" },
    );
    expect(checked(field, "17.5")).toEqual(["mistake", "decimal-point"]);
    // Without its unit, the listed mistake comes first.
    expect(checked(plot, "133,000")).toEqual(["mistake", "land-unit-left"]);
    expect(checked(mix, 3)).toEqual(["mistake", "volume-unit-left"]);
    // A dose in another unit that is over is over.
    expect(checked(mix, "3.02 gal")).toEqual(["mistake", "dose-rounded-up"]);
  });

  it("takes an amount for the same in any unit: right, rounded or wrong", () => {
    // 1 ac at 18 gal/ac and 3 pt/ac, 5% extra: 50.4 fl oz. Without product for the extra, 48 fl oz are 3 pt.
    const reserve = problemFrom("reserve", {
      area: qty(1, "ac"),
      carrierRate: qty(18, "gal/ac"),
      extra: 5,
      rate: qty(3, "pt/ac"),
    });
    expect(reserve.answer).toEqual(qty(50.4, "fl_oz"));
    const [, mistake] = checked(reserve, "48 fl oz");
    expect(mistake).toBeDefined();
    for (const typed of ["3 pt", "1.5 qt", "6 cups"])
      expect(checked(reserve, typed)).toEqual(["mistake", mistake]);
    // 2.08 fl oz may be rounded down to 2, which are 4 tbsp and 1/4 cup.
    const mix = problemFrom("percent-mix", { percent: percent(2), fill: qty(0.8125, "gal") });
    expect(mix.answer).toEqual(qty(2.08, "fl_oz"));
    expect(checked(mix, "2 fl oz")).toEqual(["rounded"]);
    for (const typed of ["4 tbsp", "1/4 cup"])
      expect(checkAnswer(mix, typed).says).toBe(
        "Right, but rounded, and in another unit. The exact answer is 2.08 fl oz.",
      );
    const speed = problemFrom("timed-speed", { distance: qty(200, "ft"), time: qty(30, "s") });
    const [mph] = [(speed.answer as Quantity).value];
    expect(checked(speed, `${mph} mi/h`)).toEqual(["right"]);
  });

  it("takes one nozzle for the mistake that it is, and no two mistakes for what is nearly right", () => {
    // 18 gal/ac; the first nozzle alone would give 17.4375.
    expect(checked(practiceProblem("boom-catch", 4), "17.44")).toEqual(["mistake", "first-nozzle-only"]);
    expect(checked(practiceProblem("boom-catch", 9), "34.4")).toEqual(["unknown"]);
    expect(checked(practiceProblem("granules", 9), "10.2")).toEqual(["unknown"]);
    const band = practiceProblem("band", 31);
    for (const typed of ["0.6 pt", "1.2 cups"])
      expect(checked(band, typed)).toEqual(["mistake", "dose-rounded-up"]);
    const season = practiceProblem("season-limit", 5, { words: SPANISH_PRACTICE_WORDS });
    const count = String(season.answer);
    for (const typed of [`${count} más`, `${count} aplicaciones más`])
      expect(checkAnswer(season, typed, { words: SPANISH_PRACTICE_WORDS }).verdict).toBe("right");
  });

  it("gives no percentage of a percentage, and names no two mistakes for a number of two figures", () => {
    expect(checkAnswer(practiceProblem("nozzle-check", 9), "6.7").says).toMatch(/^Not right: too low\./);
    expect(checkAnswer(practiceProblem("nozzle-check", 9), "14%").says).toMatch(/^Not right: too high\./);
    // The estimate on its board.
    expect(checkAnswer(practiceProblem("catch-calibration", 31), "19").says).toBe("Not right: 16% too low.");
  });

  it("asks for one number where a count comes in parts", () => {
    for (const typed of [
      "2 full loads and a part load",
      "2 loads plus a small one",
      "2 loads AND another one",
      "2 loads and another one",
    ]) {
      const { code, path, issues } = refusal(() => checkAnswer(loads, typed));
      expect([code, path, issues[0]?.key], typed).toEqual(["unreadable", "answer", "one-count"]);
      expect(issues[0]?.message).toBe("Enter one number: all that the question asks you to count.");
    }
  });

  it("reads a count with a minus, a fraction and spaces around it, and no ordinal", () => {
    expect(checkAnswer(loads, "-5 loads").says).toBe("Not right. The number is right without the minus.");
    for (const typed of ["4½ loads", "4 ½ loads"]) expect(checkAnswer(loads, typed).answer).toBe(4.5);
    expect(checked(loads, " 5 tank loads. ")).toEqual(["right"]);
    // Which load it is doesn't say how many there are.
    const { code, path, issues } = refusal(() => checkAnswer(loads, "5th load"));
    expect([code, path, issues[0]?.key]).toEqual(["unreadable", "answer", "unread-one-number"]);
  });

  it("says what is asked for where the sum of an area is given unsolved", () => {
    const { code, path, issues } = refusal(() => checkAnswer(plot, "350 ft x 380 ft"));
    expect([code, path, issues[0]?.key]).toEqual(["unreadable", "answer", "not-two-sides"]);
  });

  it("reads the longer of two names in an app's own words, whichever stands first", () => {
    const mix = problemFrom("percent-mix", { percent: percent(2), fill: qty(150, "gal") });
    const spellings = { cup: "jarro,jarros", qt: "jarro grande,jarros grandes" };
    const words = { ...SPANISH_PRACTICE_WORDS, spellings };
    expect(checkAnswer(mix, "12 jarros grandes", { words })).toMatchObject({
      verdict: "other-unit",
      answer: qty(12, "qt"),
    });
    expect(checkAnswer(mix, "12 jarros", { words }).answer).toEqual(qty(12, "cup"));
  });

  it("takes no number for another unit's that comes with the unit of the question", () => {
    // 384 fl oz are 24 pints.
    const mix = problemFrom("percent-mix", { percent: percent(2), fill: qty(150, "gal") });
    expect(checked(mix, "24")).toEqual(["mistake", "number-in-other-unit"]);
    expect(checked(mix, "24 fl oz")).toEqual(["unknown"]);
  });

  it("takes the right number in a unit that is nearly the same for another unit", () => {
    // An imperial fluid ounce is 3.9% less than a US one.
    const mix = problemFrom("percent-mix", { percent: percent(2), fill: qty(150, "gal") });
    expect(checked(mix, qty(384, "imp_fl_oz"), { tolerancePercent: 5 })).toEqual(["other-unit"]);
  });

  it("holds a count to be exact, however many there are", () => {
    // 59.75 ac x 30 gal/ac / 15 gal = 119.5: 120 loads. One load is less than 1% of them.
    const many = problemFrom("tank-loads", {
      ground: qty(100, "ac"),
      area: qty(59.75, "ac"),
      rate: qty(30, "gal/ac"),
      fill: qty(15, "gal"),
    });
    expect(checked(many, 120)).toEqual(["right"]);
    expect(checked(many, 119)).toEqual(["mistake", "rounded-down"]);
    expect(checked(many, 121)).toEqual(["unknown"]);
  });

  it("takes only the nearest rounding of an area for right", () => {
    // 363 x 266.4 / 43,560 = 2.22 ac; 2.3 is 3.6% more.
    const field = problemFrom("rectangle-area", { length: qty(363, "ft"), width: qty(266.4, "ft") });
    expect(checked(field, "2.2")).toEqual(["rounded"]);
    expect(checked(field, "2.3")).toEqual(["unknown"]);
  });

  it("takes a rounding that is off by 5% itself for right, whatever the noise of a division", () => {
    // 15 m in 28.35 s are 40/21 km/h, and in 25.65 s 40/19: 2 is 1.05 times the one and 0.95 times the other.
    for (const seconds of [28.35, 25.65]) {
      const speed = problemFrom("timed-speed", { distance: qty(15, "m"), time: qty(seconds, "s") });
      expect(checked(speed, 2), `${seconds} s`).toEqual(["rounded"]);
    }
  });

  it("calls nothing rounded where no tolerance is given, nor takes it for a decimal point", () => {
    const exact = { tolerancePercent: 0 };
    // 26.666... fl oz and 3.05326... ac.
    expect(checked(tank, "27", exact)).toEqual(["unknown"]);
    expect(checked(plot, "3.0533", exact)).toEqual(["unknown"]);
    // 363 x 264 ft: a mistake written out in full is known, though a computer has 95,832.00000000001.
    const field = problemFrom("rectangle-area", { length: qty(363, "ft"), width: qty(264, "ft") });
    expect(checked(field, "95,832", exact)).toEqual(["mistake", "land-unit-left"]);
  });

  it("takes an answer for a mistake up to the tolerance itself, and for the nearer one of two", () => {
    // 20 x 128 = 2,560; 1% of it is 25.6.
    for (const answer of [2534.4, 2585.6])
      expect(checked(strip, answer)).toEqual(["mistake", "small-unit-as-large"]);
    for (const answer of [2534.1, 2585.9]) expect(checked(strip, answer)).toEqual(["unknown"]);
    // 330 ft in 90 s: 330 / 90 = 3.667 ft/s; 330 ft in a minute are 330 / 88 = 3.75 mph, 2.3% more.
    const speed = problemFrom("timed-speed", { distance: qty(330, "ft"), time: qty(90, "s") });
    expect(checked(speed, 3.67, { tolerancePercent: 5 })).toEqual(["mistake", "per-second-left"]);
    expect(checked(speed, 3.75, { tolerancePercent: 5 })).toEqual(["mistake", "time-taken-as-minute"]);
  });

  it("takes a dose for rounded on the way before it is rounded up at the end, in the unit of the question", () => {
    // 27 x 363 x 3 = 29,403 sq ft = 0.675 ac; x 2.25 x 16 = 24.3 fl oz. With 0.7 ac it would be 25.2.
    const band = problemFrom("band", {
      rows: 27,
      rowLength: qty(363, "ft"),
      bandWidth: qty(36, "in"),
      rowSpacing: qty(8, "ft"),
      rate: qty(2.25, "pt/ac"),
    });
    expect(checked(band, "25")).toEqual(["mistake", "rounded-early"]);
  });

  it("finds the mistake behind a wrong answer, and says how to see and to mend it", () => {
    // 64 gal on 1/40 ac.
    const { says, mistakes, off } = checkAnswer(strip, 2560);
    expect(mistakes).toEqual([
      {
        mistake: "small-unit-as-large",
        what: "The amount in fl oz was used as if it were gal.",
        see: "The rate is 128 times too high: nobody sprays that much.",
        mend: "Divide by 128 to change fl oz to gal.",
      },
    ]);
    expect(says).toBe(
      `Not right. ${Object.values(mistakes[0] ?? {})
        .slice(1)
        .join(" ")}`,
    );
    expect(off).toBeCloseTo(127, 9);
    // 36 ft in place of 36 in.
    expect(checked(strip, 20 / 12)).toEqual(["mistake", "width-in-small-unit"]);
    expect(checked(strip, "0.05")).toEqual(["mistake", "rate-inverted"]);
    // 0.5 gal x 0.025 ac.
    expect(checked(strip, 0.0125)).toEqual(["mistake", "multiplied"]);
    // Weighed at 8 lb and at 8.34 lb per gallon: 26.667 x 8 / 9 and x 8.34 / 9.
    expect(checked(tank, "23.7")).toEqual(["mistake", "weighed-as-volume"]);
    expect(checked(tank, "24.71")).toEqual(["mistake", "weighed-as-water"]);
    // 2 pints of 8, 20 and 32 fl oz.
    expect(checked(tank, 13.33)).toEqual(["mistake", "pint-of-8"]);
    expect(checked(tank, 33.33)).toEqual(["mistake", "pint-of-other-system"]);
    expect(checked(tank, 53.3)).toEqual(["mistake", "pint-of-32"]);
    // 32 fl oz per 1,000 sq ft: 26.667 x 43.56.
    expect(checked(tank, 1161.6)).toEqual(["mistake", "per-lawn-for-land"]);
    expect(checked(spoons, 10)).toEqual(["mistake", "rounded-up"]);
    expect(checked(spoons, 9.6)).toEqual(["mistake", "spoons-unrounded"]);
    expect(checked(spoons, "3")).toEqual(["mistake", "tablespoon-for-teaspoon"]);
  });

  it("finds a rate turned upside down by each natural route", () => {
    // 0.025 ac / 0.5 gal; 1,089 sq ft / 0.5 gal; 1,089 sq ft / 64 fl oz; the same x 43,560 / 128.
    for (const answer of [0.05, 2178, 17.016, 5790.6])
      expect(checked(strip, answer), String(answer)).toEqual(["mistake", "rate-inverted"]);
    // 3.3 mph x 20 in / (5,940 x 0.5 gal/min): 66 / 2,970. Without the 5,940: 0.5 / 66. With 20 in as 1 2/3 ft: 45 x 12.
    const nozzle = problemFrom("catch-calibration", {
      caught: qty(32, "fl_oz"),
      time: qty(30, "s"),
      width: qty(20, "in"),
      speed: qty(3.3, "mph"),
    });
    expect(checked(nozzle, 0.02222)).toEqual(["mistake", "rate-inverted"]);
    expect(checked(nozzle, 0.007576)).toEqual(["mistake", "factors-left-out"]);
    expect(checked(nozzle, 540)).toEqual(["mistake", "width-in-large-unit"]);
    // 43,560 / 133,000 sq ft; and 25 gal / 30 gal/ac, which is the area of a tank.
    expect(checked(plot, 0.3275)).toEqual(["mistake", "fraction-inverted"]);
    expect(checked(tank, 0.8333)).toEqual(["mistake", "area-for-product"]);
  });

  it("knows a speed that is upside down, with its units changed and without", () => {
    // 110 ft / 30 s = 2.5 mph; (30 / 3,600) h / (110 / 5,280) mi = 0.4; 30 / 110 = 0.2727.
    const speed = problemFrom("timed-speed", { distance: qty(110, "ft"), time: qty(30, "s") });
    expect(checkAnswer(speed, "0.4").says).toBe(
      "Not right. The time was divided by the distance. The units come out as a time per distance. Divide the distance by the time.",
    );
    expect(checked(speed, 0.2727)).toEqual(["mistake", "per-second-left", "speed-inverted"]);
    expect(speed.mistakes.map(({ answer }) => answer)).not.toContainEqual(qty(0.272727272727, "mph"));
    // 75 m / 67.5 s = 4 km/h.
    const metric = problemFrom("timed-speed", { distance: qty(75, "m"), time: qty(67.5, "s") });
    expect(checked(metric, "0.25")).toEqual(["mistake", "speed-inverted"]);
  });

  it("says what was turned upside down, and not that one step was", () => {
    // 56 / 25 = 2.24 loads; 4.8 spoons; 10% down to 0.5%.
    const few = problemFrom("tank-loads", {
      ground: qty(4, "ac"),
      area: qty(1.4, "ac"),
      rate: qty(40, "gal/ac"),
      fill: qty(25, "gal"),
    });
    const level = problemFrom("household-measure", { amount: qty(2.4, "fl_oz"), spoon: qty(1, "tbsp") });
    const weak = problemFrom("dilution", { from: percent(10), to: percent(0.5), volume: qty(9, "gal") });
    const what = (...args: Parameters<typeof checkAnswer>) => checkAnswer(...args).mistakes[0]?.what;
    const upsideDown = "The fraction was turned upside down.";
    expect([what(few, 25 / 56), what(level, 1 / 4.8), what(plot, 43_560 / 133_000)]).toEqual(
      Array(3).fill(upsideDown),
    );
    // 9 x 128 x 10 / 0.5.
    expect(what(weak, 23_040)).toBe("The two strengths were used the wrong way around.");
  });

  it("says of a wrong answer only what is so whatever the figures are", () => {
    // 4 whole teaspoons are not 3 times one tablespoon; 0.5% is no whole number: 0.5 x 9 x 128 = 576.
    const teaspoons = problemFrom("household-measure", { amount: qty(0.8, "fl_oz"), spoon: qty(1, "tsp") });
    expect(checkAnswer(teaspoons, 1).says).toBe(
      "Not right. The spoons were counted as tablespoons. A tablespoon holds 3 teaspoons, so fewer of them go in. Check which spoon the question gives.",
    );
    const weak = problemFrom("dilution", { from: percent(10), to: percent(0.5), volume: qty(9, "gal") });
    expect(checkAnswer(weak, 576).mistakes[0]?.what).toBe(
      "The final percent was not divided by 100, and the strength was left out.",
    );
  });

  it("counts what is off by the tolerance itself as right", () => {
    // 1,089 sq ft and so on: 20 gal/ac; 1% of it is 0.2.
    expect([19.8, 20.2, 19.799, 20.201].map((answer) => checked(strip, answer)[0])).toEqual([
      "rounded",
      "rounded",
      "unknown",
      "unknown",
    ]);
  });

  it("takes one nozzle's catch and a boom's width for what they are, and the other way around", () => {
    // 40 fl oz a minute from each, 20 in apart at 5 mph: 5,940 x 0.3125 / (5 x 20) = 18.5625 gal/ac.
    const boom = problemFrom("boom-catch", {
      catches: [43, 40, 37, 40].map((value) => qty(value, "fl_oz")),
      time: qty(1, "min"),
      width: qty(20, "in"),
      speed: qty(5, "mph"),
    });
    expect(checked(boom, "18.56")).toEqual(["right"]);
    // The average on 80 in: a quarter; the total on 20 in: four times.
    expect(checked(boom, "4.64")).toEqual(["mistake", "average-for-boom"]);
    expect(checked(boom, "74.25 gal/ac")).toEqual(["mistake", "boom-on-one-width"]);
    // Nozzle 1 on 80 in: 43 / 40 of a quarter. The total on 60 in, from the first nozzle to the last.
    expect(checked(boom, "4.99")).toEqual(["mistake", "one-nozzle-for-boom"]);
    expect(checked(boom, "24.75")).toEqual(["mistake", "boom-one-spacing-short"]);
    expect(checkAnswer(boom, 4.64, { words: SPANISH_PRACTICE_WORDS }).mistakes[0]?.what).toBe(
      "El promedio de una boquilla se usó con el ancho del aguilón.",
    );
  });

  it("finds the result of a step where the question asks for another one, in any unit of it, and names the step", () => {
    // 22 x 363 ft x 2.5 ft = 19,965 sq ft = 0.4583 ac; 18 gal/ac: 8.25 gal in 3 loads, the last one 2.25 gal.
    const job = problemFrom("whole-job", {
      rows: 22,
      rowLength: qty(363, "ft"),
      bandWidth: qty(30, "in"),
      rowSpacing: qty(8, "ft"),
      distance: qty(121, "ft"),
      used: qty(16, "fl_oz"),
      fill: qty(3, "gal"),
      rate: qty(2.75, "pt/ac"),
    });
    const step = (answer: string | number, problem = job) => {
      const { verdict, mistakes } = checkAnswer(problem, answer);
      return [verdict, ...mistakes.map(({ what }) => what.replace(/^.*: /, ""))];
    };
    for (const answer of ["8.25", "8.25 gal", "1056 fl oz", "33 qt"])
      expect(step(answer)).toEqual(["mistake", "mix needed."]);
    for (const answer of ["2.25", "2 1/4 gallons", "288 fl oz"])
      expect(checked(job, answer)).toEqual(["mistake", "mix-for-product"]);
    expect(step("18 gal/ac")).toEqual(["mistake", "output rate on the test strip."]);
    expect(step("0.4583")).toEqual(["mistake", "treated area."]);
    expect(step("0.4583 ac")).toEqual(["mistake", "treated area."]);
    expect(step("19,965 sq ft")).toEqual(["mistake", "treated area."]);
    expect(step("2.444")).toEqual(["mistake", "product per unit of mix."]);
    // What has its own words keeps them: 16 x 2.75 x 0.4583 is the product for the job, 64.8 gal the mix.
    expect(checked(job, "20.17 fl oz")).toEqual(["mistake", "all-in-last-load"]);
    const loadsOf = problemFrom("tank-loads", {
      ground: qty(3, "ac"),
      area: qty(1.8, "ac"),
      rate: qty(36, "gal/ac"),
      fill: qty(25, "gal"),
    });
    expect(checked(loadsOf, "64.8 gal")).toEqual(["mistake", "total-for-count"]);
    // A step's number in a unit of another kind is no step.
    expect(checked(job, "18 lb")).toEqual(["mistake", "other-kind-of-unit"]);
    expect(checkAnswer(tank, "1.0667", { words: SPANISH_PRACTICE_WORDS }).says).toMatch(
      /Este es el resultado de un paso anterior: .+\. La pregunta pide otra cosa\./,
    );
    const orchard = problemFrom("tree-row-volume", {
      height: qty(12, "ft"),
      width: qty(6, "ft"),
      rowSpacing: qty(18, "ft"),
      spray: qty(0.7, "gal/1000ft3"),
    });
    // 12 x 6 / 18 x 43,560 = 174,240 cu ft to the acre.
    for (const answer of ["174,240", "174.24"])
      expect(checked(orchard, answer)).toEqual(["mistake", "canopy-for-spray"]);
    expect(step("174240 ft3/ac", orchard)).toEqual(["mistake", "tree-row volume."]);
  });

  it("finds two mistakes that were made together", () => {
    // Fluid ounces as gallons, and the width in inches: 20 x 128 / 12.
    const { mistakes, says } = checkAnswer(strip, (20 * 128) / 12);
    expect(mistakes.map(({ mistake }) => mistake)).toEqual(["small-unit-as-large", "width-in-small-unit"]);
    // What shows one of them alone, such as how many times too high it is, is not so of both.
    expect(says).toBe(
      `Not right. Two mistakes could explain this answer. ${mistakes.map(({ what, mend }) => `${what} ${mend}`).join(" ")}`,
    );
    // Half the tolerance: by chance a number is near to some pair of mistakes.
    expect(checked(strip, "214.2")).toEqual(["mistake", "small-unit-as-large", "width-in-small-unit"]);
    expect(checked(strip, "214.8")).toEqual(["unknown"]);
    // A pint of 8 fl oz, and the product for a whole acre in each tank.
    expect(checked(tank, 16)).toEqual(["mistake", "unscaled-tank", "pint-of-8"]);
  });

  it("says how far off it is where nothing explains it", () => {
    const { verdict, says, off } = checkAnswer(strip, 29);
    expect([verdict, says]).toEqual(["unknown", "Not right: 45% too high."]);
    expect(off).toBeCloseTo(0.45, 12);
    expect(checkAnswer(strip, 14.2).says).toBe("Not right: 29% too low.");
    // What is over the tolerance of 1%, or over the 5% of a rounding, is seen to be.
    for (const [answer, off] of [
      [19.792, "1.04% too low"],
      [20.2001, "1.01% too high"],
      [19.79, "1.1% too low"],
      [21.002, "5.01% too high"],
      [19.001, "5% too low"],
    ] as const)
      expect(checkAnswer(strip, answer).says).toBe(`Not right: ${off}.`);
    expect(checkAnswer(strip, 19.391, { tolerancePercent: 3 }).says).toBe("Not right: 3.05% too low.");
    expect(checkAnswer(spoons, 5)).toMatchObject({ verdict: "unknown", says: "Not right: 44% too low." });
    // From three times on, no percentage. 7,260 is the plot of 1.5 ac in square yards.
    const acres = problemFrom("rectangle-area", { length: qty(297, "ft"), width: qty(220, "ft") });
    expect(checkAnswer(acres, 7260).says).toBe("Not right: about 4,800 times the right answer.");
    expect(checkAnswer(spoons, 27).says).toBe("Not right: about 3 times the right answer.");
    expect(checkAnswer(spoons, 26).says).toBe("Not right: 190% too high.");
    expect(checkAnswer(spoons, 28).says).toBe("Not right: about 3.1 times the right answer.");
    expect(checkAnswer(spoons, 2).says).toBe("Not right: the right answer is about 4.5 times as much.");
    expect(checkAnswer(acres, 0).says).toBe("Not right: 100% too low.");
  });

  it("finds a decimal point in the wrong place", () => {
    expect(checked(plot, "30.53")).toEqual(["mistake", "decimal-point"]);
    expect(checked(plot, "0.3053")).toEqual(["mistake", "decimal-point"]);
    expect(checked(plot, 3053)).toEqual(["mistake", "decimal-point"]);
    expect(checked(plot, 30_533)).toEqual(["unknown"]);
    expect(checked(plot, 0)).toEqual(["unknown"]);
    // Ten times the dose isn't "not divided by 100" and "divided by 1,000" at once.
    const mix = problemFrom("percent-mix", { percent: percent(1.5), fill: qty(2.5, "gal") });
    expect(checked(mix, 48)).toEqual(["mistake", "decimal-point"]);
    // Nobody moves the point of a count.
    expect(checked(spoons, 90)).toEqual(["unknown"]);
  });

  it("reads a count with what is counted behind it", () => {
    for (const answer of ["5 loads", "5 tank loads.", " 5 "])
      expect(checked(loads, answer)).toEqual(["right"]);
    expect(checked(loads, "4.2 loads")).toEqual(["mistake", "loads-unrounded"]);
    for (const answer of ["5 or 6 loads", "1.2.3 loads", "loads"])
      expectRefused(() => checkAnswer(loads, answer), "unreadable", "answer");
    for (const answer of [
      "9 tsp",
      "9 teaspoons",
      "9 spoons",
      "9 Level Spoons",
      "9 level teaspoons",
      "9 level",
    ])
      expect(checked(spoons, answer)).toEqual(["right"]);
    expect(checked(spoons, "10 spoons")).toEqual(["mistake", "rounded-up"]);
    // Not level.
    for (const answer of ["9 heaped teaspoons", "9 heaped spoons", "9 scoops"])
      expectRefused(() => checkAnswer(spoons, answer), "unreadable", "answer");
    // A metric teaspoon is 5 mL.
    const metric = problemFrom("household-measure", { amount: qty(47, "mL"), spoon: qty(5, "mL") });
    for (const answer of ["9 tsp", "9 spoons"]) expect(checked(metric, answer)).toEqual(["right"]);
    // 3 tablespoons are 9 teaspoons; 1.6 fl oz are 9.6.
    expect(checked(spoons, "3 tbsp")).toEqual(["other-unit"]);
    expect(checked(spoons, "0 tsp")).toEqual(["unknown"]);
    expect(checked(spoons, "1.6 fl oz")).toEqual(["mistake", "spoons-unrounded"]);
    const spanish = { words: SPANISH_PRACTICE_WORDS, locale: "es-US" };
    expect(checked(loads, "5 cargas", spanish)).toEqual(["right"]);
    for (const answer of ["9 cucharaditas", "9 cucharas", "9 cucharaditas rasas"])
      expect(checked(spoons, answer, spanish)).toEqual(["right"]);
  });

  it("puts no two mistakes together for what was only rounded far", () => {
    // 18.75 gal/ac x 0.31663 ac = 5.9375 gal, 1.9375 of it in the last load: x 36 / 18.75 = 3.72 fl oz.
    const job = problemFrom("whole-job", {
      rows: 22,
      rowLength: qty(313.5, "ft"),
      bandWidth: qty(24, "in"),
      rowSpacing: qty(10, "ft"),
      distance: qty(363, "ft"),
      used: qty(40, "fl_oz"),
      fill: qty(4, "gal"),
      rate: qty(2.25, "pt/ac"),
    });
    expect(checked(job, 4)).toEqual(["mistake", "dose-rounded-up"]);
    expect(checked(job, 3)).toEqual(["unknown"]);
  });

  it("takes a count that is not rounded for what it is, however near", () => {
    // 6.1 fl oz / 0.5 fl oz = 12.2.
    const near = problemFrom("household-measure", { amount: qty(6.1, "fl_oz"), spoon: qty(1, "tbsp") });
    expect(checked(near, 12.2)).toEqual(["mistake", "spoons-unrounded"]);
  });

  it("puts no two mistakes together that no one makes in one sum", () => {
    // 25 gal/ac: x 36 / 12 / 12 would be a width left out and not converted.
    const wide = problemFrom("strip-calibration", {
      used: qty(40, "fl_oz"),
      swath: qty(36, "in"),
      distance: qty(181.5, "ft"),
    });
    expect(checked(wide, 6.25)).toEqual(["unknown"]);
    // 33.6 fl oz: / 1.2 x 20 / 16 = 35 would be an imperial pint, and no product for the reserve.
    const reserve = problemFrom("reserve", {
      area: qty(1.4, "ac"),
      carrierRate: qty(45, "gal/ac"),
      extra: 20,
      rate: qty(1.25, "pt/ac"),
    });
    expect(checked(reserve, 35)).toEqual(["unknown"]);
    // 1.4 x 45 x 1.2 = 75.6 gal.
    expect(checked(reserve, 75.6)).toEqual(["mistake", "mix-for-product"]);
    // Half of it would be the mix and a pint of 8 fl oz: there is no product in it to be measured in pints.
    expect(checked(reserve, 37.8)).toEqual(["unknown"]);
  });

  it("puts no two mistakes together of which one changes nothing", () => {
    // 57.6 fl oz is right; 48 x 12.5 / 15 is one step inverted, and no rounding on the way is in it.
    const load = practiceProblem("product-per-tank", 36);
    expect((load.answer as Quantity).value).toBeCloseTo(57.6, 9);
    expect(checked(load, 40)).toEqual(["unknown"]);
    // Of three nozzles the average with the whole width is a third, and a catch of 60 s is no minute by mistake.
    expect(checked(practiceProblem("boom-catch", 16), 10)).toEqual(["mistake", "average-for-boom"]);
  });

  it("names no unit that a problem of one's own numbers doesn't have", () => {
    // By hand: 0.5 ac are 21,780 sq ft; 24 fl oz/ac are 1.5 pt/ac; 64 fl oz are 0.5 gal or 2 qt.
    const wrong = (one: PracticeProblem) =>
      one.mistakes.map(({ mistake, answer }) => [mistake, Number(String((answer as Quantity).value))]);
    const powder = problemFrom("dry-product", { area: qty(21_780, "ft2"), rate: qty(2, "lb/ac") });
    expect(wrong(powder)).toContainEqual(["unscaled-product", 32]);
    expect(checked(powder, "32")).toEqual(["mistake", "unscaled-product"]);
    const perTank = { carrierRate: qty(20, "gal/ac"), fill: qty(4, "gal"), density: qty(9, "lb/gal") };
    const ounces = problemFrom("product-per-tank", { ...perTank, rate: qty(24, "fl_oz/ac") });
    expect(checked(ounces, "2.4")).toEqual(["unknown"]);
    expect(checked(ounces, "9.6")).toEqual(["unknown"]);
    const pints = problemFrom("product-per-tank", { ...perTank, rate: qty(1.5, "pt/ac") });
    expect(checked(pints, "2.4")).toEqual(["mistake", "pint-of-8"]);
    const field = problemFrom("fertilizer", { needed: qty(40, "lb/ac"), area: qty(0.5, "ac"), nitrogen: 16 });
    expect(checked(field, "1250")).toEqual(["mistake", "decimal-point"]);
    for (const used of [qty(0.5, "gal"), qty(2, "qt")]) {
      const jug = problemFrom("strip-calibration", { used, swath: qty(3, "ft"), distance: qty(363, "ft") });
      expect(wrong(jug).map(([mistake]) => mistake)).not.toContain("small-unit-as-large");
      expect(checked(jug, 2560)).toEqual(["unknown"]);
    }
    // Nor does a catch of several nozzles, whose figures are a list.
    const boom = (caught: Quantity) =>
      problemFrom("boom-catch", {
        catches: [caught, caught, caught],
        time: qty(30, "s"),
        width: qty(20, "in"),
        speed: qty(3, "mph"),
      });
    expect(wrong(boom(qty(32, "fl_oz"))).flat()).toContain("small-unit-as-large");
    expect(wrong(boom(qty(1, "qt"))).flat()).not.toContain("small-unit-as-large");
  });

  it("takes no figure for a rounding that is one step off, whatever the noise of a division", () => {
    // 0.15 ac at 1 lb/ac are 2.4 oz wt, and 2.4 / 0.1 is 23.999999999999996.
    const powder = problemFrom("dry-product", { area: qty(0.15, "ac"), rate: qty(1, "lb/ac") });
    expect(checked(powder, "2.4")).toEqual(["right"]);
    expect(checked(powder, "2.3")[0]).toBe("mistake");
    expect(checked(powder, "2.36")[0]).not.toBe("rounded");
    // 0.75% of 5 gal are 4.8 fl oz, and 4.8 / 0.1 is 47.99999999999999.
    const additive = problemFrom("percent-mix", { percent: percent(0.75), fill: qty(5, "gal") });
    expect(checked(additive, "4.7")).toEqual(["unknown"]);
    expect(checked(additive, "4.8")).toEqual(["right"]);
    // A half is rounded up: 0.225 ac by hand, of which 0.23 is 2% off.
    const field = problemFrom("rectangle-area", { length: qty(108.9, "ft"), width: qty(90, "ft") });
    expect(checked(field, "0.23")).toEqual(["rounded"]);
    // Over 300 sets no dose with a step less than the exact one is right.
    for (let set = 1; set <= 300; set++)
      for (const one of practiceSet(set, { topics: ["dry-product", "percent-mix", "spot-tank", "band"] })
        .problems) {
        const { value } = one.answer as Quantity;
        const step = 10 ** (Math.floor(Math.log10(value)) - 1);
        const less = Number((value - step).toPrecision(12));
        // Where two figures say all of it, and one figure less isn't the rounding to one.
        const isShort = Number(value.toPrecision(2)) === Number(value.toPrecision(12));
        if (!isShort || step / value <= 0.01 || Number(less.toPrecision(1)) === less) continue;
        expect(checkAnswer(one, less).verdict, `${set} ${one.topic} ${value} ${less}`).not.toBe("rounded");
      }
  });

  it("takes no other spoon for a count of those that are asked for", () => {
    // 2.7 fl oz are 5.4 tbsp; 16 tsp are 2.667 fl oz, under the dose.
    const spoons = problemFrom("household-measure", { amount: qty(2.7, "fl_oz"), spoon: qty(1, "tbsp") });
    expect(checked(spoons, "16")).toEqual(checked(spoons, "16 tsp"));
    expect(checked(spoons, "16 tsp")).toEqual(["mistake", "teaspoon-for-tablespoon"]);
    expect(checked(spoons, "1/3 cup")).toEqual(["mistake", "other-kind-of-unit"]);
    expect(checked(spoons, "15 tsp")).toEqual(["other-unit"]);
    expect(checked(spoons, "6 tbsp")[0]).toBe("mistake");
  });

  it("gives no more than the exact answer where product is asked for", () => {
    // 4.5 x 1 / 0.16 = 28.125 lb; 28.13 would be too much.
    const field = problemFrom("fertilizer", {
      needed: qty(1, "lb/1000ft2"),
      area: qty(4500, "ft2"),
      nitrogen: 16,
    });
    expect(checkAnswer(field, "28.1").says).toContain("28.12 lb");
    const sheets = [practiceSheet([field], { key: "long" }), workedExample(field)];
    for (const sheet of sheets) {
      expect(renderText(sheet)).toMatch(/28\.12 lb/);
      expect(renderText(sheet)).not.toContain("28.13");
    }
  });

  it("reads an amount in parts as sheets print it", () => {
    // 6 tbsp + 1 tsp are 3.1667 fl oz.
    for (const typed of ["6 tbsp + 1 tsp", "6 cucharadas + 1 cucharadita", "6 1/3 de cucharadas"])
      expect(
        (
          checkAnswer(
            problemFrom("spot-tank", { spots: 10, each: qty(4, "fl_oz"), percent: percent(2) }),
            typed,
            {
              words: SPANISH_PRACTICE_WORDS,
            },
          ).answer as Quantity
        ).value,
      ).toBeCloseTo(19 / 3, 9);
  });

  it("finds the product that went in too early or too late", () => {
    // D, C, A, B is right: conditioner, granules, emulsion, adjuvant.
    const order = problemFrom("mixing-order", { products: ["EC", "adjuvant", "WG", "water-conditioner"] });
    for (const answer of ["dcab", "D, C, A, and B", "D then C then A, then B", "Add D, C, A, B"])
      expect(checked(order, answer)).toEqual(["right"]);
    // A group of letters and one by itself; "y" is Spanish for "and", and no letter of the list.
    for (const answer of ["D, then CAB", "DCA and B"]) expect(checked(order, answer)).toEqual(["right"]);
    for (const answer of ["D, C, A y B", "DCA y B"])
      expect(checked(order, answer, { words: SPANISH_PRACTICE_WORDS })).toEqual(["right"]);
    // Words of other letters are no order, though some of their letters are on the list.
    for (const answer of ["?", "12", "first the powder"]) {
      const { code, path, issues } = refusal(() => checkAnswer(order, answer));
      expect([code, path, issues[0]?.key], answer).toEqual(["unreadable", "answer", "letters-only"]);
      expect(issues[0]?.message).toBe("Enter only the letters, in their order.");
    }
    // One letter, and what is no letters at all: an answer that isn't right.
    for (const answer of ["G", 5, qty(5, "gal")]) {
      const said = checkAnswer(order, answer);
      expect([said.verdict, said.says]).toEqual([
        "unknown",
        "Not right. Write each letter once: A, B, C, and D.",
      ]);
      // Nothing says how far off it is, not even a field with nothing in it.
      expect(Object.keys(said)).toEqual(["verdict", "says", "answer", "mistakes"]);
    }
    // A letter too many is no word between them.
    expect(checked(order, "D, C, A, B, G")).toEqual(["unknown"]);
    expect(checked(order, "DACB")).toEqual(["mistake", "liquids-before-powders"]);
    expect(checked(order, "D C B A")).toEqual(["mistake", "adjuvant-first"]);
    expect(checked(order, "CADB")).toEqual(["mistake", "conditioner-last"]);
    const powders = problemFrom("mixing-order", { products: ["WG", "water-conditioner", "WP"] });
    expect(checked(powders, "BAC")).toEqual(["mistake", "powders-swapped"]);
    // Two of them out of place: nothing explains that.
    expect(checkAnswer(order, "ACDB").says).toBe(
      "Not right. Unless the label says otherwise: conditioner first, then wettable powders, granules, suspensions, emulsions, and adjuvants last.",
    );
    for (const answer of ["DC", "DCAE", "DCAA", "first D, then C"])
      expect(checkAnswer(order, answer).says).toBe("Not right. Write each letter once: A, B, C, and D.");
  });

  it("finds a unit that measures something else", () => {
    for (const answer of ["25 gal", "25 psi", qty(25, "lb/ac")])
      expect(checked(strip, answer)).toEqual(["mistake", "other-kind-of-unit"]);
    expect(checked(tank, "20 oz wt")).toEqual(["mistake", "other-kind-of-unit"]);
    expect(checked(spoons, "8 oz wt")).toEqual(["mistake", "other-kind-of-unit"]);
    expect(checked(loads, "5 gal")).toEqual(["mistake", "other-kind-of-unit"]);
    expect(checkAnswer(strip, "25 gal").off).toBeUndefined();
  });

  it("finds the right number in a wrong unit, and names the right one", () => {
    for (const answer of ["20 gal", "20 L", "20.1 psi", "20 gal/ha", qty(20, "lb/ac")]) {
      expect(checked(strip, answer)).toEqual(["mistake", "right-number"]);
      expect(checkAnswer(strip, answer).says).toBe(
        "Not right. The number is right, but the unit should be gal/ac. An answer is a number with its unit. Write the unit that the question asks for.",
      );
    }
    expect(checkAnswer(strip, "20 gal").off).toBeUndefined();
    // 3.0533 ac. A dose of 26.67 fl oz isn't 27 of anything.
    expect(checked(plot, "3.05 ha")).toEqual(["mistake", "right-number"]);
    expect(checked(tank, "26.6 oz wt")).toEqual(["mistake", "right-number"]);
    expect(checked(tank, "27 oz wt")).toEqual(["mistake", "other-kind-of-unit"]);
    const mend = "The number is right, but the unit should be tsp.";
    for (const answer of ["9 tbsp", "9 oz wt"])
      expect(checkAnswer(spoons, answer).mistakes[0]?.what).toBe(mend);
    const spanish = { words: SPANISH_PRACTICE_WORDS, locale: "es-US" };
    expect(checkAnswer(strip, "20 galones", spanish).mistakes[0]?.what).toBe(
      "El número es correcto, pero la unidad debe ser galones/acre.",
    );
  });

  it("speaks Spanish", () => {
    const words = { words: SPANISH_PRACTICE_WORDS, locale: "es-US" };
    expect(checkAnswer(plot, 3.05, words).says).toBe(
      "Correcto, pero redondeado. La respuesta exacta es 3.053 acres.",
    );
    expect(checkAnswer(strip, 2560, words).mistakes[0]?.what).toBe(
      "La cantidad en onzas líquidas se usó como si fueran galones.",
    );
  });

  it("checks problems that were saved, by their figures alone", () => {
    const saved = JSON.parse(JSON.stringify(practiceProblem("band", 4)));
    expect(checkAnswer(saved, saved.answer.value).verdict).toBe("right");
    expect(checkAnswer({ ...saved, answer: 5 }, saved.answer.value).verdict).toBe("right");
    expectRefused(() => checkAnswer({ ...saved, given: {} }, 5), "missing", "problem.given.rows");
    expectRefused(() => checkAnswer({} as never, 5), "missing", "problem.topic");
    // A message that lists every mistake there is would be a page.
    const unnamed = { ...strip, mistakes: [{ ...strip.mistakes[0], mistake: 7 }] } as never;
    const { path, message } = refusal(() => checkAnswer(unnamed, 5));
    expect([path, message]).toEqual(["problem.mistakes[0].mistake", "Enter some text, not 7."]);
  });

  it("refuses what can't be read", () => {
    expectRefused(() => checkAnswer(strip, ""), "missing", "answer");
    expectRefused(() => checkAnswer(strip, undefined as never), "missing", "answer");
    expectRefused(() => checkAnswer(strip, Number.NaN), "not-finite", "answer");
    expectRefused(() => checkAnswer(strip, "about twenty"), "unreadable", "answer");
    expectRefused(() => checkAnswer(strip, "20 scoops"), "unknown-unit", "answer");
    // An example is in the unit of the question.
    expect(refusal(() => checkAnswer(tank, "some")).message).toMatch(/such as 5 fl oz\.$/);
    expect(refusal(() => checkAnswer(plot, "some")).message).toMatch(/such as 5 ac\.$/);
    expect(refusal(() => checkAnswer(plot, "3 bananas")).message).toMatch(/one such as "ac"\.$/);
    expectRefused(() => checkAnswer(spoons, "nine"), "unreadable", "answer");
    expectRefused(
      () => checkAnswer(strip, 20, { tolerancePercent: 6 }),
      "out-of-range",
      "options.tolerancePercent",
    );
    expectRefused(
      () => checkAnswer(strip, 20, { tolerance: 1 } as never),
      "unknown-field",
      "options.tolerance",
    );
  });
});

// Each worked by hand, from the figures that stand beside it.
describe("mistakes that an estimate shows", () => {
  it("are none of a problem where they come within a factor of 2 of the right answer", () => {
    const INVERTED = ["inverted", "fraction-inverted"];
    let far = 0;
    for (const topic of ["rectangle-area", "tank-loads", "product-per-tank"] as const)
      for (let seed = 1; seed <= 60; seed++) {
        const { answer, mistakes } = practiceProblem(topic, seed);
        const right = (answer as { value: number }).value ?? answer;
        for (const { mistake, answer: wrong } of mistakes.filter((one) => INVERTED.includes(one.mistake))) {
          const value = ((wrong as { value: number }).value ?? wrong) as number;
          expect(Math.max(value / right, right / value), `${topic} ${seed}: ${mistake}`).toBeGreaterThan(2);
          far++;
        }
      }
    expect(far).toBeGreaterThan(20);
  });
});

describe("checkAnswer, on trees", () => {
  it.each([
    // 2 gal = 256 fl oz in 40 s; 48 / 6.4 = 7.5 s.
    ["volumes-in-two-units", 960, "48 / 2 x 40"],
    ["minutes-for-seconds", 0.125, "7.5 / 60"],
    ["time-taken-as-minute", 11.25, "48 x 60 / 256"],
    ["flow-multiplied", 0.01875, "0.375 gal x 2 / 40"],
    ["flow-multiplied", 2.4, "48 fl oz x 2 / 40"],
    ["time-of-catch", 40, "the time that is given"],
    ["plants-from-catch", 5.3333333, "256 / 48"],
    ["fraction-inverted", 0.13333333, "6.4 / 48"],
    ["volume-factor-inverted", 122_880, "48 x 128 / 2 x 40"],
    ["other-gallon", 6, "48 / 160 / 2 x 40"],
  ])("knows the time that %s comes to", (mistake, answer, _arithmetic) => {
    const given = { caught: qty(2, "gal"), time: qty(40, "s"), each: qty(48, "fl_oz") };
    expect(checked(problemFrom("plant-timing", given), answer)).toEqual(["mistake", mistake]);
  });

  it("knows the other gallon in imperial measure, and none in metric", () => {
    const time = qty(40, "s");
    // 2 imp gal = 320 fl oz: 48 x 40 / 320 = 6 s; with 128 fl oz to the gallon 7.5.
    const imperial = { caught: qty(2, "imp_gal"), time, each: qty(48, "imp_fl_oz") };
    expect(checked(problemFrom("plant-timing", imperial), 7.5)).toEqual(["mistake", "other-gallon"]);
    // 0.5 / 4 x 40 = 5 s.
    const metric = problemFrom("plant-timing", { caught: qty(4, "L"), time, each: qty(500, "mL") });
    expect(metric.answer).toEqual(qty(5, "s"));
    expect(metric.mistakes.map((one) => one.mistake)).not.toContain("other-gallon");
  });

  it.each([
    // 43,560 x 10 x 6 / 18 = 145,200 cu ft; x 0.75 / 1,000 = 108.9 gal.
    ["canopy-size-left-out", 108_900, "145,200 x 0.75"],
    ["alleys-as-canopy", 326.7, "43,560 x 10 x 0.75 / 1,000"],
    ["canopy-for-spray", 145_200, "the canopy"],
    ["canopy-for-spray", 145.2, "the canopy, in thousands"],
    ["canopy-height-left-out", 10.89, "108.9 / 10"],
    ["rows-counted-twice", 217.8, "2 x 108.9"],
    ["spacing-multiplied", 35_283.6, "43.56 x 10 x 6 x 18 x 0.75"],
    ["land-unit-left", 0.0025, "10 x 6 / 18 x 0.75 / 1,000"],
    ["wrong-land-factor", 12.1, "4,840 x 10 x 6 / 18 x 0.75 / 1,000"],
    ["other-land-unit", 269.0977, "108.9 / 0.404685642"],
    ["canopy-width-left-out", 18.15, "108.9 / 6"],
  ])("knows the spray that %s comes to", (mistake, answer, _arithmetic) => {
    const canopy = { height: qty(10, "ft"), width: qty(6, "ft"), rowSpacing: qty(18, "ft") };
    const problem = problemFrom("tree-row-volume", { ...canopy, spray: qty(0.75, "gal/1000ft3") });
    expect(checked(problem, answer)).toEqual(["mistake", mistake]);
  });

  it("takes 100 cubic meters for the measure of a canopy in metric, and 1,000 square meters for the wrong hectare", () => {
    const canopy = { height: qty(3, "m"), width: qty(1.5, "m"), rowSpacing: qty(5, "m") };
    const problem = problemFrom("tree-row-volume", { ...canopy, spray: qty(13, "L/100m3") });
    // 10,000 x 3 x 1.5 / 5 = 9,000 m3; x 13 / 100 = 1,170 L.
    expect(problem.answer).toEqual(qty(1170, "L/ha"));
    expect(checked(problem, 117_000)).toEqual(["mistake", "canopy-size-left-out"]);
    expect(checked(problem, 90)).toEqual(["mistake", "canopy-for-spray"]);
    expect(checked(problem, 117)).toEqual(["mistake", "wrong-land-factor"]);
    expectRefused(
      () => problemFrom("tree-row-volume", { ...canopy, width: qty(6, "m"), spray: qty(13, "L/100m3") }),
      "conflict",
      "given.width",
    );
  });
});
