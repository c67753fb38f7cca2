import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { type Browser, chromium as playwright } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { installInto } from "../package/pack.mjs";
import { chromium, FLAGS } from "./chromium.mjs";
import { type FolderServer, serve } from "./serve.ts";

// The page in docs/getting-started.md that does without a bundler, in a folder that has the packed tarball installed.
const path = chromium();
const folder = mkdtempSync(join(tmpdir(), "import-map-"));

if (path === undefined && !process.env.CI) console.warn("skipped: no Chromium or Chrome found; set CHROMIUM");

describe.skipIf(path === undefined && !process.env.CI)("a page without a bundler", () => {
  let server: FolderServer;
  let browser: Browser;

  beforeAll(async () => {
    if (path === undefined) throw new Error("CI has no browser");
    const guide = readFileSync("docs/getting-started.md", "utf8");
    const [, page = ""] = /```html\n([\s\S]*?)```/.exec(guide) ?? [];
    writeFileSync(join(folder, "package.json"), JSON.stringify({ private: true }));
    writeFileSync(join(folder, "page.html"), page);
    installInto(folder);
    server = await serve(folder);
    browser = await playwright.launch({ executablePath: path, args: FLAGS });
  });

  afterAll(async () => {
    await browser?.close();
    server?.close();
    rmSync(folder, { recursive: true, force: true });
  });

  it("finds the packages by the import map, as the guide says", async () => {
    const page = await browser.newPage();
    await page.goto(`${server.address}/page.html`);
    // 4 US gallons of 231 cubic inches: 15.1416 L (NIST Handbook 44 (2024), Appendix C).
    await expect.poll(() => page.locator("output").textContent()).toBe("15.14 L");
  });
});
