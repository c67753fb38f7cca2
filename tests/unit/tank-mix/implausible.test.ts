import { describe, expect, it } from "vitest";
import { BULK_DENSITY } from "../../../src/tank-mix/content.ts";
import {
  activeIngredientRate,
  checkLabel,
  type LabelRate,
  mixLoads,
  type ProductForm,
  productAmount,
  productRate,
} from "../../../src/tank-mix/index.ts";
import { unusualFindingsOf } from "../../../src/tank-mix/unusual.ts";
import { checked } from "../../../src/units/check.ts";
import { type Density, qty, type VolumeRate } from "../../../src/units/index.ts";
import { expectRefused, expectSayable } from "../../helpers/refusal.ts";

const US = { carrier: qty(4, "gal"), carrierRate: qty(20, "gal/ac") } as const;
const IMPERIAL = { carrier: qty(3, "imp_gal"), carrierRate: qty(20, "imp_gal/ac") } as const;
const METRIC = { carrier: qty(15, "L"), carrierRate: qty(200, "L/ha") } as const;
type Job = { readonly carrier: typeof US.carrier | typeof IMPERIAL.carrier | typeof METRIC.carrier } & {
  readonly carrierRate: VolumeRate;
};

const amountOf = (rate: LabelRate, form: ProductForm, job: Job) => productAmount({ rate, form, ...job });
const questions = (rate: LabelRate, form: ProductForm, job: Job, bulkDensity?: Density) =>
  unusualFindingsOf({
    rate,
    strength: amountOf(rate, form, job).strength,
    ...(bulkDensity && { bulkDensity }),
  }).map((finding) => {
    expectSayable(finding);
    expect(finding.severity).toBe("warning");
    expect(finding.message).toMatch(/ is unusual\. | rarely ask for more than /);
    return `${finding.key} ${finding.path}`;
  });
const percent = (value: number, basis: "v/v" | "w/v") => ({ value, unit: "%", basis }) as const;

describe("a mix that can't be mixed", () => {
  it.each<[string, LabelRate, ProductForm, Job, string]>([
    ["all product", percent(100, "v/v"), "liquid", METRIC, "no room for water"],
    ["as much product as the sprayer puts out", qty(20, "gal/ac"), "liquid", US, "no room for water"],
    [
      "pints for fluid ounces, ten times over",
      qty(160, "imp_pt/ac"),
      "liquid",
      IMPERIAL,
      "no room for water",
    ],
    ["500 % of a powder", percent(500, "w/v"), "dry", METRIC, "more than can be mixed in"],
    ["8 oz on a square foot", qty(8, "oz/ft2"), "dry", US, "more than can be mixed in"],
    ["pounds for ounces", qty(250, "lb/ac"), "dry", IMPERIAL, "more than can be mixed in"],
  ])("is refused: %s", (_, rate, form, job, words) => {
    expectRefused(() => amountOf(rate, form, job), "conflict", "rate", words);
  });

  it("is refused at the limit and not below it", () => {
    expect(amountOf(percent(99, "v/v"), "liquid", METRIC).amount).toEqual(qty(14_850, "mL"));
    expect(amountOf(percent(100, "w/v"), "dry", METRIC).amount).toEqual(qty(15_000, "g"));
    expectRefused(() => amountOf(percent(100.1, "w/v"), "dry", METRIC), "conflict", "rate");
  });

  it("is refused where several products together leave no water", () => {
    const loads = [{ carrier: qty(2, "gal") }];
    expectRefused(
      () => mixLoads({ loads, amounts: [qty(1, "gal"), qty(4, "qt")] }),
      "conflict",
      "amounts",
      "no room for water",
    );
    expect(mixLoads({ loads, amounts: [qty(1, "gal"), qty(3, "qt")] }).loads[0]?.water).toEqual(
      qty(0.25, "gal"),
    );
  });
});

