import { describe, expect, it } from "vitest";
import { isSprayMathError } from "../../../src/errors.ts";
import { calibrationRecord } from "../../../src/output-rate/index.ts";
import { type PlanInput, planApplication } from "../../../src/plan/index.ts";
import { practiceProblem, practiceSheet } from "../../../src/practice/index.ts";
import { dimensionOf, isUnit, qty, type Unit, type UnitSystem, unitsOf } from "../../../src/units/index.ts";
import { SPANISH_WORDS } from "../../../src/words/es.ts";
import {
  ENGLISH_WORDS,
  fieldCard,
  type WorksheetOptions,
  workingSheet,
  worksheet,
} from "../../../src/worksheet/index.ts";
import { counterpart } from "../../../src/worksheet/job/counterparts.ts";
import { TWO_PRODUCTS } from "../../helpers/jobs.ts";
import { expectRefused } from "../../helpers/refusal.ts";

const plan = planApplication(TWO_PRODUCTS);
const SYSTEMS: readonly UnitSystem[] = ["us", "metric", "imperial"];

/** Code and path of every fault that a call is refused for. */
function issuesOf(call: () => unknown): [string, string][] {
  try {
    call();
  } catch (error) {
    if (isSprayMathError(error)) return error.issues.map(({ code, path }) => [code, path]);
  }
  return [];
}

describe("the options of a sheet", () => {
  it.each([2, 13, 4.5, Number.NaN])("refuse %s digits", (digits) => {
    const wrong = Number.isNaN(digits) ? "not-finite" : "out-of-range";
    expectRefused(() => worksheet(plan, { digits }), wrong, "options.digits");
  });

  it("refuse a locale, a system and a table that are none", () => {
    expectRefused(() => worksheet(plan, { locale: "not a tag" }), "unknown-choice", "options.locale");
    expectRefused(
      () => workingSheet({ title: "x", lines: [] }, { locale: "not a tag" }),
      "unknown-choice",
      "options.locale",
    );
    expectRefused(() => fieldCard(plan, { units: "stone" as never }), "unknown-choice", "options.units");
    expectRefused(
      () => worksheet(plan, { words: "es" as never }),
      "not-a-quantity",
      "options.words",
      "a table of words",
    );
    expectRefused(() => worksheet(plan, null as never), "missing", "options");
    expectRefused(
      () => worksheet(plan, { words: { ...ENGLISH_WORDS, language: "not a tag" } }),
      "unknown-choice",
      "options.words.language",
    );
    const { text: _, ...noText } = ENGLISH_WORDS;
    expectRefused(() => worksheet(plan, { words: noText as never }), "missing", "options.words.text");
  });

  it("refuse an option that there is not, with the one that was probably meant", () => {
    const wrong = { local: "de-DE", digit: 3 } as never;
    for (const sheet of [worksheet, fieldCard]) {
      expectRefused(() => sheet(plan, { unit: "metric" } as never), "unknown-field", "options.unit", "units");
      expect(issuesOf(() => sheet(plan, wrong))).toEqual([
        ["unknown-field", "options.local"],
        ["unknown-field", "options.digit"],
      ]);
    }
    expectRefused(
      () => workingSheet({ title: "x", lines: [] }, { units: "us" } as never),
      "unknown-field",
      "options.units",
    );
    expectRefused(() => workingSheet({ title: "x", line: [] } as never), "missing", "lines");
    expectRefused(() => practiceProblem("band", 1, { unit: "us" } as never), "unknown-field", "options.unit");
    const problems = [practiceProblem("band", 1)];
    expectRefused(
      () => practiceSheet(problems, { titel: "x" } as never),
      "unknown-field",
      "options.titel",
      "title",
    );
    expectRefused(
      () => practiceProblem("band", 1, { words: ENGLISH_WORDS as never }),
      "missing",
      "options.words.topics",
    );
  });

  it("take null and undefined for what is not given", () => {
    const none = { units: undefined, locale: null, words: undefined, digits: null } as never;
    expect(worksheet(plan, none)).toEqual(worksheet(plan));
    expect(practiceProblem("band", 1, none)).toEqual(practiceProblem("band", 1));
  });

  it("refuse lines and problems that are no list", () => {
    expectRefused(() => workingSheet({ title: "x", lines: 5 as never }), "not-a-quantity", "lines");
    expectRefused(() => workingSheet(null as never), "missing", "");
    expectRefused(() => workingSheet({ title: "x", lines: [5 as never] }), "not-a-quantity", "lines[0]");
    expectRefused(() => practiceSheet([]), "too-few", "problems");
    expectRefused(() => practiceSheet([undefined as never]), "missing", "problems[0]");
    expectRefused(() => practiceSheet(5 as never), "not-a-quantity", "problems");
  });

  it("refuse a topic, a seed and a system that are none", () => {
    expectRefused(() => practiceProblem("cooking" as never, 1), "unknown-choice", "topic");
    for (const seed of [-1, 1.5, 2 ** 31])
      expectRefused(() => practiceProblem("band", seed), "out-of-range", "seed");
    expectRefused(() => practiceProblem("band", "1" as never), "not-a-quantity", "seed");
    expectRefused(
      () => practiceProblem("band", 1, { units: "stone" as never }),
      "unknown-choice",
      "options.units",
    );
  });

  it("set how many digits the working has", () => {
    const rate = (digits: number) => worksheet(plan, { digits }).steps[1]?.lines.at(-1)?.result;
    expect([rate(3), rate(6), rate(12)]).toEqual(["38.6 gal/ac", "38.5688 gal/ac", "38.56875 gal/ac"]);
  });
});

