import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { faultsOfSentence, sentencesIn } from "../helpers/plain-words.ts";

// What people read in the documents: their sentences and tables, but no code, no drawings and no tables that are generated.

const GENERATED = new Set(["docs/conformance.md"]);

const pagesIn = (folder: string): string[] =>
  readdirSync(folder)
    .filter((name) => name.endsWith(".md"))
    .map((name) => join(folder, name));
const examples = readdirSync("examples", { withFileTypes: true }).filter((entry) => entry.isDirectory());
const folders = [".", "docs", "examples", ...examples.map(({ name }) => join("examples", name))];
const pages = folders.flatMap(pagesIn).filter((page) => !GENERATED.has(page));

interface Block {
  readonly line: number;
  readonly text: string;
}

/** The text of a page, in blocks that no sentence crosses: paragraphs, points of a list, cells of a table. */
function blocksOf(page: string): Block[] {
  const blocks: Block[] = [];
  let paragraph: { line: number; text: string } | undefined;
  const end = () => {
    if (paragraph) blocks.push(paragraph);
    paragraph = undefined;
  };
  let fence = false;
  let comment = false;
  let generated = false;
  for (const [at, raw] of page.split("\n").entries()) {
    const line = at + 1;
    if (/^\s*```/.test(raw)) fence = !fence;
    if (/^<!-- .*written by/.test(raw)) generated = true;
    if (/^<!-- end/.test(raw)) generated = false;
    comment = /^<!--/.test(raw) && !raw.includes("-->");
    const isText = !fence && !comment && !generated && !/^(?:\s*```|<!--| {4}\S|\s*$)/.test(raw);
    if (!isText) end();
    else if (/^\s*\|/.test(raw)) {
      end();
      for (const cell of raw.split(/(?<!\\)\|/)) if (/[A-Za-z]/.test(cell)) blocks.push({ line, text: cell });
    } else if (/^#|^\s*(?:[-*]|\d+\.) /.test(raw)) {
      end();
      paragraph = { line, text: raw.replace(/^(?:#+|\s*(?:[-*]|\d+\.)) /, "") };
      if (raw.startsWith("#")) end();
    } else if (paragraph) paragraph.text += `\n${raw.trim()}`;
    else paragraph = { line, text: raw };
  }
  end();
  return blocks;
}

/** The words alone: code in a sentence stands for one word, a link for its text. */
const proseOf = (text: string): string =>
  text
    .replace(/\]\([^)\s]*\)/g, "]")
    .replace(/`+[^`]+`+/g, (code) => `Code${"\n".repeat(code.split("\n").length - 1)}`);

/** Each sentence with the line that it begins on. */
function sentencesOf({ line, text }: Block): Block[] {
  const prose = proseOf(text);
  return sentencesIn(prose).map((one) => ({
    line: line + prose.slice(0, one.start).split("\n").length - 1,
    text: one.text,
  }));
}

/** What is wrong with a page, each with its line. */
function faultsOf(page: string): string[] {
  return blocksOf(page)
    .flatMap(sentencesOf)
    .flatMap(({ line, text }) =>
      faultsOfSentence(text).map((fault) => `${line}: ${fault}: ${text.replace(/\s+/g, " ")}`),
    );
}

describe("the words of the documents", () => {
  it("are found", () => {
    expect(pages).toEqual(
      expect.arrayContaining(["README.md", "docs/whole-job.md", "examples/lesson/README.md"]),
    );
  });

  it.each(pages)("%s is in plain words", (page) => {
    const faults = faultsOf(readFileSync(page, "utf8")).map((fault) => `${page}:${fault}`);
    expect(faults.join("\n")).toBe("");
  });

  it.each([
    ["The rate is told\nhere.", "1: a number is given"],
    ["Fine.\n\n- It tells the rate.", "3: a number is given"],
    ["A volume\nis needed. A volume was wanted.", "2: say needed"],
    ["| a | parted |", "1: say split"],
    ["Given 4; enter more.", '1: "Given …;"'],
    ["Use fl_oz here.", "1: an identifier"],
    [`${"word ".repeat(30)}word.`, "1: 31 words"],
    ["It is 1.234567 gal.", "1: 1.234567 has more"],
    ["It is 1,234,567 sq ft.", "1: 1,234,567 has more"],
  ])("a fault in %j is found", (page, fault) => {
    expect(faultsOf(page)).toEqual([expect.stringContaining(fault)]);
  });

  it.each([
    "Use `fl_oz` here.",
    "```ts\nconst told = 1.2345678;\n```",
    "A million is 1,000,000, and 0.000001 a millionth.",
    `${"word ".repeat(30)}.`,
    "[told](told_it.md)".replace("[told]", "[text]"),
    "<!-- sizes: written by `npm run size` -->\n\n| told |\n\n<!-- end -->",
  ])("nothing is wrong with %j", (page) => {
    expect(faultsOf(page)).toEqual([]);
  });
});
