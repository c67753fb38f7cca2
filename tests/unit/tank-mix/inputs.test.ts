import { describe, expect, it } from "vitest";
import * as mix from "../../../src/tank-mix/index.ts";
import { mixingOrderOf } from "../../../src/tank-mix/mixing-order.ts";
import { qty } from "../../../src/units/index.ts";
import * as working from "../../../src/working/index.ts";
import { type Call, callsOf, keepsInputRules } from "../../helpers/input-rules.ts";
import { expectRefused, refusal } from "../../helpers/refusal.ts";

const treated = { value: 1, unit: "ac", of: "treated" } as const;
const loads = [{ carrier: qty(4, "gal") }, { carrier: qty(2, "gal") }];
const active = { activeIngredient: qty(1, "lb/ac"), contains: qty(4, "lb/gal") } as const;
const job = { carrier: qty(10, "gal"), carrierRate: qty(20, "gal/ac") };
const label = { rate: qty(1, "pt/ac"), form: "liquid", carrierRate: qty(20, "gal/ac"), label: {} } as const;

const CALLS: readonly Call[] = [
  ["carrierFor", mix.carrierFor, { rate: qty(20, "gal/ac"), area: treated }],
  ["carrierForWorking", working.carrierFor, { rate: qty(20, "gal/ac"), area: treated }],
  ["splitLoads", mix.splitLoads, { total: qty(10, "gal"), tank: qty(4, "gal"), split: "equal" }],
  ["splitLoadsWorking", working.splitLoads, { total: qty(10, "gal"), tank: qty(4, "gal"), split: "equal" }],
  [
    "splitLoadsByRows",
    mix.splitLoads,
    {
      total: qty(10, "gal"),
      tank: qty(4, "gal"),
      split: { pieces: 8, lines: qty(0.25, "gal"), reserve: qty(0.5, "gal") },
      leastLoad: qty(1, "gal"),
    },
  ],
  [
    "splitLoadsToMark",
    mix.splitLoads,
    {
      total: qty(10, "gal"),
      tank: qty(4, "gal"),
      workingFill: qty(3, "gal"),
      split: "full-then-part",
      leastLoad: qty(1, "gal"),
    },
  ],
  ["productAmount", mix.productAmount, { rate: active, form: "liquid", ...job }],
  ["productAmountWorking", working.productAmount, { rate: active, form: "liquid", ...job }],
  ["productRate", mix.productRate, { ...active, form: "liquid" }],
  [
    "productRateByWeight",
    mix.productRate,
    {
      activeIngredient: qty(1, "lb/ac"),
      contains: { value: 40, unit: "%", basis: "w/w" },
      density: qty(9, "lb/gal"),
      form: "liquid",
    },
  ],
  [
    "productAmountOfRange",
    mix.productAmount,
    {
      rate: { low: qty(1, "pt/ac"), high: qty(2, "pt/ac"), chosen: qty(1.5, "pt/ac") },
      form: "liquid",
      ...job,
    },
  ],
  ["productRateWorking", working.productRate, { ...active, form: "liquid" }],
  [
    "activeIngredientRate",
    mix.activeIngredientRate,
    { product: qty(3, "pt/ac"), contains: qty(4, "lb/gal") },
  ],
  [
    "activeIngredientRateWorking",
    working.activeIngredientRate,
    { product: qty(3, "pt/ac"), contains: qty(4, "lb/gal") },
  ],
  ["productInLoads", mix.productInLoads, { amount: qty(12, "fl_oz"), loads }],
  ["productInLoadsWorking", working.productInLoads, { amount: qty(12, "fl_oz"), loads }],
  ["mixLoads", mix.mixLoads, { amounts: [qty(12, "fl_oz")], loads }],
  ["waterWorking", working.loadWater, { carrier: qty(4, "gal"), amounts: [], water: qty(4, "gal") }],
  ["checkLabel", mix.checkLabel, label],
  [
    "checkLabelOfSeason",
    mix.checkLabel,
    {
      ...label,
      label: {
        min: qty(0.5, "pt/ac"),
        max: qty(2, "pt/ac"),
        leastCarrier: qty(10, "gal/ac"),
        mostCarrier: qty(30, "gal/ac"),
        seasonMax: qty(6, "pt/ac"),
      },
      soFar: { rate: qty(1, "pt/ac"), applications: 1, daysSinceLast: 9 },
    },
  ],
  ["jarTest", mix.jarTest, { jar: qty(1, "L"), mix: qty(100, "L"), amounts: [qty(2, "L")] }],
  ["jarTestWorking", working.jarTest, { jar: qty(1, "L"), mix: qty(100, "L"), amounts: [qty(2, "L")] }],
  ["diluteMix", mix.diluteMix, { from: qty(50, "mL/L"), to: qty(5, "mL/L"), volume: qty(10, "L") }],
  [
    "diluteMixWorking",
    working.diluteMix,
    { from: qty(50, "mL/L"), to: qty(5, "mL/L"), volume: qty(10, "L") },
  ],
  ["stockFor", mix.stockFor, { amount: qty(10, "mL"), volume: qty(1, "L"), dose: qty(1, "mL") }],
  ["stockForWorking", working.stockFor, { amount: qty(10, "mL"), volume: qty(1, "L"), dose: qty(1, "mL") }],
  ["rinseTank", mix.rinseTank, { residual: qty(1, "L"), water: qty(5, "L"), rinses: 3 }],
  ["rinseTankWorking", working.rinseTank, { residual: qty(1, "L"), water: qty(5, "L"), rinses: 3 }],
  ["strengthOf", mix.strengthOf, { mix: qty(3, "gal"), addedWater: qty(1, "gal") }],
  ["strengthOfWorking", working.strengthOf, { mix: qty(3, "gal"), addedWater: qty(1, "gal") }],
  ["leftoverArea", mix.leftoverArea, { volume: qty(1, "gal"), rate: qty(20, "gal/ac") }],
  ["leftoverAreaWorking", working.leftoverArea, { volume: qty(1, "gal"), rate: qty(20, "gal/ac") }],
  ["mixingOrder", mix.mixingOrder, { products: [{ code: "EC" }, { code: "WG" }] }],
];

