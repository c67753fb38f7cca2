import type { MistakeCode } from "./mistakes.js";
import type { Sizes } from "./topics/sizes.js";
import type { AnyTopic, Given, Route } from "./topics/topic.js";

/** A wrong answer, and the mistakes that lead there: each of them, or two together. */
export interface WrongAnswer {
  readonly answer: number | string;
  /** The mistake, or the two that were made together. */
  readonly mistakes: readonly MistakeCode[];
  /** Other mistakes that lead to this answer, or too near to be kept apart from it. */
  readonly also: readonly MistakeCode[];
}

// Twice the usual tolerance: whatever is within it of one answer is not within it of another.
const APART = 0.02;

/** Whether two answers are too near to be kept apart. */
function areAlike(a: number | string, b: number | string): boolean {
  return typeof a === "string" || typeof b === "string"
    ? a === b
    : Math.abs(a - b) <= APART * Math.max(Math.abs(a), Math.abs(b));
}

/** Answers that are distinct from the right one and from each other; those that are too near are one. */
function distinct(all: readonly WrongAnswer[], right: number | string): WrongAnswer[] {
  const found: WrongAnswer[] = [];
  for (const one of all) {
    const at = found.findIndex(({ answer }) => areAlike(answer, one.answer));
    const same = found[at];
    if (areAlike(one.answer, right)) continue;
    if (same === undefined) found.push(one);
    else found[at] = { ...same, also: [...same.also, ...one.mistakes] };
  }
  return found;
}

type Routed = readonly [MistakeCode, Route<Given>];

/** The wrong answers of a problem, the likelier ones first. */
export function wrongAnswers(topic: AnyTopic, given: Given, sizes: Sizes): WrongAnswer[] {
  const { right, routes } = routed(topic, given, sizes);
  return distinct(
    routes.flatMap(([code, route]) => {
      const answer = answerBy(topic, given, sizes, right, [route]);
      return answer === undefined ? [] : [{ answer, mistakes: [code], also: [] }];
    }),
    right,
  );
}

/** The wrong answers that two mistakes together lead to. */
export function doublyWrongAnswers(topic: AnyTopic, given: Given, sizes: Sizes): WrongAnswer[] {
  const { right, routes } = routed(topic, given, sizes);
  return routes.flatMap(([code, route], i) =>
    routes.slice(i + 1).flatMap(([otherCode, other]) => {
      const answer = answerBy(topic, given, sizes, right, [route, other]);
      return answer === undefined ? [] : [{ answer, mistakes: [code, otherCode], also: [] }];
    }),
  );
}

function routed(
  topic: AnyTopic,
  given: Given,
  sizes: Sizes,
): { readonly right: number | string; readonly routes: readonly Routed[] } {
  const right = topic.answer(given, sizes);
  const routes = topic.mistakes(given, sizes, typeof right === "number" ? right : 0);
  type Entry = readonly [MistakeCode, Route<Given> | readonly Route<Given>[] | undefined];
  return {
    right,
    routes: (Object.entries(routes) as readonly Entry[]).flatMap(([code, one]) =>
      [one ?? []].flat().map((route): Routed => [code, route]),
    ),
  };
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
  const answer = routes.reduce((product, { times = 1 }) => product * times, before);
  return Number.isFinite(answer) && answer >= 0 ? answer : undefined;
}
