import { describe, expect, it } from "vitest";
import {
  type MeasuringTool,
  measureOut,
  type ToolSetName,
  toolSet,
  toolSetNames,
  usualTools,
} from "../../../src/household/index.ts";
import { type Kit, kitFor } from "../../../src/household/kit.ts";
import { TOOLS, type Tools } from "../../../src/household/tools.ts";
import { toJsonSchema, toolsSchema } from "../../../src/schema/index.ts";
import { checked } from "../../../src/units/check.ts";
import { convert, qty, type Volume, valueIn } from "../../../src/units/index.ts";
import { exactSize } from "../../helpers/definitions.ts";
import { Rational } from "../../helpers/rational.ts";
import { faultOf } from "./fault.ts";

function milliliters({ capacity }: MeasuringTool): string {
  const exact = Rational.fromDecimal(String(capacity.value))
    .times(exactSize(capacity.unit))
    .times(Rational.of(1000));
  return `${exact.n}/${exact.d}`;
}

const mL = (text: string): string => {
  const exact = Rational.fromDecimal(text);
  return `${exact.n}/${exact.d}`;
};

describe("the sets of tools", () => {
  // NIST Handbook 44 (2024), Appendix C: a gallon is 231 cubic inches of 2.54 cm, 768 teaspoons, 256 tablespoons, 16 cups.
  it("hold US customary spoons and cups exactly", () => {
    expect(toolSet("us-household").map(milliliters)).toEqual(
      [
        "0.61611519921875",
        "1.2322303984375",
        "2.464460796875",
        "4.92892159375",
        "14.78676478125",
        "59.147059125",
        "78.8627455",
        "118.29411825",
        "236.5882365",
        "473.176473",
        "946.352946",
        "3785.411784",
      ].map(mL),
    );
  });

  // 21 CFR 101.9(b)(5)(viii): "a teaspoon means 5 milliliters (mL), a tablespoon means 15 mL, a cup means 240 mL".
  it("hold the spoons and cups of US nutrition labels", () => {
    const sizes = Object.fromEntries(
      toolSet("us-legal-cups-and-spoons").map(({ name, capacity }) => [name.split(" (")[0], capacity.value]),
    );
    expect(sizes).toMatchObject({
      teaspoon: 5,
      tablespoon: 15,
      cup: 240,
      "1/4 teaspoon": 1.25,
      "1/3 cup": 80,
    });
  });

  // Conversion chart of the "spoon sets approved by the Standards Association of Australia": ¼ tsp 1.25 mL, ½ tsp 2.5 mL,
  // 1 tsp 5 mL, 1 tbsp 20 mL (Healthy Kids, NSW Ministry of Health, year not shown).
  it("hold the Australian spoons, whose tablespoon is a third larger than the metric one", () => {
    expect(toolSet("australian-spoons").map(milliliters)).toEqual(["1.25", "2.5", "5", "10", "20"].map(mL));
    expect(toolSet("metric-spoons").map(milliliters)).toEqual(["0.625", "1.25", "2.5", "5", "15"].map(mL));
  });

  // Weights and Measures Act 1985, Schedule 1: a gallon is 4.54609 cubic decimetres, 8 pints, 160 fluid ounces.
  it("hold the imperial measures exactly", () => {
    expect(toolSet("imperial-measures").map(milliliters)).toEqual(
      ["28.4130625", "142.0653125", "284.130625", "568.26125", "1136.5225", "4546.09"].map(mL),
    );
  });

  // Sizes with the sources above; marks and the least reading: common practice, no source.
  it.each<[ToolSetName, string[]]>([
    [
      "us-spoons",
      [
        "1/8 teaspoon: 0.125 tsp",
        "1/4 teaspoon: 0.25 tsp",
        "1/2 teaspoon: 0.5 tsp",
        "teaspoon: 1 tsp",
        "tablespoon: 1 tbsp",
      ],
    ],
    [
      "us-cups-and-spoons",
      [
        "1/8 teaspoon: 0.125 tsp",
        "1/4 teaspoon: 0.25 tsp",
        "1/2 teaspoon: 0.5 tsp",
        "teaspoon: 1 tsp",
        "tablespoon: 1 tbsp",
        "1/4 cup: 0.25 cup",
        "1/3 cup: 16 tsp",
        "1/2 cup: 0.5 cup",
        "cup: 1 cup",
      ],
    ],
    [
      "us-household",
      [
        "1/8 teaspoon: 0.125 tsp",
        "1/4 teaspoon: 0.25 tsp",
        "1/2 teaspoon: 0.5 tsp",
        "teaspoon: 1 tsp",
        "tablespoon: 1 tbsp",
        "1/4 cup: 0.25 cup",
        "1/3 cup: 16 tsp",
        "1/2 cup: 0.5 cup",
        "cup: 1 cup",
        "pint measure: 1 pt",
        "quart measure: 1 qt",
        "gallon measure: 1 gal",
      ],
    ],
    [
      "us-legal-cups-and-spoons",
      [
        "1/4 teaspoon (1.25 mL): 1.25 mL",
        "1/2 teaspoon (2.5 mL): 2.5 mL",
        "teaspoon (5 mL): 5 mL",
        "tablespoon (15 mL): 15 mL",
        "1/4 cup (60 mL): 60 mL",
        "1/3 cup (80 mL): 80 mL",
        "1/2 cup (120 mL): 120 mL",
        "cup (240 mL): 240 mL",
      ],
    ],
    [
      "metric-spoons",
      [
        "1/8 metric teaspoon: 0.125 metric_tsp",
        "1/4 metric teaspoon: 0.25 metric_tsp",
        "1/2 metric teaspoon: 0.5 metric_tsp",
        "metric teaspoon: 1 metric_tsp",
        "metric tablespoon: 1 metric_tbsp",
      ],
    ],
    [
      "metric-cups-and-spoons",
      [
        "1/8 metric teaspoon: 0.125 metric_tsp",
        "1/4 metric teaspoon: 0.25 metric_tsp",
        "1/2 metric teaspoon: 0.5 metric_tsp",
        "metric teaspoon: 1 metric_tsp",
        "metric tablespoon: 1 metric_tbsp",
        "1/4 metric cup: 0.25 metric_cup",
        "1/2 metric cup: 0.5 metric_cup",
        "metric cup: 1 metric_cup",
      ],
    ],
    [
      "australian-spoons",
      [
        "1/4 Australian teaspoon: 1.25 mL",
        "1/2 Australian teaspoon: 2.5 mL",
        "Australian teaspoon: 5 mL",
        "1/2 Australian tablespoon: 0.5 au_tbsp",
        "Australian tablespoon: 1 au_tbsp",
      ],
    ],
    [
      "imperial-measures",
      [
        "imperial fluid ounce measure: 1 imp_fl_oz",
        "1/4 imperial pint measure: 0.25 imp_pt",
        "1/2 imperial pint measure: 0.5 imp_pt",
        "imperial pint measure: 1 imp_pt",
        "imperial quart measure: 1 imp_qt",
        "imperial gallon measure: 1 imp_gal",
      ],
    ],
    [
      "syringes",
      [
        "1 mL syringe: 1 mL by 0.02 mL",
        "5 mL syringe: 5 mL by 0.2 mL",
        "10 mL syringe: 10 mL by 0.5 mL",
        "20 mL syringe: 20 mL by 1 mL",
        "50 mL syringe: 50 mL by 1 mL",
      ],
    ],
    [
      "cylinders",
      [
        "10 mL cylinder: 10 mL by 0.2 mL from 1 mL",
        "25 mL cylinder: 25 mL by 0.5 mL from 2.5 mL",
        "50 mL cylinder: 50 mL by 1 mL from 5 mL",
        "100 mL cylinder: 100 mL by 1 mL from 10 mL",
        "250 mL cylinder: 250 mL by 2 mL from 26 mL",
        "500 mL cylinder: 500 mL by 5 mL from 50 mL",
        "1000 mL cylinder: 1000 mL by 10 mL from 100 mL",
      ],
    ],
    ["scales", ["200 g scale: 200 g by 0.1 g from 2 g", "5 kg scale: 5000 g by 1 g from 20 g"]],
    ["fine-scales", ["0.01 g scale: 100 g by 0.01 g from 0.2 g"]],
    ["us-scales", ["5 lb scale: 80 oz by 0.1 oz from 2 oz", "50 lb scale: 800 oz by 1 oz from 20 oz"]],
  ])("print under these names, with these marks: %s", (name, printed) => {
    const told = ({ value, unit }: { value: number; unit: string }): string => `${value} ${unit}`;
    const tools = toolSet(name).map(
      ({ name, capacity, graduation, least }) =>
        `${name}: ${told(capacity)}${graduation ? ` by ${told(graduation)}` : ""}${least ? ` from ${told(least)}` : ""}`,
    );
    expect(tools).toEqual(printed);
  });

  it("are from the smallest to the largest, each name once, all of one kind", () => {
    for (const name of toolSetNames) {
      const tools = toolSet(name);
      const weight = name.endsWith("scales");
      const sizes = tools.map(({ capacity }) =>
        valueIn(convert(capacity as Volume, (weight ? "g" : "mL") as never), (weight ? "g" : "mL") as never),
      );
      expect(sizes).toEqual([...sizes].sort((a, b) => a - b));
      expect(new Set(tools.map((tool) => tool.name)).size).toBe(tools.length);
    }
  });

  it("have marks that fit: each set measures its own largest tool in one fill", () => {
    for (const name of toolSetNames) {
      const { capacity } = toolSet(name).at(-1) as MeasuringTool;
      const dose = measureOut({ amount: capacity, tools: name, rule: "nearest" });
      expect(dose).toMatchObject({ ok: true, scoops: 1, errorPercent: 0 });
    }
  });

  it("come as a new list, so that one may be changed without the other", () => {
    toolSet("us-spoons").pop();
    expect(toolSet("us-spoons")).toHaveLength(5);
  });

  it("are found by their name only", () => {
    expect(faultOf(() => toolSet("spoons" as never))).toBe("unknown-choice name");
    expect(faultOf(() => toolSet(undefined as never))).toBe("missing name");
    expect(faultOf(() => toolSet("toString" as never))).toBe("unknown-choice name");
  });

  it("begin with what most kitchens and farm shops have", () => {
    expect(usualTools).toEqual({
      us: "us-cups-and-spoons",
      imperial: "metric-cups-and-spoons",
      metric: "metric-cups-and-spoons",
    });
  });

  it("are described in a JSON Schema under their names", () => {
    const schema = toJsonSchema(toolsSchema());
    expect(schema).toMatchObject({
      title: "Tools",
      $defs: {
        MeasuringTool: {
          description: "Something to measure with: a spoon, a cup, a syringe, a cylinder, a scale.",
        },
      },
    });
  });

  // Confusing them is one of the mistakes that this library is there to stop.
  it("tell a US, a metric and an Australian tablespoon apart", () => {
    const spoonsIn = (tools: "us-spoons" | "metric-spoons" | "australian-spoons"): number => {
      const dose = measureOut({ amount: qty(60, "mL"), tools, rule: "never-over" });
      return dose.ok ? (dose.parts[0]?.count ?? 0) : 0;
    };
    expect([spoonsIn("us-spoons"), spoonsIn("metric-spoons"), spoonsIn("australian-spoons")]).toEqual([
      4, 4, 3,
    ]);
  });
});

