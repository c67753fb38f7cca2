import { describe, expect, it } from "vitest";
import {
  type BatchInput,
  loadChoices,
  type PlanInput,
  type Plot,
  planApplication,
  type Sprayer,
} from "../../../src/plan/index.ts";
import { qty } from "../../../src/units/index.ts";
import { SPANISH_WORDS } from "../../../src/words/es.ts";
import { loadChoiceText } from "../../../src/worksheet/index.ts";
import { TWO_PRODUCTS } from "../../helpers/jobs.ts";
import { refusal } from "../../helpers/refusal.ts";

/** 6.5 gal at 26 gal/ac on a quarter of an acre, with a quart to the acre: 8 fl oz. */
const JOB: PlanInput = {
  plot: { kind: "treated-area", treated: { value: 0.25, unit: "ac", of: "treated" } },
  calibration: { kind: "known", rate: qty(26, "gal/ac") },
  sprayer: { tank: qty(4, "gal"), marks: qty(0.25, "gal") },
  products: [{ name: "Product A", form: "liquid", rate: qty(1, "qt/ac") }],
  tools: "us-spoons",
};
const sprayer = (change: Partial<Sprayer>): PlanInput => ({ ...JOB, sprayer: { ...JOB.sprayer, ...change } });
const fills = (job: PlanInput | BatchInput, options = {}): number[][] =>
  loadChoices(job, options).map(({ loads }) => loads.map(({ carrier }) => carrier.value));

