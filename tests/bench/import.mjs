// What importing the package adds to an empty Node program: whole processes, median of 15.
import { spawnSync } from "node:child_process";
import { mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { root } from "../package/pack.mjs";

const folder = mkdtempSync(join(tmpdir(), "import-"));
function program(name, code) {
  const file = join(folder, name);
  writeFileSync(file, code);
  return file;
}
function median(file) {
  const times = [];
  for (let i = 0; i < 15; i++) {
    const start = performance.now();
    spawnSync(process.execPath, [file]);
    times.push(performance.now() - start);
  }
  return times.sort((a, b) => a - b)[7];
}

const empty = program("empty.mjs", "");
const whole = program(
  "whole.mjs",
  `import ${JSON.stringify(pathToFileURL(join(root, "dist/index.js")).href)};`,
);
const base = median(empty);
const added = median(whole) - base;
console.log(
  `an empty program takes ${base.toFixed(1)} ms; importing swath-to-spoon adds ${added.toFixed(1)} ms (${(added / base).toFixed(2)} of it)`,
);
