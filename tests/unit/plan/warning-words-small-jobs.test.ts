import { describe, expect, it } from "vitest";
import {
  type BatchInput,
  type Plan,
  planApplication,
  planSpreading,
  type SpreadingInput,
  type SpreadingPlan,
} from "../../../src/plan/index.ts";
import { usesGround } from "../../../src/plan/rates-fit.ts";
import { qty } from "../../../src/units/index.ts";

const said = ({ warnings }: Pick<Plan | SpreadingPlan, "warnings">) =>
  warnings.map(({ code, severity, path, message, figures }) => ({ code, severity, path, message, figures }));
const liquid = { name: "Product A", form: "liquid", rate: qty(2, "fl_oz/gal") } as const;
const each = (count: object, volume: object, tank: object): BatchInput =>
  ({
    size: { kind: "count", count, each: volume },
    sprayer: { tank },
    products: [liquid],
    tools: "us-household",
  }) as unknown as BatchInput;

// What a sheet prints, word for word, with the figures beside it.
describe("a job by volume, count or row warns of", () => {
  it("more for each than a large tree takes, by the system of its unit", () => {
    const wanted = (given: object, limit: object, text: string) => ({
      code: "each-implausible",
      severity: "warning",
      path: "size.each",
      message: `${text} Check the number and its unit: it is what one gets, not all of them.`,
      figures: { given, limit },
    });
    expect(said(planApplication(each(qty(3, "tree"), qty(31, "gal"), qty(100, "gal"))))).toEqual([
      wanted(qty(31, "gal"), qty(30, "gal"), "31 gal for each is more than a large tree takes (30 gal)."),
    ]);
    expect(said(planApplication(each(qty(3, "tree"), qty(30, "gal"), qty(100, "gal"))))).toEqual([]);
    // 30 gal are 113.6 L: each system has its own round number.
    expect(said(planApplication(each(qty(3, "tree"), qty(116, "L"), qty(400, "L"))))).toEqual([
      wanted(qty(116, "L"), qty(115, "L"), "116 L for each is more than a large tree takes (115 L)."),
    ]);
    expect(said(planApplication(each(qty(3, "tree"), qty(115, "L"), qty(400, "L"))))).toEqual([]);
  });

  it("very many loads, from the fifty-first on", () => {
    const pots = (count: number) =>
      said(planApplication(each(qty(count, "pot"), qty(1, "gal"), qty(4, "gal"))));
    const many = (found: ReturnType<typeof pots>) => found.filter(({ code }) => code === "loads-many");
    expect(many(pots(200))).toEqual([]);
    expect(many(pots(204))).toEqual([
      {
        code: "loads-many",
        severity: "warning",
        path: "size",
        message:
          "This job takes 204 gal of mix, which is 51 loads of a 4 gal tank. Check the size of the job, and its units.",
        figures: { total: qty(204, "gal"), loads: 51, tank: qty(4, "gal") },
      },
    ]);
  });

  it("a carrier that the label has something against", () => {
    // 3 gal on 5000 ft² are 26.136 gal/ac.
    const found = (label: object) =>
      said(
        planApplication({
          size: { kind: "volume", volume: qty(3, "gal") },
          area: { value: 5000, unit: "ft2", of: "treated" },
          sprayer: { tank: qty(4, "gal") },
          products: [{ ...liquid, label }],
          tools: "us-household",
        } as unknown as BatchInput),
      ).map(({ code, path, message }) => [code, path, message]);
    expect(found({ leastCarrier: qty(30, "gal/ac") })).toEqual([
      [
        "carrier-under-least",
        "size",
        "Product A: this is 26.1 gal/ac of mix on the area entered, below the label minimum of 30 gal/ac. Use more water with the same product.",
      ],
    ]);
    expect(found({ leastCarrier: qty(25, "gal/ac") })).toEqual([
      [
        "carrier-near-least",
        "size",
        "Product A: this is 26.1 gal/ac of mix on the area entered, at or near the label minimum of 25 gal/ac. Check the area and the volume.",
      ],
    ]);
    expect(found({ mostCarrier: qty(20, "gal/ac") })).toEqual([
      [
        "carrier-over-most",
        "size",
        "Product A: this is 26.1 gal/ac of mix on the area entered, over the label maximum of 20 gal/ac. Use less water with the same product.",
      ],
    ]);
  });
});

