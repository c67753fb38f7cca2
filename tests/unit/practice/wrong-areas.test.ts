import { describe, it } from "vitest";
import { qty } from "../../../src/units/index.ts";
import { expectWrongAnswers } from "../../helpers/wrong-answers.ts";

// 43,560 sq ft to the acre and 4,840 sq yd; 0.40468564224 ha to the acre.
describe("the wrong answers of areas, by hand", () => {
  it("are those of a rectangle", () => {
    const given = { length: qty(330, "ft"), width: qty(264, "ft") };
    const feet = 330 * 264;
    expectWrongAnswers("rectangle-area", "us", given, feet / 43_560, {
      "land-unit-left": feet,
      "wrong-land-factor": feet / 4840,
      "land-factor-inverted": feet * 43_560,
      "other-land-unit": (feet / 43_560) * 0.40468564224,
      "land-unit-from-other": (feet / 43_560) * 0.40468564224,
      "fraction-inverted": 43_560 / feet,
      halved: feet / 2 / 43_560,
      "sides-added": (330 + 264) / 43_560,
      "perimeter-taken": (2 * (330 + 264)) / 43_560,
    });
  });
});
