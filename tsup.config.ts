import { existsSync, readdirSync, writeFileSync } from "node:fs";
import { pathToFileURL } from "node:url";
import { defineConfig } from "tsup";

// Every folder of src is a subpath export; the geodesic function has its own, so that nobody else pays for its dependency.
const folders = readdirSync("src", { withFileTypes: true })
  .filter((item) => item.isDirectory() && existsSync(`src/${item.name}/index.ts`))
  .map((item) => item.name);

const entry = Object.fromEntries([
  ["index", "src/index.ts"],
  ...folders.map((name) => [`${name}/index`, `src/${name}/index.ts`]),
  ...(existsSync("src/area/geodesic.ts") ? [["area/geodesic", "src/area/geodesic.ts"]] : []),
]) as Record<string, string>;

export default defineConfig({
  entry,
  format: ["esm", "cjs"],
  target: "es2022",
  // Without splitting, convert-units' default import breaks at call time in CommonJS.
  splitting: true,
  treeshake: true,
  clean: true,
  // tsup passes `baseUrl`, which TypeScript 6 reports as deprecated.
  dts: { compilerOptions: { ignoreDeprecations: "6.0" } },
  // The JSON Schemas come from the schemas as built.
  onSuccess: async () => {
    const built = (await import(
      pathToFileURL("dist/schema/index.js").href
    )) as typeof import("./src/schema/index.ts");
    const files = {
      "plan-input": built.planInputSchema(),
      "calibration-record": built.calibrationRecordSchema(),
    };
    for (const [name, schema] of Object.entries(files)) {
      const text = JSON.stringify(built.toJsonSchema(schema), undefined, 2);
      writeFileSync(`dist/schema/${name}.schema.json`, `${text}\n`);
    }
  },
});
