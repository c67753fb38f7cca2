import { type ChildProcess, execFileSync, spawn } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import {
  type Browser,
  type BrowserContext,
  type BrowserContextOptions,
  type Locator,
  type Page,
  chromium as playwright,
} from "playwright-core";
import { afterAll, afterEach, beforeAll, describe, expect, it } from "vitest";
import { geodesicArea } from "../../src/area/geodesic.ts";
import { type Issue, isSprayMathError } from "../../src/errors.ts";
import type { BatchInput } from "../../src/plan/batch-input.ts";
import type { PlanInput } from "../../src/plan/input.ts";
import { loadChoices } from "../../src/plan/load-choices.ts";
import { planApplication } from "../../src/plan/plan.ts";
import { reconcile } from "../../src/plan/reconcile.ts";
import { reconcileSpreading } from "../../src/plan/reconcile-spreading.ts";
import { seasonSoFar } from "../../src/plan/season.ts";
import { planSpreading } from "../../src/plan/spreading.ts";
import type { SpreadingInput } from "../../src/plan/spreading-input.ts";
import { valueIn } from "../../src/units/convert.ts";
import { formatQuantity } from "../../src/units/format.ts";
import { parseQuantity } from "../../src/units/parse.ts";
import { qty, sum as sumQuantities } from "../../src/units/quantity.ts";
import type { VolumeRate } from "../../src/units/types.ts";
import { SPANISH_WORDS } from "../../src/words/es.ts";
import { fieldCard } from "../../src/worksheet/field-card.ts";
import type { WrittenLine } from "../../src/worksheet/lines/written-line.ts";
import { issueText } from "../../src/worksheet/phrases.ts";
import { spreadingCard } from "../../src/worksheet/spreading-card.ts";
import { spreadingSheet } from "../../src/worksheet/spreading-sheet.ts";
import { worksheet } from "../../src/worksheet/worksheet.ts";
import { installInto, root } from "../package/pack.mjs";
import { barriers, pagesOf, scrollsSideways, tooLow } from "./checks.ts";
import { chromium, FLAGS } from "./chromium.mjs";
import { picture } from "./picture.ts";

const folder = join(root, "examples/calculator");
const path = chromium();

const PHONE = { viewport: { width: 390, height: 844 } };

/** The job that is typed into the page, as a program gives it: an invented plot and invented products. */
const JOB: PlanInput = {
  plot: {
    kind: "row-bands",
    name: "Job 1",
    rows: 14,
    rowLength: qty(160, "ft"),
    bandWidth: qty(30, "in"),
    rowSpacing: qty(5, "ft"),
  },
  calibration: { kind: "strip", used: qty(34, "fl_oz"), swath: qty(30, "in"), distance: qty(120, "ft") },
  sprayer: { tank: qty(4, "gal"), workingFill: qty(3.5, "gal"), lineVolume: qty(10, "fl_oz") },
  reserve: { percent: 5 },
  products: [
    { name: "Product A", form: "liquid", rate: qty(1.5, "pt/ac") },
    { name: "Product B", form: "liquid", rate: { value: 0.25, unit: "%", basis: "v/v" } },
  ],
  tools: "us-cups-and-spoons",
};

let server: ChildProcess;
let browser: Browser;
let address = "";
/** What the build said before it said where the page is. */
let said = "";
const contexts: BrowserContext[] = [];
/** Everything that a console would show in red, violations of the policy included. */
let complaints: string[] = [];

async function open(
  options: BrowserContextOptions = PHONE,
  prepare?: () => void,
  at = address,
): Promise<Page> {
  const context = await browser.newContext({ locale: "en-US", ...options });
  contexts.push(context);
  if (prepare) await context.addInitScript(prepare);
  await context.addInitScript(() => {
    document.addEventListener("securitypolicyviolation", (event) =>
      console.error(`refused: ${event.violatedDirective} ${event.blockedURI}`),
    );
  });
  const page = await context.newPage();
  page.on("console", (message) => {
    if (["error", "warning"].includes(message.type())) complaints.push(message.text());
  });
  page.on("pageerror", (error) => complaints.push(error.message));
  page.on("response", (response) => {
    if (response.status() >= 400) complaints.push(`${response.status()} ${response.url()}`);
  });
  await page.goto(at);
  return page;
}

function field(page: Page, path: string): Locator {
  return page.locator(`[data-place="${path}"]`);
}

/** Opens the part of the form that a field is in. */
async function reveal(at: Locator): Promise<void> {
  await at.evaluate((element) => {
    for (let part = element.closest("details"); part; part = part.parentElement?.closest("details") ?? null)
      part.open = true;
  });
}

/** Types an amount, and picks its unit where there is a choice. */
async function type(page: Page, path: string, text: string, unit?: string): Promise<void> {
  const input = field(page, path);
  await reveal(input);
  if ((await input.evaluate(({ tagName }) => tagName)) === "SELECT") await input.selectOption(text);
  else await input.fill(text);
  if (unit !== undefined) await page.locator(`[data-place="${path}"] + select`).selectOption(unit);
}

/** Chooses one of several at a question. */
async function choose(page: Page, path: string, value: string): Promise<void> {
  const choice = page.locator(`input[name="${path}"][value="${value}"]`);
  await reveal(choice);
  await choice.check();
}

async function startJob(page: Page, name: string): Promise<void> {
  await page.locator("[data-step=job]").evaluate((part) => part.setAttribute("open", ""));
  await page.getByRole("button", { name, exact: true }).click();
}

type Typed = readonly (readonly [path: string, text: string, unit?: string])[];

async function typeAll(page: Page, typed: Typed): Promise<void> {
  for (const [path, text, unit] of typed) await type(page, path, text, unit);
}

const TYPED: Typed = [
  ["plot.rows", "14"],
  ["plot.rowLength", "160"],
  ["plot.bandWidth", "30"],
  ["plot.rowSpacing", "5", "ft"],
  ["calibration.distance", "120"],
  ["calibration.used", "34"],
  ["sprayer.tank", "4"],
  ["sprayer.workingFill", "3 1/2 gal"],
  ["sprayer.lineVolume", "10"],
  ["reserve.percent", "5"],
  ["products[0].name", "Product A"],
  ["products[0].rate", "1 1/2", "pt/ac"],
];

async function typeJob(page: Page): Promise<void> {
  await startJob(page, "Bands along rows");
  await typeAll(page, TYPED);
  await page.getByRole("button", { name: "Add another product" }).click();
  await typeAll(page, [
    ["products[1].name", "Product B"],
    ["products[1].rate", "0.25", "%"],
  ]);
}

/** A job of granules as it is typed in, and as a program gives it. */
const GRANULES: Typed = [
  ["plot.length", "180"],
  ["plot.width", "100"],
  ["spreader.hopper", "20"],
  ["product.name", "Product A"],
  ["product.rate", "5", "lb/1000ft2"],
  ["product.bag", "40"],
  ["test.used", "4", "oz"],
  ["test.distance", "25"],
  ["test.swath", "4"],
];
const SPREADING: SpreadingInput = {
  plot: { kind: "rectangle", length: qty(180, "ft"), width: qty(100, "ft"), fraction: 1, name: "Job 1" },
  spreader: { hopper: qty(20, "lb") },
  product: { name: "Product A", rate: qty(5, "lb/1000ft2"), bag: qty(40, "lb") },
  test: { used: qty(4, "oz"), distance: qty(25, "ft"), swath: qty(4, "ft") },
};

/** A line of the working as the page shows it. */
const lineText = ({ found, words, numbers, result, source }: WrittenLine): string =>
  `${found}= ${words}= ${numbers}= ${result}${source}`;

let kept: BrowserContextOptions = {};

/** The page with the job in it: typed the first time, and from then on as it is kept for the next visit. */
async function openWithJob(more: BrowserContextOptions = {}): Promise<Page> {
  if (kept.storageState === undefined) {
    const first = await open();
    await typeJob(first);
    kept = { storageState: await first.context().storageState() };
  }
  return open({ ...PHONE, ...kept, ...more });
}

async function example(page: Page): Promise<void> {
  await page.locator("[data-step=job]").evaluate((part) => part.setAttribute("open", ""));
  await page.getByRole("button", { name: "Try an example" }).click();
}

async function textOf(page: Page, selector: string): Promise<string> {
  return (await page.locator(selector).first().textContent()) ?? "";
}

async function faultOf(page: Page, path: string): Promise<string> {
  return textOf(page, `[data-fault="${path}"]`);
}

/** Texts, of closed parts too. */
async function texts(page: Page, selector: string): Promise<string[]> {
  return (await page.locator(selector).allTextContents()).map((text) => text.trim());
}

/** What of some elements can't be seen on the screen as it is: outside of it, or under something else. */
async function hidden(page: Page, selector: string): Promise<string[]> {
  return page.locator(selector).evaluateAll((all) =>
    all.flatMap((one) => {
      const { left, top, width, bottom } = one.getBoundingClientRect();
      const sees = (y: number): boolean => {
        const there = document.elementFromPoint(left + width / 2, y);
        return there !== null && (one.contains(there) || there.contains(one));
      };
      return top >= 0 && sees(top + 2) && sees(bottom - 2) ? [] : [one.textContent ?? ""];
    }),
  );
}

/** What the library has against an input. */
function issuesOf(act: () => unknown): readonly Issue[] {
  try {
    act();
  } catch (error) {
    if (isSprayMathError(error)) return error.issues;
    throw error;
  }
  return [];
}

