import { describe, expect, it } from "vitest";
import { type Issue, SprayMathError } from "../../../src/errors.ts";
import { planApplication } from "../../../src/plan/index.ts";
import {
  formFields,
  labelRateSchema,
  parseBatchInput,
  parseCalibration,
  parseCalibrationRecord,
  parsePlanInput,
  planInputSchema,
  plotSchema,
  quantitySchema,
  toJsonSchema,
} from "../../../src/schema/index.ts";
import { qty, unitsOf } from "../../../src/units/index.ts";
import { SPANISH_WORDS } from "../../../src/words/es.ts";
import { issueText } from "../../../src/worksheet/index.ts";
import { errorOf } from "../../helpers/bad-input.ts";
import { TWO_PRODUCTS } from "../../helpers/jobs.ts";
import { CONDITIONS, MEASUREMENTS } from "../../helpers/output-rate-samples.ts";
import { CALIBRATIONS, DRY_RATES, LIQUID_RATES, PLOTS } from "../../helpers/plan-inputs.ts";
import { expectRefused } from "../../helpers/refusal.ts";

/** A form's fields as people fill them in: the same job as TWO_PRODUCTS. */
const TYPED = {
  plot: { kind: "row-bands", rows: 14, rowLength: "160 ft", bandWidth: "30 in", rowSpacing: "5'" },
  calibration: { kind: "strip", used: "34 fl. oz.", swath: '30"', distance: "120 feet" },
  sprayer: { tank: "4 gal", workingFill: "3 1/2 gallons", lineVolume: "10 fl oz" },
  reserve: { percent: 5 },
  products: [
    { name: "Product A", form: "liquid", rate: "1 1/2 pt per acre", formulation: "EC" },
    { name: "Product B", form: "dry", rate: "12 oz wt/ac", formulation: "WG" },
  ],
  tools: "us-spoons",
};

/** What is wrong, as "code path" for each fault in turn. */
function faults(value: unknown, read: (value: unknown) => unknown = parsePlanInput): string[] {
  return errorOf(() => read(value)).issues.map(({ code, path }) => `${code} ${path}`.trim());
}

const typed = (change: object): unknown => ({ ...TYPED, ...change });
const plot = (change: object): string[] => faults(typed({ plot: change }));
const product = (change: object): string[] =>
  faults(typed({ products: [TYPED.products[0], { ...TYPED.products[1], ...change }] }));

describe("what is read as a job", () => {
  it("is no finished plan, and no text", () => {
    const plan = planApplication(TWO_PRODUCTS);
    for (const read of [parsePlanInput, parseBatchInput]) {
      expect(faults(plan, read)).toEqual(["conflict"]);
      expect(faults(JSON.stringify(TYPED), read)).toEqual(["not-a-quantity"]);
    }
    expect(parsePlanInput(plan.input)).toEqual(plan.input);
  });
});

