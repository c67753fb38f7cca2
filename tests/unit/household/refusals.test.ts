import { describe, expect, it } from "vitest";
import type { ErrorCode } from "../../../src/errors.ts";
import * as household from "../../../src/household/index.ts";
import { qty } from "../../../src/units/index.ts";
import { refusal } from "../../helpers/refusal.ts";

const JUG = { name: "jug", capacity: qty(1, "L") };
const measure = (change: object): unknown =>
  household.measureOut({ amount: qty(5, "mL"), tools: "syringes", rule: "never-over", ...change } as never);
const tool = (change: object): unknown => measure({ tools: [{ ...JUG, ...change }] });
const stock = (change: object): unknown =>
  household.stockDilution({
    amount: qty(0.05, "mL"),
    tools: "syringes",
    rule: "never-over",
    labelPermitsDilution: true,
    ...change,
  } as never);
const table = (change: object): unknown =>
  household.doseTable({
    rates: [qty(2, "mL/L")],
    sizes: [qty(5, "L")],
    tools: "syringes",
    rule: "never-over",
    ...change,
  } as never);
const steps = (change: object): unknown =>
  household.steps({ first: qty(1, "mL"), last: qty(5, "mL"), step: qty(1, "mL"), ...change } as never);
const byVolume = (change: object): unknown =>
  household.byVolume({ mass: qty(10, "g"), bulkDensity: qty(0.5, "g/mL"), ...change } as never);
const area = { value: 1, unit: "ac", of: "treated" };

