import { describe, it } from "vitest";
import { type Length, qty, scaleQuantity, type Unit } from "../../../src/index.ts";
import { calibrationRecord } from "../../../src/output-rate/index.ts";
import { type PlanInput, planApplication, type Severity, type WarningCode } from "../../../src/plan/index.ts";
import { type Expected, expectSlip } from "../../helpers/slips.ts";

// What people do wrong with a plot, a sprayer and a label. Each row has the right job beside the slip, which must not be
// questioned for it, and what the slip must lead to. docs/what-is-checked.md lists them in a grower's words.

/** One job of an invented farm, in one system of measure: bands along rows, a strip of the bands' width. */
interface Farm {
  readonly name: string;
  readonly band: Length;
  readonly spacing: Length;
  /** The band with the next smaller unit by mistake: 2 in for 2 ft. */
  readonly bandInSmallUnit: Length;
  readonly rowLength: Length;
  readonly distance: Length;
  readonly used: number;
  readonly small: "fl_oz" | "imp_fl_oz" | "mL";
  readonly large: "gal" | "imp_gal" | "L";
  readonly tank: number;
  readonly lines: number;
  /** One mark of a coarse jug. */
  readonly mark: number;
  readonly liquid: object;
  readonly dry: object;
  /** What a product weighs and contains: as it is, as none does, and as few do. */
  readonly density: Slipped;
  readonly bulkDensity: Slipped;
  readonly contains: Slipped;
  readonly slow: object;
  readonly fast: object;
}

interface Slipped {
  readonly right: object;
  readonly impossible: object;
  readonly unusual: object;
}

const FARMS: readonly Farm[] = [
  {
    name: "US",
    band: qty(2, "ft"),
    spacing: qty(5, "ft"),
    bandInSmallUnit: qty(2, "in"),
    rowLength: qty(100, "ft"),
    distance: qty(340, "ft"),
    used: 40,
    small: "fl_oz",
    large: "gal",
    tank: 4,
    lines: 10,
    mark: 4,
    liquid: qty(2, "pt/ac"),
    dry: qty(12, "oz/ac"),
    density: { right: qty(9, "lb/gal"), impossible: qty(9, "lb/ft3"), unusual: qty(6, "lb/gal") },
    bulkDensity: { right: qty(5, "lb/gal"), impossible: qty(5, "lb/ft3"), unusual: qty(1.5, "lb/gal") },
    contains: { right: qty(4, "lb/gal"), impossible: qty(4, "lb/pt"), unusual: qty(3, "lb/qt") },
    slow: qty(3, "mph"),
    fast: qty(30, "mph"),
  },
  {
    name: "imperial",
    band: qty(30, "in"),
    spacing: qty(6, "ft"),
    bandInSmallUnit: qty(30, "mm"),
    rowLength: qty(90, "yd"),
    distance: qty(100, "yd"),
    used: 45,
    small: "imp_fl_oz",
    large: "imp_gal",
    tank: 3,
    lines: 12,
    mark: 5,
    liquid: qty(2, "imp_pt/ac"),
    dry: qty(1, "lb/ac"),
    density: { right: qty(11, "lb/imp_gal"), impossible: qty(11, "lb/ft3"), unusual: qty(7, "lb/imp_gal") },
    bulkDensity: { right: qty(6, "lb/imp_gal"), impossible: qty(6, "lb/ft3"), unusual: qty(2, "lb/imp_gal") },
    contains: {
      right: qty(5, "lb/imp_gal"),
      impossible: qty(5, "lb/imp_pt"),
      unusual: qty(3.5, "lb/imp_qt"),
    },
    slow: qty(3, "mph"),
    fast: qty(30, "mph"),
  },
  {
    name: "metric",
    band: qty(60, "cm"),
    spacing: qty(1.5, "m"),
    bandInSmallUnit: qty(60, "mm"),
    rowLength: qty(50, "m"),
    distance: qty(100, "m"),
    used: 1800,
    small: "mL",
    large: "L",
    tank: 15,
    lines: 400,
    mark: 100,
    liquid: qty(2, "L/ha"),
    dry: qty(1, "kg/ha"),
    density: { right: qty(1.1, "kg/L"), impossible: qty(1.1, "g/L"), unusual: qty(1.8, "kg/L") },
    bulkDensity: { right: qty(0.6, "kg/L"), impossible: qty(600, "kg/L"), unusual: qty(0.2, "kg/L") },
    contains: { right: qty(480, "g/L"), impossible: qty(480, "kg/L"), unusual: qty(1.5, "kg/L") },
    slow: qty(4, "km/h"),
    fast: qty(40, "km/h"),
  },
];

