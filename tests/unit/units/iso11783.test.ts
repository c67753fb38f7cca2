import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  fromIso11783,
  type Iso11783Purpose,
  type Iso11783Rate,
  type MassRate,
  qty,
  toIso11783,
  unitsOf,
  type VolumeRate,
} from "../../../src/units/index.ts";
import { exactly } from "../../helpers/definitions.ts";
import { Rational, ulpError } from "../../helpers/rational.ts";
import { expectRefused } from "../../helpers/refusal.ts";

// ISO 11783-11 online data base (isobus.net), snapshot of version 2024020502, entries 1 to 10: name, unit, resolution and CAN
// bus range 0 to 2147483647. The resolutions are turned to L/ha and kg/ha here by definition: 1 mm³ = 1e-6 L, 1 mg = 1e-6 kg,
// 1 m² = 1e-4 ha.
const PURPOSES: readonly Iso11783Purpose[] = ["setpoint", "actual", "default", "minimum", "maximum"];
const ENTRIES = PURPOSES.flatMap((purpose, i) => [
  { ddi: 1 + i, purpose, unit: "L/ha" as const, step: Rational.of(1, 10_000) },
  { ddi: 6 + i, purpose, unit: "kg/ha" as const, step: Rational.of(1, 100) },
]);
const MOST = 2_147_483_647;

