import { describe, it } from "vitest";
import {
  type BatchInput,
  type PlanInput,
  planApplication,
  planSpreading,
  type Severity,
  type SpreadingInput,
  type WarningCode,
} from "../../../src/plan/index.ts";
import { type Length, qty, type Unit } from "../../../src/units/index.ts";
import { type Expected, expectSlip } from "../../helpers/slips.ts";

// What people do wrong with a spreader, a spot tank, pots and an orchard. As in slips.test.ts, each row has the right job beside the slip.

/** The units of an invented grower, in one system of measure. */
interface Grower {
  readonly name: string;
  readonly side: Length;
  readonly strip: { readonly swath: Length; readonly distance: Length };
  /** A light weight and a heavy one, and what a light one is called when it was weighed in the heavy one. */
  readonly light: Unit;
  readonly heavy: Unit;
  readonly slipOfWeight: string;
  readonly slipBack: string;
  /** A usual rate of granules, in light units on a small area: the same number in heavy ones is the slip. */
  readonly onSmallArea: { readonly value: number; readonly area: Unit };
  /** What the strip takes of that, in the light unit. */
  readonly catch: number;
  readonly hopper: number;
  /** A small volume, the mix, and what a strength is usually written in. */
  readonly small: Unit;
  readonly mix: Unit;
  readonly tank: number;
  readonly each: number;
  readonly perMix: Unit;
  readonly perHundred: Unit;
  readonly weak: number;
  readonly strong: number;
  /** An orchard's dilute spray per area. */
  readonly dilute: { readonly value: number; readonly unit: Unit };
  readonly perArea: Unit;
}

const GROWERS: readonly Grower[] = [
  {
    name: "US",
    side: qty(120, "ft"),
    strip: { swath: qty(3, "ft"), distance: qty(30, "ft") },
    light: "oz",
    heavy: "lb",
    slipOfWeight: "enter ounces, not pounds",
    slipBack: "enter pounds, not ounces",
    // 1 oz per square yard is 6.9 lb per 1,000 sq ft. The strip is 10 sq yd.
    onSmallArea: { value: 1, area: "yd2" },
    catch: 10,
    hopper: 25,
    small: "fl_oz",
    mix: "gal",
    tank: 4,
    each: 4,
    perMix: "fl_oz/gal",
    perHundred: "fl_oz/100gal",
    weak: 0.25,
    strong: 0.5,
    dilute: { value: 400, unit: "gal/ac" },
    perArea: "fl_oz/ac",
  },
  {
    name: "imperial",
    side: qty(40, "yd"),
    strip: { swath: qty(1, "yd"), distance: qty(10, "yd") },
    light: "oz",
    heavy: "lb",
    slipOfWeight: "enter ounces, not pounds",
    slipBack: "enter pounds, not ounces",
    onSmallArea: { value: 1, area: "yd2" },
    catch: 10,
    hopper: 25,
    small: "imp_fl_oz",
    mix: "imp_gal",
    tank: 4,
    each: 4,
    perMix: "imp_fl_oz/imp_gal",
    perHundred: "imp_fl_oz/100gal",
    weak: 0.25,
    strong: 0.5,
    dilute: { value: 300, unit: "imp_gal/ac" },
    perArea: "imp_fl_oz/ac",
  },
  {
    name: "metric",
    side: qty(35, "m"),
    strip: { swath: qty(1, "m"), distance: qty(10, "m") },
    light: "g",
    heavy: "kg",
    slipOfWeight: "Check the units",
    slipBack: "Check the units",
    onSmallArea: { value: 30, area: "m2" },
    catch: 300,
    hopper: 10,
    small: "mL",
    mix: "L",
    tank: 15,
    each: 100,
    perMix: "mL/L",
    perHundred: "mL/100L",
    weak: 2,
    strong: 12,
    dilute: { value: 3000, unit: "L/ha" },
    perArea: "mL/ha",
  },
];

type Change = Readonly<Record<string, unknown>>;
type Slip = readonly [slip: string, right: Change, wrong: Change, expected: Expected];

const warns = (warning: WarningCode, words = "", severity: Severity = "warning"): Expected => ({
  warning,
  severity,
  words,
});
const amount = (value: number, unit: string): object => ({ value, unit });

