import { copyFileSync, existsSync, mkdirSync } from "node:fs";
import { join } from "node:path";
import { recipes, writeRecipes } from "../helpers/recipes.mjs";
import { changed, installInto, npm, root } from "../package/pack.mjs";

/** The folder that the recipes run in, with the packed package, what they need beside it, and the recipes asked for. */
export function prepared(names) {
  const here = join(root, "tests/recipes");
  const folder = join(root, ".tmp/recipes");
  mkdirSync(folder, { recursive: true });
  const installed = join(folder, "node_modules/.package-lock.json");
  if (!existsSync(installed) || changed(installed) < changed(join(here, "package-lock.json"))) {
    console.log("Installing what the recipes need into .tmp/recipes …");
    for (const name of ["package.json", "package-lock.json", ".npmrc"])
      copyFileSync(join(here, name), join(folder, name));
    npm(["ci"], folder);
  }
  installInto(folder);
  writeRecipes(folder, names);
  return { folder, recipe: (name) => recipes().get(name) };
}
