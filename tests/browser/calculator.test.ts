import { type ChildProcess, execFileSync, spawn } from "node:child_process";
import { readdirSync, readFileSync } from "node:fs";
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
import type { PlanInput } from "../../src/plan/input.ts";
import { planApplication } from "../../src/plan/plan.ts";
import { planWorking } from "../../src/plan/plan-steps.ts";
import { valueIn } from "../../src/units/convert.ts";
import { formatQuantity } from "../../src/units/format.ts";
import { parseQuantity } from "../../src/units/parse.ts";
import { qty } from "../../src/units/quantity.ts";
import { worksheet } from "../../src/worksheet/worksheet.ts";
import { installInto, root } from "../package/pack.mjs";
import { barriers, pagesOf, scrollsSideways, tooLow } from "./checks.ts";
import { chromium, FLAGS } from "./chromium.mjs";

const folder = join(root, "examples/calculator");
const path = chromium();

const PHONE = { viewport: { width: 375, height: 740 } };

/** The job that is typed into the page, as a program gives it: an invented plot and invented products. */
const JOB: PlanInput = {
  plot: {
    kind: "row-bands",
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
const contexts: BrowserContext[] = [];
/** Everything that a console would show in red, violations of the policy included. */
let complaints: string[] = [];

async function open(options: BrowserContextOptions = PHONE, prepare?: () => void): Promise<Page> {
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
  await page.goto(address);
  return page;
}

function field(page: Page, label: string): Locator {
  return page.getByRole("textbox", { name: label, exact: true }).first();
}

/** Types an amount, and picks its unit where there is a choice. */
async function type(page: Page, label: string, text: string, unit?: string): Promise<void> {
  await field(page, label).fill(text);
  if (unit === undefined) return;
  const name = `Unit of: ${label.replace(" (optional)", "")}`;
  await page.getByLabel(name, { exact: true }).first().selectOption(unit);
}

async function typeJob(page: Page): Promise<void> {
  await type(page, "Number of rows", "14");
  await type(page, "Row length", "160");
  await type(page, "Band width", "30");
  await type(page, "Row spacing", "5", "ft");
  await type(page, "Strip length", "120");
  await type(page, "Spray width in one pass", "30");
  await type(page, "Water used (refill)", "34");
  await type(page, "Tank size", "4");
  await type(page, "Fill the tank to (optional)", "3 1/2 gal");
  await type(page, "Held in hose, wand and boom (optional)", "10");
  await type(page, "Extra mix to allow, % (optional)", "5");
  await type(page, "Name", "Product A");
  await type(page, "Label rate", "1 1/2", "pt/ac");
  await page.getByRole("button", { name: "Add another product" }).click();
  const second = page.getByRole("group", { name: "Product 2" });
  await second.getByRole("textbox", { name: "Name" }).fill("Product B");
  await second.getByRole("textbox", { name: "Label rate" }).fill("0.25");
  await second.getByLabel("Unit of: Label rate").selectOption("%");
}

let kept: BrowserContextOptions = {};

/** The page with the job in it: typed the first time, and from then on as it is kept for the next visit. */
async function openWithJob(): Promise<Page> {
  const page = await open({ ...PHONE, ...kept });
  if (kept.storageState !== undefined) return page;
  await typeJob(page);
  kept = { storageState: await page.context().storageState() };
  return page;
}

async function textOf(page: Page, selector: string): Promise<string> {
  return (await page.locator(selector).first().textContent()) ?? "";
}

async function faultOf(page: Page, label: string): Promise<string> {
  const id = await field(page, label).getAttribute("id");
  return textOf(page, `#${id?.replace("field-", "fault-")}`);
}

async function texts(page: Page, selector: string): Promise<string[]> {
  return page.locator(selector).allInnerTexts();
}

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
      server.stdout?.on("data", (said) => {
        const found = /http:\/\/\S+/.exec(String(said));
        if (found) resolve(found[0]);
      });
      server.on("exit", (code) => reject(new Error(`the example ended with ${code}`)));
    });
    browser = await playwright.launch({ executablePath: path, args: FLAGS });
  });

  afterEach(async () => {
    for (const context of contexts.splice(0)) await context.close();
    const said = complaints;
    complaints = [];
    expect(said).toEqual([]);
  });

  afterAll(async () => {
    await browser?.close();
    server?.kill();
  });

  it("compiles against the packed types", () => {
    const tsc = join(root, "node_modules/typescript/bin/tsc");
    const kept = ["--incremental", "--tsBuildInfoFile", join(root, ".tmp/calculator.tsbuildinfo")];
    execFileSync(process.execPath, [tsc, "-p", folder, ...kept], { encoding: "utf8" });
  });

  it("prints the size of what a phone loads", () => {
    const assets = join(folder, "dist-page/assets");
    const sizes = readdirSync(assets).map((name) => {
      const content = readFileSync(join(assets, name));
      return { name: name.replace(/-[^.]*/, ""), raw: content.length, gzip: gzipSync(content).length };
    });
    for (const { name, raw, gzip } of sizes)
      console.log(`${name}: ${(raw / 1000).toFixed(1)} kB, ${(gzip / 1000).toFixed(1)} kB gzipped`);
    expect(sizes.map(({ name }) => name).sort()).toEqual(["index.css", "index.js"]);
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
    // These were wanted.
    expect(complaints.length).toBeGreaterThan(0);
    complaints = [];
  });

  it("plans a job that is typed in on a phone, with the figures that the library gives in Node", async () => {
    const page = await open();
    await expect.poll(() => textOf(page, "#status")).toBe("9 fields left");

    await type(page, "Number of rows", "14.5");
    expect(await faultOf(page, "Number of rows")).toBe("Enter a whole number, 1 or more.");
    expect(await field(page, "Number of rows").getAttribute("aria-invalid")).toBe("true");
    await type(page, "Number of rows", "14");
    expect(await faultOf(page, "Number of rows")).toBe("");
    expect(await field(page, "Number of rows").getAttribute("aria-invalid")).toBe(null);

    await type(page, "Row length", "160 gal");
    expect(await faultOf(page, "Row length")).toContain("a volume");
    await typeJob(page);
    expect(await texts(page, ".fault:not(:empty)")).toEqual([]);

    const plan = planApplication(JOB);
    const sheet = worksheet(plan);
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

    await page.getByRole("button", { name: "See your answer" }).click();
    expect(await page.evaluate(() => document.activeElement?.id)).toBe("answer");
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

    await page.getByText("Whole block (broadcast)").click();
    await type(page, "Block length", "200");
    await type(page, "Block width", "51");
    // 51 ft in passes of 30 in are 20.4: 21 passes, the last one overlapping by 1.5 ft.
    expect(await page.locator(".plot .pass").count()).toBe(21);
    expect(await textOf(page, "figcaption")).toContain("21 passes, each 30 in wide");
    expect(await textOf(page, "figcaption")).toContain("overlaps by 1.5 ft");
  });

  it("tells the same dose in other units, and brings back what was typed", async () => {
    const page = await openWithJob();
    const before = await texts(page, ".amount-text");
    const measures = await texts(page, ".part p");
    for (const system of ["Metric", "Imperial"]) {
      await page.getByText(system, { exact: true }).click();
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
    await page.getByText("Metric", { exact: true }).click();
    expect(await field(page, "Row length").inputValue()).toBe("48.768");
    expect((await texts(page, ".amount-text"))[0]).toContain("mL");
    await page.getByText("US", { exact: true }).click();
    expect(await field(page, "Row length").inputValue()).toBe("160");
    expect(await field(page, "Label rate").first().inputValue()).toBe("1 1/2");
    expect(await texts(page, ".amount-text")).toEqual(before);
  });

  it("shows the working on request, every line of it", async () => {
    const page = await openWithJob();
    expect(await page.locator(".line").count()).toBe(0);
    await page.getByText("Show the math").click();
    const plan = planApplication(JOB);
    const lines = planWorking(plan).flatMap((step) => step.lines);
    await expect.poll(() => page.locator(".line").count()).toBe(lines.length);
    const shown = await texts(page, ".line");
    for (const { numbers, result } of worksheet(plan).steps.flatMap((step) => step.lines)) {
      expect(shown.some((line) => line.includes(numbers) && line.includes(result))).toBe(true);
    }
  });

  it("works without a network once it was open, and still has the last job", async () => {
    const page = await openWithJob();
    const before = await texts(page, ".amount-text");
    await expect
      .poll(() => textOf(page, "#offline"), { timeout: 30_000 })
      .toContain("Works without a signal");
    await page.context().setOffline(true);
    await page.reload();
    expect(await field(page, "Fill the tank to (optional)").inputValue()).toBe("3.5");
    expect(await texts(page, ".amount-text")).toEqual(before);
    await type(page, "Number of rows", "28");
    expect(await textOf(page, "#status")).toBe("Ready: 3 tank loads");
  });

  it("prints a field card of one page with doses and cautions, and nothing else", async () => {
    const page = await openWithJob();
    expect(await page.locator("#card").isVisible()).toBe(false);
    await page.emulateMedia({ media: "print" });
    expect(await page.locator("form").isVisible()).toBe(false);
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

  it("puts a refusal before everything else, on the page and on the card", async () => {
    const page = await openWithJob();
    await page.getByText("Label limits (optional)").first().click();
    await type(page, "Maximum label rate (optional)", "1", "pt/ac");
    expect(await textOf(page, "#found > :nth-child(2) > .refusal")).toContain("Do not spray");
    await page.emulateMedia({ media: "print" });
    expect(await textOf(page, "#card")).toContain("Do not spray");
    expect(await textOf(page, "#card")).not.toContain("Load 1");
  });

  it.each<[slip: string, label: string, text: string, says: RegExp]>([
    ["a decimal comma", "Tank size", "3,5", /point for decimals: 3\.5/],
    ["a bare ounce", "Label rate", "24 oz/ac", /Which ounce\?/],
    ["a bare percentage", "Label rate", "2%", /v\/v.*w\/v/],
    ["a liquid's percentage by weight", "Label rate", "2% w/v", /by volume \(v\/v\), not w\/v/],
    ["a fill over the tank", "Fill the tank to (optional)", "5", /can't fill a 4 gal tank to 5 gal/],
    ["no words for a number", "Water used (refill)", "about a quart", /Start with a number/],
    ["an empty field", "Row length", "  ", /^Required\.$/],
  ])("refuses %s beside its field", async (_, label, text, says) => {
    const page = await openWithJob();
    await type(page, label, text);
    await field(page, label).blur();
    expect(await faultOf(page, label)).toMatch(says);
    expect(await textOf(page, "#status")).toBe(text.trim() === "" ? "1 field left" : "1 to fix");
    expect(await textOf(page, "#found p:nth-of-type(2)")).toBe(
      text.trim() === "" ? "Still to fill in:" : "Fix first:",
    );
    expect(await page.locator(".load").count()).toBe(0);
  });

  it("questions a doubtful figure where it is entered, and above the answer", async () => {
    const page = await openWithJob();
    await type(page, "Water used (refill)", "34", "gal");
    expect(await textOf(page, "#fault-calibration")).toContain(
      "Check the units for the strip and the refill",
    );
    expect(await textOf(page, "#found .alerts")).toContain(await textOf(page, "#fault-calibration"));
    expect(await page.locator("#fault-calibration").getAttribute("class")).toContain("doubt");
    await type(page, "Held in hose, wand and boom (optional)", "10", "gal");
    expect(await faultOf(page, "Held in hose, wand and boom (optional)")).toContain("250% of the 4 gal tank");
    await type(page, "Held in hose, wand and boom (optional)", "10", "fl_oz");
    await type(page, "Water used (refill)", "34", "fl_oz");
    expect(await texts(page, ".fault:not(:empty)")).toEqual([]);
  });

  it("shows what was typed in another unit in the field's own", async () => {
    const page = await openWithJob();
    await type(page, "Tank size", "4 qt");
    await field(page, "Tank size").blur();
    expect(await field(page, "Tank size").inputValue()).toBe("1");
    // 160 ft are 48.768 m: a foot is 0.3048 m (NIST SP 811 (2008), Appendix B).
    await type(page, "Row length", "48.768 m");
    await field(page, "Row length").blur();
    expect(await field(page, "Row length").inputValue()).toBe("160");
  });

  it("says nothing in words that nobody says aloud, and shows no name from code", async () => {
    const page = await open();
    const words = /\b(?:told|tells?|wanted|parted)\b|Given [^.]*;|[a-z]_[a-z]/i;
    const seen = async (): Promise<string> => page.evaluate(() => document.body.textContent ?? "");
    expect(await seen()).not.toMatch(words);
    await page.getByRole("button", { name: "Try an example" }).click();
    await page.getByText("Show the math").click();
    expect(await seen()).not.toMatch(words);
    for (const label of ["Number of rows", "Band width", "Tank size", "Water used (refill)", "Label rate"])
      await type(page, label, "-1 firkin");
    expect(await texts(page, ".fault:not(:empty)")).toHaveLength(5);
    expect(await seen()).not.toMatch(words);
  });

  it("says what is missing, leads there, and does not nag before", async () => {
    const page = await open();
    expect(await texts(page, ".fault:not(:empty)")).toEqual([]);
    await page.getByRole("button", { name: "Next field" }).click();
    expect(await page.evaluate(() => document.activeElement?.id)).toBe("field-plot-rows");
    expect(await texts(page, ".fault:not(:empty)")).toHaveLength(9);
    await typeJob(page);
    await type(page, "Band width", "6", "ft");
    // Only the whole job shows that bands overlap: the fault stands beside the band all the same.
    expect(await faultOf(page, "Band width")).not.toBe("");
    expect(await textOf(page, "#found")).toContain("Band width");
    expect(await page.locator(".load").count()).toBe(0);
  });

  it("reads and writes numbers as the person's own country does", async () => {
    const page = await open({ ...PHONE, locale: "de-DE" });
    await page.getByRole("button", { name: "Try an example" }).click();
    expect(await field(page, "Row length").inputValue()).toBe("48,768");
    await type(page, "Row length", "48,5");
    expect(await faultOf(page, "Row length")).toBe("");
    expect(await textOf(page, "#found")).toContain(
      formatQuantity(qty(14 * 48.5 * 0.762, "m2"), { locale: "de-DE" }),
    );
  });

  it("reads nothing that is typed as markup", async () => {
    const page = await openWithJob();
    await field(page, "Name").fill("<img src=x onerror=alert(1)>");
    expect(await textOf(page, ".dose b")).toBe("<img src=x onerror=alert(1)>");
    expect(await page.locator("img").count()).toBe(0);
  });

  it.each([
    [
      "nothing that it can read",
      () => localStorage.setItem("spray-job-1", '{"locale":"en-US","job":{"system":"us"}}'),
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
    expect(await textOf(page, "#status")).toBe("9 fields left");
    await page.getByRole("button", { name: "Try an example" }).click();
    expect(await textOf(page, "#status")).toBe("Ready: 2 tank loads");
  });

  it("does not open with a kept job whose units it does not know", async () => {
    const page = await openWithJob();
    await page.evaluate(() => {
      const found = localStorage.getItem("spray-job-1") ?? "";
      localStorage.setItem("spray-job-1", found.replace('"unit":"fl_oz"', '"unit":"firkin"'));
    });
    await page.reload();
    expect(await textOf(page, "#status")).toBe("9 fields left");
  });

  it("asks for the rate anew where a product turns out to be weighed", async () => {
    const page = await openWithJob();
    const first = page.getByRole("group", { name: "Product 1" });
    await first.getByText("Dry (by weight)").click();
    expect(await first.getByRole("textbox", { name: "Label rate" }).inputValue()).toBe("");
    await first.getByRole("textbox", { name: "Label rate" }).fill("12");
    expect(await texts(page, ".amount-text")).toContain(
      worksheet(
        planApplication({
          ...JOB,
          products: [{ name: "Product A", form: "dry", rate: qty(12, "oz/ac") }],
        }),
      ).loads[0]?.doses[0]?.amount,
    );
    // Spoons do not weigh: without a scale the answer says so.
    expect(await textOf(page, "#found .alerts")).toContain("Product A");
  });

  it("clears everything, and brings it back", async () => {
    const page = await openWithJob();
    await page.getByRole("button", { name: "Clear all" }).click();
    expect(await field(page, "Number of rows").inputValue()).toBe("");
    await page.getByRole("button", { name: "Undo clear" }).click();
    expect(await field(page, "Number of rows").inputValue()).toBe("14");
    expect(await textOf(page, "#status")).toBe("Ready: 2 tank loads");
  });

  it.each(["light", "dark"] as const)("has no barrier that axe finds, in %s", async (colorScheme) => {
    const page = await open({ ...PHONE, colorScheme });
    await page.getByRole("button", { name: "Next field" }).click();
    expect(await barriers(page)).toEqual([]);
    await page.getByRole("button", { name: "Try an example" }).click();
    await page.getByText("Show the math").click();
    await page.getByText("Label limits (optional)").first().click();
    expect(await barriers(page)).toEqual([]);
  });

  it.each([320, 375, 1280])("needs no scrolling sideways at %i px, and gives a thumb room", async (width) => {
    const page = await open({ viewport: { width, height: 740 } });
    expect(await scrollsSideways(page)).toBe(false);
    await page.getByRole("button", { name: "Next field" }).click();
    await page.getByRole("button", { name: "Try an example" }).click();
    await page.getByText("Show the math").click();
    for (const tools of ["us-spoons", "syringes", "cylinders"]) {
      await page.locator("#tools").selectOption(tools);
      expect(await scrollsSideways(page)).toBe(false);
    }
    expect(await tooLow(page)).toEqual([]);
  });
});
