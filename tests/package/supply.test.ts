import { execFileSync } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, relative } from "node:path";
import { buildSync } from "esbuild";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { installInto } from "./pack.mjs";

// The package as a stranger gets it, with everything it depends on.
const folder = mkdtempSync(join(tmpdir(), "supply-"));
const modules = join(folder, "node_modules");
const own = join(modules, "swath-to-spoon");

beforeAll(() => {
  writeFileSync(join(folder, "package.json"), JSON.stringify({ private: true, type: "module" }));
  installInto(folder);
});

afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});

function filesOf(root: string, ending: RegExp): string[] {
  return readdirSync(root, { recursive: true, encoding: "utf8" })
    .filter((name) => ending.test(name))
    .map((name) => join(root, name))
    .sort();
}

function manifests(): Record<string, unknown>[] {
  return filesOf(modules, /(^|\/)package\.json$/)
    .map((file) => JSON.parse(readFileSync(file, "utf8")) as Record<string, unknown>)
    .filter((manifest) => "version" in manifest);
}

const shipped = (): string[] => filesOf(join(own, "dist"), /\.c?js$/);

/** The places in the shipped code where a pattern stands, comments left out. */
function found(pattern: RegExp): string[] {
  return shipped().flatMap((file) => {
    const code = readFileSync(file, "utf8")
      .replace(/\/\*[\s\S]*?\*\//g, "")
      .replace(/^\s*\/\/.*$/gm, "");
    return [...code.matchAll(pattern)].map(([text]) => `${relative(own, file)}: ${text}`);
  });
}

describe("what is installed", () => {
  it("is the package and the four it is built on", () => {
    expect(
      manifests()
        .map(({ name }) => name)
        .sort(),
    ).toEqual(["big.js", "convert-units", "geographiclib-geodesic", "swath-to-spoon", "zod"].sort());
  });

  it("runs nothing when it is installed", () => {
    for (const { name, scripts = {} } of manifests()) {
      for (const script of ["preinstall", "install", "postinstall"])
        expect(scripts, String(name)).not.toHaveProperty(script);
    }
    expect(filesOf(modules, /binding\.gyp$/)).toEqual([]);
  });

  it("holds the built code, its types, the licence and the changelog, and nothing of the workshop", () => {
    const names = filesOf(own, /\.[a-z]+$|LICENSE$/i).map((file) => relative(own, file));
    const meant = /^(dist\/.+\.(c?js|d\.c?ts|json)|package\.json|README\.md|CHANGELOG\.md|LICENSE)$/;
    expect(names.length).toBeGreaterThan(20);
    expect(names.filter((name) => !meant.test(name))).toEqual([]);
  });
});

describe("the shipped code", () => {
  it("is looked at: every entry, both ways", () => {
    expect(shipped().length).toBeGreaterThan(20);
    expect(found(/SprayMathError/g).length).toBeGreaterThan(20);
  });

  it("imports the four packages and its own files, all by name", () => {
    const outside = ["js", "cjs"]
      .map((ending) => shipped().filter((file) => file.endsWith(`.${ending}`)))
      .map((entryPoints) =>
        buildSync({
          entryPoints,
          bundle: true,
          packages: "external",
          platform: "neutral",
          outdir: "unwritten",
          write: false,
          metafile: true,
        }),
      )
      .flatMap(({ metafile }) => Object.values(metafile.inputs))
      .flatMap(({ imports }) => imports)
      .filter(({ external }) => external);
    expect(new Set(outside.map(({ kind }) => kind))).toEqual(new Set(["import-statement", "require-call"]));
    expect([...new Set(outside.map(({ path }) => path.split("/")[0]))].sort()).toEqual([
      "big.js",
      "convert-units",
      "geographiclib-geodesic",
      "zod",
    ]);
    expect(found(/\bimport\s*\(|\brequire\s*\(\s*[^'"\s]/g)).toEqual([]);
  });

  it("evaluates no text as code", () => {
    expect(found(/\beval\b|\bnew Function\b|\bFunction\s*\(|\bset(?:Timeout|Interval)\s*\(/g)).toEqual([]);
  });

  it("has no way to a network, a file, a process or a page", () => {
    const ways =
      /\b(?:fetch|XMLHttpRequest|WebSocket|EventSource|sendBeacon|importScripts|Worker|localStorage|indexedDB)\b|["'`]node:|\bprocess\.|\b(?:document|window)\./g;
    expect(found(ways)).toEqual([]);
  });

  it("plans a job with files, code from text, network and processes all forbidden", () => {
    const forbidden = [
      `import net from "node:net";`,
      `const no = (what) => () => { throw new Error(what + " was tried"); };`,
      `globalThis.fetch = no("fetch"); net.Socket.prototype.connect = no("a connection");`,
    ];
    const job = `
const { parsePlanInput } = await import("swath-to-spoon/schema");
const { planApplication } = await import("swath-to-spoon/plan");
const { worksheet, renderText } = await import("swath-to-spoon/worksheet");
const { geodesicArea } = await import("swath-to-spoon/area/geodesic");
const plan = planApplication(parsePlanInput({
  plot: { kind: "row-bands", rows: 14, rowLength: "160 ft", bandWidth: "30 in", rowSpacing: "5 ft" },
  calibration: { kind: "strip", used: "34 fl oz", swath: "30 in", distance: "120 ft" },
  sprayer: { tank: "4 gal" },
  products: [{ name: "Product A", form: "liquid", rate: "1.5 pt/ac" }],
  tools: "us-spoons",
}));
const ring = [[0, 0], [0.001, 0], [0.001, 0.001], [0, 0.001], [0, 0]];
console.log(renderText(worksheet(plan)).length > 500, geodesicArea({ type: "Polygon", coordinates: [ring] }).ground.value > 12000);`;
    writeFileSync(join(folder, "job.mjs"), `${forbidden.join("\n")}\n${job}`);
    const permission =
      Number(process.versions.node.split(".")[0]) < 22 ? "--experimental-permission" : "--permission";
    const args = [
      "--disallow-code-generation-from-strings",
      permission,
      `--allow-fs-read=${folder}/*`,
      "job.mjs",
    ];
    const printed = execFileSync(process.execPath, args, {
      cwd: folder,
      encoding: "utf8",
      stdio: ["ignore", "pipe", "pipe"],
    });
    expect(printed.trim()).toBe("true true");
  });
});

describe("the bill of materials", () => {
  it("is made when the package is packed, and names what is installed", () => {
    const { scripts } = JSON.parse(readFileSync("package.json", "utf8")) as {
      scripts: Record<string, string>;
    };
    expect(scripts.prepack).toMatch(/npm run build && npm run sbom/);
    const [, file = ""] = /--output-file (\S+)/.exec(scripts.sbom ?? "") ?? [];
    expect(file).toMatch(/^dist\//);
    const args = (scripts.sbom ?? "").split(" ").slice(1);
    const printed = execFileSync(
      "node_modules/.bin/cyclonedx-npm",
      args.map((arg) => (arg === file ? "-" : arg)),
      {
        encoding: "utf8",
        stdio: ["ignore", "pipe", "pipe"],
      },
    );
    const { bomFormat, components } = JSON.parse(printed) as {
      bomFormat: string;
      components: { name: string; version: string }[];
    };
    expect(bomFormat).toBe("CycloneDX");
    const installed = manifests().filter(({ name }) => name !== "swath-to-spoon");
    expect(components.map(({ name, version }) => `${name} ${version}`).sort()).toEqual(
      installed.map(({ name, version }) => `${name} ${version}`).sort(),
    );
  });
});
