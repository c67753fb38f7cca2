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
const evenSteps = (change: object): unknown =>
  household.evenSteps({ first: qty(1, "mL"), last: qty(5, "mL"), step: qty(1, "mL"), ...change } as never);
const volumeOfWeight = (change: object): unknown =>
  household.volumeOfWeight({ mass: qty(10, "g"), bulkDensity: qty(0.5, "g/mL"), ...change } as never);
const area = { value: 1, unit: "ac", of: "treated" };

// A form shows these sentences as they are.
describe("what household says of input that cannot be", () => {
  it.each<[() => unknown, ErrorCode, string, string]>([
    [
      () => measure({ amount: qty(5, "g") }),
      "wrong-dimension",
      "tools",
      "5 g is a weight and none of these tools is a scale: weigh it, or enter the product's bulk density. oz (weight) and fl oz (volume) are different.",
    ],
    [
      () => measure({ tools: "scales" }),
      "wrong-dimension",
      "tools",
      "5 mL is a volume and these tools only weigh: choose spoons, a syringe or a cylinder. oz (weight) and fl oz (volume) are different.",
    ],
    [
      () => tool({ least: qty(1, "mL") }),
      "missing",
      "tools[0].graduation",
      "You gave the smallest reading, 1 mL, but not the spacing of the marks. Enter the spacing too.",
    ],
    [
      () => tool({ graduation: qty(1, "g") }),
      "wrong-dimension",
      "tools[0].graduation",
      "1 g is a weight and the tool holds 1 L. Enter a volume.",
    ],
    [
      () => tool({ graduation: qty(1, "mL"), least: qty(1, "g") }),
      "wrong-dimension",
      "tools[0].least",
      "1 g is a weight and the tool holds 1 L. Enter a volume.",
    ],
    [
      () => tool({ capacity: qty(1, "kg"), graduation: qty(1, "mL") }),
      "wrong-dimension",
      "tools[0].graduation",
      "1 mL is a volume and the tool weighs up to 1 kg. Enter a weight.",
    ],
    [
      () => tool({ graduation: qty(1e-9, "mL") }),
      "out-of-range",
      "tools[0].graduation",
      "Marks 1e-9 mL apart up to 1 L make more than 1,000,000 marks. Check the units.",
    ],
    [
      () => tool({ graduation: qty(1, "mL"), least: qty(1e10, "mL") }),
      "out-of-range",
      "tools[0].least",
      "Marks 1 mL apart up to 10,000,000,000 mL make more than 1,000,000 marks. Check the units.",
    ],
    [
      () => tool({ graduation: qty(2, "L") }),
      "out-of-range",
      "tools[0].graduation",
      "A tool that holds 1 L can't have marks 2 L apart.",
    ],
    [
      () => tool({ graduation: qty(1, "mL"), least: qty(2, "L") }),
      "out-of-range",
      "tools[0].least",
      "A tool that holds 1 L, with marks 1 mL apart, has no mark at 2 L or above.",
    ],
    [
      () => tool({ graduation: qty(300, "mL"), least: qty(950, "mL") }),
      "out-of-range",
      "tools[0].least",
      "A tool that holds 1 L, with marks 300 mL apart, has no mark at 950 mL or above.",
    ],
    ...["JUG", " Jug "].map((name): [() => unknown, ErrorCode, string, string] => [
      () => measure({ tools: [JUG, { ...JUG, name: "can" }, { ...JUG, name }] }),
      "conflict",
      "tools[2].name",
      `Two tools are called ${name.trim()}. Give each its own name.`,
    ]),
    [
      () => measure({ tools: Array.from({ length: 51 }, (_, i) => ({ ...JUG, name: `jug ${i}` })) }),
      "out-of-range",
      "tools",
      'Enter at most 50 under "tools".',
    ],
    [
      () =>
        table({
          rates: Array.from({ length: 101 }, () => qty(2, "mL/L")),
          sizes: Array.from({ length: 100 }, () => qty(5, "L")),
        }),
      "out-of-range",
      "rates",
      "A table of 10,100 doses is too large. Leave out rows or columns: up to 10,000 doses.",
    ],
    [
      () =>
        table({
          rates: Array.from({ length: 100 }, () => qty(2, "mL/L")),
          sizes: Array.from({ length: 101 }, () => qty(5, "L")),
        }),
      "out-of-range",
      "sizes",
      "A table of 10,100 doses is too large. Leave out rows or columns: up to 10,000 doses.",
    ],
    [
      () => table({ rates: [qty(2, "mL/L"), qty(2, "L/ha")] }),
      "wrong-dimension",
      "sizes[0]",
      "5 L is a volume. A rate of 2 L/ha needs an area, such as 5 m².",
    ],
    [
      () => table({ sizes: [qty(5, "L"), { ...area, value: 5 }] }),
      "wrong-dimension",
      "sizes[1]",
      "5 ac is an area. A rate of 2 mL/L needs a volume, such as 5 L.",
    ],
    [
      () => evenSteps({ last: qty(0.5, "mL") }),
      "out-of-range",
      "last",
      "The last, 0.5 mL, is before the first, 1 mL.",
    ],
    [
      () => evenSteps({ step: qty(0.001, "mL") }),
      "out-of-range",
      "step",
      "Steps of 0.001 mL make more than 1,000 steps. Enter a larger step.",
    ],
    ...[undefined, null].map((bulkDensity): [() => unknown, ErrorCode, string, string] => [
      () => volumeOfWeight({ bulkDensity }),
      "missing",
      "bulkDensity",
      "Enter the bulk density of this product, or weigh the product: an ounce of weight fills from 2 to 6 level tablespoons.",
    ]),
  ])("%s", (call, code, path, message) => {
    const error = refusal(call);
    expect({ code: error.code, path: error.path, message: error.message }).toEqual({ code, path, message });
  });
});

