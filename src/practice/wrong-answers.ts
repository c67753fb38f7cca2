import { inUnit } from "../units/convert.js";
import { compareDecided } from "../units/decide.js";
import { dimensionOf } from "../units/dimensions.js";
import type { Quantity } from "../units/types.js";
import type { WorkingLine } from "../units/working-line.js";
import type { MistakeCode } from "./mistakes.js";
import type { Sizes } from "./topics/sizes.js";
import { type AnyTopic, everyAmount, type Given, type Route, sameFigures } from "./topics/topic.js";

/** A wrong answer, and the mistakes that lead there: each of them, or two together. */
export interface WrongAnswer {
  readonly answer: number | string;
  /** The mistake, or the two that were made together. */
  readonly mistakes: readonly MistakeCode[];
  /** Other mistakes that lead to this answer, or too near to be kept apart from it. */
  readonly also: readonly MistakeCode[];
  /** The line of working whose result was given as the answer. */
  readonly step?: WorkingLine | undefined;
}

// Twice the usual tolerance: whatever is within it of one answer is not within it of another.
const APART = 0.02;

// Nobody rounds a count: 12.2 spoons are another answer than 12. Beyond this is the noise of the arithmetic.
const APART_AS_COUNT = 1e-9;

/** Whether two answers are too near to be kept apart. */
function areAlike(a: number | string, b: number | string, apart: number): boolean {
  return typeof a === "string" || typeof b === "string"
    ? a === b
    : Math.abs(a - b) <= apart * Math.max(Math.abs(a), Math.abs(b));
}

/** Answers that are distinct from each other; those that are too near are one. */
function distinct(all: readonly WrongAnswer[], apart: number): WrongAnswer[] {
  const found: WrongAnswer[] = [];
  for (const one of all) {
    const at = found.findIndex(({ answer }) => areAlike(answer, one.answer, apart));
    const same = found[at];
    if (same === undefined) found.push(one);
    // A known mistake says more than that this is a step of the right way too.
    else if (one.step === undefined) found[at] = { ...same, also: [...same.also, ...one.mistakes] };
  }
  return found;
}

// An estimate in round numbers shows these: nearer than a factor of 2 it shows nothing, and the answer is likelier a slip of another kind.
const BY_ESTIMATE: readonly MistakeCode[] = ["inverted", "fraction-inverted"];

function isTooNear(code: MistakeCode, answer: number | string, right: number | string): boolean {
  return BY_ESTIMATE.includes(code) && areAlike(answer, right, 0.5);
}

type Routed = readonly [MistakeCode, Route<Given>];

/** The wrong answers of a problem, the likelier ones first, and none of them near another. */
export function wrongAnswers(topic: AnyTopic, given: Given, sizes: Sizes): WrongAnswer[] {
  return listed(topic, allWrongAnswers(topic, given, sizes));
}

/** Those of all wrong answers that a key lists. */
export function listed(topic: AnyTopic, all: readonly WrongAnswer[]): WrongAnswer[] {
  return distinct(all, apartIn(topic));
}

const apartIn = ({ unit }: AnyTopic): number => (unit === undefined ? APART_AS_COUNT : APART);

/** Every wrong answer that is not too near to the right one, the likelier ones first. */
export function allWrongAnswers(topic: AnyTopic, given: Given, sizes: Sizes): WrongAnswer[] {
  const { right, own, routes } = routed(topic, given, sizes);
  const byMistakes = routes.flatMap(([code, route]): WrongAnswer[] => {
    const answer = answerBy(topic, own, sizes, right, [route]);
    if (answer === undefined || isTooNear(code, answer, right)) return [];
    return [{ answer, mistakes: [code], also: [] }];
  });
  return [...byMistakes, ...stepsAsAnswers(topic, given, sizes)].filter(
    ({ answer }) => !areAlike(answer, right, apartIn(topic)),
  );
}

