// Runs one example as its user would: the packed package is installed into the example's folder, then its own start script runs.
//   node examples/run.mjs market-garden [arguments]
import { spawnSync } from "node:child_process";
import { join } from "node:path";
import { build, installInto, root, tarball } from "../tests/package/pack.mjs";

const [name, ...args] = process.argv.slice(2);
const folder = join(root, "examples", name);
// On stderr, because the example's own output may go to a file.
const say = (text) => console.error(`> ${text}`);

say("Building the library from src (if it changed)");
build();
say("Packing it as for publishing");
tarball();
say(`Installing the package into examples/${name}`);
installInto(folder);
say(`Running examples/${name}/main.mjs`);
const { status } = spawnSync(process.execPath, ["main.mjs", ...args], { cwd: folder, stdio: "inherit" });
process.exitCode = status ?? 1;
