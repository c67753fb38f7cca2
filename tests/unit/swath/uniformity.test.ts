import { describe, expect, it } from "vitest";
import { patternUniformity, widestSwath } from "../../../src/swath/index.ts";
import { qty } from "../../../src/units/index.ts";
import { patternUniformity as patternUniformityLines } from "../../../src/working/index.ts";
import { refusesMisuse } from "../../helpers/bad-input.ts";
import { expectRefused, refusal } from "../../helpers/refusal.ts";
import { expectLinesTrue } from "../../helpers/working.ts";

const m = (value: number) => qty(value, "m");
const mL = (values: readonly number[]) => values.map((value) => qty(value, "mL"));
const of = (values: readonly number[], travel: "one-way" | "back-and-forth" = "one-way") => ({
  catches: mL(values),
  spacing: m(0.5),
  travel,
});

describe("patternUniformity", () => {
  it("is the textbook CV where passes do not overlap", () => {
    // Mean 20, squared deviations 100, 0, 100: √(200/3) / 20.
    const found = patternUniformity({ ...of([10, 20, 30]), swath: m(1.5) });
    expect(found.cv.value).toBeCloseTo((Math.sqrt(200 / 3) / 20) * 100, 10);
    expect(found).toMatchObject({ mean: qty(20, "mL"), least: qty(10, "mL"), most: qty(30, "mL") });
  });

  it("is zero for an even catch at its own width, and at each whole part of it", () => {
    for (const travel of ["one-way", "back-and-forth"] as const) {
      for (const swath of [3, 1.5, 1, 0.5]) {
        expect(patternUniformity({ ...of([7, 7, 7, 7, 7, 7], travel), swath: m(swath) }).cv).toEqual(
          qty(0, "%"),
        );
      }
    }
  });

  it("is zero for an even catch of any amount: the mean is the amount itself", () => {
    for (const amount of [0.1, 0.3, 0.7, 1 / 3, 1e-9, 12345.678]) {
      const found = patternUniformity({ ...of([amount, amount, amount]), swath: m(1.5) });
      expect([found.cv, found.mean, found.least, found.most]).toEqual([
        qty(0, "%"),
        ...[1, 2, 3].map(() => qty(amount, "mL")),
      ]);
    }
  });

  it("adds up what neighbouring passes leave: slopes that fit are even", () => {
    // 10 20 30 30 20 10 laid every 4 places: 30, 30, 30, 30 (the slopes of 2 places overlap).
    const found = patternUniformity({ ...of([10, 20, 30, 30, 20, 10]), swath: m(2) });
    expect(found).toEqual({
      cv: qty(0, "%"),
      mean: qty(30, "mL"),
      least: qty(30, "mL"),
      most: qty(30, "mL"),
    });
  });

  it("tells one-way from back-and-forth where the pattern is lopsided", () => {
    // A slope from 0 to 30 laid every 4 places: one-way it stays; back and forth, high edges meet high edges.
    const slope = [40, 30, 20, 10];
    const oneWay = patternUniformity({ ...of(slope), swath: m(1) });
    expect(oneWay).toMatchObject({ least: qty(40, "mL"), most: qty(60, "mL") });
    // Every 2 places, one-way: 40 + 20 and 30 + 10. Back and forth, pass by pass from the middle on:
    // 20 + 10, 10 + 20 (turned), then 40 + 30, 30 + 40.
    const back = patternUniformity({ ...of(slope, "back-and-forth"), swath: m(1) });
    expect(back).toMatchObject({ least: qty(30, "mL"), most: qty(70, "mL"), mean: qty(50, "mL") });
    expect(back.cv.value).toBeCloseTo(40, 10);
    expect(oneWay.cv.value).toBeCloseTo(20, 10);
  });

  it("does not tell the two apart where the pattern is even to both sides", () => {
    const even = [3, 8, 12, 13, 12, 8, 3];
    for (const swath of [3.5, 2.75, 2, 1.3]) {
      const oneWay = patternUniformity({ ...of(even), swath: m(swath) });
      const back = patternUniformity({ ...of(even, "back-and-forth"), swath: m(swath) });
      expect(back.cv.value).toBeCloseTo(oneWay.cv.value, 9);
    }
  });

  it("leaves bare ground between passes that do not meet", () => {
    // 3 places of 4 sprayed evenly: mean 3/4 of the catch, CV √(1/3).
    const found = patternUniformity({ ...of([8, 8, 8]), swath: m(2) });
    expect(found).toMatchObject({ mean: qty(6, "mL"), least: qty(0, "mL") });
    expect(found.cv.value).toBeCloseTo(Math.sqrt(1 / 3) * 100, 10);
  });

  it("weighs strips by their width at a swath between two places", () => {
    // Width 2 of even catch 6 laid every 1.75: a quarter of a place, a seventh of the swath, gets both.
    const found = patternUniformity({
      catches: mL([6, 6]),
      spacing: m(1),
      travel: "one-way",
      swath: m(1.75),
    });
    expect(found.mean.value).toBeCloseTo(12 / 1.75, 12);
    const mean = 12 / 1.75;
    const variance = (1.5 * (6 - mean) ** 2 + 0.25 * (12 - mean) ** 2) / 1.75;
    expect(found.cv.value).toBeCloseTo((Math.sqrt(variance) / mean) * 100, 10);
  });

  it("leaves no strip of noise where edges meet in other units", () => {
    const catches = mL([5, 5, 5, 5, 5, 5, 5]);
    const mixed = { catches, spacing: qty(0.1, "m"), travel: "one-way", swath: qty(70, "cm") } as const;
    expect(patternUniformity(mixed).cv.value).toBe(0);
    const feet = { catches, spacing: qty(1, "ft"), travel: "one-way", swath: qty(2.1336, "m") } as const;
    expect(patternUniformity(feet).cv.value).toBe(0);
  });

  it("takes catches of any one dimension, in any of its units", () => {
    const catches = [qty(1, "fl_oz"), qty(2, "tbsp")];
    const found = patternUniformity({ catches, spacing: m(1), travel: "one-way", swath: m(2) });
    expect(found).toMatchObject({ cv: qty(0, "%"), mean: qty(1, "fl_oz") });
    const grams = [qty(1, "g"), qty(2, "g")];
    expect(
      patternUniformity({ catches: grams, spacing: m(1), travel: "one-way", swath: m(2) }).mean.unit,
    ).toBe("g");
  });

  it("shows working that is true and ends at the CV", () => {
    for (const travel of ["one-way", "back-and-forth"] as const) {
      for (const swath of [2.1, 1.5]) {
        const input = { ...of([4, 9, 12, 11, 3], travel), swath: m(swath) };
        const lines = patternUniformityLines(input);
        expectLinesTrue(lines);
        expect(lines.at(-1)?.result).toEqual(patternUniformity(input).cv);
        expect(lines[0]?.result).toEqual(patternUniformity(input).mean);
      }
    }
  });

  it("tells strips in spacings of the catches in its working", () => {
    const { terms = {} } = patternUniformityLines({ ...of([4, 9, 12], "one-way"), swath: m(1.2) })[0] ?? {};
    const widths = Object.entries(terms).filter(([symbol]) => symbol.startsWith("w"));
    expect(widths.reduce((sum, [, width]) => sum + (width as number), 0)).toBeCloseTo(2.4, 8);
  });

  it("takes a cup that stayed dry, and a swath up to a thousand times the pattern", () => {
    expect(patternUniformity({ ...of([0, 10]), swath: m(1) }).mean).toEqual(qty(5, "mL"));
    expect(patternUniformity({ ...of([10, 10]), swath: m(1000) }).mean.value).toBeCloseTo(0.01, 12);
    expectRefused(
      () => patternUniformity({ ...of([10, 10]), swath: m(1000.5) }),
      "out-of-range",
      "swath",
      "2 catches",
    );
  });

  it("refuses catches too large to add up", () => {
    expectRefused(
      () => patternUniformity({ ...of([1e308, 1e308, 1e308]), swath: m(0.5) }),
      "not-finite",
      "catches[0]",
    );
  });

  it("refuses swaths that the catches cannot tell, catches of nothing, and mixed ones", () => {
    const pattern = of([1, 2, 3]);
    expectRefused(() => patternUniformity({ ...pattern, swath: m(0.4) }), "out-of-range", "swath");
    expectRefused(() => patternUniformity({ ...pattern, swath: m(1e9) }), "out-of-range", "swath");
    expectRefused(() => patternUniformity({ ...pattern, swath: m(1e300) }), "not-finite", "swath");
    expectRefused(() => patternUniformity({ ...of([0, 0]), swath: m(1) }), "out-of-range", "catches");
    expectRefused(() => patternUniformity({ ...of([1]), swath: m(1) }), "too-few", "catches");
    expectRefused(() => patternUniformity({ ...of([1, -2]), swath: m(1) }), "out-of-range", "catches[1]");
    const mixed = { ...pattern, catches: [qty(1, "mL"), qty(1, "g")], swath: m(1) };
    expectRefused(() => patternUniformity(mixed as never), "wrong-dimension", "catches[1]");
    expectRefused(
      () => patternUniformity({ ...pattern, travel: "round" as never, swath: m(1) }),
      "unknown-choice",
      "travel",
    );
  });
});

