import { checked } from "../units/check.js";
import { inUnit } from "../units/convert.js";
import type { Quantity, Unit, UnitSystem } from "../units/types.js";
import type { WorkingLine } from "../units/working-line.js";
import { counterpart } from "../worksheet/job/counterparts.js";
import { simplified } from "../worksheet/lines/simplify.js";
import { writtenLines } from "../worksheet/lines/written-line.js";
import { heading, text } from "../worksheet/render/page.js";
import type { GroupBlock, SheetOfBlocks } from "../worksheet/render/sheets.js";
import type { Writer } from "../worksheet/words/writer.js";
import { numberOfFactors, unitsOfLine } from "./board-lines.js";
import { EXAMPLE_OPTIONS, type ExampleOptions } from "./options.js";
import { answerText, factorTexts, listText, mistakesTable, rightText, wrongAnswerText } from "./phrases.js";
import type { PracticeProblem } from "./problem.js";
import { drawingOf } from "./problem-drawing.js";
import { PROBLEM } from "./problem-field.js";
import { TOPICS } from "./topics/all.js";
import { type MixingKind, placeOf } from "./topics/mixing-order.js";
import { sizesIn } from "./topics/sizes.js";
import {
  type AnyTopic,
  everyAmount,
  type Given,
  type GivenFigure,
  inAnswerUnit,
  sameFigures,
} from "./topics/topic.js";
import type { PracticeMessages } from "./words.js";
import { practiceWriter } from "./writer.js";

type Part = GroupBlock["blocks"][number];
type BoardWriter = Writer<PracticeMessages>;

/**
 * Returns a worked example for the board, one step a slide: the problem, an estimate, each step with its units, and a check in
 * other units. It is the problem as it stands on a sheet: the same farm and the same figures.
 *
 * The estimate is the same formula with figures rounded; there is none where they are round as they are, or where rounding would
 * mislead. A step shows the formula, the figures in it, which units cancel, and where a factor comes from. The check works the
 * problem again in the other system of units. The last slide has the likeliest mistakes.
 *
 * @param problem - a problem from `practiceProblem`, `problemFrom` or a set, made with the same locale and words
 * @param options - see {@link ExampleOptions}
 * @returns the slides in order, as data; `renderHtml` shows one slide a screen in large type, `renderText`, `renderMarkdown` and
 *   `renderLatex` one below the other
 * @throws SprayMathError what `practiceSheet` throws for what is no problem; `unknown-choice` or `unknown-field` for an option
 *
 * @example
 * ```ts
 * import { problemFrom, workedExample } from "swath-to-spoon/practice";
 * import { qty } from "swath-to-spoon/units";
 * import { renderText } from "swath-to-spoon/worksheet";
 *
 * const given = { used: qty(64, "fl_oz"), swath: qty(36, "in"), distance: qty(363, "ft") };
 * const lines = renderText(workedExample(problemFrom("strip-calibration", given))).split("\n");
 * console.log(lines.filter((line) => /340/.test(line)).join(" | ")); // 0.0587695 fl oz/sq ft × 340.313 = 20 gal/ac | 340.313 = 43,560 ÷ 128
 * ```
 */
export function workedExample(problem: PracticeProblem, options: ExampleOptions = {}): SheetOfBlocks {
  const asked = checked(problem, PROBLEM, "problem");
  checked(asked.given, TOPICS[asked.topic].fields, "problem.given");
  const { detail = "full", ...writing } = checked(options, EXAMPLE_OPTIONS, "options");
  const writer = practiceWriter(writing);
  const { messages } = writer;
  const isFull = detail === "full";
  const slides = [
    problemSlide(asked, writer),
    ...estimateSlide(asked, writer),
    ...orderSlide(asked, writer),
    ...stepSlides(asked, isFull, writer),
    answerSlide(asked, writer),
    ...(isFull ? [...checkSlide(asked, writer), ...mistakesSlide(asked, writer)] : []),
  ];
  return {
    kind: "board",
    language: messages.language,
    title: messages.topics[asked.topic].name,
    blocks: slides.map((blocks) => ({ kind: "group", as: "slide", blocks })),
  };
}

function problemSlide(problem: PracticeProblem, writer: BoardWriter): Part[] {
  const { practice } = writer.messages;
  return [
    heading(2, practice.theProblem) as Part,
    text(problem.problem) as Part,
    ...drawingOf(problem, writer),
  ];
}

// Further off than this, round figures mislead: where loads are counted, or a little is left of much.
const MOST_OFF = 0.3;

// Nearer than this is the noise of the arithmetic.
const SAME = 1e-9;

