import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  boundaryArea,
  circleArea,
  compositeArea,
  groundArea,
  offsetsArea,
  rectangleArea,
  treatAll,
  unequalOffsetsArea,
} from "../../../src/area/index.ts";
import { qty } from "../../../src/units/index.ts";
import {
  boundaryArea as boundaryAreaLines,
  compositeArea as compositeAreaLines,
  offsetsArea as offsetsAreaLines,
  unequalOffsetsArea as unequalOffsetsAreaLines,
} from "../../../src/working/index.ts";
import { refusesMisuse } from "../../helpers/bad-input.ts";
import { Rational, ulpError } from "../../helpers/rational.ts";
import { expectRefused, refusal } from "../../helpers/refusal.ts";
import { expectLinesTrue } from "../../helpers/working.ts";

const m = (value: number) => qty(value, "m");
const exact = Rational.fromNumber;

describe("offsetsArea", () => {
  // Calculation of Areas from Offsets to a Base Line, Surveying (course notes at softecksblog.in), example 1.
  const first = {
    offsets: [3.15, 4.3, 8.2, 5.6, 6.85, 7.6, 4.2, 5.6, 4.3].map(m),
    spacing: m(10),
  };
  // Area by Offsets from a Straight Line (course notes, 2023), examples 1 and 2.
  const second = {
    offsets: [0.8, 3.6, 4.7, 5.3, 3.9, 2.7, 4.6, 5.5, 4.9, 7.6, 8.8, 5.4, 6].map(m),
    spacing: m(3.5),
  };

  it.each([
    ["trapezoidal", first, 460.75, 0.005],
    ["simpson", first, 461.167, 0.0005],
    ["trapezoidal", second, 211.4, 0.05],
    ["simpson", second, 211.17, 0.005],
  ] as const)("gives the surveyors' %s area", (rule, plot, printed, within) => {
    const ours = offsetsArea({ ...plot, rule });
    expect(Math.abs(ours.value - printed)).toBeLessThanOrEqual(within);
    expect(ours).toEqual({ value: ours.value, unit: "m2", of: "ground" });
  });

  it("is ground area, that can be given on", () => {
    const lawn = offsetsArea({ offsets: [m(4)], spacing: m(10), rule: "mid-strip" });
    expect(lawn).toEqual({ value: 40, unit: "m2", of: "ground" });
    expect(treatAll(lawn)).toEqual({ value: 40, unit: "m2", of: "treated" });
  });

  it("is exact for straight sides by the trapezoidal rule, and for a parabola by Simpson's", () => {
    const line = [2, 4, 6, 8, 10].map(m);
    expect(offsetsArea({ offsets: line, spacing: m(1), rule: "trapezoidal" }).value).toBe(24);
    const parabola = [0, 3, 4, 3, 0].map(m);
    // x (4 − x) from 0 to 4 is 32/3.
    expect(offsetsArea({ offsets: parabola, spacing: m(1), rule: "simpson" }).value).toBeCloseTo(32 / 3, 12);
  });

  it("refuses an even number of offsets for Simpson's rule, a rule it does not know, and offsets of nothing", () => {
    const four = { offsets: [1, 2, 3, 4].map(m), spacing: m(1) };
    expectRefused(() => offsetsArea({ ...four, rule: "simpson" }), "conflict", "offsets", "odd number");
    expectRefused(() => offsetsArea({ ...four, rule: "average" as never }), "unknown-choice", "rule");
    expectRefused(() => offsetsArea(four as never), "missing", "rule");
    expectRefused(() => offsetsArea({ ...four, offsets: [m(1)], rule: "trapezoidal" }), "too-few", "offsets");
    expectRefused(
      () => offsetsArea({ ...four, offsets: [m(1), m(2)], rule: "simpson" }),
      "too-few",
      "offsets",
    );
    expectRefused(() => offsetsArea({ ...four, offsets: [], rule: "mid-strip" }), "too-few", "offsets");
    expectRefused(
      () => offsetsArea({ ...four, offsets: [m(0), m(0)], rule: "trapezoidal" }),
      "out-of-range",
      "offsets",
    );
    expectRefused(
      () => offsetsArea({ ...four, offsets: [m(1), m(-1)], rule: "trapezoidal" }),
      "out-of-range",
      "offsets[1]",
    );
  });

  it("shows working that is true and ends at its own area", () => {
    for (const rule of ["trapezoidal", "simpson", "mid-strip"] as const) {
      const plot = { offsets: [...first.offsets.slice(1), qty(20, "ft")], spacing: qty(30, "ft"), rule };
      const odd = { ...plot, offsets: [m(1), ...plot.offsets] };
      expect(odd.offsets.length % 2).toBe(0);
      const input = rule === "simpson" ? { ...plot, offsets: plot.offsets.slice(0, 7) } : odd;
      const lines = offsetsAreaLines(input);
      expectLinesTrue(lines);
      expect(lines.at(-1)?.result).toEqual(offsetsArea(input));
    }
  });
});

