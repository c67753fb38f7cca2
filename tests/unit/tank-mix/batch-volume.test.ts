import { describe, expect, it } from "vitest";
import { type BatchSize, batchVolume, productAmount } from "../../../src/tank-mix/index.ts";
import { qty } from "../../../src/units/index.ts";
import { batchVolume as lines } from "../../../src/working/index.ts";
import { expectRefused } from "../../helpers/refusal.ts";
import { expectLinesTrue } from "../../helpers/working.ts";

const pots = (each: unknown): BatchSize =>
  ({ kind: "count", count: qty(300, "pot"), each }) as unknown as BatchSize;

// Each expected value is worked out by hand beside it.
const SIZES: readonly (readonly [name: string, size: BatchSize, value: number, unit: string])[] = [
  ["a volume", { kind: "volume", volume: qty(3, "gal") }, 3, "gal"],
  [
    "a volume in a small unit, reported in gallons: 384 / 128",
    { kind: "volume", volume: qty(384, "fl_oz") },
    3,
    "gal",
  ],
  ["300 pots of 4 fl oz: 1200 fl oz / 128", pots(qty(4, "fl_oz")), 9.375, "gal"],
  ["the same per pot", pots(qty(4, "fl_oz/pot")), 9.375, "gal"],
  ["the same per thousand plants", pots(qty(4000, "fl_oz/1000plant")), 9.375, "gal"],
  ["120 mL each: 36 L", pots(qty(120, "mL")), 36, "L"],
  ["3 imperial fl oz each: 900 / 160", pots(qty(3, "imp_fl_oz")), 5.625, "imp_gal"],
  ["what 12 pots took, 48 fl oz: 4 each", pots({ used: qty(48, "fl_oz"), plants: 12 }), 9.375, "gal"],
  [
    "600 mL in 30 s, 6 s each: 120 mL",
    pots({ flow: { caught: qty(600, "mL"), time: qty(30, "s") }, time: qty(6, "s") }),
    36,
    "L",
  ],
  ["a flow of 1.2 L/min for 6 s: 120 mL", pots({ flow: qty(1.2, "L/min"), time: qty(6, "s") }), 36, "L"],
  [
    "2 thousand plants, 50 mL each: 100 L",
    { kind: "count", count: qty(2, "1000plant"), each: qty(50, "mL") },
    100,
    "L",
  ],
  [
    "900 ft of row at 5 gal per 1000 ft",
    { kind: "row-length", length: qty(900, "ft"), rate: qty(5, "gal/1000ft") },
    4.5,
    "gal",
  ],
  [
    "900 ft where 100 ft took 64 fl oz: 576 / 128",
    { kind: "row-length", length: qty(900, "ft"), rate: { used: qty(64, "fl_oz"), length: qty(100, "ft") } },
    4.5,
    "gal",
  ],
  [
    "250 m where 20 m took 1 L: 12.5 L",
    { kind: "row-length", length: qty(250, "m"), rate: { used: qty(1, "L"), length: qty(20, "m") } },
    12.5,
    "L",
  ],
];

describe("batchVolume", () => {
  it.each(SIZES)("%s", (_, size, value, unit) => {
    const { volume } = batchVolume(size);
    expect(volume.unit).toBe(unit);
    expect(volume.value).toBeCloseTo(value, 12);
    const written = lines(size);
    // A volume in the unit that it is reported in needs no working.
    if (size.kind === "volume" && size.volume.unit === unit) expect(written).toEqual([]);
    else {
      expectLinesTrue(written);
      expect(written.at(-1)?.result).toEqual(volume);
    }
  });

  it("gives what each gets in the thing that is counted, and per length", () => {
    expect(batchVolume(pots(qty(4, "fl_oz"))).carrierPerCount).toEqual(qty(4, "fl_oz/pot"));
    expect(
      batchVolume({ kind: "count", count: qty(2, "1000plant"), each: qty(50, "mL") }).carrierPerCount,
    ).toEqual(qty(50, "mL/plant"));
    const row = batchVolume({
      kind: "row-length",
      length: qty(9, "ft"),
      rate: { used: qty(64, "fl_oz"), length: qty(100, "ft") },
    });
    expect(row.carrierPerLength).toEqual(qty(0.64, "fl_oz/ft"));
    expect(row.carrierPerCount).toBeUndefined();
  });

  it("refuses parts of a pot, none of them, and what is no volume", () => {
    expectRefused(
      () => batchVolume({ ...pots(qty(4, "fl_oz")), count: qty(2.5, "pot") } as BatchSize),
      "out-of-range",
      "count",
      "whole number",
    );
    expectRefused(() => batchVolume(pots(qty(0, "fl_oz"))), "out-of-range", "each");
    expectRefused(() => batchVolume(pots(qty(4, "oz"))), "wrong-dimension", "each", "fl oz (volume)");
    expectRefused(() => batchVolume(pots({ used: qty(1, "L"), plants: 2.5 })), "out-of-range", "each.plants");
    expectRefused(() => batchVolume({ kind: "pots" } as never), "unknown-choice", "kind");
    expectRefused(
      () => batchVolume({ kind: "row-length", length: qty(9, "ft"), rate: qty(5, "gal/ac") } as never),
      "wrong-dimension",
      "rate",
    );
    expectRefused(
      () => batchVolume({ kind: "volume", volume: qty(3, "gal"), each: qty(1, "gal") } as never),
      "unknown-field",
      "each",
    );
    expectRefused(
      () => batchVolume({ kind: "count", count: qty(1e300, "pot"), each: qty(1, "gal") } as never),
      "not-finite",
      "count",
    );
  });
});

describe("productAmount", () => {
  it("takes rates per plant and per length of row where the mix is known for those", () => {
    // 0.5 mL in 120 mL of mix each: 10 L of mix have 10000 / 120 × 0.5 mL.
    const perPlant = productAmount({
      rate: qty(0.5, "mL/plant"),
      form: "liquid",
      carrier: qty(10, "L"),
      carrierPerCount: qty(120, "mL/plant"),
    });
    expect(perPlant.amount.value).toBeCloseTo(41.6666666667, 9);
    // 2 oz of a dry product per 1000 ft, 5 gal of mix per 1000 ft: 0.4 oz/gal.
    const perRow = productAmount({
      rate: qty(2, "oz/1000ft"),
      form: "dry",
      carrier: qty(4.5, "gal"),
      carrierPerLength: qty(5, "gal/1000ft"),
    });
    expect(perRow.amount.unit).toBe("oz");
    expect(perRow.amount.value).toBeCloseTo(1.8, 12);
    // 0.1 g of active ingredient a plant from a product with 200 g/L is 0.5 mL.
    const active = productAmount({
      rate: { activeIngredient: qty(0.1, "g/plant"), contains: qty(200, "g/L") },
      form: "liquid",
      carrier: qty(12, "L"),
      carrierPerCount: qty(120, "mL/plant"),
    });
    expect(active.amount.unit).toBe("mL");
    expect(active.amount.value).toBeCloseTo(50, 10);
  });

  it("says which size a rate needs", () => {
    const job = { form: "liquid", carrier: qty(10, "L"), carrierRate: qty(200, "L/ha") } as const;
    expectRefused(
      () => productAmount({ ...job, rate: qty(0.5, "mL/plant") }),
      "missing",
      "carrierPerCount",
      "one plant gets",
    );
    expectRefused(() => productAmount({ ...job, rate: qty(0.5, "mL/m") }), "missing", "area");
  });
});
