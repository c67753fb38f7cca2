import { describe, expect, it } from "vitest";
import { groundArea, rowBandsArea, treatedArea } from "../../src/area/index.ts";
import { measureOut, suggestMeasures, toolSet } from "../../src/household/index.ts";
import {
  type CalibrationConditions,
  calibrationRecord,
  ratePerPlant,
  solveOutput,
  stripRate,
  stripRuns,
  timePerPlant,
  whatChanged,
} from "../../src/output-rate/index.ts";
import { type PlanInput, planApplication, type WarningCode } from "../../src/plan/index.ts";
import {
  carrierFor,
  concentrateSpray,
  injectorStock,
  leftoverArea,
  productAmount,
  splitLoads,
  strengthOf,
} from "../../src/tank-mix/index.ts";
import { convert, parseQuantity, qty, valueIn } from "../../src/units/index.ts";
import { QUIET as JOB, STRIP } from "../helpers/jobs.ts";
import { expectRefused } from "../helpers/refusal.ts";

// The mistakes that people in the field make with sprayer arithmetic. Each test makes one, and sees it stopped. Where the
// compiler stops it first, tests/types has the line that does not compile, and `as never` gets past it here.

function warned(change: Partial<PlanInput>): WarningCode[] {
  return planApplication({ ...JOB, ...change }).warnings.map(({ code }) => code);
}

describe("an inverted ratio", () => {
  it("is refused, since area per volume is no rate of any kind", () => {
    expectRefused(() => qty(43560, "ft2/gal" as never), "unknown-unit", "unit");
    const area = treatedArea(qty(1, "ac"));
    expectRefused(
      () => carrierFor({ rate: { value: 0.05, unit: "ac/gal" } as never, area }),
      "unknown-unit",
      "rate.unit",
    );
  });

  it("cannot be made by swapping arguments, for every argument has a name and a dimension", () => {
    const rate = qty(20, "gal/ac");
    const volume = qty(2, "gal");
    expectRefused(() => leftoverArea({ volume: rate, rate: volume } as never), "wrong-dimension", "volume");
    expectRefused(
      () => solveOutput({ flow: qty(3, "mph"), speed: qty(0.4, "gal/min"), width: qty(20, "in") } as never),
      "wrong-dimension",
      "flow",
    );
  });

  it("of dilution is refused: mixing cannot make a stronger mix out of a weaker one", () => {
    expectRefused(
      () =>
        productAmount({
          rate: qty(20, "gal/ac"),
          form: "liquid",
          carrier: qty(10, "gal"),
          carrierRate: qty(2, "gal/ac"),
        }),
      "conflict",
      "rate",
    );
  });
});

describe("ground area where the label means treated area", () => {
  const field = groundArea(qty(1, "ac"));

  it("is refused by everything that multiplies an area by a rate", () => {
    expectRefused(
      () => carrierFor({ rate: qty(20, "gal/ac"), area: field as never }),
      "wrong-area",
      "area",
      "ground",
    );
    expectRefused(
      () =>
        productAmount({
          rate: { rate: qty(1, "oz/ac"), per: "ground" },
          form: "dry",
          ground: treatedArea(qty(1, "ac")) as never,
          area: treatedArea(qty(1, "ac")),
          carrier: qty(10, "gal"),
          carrierRate: qty(20, "gal/ac"),
        }),
      "wrong-area",
      "ground",
    );
  });

  it("is refused where it does not say which of the two it is", () => {
    expectRefused(
      () => carrierFor({ rate: qty(20, "gal/ac"), area: qty(1, "ac") as never }),
      "wrong-area",
      "area",
    );
  });

  it("is questioned where a plan is calibrated on a band, speaks of rows and treats all of the ground", () => {
    const band = { ...STRIP, swath: qty(30, "in") };
    const sprayer = { tank: qty(4, "gal"), rowsPerPass: 2 };
    expect(warned({ calibration: band, sprayer })).toContain("all-ground-treated");
  });

  it("does not happen to bands: a plan orders for the bands and not for the ground between", () => {
    const bands = { rows: 10, rowLength: qty(100, "ft"), bandWidth: qty(1, "ft"), rowSpacing: qty(4, "ft") };
    expect(rowBandsArea(bands).treated).toEqual({ value: 1000, unit: "ft2", of: "treated" });
    expect(planApplication({ ...JOB, plot: { kind: "row-bands", ...bands } }).area).toMatchObject({
      treated: { value: 1000 },
      ground: { value: 4000 },
      fraction: 0.25,
    });
  });
});

