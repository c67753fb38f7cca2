import { describe, expect, it } from "vitest";
import { checkSpreader, spreaderCatch, spreaderRate } from "../../../src/output-rate/index.ts";
import { type Mass, type MassRate, qty } from "../../../src/units/index.ts";
import { SPANISH_WORDS } from "../../../src/words/es.ts";
import * as working from "../../../src/working/index.ts";
import { issueText } from "../../../src/worksheet/index.ts";
import { refusesMisuse } from "../../helpers/bad-input.ts";
import { expectRefused } from "../../helpers/refusal.ts";
import { expectLinesTrue } from "../../helpers/working.ts";

const strip = { swath: qty(2, "ft"), distance: qty(50, "ft") };
const plot = { value: 100, unit: "ft2", of: "treated" } as const;

describe("spreaderRate", () => {
  it("divides the weight by the strip, by the area or by the length of row", () => {
    // 8 oz on 100 sq ft is 5 lb on 1,000, and 217.8 on an acre of 43,560 sq ft: by arithmetic.
    for (const on of [strip, { area: plot }]) {
      const rate = spreaderRate({ used: qty(8, "oz"), ...on });
      expect(rate.unit).toBe("lb/ac");
      expect(rate.value).toBeCloseTo(217.8, 10);
    }
    expect(spreaderRate({ used: qty(2, "oz"), rowLength: qty(250, "ft") })).toEqual(qty(8, "oz/1000ft"));
  });

  it("answers in the system of the weight, whatever the lengths are in", () => {
    const metric = { swath: qty(2, "m"), distance: qty(50, "m") };
    expect(spreaderRate({ used: qty(200, "g"), ...metric })).toEqual(qty(20, "kg/ha"));
    expect(spreaderRate({ used: qty(200, "g"), rowLength: qty(50, "m") })).toEqual(qty(400, "g/100m"));
    expect(spreaderRate({ used: qty(1, "lb"), ...metric }).unit).toBe("lb/ac");
    expect(spreaderRate({ used: qty(1, "kg"), ...strip }).unit).toBe("kg/ha");
  });

  it("shows working that is true and ends at its own result", () => {
    for (const test of [
      { used: qty(8, "oz"), ...strip },
      { used: qty(300, "g"), area: plot },
      { used: qty(2, "oz"), rowLength: qty(80, "m") },
    ]) {
      const lines = working.spreaderRate(test);
      expectLinesTrue(lines);
      expect(lines.at(-1)?.result).toEqual(spreaderRate(test));
    }
  });

  refusesMisuse("spreaderRate on a strip", spreaderRate, { used: qty(8, "oz"), ...strip }, [
    "used",
    "swath",
    "distance",
  ]);
  refusesMisuse("spreaderRate on an area", spreaderRate, { used: qty(8, "oz"), area: plot }, [
    "used",
    "area",
  ]);
  refusesMisuse("spreaderRate along a row", spreaderRate, { used: qty(8, "oz"), rowLength: qty(9, "ft") }, [
    "used",
    "rowLength",
  ]);

  it("refuses a volume of granules, ground area, and a test on two things or on none", () => {
    expectRefused(
      () => spreaderRate({ used: qty(8, "fl_oz"), ...strip } as never),
      "wrong-dimension",
      "used",
    );
    const ground = { ...plot, of: "ground" };
    expectRefused(() => spreaderRate({ used: qty(8, "oz"), area: ground } as never), "wrong-area", "area");
    // A tarp has no ground beside what lands on it: 1 lb on 100 ft² is 435.6 lb/ac.
    expect(spreaderRate({ used: qty(16, "oz"), area: qty(100, "ft2") } as never)).toEqual(
      qty(435.6, "lb/ac"),
    );
    expectRefused(
      () => spreaderRate({ used: qty(8, "oz"), area: plot, rowLength: qty(9, "ft") } as never),
      "conflict",
      "rowLength",
    );
    expectRefused(() => spreaderRate({ used: qty(8, "oz") } as never), "missing", "");
    expectRefused(
      () => spreaderRate({ used: qty(8, "oz"), swath: qty(2, "ft") } as never),
      "missing",
      "distance",
    );
  });
});

