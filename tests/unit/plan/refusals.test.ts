import { describe, expect, it } from "vitest";
import type { ErrorCode } from "../../../src/errors.ts";
import { planApplication, readRecord, reconcile } from "../../../src/plan/index.ts";
import { qty } from "../../../src/units/index.ts";
import { refusal } from "../../helpers/refusal.ts";

const PRODUCT = { name: "Product A", form: "liquid", rate: qty(2, "L/ha") } as const;
const JOB = {
  plot: { kind: "rectangle", length: qty(100, "m"), width: qty(50, "m") },
  calibration: { kind: "known", rate: qty(200, "L/ha") },
  sprayer: { tank: qty(120, "L") },
  products: [PRODUCT],
  tools: "cylinders",
} as const;
const BANDS = { kind: "row-bands", rows: 4, rowLength: qty(50, "m"), bandWidth: qty(1, "m") } as const;
const UNEVEN = {
  kind: "row-bands",
  rowLengths: [qty(50, "m"), qty(30, "m")],
  bandWidth: qty(1, "m"),
} as const;
const treated = { value: 100, unit: "m2", of: "treated" };
const ground = { value: 100, unit: "m2", of: "ground" };

const plan = (change: object): unknown => planApplication({ ...JOB, ...change } as never);
const plot = (one: unknown): unknown => plan({ plot: one });
const product = (change: object): unknown => plan({ products: [{ ...PRODUCT, ...change }] });
const price = (one: object, currency?: object): unknown =>
  plan({ products: [{ ...PRODUCT, price: one }], ...(currency && { currency }) });
const PLAN = planApplication({ ...JOB, plot: [JOB.plot, JOB.plot], sprayer: { tank: qty(250, "L") } });
const done = (actual: unknown, from: unknown = PLAN): unknown => reconcile(from as never, actual as never);
const finished = "2026-05-02T22:30";
const left = qty(10, "L");
const record = (change: object, products: object = {}) =>
  reconcile(planApplication({ ...JOB, products: [{ ...PRODUCT, ...products }] } as never), {
    finished,
    left,
    ...change,
  } as never);

