import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { root } from "../package/pack.mjs";

/**
 * Takes a picture for docs/gallery.md where there is none, and notes when: another browser draws other pixels, so these aren't
 * compared. Delete one to have it made anew.
 */
export async function picture(page: Page, name: string, width: number, height: number): Promise<void> {
  const file = join(root, "docs/pictures", `${name}.png`);
  if (existsSync(file)) return;
  await page.setViewportSize({ width, height });
  // What moves has come to rest.
  await page.waitForTimeout(500);
  writeFileSync(file, await page.screenshot());
  const list = join(root, "docs/pictures/taken.json");
  const taken = { ...JSON.parse(readFileSync(list, "utf8")), [`${name}.png`]: new Date().toISOString() };
  writeFileSync(list, `${JSON.stringify(taken, null, 2)}\n`);
}
