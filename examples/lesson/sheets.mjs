// Writes practice problems for a class and the keys for their teacher, as Markdown and as HTML to print, and those of the whole
// class once more on one page each; and slides for the board, a worked example of each topic.
//   node main.mjs [topic ...] [--students 30] [--set 1] [--problems 8] [--difficulty 2] [--units us|metric|imperial]
//                 [--language en|es] [--locale en-US] [--class "Evening class"] [--lines 6] [--key short|long] [--cards] [--out sheets]
import { mkdirSync, writeFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { parseArgs } from "node:util";
import { SprayMathError } from "swath-to-spoon";
import { ENGLISH_PRACTICE_WORDS, practiceSet, practiceSheet, workedExample } from "swath-to-spoon/practice";
import { SPANISH_PRACTICE_WORDS } from "swath-to-spoon/words/es-practice";
import { renderHtml, renderMarkdown } from "swath-to-spoon/worksheet";

const LANGUAGES = {
  en: { words: ENGLISH_PRACTICE_WORDS, locale: "en-US" },
  es: { words: SPANISH_PRACTICE_WORDS, locale: "es-US" },
};

const MOST_STUDENTS = 100;
const MOST_SET = 99_900;

// A larger class takes long enough to say how far it is.
const STEP = 10;

try {
  const { students, first, problems, writing, sheet, key, out } = readArguments();
  const everyone = { sheets: [], keys: [] };
  for (let at = 0; at < students; at++) {
    const { set, problems: all } = practiceSet(first + at, problems);
    const forStudent = practiceSheet(all, { ...sheet, set });
    const forTeacher = practiceSheet(all, { ...sheet, set, key });
    everyone.sheets.push(forStudent);
    everyone.keys.push(forTeacher);
    mkdirSync(out, { recursive: true });
    for (const [name, one] of [
      [set, forStudent],
      [`${set}-key`, forTeacher],
    ]) {
      writeFileSync(resolve(join(out, `${name}.md`)), renderMarkdown(one));
      writeFileSync(resolve(join(out, `${name}.html`)), renderHtml(one));
    }
    if (students > STEP && (at + 1) % STEP === 0) console.log(`${at + 1} of ${students} sets`);
  }
  if (students > 1)
    for (const [name, all] of Object.entries(everyone))
      writeFileSync(resolve(join(out, `${name}.html`)), renderHtml(all));
  // From the next set, so that no student has the problem that is worked out on the board.
  const { problems: examples } = practiceSet(first + students, { ...problems, problems: undefined });
  const boards = examples.map((problem) => workedExample(problem, writing));
  writeFileSync(resolve(join(out, "boards.html")), renderHtml(boards));
  console.log(`Sheets, keys and slides for the board are in ${resolve(out)}.`);
  console.log(`For the same sheets again use --set ${first}. Another number makes new ones.`);
} catch (error) {
  // A mistake in the arguments is reported in one line. Anything else is a bug of this program.
  if (!(error instanceof SprayMathError) && !error.code?.startsWith("ERR_PARSE_ARGS")) throw error;
  console.error(error.path ? `${error.path}: ${error.message}` : error.message);
  process.exitCode = 1;
}

function readArguments() {
  const { values, positionals } = parseArgs({
    allowPositionals: true,
    options: {
      students: { type: "string", default: "1" },
      set: { type: "string", default: "1" },
      problems: { type: "string" },
      difficulty: { type: "string" },
      units: { type: "string", default: "us" },
      language: { type: "string", default: "en" },
      locale: { type: "string" },
      class: { type: "string" },
      lines: { type: "string" },
      key: { type: "string", default: "long" },
      cards: { type: "boolean", default: false },
      out: { type: "string", default: "sheets" },
    },
  });
  const { units, cards, key, out } = values;
  const language = LANGUAGES[values.language];
  if (language === undefined) throw fault("language", `Choose en or es, not ${values.language}.`);
  const writing = { ...language, ...(values.locale && { locale: values.locale }) };
  return {
    students: wholeNumber("students", values.students, MOST_STUDENTS),
    first: wholeNumber("set", values.set, MOST_SET),
    problems: {
      ...writing,
      units,
      ...(positionals.length > 0 && { topics: positionals }),
      ...(values.problems && { problems: wholeNumber("problems", values.problems, 60) }),
      ...(values.difficulty && { difficulty: wholeNumber("difficulty", values.difficulty, 3) }),
    },
    writing,
    sheet: {
      ...writing,
      cards,
      drawings: true,
      ...(values.class && { className: values.class }),
      ...(values.lines && { workLines: wholeNumber("lines", values.lines, 30) }),
    },
    key,
    out,
  };
}

function wholeNumber(name, text, most) {
  const number = Number(text);
  if (/^\d+$/.test(text) && number >= 1 && number <= most) return number;
  throw fault(name, `Enter a whole number from 1 to ${most}, not ${text}.`);
}

function fault(name, message) {
  return new SprayMathError("out-of-range", `--${name}`, message);
}