describe("an example in a message", () => {
  const product = (form: string, rate: string, label: object = {}) => ({
    ...TYPED,
    products: [{ name: "Product A", form, rate, label }],
  });
  const says = (job: object, at: string, words: string): void => {
    const { issues } = errorOf(() => parsePlanInput(job));
    expect(issues?.find(({ path }) => path === at)?.message).toBe(words);
  };

  it("is in pints for a product: in gallons it would be far over the label", () => {
    says(
      product("liquid", "2"),
      "products[0].rate",
      "Add the unit that was measured or that the label gives, such as 2 pt/ac.",
    );
    says(
      product("liquid", "1 qt/ac", { max: "2", leastCarrier: "20" }),
      "products[0].label.max",
      "Add the unit that was measured or that the label gives, such as 2 pt/ac.",
    );
    says(
      product("liquid", "1 qt/ac", { leastCarrier: "20" }),
      "products[0].label.leastCarrier",
      "Add the unit that was measured or that the label gives, such as 20 gal/ac.",
    );
  });

  it("is of the part under the stroke alone where that isn't known: another rate would be another amount", () => {
    const words = (unit: string) =>
      `The unit "${unit}" isn't known here. Write how much that is per ac or per 1,000 sq ft.`;
    says(product("dry", "2 kg/mz"), "products[0].rate", words("mz"));
    says(product("dry", "2 lb/C sq ft"), "products[0].rate", words("C sq ft"));
    says(product("liquid", "2 pt/ac", { max: "3 pt/mz" }), "products[0].label.max", words("mz"));
    const read = parsePlanInput(product("liquid", "1.2 fl oz/K sq ft")).products[0]?.rate;
    expect(read).toEqual(qty(1.2, "fl_oz/1000ft2"));
  });

  it("is in fluid ounces or milliliters for what a jug or a spoon holds: in gallons it would be far off", () => {
    const job = {
      ...TYPED,
      calibration: { kind: "strip", used: "30", swath: "4 ft", distance: "100 ft" },
      sprayer: { tank: "4", lineVolume: "4" },
      tools: [{ name: "cup", capacity: "1" }],
    };
    says(
      job,
      "calibration.used",
      "Add the unit that was measured or that the label gives, such as 30 fl oz.",
    );
    says(
      job,
      "sprayer.lineVolume",
      "Add the unit that was measured or that the label gives, such as 4 fl oz.",
    );
    says(
      job,
      "tools[0].capacity",
      "Add the unit that was measured or that the label gives, such as 1 fl oz.",
    );
    says(job, "sprayer.tank", "Add the unit that was measured or that the label gives, such as 4 gal.");
    const pots = {
      size: { kind: "count", count: "300 pots", each: "3" },
      sprayer: { tank: "4 gal" },
      products: [{ name: "Product A", form: "liquid", rate: "0.5 mL per pot" }],
      tools: "syringes",
    };
    const said = (system: "us" | "metric") => errorOf(() => parseBatchInput(pots, { system })).message;
    expect(said("us")).toBe("Add the unit that was measured or that the label gives, such as 3 fl oz.");
    expect(said("metric")).toContain("Add the unit that was measured or that the label gives, such as 3 mL.");
  });

  it("goes by the plant where the job does", () => {
    const said = (form: string, rate: string, system?: "metric") => {
      const job = {
        size: { kind: "count", count: "30 trees", each: "3 fl oz" },
        sprayer: { tank: "4 gal" },
        products: [{ name: "Product A", form, rate }],
        tools: "syringes",
      };
      const { issues } = errorOf(() => parseBatchInput(job, system && { system }));
      return issues.find(({ path }) => path === "products[0].rate")?.message;
    };
    expect(said("liquid", "")).toBe("Enter the label's rate, such as 5 mL/plant.");
    expect(said("dry", "", "metric")).toBe("Enter the label's rate, such as 5 g/plant.");
    expect(said("liquid", "0.5 mL/xyz")).toBe(
      'The unit "xyz" isn\'t known here. Write how much that is per plant or per 1,000 plants.',
    );
    expect(said("dry", "2 g per")).toContain("such as 2 g/plant.");
  });

  it("is a weight where the product is dry, and goes by the form that stands nearest", () => {
    says(
      product("dry", "3 g"),
      "products[0].rate",
      "3 g is a weight. Enter the label's rate, such as 4 oz wt/ac.",
    );
    says(product("dry", ""), "products[0].rate", "Enter the label's rate, such as 4 oz wt/ac.");
    says(product("liquid", ""), "products[0].rate", "Enter the label's rate, such as 1.5 pt/ac.");
    says(
      product("dry", "3"),
      "products[0].rate",
      "Add the unit that was measured or that the label gives, such as 3 oz wt/ac.",
    );
    says(
      product("dry", "3 oz wt/ac", { max: "5 g" }),
      "products[0].label.max",
      "5 g is a weight. Enter the label's rate, such as 4 oz wt/ac.",
    );
  });

  it("is none of a rate where the label's range is known: one of it is to be chosen", () => {
    const range = (rate: object) => ({ ...TYPED, products: [{ name: "Product A", form: "liquid", rate }] });
    const at = "products[0].rate.chosen";
    for (const chosen of [undefined, null, ""])
      says(
        range({ low: "1 pt/ac", high: { value: 2, unit: "pt/ac" }, chosen }),
        at,
        "Choose the rate to use, from 1 pt/ac to 2 pt/ac.",
      );
    says(
      range({ low: { rate: "1 pt/ac", per: "ground" }, high: "1 qt/ac" }),
      at,
      "Choose the rate to use, from 1 pt/ac to 1 qt/ac.",
    );
    const parts = (to: number) => ({ parts: 1, to, of: "mix" });
    says(range({ low: parts(200), high: parts(100) }), at, "Choose the rate to use, from 1:200 to 1:100.");
    for (const low of ["x", undefined])
      says(range({ low, high: "2 pt/ac" }), at, "Enter the label's rate, such as 1.5 pt/ac.");
    // A rate that can't be read isn't missing.
    says(
      range({ low: "1 pt/ac", high: "2 pt/ac", chosen: "1" }),
      at,
      "Add the unit that was measured or that the label gives, such as 1 pt/ac.",
    );
    const { issues } = errorOf(() => parsePlanInput(range({ low: "1 pt/ac", high: "2 pt/ac", chosen: "1" })));
    expect(issues?.filter(({ path }) => path === at)).toHaveLength(1);
  });

  it("is none of the same number where the rate is one of active ingredient: that needs the content", () => {
    for (const rate of [
      "2 lbs ai/ac",
      "2 lb a.i./ac",
      "2 lb (ai)/ac",
      "2 lb/ac active ingredient",
      "1 lb ae per acre",
    ])
      says(
        product("liquid", rate),
        "products[0].rate",
        `"${rate}" is a rate of active ingredient. Enter the product's rate, or the active ingredient with what the product contains.`,
      );
  });

  it("is in the way of nobody who says ai where active ingredient goes", () => {
    const job = product("liquid", "");
    const rate = { activeIngredient: "2 lbs ai/ac", contains: "4 lb a.i./gal" };
    const read = parsePlanInput({ ...job, products: [{ name: "Product A", form: "liquid", rate }] });
    expect(read.products[0]?.rate).toEqual({
      activeIngredient: { value: 2, unit: "lb/ac" },
      contains: { value: 4, unit: "lb/gal" },
    });
  });

  it("is no rate of 0", () => {
    says(
      product("liquid", "0"),
      "products[0].rate",
      "Add the unit that was measured or that the label gives, such as 5 pt/ac.",
    );
  });

  it("never turns a rate that is upside down: with the same number it would be another amount", () => {
    says(
      product("liquid", "1 ac/qt"),
      "products[0].rate",
      'The unit "ac/qt" isn\'t known here. Write how much that is per ac or per 1,000 sq ft.',
    );
  });

  it("is in the reader's system for lengths of row too", () => {
    const job = (rate: string) => ({
      size: { kind: "row-length", length: "1800 ft", rate },
      sprayer: { tank: "4 gal" },
      products: [{ name: "Product A", form: "liquid", rate: "1 fl oz/100 ft" }],
      tools: "syringes",
    });
    const said = (rate: string, system: "us" | "metric") =>
      errorOf(() => parseBatchInput(job(rate), { system })).message;
    expect(said("2 gal", "us")).toContain("such as 5 fl oz/100 ft.");
    expect(said("2 L", "metric")).toContain("such as 5 mL/100 m.");
  });
});

