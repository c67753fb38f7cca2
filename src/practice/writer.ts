import { multipleOf } from "../units/multiples.js";
import type { Unit } from "../units/types.js";
import { filled, type Writer, writerFor } from "../worksheet/words/writer.js";
import { ENGLISH_PRACTICE_WORDS, type PracticeMessages } from "./words.js";

// Units that labels go by, such as 1,000 square feet.
const COUNTED: readonly Unit[] = ["1000ft2", "100m2", "1000ft", "100m", "1000ft3", "100m3"];

/**
 * The writer of problems. A number of such units is a count in words, "12.6 thousands of sq ft". Beside a rate per 1,000 sq ft,
 * "12.6 × 1,000 sq ft" would read as one more factor.
 */
export function practiceWriter(
  writing: Parameters<typeof writerFor<PracticeMessages>>[0],
): Writer<PracticeMessages> {
  const plain = writerFor(writing, ENGLISH_PRACTICE_WORDS);
  const { messages } = plain;
  const { hundreds, thousands } = messages.practice;
  const counted = COUNTED.map((unit) => {
    const { count, of } = multipleOf(unit) as NonNullable<ReturnType<typeof multipleOf>>;
    const other = filled(count === 100 ? hundreds : thousands, { unit: plain.unit(of) });
    return [unit, { one: plain.unit(unit, 1), other }];
  });
  const words = { ...messages, units: { ...Object.fromEntries(counted), ...messages.units } };
  return writerFor({ ...writing, words }, ENGLISH_PRACTICE_WORDS);
}