describe("patternUniformity checks its input once", () => {
  const pattern = { ...of([1, 2, 3]), swath: m(1) };

  it("reports every fault, and a field that it does not know", () => {
    const wrong = {
      ...pattern,
      catches: [qty(1, "mL"), qty(1, "g"), qty(2, "ft")],
      swath: m(0.1),
      swaths: m(1),
      spacing: m(0.5),
    };
    expect(
      refusal(() => patternUniformity(wrong as never)).issues.map(({ key, path }) => [key, path]),
    ).toEqual([
      ["field-unknown", "swaths"],
      ["dimension", "catches[1]"],
      ["dimension", "catches[2]"],
      ["swath-too-narrow", "swath"],
    ]);
    expectRefused(
      () =>
        patternUniformity({ ...pattern, catches: [{ ...qty(1, "mL"), units: "mL" }, qty(2, "mL")] } as never),
      "unknown-field",
      "catches[0].units",
    );
    expectRefused(() => widestSwath({ ...of([1, 2, 3]), limits: qty(5, "%") } as never), "missing", "limit");
  });

  it("says what a catch is, in the system of the rest", () => {
    expectRefused(
      () => patternUniformity({ ...pattern, catches: [null, qty(1, "mL")] } as never),
      "missing",
      "catches[0]",
      "Enter what was caught, such as 5 mL.",
    );
    const feet = { ...pattern, spacing: qty(1, "ft"), swath: qty(2, "ft"), catches: [5, 6] };
    expectRefused(() => patternUniformity(feet as never), "not-a-quantity", "catches[0]", "such as 5 fl oz.");
  });

  it("takes nothing for an optional field that is null, and up to 200 catches", () => {
    const limit = qty(500, "%");
    expect(widestSwath({ ...of([1, 2, 3]), limit, step: null } as never)).toEqual(
      widestSwath({ ...of([1, 2, 3]), limit }),
    );
    const many = (count: number) => of(Array.from({ length: count }, (_, i) => 1 + (i % 7)));
    expect(patternUniformity({ ...many(200), swath: m(100) }).mean.value).toBeGreaterThan(3);
    expectRefused(
      () => patternUniformity({ ...many(201), swath: m(100) }),
      "out-of-range",
      "catches",
      "at most 200",
    );
  });
});

