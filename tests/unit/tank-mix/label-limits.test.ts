import { describe, expect, it } from "vitest";
import {
  checkLabel,
  type LabelFinding,
  type LabelInput,
  type LabelLimits,
  type SeasonSoFar,
} from "../../../src/tank-mix/index.ts";
import { qty } from "../../../src/units/index.ts";
import { errorOf } from "../../helpers/bad-input.ts";
import { expectRefused, expectSayable } from "../../helpers/refusal.ts";

const percentByVolume = (value: number) => ({ value, unit: "%", basis: "v/v" }) as const;
const job = { rate: qty(1.5, "pt/ac"), form: "liquid", carrierRate: qty(20, "gal/ac") } as const;
const check = (label: LabelLimits, more: Partial<LabelInput> = {}) => {
  const findings = checkLabel({ ...job, label, ...more });
  findings.forEach(expectSayable);
  return findings;
};
const codes = (label: LabelLimits, more: Partial<LabelInput> = {}) =>
  check(label, more).map(({ code, severity }) => `${severity}: ${code}`);
const soFar = (season: SeasonSoFar) => ({ soFar: season });

describe("checkLabel", () => {
  it("says nothing where the label sets no limit, or the job keeps well inside", () => {
    expect(check({})).toEqual([]);
    expect(check({ min: qty(1, "pt/ac"), max: qty(2, "pt/ac"), leastCarrier: qty(10, "gal/ac") })).toEqual(
      [],
    );
  });

  it("refuses a rate over the label's highest, with both figures", () => {
    const [over] = check({ max: qty(1, "pt/ac") });
    expect(over).toMatchObject({ code: "rate-over-max", severity: "refusal", path: "rate" });
    expect(over?.figures).toEqual({ rate: qty(1.5, "pt/ac"), max: qty(1, "pt/ac") });
    expect(over?.message).toContain("1.5 pt/ac");
  });

  it("says a rate in the unit that its limit is given in, and names what could push it over the limit next to it", () => {
    // 0.25 % of 20 gal/ac is 0.05 gal/ac, 6.4 fl oz.
    const quarter = { value: 0.25, unit: "%", basis: "v/v" } as const;
    const said = (max: LabelLimits["max"], rate: LabelInput["rate"]) =>
      check({ max: max as typeof quarter }, { rate })[0]?.message;
    const [pace, measure] = ["A slow step or a worn nozzle", "A measure filled too high"].map(
      (risk) => (figure: string) =>
        `The rate of ${figure} is at or near the label maximum of ${figure}. ${risk} would put you over.`,
    ) as [(figure: string) => string, (figure: string) => string];
    expect(said(quarter, quarter)).toBe(measure("0.25%"));
    expect(said(qty(0.25, "gal/100gal"), { parts: 1, to: 400, of: "mix" })).toBe(measure("6.4 fl oz/ac"));
    expect(said(qty(6.4, "fl_oz/ac"), quarter)).toBe(pace("6.4 fl oz/ac"));
    expect(said(quarter, qty(6.4, "fl_oz/ac"))).toBe(pace("6.4 fl oz/ac"));
    expect(said(qty(43.56, "fl_oz/ac"), qty(1, "fl_oz/1000ft2"))).toBe(pace("43.56 fl oz/ac"));
    expect(said(undefined, { low: qty(0.1, "gal/100gal"), high: quarter, chosen: quarter })).toBe(
      measure("0.25%"),
    );
  });

  it("takes the highest rate itself as allowed, noise included, and warns that it is near", () => {
    expect(codes({ max: qty(1.5, "pt/ac") })).toEqual(["warning: rate-near-max"]);
    expect(codes({ max: qty(1.4999999999999998, "pt/ac") })).toEqual(["warning: rate-near-max"]);
    expect(codes({ max: qty(1.49, "pt/ac") })).toEqual(["refusal: rate-over-max"]);
  });

  it("warns within 5 % of a limit unless given another margin", () => {
    expect(codes({ max: qty(1.57, "pt/ac") })).toEqual(["warning: rate-near-max"]);
    expect(codes({ max: qty(1.58, "pt/ac") })).toEqual([]);
    expect(codes({ max: qty(1.58, "pt/ac") }, { near: 10 })).toEqual(["warning: rate-near-max"]);
    expect(codes({ max: qty(1.5, "pt/ac") }, { near: 0 })).toEqual([]);
    expect(codes({ leastCarrier: qty(19.1, "gal/ac") })).toEqual(["warning: carrier-near-least"]);
    expect(codes({ leastCarrier: qty(19, "gal/ac") })).toEqual([]);
  });

  it("warns of a rate under the label's lowest", () => {
    expect(codes({ min: qty(1.6, "pt/ac") })).toEqual(["warning: rate-under-min"]);
  });

  it("compares rates that are given in different ways, by the mix that they make", () => {
    // 1.5 pt/ac in 20 gal/ac are 1.2 fl oz to the gallon, 0.9375 % by volume.
    expect(codes({ max: { value: 0.9, unit: "%", basis: "v/v" } })).toEqual(["refusal: rate-over-max"]);
    expect(codes({ max: { value: 1, unit: "%", basis: "v/v" } })).toEqual([]);
    expect(codes({ max: qty(119, "fl_oz/100gal") })).toEqual(["refusal: rate-over-max"]);
    const content = qty(4, "lb/gal");
    // 1.5 pt/ac bring 0.75 lb of active ingredient.
    expect(codes({ max: { activeIngredient: qty(0.74, "lb/ac"), contains: content } })).toEqual([
      "refusal: rate-over-max",
    ]);
    expect(codes({ max: { activeIngredient: qty(0.8, "lb/ac"), contains: content } })).toEqual([]);
  });

  it("says two percentages as percentages, as the person and the label do", () => {
    const [over] = check({ max: percentByVolume(1) }, { rate: percentByVolume(2) });
    expect(over?.message).toBe(
      "The rate of 2% is over the label maximum of 1%. Use no more than the label allows.",
    );
    const [under] = check({ min: percentByVolume(3) }, { rate: percentByVolume(2) });
    expect(under?.message).toContain("The rate of 2% is below the label minimum of 3%");
    const [near] = check({ max: { value: 20_000, unit: "ppm", basis: "v/v" } }, { rate: percentByVolume(2) });
    expect(near?.figures.rate).toEqual({ value: 20_000, unit: "ppm", basis: "v/v" });
    // 150 ppm of active ingredient in a powder that is 15% of it are 1 g/L, of which a percentage says nothing.
    const active = {
      activeIngredient: { value: 150, unit: "ppm", basis: "w/v" },
      contains: { value: 15, unit: "%", basis: "w/w" },
    } as const;
    const [dry] = check({ max: { value: 0.05, unit: "%", basis: "w/v" } }, { form: "dry", rate: active });
    expect(dry?.message).not.toContain("%");
  });

  it("says ratios as percentages, in whatever units the job is", () => {
    const tenth = { parts: 1, to: 10, of: "mix" } as const;
    const [over] = check({ max: { parts: 1, to: 99, of: "water" } }, { rate: tenth });
    expect(over?.message).toBe(
      "The rate of 10% is over the label maximum of 1%. Use no more than the label allows.",
    );
    const [under] = check({ min: { value: 20, unit: "%", basis: "v/v" } }, { rate: tenth });
    expect(under?.message).toContain("The rate of 10% is below the label minimum of 20%");
    // Of a mix without an output rate, where nothing else says which units: 3 gal, or 10 L, or any.
    const [alone] = checkLabel({ rate: tenth, form: "liquid", label: { max: percentByVolume(2) } });
    expect(alone?.message).toContain("The rate of 10% is over the label maximum of 2%");
  });

  it("takes a range as limits too", () => {
    const [low, high] = [qty(1, "pt/ac"), qty(2, "pt/ac")];
    expect(codes({}, { rate: { low, high, chosen: qty(1.5, "pt/ac") } })).toEqual([]);
    expect(codes({}, { rate: { low, high, chosen: qty(2.5, "pt/ac") } })).toEqual(["refusal: rate-over-max"]);
    expect(codes({}, { rate: { low, high, chosen: qty(0.5, "pt/ac") } })).toEqual([
      "warning: rate-under-min",
    ]);
    expect(codes({ max: qty(1.2, "pt/ac") }, { rate: { low, high, chosen: qty(1.5, "pt/ac") } })).toEqual([
      "refusal: rate-over-max",
    ]);
  });

  it("compares the rates of a dry product by weight", () => {
    const dry = { form: "dry", rate: { value: 0.5, unit: "%", basis: "w/v" } } as const;
    expect(codes({ max: qty(13, "oz/ac") }, dry)).toEqual(["refusal: rate-over-max"]);
    expect(codes({ max: qty(15, "oz/ac") }, dry)).toEqual([]);
  });

  it("refuses too little and too much carrier", () => {
    const [under] = check({ leastCarrier: qty(25, "gal/ac") });
    expect(under).toMatchObject({ code: "carrier-under-least", severity: "refusal", path: "carrierRate" });
    expect(under?.figures).toEqual({ carrierRate: qty(20, "gal/ac"), least: qty(25, "gal/ac") });
    expect(codes({ mostCarrier: qty(15, "gal/ac") })).toEqual(["refusal: carrier-over-most"]);
    expect(codes({ leastCarrier: qty(20, "gal/ac") })).toEqual(["warning: carrier-near-least"]);
  });

  it("adds up the season", () => {
    const seasonMax = qty(5, "pt/ac");
    expect(codes({ seasonMax }, soFar({ rate: qty(3.6, "pt/ac") }))).toEqual(["refusal: season-over-max"]);
    expect(codes({ seasonMax }, soFar({ rate: qty(3.5, "pt/ac") }))).toEqual(["warning: season-nearly-used"]);
    expect(codes({ seasonMax }, soFar({ rate: qty(2, "pt/ac") }))).toEqual([]);
    expect(codes({ seasonMax }, soFar({ applications: 0 }))).toEqual([]);
    // Two records of 1.5 that came out of sums, and nothing is left, not 4e-16.
    const [last] = check({ seasonMax: qty(4.5, "pt/ac") }, soFar({ rate: qty(2.9999999999999996, "pt/ac") }));
    expect(last?.message).toContain("After this application 0 pt/ac of the season's 4.5 pt/ac is left");
    expect(codes({ seasonMax })).toEqual(["warning: season-unknown"]);
    expect(codes({ seasonMax: qty(1, "pt/ac") })).toEqual(["refusal: season-over-max"]);
    const active = { activeIngredient: qty(2, "lb/ac"), contains: qty(4, "lb/gal") };
    expect(codes({ seasonMax: active }, soFar({ rate: qty(2.6, "pt/ac") }))).toEqual([
      "refusal: season-over-max",
    ]);
  });

  it("counts applications", () => {
    const label = { mostApplications: 3 };
    expect(codes(label, soFar({ applications: 3 }))).toEqual(["refusal: applications-over-most"]);
    expect(codes(label, soFar({ applications: 2 }))).toEqual(["warning: applications-last"]);
    expect(codes(label, soFar({ applications: 1 }))).toEqual([]);
    expect(codes(label)).toEqual(["warning: applications-unknown"]);
    expect(codes({ mostApplications: 1 }, soFar({ applications: 0 }))).toEqual([]);
  });

  it("keeps the days between applications", () => {
    const label = { daysBetween: 14 };
    const [soon] = check(label, soFar({ daysSinceLast: 13 }));
    expect(soon).toMatchObject({
      code: "interval-too-short",
      severity: "refusal",
      figures: { since: 13, least: 14 },
    });
    expect(codes(label, soFar({ daysSinceLast: 14 }))).toEqual([]);
    expect(codes(label, soFar({ applications: 0 }))).toEqual([]);
    expect(codes(label)).toEqual(["warning: interval-unknown"]);
  });

  // What a form shows beside the field at the path: both figures, and what to do.
  it.each<[LabelLimits, SeasonSoFar | undefined, LabelFinding["code"], string, object, string]>([
    [
      { max: qty(1, "pt/ac") },
      undefined,
      "rate-over-max",
      "rate",
      { rate: qty(1.5, "pt/ac"), max: qty(1, "pt/ac") },
      "The rate of 1.5 pt/ac is over the label maximum of 1 pt/ac. Use no more than the label allows.",
    ],
    [
      { min: qty(2, "pt/ac") },
      undefined,
      "rate-under-min",
      "rate",
      { rate: qty(1.5, "pt/ac"), min: qty(2, "pt/ac") },
      "The rate of 1.5 pt/ac is below the label minimum of 2 pt/ac. It may not work: check the label.",
    ],
    [
      { max: qty(1.5, "pt/ac") },
      undefined,
      "rate-near-max",
      "rate",
      { rate: qty(1.5, "pt/ac"), max: qty(1.5, "pt/ac") },
      "The rate of 1.5 pt/ac is at or near the label maximum of 1.5 pt/ac. A slow step or a worn nozzle would put you over.",
    ],
    [
      { leastCarrier: qty(100, "qt/ac") },
      undefined,
      "carrier-under-least",
      "carrierRate",
      { carrierRate: qty(80, "qt/ac"), least: qty(100, "qt/ac") },
      "The sprayer puts out 80 qt/ac, below the label minimum of 100 qt/ac. Slow down or use larger nozzles, then recalibrate.",
    ],
    [
      { mostCarrier: qty(60, "qt/ac") },
      undefined,
      "carrier-over-most",
      "carrierRate",
      { carrierRate: qty(80, "qt/ac"), most: qty(60, "qt/ac") },
      "The sprayer puts out 80 qt/ac, over the label maximum of 60 qt/ac. Speed up or use smaller nozzles, then recalibrate.",
    ],
    [
      { leastCarrier: qty(80, "qt/ac") },
      undefined,
      "carrier-near-least",
      "carrierRate",
      { carrierRate: qty(80, "qt/ac"), least: qty(80, "qt/ac") },
      "The sprayer puts out 80 qt/ac, at or near the label minimum of 80 qt/ac. Walking faster would put you below it.",
    ],
    [
      { seasonMax: qty(3, "pt/ac") },
      { rate: qty(2, "pt/ac") },
      "season-over-max",
      "rate",
      { rate: qty(1.5, "pt/ac"), used: qty(2, "pt/ac"), max: qty(3, "pt/ac") },
      "With 2 pt/ac already used, 1.5 pt/ac more goes over the label maximum of 3 pt/ac in a season. Use less, or another product.",
    ],
    [
      { seasonMax: qty(1, "pt/ac") },
      undefined,
      "season-over-max",
      "rate",
      { rate: qty(1.5, "pt/ac"), used: qty(0, "pt/ac"), max: qty(1, "pt/ac") },
      "1.5 pt/ac alone goes over the label maximum of 1 pt/ac in a season. Use less, or another product.",
    ],
    [
      { seasonMax: qty(4, "pt/ac") },
      { rate: qty(2, "pt/ac") },
      "season-nearly-used",
      "rate",
      { rate: qty(1.5, "pt/ac"), used: qty(2, "pt/ac"), max: qty(4, "pt/ac"), left: qty(0.5, "pt/ac") },
      "After this application 0.5 pt/ac of the season's 4 pt/ac is left, not enough for another at this rate.",
    ],
    [
      { seasonMax: qty(4, "pt/ac") },
      undefined,
      "season-unknown",
      "soFar.rate",
      { rate: qty(1.5, "pt/ac"), used: qty(0, "pt/ac"), max: qty(4, "pt/ac") },
      "The label allows 4 pt/ac in a season, and you haven't entered what this plot has already had. Check your spray record.",
    ],
    [
      { mostApplications: 3 },
      undefined,
      "applications-unknown",
      "soFar.applications",
      { most: 3 },
      "The label limits applications to 3 a season, and you haven't entered how many this plot has had. Check your spray record.",
    ],
    [
      { mostApplications: 3 },
      { applications: 3 },
      "applications-over-most",
      "soFar.applications",
      { made: 3, most: 3 },
      "The label limits applications to 3 a season, and this plot has had 3. Don't use this product again this season.",
    ],
    [
      { mostApplications: 3 },
      { applications: 2 },
      "applications-last",
      "soFar.applications",
      { made: 2, most: 3 },
      "This is the last application of the season: the label allows 3.",
    ],
    [
      { daysBetween: 7 },
      undefined,
      "interval-unknown",
      "soFar.daysSinceLast",
      { least: 7 },
      "The label requires 7 or more days between applications, and you haven't entered when the last one was. Check your spray record.",
    ],
    [
      { daysBetween: 7 },
      { daysSinceLast: 6 },
      "interval-too-short",
      "soFar.daysSinceLast",
      { since: 6, least: 7 },
      "Days since the last application: 6. The label requires 7 or more, so wait.",
    ],
  ])("finds in %j with %j: %s", (label, season, code, path, figures, message) => {
    const found = check(label, season === undefined ? {} : soFar(season));
    // Where nothing was used before, the sentence doesn't speak of it.
    const key = code === "season-over-max" && season === undefined ? "season-over-max-alone" : code;
    const severity = /under-least|over-|too-short/.test(code) ? "refusal" : "warning";
    expect(found).toEqual([{ code, key, severity, path, message, figures }]);
  });

  it("gives each sentence of a finding a key of its own", () => {
    const quarter = { value: 0.25, unit: "%", basis: "v/v" } as const;
    const keys = (max: LabelLimits["max"], rate: LabelInput["rate"]) =>
      checkLabel({ ...job, label: { max: max as typeof quarter }, rate }).map(({ code, key }) => [code, key]);
    expect(keys(quarter, quarter)).toEqual([["rate-near-max", "rate-near-max-by-measure"]]);
    expect(keys(quarter, qty(6.4, "fl_oz/ac"))).toEqual([["rate-near-max", "rate-near-max"]]);
  });

  it("takes nothing for not given", () => {
    const bare = checkLabel({ ...job, label: {} });
    const label = { min: null, max: null, seasonMax: null, mostApplications: null, daysBetween: null };
    const nothing = { soFar: null, area: null, ground: null, rowLength: null, near: null };
    expect(checkLabel({ ...job, label, ...nothing } as never)).toEqual(bare);
    const season = { label: { seasonMax: qty(5, "pt/ac") }, soFar: { rate: null, applications: 0 } };
    expect(checkLabel({ ...job, ...season } as never)).toEqual([]);
  });

  it("says nothing of limits that are kept", () => {
    const label = {
      min: qty(1, "pt/ac"),
      max: qty(2, "pt/ac"),
      leastCarrier: qty(10, "gal/ac"),
      mostCarrier: qty(30, "gal/ac"),
      seasonMax: qty(9, "pt/ac"),
      mostApplications: 5,
      daysBetween: 7,
    };
    expect(check(label, soFar({ rate: qty(1, "pt/ac"), applications: 1, daysSinceLast: 8 }))).toEqual([]);
  });

  it("goes by the higher of two lowest and the lower of two highest rates", () => {
    const range = (chosen: number) => ({
      rate: { low: qty(1, "pt/ac"), high: qty(2, "pt/ac"), chosen: qty(chosen, "pt/ac") },
    });
    const narrow = { min: qty(1.2, "pt/ac"), max: qty(1.8, "pt/ac") };
    const wide = { min: qty(0.5, "pt/ac"), max: qty(3, "pt/ac") };
    expect(codes(narrow, range(1.1))).toEqual(["warning: rate-under-min"]);
    expect(codes(narrow, range(1.9))).toEqual(["refusal: rate-over-max"]);
    expect(codes(wide, range(0.9))).toEqual(["warning: rate-under-min"]);
    expect(codes(wide, range(2.1))).toEqual(["refusal: rate-over-max"]);
  });

  it("asks for what a limit needs to be held against the rate, and for nothing that is not held", () => {
    const perGround = { rate: qty(1, "pt/ac"), per: "ground" } as const;
    const asks = (label: LabelLimits, season?: SeasonSoFar) =>
      errorOf(() => check(label, season && soFar(season))).issues.map(({ code, path }) => `${code} ${path}`);
    const both = ["missing area", "missing ground"];
    for (const label of [{ min: perGround }, { max: perGround }, { seasonMax: perGround }])
      expect(asks(label)).toEqual(both);
    expect(asks({ seasonMax: qty(9, "pt/ac") }, { rate: perGround })).toEqual(both);
    expect(codes({}, soFar({ rate: perGround }))).toEqual([]);
  });

  it("shows a limit per ground area, and one of active ingredient, as the product that it is per treated area", () => {
    const plot = {
      area: { value: 1, unit: "ac", of: "treated" },
      ground: { value: 2, unit: "ac", of: "ground" },
    } as const;
    // 1 pt on each of 2 acres of ground are 2 pt on the acre that is treated.
    expect(
      check({ max: { rate: qty(1, "pt/ac"), per: "ground" } }, { ...plot, rate: qty(2.5, "pt/ac") })[0]
        ?.figures,
    ).toEqual({ rate: qty(2.5, "pt/ac"), max: qty(2, "pt/ac") });
    const active = (pounds: number) => ({
      activeIngredient: qty(pounds, "lb/ac"),
      contains: qty(4, "lb/gal"),
    });
    // 0.5 lb at 4 lb/gal is an eighth of a gallon: 1 pt, 16 fl oz.
    expect(check({ max: active(0.5) })[0]?.figures).toEqual({
      rate: qty(1.5, "pt/ac"),
      max: qty(1, "pt/ac"),
    });
    expect(check({ max: active(0.5) }, { rate: active(0.75) })[0]?.figures).toEqual({
      rate: qty(24, "fl_oz/ac"),
      max: qty(16, "fl_oz/ac"),
    });
  });

  it("says of active ingredient per volume of mix, too, that only a measure can be off", () => {
    const rate = { activeIngredient: qty(0.5, "lb/100gal"), contains: qty(4, "lb/gal") } as const;
    expect(check({ max: rate }, { rate })[0]?.key).toBe("rate-near-max-by-measure");
  });

  it("refuses no limit and no season's amount of active ingredient, but takes nothing used", () => {
    const content = { contains: qty(4, "lb/gal") };
    for (const none of [qty(0, "pt/ac"), { activeIngredient: qty(0, "lb/ac"), ...content }]) {
      const place = "activeIngredient" in none ? ".activeIngredient" : "";
      expectRefused(() => check({ seasonMax: none }), "out-of-range", `label.seasonMax${place}`);
      expectRefused(() => check({ max: none }), "out-of-range", `label.max${place}`);
      expect(codes({ seasonMax: qty(9, "pt/ac") }, soFar({ rate: none, applications: 0 }))).toEqual([]);
    }
  });

  it("puts refusals first", () => {
    const findings = codes({ max: qty(1.5, "pt/ac"), leastCarrier: qty(30, "gal/ac") });
    expect(findings).toEqual(["refusal: carrier-under-least", "warning: rate-near-max"]);
  });

  it.each([
    [{ label: { min: qty(2, "pt/ac"), max: qty(1, "pt/ac") } }, "conflict", "label.min"],
    [{ rate: { low: qty(2, "pt/ac"), high: qty(1, "pt/ac"), chosen: qty(1, "pt/ac") } }, "conflict", "rate"],
    [
      { label: { leastCarrier: qty(2, "gal/ac"), mostCarrier: qty(1, "gal/ac") } },
      "conflict",
      "label.leastCarrier",
    ],
    [{ label: { max: qty(-1, "pt/ac") } }, "out-of-range", "label.max"],
    [{ label: { leastCarrier: qty(-1, "gal/ac") } }, "out-of-range", "label.leastCarrier"],
    [{ label: { max: qty(1, "lb/ac") } }, "wrong-dimension", "label.max"],
    [{ label: { seasonMax: qty(1, "pt/100gal") } }, "wrong-dimension", "label.seasonMax"],
    [{ label: { mostApplications: 1.5 } }, "out-of-range", "label.mostApplications"],
    [{ label: { daysBetween: -1 } }, "out-of-range", "label.daysBetween"],
    [{ label: { mostApplications: 3 }, soFar: { applications: -1 } }, "out-of-range", "soFar.applications"],
    [{ label: null }, "missing", "label"],
    [{ near: 101 }, "out-of-range", "near"],
    [{ area: { value: 1, unit: "ac", of: "ground" } }, "wrong-area", "area"],
  ] as const)("refuses %o", (change, code, path) => {
    const error = errorOf(() => checkLabel({ ...job, label: {}, ...change } as never));
    expect([error.code, error.path]).toEqual([code, path]);
  });
});