describe("toIso11783", () => {
  it.each(ENTRIES)("tells a $purpose in $unit by DDI $ddi", ({ ddi, purpose, unit }) => {
    expect(toIso11783({ rate: qty(150, unit), purpose }).ddi).toBe(ddi);
  });

  it("tells 200 L/ha as 2,000,000 hundredths of mm³/m², and 150 kg/ha as 15,000 mg/m²", () => {
    expect(toIso11783({ rate: qty(200, "L/ha"), purpose: "setpoint" })).toEqual({
      ddi: 1,
      value: 2_000_000,
      rate: { value: 200, unit: "L/ha" },
    });
    expect(toIso11783({ rate: qty(150, "kg/ha"), purpose: "actual" })).toEqual({
      ddi: 7,
      value: 15_000,
      rate: { value: 150, unit: "kg/ha" },
    });
  });

  it("rounds a setpoint, default and maximum down, a minimum up, an actual rate to the nearest", () => {
    // 19 g/ha is 1.9 steps of 10 g/ha.
    const value = (purpose: Iso11783Purpose) => toIso11783({ rate: qty(19, "g/ha"), purpose }).value;
    expect(PURPOSES.map(value)).toEqual([1, 2, 1, 2, 1]);
    expect(toIso11783({ rate: qty(14, "g/ha"), purpose: "actual" }).value).toBe(1);
  });

  it("is not moved by noise: 0.3 L/ha as 3 times 0.1 is 3,000 steps and not 2,999 or 3,001", () => {
    for (const purpose of PURPOSES)
      expect(toIso11783({ rate: qty(3 * 0.1, "L/ha"), purpose }).value).toBe(3000);
    expect(toIso11783({ rate: qty(0.7 + 0.1, "kg/ha"), purpose: "setpoint" }).value).toBe(80);
  });

  it("takes 0 and the largest number that 31 bits hold, and no more", () => {
    expect(toIso11783({ rate: qty(0, "L/ha"), purpose: "actual" }).value).toBe(0);
    expect(toIso11783({ rate: qty(214_748.3647, "L/ha"), purpose: "setpoint" }).value).toBe(MOST);
    expect(toIso11783({ rate: qty(21_474_836.47, "kg/ha"), purpose: "minimum" }).value).toBe(MOST);
    const sent = (rate: VolumeRate | MassRate) => () => toIso11783({ rate, purpose: "setpoint" });
    expectRefused(sent(qty(214_749, "L/ha")), "out-of-range", "rate", "The most is 214,748 L/ha");
    expectRefused(sent(qty(214_748.3648, "L/ha")), "out-of-range", "rate", "too large");
    expectRefused(sent(qty(1e60, "kg/cm2")), "out-of-range", "rate", "too large");
    expectRefused(sent(qty(1e308, "L/cm2")), "not-finite", "rate", "too large");
    expectRefused(sent(qty(-1, "L/ha")), "out-of-range", "rate", "0 or more");
  });

  it("refuses to tell a rate as nothing", () => {
    expectRefused(
      () => toIso11783({ rate: qty(9, "g/ha"), purpose: "setpoint" }),
      "out-of-range",
      "rate",
      "0.01 kg/ha",
    );
    expect(toIso11783({ rate: qty(9, "g/ha"), purpose: "minimum" }).value).toBe(1);
  });

  it("never puts a setpoint over the rate given, and stays within one step of it", () => {
    const units = [...unitsOf("volumeRate"), ...unitsOf("massRate")];
    fc.assert(
      fc.property(
        fc.constantFrom(...units),
        fc.double({ min: 1e-6, max: 1e6, noNaN: true }),
        (unit, size) => {
          const told = unit.match(/^(mg|g|kg|lb|oz)\//) ? "kg/ha" : "L/ha";
          const one = exactly(1, unit, told).toNumber();
          // Sizes are of the told unit, so that most are within range.
          const rate = qty(size / one, unit);
          const exact = exactly(rate.value, unit, told);
          const step = told === "L/ha" ? 1e-4 : 1e-2;
          if (exact.toNumber() > MOST * step || exact.toNumber() < step) return;
          const sent = toIso11783({ rate, purpose: "setpoint" } as Iso11783Rate);
          const given = exact.toNumber();
          expect(sent.rate.unit).toBe(told);
          expect(sent.rate.value).toBeLessThanOrEqual(given * (1 + 1e-11));
          expect(sent.rate.value).toBeGreaterThan((given - step) * (1 - 1e-11) - 1e-15);
        },
      ),
    );
  });

  it("refuses what is not a rate per area, an unknown purpose, and plain misuse", () => {
    const call = (input: unknown) => () => toIso11783(input as Iso11783Rate);
    expectRefused(call({ rate: qty(5, "gal"), purpose: "actual" }), "wrong-dimension", "rate");
    expectRefused(call({ rate: qty(5, "L/ha"), purpose: "target" }), "unknown-choice", "purpose");
    expectRefused(call({ rate: qty(5, "L/ha") }), "missing", "purpose");
    expectRefused(call({ purpose: "actual" }), "missing", "rate");
    expectRefused(
      call({ rate: { value: "5", unit: "L/ha" }, purpose: "actual" }),
      "not-a-quantity",
      "rate.value",
    );
    for (const junk of [undefined, null, 5, "x", []]) expectRefused(call(junk), errorCode(junk), "");
  });
});

function errorCode(junk: unknown): "missing" | "not-a-quantity" {
  return junk === undefined || junk === null ? "missing" : "not-a-quantity";
}

describe("fromIso11783", () => {
  it.each(ENTRIES)("reads DDI $ddi as a $purpose in $unit", ({ ddi, purpose, unit, step }) => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: MOST }), (value) => {
        const { rate, purpose: told } = fromIso11783({ ddi, value });
        expect({ unit: rate.unit, told }).toEqual({ unit, told: purpose });
        // One division: the float nearest to the exact rate.
        if (value > 0) expect(ulpError(rate.value, step.times(Rational.of(value)))).toBeLessThanOrEqual(0.5);
        else expect(rate.value).toBe(0);
      }),
    );
  });

  it("gives back the very number that was sent", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: MOST }), fc.integer({ min: 1, max: 10 }), (value, ddi) => {
        expect(toIso11783(fromIso11783({ ddi, value }))).toMatchObject({ ddi, value });
      }),
    );
  });

  it("refuses other identifiers and numbers that do not fit", () => {
    const call = (ddi: unknown, value: unknown) => () =>
      fromIso11783({ ddi, value } as { ddi: number; value: number });
    for (const ddi of [0, 11, 36]) expectRefused(call(ddi, 5), "unknown-choice", "ddi");
    expectRefused(call(1.5, 5), "unknown-choice", "ddi");
    expectRefused(call("1", 5), "unknown-choice", "ddi");
    expectRefused(call(1, MOST + 1), "out-of-range", "value");
    expectRefused(call(1, -1), "out-of-range", "value");
    expectRefused(call(1, 0.5), "out-of-range", "value");
    expectRefused(call(1, Number.NaN), "not-finite", "value");
    expectRefused(() => fromIso11783(undefined as never), "missing", "");
  });
});