describe("edges that meet on the ground", () => {
  const bell = [10, 20, 30, 30, 20, 10];
  const broad = { catches: mL(bell), spacing: qty(60, "cm"), travel: "one-way" } as const;

  it("meet in the numbers, however swaths are tried", () => {
    const found = { swath: m(2.4), cv: qty(0, "%") };
    expect(widestSwath({ ...broad, limit: qty(1e-7, "%"), step: qty(20, "cm") })).toEqual(found);
    expect(widestSwath({ ...broad, limit: qty(0, "%"), step: qty(20, "cm") })).toEqual(found);
    expect(patternUniformity({ ...broad, swath: m(2.4) }).cv).toEqual(qty(0, "%"));
    const feet = { ...broad, spacing: qty(2, "ft"), limit: qty(0, "%"), step: qty(8, "in") };
    expect(widestSwath(feet)).toEqual({ swath: qty(8, "ft"), cv: qty(0, "%") });
  });

  it("leave no unevenness of rounded sums", () => {
    // 0.1 + 0.7 and 0.2 + 0.6 differ in the sixteenth digit.
    const catches = mL([0.1, 0.2, 0.3, 0.4, 0.4, 0.4, 0.7, 0.6, 0.5, 0.4, 0.4, 0.4].map((x) => x * 3));
    const slopes = { catches, spacing: m(0.7), travel: "one-way" } as const;
    const { cv, least, most } = patternUniformity({ ...slopes, swath: m(4.2) });
    expect(cv).toEqual(qty(0, "%"));
    expect(least).toEqual(most);
    expect(most.value).toBeCloseTo(2.4, 12);
  });

  it("are told from edges that are a little apart", () => {
    // Passes of 2 places laid every 2 + e places leave a strip of e bare: CV √(e / 2) for small e.
    const e = 1e-8;
    const found = patternUniformity({
      catches: mL([6, 6]),
      spacing: m(1),
      travel: "one-way",
      swath: m(2 + e),
    });
    expect(found.least).toEqual(qty(0, "mL"));
    expect(found.cv.value / 100 / Math.sqrt(e / 2)).toBeCloseTo(1, 6);
  });
});