/** The results of the steps before the answer, each as the number that a student writes down, and in the unit of the question where it has one there. */
function stepsAsAnswers(topic: AnyTopic, given: Given, sizes: Sizes): WrongAnswer[] {
  const right = topic.answer(given, sizes);
  const asked = topic.unit?.(sizes);
  return stepsOf(topic, given, sizes).flatMap((step) => {
    const { result } = step;
    const isOfKind =
      typeof result === "object" && asked !== undefined && dimensionOf(result.unit) === dimensionOf(asked);
    const inAsked = isOfKind ? [inUnit(result, asked)] : [];
    // The answer before its unit is changed is the right one.
    if (inAsked.some((value) => areAlike(value, right, APART))) return [];
    const answers = [typeof result === "object" ? result.value : result, ...inAsked];
    return answers.map((answer) => stepForAnswer(step, answer));
  });
}

/** The result of a step as an answer. */
export function stepForAnswer(step: WorkingLine, answer: number): WrongAnswer {
  return { answer, mistakes: ["step-for-answer"], also: [], step };
}

/** The lines of working that find something: a change of the unit of what is given finds nothing. */
export function stepsOf(topic: AnyTopic, given: Given, sizes: Sizes): readonly WorkingLine[] {
  const lines = topic.working(given, sizes);
  return lines.filter(
    ({ id, terms: { value } }) => id !== "units.convert" || lines.some(({ result }) => isSame(result, value)),
  );
}

function isSame(result: WorkingLine["result"], term: WorkingLine["result"] | undefined): boolean {
  return (
    typeof result === "object" &&
    typeof term === "object" &&
    result.unit === term.unit &&
    compareDecided(result.value, term.value) === 0
  );
}

// Mistakes with the same figure: nobody makes two of them in one sum.
const WITH_ONE_FIGURE: readonly (readonly MistakeCode[])[] = [
  ["width-in-small-unit", "width-left-out", "width-in-large-unit"],
  ["percent-as-part", "per-mille", "part-not-percent"],
  ["volumes-in-two-units", "volume-factor-inverted"],
];

// Each explains an answer by itself; a pair with one of them is far-fetched.
const RARE: readonly MistakeCode[] = ["pint-of-other-system", "other-gallon"];

// An answer with no product in it, and mistakes with the label's rate.
const NO_PRODUCT: readonly MistakeCode[] = ["mix-for-product", "area-for-product"];
const WITH_LABEL_RATE: readonly MistakeCode[] = [
  "label-unit-left",
  "pint-of-8",
  "pint-of-32",
  "liter-of-100",
  "per-lawn-for-land",
  "rate-per-other-land",
  "per-hundred-left-out",
];

// Mistakes with the units that a topic draws: changing one of them into another, or leaving that out.
const WITH_OWN_UNITS: readonly MistakeCode[] = [
  "land-unit-left",
  "wrong-land-factor",
  "land-factor-inverted",
  "other-land-unit",
  "land-unit-from-other",
  "small-unit-as-large",
  "volume-factor-inverted",
  "volume-unit-left",
  "label-unit-left",
  "other-gallon",
  "pint-for-gallon",
  "pint-of-8",
  "pint-of-other-system",
  "pint-of-32",
  "liter-of-100",
  "width-in-small-unit",
  "width-in-large-unit",
  "factors-left-out",
  "seconds-as-minutes",
  "speed-in-other-unit",
  "rate-per-volume",
  "per-lawn-for-land",
  "rate-per-other-land",
  "land-for-lawn",
  "lawn-size-left-out",
  "unscaled-lawn",
  "lawn-ten-times",
  "row-size-left-out",
  "unscaled-row",
  "row-ten-times",
  "divided-by-rows",
  "small-mass-for-large",
  "mass-unit-left",
  "pound-of-12",
  "pounds-as-kilograms",
  "weighed-as-volume",
  "weighed-by-water",
  "per-second-left",
  "speed-factor-inverted",
  "per-minute-left",
  "reading-divided",
  "reading-multiplied",
  "per-hundred-left-out",
  "rate-per-unit-of-stock",
  "canopy-size-left-out",
  "canopy-for-spray",
  "volumes-in-two-units",
  "difference-as-percent",
];