describe("a strength far from what labels ask", () => {
  it.each<[string, LabelRate, ProductForm, Job, string]>([
    ["20 % in a backpack", percent(20, "v/v"), "liquid", METRIC, "strength-unusual rate"],
    ["gallons for quarts", qty(2.5, "gal/ac"), "liquid", US, "strength-unusual rate"],
    [
      "an imperial quart to 2 gallons",
      qty(0.5, "imp_qt/imp_gal"),
      "liquid",
      IMPERIAL,
      "strength-unusual rate",
    ],
    ["a ratio of 1 to 4 of water", { parts: 1, to: 4, of: "water" }, "liquid", US, "strength-unusual rate"],
    ["50 kg of powder to the hectare", qty(50, "kg/ha"), "dry", METRIC, "strength-unusual-dry rate"],
    ["2 lb to the gallon", qty(2, "lb/gal"), "dry", US, "strength-unusual-dry rate"],
    ["20 % of a powder", percent(20, "w/v"), "dry", IMPERIAL, "strength-unusual-dry rate"],
    ["14 oz to the gallon", qty(14, "oz/gal"), "dry", US, "strength-unusual-dry rate"],
  ])("is questioned: %s", (_, rate, form, job, question) => {
    expect(questions(rate, form, job)).toEqual([question]);
  });

  it.each<[string, LabelRate, ProductForm, Job]>([
    ["10 % itself", percent(10, "v/v"), "liquid", METRIC],
    ["2 quarts to the acre", qty(2, "qt/ac"), "liquid", US],
    ["5 % in imperial measure", percent(5, "v/v"), "liquid", IMPERIAL],
    ["10 % of a powder itself", percent(10, "w/v"), "dry", METRIC],
    ["13 oz to the gallon", qty(13, "oz/gal"), "dry", US],
    ["5 lb to the acre", qty(5, "lb/ac"), "dry", US],
    ["2 kg to the hectare", qty(2, "kg/ha"), "dry", METRIC],
  ])("is not questioned: %s", (_, rate, form, job) => {
    expect(questions(rate, form, job)).toEqual([]);
  });

  it("is said with the share of the mix, in the words of the product's form", () => {
    const said = (rate: LabelRate, form: ProductForm, job: Job) =>
      unusualFindingsOf({ rate, strength: amountOf(rate, form, job).strength })[0];
    const third = said({ parts: 1, to: 3, of: "mix" }, "liquid", US);
    expect(third).toMatchObject({ code: "strength-unusual", severity: "warning", path: "rate" });
    expect(third?.message).toBe(
      "The mix is 33.3% product, and labels rarely ask for more than 10%. Check the label rate, its unit and the output rate.",
    );
    expect(said(qty(2, "lb/gal"), "dry", US)?.message).toBe(
      "The mix takes 32 oz wt/gal of product, and labels rarely ask for more than 13.4 oz wt/gal. Check the label rate, its unit and the output rate.",
    );
  });

  it("is questioned by checkLabel too, after the label's own limits, at the chosen rate of a range", () => {
    const range = { low: qty(1, "gal/ac"), high: qty(2, "gal/ac"), chosen: qty(3, "gal/ac") };
    const found = checkLabel({ rate: range, form: "liquid", carrierRate: qty(20, "gal/ac"), label: {} });
    expect(found.map(({ code, path }) => [code, path])).toEqual([
      ["rate-over-max", "rate"],
      ["strength-unusual", "rate.chosen"],
    ]);
  });
});

