// Refuses a release that lacks what a registry page needs to lead back here. npm runs this before it publishes.
import { readFileSync } from "node:fs";

const manifest = JSON.parse(readFileSync("package.json", "utf8"));
const missing = ["repository", "homepage", "bugs"].filter((field) => manifest[field] === undefined);
if (missing.length > 0) {
  console.error(`Not published: package.json has no ${missing.join(", ")}.`);
  console.error("Relative links on a registry page, provenance and bug reports need them.");
  process.exitCode = 1;
}
