// Runs one example as its user would: the packed package is installed into the example's folder, then its own start script runs.
//   node examples/run.mjs market-garden [arguments]
import { spawnSync } from "node:child_process";
import { join } from "node:path";
import { installInto, root } from "../tests/package/pack.mjs";

const [name, ...args] = process.argv.slice(2);
const folder = join(root, "examples", name);
installInto(folder);
const { status } = spawnSync(process.execPath, ["main.mjs", ...args], { cwd: folder, stdio: "inherit" });
process.exitCode = status ?? 1;
