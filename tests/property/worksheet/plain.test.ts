import { readdirSync, readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { isSprayMathError } from "../../../src/errors.ts";
import { withOneMore } from "../../../src/plan/dose-advice.ts";
import { type AnyPlan, type PlanInput, type Product, planApplication } from "../../../src/plan/index.ts";
import { parseBatchInput, parsePlanInput } from "../../../src/schema/index.ts";
import { type Quantity, qty } from "../../../src/units/index.ts";
import { SPANISH_WORDS } from "../../../src/words/es.ts";
import {
  type CardLoad,
  doseText,
  ENGLISH_WORDS,
  fieldCard,
  renderText,
  type WorksheetOptions,
  type WrittenLine,
  worksheet,
} from "../../../src/worksheet/index.ts";
import { planInUnits } from "../../../src/worksheet/job/plan-in-units.ts";
import { DOUBTFUL, QUIET, TWO_PRODUCTS } from "../../helpers/jobs.ts";
import { JOBS } from "../../helpers/plan-inputs.ts";
import { runs } from "../../helpers/runs.ts";

const read = (file: string) => JSON.parse(readFileSync(file, "utf8"));
const small = "examples/small-jobs/jobs";
const marked = { ...TWO_PRODUCTS.sprayer, marks: qty(0.25, "gal") };
const EXAMPLES: readonly AnyPlan[] = [
  ...["examples/market-garden/job.json", "examples/form-any-language/job.json"].map((file) =>
    planApplication(parsePlanInput(read(file))),
  ),
  ...readdirSync(small)
    .map((file) => read(`${small}/${file}`))
    .filter((job) => !("spreader" in job))
    .map((job) => planApplication(parseBatchInput(job))),
  ...[
    TWO_PRODUCTS,
    DOUBTFUL,
    QUIET,
    { ...TWO_PRODUCTS, sprayer: marked },
    { ...TWO_PRODUCTS, sprayer: marked, split: "easiest" },
    { ...TWO_PRODUCTS, split: "whole-rows" },
    { ...QUIET, plot: { kind: "rectangle", length: qty(1000, "ft"), width: qty(1384, "ft") } },
    { ...QUIET, split: "equal", plot: { kind: "triangle", base: qty(800, "ft"), height: qty(1111, "ft") } },
  ].map((job) => planApplication(job as PlanInput)),
];

const LOOKS: readonly WorksheetOptions[] = (["us", "metric", "imperial", undefined] as const).flatMap(
  (units) =>
    [ENGLISH_WORDS, SPANISH_WORDS].map((words) => ({
      words,
      ...(units && { units }),
      measuringErrors: true,
    })),
);

/** Every number in plain data, as it was entered. */
function entered(data: unknown, found = new Set<number>()): Set<number> {
  if (typeof data === "number") found.add(data);
  else if (typeof data === "object" && data !== null)
    for (const one of Object.values(data)) entered(one, found);
  return found;
}

/** The numbers of a text as en-US writes them, without those that are a part of a name or of a fraction. */
const numbersIn = (text: string): string[] => text.match(/\d[\d,]*(?:\.\d+)?/g) ?? [];
const figuresIn = (number: string): number => number.replace(/[,.]/g, "").replace(/^0+|0+$/g, "").length;

function expectThreeFigures(text: string, plan: AnyPlan, shown: AnyPlan): void {
  const typed = entered(plan.input);
  // A reading is on a mark of its tool, or of the one that is still to get.
  for (const { products } of shown.loads)
    products.forEach(({ measured, amount }, i) => {
      const dose = measured.ok
        ? measured
        : withOneMore(amount, shown.input.products[i] as Product, shown.input)?.measured;
      for (const { each } of dose?.parts ?? []) if (each) typed.add(each.value);
    });
  const names =
    JSON.stringify(plan.input)
      .match(/"name":"[^"]*"/g)
      ?.join(" ") ?? "";
  for (const number of numbersIn(text)) {
    const value = Number(number.replace(/,/g, ""));
    if (figuresIn(number) <= 3 || typed.has(value) || names.includes(number)) continue;
    expect.fail(`${number} has more than three figures: ${text}`);
  }
}

function expectSaysSomething({ words, numbers, result, found }: WrittenLine): void {
  // A bare one: "1 gal" and "1 plant" are amounts.
  expect(numbers).not.toMatch(/[×÷] 1(?![\d.,]| \p{L}| ×)(?: |\)|$)/u);
  expect(numbers).not.toMatch(/^1 × /);
  expect(numbers).not.toMatch(/[+−] 0(?![\d.,])/);
  expect(words, `${found} = ${words} = ${numbers} = ${result}`).not.toBe(numbers);
  expect(`${found} ${numbers}`).not.toBe(`${found} ${result}`);
}