function spreaderSlips(grower: Grower): Slip[] {
  const { strip, light, heavy, onSmallArea, hopper } = grower;
  const { value, area } = onSmallArea;
  const rate = amount(value, `${light}/${area}`);
  const tested = (used: number, unit: Unit, more: object = {}): Change => ({
    test: { ...strip, used: amount(used, unit) },
    ...more,
  });
  const product = (more: object): Change => ({ product: { name: "Product A", rate, ...more } });
  const perHeavy = light === "oz" ? 16 : 1000;
  const contains = { N: 10, P2O5: 10, K2O: 10 };
  const nutrient = (part: number) =>
    product({ rate: { nutrient: "N", amount: amount(value * part, `${light}/${area}`), contains } });
  // So that ten times it is more nitrogen than crops get.
  const heavyFeeding = (part: number) =>
    product({ rate: { nutrient: "N", amount: amount(2 * value * part, `${light}/${area}`), contains } });
  const onTrees = { plot: undefined, size: { kind: "count", count: qty(40, "tree") } };
  const perTree = product({ rate: amount(value, `${light}/tree`) });
  return [
    [
      "a catch weighed in the light unit, entered in the heavy one",
      tested(grower.catch, light),
      tested(grower.catch, heavy),
      warns("spreader-heavy", grower.slipOfWeight),
    ],
    [
      "a catch weighed in the heavy unit, entered in the light one",
      tested(grower.catch / perHeavy, heavy),
      tested(grower.catch / perHeavy, light),
      warns("spreader-light", grower.slipBack),
    ],
    [
      "a rate in the heavy unit for the light one",
      {},
      product({ rate: amount(value, `${heavy}/${area}`) }),
      warns("rate-implausible", "Check the number and its unit"),
    ],
    [
      "the same where the label has a maximum",
      product({ label: { max: amount(2 * value, `${light}/${area}`) } }),
      product({
        rate: amount(value, `${heavy}/${area}`),
        label: { max: amount(2 * value, `${light}/${area}`) },
      }),
      warns("rate-over-max", "", "refusal"),
    ],
    ["a hopper in the light unit", {}, { spreader: { hopper: amount(hopper, light) } }, warns("fills-many")],
    [
      "the product's rate entered as the nutrient's",
      heavyFeeding(0.1),
      heavyFeeding(1),
      warns("nutrient-implausible", "Check whether this is a rate of product"),
    ],
    [
      "a spreader set for the nutrient, not the product",
      tested(grower.catch, light, nutrient(0.1)),
      tested(grower.catch / 10, light, nutrient(0.1)),
      warns("spreader-light", "about the rate of N"),
    ],
    [
      "a spreader set for both directions at once",
      tested(grower.catch / 2, light, { spreader: { hopper: amount(hopper, heavy), directions: 2 } }),
      tested(grower.catch, light, { spreader: { hopper: amount(hopper, heavy), directions: 2 } }),
      warns("spreader-heavy"),
    ],
    ["a rate per tree on a plot", {}, perTree, { error: "conflict", path: "product.rate" }],
    [
      "a rate per area for trees",
      { ...onTrees, ...perTree },
      onTrees,
      { error: "conflict", path: "product.rate" },
    ],
  ];
}

function spreaderJob(grower: Grower): SpreadingInput {
  const { side, light, heavy, onSmallArea, hopper } = grower;
  return {
    plot: { kind: "rectangle", length: side, width: side },
    spreader: { hopper: amount(hopper, heavy) },
    product: { name: "Product A", rate: amount(onSmallArea.value, `${light}/${onSmallArea.area}`) },
  } as unknown as SpreadingInput;
}

function batchSlips(grower: Grower): Slip[] {
  const { small, mix, each, perMix, weak, strong } = grower;
  const product = (rate: object, label?: object): Change => ({
    products: [{ name: "Product A", form: "liquid", rate, label }],
  });
  const perPot = `${small}/pot`;
  const spot = { size: { kind: "volume", volume: amount(grower.tank, mix) } };
  const percent = (value: number): object => ({ value, unit: "%", basis: "v/v" });
  const parts = (one: number, to: number, of?: string): object => ({
    parts: one,
    to,
    ...(of !== undefined && { of }),
  });
  const trees = (time: object): Change => ({
    size: {
      kind: "count",
      count: qty(12, "tree"),
      each: { flow: { caught: amount(mix === "L" ? 4 : 1, mix), time: qty(20, "s") }, time },
    },
  });
  const pots = (one: object): Change => ({ size: { kind: "count", count: qty(60, "pot"), each: one } });
  return [
    [
      "a rate per gallon or liter entered per pot",
      product(amount(strong, perMix)),
      product(amount(strong, perPot)),
      warns("strength-unusual", "labels rarely ask for more"),
    ],
    [
      "the same at a weak rate, where the label has a maximum",
      product(amount(weak, perMix), { max: amount(2 * weak, perMix) }),
      product(amount(weak, perPot), { max: amount(2 * weak, perMix) }),
      warns("rate-over-max", "", "refusal"),
    ],
    [
      "a rate per pot entered per gallon or liter",
      product(amount(weak / 20, perPot), { min: amount(weak / 25, perPot) }),
      product(amount(weak / 20, perMix), { min: amount(weak / 25, perPot) }),
      warns("rate-under-min"),
    ],
    [
      "a rate per pot in a spot tank",
      { ...spot, ...product(percent(1)) },
      { ...spot, ...product(amount(weak, perPot)) },
      { error: "conflict", path: "products[0].rate" },
    ],
    [
      "a rate per area in a spot tank without an area",
      { ...spot, ...product(percent(1)) },
      { ...spot, ...product(amount(weak, grower.perArea)) },
      { error: "conflict", path: "products[0].rate" },
    ],
    [
      "1:100 without of what",
      { ...spot, ...product(parts(1, 100, "water")) },
      { ...spot, ...product(parts(1, 100)) },
      { error: "missing", path: "products[0].rate.of" },
    ],
    [
      "1:100 of water for 1% of the mix",
      { ...spot, ...product(parts(1, 99, "water"), { min: percent(1) }) },
      { ...spot, ...product(parts(1, 100, "water"), { min: percent(1) }) },
      warns("rate-under-min"),
    ],
    [
      "1:10 for 1:100",
      { ...spot, ...product(parts(1, 100, "mix"), { max: percent(2) }) },
      { ...spot, ...product(parts(1, 10, "mix"), { max: percent(2) }) },
      warns("rate-over-max", "", "refusal"),
    ],
    [
      "1:100 upside down",
      { ...spot, ...product(parts(1, 100, "mix")) },
      { ...spot, ...product(parts(100, 1, "mix")) },
      { error: "conflict", path: "products[0].rate" },
    ],
    [
      "1% without of what",
      { ...spot, ...product(percent(1)) },
      { ...spot, ...product({ value: 1, unit: "%" }) },
      { error: "missing", path: "products[0].rate.basis" },
    ],
    [
      "each pot's mix in the larger unit",
      pots(amount(each, small)),
      pots(amount(each, mix)),
      warns("loads-many"),
    ],
    [
      "minutes for seconds at each tree",
      trees(qty(15, "s")),
      trees(qty(15, "min")),
      warns("each-implausible"),
    ],
  ];
}