// A form shows these sentences as they are: each says what was given, what is wanted, and what may be wrong.
describe("what plan says of input that cannot be", () => {
  it.each<[() => unknown, ErrorCode, string, string]>([
    [
      () => plot({ ...JOB.plot, length: qty(5, "gal") }),
      "wrong-dimension",
      "plot.length",
      "5 gal is a volume. Enter a length, such as 5 ft.",
    ],
    [
      () => plot([JOB.plot, { ...JOB.plot, width: qty(0, "m") }]),
      "out-of-range",
      "plot[1].width",
      "Must be more than 0.",
    ],
    [
      () => plot({ kind: "treated-area", treated: ground }),
      "wrong-area",
      "plot.treated",
      "This is ground area. Enter the treated area: only the part that is really sprayed.",
    ],
    [
      () => plot({ kind: "treated-area", treated, ground: { ...ground, value: 50 } }),
      "conflict",
      "plot.treated",
      "100 m² treated is more than the 50 m² of ground. Count a plot once even if you spray it twice.",
    ],
    [
      () => plot({ kind: "ground-area", ground: treated }),
      "wrong-area",
      "plot.ground",
      "This is treated area. Enter the ground area: the whole plot, sprayed or not.",
    ],
    [() => plot({ kind: "composite", add: [] }), "too-few", "plot.add", 'Enter at least 1 under "add".'],
    [
      () => plot({ kind: "composite", add: [{ ...JOB.plot, length: qty(5, "gal") }] }),
      "wrong-dimension",
      "plot.add[0].length",
      "5 gal is a volume. Enter a length, such as 5 m.",
    ],
    [
      () => plot({ kind: "composite", add: [{ kind: "blob" }] }),
      "unknown-choice",
      "plot.add[0].kind",
      'There is no choice "blob". Choose one of: rectangle, triangle, trapezoid, circle, ellipse, ring, sector, offsets, unequal-offsets, boundary.',
    ],
    [
      () => plot({ kind: "composite", add: [5] }),
      "not-a-quantity",
      "plot.add[0]",
      "This must be an object, not 5.",
    ],
    [
      () =>
        plot({
          kind: "composite",
          add: [JOB.plot],
          subtract: [JOB.plot, { kind: "circle", diameter: qty(1, "gal") }],
        }),
      "wrong-dimension",
      "plot.subtract[1].diameter",
      "1 gal is a volume. Enter a length, such as 5 m.",
    ],
    [
      () => plot({ kind: "composite", add: [JOB.plot], subtract: 5 }),
      "not-a-quantity",
      "plot.subtract",
      "This must be a list, not 5.",
    ],
    [() => plot({ ...JOB.plot, fraction: 0 }), "out-of-range", "plot.fraction", "Must be more than 0."],
    [
      () => plan({ calibration: { kind: "known", rate: qty(5, "gal") } }),
      "wrong-dimension",
      "calibration.rate",
      "5 gal is a volume. Enter a volume per area, such as 5 L/ha.",
    ],
    [
      () =>
        plan({
          calibration: { kind: "known", rate: qty(1e75, "L/ha") },
          plot: { ...JOB.plot, length: qty(1e250, "m") },
        }),
      "not-finite",
      "plot.length",
      "This is too large to compute with.",
    ],
    [
      () => plan({ calibration: { kind: "known", rate: qty(1e308, "L/ha") } }),
      "not-finite",
      "calibration.rate",
      "This is too large to compute with.",
    ],
    [
      () => plan({ sprayer: { tank: qty(5, "kg") } }),
      "wrong-dimension",
      "sprayer.tank",
      "5 kg is a weight. Enter a volume, such as 5 L.",
    ],
    [
      () => plan({ sprayer: { tank: qty(5, "L"), workingFill: qty(6, "L") } }),
      "conflict",
      "sprayer.workingFill",
      "You can't fill a 5 L tank to 6 L. Enter what the tank holds or less.",
    ],
    [
      () => plan({ sprayer: { tank: qty(120, "L"), leastLoad: qty(121, "L") } }),
      "conflict",
      "sprayer.leastLoad",
      "The smallest load can't be more than a full one of 120 L.",
    ],
    [
      () => plan({ sprayer: { tank: qty(120, "L"), lineVolume: qty(-1, "L") } }),
      "out-of-range",
      "sprayer.lineVolume",
      "Must be 0 or more.",
    ],
    [
      () => plan({ sprayer: { tank: qty(1, "mL") } }),
      "out-of-range",
      "plot",
      "A mix of 100 L in loads of 0.001 L makes 100,000 loads, more than 1,000. Check the units of the rate, the area and the tank.",
    ],
    [() => plan({ reserve: { percent: 101 } }), "out-of-range", "reserve.percent", "Must be 100 or less."],
    [
      () => plan({ split: "rows" }),
      "unknown-choice",
      "split",
      'There is no choice "rows". Choose one of: full-then-part, equal, whole-rows, whole-plots, easiest.',
    ],
    [
      () => plan({ split: "whole-rows" }),
      "conflict",
      "split",
      "Whole rows to a load need one plot with rows of one length. Choose equal loads instead.",
    ],
    [
      () => plan({ split: "whole-rows", plot: UNEVEN }),
      "conflict",
      "split",
      "Whole rows to a load need one plot with rows of one length. Choose equal loads instead.",
    ],
    [
      () => plan({ split: "whole-rows", plot: [BANDS, BANDS] }),
      "conflict",
      "split",
      "Whole rows to a load need one plot with rows of one length. Choose equal loads instead.",
    ],
    [
      () => plan({ split: "whole-plots", plot: [BANDS, BANDS, JOB.plot] }),
      "conflict",
      "split",
      "Whole plots to a load need plots of one treated area. Choose equal loads instead.",
    ],
    [
      () => plan({ split: "whole-plots", plot: [JOB.plot, BANDS, BANDS] }),
      "conflict",
      "split",
      "Whole plots to a load need plots of one treated area. Choose equal loads instead.",
    ],
    [
      () => plan({ split: "whole-plots", sprayer: { tank: qty(40, "L") } }),
      "conflict",
      "split",
      "One row or plot takes 100 L, more than a load of 40 L. Split the mix into equal loads.",
    ],
    [() => product({ name: undefined }), "missing", "products[0].name", "Enter some text here."],
    [() => product({ name: 7 }), "not-a-quantity", "products[0].name", "Enter some text, not 7."],
    [() => product({ name: "  " }), "missing", "products[0].name", "Enter some text here."],
    [
      () => plan({ products: [PRODUCT, PRODUCT] }),
      "conflict",
      "products[1].name",
      "There is a product named Product A in this mix already. Enter each product once.",
    ],
    [
      () => product({ rate: qty(2, "kg/ha") }),
      "wrong-dimension",
      "products[0].rate",
      "2 kg/ha is a weight, but this product is a liquid. Check the label's unit, or change the product to dry.",
    ],
    [
      () =>
        plan({
          plot: { kind: "treated-area", treated },
          products: [{ ...PRODUCT, rate: { rate: qty(2, "L/ha"), per: "ground" } }],
        }),
      "conflict",
      "products[0].rate",
      "This rate is per area of ground, and the ground of this plot isn't known. Enter the row spacing or the ground area.",
    ],
    [
      () => product({ rate: qty(2, "mL/m") }),
      "conflict",
      "products[0].rate",
      "This rate is per length of row, and this plot isn't in rows. Choose a plot in rows, or a rate per area.",
    ],
    [
      () => product({ rate: qty(201, "L/ha") }),
      "conflict",
      "products[0].rate",
      "That's 1,005 mL of product in 1 L of mix, which leaves no room for water. Check the rate's unit and the output rate.",
    ],
    [
      () =>
        plan({
          products: [
            { ...PRODUCT, rate: qty(150, "L/ha") },
            { ...PRODUCT, name: "Product B", rate: qty(150, "L/ha") },
          ],
        }),
      "conflict",
      "products",
      "The liquid products add up to 150 L, which leaves no room for water in 100 L of mix. Check the units of the rates.",
    ],
    [
      () => product({ form: "dry", rate: qty(2, "kg/ha"), bulkDensity: qty(2, "m"), tools: 1 }),
      "wrong-dimension",
      "products[0].bulkDensity",
      "2 m is a length. Enter a weight per volume, such as 5 kg/L. (2 errors.)",
    ],
    [
      () =>
        plan({
          tools: "us-spoons",
          products: [{ ...PRODUCT, form: "dry", rate: qty(2, "kg/ha"), bulkDensity: qty(2, "m") }],
        }),
      "wrong-dimension",
      "products[0].bulkDensity",
      "2 m is a length. Enter a weight per volume, such as 5 kg/L.",
    ],
    [
      () => product({ labelPermitsDilution: "yes" }),
      "not-a-quantity",
      "products[0].labelPermitsDilution",
      'Enter true or false, not "yes".',
    ],
    [
      () => product({ label: 5 }),
      "not-a-quantity",
      "products[0].label",
      "Enter an object, not 5: min, max, leastCarrier, mostCarrier, seasonMax, mostApplications, daysBetween.",
    ],
    [
      () => product({ label: { max: qty(1, "kg/ha") } }),
      "wrong-dimension",
      "products[0].label.max",
      "1 kg/ha is a weight, but this product is a liquid. Check the label's unit, or change the product to dry.",
    ],
    [
      () => product({ soFar: 5 }),
      "not-a-quantity",
      "products[0].soFar",
      "Enter an object, not 5: rate, applications, daysSinceLast.",
    ],
    [
      () => product({ formulation: "QQ" }),
      "unknown-choice",
      "products[0].formulation",
      'There is no choice "QQ". Choose one of: WP, WG, WT, EG, EP, SC, CS, SE, ZC, ZE, ZW, DC, EC, EW, GL, ME, OD, GW, SL, SG, SP, ST, water-conditioner, compatibility-agent, defoamer, adjuvant, drift-retardant, fertilizer.',
    ],
    [
      () => product({ formulation: "EC", inSolubleBag: 1 }),
      "not-a-quantity",
      "products[0].inSolubleBag",
      "Enter true or false, not 1.",
    ],
    [
      () => price({ amount: -1, per: qty(1, "L") }),
      "out-of-range",
      "products[0].price.amount",
      "Must be 0 or more.",
    ],
    [
      () => price({ amount: "1", per: qty(1, "L") }),
      "not-a-quantity",
      "products[0].price.amount",
      "Enter a number, not text.",
    ],
    [
      () => price({ amount: 1, per: qty(1, "kg") }),
      "wrong-dimension",
      "products[0].price.per",
      "This product is a liquid. Enter what a volume of it costs, not 1 kg.",
    ],
    [
      () => price({ amount: 1, per: { value: 1, unit: "litre" } }),
      "unknown-unit",
      "products[0].price.per.unit",
      'The unit "litre" isn\'t known here. Did you mean "L"?',
    ],
    [
      () => price({ amount: 1, per: qty(0, "L") }),
      "out-of-range",
      "products[0].price.per",
      "Must be more than 0.",
    ],
    [
      () => price({ amount: 1, per: qty(1, "L") }, { code: "EUR", decimals: 5 }),
      "out-of-range",
      "currency.decimals",
      "Must be 4 or less.",
    ],
    [
      () => price({ amount: 1, per: qty(1, "L") }, { code: "EUR", decimals: 1.5 }),
      "out-of-range",
      "currency.decimals",
      "Enter a whole number, 0 or more.",
    ],
    [
      () => price({ amount: 1, per: qty(1, "L") }, []),
      "not-a-quantity",
      "currency",
      "Enter an object, not a list: code.",
    ],
    [
      () => plan({ thresholds: 5 }),
      "not-a-quantity",
      "thresholds",
      "Enter an object, not 5: leastRate, mostRate, slowest, fastest, readingPercent, nozzlePercent, calibrationDays, lastLoadPercent, bandSwath.",
    ],
    [
      () => plan({ thresholds: { mostSpeed: qty(9, "mph") } }),
      "unknown-field",
      "thresholds.mostSpeed",
      'There is no field "mostSpeed" here. The fields are: leastRate, mostRate, slowest, fastest, readingPercent, nozzlePercent, calibrationDays, lastLoadPercent, bandSwath.',
    ],
    [
      () => plan({ thresholds: { lastLoadPercent: 0 } }),
      "out-of-range",
      "thresholds.lastLoadPercent",
      "Must be more than 0.",
    ],
    [
      () => plan({ thresholds: { mostRate: qty(9, "mph") } }),
      "wrong-dimension",
      "thresholds.mostRate",
      "9 mph is a speed. Enter a volume per area, such as 5 L/ha.",
    ],
    [() => done({ finished, left }, 5), "not-a-quantity", "plan", "This must be an object, not 5."],
    [() => done(undefined), "missing", "actual", "This part is missing. Enter: finished."],
    [
      () => done({ finished }),
      "missing",
      "actual.left",
      "Enter what was left over, or what was used on each plot.",
    ],
    [
      () => done({ finished, left, used: [left, left] }),
      "conflict",
      "actual.left",
      "Enter what was left over or what was used on each plot, not both.",
    ],
    [() => done({ finished, left: qty(-1, "L") }), "out-of-range", "actual.left", "Must be 0 or more."],
    [
      () => done({ finished, left: qty(500, "L") }),
      "conflict",
      "actual.left",
      "You can't have 500 L left of the 200 L that was mixed. If more was mixed, enter how much.",
    ],
    [
      () => done({ finished, left, mixed: qty(0, "L") }),
      "out-of-range",
      "actual.mixed",
      "Must be more than 0.",
    ],
    [
      () => done({ finished, left, mixed: qty(5, "kg") }),
      "wrong-dimension",
      "actual.mixed",
      "5 kg is a weight. Enter a volume, such as 5 L.",
    ],
    [
      () => done({ finished, left, addedWater: qty(-1, "L") }),
      "out-of-range",
      "actual.addedWater",
      "Must be 0 or more.",
    ],
    [
      () => done({ finished, used: [left] }),
      "conflict",
      "actual.used",
      "The plan has 2 plots, not 1. Enter one amount for each, in the order of the plan.",
    ],
    [
      () => done({ finished, used: [left, qty(-1, "L")] }),
      "out-of-range",
      "actual.used[1]",
      "Must be 0 or more. (2 errors.)",
    ],
    [
      () => done({ finished, used: [left, qty(300, "L")] }),
      "conflict",
      "actual.used",
      "You can't use 310 L of the 200 L that was mixed. If more was mixed, enter how much.",
    ],
    [() => done({ finished, used: 5 }), "not-a-quantity", "actual.used", "This must be a list, not 5."],
    [
      () => record({ finished: undefined }),
      "missing",
      "actual.finished",
      "Enter a local time, such as 2026-05-02T09:30.",
    ],
    [
      () => record({ finished: null }),
      "missing",
      "actual.finished",
      "Enter a local time, such as 2026-05-02T09:30.",
    ],
    [
      () => record({ finished: 20260502 }),
      "not-a-quantity",
      "actual.finished",
      "Enter text such as 2026-05-02T09:30, not 20260502.",
    ],
    [
      () => record({ finished: "2026-05-02" }),
      "unreadable",
      "actual.finished",
      'Couldn\'t read "2026-05-02". Enter a local time, such as 2026-05-02T09:30.',
    ],
    [
      () => record({ finished: "on 2026-05-02T22:30" }),
      "unreadable",
      "actual.finished",
      'Couldn\'t read "on 2026-05-02T22:30". Enter a local time, such as 2026-05-02T09:30.',
    ],
    [
      () => record({ finished: "2026-05-02T22:30+25:00" }),
      "unreadable",
      "actual.finished",
      'Couldn\'t read "2026-05-02T22:30+25:00". Enter a local time, such as 2026-05-02T09:30.',
    ],
    [
      () => record({ finished: "2026-05-02T24:00" }),
      "unreadable",
      "actual.finished",
      'Couldn\'t read "2026-05-02T24:00". Enter a local time, such as 2026-05-02T09:30.',
    ],
    [
      () => record({ finished: "2026-05-02T22:60" }),
      "unreadable",
      "actual.finished",
      'Couldn\'t read "2026-05-02T22:60". Enter a local time, such as 2026-05-02T09:30.',
    ],
    [
      () => record({ finished: "2026-02-30T22:30" }),
      "unreadable",
      "actual.finished",
      'There is no date "2026-02-30". Write year-month-day, such as 2025-04-12.',
    ],
    [
      () => record({ certification: " " }),
      "missing",
      "actual.certification",
      "This is blank. Enter some text, or leave it out.",
    ],
    [
      () => readRecord({ ...record({}).record, date: "2026-05-01" }),
      "conflict",
      "date",
      "The date, 2026-05-01, isn't the day of the end, 2026-05-02T22:30. Enter the same day.",
    ],
    [
      () => readRecord({ ...record({}).record, finished: undefined, date: "2026-05-01" }),
      "missing",
      "finished",
      "Enter a local time, such as 2026-05-02T09:30.",
    ],
    [
      () => readRecord({ ...record({}).record, firstHarvest: "2026-05-01" }),
      "conflict",
      "firstHarvest",
      "2026-05-01 is before the end, 2026-05-02T22:30. Check both.",
    ],
    [
      () => readRecord({ ...record({}).record, reEntry: "2026-05-01T09:00" }),
      "conflict",
      "reEntry",
      "2026-05-01T09:00 is before the end, 2026-05-02T22:30. Check both.",
    ],
    [
      () => record({ started: "2026-05-02T22:31" }),
      "conflict",
      "actual.started",
      "The start, 2026-05-02T22:31, is after the end, 2026-05-02T22:30.",
    ],
    [
      () => record({ started: "at 9" }),
      "unreadable",
      "actual.started",
      'Couldn\'t read "at 9". Enter a local time, such as 2026-05-02T09:30.',
    ],
    [() => record({ weather: 5 }), "not-a-quantity", "actual.weather", "Enter some text, not 5."],
    [
      () => record({}, { reEntryHours: -1 }),
      "out-of-range",
      "products[0].reEntryHours",
      "Must be 0 or more.",
    ],
    [
      () => record({}, { reEntryHours: 24_001 }),
      "out-of-range",
      "products[0].reEntryHours",
      "Must be 24,000 or less.",
    ],
    [
      () => record({}, { preHarvestDays: 1001 }),
      "out-of-range",
      "products[0].preHarvestDays",
      "Must be 1,000 or less.",
    ],
    [
      () => record({}, { preHarvestDays: 1.5 }),
      "out-of-range",
      "products[0].preHarvestDays",
      "Enter a whole number, 0 or more.",
    ],
  ])("%s", (call, code, path, message) => {
    const error = refusal(call);
    expect({ code: error.code, path: error.path, message: error.message }).toEqual({ code, path, message });
  });
});
