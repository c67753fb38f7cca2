import { expect } from "vitest";
import type { Given, PracticeTopic } from "../../src/practice/index.ts";
import type { MistakeCode } from "../../src/practice/mistakes.ts";
import { TOPICS } from "../../src/practice/topics/all.ts";
import { sizesIn } from "../../src/practice/topics/sizes.ts";
import { allWrongAnswers } from "../../src/practice/wrong-answers.ts";
import type { UnitSystem } from "../../src/units/index.ts";

/** What one mistake leads to, in the unit of the question, by hand: as arithmetic in plain numbers. */
export type ByHand = { readonly [Code in MistakeCode]?: number | string | readonly (number | string)[] };

/** Holds the right answer and every wrong one that a topic knows, each against arithmetic by hand; no mistake is missing, and none is more. */
export function expectWrongAnswers(
  name: PracticeTopic,
  system: UnitSystem,
  given: Given,
  right: number | string,
  wrong: ByHand,
): void {
  const [topic, sizes] = [TOPICS[name], sizesIn(system)];
  const rounded = (one: number | string) => (typeof one === "number" ? Number(one.toPrecision(9)) : one);
  expect(rounded(topic.answer(given, sizes))).toBe(rounded(right));
  const found: Record<string, (number | string)[]> = {};
  for (const { answer, mistakes, step } of allWrongAnswers(topic, given, sizes)) {
    const [code = ""] = mistakes;
    if (step === undefined) found[code] = [...(found[code] ?? []), rounded(answer)];
  }
  const byHand = Object.entries(wrong).map(([code, answers]) => [code, [answers].flat().map(rounded)]);
  expect(found).toEqual(Object.fromEntries(byHand));
}