describe("a number of plants as text", () => {
  it("is asked for in plants", () => {
    const job = {
      size: { kind: "count", count: "300", each: "4 fl oz" },
      sprayer: { tank: "4 gal" },
      products: [{ name: "Product A", form: "liquid", rate: "0.5 mL per pot" }],
      tools: "syringes",
    };
    expectRefused(
      () => parseBatchInput(job),
      "incomplete",
      "size.count",
      "Add the unit that was measured or that the label gives, such as 300 plants.",
    );
    expect(parseBatchInput({ ...job, size: { ...job.size, count: "1 plant" } }).size).toMatchObject({
      count: { value: 1, unit: "plant" },
    });
  });
});

describe("a ratio as text", () => {
  it("is asked for as an object with its parts, which says of what it is", () => {
    const job = (rate: string, tank: string) => ({
      plot: { kind: "rectangle", length: "40 m", width: "25 m" },
      calibration: { kind: "known", rate: "200 L/ha" },
      sprayer: { tank },
      products: [{ name: "Product A", form: "liquid", rate }],
      tools: "syringes",
    });
    const words = "is a ratio. Enter its two parts, and whether it is in water or in mix.";
    expectRefused(
      () => parsePlanInput(job("1:100", "15 L")),
      "unreadable",
      "products[0].rate",
      `"1:100" ${words}`,
    );
    // A tank has no ratio.
    expectRefused(() => parsePlanInput(job("2 L/ha", "1:100")), "unreadable", "sprayer.tank", "one amount");
  });
});

