// What a form's bundle weighs (esbuild, minified, gzipped): with zod/mini as shipped, and as it would be with zod itself.
import { readFileSync } from "node:fs";
import { bundleSize } from "../helpers/bundle.mjs";

// The schemas stand on a few classes and functions, which zod has too, by names without "Mini".
const withZod = {
  name: "zod instead of zod/mini",
  setup: ({ onLoad }) =>
    onLoad({ filter: /dist[\\/]schema[\\/]index\.js$/ }, ({ path }) => ({
      contents: readFileSync(path, "utf8").replaceAll("zod/mini", "zod").replaceAll("z.ZodMini", "z.Zod"),
      loader: "js",
    })),
};

const parse = 'export { parsePlanInput } from "./schema/index.js";';
const schema = 'export { planInputSchema } from "./schema/index.js";';
const plan = 'export { planApplication } from "./plan/index.js";';
const rows = {
  parsePlanInput: [parse],
  planInputSchema: [schema],
  "planInputSchema, with zod": [schema, [withZod]],
  planApplication: [plan],
  "parsePlanInput and planApplication": [parse + plan],
  "quantitySchema alone": ['export { quantitySchema } from "./schema/index.js";'],
  "the root entry, planApplication": ['export { planApplication } from "./index.js";'],
};
for (const [name, [code, plugins]] of Object.entries(rows))
  console.log(`  ${name.padEnd(34)} ${(await bundleSize(code, plugins)).toFixed(1).padStart(6)} kB gzipped`);
