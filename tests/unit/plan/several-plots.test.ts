import { describe, expect, it } from "vitest";
import { calibrationRecord } from "../../../src/output-rate/index.ts";
import {
  comparePlans,
  type PlanInput,
  planApplication,
  planSensitivity,
  reconcile,
  type Warning,
} from "../../../src/plan/index.ts";
import { qty } from "../../../src/units/index.ts";
import { SPANISH_WORDS } from "../../../src/words/es.ts";
import { issueText } from "../../../src/worksheet/index.ts";

// One mix on two plots: per treated area both get the same, per ground or per length of row they don't. Checked by hand.

/** Bands 2 ft wide, 10 rows of 100 ft, at this spacing. */
const bands = (spacing: number, width = 2, name?: string) =>
  ({
    kind: "row-bands",
    rows: 10,
    rowLength: qty(100, "ft"),
    bandWidth: qty(width, "ft"),
    rowSpacing: qty(spacing, "ft"),
    ...(name !== undefined && { name }),
  }) as const;

const JOB: PlanInput = {
  plot: [bands(4, 2, "North side"), bands(8)],
  calibration: { kind: "strip", used: qty(64, "fl_oz"), swath: qty(2, "ft"), distance: qty(544.5, "ft") },
  sprayer: { tank: qty(4, "gal") },
  products: [{ name: "Product A", form: "liquid", rate: { rate: qty(2, "pt/ac"), per: "ground" } }],
  tools: "us-spoons",
};

const withLabel = (label: object, plot: PlanInput["plot"] = JOB.plot): PlanInput => ({
  ...JOB,
  plot,
  products: [{ ...JOB.products[0], label } as PlanInput["products"][number]],
});

const about = (input: PlanInput, code: string) =>
  planApplication(input).warnings.filter((warning) => warning.code === code);

describe("a rate per ground area on plots of which other parts are treated", () => {
  it("is questioned on the plot where it is furthest off, and not where all plots are alike", () => {
    // Both plots have 2,000 ft² treated, on 4,000 and 8,000 ft² of ground. 2 pt/ac on 12,000 ft² goes half to each:
    // 12,000 / 2 / 4,000 = 1.5 times the rate on the first, 12,000 / 2 / 8,000 = 0.75 times on the second.
    expect(about(JOB, "rate-uneven")).toEqual([
      {
        code: "rate-uneven",
        key: "rate-uneven-more",
        severity: "warning",
        path: "products[0].rate",
        message:
          "Product A: the rate is per area of ground, and in one mix North side gets 50% too much. Plan the plots that differ separately.",
        figures: { product: "Product A", plot: "North side", percent: { value: 50, unit: "%" } },
      },
    ]);
    const [second] = about({ ...JOB, plot: [bands(8), bands(4)] }, "rate-uneven");
    expect(second?.message).toContain("plot 2 gets 50% too much");
    expect(issueText(second as Warning, { words: SPANISH_WORDS })).toContain("parcela 2 recibe 50");
    expect(about({ ...JOB, plot: [bands(4), bands(4)] }, "rate-uneven")).toEqual([]);
    expect(about({ ...JOB, plot: bands(4) }, "rate-uneven")).toEqual([]);
    expect(about({ ...JOB, plot: [bands(4), bands(4.1)] }, "rate-uneven")).toEqual([]);
    const plain = [{ name: "Product A", form: "liquid", rate: qty(2, "pt/ac") }] as const;
    expect(about({ ...JOB, products: plain }, "rate-uneven")).toEqual([]);
  });

  it("is held against the label on each plot alone", () => {
    const max = (rate: number) => withLabel({ max: { rate: qty(rate, "pt/ac"), per: "ground" } });
    // 1.5 × 2 = 3 pt/ac of ground on the first plot: over 2.9, though the average is 2.
    const [over] = about(max(2.9), "rate-over-max");
    expect(over).toMatchObject({ severity: "refusal", path: "products[0].rate" });
    expect(over?.message).toMatch(/^Product A on North side: /);
    expect(about(max(3.2), "rate-over-max")).toEqual([]);
    // 0.75 × 2 = 1.5 pt/ac on the second.
    const min = (rate: number) => withLabel({ min: { rate: qty(rate, "pt/ac"), per: "ground" } });
    const [under] = about(min(1.6), "rate-under-min");
    expect(under?.message).toMatch(/^Product A on plot 2: /);
    expect(about(min(1.4), "rate-under-min")).toEqual([]);
    const season = (most: number) => withLabel({ seasonMax: { rate: qty(most, "pt/ac"), per: "ground" } });
    expect(about(season(2.9), "season-over-max")).toHaveLength(1);
    expect(about(season(3.1), "season-over-max")).toEqual([]);
  });

  it("is held against a range's ends in the same way", () => {
    const per = (rate: number) => ({ rate: qty(rate, "pt/ac"), per: "ground" }) as const;
    const ranged = (high: number): PlanInput => ({
      ...JOB,
      products: [
        { name: "Product A", form: "liquid", rate: { low: per(1), high: per(high), chosen: per(2) } },
      ],
    });
    expect(about(ranged(2.9), "rate-over-max")).toHaveLength(1);
    expect(about(ranged(3.2), "rate-over-max")).toEqual([]);
    expect(about(ranged(3.2), "rate-uneven")).toHaveLength(1);
  });

  it("is held against the label on each plot after spraying too", () => {
    const plan = planApplication(withLabel({ max: { rate: qty(2.9, "pt/ac"), per: "ground" } }));
    const { findings } = reconcile(plan, { finished: "2026-05-02T09:30", left: qty(0, "gal") });
    expect(findings).toMatchObject([{ code: "rate-over-max", severity: "refusal" }]);
    expect(findings[0]?.message).toMatch(/^Product A on North side: /);
    // Half as much on the first plot is 1.5 pt/ac there.
    const total = plan.carrier.total.value;
    const half = { finished: "2026-05-02T09:30", used: [qty(total / 4, "gal"), qty(total / 2, "gal")] };
    expect(reconcile(plan, half).findings).toEqual([]);
  });
});

