import { describe, expect, it } from "vitest";
import { type PlanInput, planApplication } from "../../../src/plan/index.ts";
import { convert, qty } from "../../../src/units/index.ts";
import { ENGLISH_WORDS, type Messages, worksheet } from "../../../src/worksheet/index.ts";
import { QUIET, TWO_PRODUCTS } from "../../helpers/jobs.ts";

type Tools = Exclude<PlanInput["tools"], string>;

/** How the one dose of a quiet job, 3.967 fl oz, is measured with these tools. */
function measured(tools: Tools, words: Messages = ENGLISH_WORDS): readonly string[] {
  return worksheet(planApplication({ ...QUIET, tools }), { words }).loads[0]?.doses[0]?.measures ?? [];
}

const tool = (name: string, ounces: number) => ({ name, capacity: qty(ounces, "fl_oz") });
const marked = (name: string, ounces: number) => ({
  ...tool(name, ounces),
  graduation: qty(0.1, "fl_oz"),
});

describe("what to measure with which tool", () => {
  it("counts spoons and cups as one says it: one tablespoon, several tablespoons", () => {
    expect(measured([tool("tablespoon", 3.9)])).toEqual(["1 tablespoon"]);
    expect(measured([tool("tablespoon", 1.3)])).toEqual(["3 tablespoons"]);
  });

  it("never puts a number before a name that begins with one", () => {
    expect(measured([tool("1/2 cup", 3.9)])).toEqual(["1/2 cup"]);
    // Nor one that could count what follows as well: 2 fills of the 1/3 cup + 2 tablespoons.
    expect(measured([tool("1/2 cup", 1.95)])).toEqual(["1/2 cup + 1/2 cup"]);
    expect(measured([tool("1/2 cup", 0.55)])).toEqual(["7 fills of the 1/2 cup"]);
  });

  it("counts fills of a tool that the table of words has no plural for", () => {
    expect(measured([tool("blue scoop", 3.9)])).toEqual(["1 blue scoop"]);
    expect(measured([tool("blue scoop", 1.3)])).toEqual(["3 fills of the blue scoop"]);
  });

  it("says to which mark a tool is filled, and how often", () => {
    expect(measured([marked("jug", 5)])).toEqual(["3.9 fl oz in the jug"]);
    expect(measured([marked("jug", 1.3)])).toEqual(["3 times 1.3 fl oz in the jug"]);
  });

  it("goes by the plural forms of the table's language", () => {
    // Slovak has a form of its own for two to four (Unicode CLDR, plural rules).
    const slovak: Messages = {
      ...ENGLISH_WORDS,
      language: "sk",
      tools: { spoon: { one: "lyžica", few: "lyžice", other: "lyžíc" } },
    };
    expect(measured([tool("spoon", 1.3)], slovak)).toEqual(["3 lyžice"]);
    expect(measured([tool("spoon", 0.78)], slovak)).toEqual(["5 lyžíc"]);
  });
});

describe("the total mix", () => {
  const total = (input: PlanInput) =>
    worksheet(planApplication(input)).summary.find(({ name }) => name === "Total spray mix")?.value;
  // 5,600 sq ft at 38.5688 gal/ac are 4.958 gal; 5% of it are 0.2479 gal.
  const { reserve: _, sprayer, ...job } = TWO_PRODUCTS;
  const { lineVolume: __, ...noLines } = sprayer;

  it("has its parts, and none that is nothing", () => {
    expect(total({ ...job, sprayer: noLines })).toBe("4.96 gal");
    expect(total({ ...job, sprayer: noLines, reserve: { percent: 5 } })).toBe(
      "5.21 gal (4.96 gal for the plot + 31.7 fl oz extra)",
    );
    expect(total({ ...job, sprayer })).toBe("5.04 gal (4.96 gal for the plot + 10 fl oz in the hose)");
    expect(total(TWO_PRODUCTS)).toBe(
      "5.29 gal (4.96 gal for the plot + 31.7 fl oz extra + 10 fl oz in the hose)",
    );
  });

  it("has three figures of a hose that came of a change of unit before the job", () => {
    const lineVolume = convert(qty(10, "fl_oz"), "mL");
    expect(total({ ...job, sprayer: { ...sprayer, lineVolume } })).toBe(
      "5.04 gal (4.96 gal for the plot + 295 mL in the hose)",
    );
  });

  it("says what is left over in fluid ounces under a gallon, and leaves out a part of an acre that nobody sees", () => {
    const left = worksheet(planApplication(TWO_PRODUCTS)).summary.at(-1);
    expect(left?.value).toBe("41.7 fl oz, with enough in the tank for another 280 sq ft");
  });

  it("is in the tank's unit on a sheet in another system, with the hose as it was entered", () => {
    const plan = planApplication(TWO_PRODUCTS);
    expect(
      worksheet(plan, { units: "metric" }).summary.find(({ name }) => name === "Total spray mix")?.value,
    ).toBe("5.29 gal (4.96 gal for the plot + 31.7 fl oz extra + 10 fl oz in the hose)");
  });
});