const READY = /Ready: \d+ tank loads?|^Ready$/;

// In CI there must be a browser; on a user's own machine the reason is told.
if (path === undefined && !process.env.CI) console.warn("skipped: no Chromium or Chrome found; set CHROMIUM");

describe.skipIf(path === undefined && !process.env.CI)("the calculator", () => {
  beforeAll(async () => {
    if (path === undefined) throw new Error("no Chromium or Chrome found; set CHROMIUM to the path of one");
    installInto(folder);
    server = spawn(process.execPath, ["main.mjs", "--port", "0"], {
      cwd: folder,
      stdio: ["ignore", "pipe", "inherit"],
    });
    address = await new Promise((resolve, reject) => {
      server.stdout?.on("data", (text) => {
        said += text;
        const found = /http:\/\/\S+/.exec(said);
        if (found) resolve(found[0]);
      });
      server.on("exit", (code) => reject(new Error(`the example ended with ${code}`)));
    });
    browser = await playwright.launch({ executablePath: path, args: FLAGS });
  });

  afterEach(async () => {
    for (const context of contexts.splice(0)) await context.close();
    const now = complaints;
    complaints = [];
    expect(now).toEqual([]);
  });

  afterAll(async () => {
    await browser?.close();
    server?.kill();
  });

  it("compiles against the packed types", () => {
    const tsc = join(root, "node_modules/typescript/bin/tsc");
    const info = ["--incremental", "--tsBuildInfoFile", join(root, ".tmp/calculator.tsbuildinfo")];
    execFileSync(process.execPath, [tsc, "-p", folder, ...info], { encoding: "utf8" });
  });

  it("says what the build does, and prints the size of what a phone loads", () => {
    expect(said).toMatch(/^Building the page\nBuilding the same as one file\nBuilt into .*kB zipped/);
    const assets = join(folder, "dist-page/assets");
    const sizes = readdirSync(assets).map((name) => {
      const content = readFileSync(join(assets, name));
      return {
        name: name.replace(/-.*(\.[^.]*)/, "$1"),
        raw: content.length,
        gzip: gzipSync(content).length,
      };
    });
    for (const { name, raw, gzip } of sizes)
      console.log(`${name}: ${(raw / 1000).toFixed(1)} kB, ${(gzip / 1000).toFixed(1)} kB gzipped`);
    const names = sizes.map(({ name }) => name);
    expect(names).toEqual(expect.arrayContaining(["index.css", "index.js", "es.js"]));
  });

  it("is served under a strict policy, which the page has itself too, and which bites", async () => {
    const page = await open();
    const header = (await fetch(address)).headers.get("content-security-policy") ?? "";
    const meta = await page.locator('meta[http-equiv="Content-Security-Policy"]').getAttribute("content");
    for (const policy of [header, meta ?? ""]) {
      expect(policy).toContain(
        "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:",
      );
      expect(policy).toContain("worker-src 'self'; base-uri 'none'; form-action 'none'");
      expect(policy).not.toContain("unsafe");
    }
    const [ran, refused] = await page.evaluate(async () => {
      const refusal = new Promise<string>((resolve) =>
        document.addEventListener("securitypolicyviolation", (event) => resolve(event.effectiveDirective)),
      );
      const script = document.createElement("script");
      script.textContent = "window.ran = true";
      document.body.append(script);
      return ["ran" in window, await refusal];
    });
    expect(ran).toBe(false);
    expect(refused).toBe("script-src-elem");
    await page.close();
    // They are about the script that was blocked.
    expect(complaints.length).toBeGreaterThan(0);
    complaints = [];
  });

  describe("as one file", () => {
    const file = join(folder, "dist-page/swath-to-spoon.html");

    it("is at most 150 kB zipped, and asks for nothing else", () => {
      const html = readFileSync(file, "utf8");
      const size = gzipSync(html).length;
      console.log(`one file: ${(html.length / 1000).toFixed(1)} kB, ${(size / 1000).toFixed(1)} kB gzipped`);
      expect(size).toBeLessThanOrEqual(150_000);
      expect(said).toContain(`(${Math.ceil(size / 1000)} kB zipped)`);
      expect(html).not.toMatch(/<(?:script|img|iframe)[^>]* src=|<link[^>]* href="(?!data:)/);
      expect(html).toMatch(/script-src 'sha256-[^']+'; style-src 'sha256-[^']+'; img-src data:/);
      expect(html).not.toContain("unsafe");
    });

    it("works from a disk and in a frame of another site, in Spanish too, without a network", async () => {
      const site = join(mkdtempSync(join(tmpdir(), "site-")), "index.html");
      writeFileSync(site, `<!doctype html><iframe src="file://${file}" width="390" height="800"></iframe>`);
      const page = await open({ ...PHONE, offline: true }, undefined, `file://${site}`);
      const frame = page.frameLocator("iframe");
      await frame.locator("#language").selectOption("es");
      await frame.getByRole("button", { name: "Ver un ejemplo" }).click();
      await expect.poll(() => frame.locator("#status").textContent()).toBe("Listo: 2 cargas");
      expect(await frame.locator(".load h3").first().textContent()).toBe("Carga 1 de 2");
    });

    // The file leaves out words that nothing in it says: what is left must be all that a job shows.
    it("has every word of the working, of granules and of errors, in both languages", async () => {
      const page = await open(PHONE, undefined, `file://${file}`);
      await page.locator("#working").evaluate((one) => one.setAttribute("open", ""));
      for (const [language, words] of [
        ["en", {}],
        ["es", { words: SPANISH_WORDS }],
      ] as const) {
        await page.locator("#language").selectOption(language);
        await startJob(page, language === "en" ? "Bands along rows" : "Bandas en hileras");
        await typeAll(page, TYPED);
        const [product] = JOB.products as PlanInput["products"] & readonly unknown[];
        const plan = planApplication({ ...JOB, products: [product] } as PlanInput);
        const lines = worksheet(plan, { units: "us", ...words }).steps.flatMap((step) => step.lines);
        await expect.poll(() => texts(page, ".line > b")).toEqual(lines.map(({ found }) => found));
        await type(page, "sprayer.workingFill", "5");
        const [tooMuch] = issuesOf(() =>
          planApplication({ ...JOB, sprayer: { ...JOB.sprayer, workingFill: qty(5, "gal") } } as PlanInput),
        );
        expect(await faultOf(page, "sprayer.workingFill")).toBe(issueText(tooMuch as Issue, words));
        await startJob(page, language === "en" ? "Granules" : "Gránulos");
        await typeAll(page, GRANULES);
        await expect
          .poll(() => texts(page, ".line"))
          .toEqual(
            spreadingSheet(planSpreading(SPREADING), { units: "us", ...words }).steps.flatMap((step) =>
              step.lines.map(lineText),
            ),
          );
        await type(page, "test.used", "4 x 3 lb");
        const [fault] = issuesOf(() => parseQuantity("4 x 3 lb"));
        expect(await faultOf(page, "test.used")).toBe(issueText(fault as Issue, words));
      }
    });
  });

  it("shows load, fill mark and doses on a phone's first screen, with one line to what needs checking", async () => {
    const page = await openWithJob();
    await page.getByRole("button", { name: "See the answer" }).click();
    expect(await page.evaluate(() => document.activeElement?.id)).toBe("answer");
    // Scrolling is smooth, so the page takes its time to get there.
    await expect
      .poll(() => hidden(page, ".load:first-of-type :is(h3, .fill, .dose, .part, .tank)"))
      .toEqual([]);
    expect(await page.locator(".load").first().locator(".dose").count()).toBe(2);
    const line = page.locator("#check");
    expect(await line.evaluate((one) => one.getBoundingClientRect().height)).toBeLessThan(60);
    expect(worksheet(planApplication(JOB)).warnings).toHaveLength(1);
    expect(await line.textContent()).toContain("1 thing to check");
    await line.click();
    await expect.poll(() => hidden(page, "#alerts")).toEqual([]);
    expect(await page.evaluate(() => document.activeElement?.id)).toBe("alerts");
  });

  it("has its pictures in the gallery: the answer on a phone, and the card on paper", async () => {
    const page = await open();
    await example(page);
    await page.getByRole("button", { name: "See the answer" }).click();
    await expect.poll(() => hidden(page, ".load:first-of-type .fill")).toEqual([]);
    await picture(page, "phone", 390, 844);
    await page.emulateMedia({ media: "print" });
    await page.evaluate(() => {
      scrollTo(0, 0);
      // Paper has a margin, which the printer leaves.
      document.body.style.padding = "2rem";
    });
    await picture(page, "card", 700, 1080);
  });

  it("shows no tank, no dose and nothing that is ready where the job is refused, on the page and on the card", async () => {
    const page = await openWithJob();
    await type(page, "products[0].label.max", "1", "pt/ac");
    expect(await textOf(page, "#found > :nth-child(2) > .refusal")).toContain("Do not spray");
    expect(await page.locator(".load, .tank, .dose, .part, .fill, .amount-text, .record").count()).toBe(0);
    expect(await page.locator("#working").isVisible()).toBe(false);
    const shown = await page.locator("body").textContent();
    expect(shown).not.toMatch(/Ready|\bReserve\b/);
    expect(await textOf(page, "#found")).not.toMatch(/fl oz|tablespoon|Load 1/);
    expect(await textOf(page, "#status")).toBe("Do not do this job");
    const link = page.locator("#found .refusal button");
    expect(await link.allTextContents()).toEqual(["5. Product 1: Label rate"]);
    await page.locator("[data-step=tools] > summary").click();
    expect(await field(page, "products[0].rate").isVisible()).toBe(false);
    await link.click();
    expect(await page.evaluate(() => document.activeElement?.id)).toBe("field-products-0-rate");
    await expect.poll(() => hidden(page, "#field-products-0-rate")).toEqual([]);
    // What is wrong with the water is a matter of all that the calibration asks for.
    await type(page, "products[0].label.max", "");
    await type(page, "products[0].label.leastCarrier", "100", "gal/ac");
    expect(await link.allTextContents()).toEqual(["3. Calibration: Check this section"]);
    await link.click();
    expect(await page.evaluate(() => document.activeElement?.id)).toBe("fault-calibration");
    await expect.poll(() => hidden(page, "#fault-calibration")).toEqual([]);
    expect(await faultOf(page, "calibration")).toContain("below the label minimum");
    await page.emulateMedia({ media: "print" });
    expect(await textOf(page, "#card")).toContain("Do not spray");
    expect(await textOf(page, "#card")).not.toMatch(/Load 1|tablespoon/);
  });

  it("plans a job that is typed in on a phone, with the figures that the library gives in Node", async () => {
    const page = await open();
    await startJob(page, "Bands along rows");
    expect(await textOf(page, "#status")).toBe("8 fields left");

    await type(page, "plot.rows", "14.5");
    expect(await faultOf(page, "plot.rows")).toBe("Enter a whole number, 1 or more.");
    expect(await field(page, "plot.rows").getAttribute("aria-invalid")).toBe("true");
    // Wrong is not empty.
    expect(await textOf(page, "#status")).toBe("1 to fix, 7 fields left");
    await type(page, "plot.rows", "14");
    expect(await faultOf(page, "plot.rows")).toBe("");
    expect(await field(page, "plot.rows").getAttribute("aria-invalid")).toBe(null);

    await type(page, "plot.rowLength", "160 gal");
    expect(await faultOf(page, "plot.rowLength")).toContain("a volume");
    await typeJob(page);
    expect(await texts(page, ".fault:not(:empty)")).toEqual([]);

    const plan = planApplication(JOB);
    const sheet = worksheet(plan, { units: "us" });
    expect(plan.loads).toHaveLength(2);
    expect(await textOf(page, "#status")).toBe("Ready: 2 tank loads");
    const amounts = await texts(page, ".amount-text");
    expect(amounts).toEqual(sheet.loads.flatMap(({ doses }) => doses.map(({ amount }) => amount)));
    expect(await texts(page, ".part p")).toEqual(
      sheet.loads.flatMap(({ doses }) => doses.flatMap(({ measures }) => measures)),
    );
    const exact = plan.loads.flatMap(({ products }) => products.map(({ amount }) => amount));
    for (const [i, amount] of exact.entries()) {
      const printed = valueIn(parseQuantity(amounts[i] ?? "") as never, amount.unit as never);
      expect(printed).toBeLessThanOrEqual(amount.value);
      // Three digits, rounded down.
      expect(printed / amount.value).toBeGreaterThan(0.99);
    }
    for (const { value } of sheet.summary) expect(await textOf(page, "#found")).toContain(value);
    for (const { message } of plan.cautions)
      await expect(page.getByText(message).first().isVisible()).resolves.toBe(true);
  });

  const strip: Typed = [
    ["calibration.distance", "100"],
    ["calibration.used", "40"],
  ];
  const rest: Typed = [
    ["sprayer.tank", "4"],
    ["products[0].name", "Product A"],
  ];
  const stripOf = (swath: PlanInput["plot"] extends never ? never : { value: number; unit: "in" | "ft" }) =>
    ({ kind: "strip", used: qty(40, "fl_oz"), swath, distance: qty(100, "ft") }) as const;
  const products = (rate: unknown) => [{ name: "Product A", form: "liquid", rate }] as PlanInput["products"];
  const sprayer = { tank: qty(4, "gal") };
  const tools = "us-cups-and-spoons" as const;
  const perAcre = qty(24, "fl_oz/ac");
  const rate24: Typed = [["products[0].rate", "24", "fl_oz/ac"]];
  const CAUGHT: Typed = [
    ["calibration.catches[0]", "16"],
    ["calibration.time", "60"],
    ["calibration.speed.distance", "300"],
    ["calibration.speed.time", "68"],
  ];
  const catchOf = {
    kind: "catch" as const,
    catches: [qty(16, "fl_oz")],
    time: qty(60, "s"),
    speed: { distance: qty(300, "ft"), time: qty(68, "s") },
  };

  it.each<
    [
      job: string,
      choices: readonly (readonly [string, string])[],
      typed: Typed,
      input: PlanInput | BatchInput,
    ]
  >([
    [
      "Whole block",
      [],
      [
        ["plot.length", "60"],
        ["plot.width", "20"],
        ...strip,
        ["calibration.swath", "48"],
        ...rest,
        ...rate24,
      ],
      {
        plot: { kind: "rectangle", length: qty(60, "ft"), width: qty(20, "ft"), fraction: 1, name: "Job 1" },
        calibration: stripOf(qty(48, "in")),
        sprayer,
        products: products(perAcre),
        tools,
      },
    ],
    [
      "An area I know",
      [["calibration.kind", "known"]],
      [["plot.treated", "0.25"], ["calibration.rate", "20"], ...rest, ["products[0].rate", "2", "tbsp/gal"]],
      {
        plot: { kind: "treated-area", treated: { value: 0.25, unit: "ac", of: "treated" }, name: "Job 1" },
        calibration: { kind: "known", rate: qty(20, "gal/ac") },
        sprayer,
        products: products(qty(2, "tbsp/gal")),
        tools,
      },
    ],
    [
      "Whole block",
      [["calibration.kind", "catch"]],
      [
        ["plot.length", "200"],
        ["plot.width", "60"],
        ...CAUGHT,
        ["calibration.width", "20"],
        ...rest,
        ...rate24,
      ],
      {
        plot: { kind: "rectangle", length: qty(200, "ft"), width: qty(60, "ft"), fraction: 1, name: "Job 1" },
        calibration: { ...catchOf, width: qty(20, "in") },
        sprayer,
        products: products(perAcre),
        tools,
      },
    ],
    [
      // The band is what one nozzle treats.
      "Bands along rows",
      [["calibration.kind", "catch"]],
      [
        ["plot.rows", "8"],
        ["plot.rowLength", "100"],
        ["plot.bandWidth", "20"],
        ["plot.rowSpacing", "5"],
        ...CAUGHT,
        ...rest,
        ...rate24,
      ],
      {
        plot: {
          kind: "row-bands",
          rows: 8,
          rowLength: qty(100, "ft"),
          bandWidth: qty(20, "in"),
          rowSpacing: qty(5, "ft"),
          name: "Job 1",
        },
        calibration: { ...catchOf, width: qty(20, "in") },
        sprayer,
        products: products(perAcre),
        tools,
      },
    ],
    [
      "Spots, by their size",
      [],
      [
        ["plot.spots[0].count", "12"],
        ["plot.spots[0].diameter", "6"],
        ...strip,
        ["calibration.swath", "4", "ft"],
        ...rest,
        ["products[0].rate", "1", "fl_oz/1000ft2"],
      ],
      {
        plot: { kind: "spots", spots: [{ count: 12, diameter: qty(6, "ft") }], name: "Job 1" },
        calibration: stripOf(qty(4, "ft")),
        sprayer,
        products: products(qty(1, "fl_oz/1000ft2")),
        tools,
      },
    ],
    [
      "A tank mixed by %",
      [],
      [["size.volume", "3"], ...rest, ["products[0].rate", "2"]],
      {
        size: { kind: "volume", volume: qty(3, "gal") },
        name: "Job 1",
        sprayer,
        products: products({ value: 2, unit: "%", basis: "v/v" }),
        tools,
      },
    ],
    [
      // Three nozzles over one bed, each of which caught as much.
      "Bands along rows",
      [["calibration.kind", "catch"]],
      [
        ["plot.rows", "10"],
        ["plot.rowLength", "150"],
        ["plot.bandWidth", "48"],
        ...CAUGHT,
        ["calibration.nozzlesPerRow", "3"],
        ...rest,
        ...rate24,
      ],
      {
        plot: {
          kind: "row-bands",
          rows: 10,
          rowLength: qty(150, "ft"),
          bandWidth: qty(48, "in"),
          name: "Job 1",
        },
        calibration: {
          ...catchOf,
          catches: Array.from({ length: 3 }, () => qty(16, "fl_oz")),
          nozzlesPerRow: 3,
          width: qty(48, "in"),
        },
        sprayer,
        products: products(perAcre),
        tools,
      },
    ],
    [
      "Pots or plants",
      [],
      [["size.count", "300"], ["size.each", "4"], ...rest, ["products[0].rate", "3", "tsp/gal"]],
      {
        size: { kind: "count", count: qty(300, "pot"), each: qty(4, "fl_oz") },
        name: "Job 1",
        sprayer,
        products: products(qty(3, "tsp/gal")),
        tools,
      },
    ],
    [
      "Pots or plants",
      [["each", "timed"]],
      [
        ["size.count", "30", "tree"],
        ["size.each.flow.caught", "128"],
        ["size.each.flow.time", "20"],
        ["size.each.time", "15"],
        ...rest,
        ["products[0].rate", "0.5", "mL/plant"],
      ],
      {
        size: {
          kind: "count",
          count: qty(30, "tree"),
          each: { flow: { caught: qty(128, "fl_oz"), time: qty(20, "s") }, time: qty(15, "s") },
        },
        name: "Job 1",
        sprayer,
        products: products(qty(0.5, "mL/plant")),
        tools,
      },
    ],
    [
      "Drench along a row",
      [["perRow", "measured"]],
      [
        ["size.length", "500"],
        ["size.rate.used", "50"],
        ["size.rate.length", "25"],
        ...rest,
        ["products[0].rate", "8", "fl_oz/100gal"],
      ],
      {
        size: {
          kind: "row-length",
          length: qty(500, "ft"),
          rate: { used: qty(50, "fl_oz"), length: qty(25, "ft") },
        },
        name: "Job 1",
        sprayer,
        products: products(qty(8, "fl_oz/100gal")),
        tools,
      },
    ],
    [
      "Orchard rows",
      [],
      [
        ["plot.rows", "4"],
        ["plot.rowLength", "100"],
        ["plot.rowSpacing", "15"],
        ["plot.stripWidth", "3"],
        ...strip,
        ...rest,
        ...rate24,
      ],
      {
        plot: {
          kind: "tree-rows",
          name: "Job 1",
          rows: 4,
          rowLength: qty(100, "ft"),
          rowSpacing: qty(15, "ft"),
          stripWidth: qty(3, "ft"),
          sides: 2,
        },
        calibration: stripOf(qty(3, "ft")),
        sprayer,
        products: products(perAcre),
        tools,
      },
    ],
    [
      "Orchard rows",
      [["orchard", "canopy"]],
      [
        ["plot.rows", "4"],
        ["plot.rowLength", "100"],
        ["plot.rowSpacing", "15"],
        ["calibration.rowLength", "50"],
        ["calibration.used", "3", "qt"],
        ...rest,
        ...rate24,
      ],
      {
        plot: {
          kind: "tree-rows",
          name: "Job 1",
          rows: 4,
          rowLength: qty(100, "ft"),
          rowSpacing: qty(15, "ft"),
          stripWidth: qty(7.5, "ft"),
          sides: 2,
        },
        calibration: {
          kind: "tree-row",
          used: qty(3, "qt"),
          sides: 2,
          rowLength: qty(50, "ft"),
          rowSpacing: qty(15, "ft"),
        },
        sprayer,
        products: products(perAcre),
        tools,
      },
    ],
  ])("plans a job of another kind as the library does: %s %j", async (job, choices, typed, input) => {
    const page = await open();
    await startJob(page, job);
    for (const [name, value] of choices) await choose(page, name, value);
    await typeAll(page, typed);
    expect(await texts(page, ".fault:not(:empty, .doubt)")).toEqual([]);
    const plan = planApplication(input as PlanInput);
    const sheet = worksheet(plan, { units: "us" });
    for (const { name, value } of [...sheet.summary, ...sheet.totals])
      expect(await textOf(page, "#found")).toContain(`${name}${value}`);
    expect((await texts(page, ".alerts li")).join(" ")).toBe(
      sheet.warnings.map(({ name, message }) => `${name}: ${message}`).join(" "),
    );
    const steps = fieldCard(plan, { units: "us" }).loads.flatMap((load) => load.steps);
    expect(await texts(page, "#card .boxes li")).toEqual(steps);
  });

  it("plans granules as the library does", async () => {
    const page = await open();
    await startJob(page, "Granules");
    await choose(page, "spreader.directions", "2");
    await typeAll(page, GRANULES);
    const input: SpreadingInput = { ...SPREADING, spreader: { hopper: qty(20, "lb"), directions: 2 } };
    const card = spreadingCard(planSpreading(input), { units: "us" });
    expect(await texts(page, ".load p")).toEqual(card.loads.flatMap(({ steps }) => steps));
    for (const { name, value } of card.facts)
      expect(await textOf(page, "#found")).toContain(`${name}${value}`);
    expect(await texts(page, "#card .boxes li")).toEqual(card.loads.flatMap(({ steps }) => steps));
    await page.getByText("Show the math").click();
    const { steps } = spreadingSheet(planSpreading(input), { units: "us" });
    await expect.poll(() => texts(page, ".line")).toEqual(steps.flatMap(({ lines }) => lines.map(lineText)));

    await page.getByText("Record it after spreading").click();
    await page.locator("#record-finished").fill("2031-01-02T09:30");
    await page.locator("#record-left").fill("1 gal");
    await page.locator("#save-record").click();
    expect(await textOf(page, ".record .fault")).toContain("weight");
    await page.locator("#record-left").fill("9 lb");
    await page.clock.setFixedTime("2031-05-02T10:00:00");
    await page.locator("#save-record").click();
    const { record } = reconcileSpreading(planSpreading(input), {
      finished: "2031-01-02T09:30",
      left: qty(9, "lb"),
    });
    expect(record.products[0]?.applied).toEqual(qty(81, "lb"));
    expect(await textOf(page, ".record [role=status]")).toContain(
      "Product A: 81 lb applied, 90% of the planned rate",
    );
    const kept = await page.evaluate(() => JSON.parse(Object.values(localStorage)[0] as string));
    expect(kept.records).toEqual([record]);
    expect(await textOf(page, "#season li")).toContain("2031-01-02: Product A 81 lb");

    // The next spreading on the same place is held against the season's limit too.
    await type(page, "product.label.seasonMax", "5", "lb/1000ft2");
    expect(await textOf(page, "#found .refusal")).toContain("season");
  });

  it("says of every field that may be left out, and of no other, that it is optional", async () => {
    const page = await open();
    for (const job of await texts(page, ".jobs button")) {
      await startJob(page, job);
      if (job === "Orchard rows") await choose(page, "orchard", "canopy");
      await page.getByRole("button", { name: "Next field" }).click();
      const fields = page.locator(".step .field:has([data-place])");
      const optional = await fields.filter({ has: page.locator(".optional") }).locator("[data-place]");
      const needed = fields.filter({ hasNot: page.locator(".optional") }).locator("input[data-place]");
      const invalid = ':is([aria-invalid="true"])';
      expect(await optional.and(page.locator(invalid)).count(), job).toBe(0);
      expect(await needed.and(page.locator(invalid)).count(), job).toBe(await needed.count());
      expect(await needed.count(), job).toBeGreaterThan(3);
    }
  });

  it("opens every job in Spanish, and offers units that can be read, in its words", async () => {
    const page = await open();
    await page.locator("#language").selectOption("es");
    // Spanish is loaded first.
    await expect.poll(() => texts(page, ".jobs button")).toContain("Bandas en hileras");
    for (const job of await texts(page, ".jobs button")) {
      await startJob(page, job);
      for (const text of await texts(page, ".step select option"))
        expect(text, job).not.toMatch(/^,|\b(?:plants?|pots?|trees?|spots?)\b/);
    }
    await startJob(page, "Macetas o plantas");
    expect(await texts(page, "[data-step=size] .amount select option")).toEqual(
      expect.arrayContaining(["macetas", "plantas", "árboles", "puntos"]),
    );
    await page.reload();
    expect(await page.locator("[data-step=size]").count()).toBe(1);
  });

  it("never has more than seven fields on the screen before the first answer", async () => {
    const page = await open();
    expect(await page.locator("[data-place]:visible, fieldset:visible").count()).toBe(0);
    for (const job of await texts(page, ".jobs button")) {
      await startJob(page, job);
      for (const part of await page.locator(".step").all()) {
        await part.evaluate((one) => one.setAttribute("open", ""));
        const shown = await page
          .locator("form")
          .locator("[data-place]:visible, fieldset:visible, .tick:visible")
          .count();
        expect(shown, job).toBeLessThanOrEqual(7);
      }
    }
  });

  it("draws rows, bands and passes to scale, and tanks as full as they are", async () => {
    const page = await openWithJob();
    const plan = planApplication(JOB);
    expect(await page.locator(".plot .band").count()).toBe(14);
    expect(await page.locator(".plot .row").count()).toBe(14);
    expect(await page.locator(".plot .way").count()).toBe(14);
    const [ground, band] = await page.evaluate(() =>
      [".ground", ".band"].map((part) => {
        const box = document.querySelector(part) as SVGRectElement;
        return { width: box.width.baseVal.value, height: box.height.baseVal.value };
      }),
    );
    // 14 rows at 5 ft are 70 ft across and 160 ft long; a band is 2.5 ft.
    expect((ground?.height ?? 0) / (ground?.width ?? 0)).toBeCloseTo(160 / 70, 6);
    expect((band?.width ?? 0) / (ground?.width ?? 0)).toBeCloseTo(2.5 / 70, 6);
    const fills = await page
      .locator(".tank .mix")
      .evaluateAll((all) => all.map((mix) => (mix as SVGRectElement).height.baseVal.value / 90));
    expect(fills).toHaveLength(plan.loads.length);
    for (const [i, load] of plan.loads.entries()) expect(fills[i]).toBeCloseTo(load.carrier.value / 4, 6);
    // As many spoons as the doses take.
    const scoops = plan.loads.flatMap(({ products }) =>
      products.flatMap(({ measured }) => (measured.ok ? measured.parts.map(({ count }) => count) : [])),
    );
    expect(
      await page
        .locator(".part")
        .evaluateAll((all) => all.map((part) => part.querySelectorAll("svg").length)),
    ).toEqual(scoops);

    await startJob(page, "Whole block");
    await typeAll(page, [
      ["plot.length", "200"],
      ["plot.width", "51"],
      ["calibration.swath", "30"],
    ]);
    // 51 ft in passes of 30 in are 20.4: 21 passes, the last one overlapping by 1.5 ft.
    expect(await page.locator(".plot .pass").count()).toBe(21);
    expect(await textOf(page, "figcaption")).toContain("21 passes, each 30 in wide");
    expect(await textOf(page, "figcaption")).toContain("overlaps by 1.5 ft");
  });

  it("takes a band's width for the pass, so the two can't differ, and multiplies it by the rows of a pass", async () => {
    const page = await openWithJob();
    expect(await field(page, "calibration.swath").count()).toBe(0);
    await type(page, "sprayer.rowsPerPass", "2");
    const plan = planApplication({
      ...JOB,
      calibration: { kind: "strip", used: qty(34, "fl_oz"), swath: qty(60, "in"), distance: qty(120, "ft") },
      sprayer: { ...JOB.sprayer, rowsPerPass: 2 },
    });
    for (const { value } of worksheet(plan, { units: "us" }).summary)
      expect(await textOf(page, "#found")).toContain(value);
  });

  it("takes a second and a third run of the strip, and the jug's marks", async () => {
    const page = await openWithJob();
    await reveal(page.locator("#add-run"));
    await page.locator("#add-run").click();
    expect(await textOf(page, "#status")).toBe("1 field left");
    await type(page, "calibration.runs[1].used", "36");
    await page.locator("#add-run").click();
    await type(page, "calibration.runs[2].used", "35");
    expect(await page.locator("#add-run").count()).toBe(0);
    await type(page, "calibration.jug", "8");
    const [swath, distance] = [qty(30, "in"), qty(120, "ft")];
    const runs = [34, 36, 35].map((value) => ({
      used: { value, unit: "fl_oz", resolution: qty(8, "fl_oz") } as const,
      swath,
      distance,
    }));
    const plan = planApplication({ ...JOB, calibration: { kind: "strip-runs", runs } });
    const { summary, warnings } = worksheet(plan, { units: "us" });
    for (const { value } of summary) expect(await textOf(page, "#found")).toContain(value);
    expect(await texts(page, ".alerts li")).toEqual(
      warnings.map(({ name, message }) => `${name}: ${message}`),
    );
    expect(warnings.map(({ message }) => message).join()).toContain("Your jug is marked every 8 fl oz");
    await page.locator("#remove-run").click();
    await page.locator("#remove-run").click();
    expect(await page.locator("#remove-run").count()).toBe(0);
  });

  it("ends loads on the tank's marks, and draws the marks", async () => {
    const page = await openWithJob();
    await type(page, "sprayer.marks", "0.5");
    const plan = planApplication({ ...JOB, sprayer: { ...JOB.sprayer, marks: qty(0.5, "gal") } });
    expect(plan.loads.map(({ mark }) => mark?.value)).toEqual([3.5, 2]);
    const sheet = worksheet(plan, { units: "us" });
    for (const { fill } of sheet.loads)
      expect((await textOf(page, "#found")).toLowerCase()).toContain(fill.toLowerCase());
    for (const { name, value } of sheet.summary)
      expect(await textOf(page, "#found")).toContain(`${name}${value}`);
    // 4 gal have seven marks below the brim, of 0.5 gal each.
    expect(await page.locator(".tank").first().locator(".mark").count()).toBe(7);
  });

  it("offers the easiest ways to mix in pictures, and keeps the one that is chosen while it is one of them", async () => {
    const page = await openWithJob();
    expect(await page.locator(".ways").count()).toBe(0);
    await type(page, "sprayer.marks", "0.25");
    const input = { ...JOB, sprayer: { ...JOB.sprayer, marks: qty(0.25, "gal") } };
    const ways = loadChoices(input);
    expect(ways.length).toBeGreaterThan(1);
    const shown = page.locator(".ways label");
    expect(await shown.count()).toBe(1 + ways.length);
    for (const [i, { loads, cost }] of ways.entries()) {
      expect(
        await shown
          .nth(i + 1)
          .locator(".tank")
          .count(),
      ).toBe(loads.length);
      expect(await shown.nth(i + 1).textContent()).toContain(`${cost.measures} measures`);
    }
    await shown.nth(1).locator("input").check();
    expect(await page.locator(":focus").getAttribute("id")).toBe(
      await shown.nth(1).locator("input").getAttribute("id"),
    );
    const { split } = ways[0] as (typeof ways)[number];
    const sheet = worksheet(planApplication({ ...input, split }), { units: "us" });
    expect(await texts(page, ".part p")).toEqual(
      sheet.loads.flatMap(({ doses }) => doses.flatMap(({ measures }) => measures)),
    );
    // For a job of another size it isn't one of the ways any more.
    await type(page, "plot.rows", "3");
    expect(await page.locator(".ways input").first().isChecked()).toBe(true);
    expect(await textOf(page, "#status")).toMatch(READY);
    await type(page, "plot.rows", "14");
    expect(await page.locator(".ways input").nth(1).isChecked()).toBe(true);
  });

  it("offers equal loads where the last one is small, and the tank's marks aren't known", async () => {
    const page = await openWithJob();
    await type(page, "plot.rows", "20");
    const input = { ...JOB, plot: { ...JOB.plot, rows: 20 } as PlanInput["plot"] };
    const { warnings } = planApplication(input);
    expect(warnings.map(({ code }) => code)).toContain("last-load-small");
    await page.getByLabel("Equal loads").check();
    const plan = planApplication({ ...input, split: "equal" });
    expect(await texts(page, ".load h3")).toEqual(
      worksheet(plan, { units: "us" }).loads.map(({ title }) => title),
    );
  });

  it("shows loads that are alike once", async () => {
    const page = await openWithJob();
    await type(page, "plot.rows", "60");
    const plan = planApplication({ ...JOB, plot: { ...JOB.plot, rows: 60 } as PlanInput["plot"] });
    const { loads } = worksheet(plan, { units: "us" });
    expect(loads.length).toBeLessThan(plan.loads.length);
    expect(await texts(page, ".load h3")).toEqual(loads.map(({ title }) => title));
    const card = fieldCard(plan, { units: "us" });
    expect(await page.locator("#card section").count()).toBe(card.loads.length);
    // What to do at the tank is on the screen as on paper.
    await page.getByText("Step by step: half the water first").click();
    expect(await texts(page, "#found .boxes li")).toEqual(card.loads.flatMap(({ steps }) => steps));
  });

  it("offers the units of the trade, its own first, and rates as labels have them", async () => {
    const page = await open();
    const units = async (path: string): Promise<string[]> =>
      texts(page, `[data-place="${path}"] + select option`);
    await startJob(page, "Bands along rows");
    expect((await units("plot.bandWidth"))[0]).toBe("in");
    expect((await units("calibration.used"))[0]).toBe("fl oz");
    expect((await units("sprayer.tank"))[0]).toBe("gal");
    expect((await units("sprayer.lineVolume"))[0]).toBe("fl oz");
    const liquid = await units("products[0].rate");
    expect(liquid[0]).toBe("fl oz/ac");
    expect(liquid).toEqual(
      expect.arrayContaining(["pt/ac", "tbsp/gal", "tsp/gal", "fl oz/1,000 sq ft", "fl oz/100 gal", "% v/v"]),
    );
    expect(liquid.join()).not.toMatch(/oz wt|lb|plant/);
    await choose(page, "products[0].form", "dry");
    expect(await units("products[0].rate")).toEqual(
      expect.arrayContaining(["oz wt/ac", "oz wt/100 gal", "oz wt/1,000 sq ft", "% w/v"]),
    );
    await page.locator("#system").selectOption("metric");
    expect(await units("products[0].rate")).toEqual(expect.arrayContaining(["kg/ha", "g/100 L", "g/hL"]));
    await choose(page, "products[0].form", "liquid");
    expect(await units("products[0].rate")).toEqual(expect.arrayContaining(["L/ha", "mL/100 L", "mL/hL"]));
    await startJob(page, "A tank mixed by %");
    expect((await units("products[0].rate"))[0]).toBe("% v/v");
    expect((await units("products[0].rate")).join()).not.toMatch(/\/ha|\/ac/);
  });

  it.each<[typed: string, path: string, text: string, unit: string]>([
    ["4 qt", "sprayer.tank", "4", "qt"],
    ["2 tsp/gal", "products[0].rate", "2", "tsp/gal"],
    ["3 mL/hL", "products[0].rate", "3", "mL/hL"],
    ["2% v/v", "products[0].rate", "2", "%"],
    ["48.768 m", "plot.rowLength", "48.768", "m"],
  ])("moves the selector to the unit of %s", async (typed, path, text, unit) => {
    const page = await openWithJob();
    await type(page, path, typed);
    await field(page, path).blur();
    expect(await field(page, path).inputValue()).toBe(text);
    expect(await page.locator(`[data-place="${path}"] + select`).inputValue()).toBe(unit);
    expect(await faultOf(page, path)).toBe("");
    await type(page, path, text);
    expect(await page.locator(`[data-place="${path}"] + select`).inputValue()).toBe(unit);
  });

  it("writes the same dose in other units, and brings back what was typed", async () => {
    const page = await openWithJob();
    const before = await texts(page, ".amount-text");
    const measures = await texts(page, ".part p");
    for (const system of ["metric", "imperial"]) {
      await page.locator("#system").selectOption(system);
      const after = await texts(page, ".amount-text");
      expect(after).toHaveLength(before.length);
      for (const [i, text] of after.entries()) {
        const [was, is] = [before[i] ?? "", text].map((one) => valueIn(parseQuantity(one) as never, "mL"));
        // Both are printed rounded down to three digits or more.
        expect((is ?? 0) / (was ?? 1)).toBeGreaterThan(0.99);
        expect((is ?? 0) / (was ?? 1)).toBeLessThan(1.01);
      }
      expect(await texts(page, ".part p")).toEqual(measures);
    }
    await page.locator("#system").selectOption("metric");
    expect(await field(page, "plot.rowLength").inputValue()).toBe("48.768");
    expect((await texts(page, ".amount-text"))[0]).toContain("mL");
    await page.locator("#system").selectOption("us");
    expect(await field(page, "plot.rowLength").inputValue()).toBe("160");
    expect(await field(page, "products[0].rate").inputValue()).toBe("1 1/2");
    expect(await texts(page, ".amount-text")).toEqual(before);
  });

  it.each([
    ["metric", /\d (?:ft|in|yd|ac|sq ft|gal|qt|pt|fl oz|oz wt|lb|tbsp|tsp)\b|\/(?:ac|gal)\b/],
    ["imperial", /\d (?:m|cm|m²|ha|L|mL|g|kg)(?![\w²])|\/(?:ha|L)\b/],
  ])(
    "is %s to the last line of sheet, card and working, whatever a field was typed in",
    async (system, other) => {
      const page = await openWithJob();
      await type(page, "tools", system === "metric" ? "metric-measures" : "imperial-measures");
      await page.locator("#system").selectOption(system);
      await type(page, "plot.rowLength", system === "metric" ? "160 ft" : "50 m");
      await field(page, "plot.rowLength").blur();
      await page.locator("#working").evaluate((one) => one.setAttribute("open", ""));
      await expect.poll(() => page.locator(".line").count()).toBeGreaterThan(0);
      // A syringe is read in mL, whatever the sheet is in.
      const syringes = /Measure (?:[\d.]+ mL in the \d+ mL syringe(?: \+ )?)+|: \d+ mL syringe/g;
      for (const part of ["#found", "#steps", "#card"])
        expect((await textOf(page, part)).replace(syringes, "")).not.toMatch(other);
      // The other way round there is something to find.
      await page.locator("#system").selectOption("us");
      if (system === "metric") expect(await textOf(page, "#found")).toMatch(other);
    },
  );

  it("shows the working on request, every line as the worksheet has it", async () => {
    const page = await openWithJob();
    expect(await page.locator(".line").count()).toBe(0);
    await page.getByText("Show the math").click();
    const plan = planApplication(JOB);
    const lines = worksheet(plan, { units: "us" }).steps.flatMap((step) => step.lines);
    await expect.poll(() => page.locator(".line").count()).toBe(lines.length);
    expect(await texts(page, ".line")).toEqual(lines.map(lineText));
  });

  it("is in Spanish at a switch: form, errors, answer and card; what that takes is loaded then", async () => {
    const page = await openWithJob();
    const loaded: string[] = [];
    page.on("request", (request) => loaded.push(request.url()));
    await page.locator("#language").selectOption("es");
    await expect.poll(() => textOf(page, "#status")).toBe("Listo: 2 cargas");
    expect(loaded.filter((url) => /\/es-[^/]*\.js$/.test(url))).toHaveLength(1);
    expect(await page.locator("html").getAttribute("lang")).toBe("es");
    const spanish = { words: SPANISH_WORDS, locale: "en-US", units: "us" } as const;
    const plan = planApplication({ ...JOB, plot: { ...JOB.plot, name: "Job 1" } as PlanInput["plot"] });
    expect(await texts(page, ".part p")).toEqual(
      worksheet(plan, spanish).loads.flatMap(({ doses }) => doses.flatMap(({ measures }) => measures)),
    );
    expect(await texts(page, "#card .boxes li")).toEqual(
      fieldCard(plan, spanish).loads.flatMap(({ steps }) => steps),
    );
    expect(await barriers(page)).toEqual([]);
    await type(page, "plot.rows", "0");
    const [fault] = issuesOf(() =>
      planApplication({ ...JOB, plot: { ...JOB.plot, rows: 0 } as PlanInput["plot"] }),
    );
    expect(await faultOf(page, "plot.rows")).toBe(issueText(fault as Issue, { words: SPANISH_WORDS }));
    // Nothing English is left on the page, but units and the names that the person typed.
    const seen = await page.locator("body").textContent();
    expect(seen).not.toMatch(
      /\b(?:the|of|and|with|your|field|answer|tank|row|rows|width|length|rate|done)\b/i,
    );
    await page.reload();
    await expect.poll(() => page.locator("html").getAttribute("lang")).toBe("es");
  });

  it("opens in Spanish where the browser is", async () => {
    const page = await open({ ...PHONE, locale: "es-MX" });
    await expect.poll(() => textOf(page, "#status")).toBe("Escoja primero un trabajo");
    expect(await page.locator("#system").inputValue()).toBe("metric");
    const other = await open({ ...PHONE, locale: "es-US" });
    await expect.poll(() => textOf(other, "#status")).toBe("Escoja primero un trabajo");
    expect(await other.locator("#system").inputValue()).toBe("us");
  });

  it("goes on to the next field at Enter, through all parts to the answer", async () => {
    const page = await open();
    await startJob(page, "A tank mixed by %");
    const seen: string[] = [];
    for (const text of ["3", "4", "", "", "", "", "Product A", "2"]) {
      seen.push((await page.evaluate(() => (document.activeElement as HTMLElement).dataset.place)) ?? "");
      await page.keyboard.type(text);
      await page.keyboard.press("Enter");
    }
    expect(seen).toEqual([
      "size.volume",
      "sprayer.tank",
      "sprayer.workingFill",
      "sprayer.marks",
      "sprayer.lineVolume",
      "reserve.percent",
      "products[0].name",
      "products[0].rate",
    ]);
    expect(await page.evaluate(() => document.activeElement?.id)).toBe("go");
    await page.keyboard.press("Enter");
    expect(await page.evaluate(() => document.activeElement?.id)).toBe("answer");
    expect(await textOf(page, "#status")).toBe("Ready: 1 tank load");
  });

  it("reads well aloud: every stop of the keyboard has a role and a name", async () => {
    const page = await open();
    await startJob(page, "Bands along rows");
    await page.locator("[data-step=job] > summary").focus();
    const heard = await page.locator("form").ariaSnapshot();
    expect(heard).toContain('group "2. Plot"');
    for (const name of ["Number of rows", "Row length", "Band width", "Row spacing (optional)"])
      expect(heard).toContain(`textbox "${name}"`);
    expect(heard).toContain('combobox "Unit of: Row length"');
    const stops: string[] = [];
    for (let i = 0; i < 10; i++) {
      await page.keyboard.press("Tab");
      const stop = page.locator(":focus");
      stops.push(((await stop.ariaSnapshot()).split("\n")[0] ?? "").replace(/^- |'|:$/g, ""));
    }
    // A part's title, which opens and closes it, says how far it is.
    expect(stops.slice(0, 8)).toEqual([
      "text: 2. Plot 3 fields left",
      'textbox "Number of rows"',
      'textbox "Row length"',
      'combobox "Unit of: Row length"',
      'textbox "Band width"',
      'combobox "Unit of: Band width"',
      'textbox "Row spacing (optional)"',
      'combobox "Unit of: Row spacing"',
    ]);
  });

  it("keeps several jobs by name, with what was really sprayed and the season so far, and saves them to a file", async () => {
    const page = await openWithJob({ acceptDownloads: true });
    // The season is that of the page's own year.
    const today = "2031-05-02T10:00:00";
    await page.clock.setFixedTime(today);
    const jobs = page.locator("#my-jobs > summary");
    await jobs.click();
    await page.locator("#job-name").fill("North beds");
    await page.locator("#job-name").blur();
    await page.getByText("Record it after spraying").click();
    await page.locator("#record-finished").fill("2031-01-02T09:30");
    await page.locator("#record-left").fill("about a cup");
    await page.locator("#save-record").click();
    expect(await textOf(page, ".record .fault")).toContain("number");
    await page.locator("#record-left").fill("0.5 gal");
    await page.locator("#record-applicator").fill("A. Example");
    await page.locator("#record-started").fill("2031-01-02T10:30");
    await page.locator("#save-record").click();
    expect(await textOf(page, ".record .fault")).toContain("is after the end");
    await page.locator("#record-started").fill("2031-01-02T08:15");
    await page.locator("#record-location").fill("North of the pond");
    await page.locator("#record-certification").fill("EX-17");
    expect(await texts(page, ".record .field:not(:has(.optional)) label")).toEqual([
      "Finished",
      "Mix left over, tank and hose",
    ]);
    await page.locator("#save-record").click();
    const done = reconcile(planApplication(JOB), { finished: "2031-01-02T09:30", left: qty(0.5, "gal") });
    const total = done.record.products.map(
      ({ name, applied }) => `${name} ${formatQuantity(applied, { digits: 4 })}`,
    );
    expect(await textOf(page, "#season li")).toContain(`2031-01-02: ${total.join(", ")}`);
    // Against what the plot should have had, not against what was mixed: 5% more than that.
    const off = done.plots[0]?.products[0]?.fromPlanPercent ?? 0;
    expect(await textOf(page, "#saved")).toContain(`${Math.round(100 + off)}% of the planned rate`);

    // A button that is pressed twice records it once, and what is recorded goes with its place.
    await page.locator("#save-record").click();
    for (const name of ["South beds", "North beds"]) {
      await page.locator("#job-name").fill(name);
      await page.locator("#job-name").blur();
      expect(await textOf(page, "#my-jobs h2")).toBe(`${name}: season so far`);
      expect(await page.locator("#season li").count()).toBe(1);
    }
    expect(await textOf(page, "#season p")).toMatch(/^Product A: 1 application, [\d.]+ pt\/ac total$/);

    // The next spraying of the same place is held against the season's limit.
    await type(page, "products[0].label.seasonMax", "2", "pt/ac");
    expect(await textOf(page, "#found .refusal")).toContain("season");
    // The next year is another season.
    await page.clock.setFixedTime("2032-05-02T10:00:00");
    await type(page, "products[0].label.seasonMax", "2.0");
    expect(await page.locator("#found .refusal").count()).toBe(0);
    const recorded = seasonSoFar({ product: "Product A", records: [done.record] });
    // What was put on before the page was used, or without it, counts as well.
    await type(page, "products[0].soFar.rate", "24", "fl_oz/ac");
    expect(await textOf(page, "#found .refusal")).toContain("With 1.5 pt/ac already used");
    await page.clock.setFixedTime(today);
    await type(page, "products[0].label.seasonMax", "3.4");
    expect(await textOf(page, "#found .refusal")).toContain(
      `With ${formatQuantity(sumQuantities([recorded.rate as VolumeRate, qty(24, "fl_oz/ac")]), { digits: 3 })} already used`,
    );
    await type(page, "products[0].soFar.rate", "");
    await type(page, "products[0].label.seasonMax", "");

    await page.locator("#new-job").click();
    expect(await textOf(page, "#status")).toBe("Choose a job first");
    expect(await textOf(page, "#season")).toContain("No applications recorded here yet.");
    const [download] = await Promise.all([page.waitForEvent("download"), page.locator("#export").click()]);
    const saved = readFileSync(await download.path(), "utf8");
    const [record] = JSON.parse(saved).records;
    expect(record).toMatchObject({
      applicator: "A. Example",
      started: "2031-01-02T08:15",
      location: "North of the pond",
      certification: "EX-17",
    });
    const filledIn = ["started", "location", "applicator", "certification"];
    expect(done.record.missing).toEqual(expect.arrayContaining(filledIn));
    expect(record.missing).toEqual(done.record.missing.filter((name) => !filledIn.includes(name)));

    const other = await open();
    await other.clock.setFixedTime(today);
    const file = { name: "saved.json", mimeType: "application/json" };
    await other.locator("#my-jobs > summary").click();
    await other.locator("#import").setInputFiles({ ...file, buffer: Buffer.from("{}") });
    await expect.poll(() => textOf(other, "#file-status")).toBe("This file has no jobs of this page.");
    await other.locator("#import").setInputFiles({ ...file, buffer: Buffer.from(saved) });
    await expect.poll(() => textOf(other, "#file-status")).toBe("Jobs read: 2, records: 1.");
    await other.locator("#jobs").selectOption({ label: "North beds" });
    expect(await textOf(other, "#status")).toBe("Ready: 2 tank loads");
    expect(await textOf(other, "#season li")).toContain(total.join(", "));
    await other.locator("#delete-job").click();
    expect(await texts(other, "#jobs option")).not.toContain("North beds");
    await other.locator("#undo").click();
    expect(await texts(other, "#jobs option")).toContain("North beds");
  });

  // An invented field of about 100 m, with a pond in it.
  const FIELD = {
    type: "Polygon",
    coordinates: [
      [
        [-93.5, 42.0],
        [-93.4985, 42.0001],
        [-93.4984, 42.001],
        [-93.5001, 42.0009],
        [-93.5, 42.0],
      ],
      [
        [-93.4995, 42.0004],
        [-93.4993, 42.0004],
        [-93.4993, 42.0006],
        [-93.4995, 42.0004],
      ],
    ],
  } as const;

  it("takes a boundary from a GeoJSON file, as exact as on the ellipsoid", async () => {
    const page = await open();
    await startJob(page, "A boundary I walk");
    const file = (content: unknown) => ({
      name: "field.geojson",
      mimeType: "application/geo+json",
      buffer: Buffer.from(JSON.stringify(content)),
    });
    const collection = { type: "FeatureCollection", features: [{ type: "Feature", geometry: FIELD }] };
    await page.locator("#boundary-file").setInputFiles(file(collection));
    await expect.poll(() => field(page, "plot.ground").inputValue()).not.toBe("");
    const unit = await page.locator('[data-place="plot.ground"] + select').inputValue();
    const shown = Number(await field(page, "plot.ground").inputValue());
    const exact = valueIn(geodesicArea(FIELD).ground, unit as "ac");
    expect(unit).toBe("ac");
    expect(Math.abs(shown / exact - 1)).toBeLessThan(1e-5);
    await page.locator("#boundary-file").setInputFiles(file({ type: "Point", coordinates: [0, 0] }));
    await expect.poll(() => textOf(page, ".field [role=status]")).toContain("no single plot");
  });

  // A triangle: what is off on one side is not made up for on another.
  it.each([-45, 0.5, 20, 42, 65])(
    "is within one part in a million over a kilometer, at latitude %d",
    async (south) => {
      const page = await open();
      await startJob(page, "A boundary I walk");
      const [across, up] = [0.009 / Math.cos((south * Math.PI) / 180), 0.009];
      const shape = {
        type: "Polygon",
        coordinates: [
          [
            [10, south],
            [10 + across, south],
            [10, south + up],
            [10, south],
          ],
        ],
      } as const;
      const buffer = Buffer.from(JSON.stringify(shape));
      const file = { name: "field.geojson", mimeType: "application/geo+json", buffer };
      await page.locator("#boundary-file").setInputFiles(file);
      await expect.poll(() => field(page, "plot.ground").inputValue()).not.toBe("");
      // The field shows six digits; what is kept and planned with has all of them.
      const kept = await page.evaluate(() => JSON.parse(Object.values(localStorage)[0] as string));
      const { quantity } = kept.jobs[0].entries["plot.ground"].typed;
      expect(Math.abs(valueIn(quantity, "m2") / valueIn(geodesicArea(shape).ground, "m2") - 1)).toBeLessThan(
        1e-6,
      );
    },
  );

  it("takes a boundary from the phone's position, and asks for it on a tap", async () => {
    const corners = FIELD.coordinates[0];
    const at = ([longitude, latitude]: readonly [number, number]) => ({ longitude, latitude, accuracy: 4 });
    const page = await open({ ...PHONE, permissions: ["geolocation"], geolocation: at(corners[0]) }, () => {
      const { watchPosition } = Geolocation.prototype;
      Geolocation.prototype.watchPosition = function (...given) {
        document.documentElement.dataset.asked = "yes";
        return watchPosition.apply(this, given);
      };
    });
    await startJob(page, "A boundary I walk");
    const asked = async () => page.locator("html").getAttribute("data-asked");
    expect(await asked()).toBe(null);
    await page.locator("#walk").click();
    expect(await asked()).toBe("yes");
    for (const [i, corner] of corners.slice(0, 4).entries()) {
      await page.context().setGeolocation(at(corner));
      await expect.poll(() => textOf(page, ".field [role=status]")).toContain(`${i + 1} points`);
    }
    await page.locator("#walk").click();
    const ground = valueIn(geodesicArea({ ...FIELD, coordinates: [corners] }).ground, "ac");
    await expect
      .poll(async () => Number(await field(page, "plot.ground").inputValue()) / ground)
      .toBeCloseTo(1, 4);
  });

  it("works without a network once it was open, and still has the last job", async () => {
    const page = await openWithJob();
    const before = await texts(page, ".amount-text");
    await page.getByText("Works without a signal").waitFor();
    await page.context().setOffline(true);
    await page.reload();
    expect(await field(page, "sprayer.workingFill").inputValue()).toBe("3.5");
    expect(await texts(page, ".amount-text")).toEqual(before);
    await type(page, "plot.rows", "28");
    expect(await textOf(page, "#status")).toBe("Ready: 3 tank loads");
    await page.locator("#language").selectOption("es");
    await expect.poll(() => textOf(page, "#status")).toBe("Listo: 3 cargas");
  });

  it("prints a field card of one page with doses and cautions, and nothing else", async () => {
    const page = await openWithJob();
    expect(await page.locator("#card").isVisible()).toBe(false);
    await page.emulateMedia({ media: "print" });
    expect(await page.locator("#form").isVisible()).toBe(false);
    const card = await textOf(page, "#card");
    const plan = planApplication(JOB);
    for (const { doses } of worksheet(plan).loads)
      for (const { product, amount, measures } of doses)
        for (const part of [product, amount, ...measures]) expect(card).toContain(part);
    for (const { message } of plan.cautions) expect(card).toContain(message);
    expect(await barriers(page)).toEqual([]);
    const margin = { top: "15mm", bottom: "15mm", left: "15mm", right: "15mm" };
    expect(pagesOf(await page.pdf({ format: "A4", margin }))).toBe(1);
  });

  it.each<[slip: string, path: string, text: string, says: RegExp]>([
    ["a decimal comma", "sprayer.tank", "3,5", /point for decimals: 3\.5/],
    ["a bare ounce", "products[0].rate", "24 oz/ac", /Which ounce\?/],
    ["a bare percentage", "products[0].rate", "2%", /v\/v.*w\/v/],
    ["a liquid's percentage by weight", "products[0].rate", "2% w/v", /by volume \(v\/v\), not w\/v/],
    ["a fill over the tank", "sprayer.workingFill", "5", /can't fill a 4 gal tank to 5 gal/],
    ["no words for a number", "calibration.used", "about a quart", /Start with a number/],
    ["an empty field", "plot.rowLength", "  ", /^Required\.$/],
  ])("refuses %s beside its field", async (_, place, text, says) => {
    const page = await openWithJob();
    await type(page, place, text);
    await field(page, place).blur();
    expect(await faultOf(page, place)).toMatch(says);
    expect(await textOf(page, "#status")).toBe(text.trim() === "" ? "1 field left" : "1 to fix");
    expect(await texts(page, "#found .missing li")).toHaveLength(1);
    expect(await page.locator(".load").count()).toBe(0);
  });

  it("questions a doubtful figure where it is entered, and below the answer", async () => {
    const page = await openWithJob();
    await type(page, "calibration.used", "34", "gal");
    expect(await faultOf(page, "calibration")).toContain("Check the units of the calibration");
    expect(await textOf(page, "#found .alerts")).toContain(await faultOf(page, "calibration"));
    expect(await page.locator("#fault-calibration").getAttribute("class")).toContain("doubt");
    await type(page, "sprayer.lineVolume", "10", "gal");
    expect(await faultOf(page, "sprayer.lineVolume")).toContain("250% of the 4 gal tank");
    await type(page, "sprayer.lineVolume", "10", "fl_oz");
    await type(page, "calibration.used", "34", "fl_oz");
    expect(await texts(page, ".fault:not(:empty)")).toEqual([]);
  });

  it("says nothing in words that nobody says aloud, and shows no name from code", async () => {
    const page = await open();
    const words = /\b(?:told|tells?|wanted|parted)\b|Given [^.]*;|[a-z]_[a-z]/i;
    const seen = async (): Promise<string> => page.evaluate(() => document.body.textContent ?? "");
    expect(await seen()).not.toMatch(words);
    await example(page);
    await page.getByText("Show the math").click();
    expect(await seen()).not.toMatch(words);
    const places = ["plot.rows", "plot.bandWidth", "sprayer.tank", "calibration.used", "products[0].rate"];
    for (const place of places) await type(page, place, "-1 firkin");
    expect(await texts(page, ".fault:not(:empty)")).toHaveLength(5);
    expect(await seen()).not.toMatch(words);
  });

  it("says what is missing, leads there, and does not nag before", async () => {
    const page = await open();
    await startJob(page, "Bands along rows");
    expect(await texts(page, ".fault:not(:empty)")).toEqual([]);
    await page.getByRole("button", { name: "Next field" }).click();
    expect(await page.evaluate(() => document.activeElement?.id)).toBe("field-plot-rows");
    expect(await texts(page, ".fault:not(:empty)")).toHaveLength(8);
    await page.getByRole("button", { name: "5. Product: Label rate" }).click();
    expect(await page.evaluate(() => document.activeElement?.id)).toBe("field-products-0-rate");
    await expect.poll(() => hidden(page, "#field-products-0-rate")).toEqual([]);
    await typeJob(page);
    await type(page, "plot.bandWidth", "6", "ft");
    // Only the whole job shows that bands overlap: the fault stands beside the band all the same.
    expect(await faultOf(page, "plot.bandWidth")).not.toBe("");
    expect(await textOf(page, "#found")).toContain("Band width");
    expect(await page.locator(".load").count()).toBe(0);
  });

  it("reads and writes numbers as the person's own country does", async () => {
    const page = await open({ ...PHONE, locale: "de-DE" });
    await example(page);
    expect(await field(page, "plot.rowLength").inputValue()).toBe("48,768");
    await type(page, "plot.rowLength", "48,5");
    expect(await faultOf(page, "plot.rowLength")).toBe("");
    // 14 rows of 48.5 m, with bands of 30 in: 0.762 m each (NIST SP 811 (2008), Appendix B). Three digits are printed.
    expect(await textOf(page, "#found")).toContain(formatQuantity(qty(517, "m2"), { locale: "de-DE" }));
    expect(Math.round(14 * 48.5 * 0.762)).toBe(517);
    expect(await textOf(page, "#found")).toMatch(/\d,\d+ mL/);
  });

  it("reads nothing that is typed as markup", async () => {
    const page = await openWithJob();
    await type(page, "products[0].name", "<img src=x onerror=alert(1)>");
    expect(await textOf(page, ".dose b")).toBe("<img src=x onerror=alert(1)>");
    expect(await page.locator("img").count()).toBe(0);
  });

  it.each([
    [
      "nothing that it can read",
      () => localStorage.setItem("swath-to-spoon-2", '{"locale":"en-US","open":0,"jobs":[{"system":"us"}]}'),
    ],
    [
      "no memory at all",
      () =>
        Object.defineProperty(window, "localStorage", {
          get: () => {
            throw new Error("denied");
          },
        }),
    ],
  ])("opens where the browser has kept %s", async (_, prepare) => {
    const page = await open(PHONE, prepare);
    expect(await textOf(page, "#status")).toBe("Choose a job first");
    await example(page);
    expect(await textOf(page, "#status")).toBe("Ready: 2 tank loads");
  });

  it("does not open with a kept job whose units it does not know", async () => {
    const page = await openWithJob();
    await page.evaluate(() => {
      const found = localStorage.getItem("swath-to-spoon-2") ?? "";
      localStorage.setItem("swath-to-spoon-2", found.replace('"unit":"fl_oz"', '"unit":"firkin"'));
    });
    await page.reload();
    expect(await textOf(page, "#status")).toBe("Choose a job first");
  });

  it("asks for the rate anew where a product turns out to be weighed", async () => {
    const page = await openWithJob();
    await choose(page, "products[0].form", "dry");
    expect(await field(page, "products[0].rate").inputValue()).toBe("");
    await type(page, "products[0].rate", "12");
    expect(await texts(page, ".amount-text")).toContain(
      worksheet(
        planApplication({
          ...JOB,
          products: [{ name: "Product A", form: "dry", rate: qty(12, "oz/ac") }],
        }),
      ).loads[0]?.doses[0]?.amount,
    );
    // Spoons do not weigh: without a scale the answer says so, and a tick makes it right.
    expect(await textOf(page, "#found .alerts")).toContain("Product A");
    await reveal(page.locator("#scales"));
    await page.locator("#scales").check();
    expect((await texts(page, ".part p")).join()).toContain("on the 200 g scale");
  });

  it("takes a product out again, and clears everything and brings it back", async () => {
    const page = await openWithJob();
    await reveal(page.locator("#remove-0"));
    await page.locator("#remove-0").click();
    expect(await field(page, "products[0].name").inputValue()).toBe("Product B");
    expect(await field(page, "products[0].rate").inputValue()).toBe("0.25");
    expect(await textOf(page, "#status")).toBe("Ready: 2 tank loads");
    await page.locator("#my-jobs > summary").click();
    await page.getByRole("button", { name: "Clear this job" }).click();
    expect(await textOf(page, "#status")).toBe("Choose a job first");
    await page.getByRole("button", { name: "Undo" }).click();
    expect(await field(page, "plot.rows").inputValue()).toBe("14");
    expect(await textOf(page, "#status")).toMatch(READY);
  });

  it.each(["light", "dark"] as const)("has no barrier that axe finds, in %s", async (colorScheme) => {
    const page = await open({ ...PHONE, colorScheme });
    expect(await barriers(page)).toEqual([]);
    await startJob(page, "Whole block");
    await page.getByRole("button", { name: "Next field" }).click();
    expect(await barriers(page)).toEqual([]);
    await example(page);
    await page.getByText("Show the math").click();
    await page.getByText("Record it after spraying").click();
    await page.locator("#my-jobs > summary").click();
    await reveal(field(page, "products[0].label.max"));
    expect(await barriers(page)).toEqual([]);
    await type(page, "products[0].label.max", "1", "pt/ac");
    expect(await barriers(page)).toEqual([]);
  });

  it.each([
    [320, "100%"],
    [375, "100%"],
    [390, "200%"],
    [1280, "100%"],
  ])("needs no scrolling sideways at %i px with type of %s, and gives a thumb room", async (width, size) => {
    const page = await open({ viewport: { width, height: 740 } });
    await page.evaluate((large) => {
      if (large !== "100%") document.documentElement.style.fontSize = large;
    }, size);
    expect(await scrollsSideways(page)).toBe(false);
    await example(page);
    await page.getByText("Show the math").click();
    for (const part of await page.locator(".step").all()) {
      await part.evaluate((one) => one.setAttribute("open", ""));
      expect(await scrollsSideways(page)).toBe(false);
    }
    for (const tools of ["us-spoons", "syringes", "cylinders"]) {
      await type(page, "tools", tools);
      expect(await scrollsSideways(page)).toBe(false);
    }
    expect(await tooLow(page)).toEqual([]);
  });
});
