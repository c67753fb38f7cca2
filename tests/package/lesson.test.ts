import { execFileSync, spawnSync } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { installInto, root } from "./pack.mjs";

// As a teacher runs it: from the packed tarball, with arguments, into a folder of their own.
const example = join(root, "examples/lesson");
const out = mkdtempSync(join(tmpdir(), "lesson-"));

beforeAll(() => installInto(example));

afterAll(() => {
  rmSync(out, { recursive: true, force: true });
});

function lesson(folder: string, ...args: string[]): { printed: string; read: (name: string) => string } {
  const target = join(out, folder);
  const printed = execFileSync(process.execPath, ["main.mjs", ...args, "--out", target], {
    cwd: example,
    encoding: "utf8",
  });
  return { printed, read: (name) => readFileSync(join(target, name), "utf8") };
}

function refused(...args: string[]): { status: number | null; said: string } {
  const { status, stderr } = spawnSync(
    process.execPath,
    ["main.mjs", ...args, "--out", join(out, "refused")],
    { cwd: example, encoding: "utf8" },
  );
  return { status, said: stderr };
}

/** The number that stands before a unit, in English or German writing. */
function amountOf(unit: string, text: string, locale: "en" | "de"): number {
  const [, found = ""] = new RegExp(`([\\d.,]+) ${unit}\\b`).exec(text) ?? [];
  return numbersIn(found, locale)[0] ?? Number.NaN;
}

/** The numbers of a text in English or German writing. */
function numbersIn(text: string, locale: "en" | "de"): number[] {
  const found = text.match(/\d[\d.,]*\d|\d/g) ?? [];
  return found.map((one) =>
    Number(locale === "en" ? one.replaceAll(",", "") : one.replaceAll(".", "").replace(",", ".")),
  );
}

