import { expect, it } from "vitest";
import { recipes } from "../helpers/recipes.mjs";

const MOST_LINES = 30;

it.each([...recipes()])("the recipe %s is short enough to copy by hand", (_, code = "") => {
  expect(code.trimEnd().split("\n").length).toBeLessThanOrEqual(MOST_LINES);
});

it("finds every recipe", () => {
  expect(recipes().size).toBeGreaterThan(9);
});
