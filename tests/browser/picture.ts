import { existsSync, mkdirSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import type { Page } from "playwright-core";
import { root } from "../package/pack.mjs";

/**
 * Takes a picture for docs/gallery.md where there is none: another browser draws other pixels, so they aren't compared. Delete one
 * to have it made anew.
 */
export async function picture(page: Page, name: string, width: number, height: number): Promise<void> {
  const file = join(root, "docs/pictures", `${name}.png`);
  if (existsSync(file)) return;
  await page.setViewportSize({ width, height });
  mkdirSync(dirname(file), { recursive: true });
  // What moves has come to rest.
  await page.waitForTimeout(500);
  writeFileSync(file, await page.screenshot());
}