describe("unequalOffsetsArea", () => {
  const strip = {
    stations: [
      [0, 12],
      [20, 18],
      [50, 10],
    ],
    unit: "m",
  } as const;

  it("joins the offsets with straight lines", () => {
    // 20 × 15 + 30 × 14.
    expect(unequalOffsetsArea(strip)).toEqual({ value: 720, unit: "m2", of: "ground" });
  });

  it("is the trapezoidal rule where the spacing is equal", () => {
    const offsets = [0, 8, 6, 7];
    const equal = offsetsArea({ offsets: offsets.map(m), spacing: m(5), rule: "trapezoidal" });
    const stations = offsets.map((offset, i) => [5 * i, offset] as const);
    expect(unequalOffsetsArea({ stations, unit: "m" })).toEqual(equal);
  });

  it("refuses stations that go back, negative offsets, and anything but pairs of numbers", () => {
    const stations = (list: unknown) => () => unequalOffsetsArea({ stations: list as never, unit: "m" });
    expectRefused(
      stations([
        [0, 1],
        [0, 2],
      ]),
      "conflict",
      "stations[1][0]",
      "farther along",
    );
    expectRefused(
      stations([
        [0, 1],
        [5, 2],
        [4, 2],
      ]),
      "conflict",
      "stations[2][0]",
    );
    expectRefused(
      stations([
        [0, 1],
        [5, -2],
      ]),
      "out-of-range",
      "stations[1][1]",
    );
    expectRefused(
      stations([
        [0, 0],
        [5, 0],
      ]),
      "out-of-range",
      "stations",
    );
    expectRefused(stations([[0, 1]]), "too-few", "stations");
    expectRefused(stations([[0, 1], [5]]), "not-a-quantity", "stations[1]");
    expectRefused(stations([[0, 1], "5,2"]), "not-a-quantity", "stations[1]");
    expectRefused(
      stations([
        [0, 1],
        [5, "2"],
      ]),
      "not-a-quantity",
      "stations[1][1]",
    );
    expectRefused(
      stations([
        [0, 1],
        [5, Number.NaN],
      ]),
      "not-finite",
      "stations[1][1]",
    );
    expectRefused(stations([[0, 1], null]), "missing", "stations[1]");
    expectRefused(() => unequalOffsetsArea({ ...strip, unit: "gal" as never }), "wrong-dimension", "unit");
    expectRefused(() => unequalOffsetsArea({ stations: strip.stations } as never), "missing", "unit");
  });

  it("shows working that is true and ends at its own area", () => {
    const yards = { ...strip, unit: "yd" } as const;
    const lines = unequalOffsetsAreaLines(yards);
    expectLinesTrue(lines);
    expect(lines.at(-1)?.result).toEqual(unequalOffsetsArea(yards));
  });
});

