import { describe, it } from "vitest";
import { qty } from "../../../src/units/index.ts";
import { expectWrongAnswers } from "../../helpers/wrong-answers.ts";

// 43,560 sq ft to the acre and 4,840 sq yd; 10,000 sq m to the hectare and 1,000 to a tenth of it; 0.40468564224 ha to the acre.
describe("the wrong answers of areas, by hand", () => {
  it("are those of a rectangle", () => {
    const given = { length: qty(330, "ft"), width: qty(264, "ft") };
    const feet = 330 * 264;
    expectWrongAnswers("rectangle-area", "us", given, feet / 43_560, {
      "land-unit-left": feet,
      "wrong-land-factor": feet / 4840,
      "land-factor-inverted": feet * 43_560,
      "other-land-unit": (feet / 43_560) * 0.40468564224,
      "land-unit-from-other": feet / 10_000,
      "fraction-inverted": 43_560 / feet,
      halved: feet / 2 / 43_560,
      "sides-added": (330 + 264) / 43_560,
      "perimeter-taken": (2 * (330 + 264)) / 43_560,
    });
    const meters = 120 * 40;
    expectWrongAnswers("rectangle-area", "metric", { length: qty(120, "m"), width: qty(40, "m") }, 0.48, {
      "land-unit-left": meters,
      "wrong-land-factor": meters / 1000,
      "land-factor-inverted": meters * 10_000,
      "other-land-unit": meters / 10_000 / 0.40468564224,
      "land-unit-from-other": meters / 43_560,
      "fraction-inverted": 10_000 / meters,
      halved: meters / 2 / 10_000,
      "sides-added": (120 + 40) / 10_000,
      "perimeter-taken": (2 * (120 + 40)) / 10_000,
    });
  });

  it("are those of a triangle", () => {
    const given = { base: qty(242, "ft"), height: qty(180, "ft") };
    const feet = (242 * 180) / 2;
    expectWrongAnswers("triangle-area", "us", given, feet / 43_560, {
      "land-unit-left": feet,
      "not-halved": (242 * 180) / 43_560,
      "halved-twice": (242 * 180) / 2 / 2 / 43_560,
      // With the half and without it.
      "base-and-height-added": [(242 + 180) / 2 / 43_560, (242 + 180) / 43_560],
      "wrong-land-factor": feet / 4840,
      "land-factor-inverted": feet * 43_560,
      "other-land-unit": (feet / 43_560) * 0.40468564224,
      "land-unit-from-other": feet / 10_000,
      "fraction-inverted": 43_560 / feet,
    });
    const meters = (110 * 80) / 2;
    expectWrongAnswers("triangle-area", "metric", { base: qty(110, "m"), height: qty(80, "m") }, 0.44, {
      "land-unit-left": meters,
      "not-halved": (110 * 80) / 10_000,
      "halved-twice": (110 * 80) / 2 / 2 / 10_000,
      "base-and-height-added": [(110 + 80) / 2 / 10_000, (110 + 80) / 10_000],
      "wrong-land-factor": meters / 1000,
      "land-factor-inverted": meters * 10_000,
      "other-land-unit": meters / 10_000 / 0.40468564224,
      "land-unit-from-other": meters / 43_560,
      "fraction-inverted": 10_000 / meters,
    });
  });

  it("are those of a trapezoid", () => {
    // 0.73 acres are too near to themselves upside down: no estimate shows that.
    for (const [height, upsideDown] of [
      [60.5, { "fraction-inverted": 43_560 / (((330 + 198) / 2) * 60.5) }],
      [121, {}],
    ] as const) {
      const feet = ((330 + 198) / 2) * height;
      const given = { base: qty(330, "ft"), top: qty(198, "ft"), height: qty(height, "ft") };
      expectWrongAnswers("trapezoid-area", "us", given, feet / 43_560, {
        "land-unit-left": feet,
        "mean-not-taken": ((330 + 198) * height) / 43_560,
        "long-side-only": (330 * height) / 43_560,
        "short-side-only": (198 * height) / 43_560,
        "all-multiplied": (330 * 198 * height) / 43_560,
        "wrong-land-factor": feet / 4840,
        "land-factor-inverted": feet * 43_560,
        "other-land-unit": (feet / 43_560) * 0.40468564224,
        "land-unit-from-other": feet / 10_000,
        ...upsideDown,
      });
    }
    const meters = ((80 + 40) / 2) * 50;
    const inMeters = { base: qty(80, "m"), top: qty(40, "m"), height: qty(50, "m") };
    expectWrongAnswers("trapezoid-area", "metric", inMeters, 0.3, {
      "land-unit-left": meters,
      "mean-not-taken": ((80 + 40) * 50) / 10_000,
      "long-side-only": (80 * 50) / 10_000,
      "short-side-only": (40 * 50) / 10_000,
      "all-multiplied": (80 * 40 * 50) / 10_000,
      "wrong-land-factor": meters / 1000,
      "land-factor-inverted": meters * 10_000,
      "other-land-unit": meters / 10_000 / 0.40468564224,
      "land-unit-from-other": meters / 43_560,
      "fraction-inverted": 10_000 / meters,
    });
  });
});
