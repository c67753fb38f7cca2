import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { type Browser, type Page, chromium as playwright } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { chromium, FLAGS } from "../browser/chromium.mjs";
import { type FolderServer, serve } from "../browser/serve.ts";
import { root } from "../package/pack.mjs";

// The site as `npm run docs` has built it, as a person sees it: on a phone, under its own policy.
const path = chromium();
const site = join(root, "docs/api");

if (path === undefined && !process.env.CI) console.warn("skipped: no Chromium or Chrome found; set CHROMIUM");

/** All pages in the long run; in `npm test` one in so many of each folder. */
const EVERY = process.env.PROPERTY_RUNS === undefined ? 40 : 1;

describe.skipIf(path === undefined && !process.env.CI)("the site", () => {
  let server: FolderServer;
  let browser: Browser;
  let page: Page;
  const complaints = new Set<string>();

  beforeAll(async () => {
    if (path === undefined) throw new Error("CI has no browser");
    server = await serve(site);
    browser = await playwright.launch({ executablePath: path, args: FLAGS });
    page = await browser.newPage({ viewport: { width: 390, height: 844 } });
    page.on("pageerror", (error) => complaints.add(String(error)));
    page.on("console", (message) => {
      // What the policy refuses is said here.
      if (message.type() === "error" && !/favicon/.test(message.location().url))
        complaints.add(`${page.url()}: ${message.text()}`);
    });
  });

  afterAll(async () => {
    await browser?.close();
    server?.close();
  });

  const open = (name: string) => page.goto(`${server.address}/${name}`);

  function pagesIn(folder: string, every = EVERY): string[] {
    const names = readdirSync(join(site, folder)).filter((name) => name.endsWith(".html"));
    return names.filter((_, i) => i % every === 0).map((name) => join(folder, name));
  }

  const sample = [
    "index.html",
    ...["modules", "documents"].flatMap((folder) => pagesIn(folder, Math.min(EVERY, 4))),
    ...["classes", "functions", "interfaces", "types", "variables", "source/area"].flatMap((folder) =>
      pagesIn(folder),
    ),
    // The widest kinds of content: the root's long list, signatures, tables.
    "modules/swath-to-spoon.html",
  ];

  it("has no page that is wider than a phone, and none that its policy stops", async () => {
    for (const name of sample) {
      await open(name);
      expect(await page.evaluate(() => document.scrollingElement?.scrollWidth), name).toBeLessThanOrEqual(
        390,
      );
    }
    expect([...complaints]).toEqual([]);
  });

  it("allows scripts from itself alone on every page", () => {
    const all = readdirSync(site, { recursive: true, encoding: "utf8" }).filter((one) =>
      one.endsWith(".html"),
    );
    for (const name of all) {
      const html = readFileSync(join(site, name), "utf8");
      expect(html, name).toMatch(
        /<meta http-equiv="Content-Security-Policy" content="default-src 'none'; script-src 'self';/,
      );
      expect(html.replace(/<pre>[\s\S]*?<\/pre>/g, ""), name).not.toMatch(
        /<script>|<[^>]* style="|<[^>]* on\w+="/,
      );
    }
  });

  const output = () => page.locator(".try-it output");
  async function run(call?: string): Promise<string> {
    if (call !== undefined) await page.fill(".try-it textarea", call);
    await page.evaluate(() => {
      (document.querySelector(".try-it output") as HTMLOutputElement).value = "";
    });
    await page.click(".try-it button");
    await expect.poll(() => output().textContent()).not.toBe("");
    return (await output().textContent()) ?? "";
  }

  it("runs the example of a function, with what the reader changes in it", async () => {
    await open("functions/swath-to-spoon_area.rectangleArea.html");
    expect(await page.inputValue(".try-it textarea")).toBe(
      'rectangleArea({ length: qty(80, "ft"), width: qty(60, "ft") })',
    );
    // 80 ft by 60 ft: 4800 sq ft.
    expect(JSON.parse(await run())).toEqual({ value: 4800, unit: "ft2", of: "ground" });
    expect(
      JSON.parse(await run("rectangleArea({ length: {value: 10, unit: 'ft'}, width: qty(1_0, \"ft\"), })")),
    ).toEqual({
      value: 100,
      unit: "ft2",
      of: "ground",
    });
    expect(await run('rectangleArea({ length: qty(-80, "ft") })')).toBe(
      "length: Must be more than 0.\nwidth: Enter a length, such as 5 ft.",
    );
  });

  it.each([
    ["rectangleArea({ length: ", "Something is missing at the end."],
    ["rectangleArea(=> 1)", "Can't read on from here: => 1)"],
    ["alert(1)", "There is no alert here."],
    ["constructor(1)", "There is no constructor here."],
  ])("says what it can't read: %s", async (call, answer) => {
    await open("functions/swath-to-spoon_area.rectangleArea.html");
    expect(await run(call)).toBe(answer);
  });

  it("has on a function's page a call that the library answers", async () => {
    for (const name of pagesIn("functions")) {
      await open(name);
      const answer = await run();
      expect(answer, name).not.toMatch(/^(?:Can't read on|There is no \w+ here|Something is missing)/);
    }
    expect([...complaints]).toEqual([]);
  });

  // What a person types, and what must be among the first answers.
  it.each([
    ["teaspoon", "household.measureOut"],
    ["calibrate", "output-rate.catchRate"],
    ["how many tanks", "tank-mix.splitLoads"],
    ["granules", "tank-mix.granulesFor"],
    ["boquilla", "words/es"],
    ["calibracion", "Words and languages"],
    ["cucharadita", "words/es"],
  ])("finds %s", async (words, found) => {
    await open("index.html");
    await page.click("#tsd-search-trigger");
    await page.fill("#tsd-search-input", words);
    await expect.poll(() => page.locator("#tsd-search-results").textContent()).toContain(found);
  });

  it("opens each module with what it answers, and lists its functions first", async () => {
    for (const name of pagesIn("modules", 1)) {
      const html = readFileSync(join(site, name), "utf8");
      expect(html, name).toMatch(/<table>[\s\S]*?Question/);
      const groups = [...html.matchAll(/<summary[^>]*>[\s\S]*?<h2>([A-Z][\w ]+)<\/h2>/g)].map(
        ([, group]) => group,
      );
      if (groups.includes("Functions")) expect(groups[0], name).toBe("Functions");
    }
  });
});
