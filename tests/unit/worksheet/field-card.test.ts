import { describe, expect, it } from "vitest";
import { doseAdvice, type PlanInput, type Product, planApplication } from "../../../src/plan/index.ts";
import { qty } from "../../../src/units/index.ts";
import {
  type FieldCard,
  fieldCard,
  renderMarkdown,
  renderText,
  worksheet,
} from "../../../src/worksheet/index.ts";
import { DOUBTFUL, QUIET, TWO_PRODUCTS } from "../../helpers/jobs.ts";

const plan = planApplication(TWO_PRODUCTS);
const card = fieldCard(plan);

describe("a field card", () => {
  it("goes load by load: half the water, the products, water to the mark, spraying, and what to look out for", () => {
    expect(card.loads.map(({ title }) => title)).toEqual(["Load 1 of 2", "Load 2 of 2"]);
    // 3.5 gal less 10 fl oz for the hose at 38.5688 gal/ac: 3,864.7 sq ft, 9.66 rows of 400 sq ft. 5% more output: 9.2
    // rows, 5% less: 10.17.
    expect(card.loads.map(({ steps }) => steps)).toEqual([
      [
        "Add 1.75 gal of clean water. Agitate (backpack: close and shake).",
        "Product B: 1.08 oz wt. Measure 30.8 g on the 200 g scale (0.2% under).",
        "Product A: 2.17 fl oz. Measure 4 tablespoons + 1 teaspoon (0.5% under).",
        "Rinse the measures and each empty container into the tank.",
        "Top up with water to 3.5 gal.",
        "Spray until the tank is empty: about 9 2/3 rows, to 2/3 of the way down row 10. Mark where you stop, and start the next load there.",
        "If load 1 runs out before 9 rows or after 10 1/2 rows, stop and calibrate again.",
      ],
      [
        "Add 1 gal of clean water. Agitate (backpack: close and shake).",
        "Product B: 0.555 oz wt. Measure 15.7 g on the 200 g scale (0.2% under).",
        "Product A: 1.11 fl oz. Measure 2 tablespoons + 1/2 teaspoon + 1/8 teaspoon (0.6% under).",
        // 1.7758 gal of water, 227.3 fl oz, less a gallon.
        "No mark at 1.79 gal? Measure 100 fl oz of water in a jug, and use all of it for the next two steps.",
        "Rinse the measures and each empty container into the tank.",
        "Top up with water to 1.79 gal.",
        "Spray about 4 1/3 rows, to the end of row 14.",
        "About 0.25 gal should be left in the tank when the job is done (enough for 280 sq ft). Don't spray anything twice with it.",
      ],
    ]);
  });

  it("says what is alike once, however many loads there are", () => {
    // 1,384,000 sq ft are 31.7723 ac, 635.445 gal: 158 full loads and 3.445 gal.
    const many = fieldCard(
      planApplication({
        ...QUIET,
        plot: { kind: "rectangle", length: qty(1000, "ft"), width: qty(1384, "ft") },
      }),
    );
    expect(many.loads.map(({ title }) => title)).toEqual(["Loads 1 to 158 of 159, each", "Load 159 of 159"]);
    expect(renderText(many).split("\n").length).toBeLessThan(60);
  });

  it("measures full tanks alike, whatever the last digit of their doses", () => {
    // 1.4 ac at 83.893 gal/ac are 117.45 gal. 2 gal per 100 gal is 128 fl oz in a tank of 50 gal: 16 cups.
    const canopy = fieldCard(
      planApplication({
        plot: { kind: "ground-area", ground: { ...qty(1.4, "ac"), of: "ground" }, fraction: 1 },
        calibration: {
          kind: "tree-row",
          used: qty(2.6, "gal"),
          sides: 1,
          rowLength: qty(150, "ft"),
          rowSpacing: qty(18, "ft"),
        },
        sprayer: { tank: qty(50, "gal") },
        products: [{ name: "Oil", form: "liquid", rate: qty(2, "gal/100gal") }],
        tools: "us-cups-and-spoons",
      }),
    );
    expect(canopy.loads.map(({ title }) => title)).toEqual(["Loads 1 and 2 of 3, each", "Load 3 of 3"]);
    expect(canopy.loads[0]?.steps[1]).toBe("Oil: 128 fl oz. Measure 16 cups (exact).");
    // As it was entered, and as the loads are.
    expect(canopy.facts[0]).toEqual({ name: "Treated area", value: "1.4 ac" });
  });

  it("counts the length of row in an orchard that was calibrated along a test row", () => {
    // 2 gal per 100 ft of row: 4 gal are 200 ft, 2,800 sq ft of ground with rows 14 ft apart; 300 ft x 56 ft are 1,200 ft of row.
    const orchard = {
      plot: { kind: "rectangle", length: qty(300, "ft"), width: qty(56, "ft") },
      calibration: {
        kind: "tree-row",
        used: qty(2, "gal"),
        sides: 2,
        rowLength: qty(100, "ft"),
        rowSpacing: qty(14, "ft"),
      },
      sprayer: { tank: qty(4, "gal") },
      products: [{ name: "Product A", form: "liquid", rate: qty(1, "qt/100gal") }],
      tools: "us-cups-and-spoons",
    } as const satisfies PlanInput;
    const spraying = (input: PlanInput, options = {}): string[] =>
      fieldCard(planApplication(input), options).loads.flatMap(({ steps }) =>
        steps.filter((step) => /spray|load/i.test(step)),
      );
    expect(spraying(orchard)).toEqual([
      "Spray until the tank is empty: 2,800 sq ft (about 200 ft of row) for each load. Mark where you stop, and start the next load there. Load 6 is the last: stop at the end of the job.",
      "Check where each load runs out: load 1 after about 200 ft of row, load 2 after about 400 ft of row, load 3 after about 600 ft of row, load 4 after about 800 ft of row, load 5 after about 1,000 ft of row.",
      // 200 / 1.05 = 190.5, down; 200 / 0.95 = 210.5, up.
      "If load 1 runs out before 190 ft of row or after 211 ft of row, stop and calibrate again.",
    ]);
    expect(spraying(orchard, { units: "metric" })[0]).toMatch(/\(about 61 m of row\) for each load/);
    // 16,800 + 2,100 sq ft: 1,350 ft of row, 27 gal; a tank of 15 gal ends 750 ft down the first plot.
    const two = {
      ...orchard,
      plot: [
        { ...orchard.plot, name: "East" },
        { kind: "ground-area", ground: { ...qty(2100, "ft2"), of: "ground" } },
      ],
      sprayer: { tank: qty(15, "gal") },
      split: "full-then-part",
    } as const satisfies PlanInput;
    expect(spraying(two)).toEqual([
      "Spray until the tank is empty: about 750 ft of row, to 750 ft of row in East. Mark where you stop, and start the next load there.",
      "If load 1 runs out before 714 ft of row or after 790 ft of row in East, stop and calibrate again.",
      "Spray the rest, to the end of plot 2.",
    ]);
  });

  it("gives the water of a small mix closer than an ounce", () => {
    // 48 sq ft at 17.0156 gal/ac are 2.4 fl oz, 4 fl oz more for the hose; less 3.2 fl oz of water and the product.
    const small = fieldCard(
      planApplication({
        plot: { kind: "rectangle", length: qty(12, "ft"), width: qty(4, "ft"), fraction: 1 },
        calibration: { kind: "strip", used: qty(2, "fl_oz"), swath: qty(2, "ft"), distance: qty(20, "ft") },
        sprayer: { tank: qty(1, "gal"), lineVolume: qty(4, "fl_oz") },
        products: [{ name: "Product A", form: "liquid", rate: qty(1, "pt/ac") }],
        tools: "syringes",
      }),
    );
    expect(small.loads[0]?.steps[2]).toBe(
      "No mark at 6.4 fl oz? Measure 3.16 fl oz of water in a jug, and use all of it for the next two steps.",
    );
  });

  it("keeps people out for the longest time that a label gives", () => {
    const [one, other] = TWO_PRODUCTS.products;
    const kept = (hours: readonly (number | undefined)[]) =>
      fieldCard(
        planApplication({
          ...TWO_PRODUCTS,
          products: [
            { ...(one as Product), reEntryHours: hours[0] },
            { ...(other as Product), reEntryHours: hours[1] },
          ],
        }),
      ).facts.find(({ name }) => name === "Keep people out for")?.value;
    expect(kept([12, 24])).toBe("24 h");
    // Nobody entered how long the other keeps people out.
    expect(kept([undefined, 4])).toBe(`4 h, or longer by the label of ${(one as Product).name}`);
    expect(kept([undefined, undefined])).toBeUndefined();
  });

  it("keeps the harvest waiting for the longest time that a label gives", () => {
    const [one, other] = TWO_PRODUCTS.products;
    const kept = (days: readonly (number | undefined)[]) =>
      fieldCard(
        planApplication({
          ...TWO_PRODUCTS,
          products: [
            { ...(one as Product), preHarvestDays: days[0] },
            { ...(other as Product), preHarvestDays: days[1] },
          ],
        }),
      ).facts.find(({ name }) => name === "Don't harvest for")?.value;
    expect(kept([7, 14])).toBe("14 days");
    expect(kept([undefined, 1])).toBe(`1 day, or longer by the label of ${(one as Product).name}`);
    expect(kept([undefined, undefined])).toBeUndefined();
  });

  it("keeps to the tank's fill as it was entered, and to three figures for any other", () => {
    const tank = { tank: qty(3.7854, "L") };
    const { loads } = fieldCard(planApplication({ ...QUIET, sprayer: tank }));
    // 5,400 sq ft at 20 gal/ac are 2.47934 gal, 9.38532 L; the last of three loads has 1.81452 L.
    expect(loads.map(({ steps }) => steps.find((step) => /mark at|Top up/.test(step)))).toEqual([
      "Top up with water to 3.7854 L.",
      "No mark at 1.82 L? Measure 0.892 L of water in a jug, and use all of it for the next two steps.",
    ]);
    // 4 gal as another program converts it: nobody knows a tank of 15.141647136 L, and 15.2 L don't go into it.
    const full = planApplication({
      ...QUIET,
      plot: { ...QUIET.plot, length: qty(150, "ft") } as never,
      sprayer: { tank: qty(15.141647136, "L") },
    });
    expect(fieldCard(full).loads[0]?.steps[3]).toBe("Top up with water until the tank is full.");
    expect(worksheet(full).loads[0]?.fill).toBe("a full tank, products included");
    const close = planApplication({ ...QUIET, sprayer: { tank: qty(9.386, "L") } });
    expect(fieldCard(close).loads[0]?.steps[3]).toBe("Top up with water to 9.386 L.");
  });

  it("pours in the plan's order of mixing", () => {
    expect(plan.mixingOrder).toEqual(["Product B", "Product A"]);
    for (const { steps } of card.loads) {
      expect(steps.findIndex((step) => step.startsWith("Product B"))).toBeLessThan(
        steps.findIndex((step) => step.startsWith("Product A")),
      );
    }
  });

  it("keeps to the order of the job where the order of mixing is not known", () => {
    const products = TWO_PRODUCTS.products.map(({ formulation: _, ...product }) => product);
    const plain = fieldCard(planApplication({ ...TWO_PRODUCTS, products }));
    expect(plain.loads[0]?.steps[1]).toMatch(/^Product A/);
    expect(plain.order).toHaveLength(1);
  });

  it("says that the label's own order takes precedence", () => {
    expect(card.order).toEqual([
      "Mix each product in before you add the next. Follow the label if it says otherwise.",
    ]);
    expect(fieldCard(planApplication(QUIET)).order).toEqual(["Follow the label if it says otherwise."]);
  });

  it("asks for half of the water, however much of the load is product", () => {
    const thick = planApplication({
      plot: { kind: "treated-area", treated: { ...qty(0.1, "ha"), of: "treated" } },
      calibration: { kind: "known", rate: qty(100, "L/ha") },
      sprayer: { tank: qty(10, "L") },
      products: [{ name: "Product A", form: "liquid", rate: qty(80, "L/ha") }],
      tools: "cylinders",
    });
    const [load] = fieldCard(thick).loads;
    expect(load?.steps[0]).toContain("Add 1 L");
    expect(load?.steps[3]).toBe("Top up with water to 10 L.");
  });

  it("has refusals and warnings on top, the gravest first, and leaves notes to the worksheet", () => {
    const doubtful = planApplication(DOUBTFUL);
    const severities = fieldCard(doubtful).warnings.map(({ severity }) => severity);
    expect(severities).toContain("refusal");
    expect(severities).toContain("warning");
    expect(severities).not.toContain("note");
    expect(severities.lastIndexOf("refusal")).toBeLessThan(severities.indexOf("warning"));
    expect(worksheet(doubtful).warnings.map(({ severity }) => severity)).toContain("note");
  });

  it("has the note that a scale is needed, and says once what a dose in every load has", () => {
    const job = {
      ...TWO_PRODUCTS,
      tools: "us-spoons",
      split: { fills: [qty(3, "gal"), qty(2.5, "gal")] },
    } as const;
    const { warnings } = fieldCard(
      planApplication({ ...job, sprayer: { tank: qty(4, "gal") }, reserve: undefined }),
    );
    expect(warnings.map(({ message }) => message)).toEqual([
      "Product B is a dry product and no scale is listed. Weigh it on a scale that reads 0.1 g, don't spoon it.",
    ]);
    const tiny = TWO_PRODUCTS.products.map((product) => ({
      ...product,
      rate: qty(0.001, "oz/ac"),
      form: "dry" as const,
    }));
    const plan = planApplication({ ...job, products: tiny });
    const small = (list: readonly { readonly message: string }[]): number =>
      list.filter(({ message }) => message.includes("too small to measure")).length;
    expect(plan.warnings.filter(({ code }) => code === "dose-not-measurable")).toHaveLength(4);
    expect(small(fieldCard(plan).warnings)).toBe(2);
    expect(small(worksheet(plan).warnings)).toBe(2);
  });

  it("gives no mixing steps for what is not to be sprayed", () => {
    const refused = fieldCard(planApplication(DOUBTFUL));
    expect(refused.loads).toEqual([]);
    expect(refused.order).toEqual(["Do not mix this job. Fix what the warnings say, and print it again."]);
    const text = renderText(refused);
    expect(text.indexOf("Do not spray")).toBeLessThan(text.indexOf("Do not mix"));
    expect(text).not.toContain("[ ]");
  });

  it("does not give a dose that cannot be measured as if it could", () => {
    const [first, other] = DOUBTFUL.products as [
      (typeof DOUBTFUL.products)[number],
      (typeof DOUBTFUL.products)[number],
    ];
    const { label: _, ...unlimited } = first;
    const allowed = planApplication({ ...DOUBTFUL, products: [unlimited, other] });
    const [, second] = fieldCard(allowed).loads[0]?.steps.slice(1, 3) ?? [];
    expect(second).toMatch(
      /^Product B: .* mL\. These tools can't measure it\. Get one that can before you mix this load/,
    );
    expect(second).not.toMatch(/Measure /);
  });

  it("names a tool for what the grower's tools can't measure, and what to measure with it", () => {
    // 660 sq ft at 2 fl oz/ac: 660 / 43,560 x 2 = 0.0303 fl oz, which is 0.896 mL; a 1 mL syringe has marks of 0.02 mL.
    const job = {
      plot: { kind: "rectangle", length: qty(30, "ft"), width: qty(22, "ft") },
      calibration: { kind: "known", rate: qty(40, "gal/ac") },
      sprayer: { tank: qty(2, "gal") },
      products: [{ name: "Product A", form: "liquid", rate: qty(2, "fl_oz/ac") }],
      tools: "us-spoons",
    } as const satisfies PlanInput;
    const pour = (more: Partial<PlanInput>): string | undefined =>
      fieldCard(planApplication({ ...job, ...more })).loads[0]?.steps[1];
    expect(pour({})).toBe(
      "Product A: 0.0303 fl oz. Before you mix, get one more tool: 1 mL syringe. Measure 0.88 mL in the 1 mL syringe (1.8% under).",
    );
    // A powder is weighed, though it was to be spooned: 660 / 43,560 x 4 = 0.0606 oz, which is 1.718 g.
    const dry: Product = {
      name: "Product B",
      form: "dry",
      rate: qty(4, "oz/ac"),
      bulkDensity: qty(4, "lb/gal"),
    };
    expect(pour({ products: [dry], tools: "us-household" })).toBe(
      "Product B: 0.0606 oz wt. Before you mix, get one more tool: 0.01 g scale. Measure 1.71 g on the 0.01 g scale (0.5% under).",
    );
    // No tool in trade measures so little.
    expect(pour({ products: [{ ...job.products[0], rate: qty(0.01, "fl_oz/ac") }] })).toMatch(
      /^Product A: .* These tools can't measure it\. Get one that can before you mix this load\.$/,
    );
  });

  it("has a box for every step, and every caution", () => {
    const steps = card.loads.flatMap((load) => load.steps).length;
    expect(renderText(card).match(/^\[ \] /gm)).toHaveLength(steps);
    expect(renderMarkdown(card).match(/^- \[ \] /gm)).toHaveLength(steps);
    expect(card.cautions).toEqual(plan.cautions.map(({ message }) => message));
  });

  it("is printed in another system of units, with the tools as they are", () => {
    const [load] = fieldCard(plan, { units: "metric" }).loads;
    expect(load?.steps[2]).toBe("Product A: 64.4 mL. Measure 4 tablespoons + 1 teaspoon (0.5% under).");
    // The tank's marks are in gallons.
    expect(load?.steps[4]).toBe("Top up with water to 3.5 gal.");
  });
});

