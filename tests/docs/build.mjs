// Builds the site of guides and API where anything that it is made of has changed: node tests/docs/build.mjs
import { spawnSync } from "node:child_process";
import { existsSync, rmSync } from "node:fs";
import { join } from "node:path";
import { build, changed, newest, pages, root } from "../package/pack.mjs";

build();

const site = join(root, "docs/api");
const built = join(site, "index.html");
const beside = ["package.json", "tsconfig.json", "docs/typedoc.json", "docs/site.mjs"].map((name) =>
  join(root, name),
);
const parts = [...[...beside, ...pages()].map(changed), newest(join(root, "docs/site"))];

if (!existsSync(built) || Math.max(newest(join(root, "src")), ...parts) > changed(built)) {
  rmSync(site, { recursive: true, force: true });
  const options = ["--options", "docs/typedoc.json"];
  const { status } = spawnSync("node_modules/.bin/typedoc", options, { cwd: root, stdio: "inherit" });
  // A site with faults is not to be taken for a built one.
  if (status !== 0) rmSync(site, { recursive: true, force: true });
  process.exitCode = status ?? 1;
}
