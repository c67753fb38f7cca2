// Builds the site of guides and API where anything that it is made of has changed: node tests/docs/build.mjs
import { spawnSync } from "node:child_process";
import { existsSync, readdirSync, rmSync } from "node:fs";
import { join } from "node:path";
import { build, changed, newest, root } from "../package/pack.mjs";

build();

const site = join(root, "docs/api");
const built = join(site, "index.html");
const files = (folder) =>
  readdirSync(join(root, folder), { withFileTypes: true })
    .filter((item) => item.isFile())
    .map((item) => join(root, folder, item.name));
const guides = ["examples", ...readdirSync(join(root, "examples")).map((name) => `examples/${name}`)]
  .map((folder) => join(root, folder, "README.md"))
  .filter((path) => existsSync(path));
const parts = [...files("."), ...files("docs"), ...guides].map(changed);

if (!existsSync(built) || Math.max(newest(join(root, "src")), ...parts) > changed(built)) {
  rmSync(site, { recursive: true, force: true });
  const options = ["--options", "docs/typedoc.json"];
  const { status } = spawnSync("node_modules/.bin/typedoc", options, { cwd: root, stdio: "inherit" });
  // A site with faults is not to be taken for a built one.
  if (status !== 0) rmSync(site, { recursive: true, force: true });
  process.exitCode = status ?? 1;
}
