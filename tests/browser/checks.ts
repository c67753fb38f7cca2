import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { Page } from "playwright-core";

const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

/**
 * What axe finds, with the places: empty where there is nothing to complain of. It fetches style sheets once more, which a
 * page's policy may not let it do.
 */
export async function barriers(page: Page, { preload = true } = {}): Promise<string[]> {
  await page.evaluate(axe);
  return page.evaluate(
    async (options) => {
      const { axe: loaded } = globalThis as unknown as {
        axe: {
          run(options: object): Promise<{ violations: { id: string; nodes: { target: unknown }[] }[] }>;
        };
      };
      const { violations } = await loaded.run(options);
      return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target).join(", ")}`);
    },
    { preload },
  );
}

export async function scrollsSideways(page: Page): Promise<boolean> {
  return page.evaluate(() => document.documentElement.scrollWidth > document.documentElement.clientWidth);
}

/** The heights of what is touched that are lower than a thumb needs: 48 px. */
export async function tooLow(page: Page): Promise<number[]> {
  return page
    .locator("button, select, summary, input[type=text], label:has(input)")
    .evaluateAll((all) =>
      all.map((one) => one.getBoundingClientRect().height).filter((height) => height > 0 && height < 48),
    );
}

/** How many pages a PDF has: its page objects. */
export function pagesOf(pdf: Buffer): number {
  return pdf.toString("latin1").match(/\/Type\s*\/Page\b(?!s)/g)?.length ?? 0;
}
