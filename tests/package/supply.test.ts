import { execFileSync, spawnSync } from "node:child_process";
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join, relative, resolve } from "node:path";
import { buildSync } from "esbuild";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { bill } from "../release/sbom.mjs";
import { installInto } from "./pack.mjs";

// The package as a stranger gets it, with everything it depends on.
const folder = mkdtempSync(join(tmpdir(), "supply-"));
const modules = join(folder, "node_modules");
const own = join(modules, "swath-to-spoon");
const workshop = JSON.parse(readFileSync("package.json", "utf8")) as Record<
  "scripts" | "dependencies",
  Record<string, string>
>;

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

  it("holds the built code, its types, the licence and the pages, and nothing of the workshop", () => {
    const names = filesOf(own, /\.[a-z]+$|LICENSE$/i).map((file) => relative(own, file));
    const meant =
      /^(dist\/.+\.(c?js|d\.c?ts|json)|package\.json|LICENSE|[A-Z]+\.md|docs\/[a-z-]+\.md|examples\/([a-z-]+\/)?README\.md)$/;
    expect(names.length).toBeGreaterThan(20);
    expect(names.filter((name) => !meant.test(name))).toEqual([]);
  });

  it("has every page that one of its pages links to", () => {
    const links = filesOf(own, /\.md$/).flatMap((page) =>
      [...readFileSync(page, "utf8").matchAll(/\]\(([^)#\s]+)/g)]
        .map(([, path = ""]) => path)
        // The gallery stays in the repository: its pictures are half as large as all else.
        .filter((path) => !/^[a-z]+:|gallery\.md$/.test(path))
        .map((path) => [page, join(dirname(page), path)] as const),
    );
    expect(links.length).toBeGreaterThan(20);
    expect(links.filter(([, target]) => !existsSync(target))).toEqual([]);
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

interface Bill {
  readonly metadata: { readonly component: Component };
  readonly components: readonly Component[];
  readonly dependencies: readonly { readonly ref: string; readonly dependsOn: readonly string[] }[];
}
type Component = Readonly<Record<"name" | "version", string>> & {
  readonly licenses?: readonly { readonly license: { readonly id?: string } }[];
};
// Licenses that ask only for their notice: an app may ship with them whatever its own license is.
const PERMISSIVE = ["MIT", "ISC", "BSD-2-Clause", "BSD-3-Clause", "Apache-2.0"];

describe("the bill of materials", () => {
  const named = ({ name, version }: Record<string, unknown>) => `${name}@${version}`;
  const installed = () => manifests().filter(({ name }) => name !== "swath-to-spoon");
  const written: Bill = bill();

  it("is written when the package is packed", () => {
    expect(workshop.scripts.prepack).toBe("npm run build && node tests/release/sbom.mjs");
  });

  it("names all that the package is built on, what that needs in turn, and nothing else", () => {
    expect(written).toMatchObject({
      bomFormat: "CycloneDX",
      metadata: { component: { name: "swath-to-spoon" } },
    });
    const listed = written.components.map(({ name }) => name);
    for (const name of Object.keys(workshop.dependencies)) expect(listed).toContain(name);
    expect(written.components.map(named).sort()).toEqual(installed().map(named).sort());
  });

  it("names a permissive license of each", () => {
    const others = written.components.filter(({ licenses = [] }) =>
      licenses.every(({ license }) => !PERMISSIVE.includes(license.id ?? "")),
    );
    expect(others).toEqual([]);
  });

  it("says who needs whom", () => {
    const { metadata, dependencies } = written;
    expect(dependencies.map(({ ref }) => ref).sort()).toEqual(manifests().map(named).sort());
    const own = dependencies.find(({ ref }) => ref === named(metadata.component));
    expect(own?.dependsOn).toHaveLength(Object.keys(workshop.dependencies).length);
  });

  it("is the same at every packing, and holds nothing of the machine", () => {
    expect(bill()).toEqual(written);
    expect(JSON.stringify(written)).not.toMatch(/file:|timestamp|serialNumber/);
  });
});

describe("a release", () => {
  it("is refused while a picture of the gallery is older than what it shows", () => {
    expect(workshop.scripts.prepublishOnly).toContain("node tests/release/pictures.mjs");
    const there = mkdtempSync(join(tmpdir(), "pictures-"));
    const commit = (file: string, content: string, date: string) => {
      mkdirSync(dirname(join(there, file)), { recursive: true });
      writeFileSync(join(there, file), content);
      const who = ["-c", "user.name=A. Example", "-c", "user.email=a@example.com"];
      const env = { ...process.env, GIT_COMMITTER_DATE: date, GIT_AUTHOR_DATE: date };
      for (const args of [
        ["init", "-q"],
        ["add", "."],
        [...who, "commit", "-qm", file],
      ])
        execFileSync("git", args, { cwd: there, env });
    };
    const script = resolve("tests/release/pictures.mjs");
    const look = () => spawnSync(process.execPath, [script], { cwd: there, encoding: "utf8" });
    commit("src/worksheet/a.ts", "1", "2030-01-01T00:00:00Z");
    commit("docs/pictures/taken.json", '{ "card.png": "2030-01-02T00:00:00Z" }', "2030-01-02T00:00:00Z");
    expect(look().status).toBe(0);
    commit("src/worksheet/a.ts", "2", "2030-01-03T00:00:00Z");
    const { status, stderr } = look();
    expect(status).toBe(1);
    expect(stderr).toContain("card.png");
    rmSync(there, { recursive: true });
  });

  const ready = (manifest: object) => {
    const there = mkdtempSync(join(tmpdir(), "ready-"));
    writeFileSync(join(there, "package.json"), JSON.stringify(manifest));
    const run = spawnSync(process.execPath, [resolve("tests/release/ready.mjs")], {
      cwd: there,
      encoding: "utf8",
    });
    rmSync(there, { recursive: true });
    return run;
  };

  it("is refused before it is packed while no page leads back to the source", () => {
    expect(workshop.scripts.prepublishOnly).toContain("node tests/release/ready.mjs");
    const known = { repository: "a", homepage: "b", bugs: "c" };
    expect(ready(known).status).toBe(0);
    for (const field of Object.keys(known)) {
      const { status, stderr } = ready({ ...known, [field]: undefined });
      expect(status).toBe(1);
      expect(stderr).toContain(`no ${field}`);
    }
  });

  it("runs no action but at a commit that cannot be moved", () => {
    const uses = readdirSync(".github/workflows").flatMap((name) => [
      ...readFileSync(join(".github/workflows", name), "utf8").matchAll(/uses: (.*)/g),
    ]);
    expect(uses.length).toBeGreaterThan(0);
    for (const [, action] of uses) expect(action).toMatch(/^[\w-]+\/[\w-]+@[0-9a-f]{40} # v\d+\.\d+\.\d+$/);
  });
});