describe("fluid ounces for ounces of weight", () => {
  it("are refused for one another, with the difference named", () => {
    expectRefused(() => convert(qty(5, "oz"), "fl_oz" as never), "wrong-dimension", "to");
    expectRefused(() => stripRate({ ...STRIP, used: qty(5, "kPa") as never }), "wrong-dimension", "used");
    expectRefused(
      () => measureOut({ amount: qty(5, "oz"), tools: "us-spoons", rule: "never-over" }),
      "wrong-dimension",
      "tools",
    );
    expectRefused(
      () =>
        planApplication({
          ...JOB,
          // @ts-expect-error: it doesn't compile, and plain JavaScript is refused
          products: [{ name: "Product A", form: "liquid", rate: qty(12, "oz/ac") }],
        }),
      "wrong-dimension",
      "products[0].rate",
      "fl oz or oz",
    );
    expectRefused(
      () =>
        planApplication({
          ...JOB,
          // @ts-expect-error
          products: [{ name: "Product B", form: "dry", rate: qty(12, "fl_oz/ac") }],
        }),
      "wrong-dimension",
      "products[0].rate",
      "fl oz or oz",
    );
  });

  it("are not guessed from a bare oz that somebody typed", () => {
    expectRefused(() => parseQuantity("12 oz"), "ambiguous-unit", "text");
  });

  it("are pointed out where a product has ounces in its name", () => {
    expect(
      warned({ products: [{ name: "Product A, 12 oz", form: "liquid", rate: qty(2, "pt/ac") }] }),
    ).toContain("ounces-confusable");
  });
});

describe("US for imperial gallons", () => {
  it("are two units, a fifth apart, and a rate per imperial gallon stays one", () => {
    expect(valueIn(qty(1, "imp_gal"), "gal")).toBeCloseTo(1.20095, 5);
    expect(carrierFor({ rate: qty(20, "imp_gal/ac"), area: treatedArea(qty(1, "ac")) }).total).toEqual(
      qty(20, "imp_gal"),
    );
    expect(carrierFor({ rate: qty(20, "gal/ac"), area: treatedArea(qty(1, "ac")) }).total).toEqual(
      qty(20, "gal"),
    );
  });

  it("are told apart by who typed them, never by a silent default in a number", () => {
    expectRefused(() => qty(20, undefined as never), "missing", "unit");
    expect(parseQuantity("20 gal", { system: "imperial" })).toEqual(qty(20, "imp_gal"));
    expect(parseQuantity("20 gal", { system: "us" })).toEqual(qty(20, "gal"));
  });
});

describe("US for metric or Australian spoons", () => {
  it("are units of their own: 14.79, 15 and 20 mL", () => {
    const mL = (unit: "tbsp" | "metric_tbsp" | "au_tbsp") => valueIn(qty(1, unit), "mL");
    expect([mL("tbsp"), mL("metric_tbsp"), mL("au_tbsp")]).toEqual([14.78676478125, 15, 20]);
  });

  it("each measure a dose of their own, and an Australian tablespoon never stands for a US one", () => {
    const spoons = (tools: "us-spoons" | "metric-spoons" | "australian-spoons") => {
      const dose = measureOut({ amount: qty(60, "mL"), tools, rule: "never-over" });
      if (!dose.ok) throw new Error("not measurable");
      return dose.parts.map(({ amount }) => `${amount.value} ${amount.unit}`).join(", ");
    };
    expect(new Set([spoons("us-spoons"), spoons("metric-spoons"), spoons("australian-spoons")]).size).toBe(3);
    const units = (name: "us-spoons" | "australian-spoons") =>
      toolSet(name).map(({ capacity }) => capacity.unit);
    expect(units("us-spoons")).not.toContain("au_tbsp");
    expect(units("australian-spoons")).not.toContain("tbsp");
  });
});

describe("extra water with no extra product", () => {
  it("cannot be asked of a plan: reserve and lines are mixed at full strength", () => {
    const plain = planApplication(JOB);
    const more = planApplication({
      ...JOB,
      reserve: { percent: 10 },
      sprayer: { tank: qty(8, "gal"), lineVolume: qty(20, "fl_oz") },
    });
    expect(more.totals.carrier.value).toBeGreaterThan(plain.totals.carrier.value);
    expect(more.totals.products[0]?.strength.value).toBeCloseTo(
      plain.totals.products[0]?.strength.value as number,
      12,
    );
  });

  it("is told as what it is where it is meant: a weak mix", () => {
    expect(warned({ addedWater: qty(1, "gal") })).toContain("water-without-product");
    const weak = strengthOf({ mix: qty(9, "gal"), addedWater: qty(1, "gal"), product: qty(18, "fl_oz") });
    expect(weak).toMatchObject({
      strength: { value: 90 },
      weakBy: { value: 10 },
      lacking: { value: 2, unit: "fl_oz" },
    });
  });
});

