import { describe, expect, it } from "vitest";
import { CAUTIONS, type PlanInput, planApplication } from "../../../src/plan/index.ts";
import { qty } from "../../../src/units/index.ts";
import { planApplication as planLines } from "../../../src/working/index.ts";
import { TWO_PRODUCTS } from "../../helpers/jobs.ts";
import { expectLinesFrom, expectLinesTrue } from "../../helpers/working.ts";

const m = (value: number) => qty(value, "m");
const JOB: PlanInput = {
  plot: [
    { kind: "rectangle", length: m(40), width: m(25), fraction: 0.5 },
    {
      kind: "composite",
      add: [{ kind: "circle", diameter: qty(30, "ft") }],
      subtract: [{ kind: "rectangle", length: m(2), width: m(1) }],
    },
    { kind: "ground-area", ground: { value: 400, unit: "ft2", of: "ground" }, fraction: 0.25 },
    { kind: "treated-area", treated: { value: 10, unit: "m2", of: "treated" } },
  ],
  calibration: { kind: "strip", used: qty(2, "L"), swath: m(2), distance: m(50) },
  sprayer: { tank: qty(5, "L") },
  products: [
    { name: "Product A", form: "liquid", rate: qty(2, "L/ha") },
    { name: "Product B", form: "dry", rate: qty(3, "kg/ha"), bulkDensity: qty(0.5, "kg/L") },
  ],
  tools: "metric-spoons",
};

describe("planWorking", () => {
  const plan = planApplication(JOB);
  const steps = planLines(plan);

  it("goes from the plots to the last dose, each formula once", () => {
    const found = steps.map(({ step, product, load, lines }) => ({
      step: [step, product, load].filter((part) => part !== undefined).join(" "),
      formulas: lines.filter(({ id }) => id !== "units.convert").map(({ id }) => id),
    }));
    const dose = ["household.measured", "household.error", "household.errorPercent"];
    const product = ["tank-mix.strength", "tank-mix.amount"];
    expect(found.filter(({ step }) => !step.startsWith("dose") && !step.startsWith("product"))).toEqual([
      {
        step: "area",
        formulas: [
          "area.rectangle",
          "area.treatPart",
          "area.circle",
          "area.rectangle",
          "area.composite",
          "area.treatPart",
          "plan.treated",
        ],
      },
      { step: "rate", formulas: ["output-rate.strip"] },
      { step: "carrier", formulas: ["tank-mix.sprayed", "tank-mix.carrier"] },
      { step: "loads", formulas: ["tank-mix.fills", "tank-mix.loads"] },
    ]);
    for (const [name, measured] of [
      ["Product A", [...dose, "household.rateError"]],
      ["Product B", ["household.volumeOfWeight", ...dose]],
    ] as const) {
      const doses = found.filter(({ step }) => step.startsWith(`dose ${name}`));
      const shares = doses.map(() => "tank-mix.amountInLoad");
      expect(found.find(({ step }) => step === `product ${name}`)?.formulas).toEqual([...product, ...shares]);
      expect(doses.length).toBeGreaterThan(1);
      for (const { formulas } of doses) expect(formulas).toEqual(measured);
    }
  });

  it("adds up the plots that were worked out before, in lines that are all true", () => {
    const area = steps[0]?.lines ?? [];
    expectLinesFrom(area, JOB.plot);
    expect(area.at(-1)).toMatchObject({
      formula: "x1 + x2 + x3 + x4",
      result: plan.area.treated,
      source: "sum of the plots",
    });
    for (const { lines } of steps) expectLinesTrue(lines);
  });

  it("says each change of unit once in a step, though both its formulas need it", () => {
    const plot = {
      kind: "row-bands",
      rows: 4,
      rowLength: m(30),
      bandWidth: qty(30, "in"),
      rowSpacing: qty(5, "ft"),
    };
    const [area] = planLines(planApplication({ ...JOB, plot } as PlanInput));
    const changes = area?.lines.filter(({ id }) => id === "units.convert").map(({ terms }) => terms.value);
    expect(changes).toEqual([qty(5, "ft"), qty(30, "in")]);
  });

  it("has no sum for one plot, no line for what was told, and says each change of unit once", () => {
    const told = planApplication({
      ...JOB,
      plot: { kind: "treated-area", treated: { value: 0.1, unit: "ha", of: "treated" } },
      calibration: { kind: "known", rate: qty(200, "L/ha") },
    });
    expect(
      planLines(told)
        .slice(0, 2)
        .map(({ lines }) => lines),
    ).toEqual([[], []]);
    const known = planApplication({
      ...JOB,
      plot: { kind: "ground-area", ground: { value: 400, unit: "ft2", of: "ground" } },
    });
    expect(planLines(known)[0]?.lines).toEqual([]);
    const square = planApplication({
      ...JOB,
      plot: { kind: "rectangle", length: m(20), width: qty(60, "ft") },
      calibration: { kind: "strip", used: qty(2, "L"), swath: qty(60, "ft"), distance: qty(60, "ft") },
    });
    const [area, rate] = planLines(square);
    expect(area?.lines.map(({ id }) => id)).toEqual(["units.convert", "area.rectangle"]);
    expect(rate?.lines.filter(({ id }) => id === "units.convert")).toHaveLength(
      new Set(
        rate?.lines.filter(({ id }) => id === "units.convert").map((line) => JSON.stringify(line.terms)),
      ).size,
    );
  });

  it("shows a dose that is alike in several loads once, with the load that it stands for", () => {
    const even = planApplication({
      ...JOB,
      plot: { kind: "rectangle", length: m(30), width: m(25) },
      products: [{ name: "Product A", form: "liquid", rate: qty(2, "L/ha") }],
    });
    expect(even.loads.map(({ carrier }) => carrier.value)).toEqual([5, 5, 5]);
    expect(planLines(even).flatMap(({ load }) => load ?? [])).toEqual([1]);
  });
});