// A form shows these sentences as they are: each says what was given, what is wanted, and what may be wrong.
describe("what household says of input that cannot be", () => {
  it.each<[() => unknown, ErrorCode, string, string]>([
    [
      () => household.measureOut(undefined as never),
      "missing",
      "",
      "Nothing given; wanted an object with its fields.",
    ],
    [
      () => household.measureOut("5 mL" as never),
      "not-a-quantity",
      "",
      'Given "5 mL"; wanted an object with its fields.',
    ],
    [
      () => measure({ amount: qty(5, "ft") }),
      "wrong-dimension",
      "amount",
      "Given 5 ft; wanted a volume or a weight.",
    ],
    [
      () => measure({ amount: { value: 5, unit: "millilitres" } }),
      "unknown-unit",
      "amount.unit",
      'The unit "millilitres" isn\'t known here. Did you mean mL?',
    ],
    [() => measure({ amount: qty(0, "mL") }), "out-of-range", "amount", "Given 0 mL; wanted more than 0."],
    [
      () => measure({ amount: qty(5, "g") }),
      "wrong-dimension",
      "tools",
      "Given 5 g, a weight, and no tool that measures one; wanted a scale: a weight is weighed, not spooned, unless the product's own bulk density is known. An ounce of weight (oz) is not a fluid ounce (fl_oz).",
    ],
    [
      () => measure({ tools: "scales" }),
      "wrong-dimension",
      "tools",
      "Given 5 mL, a volume, and no tool that measures one; wanted spoons, a syringe or a cylinder. A fluid ounce (fl_oz) is not an ounce of weight (oz).",
    ],
    [
      () => measure({ tools: "ladles" }),
      "unknown-choice",
      "tools",
      'Given "ladles"; wanted one of: us-spoons, us-cups-and-spoons, us-household, us-legal-cups-and-spoons, metric-spoons, metric-cups-and-spoons, australian-spoons, imperial-measures, syringes, cylinders, scales, us-scales.',
    ],
    [() => measure({ tools: [] }), "too-few", "tools", "Given 0 of them; wanted at least 1."],
    [
      () => measure({ tools: [5] }),
      "not-a-quantity",
      "tools[0]",
      "Given 5; wanted an object with its fields.",
    ],
    [
      () => measure({ rule: "about" }),
      "unknown-choice",
      "rule",
      'Given "about"; wanted one of: never-over, never-under, nearest.',
    ],
    [
      () => measure({ limitPercent: 0.05 }),
      "out-of-range",
      "limitPercent",
      "Given 0.05; wanted 0.1 or more.",
    ],
    [() => measure({ limitPercent: 51 }), "out-of-range", "limitPercent", "Given 51; wanted 50 or less."],
    [() => measure({ maxScoops: 101 }), "out-of-range", "maxScoops", "Given 101; wanted 100 or fewer."],
    [
      () => measure({ maxScoops: 0 }),
      "out-of-range",
      "maxScoops",
      "Given 0; wanted a whole number, 1 or more.",
    ],
    [
      () => measure({ labelPermitsDilution: "yes" }),
      "unknown-choice",
      "labelPermitsDilution",
      'Given "yes"; wanted true or false: whether the label permits diluting this product before it goes into the tank.',
    ],
    [
      () => measure({ labelPermitsDilution: null }),
      "missing",
      "labelPermitsDilution",
      "Given null; wanted true or false: whether the label permits diluting this product before it goes into the tank.",
    ],
    [
      () => measure({ perArea: { ...area, of: "ground" } }),
      "wrong-area",
      "perArea",
      "Given ground area; wanted treated area. Product and carrier go by the area that is really treated; the ground between bands is not.",
    ],
    [
      () => measure({ amount: qty(5.01, "mL"), perArea: { ...area, value: 1e-322 } }),
      "not-finite",
      "perArea",
      "Given 1e-322 ac, too small to tell an error of -0.009999999999999787 mL on it.",
    ],
    [
      () => tool({ name: undefined }),
      "missing",
      "tools[0].name",
      'Given undefined; wanted the tool\'s name as text, such as "tablespoon".',
    ],
    [
      () => tool({ name: null }),
      "missing",
      "tools[0].name",
      'Given null; wanted the tool\'s name as text, such as "tablespoon".',
    ],
    [
      () => tool({ name: 5 }),
      "unreadable",
      "tools[0].name",
      'Given 5; wanted the tool\'s name as text, such as "tablespoon".',
    ],
    [
      () => tool({ name: " " }),
      "unreadable",
      "tools[0].name",
      'Given " "; wanted the tool\'s name as text, such as "tablespoon".',
    ],
    [
      () => tool({ capacity: qty(1, "ft") }),
      "wrong-dimension",
      "tools[0].capacity",
      "Given 1 ft; wanted a volume or a weight.",
    ],
    [
      () => tool({ capacity: { value: 1, unit: "litre" } }),
      "unknown-unit",
      "tools[0].capacity.unit",
      'The unit "litre" isn\'t known here. Did you mean L?',
    ],
    [
      () => tool({ capacity: qty(0, "L") }),
      "out-of-range",
      "tools[0].capacity",
      "Given 0 L; wanted more than 0.",
    ],
    [
      () => tool({ least: qty(1, "mL") }),
      "missing",
      "tools[0].graduation",
      "Given the least that the jug reads but not the amount between its marks; wanted a graduation, or no least.",
    ],
    [
      () => tool({ graduation: qty(1, "g") }),
      "wrong-dimension",
      "tools[0].graduation",
      "Given 1 g for a tool that holds 1 L; wanted both as a volume or both as a weight.",
    ],
    [
      () => tool({ graduation: qty(1, "mL"), least: qty(1, "g") }),
      "wrong-dimension",
      "tools[0].least",
      "Given 1 g for a tool that holds 1 L; wanted both as a volume or both as a weight.",
    ],
    [
      () => tool({ graduation: qty(0, "mL") }),
      "out-of-range",
      "tools[0].graduation",
      "Given 0 mL; wanted more than 0.",
    ],
    [
      () => tool({ graduation: qty(1, "mL"), least: qty(0, "mL") }),
      "out-of-range",
      "tools[0].least",
      "Given 0 mL; wanted more than 0.",
    ],
    [
      () => tool({ graduation: qty(1e-9, "mL") }),
      "out-of-range",
      "tools[0].graduation",
      "Given a jug with 999999999999.9999 marks of 1e-9 mL up to 1 L; wanted 1000000000 or fewer. Check the units.",
    ],
    [
      () => tool({ graduation: qty(1, "mL"), least: qty(1e10, "mL") }),
      "out-of-range",
      "tools[0].least",
      "Given a jug with 10000000000 marks of 1 mL up to 10000000000 mL; wanted 1000000000 or fewer. Check the units.",
    ],
    [
      () => tool({ graduation: qty(2, "L") }),
      "out-of-range",
      "tools[0].graduation",
      "Given a jug of 1 L with no mark from the least that it reads up to that; wanted a graduation and a least within the capacity.",
    ],
    [
      () => tool({ graduation: qty(1, "mL"), least: qty(2, "L") }),
      "out-of-range",
      "tools[0].least",
      "Given a jug of 1 L with no mark from the least that it reads up to that; wanted a graduation and a least within the capacity.",
    ],
    [
      () => tool({ graduation: qty(300, "mL"), least: qty(950, "mL") }),
      "out-of-range",
      "tools[0].least",
      "Given a jug of 1 L with no mark from the least that it reads up to that; wanted a graduation and a least within the capacity.",
    ],
    [
      () => measure({ tools: [JUG, { ...JUG, name: "" }] }),
      "unreadable",
      "tools[1].name",
      'Given ""; wanted the tool\'s name as text, such as "tablespoon".',
    ],
    [
      () => household.toolSet("spoons" as never),
      "unknown-choice",
      "name",
      'Given "spoons"; wanted one of: us-spoons, us-cups-and-spoons, us-household, us-legal-cups-and-spoons, metric-spoons, metric-cups-and-spoons, australian-spoons, imperial-measures, syringes, cylinders, scales, us-scales.',
    ],
    [
      () => stock({ labelPermitsDilution: undefined }),
      "missing",
      "labelPermitsDilution",
      "Given undefined; wanted true or false: whether the label permits diluting this product before it goes into the tank.",
    ],
    [
      () => stock({ labelPermitsDilution: 1 }),
      "unknown-choice",
      "labelPermitsDilution",
      "Given 1; wanted true or false: whether the label permits diluting this product before it goes into the tank.",
    ],
    [() => table({ rates: [] }), "too-few", "rates", "Given 0 of them; wanted at least 1."],
    [() => table({ sizes: [] }), "too-few", "sizes", "Given 0 of them; wanted at least 1."],
    [
      () => table({ rates: [qty(2, "mL")] }),
      "wrong-dimension",
      "rates[0]",
      "Given 2 mL; wanted product per area, such as pt/ac, or per volume of carrier, such as fl_oz/100gal.",
    ],
    [
      () => table({ rates: [{ value: 2, unit: "ml per l" }] }),
      "unknown-unit",
      "rates[0].unit",
      'The unit "ml per l" isn\'t known here. Did you mean mL/L?',
    ],
    [
      () => table({ rates: [qty(0, "mL/L")] }),
      "out-of-range",
      "rates[0]",
      "Given 0 mL/L; wanted more than 0.",
    ],
    [
      () => table({ rates: [qty(2, "mL/L"), qty(2, "L/ha")] }),
      "wrong-dimension",
      "sizes[0]",
      "Given 5 L, a volume; wanted an area, such as ha.",
    ],
    [
      () => table({ rates: [qty(2, "L/ha")], sizes: [{ ...area, of: "ground" }] }),
      "wrong-area",
      "sizes[0]",
      "Given ground area; wanted treated area. Product and carrier go by the area that is really treated; the ground between bands is not.",
    ],
    [
      () => table({ rates: [qty(2, "L/ha")], sizes: [area, qty(1, "ac")] }),
      "wrong-area",
      "sizes[1]",
      "Given an area that does not say what it is an area of; wanted treated area. Product and carrier go by the area that is really treated; the ground between bands is not.",
    ],
    [
      () => table({ sizes: [qty(5, "L"), qty(5, "ac")] }),
      "wrong-dimension",
      "sizes[1]",
      "Given 5 ac, an area; wanted a volume, such as L.",
    ],
    [
      () => table({ rates: [qty(1e300, "mL/L")], sizes: [qty(1e300, "L")] }),
      "not-finite",
      "sizes[0]",
      "Given 1e+300 L, out of reach of a float.",
    ],
    [
      () => table({ rates: [qty(1e-200, "mL/L")], sizes: [qty(1e-200, "L")] }),
      "not-finite",
      "sizes[0]",
      "Given 1e-200 L, out of reach of a float.",
    ],
    [() => table({ limitPercent: 0 }), "out-of-range", "limitPercent", "Given 0; wanted 0.1 or more."],
    [
      () => steps({ last: qty(0.5, "mL") }),
      "out-of-range",
      "last",
      "Given 0.5 mL, which is before the first, 1 mL; wanted it after.",
    ],
    [() => steps({ step: qty(0, "mL") }), "out-of-range", "step", "Given 0 mL; wanted more than 0."],
    [
      () => steps({ step: qty(0.001, "mL") }),
      "out-of-range",
      "step",
      "Given 0.001 mL, which makes more than 1,000 steps; wanted a larger one.",
    ],
    [
      () => steps({ first: 1 }),
      "not-a-quantity",
      "first",
      'Given 1; wanted a number with its unit, such as { value: 5, unit: "ft" }.',
    ],
    [
      () => steps({ last: qty(5, "g") }),
      "wrong-dimension",
      "last",
      "Given 5 g, a weight; wanted a volume, such as mL.",
    ],
    [
      () => steps({ step: qty(1, "ft") }),
      "wrong-dimension",
      "step",
      "Given 1 ft, a length; wanted a volume, such as mL.",
    ],
    [
      () => byVolume({ bulkDensity: undefined }),
      "missing",
      "bulkDensity",
      "No bulk density given; wanted that of this very product. Without it, weigh the product: an ounce of weight fills from 2 to 6 level tablespoons.",
    ],
    [
      () => byVolume({ bulkDensity: null }),
      "missing",
      "bulkDensity",
      "No bulk density given; wanted that of this very product. Without it, weigh the product: an ounce of weight fills from 2 to 6 level tablespoons.",
    ],
    [
      () => byVolume({ bulkDensity: qty(5, "g") }),
      "wrong-dimension",
      "bulkDensity",
      "Given 5 g, a weight; wanted a weight per volume, such as g/mL.",
    ],
    [
      () => byVolume({ mass: qty(5, "mL") }),
      "wrong-dimension",
      "mass",
      "Given 5 mL, a volume; wanted a weight, such as g.",
    ],
    [
      () => byVolume({ mass: qty(1e300, "g"), bulkDensity: qty(1e-300, "g/mL") }),
      "not-finite",
      "bulkDensity",
      "Given 1e-300 g/mL, too thin for 1e+300 g.",
    ],
  ])("%s", (call, code, path, message) => {
    const error = refusal(call);
    expect({ code: error.code, path: error.path, message: error.message }).toEqual({ code, path, message });
  });
});