describe("loadChoices", () => {
  it("finds the loads whose doses fall on what the person has", () => {
    const ways = loadChoices(JOB);
    expect(ways.map((way) => loadChoiceText(way))).toEqual([
      // 4 fl oz each, and a tablespoon is half a fluid ounce.
      "2 loads of 3.25 gal: Product A 8 tablespoons (exact)",
      "4 gal: Product A 9 tablespoons + 2 teaspoons (1.8% under); 2.5 gal: Product A 6 tablespoons + 1/4 teaspoon (1.1% under)",
      "3.75 gal: Product A 9 tablespoons + 1/2 teaspoon (0.7% under); 2.75 gal: Product A 6 tablespoons + 2 teaspoons (1.5% under)",
    ]);
    expect(ways[0]).toMatchObject({
      split: { fills: [qty(3.25, "gal"), qty(3.25, "gal")] },
      carrier: { total: qty(6.5, "gal") },
      leftover: { carrier: qty(0, "gal") },
      cost: { notMeasurable: 0, tools: ["tablespoon"], measures: 16 },
    });
    expect(planApplication({ ...JOB, split: "easiest" }).loads).toEqual(ways[0]?.loads);
  });

  it("gives as many ways as are asked for, and no load more than is allowed", () => {
    expect(fills(JOB, { most: 1 })).toEqual([[3.25, 3.25]]);
    expect(fills(JOB, { most: 20, moreLoads: 0 }).every((loads) => loads.length === 2)).toBe(true);
    const four = fills(JOB, { most: 20, moreLoads: 2 }).filter((loads) => loads.length === 4);
    expect(four.length).toBeGreaterThan(0);
  });

  it("takes whole rows to a load where the plot has rows", () => {
    const marked = { ...TWO_PRODUCTS.sprayer, marks: qty(0.25, "gal") };
    const plot = { ...TWO_PRODUCTS.plot, rows: 15 } as Plot;
    const calibration = { kind: "known", rate: qty(36.3, "gal/ac") } as const;
    const rows = { ...TWO_PRODUCTS, plot, calibration, sprayer: { ...marked, workingFill: undefined } };
    const [first, ...others] = loadChoices({ ...rows, tools: "us-cups-and-spoons" }, { most: 20 });
    // A third of a gallon a row: 8 rows and 10 fl oz in the hose are 2.745 gal, 7 rows and 5% of 5 gal to spare 2.583 gal.
    expect(first?.split).toEqual({ rowsPerLoad: 8 });
    expect(first?.loads.map(({ pieces, carrier }) => [pieces, carrier.value])).toEqual([
      [8, 2.75],
      [7, 2.75],
    ]);
    // The same two fills aren't said twice.
    const same = first?.loads.map(({ mark }) => mark);
    expect(others.map(({ loads }) => loads.map(({ mark }) => mark))).not.toContainEqual(same);
    // A row that is more than a load is no way to split it.
    const small = {
      ...marked,
      tank: qty(0.5, "gal"),
      workingFill: qty(0.5, "gal"),
      lineVolume: qty(2, "qt"),
    };
    expect(loadChoices({ ...TWO_PRODUCTS, sprayer: small }).every(({ split }) => "fills" in split)).toBe(
      true,
    );
    // Three rows to a load at the least pump's draw.
    const least = loadChoices(
      { ...TWO_PRODUCTS, sprayer: { ...marked, leastLoad: qty(1, "gal") } },
      { most: 20 },
    );
    expect(least.every(({ loads }) => loads.every(({ carrier }) => carrier.value >= 1))).toBe(true);
  });

  it("splits the mix of several plots, rows or not", () => {
    const rows = TWO_PRODUCTS.plot as Plot;
    const sprayer = { ...TWO_PRODUCTS.sprayer, marks: qty(0.25, "gal") };
    const ways = loadChoices({ ...TWO_PRODUCTS, sprayer, plot: [rows, rows] }, { most: 20 });
    expect(ways.every(({ split }) => "fills" in split)).toBe(true);
  });

  it("moves the extra mix within the limits that the person sets", () => {
    const reserve = { percent: 0, upTo: 25 };
    // 7.5 gal are 15 % more: 5 fl oz would be 4.6 in each of two loads.
    const ways = loadChoices({ ...sprayer({ marks: qty(0.75, "gal") }), reserve }, { most: 20 });
    for (const { carrier } of ways) {
      expect(carrier.total.value).toBeGreaterThanOrEqual(6.5);
      expect(carrier.total.value).toBeLessThanOrEqual(8.125);
    }
    const rows = { ...TWO_PRODUCTS, sprayer: { ...TWO_PRODUCTS.sprayer, marks: qty(1, "gal") } };
    const limited = loadChoices({ ...rows, reserve: { percent: 0, upTo: 20 } }, { most: 20 });
    expect(limited.every(({ carrier }) => carrier.total.value <= 6.1)).toBe(true);
    expect(refusal(() => loadChoices({ ...rows, reserve: { percent: 0, upTo: 3 } })).path).toBe("reserve");
  });

  it("mixes no more than the plain ways do where no limit is set", () => {
    for (const { carrier } of loadChoices(sprayer({ marks: qty(1, "gal") }), { most: 20 }))
      expect(carrier.total.value).toBeLessThanOrEqual(8);
  });

  it("splits pots and volumes, and puts first what can be measured", () => {
    const pots: BatchInput = {
      size: { kind: "count", count: qty(300, "pot"), each: qty(4, "fl_oz") },
      sprayer: { tank: qty(4, "gal"), marks: qty(1, "qt") },
      products: [{ name: "Product A", form: "liquid", rate: qty(1, "fl_oz/100gal") }],
      // What 3.25 gal take, and hardly anything else.
      tools: [{ name: "thimble", capacity: qty(0.195, "tsp") }],
    };
    const ways = loadChoices(pots, { most: 5 });
    const bad = ways.map(({ cost }) => cost.notMeasurable);
    expect(bad).toEqual([...bad].sort((a, b) => a - b));
    expect(ways[0]?.cost.notMeasurable).toBe(0);
    const hopeless = loadChoices({ ...pots, tools: [{ name: "cup", capacity: qty(1, "cup") }] }, { most: 1 });
    expect(hopeless[0]?.cost).toMatchObject({ tools: [], measures: 0 });
    expect(loadChoiceText(hopeless[0] as (typeof hopeless)[0])).toMatch(
      /Product A can't be measured with these tools$/,
    );
  });

  it("makes no more loads than a job may have", () => {
    const wide = loadChoices(
      {
        ...JOB,
        calibration: { kind: "known", rate: qty(3990, "gal/ac") },
        sprayer: { tank: qty(1, "gal"), marks: qty(1, "gal") },
      },
      { moreLoads: 10 },
    );
    expect(wide.every(({ loads }) => loads.length <= 1000)).toBe(true);
  });

  it("needs the tank's marks", () => {
    const { marks: _, ...unmarked } = JOB.sprayer;
    const error = refusal(() => loadChoices({ ...JOB, sprayer: unmarked }));
    expect([error.code, error.path, error.key]).toEqual(["missing", "sprayer.marks", "marks-needed"]);
    const plan = refusal(() => loadChoices(planApplication(JOB) as never));
    expect(plan.issues.map(({ code, path, message }) => [code, path, message])).toEqual([
      ["conflict", "", "This is a finished plan. Pass its input: plan.input."],
    ]);
    expect(refusal(() => loadChoices(JOB, { most: 21 })).path).toBe("options.most");
    expect(refusal(() => loadChoices(JOB, { moreLoads: -1 })).path).toBe("options.moreLoads");
    expect(refusal(() => loadChoices({ ...JOB, sprayer: {} } as never)).path).toBe("sprayer.tank");
    expect(refusal(() => planApplication({ ...sprayer({ marks: [] }), split: "easiest" })).path).toBe(
      "sprayer.marks",
    );
  });

  it("says a way in another language, and refuses what is none", () => {
    const [way] = loadChoices({ ...JOB, tools: "us-cups-and-spoons" });
    expect(loadChoiceText(way as never, { words: SPANISH_WORDS, locale: "es-MX" })).toBe(
      "2 cargas de 3.25 galones: Product A 1/2 taza (exacto)",
    );
    expect(refusal(() => loadChoiceText({} as never)).path).toBe("choice.loads");
    expect(refusal(() => loadChoiceText({ loads: [{}] } as never)).path).toBe("choice.loads[0].products");
    const load = (product: object) => ({ loads: [{ mark: qty(1, "gal"), products: [product] }] });
    const textOf = (product: object) => () => loadChoiceText(load(product) as never);
    expect(refusal(textOf({})).path).toBe("choice.loads[0].products[0].name");
    expect(refusal(textOf({ name: "A", measured: 5 })).path).toBe("choice.loads[0].products[0].measured");
    expect(refusal(textOf({ name: "A", measured: { ok: true } })).path).toBe(
      "choice.loads[0].products[0].measured.errorPercent",
    );
    expect(refusal(textOf({ name: "A", measured: { ok: true, errorPercent: 1, parts: [] } })).path).toBe(
      "measured.parts",
    );
  });
});
