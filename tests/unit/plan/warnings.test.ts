import { describe, expect, it } from "vitest";
import { calibrationRecord, type Measurement } from "../../../src/output-rate/index.ts";
import {
  MOST_RATES,
  type PlanInput,
  planApplication,
  THRESHOLDS,
  type Warning,
  type WarningCode,
} from "../../../src/plan/index.ts";
import { forSaying } from "../../../src/plan/warnings.ts";
import { qty } from "../../../src/units/index.ts";
import { SPANISH_WORDS } from "../../../src/words/es.ts";
import { issueText } from "../../../src/worksheet/index.ts";
import { QUIET, STRIP } from "../../helpers/jobs.ts";
import { expectRefused, expectSayable } from "../../helpers/refusal.ts";

const { kind: _kind, ...RUN } = STRIP;

const [PRODUCT] = QUIET.products;

function warned(change: Partial<PlanInput>): { code: WarningCode; severity: string; path: string }[] {
  return planApplication({ ...QUIET, ...change }).warnings.map((one) => {
    expectSayable(one);
    const { code, severity, path } = one;
    return { code, severity, path };
  });
}

function expectWarning(change: Partial<PlanInput>, code: WarningCode, severity: string, path: string): void {
  expect(warned(change)).toContainEqual({ code, severity, path });
}