describe("boundaryArea", () => {
  it("gives the area of a traverse as a surveying textbook works it out", () => {
    // Open Access Surveying Library, J. A. Mahun, Traverse Computations, chapter G, example 1: corners north and east, and
    // eight products printed to 0.1 ft². Half the difference of their sums is the area.
    const corners = [
      [500, 2000],
      [323.614, 1561.426],
      [526.996, 1488.321],
      [719.336, 1686.956],
    ] as const;
    const one = 647228.0 + 822865.2 + 1070602.9 + 843478.0;
    const other = 780713.0 + 481641.5 + 889019.1 + 1438672.0;
    const area = boundaryArea({ corners, unit: "ft" });
    expect(Math.abs(area.value - (other - one) / 2)).toBeLessThanOrEqual((8 * 0.05) / 2);
    expect(area).toMatchObject({ unit: "ft2", of: "ground" });
  });

  it("is exact to the last digits of a map grid, against fractions of whole numbers", () => {
    const offset = fc.double({ min: 0, max: 60, noNaN: true });
    for (const radii of fc.sample(fc.array(offset, { minLength: 5, maxLength: 9 }), {
      numRuns: 60,
      seed: 9,
    })) {
      const corners = radii.map((radius, i) => {
        const angle = (2 * Math.PI * i) / radii.length;
        return [
          500_123.456 + (40 + radius) * Math.cos(angle),
          4_500_654.321 + (40 + radius) * Math.sin(angle),
        ] as const;
      });
      const twice = corners.reduce((sum, [x, y], i) => {
        const [nextX, nextY] = corners[(i + 1) % corners.length] as readonly [number, number];
        const [one, other] = [exact(x).times(exact(nextY)), exact(nextX).times(exact(y))];
        return sum.plus(one.minus(other));
      }, Rational.of(0));
      const ours = boundaryArea({ corners, unit: "m" }).value;
      expect(ulpError(ours, twice.over(Rational.of(2)))).toBeLessThanOrEqual(8);
    }
  });

  it("agrees with the rectangle, in every unit of length", () => {
    for (const unit of ["in", "ft", "yd", "mi", "mm", "cm", "m", "km"] as const) {
      const corners = [
        [0, 0],
        [80, 0],
        [80, 60],
        [0, 60],
      ] as const;
      const rectangle = rectangleArea({ length: qty(80, unit), width: qty(60, unit) });
      const ours = boundaryArea({ corners, unit });
      expect(ours.unit).toBe(rectangle.unit);
      expect(Math.abs(ours.value / rectangle.value - 1)).toBeLessThan(1e-15);
    }
  });

  it("keeps its digits far from the origin, as on a map grid", () => {
    // A plot of 10 m by 10 m at UTM coordinates to the millimetre.
    const [x, y] = [500123.456, 4500654.321];
    const corners = [
      [x, y],
      [x + 10, y],
      [x + 10, y + 10],
      [x, y + 10],
    ] as const;
    const side = x + 10 - x;
    expect(boundaryArea({ corners, unit: "m" }).value).toBe(side * (y + 10 - y));
  });

  it("takes a boundary that comes back to its first corner, and one where the walker stood still", () => {
    const corners = [
      [0, 0],
      [200, 0],
      [200, 0],
      [200, 120],
      [0, 120],
      [0, 0],
    ] as const;
    expect(boundaryArea({ corners, unit: "m" }).value).toBe(24000);
  });

  it("lets a boundary with straight angles and collinear corners through", () => {
    const corners = [
      [0, 0],
      [1, 0],
      [2, 0],
      [2, 1],
      [2, 2],
      [1, 2],
      [0, 2],
      [0, 1],
    ] as const;
    expect(boundaryArea({ corners, unit: "m" }).value).toBe(4);
  });

  it.each([
    [
      "crosses itself like an hourglass",
      [
        [0, 0],
        [10, 10],
        [10, 0],
        [0, 10],
      ],
      "corners[2]",
      "(5, 5)",
    ],
    [
      "touches a side with a corner",
      [
        [0, 0],
        [10, 0],
        [10, 10],
        [5, 0],
        [0, 10],
      ],
      "corners[3]",
      "(5, 0)",
    ],
    [
      "comes twice to one corner",
      [
        [0, 0],
        [1, 1],
        [2, 0],
        [2, 2],
        [1, 1],
        [0, 2],
      ],
      "corners[4]",
      "(1, 1)",
    ],
    [
      "crosses itself at a corner",
      [
        [0, 0],
        [1, 1],
        [2, 2],
        [2, 0],
        [1, 1],
        [0, 2],
      ],
      "corners[4]",
      "(1, 1)",
    ],
    [
      "turns back on its own way",
      [
        [0, 0],
        [10, 0],
        [5, 0],
        [5, 5],
      ],
      "corners[2]",
      "(5, 0)",
    ],
    [
      "lies on one line",
      [
        [0, 0],
        [10, 0],
        [5, 0],
      ],
      "corners[2]",
      "(0, 0)",
    ],
  ] as const)("refuses a boundary that %s, and says where", (_, corners, path, place) => {
    const error = refusal(() => boundaryArea({ corners, unit: "m" }));
    expect(error.code).toBe("conflict");
    expect(error.message).toContain(place);
    expect(error.path).toBe(path);
  });

  it("counts corners as they were given, repeated ones included", () => {
    const corners = [
      [0, 0],
      [0, 0],
      [10, 10],
      [10, 0],
      [0, 10],
    ] as const;
    const error = refusal(() => boundaryArea({ corners, unit: "m" }));
    expect(error.path).toBe("corners[3]");
    expect(error.message).toContain("from corner 1 to corner 3 meets the side from corner 4 to corner 5");
  });

  it("refuses a boundary of two points, of one point many times, and of none", () => {
    const of = (corners: unknown) => () => boundaryArea({ corners: corners as never, unit: "m" });
    expectRefused(
      of([
        [0, 0],
        [1, 1],
      ]),
      "too-few",
      "corners",
    );
    expectRefused(
      of([
        [0, 0],
        [1, 1],
        [0, 0],
      ]),
      "too-few",
      "corners",
      "2 different corners",
    );
    expectRefused(
      of([
        [3, 3],
        [3, 3],
        [3, 3],
      ]),
      "too-few",
      "corners",
    );
    expectRefused(of([]), "too-few", "corners");
    expectRefused(of(undefined), "missing", "corners");
  });

  it("refuses corners that are no pairs of finite numbers, and units that are no lengths", () => {
    const of = (corner: unknown) => () =>
      boundaryArea({ corners: [[0, 0], [1, 0], corner as never], unit: "m" });
    expectRefused(of([1, Number.NaN]), "not-finite", "corners[2][1]");
    expectRefused(of(["1", 1]), "not-a-quantity", "corners[2][0]");
    expectRefused(of([1, null]), "missing", "corners[2][1]");
    expectRefused(of({ x: 1, y: 1 }), "not-a-quantity", "corners[2]");
    const far = [
      [0, 0],
      [1e200, 0],
      [1e200, 1e200],
    ] as const;
    expectRefused(() => boundaryArea({ corners: far, unit: "m" }), "out-of-range", "corners[1][0]");
    const corners = [
      [0, 0],
      [1, 0],
      [1, 1],
    ] as const;
    expectRefused(() => boundaryArea({ corners } as never), "missing", "unit");
    expectRefused(() => boundaryArea({ corners, unit: "ac" as never }), "wrong-dimension", "unit");
    expectRefused(() => boundaryArea({ corners, unit: "feet" as never }), "unknown-unit", "unit");
  });

  it("shows working that is true and ends at its own area, either way round", () => {
    const corners = [
      [0, 0],
      [200, 0],
      [200, 120],
      [80, 50],
      [0, 90],
    ] as const;
    for (const input of [
      { corners, unit: "ft" },
      { corners: [...corners].reverse(), unit: "yd" },
      { corners: corners.map(([x, y]) => [x + 500000, y + 4500000] as const), unit: "m" },
    ] as const) {
      const lines = boundaryAreaLines(input);
      expectLinesTrue(lines);
      expect(lines.at(-1)?.result).toEqual(boundaryArea(input));
    }
  });
});

