import { createHash } from "node:crypto";
import MarkdownIt from "markdown-it";
import { describe, expect, it } from "vitest";
import { planApplication } from "../../../src/plan/index.ts";
import {
  practiceProblem,
  practiceSheet,
  practiceTopics,
  workedExample,
} from "../../../src/practice/index.ts";
import { SPANISH_WORDS } from "../../../src/words/es.ts";
import {
  fieldCard,
  type PrintableSheet,
  renderHtml,
  renderMarkdown,
  renderText,
  SHEET_STYLE_HASH,
  workingSheet,
  worksheet,
} from "../../../src/worksheet/index.ts";
import { renderLatex } from "../../../src/worksheet/latex.ts";
import { STYLE } from "../../../src/worksheet/render/html-style.ts";
import { pageOf } from "../../../src/worksheet/render/page.ts";
import { plain } from "../../../src/worksheet/render/plain.ts";
import type { SheetBlock } from "../../../src/worksheet/render/sheets.ts";
import { DOUBTFUL, HOSTILE_NAMES, planNamed, TWO_PRODUCTS } from "../../helpers/jobs.ts";
import { expectRefused } from "../../helpers/refusal.ts";
import { WORKINGS } from "../../helpers/workings.ts";

const plan = planApplication(TWO_PRODUCTS);
const doubtful = planApplication(DOUBTFUL);
const SHEETS: readonly [string, PrintableSheet][] = [
  ["a worksheet", worksheet(plan)],
  ["a worksheet of a doubtful job", worksheet(doubtful)],
  ["a field card", fieldCard(plan)],
  ["a field card of a doubtful job", fieldCard(doubtful)],
  [
    "the working of every function",
    workingSheet({ title: "Everything", lines: Object.values(WORKINGS).flat(2) }),
  ],
  [
    "a teacher's practice sheet",
    practiceSheet(
      practiceTopics.map((topic) => practiceProblem(topic, 1)),
      { key: "long" },
    ),
  ],
  ["a pupils' practice sheet", practiceSheet(practiceTopics.map((topic) => practiceProblem(topic, 1)))],
  ["a worked example", workedExample(practiceProblem("whole-job", 1))],
  [
    "cards with drawings and room to work",
    practiceSheet(
      practiceTopics.map((topic) => practiceProblem(topic, 2)),
      { cards: true, drawings: true, workLines: 4, className: "Class 7", set: "A-7" },
    ),
  ],
];

/** Every text that a sheet's page holds, as any format must show it. */
function textsOf(sheet: PrintableSheet): string[] {
  const { title, blocks, sources } = pageOf(sheet);
  const texts = (block: SheetBlock): readonly string[] => {
    switch (block.kind) {
      case "heading":
      case "text":
        return [block.text];
      case "alerts":
        return block.items.flatMap(({ name, value }) => [name, value]);
      case "list":
      case "boxes":
        return block.items;
      case "table":
      case "facts":
        return block.rows.flat();
      case "lines":
        return block.lines.flatMap(({ found, numbers, result }) => [found, numbers, result]);
      case "sources":
        return sources;
      case "blanks":
        return block.items;
      case "room":
      case "drawing":
        return [];
      case "group":
        return block.blocks.flatMap(texts);
    }
  };
  return [title, ...blocks.flatMap(texts)].map((text) => plain(text).trim());
}

const folded = (text: string) => text.replace(/[ \n]+/g, " ");

const markdown = new MarkdownIt({ html: true, linkify: true });

/** What a reader of the Markdown sees: its text, and the tags that it turns into. */
function readMarkdown(text: string): { shown: string; tags: Set<string>; inline: Set<string> } {
  const tokens = markdown.parse(text, {});
  const children = tokens.flatMap((token) => token.children ?? []);
  return {
    shown: folded(
      tokens
        .filter(({ type }) => type === "inline")
        .map((token) => (token.children ?? []).map(({ content }) => content).join(""))
        .join("\n"),
    ),
    tags: new Set(tokens.map(({ tag, type }) => tag || type)),
    inline: new Set(children.map(({ type }) => type)),
  };
}