/** The same formula with figures rounded; nothing where those that it takes are round as they are. */
function estimateSlide({ topic: name, given, units }: PracticeProblem, writer: BoardWriter): Part[][] {
  const topic = TOPICS[name];
  const sizes = sizesIn(units);
  const right = topic.answer(given, sizes);
  if (typeof right === "string") return [];
  const figures = needed(topic, given);
  const estimates = roundings(figures).map((round) => ({
    steps: roundingsOf(figures, round, writer),
    isAll: areAllRounded(figures, round),
    about: topic.answer({ ...given, ...round }, sizes) as number,
  }));
  const fair = estimates.find(({ steps, about }) => {
    const off = Math.abs(about / right - 1);
    // A figure that cancels estimates nothing. A count may well be the same for it.
    return steps.length > 0 && off <= MOST_OFF && (off > SAME || topic.unit === undefined);
  });
  if (fair === undefined) return [];
  const { messages, fill } = writer;
  const { estimate, estimateOf, estimateOthers } = messages.practice;
  const filled = fill(fair.isAll ? estimateOf : estimateOthers, {
    figures: listText(fair.steps, writer),
    answer: answerText(inAnswerUnit(topic, inTwoFigures(fair.about), sizes), writer),
  });
  return [[heading(2, estimate) as Part, text(filled) as Part]];
}

/** A number in two figures; without the noise of the arithmetic, which would make 220 or 230 of 225. */
function inTwoFigures(value: number): number {
  return Number(Number(value.toPrecision(12)).toPrecision(2));
}

/** Rounder figures, the roundest first: all of one digit, or only one of them where the others have two at most. */
function roundings(given: Given): Given[] {
  const single = Object.entries(given).map(([name, figure]) => ({
    ...given,
    ...rounded({ [name]: figure }, 1),
  }));
  // Nobody works out figures of more digits in the head.
  return [rounded(given, 1), ...single].filter(
    (figures) =>
      sameFigures(figures, rounded(figures, 2)) && !sameFigures(figures, given) && keepsApart(given, figures),
  );
}

/** Whether amounts of one list that differ, such as the catches of nozzles, still do. */
function keepsApart(given: Given, round: Given): boolean {
  const differing = (figure: GivenFigure | undefined): number =>
    Array.isArray(figure) ? new Set(figure.map((one) => JSON.stringify(one))).size : 1;
  return Object.entries(given).every(([name, figure]) => differing(figure) === differing(round[name]));
}

/** What is rounded to what, each once. */
function roundingsOf(given: Given, round: Given, { messages, fill, short }: BoardWriter): string[] {
  const after = amountsIn(round).map(short);
  const texts = amountsIn(given).flatMap((amount, at) => {
    const figures = { given: short(amount), round: after[at] as string };
    return figures.given === figures.round ? [] : [fill(messages.practice.roundedTo, figures)];
  });
  return [...new Set(texts)];
}

/** Whether no figure is as it was given. A count is. */
function areAllRounded(given: Given, round: Given): boolean {
  const after = Object.values(round).flat();
  return Object.values(given)
    .flat()
    .every((one, at) => typeof one === "object" && one.value !== (after[at] as Quantity).value);
}

function rounded(given: Given, digits: number): Given {
  return everyAmount(given, (one) => ({ ...one, value: Number(one.value.toPrecision(digits)) }));
}

/** For an order of mixing: the rule, and the products in that order. */
function orderSlide({ topic, given, units }: PracticeProblem, { messages, fill }: BoardWriter): Part[][] {
  const answer = TOPICS[topic].answer(given, sizesIn(units));
  if (typeof answer !== "string") return [];
  const { kinds, mistakes, practice, topics } = messages;
  const products = given.products as readonly MixingKind[];
  const lines = [...answer].map((letter) => `(${letter}) ${kinds[products[placeOf(letter)] as MixingKind]}`);
  const found = topics[topic].name;
  return [
    [
      heading(2, fill(practice.step, { number: 1, found })) as Part,
      ...[mistakes["order-as-listed"].mend, ...lines].map((one) => text(one) as Part),
    ],
  ];
}

/** A slide for each line of working: what it finds, the sum, its units, and where its factor comes from. */
function stepSlides({ working }: PracticeProblem, isFull: boolean, writer: BoardWriter): Part[][] {
  const { messages, fill } = writer;
  const { practice } = messages;
  const lines = working.map(simplified);
  const written = lines.map((line) => writtenLines([line], writer)[0]);
  let number = 0;
  return lines.flatMap((line, at) => {
    const shown = written[at];
    // A sum of one, such as a single nozzle's catch, is no step.
    if (shown === undefined || shown.numbers === shown.result) return [];
    number++;
    // What the next line calls by another name has that name at once: the steps after it use it.
    const next = written[at + 1];
    const found = next?.words === shown.found && next.numbers === next.result ? next.found : shown.found;
    const isChange = line.id === "units.convert";
    // "sq ft × 1,000 sq ft/sq ft" says less than the sum.
    const isPlain = isChange && factorTexts(line, writer).length === 0;
    const units = isFull && !isPlain ? unitsOfLine(line, writer) : undefined;
    const cancel = units?.cancelled ?? [];
    const texts = [
      ...(isChange ? [] : [`${found} = ${shown.words}`]),
      `${shown.numbers} = ${shown.result}`,
      ...(units === undefined ? [] : [fill(practice.unitsOnly, { units: units.text })]),
      ...(cancel.length === 0
        ? []
        : [fill(practice.cancel, { units: listText(cancel, writer), count: cancel.length })]),
      ...(isFull ? constantsOf(line, writer) : []),
    ];
    return [
      [
        heading(2, stepHeading(line, { number, found }, writer)) as Part,
        ...texts.map((one) => text(one) as Part),
      ],
    ];
  });
}