describe("what a product weighs and contains", () => {
  const ai = qty(0.5, "lb/ac");
  const half = percent(50, "w/v");
  const byWeight = { value: 40, unit: "%", basis: "w/w" } as const;

  it.each<[string, object, string, string]>([
    ["480 kg/L of active ingredient", { contains: qty(480, "kg/L") }, "contains", "can't contain 480 kg/L"],
    ["4 lb to the fluid ounce", { contains: qty(4, "lb/fl_oz") }, "contains", "more than it weighs"],
    [
      "a density of 1.1 g/L",
      { contains: byWeight, density: qty(1.1, "g/L") },
      "density",
      "600 g/L and 2,500 g/L",
    ],
    [
      "a density of 9 lb/ft3",
      { contains: byWeight, density: qty(9, "lb/ft3") },
      "density",
      "No product weighs",
    ],
    [
      "a density of 9 oz/imp_gal",
      { contains: byWeight, density: qty(9, "oz/imp_gal") },
      "density",
      "check the unit",
    ],
    [
      "more in it than it weighs",
      { contains: qty(1.2, "kg/L"), density: qty(1.1, "kg/L") },
      "contains",
      "more than it weighs",
    ],
    [
      "more in it than it weighs, in pounds to the imperial gallon",
      { contains: qty(11, "lb/imp_gal"), density: qty(10, "lb/imp_gal") },
      "contains",
      "can't contain 11 lb/imp gal",
    ],
    ["300 % w/v", { contains: { ...half, value: 300 } }, "contains", "more than it weighs"],
  ])("is refused where no product has it: %s", (_, change, path, words) => {
    expectRefused(
      () => productRate({ activeIngredient: ai, contains: half, form: "liquid", ...change }),
      "out-of-range",
      path,
      words,
    );
    expectRefused(
      () => activeIngredientRate({ product: qty(1, "pt/ac"), contains: half, ...change }),
      "out-of-range",
      path,
      words,
    );
    const rate = { activeIngredient: ai, contains: half, ...change };
    expectRefused(() => amountOf(rate, "liquid", US), "out-of-range", `rate.${path}`, words);
  });

  it.each<[string, object, string[]]>([
    ["1.7 kg/L", { contains: byWeight, density: qty(1.7, "kg/L") }, ["density-unusual rate.density"]],
    ["6 lb/gal", { contains: byWeight, density: qty(6, "lb/gal") }, ["density-unusual rate.density"]],
    ["4 lb in a liter", { contains: qty(4, "lb/L") }, ["content-unusual rate.contains"]],
    ["1,400 g/L", { contains: qty(1400, "g/L") }, ["content-unusual rate.contains"]],
    ["4 lb/gal", { contains: qty(4, "lb/gal") }, []],
    ["480 g/L", { contains: qty(480, "g/L") }, []],
    ["48 % w/v", { contains: percent(48, "w/v") }, []],
    ["5 lb/imp_gal", { contains: qty(5, "lb/imp_gal") }, []],
    ["40 % of 10 lb/imp_gal", { contains: byWeight, density: qty(10, "lb/imp_gal") }, []],
  ])("is questioned at the edge: %s", (_, content, expected) => {
    const rate = { activeIngredient: ai, contains: half, ...content };
    expect(questions(rate, "liquid", US)).toEqual(expected);
  });

  const bulk = (bulkDensity: Density) => checked(bulkDensity, BULK_DENSITY, "bulkDensity");
  const asked = (bulkDensity: Density) => questions(qty(1, "lb/ac"), "dry", US, bulkDensity);

  it("refuses a bulk density that no dry product has", () => {
    expectRefused(
      () => bulk(qty(5, "lb/ft3")),
      "out-of-range",
      "bulkDensity",
      "No product weighs 5 lb/cu ft. It is between 6.24 lb/cu ft and 156 lb/cu ft: check the unit.",
    );
    for (const wrong of [qty(600, "kg/L"), qty(0.5, "lb/imp_gal")])
      expectRefused(() => bulk(wrong), "out-of-range", "bulkDensity", "check the unit");
    for (const possible of [qty(5, "lb/gal"), qty(6, "lb/imp_gal"), qty(0.6, "kg/L")])
      expect(bulk(possible)).toEqual(possible);
  });

  it("questions a bulk density at the edge", () => {
    const question = ["bulk-density-unusual bulkDensity"];
    for (const odd of [qty(1.6, "lb/gal"), qty(16, "lb/imp_gal"), qty(0.2, "kg/L"), qty(1600, "g/L")])
      expect(asked(odd)).toEqual(question);
    for (const usual of [qty(5, "lb/gal"), qty(12, "lb/imp_gal"), qty(0.6, "kg/L"), qty(35, "lb/ft3")])
      expect(asked(usual)).toEqual([]);
  });
});

describe("fields of one object that contradict each other", () => {
  const plain = { value: 2, unit: "L/ha" };
  it.each<[string, unknown, string]>([
    ["a rate beside a rate per area", { ...plain, rate: qty(20, "L/ha"), per: "treated" }, "rate.rate"],
    ["a rate beside which area alone", { ...plain, per: "ground" }, "rate.per"],
    ["a rate beside a ratio", { ...plain, parts: 1, to: 50, of: "mix" }, "rate.parts"],
    ["a rate beside active ingredient", { ...plain, contains: qty(480, "g/L") }, "rate.contains"],
    ["a rate beside a range", { ...plain, high: plain }, "rate.high"],
    [
      "a ratio beside a rate per area",
      { parts: 1, to: 50, of: "mix", rate: plain, per: "treated" },
      "rate.rate",
    ],
  ])("are refused: %s", (_, rate, path) => {
    expectRefused(() => amountOf(rate as never, "liquid", METRIC), "conflict", path, "not both");
  });

  it("are refused in what a season has had", () => {
    const input = { rate: qty(1, "L/ha"), form: "liquid", carrierRate: qty(200, "L/ha"), label: {} } as const;
    const soFar = { applications: 0, rate: qty(2, "L/ha") };
    expectRefused(() => checkLabel({ ...input, soFar }), "conflict", "soFar.rate", "0 applications");
    for (const agreeing of [
      { applications: 0, rate: qty(0, "L/ha") },
      { applications: 1, rate: qty(2, "L/ha") },
      { rate: qty(2, "L/ha") },
    ])
      expect(checkLabel({ ...input, soFar: agreeing })).toEqual([]);
    const ai = { activeIngredient: qty(1, "kg/ha"), contains: qty(480, "g/L") };
    expectRefused(
      () => checkLabel({ ...input, soFar: { applications: 0, rate: ai } }),
      "conflict",
      "soFar.rate",
    );
  });
});
