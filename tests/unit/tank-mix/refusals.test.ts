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

// A form shows these sentences as they are: each says what was given, what is wanted, and what may be wrong.
describe("what tank-mix says of input that cannot be", () => {
  it.each<[() => unknown, ErrorCode, string, string]>([
    [
      () => amount(undefined),
      "missing",
      "rate",
      'Nothing given; wanted the label\'s rate, such as { value: 1.5, unit: "pt/ac" }.',
    ],
    [
      () => amount(null),
      "missing",
      "rate",
      'Nothing given; wanted the label\'s rate, such as { value: 1.5, unit: "pt/ac" }.',
    ],
    [() => amount(qty(0, "pt/ac")), "out-of-range", "rate", "Given 0 pt/ac; wanted more than 0."],
    [
      () => amount({ rate: qty(0, "pt/ac"), per: "ground" }),
      "out-of-range",
      "rate.rate",
      "Given 0 pt/ac; wanted more than 0.",
    ],
    [
      () => amount({ rate: qty(-2, "fl_oz/ac"), per: "treated" }),
      "out-of-range",
      "rate.rate",
      "Given -2 fl_oz/ac; wanted more than 0.",
    ],
    [
      () => amount({ per: "ground" }),
      "missing",
      "rate.rate",
      'Nothing given; wanted a number with its unit, such as { value: 5, unit: "ft" }.',
    ],
    [
      () => amount({ rate: qty(2, "pt/ac") }),
      "missing",
      "rate.per",
      "Nothing given; wanted one of: treated, broadcast, ground.",
    ],
    [
      () => amount({ rate: { value: 2, unit: "pint" }, per: "ground" }),
      "unknown-unit",
      "rate.rate.unit",
      'The unit "pint" isn\'t known here. Did you mean pt?',
    ],
    [
      () => amount({ value: 2, unit: "pint" }),
      "unknown-unit",
      "rate.unit",
      'The unit "pint" isn\'t known here. Did you mean pt?',
    ],
    [
      () => amount(qty(5, "ft")),
      "wrong-dimension",
      "rate",
      "Given 5 ft, a length; wanted a label rate: per area (pt/ac), per volume of carrier (pt/100gal), per row length (mL/m), per cent or parts per million with a basis, a ratio, or active ingredient.",
    ],
    [
      () => amount({ rate: qty(5, "ft"), per: "ground" }),
      "wrong-dimension",
      "rate.rate",
      "Given 5 ft, a length; wanted a label rate: per area (pt/ac), per volume of carrier (pt/100gal), per row length (mL/m), per cent or parts per million with a basis, a ratio, or active ingredient.",
    ],
    [
      () => amount(qty(2, "pt/ac"), "dry"),
      "wrong-dimension",
      "rate",
      "Given 2 pt/ac, a volume per area, for a dry product; wanted a weight, such as oz/ac. An ounce of weight (oz) is not a fluid ounce (fl_oz): see how the label tells the rate.",
    ],
    [
      () => amount(qty(2, "oz/ac")),
      "wrong-dimension",
      "rate",
      "Given 2 oz/ac, a weight per area, for a liquid product; wanted a volume, such as fl_oz/ac. An ounce of weight (oz) is not a fluid ounce (fl_oz): see how the label tells the rate.",
    ],
    [
      () => amount(qty(2, "lb/100gal")),
      "wrong-dimension",
      "rate",
      "Given 2 lb/100gal, a weight per volume, for a liquid product; wanted a volume, such as fl_oz/100gal. An ounce of weight (oz) is not a fluid ounce (fl_oz): see how the label tells the rate.",
    ],
    [
      () => amount(percent),
      "missing",
      "rate.basis",
      'Given 1 % that does not say what it is a part of; wanted a basis: "v/v" by volume, "w/v" weight in volume (1 % is 1 kg in 100 L), "w/w" by weight.',
    ],
    [
      () => amount({ ...percent, basis: null }),
      "missing",
      "rate.basis",
      'Given 1 % that does not say what it is a part of; wanted a basis: "v/v" by volume, "w/v" weight in volume (1 % is 1 kg in 100 L), "w/w" by weight.',
    ],
    [
      () => amount({ ...percent, basis: "w/v" }),
      "wrong-dimension",
      "rate.basis",
      "Given w/v for a liquid product; wanted v/v, since a liquid product is measured by volume into a volume of mix. Look up on the label what the per cent is of.",
    ],
    [
      () => amount({ ...percent, basis: "v/v" }, "dry"),
      "wrong-dimension",
      "rate.basis",
      "Given v/v for a dry product; wanted w/v, since a dry product is measured by weight into a volume of mix. Look up on the label what the per cent is of.",
    ],
    [
      () => amount({ parts: 1, to: 100 }),
      "missing",
      "rate.of",
      'Given 1:100 that does not say of what; wanted of: "mix" (1 in 100 parts of mix) or of: "water" (1 to 100 parts of water).',
    ],
    [
      () => amount({ parts: 1, to: 100, of: null }),
      "missing",
      "rate.of",
      'Given 1:100 that does not say of what; wanted of: "mix" (1 in 100 parts of mix) or of: "water" (1 to 100 parts of water).',
    ],
    [() => amount({ parts: 1 }), "missing", "rate.to", "Nothing given; wanted a number."],
    [() => amount({ to: 100, of: "mix" }), "missing", "rate.parts", "Nothing given; wanted a number."],
    [
      () => amount({ parts: 0, to: 100, of: "mix" }),
      "out-of-range",
      "rate.parts",
      "Given 0; wanted more than 0.",
    ],
    [() => amount({ parts: 1, to: 0, of: "mix" }), "out-of-range", "rate.to", "Given 0; wanted more than 0."],
    [
      () => amount({ parts: 100, to: 1, of: "mix" }),
      "conflict",
      "rate",
      "Given 100 parts of product in 1 parts of mix; wanted no more product than mix. Is the ratio upside down?",
    ],
    [
      () => amount({ parts: 1, to: 100, of: "mix" }, "dry"),
      "wrong-dimension",
      "rate",
      "Given a ratio by volume (1:100) for a dry product; wanted a weight, such as oz/gal or g/L.",
    ],
    [
      () => amount({ low, high }),
      "missing",
      "rate.chosen",
      "Nothing given; a range is told by low, high and the rate chosen.",
    ],
    [
      () => amount({ low, high, chosen: null }),
      "missing",
      "rate.chosen",
      "Nothing given; a range is told by low, high and the rate chosen.",
    ],
    [
      () => amount({ low, chosen: low }),
      "missing",
      "rate.high",
      "Nothing given; a range is told by low, high and the rate chosen.",
    ],
    [
      () => amount({ high, chosen: low }),
      "missing",
      "rate.low",
      "Nothing given; a range is told by low, high and the rate chosen.",
    ],
    [
      () => amount({ low }),
      "missing",
      "rate.high",
      "Nothing given; a range is told by low, high and the rate chosen.",
    ],
    [
      () => amount({ high }),
      "missing",
      "rate.low",
      "Nothing given; a range is told by low, high and the rate chosen.",
    ],
    [
      () => amount({ low: high, high: low, chosen: low }),
      "conflict",
      "rate",
      "Given a range whose low rate is more than its high rate; wanted the lower one first. Are they the wrong way round?",
    ],
    [
      () => amount({ low, high, chosen: qty(2.5, "pt/ac") }),
      "out-of-range",
      "rate.chosen",
      "Given a chosen rate over the label's highest; wanted no more than the label allows.",
    ],
    [
      () => amount({ activeIngredient: qty(1, "lb/ac") }),
      "missing",
      "rate.contains",
      "Nothing given (undefined); wanted the rate of active ingredient and what the product contains.",
    ],
    [
      () => amount({ activeIngredient: null, contains: qty(4, "lb/gal") }),
      "missing",
      "rate.activeIngredient",
      "Nothing given (null); wanted the rate of active ingredient and what the product contains.",
    ],
    [
      () => amount({ activeIngredient: { parts: 1, to: 2, of: "mix" }, contains: qty(4, "lb/gal") }),
      "wrong-dimension",
      "rate.activeIngredient",
      "Given a ratio by volume (1:2) for a dry product; wanted a weight, such as oz/gal or g/L.",
    ],
    [
      () => amount({ activeIngredient: { activeIngredient: qty(1, "lb/ac") }, contains: qty(4, "lb/gal") }),
      "wrong-dimension",
      "rate.activeIngredient",
      "Given a ratio or another rate of active ingredient; wanted a weight per area, per volume of carrier or per row length.",
    ],
    [
      () => amount(qty(1, "pt/ac"), "liquid", { carrierRate: undefined }),
      "missing",
      "carrierRate",
      "Nothing given; wanted for a rate per area or per row length.",
    ],
    [
      () => amount({ rate: qty(1, "pt/ac"), per: "ground" }, "liquid", { area: undefined }),
      "missing",
      "area",
      "Nothing given; wanted for a rate per ground area or per row length.",
    ],
    [
      () => amount({ rate: qty(1, "pt/ac"), per: "ground" }, "liquid", { ground: null }),
      "missing",
      "ground",
      "Nothing given; wanted for a rate per ground area.",
    ],
    [
      () => amount(qty(1, "mL/m"), "liquid", { rowLength: undefined }),
      "missing",
      "rowLength",
      "Nothing given; wanted for a rate per row length.",
    ],
    [
      () => amount(qty(21, "gal/ac")),
      "conflict",
      "rate",
      "That's 134.4 fl oz of product in each 1 gal of mix, which leaves no room for water. Check the rate's unit and the output rate.",
    ],
    [
      () => amount(qty(1e-320, "lb/ac"), "dry", { carrierRate: qty(1e10, "gal/ac") }),
      "not-finite",
      "rate",
      "The strength that comes out is too large or too small to compute with.",
    ],
    [
      () => amount(qty(1, "lb/gal"), "dry", { carrier: qty(1e308, "gal") }),
      "not-finite",
      "rate",
      "The amount that comes out is too large to compute with.",
    ],
    [
      () => rate({ activeIngredient: qty(1, "lb") }),
      "wrong-dimension",
      "activeIngredient",
      "Given 1 lb, a weight; wanted a weight of active ingredient per area (lb/ac), per volume of carrier (lb/100gal) or per row length (g/m).",
    ],
    [
      () => rate({ activeIngredient: { value: 1, unit: "pounds" } }),
      "unknown-unit",
      "activeIngredient.unit",
      'The unit "pounds" isn\'t known here. Did you mean lb?',
    ],
    [
      () => rate({ contains: { value: 1, unit: "pounds" } }),
      "unknown-unit",
      "contains.unit",
      'The unit "pounds" isn\'t known here. Did you mean lb?',
    ],
    [
      () => rate({ contains: undefined, density: qty(9, "lb/gal") }),
      "missing",
      "contains",
      'Nothing given; wanted a number with its unit, such as { value: 5, unit: "ft" }.',
    ],
    [
      () => rate({ contains: qty(4, "gal/ac") }),
      "wrong-dimension",
      "contains",
      "Given 4 gal/ac for a liquid product; wanted active ingredient by weight in a volume, such as lb/gal, g/L or % w/v.",
    ],
    [
      () => rate({ contains: qty(4, "lb/gal"), form: "dry" }),
      "wrong-dimension",
      "contains",
      "Given 4 lb/gal for a dry product; wanted active ingredient by weight, such as g/kg or % w/w.",
    ],
    [
      () => rate({ contains: { value: 50, unit: "%", basis: "v/v" } }),
      "wrong-dimension",
      "contains",
      "Given 50 % v/v for a liquid product; wanted active ingredient by weight in a volume, such as lb/gal, g/L or % w/v.",
    ],
    [
      () => rate({ contains: { value: 50, unit: "%", basis: "w/v" }, form: "dry" }),
      "wrong-dimension",
      "contains",
      "Given 50 % w/v for a dry product; wanted active ingredient by weight, such as g/kg or % w/w.",
    ],
    [
      () => rate({ contains: qty(1001, "g/kg"), form: "dry" }),
      "out-of-range",
      "contains",
      "Given 1001 g/kg; wanted no more active ingredient than product.",
    ],
    [
      () => rate({ contains: half }),
      "missing",
      "density",
      "Given 50 % by weight for a liquid product; wanted the product's density too, such as lb/gal or kg/L.",
    ],
    [
      () => rate({ contains: half, density: null }),
      "missing",
      "density",
      'Nothing given; wanted a number with its unit, such as { value: 5, unit: "lb/fl_oz" }.',
    ],
    [
      () => rate({ activeIngredient: qty(1e308, "lb/ac"), contains: qty(1e-300, "lb/gal") }),
      "not-finite",
      "activeIngredient",
      "The rate that comes out is too large or too small to compute with.",
    ],
    [
      () => rate({ activeIngredient: qty(1e-300, "lb/ac"), contains: qty(1e300, "lb/gal") }),
      "not-finite",
      "activeIngredient",
      "The rate that comes out is too large or too small to compute with.",
    ],
    [
      () => active({ product: qty(1, "ft"), contains: half }),
      "wrong-dimension",
      "product",
      "Given 1 ft, a length; wanted an amount of product per area, per volume of carrier or per row length.",
    ],
    [
      () => active({ product: { value: 1, unit: "pints" }, contains: half }),
      "unknown-unit",
      "product.unit",
      'The unit "pints" isn\'t known here. Did you mean pt?',
    ],
    [
      () => active({ product: qty(1e308, "pt/ac"), contains: qty(1e300, "lb/gal") }),
      "not-finite",
      "product",
      "The rate that comes out is too large or too small to compute with.",
    ],
    [
      () => carrier({ reserve: {} }),
      "missing",
      "reserve",
      "Given none; wanted one of: percent, volume, roundUpTo.",
    ],
    [
      () => carrier({ reserve: { percent: 5, volume: qty(1, "gal") } }),
      "conflict",
      "reserve",
      "Given percent and volume; wanted one of: percent, volume, roundUpTo.",
    ],
    [
      () => carrier({ area: { value: 1e308, unit: "ac", of: "treated" } }),
      "not-finite",
      "area",
      "Given 20 gal/ac on 1e+308 ac, which is too large to compute with.",
    ],
    [
      () => carrier({ rate: qty(1e-200, "gal/ac"), area: { value: 1e-200, unit: "ac", of: "treated" } }),
      "not-finite",
      "area",
      "Given 1e-200 gal/ac on 1e-200 ac, which is too small to compute with.",
    ],
    [
      () => label({ min: high, max: low }),
      "conflict",
      "label",
      "Given a lower limit of the rate over the upper one. Are they the wrong way round?",
    ],
    [
      () => label({}, { rate: { low: high, high: low, chosen: low } }),
      "conflict",
      "rate",
      "Given a lower limit of the rate over the upper one. Are they the wrong way round?",
    ],
    [
      () => label({}, { rate: { low, high: qty(2, "lb/ac"), chosen: low } }),
      "wrong-dimension",
      "rate.high",
      "Given 2 lb/ac, a weight per area, for a liquid product; wanted a volume, such as fl_oz/ac. An ounce of weight (oz) is not a fluid ounce (fl_oz): see how the label tells the rate.",
    ],
    [
      () => label({}, { rate: { low: qty(2, "lb/ac"), high, chosen: low } }),
      "wrong-dimension",
      "rate.low",
      "Given 2 lb/ac, a weight per area, for a liquid product; wanted a volume, such as fl_oz/ac. An ounce of weight (oz) is not a fluid ounce (fl_oz): see how the label tells the rate.",
    ],
    [
      () => label({}, { rate: { low, high, chosen: qty(2, "lb/ac") } }),
      "wrong-dimension",
      "rate.chosen",
      "Given 2 lb/ac, a weight per area, for a liquid product; wanted a volume, such as fl_oz/ac. An ounce of weight (oz) is not a fluid ounce (fl_oz): see how the label tells the rate.",
    ],
    [
      () => label({}, { rate: qty(2, "lb/ac") }),
      "wrong-dimension",
      "rate",
      "Given 2 lb/ac, a weight per area, for a liquid product; wanted a volume, such as fl_oz/ac. An ounce of weight (oz) is not a fluid ounce (fl_oz): see how the label tells the rate.",
    ],
    [
      () => label({ leastCarrier: qty(20, "gal/ac"), mostCarrier: qty(10, "gal/ac") }),
      "conflict",
      "label.leastCarrier",
      "Given a lower carrier over the upper one. Are they the wrong way round?",
    ],
    [
      () => label({ seasonMax: qty(1, "pt/100gal") }),
      "wrong-dimension",
      "label.seasonMax",
      "Given something other than an amount per area; wanted the season's amount per area, such as pt/ac.",
    ],
    [
      () => label({ seasonMax: null }),
      "missing",
      "label.seasonMax",
      "Given something other than an amount per area; wanted the season's amount per area, such as pt/ac.",
    ],
    [
      () => label({ seasonMax: qty(6, "pt/ac") }, { soFar: { rate: null } }),
      "missing",
      "soFar.rate",
      "Given something other than an amount per area; wanted the season's amount per area, such as pt/ac.",
    ],
    [
      () => label({ seasonMax: qty(6, "pt/ac") }, { soFar: { rate: { value: 1, unit: "pints" } } }),
      "unknown-unit",
      "soFar.rate.unit",
      'The unit "pints" isn\'t known here. Did you mean pt?',
    ],
    [
      () => label({ seasonMax: { activeIngredient: qty(1, "lb/100gal"), contains: qty(4, "lb/gal") } }),
      "wrong-dimension",
      "label.seasonMax",
      "Given something other than an amount per area; wanted the season's amount per area, such as pt/ac.",
    ],
    [
      () => label({ seasonMax: { activeIngredient: qty(1, "pt/ac"), contains: qty(4, "lb/gal") } }),
      "wrong-dimension",
      "label.seasonMax.activeIngredient",
      "Given 1 pt/ac, a volume per area, for a dry product; wanted a weight, such as oz/ac. An ounce of weight (oz) is not a fluid ounce (fl_oz): see how the label tells the rate.",
    ],
    [
      () => label({ daysBetween: 7 }, { soFar: { daysSinceLast: -1 } }),
      "out-of-range",
      "soFar.daysSinceLast",
      "Given -1; wanted 0 or more.",
    ],
    [
      () => loads({ workingFill: qty(20, "qt") }),
      "conflict",
      "workingFill",
      "Given 20 qt in a tank of 4 gal; wanted no more than the tank holds.",
    ],
    [
      () => loads({ leastLoad: qty(20, "qt") }),
      "conflict",
      "leastLoad",
      "Given 20 qt; wanted no more than one load, 4 gal.",
    ],
    [
      () => loads({ split: null }),
      "missing",
      "split",
      "Nothing given; wanted one of: full-then-part, equal.",
    ],
    [
      () => loads({ split: { pieces: 4, extra: qty(44, "qt") } }),
      "conflict",
      "split.extra",
      "Given 44 qt out of 10 gal; wanted less than the whole mix.",
    ],
    [
      () => loads({ split: { pieces: 2 } }),
      "conflict",
      "split.pieces",
      "Given 2 rows or plots of 5 gal each; wanted one of them at least to fit into a load of 4 gal. Part the mix into equal loads instead.",
    ],
    [
      () => loads({ split: { pieces: 4, extra: qty(2, "gal") }, tank: qty(3, "gal") }),
      "conflict",
      "split.pieces",
      "Given 4 rows or plots of 2 gal each; wanted one of them at least to fit into a load of 3 gal beside 2 gal for lines and reserve. Part the mix into equal loads instead.",
    ],
    [
      () => loads({ split: { pieces: 4, extra: qty(3, "gal") }, tank: qty(3, "gal") }),
      "conflict",
      "split.pieces",
      "Given 4 rows or plots of 1.75 gal each; wanted one of them at least to fit into a load of 3 gal beside 3 gal for lines and reserve. Part the mix into equal loads instead.",
    ],
    [
      () => loads({ total: qty(1e6, "gal") }),
      "out-of-range",
      "total",
      "Given 1000000 gal in loads of 4 gal, which makes 250000 loads; wanted 10000 or fewer. Check the units of the rate, the area and the tank.",
    ],
    [
      () => loads({ total: qty(5, "gal"), leastLoad: qty(3, "gal") }),
      "conflict",
      "leastLoad",
      "Given 3 gal, and the smallest load is 2 gal; wanted loads that the pump can draw. Part the mix into equal loads, or mix more (a larger reserve).",
    ],
    [
      () => loads({ total: qty(5, "gal"), leastLoad: qty(3, "gal"), split: "equal" }),
      "conflict",
      "leastLoad",
      "Given 3 gal, and the smallest load is 2.5 gal; wanted loads that the pump can draw. Mix more (a larger reserve), or use a smaller sprayer.",
    ],
    [
      () => loads({ total: qty(2, "qt"), leastLoad: qty(3, "qt") }),
      "conflict",
      "leastLoad",
      "Given 3 qt, and the smallest load is 0.5 gal; wanted loads that the pump can draw. Mix more (a larger reserve), or use a smaller sprayer.",
    ],
    [
      () => order([{ code: "XY" }]),
      "unknown-choice",
      "products[0].code",
      'Given "XY", which is not an international formulation code; wanted one of: WP, WG, WT, EG, EP, SC, CS, SE, ZC, ZE, ZW, DC, EC, EW, GL, ME, OD, GW, SL, SG, SP, ST, adjuvant, fertilizer. Letters after a trade name can mean other things.',
    ],
    [
      () => order([{ code: "GR" }]),
      "conflict",
      "products[0].code",
      "Given GR, a formulation that is not mixed into water by itself; wanted one that is. See how the label tells to use it.",
    ],
    [
      () => order([{ code: null }]),
      "missing",
      "products[0].code",
      'Nothing given; wanted a formulation code such as "WG", or "adjuvant" or "fertilizer".',
    ],
    [
      () => order([{ code: "EC", inSolubleBag: "yes" }]),
      "not-a-quantity",
      "products[0].inSolubleBag",
      'Given "yes"; wanted true or false.',
    ],
    [
      () => order([{ code: "EC" }], ["powders"]),
      "unknown-choice",
      "steps[0]",
      'Given "powders"; wanted one of: soluble-bag, wettable-powder, dry-flowable, suspension, emulsion, soluble-liquid, soluble-solid, adjuvant, fertilizer.',
    ],
    [
      () => order([{ code: "EC" }], ["emulsion", "emulsion"]),
      "conflict",
      "steps[1]",
      'Given "emulsion" a second time; wanted each step once.',
    ],
    [
      () =>
        mix.mixLoads({
          loads: [{ carrier: qty(8, "gal") }, { carrier: qty(2, "gal") }],
          amounts: [qty(3, "gal"), qty(30, "qt")],
        }),
      "conflict",
      "amounts",
      "Given 8.4 gal of liquid products in load 1 of 8 gal; wanted no more product than mix. Check the units of the rates, or put out more carrier per area.",
    ],
    [
      () => mix.jarTest({ jar: qty(10, "gal"), mix: qty(10, "qt"), amounts: [qty(1, "oz")] }),
      "conflict",
      "jar",
      "Given a jar of 10 gal for a mix of 10 qt; wanted a jar smaller than the mix.",
    ],
    [
      () => mix.stockFor({ amount: qty(10, "mL"), volume: qty(1, "L"), dose: qty(11, "mL") }),
      "conflict",
      "dose",
      "Given 11 mL out of a stock made with 10 mL; wanted no more than is in it.",
    ],
    [
      () => mix.stockFor({ amount: qty(2, "L"), volume: qty(1, "L"), dose: qty(11, "mL") }),
      "conflict",
      "volume",
      "Given 2 L made up to 1 L; wanted the larger volume to make it up to.",
    ],
    [
      () => mix.dilute({ from: qty(5, "mL/L"), to: qty(51, "mL/L"), volume: qty(1, "L") }),
      "conflict",
      "to",
      "Given 51 mL/L out of 5 mL/L; wanted no stronger than what there is: water only weakens.",
    ],
    [
      () => mix.dilute({ from: qty(5, "L/ha"), to: qty(1, "mL/L"), volume: qty(1, "L") } as never),
      "wrong-dimension",
      "from",
      "Given 5 L/ha, a volume per area; wanted a strength, such as mL/L, g/L or % with a basis.",
    ],
    [
      () => mix.dilute({ from: percent, to: percent, volume: qty(1, "L") } as never),
      "missing",
      "from.basis",
      'Given 1 % that does not say what it is a part of; wanted a basis: "v/v" or "w/v".',
    ],
    [
      () => mix.dilute({ from: half, to: half, volume: qty(1, "L") } as never),
      "wrong-dimension",
      "from.basis",
      'Given a strength by weight; wanted one by volume, "v/v" or "w/v", since what is measured out is a volume.',
    ],
    [
      () => mix.dilute({ from: { value: 1, unit: "ml per l" }, to: percent, volume: qty(1, "L") } as never),
      "unknown-unit",
      "from.unit",
      'The unit "ml per l" isn\'t known here. Did you mean mL/L?',
    ],
    [
      () => mix.leftoverArea({ volume: qty(1e300, "gal"), rate: qty(1e-300, "gal/ac") }),
      "not-finite",
      "volume",
      "The area that comes out is too large to compute with.",
    ],
  ])("%s", (call, code, path, message) => {
    const error = refusal(call);
    expect({ code: error.code, path: error.path, message: error.message }).toEqual({ code, path, message });
  });
});