describe("parsePlanInput", () => {
  it("takes a percentage whose basis is left blank for one without a basis", () => {
    const rate = {
      activeIngredient: { value: 1, unit: "kg/ha" },
      contains: { value: 50, unit: "%", basis: " " },
    };
    const [first] = TWO_PRODUCTS.products;
    const error = errorOf(() =>
      parsePlanInput({ ...TWO_PRODUCTS, products: [{ ...first, form: "dry", rate }] }),
    );
    expect(error.issues.map(({ code, path }) => `${code} ${path}`)).toContain(
      "missing products[0].rate.contains.basis",
    );
  });

  it("reads what people type into the job that the plan takes", () => {
    expect(parsePlanInput(TYPED)).toEqual(TWO_PRODUCTS);
    expect(planApplication(parsePlanInput(TYPED))).toEqual(planApplication(TWO_PRODUCTS));
  });

  it("finds every fault at once, each with its path, what was given and what is wanted", () => {
    const error = errorOf(() =>
      parsePlanInput({
        plot: { ...TYPED.plot, rows: 0, bandWidth: "30 gal", rowSpacing: 5 },
        calibration: {
          kind: "strip",
          used: "34 oz",
          swath: { value: Number.NaN, unit: "in" },
          distance: "-1 ft",
        },
        sprayer: { tank: { value: 4, unit: "gallon" }, workingFil: "3 gal" },
        reserve: { percent: 101 },
        products: [
          { name: " ", form: "solid", rate: "1.5 pt/ac" },
          { name: "Product B", form: "dry", rate: { value: 12, unit: "fl_oz/ac" }, label: { max: "1 %" } },
        ],
        tools: "spoons",
        currency: { code: "USD", decimals: 5 },
      }),
    );
    expect(error.issues.map(({ code, path }) => `${code} ${path}`)).toEqual([
      "out-of-range plot.rows",
      "wrong-dimension plot.bandWidth",
      "not-a-quantity plot.rowSpacing",
      "ambiguous-unit calibration.used",
      "not-finite calibration.swath.value",
      "out-of-range calibration.distance",
      "unknown-unit sprayer.tank.unit",
      "unknown-field sprayer.workingFil",
      "out-of-range reserve.percent",
      "missing products[0].name",
      "unknown-choice products[0].form",
      "missing products[1].label.max.basis",
      "wrong-dimension products[1].rate",
      "unknown-choice tools",
      "out-of-range currency.decimals",
    ]);
    expect({ code: error.code, path: error.path }).toEqual({ code: "out-of-range", path: "plot.rows" });
    expect(error.message).toBe("Enter a whole number, 1 or more. (15 errors.)");
    const messages = Object.fromEntries(error.issues.map(({ path, message }) => [path, message]));
    expect(messages["plot.bandWidth"]).toBe("30 gal is a volume. Enter a length, such as 5 ft.");
    expect(messages["plot.rowSpacing"]).toBe("Enter a length with its unit, such as 5 ft.");
    expect(messages["sprayer.tank.unit"]).toContain('Did you mean "gal"?');
    expect(messages["sprayer.workingFil"]).toBe(
      'There is no field "workingFil" here. Did you mean workingFill?',
    );
    expect(messages["products[1].rate"]).toContain("Check whether the label says fl oz or oz.");
    expect(messages.tools).toContain("us-spoons");
  });

  it("names what can be chosen in Spanish, and for programs what they write", () => {
    const spanish = (change: object): string => {
      const [issue] = errorOf(() => parsePlanInput(typed(change))).issues;
      return issueText(issue as Issue, { words: SPANISH_WORDS });
    };
    const [, second] = TYPED.products;
    expect(spanish({ products: [{ ...second, form: "" }] })).toBe("Escoja una de estas: líquido, seco.");
    expect(spanish({ products: [{ ...second, form: "fluid" }] })).toBe(
      'No existe la opción "fluid". Escoja una de estas: liquid, dry.',
    );
    expect(spanish({ plot: { rows: 14 } })).toMatch(/^Escoja una de estas: rectángulo, .*, área tratada\.$/);
    const names = SPANISH_WORDS.names.choice;
    const asked = ["plot.kind", "calibration.kind", "application", "split", "size.kind", "products[].form"];
    const choices = [...formFields("plan"), ...formFields("batch")]
      .filter(({ path }) => asked.includes(path) || /\.(?:per|of)$/.test(path))
      .flatMap(({ choices = [] }) => choices);
    expect(choices.length).toBeGreaterThan(50);
    expect(choices.filter((choice) => !Object.hasOwn(names, choice))).toEqual([]);
  });

  it("says a single fault in the words of that fault", () => {
    expect(errorOf(() => parsePlanInput(typed({ tools: [] }))).message).toBe(
      'Enter at least 1 under "tools".',
    );
  });

  it("names every field that is missing", () => {
    const needed = ["plot", "calibration", "sprayer", "products", "tools"];
    expect(faults({})).toEqual(needed.map((name) => `missing ${name}`));
    for (const name of needed) {
      expect(faults(typed({ [name]: undefined }))).toEqual([`missing ${name}`]);
      expect(faults(typed({ [name]: null }))).toEqual([`missing ${name}`]);
    }
  });

  it.each([undefined, null, 5, "a job", true, [], [TYPED], () => TYPED])("refuses %s for a job", (junk) => {
    const error = errorOf(() => parsePlanInput(junk));
    expect(error.issues).toHaveLength(1);
    expect(error.path).toBe("");
    expect(error.code).toBe(junk === undefined || junk === null ? "missing" : "not-a-quantity");
  });

  it("refuses a field that it does not know, where leaving it out unseen could hide a limit", () => {
    expect(product({ lable: { max: "1 lb/ac" } })).toEqual(["unknown-field products[1].lable"]);
    expect(plot({ ...TYPED.plot, bedWidth: "1 ft" })).toEqual(["unknown-field plot.bedWidth"]);
  });

  it("takes a field that is undefined for one that is left out", () => {
    const read = parsePlanInput(
      typed({ reserve: { percent: 5, volume: undefined }, split: undefined, note: undefined }),
    );
    expect(read).toEqual(TWO_PRODUCTS);
    expect(Object.keys(read)).not.toContain("split");
    expect(() => planApplication(read)).not.toThrow();
  });

  it("tells nothing of one kind's faults where another kind is meant", () => {
    expect(plot({ kind: "circle" })).toEqual(["missing plot.diameter"]);
    expect(plot({ kind: "circle", diameter: "5 ft", length: "5 ft" })).toEqual(["unknown-field plot.length"]);
    expect(faults(typed({ calibration: { kind: "known" } }))).toEqual(["missing calibration.rate"]);
  });

  it("lists the kinds where a kind is not known", () => {
    const error = errorOf(() => parsePlanInput(typed({ plot: { kind: "oval" } })));
    expect(error.issues).toEqual([
      {
        code: "unknown-choice",
        key: "choice-unknown",
        figures: { given: '"oval"', choices: expect.arrayContaining(PLOTS.map(({ kind }) => kind)) },
        path: "plot.kind",
        message: expect.stringMatching(
          /^There is no choice "oval"\. Choose one of: rectangle, .*ellipse.*treated-area\.$/,
        ),
      },
    ]);
    expect(faults(typed({ calibration: {} }))).toEqual(["missing calibration.kind"]);
    expect(plot({ kind: "constructor" })).toEqual(["unknown-choice plot.kind"]);
    expect(plot({ kind: ["circle"] })).toEqual(["unknown-choice plot.kind"]);
  });

  it("finds the faults of each plot, product, run and tool in its place", () => {
    const plots = [TYPED.plot, { kind: "circle", diameter: "x" }, 5];
    expect(faults(typed({ plot: plots }))).toEqual(["unreadable plot[1].diameter", "not-a-quantity plot[2]"]);
    expect(faults(typed({ plot: [] }))).toEqual(["too-few plot"]);
    expect(faults(typed({ products: [] }))).toEqual(["too-few products"]);
    expect(faults(typed({ products: {} }))).toEqual(["not-a-quantity products"]);
    const run = { used: "2 L", swath: "2 m", distance: "50 m" };
    expect(faults(typed({ calibration: { kind: "strip-runs", runs: [run] } }))).toEqual([
      "too-few calibration.runs",
    ]);
    expect(
      faults(typed({ calibration: { kind: "strip-runs", runs: [run, { ...run, used: "2 kg" }] } })),
    ).toEqual(["wrong-dimension calibration.runs[1].used"]);
    expect(faults(typed({ tools: [{ name: "jug", capacity: "1 L", graduation: "1 oz wt" }, {}] }))).toEqual([
      "wrong-dimension tools[0].graduation",
      "missing tools[1].name",
      "missing tools[1].capacity",
    ]);
  });

  it("refuses more readings than anybody takes", () => {
    const run = { used: "2 L", swath: "2 m", distance: "50 m" };
    const runs = Array.from({ length: 501 }, () => run);
    expect(faults(typed({ calibration: { kind: "strip-runs", runs } }))).toEqual([
      "out-of-range calibration.runs",
    ]);
    expect(() =>
      parsePlanInput(typed({ calibration: { kind: "strip-runs", runs: runs.slice(1) } })),
    ).not.toThrow();
  });

  it.each<[string, object, string[]]>([
    ["one length and a list of them", { ...TYPED.plot, rowLengths: ["5 ft"] }, ["conflict plot.rowLengths"]],
    ["neither", { kind: "row-bands", bandWidth: "1 ft" }, ["missing plot.rows", "missing plot.rowLength"]],
    [
      "base and sides",
      { kind: "triangle", base: "5 ft", sides: ["3 m", "4 m", "5 m"] },
      ["conflict plot.sides"],
    ],
    ["two sides", { kind: "triangle", sides: ["3 m", "4 m"] }, ["too-few plot.sides"]],
    ["four sides", { kind: "triangle", sides: ["3 m", "4 m", "5 m", "6 m"] }, ["out-of-range plot.sides"]],
    [
      "two sizes of a spot",
      { kind: "spots", spots: [{ count: 1, diameter: "1 m", each: "1 m2" }] },
      ["conflict plot.spots[0].each"],
    ],
    ["a spot without a size", { kind: "spots", spots: [{ count: 1 }] }, ["missing plot.spots[0]"]],
    [
      "three sides of a row",
      { kind: "tree-rows", rows: 1, rowLength: "9 m", stripWidth: "1 m", sides: 3 },
      ["unknown-choice plot.sides"],
    ],
    [
      "a corner of three numbers",
      {
        kind: "boundary",
        unit: "ft",
        corners: [
          [0, 0],
          [1, 0, 5],
          [1, 1],
        ],
      },
      ["not-a-quantity plot.corners[1]"],
    ],
    [
      "a corner in words",
      {
        kind: "boundary",
        unit: "ft",
        corners: [
          [0, 0],
          [1, "some"],
          [1, 1],
        ],
      },
      ["unreadable plot.corners[1][1]"],
    ],
    [
      "corners in acres",
      {
        kind: "boundary",
        unit: "ac",
        corners: [
          [0, 0],
          [1, 0],
          [1, 1],
        ],
      },
      ["wrong-dimension plot.unit"],
    ],
    [
      "corners in nothing",
      {
        kind: "boundary",
        corners: [
          [0, 0],
          [1, 0],
          [1, 1],
        ],
      },
      ["missing plot.unit"],
    ],
    [
      "corners in an unknown unit",
      {
        kind: "boundary",
        unit: "fathom",
        corners: [
          [0, 0],
          [1, 0],
          [1, 1],
        ],
      },
      ["unknown-unit plot.unit"],
    ],
    [
      "rows in a composite shape",
      { kind: "composite", add: [{ kind: "row-bands" }] },
      ["unknown-choice plot.add[0].kind"],
    ],
    ["a fraction of 0", { kind: "circle", diameter: "9 m", fraction: 0 }, ["out-of-range plot.fraction"]],
    [
      "treated area where ground is wanted",
      { kind: "ground-area", ground: { value: 1, unit: "ac", of: "treated" } },
      ["wrong-area plot.ground"],
    ],
    ["half a row", { ...TYPED.plot, rows: 1.5 }, ["out-of-range plot.rows"]],
  ])("refuses a plot of %s", (_, given, wanted) => {
    expect(plot(given)).toEqual(wanted);
  });

  it("takes text and plain areas in fields whose name says what area is meant, and marks them", () => {
    const read = plotSchema().parse({
      kind: "treated-area",
      treated: "0.5 ac",
      ground: { value: 1, unit: "ac" },
    });
    expect(read).toEqual({
      kind: "treated-area",
      treated: { value: 0.5, unit: "ac", of: "treated" },
      ground: { value: 1, unit: "ac", of: "ground" },
    });
    // Of a hand-held spray and of spots a form can't say more than the field does. Another kind is still refused.
    const hand = { kind: "hand", used: "4 L" } as const;
    const area = { value: 200, unit: "m2", of: "treated" };
    expect(parseCalibration({ ...hand, area: "200 m2" })).toMatchObject({ area });
    expect(parseCalibration({ ...hand, area: qty(200, "m2") })).toMatchObject({ area });
    expect(faults({ ...hand, area: { ...area, of: "ground" } }, parseCalibration)).toEqual([
      "wrong-area area",
    ]);
    const spots = { kind: "spots", spots: [{ count: 40, diameter: "3 ft" }] };
    expect(plotSchema().parse({ ...spots, ground: "0.5 ac" })).toMatchObject({
      ground: { value: 0.5, unit: "ac", of: "ground" },
    });
    expect(plot({ ...spots, ground: { ...area, unit: "ac" } })).toEqual(["wrong-area plot.ground"]);
  });

  it.each<[string, object, string[]]>([
    ["none of area, row length and plants", { kind: "hand", used: "4 L" }, ["missing"]],
    ["two of them", { kind: "hand", used: "4 L", plants: 5, rowLength: "9 m" }, ["conflict plants"]],
    [
      "weight instead of spray",
      { kind: "strip", used: "2 kg", swath: "2 m", distance: "5 m" },
      ["wrong-dimension used"],
    ],
    [
      "both a resolution and an uncertainty",
      { kind: "known", rate: { ...qty(200, "L/ha"), resolution: "1 L/ha", uncertainty: "1 L/ha" } },
      ["conflict rate"],
    ],
    [
      "a resolution in feet",
      { kind: "known", rate: { ...qty(200, "L/ha"), resolution: "1 ft" } },
      ["wrong-dimension rate.resolution"],
    ],
    [
      "an uncertainty below 0",
      { kind: "known", rate: { ...qty(200, "L/ha"), uncertainty: "-1 L/ha" } },
      ["out-of-range rate.uncertainty"],
    ],
    [
      "a pace without its time",
      { ...MEASUREMENTS.catch, speed: { distance: "200 ft" } },
      ["missing speed.time"],
    ],
    [
      "a version of tomorrow",
      {
        kind: "record",
        record: { version: 2, date: "2026-04-01", measurement: MEASUREMENTS.strip, conditions: {} },
      },
      ["unknown-choice record.version"],
    ],
    [
      "a day that is none",
      {
        kind: "record",
        record: { version: 1, date: "2026-02-30", measurement: MEASUREMENTS.strip, conditions: {} },
      },
      ["unreadable record.date"],
    ],
  ])("refuses a calibration with %s", (_, given, wanted) => {
    expect(faults(given, parseCalibration)).toEqual(wanted);
  });

  it("checks the rates of a product against its form, wherever it tells one", () => {
    expect(product({ rate: "1 pt/ac" })).toEqual(["wrong-dimension products[1].rate"]);
    expect(product({ rate: { low: "1 oz wt/ac", high: "2 pt/ac", chosen: "1 pt/ac" } })).toEqual([
      "wrong-dimension products[1].rate.high",
      "wrong-dimension products[1].rate.chosen",
    ]);
    expect(product({ label: { min: "1 L/ha", max: "1 L/ha" } })).toEqual([
      "wrong-dimension products[1].label.min",
      "wrong-dimension products[1].label.max",
    ]);
    expect(product({ rate: "1 % v/v" })).toEqual(["wrong-dimension products[1].rate.basis"]);
    expect(product({ rate: "1 %" })).toEqual(["missing products[1].rate.basis"]);
    expect(product({ rate: { parts: 1, to: 100, of: "mix" } })).toEqual(["wrong-dimension products[1].rate"]);
    expect(product({ form: "liquid", rate: { parts: 100, to: 1, of: "mix" } })).toEqual([
      "conflict products[1].rate",
    ]);
    expect(product({ rate: { parts: 1, to: 100 } })).toEqual(["missing products[1].rate.of"]);
    expect(product({ rate: { rate: "1 lb/ac" } })).toEqual(["missing products[1].rate.per"]);
    expect(product({ rate: { activeIngredient: "1 lb/ac" } })).toEqual(["missing products[1].rate.contains"]);
    // { value, unit, per } is neither: with `per` left out it would be another dose.
    expect(product({ rate: { ...qty(1, "lb/ac"), per: "ground" } })).toEqual([
      "conflict products[1].rate.per",
    ]);
    expect(product({ rate: { ...qty(1, "lb/ac"), high: "2 lb/ac" } })).toEqual([
      "conflict products[1].rate.high",
    ]);
    expect(product({ rate: "5 ft" })).toEqual(["wrong-dimension products[1].rate"]);
    expect(product({ formulation: "QQ" })).toEqual(["unknown-choice products[1].formulation"]);
    expect(product({ inSolubleBag: "yes" })).toEqual(["not-a-quantity products[1].inSolubleBag"]);
    expect(product({ label: { seasonMax: "1 lb/gal" } })).toEqual([
      "wrong-dimension products[1].label.seasonMax",
    ]);
  });

  it.each<[string, unknown, string]>([
    ["two ways at once", { percent: 5, volume: "1 gal" }, "conflict reserve.volume"],
    ["no way", {}, "missing reserve"],
    ["an unknown way", { litres: 5 }, "missing reserve"],
    ["a bare number", 5, "not-a-quantity reserve"],
    ["a multiple of nothing", { roundUpTo: "0 gal" }, "out-of-range reserve.roundUpTo"],
  ])("refuses a reserve told in %s", (_, reserve, wanted) => {
    expect(faults(typed({ reserve }))).toEqual([wanted]);
  });

  it("takes each field that may be 0 as 0, and no other", () => {
    const zero = {
      sprayer: { tank: "4 gal", lineVolume: "0 gal", leastLoad: "0 gal" },
      reserve: { volume: "0 gal" },
    };
    expect(() => parsePlanInput(typed({ ...zero, addedWater: "0 gal" }))).not.toThrow();
    expect(faults(typed({ sprayer: { tank: "0 gal", workingFill: "0 gal" } }))).toEqual([
      "out-of-range sprayer.tank",
      "out-of-range sprayer.workingFill",
    ]);
  });
});

