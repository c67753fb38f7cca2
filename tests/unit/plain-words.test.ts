import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import ts from "typescript";
import { describe, expect, it } from "vitest";
import { SPANISH_WORDS } from "../../src/words/es.ts";
import { faultsOfMessage, faultsOfText, sampleOf } from "../helpers/plain-words.ts";
import { raisedSentences } from "../helpers/raised-keys.ts";

// Every text of the source and of the examples that can reach a person. What is made of them by running is read where it is
// made: tests/helpers/refusal.ts, plan/slips.test.ts, worksheet/spanish.test.ts and tests/property/every-export.test.ts. The
// documents: tests/docs/words.test.ts.

const filesIn = (folder: string): string[] =>
  readdirSync(folder, { recursive: true, encoding: "utf8" })
    .filter(
      (name) =>
        /(?<!\.d)\.(?:ts|mjs|js|html)$/.test(name) &&
        !/(?:^|[/\\])(?:node_modules|dist[^/\\]*)[/\\]/.test(name),
    )
    .sort()
    .map((name) => join(folder, name));
const files = [...filesIn("src"), ...filesIn("examples")];

/** Texts with their places. */
type Texts = (readonly [place: string, text: string])[];

// Queries, and the headings of tables.
const CODE = /\b(?:SELECT|CREATE)\b|[\w)],\w+ \(/;

/** The texts of a file that are sentences or names of several words, each with its line; code and paths are none. */
function textsIn(file: string): Texts {
  const source = ts.createSourceFile(file, readFileSync(file, "utf8"), ts.ScriptTarget.Latest, true);
  const found: Texts = [];
  const visit = (node: ts.Node): void => {
    ts.forEachChild(node, visit);
    if (ts.isStringLiteralLike(node) || ts.isTemplateHead(node) || ts.isTemplateMiddleOrTemplateTail(node))
      if (/\p{Ll}\S* \S+ \S*\p{Ll}/u.test(node.text) && !CODE.test(node.text))
        found.push([
          `${file}:${source.getLineAndCharacterOfPosition(node.getStart()).line + 1}`,
          node.text.replace(/`[^`]*`/g, "Code"),
        ]);
  };
  visit(source);
  return found;
}

/** The docstrings of a file, without their code, the codes they list, and asides in parentheses. */
function docstringsIn(file: string): Texts {
  const source = readFileSync(file, "utf8");
  return [...source.matchAll(/\/\*\*([\s\S]*?)\*\//g)].flatMap(({ index, 1: comment = "" }) => {
    const line = source.slice(0, index).split("\n").length;
    const text = comment
      .replace(/^[ \t]*\* ?/gm, "")
      .replace(/^@example[\s\S]*?(?=^@|$(?![\s\S]))/gm, "")
      .replace(/\{@link [^}]*\}/g, "Code")
      .replace(/^@throws[\s\S]*?(?=^@|$(?![\s\S]))/gm, "")
      .replace(/`[^`]*`/g, "Code")
      .replace(/^@(?:param \S+ -|\w+)/gm, "")
      .replace(/\s\([^()]*(?:\([^()]*\)[^()]*)*\)/g, "");
    return text
      .split(/\n\s*\n|\n(?=- | )|(?<=^Formulas?:[\s\S]*); |(?<=\nFormulas?:[\s\S]*); /)
      .map((part) => [`${file}:${line}`, part.replace(/\s+/g, " ").trim()] as const);
  });
}

/** What is wrong with texts, each with its place. */
const faulty = (texts: Texts, faultsOf: (text: string) => string[]): string =>
  texts.flatMap(([place, text]) => faultsOf(text).map((fault) => `${place}: ${fault}`)).join("\n");

describe("the words of the source", () => {
  const { sentences } = raisedSentences(process.cwd());

  it("are plain in every sentence of an error or a warning", () => {
    const templates = sentences.map(({ key, template }) => [key, sampleOf(template)] as const);
    expect(faulty(templates, faultsOfMessage)).toBe("");
  });

  it("are plain in Spanish too", () => {
    const templates = Object.entries(SPANISH_WORDS.issues).map(
      ([key, text]) => [key, sampleOf(text)] as const,
    );
    expect(faulty(templates, (text) => faultsOfMessage(text, "es"))).toBe("");
  });

  it("are plain in every other text, of the examples too", () => {
    expect(faulty(files.flatMap(textsIn), faultsOfText)).toBe("");
  });

  it("are plain in every docstring", () => {
    expect(faulty(filesIn("src").flatMap(docstringsIn), faultsOfText)).toBe("");
  });

  it("are found", () => {
    expect(sentences.length).toBeGreaterThan(270);
    const texts = files.flatMap(textsIn).map(([, text]) => text);
    expect(texts.length).toBeGreaterThan(2000);
    expect(files.flatMap(docstringsIn).length).toBeGreaterThan(1000);
  });
});

describe("a message", () => {
  it.each([
    ["The rate is told.", "a number is given"],
    ["A volume was wanted.", "say needed"],
    ["One. Two. Three.", "3 sentences"],
    [`${"word ".repeat(31)}.`, "31 words"],
    [`${"unmistakable ".repeat(14)}.`, "letters, at most 160"],
    ["Enter fl_oz.", "an identifier"],
    ["Must be 1.2345678 gal or less.", "1.2345678 has more"],
  ])("has a fault: %s", (message, fault) => {
    expect(faultsOfMessage(message).join()).toContain(fault);
  });

  it.each([
    'There is no unit "fl_oz told you".',
    `There is no choice this. Did you mean that? Choose one of: ${"something, ".repeat(30)}none.`,
    "Must be 1,000,000 gal or less. (12 errors.)",
  ])("has none: %s", (message) => {
    expect(faultsOfMessage(message)).toEqual([]);
  });
});
