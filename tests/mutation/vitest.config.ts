import { fileURLToPath } from "node:url";
import { defineConfig } from "vitest/config";
import { resolve } from "../vitest.config.ts";

const root = fileURLToPath(new URL("../..", import.meta.url));

// The tests that call functions of src, in one project and without a fresh start for each file: a mutant changes a
// function at the moment it is called, so nothing needs to be loaded again.
export default defineConfig({
  root,
  resolve,
  test: {
    include: ["tests/{unit,handbook,property}/**/*.test.ts"],
    // What reads finished plans, and is slow, tells little of the functions that made them.
    exclude: ["tests/unit/architecture.test.ts", "tests/{unit,property}/{schema,worksheet}/**"],
    setupFiles: ["tests/helpers/setup-properties.ts"],
    isolate: false,
    testTimeout: 60_000,
  },
});
