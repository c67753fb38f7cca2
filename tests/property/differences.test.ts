import fc from "fast-check";
import { describe, it } from "vitest";
import { compositeArea } from "../../src/area/index.ts";
import { checkAgainstTarget } from "../../src/output-rate/index.ts";
import { effectiveWidth } from "../../src/swath/index.ts";
import { type Dimension, type Quantity, type Unit, unitsOf } from "../../src/units/index.ts";
import { exactly } from "../helpers/definitions.ts";
import { expectExactBeside, keepWorstErrors } from "../helpers/exactness.ts";
import { Rational } from "../helpers/rational.ts";
import { runs } from "../helpers/runs.ts";

keepWorstErrors("differences");

function amounts<U extends Unit>(dimension: Dimension): fc.Arbitrary<Quantity<U>> {
  const unit = fc.constantFrom(...(unitsOf(dimension) as U[]));
  return fc.record({ value: fc.double({ min: 1e-3, max: 1e4, noNaN: true }), unit });
}

// Each amount is rounded once, in changing its unit; what is left of two that are nearly the same is small beside that.
describe("what is left of one amount after another, beside the amount itself", () => {
  it("is within 8 ulp for widths, areas and deviations", () => {
    const length = amounts<"ft">("length");
    const area = amounts<"ft2">("area").map((one) => ({ ...one, of: "ground" as const }));
    const rate = amounts<"gal/ac">("volumeRate");
    fc.assert(
      fc.property(length, length, (width, overlap) => {
        fc.pre(exactly(overlap.value, overlap.unit, width.unit).toNumber() < width.value * (1 - 1e-9));
        const ours = effectiveWidth({ width, overlap });
        const whole = exactly(width.value, width.unit, ours.unit);
        const left = whole.minus(exactly(overlap.value, overlap.unit, ours.unit));
        expectExactBeside("effectiveWidth, overlap as a length", ours.value, left, whole);
      }),
      runs(1000),
    );
    fc.assert(
      fc.property(area, area, (all, part) => {
        fc.pre(exactly(part.value, part.unit, all.unit).toNumber() < all.value * (1 - 1e-9));
        const ours = compositeArea({ add: [all], subtract: [part] });
        const whole = exactly(all.value, all.unit, ours.unit);
        const left = whole.minus(exactly(part.value, part.unit, ours.unit));
        expectExactBeside("compositeArea, parts taken out", ours.value, left, whole);
      }),
      runs(1000),
    );
    fc.assert(
      fc.property(rate, rate, (measured, target) => {
        const ours = checkAgainstTarget({ rate: measured, target }).deviation.value;
        const hundred = Rational.of(100);
        const part = exactly(measured.value, measured.unit, target.unit)
          .over(Rational.fromNumber(target.value))
          .times(hundred);
        expectExactBeside("checkAgainstTarget, deviation", ours, part.minus(hundred), part.plus(hundred));
      }),
      runs(1000),
    );
  });
});