describe("what a label has against the rate on one of several plots", () => {
  const found = (label: object, code: string, plot: PlanInput["plot"] = JOB.plot) =>
    about(withLabel(label, plot), code).map(({ figures }) => figures.plot);
  // By treated area, both plots get 12,000 × 2 / 43,560 pt on 4,000 ft², 6 pt/ac; per ground 3 pt/ac and 1.5 pt/ac.
  const perGround = (pints: number) => ({ rate: qty(pints, "pt/ac"), per: "ground" });

  it("is said of the plot where it is furthest over, whichever comes first", () => {
    expect(found({ max: perGround(1) }, "rate-over-max")).toEqual(["North side"]);
    expect(found({ max: perGround(1) }, "rate-over-max", [bands(8), bands(4, 2, "North side")])).toEqual([
      "North side",
    ]);
    expect(found({ max: perGround(2) }, "rate-over-max", [bands(8), bands(4, 2, "North side")])).toEqual([
      "North side",
    ]);
  });

  it("is said of the plot where it is furthest under", () => {
    expect(found({ min: perGround(4) }, "rate-under-min")).toEqual([2]);
    expect(found({ min: perGround(4) }, "rate-under-min", [bands(8), bands(4, 2, "North side")])).toEqual([
      1,
    ]);
  });

  it("is said once, of no plot, where it is the same on all", () => {
    expect(found({ mostApplications: 3 }, "applications-unknown")).toEqual([undefined]);
  });
});

describe("a rate per length of row on plots with bands of other widths", () => {
  it("is questioned", () => {
    const input: PlanInput = {
      ...JOB,
      plot: [bands(8, 2), bands(8, 4)],
      products: [{ name: "Product A", form: "liquid", rate: qty(1, "fl_oz/1000ft") }],
    };
    // 2,000 ft of row and a third of the mix on the first plot's 1,000 ft: 2/3 of the rate; 4/3 on the second.
    const [uneven] = about(input, "rate-uneven");
    expect(uneven).toMatchObject({ figures: { plot: 1, percent: { value: 33, unit: "%" } } });
    expect(uneven?.message).toContain("gets 33% too little");
  });
});

