import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { rowBandsArea } from "../../../src/area/index.ts";
import { isSprayMathError } from "../../../src/errors.ts";
import { measureOut, suggestMeasures, toolSet, toolSetNames } from "../../../src/household/index.ts";
import { ratePerPlant } from "../../../src/output-rate/index.ts";
import { type Plan, planApplication } from "../../../src/plan/index.ts";
import {
  ENGLISH_PRACTICE_WORDS,
  practiceProblem,
  practiceSheet,
  practiceTopics,
} from "../../../src/practice/index.ts";
import { formFields, parsePlanInput } from "../../../src/schema/index.ts";
import { checkLabel } from "../../../src/tank-mix/index.ts";
import { describeUnit, parseQuantity, qty, type Unit, unitsOf } from "../../../src/units/index.ts";
import { conversionLines } from "../../../src/units/working-line.ts";
import { SPANISH_WORDS } from "../../../src/words/es.ts";
import { SPANISH_PRACTICE_WORDS } from "../../../src/words/es-practice.ts";
import { offsetsArea } from "../../../src/working/index.ts";
import {
  doseText,
  fieldCard,
  issueText,
  type PrintableSheet,
  renderHtml,
  renderText,
  workingSheet,
  worksheet,
} from "../../../src/worksheet/index.ts";
import { DOUBTFUL, TWO_PRODUCTS } from "../../helpers/jobs.ts";
import { faultsOfIssue } from "../../helpers/plain-words.ts";
import { JOBS } from "../../helpers/plan-inputs.ts";
import { raisedSentences } from "../../helpers/raised-keys.ts";
import { expectRefused } from "../../helpers/refusal.ts";
import { WORKINGS } from "../../helpers/workings.ts";

const { sentences, unread } = raisedSentences(process.cwd());
const raised = new Map(sentences.map(({ key, template }) => [key, template]));
const words = { words: SPANISH_WORDS };
const practiceWords = { words: SPANISH_PRACTICE_WORDS };

