import { existsSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, relative, resolve, sep } from "node:path";
import { pathToFileURL } from "node:url";
import { defineConfig, type Options } from "tsup";

type Plugin = NonNullable<Options["esbuildPlugins"]>[number];

// Every folder of src is a subpath export. A few files have their own, so that nobody else pays for them.
const folders = readdirSync("src", { withFileTypes: true })
  .filter((item) => item.isDirectory() && existsSync(`src/${item.name}/index.ts`))
  .map((item) => item.name);
const apart = [
  "area/geodesic.ts",
  "worksheet/latex.ts",
  // Every language is a way in of its own.
  ...readdirSync("src/words").map((name) => `words/${name}`),
];

const entry = Object.fromEntries([
  ["index", "src/index.ts"],
  ...folders.map((name) => [`${name}/index`, `src/${name}/index.ts`]),
  ...apart.map((file) => [file.replace(".ts", ""), `src/${file}`]),
]) as Record<string, string>;

const entries = new Set(Object.values(entry).map((path) => path.replace("src/", "")));

const inSrc = (path: string): string => relative("src", path).split(sep).join("/");
const relativeTo = (from: string, to: string): string => {
  const path = relative(dirname(from), to).split(sep).join("/");
  return path.startsWith(".") ? path : `./${path}`;
};
const folderOf = (file: string): string => file.split("/")[0] ?? "";

// Only what says of itself that it has no side effects: a call that notes a fault must stay.
const MAKERS = new Set(
  ["frozen.ts", ...readdirSync("src/units").map((name) => `units/${name}`)].flatMap((name) =>
    [
      ...readFileSync(`src/${name}`, "utf8").matchAll(/@__NO_SIDE_EFFECTS__ \*\/\nexport function (\w+)/g),
    ].map(([, maker]) => maker as string),
  ),
);

/**
 * Marks the calls that make lists of fields and frozen tables, and the classes that extend others, as free of side effects.
 * esbuild sees so within one file only: an app that takes one function would carry the lists of all.
 */
function withPureCalls(source: string): string {
  const contents = source.replace(
    /^(export )?(class (\w+)[^{\n]* extends [\s\S]*?\n\})$/gm,
    (_, exported = "", body, name) => `${exported}const ${name} = /* @__PURE__ */ (() => ${body})();`,
  );
  const makers = [...contents.matchAll(/import \{([^}]*)\} from "[./a-z-]*\.js"/g)]
    .flatMap(([, names = ""]) => names.split(","))
    .map((name) => name.trim())
    .filter((name) => MAKERS.has(name));
  if (makers.length === 0) return contents;
  // A list that takes over the fields of another is read from it, which a bundler can't tell from a side effect: as a whole it can.
  const lists = new RegExp(
    `^((?:export )?const \\w+(?:: [^=\\n]+)? =\\s+)((?:/\\* @__PURE__ \\*/ )?(?:${makers.join("|")})(?:<[^()]*>)?\\((?:.*\\)|[\\s\\S]*?\\n\\S*?\\)))((?: as [^;\\n]+)?);$`,
    "gm",
  );
  const calls = new RegExp(
    `(?<![\\w.$*"'\`] ?)(?<!function )\\b(?:${makers.join("|")})(?=(?:<[^()]*>)?\\()`,
    "g",
  );
  return contents
    .replace(lists, (_, declared, made, cast) => `${declared}/* @__PURE__ */ (() => ${made})()${cast};`)
    .split("\n")
    .map((line) =>
      /^\s*(\*|\/)/.test(line) ? line : line.replace(calls, (call) => `/* @__PURE__ */ ${call}`),
    )
    .join("\n");
}

/**
 * One chunk a folder. esbuild makes one for every set of entries that share a file, 28 of them, and Node takes about a
 * millisecond to load each. So a file that imports from another folder here imports all of it, and so does an entry of
 * its own: the order in which modules run stays as it is, and a bundler still drops what an app does not use.
 */
const oneChunkAFolder: Plugin = {
  name: "one chunk a folder",
  setup(build) {
    // "sideEffects": false would drop the imports that only group.
    build.onResolve({ filter: /^\.{1,2}\// }, ({ path, resolveDir, kind }) => {
      if (kind === "entry-point") return undefined;
      return { path: resolve(resolveDir, path).replace(/\.js$/, ".ts"), sideEffects: true };
    });
    build.onLoad({ filter: /[\\/]src[\\/].*\.ts$/ }, ({ path }) => {
      const file = inSrc(path);
      const contents = readFileSync(path, "utf8");
      const used = new Set(
        [...contents.matchAll(/from "(\.[^"]*)"/g)].map(([, from]) =>
          folderOf(inSrc(resolve(dirname(path), from as string))),
        ),
      );
      if (entries.has(file)) used.add(folderOf(file));
      else used.delete(folderOf(file));
      const imports = [...used]
        .filter((folder) => folders.includes(folder))
        .flatMap((folder) =>
          readdirSync(`src/${folder}`, { recursive: true, encoding: "utf8" })
            .filter((name) => name.endsWith(".ts"))
            .map((name) => `${folder}/${name.split(sep).join("/")}`),
        )
        .filter((other) => !apart.includes(other) && other !== file)
        .map((other) => `import ${JSON.stringify(relativeTo(file, other))};`);
      return { contents: [withPureCalls(contents), ...imports].join("\n"), loader: "ts" };
    });
  },
};

export default defineConfig({
  entry,
  format: ["esm", "cjs"],
  target: "es2022",
  // Without splitting, convert-units' default import breaks at call time in CommonJS.
  splitting: true,
  esbuildPlugins: [oneChunkAFolder],
  esbuildOptions(options) {
    // A text of one byte a letter is read faster.
    options.charset = "ascii";
    // The imports that only group, dropped where a file is an entry of its own.
    options.logOverride = { "ignored-bare-import": "silent" };
  },
  clean: true,
  // tsup passes `baseUrl`, which TypeScript 6 reports as deprecated. What is exported has its type written beside it
  // (isolatedDeclarations), so declarations need no check of types: that is `tsc -b`'s to do, once.
  dts: { compilerOptions: { ignoreDeprecations: "6.0", composite: false, noCheck: true } },
  // The JSON Schemas come from the schemas as built.
  onSuccess: async () => {
    const built = (await import(
      pathToFileURL("dist/schema/index.js").href
    )) as typeof import("./src/schema/index.ts");
    const files = {
      "plan-input": built.planInputSchema(),
      "batch-input": built.batchInputSchema(),
      "spreading-input": built.spreadingInputSchema(),
      "calibration-record": built.calibrationRecordSchema(),
    };
    for (const [name, schema] of Object.entries(files)) {
      writeFileSync(`dist/schema/${name}.schema.json`, JSON.stringify(built.toJsonSchema(schema)));
    }
  },
});