describe("an empty boom at the start of the test run", () => {
  const run = (ounces: number) => ({
    used: qty(ounces, "fl_oz"),
    swath: STRIP.swath,
    distance: STRIP.distance,
  });

  it("stands out among several runs: the first took what filled the lines", () => {
    expect(stripRuns({ runs: [run(74), run(64), run(64)] }).standsOut).toBe(0);
    const { warnings } = planApplication({
      ...JOB,
      calibration: { kind: "strip-runs", runs: [run(74), run(64), run(64)] },
    });
    expect(warnings.map(({ message }) => message).join()).toContain("hose and boom started empty");
  });

  it("is asked about where a single strip cannot tell, and cautioned against on every plan", () => {
    expect(warned({ sprayer: { tank: qty(4, "gal"), lineVolume: qty(10, "fl_oz") } })).toContain(
      "lines-uncharged",
    );
    const { message = "" } = planApplication(JOB).cautions.find(({ code }) => code === "clean-water") ?? {};
    expect(message).toContain("Fill the hose and boom first");
  });
});

describe("one big rounding at the spoon", () => {
  it("does not happen on the way: the dose that is measured is the unrounded one", () => {
    const { loads, totals } = planApplication({
      ...JOB,
      products: [{ ...JOB.products[0], rate: qty(1.3, "pt/ac") } as never],
    });
    expect(loads[0]?.products[0]?.amount).toEqual(totals.products[0]?.amount);
    expect(totals.products[0]?.amount.value).toBeCloseTo((1.3 * 16 * 5400) / 43560, 9);
  });

  it("does not take a dose over the label: 1.6 tablespoons are not measured as 2", () => {
    const dose = measureOut({ amount: qty(1.6, "tbsp"), tools: "us-spoons", rule: "never-over" });
    if (!dose.ok) throw new Error("not measurable");
    expect(valueIn(dose.measured, "tbsp")).toBeLessThanOrEqual(1.6);
    expect(dose.errorPercent).toBeLessThanOrEqual(0);
    expect(dose.errorPercent).toBeGreaterThan(-5);
  });

  it("is refused where the tools are too coarse, and what would do is suggested", () => {
    const tablespoon = [{ name: "tablespoon", capacity: qty(1, "tbsp") }];
    const input = { amount: qty(1.6, "tbsp"), tools: tablespoon, rule: "never-over" } as const;
    const dose = measureOut(input);
    expect(dose.ok).toBe(false);
    if (dose.ok) return;
    expect(dose.best?.measured).toEqual(qty(1, "tbsp"));
    expect(suggestMeasures(input).length).toBeGreaterThan(0);
    expect(warned({ tools: tablespoon })).toContain("dose-not-measurable");
  });
});

describe("a calibration used after something changed", () => {
  const CONDITIONS: CalibrationConditions = {
    operator: "Sam",
    nozzle: "flat fan 02",
    pressure: qty(30, "psi"),
    speed: qty(3, "mph"),
    ground: "mown grass",
  };
  const { kind: _, ...measured } = STRIP;
  const record = calibrationRecord({
    date: "2026-05-04",
    measurement: { kind: "strip", ...measured },
    conditions: CONDITIONS,
  });
  const on = (conditions: CalibrationConditions) => ({ date: "2026-05-11", conditions });

  it.each([
    ["operator", "Ana"],
    ["nozzle", "flat fan 03"],
    ["pressure", qty(40, "psi")],
    ["speed", qty(2.5, "mph")],
    ["ground", "ploughed"],
  ] as const)("is found stale for another %s, and the plan says so", (what, now) => {
    const today = on({ ...CONDITIONS, [what]: now });
    const { stale, changes } = whatChanged(record, today);
    expect([stale, changes.map((change) => change.what)]).toEqual([true, [what]]);
    expect(warned({ calibration: { kind: "record", record }, today })).toContain("calibration-stale");
  });

  it("is taken where nothing has changed, however the same thing is told", () => {
    const today = on({ ...CONDITIONS, speed: qty(4.828032, "km/h") });
    expect(whatChanged(record, today).stale).toBe(false);
    expect(warned({ calibration: { kind: "record", record }, today })).not.toContain("calibration-stale");
  });
});

