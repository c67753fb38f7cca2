import { checked } from "../units/check.js";
import type { DrawingBlock } from "../worksheet/render/sheets.js";
import type { Writer } from "../worksheet/words/writer.js";
import type { PracticeProblem } from "./problem.js";
import { TOPICS } from "./topics/all.js";
import type { PracticeMessages } from "./words.js";

/** The drawing of a problem's plot or strip, where its topic has one. */
export function drawingOf(
  { topic, given }: PracticeProblem,
  { messages, short }: Writer<PracticeMessages>,
): DrawingBlock[] {
  const drawing = TOPICS[topic].drawing?.(checked(given, TOPICS[topic].fields, "given"));
  if (drawing === undefined) return [];
  const { labels, ...shapes } = drawing;
  return [
    {
      kind: "drawing",
      caption: messages.practice.toScale,
      ...shapes,
      labels: labels.map(({ at, length }) => ({ at, text: short(length) })),
    },
  ];
}
