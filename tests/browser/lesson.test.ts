import { execFileSync } from "node:child_process";
import { cpSync } from "node:fs";
import { basename, join } from "node:path";
import { pathToFileURL } from "node:url";
import {
  type Browser,
  type BrowserContext,
  type BrowserContextOptions,
  type Frame,
  type Page,
  chromium as playwright,
} from "playwright-core";
import { afterAll, afterEach, beforeAll, describe, expect, it } from "vitest";
import {
  type PracticeMistake,
  type PracticeProblem,
  type PracticeTopic,
  practiceSet,
  practiceSheet,
  practiceTopics,
  workedExample,
} from "../../src/practice/index.ts";
import { formatQuantity, type Quantity, type UnitSystem } from "../../src/units/index.ts";
import { SPANISH_PRACTICE_WORDS } from "../../src/words/es-practice.ts";
import { renderHtml } from "../../src/worksheet/index.ts";
import { installInto, root } from "../package/pack.mjs";
import { barriers, pagesOf, scrollsSideways, tooLow } from "./checks.ts";
import { chromium, FLAGS } from "./chromium.mjs";

const example = join(root, "examples/lesson");
// A copy: the command's own test installs the package into the example's folder, maybe at the same time.
const folder = join(root, ".tmp/lesson-page");
const NOT_COPIED = /^(node_modules|dist-page|sheets)$/;
const path = chromium();

const PHONE = { viewport: { width: 375, height: 740 } };
const TWO: readonly PracticeTopic[] = ["strip-calibration", "band"];
const LINK = "#language=en&units=us&problems=&set=7&difficulty=3&topics=strip-calibration%2Cband";

let address = "";
let browser: Browser;
const contexts: BrowserContext[] = [];
/** Everything that a console would show in red, violations of the policy included. */
let complaints: string[] = [];
/** What was asked for beside the page's own files. */
let asked: string[] = [];

/** The page as a teacher or a student opens it: a file, without any server. */
async function open(hash = "", options: BrowserContextOptions = PHONE): Promise<Page> {
  const context = await browser.newContext({ locale: "en-US", ...options });
  contexts.push(context);
  await context.addInitScript(() => {
    document.addEventListener("securitypolicyviolation", (event) =>
      console.error(`refused: ${event.violatedDirective} ${event.blockedURI}`),
    );
    // A browser's dialog for printing can't be seen from here.
    window.print = () => {
      const { top } = window as unknown as { top: { timesPrinted?: number } };
      top.timesPrinted = (top.timesPrinted ?? 0) + 1;
    };
  });
  const page = await context.newPage();
  page.on("console", (message) => {
    if (["error", "warning"].includes(message.type())) complaints.push(message.text());
  });
  page.on("pageerror", (error) => complaints.push(error.message));
  page.on("request", (request) => {
    if (!/^(file|data|about):/.test(request.url())) asked.push(request.url());
  });
  await page.goto(address + hash);
  return page;
}

/** What has the focus: its text, that of its label, or its value for a field without either. */
const focused = (page: Page): Promise<string> =>
  page.evaluate(() => {
    const { activeElement: one } = document;
    const label = one instanceof HTMLInputElement ? one.labels?.[0] : one;
    return (label?.textContent ?? "").trim();
  });

/** Goes on by the Tab key until something of this name has the focus. */
async function tabTo(page: Page, name: string): Promise<void> {
  for (let presses = 0; presses < 80; presses++) {
    await page.keyboard.press("Tab");
    if ((await focused(page)) === name) return;
  }
  throw new Error(`the Tab key never comes to "${name}"`);
}

const textOf = async (page: Page | Frame, selector: string): Promise<string> =>
  ((await page.locator(selector).first().textContent()) ?? "").trim();

/** What is printed, once so many times were. */
async function printed(page: Page, times = 1): Promise<Frame> {
  await expect
    .poll(() => page.evaluate(() => (window as unknown as { timesPrinted?: number }).timesPrinted))
    .toBe(times);
  return page.frames().at(-1) as Frame;
}

