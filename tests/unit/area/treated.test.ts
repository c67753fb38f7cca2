import { describe, expect, it } from "vitest";
import {
  groundArea,
  rectangleArea,
  spotsArea,
  treatAll,
  treatedArea,
  treatedFraction,
  treatPart,
} from "../../../src/area/index.ts";
import { qty } from "../../../src/units/index.ts";
import {
  spotsArea as spotsAreaLines,
  treatedFraction as treatedFractionLines,
  treatPart as treatPartLines,
} from "../../../src/working/index.ts";
import { refusesMisuse } from "../../helpers/bad-input.ts";
import { expectRefused } from "../../helpers/refusal.ts";
import { expectLinesTrue } from "../../helpers/working.ts";

const ground = groundArea(qty(1, "ac"));
const treated = treatedArea(qty(10890, "ft2"));

describe("ground and treated area", () => {
  it("are marked by the one who measured them", () => {
    expect(ground).toEqual({ value: 1, unit: "ac", of: "ground" });
    expect(treated).toEqual({ value: 10890, unit: "ft2", of: "treated" });
    expect(groundArea(ground)).toEqual(ground);
  });

  it("are not marked over", () => {
    expectRefused(() => groundArea(treated as never), "wrong-area", "area", "This is treated area");
    expectRefused(() => treatedArea(ground as never), "wrong-area", "area", "This is ground area");
    expectRefused(() => treatedArea(qty(0, "ac")), "out-of-range", "area");
    expectRefused(() => treatedArea(qty(1, "ft") as never), "wrong-dimension", "area");
  });

  it("are the same for a broadcast spray, in the same unit", () => {
    expect(treatAll(ground)).toEqual({ value: 1, unit: "ac", of: "treated" });
    const lawn = rectangleArea({ length: qty(50, "ft"), width: qty(30, "ft") });
    expect(treatAll(lawn).value).toBe(lawn.value);
  });

  it("are never taken for one another", () => {
    expectRefused(() => treatAll(treated as never), "wrong-area", "ground");
    expectRefused(
      () => treatAll(qty(1, "ac") as never),
      "wrong-area",
      "ground",
      "Only ground area goes here.",
    );
    expectRefused(() => treatPart({ ground: treated as never, fraction: 0.5 }), "wrong-area", "ground");
    expectRefused(() => treatedFraction({ treated: ground as never, ground }), "wrong-area", "treated");
    expectRefused(() => treatedFraction({ treated, ground: treated as never }), "wrong-area", "ground");
  });

  it("differ by the treated part", () => {
    expect(treatPart({ ground, fraction: 0.25 })).toEqual(treated);
    expect(treatedFraction({ treated, ground })).toBe(0.25);
    expect(treatedFraction({ treated: treatedArea(qty(43560, "ft2")), ground })).toBe(1);
  });

  it("refuse more treated than there is ground, and parts that are none", () => {
    const more = treatedArea(qty(43561, "ft2"));
    expectRefused(() => treatedFraction({ treated: more, ground }), "conflict", "treated");
    expectRefused(() => treatPart({ ground, fraction: 0 }), "out-of-range", "fraction");
    expectRefused(() => treatPart({ ground, fraction: 1.01 }), "out-of-range", "fraction");
    expectRefused(() => treatPart({ ground, fraction: 50 }), "out-of-range", "fraction");
  });
});

describe("spotsArea", () => {
  it("tells the treated part of the ground, all of it at most", () => {
    const ground = { value: 40, unit: "ft2", of: "ground" } as const;
    const part = (count: number) => spotsArea({ spots: [{ count, each: qty(1, "ft2") }], ground }).fraction;
    expect([part(10), part(30), part(40)]).toEqual([0.25, 0.75, 1]);
  });

  const spots = [
    { count: 12, length: qty(4, "ft"), width: qty(36, "in") },
    { count: 5, each: qty(20, "ft2") },
    { count: 2, diameter: qty(10, "ft") },
  ];

  it("adds up spots of every size and shape", () => {
    expect(spotsArea({ spots }).treated.value).toBeCloseTo(12 * 12 + 5 * 20 + 2 * 25 * Math.PI, 10);
    expect(spotsArea({ spots: [{ count: 1, each: qty(2, "m2") }] }).treated).toEqual({
      value: 2,
      unit: "m2",
      of: "treated",
    });
  });

  it("gives the treated part of the ground where that is known", () => {
    const found = spotsArea({ spots: [{ count: 10, each: qty(4356, "ft2") }], ground });
    expect(found).toEqual({ treated: { value: 43560, unit: "ft2", of: "treated" }, ground, fraction: 1 });
  });

  it("refuses spots that are more than their ground, spots of two sizes, and none", () => {
    const small = groundArea(qty(100, "ft2"));
    expectRefused(() => spotsArea({ spots, ground: small }), "conflict", "spots");
    expectRefused(() => spotsArea({ spots, ground: treated as never }), "wrong-area", "ground");
    expectRefused(() => spotsArea({ spots: [] }), "too-few", "spots");
    const two = [{ count: 1, diameter: qty(1, "m"), each: qty(1, "m2") }];
    expectRefused(() => spotsArea({ spots: two }), "conflict", "spots[0].each");
    expectRefused(
      () => spotsArea({ spots: [{ count: 1.5, diameter: qty(1, "m") }] }),
      "out-of-range",
      "spots[0].count",
    );
    expectRefused(
      () => spotsArea({ spots: [{ count: 1, width: qty(1, "m") } as never] }),
      "missing",
      "spots[0].length",
    );
  });

  it("shows working that is true and ends at the treated area", () => {
    const lines = spotsAreaLines({ spots });
    expectLinesTrue(lines);
    expect(lines.at(-1)?.result).toEqual(spotsArea({ spots }).treated);
  });
});

describe("the working of treated parts", () => {
  it("is true and ends at its own result", () => {
    const part = { ground: groundArea(qty(2, "ha")), fraction: 0.3 };
    expectLinesTrue(treatPartLines(part));
    expect(treatPartLines(part).at(-1)?.result).toEqual(treatPart(part));
    expectLinesTrue(treatedFractionLines({ treated, ground }));
    expect(treatedFractionLines({ treated, ground }).at(-1)?.result).toBe(0.25);
  });
});

refusesMisuse("treatPart", treatPart, { ground, fraction: 0.5 }, ["ground", "fraction"]);
refusesMisuse("treatedFraction", treatedFraction, { ground, treated }, ["ground", "treated"]);
refusesMisuse(
  "spotsArea",
  spotsArea,
  {
    spots: [
      { count: 1, diameter: qty(1, "m") },
      { count: 1, length: qty(1, "m"), width: qty(1, "m") },
    ],
    ground,
  },
  ["spots", "spots.0", "spots.0.count", "spots.1.length", "spots.1.width", "ground"],
);