/** The places of a template: `{loads}`, `{loads.value}` and `{loads:one=…}` are one. */
const places = (template: string): string[] =>
  [...new Set([...template.matchAll(/\{(\w+)/g)].map(([, name]) => name as string))].sort();

/** Every text of a table by its place: `text.title`. */
function leaves(table: object, at = ""): [string, string][] {
  return Object.entries(table).flatMap(([name, one]): [string, string][] =>
    typeof one === "string" ? [[`${at}${name}`, one]] : leaves(one as object, `${at}${name}.`),
  );
}

describe("the sentences of errors and warnings", () => {
  it("can all be read from the source, one for each key", () => {
    expect(unread).toEqual([]);
    expect(raised.size).toBeGreaterThan(270);
    const other = sentences.filter(({ key, template }) => raised.get(key) !== template);
    expect(other).toEqual([]);
  });

  it("are all there in Spanish, and none that is never raised", () => {
    const spanish = Object.keys(SPANISH_WORDS.issues);
    expect([...raised.keys()].filter((key) => !spanish.includes(key))).toEqual([]);
    expect(spanish.filter((key) => !raised.has(key))).toEqual([]);
  });

  it.each([...raised])("have the same places: %s", (key, template) => {
    expect(places(SPANISH_WORDS.issues[key] ?? "")).toEqual(places(template));
  });

  it.each([...raised, ...Object.entries(SPANISH_WORDS.issues)])(
    "hold no place inside another: %s",
    (_, template) => {
      expect(template).not.toMatch(/\{[^{}]*\{/);
    },
  );

  it("name what the English ones name, and nothing that no list has", () => {
    for (const [, template] of [...raised, ...Object.entries(SPANISH_WORDS.issues)])
      for (const [, , part] of template.matchAll(/\{(\w+)\.(\w+)\}/g))
        if (!["value", "unit", "typed", "tool"].includes(part as string))
          expect(SPANISH_WORDS.names).toHaveProperty(part as string);
  });
});

// Every source that a line of working names.
const SOURCES = [
  ...new Set(
    [
      ...Object.values(WORKINGS).flat(2),
      ...practiceTopics.flatMap((topic) => practiceProblem(topic, 3).working),
      ...conversionLines("", qty(1, "imp_gal"), "L"),
      ...conversionLines("", qty(1, "metric_cup"), "L"),
      ...offsetsArea({ rule: "mid-strip", spacing: qty(5, "m"), offsets: [1, 2, 3].map((x) => qty(x, "m")) }),
    ].map(({ source }) => source),
  ),
];

describe("the Spanish table", () => {
  const spanish = new Map(leaves(SPANISH_PRACTICE_WORDS));

  it("has a text for each of the English ones, with the same places", () => {
    for (const [place, text] of leaves(ENGLISH_PRACTICE_WORDS)) {
      if (/^(language|sources\.)/.test(place)) continue;
      expect([place, places(spanish.get(place) ?? "")]).toEqual([place, places(text)]);
    }
  });

  it("has no text that is the English one, but for signs and what both languages say alike", () => {
    const same = leaves(ENGLISH_PRACTICE_WORDS).filter(([place, text]) => spanish.get(place) === text);
    const alike =
      /^(functions\.(sqrt|cos|tan)|spellings\.lb|steps\.product|text\.(totalOf|fills|ofProduct|outCovers)|lines\..*\.(base|x|percent)$)/;
    expect(same.filter(([place]) => !alike.test(place))).toEqual([]);
  });

  // Twice as strong is "el doble de fuerte" or twice the concentration; "2 veces más fuerte" may as well be three times.
  it("says how many times too strong a mix is by its concentration", () => {
    const calques = Object.entries(SPANISH_WORDS.issues).filter(([, text]) =>
      /veces más (?:fuerte|débil)/.test(text),
    );
    expect(calques).toEqual([]);
  });

  it("names every list that a form has", () => {
    const paths = (["plan", "batch", "spreading"] as const).flatMap((name) => formFields(name));
    const lists = paths.flatMap(({ path }) =>
      [...path.matchAll(/(\w+)\[\]/g)].map(([, name]) => name as string),
    );
    expect(lists).toContain("products");
    const named = Object.keys(SPANISH_WORDS.names.field);
    expect([...new Set(lists)].filter((name) => !named.includes(name))).toEqual([]);
  });

  it("has no word for a line that the English one has none for", () => {
    const english = new Set(leaves(ENGLISH_PRACTICE_WORDS).map(([place]) => place));
    const more = [...spanish.keys()].filter((place) => place.startsWith("lines.") && !english.has(place));
    expect(more).toEqual([]);
  });

  it("names every tool of every set", () => {
    const tools = toolSetNames.flatMap((name) => toolSet(name).map((tool) => tool.name));
    expect(tools.filter((name) => SPANISH_WORDS.tools[name] === undefined)).toEqual([]);
  });

  it("names every unit whose sign is not international", () => {
    const international = /^(mm|cm|m|km|cm2|m2|ha|km2|mL|L|hL|m3|mg|g|kg|s|min|h|psi|kPa|bar|%|ppm|1|\d.*)$/;
    const simple = (
      Object.keys(SPANISH_WORDS.names.dimension) as (keyof typeof SPANISH_WORDS.names.dimension)[]
    )
      .flatMap((dimension) => unitsOf(dimension) as readonly Unit[])
      .filter((unit) => !unit.includes("/"));
    expect(simple.length).toBeGreaterThan(60);
    const missing = simple.filter((unit) => !international.test(unit) && !SPANISH_WORDS.units[unit]);
    expect(missing).toEqual([]);
  });

  it("says where formulas come from, and keeps the titles of publications", () => {
    const kept = SOURCES.filter((source) => SPANISH_WORDS.sources[source] === undefined);
    for (const source of kept)
      expect(source).toMatch(
        /Extension|AgCenter|NIST|IUPAC|JCGM|Manual|USGA|Act 1985|Agdex|Rule-Book|Pesticide Environmental|Cornell/,
      );
    const never = Object.keys(SPANISH_WORDS.sources).filter((source) => !SOURCES.includes(source));
    expect(never).toEqual([]);
  });
});

// The plots and products of the jobs, and tools of their own.
const NAMES =
  /Willow Bend, pepper rows|North field|Product [A-Z]\b|\b(bench|kitchen|digital)? ?scale\b|\bjug\b|\bspoon\b|8 oz\b/g;

/** Words of three letters and more. */
const wordsIn = (text: string): string[] => text.toLowerCase().match(/\p{L}{3,}/gu) ?? [];

const units = leaves(ENGLISH_PRACTICE_WORDS).map(([, text]) => text);
const english = new Set(
  [
    ...units,
    ...raised.values(),
    ...Object.keys(SPANISH_WORDS.sources),
    ...Object.keys(SPANISH_WORDS.tools),
    ...Object.keys(SPANISH_WORDS.units)
      .filter((unit) => unit !== "mph")
      .flatMap((unit) => Object.values(describeUnit(unit as Unit)).map(String)),
  ].flatMap((text) => wordsIn(text.replace(/\{[^}]*\}/g, " "))),
);
// What stands in quotes is to be typed as it is.
const spanishWords = new Set(
  leaves(SPANISH_PRACTICE_WORDS).flatMap(([, text]) =>
    wordsIn(text.replace(/"[^"]*"|\{\w+(\.\w+)?\}/g, " ")),
  ),
);
const jobs = ["examples/market-garden/job.json", "examples/form-any-language/job.json"].map((file) =>
  planApplication(parsePlanInput(JSON.parse(readFileSync(file, "utf8")))),
);
const random = fc.sample(JOBS, { seed: 14, numRuns: 250 });

/** The words of a text that are English and not Spanish; the titles of publications and the names of a job are neither. */
function englishIn(text: string): string[] {
  // The longest first: one may name another.
  const cited = SOURCES.filter((source) => SPANISH_WORDS.sources[source] === undefined).sort(
    (a, b) => b.length - a.length,
  );
  const own = cited.reduce((rest, source) => rest.replaceAll(source, " "), text);
  const found = wordsIn(own.replace(NAMES, " "));
  return [...new Set(found)].filter((word) => english.has(word) && !spanishWords.has(word));
}

const plain = (html: string): string =>
  html
    .replace(/<style[\s\S]*?<\/style>/g, " ")
    .replace(/<[^>]*>/g, " ")
    .replace(/&amp;/g, "&")
    .replace(/&#39;/g, "'");

describe("a sheet in Spanish", () => {
  const plans: Plan[] = [planApplication(TWO_PRODUCTS), planApplication(DOUBTFUL), ...jobs];
  const problems = (["us", "metric", "imperial"] as const).flatMap((system) =>
    practiceTopics.map((topic) => practiceProblem(topic, 2, { units: system, ...practiceWords })),
  );
  const sheets: [string, PrintableSheet][] = [
    ...plans.flatMap((plan, i): [string, PrintableSheet][] => [
      [`worksheet ${i}`, worksheet(plan, words)],
      [`metric worksheet ${i}`, worksheet(plan, { ...words, units: "metric" })],
      [`imperial worksheet ${i}`, worksheet(plan, { ...words, units: "imperial" })],
      [`card ${i}`, fieldCard(plan, words)],
    ]),
    ["practice sheet", practiceSheet(problems, { ...practiceWords, key: "long" })],
    ["students' sheet", practiceSheet(problems, practiceWords)],
    ["sheet of working", workingSheet({ title: "Todo", lines: Object.values(WORKINGS).flat(2) }, words)],
  ];

  it.each(sheets)("has no English word left: %s", (_, sheet) => {
    const text = renderText(sheet).replace(/\s+/g, " ");
    expect(text.length).toBeGreaterThan(500);
    expect(englishIn(text)).toEqual([]);
    expect(englishIn(plain(renderHtml(sheet)).replace(/\s+/g, " "))).toEqual([]);
    expect(renderHtml(sheet)).toContain('<html lang="es">');
  });

  it("has none left whatever the job", () => {
    let printed = 0;
    const seen = new Set<string>();
    for (const input of random) {
      try {
        const plan = planApplication(input);
        printed++;
        for (const warning of plan.warnings) {
          seen.add(warning.key);
          expect(faultsOfIssue(warning)).toEqual([]);
          expect(faultsOfIssue({ ...warning, message: issueText(warning, words) }, "es")).toEqual([]);
        }
        expect(englishIn(renderText(worksheet(plan, words)).replace(/\s+/g, " "))).toEqual([]);
        expect(englishIn(renderText(fieldCard(plan, words)).replace(/\s+/g, " "))).toEqual([]);
      } catch (error) {
        if (!isSprayMathError(error)) throw error;
        for (const issue of error.issues) {
          expect(englishIn(issueText(issue, words))).toEqual([]);
          expect(faultsOfIssue(issue)).toEqual([]);
          expect(faultsOfIssue({ ...issue, message: issueText(issue, words) }, "es")).toEqual([]);
        }
      }
    }
    expect(printed).toBeGreaterThan(100);
    expect(seen.size).toBeGreaterThan(10);
  });

  it("would not pass in English", () => {
    expect(englishIn(renderText(worksheet(planApplication(TWO_PRODUCTS)))).length).toBeGreaterThan(20);
  });

  it("has numbers as its readers write them, and units in the plural that they ask for", () => {
    const plan = planApplication(TWO_PRODUCTS);
    const facts = (locale: string) => worksheet(plan, { ...words, locale }).summary.map(({ value }) => value);
    expect(facts("es-US").join("; ")).toMatch(/\d,\d{3} pies cuadrados.*\d\.\d+ galones/);
    expect(facts("es-ES").join("; ")).toMatch(/\d,\d+ galones\/acre/);
    const phrase = (value: number) =>
      issueText(
        {
          code: "out-of-range",
          key: "at-most",
          path: "",
          figures: { limit: qty(value, "gal") },
          message: "x",
        },
        words,
      );
    expect([1, 1.5, 1.0000001].map(phrase)).toEqual([
      "Debe ser 1 galón o menos.",
      "Debe ser 1.5 galones o menos.",
      "Debe ser 1 galón o menos.",
    ]);
  });
});

describe("issueText", () => {
  const errorOf = (work: () => unknown) => {
    try {
      work();
    } catch (error) {
      if (isSprayMathError(error)) return error;
    }
    throw new Error("nothing was refused");
  };

  it("says an error in the words asked for, with names and what to type", () => {
    const error = errorOf(() =>
      planApplication({ ...TWO_PRODUCTS, sprayer: { tank: qty(5, "ft") } } as never),
    );
    expect(issueText(error, words)).toBe("5 pies es un largo. Anote un volumen, por ejemplo 5 gal.");
    expect(issueText(error)).toBe(error.message);
    expect(issueText(error.issues[0] as never, words)).toBe(issueText(error, words));
  });

  it("names one of several kinds as the language does", () => {
    const error = errorOf(() =>
      measureOut({ amount: qty(5, "ft"), tools: "us-spoons", rule: "nearest" } as never),
    );
    expect(issueText(error, words)).toBe(
      "5 pies es un largo. Anote un volumen o un peso, por ejemplo 5 gal.",
    );
  });

  it("names fields and tools as the language does", () => {
    const spacings = errorOf(() => ratePerPlant({ rate: qty(1, "gal/ac") } as never));
    expect(issueText(spacings, words)).toBe(
      "Anote uno de estos: distancia entre hileras + distancia entre plantas, plantas + área del terreno.",
    );
    expect(issueText(spacings)).toBe("Enter one of: row spacing + plant spacing, plants + ground.");
    const tools = [...toolSet("us-spoons"), ...toolSet("us-spoons").slice(0, 1)];
    const twice = errorOf(() => measureOut({ amount: qty(1, "tbsp"), tools, rule: "nearest" }));
    expect(issueText(twice, words)).toBe(
      "El utensilio 1/8 de cucharadita está dos veces en la lista. Quite uno.",
    );
  });

  it("says a count and a list that differ with the words for that many", () => {
    const widths = { bandWidth: qty(1, "ft"), rowLengths: [qty(9, "ft")] };
    const error = errorOf(() => rowBandsArea({ ...widths, rows: 3 }));
    expect(issueText(error, words)).toBe("El número es 3, pero anotó 1 largo. Anote un largo para cada uno.");
  });

  it("gives an example that can be typed as it is", () => {
    const text = issueText(
      errorOf(() => parseQuantity("")),
      words,
    );
    const example = /por ejemplo (.*)\.$/.exec(text)?.[1] as string;
    expect(parseQuantity(example).value).toBe(5);
  });

  it("says a warning with its product, and with the plot where it is one of several", () => {
    const figures = { rate: qty(2, "pt/ac"), max: qty(1, "pt/ac"), product: "Product A" };
    const warning = {
      code: "rate-over-max",
      key: "rate-over-max",
      severity: "refusal",
      path: "products[0].rate",
      message: "x",
    } as const;
    expect(issueText({ ...warning, figures }, words)).toBe(
      "Product A: La dosis de 2 pintas/acre pasa del máximo de la etiqueta, 1 pinta/acre. No use más de lo que permite la etiqueta.",
    );
    expect(issueText({ ...warning, figures: { ...figures, plot: "Plot B" } }, words)).toMatch(
      /^Product A en Plot B: La/,
    );
  });

  it("says what checkLabel found", () => {
    const [finding] = checkLabel({
      rate: qty(2, "pt/ac"),
      form: "liquid",
      carrierRate: qty(20, "gal/ac"),
      label: { max: qty(1, "pt/ac") },
    });
    expect(issueText(finding as never, words)).toMatch(/^La dosis de 2 pintas\/acre pasa/);
  });

  it("puts the name of a unit together, and keeps signs that every language has", () => {
    const limit = (figure: object, locale = "es-US") =>
      issueText(
        { code: "out-of-range", key: "at-most", path: "", message: "x", figures: { limit: figure } } as never,
        { ...words, locale },
      ).slice("Debe ser ".length, -" o menos.".length);
    expect(limit(qty(2, "fl_oz/1000ft2"))).toBe("2 onzas líquidas/1,000 pies cuadrados");
    expect(limit(qty(1, "gal/ac"))).toBe("1 galón/acre");
    expect(limit(qty(2, "100gal"))).toBe("200 galones");
    expect(limit(qty(2, "pt/100gal"))).toBe("2 pintas/100 galones");
    expect(limit(qty(1.5, "L/ac"), "es-ES")).toBe("1,5 L/acre");
    expect(limit(qty(3, "mph"))).toBe("3 millas por hora");
    expect(limit(qty(200, "L/ha"))).toBe("200 L/ha");
    expect(limit({ ...qty(5, "%"), basis: "v/v" })).toMatch(/^5\s?% v\/v$/);
    expect(limit(qty(0.5, "1"))).toBe("0.5");
    const units = { ...SPANISH_WORDS.units, "gal/ac": "GPA" };
    const issue = { code: "out-of-range", key: "at-most", path: "", message: "x" } as const;
    const own = issueText(
      { ...issue, figures: { limit: qty(5, "gal/ac") } },
      { words: { ...SPANISH_WORDS, units } },
    );
    expect(own).toBe("Debe ser 5 GPA o menos.");
  });

  it("lets the English message stand for a key that it does not know, also one of every object", () => {
    const issue = { code: "missing", path: "", figures: {}, message: "As it was." } as const;
    for (const key of ["no-such-key", "constructor"])
      expect(issueText({ ...issue, key }, words)).toBe("As it was.");
  });

  it("refuses figures that are none, since what a server sent may be anything", () => {
    const issue = { code: "missing", key: "at-most", path: "", message: "x" } as const;
    for (const limit of [
      null,
      undefined,
      {},
      { value: "5", unit: "gal" },
      { value: Number.NaN, unit: "gal" },
      Number.NaN,
      Number.POSITIVE_INFINITY,
      [5],
    ])
      expectRefused(
        () => issueText({ ...issue, figures: { limit } } as never, words),
        "not-a-quantity",
        "issue.figures.limit",
      );
    expect(issueText({ ...issue, figures: { limit: { value: 5, unit: "scoops" } } }, words)).toBe(
      "Debe ser 5 scoops o menos.",
    );
  });

  it("refuses what is no issue, and words and locales that are none", () => {
    const issue = { code: "missing", key: "enter-text", path: "", figures: {}, message: "x" } as const;
    expectRefused(() => issueText(undefined as never), "missing", "issue");
    expectRefused(() => issueText("x" as never), "not-a-quantity", "issue");
    expectRefused(() => issueText({ ...issue, figures: 5 } as never), "not-a-quantity", "issue.figures");
    expectRefused(() => issueText(issue, { words: {} as never }), "missing", "options.words.issues");
    expectRefused(() => issueText(issue, { locale: "not a tag" }), "unknown-choice", "options.locale");
  });
});

describe("doseText", () => {
  const dose = (amount: number, tools: "us-cups-and-spoons" | "syringes" = "us-cups-and-spoons") =>
    measureOut({ amount: qty(amount, "fl_oz"), tools, rule: "never-over" });

  it("says a dose as people do, in English and in Spanish", () => {
    expect(doseText(dose(2))).toBe("1/4 cup");
    expect(doseText(dose(9))).toBe("1 cup + 2 tablespoons");
    expect(doseText(dose(9), words)).toBe("1 taza + 2 cucharadas");
    expect(doseText(dose(0.5), words)).toBe("1 cucharada");
    expect(doseText(dose(2), words)).toBe("1/4 de taza");
  });

  it("says what a tool with marks is filled to, with the numbers of the locale", () => {
    expect(doseText(dose(0.42, "syringes"))).toMatch(/^\d+(\.\d+)? mL in the \d+ mL syringe/);
    expect(doseText(dose(0.05, "syringes"), { ...words, locale: "es-ES" })).toBe(
      "1 mL en la jeringa de 1 mL + 0,46 mL en la jeringa de 1 mL",
    );
  });

  it("says why a dose can't be measured", () => {
    const none = dose(0.0001);
    expect(doseText(none)).toMatch(/too small to measure with these tools/);
    expect(doseText(none, words)).toMatch(/es muy poco para medir con estos utensilios/);
  });

  it("says what would do instead, with the tool by its name", () => {
    const ask = { amount: qty(0.117, "tsp"), tools: "us-spoons", rule: "never-over" } as const;
    const texts = suggestMeasures({ ...ask, load: qty(0.41, "gal") }).map((one) =>
      issueText(one, { words: SPANISH_WORDS }),
    );
    expect(texts).toEqual([
      "Prepare 0.44 galones en vez de 0.41 galones.",
      "Use también este utensilio: jeringa de 1 mL.",
    ]);
  });

  it("takes the doses of a plan", () => {
    const [load] = planApplication(TWO_PRODUCTS).loads;
    expect(doseText(load?.products[0]?.measured as never, words)).toMatch(/cucharada/);
  });

  it("refuses what is no dose", () => {
    expectRefused(() => doseText(undefined as never), "missing", "measured");
    expectRefused(() => doseText({} as never), "missing", "measured.parts");
    expectRefused(() => doseText({ parts: [{}] } as never), "missing", "measured.parts[0].tool");
  });
});
