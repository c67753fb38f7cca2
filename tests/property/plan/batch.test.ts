import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type BatchInput, type BatchPlan, planApplication, reconcile } from "../../../src/plan/index.ts";
import { convert, type Quantity, qty, type Unit } from "../../../src/units/index.ts";
import { exactSize } from "../../helpers/definitions.ts";
import { expectExact, keepWorstErrors } from "../../helpers/exactness.ts";
import { Rational } from "../../helpers/rational.ts";
import { runs } from "../../helpers/runs.ts";

keepWorstErrors("plan-batch");

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** A job as numbers, so that it can be put into any units. */
const job = fc.record({
  kind: fc.constantFrom("volume" as const, "count" as const, "row-length" as const),
  count: fc.integer({ min: 1, max: 500 }),
  each: between(1, 20),
  volume: between(0.5, 40),
  row: between(50, 2000),
  perRow: between(1, 20),
  tank: between(1, 30),
  percent: between(0, 15),
  equal: fc.boolean(),
  liquid: between(0.05, 4),
  own: between(0.005, 0.5),
});
type Job = typeof job extends fc.Arbitrary<infer T> ? T : never;

type Put = (value: number, unit: Unit) => Quantity;

const sizeOf = ({ kind, count, each, volume, row, perRow }: Job, put: Put): object =>
  ({
    volume: { kind, volume: put(volume, "gal") },
    count: { kind, count: qty(count, "pot"), each: put(each, "fl_oz") },
    "row-length": { kind, length: put(row, "ft"), rate: put(perRow, "gal/1000ft") },
  })[kind];

/** A rate of the kind that the job is sized by. */
const ownRate = ({ kind, own }: Job, put: Put): Quantity =>
  ({
    volume: put(own, "oz/gal"),
    count: put(own, "oz/pot"),
    "row-length": put(own, "oz/100ft"),
  })[kind];

const inputOf = (j: Job, put: Put): BatchInput =>
  ({
    size: sizeOf(j, put),
    sprayer: { tank: put(j.tank, "gal") },
    reserve: { percent: j.percent },
    split: j.equal ? "equal" : "full-then-part",
    products: [
      { name: "Product A", form: "liquid", rate: put(j.liquid, "fl_oz/gal") },
      { name: "Product B", form: "dry", rate: ownRate(j, put) },
    ],
    tools: "us-spoons",
  }) as unknown as BatchInput;

const asGiven: Put = (value, unit) => ({ value, unit });
const OTHER: Readonly<Record<"metric" | "imperial", Readonly<Record<string, Unit>>>> = {
  metric: {
    ft: "m",
    gal: "L",
    fl_oz: "mL",
    "gal/1000ft": "L/100m",
    "fl_oz/gal": "mL/L",
    "oz/gal": "g/L",
    "oz/pot": "g/pot",
    "oz/100ft": "g/m",
  },
  imperial: {
    ft: "yd",
    gal: "imp_gal",
    fl_oz: "imp_fl_oz",
    "gal/1000ft": "imp_gal/1000ft",
    "fl_oz/gal": "imp_fl_oz/imp_gal",
    "oz/gal": "oz/imp_gal",
    "oz/pot": "oz/pot",
    "oz/100ft": "oz/100ft",
  },
};

const exact = ({ value, unit }: Quantity): Rational => Rational.fromNumber(value).times(exactSize(unit));
/** The digits of a decimal as a whole number of its last places: exact addition of what is printed. */
const digits = (value: number): Rational => {
  const [mantissa = "0", exponent = "0"] = value.toExponential().split("e");
  const places = mantissa.replace(".", "").length - 1 - Number(exponent);
  const whole = Rational.of(BigInt(mantissa.replace(".", "")));
  const ten = Rational.of(10n ** BigInt(Math.abs(places)));
  return places >= 0 ? whole.over(ten) : whole.times(ten);
};
const sum = (values: readonly number[]): Rational =>
  values.map(digits).reduce((total, one) => total.plus(one), Rational.of(0));

const RUNS = runs(200);

