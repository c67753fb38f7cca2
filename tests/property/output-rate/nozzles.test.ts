import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { checkNozzles, type NozzleReference } from "../../../src/output-rate/index.ts";
import { qty } from "../../../src/units/index.ts";

const time = qty(30, "s");
const rated = qty(40, "fl_oz/min");
const references: NozzleReference[] = ["mean", "others", "rated", "spread"];

function check(ounces: readonly number[], against: NozzleReference) {
  const catches = ounces.map((value) => qty(value, "fl_oz"));
  return checkNozzles({ catches, time, against, ...(against === "rated" && { rated }) });
}

describe("checkNozzles", () => {
  it("gives a nozzle the same verdict wherever it hangs on the boom", () => {
    const boom = fc
      .array(fc.double({ min: 15, max: 25, noNaN: true }), { minLength: 2, maxLength: 40 })
      .chain((ounces) =>
        fc.tuple(
          fc.constant(ounces),
          fc.shuffledSubarray(
            ounces.map((_, at) => at),
            { minLength: ounces.length },
          ),
        ),
      );
    fc.assert(
      fc.property(boom, fc.constantFrom(...references), ([ounces, order], against) => {
        const straight = check(ounces, against);
        const shuffled = check(
          order.map((at) => ounces[at] as number),
          against,
        );
        expect(shuffled.nozzles.map(({ action }) => action)).toEqual(
          order.map((at) => straight.nozzles[at]?.action),
        );
        expect(shuffled.coefficientOfVariation.value).toBeCloseTo(straight.coefficientOfVariation.value, 9);
        expect(shuffled.spread.value).toBeCloseTo(straight.spread.value, 9);
      }),
    );
  });

  it.each(references)(
    "finds one worn and one blocked nozzle in any boom of 2 to 100, against the %s",
    (against) => {
      for (let n = 2; n <= 100; n++) {
        const bad = n % 7 < n ? n % 7 : 0;
        const boom = Array<number>(n).fill(20);
        boom[bad] = 26;
        expect(check(boom, against).replace, `worn, ${n} nozzles`).toEqual([bad]);
        boom[bad] = 14;
        expect(check(boom, against).clean, `blocked, ${n} nozzles`).toEqual([bad]);
      }
    },
  );

  it("calls no other nozzle bad for the sake of one, when they are held against a rated flow", () => {
    for (let n = 2; n <= 100; n++) {
      const worn = check([...Array<number>(n - 1).fill(20), 26], "rated");
      expect([worn.replace, worn.clean]).toEqual([[n - 1], []]);
    }
  });

  it("finds nothing wrong with a boom of equal nozzles", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 500, noNaN: true }),
        fc.integer({ min: 2, max: 100 }),
        (ounces, n) => {
          for (const against of ["mean", "others", "spread"] as const) {
            const even = check(Array<number>(n).fill(ounces), against);
            expect([even.clean, even.replace]).toEqual([[], []]);
            expect(even.coefficientOfVariation.value).toBeLessThan(1e-9);
          }
        },
      ),
    );
  });
});
