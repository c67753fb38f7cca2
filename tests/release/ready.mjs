// Refuses a release that lacks what a registry page needs to lead back here, or whose gallery shows something older than it is.
// npm runs this before it publishes.
import { execFileSync } from "node:child_process";
import { readdirSync, readFileSync } from "node:fs";

const manifest = JSON.parse(readFileSync("package.json", "utf8"));
const missing = ["repository", "homepage", "bugs"].filter((field) => manifest[field] === undefined);
if (missing.length > 0) {
  console.error(`Not published: package.json has no ${missing.join(", ")}.`);
  console.error("Relative links on a registry page, provenance and bug reports need them.");
  process.exitCode = 1;
}

/** When something was last committed, in seconds. */
const committed = (...paths) =>
  Number(execFileSync("git", ["log", "-1", "--format=%ct", "--", ...paths], { encoding: "utf8" }));
const shows = (name) =>
  name === "phone.png" ? ["examples/calculator/src"] : ["src/worksheet", "src/practice", "src/plan"];
const old = readdirSync("docs/pictures").filter(
  (name) => committed(`docs/pictures/${name}`) < committed(...shows(name)),
);
if (old.length > 0) {
  console.error(`Not published: older than what they show: ${old.join(", ")}.`);
  console.error("Delete them, run the browser tests, look at the new ones and commit them.");
  process.exitCode = 1;
}