/** The parts of a Markdown sheet, one per problem. */
const parts = (markdown: string): string[] => markdown.split(/^## Problem \d+$/m).slice(1);

const answerOf = (part: string): string => /^### Answer: (.+)$/m.exec(part)?.[1] ?? "";

const wrongAnswers = (part: string): string[] => {
  const [, table = ""] = part.split("### Common wrong answers");
  return [...table.matchAll(/^\| ([\d.,]+)[^|]* \| \S.+ \|$/gm)].map(([, answer = ""]) => answer);
};

describe("the lesson", () => {
  it("writes a sheet and a key under the set's number, as Markdown and HTML, and says where", () => {
    const { printed, read } = lesson("plain");
    const files = ["A-1-key.html", "A-1-key.md", "A-1.html", "A-1.md", "boards.html"];
    expect(readdirSync(join(out, "plain")).sort()).toEqual(files);
    expect(printed).toContain(join(out, "plain"));
    expect(read("A-1.md")).toMatch(/^# Practice problems, set A-1$/m);
    expect(read("A-1-key.md")).toMatch(/^# Practice problems, set A-1: key$/m);
  });

  it("asks one problem of each topic, answered in the key alone", () => {
    const { read } = lesson("all");
    const students = parts(read("A-1.md"));
    const key = parts(read("A-1-key.md"));
    expect(students.length).toBe(28);
    expect(key.length).toBe(28);
    for (const [i, part] of key.entries()) {
      const question = students[i]?.trim() ?? "";
      expect(question).toMatch(/[?.]$/);
      expect(part.trim().startsWith(question)).toBe(true);
      expect(answerOf(part)).toMatch(/^(\d|[A-F]{4}$)/);
      // An order has no working.
      expect(part.includes("### Working")).toBe(!/^[A-G]/.test(answerOf(part)));
      if (/^[A-G]/.test(answerOf(part))) continue;
      expect(wrongAnswers(part).length).toBeGreaterThan(1);
      expect(wrongAnswers(part)).not.toContain(numberOf(answerOf(part)));
    }
    expect(read("A-1.md")).not.toMatch(/Working|# Answer|[Ww]rong answer/);
    expect(read("A-1.html")).not.toMatch(/Working|# Answer|[Ww]rong answer/);
  });

  it("gives answers that the problems' own numbers lead to", () => {
    // By definition: 128 fl oz to a gallon, 43,560 sq ft to an acre, 12 in to a foot (NIST Handbook 44 (2024), Appendix C).
    const { read } = lesson("strips", "strip-calibration", "--problems", "6", "--set", "41");
    const problems = parts(read("A-41-key.md"));
    expect(problems.length).toBe(6);
    expect(new Set(problems.map((part) => part.trim().split("\n")[0])).size).toBe(6);
    for (const part of problems) {
      const question = part.trim().split("\n")[0] ?? "";
      const distance = amountOf("ft", question, "en");
      const width = amountOf("in", question, "en");
      const rate = amountOf("fl oz", question, "en") / 128 / ((distance * (width / 12)) / 43_560);
      expect(numbersIn(answerOf(part), "en")[0]).toBeCloseTo(rate, 1);
      expect(answerOf(part)).toMatch(/gal\/ac$/);
    }
  });

  it("sets them in the units, the language and the decimal signs that were asked for", () => {
    const args = ["strip-calibration", "--problems", "6", "--units", "metric", "--locale", "de-DE"];
    const { read } = lesson("metric", ...args);
    for (const part of parts(read("A-1-key.md"))) {
      const question = part.trim().split("\n")[0] ?? "";
      const distance = amountOf("m", question, "de");
      const width = amountOf("cm", question, "de");
      const rate = amountOf("mL", question, "de") / 1000 / ((distance * (width / 100)) / 10_000);
      expect(numbersIn(answerOf(part), "de")[0]).toBeCloseTo(rate, 1);
    }
    const spanish = lesson("spanish", "band", "--language", "es", "--class", "Grupo 2").read("A-1.md");
    expect(spanish).toMatch(/^# Problemas de práctica, serie A-1$/m);
    expect(spanish).toContain("Grupo 2");
  });

  it("writes another set for each student of a class, and says how far it is", () => {
    const { printed, read } = lesson(
      "class",
      "percent-mix",
      "--problems",
      "4",
      "--students",
      "20",
      "--set",
      "5",
    );
    // Four files a set, two pages with those of everyone, and the slides.
    expect(readdirSync(join(out, "class")).length).toBe(83);
    // What is worked out on the board is no student's problem.
    const [, onBoard = ""] = /<p[^>]*>([^<]{60,})<\/p>/.exec(read("boards.html")) ?? [];
    expect(onBoard).toContain("?");
    expect(read("sheets.html")).not.toContain(onBoard);
    for (const [name, title] of [
      ["sheets", "set A-"],
      ["keys", "key"],
    ] as const) {
      const page = read(`${name}.html`);
      expect(page.match(/<article /g)?.length).toBe(20);
      expect(page.match(/<h1>[^<]*<\/h1>/g)?.every((heading) => heading.includes(title))).toBe(true);
    }
    expect(printed).toMatch(/^10 of 20 sets$\n^20 of 20 sets$/m);
    const sheets = Array.from({ length: 20 }, (_, i) =>
      read(`A-${5 + i}.md`)
        .split("\n")
        .slice(1)
        .join(),
    );
    expect(new Set(sheets).size).toBe(20);
  });

  it("gives the same sheet from the same number, and another from another", () => {
    const [first, again, other] = ["7", "7", "8"].map((set, i) =>
      lesson(`set-${i}`, "band", "--set", set).read(`A-${set}-key.html`),
    );
    expect(again).toBe(first);
    expect(other).not.toBe(first);
  });

  it("prints as a page that needs nothing else, a heading to each problem", () => {
    const { read } = lesson("page", "band", "tank-loads", "--problems", "4", "--lines", "3");
    for (const name of ["A-1.html", "A-1-key.html"]) {
      const page = read(name);
      expect(page.startsWith("<!doctype html>")).toBe(true);
      expect(page.match(/<h2>Problem \d<\/h2>/g)).toEqual([1, 2, 3, 4].map((n) => `<h2>Problem ${n}</h2>`));
      expect(page).not.toMatch(/<script|<img|<link|https?:/);
      expect(page).toContain("@media print");
    }
  });

  it.each([
    [
      ["bands"],
      /^options\.topics\[0\]: There is no choice "bands"\. Did you mean band\? Choose one of: rectangle-area, /,
    ],
    [["--problems", "0"], /^--problems: Enter a whole number from 1 to 60, not 0\.$/],
    [["--students", "1.5"], /^--students: Enter a whole number from 1 to 100, not 1\.5\.$/],
    [["--set", "x"], /^--set: Enter a whole number from 1 to 99900, not x\.$/],
    [["--language", "fr"], /^--language: Choose en or es, not fr\.$/],
    [["--key", "full"], /^options\.key: There is no choice "full"\. .*short, long\.$/],
    [["--units", "old"], /^options\.units: There is no choice "old"\. Choose/],
    [["--locale", "e_n"], /^options\.locale: The language "e_n" isn't known/],
    [["--colour", "red"], /^Unknown option '--colour'/],
  ])("tells in one line what is wrong with %j, and writes nothing", (args, wanted) => {
    const { status, said } = refused(...args);
    expect(status).toBe(1);
    expect(said.trim()).toMatch(wanted);
    expect(said.trim().split("\n").length).toBe(1);
    expect(readdirSync(out)).not.toContain("refused");
  });
});

function numberOf(answer: string): string {
  return answer.split(" ")[0] ?? "";
}
