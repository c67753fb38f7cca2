import { fileURLToPath } from "node:url";
import { defineConfig } from "vitest/config";
import { resolve } from "../vitest.config.ts";

const root = fileURLToPath(new URL("../..", import.meta.url));
const folder = process.env.MUTATED_FOLDER;

// A folder's own tests and the published values must find its mutants, in one project and without a fresh start for each
// file: a mutant changes a function at the moment it is called, so nothing needs to be loaded again.
export default defineConfig({
  root,
  resolve,
  test: {
    include: [`tests/{unit,property}/${folder}/**/*.test.ts`, "tests/handbook/*.test.ts"],
    setupFiles: ["tests/helpers/setup-properties.ts"],
    isolate: false,
    testTimeout: 60_000,
  },
});
