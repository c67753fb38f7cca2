// Plans jobs that aren't a sprayer over an area, and prints the field card of each: node main.mjs [name ...]
import { readdirSync, readFileSync } from "node:fs";
import { SprayMathError } from "swath-to-spoon";
import { planApplication, planSpreading } from "swath-to-spoon/plan";
import { parseBatchInput, parseSpreadingInput } from "swath-to-spoon/schema";
import { fieldCard, renderText, spreadingCard } from "swath-to-spoon/worksheet";

const folder = new URL("jobs/", import.meta.url);
const all = readdirSync(folder)
  .filter((file) => file.endsWith(".json"))
  .map((file) => file.replace(".json", ""));
const names = process.argv.length > 2 ? process.argv.slice(2) : all;

for (const name of names) {
  if (!all.includes(name)) {
    console.error(`There is no job ${name}. Choose from: ${all.join(", ")}.`);
    process.exitCode = 1;
    continue;
  }
  try {
    // Quantities are text here, as a form has them: "300 pots", "4 fl oz".
    const given = JSON.parse(readFileSync(new URL(`${name}.json`, folder), "utf8"));
    console.log(`${given.name ?? name}\n`);
    console.log(renderText("spreader" in given ? spreadCard(given) : sprayCard(given)));
  } catch (error) {
    if (!(error instanceof SprayMathError)) throw error;
    for (const { path, message } of error.issues) console.error(`${name}, ${path}: ${message}`);
    process.exitCode = 1;
  }
}

// Granules go in a spreader; all else is mixed in a tank.
function spreadCard(given) {
  return spreadingCard(planSpreading(parseSpreadingInput(given)));
}

function sprayCard(given) {
  return fieldCard(planApplication(parseBatchInput(given)));
}