describe("checkSpreader", () => {
  const test = (ounces: number, target: MassRate = qty(5, "lb/1000ft2")) => ({
    used: qty(ounces, "oz"),
    ...strip,
    target,
  });

  it("says how far off the spreader is, and what to do", () => {
    expect(checkSpreader(test(9))).toEqual({
      rate: qty(5.625, "lb/1000ft2"),
      perPass: qty(5, "lb/1000ft2"),
      // 5 lb on a tenth of 1,000 sq ft.
      toCatch: qty(8, "oz"),
      deviation: qty(12.5, "%"),
      limit: qty(10, "%"),
      within: false,
      finding: {
        code: "spreader-heavy",
        key: "spreader-heavy",
        severity: "warning",
        path: "used",
        message: "The spreader put out 13% too much. Close the gate until the same test gives 8 oz wt.",
        figures: {
          rate: qty(5.625, "lb/1000ft2"),
          perPass: qty(5, "lb/1000ft2"),
          off: qty(13, "%"),
          toCatch: qty(8, "oz"),
        },
      },
    });
    const light = checkSpreader(test(6)).finding;
    expect(light).toMatchObject({ code: "spreader-light", key: "spreader-light", severity: "warning" });
    expect(light?.message).toBe(
      "The spreader put out 25% too little. Open the gate until the same test gives 8 oz wt.",
    );
  });

  it("gives the weight to aim for in the same test, in the unit that was weighed in and as a scale shows it", () => {
    const heavy = (used: Mass, more: object = {}) => checkSpreader({ ...test(9), used, ...more });
    expect(heavy(qty(0.6, "lb")).toCatch).toEqual(qty(0.5, "lb"));
    // 8 oz are 226.796 g. Rounded down: nothing goes over the label by it.
    expect(heavy(qty(270, "g")).finding?.message).toBe(
      "The spreader put out 19% too much. Close the gate until the same test gives 226 g.",
    );
    expect(heavy(qty(4.6, "oz"), { directions: 2 }).finding?.message).toBe(
      "The spreader put out 15% too much. Close the gate until the same test gives 4 oz wt.",
    );
    // A target over the label's maximum is nothing to aim for.
    const over = heavy(qty(9, "oz"), { max: qty(4, "lb/1000ft2") });
    expect(over.toCatch).toEqual(qty(6.4, "oz"));
    expect(over.finding?.message).toBe(
      "The spreader put out 5.625 lb/1,000 sq ft, over the label maximum of 4 lb/1,000 sq ft. Close the gate until the same test gives 6.4 oz wt.",
    );
  });

  it("says nothing within the limit, which is 10% unless another is given", () => {
    // 8.8 oz on 100 sq ft is 10% more than 8: in floats a little more than that, which is noise.
    const { deviation, limit, ...rest } = checkSpreader(test(8.8));
    expect(deviation.value).toBeCloseTo(10, 10);
    expect(deviation.value).not.toBe(10);
    expect(limit).toEqual(qty(10, "%"));
    expect(rest.within).toBe(true);
    expect(rest).not.toHaveProperty("finding");
    expect(checkSpreader({ ...test(8.8), limit: qty(5, "%") }).finding?.key).toBe("spreader-heavy");
    expect(checkSpreader({ ...test(8.8), limit: qty(0.1, "1") }).within).toBe(true);
  });

  it("holds one pass against half of the rate where it is spread in two directions", () => {
    const check = checkSpreader({ ...test(4), directions: 2 });
    expect(check.perPass).toEqual(qty(2.5, "lb/1000ft2"));
    expect(check.deviation.value).toBe(0);
    expect(checkSpreader({ ...test(4), directions: 1 }).finding?.message).toBe(
      "The spreader put out 50% too little. Open the gate until the same test gives 8 oz wt.",
    );
  });

  it("holds all passes together against the label's maximum, even within the limit", () => {
    const most = { max: qty(5.2, "lb/1000ft2") };
    const over = checkSpreader({ ...test(8.5), ...most });
    expect(over.within).toBe(true);
    expect(over.finding).toMatchObject({ severity: "refusal", key: "spreader-over-max" });
    expect(over.finding?.message).toBe(
      "The spreader put out 5.31 lb/1,000 sq ft, over the label maximum of 5.2 lb/1,000 sq ft. Close the gate until the same test gives 8 oz wt.",
    );
    // One pass of 2.66 lb/1,000 sq ft, twice over the same ground.
    const both = checkSpreader({ ...test(4.25), ...most, directions: 2 });
    expect(both.finding?.figures.rate).toEqual(qty(5.3125, "lb/1000ft2"));
    expect(both.finding?.message).toBe(
      "The spreader put out 5.31 lb/1,000 sq ft in both directions, over the label maximum of 5.2 lb/1,000 sq ft. Close the gate until the same test gives 4 oz wt.",
    );
    expect(checkSpreader({ ...test(8.2), ...most }).finding).toBeUndefined();
    // A maximum in another unit: 217.8 lb/ac is 5 lb/1,000 sq ft, and no more than that.
    expect(checkSpreader({ ...test(8), max: qty(217.8, "lb/ac") }).finding).toBeUndefined();
  });

  it("asks about pounds that are ounces, and the reverse", () => {
    const pounds = checkSpreader({ ...test(9), used: qty(8.5, "lb") }).finding;
    expect(pounds?.key).toBe("spreader-ounces-as-pounds");
    expect(pounds?.message).toBe(
      "The spreader put out 17 times the target. If you weighed in ounces, enter ounces, not pounds.",
    );
    const ounces = checkSpreader(test(0.52)).finding;
    expect(ounces?.key).toBe("spreader-pounds-as-ounces");
    expect(ounces?.message).toBe(
      "The spreader put out only 1/15 of the target. If you weighed in pounds, enter pounds, not ounces.",
    );
    // What was entered in pounds already isn't pounds for ounces.
    expect(checkSpreader({ ...test(9), used: qty(0.0325, "lb") }).finding?.key).toBe("spreader-far-under");
    // Sixteen times in grams is another slip, and so is twenty times in ounces.
    expect(checkSpreader({ ...test(9), used: qty(3630, "g") }).finding?.key).toBe("spreader-far-over");
    expect(checkSpreader(test(160)).finding?.key).toBe("spreader-far-over");
    expect(checkSpreader(test(100)).finding?.key).toBe("spreader-far-over");
    expect(checkSpreader(test(0.4)).finding?.key).toBe("spreader-far-under");
    expect(checkSpreader(test(0.7)).finding?.key).toBe("spreader-far-under");
  });

  it("says of twice the target in two directions that each gets half of it", () => {
    const both = { ...test(9), used: qty(17.6, "oz"), target: qty(5.5, "lb/1000ft2") };
    const times = checkSpreader({ ...both, target: qty(11, "lb/1000ft2"), directions: 2 }).finding;
    expect(times?.key).toBe("spreader-whole-rate");
    expect(times?.message).toBe(
      "The spreader put out 2 times the target for one pass. In two directions each pass gets half the rate: close the gate until the same test gives 8.8 oz wt.",
    );
    // In one direction, and further off, it is another slip.
    expect(checkSpreader(both).finding?.key).toBe("spreader-heavy");
    expect(checkSpreader({ ...both, directions: 2 }).finding?.key).toBe("spreader-far-over");
  });

  it("asks whether the target is a nutrient's rate, where the spreader is right for the product", () => {
    // 1 lb of nitrogen per 1,000 sq ft from 28-0-0 is 3.57 lb of product, and that is what the spreader puts out.
    const asTarget = { ...test(0), used: qty(5.714, "oz"), target: qty(1, "lb/1000ft2") };
    const over = checkSpreader(asTarget).finding;
    expect(over?.key).toBe("spreader-far-over");
    expect(over?.message).toBe(
      "The spreader put out 3.6 times the target. Check the units, and that the target is product, not the nutrient or active ingredient in it.",
    );
    // The spreader is set to the nutrient's rate.
    const under = checkSpreader({ ...asTarget, used: qty(1.6, "oz"), target: qty(3.57, "lb/1000ft2") });
    expect(under.finding?.message).toBe(
      "The spreader put out 72% too little. Check the units, and that the rate and the test are both for one pass.",
    );
  });

  // What people do wrong with a spreader, each beside the right job, which must not be questioned. docs/what-is-checked.md lists them.
  const FARMS = [
    { name: "US", strip, target: qty(5, "lb/1000ft2"), right: qty(8.2, "oz"), asOther: qty(8.2, "lb") },
    {
      name: "imperial",
      strip: { swath: qty(1, "yd"), distance: qty(20, "yd") },
      target: qty(200, "lb/ac"),
      right: qty(13.4, "oz"),
      asOther: qty(13.4, "lb"),
    },
    {
      name: "metric",
      strip: { swath: qty(2, "m"), distance: qty(25, "m") },
      target: qty(250, "kg/ha"),
      right: qty(1240, "g"),
      asOther: qty(1240, "kg"),
    },
  ] as const;
  it.each(FARMS)(
    "questions each slip and not the right job, in $name measure",
    ({ name, right, ...farm }) => {
      const job = { used: right, ...farm.strip, target: farm.target as MassRate };
      expect(checkSpreader(job).finding).toBeUndefined();
      const keyOf = (change: object): string | undefined =>
        checkSpreader({ ...job, ...change } as typeof job).finding?.key;
      expect(keyOf({ used: farm.asOther })).toBe(
        name === "metric" ? "spreader-far-over" : "spreader-ounces-as-pounds",
      );
      const nutrient = { ...farm.target, value: farm.target.value * 0.28 };
      expect(keyOf({ target: nutrient })).toBe("spreader-far-over");
      expect(keyOf({ used: { ...right, value: right.value * 0.28 } })).toBe("spreader-far-under");
      // The full rate in each of two directions: near the edge between a gate that is far open and a slip.
      expect(checkSpreader({ ...job, directions: 2 }).finding?.code).toBe("spreader-heavy");
      expect(keyOf({ max: { ...farm.target, value: farm.target.value * 0.9 } })).toBe("spreader-over-max");
    },
  );

  it("judges a test along a row by a rate per length of row", () => {
    const check = checkSpreader({
      used: qty(2.5, "oz"),
      rowLength: qty(250, "ft"),
      target: qty(8, "oz/1000ft"),
      max: qty(9, "oz/1000ft"),
    });
    expect(check.rate).toEqual(qty(10, "oz/1000ft"));
    expect(check.finding?.key).toBe("spreader-over-max");
    expectRefused(
      () =>
        checkSpreader({
          used: qty(2.5, "oz"),
          rowLength: qty(250, "ft"),
          target: qty(8, "lb/ac"),
        } as never),
      "wrong-dimension",
      "target",
    );
    expectRefused(
      () => checkSpreader({ ...test(8), target: qty(8, "oz/1000ft") } as never),
      "wrong-dimension",
      "target",
    );
  });

  it("says it in Spanish too", () => {
    const { finding } = checkSpreader(test(9));
    expect(issueText(finding as never, { words: SPANISH_WORDS, locale: "es-US" })).toBe(
      "La esparcidora echó 13% de más. Cierre la compuerta hasta que la misma prueba dé 8 onzas de peso.",
    );
  });

  it("shows working that is true and ends at the deviation", () => {
    for (const input of [test(9), { ...test(4), directions: 2 } as const]) {
      const lines = working.checkSpreader(input);
      expectLinesTrue(lines);
      expect(lines.at(-1)?.result).toEqual(checkSpreader(input).deviation);
    }
  });

  refusesMisuse(
    "checkSpreader",
    checkSpreader,
    { ...test(8), max: qty(6, "lb/1000ft2"), limit: qty(5, "%") },
    ["used", "swath", "distance", "target", "max", "limit"],
  );

  it("refuses other numbers of directions", () => {
    expectRefused(
      () => checkSpreader({ ...test(8), directions: 3 } as never),
      "unknown-choice",
      "directions",
    );
  });
});

