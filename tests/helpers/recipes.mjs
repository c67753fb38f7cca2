import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";

// A block names its file in its first line, in whatever way its language writes a comment.
const BLOCK = /```\w+\n((?:\/\/|--|#|<!--) (\S+\.\w+)(?: -->)?\n[\s\S]*?)```/g;

/** The recipes of docs/recipes.md by the name of their file. */
export function recipes() {
  const page = readFileSync(new URL("../../docs/recipes.md", import.meta.url), "utf8");
  return new Map([...page.matchAll(BLOCK)].map(([, code, name]) => [name, code]));
}

/** Writes recipes as they stand on the page into a folder. */
export function writeRecipes(folder, names) {
  const all = recipes();
  for (const name of names) {
    if (!all.has(name)) throw new Error(`docs/recipes.md has no ${name}`);
    mkdirSync(dirname(join(folder, name)), { recursive: true });
    writeFileSync(join(folder, name), all.get(name));
  }
}
