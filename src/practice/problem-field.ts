import { type Check, Field } from "../units/check.js";
import { choice, count, list, type ObjectField, optional } from "../units/fields.js";
import { figure, made, table, written } from "../units/made.js";
import { WORKING_LINE } from "../worksheet/lines/working-line.js";
import type { MistakeCode } from "./mistakes.js";
import { type PracticeMistake, type PracticeProblem, TOPIC } from "./problem.js";
import { MOST_SEED } from "./random.js";
import type { GivenFigure, PracticeAnswer } from "./topics/topic.js";

/** A figure, or letters. */
class AnswerFigureField extends Field<PracticeAnswer> {
  read(input: unknown, check: Check): PracticeAnswer | undefined {
    return typeof input === "string" ? input : figure().read(input, check);
  }

  missing(check: Check): undefined {
    return figure().missing(check);
  }
}

/** A figure, or several. */
class GivenFigureField extends Field<GivenFigure> {
  read(input: unknown, check: Check): GivenFigure | undefined {
    return Array.isArray(input)
      ? (list("", new AnswerFigureField("")).read(input, check) as GivenFigure | undefined)
      : figure().read(input, check);
  }

  missing(check: Check): undefined {
    return figure().missing(check);
  }
}

/** A problem that comes in again, from the library or from a file. */
export const PROBLEM: ObjectField<PracticeProblem> = /* @__PURE__ */ (() => {
  // A name that nothing goes by: a message with all of them would be too long to read.
  const mistake = written() as Field<string> as Field<MistakeCode>;
  return made<PracticeProblem>({
    topic: TOPIC,
    difficulty: choice("", [1, 2, 3]),
    seed: optional(count("", 0, MOST_SEED)),
    units: choice("", ["us", "metric", "imperial"]),
    wording: choice("", [1, 2, 3, 4]),
    problem: written(),
    given: table(new GivenFigureField("")),
    answer: new AnswerFigureField(""),
    note: optional(written()),
    working: list("", WORKING_LINE, { least: 0 }),
    mistakes: list(
      "",
      made<PracticeMistake>({
        mistake,
        also: list("", mistake, { least: 0 }),
        answer: new AnswerFigureField(""),
        what: written(),
        see: written(),
        mend: written(),
      }),
      { least: 0 },
    ),
  });
})();
