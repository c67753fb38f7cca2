import { readFileSync } from "node:fs";
import { createServer, type Server } from "node:http";
import { createRequire } from "node:module";
import type { AddressInfo } from "node:net";
import { type Browser, type Page, chromium as playwright } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { planApplication } from "../../src/plan/index.ts";
import {
  type PracticeProblem,
  practiceProblem,
  practiceSheet,
  practiceTopics,
  problemFrom,
  workedExample,
} from "../../src/practice/index.ts";
import { qty } from "../../src/units/index.ts";
import { SPANISH_WORDS } from "../../src/words/es.ts";
import { SPANISH_PRACTICE_WORDS } from "../../src/words/es-practice.ts";
import {
  fieldCard,
  type PrintableSheet,
  renderHtml,
  SHEET_STYLE_HASH,
  workingSheet,
  worksheet,
} from "../../src/worksheet/index.ts";
import { plain } from "../../src/worksheet/render/plain.ts";
import { GERMAN } from "../helpers/german.ts";
import { DOUBTFUL, HOSTILE_NAMES, planNamed, TWO_PRODUCTS } from "../helpers/jobs.ts";
import { WORKINGS } from "../helpers/workings.ts";
import { pagesOf } from "./checks.ts";
import { chromium, FLAGS } from "./chromium.mjs";
import { picture } from "./picture.ts";

const path = chromium();
const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

const plan = planApplication(TWO_PRODUCTS);
const problems = practiceTopics.map((topic) => practiceProblem(topic, 1));
// Their units are the longest words that stand at a drawing.
const inSpanish = practiceTopics.map((topic) =>
  practiceProblem(topic, 1, { words: SPANISH_PRACTICE_WORDS, locale: "es-US" }),
);
const lesson = (["rectangle-area", "strip-calibration", "band"] as const).map((topic) =>
  practiceProblem(topic, 1),
);
const STRIP = { used: qty(64, "fl_oz"), swath: qty(36, "in"), distance: qty(363, "ft") };
const SHEETS: Record<string, PrintableSheet | readonly PrintableSheet[]> = {
  worksheet: worksheet(plan),
  "worksheet-metric": worksheet(plan, { units: "metric", locale: "de-DE", words: GERMAN }),
  "worksheet-spanish": worksheet(planApplication(DOUBTFUL), { locale: "es-US", words: SPANISH_WORDS }),
  "card-spanish": fieldCard(plan, { locale: "es-US", words: SPANISH_WORDS }),
  "worksheet-doubtful": worksheet(planApplication(DOUBTFUL)),
  "worksheet-long": worksheet(planNamed([`Product ${"x".repeat(150)}`, "Product B"])),
  card: fieldCard(plan),
  "card-doubtful": fieldCard(planApplication(DOUBTFUL)),
  "card-long": fieldCard(planNamed([`Product ${"x".repeat(150)}`, "Product B"])),
  working: workingSheet({ title: "Everything", lines: Object.values(WORKINGS).flat(2) }),
  practice: practiceSheet(problems, { key: "long" }),
  "practice-short": practiceSheet(problems, { key: "short", set: "A-1" }),
  pupils: practiceSheet(problems.slice(0, 10), { className: "Evening class" }),
  "pupils-drawn-spanish": practiceSheet(inSpanish, {
    drawings: true,
    words: SPANISH_PRACTICE_WORDS,
    locale: "es-US",
  }),
  "pupils-drawn": practiceSheet(problems, { drawings: true, workLines: 5 }),
  board: workedExample(problems.at(-1) as PracticeProblem),
  cards: practiceSheet(problems, { cards: true, drawings: true }),
  lesson: practiceSheet(lesson, { set: "A-1", className: "Evening class", workLines: 3, drawings: true }),
  "lesson-key": practiceSheet(lesson, { set: "A-1", key: "long" }),
  example: workedExample(problemFrom("strip-calibration", STRIP)),
  class: [1, 2, 3].map((set) => practiceSheet(problems.slice(0, 3), { set: `A-${set}` })),
};
for (const [i, name] of HOSTILE_NAMES.entries()) {
  SHEETS[`hostile-${i}`] = worksheet(planNamed([name, "Product B"]));
}
const POLICIES: Record<string, string | undefined> = {
  hash: `default-src 'none'; style-src ${SHEET_STYLE_HASH}`,
  nonce: "default-src 'none'; style-src 'nonce-dGVzdA=='",
  none: undefined,
};

/** Each sheet under each policy, at `/policy/sheet`. */
function serve(): Promise<Server> {
  const server = createServer((request, response) => {
    const [, policy = "", name = ""] = (request.url ?? "").split("/");
    const sheet = SHEETS[name];
    if (sheet === undefined) {
      response.writeHead(204).end();
      return;
    }
    const rule = POLICIES[policy];
    if (rule !== undefined) response.setHeader("content-security-policy", rule);
    response.setHeader("content-type", "text/html; charset=utf-8");
    response.end(renderHtml(sheet, policy === "nonce" ? { nonce: "dGVzdA==" } : {}));
  });
  return new Promise((resolve) => server.listen(0, "127.0.0.1", () => resolve(server)));
}