describe("spreaderCatch", () => {
  it("is what the rate puts on the strip, the area or the row", () => {
    expect(spreaderCatch({ target: qty(5, "lb/1000ft2"), ...strip })).toEqual(qty(8, "oz"));
    expect(spreaderCatch({ target: qty(5, "lb/1000ft2"), area: plot })).toEqual(qty(8, "oz"));
    expect(spreaderCatch({ target: qty(8, "oz/1000ft"), rowLength: qty(250, "ft") })).toEqual(qty(2, "oz"));
    expect(spreaderCatch({ target: qty(50, "kg/ha"), swath: qty(2, "m"), distance: qty(50, "m") }).unit).toBe(
      "g",
    );
  });

  it("is half of it for one of two directions", () => {
    expect(spreaderCatch({ target: qty(5, "lb/1000ft2"), ...strip, directions: 2 })).toEqual(qty(4, "oz"));
  });

  it("is what the check then calls right", () => {
    const target = qty(37, "kg/ha");
    const on = { swath: qty(7, "ft"), distance: qty(31, "yd"), directions: 2 } as const;
    const { deviation } = checkSpreader({ used: spreaderCatch({ target, ...on }), target, ...on });
    expect(Math.abs(deviation.value)).toBeLessThan(1e-12);
  });

  it("shows working that is true and ends at its own result", () => {
    for (const input of [
      { target: qty(5, "lb/1000ft2"), ...strip },
      { target: qty(50, "kg/ha"), area: plot, directions: 2 } as const,
      { target: qty(8, "oz/1000ft"), rowLength: qty(80, "m"), directions: 2 } as const,
    ]) {
      const lines = working.spreaderCatch(input);
      expectLinesTrue(lines);
      expect(lines.at(-1)?.result).toEqual(spreaderCatch(input));
    }
  });

  refusesMisuse("spreaderCatch", spreaderCatch, { target: qty(5, "lb/1000ft2"), ...strip }, [
    "target",
    "swath",
    "distance",
  ]);
});
