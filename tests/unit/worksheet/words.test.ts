import { describe, expect, it } from "vitest";
import { ENGLISH_PRACTICE_WORDS, practiceProblem, practiceTopics } from "../../../src/practice/index.ts";
import { qty } from "../../../src/units/index.ts";
import { SPANISH_PRACTICE_WORDS } from "../../../src/words/es-practice.ts";
import * as working from "../../../src/working/index.ts";
import { ENGLISH_WORDS, workingSheet } from "../../../src/worksheet/index.ts";
import { GERMAN } from "../../helpers/german.ts";
import { expectPrintedTrue, numberReader } from "../../helpers/printed-lines.ts";
import { WORKINGS } from "../../helpers/workings.ts";

const exported = Object.keys(working);
const samples = Object.entries(WORKINGS).flatMap(([name, all]) =>
  all.map((lines): [string, (typeof all)[number]] => [name, lines]),
);
const problems = practiceTopics.flatMap((topic) => practiceProblem(topic, 3).working);
const every = [...samples.flatMap(([, lines]) => lines), ...problems];

describe("the words of the working", () => {
  it("are tried on every function that shows its working", () => {
    expect(exported.length).toBeGreaterThan(60);
    expect(exported.filter((name) => WORKINGS[name] === undefined)).toEqual([]);
    expect(Object.keys(WORKINGS).filter((name) => !exported.includes(name))).toEqual([]);
  });

  it.each([
    ["English", ENGLISH_PRACTICE_WORDS],
    ["Spanish", SPANISH_PRACTICE_WORDS],
    ["a third language", GERMAN],
  ])("name every line and every term in %s, and leave no id and no place unfilled", (_, words) => {
    const named = (id: string, symbol: string) => {
      const { terms = {} } = words.lines[id] ?? {};
      return terms[symbol] !== undefined || terms[symbol.replace(/\d+$/, "")] !== undefined;
    };
    for (const line of every) {
      if (line.about === undefined) expect(words.lines[line.id]?.found, line.id).toMatch(/\w/);
      for (const symbol of Object.keys(line.terms))
        expect(named(line.id, symbol), `${line.id}.${symbol}`).toBe(true);
      if (line.about === undefined || words.lines[line.about] !== undefined) continue;
      const [, id = "", symbol = ""] = /^(.*)\.([^.]*)$/.exec(line.about) ?? [];
      expect(named(id, symbol), line.about).toBe(true);
    }
    for (const { id, found, words: said, formula, terms } of workingSheet(
      { title: "Working", lines: every },
      { words },
    ).lines) {
      for (const text of [found, said])
        expect(text, formula).not.toMatch(/[a-z]\.[a-z]|[a-z][A-Z]|[{}]|undefined/);
      for (const [symbol, term] of Object.entries(terms)) {
        // A number in the symbol is in the name as well, so that terms differ; of tools it is the tool's name.
        if (/^[a-z]/.test(symbol) && id !== "household.measured")
          expect(term.name, formula).toContain(/\d*$/.exec(symbol)?.[0] ?? "");
      }
    }
  });

  it("stand beside printed numbers that make each line true, read back from its text, and a source", () => {
    const read = numberReader("en-US");
    for (const [name, lines] of samples) {
      for (const line of workingSheet({ title: name, lines }, { digits: 12 }).lines) {
        expectPrintedTrue(line, { read, digits: 12, functions: ENGLISH_WORDS.functions });
        expect(line.source, line.id).toMatch(/^\w.{4}/);
        for (const symbol of Object.keys(line.terms)) expect(line.formula, line.id).toContain(symbol);
      }
    }
  });

  it("tell terms of one line apart", () => {
    for (const [name, lines] of samples) {
      for (const { terms, id } of workingSheet({ title: name, lines }).lines) {
        const names = Object.entries(terms)
          .filter(([symbol]) => /^[a-z]/i.test(symbol))
          .map(([, term]) => term.name);
        expect(new Set(names).size, `${name}: ${id}: ${names.join("; ")}`).toBe(names.length);
      }
    }
  });

  it("are there for no line that no function writes", () => {
    const ids = new Set(every.map(({ id }) => id));
    expect(Object.keys(ENGLISH_PRACTICE_WORDS.lines).filter((id) => !ids.has(id))).toEqual([]);
  });

  it("are there for no term that no line has", () => {
    const unused = Object.entries(ENGLISH_PRACTICE_WORDS.lines).flatMap(([id, { terms }]) => {
      const symbols = every.filter((line) => line.id === id).flatMap((line) => Object.keys(line.terms));
      const stems = new Set(symbols.flatMap((symbol) => [symbol, symbol.replace(/\d+$/, "")]));
      return Object.keys(terms).flatMap((symbol) => (stems.has(symbol) ? [] : [`${id}.${symbol}`]));
    });
    expect(unused).toEqual([]);
  });

  it("leave a percent sign on a result that is a percentage", () => {
    const [lines] = WORKINGS.checkAgainstTarget ?? [];
    expect(workingSheet({ title: "Working", lines: lines ?? [] }).lines.at(-1)?.result).toMatch(
      /^-?[\d.]+%$/,
    );
  });

  it("name the tools that a dose is measured with", () => {
    const tools = [
      { name: "tablespoon", capacity: qty(1, "tbsp") },
      { name: "1/4 teaspoon", capacity: qty(0.25, "tsp") },
      { name: "blue scoop", capacity: qty(1, "fl_oz") },
      { name: "5 mL syringe", capacity: qty(5, "mL"), graduation: qty(1, "mL") },
    ];
    const amount = qty(2 + 0.5 + 0.25 / 6 + 3 / 29.5735295625, "fl_oz");
    const lines = working.measureOut({ amount, tools, rule: "nearest", closeEnoughPercent: 0 });
    const wordsOf = (all: typeof lines) =>
      workingSheet({ title: "Dose", lines: all }).lines.find(({ id }) => id === "household.measured")?.words;
    expect(wordsOf(lines)).toBe(
      "number of fills of the blue scoop × one blue scoop holds + one tablespoon holds" +
        " + reading on the 5 mL syringe + one 1/4 teaspoon holds",
    );
    // The same with each tool used more than once.
    const twice = lines.map((line) => ({
      ...line,
      terms: Object.fromEntries(
        Object.entries(line.terms).map(([symbol, term]) => [symbol, term === 1 ? 2 : term]),
      ),
    }));
    expect(wordsOf(twice)).toBe(
      "number of fills of the blue scoop × one blue scoop holds + number of tablespoons × one tablespoon holds" +
        " + times the 5 mL syringe is used × reading on the 5 mL syringe" +
        " + number of fills of the 1/4 teaspoon × one 1/4 teaspoon holds",
    );
  });

  it("tell two readings of one tool apart", () => {
    const tools = [{ name: "jug", capacity: qty(1, "L"), graduation: qty(100, "mL") }];
    const lines = working.measureOut({ amount: qty(1.5, "L"), tools, rule: "nearest" });
    const written = workingSheet({ title: "Dose", lines }).lines.at(-3);
    const names = Object.values(written?.terms ?? {}).map(({ name }) => name);
    expect(new Set(names).size).toBe(names.length);
  });
});
