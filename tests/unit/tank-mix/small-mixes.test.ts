import { describe, expect, it } from "vitest";
import {
  diluteMix,
  jarTest,
  leftoverArea,
  rinseTank,
  stockFor,
  strengthOf,
} from "../../../src/tank-mix/index.ts";
import { qty, valueIn } from "../../../src/units/index.ts";
import { errorOf } from "../../helpers/bad-input.ts";
import { expectRefused } from "../../helpers/refusal.ts";

describe("jarTest", () => {
  it("gives the worked example of the GRDC manual: a hundredth of the field rates", () => {
    // GRDC, Spray Application GrowNotes Manual, module 7.5 "Checks for physical compatibility: the jar test" (2025): 70 L/ha
    // make 0.7 L; 2 L/ha 20 mL; 800 mL/ha 8 mL.
    const jar = jarTest({ jar: qty(0.7, "L"), mix: qty(70, "L"), amounts: [qty(2, "L"), qty(800, "mL")] });
    expect(jar.amounts).toEqual([qty(20, "mL"), qty(8, "mL")]);
    expect(jar.water).toEqual(qty(672, "mL"));
  });

  it("keeps weights as weights", () => {
    const jar = jarTest({ jar: qty(1, "qt"), mix: qty(25, "gal"), amounts: [qty(2, "lb")] });
    expect(jar.amounts).toEqual([qty(0.32, "oz")]);
    expect(jar.water).toEqual(qty(32, "fl_oz"));
  });

  it.each([
    [{ jar: qty(101, "L") }, "conflict", "jar"],
    [{ jar: qty(0, "L") }, "out-of-range", "jar"],
    [{ amounts: [] }, "too-few", "amounts"],
    [{ amounts: [qty(101, "L")] }, "conflict", "amounts"],
    [{ amounts: [qty(1, "ft")] }, "wrong-dimension", "amounts[0]"],
    [{ stand: qty(0, "min") }, "out-of-range", "stand"],
  ] as const)("refuses %o", (change, code, path) => {
    const valid = { jar: qty(1, "L"), mix: qty(100, "L"), amounts: [qty(1, "L")] };
    const error = errorOf(() => jarTest({ ...valid, ...change } as never));
    expect([error.code, error.path]).toEqual([code, path]);
  });
});

describe("diluteMix", () => {
  it("brings a solution down by C1V1 = C2V2", () => {
    expect(diluteMix({ from: qty(50, "mL/L"), to: qty(5, "mL/L"), volume: qty(10, "L") })).toEqual({
      take: qty(1, "L"),
      water: qty(9, "L"),
    });
    const percent = (value: number) => ({ value, unit: "%", basis: "w/v" }) as const;
    expect(diluteMix({ from: percent(10), to: percent(2.5), volume: qty(2, "gal") }).take).toEqual(
      qty(0.5, "gal"),
    );
    const ppm = { value: 500, unit: "ppm", basis: "w/v" } as const;
    expect(diluteMix({ from: percent(1), to: ppm, volume: qty(20, "L") }).take).toEqual(qty(1, "L"));
  });

  it("refuses a part of the volume beside a weight per volume, and says how each was given", () => {
    const [from, to] = [{ value: 5, unit: "%", basis: "w/v" } as const, qty(5, "g/L")];
    const volume = qty(10, "L");
    expectRefused(() => diluteMix({ from, to, volume }), "conflict", "to.basis", "in w/v, the other in g/L");
    expectRefused(
      () => diluteMix({ from: to, to: from, volume }),
      "conflict",
      "to.basis",
      "in g/L, the other in w/v",
    );
  });

  it("takes all of it and no water where the strengths are the same", () => {
    const same = diluteMix({ from: qty(1, "lb/gal"), to: qty(16, "oz/gal"), volume: qty(3, "gal") });
    expect(same).toEqual({ take: qty(3, "gal"), water: qty(0, "gal") });
  });

  it.each([
    [{ to: qty(51, "mL/L") }, "conflict", "to"],
    [{ to: qty(5, "g/L") }, "wrong-dimension", "to"],
    [{ from: qty(5, "L/ha") }, "wrong-dimension", "from"],
    [{ from: { value: 5, unit: "%" } }, "missing", "from.basis"],
    [{ from: { value: 5, unit: "%", basis: "w/w" } }, "wrong-dimension", "from.basis"],
    [
      { from: { value: 5, unit: "%", basis: "w/v" }, to: { value: 1, unit: "%", basis: "v/v" } },
      "conflict",
      "to.basis",
    ],
    [{ volume: qty(0, "L") }, "out-of-range", "volume"],
  ] as const)("refuses %o", (change, code, path) => {
    const valid = { from: qty(50, "mL/L"), to: qty(5, "mL/L"), volume: qty(10, "L") };
    const error = errorOf(() => diluteMix({ ...valid, ...change } as never));
    expect([error.code, error.path]).toEqual([code, path]);
  });
});

