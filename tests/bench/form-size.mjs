// What a form's bundle weighs (esbuild, minified, gzipped): with zod/mini as shipped, and as it would be with zod itself.
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import { build } from "esbuild";
import { root } from "../package/pack.mjs";

// The schemas stand on a few classes and functions, which zod has too, by names without "Mini".
const withZod = {
  name: "zod instead of zod/mini",
  setup: ({ onLoad }) =>
    onLoad({ filter: /dist[\\/]schema[\\/]index\.js$/ }, ({ path }) => ({
      contents: readFileSync(path, "utf8").replaceAll("zod/mini", "zod").replaceAll("z.ZodMini", "z.Zod"),
      loader: "js",
    })),
};

async function size(code, plugins = []) {
  const { outputFiles } = await build({
    stdin: { contents: code, resolveDir: join(root, "dist") },
    bundle: true,
    minify: true,
    format: "esm",
    platform: "browser",
    write: false,
    logLevel: "error",
    logOverride: { "ignored-bare-import": "silent" },
    plugins,
  });
  return gzipSync(outputFiles[0].contents).length / 1000;
}

const parse = 'export { parsePlanInput } from "./schema/index.js";';
const plan = 'export { planApplication } from "./plan/index.js";';
const rows = {
  parsePlanInput: [parse],
  "parsePlanInput, with zod": [parse, [withZod]],
  planApplication: [plan],
  both: [parse + plan],
  "both, with zod": [parse + plan, [withZod]],
  "quantitySchema alone": ['export { quantitySchema } from "./schema/index.js";'],
  "the root entry, planApplication": ['export { planApplication } from "./index.js";'],
};
for (const [name, [code, plugins]] of Object.entries(rows))
  console.log(`  ${name.padEnd(34)} ${(await size(code, plugins)).toFixed(1).padStart(6)} kB gzipped`);