describe("a job by volume, count or row", () => {
  it("mixes at the label's strength, within 8 ulp of the exact one", () => {
    fc.assert(
      fc.property(job, (j) => {
        const input = inputOf(j, asGiven);
        const plan = planApplication(input);
        const [byMix, bySize] = plan.totals.products;
        const check = (name: string, ours: Quantity | undefined, right: Rational): void => {
          const { value, unit } = ours as Quantity;
          expectExact(name, value, right.over(exactSize(unit)));
        };
        const [a, b] = input.products as unknown as readonly { readonly rate: Quantity }[];
        check("planApplication by size, strength", byMix?.strength, exact((a as { rate: Quantity }).rate));
        const carrier = {
          volume: Rational.of(1),
          count: exact(asGiven(j.each, "fl_oz")),
          "row-length": exact(asGiven(j.perRow, "gal/1000ft")),
        }[j.kind];
        check(
          "planApplication by size, strength by its rate",
          bySize?.strength,
          exact((b as { rate: Quantity }).rate).over(carrier),
        );
      }),
      RUNS,
    );
  });

  it("makes the loads' mix and doses add up to the totals exactly as printed", () => {
    fc.assert(
      fc.property(job, (j) => {
        const { loads, totals, carrier } = planApplication(inputOf(j, asGiven));
        expect(sum(loads.map((load) => load.carrier.value))).toEqual(digits(totals.carrier.value));
        expect(totals.carrier.value / carrier.total.value).toBeCloseTo(1, 10);
        for (const [k, { amount }] of totals.products.entries())
          expect(sum(loads.map((load) => load.products[k]?.amount.value as number))).toEqual(
            digits(amount.value),
          );
        for (const load of loads) expect(load.carrier.value).toBeLessThanOrEqual(j.tank * (1 + 1e-11));
      }),
      RUNS,
    );
  });

  it("covers the whole size with its loads, and no more", () => {
    fc.assert(
      fc.property(job, (j) => {
        const { loads } = planApplication({ ...inputOf(j, asGiven), reserve: undefined });
        const covered = (of: "count" | "rowLength") =>
          loads.reduce((total, load) => total + (load[of]?.value ?? 0), 0);
        if (j.kind === "count") expect(covered("count") / j.count).toBeCloseTo(1, 10);
        if (j.kind === "row-length") expect(covered("rowLength") / j.row).toBeCloseTo(1, 10);
      }),
      RUNS,
    );
  });

  it("gives each load whole plants, and all of them", () => {
    fc.assert(
      fc.property(
        job.filter(({ each, tank }) => each / 128 <= tank),
        (j) => {
          const input = {
            ...inputOf({ ...j, kind: "count", percent: 0 }, asGiven),
            split: "whole-plants" as const,
          };
          const { loads } = planApplication(input);
          const pieces = loads.map((load) => load.pieces as number);
          for (const one of pieces) expect(Number.isInteger(one) && one > 0).toBe(true);
          expect(pieces.reduce((total, one) => total + one, 0)).toBe(j.count);
        },
      ),
      RUNS,
    );
  });

  it("takes twice as much of everything for twice the size", () => {
    fc.assert(
      fc.property(job, (j) => {
        const amounts = ({ carrier, totals }: BatchPlan): readonly number[] => [
          carrier.total.value,
          ...totals.products.map(({ amount }) => amount.value),
        ];
        const once = amounts(planApplication(inputOf(j, asGiven)));
        const twice = planApplication(
          inputOf({ ...j, count: 2 * j.count, volume: 2 * j.volume, row: 2 * j.row }, asGiven),
        );
        for (const [i, one] of amounts(twice).entries()) expect(one / (once[i] as number)).toBeCloseTo(2, 9);
      }),
      RUNS,
    );
  });

  it.each(["metric", "imperial"] as const)("is the same job in %s units", (system) => {
    fc.assert(
      fc.property(job, (j) => {
        const put: Put = (value, unit) =>
          convert({ value, unit } as Quantity<"L">, OTHER[system][unit] as "L");
        const ours = planApplication(inputOf(j, asGiven));
        const theirs = planApplication(inputOf(j, put));
        expect(theirs.loads).toHaveLength(ours.loads.length);
        for (const [k, { amount }] of ours.totals.products.entries()) {
          const other = theirs.totals.products[k]?.amount as Quantity<"L">;
          expect(convert(other, amount.unit as "L").value / amount.value).toBeCloseTo(1, 9);
        }
      }),
      RUNS,
    );
  });

  it("is what the plan says where all of its mix is used", () => {
    fc.assert(
      fc.property(job, (j) => {
        const plan = planApplication({ ...inputOf(j, asGiven), reserve: undefined });
        const left = qty(0, "gal");
        const done = reconcile(plan, { finished: "2026-05-02T09:30", left });
        expect(done.fromPlanPercent).toBeCloseTo(0, 8);
        for (const { fromPlanPercent } of done.products) expect(fromPlanPercent).toBeCloseTo(0, 8);
        expect(done.used).toEqual(plan.carrier.total);
      }),
      RUNS,
    );
  });
});
