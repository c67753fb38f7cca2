import { existsSync, readFileSync } from "node:fs";
import { expect, it } from "vitest";

// README and the page itself say that every function is on it, in the part of the subpath that it is imported from.

const page = readFileSync("docs/which-function.md", "utf8");
const parts = new Map(
  page
    .split(/^## /m)
    .slice(1)
    .map((part) => [part.slice(0, part.indexOf("\n")), part] as const),
);
const { exports } = JSON.parse(readFileSync("package.json", "utf8")) as {
  readonly exports: Readonly<Record<string, unknown>>;
};
// The root has the functions of all, and `working` those of all under the same names.
const subpaths = Object.keys(exports)
  .filter((path) => path.startsWith("./") && !/\.json$|\*|^\.\/working$/.test(path))
  .map((path) => path.slice(2));

it.each(subpaths)("%s has all its functions in docs/which-function.md, and no others", async (path) => {
  const part = parts.get(path) ?? "";
  const named = new Set([...part.matchAll(/`([a-z]\w+)`/g)].map(([, name]) => name));
  const file = existsSync(`src/${path}/index.ts`) ? `${path}/index.ts` : `${path}.ts`;
  const exported: Readonly<Record<string, unknown>> = await import(`../../src/${file}`);
  const functions = Object.keys(exported).filter((name) => typeof exported[name] === "function");
  expect(functions.filter((name) => !named.has(name))).toEqual([]);
  // A language has tables of words, which functions of other subpaths take.
  if (functions.length > 0) expect([...named].filter((name) => !(String(name) in exported))).toEqual([]);
});

it("finds them all in the root, but for the parts that docs/getting-started.md leaves out", async () => {
  const guide = readFileSync("docs/getting-started.md", "utf8");
  const leftOut = /package root has them all, except ([^.]*)\./.exec(guide)?.[1] ?? "";
  const root: Readonly<Record<string, unknown>> = await import("../../src/index.ts");
  for (const path of subpaths.filter(
    (one) => !leftOut.includes(`\`${one.replace(/^words.*/, "words/*")}\``),
  )) {
    const part: Readonly<Record<string, unknown>> = await import(`../../src/${path}/index.ts`);
    expect([path, Object.keys(part).filter((name) => !(name in root))]).toEqual([path, []]);
  }
});