/** Whether a student may well make both mistakes in one sum. */
function goTogether(a: MistakeCode, b: MistakeCode): boolean {
  if (RARE.includes(a) || RARE.includes(b)) return false;
  if (NO_PRODUCT.includes(a) !== NO_PRODUCT.includes(b))
    return !WITH_LABEL_RATE.includes(a) && !WITH_LABEL_RATE.includes(b);
  return !WITH_ONE_FIGURE.some((codes) => codes.includes(a) && codes.includes(b));
}

/** The wrong answers that two mistakes together lead to. */
export function doublyWrongAnswers(topic: AnyTopic, given: Given, sizes: Sizes): WrongAnswer[] {
  const { right, own, routes } = routed(topic, given, sizes);
  const by = (...made: readonly Route<Given>[]) => answerBy(topic, own, sizes, right, made);
  const alone = routes.map(([, route]) => by(route));
  // A mistake that changes nothing here explains nothing.
  const isBy = (at: number, answer: number | string): boolean => {
    const one = alone[at];
    return one !== undefined && areAlike(one, answer, apartIn(topic));
  };
  return routes.flatMap(([code, route], i) =>
    routes.flatMap(([otherCode, other], j) => {
      if (j <= i || !goTogether(code, otherCode)) return [];
      const answer = by(route, other);
      if (answer === undefined || isBy(i, answer) || isBy(j, answer)) return [];
      return [{ answer, mistakes: [code, otherCode], also: [] }];
    }),
  );
}

function routed(
  topic: AnyTopic,
  given: Given,
  sizes: Sizes,
): { readonly right: number | string; readonly own: Given; readonly routes: readonly Routed[] } {
  const right = topic.answer(given, sizes);
  const own = inOwnUnits(topic, given, sizes);
  const routes = topic.mistakes(own, sizes, typeof right === "number" ? right : 0);
  type Entry = readonly [MistakeCode, Route<Given> | readonly Route<Given>[]];
  const entries = Object.entries(routes) as readonly Entry[];
  return {
    right,
    own,
    routes: entries
      // Nobody takes a pint for 8 fl oz where the rate is in fluid ounces.
      .filter(([code]) => own === given || !WITH_OWN_UNITS.includes(code))
      .flatMap(([code, one]) => [one].flat().map((route): Routed => [code, route])),
  };
}

/** What a problem gives in the units that its topic draws, which its mistakes are made of; the same object where it is in them. */
function inOwnUnits(topic: AnyTopic, given: Given, sizes: Sizes): Given {
  const lists = topic.figures(sizes);
  const own = everyAmount(given, (quantity, name) => {
    const units = (lists[name] as readonly (Quantity | readonly Quantity[])[]).flat().map(({ unit }) => unit);
    const home = units.find((unit) => dimensionOf(unit) === dimensionOf(quantity.unit));
    return home === undefined || units.includes(quantity.unit)
      ? quantity
      : { ...quantity, value: inUnit(quantity, home), unit: home };
  });
  return sameFigures(own, given) ? given : own;
}

/** What comes out by these routes together; nothing where two of them change the same, or where there is no such answer. */
function answerBy(
  topic: AnyTopic,
  given: Given,
  sizes: Sizes,
  right: number | string,
  routes: readonly Route<Given>[],
): number | string | undefined {
  const names = routes.flatMap((route) => Object.keys(route.given ?? {}));
  const fixed = routes.flatMap(({ instead }) => instead ?? []);
  if (new Set(names).size < names.length || fixed.length > 1 || (fixed.length > 0 && names.length > 0))
    return undefined;
  const changed = Object.assign({}, given, ...routes.map((route) => route.given));
  const before = fixed[0] ?? (names.length === 0 ? right : topic.answer(changed, sizes));
  if (typeof before === "string") return before;
  const upright = routes.reduce((product, { times = 1 }) => product * times, before);
  const answer = routes.some(({ isInverse }) => isInverse) ? 1 / upright : upright;
  return Number.isFinite(answer) && answer >= 0 ? answer : undefined;
}