describe("a unit's counterpart", () => {
  const units = (
    [
      "length",
      "area",
      "volume",
      "mass",
      "pressure",
      "speed",
      "volumeRate",
      "massRate",
      "density",
      "flow",
    ] as const
  ).flatMap((dimension): Unit[] => unitsOf(dimension));

  it.each(SYSTEMS)("in %s measures the same kind of thing, and is its own counterpart", (system) => {
    for (const unit of units) {
      const other = counterpart(unit, system);
      expect(isUnit(other), `${unit}: ${other}`).toBe(true);
      expect(dimensionOf(other), unit).toBe(dimensionOf(unit));
      expect(counterpart(other, system), unit).toBe(other);
    }
  });
});

describe("a worksheet in another system of units", () => {
  const job: PlanInput = {
    ...TWO_PRODUCTS,
    calibration: {
      kind: "record",
      record: calibrationRecord({
        date: "2025-04-12",
        measurement: { kind: "direct-strip", caught: qty(450, "mL"), catchUnit: "fl_oz", rateUnit: "gal/ac" },
        conditions: { pressure: qty(30, "psi"), operator: "Sam" },
      }),
    },
    today: { date: "2025-05-01", conditions: { pressure: qty(40, "psi"), operator: "Ana" } },
  };

  it("keeps a strip read directly as the method it is, and shows its result", () => {
    const lines = worksheet(planApplication(job), { units: "metric" }).steps[1]?.lines ?? [];
    expect(lines.map(({ numbers }) => numbers)).toEqual([
      "450 mL × 0.033814",
      "15.2163 × 1 gal/ac",
      "15.2163 gal/ac × 3.78541 L in 1 gal × 2.47105 ac in 1 ha",
    ]);
    // 450 mL / 29.5735295625 mL × 3.785411784 L / 0.40468564224 ha = 142.3327.
    expect(lines.at(-1)?.result).toBe("142.333 L/ha");
  });

  it("asks the same questions of the job, in its own units", () => {
    const doubtful = planApplication({ ...job, thresholds: { leastRate: qty(30, "gal/ac") } });
    const shown = worksheet(doubtful, { units: "metric" });
    const names = (sheet: typeof shown) => sheet.warnings.map(({ name }) => name);
    expect(names(shown)).toEqual(names(worksheet(doubtful)));
    const [rate] = shown.warnings.filter(({ message }) => /output rate/.test(message));
    expect(rate?.message).toContain("142 L/ha");
    expect(rate?.message).toContain("281 L/ha");
    expect(shown.warnings.map(({ message }) => message).join(" ")).not.toMatch(/\bgal\b|\bpsi\b/);
  });

  it("reads what it converted in three figures at most, and what was entered as it was", () => {
    // A strip 2 ft wide is 0.6096 m, bands of 30 in are 76.2 cm. A tank of 10.25 L is a thing with that number on it.
    const strip = { kind: "strip", used: qty(34, "fl_oz"), swath: qty(2, "ft"), distance: qty(120, "ft") };
    const sprayer = { tank: qty(10.25, "L") };
    const narrow = planApplication({ ...TWO_PRODUCTS, calibration: strip, sprayer } as PlanInput);
    const said = (options: WorksheetOptions): string =>
      worksheet(narrow, options)
        .warnings.map(({ message }) => message)
        .join(" ");
    expect(said({ units: "metric" })).toContain("was 0.61 m wide, but one pass treats 76.2 cm");
    expect(said({ units: "metric", words: SPANISH_WORDS })).toContain(
      "0.61 m, pero una pasada trata 76.2 cm",
    );
    expect(said({})).toContain("was 2 ft wide, but one pass treats 30 in");
    // 34 fl oz are 1,005.5 mL.
    const [held10] = worksheet(plan, { units: "metric" }).warnings;
    expect(held10?.message).toContain("29% of the 1,006 mL used");
    const lines = planApplication({ ...TWO_PRODUCTS, sprayer: { ...sprayer, lineVolume: qty(0.9, "gal") } });
    const held = worksheet(lines, { units: "us" }).warnings.map(({ message }) => message);
    expect(held.join(" ")).toContain("of the 10.25 L tank");
  });

  it("leaves the plan and its input as they are", () => {
    const before = JSON.stringify(plan);
    worksheet(plan, { units: "metric" });
    fieldCard(plan, { units: "imperial" });
    expect(JSON.stringify(plan)).toBe(before);
  });

  it("costs the same", () => {
    const products = TWO_PRODUCTS.products.map((product) => ({
      ...product,
      price: { amount: 40, per: product.form === "dry" ? qty(5, "lb") : qty(1, "gal") },
    }));
    expect(() =>
      worksheet(planApplication({ ...TWO_PRODUCTS, products }), { units: "metric" }),
    ).not.toThrow();
  });
});