describe("parsePlanInput reads text", () => {
  it("in the locale, the system and the ounces that it is told", () => {
    const { sprayer, products } = parsePlanInput(
      typed({
        sprayer: { tank: "4,5 gal" },
        products: [{ name: "Product A", form: "liquid", rate: "1,5 oz/ac" }],
      }),
      { locale: "de", system: "imperial", ounce: "liquid" },
    );
    expect(sprayer).toEqual({ tank: qty(4.5, "imp_gal") });
    expect(products[0]?.rate).toEqual(qty(1.5, "imp_fl_oz/ac"));
    expect(faults(typed({ sprayer: { tank: "4,5 gal" } }))).toEqual(["unreadable sprayer.tank"]);
  });

  it("in the dimension that a field wants", () => {
    const conditions = { pressure: "30 lb/sq in" };
    const record = { version: 1, date: "2026-04-01", measurement: MEASUREMENTS.strip, conditions };
    expect(parseCalibrationRecord(record).conditions.pressure).toEqual(qty(30, "psi"));
  });

  it("says which option is at fault, before it looks at the job", () => {
    for (const [options, path] of [
      [{ locale: "no such locale" }, "options.locale"],
      [{ system: "roman" }, "options.system"],
      [{ ounce: "troy" }, "options.ounce"],
    ] as const) {
      const error = errorOf(() => parsePlanInput(TYPED, options as never));
      expect({ code: error.code, path: error.path }).toEqual({ code: "unknown-choice", path });
    }
    expect(errorOf(() => parsePlanInput(TYPED, 5 as never)).path).toBe("options");
  });
});