describe("the warnings of a plan", () => {
  it("are none where there is nothing to say", () => {
    expect(warned({})).toEqual([]);
  });

  it("each have a sentence and plain figures, and change no number", () => {
    const change = { ...QUIET, sprayer: { tank: qty(2.4, "gal") }, addedWater: qty(1, "gal") };
    const plan = planApplication(change);
    expect(plan.warnings.length).toBeGreaterThan(2);
    for (const { message, figures } of plan.warnings) {
      expect(message).toMatch(/^[A-Z0-9].*\.$/);
      expect(JSON.parse(JSON.stringify(figures))).toEqual(figures);
    }
    expect(plan.carrier).toEqual(planApplication({ ...change, addedWater: qty(0, "gal") }).carrier);
  });

  it("say a share or a factor in two digits, and in three where two would say that it is right", () => {
    expect([0.123, 1, 1.02, 1.14, 2.56, 402.9].map(forSaying)).toEqual([0.12, 1, 1.02, 1.1, 2.6, 400]);
  });

  it("take the strip for one side of tree rows, or for both, and for no width besides", () => {
    const plot = {
      kind: "tree-rows",
      rows: 9,
      rowLength: qty(90, "ft"),
      stripWidth: qty(2, "ft"),
      sides: 2,
      rowSpacing: qty(13, "ft"),
    } as const;
    const codes = (feet: number) =>
      warned({
        plot,
        calibration: { ...STRIP, swath: qty(feet, "ft"), distance: qty(1089 / feet, "ft") },
      }).map(({ code }) => code);
    expect(codes(2)).not.toContain("swath-is-not-band");
    expect(codes(4)).not.toContain("swath-is-not-band");
    expect(codes(3)).toContain("swath-is-not-band");
  });

  it("take the nozzles of a boom for what they are: their spacing is no pass", () => {
    const plot = { kind: "beds", beds: 8, bedLength: qty(200, "ft"), bedWidth: qty(4, "ft") } as const;
    const boom = (nozzles: number, width: number, more = {}) =>
      planApplication({
        ...QUIET,
        plot,
        calibration: {
          kind: "catch",
          catches: Array.from({ length: nozzles }, () => qty(26, "fl_oz")),
          time: qty(60, "s"),
          speed: qty(3, "mph"),
          width: qty(width, "in"),
          ...more,
        },
      }).warnings.filter(({ path }) => path === "plot" || path === "calibration.width");
    // 60 in over 48 in: what reaches the bed is right.
    const [over] = boom(3, 20);
    expect(over?.message).toBe(
      "Your 3 nozzles spray 60 in, but one pass treats 4 ft. The rest lands beside it, and the mix runs out early: shut nozzles, or enter what you spray.",
    );
    expect(issueText(over as Warning, { words: SPANISH_WORDS })).toMatch(/^Sus 3 boquillas rocían 60/);
    expect(boom(3, 16)).toEqual([]);
    expect(boom(5, 16)[0]?.code).toBe("boom-over-pass");
    expect(boom(2, 20)[0]?.message).toBe(
      "The calibration is for 40 in, but one pass treats 4 ft: the mix may be 1.2 times too weak. Check both widths, and the rows or beds per pass.",
    );
    // Two passes up and down the bed.
    expect(boom(2, 12)).toEqual([]);
    expect(boom(6, 16, { nozzlesPerRow: 2 })).toEqual([]);
    // One nozzle is caught where all are alike; wider than the bed it is no spacing.
    expect(boom(1, 16)).toEqual([]);
    expect(boom(1, 72)[0]?.message).toBe(
      "The calibration is for 72 in, but one pass treats 4 ft: the mix may be 1.5 times too strong. Check both widths, and the rows or beds per pass.",
    );
    expect(boom(2, 72)[0]?.key).toBe("nozzle-width-strong");
    expect(boom(1, 20)[0]?.key).toBe("nozzle-width-weak");
    // Three nozzles over one bed, entered as if each had a bed of its own.
    const [each] = boom(3, 48);
    expect(each?.code).toBe("nozzles-over-rows");
    expect(each?.message).toBe(
      "Your 3 nozzles count as 144 in wide, but a pass treats 4 ft: the mix may be 3 times too strong. Enter nozzles per row, or rows per pass.",
    );
    expect(issueText(each as Warning, { words: SPANISH_WORDS })).toMatch(/3 veces .*boquillas por hilera/);
    expect(boom(3, 48, { nozzlesPerRow: 3 })).toEqual([]);
    expect(boom(6, 48, { nozzlesPerRow: 3 })[0]?.figures).toMatchObject({ nozzles: 6, times: 2 });
    expect(boom(1, 48)).toEqual([]);
  });

  it("take nozzles that each have a row for what they are where as many rows are sprayed in one pass", () => {
    const rows = {
      kind: "row-bands",
      rows: 12,
      rowLength: qty(200, "ft"),
      bandWidth: qty(20, "in"),
    } as const;
    const trees = {
      kind: "tree-rows",
      rows: 9,
      rowLength: qty(220, "ft"),
      stripWidth: qty(20, "in"),
      sides: 2,
      rowSpacing: qty(18, "ft"),
    } as const;
    const codes = (plot: PlanInput["plot"], nozzles: number, rowsPerPass?: number) =>
      planApplication({
        ...QUIET,
        plot,
        sprayer: { ...QUIET.sprayer, ...(rowsPerPass && { rowsPerPass }) },
        calibration: {
          kind: "catch",
          catches: Array.from({ length: nozzles }, () => qty(26, "fl_oz")),
          time: qty(60, "s"),
          speed: qty(3, "mph"),
          width: qty(20, "in"),
        },
      }).warnings.flatMap(({ code }) => (/nozzles-over|boom|swath/.test(code) ? [code] : []));
    expect(codes(rows, 4, 4)).toEqual([]);
    expect(codes(rows, 4, 2)).toEqual(["nozzles-over-rows"]);
    expect(codes(rows, 4)).toEqual(["nozzles-over-rows"]);
    // One nozzle to each side of a tree row.
    expect(codes(trees, 2)).toEqual([]);
    expect(codes(trees, 4)).toEqual(["nozzles-over-rows"]);
  });

  it("leave a strip alone that is wider than a band, and one that is all of the rows", () => {
    const sprayer = { tank: qty(4, "gal"), rowsPerPass: 1 };
    expect(warned({ sprayer }).map(({ code }) => code)).not.toContain("all-ground-treated");
    const plot = {
      kind: "row-bands",
      rows: 9,
      rowLength: qty(90, "ft"),
      bandWidth: qty(30, "in"),
      rowSpacing: qty(30, "in"),
    } as const;
    const narrow = { ...STRIP, swath: qty(30, "in"), distance: qty(435.6, "ft") };
    expect(warned({ plot, calibration: narrow }).map(({ code }) => code)).not.toContain("all-ground-treated");
  });

  it("question ground area used like treated area", () => {
    const band = { ...STRIP, swath: qty(30, "in") };
    const sprayer = { tank: qty(4, "gal"), rowsPerPass: 1 };
    expectWarning({ calibration: band, sprayer }, "all-ground-treated", "warning", "plot");
    expectWarning(
      { calibration: band, sprayer, plot: [QUIET.plot as never] },
      "all-ground-treated",
      "warning",
      "plot[0]",
    );
    const codes = (plot: object) =>
      warned({ calibration: band, sprayer, plot: { ...QUIET.plot, ...plot } as never }).map(
        ({ code }) => code,
      );
    expect(codes({ fraction: 1 })).not.toContain("all-ground-treated");
    expect(codes({ fraction: 0.5 })).not.toContain("all-ground-treated");
    expect(
      warned({
        calibration: band,
        plot: {
          kind: "row-bands",
          rows: 9,
          rowLength: qty(90, "ft"),
          bandWidth: qty(30, "in"),
          rowSpacing: qty(5, "ft"),
        },
      }).map(({ code }) => code),
    ).not.toContain("all-ground-treated");
  });

  it("say nothing of one narrow nozzle over a whole plot, unless anything speaks of rows", () => {
    const band = { ...STRIP, swath: qty(30, "in") };
    const asks = (change: object) =>
      warned({ calibration: band, ...change }).some(({ code }) => code === "all-ground-treated");
    const product = (rate: object) => ({ products: [{ ...PRODUCT, rate }] });
    const pints = qty(2, "pt/ac");
    for (const quiet of [
      {},
      { plot: [QUIET.plot, QUIET.plot] },
      product({ rate: pints, per: "treated" }),
      product({ value: 1, unit: "%", basis: "v/v" }),
      product({ activeIngredient: qty(1, "lb/ac"), contains: qty(4, "lb/gal") }),
    ])
      expect(asks(quiet)).toBe(false);
    const rows = {
      kind: "row-bands",
      rows: 9,
      rowLength: qty(90, "ft"),
      bandWidth: qty(30, "in"),
      rowSpacing: qty(5, "ft"),
    };
    for (const ofRows of [
      { plot: [QUIET.plot, rows] },
      { sprayer: { tank: qty(4, "gal"), rowsPerPass: 2 } },
      product({ rate: pints, per: "broadcast" }),
      product({ rate: pints, per: "ground" }),
      product({ low: pints, high: pints, chosen: { rate: pints, per: "broadcast" } }),
      product({
        activeIngredient: { rate: qty(1, "lb/ac"), per: "broadcast" },
        contains: qty(4, "lb/gal"),
      }),
    ])
      expect(asks(ofRows)).toBe(true);
  });

  it("question a strip that is as wide as rows, beds or tree rows are apart", () => {
    const [rows, wide] = [4, qty(60, "ft")];
    const codes = (plot: object, swath: number) =>
      warned({ plot: plot as never, calibration: { ...STRIP, swath: qty(swath, "ft") } }).map(
        ({ code }) => code,
      );
    const bands = {
      kind: "row-bands",
      rows,
      rowLength: wide,
      bandWidth: qty(2, "ft"),
      rowSpacing: qty(5, "ft"),
    };
    const beds = {
      kind: "beds",
      beds: rows,
      bedLength: wide,
      bedWidth: qty(4, "ft"),
      bedSpacing: qty(6, "ft"),
    };
    const trees = {
      kind: "tree-rows",
      rows,
      rowLength: wide,
      stripWidth: qty(3, "ft"),
      sides: 2,
      rowSpacing: qty(14, "ft"),
    };
    const [apart, others] = [
      [
        codes(bands, 5),
        codes(beds, 6),
        codes(trees, 14),
        codes(bands, 15),
        codes(bands, 10),
        codes([QUIET.plot, bands], 5),
      ],
      // One band, both sides at once or one of them, several beds, and beds of no known spacing.
      [
        codes(bands, 2),
        codes(beds, 8),
        codes(trees, 6),
        codes(trees, 3),
        codes({ ...beds, bedSpacing: undefined }, 6),
      ],
    ];
    for (const found of apart) expect(found).toContain("swath-is-spacing");
    for (const found of others) expect(found).not.toContain("swath-is-spacing");
  });

  it("question it where several nozzles catch one band, and not where each is one of a boom", () => {
    const catches = [qty(20, "fl_oz"), qty(20, "fl_oz")];
    const caught = {
      kind: "catch",
      catches,
      time: qty(1, "min"),
      speed: qty(3, "mph"),
      width: qty(20, "in"),
    } as const;
    const codes = (calibration: PlanInput["calibration"]) => warned({ calibration }).map(({ code }) => code);
    expect(codes({ ...caught, nozzlesPerRow: 2 })).toContain("all-ground-treated");
    expect(codes(caught)).not.toContain("all-ground-treated");
  });

  it("question a rate that such sprayers do not put out", () => {
    expectWarning(
      { calibration: { ...STRIP, used: qty(12, "fl_oz") } },
      "rate-implausible",
      "warning",
      "calibration",
    );
    expectWarning(
      { calibration: { kind: "known", rate: qty(250, "gal/ac") } },
      "rate-implausible",
      "warning",
      "calibration",
    );
    expect(warned({ calibration: { kind: "known", rate: qty(200, "gal/ac") } })).not.toContainEqual(
      expect.objectContaining({ code: "rate-implausible" }),
    );
  });

  const bands = { kind: "row-bands", rows: 9, rowLength: qty(90, "ft"), bandWidth: qty(2, "ft") } as const;
  const beds = { kind: "beds", beds: 4, bedLength: qty(90, "ft"), bedWidth: qty(4, "ft") } as const;
  const trees = {
    kind: "tree-rows",
    rows: 4,
    rowLength: qty(90, "ft"),
    stripWidth: qty(4, "ft"),
    sides: 2,
  } as const;

  // Each limit is that of MOST_RATES, in gal/ac: 10 gal/1000 ft² are 435.6, 2 pt/ft² are 10,890.
  it.each<[string, object, number]>([
    ["a whole plot", {}, 200],
    ["bands", { plot: bands }, 200],
    ["beds and bands", { plot: [beds, bands] }, 200],
    ["bands and a whole plot", { plot: [bands, QUIET.plot] }, 200],
    ["tree rows", { plot: trees }, 600],
    ["bands and tree rows", { plot: [bands, trees] }, 600],
    ["turf", { application: "turf" }, 435.6],
    ["a drench", { application: "drench" }, 10_890],
    ["a hand gun", { application: "hand" }, 600],
    ["tree rows, called a broadcast spray", { plot: trees, application: "broadcast" }, 200],
  ])("question a rate by the kind of spraying: %s", (_, change, limit) => {
    const asks = (rate: number) =>
      warned({ ...change, calibration: { kind: "known", rate: qty(rate, "gal/ac") } }).some(
        ({ code }) => code === "rate-implausible",
      );
    expect([asks(limit), asks(limit * 1.001)]).toEqual([false, true]);
  });

  it("know a lawn by the area that its rate is per", () => {
    const asks = (rate: object, plot: object = QUIET.plot) =>
      warned({ plot, calibration: { kind: "known", rate } } as never).some(
        ({ code }) => code === "rate-implausible",
      );
    // 5.25 gal on 1,000 ft² are 228.7 gal/ac; 10 gal the limit. 0.5 gal on 100 ft² are as much as 5 gal; 21 L on 100 m² are 2,100 L/ha.
    expect([5.25, 10, 10.1].map((gallons) => asks(qty(gallons, "gal/1000ft2")))).toEqual([
      false,
      false,
      true,
    ]);
    expect(asks(qty(0.5, "gal/100ft2"))).toBe(false);
    expect(asks(qty(21, "L/100m2"))).toBe(false);
    expect(asks(qty(2100, "L/ha"))).toBe(true);
    // Beds stay beds.
    expect(asks(qty(5.25, "gal/1000ft2"), beds)).toBe(true);
  });

  it("know a hand gun and tree rows by how they were measured", () => {
    const area = { value: 1000, unit: "ft2", of: "treated" } as const;
    const gun = (gallons: number) => ({
      calibration: { kind: "hand", used: qty(gallons, "gal"), area } as const,
    });
    // Spray Gun (Pesticide Environmental Stewardship): 5.25 gal on 1,000 ft², 228.7 gal/ac, is nothing unusual.
    expect(warned(gun(5.25)).map(({ code }) => code)).not.toContain("rate-implausible");
    expectWarning(gun(14), "rate-implausible", "warning", "calibration");
    const row = (gallons: number) => ({
      calibration: {
        kind: "tree-row",
        used: qty(gallons, "gal"),
        rowLength: qty(871.2, "ft"),
        rowSpacing: qty(25, "ft"),
        sides: 2,
      } as never,
    });
    // Half an acre with its alleys: 400 gal/ac, the standard dilute spray (Penn State, Tree Fruit Production Guide).
    expect(warned(row(200)).map(({ code }) => code)).not.toContain("rate-implausible");
    expectWarning(row(301), "rate-implausible", "warning", "calibration");
  });

  it("say a limit in the unit of the rate", () => {
    const [warning] = planApplication({
      ...QUIET,
      calibration: { kind: "known", rate: qty(2500, "L/ha") },
    }).warnings;
    // 1 gal/ac = 3.785411784 L / 0.40468564224 ha (NIST Handbook 44, Appendix C).
    expect(warning?.figures.limit).toEqual({
      value: expect.closeTo((200 * 3.785411784) / 0.40468564224, 9),
      unit: "L/ha",
    });
    expect(warning?.message).toContain("(up to 1,871 L/ha)");
  });

  it("question a speed that cannot be held", () => {
    const flow = { kind: "flow", flow: qty(1, "gal/min"), width: qty(10, "ft") } as const;
    expectWarning(
      { calibration: { ...flow, speed: qty(0.5, "mph") } },
      "speed-implausible",
      "warning",
      "calibration",
    );
    const { warnings } = planApplication({
      ...QUIET,
      calibration: { ...flow, speed: qty(9, "km/h") },
    });
    // 5 mph: 1 mi = 1.609344 km (NIST Handbook 44, Appendix C).
    expect(warnings.find(({ code }) => code === "speed-implausible")?.message).toContain(
      "The speed is 9 km/h, faster than a steady walk (8.05 km/h).",
    );
    const time = { distance: qty(200, "ft"), time: qty(10, "s") };
    const caught = {
      kind: "catch",
      catches: [qty(60, "fl_oz")],
      time: qty(30, "s"),
      width: qty(4, "ft"),
    } as const;
    expectWarning({ calibration: { ...caught, speed: time } }, "speed-implausible", "warning", "calibration");
    expect(warned({ calibration: { ...flow, speed: qty(3, "mph") } }).map(({ code }) => code)).not.toContain(
      "speed-implausible",
    );
    const record = calibrationRecord({
      date: "2026-04-01",
      measurement: STRIP,
      conditions: { speed: qty(9, "mph") },
    });
    expectWarning({ calibration: { kind: "record", record } }, "speed-implausible", "warning", "calibration");
  });

  it("question a nozzle whose catch is far from the average of all", () => {
    const caught = (catches: readonly number[], nozzlesPerRow = 1): PlanInput["calibration"] => ({
      kind: "catch",
      catches: catches.map((ounces) => qty(ounces, "fl_oz")),
      time: qty(60, "s"),
      speed: qty(3, "mph"),
      width: qty(20, "in"),
      nozzlesPerRow,
    });
    const said = (calibration: PlanInput["calibration"], thresholds = {}) =>
      planApplication({ ...QUIET, calibration, thresholds })
        .warnings.filter(({ code }) => code === "nozzles-uneven")
        .map(({ key, path, message }) => [key, path, message]);
    // 16 + 16 + 16 + 12 are 60, on average 15: 12 is 20 % less. 16 is 6.7 % more, and no fault of its nozzle.
    expect(said(caught([16, 16, 12, 16]))).toEqual([
      [
        "nozzle-low",
        "calibration.catches[2]",
        "Nozzle 3 caught 12 fl oz, 20% less than the average. Clean it, and catch all nozzles again.",
      ],
    ]);
    expect(said(caught([23, 18, 19]))).toEqual([
      [
        "nozzle-high",
        "calibration.catches[0]",
        "Nozzle 1 caught 23 fl oz, 15% more than the average. Replace it, and catch all nozzles again.",
      ],
    ]);
    // 22 of 20 is 10 % more, which is just allowed.
    expect(said(caught([22, 19, 19, 20]))).toEqual([]);
    expect(said(caught([22, 19, 19, 20]), { nozzlePercent: 9 })).toHaveLength(1);
    // Two nozzles on each row may be of two kinds.
    expect(said(caught([20, 10, 20, 10], 2))).toEqual([]);
    const record = calibrationRecord({
      date: "2026-04-01",
      measurement: caught([16, 16, 12, 16]) as Measurement,
      conditions: {},
    });
    expect(said({ kind: "record", record })[0]?.[1]).toBe("calibration.record.measurement.catches[2]");
  });

  it("question a strip too short for its reading", () => {
    const used = { ...qty(64, "fl_oz"), resolution: qty(4, "fl_oz") };
    expectWarning({ calibration: { ...STRIP, used } }, "strip-too-short", "warning", "calibration.used");
    const runs = [RUN, { ...RUN, used }];
    expectWarning(
      { calibration: { kind: "strip-runs", runs } },
      "strip-too-short",
      "warning",
      "calibration.runs[1].used",
    );
    const fine = { ...used, resolution: qty(2, "fl_oz") };
    expect(warned({ calibration: { ...STRIP, used: fine } })).toEqual([]);
  });

  it("question runs that disagree, and name the one that stands out", () => {
    const run = (used: number) => ({ ...RUN, used: qty(used, "fl_oz") });
    const three = { kind: "strip-runs", runs: [run(64), run(80), run(65)] } as const;
    expectWarning({ calibration: three }, "runs-disagree", "warning", "calibration.runs[1]");
    const two = { kind: "strip-runs", runs: [run(64), run(80)] } as const;
    expectWarning({ calibration: two }, "runs-disagree", "warning", "calibration.runs");
    expect(warned({ calibration: { kind: "strip-runs", runs: [run(64), run(65)] } })).toEqual([]);
  });

  it("say so where the first run took the most, as it does with an empty boom", () => {
    const run = (ounces: number) => ({
      used: qty(ounces, "fl_oz"),
      swath: qty(4, "ft"),
      distance: qty(272.25, "ft"),
    });
    const message = (ounces: readonly number[]) =>
      planApplication({ ...QUIET, calibration: { kind: "strip-runs", runs: ounces.map(run) } }).warnings.find(
        ({ code }) => code === "runs-disagree",
      )?.message;
    for (const empty of [
      [74, 64, 64],
      [80, 64],
    ])
      expect(message(empty)).toContain("the first used the most");
    for (const other of [
      [54, 64, 64],
      [64, 74, 64],
      [64, 80],
    ])
      expect(message(other)).not.toContain("started empty");
  });

  it("say so surely where the first run took about what hoses and boom hold", () => {
    const warning = (ounces: readonly number[], lines: number, second: object = {}) =>
      planApplication({
        ...QUIET,
        sprayer: { tank: qty(4, "gal"), lineVolume: qty(lines, "fl_oz") },
        calibration: {
          kind: "strip-runs",
          runs: ounces.map((used, i) => {
            const { kind: _, ...run } = STRIP;
            return { ...run, used: qty(used, "fl_oz"), ...(i === 1 && second) };
          }),
        },
      }).warnings.find(({ code }) => code === "runs-disagree");
    expect(warning([80, 64], 16)?.figures.filled).toEqual(qty(16, "fl_oz"));
    expect(warning([80, 64], 16)?.message).toContain("16 fl oz more, about what the hose and boom hold");
    expect(warning([80, 64, 64], 14)?.figures.filled).toEqual(qty(16, "fl_oz"));
    for (const other of [
      warning([80, 64], 8),
      warning([80, 64], 0),
      warning([80, 64], 16, { distance: qty(300, "ft") }),
    ])
      expect(other?.message).toContain("started empty");
  });

  it("note a single strip that empty hoses and boom would have spoiled", () => {
    const holding = (ounces: number) => ({
      sprayer: { tank: qty(4, "gal"), lineVolume: qty(ounces, "fl_oz") },
    });
    expectWarning(holding(6.4), "lines-uncharged", "note", "calibration.used");
    const note = planApplication({ ...QUIET, ...holding(6.4) }).warnings.find(
      ({ code }) => code === "lines-uncharged",
    );
    expect(note?.figures).toEqual({
      used: qty(64, "fl_oz"),
      lines: qty(6.4, "fl_oz"),
      percent: qty(10, "%"),
    });
    expect(note?.message).toContain("10% of the 64 fl oz used");
    const codes = (change: Partial<PlanInput>) => warned(change).map(({ code }) => code);
    expect(codes(holding(3.2))).not.toContain("lines-uncharged");
    expect(codes({ ...holding(6.4), thresholds: { readingPercent: 10 } })).not.toContain("lines-uncharged");
    const { kind: _, ...run } = STRIP;
    expect(codes({ ...holding(6.4), calibration: { kind: "strip-runs", runs: [run, run] } })).not.toContain(
      "lines-uncharged",
    );
  });

  it("question a calibration that was made under other conditions, or long ago", () => {
    const record = calibrationRecord({
      date: "2026-04-01",
      measurement: STRIP,
      conditions: { operator: "Robin", pressure: qty(40, "psi") },
    });
    const calibration = { kind: "record", record } as const;
    const today = (date: string, operator: string, psi: number) => ({
      date,
      conditions: { operator, pressure: qty(psi, "psi") },
    });
    expectWarning(
      { calibration, today: today("2026-04-20", "Kim", 40) },
      "calibration-stale",
      "warning",
      "calibration",
    );
    expectWarning(
      { calibration, today: today("2026-04-20", "Robin", 30) },
      "calibration-stale",
      "warning",
      "calibration",
    );
    expectWarning(
      { calibration, today: today("2026-08-20", "Robin", 40) },
      "calibration-old",
      "warning",
      "calibration",
    );
    expect(warned({ calibration, today: today("2026-04-20", "Robin", 40) })).toEqual([]);
    const year = { ...today("2026-08-20", "Robin", 40), longestAge: 365 };
    expect(warned({ calibration, today: year })).toEqual([]);
    const [stale] = planApplication({
      ...QUIET,
      calibration,
      today: today("2026-04-20", "Robin", 10),
    }).warnings;
    // A quarter of the pressure gives half the flow: the square-root law.
    expect(stale?.figures.expected).toMatchObject({ value: expect.closeTo(10, 9) });
  });

  it("question what the label does not allow, at the label's place", () => {
    const label = { max: qty(1.5, "pt/ac"), leastCarrier: qty(25, "gal/ac"), mostApplications: 3 };
    const products = [{ ...PRODUCT, label, soFar: { applications: 2 } }] as PlanInput["products"];
    expectWarning({ products }, "rate-over-max", "refusal", "products[0].rate");
    expectWarning({ products }, "carrier-under-least", "refusal", "calibration");
    const seasonal = [
      { ...PRODUCT, label: { seasonMax: qty(4, "pt/ac") }, soFar: { rate: qty(2, "pt/ac") } },
    ] as PlanInput["products"];
    expect(warned({ products: seasonal }).map(({ code }) => code)).toContain("season-nearly-used");
  });

  it("say that a mix takes several loads, and that the last is too small", () => {
    expectWarning({ sprayer: { tank: qty(2.4, "gal") } }, "mix-over-tank", "note", "sprayer.tank");
    // 5.27 ac at 20 gal/ac are 105.4 gal: up, as on the sheets, so that nobody runs short.
    const large = { kind: "treated-area", treated: { value: 5.27, unit: "ac", of: "treated" } } as const;
    const [note] = planApplication({ ...QUIET, plot: large }).warnings;
    expect(note?.message).toMatch(/^You need 106 gal of mix/);
    expectWarning({ sprayer: { tank: qty(2.4, "gal") } }, "last-load-small", "warning", "loads[1]");
    // With 10% more a tank of 2.5 gal has the plot's mix, and the last load is all extra: equal loads would not help.
    const spare = { ...QUIET, sprayer: { tank: qty(2.5, "gal") }, reserve: { percent: 10 } };
    expect(planApplication(spare).warnings.find(({ code }) => code === "last-load-small")?.key).toBe(
      "last-load-extra",
    );
    expect(warned({ sprayer: { tank: qty(2.4, "gal") }, split: "equal" }).map(({ code }) => code)).toEqual([
      "mix-over-tank",
    ]);
  });

  it("say by how much water without product weakens a mix", () => {
    const mix = planApplication(QUIET).carrier.total;
    const plan = planApplication({ ...QUIET, addedWater: mix });
    const warning = plan.warnings.find(({ code }) => code === "water-without-product");
    // As much water again halves the strength.
    expect(warning?.figures).toEqual({
      water: mix,
      strength: { value: 50, unit: "%" },
      weakBy: { value: 50, unit: "%" },
    });
  });

  it("mind the two ounces where a name has ounces in it", () => {
    const named = (form: "liquid" | "dry", rate: object) =>
      [{ name: "Product A, 8 oz bottle", form, rate }] as unknown as PlanInput["products"];
    expectWarning(
      { products: named("liquid", qty(2, "pt/ac")) },
      "ounces-confusable",
      "note",
      "products[0].name",
    );
    const [, dry] = [0, planApplication({ ...QUIET, products: named("dry", qty(20, "oz/ac")) })] as const;
    expect(dry.warnings[0]?.message).toContain("ounces by weight");
  });

  it("follow thresholds that the caller changes", () => {
    const thresholds = { mostRate: qty(180, "L/ha"), lastLoadPercent: 1 };
    expectWarning({ thresholds }, "rate-implausible", "warning", "calibration");
    expect(
      warned({
        thresholds: { ...thresholds, mostRate: qty(30, "gal/ac") },
        sprayer: { tank: qty(2.4, "gal") },
      }),
    ).toEqual([expect.objectContaining({ code: "mix-over-tank" })]);
  });

  it("refuse a threshold that does not exist, or is of the wrong kind", () => {
    const changed = (thresholds: object) => () => planApplication({ ...QUIET, thresholds });
    expectRefused(changed({ mostSpeed: qty(9, "mph") }), "unknown-field", "thresholds.mostSpeed");
    expectRefused(changed({ mostRate: qty(9, "mph") }), "wrong-dimension", "thresholds.mostRate");
    expectRefused(changed({ lastLoadPercent: "15" }), "not-a-quantity", "thresholds.lastLoadPercent");
  });

  it("come from thresholds that give their reason and source", () => {
    for (const { reason, source } of [...Object.values(THRESHOLDS), ...Object.values(MOST_RATES)]) {
      expect(reason).toMatch(/\.$/);
      expect(source).not.toBe("");
    }
  });
});
