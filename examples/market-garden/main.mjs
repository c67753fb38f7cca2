// Plans the spray job in a JSON file and prints its worksheet: node main.mjs [job.json]
import { readFileSync } from "node:fs";
import { SprayMathError } from "swath-to-spoon";
import { planApplication } from "swath-to-spoon/plan";
import { renderText, worksheet } from "swath-to-spoon/worksheet";

const file = process.argv[2] ?? new URL("job.json", import.meta.url);

try {
  const job = JSON.parse(readFileSync(file, "utf8"));
  process.stdout.write(renderText(worksheet(planApplication(job))));
} catch (error) {
  if (!(error instanceof SprayMathError)) throw error;
  console.error(`${error.path}: ${error.message}`);
  process.exitCode = 1;
}
