import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { planApplication } from "../../../src/plan/index.ts";
import { parsePlanInput } from "../../../src/schema/index.ts";
import { fieldCard } from "../../../src/worksheet/index.ts";

describe("the card in docs/worksheet.md", () => {
  it("is the market-garden example's, as it is printed now", () => {
    const page = readFileSync("docs/worksheet.md", "utf8");
    const [, table = ""] = /\n\| Before[^\n]*\n\|[-\s|]*\n((?:\|[^\n]*\n)+)/.exec(page) ?? [];
    const now = table
      .trim()
      .split("\n")
      .map((row) => row.split("|")[2]?.trim());
    const job = parsePlanInput(JSON.parse(readFileSync("examples/market-garden/job.json", "utf8")));
    const { facts, order, loads } = fieldCard(planApplication(job));
    expect(now).toEqual([
      ...facts.map(({ name, value }) => `${name}: ${value}`),
      ...order,
      ...loads.flatMap(({ title, steps }) => [title, ...steps]),
    ]);
  });
});
