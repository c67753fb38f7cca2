import { describe, expect, it } from "vitest";
import { mixLoads, productInLoads, splitLoads } from "../../../src/tank-mix/index.ts";
import { qty } from "../../../src/units/index.ts";
import { errorOf } from "../../helpers/bad-input.ts";

const { loads } = splitLoads({ total: qty(10, "gal"), tank: qty(4, "gal"), split: "equal" });

describe("productInLoads", () => {
  it("gives thirds of twelve as fours, although thirds of the carrier do not end", () => {
    const { amounts, total } = productInLoads({ amount: qty(12, "fl_oz"), loads });
    expect(amounts).toEqual([qty(4, "fl_oz"), qty(4, "fl_oz"), qty(4, "fl_oz")]);
    expect(total).toEqual(qty(12, "fl_oz"));
  });

  it("takes noise past the 14th digit for what it is, and cuts what is more", () => {
    expect(productInLoads({ amount: qty(11.999999999999998, "fl_oz"), loads }).total.value).toBe(12);
    expect(productInLoads({ amount: qty(12.000000000000002, "fl_oz"), loads }).total.value).toBe(12);
    expect(productInLoads({ amount: qty(2 / 3, "fl_oz"), loads }).total.value).toBe(0.66666666666);
    expect(productInLoads({ amount: qty(1.9999999999999, "oz"), loads }).total.value).toBe(1.9999999999);
  });

  it("follows the carrier of each load, whatever the unit", () => {
    const mixed = [{ carrier: qty(2, "gal") }, { carrier: qty(4, "qt") }, { carrier: qty(128, "fl_oz") }];
    expect(productInLoads({ amount: qty(8, "oz"), loads: mixed }).amounts.map((one) => one.value)).toEqual([
      4, 2, 2,
    ]);
  });

  it("gives a small load its small share beside large ones", () => {
    const uneven = [100, 0.5, 99.5, 0.001].map((gallons) => ({ carrier: qty(gallons, "gal") }));
    const { amounts } = productInLoads({ amount: qty(400.002, "oz"), loads: uneven });
    expect(amounts.map((one) => one.value)).toEqual([200, 1, 199, 0.002]);
  });

  it("takes the most loads that there may be", () => {
    const many = splitLoads({ total: qty(1000, "L"), tank: qty(1, "L"), split: "equal" }).loads;
    expect(productInLoads({ amount: qty(12_345.678, "mL"), loads: many }).amounts).toHaveLength(1000);
  });

  it.each([
    [{ amount: qty(0, "oz") }, "out-of-range", "amount"],
    [{ amount: qty(5, "ft") }, "wrong-dimension", "amount"],
    [{ loads: [] }, "too-few", "loads"],
    [{ loads: [{ carrier: qty(0, "gal") }] }, "out-of-range", "loads[0].carrier"],
    [
      { loads: [{ carrier: qty(1, "gal") }, { carrier: qty(1, "lb") }] },
      "wrong-dimension",
      "loads[1].carrier",
    ],
    [
      { loads: [{ carrier: qty(1, "gal") }, { carrier: qty(1e308, "gal") }] },
      "not-finite",
      "loads[1].carrier",
    ],
    [{ loads: Array.from({ length: 10_001 }, () => ({ carrier: qty(1, "gal") })) }, "out-of-range", "loads"],
    [{ loads: [{ carrier: qty(1, "gal"), water: qty(1, "gal") }] }, "unknown-field", "loads[0].water"],
  ] as const)("refuses %o", (change, code, path) => {
    const error = errorOf(() => productInLoads({ amount: qty(12, "fl_oz"), loads, ...change } as never));
    expect([error.code, error.path]).toEqual([code, path]);
  });
});

describe("mixLoads", () => {
  it("counts what liquid products take up, and leaves dry ones out", () => {
    const mixed = mixLoads({
      loads: [{ carrier: qty(4, "gal") }],
      amounts: [qty(64, "fl_oz"), qty(3, "lb")],
    });
    expect(mixed.loads).toEqual([
      { carrier: qty(4, "gal"), amounts: [qty(64, "fl_oz"), qty(3, "lb")], water: qty(3.5, "gal") },
    ]);
    expect(mixed.totals).toEqual([qty(64, "fl_oz"), qty(3, "lb")]);
  });

  it("mixes plain water where there is no product", () => {
    expect(mixLoads({ loads, amounts: [] }).loads[0]?.water).toEqual(loads[0]?.carrier);
  });

  it("keeps the rows of each load beside it", () => {
    const rows = splitLoads({ total: qty(4, "gal"), tank: qty(2, "gal"), split: { pieces: 4 } }).loads;
    expect(mixLoads({ loads: rows, amounts: [] }).loads.map((load) => load.pieces)).toEqual([2, 2]);
  });

  it("refuses products that are more than the load together, though each would go in", () => {
    const error = errorOf(() =>
      mixLoads({ loads: [{ carrier: qty(1, "gal") }], amounts: [qty(100, "fl_oz"), qty(100, "fl_oz")] }),
    );
    expect([error.code, error.path]).toEqual(["conflict", "amounts"]);
    expect(error.message).toContain("1.56 gal");
  });

  it("says which of the amounts is at fault", () => {
    const error = errorOf(() => mixLoads({ loads, amounts: [qty(1, "oz"), qty(-1, "oz")] }));
    expect([error.code, error.path]).toEqual(["out-of-range", "amounts[1]"]);
    expect(errorOf(() => mixLoads({ loads: [{ carrier: qty(-1, "gal") }], amounts: [] })).path).toBe(
      "loads[0].carrier",
    );
    expect(errorOf(() => mixLoads({ loads, amounts: undefined as never })).path).toBe("amounts");
  });
});