/** A list of tools as it is read, and what it is prepared as. */
const read = (tools: Tools): Tools => checked(tools, TOOLS);
const kit = (tools: Tools): Kit => kitFor(read(tools), "volume") as Kit;

// What is worked out for a list is kept with it, for as long as it says the same.
describe("a list of the caller's own", () => {
  type Loose = { name: string; capacity: Volume; graduation?: Volume; least?: Volume };
  const amount = qty(7.5, "mL");
  interface Kit {
    readonly jug: Loose;
    readonly tools: Loose[];
  }

  const told = (tools: Loose[]): string => {
    const dose = measureOut({ amount, tools, rule: "never-over", limitPercent: 50 });
    if (!dose.ok) return dose.issue.code;
    return dose.parts
      .map(({ tool, count, each }) => `${count} ${tool.name} ${each?.value ?? "whole"}`)
      .join();
  };

  /** A jug in a list that has been measured with. */
  function usedKit(): Kit {
    const jug = { name: "jug", capacity: qty(10, "mL"), graduation: qty(1, "mL"), least: qty(2, "mL") };
    const tools: Loose[] = [jug];
    expect(told(tools)).toBe("1 jug 7");
    expect(told(tools)).toBe("1 jug 7");
    return { jug, tools };
  }

  it.each<[string, string, (kit: Kit) => void]>([
    [
      "another capacity",
      "1 jug 4,1 jug 3.5",
      ({ jug }) => Object.assign(jug, { capacity: qty(4, "mL"), graduation: qty(0.5, "mL") }),
    ],
    ["another size in place", "1 jug 5", ({ jug }) => Object.assign(jug.graduation as Volume, { value: 5 })],
    [
      "another unit in place",
      "not-measurable",
      ({ jug }) =>
        Object.assign(jug.capacity, { value: 2, unit: "L" }) &&
        Object.assign(jug, { graduation: qty(1, "L"), least: undefined }),
    ],
    [
      "no marks",
      "not-measurable",
      ({ jug }) => Object.assign(jug, { graduation: undefined, least: undefined }),
    ],
    ["a higher least", "not-measurable", ({ jug }) => Object.assign(jug, { least: qty(8, "mL") })],
    [
      "another tool in its place",
      "3 spoon whole",
      ({ tools }) => (tools[0] = { name: "spoon", capacity: qty(2, "mL") }),
    ],
    [
      "one more tool",
      "1 jug 7,1 dropper whole",
      ({ tools }) => tools.push({ name: "dropper", capacity: qty(0.5, "mL") }),
    ],
  ])("is looked at again with %s: %s", (_, wanted, change) => {
    const kit = usedKit();
    change(kit);
    expect(told(kit.tools)).toBe(wanted);
  });

  it("is one list of ours, for as long as it says the same", () => {
    const { tools } = usedKit();
    tools.push(
      { name: "dropper", capacity: qty(0.5, "mL") },
      { name: "tube", capacity: qty(2, "mL"), graduation: qty(1, "mL") },
    );
    const kept = read(tools);
    expect(kept).toEqual(tools);
    expect(kept).not.toBe(tools);
    expect(read(tools)).toBe(kept);
    expect(read([...tools])).not.toBe(kept);
    // Nothing is nothing, in whichever way it is written.
    for (const nothing of [undefined, null]) {
      Object.assign(tools[1] as Loose, { graduation: nothing, least: nothing });
      expect(read(tools)).toBe(kept);
    }
    const changes: ((tool: Loose) => unknown)[] = [
      (tool) => (tool.name = "can"),
      (tool) => (tool.capacity = qty(9, "mL")),
      (tool) => (tool.capacity = qty(9, "tsp")),
      (tool) => (tool.graduation = qty(3, "mL")),
      (tool) => (tool.least = qty(3, "mL")),
      (tool) => delete tool.least,
    ];
    for (const change of changes) {
      const before = read(tools);
      change(tools[0] as Loose);
      expect(read(tools)).not.toBe(before);
      expect(read(tools)).toBe(read(tools));
    }
  });

  it("is compared in whole numbers where its sizes and the unit share a measure", () => {
    const spoons = kit("us-spoons");
    // 6 teaspoons to the fluid ounce, 8 eighths to the teaspoon (NIST Handbook 44 (2024), Appendix C).
    expect(spoons.sizeOf("fl_oz")).toEqual({ size: 48, whole: true });
    expect(spoons.sizeOf("gal")).toEqual({ size: 128 * 48, whole: true });
    expect(spoons.sizeOf("mL").whole).toBe(false);
    const liter = kit([{ name: "jug", capacity: qty(1, "L") }]);
    expect(liter.sizeOf("m3")).toEqual({ size: 1000, whole: true });
    expect(liter.sizeOf("gal")).toEqual({ size: 3.785411784, whole: false });
    // A third of a cup, as a float, shares nothing with it that is worth the name.
    const third = kit([
      { name: "1/3 cup", capacity: qty(1 / 3, "cup") },
      { name: "cup", capacity: qty(1, "cup") },
    ]);
    expect(third.sizeOf("cup").whole).toBe(false);
    // These share a millionth of a milliliter, of which a cubic meter has 10^12.
    const far = kit([
      { name: "jug", capacity: qty(1, "L") },
      { name: "vial", capacity: qty(1.000001, "mL") },
    ]);
    expect(far.sizeOf("m3")).toEqual({ size: 1e12, whole: true });
    // These share 10^-9 mL, and 10^15 of it in a drum are past 2^46: the largest fill is the measure.
    const past = kit([
      { name: "drum", capacity: qty(1e6, "mL"), graduation: qty(1, "mL") },
      { name: "vial", capacity: qty(1.000000001, "mL") },
    ]);
    expect(past.sizeOf("m3")).toEqual({ size: 1, whole: false });
    // 2^46 of it are not past it.
    const border = kit([
      { name: "lake", capacity: qty(2 ** 46, "mL") },
      { name: "spoon", capacity: qty(1, "mL") },
    ]);
    expect(border.sizeOf("mL")).toEqual({ size: 1, whole: true });
    // A cubic meter is 10^19 of these, which is no whole number of a float.
    expect(kit([{ name: "speck", capacity: qty(1e-13, "mL") }]).sizeOf("m3").whole).toBe(false);
  });

  it("comes back as the tools that are in it, also where one has been put in for its like", () => {
    const { jug, tools } = usedKit();
    const like = { ...jug };
    tools[0] = like;
    const dose = measureOut({ amount, tools, rule: "never-over", limitPercent: 50 });
    expect(dose.ok && dose.parts[0]?.tool).toEqual(like);
    // A copy: what is changed in the list later is not changed in the dose.
    expect(dose.ok && dose.parts[0]?.tool).not.toBe(like);
    like.name = "can";
    expect(dose.ok && dose.parts[0]?.tool.name).toBe("jug");
  });

  it.each<[string, string, (kit: Kit) => void]>([
    ["no capacity", "missing tools[0].capacity", ({ jug }) => Object.assign(jug, { capacity: null })],
    [
      "a unit that is none",
      "unknown-unit tools[0].capacity.unit",
      ({ jug }) => Object.assign(jug.capacity, { unit: "mls" }),
    ],
    [
      "marks that are none",
      "missing tools[0].graduation",
      ({ jug }) => Object.assign(jug, { graduation: null }),
    ],
    [
      "an object for a number",
      "not-a-quantity tools[0].capacity.value",
      ({ jug }) => Object.assign(jug.capacity, { value: {} }),
    ],
    [
      "a function that says the same",
      "not-a-quantity tools[0].capacity",
      ({ jug }) => Object.assign(jug, { capacity: Object.assign(() => 0, jug.capacity) }),
    ],
    ["no name", "missing tools[0].name", ({ jug }) => (jug.name = "")],
    ["no tool", "missing tools[0]", ({ tools }) => tools.splice(0, 1, null as never)],
    ["nothing in it", "too-few tools", ({ tools }) => tools.pop()],
  ])("is refused with %s", (_, wanted, change) => {
    const kit = usedKit();
    change(kit);
    expect(faultOf(() => told(kit.tools))).toBe(wanted);
  });
});