if (path === undefined && !process.env.CI) {
  console.log("skipped: no Chromium or Chrome found; set CHROMIUM to the path of one");
}

describe.skipIf(path === undefined && !process.env.CI)("a sheet in a browser", () => {
  let server: Server;
  let browser: Browser;
  let page: Page;
  let complaints: string[] = [];

  beforeAll(async () => {
    if (path === undefined)
      throw new Error("CI has no browser; tests/browser/chromium.mjs could not install one");
    server = await serve();
    browser = await playwright.launch({ executablePath: path, args: FLAGS });
    page = await browser.newPage({ viewport: { width: 375, height: 740 } });
    page.on("console", (message) => complaints.push(message.text()));
    page.on("pageerror", (error) => complaints.push(error.message));
    page.on("dialog", (dialog) => {
      complaints.push(`dialog: ${dialog.message()}`);
      void dialog.dismiss();
    });
    page.on("request", (request) => {
      if (!request.isNavigationRequest() && !request.url().endsWith("/favicon.ico"))
        complaints.push(request.url());
    });
  });

  afterAll(async () => {
    await browser?.close();
    server?.close();
  });

  /** The one page, shown another sheet: sheets keep nothing, and a new page takes longer than a test. */
  async function open(policy: string, name: string): Promise<Page> {
    await page.goto("about:blank");
    complaints = [];
    await page.goto(`http://127.0.0.1:${(server.address() as AddressInfo).port}/${policy}/${name}`);
    return page;
  }

  /** The page's own width and the window's: the same where nothing has to be scrolled to the side. */
  async function widths(): Promise<[page: number, window: number]> {
    return page.evaluate(() => [document.documentElement.scrollWidth, document.documentElement.clientWidth]);
  }

  it.each(Object.keys(SHEETS).filter((name) => !name.startsWith("hostile")))(
    "%s fits a phone of 375 px, asks for nothing, and gives an accessibility checker nothing to object to",
    async (name) => {
      await open("none", name);
      expect(await widths()).toEqual([375, 375]);
      expect(complaints).toEqual([]);
      await page.evaluate(axe);
      const { violations, passes } = await page.evaluate(async () => {
        type Found = { id: string; nodes: { html: string }[] };
        const { axe: loaded } = globalThis as unknown as {
          axe: { run(): Promise<{ violations: Found[]; passes: Found[] }> };
        };
        const found = await loaded.run();
        const told = (list: Found[]) => list.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`);
        return { violations: told(found.violations), passes: told(found.passes) };
      });
      expect(violations).toEqual([]);
      expect(passes.length).toBeGreaterThan(10);
    },
  );

  it.each(["hash", "nonce"])("keeps its style under a strict policy, let through by %s", async (policy) => {
    await open(policy, "card");
    const style = await page.evaluate(() => {
      const main = getComputedStyle(document.querySelector("article") as Element);
      return {
        width: main.maxWidth,
        list: getComputedStyle(document.querySelector(".boxes") as Element).listStyleType,
      };
    });
    expect(style).toEqual({ width: "736px", list: "none" });
    expect(complaints).toEqual([]);
  });

  it("loses its style, and no more, under a policy that lets none through", async () => {
    POLICIES.wrong = "default-src 'none'; style-src 'sha256-AAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAA='";
    await open("wrong", "card");
    expect(complaints.join(" ")).toMatch(/Content.Security.Policy/i);
    expect(await page.locator("h1").textContent()).toBe("Field card");
  });

  it.each(HOSTILE_NAMES.map((name, i) => [i, name] as const))(
    "shows hostile name %i as text: %j",
    async (i, name) => {
      await open("none", `hostile-${i}`);
      expect(await page.locator("script, img, link, iframe, object, a").count()).toBe(0);
      expect(await page.locator("style").count()).toBe(1);
      const cell = page.locator("table.table").first().locator("tbody th").last();
      expect((await cell.textContent())?.trim()).toBe(plain(name).trim());
      expect(await widths()).toEqual([375, 375]);
      expect(complaints).toEqual([]);
    },
  );

  it("has headings in order and tables whose cells are named, as a screen reader is told", async () => {
    await open("none", "worksheet");
    expect(await page.getByRole("heading", { level: 1 }).allInnerTexts()).toEqual(["Spray job worksheet"]);
    expect(await page.getByRole("heading", { level: 2 }).allInnerTexts()).toContain("Working");
    const load = page.getByRole("table", { name: "Load 1 of 2" });
    expect(await load.getByRole("columnheader").allInnerTexts()).toEqual(["Product", "Amount", "Measure"]);
    expect(await load.getByRole("rowheader").allInnerTexts()).toEqual(["Product B", "Product A"]);
    expect(await load.getByRole("cell").first().textContent()).toBe("1.08 oz wt");
    expect(await page.getByRole("table", { name: "The job" }).getByRole("rowheader").count()).toBe(6);
  });

  it("has boxes that are ticked by their text, with no script", async () => {
    await open("hash", "card");
    const box = page.getByRole("checkbox", { name: /Product A: 2\.17 fl oz/ });
    await page.getByText("Product A: 2.17 fl oz").click();
    expect(await box.isChecked()).toBe(true);
    expect(await page.getByRole("checkbox").count()).toBe(15);
  });

  it.each([
    ["worksheet", "Letter"],
    ["worksheet", "A4"],
    ["worksheet-metric", "A4"],
    ["card", "Letter"],
    ["card", "A4"],
    ["pupils", "A4"],
  ] as const)("prints %s on one sheet of %s", async (name, format) => {
    await open("hash", name);
    expect(pagesOf(await page.pdf({ format }))).toBe(1);
  });

  it("draws plots to scale, named, with their lengths", async () => {
    await open("hash", "pupils-drawn");
    const drawings = page.getByRole("img", { name: "Drawn to scale" });
    expect(await drawings.count()).toBe(8);
    const { wide, high, texts } = await drawings.first().evaluate((svg) => {
      const shape = (svg.querySelector("polygon") as SVGPolygonElement).getBoundingClientRect();
      return {
        wide: shape.width,
        high: shape.height,
        texts: [...svg.querySelectorAll("text")].map(({ textContent }) =>
          Number.parseFloat(textContent ?? ""),
        ),
      };
    });
    const [long = 0, short = 0] = texts;
    expect(wide / high).toBeCloseTo(long / short, 1);
  });

  it.each(["pupils-drawn", "pupils-drawn-spanish"])(
    "cuts no label of %s off, and draws into none",
    async (name) => {
      await open("hash", name);
      const cut = await page.evaluate(() =>
        [...document.querySelectorAll("svg")].flatMap((svg) => {
          const box = svg.getBoundingClientRect();
          return [...svg.querySelectorAll("text")]
            .filter((text) => {
              const { left, right, top, bottom } = text.getBoundingClientRect();
              const meets = [...svg.querySelectorAll("polygon")].some((shape) => {
                const drawn = shape.getBoundingClientRect();
                return left < drawn.right && right > drawn.left && top < drawn.bottom && bottom > drawn.top;
              });
              return meets || left < box.left || right > box.right || top < box.top || bottom > box.bottom;
            })
            .map(({ textContent }) => textContent);
        }),
      );
      expect(cut).toEqual([]);
    },
  );

  it("shows a worked example one slide a screen, and prints one slide a page", async () => {
    await open("hash", "board");
    const slides = page.locator(".slide");
    const count = await slides.count();
    expect(count).toBeGreaterThan(10);
    const { height, font } = await slides.first().evaluate((slide) => ({
      height: slide.getBoundingClientRect().height / window.innerHeight,
      font: Number.parseFloat(getComputedStyle(slide).fontSize),
    }));
    expect(height).toBeGreaterThan(0.9);
    expect(font).toBeGreaterThanOrEqual(28);
    expect(pagesOf(await page.pdf({ format: "A4", landscape: true }))).toBe(count);
  });

  it.each([
    ["worksheet", "worksheet", 700, 900],
    ["lesson", "practice-sheet", 700, 900],
    ["lesson-key", "key", 700, 900],
    ["example", "board", 960, 540],
  ] as const)("has a picture of %s in the gallery", async (name, file, width, height) => {
    const viewport = page.viewportSize();
    await open("hash", name);
    if (file === "board") await page.locator(".slide").nth(2).scrollIntoViewIfNeeded();
    await picture(page, file, width, height);
    if (viewport) await page.setViewportSize(viewport);
  });

  it("breaks no problem over two pages", async () => {
    for (const name of ["pupils-drawn", "cards"]) {
      await open("hash", name);
      await page.emulateMedia({ media: "print" });
      const kept = await page.evaluate(() =>
        [...document.querySelectorAll(".part, .card")].map((part) => getComputedStyle(part).breakInside),
      );
      await page.emulateMedia({ media: null });
      expect(kept.length).toBe(problems.length);
      expect(new Set(kept)).toEqual(new Set(["avoid"]));
    }
  });

  it("prints each sheet of a class on a page of its own", async () => {
    await open("hash", "class");
    expect(pagesOf(await page.pdf({ format: "A4" }))).toBe(3);
  });

  it("prints a long job on as many sheets as it takes", async () => {
    await open("hash", "working");
    expect(pagesOf(await page.pdf({ format: "A4" }))).toBeGreaterThan(1);
  });
});
