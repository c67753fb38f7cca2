import { fileURLToPath } from "node:url";
import { defineConfig } from "vitest/config";

const root = fileURLToPath(new URL("..", import.meta.url));

export default defineConfig({
  root,
  test: {
    projects: [
      { test: { name: "unit", root, include: ["tests/unit/**/*.test.ts"] } },
      { test: { name: "handbook", root, include: ["tests/handbook/**/*.test.ts"] } },
      { test: { name: "property", root, include: ["tests/property/**/*.test.ts"] } },
      {
        test: {
          name: "package",
          root,
          include: ["tests/package/**/*.test.ts"],
          testTimeout: 120_000,
          hookTimeout: 240_000,
        },
      },
    ],
  },
});
