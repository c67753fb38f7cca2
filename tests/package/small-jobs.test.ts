import { execFileSync } from "node:child_process";
import { join } from "node:path";
import { beforeAll, describe, expect, it } from "vitest";
import { installInto, root } from "./pack.mjs";

const example = join(root, "examples/small-jobs");

beforeAll(() => installInto(example));

/** What the example prints for a job, with each run of spaces and line breaks as one space. */
function cardOf(job: string): string {
  const printed = execFileSync(process.execPath, ["main.mjs", job], { cwd: example, encoding: "utf8" });
  return printed.replace(/\s+/g, " ");
}

// The amounts are worked out by hand beside each.
describe("the small jobs, each with its card", () => {
  it.each<[job: string, ...parts: string[]]>([
    // 2 % of 3 gal (384 fl oz) is 7.68 fl oz; 3 teaspoons are a tablespoon, half a fluid ounce.
    [
      "spot-tank",
      "Total spray mix 3 gal",
      "Product A: 7.68 fl oz",
      "Product B: 0.5 fl oz. Measure 1 tablespoon",
    ],
    // 20 fl oz in 15 s is 4 in 3 s. 300 of them are 9.375 gal; 3 % more and 12 fl oz in the line make 9.75. A full tank is for 128,
    // the first for 125: 12 fl oz stay in the line.
    [
      "pots",
      "How many 300 pots",
      "Total spray mix 9.75 gal",
      "Product A: 64 mL",
      "load 1 after about 125 pots, load 2 after about 253 pots",
      "enough for 47 pots",
    ],
    // 3 gal on 300 ft is 24 gal on 2,400 ft, in two loads. 1.5 oz per 1,000 ft is 3.6 oz, 1.8 to a load.
    [
      "transplants",
      "Length of row 2,400 ft",
      "Total spray mix 24 gal",
      "Loads 1 and 2 of 2",
      "Product A: 1.8 oz wt",
    ],
    // 12 L for 5 trees is 2.4 L each, 144 L for 60, 145 L to the next 5 L. 150 g in 100 L is 120 g in 80 L.
    ["orchard", "Each gets 2.4 L/tree", "Total spray mix 145 L", "Product A: 120 g", "Product A: 97.5 g"],
    // 0.4 lb of N from 10-10-10 is 4 lb; on 720 sq ft 2.88 lb, half of it each way, and half of it to a bed.
    [
      "spreader",
      "Total Product A 2.88 lb",
      "Lengthwise over all of it: 1.44 lb",
      "Crosswise over all of it: 1.44 lb",
      "11.5 oz wt for each of the 2",
    ],
  ])("%s", (job, ...parts) => {
    const card = cardOf(job);
    for (const part of [...parts, "The label is the law"]) expect(card).toContain(part);
    expect(card).not.toMatch(/undefined|NaN/);
  });
});