describe("widestSwath", () => {
  const bell = of([10, 20, 30, 30, 20, 10]);

  it("finds the widest swath under the limit", () => {
    expect(widestSwath({ ...bell, limit: qty(15, "%") })).toEqual({ swath: m(2), cv: qty(0, "%") });
    expect(widestSwath({ ...bell, limit: qty(50, "%") }).swath).toEqual(m(3));
  });

  it("looks between the places where asked to", () => {
    const fine = widestSwath({ ...bell, limit: qty(15, "%"), step: qty(5, "cm") });
    expect(fine.swath.value).toBeGreaterThan(2);
    expect(fine.cv.value).toBeLessThanOrEqual(15);
    const next = patternUniformity({ ...bell, swath: m(fine.swath.value + 0.05) });
    expect(next.cv.value).toBeGreaterThan(15);
  });

  it("comes down to one spacing, where only that is even", () => {
    // Passes one place apart lay every catch on every place.
    expect(widestSwath({ ...of([50, 1, 20, 3, 90]), limit: qty(0, "%") })).toEqual({
      swath: m(0.5),
      cv: qty(0, "%"),
    });
  });

  it("keeps a limit that is met exactly", () => {
    const { cv } = patternUniformity({ ...bell, swath: m(2.5) });
    expect(widestSwath({ ...bell, limit: cv }).swath).toEqual(m(2.5));
  });

  it("refuses a limit that no swath keeps, and says how near one comes", () => {
    const lopsided = of([50, 1], "back-and-forth");
    expectRefused(
      () => widestSwath({ ...lopsided, limit: qty(1, "%") }),
      "conflict",
      "limit",
      `the most even has ${Math.min(...[0.5, 1].map((width) => patternUniformity({ ...lopsided, swath: m(width) }).cv.value)).toPrecision(3)}%`,
    );
    expectRefused(() => widestSwath({ ...bell, limit: qty(-1, "%") }), "out-of-range", "limit");
    expectRefused(() => widestSwath({ ...bell, limit: qty(1, "m") as never }), "wrong-dimension", "limit");
    expectRefused(
      () => widestSwath({ ...bell, limit: qty(15, "%"), step: qty(1, "mm") }),
      "out-of-range",
      "step",
    );
    const many = of(Array.from({ length: 40 }, () => 1));
    const limit = qty(15, "%");
    expectRefused(
      () => widestSwath({ ...many, limit, step: qty(9, "mm") }),
      "out-of-range",
      "step",
      "0.01 m",
    );
    expect(widestSwath({ ...many, limit, step: qty(10, "mm") }).swath).toEqual(m(20));
    // A hundredth of the spacing is still allowed.
    expect(widestSwath({ ...bell, limit: qty(15, "%"), step: qty(5, "mm") }).swath.value).toBeGreaterThan(2);
    // By fifths of a metre down from 3 m: 2.2 m is too uneven, 2 m is even, and 2.15 m, which would do, is not asked about.
    const cvAt = (width: number) => patternUniformity({ ...bell, swath: m(width) }).cv.value;
    expect([cvAt(2.2) > 15, cvAt(2.15) < 15, cvAt(2)]).toEqual([true, true, 0]);
    expect(widestSwath({ ...bell, limit: qty(15, "%"), step: m(0.2) }).swath.value).toBeCloseTo(2, 8);
  });
});

refusesMisuse("patternUniformity", patternUniformity, { ...of([1, 2, 3]), swath: m(1) }, [
  "catches",
  "catches.0",
  "catches.2",
  "spacing",
  "travel",
  "swath",
]);
refusesMisuse("widestSwath", widestSwath, { ...of([1, 2, 3]), limit: qty(80, "%"), step: m(0.25) }, [
  "catches",
  "catches.1",
  "spacing",
  "travel",
  "limit",
  "step",
]);