/** The heading of a step; a change of unit says to what, as the step before it may have found the same. */
function stepHeading(
  { id, result }: WorkingLine,
  figures: { readonly number: number; readonly found: string },
  { messages: { practice }, fill, unit }: BoardWriter,
): string {
  // A part of one has no unit.
  return id === "units.convert" && typeof result === "object" && result.unit !== "1"
    ? fill(practice.stepIn, { ...figures, unit: unit(result.unit) })
    : fill(practice.step, figures);
}

/** Where the number of a change of unit comes from. */
function constantsOf(line: WorkingLine, writer: BoardWriter): string[] {
  return [...factorTexts(line, writer), ...[numberOfFactors(line, writer)].flatMap((one) => one ?? [])];
}

function answerSlide({ topic, answer, note }: PracticeProblem, writer: BoardWriter): Part[] {
  const texts = [rightText(answer, TOPICS[topic], writer), ...(note === undefined ? [] : [note])];
  return [heading(2, writer.messages.practice.answer), ...texts.map((one) => text(one))] as Part[];
}

/** The problem worked again in the other system of units, with its sums; nothing where it is in those units already. */
function checkSlide({ topic: name, given, units, answer }: PracticeProblem, writer: BoardWriter): Part[][] {
  if (typeof answer === "string") return [];
  const topic = TOPICS[name];
  if (topic.isReading === true) return [];
  const other: UnitSystem = units === "metric" ? "us" : "metric";
  const sizes = sizesIn(other);
  const figures = inSystem(given, other);
  if (sameFigures(figures, given)) return [];
  const again = inAnswerUnit(topic, topic.answer(figures, sizes), sizes) as Quantity | number;
  const back = typeof again === "number" || typeof answer === "number" ? again : backIn(again, answer.unit);
  const { messages, fill } = writer;
  const { check, checkMore, checkOf, checkSame } = messages.practice;
  const [first, second] = [again, back].map((one) => rightText(one, topic, writer)) as [string, string];
  const texts = [
    fill(checkOf, { figures: listOf(needed(topic, figures), writer) }),
    ...sumsOf(topic.working(figures, sizes).map(simplified), writer),
    first === second ? checkSame : `${writer.long(again)} = ${second}`,
  ];
  return onSlides(texts).map(
    (some, at) => [heading(2, at === 0 ? check : checkMore), ...some.map((one) => text(one))] as Part[],
  );
}

// More lines than these don't fit on a printed slide.
const MOST_LINES = 8;

/** Lines on as few slides as hold them, about as many on each. */
function onSlides(lines: readonly string[]): string[][] {
  const slides = Math.ceil(lines.length / MOST_LINES);
  const each = Math.ceil(lines.length / slides);
  return Array.from({ length: slides }, (_, slide) => lines.slice(slide * each, (slide + 1) * each));
}

/** Lines of working as sums alone. */
function sumsOf(lines: readonly WorkingLine[], writer: BoardWriter): string[] {
  return writtenLines(lines, writer)
    .filter(({ numbers, result }) => numbers !== result)
    .map(({ numbers, result }) => `${numbers} = ${result}`);
}

function backIn(quantity: Quantity, unit: Unit): Quantity {
  return { value: inUnit(quantity, unit), unit };
}

const MOST_MISTAKES = 3;

function mistakesSlide({ mistakes }: PracticeProblem, writer: BoardWriter): Part[][] {
  const { practice } = writer.messages;
  const shown = mistakes.slice(0, MOST_MISTAKES);
  if (shown.length === 0) return [];
  const rows = shown.map(({ answer, what }) => ({ name: wrongAnswerText(answer, writer), value: what }));
  return [[heading(2, practice.mistakes) as Part, mistakesTable(rows, writer) as Part]];
}

/** The amounts that a problem gives, as a list; counts stay as they are and say nothing alone. */
function listOf(given: Given, writer: BoardWriter): string {
  return listText(amountsIn(given).map(writer.short), writer);
}

function amountsIn(given: Given): Quantity[] {
  return Object.values(given)
    .flat()
    .filter((one): one is Quantity => typeof one === "object");
}

/** The figures that the answer needs. */
function needed({ notNeeded = [] }: AnyTopic, given: Given): Given {
  return Object.fromEntries(Object.entries(given).filter(([name]) => !notNeeded.includes(name)));
}

function inSystem(given: Given, system: UnitSystem): Given {
  return everyAmount(given, (quantity) => {
    const unit = counterpart(quantity.unit, system);
    return { ...quantity, value: inUnit(quantity, unit), unit };
  });
}