describe("a job of granules warns of", () => {
  const LAWN = {
    plot: { kind: "rectangle", length: qty(180, "ft"), width: qty(100, "ft") },
    spreader: { hopper: qty(1000, "lb") },
    product: { name: "Product A", rate: qty(5, "lb/1000ft2") },
  } as const satisfies SpreadingInput;
  const lawn = (product: object, more: object = {}) =>
    said(planSpreading({ ...LAWN, product: { name: "Product A", ...product }, ...more } as SpreadingInput));
  const high = (given: object, limit: object, text: string) => [
    {
      code: "rate-implausible",
      severity: "warning",
      path: "product.rate",
      message: `Product A: ${text}. Check the number and its unit.`,
      figures: { product: "Product A", given, limit },
    },
  ];

  it("more nitrogen than crops get, or more product than is usual, by the system of its unit", () => {
    const nitrogen = (amount: object) => lawn({ rate: { nutrient: "N", amount, contains: { N: 46 } } });
    // 46 % nitrogen: 301 lb/ac are 15 lb of product per 1,000 ft², which is usual by itself.
    expect(nitrogen(qty(300, "lb/ac"))).toEqual([]);
    expect(nitrogen(qty(301, "lb/ac"))).toEqual([
      {
        code: "nutrient-implausible",
        severity: "warning",
        path: "product.rate.amount",
        message:
          "Product A: 301 lb/ac of nitrogen is more than crops get in a season (300 lb/ac). Check whether this is a rate of product.",
        figures: { product: "Product A", given: qty(301, "lb/ac"), limit: qty(300, "lb/ac") },
      },
    ]);
    // 350 kg/ha are 312.3 lb/ac: metric jobs have the metric limit.
    expect(nitrogen(qty(350, "kg/ha"))).toEqual([]);
    expect(nitrogen(qty(351, "kg/ha")).map(({ message }) => message)).toEqual([
      "Product A: 351 kg/ha of nitrogen is more than crops get in a season (350 kg/ha). Check whether this is a rate of product.",
    ]);
    expect(lawn({ rate: qty(101, "lb/1000ft2") })).toEqual(
      high(
        qty(101, "lb/1000ft2"),
        qty(100, "lb/1000ft2"),
        "101 lb/1,000 sq ft of product is more than is usual (100 lb/1,000 sq ft)",
      ),
    );
    expect(lawn({ rate: qty(5000, "kg/ha") })).toEqual([]);
    expect(lawn({ rate: qty(5001, "kg/ha") })).toEqual(
      high(
        qty(5001, "kg/ha"),
        qty(5000, "kg/ha"),
        "5,001 kg/ha of product is more than is usual (5,000 kg/ha)",
      ),
    );
  });

  it("a rate by row or by tree that only a wrong unit comes to", () => {
    const sized = (size: object, rate: object) => {
      const { plot: _, ...rest } = LAWN;
      return said(
        planSpreading({ ...rest, size, product: { name: "Product A", rate } } as unknown as SpreadingInput),
      );
    };
    const row = { kind: "row-length", length: qty(250, "ft") };
    expect(sized(row, qty(100, "lb/1000ft"))).toEqual([]);
    expect(sized(row, qty(101, "lb/1000ft"))).toEqual(
      high(
        qty(101, "lb/1000ft"),
        qty(100, "lb/1000ft"),
        "101 lb/1,000 ft of product is more than is usual (100 lb/1,000 ft)",
      ),
    );
    expect(sized(row, qty(15, "kg/100m"))).toEqual([]);
    expect(sized(row, qty(15.1, "kg/100m"))).toEqual(
      high(
        qty(15.1, "kg/100m"),
        qty(15, "kg/100m"),
        "15.1 kg/100 m of product is more than is usual (15 kg/100 m)",
      ),
    );
    const trees = { kind: "count", count: qty(5, "tree") };
    expect(sized(trees, qty(30, "lb/tree"))).toEqual([]);
    expect(sized(trees, qty(31, "lb/tree"))).toEqual(
      high(
        qty(31, "lb/tree"),
        qty(30, "lb/tree"),
        "31 lb/tree of product is more than is usual (30 lb/tree)",
      ),
    );
    expect(sized(trees, qty(16, "kg/tree"))).toEqual(
      high(
        qty(16, "kg/tree"),
        qty(15, "kg/tree"),
        "16 kg/tree of product is more than is usual (15 kg/tree)",
      ),
    );
  });

  it("a hopper that is filled very often, and a rate near the label's", () => {
    // 90 lb in two directions of 45 lb: 26 fills of 1.75 lb each.
    expect(
      lawn({ rate: LAWN.product.rate }, { spreader: { hopper: qty(1.75, "lb"), directions: 2 } }),
    ).toEqual([
      {
        code: "fills-many",
        severity: "warning",
        path: "spreader.hopper",
        message:
          "This job takes 90 lb of product, which is 52 fills of a 1.75 lb hopper. Check the size of the job, the rate, and their units.",
        figures: { total: qty(90, "lb"), fills: 52, hopper: qty(1.75, "lb") },
      },
    ]);
    expect(lawn({ rate: LAWN.product.rate, label: { max: qty(5, "lb/1000ft2") } })).toMatchObject([
      {
        code: "rate-near-max",
        message:
          "Product A: The rate of 5 lb/1,000 sq ft is at or near the label maximum of 5 lb/1,000 sq ft. A gate a notch too wide would put you over.",
      },
    ]);
  });

  it("the usual dangers, of a spreader and not of a sprayer", () => {
    expect(planSpreading(LAWN).cautions).toEqual([
      {
        code: "label",
        message: "The label is the law. Where this sheet and the label differ, follow the label.",
      },
      {
        code: "spreader",
        message:
          "Calibrate with the product itself, at your usual pace. Do it again when the person, pace, product, weather or ground changes.",
      },
      {
        code: "protection-spreading",
        message: "Wear the protective equipment on the label when you weigh, fill, spread and clean up.",
      },
      {
        code: "sweep",
        message:
          "Sweep granules off hard surfaces back onto the plot. Keep them out of drains, ditches and water.",
      },
      {
        code: "tools",
        message: "Mark the spoons, cups and syringes used for pesticides and never use them for food again.",
      },
      {
        code: "local-rules-spreading",
        message:
          "Follow local rules on what may be spread, who may spread it, when and how near to water, and what to do with what is left.",
      },
    ]);
  });
});

describe("the ground of a plot", () => {
  const product = (rate: object, label?: object) =>
    ({ name: "Product A", form: "liquid", rate, label }) as never;
  const treated = qty(1, "pt/ac");
  const ground = { rate: qty(1, "pt/ac"), per: "ground" };

  it("counts where a rate or a limit is per area of it", () => {
    expect(usesGround([product(treated)])).toBe(false);
    expect(usesGround([product({ rate: treated, per: "treated" })])).toBe(false);
    expect(usesGround([product(treated), product(ground)])).toBe(true);
    expect(usesGround([product(treated, { max: ground })])).toBe(true);
    expect(usesGround([product({ low: treated, high: ground, chosen: treated })])).toBe(true);
    expect(usesGround([product(treated, { max: qty(2, "pt/ac") })])).toBe(false);
    expect(usesGround([])).toBe(false);
  });
});
