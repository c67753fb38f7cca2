import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { unitsOf } from "../../../src/units/index.ts";
import {
  ENGLISH_WORDS,
  fieldCard,
  type PrintableSheet,
  renderHtml,
  renderMarkdown,
  renderText,
  worksheet,
} from "../../../src/worksheet/index.ts";
import { planInUnits, workingInUnits } from "../../../src/worksheet/job/plan-in-units.ts";
import { renderLatex } from "../../../src/worksheet/latex.ts";
import { exactly } from "../../helpers/definitions.ts";
import { expectPrintedTrue, numberReader } from "../../helpers/printed-lines.ts";
import { randomPlan } from "../../helpers/random-jobs.ts";
import { runs } from "../../helpers/runs.ts";

// Point, comma, narrow space, groups of two, and digits of another script.
const LOCALES = ["en-US", "de-DE", "fr-FR", "en-IN", "hi-IN-u-nu-deva", "ar-EG-u-nu-arab"];

/** What each format makes of the signs that a printed number may have. */
const FORMATS: readonly [string, (sheet: PrintableSheet) => string, (text: string) => string][] = [
  ["text", renderText, (text) => text.replace(/[ \n]+/g, " ")],
  ["Markdown", renderMarkdown, (text) => text.replace(/\\(.)/g, "$1")],
  ["HTML", (sheet) => renderHtml(sheet), (text) => text],
  ["LaTeX", renderLatex, (text) => text.replace(/\\,/g, "\u202f").replace(/\{-\}/g, "-")],
];

describe("numbers of any locale", () => {
  // The one proof for plans that every printed line is true: its text is read back and put into another evaluator.
  it.each(LOCALES)("in %s make printed lines that are true, read back as that locale writes", (locale) => {
    const read = numberReader(locale);
    const anySystem = fc.constantFrom("us", "metric", "imperial", undefined);
    const { numRuns } = runs(locale === "en-US" ? 1000 : 40);
    let lines = 0;
    fc.assert(
      fc.property(randomPlan, anySystem, (plan, units) => {
        for (const step of worksheet(plan, { locale, ...(units && { units }) }).steps) {
          for (const line of step.lines) {
            expectPrintedTrue(line, { read, digits: 6, functions: ENGLISH_WORDS.functions });
            lines++;
          }
        }
      }),
      runs(locale === "en-US" ? 1000 : 40),
    );
    expect(lines).toBeGreaterThan(20 * numRuns);
  });

  it.each(LOCALES)("in %s stand in every format as they are in the data", (locale) => {
    // The number alone: units have signs of their own that a format may escape.
    const number = (text: string) =>
      /^[\p{Nd}.,\u066b\u066c\u00a0\u202f’-]+/u.exec(text.replace(/\u061c/g, ""))?.[0].trim() ?? "";
    fc.assert(
      fc.property(randomPlan, (plan) => {
        for (const sheet of [worksheet(plan, { locale }), fieldCard(plan, { locale })]) {
          const facts = sheet.kind === "worksheet" ? [...sheet.summary, ...sheet.totals] : sheet.facts;
          const results = sheet.kind === "worksheet" ? sheet.steps.flatMap(({ lines }) => lines) : [];
          const numbers = [...facts.map(({ value }) => value), ...results.map(({ result }) => result)].map(
            number,
          );
          expect(numbers.filter((one) => one === "")).toEqual([]);
          for (const [name, render, undone] of FORMATS) {
            const page = undone(render(sheet)).replace(/\u061c/g, "");
            expect(
              numbers.filter((one) => !page.includes(one)),
              name,
            ).toEqual([]);
          }
        }
      }),
      runs(10),
    );
  });

  it("in another locale are the same amounts, printed otherwise", () => {
    const [english, german] = [numberReader("en-US"), numberReader("de-DE")];
    fc.assert(
      fc.property(randomPlan, (plan) => {
        const [a, b] = [worksheet(plan), worksheet(plan, { locale: "de-DE" })];
        expect(b.totals.map(({ value }) => german(value))).toEqual(
          a.totals.map(({ value }) => english(value)),
        );
      }),
      runs(100),
    );
  });
});

describe("another system of units", () => {
  const SYSTEMS = ["us", "metric", "imperial"] as const;
  // Of the units that only some systems have, those that this one has not.
  const foreign = {
    us: /imp_|metric_|au_|\b(mm|cm|m|km|mL|L|100L|m3|mg|g|kg|cm2|m2|ha|km2|kPa|bar)\b/,
    metric:
      /imp_|\b(in|ft|yd|mi|mph|in2|ft2|yd2|ac|1000ft2|tsp|tbsp|fl_oz|cup|pt|qt|gal|100gal|in3|ft3|oz|lb|psi)\b/,
    imperial:
      /metric_|au_|\b(mm|cm|m|km|mL|L|100L|m3|mg|g|kg|cm2|m2|ha|km2|kPa|bar|tsp|tbsp|fl_oz|cup|pt|qt|gal|100gal)\b/,
  } as const;

  it.each(SYSTEMS)(
    "%s is that of every quantity, but of tools, of the sprayer and of a strip read directly",
    (units) => {
      expect(unitsOf("volume").some((unit) => foreign[units].test(unit))).toBe(true);
      fc.assert(
        fc.property(randomPlan, (plan) => {
          const shown = planInUnits(plan, units);
          const steps = workingInUnits(shown, plan);
          const direct = plan.input.calibration.kind === "direct-strip";
          const figures = steps
            .filter(({ step }) => step !== "dose" && !(direct && step === "rate"))
            .flatMap(({ lines }) => lines)
            .flatMap(({ terms, result }) => [...Object.values(terms), result]);
          const amounts = [
            shown.rate,
            shown.area.treated,
            shown.carrier.total,
            ...shown.loads.flatMap(({ carrier, products }) => [
              carrier,
              ...products.map(({ amount }) => amount),
            ]),
          ];
          // The sprayer's marks stay what they are.
          const { tank, workingFill, lineVolume } = plan.input.sprayer;
          const marks = [tank, workingFill, lineVolume].map((one) => one && `${one.value} ${one.unit}`);
          const strange = [...figures, ...amounts].filter(
            (one) =>
              typeof one !== "number" &&
              foreign[units].test(one.unit) &&
              !marks.includes(`${one.value} ${one.unit}`),
          );
          expect(strange).toEqual([]);
          if (direct) expect(steps[1]?.lines.at(-1)?.result).toEqual(shown.rate);
        }),
        runs(200),
      );
    },
  );

  it("gives the same doses in the same number of loads, to the digits that a plan tells its amounts in", () => {
    fc.assert(
      fc.property(randomPlan, fc.constantFrom(...SYSTEMS), (plan, units) => {
        const shown = planInUnits(plan, units);
        expect(shown.loads.length).toBe(plan.loads.length);
        for (const [i, { amount }] of plan.totals.products.entries()) {
          const other = shown.totals.products[i]?.amount as typeof amount;
          // By the tests' own definitions of the units, and not by the library's conversion.
          const ratio = exactly(amount.value, amount.unit, other.unit).toNumber() / other.value;
          expect(Math.abs(ratio - 1)).toBeLessThan(1e-9);
        }
      }),
      runs(200),
    );
  });
});
