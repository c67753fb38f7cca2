import { describe, expect, it } from "vitest";
import type { ErrorCode } from "../../../src/errors.ts";
import * as mix from "../../../src/tank-mix/index.ts";
import { qty } from "../../../src/units/index.ts";
import { refusal } from "../../helpers/refusal.ts";

const treated = { value: 0.5, unit: "ac", of: "treated" } as const;
const ground = { value: 1.5, unit: "ac", of: "ground" } as const;
const job = {
  carrier: qty(10, "gal"),
  carrierRate: qty(20, "gal/ac"),
  area: treated,
  ground,
  rowLength: qty(100, "ft"),
};
const percent = { value: 1, unit: "%" };
const half = { value: 50, unit: "%", basis: "w/w" };
const [low, high] = [qty(1, "pt/ac"), qty(2, "pt/ac")];

const amount = (rate: unknown, form = "liquid", more: object = {}): unknown =>
  mix.productAmount({ rate, form, ...job, ...more } as never);
const rate = (change: object): unknown =>
  mix.productRate({
    activeIngredient: qty(1, "lb/ac"),
    contains: qty(4, "lb/gal"),
    form: "liquid",
    ...change,
  } as never);
const active = (input: object): unknown => mix.activeIngredientRate(input as never);
const label = (limits: object, more: object = {}): unknown =>
  mix.checkLabel({
    rate: qty(1.5, "pt/ac"),
    form: "liquid",
    carrierRate: qty(20, "gal/ac"),
    label: limits,
    ...more,
  } as never);
const loads = (change: object): unknown =>
  mix.splitLoads({ total: qty(10, "gal"), tank: qty(4, "gal"), split: "full-then-part", ...change } as never);
const carrier = (change: object): unknown =>
  mix.carrierFor({ rate: qty(20, "gal/ac"), area: treated, ...change } as never);
const order = (products: unknown, steps?: unknown): unknown =>
  mix.mixingOrder({ products, ...(steps !== undefined && { steps }) } as never);

