import { fileURLToPath } from "node:url";
import { defineConfig } from "vitest/config";

const root = fileURLToPath(new URL("..", import.meta.url));

function project(name: string, timeout: number, setupFiles: string[] = []) {
  const include = [`tests/${name}/**/*.test.ts`];
  return {
    // Examples import the package by its name; here that is the source.
    resolve: {
      alias: [
        { find: /^swath-to-spoon$/, replacement: `${root}src/index.ts` },
        { find: "swath-to-spoon/area/geodesic", replacement: `${root}src/area/geodesic.ts` },
        { find: /^swath-to-spoon\/([a-z-]+)$/, replacement: `${root}src/$1/index.ts` },
      ],
    },
    test: { name, root, include, setupFiles, testTimeout: timeout, hookTimeout: timeout },
  };
}

export default defineConfig({
  root,
  test: {
    projects: [
      project("unit", 10_000),
      project("property", 60_000, ["tests/helpers/setup-properties.ts"]),
      project("handbook", 10_000),
      project("docs", 60_000),
      project("package", 240_000),
    ],
  },
});