describe("what a plot without rows or ground is asked", () => {
  it("names every rate that needs them, each at its place", () => {
    const input = withLabel(
      { max: qty(2, "fl_oz/1000ft"), seasonMax: { rate: qty(9, "pt/ac"), per: "ground" } },
      { kind: "treated-area", treated: { value: 1, unit: "ac", of: "treated" } },
    );
    const places = (() => {
      try {
        planApplication(input);
      } catch (error) {
        return (error as { issues: { path: string; key: string }[] }).issues.map(({ path, key }) => [
          path,
          key,
        ]);
      }
      return [];
    })();
    expect(places).toEqual([
      ["products[0].rate", "rate-needs-ground"],
      ["products[0].label.max", "rate-needs-rows"],
      ["products[0].label.seasonMax", "rate-needs-ground"],
    ]);
  });
});

describe("the sensitivity of a job of several plots", () => {
  it("is that of the plots' shares", () => {
    const moved = planSensitivity(planApplication(JOB));
    // Half of what is treated: one more of 10 rows is a tenth of that half. Per ground, a third of the ground.
    expect(moved.find(({ path }) => path === "plot[0].rows")).toMatchObject({ mix: 5 });
    expect(moved.find(({ path }) => path === "plot[0].rows")?.products[0]?.percent).toBeCloseTo(10 / 3, 6);
    expect(moved.find(({ path }) => path === "plot[1].rows")?.products[0]?.percent).toBeCloseTo(20 / 3, 6);
  });
});

describe("a job of very many numbers", () => {
  it("has no single one of a long list among those to check again", () => {
    const rowLengths = Array.from({ length: 51 }, (_, i) => qty(100 + i, "ft"));
    const paths = (lengths: typeof rowLengths) =>
      planSensitivity(
        planApplication({
          ...JOB,
          plot: { kind: "row-bands", rowLengths: lengths, bandWidth: qty(2, "ft"), rowSpacing: qty(5, "ft") },
          products: [{ name: "Product A", form: "liquid", rate: qty(2, "pt/ac") }],
        }),
      ).map(({ path }) => path);
    expect(paths(rowLengths).filter((path) => path.includes("rowLengths"))).toEqual([]);
    expect(paths(rowLengths)).toContain("plot.bandWidth");
    expect(paths(rowLengths.slice(1)).filter((path) => path.includes("rowLengths"))).toHaveLength(50);
  });
});

describe("the sensitivity of bare numbers", () => {
  const moved = (change: Partial<PlanInput>) => planSensitivity(planApplication({ ...JOB, ...change }));

  it("has a sector's angle, which its area is in proportion to", () => {
    const plot = { kind: "sector", radius: qty(100, "ft"), angleDegrees: 90 } as const;
    const products = [{ name: "Product A", form: "liquid", rate: qty(2, "pt/ac") }] as const;
    expect(moved({ plot, products }).find(({ path }) => path === "plot.angleDegrees")).toMatchObject({
      value: 90,
      change: "one-percent",
      mix: 1,
      products: [{ name: "Product A", percent: 1 }],
    });
  });

  it("has both numbers of a ratio, which pull in opposite ways", () => {
    const rate = { parts: 1, to: 100, of: "mix" } as const;
    const found = moved({ plot: bands(8), products: [{ name: "Product A", form: "liquid", rate }] });
    const percent = (name: string) =>
      found.find(({ path }) => path === `products[0].rate.${name}`)?.products[0]?.percent;
    expect([percent("parts"), percent("to")]).toEqual([1, -1]);
  });

  it("leaves out a reserve that rounds up, which moves in jumps", () => {
    const paths = (reserve: PlanInput["reserve"]) => moved({ reserve }).map(({ path }) => path);
    expect(paths({ roundUpTo: qty(1, "gal") }).filter((path) => path.startsWith("reserve"))).toEqual([]);
    expect(paths({ volume: qty(1, "gal") })).toContain("reserve.volume");
  });
});

describe("a strip as wide as the rows are apart", () => {
  it("is questioned where its width stands, whichever way it was measured", () => {
    const spacing = { swath: qty(8, "ft"), distance: qty(500, "ft") };
    const strip = { kind: "strip", used: qty(64, "fl_oz"), ...spacing } as const;
    const run = { used: qty(64, "fl_oz"), ...spacing };
    const record = calibrationRecord({ date: "2026-04-01", measurement: strip });
    const ways: [PlanInput["calibration"], string][] = [
      [strip, "calibration.swath"],
      [{ kind: "strip-runs", runs: [run, run] }, "calibration.runs[0].swath"],
      [
        { kind: "flow", flow: qty(1, "gal/min"), speed: qty(3, "mph"), width: qty(8, "ft") },
        "calibration.width",
      ],
      [{ kind: "record", record }, "calibration.record.measurement.swath"],
    ];
    const products = [{ name: "Product A", form: "liquid", rate: qty(2, "pt/ac") }] as const;
    for (const [calibration, path] of ways)
      expect(about({ ...JOB, plot: bands(8), products, calibration }, "swath-is-spacing")).toMatchObject([
        { path },
      ]);
  });
});

