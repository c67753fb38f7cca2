import { expect } from "vitest";
import { checkAgainstTarget, checkNozzles, type NozzleReference } from "../../src/output-rate/index.ts";
import { qty } from "../../src/units/index.ts";
import { agrees, rule, topic } from "./harness.ts";

const time = qty(1, "min");
const ounces = (list: readonly number[]) => list.map((value) => qty(value, "fl_oz"));
const limit = (percent: number) => ({ limit: qty(percent, "%") });

/** The verdict on a nozzle that is off by so many per cent from what it is held against, among nine that are right. */
function verdictOn(percent: number, against: NozzleReference, most?: number) {
  // Against the mean of ten the odd one must be off by more, since it moves the mean itself.
  const part = percent / 100;
  const odd = against === "mean" ? (9 * (1 + part)) / (9 - part) : 1 + part;
  const check = checkNozzles({
    catches: ounces([...Array(9).fill(40), 40 * odd]),
    time,
    against,
    ...(against === "rated" && { rated: qty(40, "fl_oz/min") }),
    ...(most !== undefined && limit(most)),
  });
  return check.nozzles.at(-1)?.action;
}

topic("05_nozzle_uniformity", () => {
  // Both bands are checked at the middle that their ends imply, so they check the band's arithmetic and no more.
  agrees("unif_mt_range", () => {
    const { allowed } = checkNozzles({ catches: ounces([44, 44.2]), time, against: "mean" });
    return [
      { key: "low", ours: allowed?.lowest.value ?? 0, within: 0.05 },
      { key: "high", ours: allowed?.highest.value ?? 0, within: 0.05 },
    ];
  });
  agrees("unif_alberta_range", () => {
    const catches = [qty(0.75, "L"), qty(0.75, "L")];
    const { allowed } = checkNozzles({ catches, time, against: "mean" });
    return [
      { key: "low", ours: allowed?.lowest.value ?? 0, within: 0.005 },
      { key: "high", ours: allowed?.highest.value ?? 0, within: 0.005 },
    ];
  });

  rule(
    "unif_rule_usga",
    "10% of a new nozzle is the default for a rated flow; high replaced, low cleaned",
    () => {
      expect(verdictOn(10.1, "rated")).toBe("replace");
      expect(verdictOn(-10.1, "rated")).toBe("clean");
      expect(verdictOn(9.9, "rated")).toBe("keep");
      const check = checkNozzles({
        catches: ounces([40, 40]),
        time,
        against: "rated",
        rated: qty(40, "fl_oz/min"),
      });
      expect(check.rule).toEqual({
        against: "rated",
        limit: qty(10, "%"),
        source: "The 10-Percent Rule, USGA Green Section, 2016",
      });
    },
  );

  rule("unif_rule_ms", "10% of the other nozzles is the default against the others", () => {
    expect(verdictOn(10.1, "others")).toBe("replace");
    expect(verdictOn(9.9, "others")).toBe("keep");
    expect(checkNozzles({ catches: ounces([40, 40]), time, against: "others" }).rule.source).toContain(
      "Mississippi",
    );
  });

  rule("unif_rule_tx", "10% of spread is the default for the spread", () => {
    // The mean of nine at 40 and one at 44.5 is 40.45: a spread of 11.1%.
    expect(verdictOn(11.25, "spread")).toBe("replace");
    expect(verdictOn(9.9, "spread")).toBe("keep");
    expect(checkNozzles({ catches: ounces([40, 40]), time, against: "spread" }).rule.source).toContain(
      "Texas",
    );
  });

  for (const id of ["unif_rule_uga16", "unif_rule_fl", "unif_rule_oh"]) {
    rule(id, "10% of the average is a limit that the caller gives", () => {
      expect(verdictOn(10.1, "mean", 10)).toBe("replace");
      expect(verdictOn(9.9, "mean", 10)).toBe("keep");
      const check = checkNozzles({ catches: ounces([40, 40]), time, against: "mean", ...limit(10) });
      expect(check.rule).toEqual({ against: "mean", limit: qty(10, "%"), source: "the caller" });
    });
  }

  for (const [id, source] of [
    ["unif_rule_mt", "MontGuide MT 2000-14"],
    ["unif_rule_ab", "Agdex 606-1"],
  ] as const) {
    rule(id, "5% of the average is the default against the mean; high replaced, low cleaned", () => {
      expect(verdictOn(5.1, "mean")).toBe("replace");
      expect(verdictOn(-5.1, "mean")).toBe("clean");
      expect(verdictOn(4.9, "mean")).toBe("keep");
      expect(checkNozzles({ catches: ounces([40, 40]), time, against: "mean" }).rule.source).toContain(
        source,
      );
    });
  }

  rule("unif_rule_al", "the outlets of a spreader are compared the same way, by weight", () => {
    const catches = [...Array(9).fill(qty(40, "oz")), qty(43, "oz")];
    expect(checkNozzles({ catches, time, against: "mean" }).replace).toEqual([9]);
    expect(checkNozzles({ catches, time, against: "mean" }).mean.unit).toBe("oz/min");
  });

  rule("unif_rule_pes10", "10% of the label's rate is a limit that the caller gives", () => {
    const target = qty(20, "gal/ac");
    expect(checkAgainstTarget({ rate: qty(21.9, "gal/ac"), target, ...limit(10) }).within).toBe(true);
    expect(checkAgainstTarget({ rate: qty(17.9, "gal/ac"), target, ...limit(10) }).within).toBe(false);
  });

  rule("unif_rule_pes5", "5% of the label's rate is the default against a target", () => {
    const target = qty(20, "gal/ac");
    expect(checkAgainstTarget({ rate: qty(20.9, "gal/ac"), target }).within).toBe(true);
    expect(checkAgainstTarget({ rate: qty(21.1, "gal/ac"), target }).within).toBe(false);
  });
});
