import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { root } from "../package/pack.mjs";

const docs = join(root, "docs");
const page = readFileSync(join(docs, "gallery.md"), "utf8");
const pictures = [...page.matchAll(/!\[([^\]]+)\]\(([^)]+)\)/g)].map(([, alt = "", file = ""]) => ({
  alt,
  file,
}));

/** The size of a PNG, from its header: ISO/IEC 15948:2004, 11.2.2. */
function sizeOf(png: Buffer): [width: number, height: number] {
  expect(png.toString("latin1", 1, 4)).toBe("PNG");
  return [png.readUInt32BE(16), png.readUInt32BE(20)];
}

describe("the gallery", () => {
  it("has a picture of the page, the card, the worksheet, the practice sheet, the key and the board", () => {
    const names = ["phone", "card", "worksheet", "practice-sheet", "key", "board"];
    expect(pictures.map(({ file }) => file)).toEqual(names.map((name) => `pictures/${name}.png`));
    const files = names.map((name) => `${name}.png`).sort();
    expect(readdirSync(join(docs, "pictures")).sort()).toEqual([...files, "taken.json"].sort());
    const taken = JSON.parse(readFileSync(join(docs, "pictures/taken.json"), "utf8"));
    expect(Object.keys(taken).sort()).toEqual(files);
    for (const { file } of pictures) expect(existsSync(join(docs, file)), file).toBe(true);
  });

  it("says what each shows, in pictures that a page loads at once", () => {
    for (const { alt, file } of pictures) {
      const content = readFileSync(join(docs, file));
      const [width, height] = sizeOf(content);
      expect(Math.min(width, height), file).toBeGreaterThanOrEqual(390);
      expect(content.length, file).toBeLessThan(150_000);
      expect(alt.length, file).toBeGreaterThan(40);
    }
  });
});