// Sentences that every field of a kind has: here by their key.
describe("what a field of household cannot be", () => {
  it.each<[() => unknown, ErrorCode, string, string]>([
    [() => household.measureOut(undefined as never), "missing", "", "object-missing"],
    [() => household.measureOut("5 mL" as never), "not-a-quantity", "", "fields-expected"],
    [() => measure({ amount: qty(5, "ft") }), "wrong-dimension", "amount", "dimension"],
    [
      () => measure({ amount: { value: 5, unit: "millilitres" } }),
      "unknown-unit",
      "amount.unit",
      "unit-misspelled",
    ],
    [() => measure({ amount: qty(0, "mL") }), "out-of-range", "amount", "more-than"],
    [() => measure({ amount: qty(1e76, "mL") }), "not-finite", "amount", "too-large"],
    [() => measure({ tools: "ladles" }), "unknown-choice", "tools", "choice-unknown"],
    [() => measure({ tools: undefined }), "missing", "tools", "choose"],
    [() => measure({ tools: 5 }), "not-a-quantity", "tools", "list-expected"],
    [() => measure({ tools: [] }), "too-few", "tools", "list-short"],
    [() => measure({ tools: [5] }), "not-a-quantity", "tools[0]", "fields-expected"],
    [() => measure({ tools: ["jug"] }), "not-a-quantity", "tools[0]", "fields-expected"],
    [() => household.toolSet(["scales"] as never), "unknown-choice", "name", "choose"],
    [() => measure({ tools: [null] }), "missing", "tools[0]", "object-missing"],
    [() => measure({ rule: "about" }), "unknown-choice", "rule", "choice-unknown"],
    [() => measure({ limitPercent: 0.05 }), "out-of-range", "limitPercent", "at-least"],
    [() => measure({ limitPercent: 51 }), "out-of-range", "limitPercent", "at-most"],
    [() => measure({ maxScoops: 101 }), "out-of-range", "maxScoops", "at-most"],
    [() => measure({ maxScoops: 0 }), "out-of-range", "maxScoops", "whole-number"],
    [
      () => measure({ labelPermitsDilution: "yes" }),
      "not-a-quantity",
      "labelPermitsDilution",
      "yes-or-no-expected",
    ],
    [() => measure({ perArea: { ...area, of: "ground" } }), "wrong-area", "perArea", "area-is-ground"],
    [() => measure({ perArea: { ...area, value: 1e-76 } }), "out-of-range", "perArea", "too-small"],
    [() => measure({ limit: 5 }), "unknown-field", "limit", "field-unknown"],
    [() => measure({ amount: { ...qty(5, "mL"), off: 1 } }), "unknown-field", "amount.off", "field-unknown"],
    [() => tool({ name: undefined }), "missing", "tools[0].name", "enter-text"],
    [() => tool({ name: null }), "missing", "tools[0].name", "enter-text"],
    [() => tool({ name: 5 }), "not-a-quantity", "tools[0].name", "text-expected"],
    [() => tool({ name: " " }), "missing", "tools[0].name", "enter-text"],
    [() => tool({ capacity: qty(1, "ft") }), "wrong-dimension", "tools[0].capacity", "dimension"],
    [
      () => tool({ capacity: { value: 1, unit: "litre" } }),
      "unknown-unit",
      "tools[0].capacity.unit",
      "unit-misspelled",
    ],
    [() => tool({ capacity: qty(0, "L") }), "out-of-range", "tools[0].capacity", "more-than"],
    [() => tool({ graduation: qty(0, "mL") }), "out-of-range", "tools[0].graduation", "more-than"],
    [
      () => tool({ graduation: qty(1, "mL"), least: qty(0, "mL") }),
      "out-of-range",
      "tools[0].least",
      "more-than",
    ],
    [() => tool({ graduations: qty(1, "mL") }), "unknown-field", "tools[0].graduations", "field-misspelled"],
    [() => measure({ tools: [JUG, { ...JUG, name: "" }] }), "missing", "tools[1].name", "enter-text"],
    [() => household.toolSet("spoons" as never), "unknown-choice", "name", "choice-misspelled"],
    [() => stock({ labelPermitsDilution: undefined }), "missing", "labelPermitsDilution", "yes-or-no"],
    [
      () => stock({ labelPermitsDilution: 1 }),
      "not-a-quantity",
      "labelPermitsDilution",
      "yes-or-no-expected",
    ],
    [() => stock({ perArea: area }), "unknown-field", "perArea", "field-unknown"],
    [() => table({ rates: [] }), "too-few", "rates", "list-short"],
    [() => table({ sizes: [] }), "too-few", "sizes", "list-short"],
    [() => table({ rates: [qty(2, "mL")] }), "wrong-dimension", "rates[0]", "dimension"],
    [
      () => table({ rates: [{ value: 2, unit: "ml per l" }] }),
      "unknown-unit",
      "rates[0].unit",
      "unit-misspelled",
    ],
    [() => table({ rates: [qty(0, "mL/L")] }), "out-of-range", "rates[0]", "more-than"],
    [() => table({ sizes: [undefined] }), "missing", "sizes[0]", "enter-quantity"],
    [
      () => table({ rates: [qty(2, "L/ha")], sizes: [{ ...area, of: "ground" }] }),
      "wrong-area",
      "sizes[0]",
      "area-is-ground",
    ],
    [
      () => table({ rates: [qty(2, "L/ha")], sizes: [area, qty(1, "ac")] }),
      "wrong-area",
      "sizes[1]",
      "area-unmarked",
    ],
    [() => table({ tools: "ladles" }), "unknown-choice", "tools", "choice-unknown"],
    [() => table({ rates: [qty(2, "g/L")] }), "wrong-dimension", "tools", "no-scale"],
    [() => table({ limitPercent: 0 }), "out-of-range", "limitPercent", "at-least"],
    [() => table({ maxScoops: 5 }), "unknown-field", "maxScoops", "field-unknown"],
    [() => evenSteps({ step: qty(0, "mL") }), "out-of-range", "step", "more-than"],
    [() => evenSteps({ last: qty(5, "g") }), "wrong-dimension", "last", "dimension"],
    [() => evenSteps({ step: qty(1, "ft") }), "wrong-dimension", "step", "dimension"],
    [() => evenSteps({ first: 1 }), "not-a-quantity", "first", "quantity-expected"],
    [() => evenSteps({ lats: qty(1, "mL") }), "unknown-field", "lats", "field-unknown"],
    [() => volumeOfWeight({ bulkDensity: qty(5, "g") }), "wrong-dimension", "bulkDensity", "dimension"],
    [() => volumeOfWeight({ mass: qty(5, "mL") }), "wrong-dimension", "mass", "dimension"],
    [() => volumeOfWeight({ density: qty(5, "g/mL") }), "unknown-field", "density", "field-unknown"],
  ])("%s", (call, code, path, key) => {
    const error = refusal(call);
    expect({ code: error.code, path: error.path, key: error.key }).toEqual({ code, path, key });
  });

  it("is reported with every other fault, once each, with its place", () => {
    const error = refusal(() =>
      measure({
        amount: qty(-5, "mL"),
        tools: [
          { name: "", capacity: qty(1, "L"), graduation: qty(0, "mL"), least: qty(1, "mL") },
          { name: "jug", capacity: qty(1, "L"), least: qty(1, "mL"), mark: 1 },
          null,
          { name: "JUG", capacity: qty(1, "L") },
          { name: "", capacity: qty(1, "L") },
        ],
        rule: "over",
        limitPercent: 99,
      }),
    );
    expect(error.issues.map(({ code, path }) => `${code} ${path}`)).toEqual([
      "out-of-range amount",
      "missing tools[0].name",
      "out-of-range tools[0].graduation",
      "unknown-field tools[1].mark",
      "missing tools[1].graduation",
      "missing tools[2]",
      "missing tools[4].name",
      "conflict tools[3].name",
      "unknown-choice rule",
      "out-of-range limitPercent",
    ]);
  });

  const many = (length: number, one: object): object[] => Array.from({ length }, () => one);
  const spoons = (length: number): object[] =>
    many(length, JUG).map((jug, i) => ({ ...jug, name: `jug ${i}` }));
  it.each<[() => unknown, string[]]>([
    [() => table({ sizes: [{ value: 5, unit: "liters of mix" }] }), ["unit-unknown sizes[0].unit"]],
    [() => table({ tools: undefined }), ["choose tools"]],
    [() => table({ rates: undefined, sizes: many(10_001, qty(5, "L")) }), ["list-missing rates"]],
    [() => table({ rates: many(10_001, qty(2, "mL/L")), sizes: undefined }), ["list-missing sizes"]],
    // 10,000 doses are not too many.
    [
      () => table({ rates: many(100, qty(2, "mL/L")), sizes: many(100, qty(5, "L")), tools: undefined }),
      ["choose tools"],
    ],
    [
      () => table({ rates: many(101, qty(2, "mL/L")), sizes: many(101, qty(5, "L")) }),
      ["table-too-large sizes"],
    ],
    [() => table({ closeEnoughPercent: 51 }), ["at-most closeEnoughPercent"]],
    [() => table({ closeEnoughPercent: -1 }), ["at-least closeEnoughPercent"]],
    [() => evenSteps({ first: undefined }), ["enter-quantity first"]],
    [() => evenSteps({ last: undefined }), ["enter-quantity last"]],
    [() => evenSteps({ step: undefined }), ["enter-quantity step"]],
    [() => measure({ tools: "scales" }), ["no-volume-tool tools"]],
    [() => stock({ amount: qty(5, "g") }), ["no-scale tools"]],
    [() => measure({ tools: 5 }), ["list-expected tools"]],
    // A list that is too long is not looked at.
    [() => measure({ tools: many(51, JUG) }), ["list-long tools"]],
    [() => measure({ tools: Array(51).fill("scales") }), ["list-long tools"]],
    [() => measure({ tools: [JUG, "us-spoons", "scales"] }), ["set-in-list tools"]],
    [
      () => measure({ tools: [...household.toolSet("scales"), ...household.toolSet("scales")] }),
      ["tool-twice tools[2].name", "tool-twice tools[3].name"],
    ],
    [() => measure({ tools: [...spoons(49), { ...JUG, name: "jug 7" }] }), ["tool-twice tools[49].name"]],
    [
      () => tool({ capacity: undefined, graduation: qty(1, "g"), least: qty(1, "mL") }),
      ["enter-quantity tools[0].capacity"],
    ],
    [() => tool({ graduation: qty(2, "L") }), ["no-mark tools[0].graduation"]],
    [() => tool({ graduation: qty(1, "mL"), least: qty(2, "L") }), ["no-mark-from-least tools[0].least"]],
  ])("is one fault and no other: %s", (call, faults) => {
    expect(refusal(call).issues.map(({ key, path }) => `${key} ${path}`)).toEqual(faults);
  });

  it("names in its figures what the sentence names", () => {
    const apart = refusal(() => tool({ graduation: qty(2, "L") }));
    expect(Object.keys(apart.figures)).toEqual(["capacity", "graduation"]);
    const weight = refusal(() => evenSteps({ last: qty(5, "g") }));
    expect(weight.message).toBe("5 g is a weight. Enter a volume, such as 5 L.");
    const set = refusal(() => measure({ tools: ["us-spoons"] }));
    expect(set.message).toBe(
      'A list holds tools, not names of sets. Write ...toolSet("us-spoons") for the tools of a set.',
    );
    const twice = refusal(() => measure({ tools: [JUG, JUG] }));
    expect(twice.message).toBe(`The tool ${JUG.name} is in the list twice. Remove one.`);
    const long = "a very long name of a jug, far longer than it should be";
    expect(
      refusal(() => measure({ tools: [JUG, { ...JUG, name: long }, { ...JUG, name: long }] })).figures,
    ).toEqual({
      name: "a very long name of a jug, far longer th",
    });
  });

  it("is a fault each time that the same list is read", () => {
    const tools = [JUG, { ...JUG, name: "JUG " }];
    for (let times = 0; times < 2; times++)
      expect(refusal(() => measure({ tools })).issues.map(({ key }) => key)).toEqual(["tool-names-alike"]);
  });

  it("is none where names differ in a letter", () => {
    expect(
      measure({
        tools: [
          { ...JUG, name: "Maß" },
          { ...JUG, name: "MASS" },
        ],
      }),
    ).toHaveProperty("ok");
  });

  it("may be left out as null", () => {
    const left = { limitPercent: null, maxScoops: null, perArea: null, labelPermitsDilution: null };
    expect(measure(left)).toEqual(measure({}));
    expect(tool({ graduation: null, least: null })).toEqual(tool({}));
  });
});
