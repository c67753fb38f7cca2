// Runs one example as its user would: the packed package is installed into the example's folder, then its own start script runs.
//   node examples/run.mjs market-garden [arguments]
import { spawnSync } from "node:child_process";
import { join } from "node:path";
import { build, installInto, root, tarball } from "../tests/package/pack.mjs";

const [name, ...args] = process.argv.slice(2);
const folder = join(root, "examples", name);
// Beside the output of the example, which may go into a file.
const say = (text) => console.error(`> ${text}`);

say("Building the library from src, where it has changed");
build();
say("Packing it as it would be published");
tarball();
say(`Installing the package into examples/${name}`);
installInto(folder);
say(`Running examples/${name}/main.mjs`);
const { status } = spawnSync(process.execPath, ["main.mjs", ...args], { cwd: folder, stdio: "inherit" });
process.exitCode = status ?? 1;
