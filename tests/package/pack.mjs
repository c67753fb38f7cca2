import { execFileSync } from "node:child_process";
import { existsSync, mkdirSync, readdirSync, renameSync, rmSync, statSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

export const root = dirname(dirname(dirname(fileURLToPath(import.meta.url))));

/** Runs npm and gives back what it printed; what npm says on the side is shown only where it fails. */
export function npm(args, cwd) {
  // `npm pack --dry-run` hands its setting on to what it starts.
  const all = ["--no-dry-run", ...args];
  return execFileSync("npm", all, { cwd, encoding: "utf8", stdio: ["ignore", "pipe", "pipe"] });
}

export function newest(folder) {
  return Math.max(
    ...readdirSync(folder, { withFileTypes: true, recursive: true })
      .filter((item) => item.isFile())
      .map((item) => changed(join(item.parentPath, item.name))),
  );
}

export function changed(path) {
  return statSync(path).mtimeMs;
}

/** Builds where src, or how it is built, has changed since the last build. */
export function build() {
  const built = existsSync(join(root, "dist/index.d.ts"));
  const beside = ["tsup.config.ts", "tsconfig.json"].map((name) => changed(join(root, name)));
  if (!built || Math.max(newest(join(root, "src")), ...beside) > newest(join(root, "dist")))
    npm(["run", "build"], root);
}

/** The pages of this repository, at the top, in docs and beside each example: they ship, and they make the site. */
export function pages() {
  const examples = readdirSync(join(root, "examples")).map((name) => `examples/${name}`);
  return [".", "docs", "examples", ...examples]
    .filter((folder) => statSync(join(root, folder)).isDirectory())
    .flatMap((folder) => readdirSync(join(root, folder)).map((name) => join(root, folder, name)))
    .filter((path) => path.endsWith(".md"));
}

/**
 * Packs the package as it would be published, but for the bill of materials, once until something in it changes, and
 * gives the tarball's path.
 */
export function tarball() {
  build();
  const kept = join(root, ".tmp/package.tgz");
  const beside = [join(root, "package.json"), join(root, "LICENSE"), ...pages()].map(changed);
  if (existsSync(kept) && changed(kept) > Math.max(newest(join(root, "dist")), ...beside)) return kept;
  // Tests run side by side: each packs for itself, and the last one's stays.
  const own = join(root, ".tmp", `pack-${process.pid}`);
  mkdirSync(own, { recursive: true });
  // Scripts are left out: `prepack` would build once more.
  npm(["pack", "--ignore-scripts", "--pack-destination", own], root);
  const name = readdirSync(own).find((file) => file.endsWith(".tgz"));
  renameSync(join(own, name), kept);
  rmSync(own, { recursive: true });
  return kept;
}

/** Builds, packs, and installs the tarball into a folder, where it is not there yet. */
export function installInto(folder) {
  const packed = tarball();
  const installed = join(folder, "node_modules/.package-lock.json");
  const asked = Math.max(changed(packed), changed(join(folder, "package.json")));
  if (existsSync(installed) && changed(installed) > asked) return;
  const quiet = ["--no-save", "--no-package-lock", "--no-audit", "--no-fund", "--prefer-offline"];
  npm(["install", ...quiet, packed], folder);
}