/** An HTML page's tags in order, and its text; written with no parser, so no tag may hide in a text. */
function readHtml(html: string): { tags: string[]; shown: string } {
  const body = html.slice(html.indexOf("<body>"));
  const entities: Record<string, string> = {
    "&lt;": "<",
    "&gt;": ">",
    "&quot;": '"',
    "&#39;": "'",
    "&amp;": "&",
  };
  return {
    tags: [...html.matchAll(/<(\/?[a-z!][a-z0-9]*)/gi)].map(([, tag]) => (tag ?? "").toLowerCase()),
    shown: folded(
      body.replace(/<[^>]*>/g, "").replace(/&(lt|gt|quot|#39|amp);/g, (entity) => entities[entity] ?? ""),
    ),
  };
}

describe.each(SHEETS)("%s", (_, sheet) => {
  const texts = textsOf(sheet);

  it("has parts", () => {
    expect(texts.length).toBeGreaterThan(10);
    expect(texts.filter((text) => /undefined|NaN|\[object|[{}]/.test(text))).toEqual([]);
  });

  it("stands whole in plain text, within 80 columns where words can be broken", () => {
    const text = renderText(sheet);
    const shown = folded(text).replaceAll("[ ] ", "");
    expect(texts.filter((one) => !shown.includes(one))).toEqual([]);
    expect(text.split("\n").filter((line) => line.length > 80 && / \S+ /.test(line.trim()))).toEqual([]);
    expect(text.endsWith("\n")).toBe(true);
  });

  it("stands whole in Markdown, with headings in order and no HTML", () => {
    const text = renderMarkdown(sheet);
    const { shown, inline } = readMarkdown(text);
    expect(texts.filter((one) => !shown.includes(one))).toEqual([]);
    expect([...inline].filter((type) => /html|link|image|code/.test(type))).toEqual([]);
    expectHeadings([...text.matchAll(/^(#+) /gm)].map(([, signs]) => (signs ?? "").length));
  });

  it("stands whole in HTML, with headings in order, tables that name their cells, and nothing from elsewhere", () => {
    const html = renderHtml(sheet);
    const { tags, shown } = readHtml(html);
    expect(texts.filter((one) => !shown.includes(one))).toEqual([]);
    expectHeadings(tags.filter((tag) => /^h\d$/.test(tag)).map((tag) => Number(tag[1])));
    const count = (tag: string) => tags.filter((one) => one === tag).length;
    for (const tag of new Set(tags.filter((one) => /^[a-z]/.test(one) && !/^(meta|input)$/.test(one)))) {
      expect(count(`/${tag}`), tag).toBe(count(tag));
    }
    expect(count("caption")).toBe(count("table"));
    expect(html.match(/<th /g)?.length ?? 0).toBe(html.match(/<th scope="(col|row)">/g)?.length ?? 0);
    expect(html).toMatch(/^<!doctype html>\n<html lang="en">/);
    expect(html).not.toMatch(/<(script|link|img|iframe|object)|url\(|@import|https?:|\son\w+=|\sstyle=/i);
  });

  it("is a LaTeX document whose brackets and environments close", () => {
    const latex = renderLatex(sheet);
    let depth = 0;
    for (const [sign] of latex.replace(/\\[\\{}]/g, "").matchAll(/[{}]/g)) {
      depth += sign === "{" ? 1 : -1;
      expect(depth).toBeGreaterThanOrEqual(0);
    }
    expect(depth).toBe(0);
    const open: string[] = [];
    for (const [, what, name] of latex.matchAll(/\\(begin|end)\{(\w+)\}/g)) {
      if (what === "begin") open.push(name ?? "");
      else expect(open.pop()).toBe(name);
    }
    expect(open).toEqual([]);
    expect((latex.replace(/\\\$/g, "").match(/\$/g)?.length ?? 0) % 2).toBe(0);
  });
});

/** One heading of the first level, and none that skips a level. */
function expectHeadings(levels: readonly number[]): void {
  expect(levels.filter((level) => level === 1)).toHaveLength(1);
  expect(levels[0]).toBe(1);
  for (const [i, level] of levels.entries())
    if (i > 0) expect(level).toBeLessThanOrEqual((levels[i - 1] ?? 0) + 1);
}

// biome-ignore lint/suspicious/noControlCharactersInRegex: none of them may reach a terminal
const STEERING = /[\u0000-\u0009\u000b-\u001f\u007f-\u009f\u2028\u2029\u202a-\u202e\u2066-\u2069]/;

/** A name that means nothing to any format, and that no other text holds. */
const TAME = "Product Zz9";

describe.each(HOSTILE_NAMES)("the name %j", (name) => {
  const hostile = planNamed([name, "Product B"]);
  const sheets: PrintableSheet[] = [
    worksheet(hostile),
    fieldCard(hostile),
    workingSheet({ title: name, lines: WORKINGS.stripRate?.[0] ?? [] }),
  ];
  const tame = planNamed([TAME, "Product B"]);
  const tameSheets: PrintableSheet[] = [
    worksheet(tame),
    fieldCard(tame),
    workingSheet({ title: TAME, lines: WORKINGS.stripRate?.[0] ?? [] }),
  ];
  const seen = folded(plain(name).trim());
  /** The name is shown whole wherever a usual one is. */
  const expectAsOften = (shown: string, usual: string) => {
    expect(shown.split(seen).length).toBe(usual.split(TAME).length);
    expect(shown.split(seen).length).toBeGreaterThan(1);
  };

  it("reaches a terminal without a sign that steers it", () => {
    for (const [i, sheet] of sheets.entries()) {
      const text = renderText(sheet);
      expect(text).not.toMatch(STEERING);
      expectAsOften(folded(text), folded(renderText(tameSheets[i] as PrintableSheet)));
    }
  });

  it("is text in Markdown, and changes nothing of the page", () => {
    for (const [i, sheet] of sheets.entries()) {
      const { shown, tags, inline } = readMarkdown(renderMarkdown(sheet));
      const usual = readMarkdown(renderMarkdown(tameSheets[i] as PrintableSheet));
      expectAsOften(shown, usual.shown);
      expect([...tags].sort()).toEqual([...usual.tags].sort());
      expect([...inline].filter((type) => type !== "text_special").sort()).toEqual(
        [...usual.inline].filter((type) => type !== "text_special").sort(),
      );
      const blocks = (text: string) => markdown.parse(text, {}).map(({ type }) => type);
      expect(blocks(renderMarkdown(sheet))).toEqual(blocks(renderMarkdown(tameSheets[i] as PrintableSheet)));
    }
  });

  it("is text in HTML, and changes nothing of the page", () => {
    for (const [i, sheet] of sheets.entries()) {
      const { tags, shown } = readHtml(renderHtml(sheet));
      const usual = readHtml(renderHtml(tameSheets[i] as PrintableSheet));
      expectAsOften(shown, usual.shown);
      expect(tags).toEqual(usual.tags);
    }
  });

  it("is text in LaTeX, and brings no command of its own", () => {
    // The commands that the library itself writes, and those that stand for a sign.
    const commands = (latex: string) =>
      [...latex.matchAll(/\\([a-zA-Z]+|.)/g)].map(([, command]) => command ?? "");
    const signs =
      /^(text(backslash|asciicircum|asciitilde|less|greater|bar|quotedbl|asciigrave|quotesingle)|[{}$&#%_])$/;
    for (const [i, sheet] of sheets.entries()) {
      const latex = renderLatex(sheet);
      const usual = commands(renderLatex(tameSheets[i] as PrintableSheet)).filter((one) => !signs.test(one));
      expect(commands(latex).filter((one) => !signs.test(one))).toEqual(usual);
      // Nothing that LaTeX acts on stands bare: braces, math, comments, places, columns and tildes are the library's own.
      const bare = (text: string, sign: string) => text.replace(/\\./g, "").split(sign).length;
      for (const sign of ["#", "%", "_", "^"]) {
        expect(bare(latex, sign), sign).toBe(bare(renderLatex(tameSheets[i] as PrintableSheet), sign));
      }
      expect(bare(latex, "&")).toBe(bare(renderLatex(tameSheets[i] as PrintableSheet), "&"));
      expect(bare(latex, "$")).toBe(bare(renderLatex(tameSheets[i] as PrintableSheet), "$"));
    }
  });
});

describe("a sheet as HTML under a Content-Security-Policy", () => {
  const html = renderHtml(worksheet(plan));

  it("has the one style that the hash stands for", () => {
    const [, style = ""] = /<style>([\s\S]*?)<\/style>/.exec(html) ?? [];
    expect(style).toBe(STYLE);
    expect(SHEET_STYLE_HASH).toBe(`'sha256-${createHash("sha256").update(style).digest("base64")}'`);
    expect(html.match(/<style/g)).toHaveLength(1);
  });

  it("has several sheets on one page, each in its own language and with a paper of its own", () => {
    const [first, second] = [
      fieldCard(plan),
      fieldCard(plan, { words: SPANISH_WORDS, locale: "es-US" }),
    ] as const;
    const both = renderHtml([first, second]);
    const articles = (page: string) => page.match(/<article[\s\S]*?<\/article>/g);
    expect(articles(both)).toEqual([first, second].flatMap((one) => articles(renderHtml(one))));
    expect(both.match(/<article [^>]*>/g)).toEqual([
      '<article class="field-card" lang="en">',
      '<article class="field-card" lang="es">',
    ]);
    expect(both).toMatch(/<html lang="en">[\s\S]*<main>[\s\S]*<\/main>/);
    expect(STYLE).toContain("article + article { break-before: page; }");
    expect(renderHtml([first])).toBe(renderHtml(first));
    expectRefused(() => renderHtml([]), "not-a-quantity", "sheet");
    expectRefused(() => renderHtml(Array(1001).fill(first)), "out-of-range", "sheet");
    expectRefused(
      () => renderHtml([first, { ...second, title: 5 } as never]),
      "not-a-quantity",
      "sheet[1].title",
    );
    expectRefused(() => renderHtml([first, undefined as never]), "not-a-quantity", "sheet[1]");
    expectRefused(() => renderHtml(undefined as never), "not-a-quantity", "sheet");
  });

  it("carries a nonce, and refuses one that is none", () => {
    expect(renderHtml(worksheet(plan), { nonce: "abc+/123==" })).toContain('<style nonce="abc+/123==">');
    const refused = [
      ['"><script>', "unreadable"],
      ["a b", "unreadable"],
      ["", "missing"],
      [5, "not-a-quantity"],
    ] as const;
    for (const [nonce, code] of refused)
      expectRefused(() => renderHtml(worksheet(plan), { nonce: nonce as never }), code, "options.nonce");
    expect(renderHtml(worksheet(plan), { nonce: null as never })).toContain("<style>");
    expectRefused(
      () => renderHtml(worksheet(plan), { nonse: "abc" } as never),
      "unknown-field",
      "options.nonse",
      "nonce",
    );
    expectRefused(() => renderHtml(worksheet(plan), 5 as never), "not-a-quantity", "options");
  });
});

describe("LaTeX formulas", () => {
  const lines = Object.values(WORKINGS).flat(2);
  const latex = renderLatex(workingSheet({ title: "Everything", lines }));

  it("are set as fractions, roots and rounding brackets, with no sign of division left", () => {
    expect(latex).toContain(
      "\\frac{\\text{amount used}}{\\text{width of the pass} \\times \\text{distance traveled}}",
    );
    expect(latex).toContain("\\sqrt{");
    expect(latex).toContain("\\left\\lceil ");
    expect(latex).toContain("\\pi");
    expect(latex).not.toMatch(/÷|textdiv/);
  });
});