describe("the formula of offsets", () => {
  it("names no weight and no divisor of one", () => {
    const formula = (rule: "trapezoidal" | "simpson" | "mid-strip", n: number) =>
      offsetsAreaLines({ offsets: Array.from({ length: n }, () => m(4)), spacing: m(10), rule }).at(-1)
        ?.formula;
    expect(formula("trapezoidal", 3)).toBe("spacing * (x1 + 2 * x2 + x3) / 2");
    expect(formula("simpson", 3)).toBe("spacing * (x1 + 4 * x2 + x3) / 3");
    expect(formula("mid-strip", 2)).toBe("spacing * (x1 + x2)");
  });
});

describe("compositeArea", () => {
  const field = rectangleArea({ length: m(100), width: m(50) });
  const pond = circleArea({ diameter: m(10) });

  it("adds shapes and takes shapes out", () => {
    expect(compositeArea({ add: [field], subtract: [pond] }).value).toBeCloseTo(5000 - 25 * Math.PI, 9);
    const acres = [groundArea(qty(1.5, "ac")), groundArea(qty(0.25, "ac"))];
    expect(compositeArea({ add: acres, subtract: [groundArea(qty(0.75, "ac"))] })).toEqual({
      value: 43560,
      unit: "ft2",
      of: "ground",
    });
    expect(compositeArea({ add: [field] })).toEqual(field);
  });

  it("refuses to take out all of it, treated area, and an empty list", () => {
    expectRefused(() => compositeArea({ add: [pond], subtract: [field] }), "conflict", "subtract");
    expectRefused(() => compositeArea({ add: [field], subtract: [field] }), "conflict", "subtract");
    expect(compositeArea({ add: [field], subtract: [] })).toEqual(field);
    const many = Array.from({ length: 1001 }, () => groundArea(qty(1, "m2")));
    expectRefused(() => compositeArea({ add: [field], subtract: many }), "out-of-range", "subtract");
    expectRefused(() => compositeArea({ add: [treatAll(field) as never] }), "wrong-area", "add[0]");
    expectRefused(
      () => compositeArea({ add: [field], subtract: [qty(1, "m2") as never] }),
      "wrong-area",
      "subtract[0]",
    );
    expectRefused(() => compositeArea({ add: [] }), "too-few", "add");
  });

  it("shows working that is true and ends at its own area", () => {
    const input = { add: [field, groundArea(qty(1, "ac"))], subtract: [pond, groundArea(qty(900, "ft2"))] };
    const lines = compositeAreaLines(input);
    expectLinesTrue(lines);
    expect(lines.at(-1)?.result).toEqual(compositeArea(input));
  });
});

refusesMisuse("offsetsArea", offsetsArea, { offsets: [m(1), m(2)], spacing: m(1), rule: "trapezoidal" }, [
  "offsets",
  "offsets.0",
  "spacing",
  "rule",
]);
refusesMisuse(
  "unequalOffsetsArea",
  unequalOffsetsArea,
  {
    stations: [
      [0, 1],
      [2, 3],
    ],
    unit: "m",
  },
  ["stations", "stations.1", "unit"],
);
refusesMisuse(
  "boundaryArea",
  boundaryArea,
  {
    corners: [
      [0, 0],
      [1, 0],
      [1, 1],
    ],
    unit: "m",
  },
  ["corners", "corners.1", "unit"],
);
refusesMisuse("compositeArea", compositeArea, { add: [groundArea(m2(3))], subtract: [groundArea(m2(1))] }, [
  "add",
  "add.0",
  "subtract.0",
]);

function m2(value: number) {
  return qty(value, "m2");
}