function batchJob({ small, mix, tank, each, perMix, weak }: Grower): BatchInput {
  return {
    size: { kind: "count", count: qty(300, "pot"), each: amount(each, small) },
    sprayer: { tank: amount(tank, mix) },
    products: [{ name: "Product A", form: "liquid", rate: amount(weak, perMix) }],
    tools: "syringes",
  } as unknown as BatchInput;
}

// What a sprayer of a quarter of the dilute volume has to carry.
const FACTOR = 4;

function orchardSlips({ dilute, perHundred, perArea, name }: Grower): Slip[] {
  const { value, unit } = dilute;
  // Per hundred of the dilute spray, and what that is on the area: a hundred US gallons for imperial growers is another unit.
  const hundred = name === "imperial" ? 10 : 8;
  const mixPerHundred = name === "imperial" ? 100 / 1.2009499255398 : 100;
  const onArea = (hundred * value) / mixPerHundred;
  const output = (factor: number): Change => ({
    calibration: { kind: "known", rate: amount(value / factor, unit) },
  });
  const product = (strength: number, label: object): Change => ({
    products: [{ name: "Product A", form: "liquid", rate: amount(strength, perHundred), label }],
  });
  const min = { min: amount(0.8 * onArea, perArea) };
  const max = { max: amount(1.2 * onArea, perArea) };
  return [
    [
      "the dilute rate in a concentrate spray",
      { ...output(FACTOR), ...product(FACTOR * hundred, min) },
      { ...output(FACTOR), ...product(hundred, min) },
      warns("rate-under-min"),
    ],
    [
      "the concentrate's rate in a dilute spray",
      { ...output(1), ...product(hundred, max) },
      { ...output(1), ...product(FACTOR * hundred, max) },
      warns("rate-over-max", "", "refusal"),
    ],
    [
      "a concentrate spray where the label asks for a dilute one",
      { ...output(1), ...product(hundred, { leastCarrier: amount(0.7 * value, unit) }) },
      { ...output(FACTOR), ...product(FACTOR * hundred, { leastCarrier: amount(0.7 * value, unit) }) },
      warns("carrier-under-least", "", "refusal"),
    ],
  ];
}

function orchardJob({ side, dilute, mix }: Grower): PlanInput {
  return {
    plot: { kind: "rectangle", length: side, width: side },
    application: "tree-rows",
    calibration: { kind: "known", rate: dilute },
    sprayer: { tank: amount(mix === "L" ? 400 : 100, mix) },
    products: [],
    tools: "syringes",
  } as unknown as PlanInput;
}

describe.each(GROWERS)("a slip of a $name grower", (grower) => {
  it.each(spreaderSlips(grower))("with a spreader: %s", (_, right, wrong, expected) => {
    const plan = (change: Change) => () =>
      planSpreading({ ...spreaderJob(grower), ...change } as SpreadingInput);
    expectSlip(plan(right), plan(wrong), expected);
  });

  it.each(batchSlips(grower))("with a spot tank, pots or trees: %s", (_, right, wrong, expected) => {
    const plan = (change: Change) => () => planApplication({ ...batchJob(grower), ...change } as BatchInput);
    expectSlip(plan(right), plan(wrong), expected);
  });

  it.each(orchardSlips(grower))("in an orchard: %s", (_, right, wrong, expected) => {
    const plan = (change: Change) => () => planApplication({ ...orchardJob(grower), ...change } as PlanInput);
    expectSlip(plan(right), plan(wrong), expected);
  });
});