type Change = Readonly<Record<string, unknown>>;
type Slip = readonly [slip: string, right: Change, wrong: Change, expected: Expected];

function slipsOf(farm: Farm): Slip[] {
  const { band, spacing, distance, used, small, large, tank, lines, liquid, dry } = farm;
  const times = (length: Length, n: number): Length => scaleQuantity(length, n);
  const strip = (swath: Length, amount = used, more: object = {}): object => ({
    kind: "strip",
    used: { ...qty(amount, small), ...more },
    swath,
    distance,
  });
  const runs = (amounts: readonly number[], swath: Length = band): object => ({
    kind: "strip-runs",
    runs: amounts.map((amount) => ({ used: qty(amount, small), swath, distance })),
  });
  const plot = (more: object): object => ({ ...base(farm).plot, ...more });
  const beds = { kind: "beds", beds: 6, bedLength: farm.rowLength, bedWidth: band, bedSpacing: spacing };
  const trees = {
    kind: "tree-rows",
    rows: 6,
    rowLength: farm.rowLength,
    stripWidth: times(band, 0.5),
    sides: 2,
    rowSpacing: spacing,
  };
  const caught = (width: Length): object => ({
    kind: "catch",
    catches: [qty(used / 8, small), qty(used / 8, small)],
    time: qty(30, "s"),
    speed: farm.slow,
    width,
    nozzlesPerRow: 2,
  });
  const flow = (width: Length, speed: object = farm.slow): object => ({
    kind: "flow",
    flow: qty(used / 2, `${small}/min` as "mL/min"),
    speed,
    width,
  });
  const product = (rate: object, form = "liquid", more: object = {}): Change => ({
    products: [{ name: "Product A", form, rate, ...more }],
  });
  const active = (more: object): Change =>
    product({ activeIngredient: scaleQuantity(farm.dry as never, 0.5), ...more });
  const byWeight = (density: object): Change => active({ contains: based(40, "w/w"), density });
  const spooned = (bulkDensity: object): Change => product(dry, "dry", { bulkDensity });
  const { density, bulkDensity, contains } = farm;
  const perGround = (share: number): object => ({
    rate: scaleQuantity(liquid as never, share),
    per: "ground",
  });
  const perRow = { value: 1, unit: `${small}/${large === "L" ? "m" : "100ft"}` };
  const twoPlots = (wider: number, rate: object, label: object = {}): Change => ({
    plot: [plot({}), plot({ rowSpacing: times(spacing, wider) })],
    ...product(rate, "liquid", { label }),
  });
  const both = (part: number): Change => ({
    products: ["Product A", "Product B"].map((name) => ({ name, form: "liquid", rate: based(part, "v/v") })),
  });
  const based = (value: number, basis: string): object => ({ value, unit: "%", basis });
  const sprayer = (more: object): Change => ({ sprayer: { tank: qty(tank, large), ...more } });
  const record = (date: string, today?: string): Change => ({
    calibration: {
      kind: "record",
      record: calibrationRecord({
        date,
        measurement: strip(band) as never,
        conditions: { operator: "Robin" },
      }),
    },
    ...(today !== undefined && { today: { date: today, conditions: { operator: "Robin" } } }),
  });
  const treated = (of: string): Change => ({
    plot: { kind: "treated-area", treated: { value: 500, unit: large === "L" ? "m2" : "ft2", of } },
  });
  const named = (other: string): Change => ({
    products: [
      { name: "Product A", form: "liquid", rate: liquid },
      { name: other, form: "liquid", rate: liquid },
    ],
  });
  const warns = (warning: WarningCode, severity: Severity = "warning", words = ""): Expected => ({
    warning,
    severity,
    words,
  });
  const spacingIs = warns("swath-is-spacing", "warning", "2.");
  return [
    [
      "band and strip as wide as the rows are apart",
      {},
      { plot: plot({ bandWidth: spacing }), calibration: strip(spacing) },
      warns("bands-without-gap"),
    ],
    ["strip as wide as the rows are apart", {}, { calibration: strip(spacing) }, spacingIs],
    ["strip as wide as three rows", {}, { calibration: strip(times(spacing, 3)) }, warns("swath-is-spacing")],
    [
      "runs as wide as the rows are apart",
      { calibration: runs([used, used]) },
      { calibration: runs([used, used], spacing) },
      spacingIs,
    ],
    [
      "spacing three times the band, strip from row to row",
      { plot: plot({ rowSpacing: times(band, 3) }) },
      { plot: plot({ rowSpacing: times(band, 3) }), calibration: strip(times(band, 3)) },
      warns("swath-is-spacing", "warning", "3 times too strong"),
    ],
    [
      "spacing twice the band, strip from row to row",
      { plot: plot({ rowSpacing: times(band, 2) }) },
      { plot: plot({ rowSpacing: times(band, 2) }), calibration: strip(times(band, 2)) },
      warns("swath-is-spacing", "warning", "2 times too strong"),
    ],
    [
      "spacing four times the band, strip from row to row",
      { plot: plot({ rowSpacing: times(band, 4) }) },
      { plot: plot({ rowSpacing: times(band, 4) }), calibration: strip(times(band, 4)) },
      warns("swath-is-spacing", "warning", "4 times too strong"),
    ],
    [
      "strip half as wide again as the band",
      {},
      { calibration: strip(times(band, 1.5)) },
      warns("swath-is-not-band", "warning", "1.5 times too strong"),
    ],
    [
      "strip two and a quarter bands wide",
      {},
      { calibration: strip(times(band, 2.25)) },
      warns("swath-is-not-band"),
    ],
    [
      "strip half as wide as the band",
      {},
      { calibration: strip(times(band, 0.5)) },
      warns("swath-is-not-band", "warning", "2 times too weak"),
    ],
    [
      "band in the next smaller unit",
      {},
      { plot: plot({ bandWidth: farm.bandInSmallUnit }) },
      warns("swath-is-not-band"),
    ],
    [
      "two rows a pass, strip of one",
      { ...sprayer({ rowsPerPass: 2 }), calibration: strip(times(band, 2)) },
      sprayer({ rowsPerPass: 2 }),
      warns("swath-is-not-band", "warning", "2 times too weak"),
    ],
    ["strip from bed to bed", { plot: beds }, { plot: beds, calibration: strip(spacing) }, spacingIs],
    [
      "strip from tree row to tree row",
      { plot: trees },
      { plot: trees, calibration: strip(spacing) },
      spacingIs,
    ],
    [
      "catch of a row's nozzles, width from row to row",
      { calibration: caught(band) },
      { calibration: caught(spacing) },
      spacingIs,
    ],
    [
      "flow for a row, width from row to row",
      { calibration: flow(band) },
      { calibration: flow(spacing) },
      spacingIs,
    ],
    [
      "lines empty at the first of two runs",
      { calibration: runs([used, used]) },
      { calibration: runs([used * 1.36, used]) },
      warns("runs-disagree", "warning", "started empty"),
    ],
    [
      "lines empty, and known",
      { ...sprayer({ lineVolume: qty(lines, small) }), calibration: runs([used, used]) },
      { ...sprayer({ lineVolume: qty(lines, small) }), calibration: runs([used + lines, used]) },
      warns("runs-disagree", "warning", "what the hose and boom hold"),
    ],
    [
      "the second run slow",
      { calibration: runs([used, used]) },
      { calibration: runs([used, used * 1.36]) },
      warns("runs-disagree", "warning", "Repeat the runs"),
    ],
    [
      "one strip, lines of unknown fill",
      sprayer({ lineVolume: qty(lines / 10, small) }),
      sprayer({ lineVolume: qty(lines, small) }),
      warns("lines-uncharged", "note"),
    ],
    [
      "strip too short for a usual jug",
      {},
      { calibration: strip(band, used / 4) },
      warns("strip-too-short", "note", "If your jug"),
    ],
    [
      "jug too coarse",
      { calibration: strip(band, used, { resolution: qty(farm.mark / 4, small) }) },
      { calibration: strip(band, used, { resolution: qty(farm.mark, small) }) },
      warns("strip-too-short"),
    ],
    [
      "20 % of product",
      product(based(1, "v/v")),
      product(based(20, "v/v")),
      warns("strength-unusual", "warning", "20%"),
    ],
    [
      "nothing but product",
      product(based(1, "v/v")),
      product(based(100, "v/v")),
      { error: "conflict", path: "products[0].rate" },
    ],
    [
      "five times the water's weight of powder",
      product(based(1, "w/v"), "dry"),
      product(based(500, "w/v"), "dry"),
      { error: "conflict", path: "products[0].rate" },
    ],
    [
      "a fifth of the mix powder",
      product(based(1, "w/v"), "dry"),
      product(based(20, "w/v"), "dry"),
      warns("strength-unusual"),
    ],
    ["two products that fill the tank", both(1), both(50), { error: "conflict", path: "products" }],
    [
      "a liquid that weighs what none does",
      byWeight(density.right),
      byWeight(density.impossible),
      { error: "out-of-range", path: "products[0].rate.density" },
    ],
    [
      "a liquid that weighs what few do",
      byWeight(density.right),
      byWeight(density.unusual),
      warns("density-unusual"),
    ],
    [
      "more active ingredient than product",
      active({ contains: contains.right }),
      active({ contains: contains.impossible }),
      { error: "out-of-range", path: "products[0].rate.contains" },
    ],
    [
      "a content of which there are few",
      active({ contains: contains.right }),
      active({ contains: contains.unusual }),
      warns("content-unusual"),
    ],
    [
      "a powder that weighs what none does",
      spooned(bulkDensity.right),
      spooned(bulkDensity.impossible),
      { error: "out-of-range", path: "products[0].bulkDensity" },
    ],
    [
      "a powder that weighs what few do",
      spooned(bulkDensity.right),
      spooned(bulkDensity.unusual),
      warns("bulk-density-unusual"),
    ],
    [
      "a liquid with a powder's weight",
      spooned(bulkDensity.right),
      product(liquid, "liquid", { bulkDensity: bulkDensity.right }),
      { error: "conflict", path: "products[0].bulkDensity" },
    ],
    [
      "one mix by ground area for plots of other spacings",
      twoPlots(1, perGround(1)),
      twoPlots(2, perGround(1)),
      warns("rate-uneven", "warning", "plot 1 gets 50% too much"),
    ],
    [
      // Half of the product on a third of the ground: 1.5 times the rate there.
      "a label maximum by ground area that one of two plots goes over",
      twoPlots(1, perGround(1), { max: perGround(1.2) }),
      twoPlots(2, perGround(1), { max: perGround(1.2) }),
      warns("rate-over-max", "refusal", "on plot 1"),
    ],
    [
      "a season's maximum by ground area that one of two plots goes over",
      twoPlots(1, perGround(1), { seasonMax: perGround(1.2) }),
      twoPlots(2, perGround(1), { seasonMax: perGround(1.2) }),
      warns("season-over-max", "refusal", "on plot 1"),
    ],
    [
      "a rate per length of row without rows",
      { plot: plot({}), ...product(perRow) },
      { plot: { kind: "rectangle", length: farm.rowLength, width: farm.rowLength }, ...product(perRow) },
      { error: "conflict", path: "products[0].rate" },
    ],
    [
      "ratio upside down",
      product({ parts: 1, to: 100, of: "mix" }),
      product({ parts: 100, to: 1, of: "mix" }),
      { error: "conflict", path: "products[0].rate" },
    ],
    [
      "weight for a liquid",
      product(liquid),
      product(dry),
      { error: "wrong-dimension", path: "products[0].rate" },
    ],
    [
      "volume for a powder",
      product(dry, "dry"),
      product(liquid, "dry"),
      { error: "wrong-dimension", path: "products[0].rate" },
    ],
    [
      "a reserve in the wrong unit",
      { reserve: { volume: qty(1, small) } },
      { reserve: { volume: qty(1000, large) } },
      warns("reserve-large"),
    ],
    [
      "rounded up to far too much",
      { reserve: { roundUpTo: qty(0.1, large) } },
      { reserve: { roundUpTo: qty(1000, large) } },
      warns("reserve-large"),
    ],
    [
      "lines that hold more than a tank",
      sprayer({ lineVolume: qty(1, small) }),
      sprayer({ lineVolume: qty(1000, large) }),
      warns("lines-large"),
    ],
    [
      "a fill over the tank",
      sprayer({ workingFill: qty(tank, large) }),
      sprayer({ workingFill: qty(tank * 1.1, large) }),
      { error: "conflict", path: "sprayer.workingFill" },
    ],
    [
      "water without product",
      { addedWater: qty(0, large) },
      { addedWater: qty(0.5, large) },
      warns("water-without-product"),
    ],
    [
      "ground area for treated",
      treated("treated"),
      treated("ground"),
      { error: "wrong-area", path: "plot.treated" },
    ],
    [
      "one product twice",
      named("Product B"),
      named(" product  A"),
      { error: "conflict", path: "products[1].name" },
    ],
    [
      "no application, but some used",
      product(liquid, "liquid", { soFar: { applications: 1, rate: liquid } }),
      product(liquid, "liquid", { soFar: { applications: 0, rate: liquid } }),
      { error: "conflict", path: "products[0].soFar.rate" },
    ],
    [
      "over the label",
      product(liquid, "liquid", { label: { max: scaleQuantity(liquid as never, 1.2) } }),
      product(liquid, "liquid", { label: { max: scaleQuantity(liquid as never, 0.5) } }),
      warns("rate-over-max", "refusal"),
    ],
    [
      "a calibration of unknown age",
      record("2026-04-01", "2026-05-01"),
      record("2026-04-01"),
      warns("calibration-age-unknown", "note"),
    ],
    [
      "a calibration of last year",
      record("2026-04-01", "2026-05-01"),
      record("2025-04-01", "2026-05-01"),
      warns("calibration-old"),
    ],
    [
      "a speed that nobody walks",
      { calibration: flow(band) },
      { calibration: flow(band, farm.fast) },
      warns("speed-implausible"),
    ],
  ];
}

function base(farm: Farm): PlanInput {
  return {
    plot: {
      kind: "row-bands",
      rows: 10,
      rowLength: farm.rowLength,
      bandWidth: farm.band,
      rowSpacing: farm.spacing,
    },
    calibration: {
      kind: "strip",
      used: qty(farm.used, farm.small),
      swath: farm.band,
      distance: farm.distance,
    },
    sprayer: { tank: qty(farm.tank, farm.large) },
    products: [{ name: "Product A", form: "liquid", rate: farm.liquid as ReturnType<typeof qty<Unit>> }],
    tools: "syringes",
  } as PlanInput;
}

describe.each(FARMS)("a slip in a $name job", (farm) => {
  const plan = (change: Change) => planApplication({ ...base(farm), ...change } as PlanInput);

  it.each(slipsOf(farm))("%s", (_, right, wrong, expected) => {
    expectSlip(
      () => plan(right),
      () => plan(wrong),
      expected,
    );
  });
});