describe("two plans of one mix", () => {
  it("differ where only its split does", () => {
    const split = (how: PlanInput["split"]) =>
      planApplication({
        ...JOB,
        sprayer: { tank: qty(1, "gal") },
        products: [{ name: "Product A", form: "liquid", rate: qty(2, "pt/ac") }],
        split: how,
      });
    const [full, equal] = [split("full-then-part"), split("equal")];
    expect(full.loads).toHaveLength(2);
    const { results } = comparePlans(full, equal);
    expect(results.map(({ path }) => path)).toEqual(["loads[0].carrier", "loads[1].carrier"]);
    expect(comparePlans(full, full).results).toEqual([]);
  });

  it("are named in a warning on their width, in every language", () => {
    const narrow = { ...JOB, calibration: { ...JOB.calibration, swath: qty(1, "ft") } } as PlanInput;
    const found = planApplication(narrow).warnings.filter(({ code }) => code === "swath-is-not-band");
    expect(found.map(({ path }) => path)).toEqual(["plot[0]", "plot[1]"]);
    expect(found.map(({ figures }) => figures.plot)).toEqual(["North side", 2]);
    const [north, second] = found as [Warning, Warning];
    expect(north.message).toMatch(/^On North side: Your test strip was 1 ft wide/);
    expect(second.message).toMatch(/^On plot 2: Your test strip was 1 ft wide/);
    expect(issueText(second, { words: SPANISH_WORDS })).toMatch(
      /^En la parcela 2: Su franja de prueba medía/,
    );
    const [only] = planApplication({ ...narrow, plot: bands(4) }).warnings;
    expect(only?.message).toMatch(/^Your test strip/);
  });
});

describe("a label's limit that depends on the plot", () => {
  // Rows 4 ft apart with bands of 1 and 2 ft: a quarter of the one plot's ground is treated and half of the other's.
  const plot = [bands(4, 1, "Top"), bands(4, 2, "Low")];
  const worst = (rate: object, label: object, on: PlanInput["plot"] = plot) =>
    planApplication({
      ...withLabel(label, on),
      products: [{ name: "Product A", form: "liquid", rate, label } as PlanInput["products"][number]],
    })
      .warnings.filter(({ code }) => code.startsWith("rate-"))
      .map(({ code, message }) => [code, message.split(".")[0]]);

  it("is held against each plot by itself, where the rate is per treated area", () => {
    // 1 pt per treated acre is 0.25 and 0.5 pt per acre of ground.
    const perGround = (most: number) => ({ max: { rate: qty(most, "pt/ac"), per: "ground" } });
    expect(worst(qty(1, "pt/ac"), perGround(0.4))).toEqual([
      ["rate-over-max", expect.stringMatching(/^Product A on Low: The rate of 1 pt\/ac is over/)],
    ]);
    expect(worst(qty(1, "pt/ac"), perGround(0.6))).toEqual([]);
    // By length of row: 1 pt/ac on a band of 2 ft is 2,000 ft² a 1,000 ft, 0.735 fl oz; on 1 ft half of it.
    const perRow = (most: number) => ({ max: qty(most, "fl_oz/1000ft") });
    expect(worst(qty(1, "pt/ac"), perRow(0.7))).toEqual([
      ["rate-over-max", expect.stringMatching(/^Product A on Low: /)],
    ]);
    expect(worst(qty(1, "pt/ac"), perRow(0.8))).toEqual([]);
    // Per treated area all plots are one.
    expect(worst(qty(1, "pt/ac"), { max: qty(0.9, "pt/ac") })).toEqual([
      ["rate-over-max", expect.stringMatching(/^Product A: The rate of 1 pt\/ac is over/)],
    ]);
    // One plot has no name to tell it from others.
    expect(worst(qty(1, "pt/ac"), perGround(0.4), plot[1])).toEqual([
      ["rate-over-max", expect.stringMatching(/^Product A: The rate of 1 pt\/ac is over/)],
    ]);
  });
});
