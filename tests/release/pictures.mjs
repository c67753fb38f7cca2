// Refuses a release while a picture of the gallery was taken before the last change of what it shows. npm runs this before it publishes.
import { execFileSync } from "node:child_process";
import { readFileSync } from "node:fs";

const taken = Object.entries(JSON.parse(readFileSync("docs/pictures/taken.json", "utf8")));
const shows = (name) =>
  name === "phone.png" ? ["examples/calculator/src"] : ["src/worksheet", "src/practice", "src/plan"];
const changed = (paths) =>
  execFileSync("git", ["log", "-1", "--format=%cI", "--", ...paths], { encoding: "utf8" }).trim();
const old = taken.filter(([name, date]) => new Date(date) < new Date(changed(shows(name))));
if (old.length > 0) {
  console.error(`Not published: older than what they show: ${old.map(([name]) => name).join(", ")}.`);
  console.error("Delete them, run the browser tests, look at the new ones and commit them.");
  process.exitCode = 1;
}