describe("the area that a load covers", () => {
  const covers = (plot: PlanInput["plot"], fill = 3.5) =>
    worksheet(planApplication({ ...TWO_PRODUCTS, plot, sprayer: { tank: qty(fill, "gal") } })).loads[0]
      ?.covers;
  const rows = { rowLength: qty(160, "ft"), bandWidth: qty(30, "in"), rowSpacing: qty(5, "ft") };

  it("is said in rows too, to a part that one can see", () => {
    // 400 sq ft a row, 0.35415 gal of mix at 38.5688 gal/ac.
    const plot = { kind: "row-bands", rows: 14, ...rows } as const;
    expect(covers(plot)).toMatch(/^Covers 3,950 sq ft \(about 10 rows\)\.$/);
    expect(covers(plot, 3.42)).toMatch(/\(about 9 2\/3 rows\)\.$/);
    expect(covers(plot, 1)).toMatch(/up to 1,130 sq ft \(about 2 3\/4 rows\)\.$/);
  });

  it("is said in beds and in passes, and of other plots as a part of the plot", () => {
    const beds = { kind: "beds", beds: 20, bedLength: qty(160, "ft"), bedWidth: qty(30, "in") } as const;
    expect(covers(beds)).toMatch(/\(about 10 beds\)\.$/);
    // 3,953 sq ft in passes of 30 in along 90 ft: 225 sq ft each, 17.57 of them.
    expect(covers({ kind: "rectangle", length: qty(90, "ft"), width: qty(60, "ft") })).toMatch(
      /\(about 17 1\/2 passes along the 90 ft side\)\.$/,
    );
    // 0.5 ha are 53,820 sq ft; 6,000 sq ft are two thirds done with 3,953.
    const known = { kind: "treated-area", treated: { ...qty(6000, "ft2"), of: "treated" } } as const;
    expect(covers(known)).toMatch(/\(about 2\/3 of the plot\)\.$/);
    // A fifth of the plot is no quarter of it: 3,953 sq ft of 20,000.
    expect(covers({ ...known, treated: { ...qty(20_000, "ft2"), of: "treated" } })).toMatch(/3,950 sq ft\.$/);
    expect(covers({ ...known, treated: { ...qty(0.5, "ha"), of: "treated" } })).toMatch(/m²\.$/);
  });

  it("counts rows that differ one by one, and less than a row not at all", () => {
    const each = [500, 100, 100, 50].map((ft) => qty(ft, "ft"));
    // 3,953 sq ft are 1,581 ft of row: all of these 750 ft, of which the first load covers 750.
    const uneven = { kind: "row-bands", ...rows, rowLength: undefined, rowLengths: each } as never;
    // A gallon is 1,129 sq ft, 451.8 ft of the first row; 1.5 gal are 677.7 ft, 2.78 rows.
    expect(covers(uneven, 1)).not.toMatch(/row/);
    expect(covers(uneven, 1.5)).toMatch(/\(about 2 3\/4 rows\)\.$/);
    expect(covers({ kind: "row-bands", rows: 2, ...rows, rowLength: qty(3000, "ft") })).not.toMatch(/row/);
  });

  it("is in rows of the plot that it begins and ends in", () => {
    const plot = (count: number) => ({ kind: "row-bands", rows: count, ...rows }) as const;
    expect(covers([plot(12), plot(2)])).toMatch(/\(about 10 rows\)\.$/);
    expect(covers([plot(7), plot(7)])).not.toMatch(/row/);
  });
});
