// What importing the package adds to an empty Node program: whole processes, the least of 20.
import { spawnSync } from "node:child_process";
import { mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { root } from "../package/pack.mjs";
import { report } from "./speed.mjs";

const folder = mkdtempSync(join(tmpdir(), "import-"));
function program(name, code) {
  const file = join(folder, name);
  writeFileSync(file, code);
  return file;
}
function least(file) {
  const times = Array.from({ length: 20 }, () => {
    const start = performance.now();
    spawnSync(process.execPath, [file]);
    return performance.now() - start;
  });
  return Math.min(...times);
}
const importing = (entry) => `import ${JSON.stringify(pathToFileURL(join(root, "dist", entry)).href)};`;

const base = least(program("empty.mjs", ""));
console.log(`an empty program takes ${base.toFixed(1)} ms`);
const rows = [];
for (const [name, entry] of [
  ["swath-to-spoon", "index.js"],
  ["swath-to-spoon/units", "units/index.js"],
]) {
  const added = least(program("whole.mjs", importing(entry))) - base;
  console.log(`  importing ${name} adds ${added.toFixed(1)} ms (${(added / base).toFixed(2)} of it)`);
  rows.push({
    what: `importing \`${name}\``,
    time: added * 1e6,
    against: [[added / base, "times an empty Node program"]],
  });
}
report(rows);
