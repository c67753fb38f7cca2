import { describe, expect, it } from "vitest";
import { checkAgainstTarget, checkNozzles } from "../../../src/output-rate/index.ts";
import { qty } from "../../../src/units/index.ts";
import { refusesMisuse } from "../../helpers/bad-input.ts";
import { expectRefused, refusal } from "../../helpers/refusal.ts";

const ounces = (...list: number[]) => list.map((value) => qty(value, "fl_oz"));
const boom = { catches: ounces(40, 40, 40, 45, 35, 40), time: qty(30, "s"), against: "mean" } as const;

describe("checkNozzles", () => {
  it("tells each nozzle's flow and deviation, and what to do with it", () => {
    const check = checkNozzles(boom);
    expect(check.mean).toEqual(qty(40 / 30, "fl_oz/s"));
    expect(check.nozzles[3]?.flow).toEqual(qty(1.5, "fl_oz/s"));
    expect(check.nozzles.map(({ deviation }) => Number(deviation.value.toFixed(9)))).toEqual([
      0, 0, 0, 12.5, -12.5, 0,
    ]);
    expect(check.nozzles.map(({ action }) => action)).toEqual([
      "keep",
      "keep",
      "keep",
      "replace",
      "clean",
      "keep",
    ]);
    expect([check.clean, check.replace]).toEqual([[4], [3]]);
    expect(check.spread).toEqual({ value: expect.closeTo(25, 12), unit: "%" });
    expect(check.nozzles[0]?.deviation).toEqual(qty(0, "%"));
    // Sum of squares 50 over n − 1 = 5: a standard deviation of √10 on a mean of 40 (worked by hand).
    expect(check.coefficientOfVariation.value).toBeCloseTo((100 * Math.sqrt(10)) / 40, 12);
  });

  it("lets a nozzle at the limit pass, whatever the noise in the last digits", () => {
    const percents = (limit: number) =>
      checkNozzles({
        catches: ounces(0.95, 1.05),
        time: qty(1, "min"),
        against: "mean",
        limit: qty(limit, "%"),
      });
    expect(percents(5).replace).toEqual([]);
    expect(percents(4.999).replace).toEqual([1]);
  });

  it("names the flows that the limit allows, where there is one figure for all", () => {
    const { allowed } = checkNozzles({ ...boom, against: "rated", rated: qty(80, "fl_oz/min") });
    expect(allowed?.lowest.value).toBeCloseTo(1.2, 12);
    expect(allowed?.highest.value).toBeCloseTo((80 * 1.1) / 60, 12);
    const higher = checkNozzles({ ...boom, against: "rated", rated: qty(90, "fl_oz/min") }).allowed;
    expect(higher?.lowest.value).toBeCloseTo(1.35, 12);
    expect(higher?.highest.value).toBeCloseTo(1.65, 12);
    expect(checkNozzles({ ...boom, against: "others" }).allowed).toBeUndefined();
    expect(checkNozzles({ ...boom, against: "spread" }).allowed).toBeUndefined();
    expect(checkNozzles({ ...boom, limit: qty(100, "%") }).allowed).toBeUndefined();
  });

  it("gives the rate that the boom really puts out, when speed and width are known", () => {
    const check = checkNozzles({
      ...boom,
      catches: ounces(12.8, 12.8),
      speed: qty(3, "mph"),
      width: qty(20, "in"),
    });
    expect(check.rate?.value).toBeCloseTo(19.8, 12);
    expect(checkNozzles(boom)).not.toHaveProperty("rate");
    const rows = { speed: qty(3, "mph"), width: qty(20, "in"), nozzlesPerRow: 2 };
    expect(checkNozzles({ ...boom, catches: ounces(6.4, 6.4), ...rows }).rate?.value).toBeCloseTo(19.8, 12);
  });

  it("holds the spread of a boom against the nozzle that is furthest from the middle one, and no other", () => {
    // In order: 20, 30, 30, 31, 31, 36. The middle is 30.5, and 20 is 10.5 from it; 36 is over the mean by a fifth, and kept.
    const check = checkNozzles({
      catches: ounces(30, 36, 31, 20, 30, 31),
      time: qty(1, "min"),
      against: "spread",
    });
    expect(check).toMatchObject({ clean: [3], replace: [], rule: { against: "spread" } });
    const even = checkNozzles({ catches: ounces(30, 31, 30), time: qty(1, "min"), against: "spread" });
    expect(even).toMatchObject({ clean: [], replace: [] });
  });

  it("takes weights against a rated flow by weight, and no flow of another kind", () => {
    const catches = [100, 120].map((grams) => qty(grams, "g"));
    const weighed = { catches, time: qty(1, "min"), against: "rated" } as const;
    expect(checkNozzles({ ...weighed, rated: qty(100, "g/min") })).toMatchObject({ clean: [], replace: [1] });
    expectRefused(
      () => checkNozzles({ ...weighed, rated: qty(1, "L/min") } as never),
      "wrong-dimension",
      "rated",
    );
    expectRefused(
      () => checkNozzles({ ...boom, against: "rated", rated: qty(1, "kg/min") } as never),
      "wrong-dimension",
      "rated",
    );
    expectRefused(
      () => checkNozzles({ ...weighed, rated: qty(1, "ft") } as never),
      "wrong-dimension",
      "rated",
    );
  });

  it("names a rated flow, a speed or a width at fault once, not as one that is missing too", () => {
    const faults = (change: object) =>
      refusal(() => checkNozzles({ ...boom, ...change } as never)).issues.map(({ path }) => path);
    expect(faults({ against: "rated", rated: true })).toEqual(["rated"]);
    expect(faults({ speed: true, width: qty(20, "in") })).toEqual(["speed"]);
    expect(faults({ speed: qty(3, "mph"), width: true })).toEqual(["width"]);
  });

  it("cannot tell which of two nozzles is the wrong one without a rated flow", () => {
    const two = { catches: ounces(40, 50), time: qty(1, "min") };
    expect(checkNozzles({ ...two, against: "mean" })).toMatchObject({ clean: [0], replace: [1] });
    expect(checkNozzles({ ...two, against: "spread" })).toMatchObject({ clean: [0], replace: [1] });
    expect(checkNozzles({ ...two, against: "rated", rated: qty(40, "fl_oz/min") })).toMatchObject({
      clean: [],
      replace: [1],
    });
  });

  refusesMisuse(
    "checkNozzles",
    checkNozzles,
    { ...boom, limit: qty(5, "%"), speed: qty(3, "mph"), width: qty(20, "in") },
    ["catches", "catches.2", "time", "against", "limit", "speed", "width"],
  );
  refusesMisuse(
    "checkNozzles against a rated flow",
    checkNozzles,
    { ...boom, against: "rated", rated: qty(1, "L/min") },
    ["rated"],
  );

  it("refuses fewer than two nozzles, since one has no spread", () => {
    expectRefused(() => checkNozzles({ ...boom, catches: ounces(40) }), "too-few", "catches");
  });

  it("refuses a boom of more than 500 nozzles", () => {
    expectRefused(
      () => checkNozzles({ ...boom, catches: Array(501).fill(qty(1, "L")) }),
      "out-of-range",
      "catches",
    );
  });

  it("refuses a rated flow that the rule does not use, and a rule on one that is not given", () => {
    expectRefused(() => checkNozzles({ ...boom, rated: qty(1, "L/min") }), "conflict", "rated");
    expectRefused(() => checkNozzles({ ...boom, against: "rated" }), "missing", "rated");
    expectRefused(
      () => checkNozzles({ ...boom, against: "rated", rated: qty(1, "kg/min") } as never),
      "wrong-dimension",
      "rated",
    );
  });

  it("refuses a speed without a width, and the reverse", () => {
    expectRefused(() => checkNozzles({ ...boom, speed: qty(3, "mph") }), "missing", "width");
    expectRefused(() => checkNozzles({ ...boom, width: qty(3, "ft") }), "missing", "speed");
  });
});

describe("checkAgainstTarget", () => {
  const input = { rate: qty(21, "gal/ac"), target: qty(20, "gal/ac") };

  it("tells how far the rate is from the one wanted, and whether that will do", () => {
    expect(checkAgainstTarget(input)).toEqual({ deviation: qty(5, "%"), limit: qty(5, "%"), within: true });
    expect(checkAgainstTarget({ ...input, limit: qty(4, "%") }).within).toBe(false);
    expect(checkAgainstTarget({ ...input, rate: qty(18, "gal/ac") })).toMatchObject({
      deviation: qty(-10, "%"),
      within: false,
    });
  });

  refusesMisuse("checkAgainstTarget", checkAgainstTarget, { ...input, limit: qty(5, "%") }, [
    "rate",
    "target",
    "limit",
  ]);

  it("refuses flows, which say nothing of an area", () => {
    const flows = { rate: qty(1, "L/min"), target: qty(1, "L/min") };
    expectRefused(() => checkAgainstTarget(flows as never), "wrong-dimension", "rate");
    expectRefused(
      () => checkAgainstTarget({ ...input, target: flows.target } as never),
      "wrong-dimension",
      "target",
    );
  });
});
