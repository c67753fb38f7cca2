import { existsSync, readdirSync, readFileSync } from "node:fs";
import { dirname, join, relative } from "node:path";
import { describe, expect, it } from "vitest";

/** What each folder may import from, besides itself, `units`, errors.ts and frozen.ts. Arrows go one way. */
const MAY_IMPORT: Record<string, readonly string[]> = {
  units: [],
  swath: [],
  area: ["swath"],
  "output-rate": ["area", "swath"],
  "tank-mix": ["area", "swath", "output-rate"],
  household: ["area", "swath", "output-rate", "tank-mix"],
  plan: ["area", "swath", "output-rate", "tank-mix", "household"],
  worksheet: ["area", "swath", "output-rate", "tank-mix", "household", "plan"],
  practice: ["area", "swath", "output-rate", "tank-mix", "household", "plan", "worksheet"],
  words: ["practice", "worksheet"],
  working: ["area", "swath", "output-rate", "tank-mix", "household", "plan"],
  schema: ["area", "swath", "output-rate", "tank-mix", "household", "plan"],
};

/** The only places that may import a package. */
const PACKAGES: Record<string, RegExp> = {
  "big.js": /^units\/exact\.ts$/,
  "convert-units": /^units\/exact\.ts$/,
  "geographiclib-geodesic": /^area\/geodesic\.ts$/,
  "zod/mini": /^schema\//,
  "zod/v4/core": /^schema\//,
};

const files = readdirSync("src", { recursive: true, encoding: "utf8" }).filter((name) =>
  name.endsWith(".ts"),
);
const folders = readdirSync("src").filter((name) => existsSync(`src/${name}/index.ts`));

function importsOf(file: string): string[] {
  const text = readFileSync(join("src", file), "utf8").replace(/\/\*[\s\S]*?\*\//g, "");
  return [...text.matchAll(/^(?:(?:import|export)\b[^;"]*?from\s+|.*\bimport\s*\(\s*)"([^"]+)"/gm)].map(
    (m) => m[1] ?? "",
  );
}

function folderOf(file: string): string {
  return file.includes("/") ? (file.split("/")[0] ?? "") : "";
}

describe("the shape of src", () => {
  it("sends every import one way along the chain of modules", () => {
    const wrong: string[] = [];
    for (const file of files.filter((name) => name.includes("/"))) {
      const from = folderOf(file);
      for (const target of importsOf(file).filter((path) => path.startsWith("."))) {
        const to = relative("src", join("src", dirname(file), target));
        const folder = folderOf(to);
        const allowed =
          folder === ""
            ? ["errors.js", "frozen.js"].includes(to)
            : [from, "units", ...(MAY_IMPORT[from] ?? [])].includes(folder);
        if (!allowed) wrong.push(`${file} imports ${to}`);
      }
    }
    expect(wrong).toEqual([]);
  });

  it("knows where every folder stands in the chain", () => {
    expect(folders.filter((name) => MAY_IMPORT[name] === undefined)).toEqual([]);
  });

  it("has no import cycle between files", () => {
    const graph = new Map(
      files.map((file) => [
        file,
        importsOf(file)
          .filter((path) => path.startsWith("."))
          .map((path) => join(dirname(file), path).replace(/\.js$/, ".ts")),
      ]),
    );
    const done = new Set<string>();
    const visit = (file: string, trail: readonly string[]): void => {
      expect(trail, `${[...trail, file].join(" > ")}`).not.toContain(file);
      if (done.has(file)) return;
      for (const next of graph.get(file) ?? []) visit(next, [...trail, file]);
      done.add(file);
    };
    for (const file of files) visit(file, []);
  });

  it("imports each package in one place only, and no others", () => {
    const wrong = files.flatMap((file) =>
      importsOf(file)
        .filter((path) => !path.startsWith("."))
        .filter((name) => !PACKAGES[name]?.test(file))
        .map((name) => `${file} imports ${name}`),
    );
    expect(wrong).toEqual([]);
  });

  it("keeps every index.ts a table of contents", () => {
    for (const folder of folders) {
      const code = readFileSync(`src/${folder}/index.ts`, "utf8").replace(/\/\*[\s\S]*?\*\//g, "");
      const statements = code.split(";").map((part) => part.trim());
      expect(
        statements.filter((part) => part !== "" && !part.startsWith("export ")),
        folder,
      ).toEqual([]);
    }
  });

  it("exports every folder as a subpath, and nothing that is not there", () => {
    const { exports } = JSON.parse(readFileSync("package.json", "utf8")) as {
      exports: Record<string, unknown>;
    };
    const files = ["plan-input", "batch-input", "spreading-input", "calibration-record"].map(
      (name) => `./schema/${name}.schema.json`,
    );
    const wanted = [
      ".",
      "./area/geodesic",
      "./worksheet/latex",
      ...readdirSync("src/words").map((name) => `./words/${name.replace(".ts", "")}`),
      "./package.json",
      ...files,
      ...folders.map((name) => `./${name}`),
    ];
    expect(Object.keys(exports).sort()).toEqual(wanted.sort());
  });

  it("imports no file that has a way in of its own, so that nobody else carries it", () => {
    const carried = files.flatMap((file) =>
      importsOf(file).filter(
        (path) => /\/(geodesic|latex)\.js$/.test(path) || /\/(practice|working)\/index\.js$/.test(path),
      ),
    );
    expect(carried).toEqual([]);
  });

  it("has nothing at the top level but what is meant to be there", () => {
    const meant =
      /^(package\.json|package-lock\.json|tsconfig\.json|tsup\.config\.ts|src|tests|docs|examples|README\.md|DEVELOPERS\.md|CHANGELOG\.md|LICENSE|SECURITY\.md|biome\.json|node_modules|dist|coverage|\..*)$/;
    expect(readdirSync(".").filter((name) => !meant.test(name))).toEqual([]);
  });
});