// A form shows these sentences as they are: each says what happened, and what to do.
describe("what tank-mix says of input that cannot be", () => {
  it.each<[() => unknown, ErrorCode, string, string]>([
    [() => amount(undefined), "missing", "rate", "Enter the label's rate, such as 1.5 pt/ac."],
    [() => amount(null), "missing", "rate", "Enter the label's rate, such as 1.5 pt/ac."],
    [() => amount(qty(0, "pt/ac")), "out-of-range", "rate", "Must be more than 0."],
    [
      () => amount({ rate: qty(0, "pt/ac"), per: "ground" }),
      "out-of-range",
      "rate.rate",
      "Must be more than 0.",
    ],
    [
      () => amount({ rate: qty(-2, "fl_oz/ac"), per: "treated" }),
      "out-of-range",
      "rate.rate",
      "Must be more than 0.",
    ],
    [() => amount({ per: "ground" }), "missing", "rate.rate", "Enter a rate per area, such as 1.5 pt/ac."],
    [
      () => amount({ rate: qty(2, "pt/ac") }),
      "missing",
      "rate.per",
      "Choose one of: treated, broadcast, ground.",
    ],
    [
      () => amount({ rate: { value: 2, unit: "pint" }, per: "ground" }),
      "unknown-unit",
      "rate.rate.unit",
      'The unit "pint" isn\'t known here. Did you mean "pt"?',
    ],
    [
      () => amount({ value: 2, unit: "pint" }),
      "unknown-unit",
      "rate.unit",
      'The unit "pint" isn\'t known here. Did you mean "pt"?',
    ],
    [
      () => amount(qty(5, "ft")),
      "wrong-dimension",
      "rate",
      "5 ft is a length. Enter the label's rate, such as 1.5 pt/ac.",
    ],
    [
      () => amount({ rate: qty(5, "ft"), per: "ground" }),
      "wrong-dimension",
      "rate.rate",
      "5 ft is a length. Enter a rate per area, such as 1.5 pt/ac.",
    ],
    [
      () => amount(qty(2, "pt/ac"), "dry"),
      "wrong-dimension",
      "rate",
      "2 pt/ac is a volume, but this product is dry. Enter the rate by weight, or, if the label measures it by volume, change it to liquid.",
    ],
    [
      () => amount(qty(2, "oz/ac")),
      "wrong-dimension",
      "rate",
      "2 oz wt/ac is a weight, but this product is a liquid. Check whether the label says fl oz or oz.",
    ],
    [
      () => amount(qty(2, "lb/100gal")),
      "wrong-dimension",
      "rate",
      "2 lb/100 gal is a weight, but this product is a liquid. Check the label's unit, or change the product to dry.",
    ],
    [
      () => amount(percent),
      "missing",
      "rate.basis",
      "1% of what? Write v/v or w/v or w/w after it: v/v is by volume, w/v weight in volume, w/w by weight.",
    ],
    [
      () => amount({ ...percent, basis: null }),
      "missing",
      "rate.basis",
      "1% of what? Write v/v or w/v or w/w after it: v/v is by volume, w/v weight in volume, w/w by weight.",
    ],
    [
      () => amount({ ...percent, basis: "w/v" }),
      "wrong-dimension",
      "rate.basis",
      "This product is a liquid, so its percentage is by volume (v/v), not w/v. Check what the label's percentage is of.",
    ],
    [
      () => amount({ ...percent, basis: "v/v" }, "dry"),
      "wrong-dimension",
      "rate.basis",
      "A weight in a volume of mix is a percentage w/v, not v/v. Check what the label's percentage is of.",
    ],
    [() => amount({ parts: 1, to: 100 }), "missing", "rate.of", "Choose one of: mix, water."],
    [() => amount({ parts: 1, to: 100, of: null }), "missing", "rate.of", "Choose one of: mix, water."],
    [
      () => amount({ chosen: low }),
      "missing",
      "rate.low",
      "Enter the label's rate, such as 1.5 pt/ac. (2 errors.)",
    ],
    [() => amount({ parts: 1 }), "missing", "rate.to", "Enter a number here. (2 errors.)"],
    [() => amount({ to: 100, of: "mix" }), "missing", "rate.parts", "Enter a number here."],
    [() => amount({ parts: 0, to: 100, of: "mix" }), "out-of-range", "rate.parts", "Must be more than 0."],
    [() => amount({ parts: 1, to: 0, of: "mix" }), "out-of-range", "rate.to", "Must be more than 0."],
    [
      () => amount({ parts: 100, to: 1, of: "mix" }),
      "conflict",
      "rate",
      "A ratio of 100:1 would be more product than mix. Is it upside down?",
    ],
    [
      () => amount({ parts: 1, to: 100, of: "mix" }, "dry"),
      "wrong-dimension",
      "rate",
      "A ratio is by volume, but this product is dry. Enter a weight, such as 1 oz wt/gal.",
    ],
    [
      () => amount({ low, high }),
      "missing",
      "rate.chosen",
      "Choose the rate to use, from 1 pt/ac to 2 pt/ac.",
    ],
    [
      () => amount({ low, high, chosen: null }),
      "missing",
      "rate.chosen",
      "Choose the rate to use, from 1 pt/ac to 2 pt/ac.",
    ],
    [
      () => amount({ low, chosen: low }),
      "missing",
      "rate.high",
      "Enter the label's rate, such as 1.5 pt/ac.",
    ],
    [
      () => amount({ high, chosen: low }),
      "missing",
      "rate.low",
      "Enter the label's rate, such as 1.5 pt/ac.",
    ],
    [() => amount({ low }), "missing", "rate.high", "Enter the label's rate, such as 1.5 pt/ac. (2 errors.)"],
    [() => amount({ high }), "missing", "rate.low", "Enter the label's rate, such as 1.5 pt/ac. (2 errors.)"],
    [
      () => amount({ low: high, high: low, chosen: low }),
      "conflict",
      "rate",
      "The lowest rate is more than the highest. Are they switched?",
    ],
    [
      () => amount({ low, high, chosen: qty(2.5, "pt/ac") }),
      "out-of-range",
      "rate.chosen",
      "The rate used is over the label's highest. Choose one that the label allows.",
    ],
    [
      () => amount({ activeIngredient: qty(1, "lb/ac") }),
      "missing",
      "rate.contains",
      "Enter what the product contains, such as 4 lb/gal.",
    ],
    [
      () => amount({ activeIngredient: null, contains: qty(4, "lb/gal") }),
      "missing",
      "rate.activeIngredient",
      "Enter the rate of active ingredient, such as 1 lb/ac.",
    ],
    [
      () => amount({ activeIngredient: { parts: 1, to: 2, of: "mix" }, contains: qty(4, "lb/gal") }),
      "wrong-dimension",
      "rate.activeIngredient",
      "Enter the active ingredient as a weight, such as 1 lb/ac.",
    ],
    [
      () => amount({ activeIngredient: { activeIngredient: qty(1, "lb/ac") }, contains: qty(4, "lb/gal") }),
      "wrong-dimension",
      "rate.activeIngredient",
      "Enter the active ingredient as a weight, such as 1 lb/ac.",
    ],
    [
      () => amount(qty(1, "pt/ac"), "liquid", { carrierRate: undefined }),
      "missing",
      "carrierRate",
      "A rate per area or per row length needs the sprayer's output. Enter it, such as 20 gal/ac.",
    ],
    [
      () => amount({ rate: qty(1, "pt/ac"), per: "ground" }, "liquid", { area: undefined }),
      "missing",
      "area",
      "A rate per ground area or per row length needs the plot's treated area. Enter it, such as 1 ac.",
    ],
    [
      () => amount({ rate: qty(1, "pt/ac"), per: "ground" }, "liquid", { ground: null }),
      "missing",
      "ground",
      "A rate per ground area needs the plot's ground area. Enter it, such as 1 ac.",
    ],
    [
      () => amount(qty(1, "mL/m"), "liquid", { rowLength: undefined }),
      "missing",
      "rowLength",
      "A rate per row length needs the length of all rows. Enter it, such as 300 m.",
    ],
    [
      () => amount(qty(21, "gal/ac")),
      "conflict",
      "rate",
      "That's 134.4 fl oz of product in 1 gal of mix, which leaves no room for water. Check the rate's unit and the output rate.",
    ],
    [
      () => amount(qty(1e-320, "lb/ac"), "dry", { carrierRate: qty(1e10, "gal/ac") }),
      "out-of-range",
      "rate",
      "This is too small to compute with.",
    ],
    [
      () => amount(qty(1, "lb/gal"), "dry", { carrier: qty(1e308, "gal") }),
      "not-finite",
      "carrier",
      "This is too large to compute with.",
    ],
    [
      () => rate({ activeIngredient: qty(1, "lb") }),
      "wrong-dimension",
      "activeIngredient",
      "1 lb is a weight. Enter the rate of active ingredient, such as 1 lb/ac.",
    ],
    [
      () => rate({ activeIngredient: { value: 1, unit: "pounds" } }),
      "unknown-unit",
      "activeIngredient.unit",
      'The unit "pounds" isn\'t known here. Did you mean "lb"?',
    ],
    [
      () => rate({ contains: { value: 1, unit: "pounds" } }),
      "unknown-unit",
      "contains.unit",
      'The unit "pounds" isn\'t known here. Did you mean "lb"?',
    ],
    [
      () => rate({ contains: undefined, density: qty(9, "lb/gal") }),
      "missing",
      "contains",
      "Enter what the product contains, such as 4 lb/gal.",
    ],
    [
      () => rate({ contains: qty(4, "gal/ac") }),
      "wrong-dimension",
      "contains",
      "4 gal/ac is a volume per area. Enter what the product contains, such as 4 lb/gal.",
    ],
    [
      () => rate({ contains: qty(4, "lb/gal"), form: "dry" }),
      "wrong-dimension",
      "contains",
      "What a dry product contains is by weight. Enter it in g/kg or % w/w.",
    ],
    [
      () => rate({ contains: { value: 50, unit: "%", basis: "v/v" } }),
      "wrong-dimension",
      "contains.basis",
      "Enter this percentage as w/w or w/v, not v/v: v/v is by volume, w/v weight in volume, w/w by weight.",
    ],
    [
      () => rate({ contains: { value: 50, unit: "%", basis: "w/v" }, form: "dry" }),
      "wrong-dimension",
      "contains",
      "What a dry product contains is by weight. Enter it in g/kg or % w/w.",
    ],
    [
      () => rate({ contains: qty(1001, "g/kg"), form: "dry" }),
      "out-of-range",
      "contains",
      "A product can't contain 1,001 g/kg: that's more than it weighs. Check the number and its unit.",
    ],
    [
      () => rate({ contains: half }),
      "missing",
      "density",
      "A content by weight (50%) needs the liquid's density too. Enter it, such as 9 lb/gal.",
    ],
    [
      () => rate({ contains: half, density: null }),
      "missing",
      "density",
      "A content by weight (50%) needs the liquid's density too. Enter it, such as 9 lb/gal.",
    ],
    [
      () => rate({ activeIngredient: qty(1e308, "lb/ac"), contains: qty(1e-300, "lb/gal") }),
      "not-finite",
      "activeIngredient",
      "This is too large to compute with. (2 errors.)",
    ],
    [
      () => rate({ activeIngredient: qty(1e-300, "lb/ac"), contains: qty(1e300, "lb/gal") }),
      "out-of-range",
      "activeIngredient",
      "This is too small to compute with. (2 errors.)",
    ],
    [
      () => active({ product: qty(1, "ft"), contains: half }),
      "wrong-dimension",
      "product",
      "1 ft is a length. Enter the product's rate, such as 1.5 pt/ac.",
    ],
    [
      () => active({ product: { value: 1, unit: "pints" }, contains: half }),
      "unknown-unit",
      "product.unit",
      'The unit "pints" isn\'t known here. Did you mean "pt"?',
    ],
    [
      () => active({ product: qty(1e308, "pt/ac"), contains: qty(1e300, "lb/gal") }),
      "not-finite",
      "product",
      "This is too large to compute with. (2 errors.)",
    ],
    ...[5, "percent", [5]].map((reserve): [() => unknown, ErrorCode, string, string] => [
      () => carrier({ reserve }),
      "not-a-quantity",
      "reserve",
      "Percent or volume? Enter the extra mix as an object, such as { percent: 5 }.",
    ]),
    [() => carrier({ reserve: {} }), "missing", "reserve", "Enter one of: percent, volume, round up to."],
    [
      () => carrier({ reserve: { percent: 5, volume: qty(1, "gal") } }),
      "conflict",
      "reserve.volume",
      "Enter percent or volume, not both.",
    ],
    [
      () => carrier({ area: { value: 1e308, unit: "ac", of: "treated" } }),
      "not-finite",
      "area",
      "This is too large to compute with.",
    ],
    [
      () => carrier({ rate: qty(1e-200, "gal/ac"), area: { value: 1e-200, unit: "ac", of: "treated" } }),
      "out-of-range",
      "rate",
      "This is too small to compute with. (2 errors.)",
    ],
    [
      () => label({ min: high, max: low }),
      "conflict",
      "label.min",
      "The label minimum is more than the label maximum. Are they switched?",
    ],
    [
      () => label({}, { rate: { low: high, high: low, chosen: low } }),
      "conflict",
      "rate",
      "The label minimum is more than the label maximum. Are they switched?",
    ],
    [
      () => label({}, { rate: { low, high: qty(2, "lb/ac"), chosen: low } }),
      "wrong-dimension",
      "rate.high",
      "2 lb/ac is a weight, but this product is a liquid. Check the label's unit, or change the product to dry.",
    ],
    [
      () => label({}, { rate: { low: qty(2, "lb/ac"), high, chosen: low } }),
      "wrong-dimension",
      "rate.low",
      "2 lb/ac is a weight, but this product is a liquid. Check the label's unit, or change the product to dry.",
    ],
    [
      () => label({}, { rate: { low, high, chosen: qty(2, "lb/ac") } }),
      "wrong-dimension",
      "rate.chosen",
      "2 lb/ac is a weight, but this product is a liquid. Check the label's unit, or change the product to dry.",
    ],
    [
      () => label({}, { rate: qty(2, "lb/ac") }),
      "wrong-dimension",
      "rate",
      "2 lb/ac is a weight, but this product is a liquid. Check the label's unit, or change the product to dry.",
    ],
    [
      () => label({ leastCarrier: qty(20, "gal/ac"), mostCarrier: qty(10, "gal/ac") }),
      "conflict",
      "label.leastCarrier",
      "The minimum spray volume is more than the maximum. Are they switched?",
    ],
    [
      () => label({ seasonMax: qty(1, "pt/100gal") }),
      "wrong-dimension",
      "label.seasonMax",
      "1 pt/100 gal is a volume in a volume. Enter a rate per area, such as 1.5 pt/ac.",
    ],
    [
      () => label({ seasonMax: qty(6, "pt/ac") }, { soFar: { rate: { value: 1, unit: "pints" } } }),
      "unknown-unit",
      "soFar.rate.unit",
      'The unit "pints" isn\'t known here. Did you mean "pt"?',
    ],
    [
      () => label({ seasonMax: { activeIngredient: qty(1, "lb/100gal"), contains: qty(4, "lb/gal") } }),
      "wrong-dimension",
      "label.seasonMax.activeIngredient",
      "1 lb/100 gal is a weight per volume. Enter the rate of active ingredient, such as 1 lb/ac.",
    ],
    [
      () => label({ seasonMax: { activeIngredient: qty(1, "pt/ac"), contains: qty(4, "lb/gal") } }),
      "wrong-dimension",
      "label.seasonMax.activeIngredient",
      "1 pt/ac is a volume per area. Enter the rate of active ingredient, such as 1 lb/ac.",
    ],
    [
      () => label({ daysBetween: 7 }, { soFar: { daysSinceLast: -1 } }),
      "out-of-range",
      "soFar.daysSinceLast",
      "Must be 0 or more.",
    ],
    [
      () => loads({ workingFill: qty(20, "qt") }),
      "conflict",
      "workingFill",
      "You can't fill a 4 gal tank to 20 qt. Enter what the tank holds or less.",
    ],
    [
      () => loads({ leastLoad: qty(20, "qt") }),
      "conflict",
      "leastLoad",
      "The smallest load can't be more than a full one of 4 gal.",
    ],
    [() => loads({ split: null }), "missing", "split", "Choose one of: full-then-part, equal."],
    [
      () => loads({ split: { pieces: 4, lines: qty(44, "qt") } }),
      "conflict",
      "split.lines",
      "The hose and the extra mix take 44 qt, and the total mix is only 10 gal. Check the volumes.",
    ],
    [
      () => loads({ split: { pieces: 2 } }),
      "conflict",
      "split.pieces",
      "One row or plot takes 5 gal, more than a load of 4 gal. Split the mix into equal loads.",
    ],
    [
      () => loads({ split: { pieces: 4, reserve: qty(2, "gal") }, tank: qty(3, "gal") }),
      "conflict",
      "split.pieces",
      "One row or plot takes 2 gal, plus 2 gal for hose and extra mix: more than one 3 gal load. Split the mix into equal loads.",
    ],
    [
      () => loads({ split: { pieces: 4, lines: qty(3, "gal") }, tank: qty(3, "gal") }),
      "conflict",
      "split.pieces",
      "One row or plot takes 1.75 gal, plus 3 gal for hose and extra mix: more than one 3 gal load. Split the mix into equal loads.",
    ],
    [
      () => loads({ total: qty(1e6, "gal") }),
      "out-of-range",
      "total",
      "A mix of 1,000,000 gal in loads of 4 gal makes 250,000 loads, more than 1,000. Check the units of the rate, the area and the tank.",
    ],
    [
      () => loads({ total: qty(5, "gal"), leastLoad: qty(3, "gal") }),
      "conflict",
      "leastLoad",
      "The smallest load would be 2 gal, too little for the pump to pick up. Split the mix into equal loads, or mix more.",
    ],
    [
      () => loads({ total: qty(5, "gal"), leastLoad: qty(3, "gal"), split: "equal" }),
      "conflict",
      "leastLoad",
      "The smallest load would be 2.5 gal, too little for the pump to pick up. Mix more, or use a smaller sprayer.",
    ],
    [
      () => loads({ total: qty(2, "qt"), leastLoad: qty(3, "qt") }),
      "conflict",
      "leastLoad",
      "The smallest load would be 0.5 gal, too little for the pump to pick up. Mix more, or use a smaller sprayer.",
    ],
    [
      () => order([{ code: "XY" }]),
      "unknown-choice",
      "products[0].code",
      'There is no choice "XY". Choose one of: WP, WG, WT, EG, EP, SC, CS, SE, ZC, ZE, ZW, DC, EC, EW, GL, ME, OD, GW, SL, SG, SP, ST, water-conditioner, compatibility-agent, defoamer, adjuvant, drift-retardant, fertilizer.',
    ],
    [
      () => order([{ code: "GR" }]),
      "conflict",
      "products[0].code",
      "GR is a formulation that isn't mixed into water. Check how the label says to use it.",
    ],
    [
      () => order([{ code: null }]),
      "missing",
      "products[0].code",
      "Choose one of: WP, WG, WT, EG, EP, SC, CS, SE, ZC, ZE, ZW, DC, EC, EW, GL, ME, OD, GW, SL, SG, SP, ST, water-conditioner, compatibility-agent, defoamer, adjuvant, drift-retardant, fertilizer.",
    ],
    [
      () => order([{ code: "EC", inSolubleBag: "yes" }]),
      "not-a-quantity",
      "products[0].inSolubleBag",
      'Enter true or false, not "yes".',
    ],
    [
      () => order([{ code: "EC" }], ["powders"]),
      "unknown-choice",
      "steps[0]",
      'There is no choice "powders". Choose one of: water-conditioner, compatibility-agent, defoamer, soluble-bag, soluble-solid, wettable-powder, dry-flowable, suspension, soluble-liquid, emulsion, adjuvant, drift-retardant, fertilizer.',
    ],
    [
      () => order([{ code: "EC" }], ["emulsion", "emulsion"]),
      "conflict",
      "steps[1]",
      "The step emulsion is there twice. Enter each step once.",
    ],
    [
      () =>
        mix.mixLoads({
          loads: [{ carrier: qty(8, "gal") }, { carrier: qty(2, "gal") }],
          amounts: [qty(3, "gal"), qty(30, "qt")],
        }),
      "conflict",
      "amounts",
      "The liquid products add up to 10.5 gal, which leaves no room for water in 10 gal of mix. Check the units of the rates.",
    ],
    [
      () => mix.jarTest({ jar: qty(10, "gal"), mix: qty(10, "qt"), amounts: [qty(1, "oz")] }),
      "conflict",
      "jar",
      "A jar of 10 gal is larger than the mix of 10 qt. Use a smaller jar, or check the units.",
    ],
    [
      () => mix.stockFor({ amount: qty(10, "mL"), volume: qty(1, "L"), dose: qty(11, "mL") }),
      "conflict",
      "dose",
      "A stock made with 10 mL can't give a dose of 11 mL. Enter a smaller dose or make more stock.",
    ],
    [
      () => mix.stockFor({ amount: qty(2, "L"), volume: qty(1, "L"), dose: qty(11, "mL") }),
      "conflict",
      "volume",
      "1 L is less than the 2 L of product in it. Enter the total after adding water.",
    ],
    [
      () => mix.diluteMix({ from: qty(5, "mL/L"), to: qty(51, "mL/L"), volume: qty(1, "L") }),
      "conflict",
      "to",
      "51 mL/L is stronger than 5 mL/L, and water only weakens a mix. Enter a lower strength.",
    ],
    [
      () => mix.diluteMix({ from: qty(5, "L/ha"), to: qty(1, "mL/L"), volume: qty(1, "L") } as never),
      "wrong-dimension",
      "from",
      "5 L/ha is a volume per area. Enter a strength, such as 5 mL/L.",
    ],
    [
      () => mix.diluteMix({ from: percent, to: percent, volume: qty(1, "L") } as never),
      "missing",
      "from.basis",
      "1% of what? Write v/v or w/v after it: v/v is by volume, w/v weight in volume, w/w by weight. (2 errors.)",
    ],
    [
      () => mix.diluteMix({ from: half, to: half, volume: qty(1, "L") } as never),
      "wrong-dimension",
      "from.basis",
      "Enter this percentage as v/v or w/v, not w/w: v/v is by volume, w/v weight in volume, w/w by weight. (2 errors.)",
    ],
    [
      () =>
        mix.diluteMix({ from: { value: 1, unit: "ml per l" }, to: percent, volume: qty(1, "L") } as never),
      "unknown-unit",
      "from.unit",
      'The unit "ml per l" isn\'t known here. Did you mean "mL/L"? (2 errors.)',
    ],
    [
      () => mix.leftoverArea({ volume: qty(1e300, "gal"), rate: qty(1e-300, "gal/ac") }),
      "not-finite",
      "volume",
      "This is too large to compute with. (2 errors.)",
    ],
  ])("%s", (call, code, path, message) => {
    const error = refusal(call);
    expect({ code: error.code, path: error.path, message: error.message }).toEqual({ code, path, message });
  });
});
