import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { buildSync } from "esbuild";
import { type Browser, type Page, chromium as playwright } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { planApplication } from "../../src/plan/index.ts";
import { TWO_PRODUCTS } from "../helpers/jobs.ts";
import { writeRecipes } from "../helpers/recipes.mjs";
import { installInto } from "../package/pack.mjs";
import { chromium, FLAGS } from "./chromium.mjs";
import { type FolderServer, serve } from "./serve.ts";

// The recipes for browsers in docs/recipes.md, as they stand there, in a folder that has the packed tarball installed.
const path = chromium();
const folder = mkdtempSync(join(tmpdir(), "recipes-"));

if (path === undefined && !process.env.CI) console.warn("skipped: no Chromium or Chrome found; set CHROMIUM");

describe.skipIf(path === undefined && !process.env.CI)("recipes for browsers", () => {
  let server: FolderServer;
  let browser: Browser;

  beforeAll(async () => {
    if (path === undefined) throw new Error("CI has no browser");
    writeFileSync(join(folder, "package.json"), JSON.stringify({ private: true }));
    writeFileSync(
      join(folder, "blank.html"),
      `<!doctype html><meta http-equiv="Content-Security-Policy" content="default-src 'self'">`,
    );
    installInto(folder);
    writeRecipes(folder, ["strict.html", "strict.js", "worker.mjs", "page.mjs", "service-worker.mjs"]);
    for (const name of ["worker", "service-worker"])
      buildSync({
        entryPoints: [join(folder, `${name}.mjs`)],
        outfile: join(folder, `${name}.js`),
        bundle: true,
        format: "esm",
        logLevel: "error",
      });
    server = await serve(folder);
    browser = await playwright.launch({ executablePath: path, args: FLAGS });
  });

  afterAll(async () => {
    await browser?.close();
    server?.close();
    rmSync(folder, { recursive: true, force: true });
  });

  async function open(name: string): Promise<{ page: Page; complaints: string[] }> {
    const page = await browser.newPage();
    const complaints: string[] = [];
    page.on("pageerror", (error) => complaints.push(String(error)));
    page.on("console", (message) => {
      if (message.type() === "error" && !/favicon/.test(message.location().url))
        complaints.push(message.text());
    });
    await page.goto(`${server.address}/${name}`);
    return { page, complaints };
  }

  const plan = JSON.parse(JSON.stringify(planApplication(TWO_PRODUCTS))) as object;
  const wrong = { ...TWO_PRODUCTS, sprayer: { tank: "4 gal", workingFil: "3 gal" } };

  it("loads the geodesic area in a strict page without a bundler", async () => {
    const { page, complaints } = await open("strict.html");
    // The radii of curvature of WGS 84 (NGA.STND.0036, 2014: a = 6378137 m, 1/f = 298.257223563) in the middle of so small a
    // plot, times the angles.
    const f = 1 / 298.257223563;
    const e2 = f * (2 - f);
    const latitude = (50.0005 * Math.PI) / 180;
    const w = Math.sqrt(1 - e2 * Math.sin(latitude) ** 2);
    const along = ((6378137 * (1 - e2)) / w ** 3) * ((0.001 * Math.PI) / 180);
    const across = (6378137 / w) * Math.cos(latitude) * ((0.002 * Math.PI) / 180);
    const hectares = ((along * across) / 10_000).toPrecision(3);
    await expect.poll(() => page.locator("output").textContent()).toMatch(new RegExp(`^${hectares}\\d* ha$`));
    expect(complaints).toEqual([]);
  });

  it("plans in a web worker, and gives a wrong job's issues back", async () => {
    const { page, complaints } = await open("blank.html");
    // As text: a function would be rewritten for the test's own modules.
    const ask = (job: object) =>
      page.evaluate(`import("/page.mjs").then(({ planOf }) => planOf(${JSON.stringify(job)}))`);
    expect(await ask(TWO_PRODUCTS)).toMatchObject({ plan });
    expect(await ask(wrong)).toMatchObject({ issues: [{ path: "sprayer.workingFil" }] });
    expect(complaints).toEqual([]);
  });

  it("answers in a service worker as a server would", async () => {
    const { page } = await open("blank.html");
    await page.evaluate(async () => {
      const claimed = new Promise((done) =>
        navigator.serviceWorker.addEventListener("controllerchange", done),
      );
      await navigator.serviceWorker.register("service-worker.js", { type: "module" });
      await claimed;
    });
    const ask = (job: object) =>
      page.evaluate(async (sent) => {
        const response = await fetch("plan", { method: "POST", body: JSON.stringify(sent) });
        return { status: response.status, body: await response.json() };
      }, job);
    expect(await ask(TWO_PRODUCTS)).toEqual({ status: 200, body: plan });
    expect(await ask(wrong)).toMatchObject({
      status: 400,
      body: { issues: [{ path: "sprayer.workingFil" }] },
    });
  });
});
