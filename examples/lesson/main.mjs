// Writes practice problems for students and the answer key for their teacher, as Markdown and as HTML to print.
//   node main.mjs [topic ...] [--problems 10] [--seed 2026] [--units us|metric|imperial] [--locale en-US] [--out sheets]
import { mkdirSync, writeFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { parseArgs } from "node:util";
import { SprayMathError } from "swath-to-spoon";
import { practiceProblem, practiceSheet, practiceTopics } from "swath-to-spoon/practice";
import { renderHtml, renderMarkdown } from "swath-to-spoon/worksheet";

const MOST_PROBLEMS = 100;
// Slightly below the library's limit, because each problem adds one.
const MOST_SEED = 2_000_000_000;

try {
  const { values, topics } = readArguments();
  const { problems: count, seed, units, locale, out } = values;

  // The topics in turn, each problem with its own seed.
  const problems = Array.from({ length: count }, (_, i) =>
    practiceProblem(topics[i % topics.length], seed + i, { units, locale }),
  );
  const sheets = {
    pupils: practiceSheet(problems, { locale }),
    teacher: practiceSheet(problems, { locale, answers: true }),
  };

  mkdirSync(out, { recursive: true });
  for (const [name, sheet] of Object.entries(sheets)) {
    for (const [ending, render] of [
      ["md", renderMarkdown],
      ["html", renderHtml],
    ]) {
      const file = resolve(join(out, `${name}.${ending}`));
      writeFileSync(file, render(sheet));
      console.log(file);
    }
  }
  console.log(`For the same sheets again use --seed ${seed}. Another seed makes new ones.`);
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
      problems: { type: "string" },
      seed: { type: "string", default: "2026" },
      units: { type: "string", default: "us" },
      locale: { type: "string", default: "en-US" },
      out: { type: "string", default: "sheets" },
    },
  });
  const topics = positionals.length > 0 ? positionals : practiceTopics;
  const problems = wholeNumber("problems", values.problems ?? `${topics.length}`, 1, MOST_PROBLEMS);
  const seed = wholeNumber("seed", values.seed, 0, MOST_SEED);
  return { topics, values: { ...values, problems, seed } };
}

function wholeNumber(name, text, least, most) {
  const number = Number(text);
  if (/^\d+$/.test(text) && number >= least && number <= most) return number;
  throw new SprayMathError(
    "out-of-range",
    `--${name}`,
    `Enter a whole number from ${least} to ${most}, not ${text}.`,
  );
}