describe("a field card for a tank with marks", () => {
  it("has the plan's loads in whatever units, though the easiest ones could be others there", () => {
    const job = {
      size: {
        kind: "row-length",
        length: qty(1800, "ft"),
        rate: { used: qty(2, "gal"), length: qty(250, "ft") },
      },
      sprayer: { tank: qty(4, "gal"), marks: qty(0.25, "gal") },
      products: [{ name: "Product A", form: "liquid", rate: qty(2, "fl_oz/1000ft") }],
      split: "easiest",
      tools: "us-cups-and-spoons",
    } as const;
    for (const units of ["us", "metric", "imperial"] as const)
      expect(fieldCard(planApplication(job), { units }).loads.map(({ title }) => title)).toEqual([
        "Loads 1 to 3 of 4, each",
        "Load 4 of 4",
      ]);
  });

  const { sprayer } = TWO_PRODUCTS;
  const marked = { ...TWO_PRODUCTS, sprayer: { ...sprayer, marks: qty(0.25, "gal") } };
  const steps = (input: PlanInput) => fieldCard(planApplication(input), { units: "metric" }).loads;

  it("fills to marks as the tank has them, half of it too, and says what the extra is enough for", () => {
    // 5.284 gal go up to 3.5 and 2 gal: 0.248 gal of reserve and 0.216 gal more, at 361 L/ha.
    const [first, second] = steps(marked);
    expect(first?.steps[0]).toBe("Add 1.75 gal of clean water. Agitate (backpack: close and shake).");
    expect(first?.steps[4]).toBe("Top up with water to the 3.5 gal mark.");
    expect(second?.steps.slice(-3)).toEqual([
      "Top up with water to the 2 gal mark.",
      "Spray about 4 1/3 rows, to the end of row 14.",
      "About 59 fl oz should be left in the tank when the job is done (enough for 48.6 m²). Don't spray anything twice with it.",
    ]);
    const total = worksheet(planApplication(marked)).summary.find(({ name }) => name === "Total spray mix");
    expect(total?.value).toBe(
      "5.5 gal (4.96 gal for the plot + 31.7 fl oz extra + 27.6 fl oz to end on marks + 10 fl oz in the hose)",
    );
  });

  it("has what is left of whole rows sprayed before the next load is filled to its mark", () => {
    // On top of what is left, the next load would be too strong.
    const [first, second] = steps({ ...marked, reserve: undefined, split: "whole-rows" });
    expect(first?.steps.slice(-2)).toEqual([
      "Spray until the tank is empty: about 7 1/2 rows, to halfway down row 8. Mark where you stop, and start the next load there.",
      // 2.75 gal less 10 fl oz for the hose are 7.53 rows of 0.35415 gal. 5% off either way: 7.17 and 7.93 rows.
      "If load 1 runs out before 7 rows or after 8 rows, stop and calibrate again.",
    ]);
    // Where the first load ends is not the end of a row: the second goes on from there.
    expect(second?.steps.at(-2)).toBe("Spray about 6 1/2 rows, to the end of row 14.");
    const even = { ...TWO_PRODUCTS, split: "whole-rows", reserve: undefined } as const;
    expect(steps(even)[0]?.steps.join("\n")).toContain("to the end of row 7.");
  });

  it("says where loads of whole rows that go up to a mark end", () => {
    const plot = { ...TWO_PRODUCTS.plot, rows: 9 } as PlanInput["plot"];
    const tank = qty(4, "gal");
    const split = { rowsPerLoad: 3 } as const;
    // Three rows take 1.0625 gal, and the mark above is 1.25 gal: each load ends further on than its rows.
    const sprayer = { tank, marks: qty(0.25, "gal") };
    const loads = steps({ ...TWO_PRODUCTS, plot, sprayer, reserve: undefined, split });
    expect(loads.map(({ title }) => title)).toEqual(["Loads 1 to 3 of 3, each"]);
    expect(loads[0]?.steps.slice(-4)).toEqual([
      "Spray until the tank is empty. Mark where you stop, and start the next load there. Load 3 is the last: stop at the end of the job.",
      "Check where each load runs out: load 1 after about 3 1/2 rows, load 2 after about 7 rows.",
      // 1.25 gal are 3.53 rows. 5% off either way: 3.36 and 3.72 rows.
      "If load 1 runs out before 3 1/4 rows or after 3 3/4 rows, stop and calibrate again.",
      "About 72 fl oz should be left in the tank when the job is done (enough for 59 m²). Don't spray anything twice with it.",
    ]);
    // What is mixed to spare is in the last load alone: the others end where their rows do.
    const spared = steps({ ...TWO_PRODUCTS, plot, sprayer: { tank }, reserve: { percent: 30 }, split });
    expect(spared.map(({ title }) => title)).toEqual(["Loads 1 and 2 of 3, each", "Load 3 of 3"]);
    expect(spared[0]?.steps.slice(-3)).toEqual([
      "Spray until the tank is empty: 111 m² (about 3 rows) for each load. Mark where you stop, and start the next load there.",
      "Check where each load runs out: load 1 after about 3 rows, load 2 after about 6 rows.",
      "If load 1 runs out before 2 3/4 rows or after 3 1/4 rows, stop and calibrate again.",
    ]);
  });

  it("goes to the end of the plot where a last pass is narrower than the others, and says how narrow that is", () => {
    // 16 2/3 passes of 3 ft on 50 ft: the seventeenth is sprayed all the way down too. So is the last of 6 1/2 over rows four at a time.
    const lawn = { kind: "rectangle", length: qty(85, "ft"), width: qty(50, "ft") } as const;
    const calibration = {
      kind: "strip",
      used: qty(96, "fl_oz"),
      swath: qty(3, "ft"),
      distance: qty(200, "ft"),
    } as const;
    const job = { ...TWO_PRODUCTS, calibration, sprayer: { tank: qty(3, "gal") }, reserve: undefined };
    const cardOf = (plot: PlanInput["plot"], sprayer: PlanInput["sprayer"] = job.sprayer) =>
      fieldCard(planApplication({ ...job, plot, sprayer }));
    const end = (card: FieldCard) => card.loads.at(-1)?.steps.at(-1);
    const lastPass = ({ facts }: FieldCard) => facts.find(({ name }) => name === "Last pass")?.value;
    expect(end(cardOf(lawn))).toBe("Spray the rest, to the end of the plot.");
    expect(lastPass(cardOf(lawn))).toBe(
      // 50 ft in 17 passes.
      "only 2 ft wide: don't spray ground that is already done. If you can't spray so narrow, make all passes 2.94 ft wide and calibrate again",
    );
    // Front's last pass is in the first load.
    const two = cardOf([
      { ...lawn, name: "Front" },
      { ...lawn, width: qty(51, "ft"), name: "Back" },
    ]);
    expect(end(two)).toMatch(/, to the end of pass 17 along the 85 ft side in Back\.$/);
    expect(lastPass(two)).toBe(
      "narrower than the others on some plots: don't spray ground that is already done",
    );
    // 17 passes of 3 ft are 51 ft, and a narrow bed is one pass.
    const wide = (width: number) => cardOf({ ...lawn, width: qty(width, "ft") });
    expect(lastPass(wide(51))).toBeUndefined();
    expect(lastPass(wide(2))).toBeUndefined();
    expect(lastPass(wide(51.5))).toMatch(/^only 6 in wide/);
    const rows = { kind: "row-bands", rows: 26, rowLength: qty(60, "ft"), bandWidth: qty(3, "ft") } as const;
    const sprayer = { tank: qty(3, "gal"), rowsPerPass: 4 };
    expect(end(cardOf(rows, sprayer))).toMatch(/, to the end of the plot\.$/);
    expect(lastPass(cardOf(rows, sprayer))).toBe("only 2 rows: shut off what would spray beside them");
    expect(lastPass(cardOf({ ...rows, rows: 28 }, sprayer))).toBeUndefined();
    expect(lastPass(cardOf({ ...rows, rows: 3 }, sprayer))).toBeUndefined();
  });

  it("joins loads that are alike as they are spoken", () => {
    const bays = [1, 2, 3].map((n) => ({
      kind: "rectangle" as const,
      name: `Bay ${n}`,
      length: qty(60, "ft"),
      width: qty(48, "ft"),
    }));
    const sprayer = { tank: qty(4, "gal"), lineVolume: qty(16, "fl_oz"), marks: qty(0.5, "gal") };
    const calibration = { kind: "known", rate: qty(36.3, "gal/ac") } as const;
    const job = { ...TWO_PRODUCTS, plot: bays, sprayer, calibration, split: "whole-plots" } as const;
    expect(steps({ ...job, reserve: { percent: 5 } }).map(({ title }) => title)).toEqual([
      "Loads 1 and 3 of 3, each",
      "Load 2 of 3",
    ]);
  });

  it("has what is left over as the worksheet has it, rounded once", () => {
    // 16 fl oz less a drop: two figures of it in gallons would be 15 fl oz.
    const sprayer = { tank: qty(25, "gal"), marks: qty(1, "gal"), lineVolume: qty(1, "gal") };
    const calibration = { kind: "known", rate: qty(13.48, "gal/ac") } as const;
    const plot = { kind: "treated-area", treated: { value: 51300, unit: "ft2", of: "treated" } } as const;
    const job = { ...TWO_PRODUCTS, plot, calibration, sprayer, reserve: undefined } as const;
    expect(steps(job)[0]?.steps.at(-1)).toMatch(/^About 16 fl oz should be left/);
  });

  it("says where loads that are alike run out, each by itself, and what the last one is for", () => {
    // 5,600 sq ft at 36.3 gal/ac take 4.667 gal: with 10 fl oz in the hose, the first 2.5 gal are 2.422 gal on the plot, 7.27 of 14 rows.
    const alike = {
      ...marked,
      calibration: { kind: "known", rate: qty(36.3, "gal/ac") },
      reserve: { percent: 5 },
      split: "equal",
    } as PlanInput;
    const [both] = steps(alike);
    expect(both?.title).toBe("Loads 1 and 2 of 2, each");
    expect(both?.steps.slice(-4, -1)).toEqual([
      "Spray until the tank is empty. Mark where you stop, and start the next load there. Load 2 is the last: stop at the end of the job.",
      "Check where each load runs out: load 1 after about 7 1/4 rows.",
      "If load 1 runs out before 6 1/2 rows or after 8 rows, stop and calibrate again.",
    ]);
    // 3,600 sq ft at 60 gal/ac and the hose: two loads of 2.75 gal. Of the first, 2.672 gal are on the plots: 1,939.8 sq ft, which are
    // 1,500 sq ft and 1.47 rows of 300 sq ft. 5% off either way: 1.16 and 1.81 rows.
    const half = { kind: "row-bands", rows: 6, rowLength: qty(150, "ft"), bandWidth: qty(2, "ft") } as const;
    const plots = [
      { ...half, name: "Top", rows: 5 },
      { ...half, name: "Low", rows: 7 },
    ];
    const [two] = steps({
      ...alike,
      plot: plots,
      calibration: { kind: "known", rate: qty(60, "gal/ac") },
      reserve: undefined,
    });
    expect(two?.steps.slice(-4, -1)).toEqual([
      "Spray until the tank is empty. Mark where you stop, and start the next load there. Load 2 is the last: stop at the end of the job.",
      "Check where each load runs out: load 1 after about 1 1/2 rows in Low.",
      "If load 1 runs out before 1 row or after 2 rows in Low, stop and calibrate again.",
    ]);
  });

  it("keeps a load of extra mix apart from those that are sprayed", () => {
    const spare = steps({
      ...marked,
      plot: { ...TWO_PRODUCTS.plot, rows: 7 } as PlanInput["plot"],
      reserve: { volume: qty(4, "gal") },
      split: "equal",
    });
    expect(spare.map(({ title }) => title)).toEqual(["Load 1 of 2", "Load 2 of 2"]);
    // Whoever ticks from the top has mixed it before a last step.
    expect(spare[1]?.steps[0]).toBe("All of this load is extra. Mix it only if you run short.");
    expect(spare[1]?.steps.slice(-2)).toEqual([
      "Top up with water to the 3.5 gal mark.",
      "Spray on from where you ran short, to the end of the job.",
    ]);
  });

  it("counts what is left without a load that is all extra", () => {
    // 3,330 sq ft at 35.7 gal/ac are 349.55 fl oz; with 10% and 10 fl oz in the hose 394.5, of which 384 are in load 1: 24.45 fl oz more
    // than the plot and the hose take.
    const job = {
      plot: {
        kind: "row-bands",
        rows: 20,
        rowLength: qty(200, "ft"),
        bandWidth: qty(10, "in"),
        rowSpacing: qty(30, "in"),
      },
      calibration: { kind: "strip", used: qty(35, "fl_oz"), swath: qty(20, "in"), distance: qty(200, "ft") },
      sprayer: { tank: qty(3, "gal"), rowsPerPass: 2, lineVolume: qty(10, "fl_oz") },
      reserve: { percent: 10 },
      products: [{ name: "Product A", form: "liquid", rate: qty(1.5, "qt/ac") }],
      tools: "us-household",
    } as const satisfies PlanInput;
    const [first, second] = fieldCard(planApplication(job)).loads;
    expect(first?.steps.at(-1)).toBe(
      "About 24 fl oz should be left in the tank when the job is done (enough for 229 sq ft). Don't spray anything twice with it.",
    );
    expect(second?.steps[0]).toBe("All of this load is extra. Mix it only if you run short.");
    const sheet = worksheet(planApplication(job));
    expect(sheet.summary.at(-1)?.value).toBe("34 fl oz, with enough in the tank for another 229 sq ft");
    expect(sheet.warnings[0]?.message).toBe(
      "The last load is only 11 fl oz, and all of it is extra mix. Leave it out, or plan less extra mix.",
    );
    // Nothing is left where load 1 is used up on the plot.
    const even = steps({ ...job, sprayer: { tank: qty(350, "fl_oz"), rowsPerPass: 2 } });
    expect(even[0]?.steps.join()).not.toContain("left in the tank");
    // Loads alike are not alike if one of them is extra.
    const equal = worksheet(planApplication({ ...job, reserve: { volume: qty(3, "gal") }, split: "equal" }));
    const covers = equal.loads.map((load) => load.covers);
    expect(covers.at(-1)).toBe("All of this load is extra. Mix it only if you run short.");
    expect(covers.length).toBeGreaterThan(1);
  });

  it("has what a load that goes up to a mark covers on a sheet too", () => {
    const sheetOf = (input: Parameters<typeof planApplication>[0]) => worksheet(planApplication(input)).loads;
    // A bed of 440 sq ft takes 41.25 fl oz, and 96 fl oz are two of them and more.
    const beds = [1, 2, 3, 4, 5].map((bed) => ({
      kind: "beds" as const,
      name: `Bed ${bed}`,
      beds: 1,
      bedWidth: qty(4, "ft"),
      bedLength: qty(110, "ft"),
      bedSpacing: qty(6, "ft"),
    }));
    const sheet = sheetOf({
      plot: beds,
      calibration: { kind: "strip", used: qty(30, "fl_oz"), swath: qty(4, "ft"), distance: qty(80, "ft") },
      sprayer: { tank: qty(1, "gal"), lineVolume: qty(4, "fl_oz"), marks: qty(16, "fl_oz") },
      split: "whole-plots",
      reserve: { volume: qty(8, "fl_oz") },
      products: [{ name: "Product A", form: "liquid", rate: qty(2, "pt/ac") }],
      tools: "us-household",
    });
    expect(sheet[0]?.covers).toBe("Covers up to 1,020 sq ft.");
    expect(sheet.at(-1)?.covers).toMatch(/^Covers /);
    const pots = {
      size: { kind: "count", count: qty(500, "pot"), each: qty(3, "fl_oz/pot") },
      sprayer: { tank: qty(4, "gal"), marks: qty(1, "gal") },
      split: "whole-plants",
      products: [{ name: "Product B", form: "liquid", rate: qty(0.5, "mL/pot") }],
      tools: "syringes",
    } as const;
    // 4 gal are 512 fl oz and 170 2/3 pots.
    expect(sheetOf(pots)[0]?.covers).toBe("Covers up to 171 pots.");
    const [card] = fieldCard(planApplication(pots)).loads;
    expect(card?.steps.join("\n")).toContain("load 1 after about 170 pots, load 2 after about 341 pots.");
  });

  it("has water in milliliters where the fill is", () => {
    // 3 m² at 600 L/ha: 180 mL, less 1.5 mL of product.
    const box = planApplication({
      plot: { kind: "rectangle", length: qty(3, "m"), width: qty(1, "m") },
      calibration: { kind: "strip", used: qty(300, "mL"), swath: qty(50, "cm"), distance: qty(10, "m") },
      sprayer: { tank: qty(2, "L") },
      products: [{ name: "Product A", form: "liquid", rate: qty(5, "L/ha") }],
      tools: "syringes",
    });
    const [load] = fieldCard(box).loads;
    expect(load?.steps[0]).toMatch(/^Add 89 mL of clean water/);
    expect(load?.steps[2]).toMatch(/^No mark at 180 mL\? Measure 89\.5 mL of water/);
  });

  it("says of loads alike in several plots the area alone, as their rows differ", () => {
    const bands = { kind: "row-bands", bandWidth: qty(18, "in"), rowSpacing: qty(3, "ft") } as const;
    const job = {
      plot: [
        { ...bands, rows: 9, rowLength: qty(130, "ft") },
        { ...bands, rows: 7, rowLength: qty(95, "ft") },
      ],
      calibration: { kind: "strip", used: qty(30, "fl_oz"), swath: qty(18, "in"), distance: qty(150, "ft") },
      sprayer: { tank: qty(2, "gal"), lineVolume: qty(4, "fl_oz") },
      split: "equal",
      reserve: { percent: 5 },
      products: [{ name: "Product A", form: "liquid", rate: qty(2, "pt/ac") }],
      tools: "us-household",
    } as const satisfies PlanInput;
    expect(worksheet(planApplication(job)).loads[0]?.covers).toMatch(/^Covers up to [\d,]+ sq ft\.$/);
  });

  it("says of tree rows that both sides are done so far, and of a plot of one bed only the plot", () => {
    const trees = {
      plot: { kind: "tree-rows", stripWidth: qty(3, "ft"), sides: 2, rows: 6, rowLength: qty(210, "ft") },
      calibration: { kind: "strip", used: qty(64, "fl_oz"), swath: qty(3, "ft"), distance: qty(250, "ft") },
      sprayer: { tank: qty(4, "gal"), lineVolume: qty(6, "fl_oz") },
      products: [{ name: "Product A", form: "liquid", rate: qty(2, "pt/ac") }],
      tools: "us-household",
    } as const satisfies PlanInput;
    // 512 fl oz less 6 at 64 on 750 sq ft: 5,930 sq ft of rows of 1,260: 4.7.
    const spray = (input: PlanInput) =>
      fieldCard(planApplication(input)).loads[0]?.steps.find((step) => step.startsWith("Spray until"));
    expect(spray(trees)).toBe(
      "Spray until the tank is empty: about 4 2/3 rows, to 2/3 of the way down both sides of row 5. Mark where you stop, and start the next load there.",
    );
    const oneSide = { ...trees, plot: { ...trees.plot, sides: 1, rows: 12 } } as const;
    expect(spray(oneSide)).toBe(
      "Spray until the tank is empty: about 9 1/3 rows, to 1/3 of the way down row 10. Mark where you stop, and start the next load there.",
    );
    const bed = (name: string) =>
      ({ kind: "beds", name, beds: 1, bedWidth: qty(4, "ft"), bedLength: qty(110, "ft") }) as const;
    const calibration = { kind: "known", rate: qty(33, "gal/ac") } as const;
    const beds = { ...trees, calibration, plot: [bed("Bed 1"), bed("Bed 2")] };
    // A third of a gallon each.
    expect(spray({ ...beds, sprayer: { tank: qty(0.4, "gal") } })).toBe(
      "Spray until the tank is empty: about 528 sq ft, to 1/4 of the way down Bed 2. Mark where you stop, and start the next load there.",
    );
    const whole = fieldCard(
      planApplication({ ...beds, sprayer: { tank: qty(0.4, "gal") }, split: "whole-plots" }),
    );
    expect(whole.loads.at(-1)?.steps.join("\n")).not.toContain("bed 1");
  });

  it("keeps areas in the plot's units, whatever the jug's are", () => {
    const turf = planApplication({
      plot: { kind: "rectangle", length: qty(100, "ft"), width: qty(50, "ft") },
      calibration: { kind: "strip", used: qty(1200, "mL"), swath: qty(3, "ft"), distance: qty(100, "ft") },
      sprayer: { tank: qty(4, "gal") },
      reserve: { percent: 5 },
      products: [{ name: "Product A", form: "liquid", rate: qty(1, "qt/ac") }],
      tools: "us-household",
    });
    const sheet = worksheet(turf);
    expect(sheet.summary[0]?.value).toBe("5,000 sq ft (0.115 ac)");
    expect(sheet.summary[1]?.value).toBe("431 L/ha");
    // 4 gal are 15.14 L, at 431 L/ha 351.6 m².
    expect(sheet.loads[0]?.covers).toMatch(/^Covers 3,790 sq ft/);
    expect(sheet.summary.at(-1)?.value).toMatch(/another 250 sq ft$/);
    expect(renderText(fieldCard(turf))).not.toContain("m²");
  });

  it("has bags that dissolve put in whole, and nothing measured of them", () => {
    const bags = {
      ...QUIET,
      products: [{ name: "Product W", form: "dry", rate: qty(1, "lb/ac"), inSolubleBag: true }],
      tools: "us-spoons",
    } as const satisfies PlanInput;
    const plan = planApplication(bags);
    expect(plan.loads[0]?.products[0]?.measured.ok).toBe(true);
    expect(plan.warnings.map(({ code }) => code)).not.toContain("scale-needed");
    expect(fieldCard(plan).loads[0]?.steps[1]).toMatch(
      /^Product W: [\d.]+ oz wt, in bags that dissolve\. Don't open the bags\. Use whole bags; if that isn't a whole number of bags, change the load\.$/,
    );
    const sheet = worksheet(plan);
    expect(sheet.loads[0]?.doses[0]).toMatchObject({
      measures: [],
      remark: "whole bags, unopened; if that isn't a whole number of bags, change the load",
    });
    expect(renderText(sheet)).not.toContain("scale");
    expect(
      doseAdvice(
        planApplication({ ...bags, products: [{ ...bags.products[0], rate: qty(0.001, "oz/ac") }] }),
      ),
    ).toEqual([]);
  });

  it("takes half of the water by eye where no mark is below it", () => {
    const [load] = steps({ ...marked, sprayer: { ...sprayer, marks: [qty(3.5, "gal")] } });
    expect(load?.steps[0]).toBe("Add 1.75 gal of clean water. Agitate (backpack: close and shake).");
  });

  it("gives a single load no row to end on, and the water by jug where the tank may have no mark", () => {
    // 5,400 sq ft at 20 gal/ac are 2.47934 gal, of which 3.96694 fl oz are product: 2.44835 gal of water: 1.25 gal first, then 153.4 fl oz.
    const [one] = fieldCard(planApplication(QUIET)).loads;
    expect(one?.steps.slice(2, 6)).toEqual([
      "No mark at 2.48 gal? Measure 1 gal + 26 fl oz of water in a jug, and use all of it for the next two steps.",
      "Rinse the measures and each empty container into the tank.",
      "Top up with water to 2.48 gal.",
      "Spray. This load covers the whole job.",
    ]);
    // 0.2 ac at 20 gal/ac: whole gallons, and a dry product takes no room.
    const whole = { kind: "treated-area", treated: { value: 0.2, unit: "ac", of: "treated" } } as const;
    const dry = [{ name: "Product B", form: "dry", rate: qty(12, "oz/ac") }] as const;
    const sprayer = { tank: qty(6, "gal") };
    const [even] = fieldCard(planApplication({ ...QUIET, plot: whole, sprayer, products: dry })).loads;
    expect(even?.steps.slice(-4)).toEqual([
      "No mark at 4 gal? Measure 2 gal of water in a jug, and use all of it for the next two steps.",
      "Rinse the measures and each empty container into the tank.",
      "Top up with water to 4 gal.",
      "Spray. This load covers the whole job.",
    ]);
  });

  it("asks for quarters of a gallon up to ten, and for two figures of more", () => {
    const half = (acres: number) => {
      const plot = { kind: "treated-area", treated: { value: acres, unit: "ac", of: "treated" } } as const;
      const products = [{ name: "Product B", form: "dry", rate: qty(12, "oz/ac") }] as const;
      return fieldCard(planApplication({ ...QUIET, plot, sprayer: { tank: qty(50, "gal") }, products }))
        .loads[0]?.steps[0];
    };
    // 20 gal/ac: 18.5 gal of water in one load, and 38.5 gal.
    expect(half(0.925)).toMatch(/^Add 9\.25 gal of/);
    expect(half(1.925)).toMatch(/^Add 19 gal of/);
  });

  it("says nothing of what a part of a plant could get", () => {
    const pots = planApplication({
      size: { kind: "count", count: qty(10, "pot"), each: qty(10, "fl_oz/pot") },
      sprayer: { tank: qty(4, "gal") },
      reserve: { percent: 5 },
      products: [{ name: "Product A", form: "liquid", rate: qty(1, "mL/pot") }],
      tools: "syringes",
    });
    expect(fieldCard(pots).loads[0]?.steps.at(-1)).toBe(
      "About 5 fl oz should be left in the tank when the job is done.",
    );
  });

  it("calls a load a part of the plot only where that is so within 2%", () => {
    const planFor = (square: number) =>
      planApplication({
        ...QUIET,
        plot: { kind: "treated-area", treated: { value: square, unit: "ft2", of: "treated" } },
      });
    const cardFor = (square: number) => renderText(fieldCard(planFor(square))).replace(/\s+/g, " ");
    const whole = planFor(1e5).loads[0]?.area.value as number;
    // Two full loads of 46% and a third one: halves would leave nothing for it.
    expect(cardFor(whole / 0.46)).not.toContain("of the plot");
    expect(cardFor(whole / 0.495)).toContain("about 1/2 of the plot");
  });

  it("names plots and rows in the order that they are counted in, and passes by their side", () => {
    const lawn = (name: string, width: number) =>
      ({ kind: "rectangle", name, length: qty(100, "ft"), width: qty(width, "ft") }) as const;
    const job = {
      ...TWO_PRODUCTS,
      calibration: {
        kind: "strip",
        used: qty(64, "fl_oz"),
        swath: qty(4, "ft"),
        distance: qty(272.25, "ft"),
      },
      sprayer: { tank: qty(2, "gal") },
      reserve: undefined,
    } as const;
    const plots = fieldCard(planApplication({ ...job, plot: [lawn("Front", 40), lawn("Back", 60)] }));
    expect(plots.facts[0]).toEqual({ name: "Plots, in this order", value: "Front; Back" });
    // 3 gal are 6,534 sq ft: all 3,000 of Front, and 8.84 passes of 400 on Back.
    const sprayer = { tank: qty(3, "gal") };
    const back = fieldCard(
      planApplication({ ...job, sprayer, plot: [lawn("Front", 30), lawn("Back", 60)] }),
    ).loads;
    expect(back[0]?.steps.at(-2)).toBe(
      "Spray until the tank is empty: about 6,530 sq ft, to 3/4 of the way down pass 9 along the 100 ft side in Back. Mark where you stop, and start the next load there.",
    );
    const equal = fieldCard(planApplication({ ...job, plot: lawn("Lawn", 60), split: "equal" }));
    expect(equal.facts[0]).toEqual({ name: "Where", value: "Lawn" });
    // 6,000 sq ft are 15 passes in two loads.
    expect(equal.loads[0]?.steps.at(-2)).toBe(
      "Check where each load runs out: load 1 after about 7 1/2 passes along the 100 ft side.",
    );
    const rowLengths = [210, 198, 90].map((length) => qty(length, "ft"));
    const rows = { kind: "row-bands", rowLengths, bandWidth: qty(3, "ft") } as const;
    const factsOf = (plot: PlanInput["plot"]) => fieldCard(planApplication({ ...job, plot })).facts;
    expect(factsOf({ ...rows, name: "Slope" }).slice(0, 2)).toEqual([
      { name: "Where", value: "Slope" },
      { name: "Rows, in this order", value: "210 ft, 198 ft, 90 ft" },
    ]);
    const alike = [210, 210].map((length) => qty(length, "ft"));
    expect(factsOf({ ...rows, rowLengths: alike }).map(({ name }) => name)).not.toContain(
      "Rows, in this order",
    );
    const many = Array.from({ length: 13 }, (_, i) => qty(100 + i, "ft"));
    expect(factsOf({ ...rows, rowLengths: many }).map(({ name }) => name)).not.toContain(
      "Rows, in this order",
    );
  });

  it("says how wide the band or strip of each row is, and on how many sides, where all plots have the same", () => {
    const factsOf = (plot: PlanInput["plot"]) =>
      fieldCard(planApplication({ ...TWO_PRODUCTS, plot, sprayer: { tank: qty(4, "gal") } }))
        .facts.filter(({ name }) => ["Band", "Strip"].includes(name))
        .map(({ value }) => value);
    const band = (bandWidth: number) =>
      ({ kind: "row-bands", rows: 4, rowLength: qty(90, "ft"), bandWidth: qty(bandWidth, "in") }) as const;
    expect(factsOf(band(15))).toEqual(["15 in on each row"]);
    expect(factsOf([band(15), { ...band(15), rows: 9 }])).toEqual(["15 in on each row"]);
    expect(factsOf([band(15), band(20)])).toEqual([]);
    const trees = {
      kind: "tree-rows",
      rows: 3,
      rowLength: qty(150, "ft"),
      stripWidth: qty(3, "ft"),
    } as const;
    expect(factsOf({ ...trees, sides: 2 })).toEqual(["3 ft on both sides of each row"]);
    expect(factsOf({ ...trees, sides: 1 })).toEqual(["3 ft on one side of each row"]);
  });

  it("ends loads of whole plots at a plot, and says when one runs out too soon", () => {
    const green = (n: number) =>
      ({
        kind: "treated-area",
        name: `Green ${n}`,
        treated: { value: 1000, unit: "ft2", of: "treated" },
      }) as const;
    // 1,000 sq ft at 20 gal/ac take 58.8 fl oz: two are 117.5 fl oz, in a load of 128 fl oz.
    const { loads } = fieldCard(
      planApplication({
        ...TWO_PRODUCTS,
        plot: [1, 2, 3, 4, 5].map(green),
        calibration: { kind: "known", rate: qty(20, "gal/ac") },
        sprayer: { tank: qty(1, "gal"), marks: qty(0.25, "gal") },
        reserve: undefined,
        split: "whole-plots",
      }),
    );
    expect(loads[0]?.steps.slice(-3)).toEqual([
      // 2,178 sq ft: 18% of the third. 5% off either way: 2,074 and 2,293 sq ft.
      "Spray until the tank is empty: about 2,180 sq ft for each load. Mark where you stop, and start the next load there.",
      "Check where each load runs out: load 1 after about 20% of Green 3, load 2 after about 35% of Green 5.",
      "If load 1 runs out before 5% of Green 3 or after 30% of Green 3, stop and calibrate again.",
    ]);
  });

  it("has every load emptied before the next one, once a load went further than its rows", () => {
    const { loads } = fieldCard(
      planApplication({
        plot: { kind: "tree-rows", stripWidth: qty(2, "ft"), sides: 2, rows: 22, rowLength: qty(240, "ft") },
        calibration: {
          kind: "strip",
          used: qty(50, "fl_oz"),
          swath: qty(2, "ft"),
          distance: qty(300, "ft"),
        },
        sprayer: { tank: qty(4, "gal"), lineVolume: qty(8, "fl_oz"), marks: qty(1, "qt") },
        split: "whole-rows",
        reserve: { percent: 3 },
        products: [{ name: "Product A", form: "liquid", rate: qty(1, "qt/ac") }],
        tools: "us-spoons",
      }),
    );
    expect(loads.length).toBeGreaterThan(2);
    for (const { steps, title } of loads.slice(0, -1))
      expect(steps.join(" "), title).toContain("Spray until the tank is empty");
  });
});
