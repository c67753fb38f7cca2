import { execFileSync } from "node:child_process";
import { existsSync, mkdirSync, readdirSync, rmSync, statSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

export const root = dirname(dirname(dirname(fileURLToPath(import.meta.url))));

/** Runs npm and gives back what it printed; what npm says on the side is shown only where it fails. */
export function npm(args, cwd) {
  return execFileSync("npm", args, { cwd, encoding: "utf8", stdio: ["ignore", "pipe", "pipe"] });
}

function newest(folder) {
  return Math.max(
    ...readdirSync(folder, { withFileTypes: true, recursive: true })
      .filter((item) => item.isFile())
      .map((item) => statSync(join(item.parentPath, item.name)).mtimeMs),
  );
}

/** Builds where src has changed since the last build. */
export function build() {
  const built = existsSync(join(root, "dist/index.d.ts"));
  if (!built || newest(join(root, "src")) > newest(join(root, "dist"))) npm(["run", "build"], root);
}

/** Packs the package as it would be published, and gives the tarball's path. */
export function pack(folder) {
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(folder, { recursive: true });
  // Scripts are left out: `prepack` would build once more.
  npm(["pack", "--ignore-scripts", "--pack-destination", folder], root);
  return join(
    folder,
    readdirSync(folder).find((name) => name.endsWith(".tgz")),
  );
}

/** Builds, packs, and installs the tarball into a folder. */
export function installInto(folder) {
  build();
  const packs = join(root, ".tmp", `pack-${process.pid}`);
  const tarball = pack(packs);
  const quiet = ["--no-save", "--no-package-lock", "--no-audit", "--no-fund", "--prefer-offline"];
  npm(["install", ...quiet, tarball], folder);
  rmSync(packs, { recursive: true });
}