const press = (page: Page, name: string): Promise<void> =>
  page.getByRole("button", { name, exact: true }).click();

const fill = (page: Page, label: string, text: string): Promise<void> =>
  page.getByRole("textbox", { name: label, exact: true }).fill(text);

async function showAllSteps(page: Page): Promise<void> {
  const next = page.locator("#round .actions button").first();
  while ((await next.getAttribute("aria-disabled")) === null) await next.click();
}

/** How many pages of paper each of these takes. */
async function pagesOfEach(page: Page, htmls: readonly string[]): Promise<number[]> {
  const paper = await page.context().newPage();
  const counts: number[] = [];
  for (const html of htmls) {
    await paper.setContent(html);
    counts.push(pagesOf(await paper.pdf({ format: "A4" })));
  }
  await paper.close();
  return counts;
}

/** A library's sheets as they are printed, from `<article` on. */
const articles = (html: string): string[] => html.match(/<article[\s\S]*?<\/article>/g) ?? [];

if (path === undefined && !process.env.CI) console.warn("skipped: no Chromium or Chrome found; set CHROMIUM");

describe.skipIf(path === undefined && !process.env.CI)("the page of the lesson", () => {
  beforeAll(async () => {
    if (path === undefined) throw new Error("no Chromium or Chrome found; set CHROMIUM to the path of one");
    cpSync(example, folder, {
      recursive: true,
      preserveTimestamps: true,
      filter: (from) => !NOT_COPIED.test(basename(from)),
    });
    installInto(folder);
    const said = execFileSync(process.execPath, ["main.mjs", "page"], { cwd: folder, encoding: "utf8" });
    const [file = ""] = /\S+index\.html/.exec(said) ?? [];
    address = pathToFileURL(file).href;
    browser = await playwright.launch({ executablePath: path, args: FLAGS });
  });

  afterEach(async () => {
    for (const context of contexts.splice(0)) await context.close();
    const [said, fetched] = [complaints, asked];
    [complaints, asked] = [[], []];
    expect(said).toEqual([]);
    expect(fetched).toEqual([]);
  });

  afterAll(() => browser?.close());

  it("compiles against the packed types", () => {
    const tsc = join(root, "node_modules/typescript/bin/tsc");
    const kept = ["--incremental", "--tsBuildInfoFile", join(root, ".tmp/lesson.tsbuildinfo")];
    execFileSync(process.execPath, [tsc, "-p", folder, ...kept], { encoding: "utf8" });
  });

  it("opens from a file under a strict policy, which bites", async () => {
    const page = await open();
    expect(page.url()).toMatch(/^file:/);
    const policy = await page.locator('meta[http-equiv="Content-Security-Policy"]').getAttribute("content");
    expect(policy).toMatch(/^default-src 'none'; script-src 'self'; style-src 'self' 'sha256-[\w+/]+='; /);
    expect(policy).not.toContain("unsafe");
    const ran = await page.evaluate(() => {
      const script = document.createElement("script");
      script.textContent = "window.ran = true";
      document.body.append(script);
      return "ran" in window;
    });
    expect(ran).toBe(false);
    await page.close();
    // They are about the script that was blocked.
    expect(complaints.length).toBeGreaterThan(0);
    complaints = [];
  });

  it("is used by the keyboard alone: topics, units, a wrong answer and its mistake, steps, the result", async () => {
    const page = await open();
    await tabTo(page, `Topics: ${practiceTopics.length} of ${practiceTopics.length}`);
    await page.keyboard.press("Enter");
    await tabTo(page, "No topics");
    await page.keyboard.press("Enter");
    await tabTo(page, "Output rate from a test strip");
    await page.keyboard.press("Space");
    expect(await textOf(page, "summary")).toBe(`Topics: 1 of ${practiceTopics.length}`);
    await tabTo(page, "Hard: several steps that build on each other");
    await page.keyboard.press("ArrowUp");
    await tabTo(page, "US");
    await page.keyboard.press("ArrowRight");
    expect(await focused(page)).toBe("Metric");
    await tabTo(page, "Problems in a set");
    await page.keyboard.type("2");
    await tabTo(page, "Set number");
    await page.keyboard.press("ControlOrMeta+a");
    await page.keyboard.type("A-7");
    await tabTo(page, "Start");
    await page.keyboard.press("Enter");

    const options = { topics: ["strip-calibration"], problems: 2, units: "metric", difficulty: 2 } as const;
    const { problems } = practiceSet(7, options);
    expect(await focused(page)).toBe("Problem 1 of 2");
    expect(await textOf(page, "#round .part")).toContain(problems[0]?.problem);

    const [first, second] = problems as [PracticeProblem, PracticeProblem];
    const { answer, mistakes } = first;
    const [wrong] = mistakes as [PracticeMistake];
    await tabTo(page, "Your answer");
    await page.keyboard.type(String((wrong.answer as Quantity).value));
    await page.keyboard.press("Enter");
    expect(await page.locator("#verdict").getAttribute("role")).toBe("status");
    expect(await textOf(page, "#verdict p")).toBe("Not right.");
    expect(await page.locator("#verdict dd").allInnerTexts()).toEqual([wrong.what, wrong.see, wrong.mend]);

    // Every step of the worked example, one by one, and then no more.
    const steps = workedExample(first).blocks.length - 1;
    await tabTo(page, "Show the first step");
    for (let shown = 1; shown <= steps; shown++) {
      await page.keyboard.press("Enter");
      expect(await page.locator(".steps .slide").count()).toBe(shown);
    }
    await page.keyboard.press("Enter");
    expect(await page.locator(".steps .slide").count()).toBe(steps);
    expect(await textOf(page, ".steps > p")).toBe("That was the last step.");

    // Right only after help: the first answer counts.
    await page.getByRole("textbox", { name: "Your answer" }).focus();
    await page.keyboard.press("ControlOrMeta+a");
    await page.keyboard.type(String((answer as Quantity).value));
    await page.keyboard.press("Enter");
    expect(await textOf(page, "#verdict")).toBe("Right.");
    await tabTo(page, "Next problem");
    await page.keyboard.press("Enter");
    expect(await focused(page)).toBe("Problem 2 of 2");
    await tabTo(page, "Your answer");
    // With its unit this time.
    await page.keyboard.type(formatQuantity(second.answer as Quantity));
    await page.keyboard.press("Enter");
    expect(await textOf(page, "#verdict")).toBe("Right.");
    await tabTo(page, "Finish");
    await page.keyboard.press("Enter");
    expect(await focused(page)).toBe("You got 1 of 2 right.");
    await tabTo(page, "Next set");
    await page.keyboard.press("Enter");
    expect(await textOf(page, "#round .part")).toContain(practiceSet(8, options).problems[0]?.problem);
    expect(await page.getByRole("textbox", { name: "Set number" }).inputValue()).toBe("8");
  });

  it("explains every wrong answer of every topic, in all units", async () => {
    const page = await open();
    for (const units of ["us", "metric"] as const satisfies readonly UnitSystem[]) {
      await page.getByText(units === "us" ? "US" : "Metric", { exact: true }).click();
      await press(page, "Start");
      for (const { mistakes, topic } of practiceSet(1, { units }).problems) {
        for (const { answer, what } of mistakes.slice(0, 2)) {
          await fill(page, "Your answer", String(typeof answer === "object" ? answer.value : answer));
          await page.keyboard.press("Enter");
          expect(await textOf(page, "#verdict dd"), topic).toBe(what);
        }
        await page.locator("#round .actions button").last().click();
      }
      expect(await textOf(page, "#round h3")).toBe(`You got 0 of ${practiceTopics.length} right.`);
    }
  });

  it("speaks Spanish: the page, the problem, the verdict, what can't be read, and what is printed", async () => {
    const page = await open(LINK);
    await page.getByText("Español").click();
    expect(await page.evaluate(() => document.documentElement.lang)).toBe("es");
    expect(await textOf(page, "h1")).toBe("Problemas de práctica");
    expect(await focused(page)).toBe("Español");
    await press(page, "Empezar");
    const words = { words: SPANISH_PRACTICE_WORDS, locale: "es-US" };
    const { set, problems } = practiceSet(7, { topics: TWO, ...words });
    expect(await textOf(page, "#round .part")).toContain(problems[0]?.problem);
    await fill(page, "Su respuesta", "veinte");
    await press(page, "Revisar");
    expect(await textOf(page, "#answer-fault")).toMatch(/número/);
    expect(await page.getByRole("textbox", { name: "Su respuesta" }).getAttribute("aria-invalid")).toBe(
      "true",
    );
    const [{ answer, what } = { answer: 0, what: "" }] = problems[0]?.mistakes ?? [];
    await fill(page, "Su respuesta", String((answer as { value: number }).value));
    await press(page, "Revisar");
    expect(await textOf(page, "#answer-fault")).toBe("");
    expect(await textOf(page, "#verdict dd")).toBe(what);
    await press(page, "Imprimir hojas");
    const frame = await printed(page);
    expect(await textOf(frame, "h1")).toBe(`Problemas de práctica, serie ${set}`);
    // A browser that speaks Spanish opens the page in it.
    expect(await textOf(await open("", { ...PHONE, locale: "es-MX" }), "h1")).toBe("Problemas de práctica");
  });

  it("prints a sheet and a key for each student, as the library has them, each from a new paper on", async () => {
    const page = await open(LINK);
    await fill(page, "Number of students", "3");
    await fill(page, "Class (optional)", "<b>Evening class</b>");
    await page.getByText("Cards to cut out").click();
    const sets = [7, 8, 9].map((set) => practiceSet(set, { topics: TWO }));
    const others = { cards: true, drawings: true, className: "<b>Evening class</b>", workLines: 6 };
    for (const [button, key] of [
      ["Print sheets", undefined],
      ["Print keys", "short"],
    ] as const) {
      await press(page, button);
      const frame = await printed(page, key === undefined ? 1 : 2);
      const sheets = sets.map(({ set, problems }) =>
        practiceSheet(problems, { ...others, set, ...(key && { key }) }),
      );
      const html = await page.locator("#printed").getAttribute("srcdoc");
      expect(articles(html ?? "")).toEqual(articles(renderHtml(sheets)));
      expect(await frame.locator("article").count()).toBe(3);
      expect(await frame.locator("b").count()).toBe(0);
      // The style came through the policy.
      expect(
        await frame.evaluate(() => getComputedStyle(document.querySelector(".card") as Element).borderStyle),
      ).toBe("dashed");
      expect(await textOf(page, "#progress")).toBe("Ready to print: 3.");
      const [all = 0, ...each] = await pagesOfEach(page, [
        html ?? "",
        ...sheets.map((one) => renderHtml(one)),
      ]);
      expect(each.reduce((sum, one) => sum + one, 0)).toBe(all);
    }
    await page.getByText("With the working").click();
    await press(page, "Print keys");
    expect(await textOf(await printed(page, 3), "article:last-of-type")).toContain("Working");
  });

  it("says how far it is with a large class", async () => {
    const page = await open(LINK);
    await page.evaluate(() => {
      const seen: string[] = [];
      (window as unknown as { seen: string[] }).seen = seen;
      const progress = document.getElementById("progress") as HTMLElement;
      new MutationObserver(() => seen.push(progress.textContent ?? "")).observe(progress, {
        childList: true,
      });
    });
    await fill(page, "Number of students", "30");
    await press(page, "Print sheets");
    const frame = await printed(page);
    const seen = await page.evaluate(() => (window as unknown as { seen: string[] }).seen);
    expect(seen).toEqual([
      ...Array.from({ length: 30 }, (_, i) => `${i + 1} of 30 sets`),
      "Ready to print: 30.",
    ]);
    expect(new Set(await frame.locator("article").allInnerTexts()).size).toBe(30);
  });

  it("keeps what was chosen in the address, so that a link gives a class the same problems", async () => {
    const page = await open();
    await page.locator("summary").click();
    await press(page, "No topics");
    await page.getByLabel("Output rate from a test strip").check();
    await page.getByLabel("Product for bands along rows").check();
    await fill(page, "Set number", "7");
    expect(await page.evaluate(() => location.hash)).toBe(LINK);
    const again = await open(LINK);
    await press(again, "Start");
    expect(await textOf(again, "#round h3")).toBe("Problem 1 of 2");
    // What a link has wrong is as usual.
    const odd = await open("#units=old&difficulty=9&topics=cooking&language=xx&set=7");
    await press(odd, "Start");
    expect(await textOf(odd, "#topics-fault")).not.toBe("");
    await press(odd, "All topics");
    await press(odd, "Start");
    expect(await textOf(odd, "#round .part")).toContain(practiceSet(7).problems[0]?.problem);
  });

  it.each([
    ["Set number", "seven", "set", /number of a set/],
    ["Set number", "B-7", "set", /generation/],
    ["Problems in a set", "61", "problems", /60/],
    ["Problems in a set", "some", "problems", /number/],
  ] as const)("says beside %s what is wrong with %s, and goes there", async (label, text, id, says) => {
    const page = await open(LINK);
    const before = await page.getByRole("textbox", { name: label }).inputValue();
    for (const button of ["Start", "Print sheets"]) {
      await fill(page, label, text);
      await press(page, button);
      expect(await textOf(page, `#${id}-fault`)).toMatch(says);
      expect(await focused(page)).toBe(label);
      expect(await page.locator("#round").textContent()).toBe("");
      expect(await page.locator("#printed").count()).toBe(0);
      await fill(page, label, before);
      await press(page, "Start");
      expect(await textOf(page, `#${id}-fault`)).toBe("");
      await page.evaluate(() => document.getElementById("round")?.replaceChildren());
    }
  });

  it("says what is wrong with topics, students and lines", async () => {
    const page = await open(LINK.replace("strip-calibration%2C", ""));
    await page.getByLabel("Easy: a short formula").check();
    await press(page, "Start");
    expect(await textOf(page, "#topics-fault")).toMatch(/^All of these topics are harder than 1\./);
    expect(await page.locator("#topics").getAttribute("open")).toBe("");
    await page.getByLabel("Hard: several steps").check();
    for (const text of ["0", "101", "1.5", ""]) {
      await fill(page, "Number of students", text);
      await press(page, "Print sheets");
      expect(await textOf(page, "#students-fault")).toBe("Enter a whole number from 1 to 100.");
      expect(await focused(page)).toBe("Number of students");
    }
    await fill(page, "Number of students", "2");
    await fill(page, "Lines to work on under each problem (optional)", "31");
    await press(page, "Print sheets");
    expect(await textOf(page, "#lines-fault")).toMatch(/30/);
    expect(await textOf(page, "#students-fault")).toBe("");
  });

  it.each(["light", "dark"] as const)("has no barrier that axe finds, in %s", async (colorScheme) => {
    const page = await open("", { ...PHONE, colorScheme });
    await page.locator("summary").click();
    expect(await barriers(page, { preload: false })).toEqual([]);
    await press(page, "Start");
    await fill(page, "Your answer", "a lot");
    await press(page, "Check");
    expect(await barriers(page, { preload: false })).toEqual([]);
    await fill(page, "Your answer", "1");
    await press(page, "Check");
    await showAllSteps(page);
    await press(page, "Print keys");
    await printed(page);
    expect(await barriers(page, { preload: false })).toEqual([]);
  });

  it.each([320, 375, 1280])("needs no scrolling sideways at %i px, and gives a thumb room", async (width) => {
    const page = await open("", { viewport: { width, height: 740 } });
    await page.locator("summary").click();
    await press(page, "Start");
    await showAllSteps(page);
    expect(await scrollsSideways(page)).toBe(false);
    expect(await tooLow(page)).toEqual([]);
  });
});
