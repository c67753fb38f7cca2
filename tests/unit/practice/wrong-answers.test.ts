import { describe, expect, it } from "vitest";
import {
  ENGLISH_PRACTICE_WORDS,
  type Given,
  practiceProblem,
  practiceTopics,
} from "../../../src/practice/index.ts";
import { TOPICS } from "../../../src/practice/topics/all.ts";
import { type Sizes, sizesIn } from "../../../src/practice/topics/sizes.ts";
import { type AnyTopic, everyAmount } from "../../../src/practice/topics/topic.ts";
import { allWrongAnswers, doublyWrongAnswers, listed, stepsOf } from "../../../src/practice/wrong-answers.ts";
import { inUnit } from "../../../src/units/convert.ts";
import { dimensionOf } from "../../../src/units/dimensions.ts";
import { type Unit, unitsOf } from "../../../src/units/index.ts";

interface Drawn {
  readonly topic: AnyTopic;
  readonly given: Given;
  readonly sizes: Sizes;
}

/** Problems of every topic, in two systems of units. */
function drawn(seeds: readonly number[]): Drawn[] {
  return practiceTopics.flatMap((name) =>
    (["us", "metric"] as const).flatMap((units) =>
      seeds.map((seed) => ({
        topic: TOPICS[name],
        given: practiceProblem(name, seed, { units }).given,
        sizes: sizesIn(units),
      })),
    ),
  );
}

/** The same problem, each amount in a unit that its topic doesn't draw. */
function restated({ topic, given, sizes }: Drawn): Given {
  const lists = topic.figures(sizes);
  return everyAmount(given, (quantity, name) => {
    const own = (lists[name] ?? []).flat().flatMap((one) => (typeof one === "object" ? [one.unit] : []));
    const dimension = dimensionOf(quantity.unit);
    const unit = (unitsOf(dimension) as Unit[]).find((one) => !own.includes(one));
    // Of a percentage, a rate in parts per million would be another question.
    if (dimension === "fraction" || unit === undefined) return quantity;
    return { ...quantity, value: inUnit(quantity, unit), unit };
  });
}

const codesOf = (all: readonly { readonly mistakes: readonly string[] }[]): string[] => [
  ...new Set(all.flatMap(({ mistakes }) => mistakes)),
];