describe("stockFor", () => {
  it("gives the stock solution that carries a dose", () => {
    expect(stockFor({ amount: qty(10, "mL"), volume: qty(1, "L"), dose: qty(0.5, "mL") })).toEqual(
      qty(50, "mL"),
    );
    expect(stockFor({ amount: qty(1, "oz"), volume: qty(1, "gal"), dose: qty(0.25, "oz") })).toEqual(
      qty(32, "fl_oz"),
    );
  });

  it.each([
    [{ dose: qty(11, "mL") }, "conflict", "dose"],
    [{ dose: qty(1, "g") }, "wrong-dimension", "dose"],
    [{ dose: qty(1, "ft") }, "wrong-dimension", "dose"],
    [{ amount: qty(1, "ft") }, "wrong-dimension", "amount"],
    [{ amount: qty(2, "L") }, "conflict", "volume"],
  ] as const)("refuses %o", (change, code, path) => {
    const valid = { amount: qty(10, "mL"), volume: qty(1, "L"), dose: qty(1, "mL") };
    const error = errorOf(() => stockFor({ ...valid, ...change } as never));
    expect([error.code, error.path]).toEqual([code, path]);
  });
});

describe("rinse", () => {
  it("leaves a tenth of a tenth of a tenth after three rinses with nine times the residual", () => {
    const { strength, water } = rinseTank({ residual: qty(1, "L"), water: qty(9, "L"), rinses: 3 });
    expect(strength.value).toBeCloseTo(0.1, 12);
    expect(strength.unit).toBe("%");
    expect(water).toEqual(qty(27, "L"));
  });

  it("shows why three small rinses do more than one large rinse with the same water", () => {
    const [residual, water] = [qty(1, "gal"), qty(3, "gal")];
    const three = rinseTank({ residual, water, rinses: 3 });
    const one = rinseTank({ residual, water: qty(9, "gal"), rinses: 1 });
    expect(three.water).toEqual(one.water);
    expect(three.strength.value).toBe(1.5625);
    expect(one.strength.value).toBe(10);
  });

  it("gives rinse water whose area leftoverArea finds", () => {
    const { water } = rinseTank({ residual: qty(1, "gal"), water: qty(2, "gal"), rinses: 3 });
    expect(leftoverArea({ volume: water, rate: qty(20, "gal/ac") }).value).toBeCloseTo(13068, 9);
  });

  it("refuses half a rinse", () => {
    const error = errorOf(() => rinseTank({ residual: qty(1, "L"), water: qty(9, "L"), rinses: 0.5 }));
    expect([error.code, error.path]).toEqual(["out-of-range", "rinses"]);
  });
});

describe("strengthOf", () => {
  it("says by how much a mix is weak, and what is lacking", () => {
    const weak = strengthOf({ mix: qty(3, "gal"), addedWater: qty(128, "fl_oz"), product: qty(6, "oz") });
    expect(weak).toEqual({ strength: qty(75, "%"), weakBy: qty(25, "%"), lacking: qty(2, "oz") });
  });

  it("finds a mix without added water at full strength", () => {
    expect(strengthOf({ mix: qty(3, "gal"), addedWater: qty(0, "gal") })).toEqual({
      strength: qty(100, "%"),
      weakBy: qty(0, "%"),
    });
  });
});

describe("leftoverArea", () => {
  it("says what a leftover could still treat, in the system of its volume", () => {
    expect(leftoverArea({ volume: qty(0.5, "gal"), rate: qty(20, "gal/ac") })).toEqual({
      value: 1089,
      unit: "ft2",
      of: "treated",
    });
    expect(leftoverArea({ volume: qty(10, "L"), rate: qty(200, "L/ha") })).toEqual({
      value: 500,
      unit: "m2",
      of: "treated",
    });
    expect(valueIn(leftoverArea({ volume: qty(0, "L"), rate: qty(200, "L/ha") }), "m2")).toBe(0);
  });

  it("refuses a rate so small that the area has no number", () => {
    const error = errorOf(() => leftoverArea({ volume: qty(1e300, "gal"), rate: qty(1e-300, "gal/ac") }));
    expect([error.code, error.path]).toEqual(["not-finite", "volume"]);
  });
});