describe("the cautions of every plan", () => {
  it("are the usual ones of the trade (common practice, no source)", () => {
    expect(CAUTIONS).toEqual([
      {
        code: "label",
        message: "The label is the law. Where this sheet and the label differ, follow the label.",
      },
      {
        code: "clean-water",
        message:
          "Calibrate with clean water. Fill the hose and boom first, measure the refill, and use the same person, pace, pressure and nozzles as on spray day.",
      },
      {
        code: "protection",
        message: "Wear the protective equipment on the label when you measure, mix and spray.",
      },
      {
        code: "drift",
        message:
          "Check the wind before and while you spray, and don't spray when it could carry drift to people, homes, water, bees or other crops.",
      },
      {
        code: "rinse",
        message:
          "Rinse each empty liquid container three times, and pour every rinse into the tank before you top it up.",
      },
      {
        code: "tools",
        message: "Mark the spoons, cups and syringes used for pesticides and never use them for food again.",
      },
      {
        code: "recalibrate",
        message: "Calibrate again when the person, pace, pressure, nozzles, ground or sprayer changes.",
      },
      {
        code: "local-rules",
        message:
          "Follow local rules on what may be sprayed, who may spray it, and where leftover mix and rinse water may go.",
      },
    ]);
    expect(planApplication(JOB).cautions).toBe(CAUTIONS);
  });
});

describe("the working of the easiest loads", () => {
  const marked = {
    ...TWO_PRODUCTS,
    sprayer: { tank: qty(4, "gal"), marks: qty(0.25, "gal"), lineVolume: qty(10, "fl_oz") },
    products: [{ name: "Product A", form: "liquid", rate: qty(1.5, "pt/ac") }],
    tools: "us-cups-and-spoons",
    split: "easiest",
  } as const;
  const loadsOf = (rate: number, rows = 14) => {
    const plot = { ...marked.plot, rows } as PlanInput["plot"];
    const calibration = { kind: "known", rate: qty(rate, "gal/ac") } as const;
    const plan = planApplication({ ...marked, plot, calibration });
    const step = planLines(plan).find((one) => one.step === "loads");
    return { plan, lines: step?.lines ?? [] };
  };

  it("is of the whole rows that were found", () => {
    const { plan, lines } = loadsOf(36.3, 15);
    expect(plan.loads.map(({ pieces }) => pieces)).toEqual([8, 7]);
    // 5 gal on 15 rows, 10 fl oz besides in the hose with the first, 0.25 gal to spare with the last.
    const perLoad = lines.find(({ id }) => id === "tank-mix.perLoad");
    expect(perLoad?.terms).toMatchObject({ pieces: 15, chosen: 8 });
    expect(lines.filter(({ id }) => id === "tank-mix.loadOfPieces").map(({ terms }) => terms.pieces)).toEqual(
      [8, 7],
    );
    expectLinesTrue([...lines]);
  });

  it("is of the fills that were found, where no load has whole rows", () => {
    const { plan, lines } = loadsOf(38);
    expect(plan.loads.map(({ carrier, pieces }) => [carrier, pieces])).toEqual(
      Array.from({ length: 3 }, () => [qty(1.75, "gal"), undefined]),
    );
    expect(lines.map(({ id }) => id)).toEqual(["tank-mix.markedTotal", "tank-mix.toMark"]);
    expect(lines[0]?.terms).toEqual({ n1: 3, x1: qty(1.75, "gal") });
    expectLinesTrue([...lines]);
  });
});