describe("what is typed into a form", () => {
  const rates = (rate: unknown): string[] => product({ rate });

  it("is incomplete while it could still become right, missing where it is blank, and else unreadable", () => {
    expect(rates("15")).toEqual(["incomplete products[1].rate"]);
    expect(rates("15 lb/")).toEqual(["incomplete products[1].rate"]);
    expect(rates("abc")).toEqual(["unreadable products[1].rate"]);
    expect(rates(" ")).toEqual(["missing products[1].rate"]);
    expect(plot({ ...TYPED.plot, rows: "" })).toEqual(["missing plot.rows"]);
    expect(plot({ ...TYPED.plot, rows: "1 1/" })).toEqual(["incomplete plot.rows"]);
    expect(plot({ ...TYPED.plot, rows: "many" })).toEqual(["unreadable plot.rows"]);
  });

  it("may be a number in the locale's signs wherever a number is needed", () => {
    const label = { mostApplications: "2", daysBetween: "7" };
    const { products, reserve } = parsePlanInput(
      typed({ reserve: { percent: "2,5" }, products: [{ ...TYPED.products[0], label }] }),
      { locale: "de" },
    );
    expect(reserve).toEqual({ percent: 2.5 });
    expect(products[0]?.label).toEqual({ mostApplications: 2, daysBetween: 7 });
  });

  it.each([
    ["reEntryHours", ["24 hours", "24 h", "24 hr.", "24hrs", "24 Hours", "24 horas"], 24],
    ["preHarvestDays", ["7 d", "7 days", "7 días", "7 dias"], 7],
    ["preHarvestDays", ["1 day", "1 día"], 1],
  ])("may end in the unit of its own field: %s", (field, texts, number) => {
    for (const text of texts) {
      const job = parsePlanInput(typed({ products: [{ ...TYPED.products[0], [field]: text }] }));
      expect(job.products[0], text).toMatchObject({ [field]: number });
    }
  });

  it("may be a percentage or an angle with its sign", () => {
    for (const percent of ["5%", "5 %", "5 percent", "5 per cent", "5 pct", "5 por ciento"])
      expect(parsePlanInput(typed({ reserve: { percent } })).reserve, percent).toEqual({ percent: 5 });
    for (const angleDegrees of ["80°", "80 °", "80 º", "80 deg", "80 degrees", "80 grados"]) {
      const sector = { kind: "sector", radius: "40 ft", angleDegrees };
      expect(parsePlanInput(typed({ plot: sector })).plot, angleDegrees).toMatchObject({ angleDegrees: 80 });
    }
  });

  it.each([
    [
      "reEntryHours",
      "4 days",
      "Enter the number of hours, such as 96.",
      "Anote el número de horas, por ejemplo 96.",
    ],
    [
      "reEntryHours",
      "30 min",
      "Enter the number of hours, such as 24.",
      "Anote el número de horas, por ejemplo 24.",
    ],
    [
      "preHarvestDays",
      "48 hours",
      "Enter the number of days, such as 2.",
      "Anote el número de días, por ejemplo 2.",
    ],
    [
      "preHarvestDays",
      "36 hr",
      "Enter the number of days, such as 7.",
      "Anote el número de días, por ejemplo 7.",
    ],
    [
      "preHarvestDays",
      "2 weeks",
      "Enter the number of days, such as 7.",
      "Anote el número de días, por ejemplo 7.",
    ],
    [
      "preHarvestDays",
      "5%",
      "Enter the number of days, such as 7.",
      "Anote el número de días, por ejemplo 7.",
    ],
  ])("asks for the unit of its own field in %s: %s", (field, text, english, spanish) => {
    const job = typed({ products: [{ ...TYPED.products[0], [field]: text }] });
    const [issue] = errorOf(() => parsePlanInput(job)).issues;
    expect(issue).toMatchObject({ code: "unreadable", path: `products[0].${field}`, message: english });
    expect(issueText(issue as Issue, { words: SPANISH_WORDS })).toBe(spanish);
  });

  it("asks for the unit of its own field in a percentage and an angle", () => {
    const message = (change: object) => errorOf(() => parsePlanInput(typed(change))).issues[0]?.message;
    expect(message({ reserve: { percent: "5 gal" } })).toBe("Enter the percentage, such as 5.");
    expect(message({ plot: { kind: "sector", radius: "40 ft", angleDegrees: "1 rad" } })).toBe(
      "Enter the number of degrees, such as 90.",
    );
  });

  it("waits for the rest of a unit, and asks which of two numbers is meant", () => {
    const message = (reEntryHours: string) => {
      const { code, message } = errorOf(() =>
        parsePlanInput(typed({ products: [{ ...TYPED.products[0], reEntryHours }] })),
      );
      return [code, message];
    };
    expect(message("24 ho")).toEqual(["incomplete", 'Finish the unit "ho".']);
    expect(message("12-24 hours")).toEqual([
      "unreadable",
      '"12-24 hours" is a range. Choose one amount from it.',
    ]);
    expect(message("many")[1]).toMatch(/^Couldn't read "many"\./);
  });

  it("is reported with all its faults, also those of fields that don't go together", () => {
    const label = { max: "1 kg/ha", daysBetween: "seven" };
    expect(
      faults(
        typed({
          plot: { ...TYPED.plot, bandWidth: "6 ft" },
          sprayer: { tank: "4 gal", workingFill: "5 gal" },
          products: [{ ...TYPED.products[0], label }],
        }),
      ),
    ).toEqual([
      "conflict plot.bandWidth",
      "conflict sprayer.workingFill",
      "unreadable products[0].label.daysBetween",
      "wrong-dimension products[0].label.max",
    ]);
  });

  it("gets examples in the reader's system, and never gallons where that is metric", () => {
    const calibration = { kind: "known", rate: "200 L/ha" };
    const wrong = {
      calibration,
      plot: { kind: "circle", diameter: "5 kg" },
      sprayer: { tank: "x" },
      products: [{}],
    };
    const { issues } = errorOf(() => parsePlanInput(typed(wrong), { system: "metric" }));
    expect(issues.map(({ path }) => path)).toEqual([
      "plot.diameter",
      "sprayer.tank",
      "products[0].name",
      "products[0].form",
      "products[0].rate",
    ]);
    expect(issues[0]?.message).toBe("5 kg is a weight. Enter a length, such as 5 m.");
    expect(JSON.stringify(issues)).not.toMatch(/\b(gal|ft|oz|ac|pt|lb)\b/);
  });

  it("is read to its first thousand faults, and not looked at any further", () => {
    let looks = 0;
    const wrong = {
      kind: "circle",
      get diameter() {
        looks++;
        return "x";
      },
    };
    const plots = Array.from({ length: 20_000 }, () => wrong);
    expect(faults(typed({ plot: plots }))).toHaveLength(1000);
    expect(looks).toBe(1000);
  });
});

describe("the schemas", () => {
  it.each(PLOTS)("take a plot of kind $kind as it is", (one) => {
    expect(plotSchema().parse(one)).toEqual(one);
  });

  it.each(CALIBRATIONS)("take a calibration of kind $kind as it is", (one) => {
    expect(parseCalibration(one)).toEqual(one);
  });

  it.each([...LIQUID_RATES, ...DRY_RATES])("take the label rate %j as it is", (rate) => {
    expect(labelRateSchema().parse(rate)).toEqual(rate);
  });

  it("take a record as it is, with every condition, and refuse what is no record", () => {
    const record = {
      version: 1,
      date: "2026-04-01",
      measurement: MEASUREMENTS.catch,
      conditions: CONDITIONS,
    };
    expect(parseCalibrationRecord(record)).toEqual(record);
    // A form has all numbers as text.
    expect(parseCalibrationRecord({ ...record, version: "1" })).toEqual(record);
    expect(
      faults({ ...record, conditions: { operator: 5, nozzleCount: 0 } }, parseCalibrationRecord),
    ).toEqual(["not-a-quantity conditions.operator", "out-of-range conditions.nozzleCount"]);
    // A form's field that was left blank.
    const blank = { ...record, conditions: { operator: " ", nozzleCount: "" } };
    expect(parseCalibrationRecord(blank)).toEqual({ ...record, conditions: {} });
    expect(faults({}, parseCalibrationRecord)).toEqual([
      "missing version",
      "missing date",
      "missing measurement",
      "missing conditions",
    ]);
  });

  it("take every unit of a dimension, and no other's", () => {
    for (const dimension of ["length", "volume", "speed", "volumeRate", "pressure"] as const) {
      for (const unit of unitsOf(dimension))
        expect(quantitySchema(dimension).parse({ value: 2, unit })).toEqual({ value: 2, unit });
      expect(faults(qty(2, "kg"), (value) => parsed(dimension, value))).toEqual(["wrong-dimension"]);
    }
    expect(errorOf(() => quantitySchema("weight" as never)).code).toBe("unknown-choice");
  });

  it("refuse what a quantity says besides, as the plan does", () => {
    const ground = { ...qty(2, "ac"), of: "ground", perimeter: qty(5, "ft") };
    expect(faults(typed({ plot: { kind: "ground-area", ground } }))).toEqual([
      "unknown-field plot.ground.perimeter",
    ]);
  });

  it("are made once for the same options", () => {
    expect(planInputSchema()).toBe(planInputSchema({}));
    expect(planInputSchema({ locale: "de" })).toBe(planInputSchema({ locale: "de" }));
    expect(planInputSchema({ ounce: "dry" })).not.toBe(planInputSchema({ ounce: "liquid" }));
    expect(planInputSchema({ locale: "de" })).not.toBe(planInputSchema());
    expect(quantitySchema("length")).toBe(quantitySchema("length"));
  });

  it("state the defaults that the plan uses", () => {
    type Part = {
      readonly default?: unknown;
      readonly anyOf?: readonly Part[];
      readonly properties?: Record<string, Part>;
    };
    const { properties = {} } = toJsonSchema(planInputSchema()) as Part;
    // In the option that is meant: a validator must not put it into a job.
    const usualOf = (part?: Part) => part?.anyOf?.[1]?.default;
    expect(usualOf(properties.split)).toBe(planApplication(TWO_PRODUCTS).input.split);
    const priced = TWO_PRODUCTS.products.map((one) => ({ ...one, price: { amount: 1, per: one.form === "dry" ? qty(1, "lb") : qty(1, "gal") } })); // biome-ignore format: one line
    const { cost } = planApplication({
      ...TWO_PRODUCTS,
      products: priced as never,
      currency: { code: "USD" },
    });
    expect(usualOf(properties.currency?.anyOf?.[1]?.properties?.decimals)).toBe(cost?.currency.decimals);
  });
});

function parsed(
  dimension: "length" | "volume" | "speed" | "volumeRate" | "pressure",
  value: unknown,
): unknown {
  const read = quantitySchema(dimension).safeParse(value);
  if (read.success) return read.data;
  const [issue] = read.error.issues;
  const { code } = (issue as { params?: { code: "wrong-dimension" } }).params ?? { code: "conflict" };
  throw new SprayMathError(code, issue?.path.join(".") ?? "", issue?.message ?? "", { key: "made-up" });
}