describe("a tank count one too high by floating-point noise", () => {
  it("does not happen: 3 tanks of 1.1 are 3.3000000000000003, and take 3 loads", () => {
    expect(1.1 * 3).toBeGreaterThan(3.3);
    const { loads } = splitLoads({
      total: qty(1.1 * 3, "gal"),
      tank: qty(1.1, "gal"),
      split: "full-then-part",
    });
    expect(loads.map(({ carrier }) => carrier.value)).toEqual([1.1, 1.1, 1.1]);
  });

  it("does not happen in a whole plan: 10 tanks of a tenth of the mix are 10 loads", () => {
    for (const tenths of [0.1, 0.7, 1.3, 2.9]) {
      // A strip of 1/20 acre, 12.1 gal/ac, and ten tenths of an acre.
      const plan = planApplication({
        ...JOB,
        plot: { kind: "treated-area", treated: treatedArea(qty(tenths, "ac")) },
        calibration: { kind: "known", rate: qty(12.1, "gal/ac") },
        sprayer: { tank: qty((12.1 * tenths) / 10, "gal") },
      });
      expect(plan.loads.length).toBe(10);
    }
  });
});

describe("a dilute rate for a concentrate one", () => {
  const dilute = qty(200, "gal/ac");
  const product = { rate: qty(6, "fl_oz/100gal"), form: "liquid" } as const;

  it("is refused where the two are swapped, for the mix would be weaker than the label's", () => {
    expectRefused(
      () => concentrateSpray({ dilute: qty(50, "gal/ac"), concentrate: dilute, product }),
      "conflict",
      "concentrate",
    );
  });

  it("does not change the product per area, and shows both strengths beside one another", () => {
    const spray = concentrateSpray({ dilute, factor: 4, product });
    const strength = (given = spray.strength): number => given?.value ?? Number.NaN;
    const perArea = spray.perArea?.value ?? Number.NaN;
    expect(strength() * spray.concentrate.value).toBeCloseTo(perArea, 12);
    // The two slips: a quarter of the rate, and four times it.
    expect(strength(spray.diluteStrength) * spray.concentrate.value).toBeCloseTo(perArea / 4, 12);
    expect(strength() * dilute.value).toBeCloseTo(perArea * 4, 12);
  });
});

describe("1:100 for 1 %", () => {
  const job = { form: "liquid", carrier: qty(101, "L") } as const;
  const ratio = (of: "mix" | "water") =>
    productAmount({ ...job, rate: { parts: 1, to: 100, of } }).amount.value;

  it("is the same of mix, a hundredth less of water, and refused where it does not say of which", () => {
    const percent = productAmount({ ...job, rate: { value: 1, unit: "%", basis: "v/v" } }).amount.value;
    expect(ratio("mix")).toBeCloseTo(percent, 9);
    expect(ratio("water")).toBeCloseTo(1000, 9);
    expectRefused(
      () => productAmount({ ...job, rate: { parts: 1, to: 100 } as never }),
      "missing",
      "rate.of",
    );
  });

  it("is no setting of an injector for a finished 1 %: the stock would be all product", () => {
    const rate = { value: 1, unit: "%", basis: "v/v" } as const;
    const run = { rate, form: "liquid", finished: qty(100, "L") } as const;
    for (const of of ["mix", "water"] as const)
      expectRefused(() => injectorStock({ ...run, ratio: { parts: 1, to: 100, of } }), "conflict", "rate");
    expect(injectorStock({ ...run, ratio: { parts: 1, to: 50, of: "mix" } }).strength).toEqual(
      qty(500, "mL/L"),
    );
  });
});

describe("per plant for per gallon", () => {
  it("is refused, since a volume for each plant is no strength and no rate per area", () => {
    const flow = qty(2, "L/min");
    expectRefused(() => timePerPlant({ flow, each: qty(5, "mL/L") as never }), "wrong-dimension", "each");
    const trees = { rowSpacing: qty(5, "m"), plantSpacing: qty(4, "m") };
    expectRefused(() => ratePerPlant({ rate: qty(5, "mL/L") as never, ...trees }), "wrong-dimension", "rate");
    expectRefused(() => ratePerPlant({ rate: qty(5, "L") as never, ...trees }), "wrong-dimension", "rate");
  });
});
