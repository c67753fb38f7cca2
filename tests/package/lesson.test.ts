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

const answerOf = (part: string): string => /\| Answer \| (.+) \|/.exec(part)?.[1] ?? "";

const wrongAnswers = (part: string): string[] => {
  const [, table = ""] = part.split("### Common wrong answers");
  return [...table.matchAll(/^\| ([\d.,]+)[^|]* \| \S.+ \|$/gm)].map(([, answer = ""]) => answer);
};

describe("the lesson", () => {
  it("writes a pupils' sheet and a teacher's key, as Markdown and HTML, and says where", () => {
    const { printed } = lesson("plain");
    const files = ["pupils.html", "pupils.md", "teacher.html", "teacher.md"];
    expect(readdirSync(join(out, "plain")).sort()).toEqual(files);
    for (const name of files) expect(printed).toContain(join(out, "plain", name));
  });

  it("asks one problem of each topic, answered in the key alone", () => {
    const { read } = lesson("all");
    const pupils = parts(read("pupils.md"));
    const teacher = parts(read("teacher.md"));
    expect(pupils.length).toBe(12);
    expect(teacher.length).toBe(12);
    for (const [i, part] of teacher.entries()) {
      const question = pupils[i]?.trim() ?? "";
      expect(question).toMatch(/\?$/);
      expect(part.trim().startsWith(question)).toBe(true);
      expect(answerOf(part)).toMatch(/^\d/);
      expect(part).toContain("### Working");
      expect(wrongAnswers(part).length).toBeGreaterThan(1);
      expect(wrongAnswers(part)).not.toContain(numberOf(answerOf(part)));
    }
    expect(read("pupils.md")).not.toMatch(/Answer|Working|wrong/);
    expect(read("pupils.html")).not.toMatch(/Answer|Working|wrong/);
  });

  it("gives answers that the problems' own numbers lead to", () => {
    // By definition: 128 fl oz to a gallon, 43,560 sq ft to an acre, 12 in to a foot (NIST Handbook 44 (2024), Appendix C).
    const { read } = lesson("strips", "strip-calibration", "--problems", "6", "--seed", "41");
    const problems = parts(read("teacher.md"));
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

  it("sets them in the units and with the decimal signs that were asked for", () => {
    const args = ["strip-calibration", "--problems", "6", "--units", "metric", "--locale", "de-DE"];
    const { read } = lesson("metric", ...args);
    for (const part of parts(read("teacher.md"))) {
      const question = part.trim().split("\n")[0] ?? "";
      const distance = amountOf("m", question, "de");
      const width = amountOf("cm", question, "de");
      const rate = amountOf("mL", question, "de") / 1000 / ((distance * (width / 100)) / 10_000);
      expect(numbersIn(answerOf(part), "de")[0]).toBeCloseTo(rate, 1);
    }
  });

  it("gives the same sheet from the same seed, and another from another", () => {
    const [first, again, other] = ["7", "7", "8"].map((seed, i) =>
      lesson(`seed-${i}`, "--seed", seed).read("teacher.html"),
    );
    expect(again).toBe(first);
    expect(other).not.toBe(first);
  });

  it("prints as a page that needs nothing else, a heading to each problem", () => {
    const { read } = lesson("page", "band", "tank-loads", "--problems", "4");
    for (const name of ["pupils.html", "teacher.html"]) {
      const page = read(name);
      expect(page.startsWith("<!doctype html>")).toBe(true);
      expect(page.match(/<h2>Problem \d<\/h2>/g)).toEqual([1, 2, 3, 4].map((n) => `<h2>Problem ${n}</h2>`));
      expect(page).not.toMatch(/<script|<img|<link|https?:/);
      expect(page).toContain("@media print");
    }
  });

  it.each([
    [["bands"], /^topic: There is no choice "bands"\. Did you mean band\? Choose one of: rectangle-area, /],
    [["--problems", "0"], /^--problems: Enter a whole number from 1 to 100, not 0\.$/],
    [["--problems", "1.5"], /^--problems: Enter a whole number from 1 to 100, not 1\.5\.$/],
    [["--seed", "x"], /^--seed: Enter a whole number from 0 to 2000000000, not x\.$/],
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
