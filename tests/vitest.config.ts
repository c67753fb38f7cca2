import { fileURLToPath } from "node:url";
import { defineConfig } from "vitest/config";

const root = fileURLToPath(new URL("..", import.meta.url));

export const resolve = {
  alias: [
    // Examples import the package by its name; here that is the source.
    { find: /^swath-to-spoon$/, replacement: `${root}src/index.ts` },
    { find: "swath-to-spoon/area/geodesic", replacement: `${root}src/area/geodesic.ts` },
    { find: /^swath-to-spoon\/words\/([\w-]+)$/, replacement: `${root}src/words/$1.ts` },
    { find: "swath-to-spoon/worksheet/latex", replacement: `${root}src/worksheet/latex.ts` },
    { find: /^swath-to-spoon\/([a-z-]+)$/, replacement: `${root}src/$1/index.ts` },
    // One file in place of 900, which every test file would load again.
    { find: /^mathjs$/, replacement: `${root}node_modules/mathjs/lib/browser/math.js` },
  ],
};

function project(name: string, timeout: number, setupFiles: string[] = []) {
  const include = [`tests/${name}/**/*.test.ts`];
  // Modules are slow to load and may be shared, but where a test watches them load.
  const isolate = name === "package";
  const shared = { isolate, testTimeout: timeout, hookTimeout: timeout };
  return { resolve, test: { name, root, include, setupFiles, ...shared } };
}

export default defineConfig({
  root,
  test: {
    maxWorkers: "100%",
    experimental: { fsModuleCache: true, fsModuleCachePath: `${root}.tmp/vitest-cache` },
    // A floor, not a proof.
    coverage: {
      include: ["src/{area,swath,output-rate,tank-mix,household,plan,practice}/**/*.ts"],
      reporter: ["text-summary", "json"],
      reportsDirectory: ".tmp/coverage",
      thresholds: { branches: 100 },
    },
    // Far longer than any test takes alone: they end what hangs, and say nothing of speed.
    projects: [
      project("unit", 60_000),
      project("property", 300_000, ["tests/helpers/setup-properties.ts"]),
      project("handbook", 60_000),
      project("docs", 300_000),
      project("package", 300_000),
      project("browser", 300_000),
      project("site", 300_000),
    ],
  },
});
