// Refuses a release while a picture of the gallery is older than what it shows. npm runs this before it publishes.
import { execFileSync } from "node:child_process";
import { readdirSync } from "node:fs";

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
