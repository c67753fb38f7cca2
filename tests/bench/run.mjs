// Prints every benchmark's ratios: node tests/bench/run.mjs [name]. Builds first where src has changed.
import { spawnSync } from "node:child_process";
import { readdirSync } from "node:fs";
import { join } from "node:path";
import { build, root } from "../package/pack.mjs";

build();
const [only] = process.argv.slice(2);
const names = readdirSync(join(root, "tests/bench")).filter(
  (name) => name.endsWith(".mjs") && name !== "run.mjs" && name !== "measure.mjs",
);
for (const name of names) {
  if (only !== undefined && name !== `${only}.mjs`) continue;
  console.log(`\n== ${name}`);
  const { status } = spawnSync(process.execPath, [join(root, "tests/bench", name)], {
    cwd: root,
    stdio: "inherit",
  });
  if (status !== 0) process.exitCode = 1;
}
