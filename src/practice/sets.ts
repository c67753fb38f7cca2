import { type Check, checked, Field } from "../units/check.js";
import { count } from "../units/fields.js";
import {
  MOST_SET,
  PRACTICE_SET_OPTIONS,
  PRACTICE_SETS_OPTIONS,
  type PracticeSetOptions,
  type PracticeSetsOptions,
} from "./options.js";
import { type PracticeProblem, practiceProblem, practiceTopics } from "./problem.js";
import { MOST_SEED } from "./random.js";
import { type PracticeTopic, TOPICS } from "./topics/all.js";

/** Problems under one number, from easy to hard. */
export interface PracticeSet {
  /** The number with its generation, such as `A-7`: sheet and key carry it. */
  readonly set: string;
  /** The problems. */
  readonly problems: readonly PracticeProblem[];
}

// The next letter with every change after which a number gives other problems: see docs/versioning.md.
const GENERATION = "A";

const SET_NUMBER: Field<number> = /* @__PURE__ */ count("The number of a set.", 1, MOST_SET);

/** A set's number, with its generation or without. */
class SetField extends Field<number> {
  read(input: unknown, check: Check): number | undefined {
    if (typeof input !== "string") return SET_NUMBER.read(input, check);
    const [, generation = GENERATION, digits] = /^\s*(?:([A-Z]+)-)?(\d{1,9})\s*$/i.exec(input) ?? [];
    if (digits === undefined)
      return check.fault(
        "unreadable",
        "set-unreadable",
        "",
        "This isn't the number of a set. Enter one such as {example}.",
        { example: `${GENERATION}-7` },
      );
    if (generation.toUpperCase() !== GENERATION)
      return check.fault(
        "unknown-choice",
        "set-generation",
        "",
        "Set {given} is of another generation: this version makes sets of generation {expected}.",
        { expected: GENERATION, given: input.trim() },
      );
    return SET_NUMBER.read(Number(digits), check);
  }

  missing(check: Check): undefined {
    return SET_NUMBER.missing(check);
  }
}

const SET: Field<number> = /* @__PURE__ */ new SetField("The number of a set.");

/**
 * Returns a set of practice problems under a number, from easy to hard. The same number with the same topics, units and count gives the
 * same figures in the same order in every version that makes this generation of sets.
 *
 * @param set - a whole number from 1 to 99,999, or text such as `"A-7"`
 * @param options - see {@link PracticeSetOptions}
 * @returns the problems, with the number and its generation
 * @throws SprayMathError `unreadable`, `out-of-range` or `unknown-choice` (another generation) for the number; `unknown-choice`,
 *   `out-of-range`, `too-few` or `unknown-field` for an option
 *
 * @example
 * ```ts
 * import { practiceSet } from "swath-to-spoon/practice";
 *
 * const { set, problems } = practiceSet(7, { topics: ["band", "percent-mix"], problems: 4 });
 * console.log(set, problems.map(({ topic }) => topic)); // A-7 [ 'percent-mix', 'percent-mix', 'band', 'band' ]
 * ```
 */
export function practiceSet(set: number | string, options: PracticeSetOptions = {}): PracticeSet {
  return setOf(checked(set, SET, "set"), checked(options, PRACTICE_SET_OPTIONS, "options"));
}

/**
 * Makes sets of practice problems for a class, one for each student.
 *
 * @param students - how many sets, 1 to 100
 * @param options - see {@link PracticeSetsOptions}
 * @returns the sets, numbered in a row
 * @throws SprayMathError `out-of-range` for the count, and what {@link practiceSet} throws for an option
 *
 * @example
 * ```ts
 * import { practiceSets } from "swath-to-spoon/practice";
 *
 * const sets = practiceSets(30, { topics: ["strip-calibration"], first: 101 });
 * console.log(sets.length, sets[0]?.set, sets.at(-1)?.set); // 30 A-101 A-130
 * ```
 */
export function practiceSets(students: number, options: PracticeSetsOptions = {}): PracticeSet[] {
  const sets = checked(students, count("How many sets.", 1, 100), "students");
  const { first = 1, ...others } = checked(options, PRACTICE_SETS_OPTIONS, "options");
  return Array.from({ length: sets }, (_, i) => setOf(first + i, others));
}

/** A set under its number. Trusts its input. */
function setOf(number: number, options: PracticeSetOptions): PracticeSet {
  const { topics: chosen = practiceTopics, difficulty = 3, problems: most, ...writing } = options;
  const topics = practiceTopics.filter(
    (topic) => chosen.includes(topic) && TOPICS[topic].difficulty <= difficulty,
  );
  const length = most ?? topics.length;
  // As many of each topic as of another; fewer problems than topics are spread from easy to hard.
  const inOrder = Array.from(
    { length },
    (_, at) => topics[Math.floor((at * topics.length) / length)] as PracticeTopic,
  );
  const problems: PracticeProblem[] = [];
  let seeds = 0;
  for (const topic of inOrder) {
    let problem: PracticeProblem;
    do {
      problem = practiceProblem(topic, seedOf(number, seeds++), writing);
    } while (problems.some((other) => isSame(other, problem)));
    problems.push(problem);
  }
  return { set: `${GENERATION}-${number}`, problems };
}

// Any primes would do. Seeds that follow each other in the generator itself would draw the same numbers, one later.
const PER_SET = 48_271;
const PER_PROBLEM = 15_485_863;

function seedOf(set: number, at: number): number {
  return (set * PER_SET + at * PER_PROBLEM) % MOST_SEED;
}

/** Whether two problems ask the same. */
function isSame(one: PracticeProblem, other: PracticeProblem): boolean {
  return one.topic === other.topic && JSON.stringify(one.given) === JSON.stringify(other.given);
}