describe("the wrong answers to a problem", () => {
  it("are numbers or letters that somebody can write down, each by mistakes that have words", () => {
    for (const { topic, given, sizes } of drawn([1]))
      for (const { answer, mistakes, also } of [
        ...allWrongAnswers(topic, given, sizes),
        ...doublyWrongAnswers(topic, given, sizes),
      ]) {
        if (typeof answer === "number") expect(answer).toBeGreaterThanOrEqual(0);
        else expect(answer).toMatch(/^[A-Z]+$/);
        for (const code of [...mistakes, ...also])
          expect(ENGLISH_PRACTICE_WORDS.mistakes).toHaveProperty([code, "what"]);
      }
  });

  it("are listed once, with every other mistake that leads there", () => {
    for (const { topic, given, sizes } of drawn([1, 2])) {
      const all = allWrongAnswers(topic, given, sizes);
      const key = listed(topic, all);
      const answers = key.map(({ answer }) => answer);
      expect(new Set(answers).size).toBe(answers.length);
      for (const { answer, step, mistakes } of all) {
        if (step !== undefined) continue;
        const under = key.filter((one) => [...one.mistakes, ...one.also].includes(mistakes[0] as never));
        const apart = under.map((one) => one.answer);
        // Too near to be kept apart: 2% of an amount.
        expect(
          apart.some((one) => one === answer || Math.abs(Number(one) / Number(answer) - 1) < 0.021),
          `${mistakes}: ${answer} of ${apart}`,
        ).toBe(true);
      }
      // That an answer is a step of the right way says less than a mistake does.
      for (const { also } of key) expect(also).not.toContain("step-for-answer");
    }
  });

  it("have the results of steps, but not the answer itself in another unit, nor a figure of the problem in one", () => {
    let steps = 0;
    for (const { topic, given, sizes } of drawn([1])) {
      const figures = JSON.stringify(Object.values(given));
      const right = topic.answer(given, sizes);
      const asked = topic.unit?.(sizes);
      for (const { id, result, terms } of stepsOf(topic, given, sizes))
        if (id === "units.convert")
          expect(figures, `${result}`).not.toContain(JSON.stringify(terms.value).slice(1, -1));
      for (const { step } of allWrongAnswers(topic, given, sizes)) {
        if (step === undefined || typeof step.result !== "object") continue;
        steps++;
        if (asked !== undefined && dimensionOf(step.result.unit) === dimensionOf(asked))
          expect(inUnit(step.result, asked)).not.toBeCloseTo(right as number, 6);
      }
    }
    expect(steps).toBeGreaterThan(50);
  });

  it("come from no mistake with units where the problem is in others", () => {
    const all = drawn([1, 2]);
    const own = codesOf(all.flatMap(({ topic, given, sizes }) => allWrongAnswers(topic, given, sizes)));
    const others = codesOf(all.flatMap((one) => allWrongAnswers(one.topic, restated(one), one.sizes)));
    expect(own.filter((code) => !others.includes(code)).sort()).toEqual(
      `canopy-for-spray canopy-size-left-out difference-as-percent divided-by-rows factors-left-out label-unit-left land-factor-inverted land-for-lawn
      land-unit-from-other land-unit-left lawn-size-left-out lawn-ten-times liter-of-100 mass-unit-left other-gallon other-land-unit
      per-hundred-left-out per-lawn-for-land per-minute-left per-second-left pint-for-gallon pint-of-32 pint-of-8 pint-of-other-system
      pound-of-12 pounds-as-kilograms rate-per-other-land rate-per-unit-of-stock rate-per-volume reading-divided reading-multiplied
      row-size-left-out row-ten-times seconds-as-minutes small-mass-for-large small-unit-as-large speed-factor-inverted
      speed-in-other-unit unscaled-lawn unscaled-row volume-factor-inverted volume-unit-left volumes-in-two-units weighed-as-volume
      weighed-by-water width-in-large-unit width-in-small-unit wrong-land-factor`.split(/\s+/),
    );
    // All others are the same, whatever the units.
    expect(others.filter((code) => !own.includes(code))).toEqual([]);
  });
});

describe("two mistakes together", () => {
  const pairs = (): (readonly string[])[] =>
    drawn([1]).flatMap(({ topic, given, sizes }) =>
      doublyWrongAnswers(topic, given, sizes).map(({ mistakes }) => mistakes),
    );

  it("are two that somebody makes in one sum, not the same figure wrong in two ways", () => {
    const all = pairs();
    const together = (a: string, b: string) => all.some((both) => both.includes(a) && both.includes(b));
    for (const [a, b] of [
      ["width-in-small-unit", "width-left-out"],
      ["width-in-small-unit", "width-in-large-unit"],
      ["width-left-out", "width-in-large-unit"],
      ["percent-as-part", "per-mille"],
      ["percent-as-part", "part-not-percent"],
      ["volumes-in-two-units", "volume-factor-inverted"],
    ] as const)
      expect(together(a, b), `${a} + ${b}`).toBe(false);
    expect(together("land-unit-left", "width-left-out")).toBe(true);
    expect(together("land-factor-inverted", "rounded-early")).toBe(true);
    // A pair with one of these is far-fetched.
    for (const rare of ["pint-of-other-system", "other-gallon"]) expect(all.flat()).not.toContain(rare);
    // No mistake with the label's rate goes with an answer that has no product in it.
    const withRate = [
      "label-unit-left",
      "pint-of-8",
      "pint-of-32",
      "liter-of-100",
      "per-lawn-for-land",
      "rate-per-other-land",
      "per-hundred-left-out",
    ];
    for (const rate of withRate)
      for (const none of ["mix-for-product", "area-for-product"])
        expect(together(rate, none), `${rate} + ${none}`).toBe(false);
    expect(together("label-unit-left", "inverted")).toBe(true);
    expect(together("land-unit-left", "area-for-product")).toBe(true);
    expect(together("per-mille", "mix-for-product")).toBe(true);
  });
});