function expectPlain(plan: AnyPlan, options: WorksheetOptions): void {
  const refused = plan.warnings.some(({ severity }) => severity === "refusal");
  const shown = planInUnits(plan, options.units);
  const sheet = worksheet(plan, options);
  const card = fieldCard(plan, options);
  const text = renderText(sheet);
  for (const { lines, title } of sheet.steps) {
    lines.forEach((line) => {
      if (line.id !== "units.convert") expectSaysSomething(line);
    });
    const printed = lines.map(({ found, numbers, result }) => `${found} = ${numbers} = ${result}`);
    expect(new Set(printed).size, `${title}: ${printed.join("; ")}`).toBe(printed.length);
  }
  const titles = sheet.steps.map(({ title }) => title);
  expect(new Set(titles).size).toBe(titles.length);
  const parts = [card.facts.map(({ name, value }) => `${name} ${value}`), card.order, card.cautions];
  for (const part of [...parts, ...card.loads.map(({ steps }: CardLoad) => steps)])
    expect(new Set(part).size).toBe(part.length);
  // Loads that are mixed alike stand there once, so no two have the same steps up to the fill.
  const mixing = card.loads.map(({ steps }) => steps.slice(0, plan.input.products.length + 2).join("\n"));
  expect(new Set(mixing).size).toBe(mixing.length);
  for (const line of [...parts.flat(), ...card.loads.flatMap(({ steps }) => steps)])
    expectThreeFigures(line, plan, shown);
  const doses = plan.loads.flatMap(({ products }) => products.map(({ measured }) => measured));
  if (!refused) {
    expect(card.loads.length).toBeGreaterThan(0);
    return;
  }
  expect([card.loads, sheet.loads, sheet.totals]).toEqual([[], [], []]);
  const words = options.words ?? ENGLISH_WORDS;
  for (const dose of doses) expect(doseText(dose, { words })).toBe(words.text.doNotMix);
  for (const said of [text, renderText(card)]) {
    expect(said.replace(/\s+/g, " ")).toContain(words.text.doNotMix);
    for (const { name, amount } of plan.totals.products)
      expect(said).not.toContain(`${name}: ${(amount as Quantity).value}`);
    expect(said).not.toContain(words.text.totalProduct);
    expect(said).not.toMatch(/\[ \]/);
  }
}

/** The same job with its first product sprayed again too soon: every plan of it is refused. */
function tooSoon({ products: [first, ...others], ...job }: PlanInput): PlanInput {
  const { label, soFar } = first as Product;
  const again = {
    ...first,
    label: { ...label, daysBetween: 7 },
    soFar: { ...soFar, daysSinceLast: 1 },
  } as Product;
  return { ...job, products: [again, ...others] };
}

describe("sheets that a grower reads", () => {
  it("are plain for every example, in every system and language", () => {
    for (const plan of EXAMPLES) for (const look of LOOKS) expectPlain(plan, look);
  });

  it("are plain for any job", () => {
    let [planned, refused] = [0, 0];
    fc.assert(
      fc.property(fc.oneof(JOBS, JOBS.map(tooSoon)), fc.constantFrom(...LOOKS), (job, look) => {
        let plan: AnyPlan;
        try {
          plan = planApplication(job);
        } catch (error) {
          if (isSprayMathError(error)) return;
          throw error;
        }
        planned++;
        if (plan.warnings.some(({ severity }) => severity === "refusal")) refused++;
        expectPlain(plan, look);
      }),
      { ...runs(850), numRuns: 850 },
    );
    expect(planned).toBeGreaterThan(300);
    expect(refused).toBeGreaterThan(100);
  });

  it("are short however many loads there are", () => {
    for (const split of ["full-then-part", "equal"] as const) {
      const many = planApplication({
        ...QUIET,
        split,
        plot: { kind: "rectangle", length: qty(1000, "ft"), width: qty(1384, "ft") },
      });
      expect(many.loads.length).toBe(159);
      expect(renderText(fieldCard(many)).split("\n").length).toBeLessThan(60);
      expect(renderText(worksheet(many)).split("\n").length).toBeLessThan(160);
    }
  });
});