keepsInputRules([...CALLS, ...callsOf(mix)]);

describe("several faults at once", () => {
  it("are all reported, each with its own place", () => {
    const error = refusal(() =>
      mix.checkLabel({
        rate: qty(0, "pt/ac"),
        form: "gas",
        carrierRate: qty(20, "gal"),
        label: { max: { value: 2 }, mostApplications: 1.5, leastCarier: qty(10, "gal/ac") },
        soFar: { applications: -1 },
      } as never),
    );
    expect(error.issues.map(({ code, path }) => `${code} ${path}`)).toEqual([
      "out-of-range rate",
      "unknown-choice form",
      "wrong-dimension carrierRate",
      "missing label.max.unit",
      "out-of-range label.mostApplications",
      "unknown-field label.leastCarier",
      "out-of-range soFar.applications",
    ]);
    expect(error.message).toContain("7 errors");
  });

  it("name the sizes that a rate needs once each, and not one that is at fault already", () => {
    const needs = (input: object) =>
      refusal(() =>
        mix.productAmount({ form: "liquid", carrier: qty(10, "gal"), ...input } as never),
      ).issues.map(({ code, path }) => `${code} ${path}`);
    const perGround = { rate: qty(1, "pt/ac"), per: "ground" };
    expect(needs({ rate: perGround })).toEqual(["missing carrierRate", "missing area", "missing ground"]);
    expect(needs({ rate: perGround, ...job, area: { value: 1, unit: "ac", of: "ground" } })).toEqual([
      "wrong-area area",
      "missing ground",
    ]);
    const range = { low: perGround, high: perGround, chosen: perGround };
    expect(needs({ rate: range, ...job, area: treated })).toEqual(["missing ground"]);
  });

  it("give examples in the system of the input", () => {
    const said = (carrier: object, rate: object) =>
      refusal(() => mix.productAmount({ rate, form: "liquid", carrier } as never)).message;
    expect(said(qty(10, "gal"), qty(1, "pt/ac"))).toContain("such as 20 gal/ac");
    expect(said(qty(10, "L"), qty(1, "L/ha"))).toContain("such as 200 L/ha");
    const byWeight = { value: 50, unit: "%", basis: "w/w" } as const;
    const density = (activeIngredient: object) =>
      refusal(() => mix.productRate({ activeIngredient, contains: byWeight, form: "liquid" } as never))
        .message;
    expect(density(qty(1, "lb/ac"))).toContain("such as 9 lb/gal");
    expect(density(qty(1, "kg/ha"))).toContain("such as 1.1 kg/L");
    const plot = (rate: object, more: object = {}) =>
      refusal(() => mix.productAmount({ rate, form: "liquid", carrier: qty(10, "L"), ...more } as never))
        .issues.map(({ message }) => /such as (.*)\.$/.exec(message)?.[1])
        .sort();
    expect(plot({ rate: qty(1, "L/ha"), per: "ground" })).toEqual(["0.5 ha", "0.5 ha", "200 L/ha"]);
    expect(plot(qty(1, "mL/m"))).toEqual(["0.5 ha", "200 L/ha", "300 m"]);
    expect(plot(qty(1, "pt/1000ft"), { carrier: qty(10, "gal") })).toEqual(["1 ac", "1,000 ft", "20 gal/ac"]);
    const ratio = (carrier: object) =>
      refusal(() =>
        mix.productAmount({ rate: { parts: 1, to: 9, of: "mix" }, form: "dry", carrier } as never),
      ).message;
    expect(ratio(qty(10, "gal"))).toContain("such as 1 oz wt/gal");
    expect(ratio(qty(10, "L"))).toContain("such as 1 g/L");
  });

  it("in a strength of active ingredient: a percentage is weight in volume", () => {
    const rate = { activeIngredient: { value: 1, unit: "%", basis: "v/v" }, contains: qty(40, "g/L") };
    expectRefused(
      () => mix.productAmount({ rate, form: "liquid", ...job } as never),
      "wrong-dimension",
      "rate.activeIngredient.basis",
      "w/v, not v/v",
    );
  });
});

describe("the order of mixing", () => {
  it("is the usual one for a core that is given no steps", () => {
    expect(
      mixingOrderOf({ products: [{ code: "adjuvant" }, { code: "SC" }] }).map(({ product }) => product),
    ).toEqual([1, 0]);
  });
});
