import { describe, expect, it } from "vitest";
import { planApplication } from "../../../src/plan/index.ts";
import { ENGLISH_PRACTICE_WORDS, practiceProblem, practiceSheet } from "../../../src/practice/index.ts";
import { qty } from "../../../src/units/index.ts";
import { stripRate } from "../../../src/working/index.ts";
import {
  ENGLISH_WORDS,
  fieldCard,
  renderHtml,
  renderMarkdown,
  renderText,
  workingSheet,
  worksheet,
} from "../../../src/worksheet/index.ts";
import { renderLatex } from "../../../src/worksheet/latex.ts";
import { TWO_PRODUCTS } from "../../helpers/jobs.ts";
import { expectRefused, refusal } from "../../helpers/refusal.ts";

// What this library made comes back from files and other programs: it is checked where it comes in.

const plan = planApplication(TWO_PRODUCTS);
const lines = stripRate({ used: qty(3, "L"), swath: qty(1, "m"), distance: qty(100, "m") });
const problem = practiceProblem("band", 3);
const sheets = {
  worksheet: worksheet(plan),
  card: fieldCard(plan),
  working: workingSheet({ title: "Strip", lines }),
  practice: practiceSheet([problem], { key: "long" }),
};
const renderers = { renderText, renderMarkdown, renderHtml, renderLatex };

/** Plain data as a file would hold it, with one value changed. */
function saved<T>(value: T, path: readonly (string | number)[], changed: unknown): T {
  const copy = JSON.parse(JSON.stringify(value));
  const last = path[path.length - 1] as string;
  const holder = path.slice(0, -1).reduce((at, step) => at[step], copy);
  holder[last] = changed;
  return copy;
}

describe.each(Object.entries(renderers))("%s", (_, render) => {
  it.each(Object.entries(sheets))("lays out a saved %s as the one that was made", (_name, sheet) => {
    expect(render(JSON.parse(JSON.stringify(sheet)))).toBe(render(sheet));
  });

  it.each([undefined, null, {}, [], "a sheet", 5, plan, { kind: "letter" }, { kind: "toString" }])(
    "says of what is no sheet that it is none",
    (other) => {
      expectRefused(() => render(other as never), "not-a-quantity", "sheet", "This isn't a sheet.");
    },
  );

  it("says where a sheet was changed", () => {
    const refused = (sheet: unknown) => {
      const { code, path } = refusal(() => render(sheet as never));
      return `${code} ${path}`;
    };
    expect(refused(saved(sheets.worksheet, ["title"], 5))).toBe("not-a-quantity sheet.title");
    expect(refused(saved(sheets.worksheet, ["loads", 0, "doses", 1, "measures", 0], null))).toBe(
      "missing sheet.loads[0].doses[1].measures[0]",
    );
    expect(refused(saved(sheets.card, ["extra"], 1))).toBe("unknown-field sheet.extra");
    expect(refused(saved(sheets.working, ["lines", 0, "terms"], 1))).toBe(
      "not-a-quantity sheet.lines[0].terms",
    );
    expect(refused(saved(sheets.working, ["lines", 0, "terms"], undefined))).toBe(
      "missing sheet.lines[0].terms",
    );
    expect(refused(saved(sheets.practice, ["blocks", 1, "blocks", 0, "kind"], "script"))).toBe(
      "unknown-choice sheet.blocks[1].blocks[0].kind",
    );
    expect(refused(saved(sheets.practice, ["blocks", 1, "blocks", 0, "level"], "1><script"))).toBe(
      "unknown-choice sheet.blocks[1].blocks[0].level",
    );
  });
});

describe("lines of working that come back", () => {
  const written = (path: readonly (string | number)[], changed: unknown) => () =>
    workingSheet({ title: "Strip", lines: saved(lines, path, changed) });

  it("are refused where they are none, with the place", () => {
    expectRefused(() => workingSheet({ title: "Strip", lines: [{}] as never }), "missing", "lines[0].id");
    expectRefused(written([0, "result"], null), "missing", "lines[0].result");
    expectRefused(
      () => workingSheet({ title: "Strip", lines: [{ ...lines[0], result: Number.NaN } as never] }),
      "not-finite",
      "lines[0].result",
    );
    expectRefused(written([0, "terms", "used"], "3 L"), "not-a-quantity", "lines[0].terms.used");
    expectRefused(written([0, "source"], 5), "not-a-quantity", "lines[0].source");
  });

  it("may be sums of any length, but not formulas without end", () => {
    const formula = `x1${" + x1 * x1".repeat(5000)}`;
    expect(written([0, "formula"], formula)).not.toThrow();
    for (const deep of [
      `${"(".repeat(5000)}x${")".repeat(5000)}`,
      `x${" * x".repeat(5000)}`,
      "sqrt(".repeat(5000),
    ])
      expectRefused(written([0, "formula"], deep), "unreadable", "formula");
  });
});

describe("practice problems that come back", () => {
  it("make the same sheet", () => {
    expect(practiceSheet(JSON.parse(JSON.stringify([problem])), { key: "long" })).toEqual(sheets.practice);
  });

  it("are refused where they are none, with the place", () => {
    expectRefused(() => practiceSheet([{}] as never), "missing", "problems[0].topic");
    expectRefused(
      () => practiceSheet([saved(problem, ["mistakes", 0, "mistake"], 5)]),
      "not-a-quantity",
      "problems[0].mistakes[0].mistake",
    );
    expectRefused(
      () => practiceSheet([saved(problem, ["answer"], true)]),
      "not-a-quantity",
      "problems[0].answer",
    );
  });
});

describe("a table of words", () => {
  it("is refused where a text is missing or is no text, with the place", () => {
    const { load: _, ...text } = ENGLISH_WORDS.text;
    expectRefused(
      () => worksheet(plan, { words: { ...ENGLISH_WORDS, text } as never }),
      "missing",
      "options.words.text.load",
    );
    const steps = { ...ENGLISH_WORDS.steps, area: 5 };
    expectRefused(
      () => worksheet(plan, { words: { ...ENGLISH_WORDS, steps } as never }),
      "not-a-quantity",
      "options.words.steps.area",
    );
    const tools = { tablespoon: { one: "spoon" } };
    expectRefused(
      () => fieldCard(plan, { words: { ...ENGLISH_WORDS, tools } as never }),
      "missing",
      "options.words.tools.tablespoon.other",
    );
    const { topics: __, ...noTopics } = ENGLISH_PRACTICE_WORDS;
    expectRefused(
      () => practiceProblem("band", 1, { words: noTopics as never }),
      "missing",
      "options.words.topics",
    );
    expectRefused(
      () => worksheet(plan, { words: null as never, digits: 99 }),
      "out-of-range",
      "options.digits",
    );
    expectRefused(() => worksheet(plan, { words: [] as never }), "not-a-quantity", "options.words");
  });

  it("may be one for another sheet as well, and hold less of what the plan says itself", () => {
    expect(worksheet(plan, { words: ENGLISH_PRACTICE_WORDS })).toEqual(sheets.worksheet);
    expect(() => worksheet(plan, { words: { ...ENGLISH_WORDS, cautions: {} as never } })).not.toThrow();
  });
});
