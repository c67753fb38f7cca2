import { describe, expect, it } from "vitest";
import { rectangleArea } from "../../../src/area/index.ts";
import { planApplication } from "../../../src/plan/index.ts";
import { qty } from "../../../src/units/index.ts";
import {
  ENGLISH_WORDS,
  fieldCard,
  issueText,
  type Messages,
  renderHtml,
  renderText,
  workingSheet,
  worksheet,
} from "../../../src/worksheet/index.ts";
import { GERMAN } from "../../helpers/german.ts";
import { DOUBTFUL, TWO_PRODUCTS } from "../../helpers/jobs.ts";
import { refusal } from "../../helpers/refusal.ts";
import { WORKINGS } from "../../helpers/workings.ts";

const options = { locale: "de-DE", words: GERMAN };
const texts = [
  renderText(worksheet(planApplication(TWO_PRODUCTS), options)),
  renderText(fieldCard(planApplication(TWO_PRODUCTS), options)),
  renderText(fieldCard(planApplication(DOUBTFUL), options)),
  renderText(workingSheet({ title: "Alles", lines: Object.values(WORKINGS).flat(2) }, options)),
].map((text) => text.replace(/\s+/g, " "));

/** Every text of a table by its place: `text.title`. */
function leaves(table: object, at = ""): [string, string][] {
  return Object.entries(table).flatMap(([name, one]): [string, string][] =>
    typeof one === "string" ? [[`${at}${name}`, one]] : leaves(one as object, `${at}${name}.`),
  );
}

/** The places of a text: `{product}`. */
const places = (text: string) => [...text.matchAll(/\{(\w+)\}/g)].map(([, name]) => name).sort();

describe("a table of words in another language", () => {
  // Formulas cite their sources, and warnings without words of their own are the plan's: see below.
  const english = leaves(ENGLISH_WORDS).filter(([, text]) =>
    /[A-Za-z]{4,} [a-z]{2,}/.test(text.replace(/\{\w+\}/g, "")),
  );

  it("leaves no English text standing", () => {
    expect(english.length).toBeGreaterThan(100);
    const parts = english.flatMap(([place, text]) =>
      text
        .split(/\{\w+\}/)
        .flatMap((part) => (/[A-Za-z]{4,} [a-z]{2,}/.test(part) ? [[place, part.trim()]] : [])),
    );
    const cited = Object.values(WORKINGS).flat(2);
    const own = parts.filter(([, part]) => !cited.some(({ source }) => source.includes(part as string)));
    for (const text of texts) expect(own.filter(([, part]) => text.includes(part as string))).toEqual([]);
  });

  it("has the places that the English texts have, so that no figure is lost", () => {
    const german = new Map(leaves(GERMAN));
    const numbered = (text: string) => places(text).filter((name) => name !== "n");
    for (const [place, text] of leaves(ENGLISH_WORDS)) {
      if (/^(language|lines\.)/.test(place)) continue;
      expect([place, numbered(german.get(place) ?? "")]).toEqual([place, numbered(text)]);
    }
  });

  it("marks the page with its language", () => {
    expect(renderHtml(worksheet(planApplication(TWO_PRODUCTS), options))).toContain('<html lang="de">');
  });

  it("names tools, units and sources, and keeps those that it has no name for", () => {
    const [sheet, card] = texts as [string, string];
    expect(sheet).toContain("Gallonen je Acre");
    expect(sheet).toContain("1 EL ÷ 2");
    expect(sheet).toContain("ebene Geometrie");
    expect(sheet).toContain("NIST Handbook 44 (2024), Appendix C");
    expect(card).toContain("4 Esslöffel + 1 Teelöffel");
    expect(card).toContain("30,8 g auf: Waage bis 200 g");
  });

  it("words a warning by its key, with its figures and its product", () => {
    const words: Messages = {
      ...GERMAN,
      issues: {
        "lines-uncharged": "{lines}; {used.value} {used.unit}; {percent}; {used:one=Glas;other=Gläser}",
        "rate-over-max": "{product}!",
      },
    };
    const alerts = worksheet(planApplication(TWO_PRODUCTS), { ...options, words }).warnings;
    // 10 fl oz are 29.4% of 34 fl oz.
    const message = "10 fl oz; 34 fl oz; 29 %; Gläser";
    expect(alerts).toContainEqual({ severity: "note", name: "Hinweis", message });
    const [first] = worksheet(planApplication(DOUBTFUL), { ...options, words }).warnings;
    expect(first).toEqual({ severity: "refusal", name: "Nicht spritzen", message: "Product A 8 oz!" });
  });

  it("names what an error is about, by lists of its own", () => {
    const error = refusal(() => rectangleArea({ length: qty(5, "L"), width: qty(3, "m") } as never));
    expect(issueText(error, options)).toBe("5 L ist ein Volumen. Nötig ist eine Länge, etwa 5 m.");
  });

  it("leaves the plan's own sentence where it has none for a warning", () => {
    const plan = planApplication(DOUBTFUL);
    const messages = worksheet(plan, options).warnings.map(({ message }) => message);
    const [weak] = plan.warnings.filter(({ code }) => code === "water-without-product");
    expect(messages).toContain(weak?.message);
  });

  it("may number a term of a tool and name the tool in it", () => {
    const lines = { own: { found: "Own", terms: { n: "fills {n} of the {tool}" } } };
    const words = { ...ENGLISH_WORDS, lines: { ...ENGLISH_WORDS.lines, ...lines } };
    const line = {
      id: "own",
      formula: "n2 + 1",
      terms: { n2: 3 },
      tools: { 2: "tablespoon" },
      result: 4,
      source: "arithmetic",
    } as const;
    const text = renderText(workingSheet({ title: "Own", lines: [line] }, { words }));
    expect(text).toMatch(/fills 2 of the tablespoon/);
    expect(text).not.toMatch(/[{}]/);
  });

  it("is asked for names of its own only: those of every object are none", () => {
    const words: Messages = { ...ENGLISH_WORDS, tools: {}, units: {}, sources: {} };
    const line = { id: "constructor", formula: "x", terms: { x: 1 }, result: 1, source: "toString" } as const;
    const [written] = workingSheet({ title: "Own", lines: [line] }, { words }).lines;
    expect(written?.source).toBe("toString");
  });
});
