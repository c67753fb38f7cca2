import {
  directStripArea,
  directStripDistance,
  handSprayRates,
  stripRate,
} from "../../src/output-rate/index.ts";
import {
  type Length,
  qty,
  quantityRatio,
  scaleQuantity,
  sumQuantities,
  valueIn,
} from "../../src/units/index.ts";
import cases from "./cases.json" with { type: "json" };
import { agrees, type HandbookCase, publicationErrs, topic } from "./harness.ts";

const PAIR = { catchUnit: "fl_oz", rateUnit: "gal/ac" } as const;
const TOPIC = "01_one_128th_acre";

/** An acre is 43,560 square feet by definition (NIST Handbook 44 (2024), Appendix C). */
const SQUARE_FEET = 43_560 / 128;

const inchesOf = (one: HandbookCase): number =>
  Number((one.inputs.spacing_or_band_width ?? one.inputs.band_width)?.[0]);
const number = (one: HandbookCase, key: string): number => Number(one.inputs[key]?.[0]);
const square = (side: number) => ({ value: side * side, unit: "ft2", of: "treated" }) as const;
const feet = (width: Length): number => directStripDistance({ ...PAIR, width }).value;

topic(TOPIC, () => {
  const table = (cases as unknown as HandbookCase[]).filter(
    (one) => one.topic === TOPIC && "travel_distance" in one.expected && Number.isFinite(inchesOf(one)),
  );
  for (const { id, expected, agrees: right } of table) {
    const printed = String(expected.travel_distance?.[0]);
    // Half a unit of the last place printed: whole feet, or tenths.
    const within = printed.includes(".") ? 0.05 : 0.5;
    const check = (one: HandbookCase) => ({
      key: "travel_distance",
      ours: feet(qty(inchesOf(one), "in")),
      within,
    });
    if (right) agrees(id, (one) => [check(one)]);
    else {
      publicationErrs(id, "the feet are cut off, not rounded, or come from 340 ft² for 340.3125", (one) => [
        { ...check(one), right: (SQUARE_FEET * 12) / inchesOf(one) },
      ]);
    }
  }

  agrees("128_ugasb16_13ft_x10", (one) => [
    {
      key: "travel_distance",
      ours: scaleQuantity(
        directStripDistance({ ...PAIR, width: qty(number(one, "swath"), "ft") }),
        number(one, "course_multiple"),
      ).value,
      within: 0.05,
    },
  ]);

  agrees("128_osu520_15oz", (one) => {
    const width = qty(20, "in");
    const run = { used: qty(number(one, "catch_per_nozzle"), "fl_oz"), swath: width };
    const rate = stripRate({ ...run, distance: directStripDistance({ ...PAIR, width }) });
    return [{ key: "rate", ours: rate.value, within: 1e-12 }];
  });

  agrees("128_lsu_two_nozzle_row", (one) => {
    const rate = stripRate({
      used: qty(number(one, "catch_both"), "fl_oz"),
      swath: qty(number(one, "row_width"), "in"),
      distance: qty(number(one, "course"), "ft"),
    });
    return [{ key: "rate", ours: rate.value, within: 0.5 }];
  });

  agrees("128_lsu_oz_per_340ft2", (one) => {
    const area = { value: number(one, "area"), unit: "ft2", of: "treated" } as const;
    const { perArea } = handSprayRates({ used: qty(number(one, "catch"), "fl_oz"), area });
    return [{ key: "rate", ours: perArea?.value ?? Number.NaN, within: 0.005 }];
  });

  agrees("128_slides_hand", (one) => {
    const { perArea } = handSprayRates({
      used: qty(number(one, "catch"), "fl_oz"),
      area: square(number(one, "plot_side")),
    });
    return [{ key: "rate", ours: perArea?.value ?? Number.NaN, within: 0.5 }];
  });

  publicationErrs(
    "128_slides_shape_1.5x228",
    "1.5 ft × 228 ft is 342 ft²: the course of 340.3 ft² is 226.9 ft long",
    (one) => {
      // The area follows from the rate: what a known amount on this plot gives per area.
      const used = qty(1, "gal");
      const rate = stripRate({
        used,
        swath: qty(number(one, "width"), "ft"),
        distance: qty(number(one, "length"), "ft"),
      });
      return [{ key: "area", ours: used.value / valueIn(rate, "gal/ft2"), within: 0.5, right: 1.5 * 228 }];
    },
  );

  agrees("128_nc_course", (one) => {
    const course = directStripDistance({ ...PAIR, width: qty(number(one, "spray_width"), "ft") });
    return [
      { key: "course", ours: course.value, within: 0.5 },
      { key: "trees", ours: quantityRatio(course, qty(number(one, "tree_spacing"), "ft")), within: 0.5 },
    ];
  });

  agrees("128_nc_rate", (one) => {
    const mean = scaleQuantity(
      sumQuantities([qty(number(one, "t1"), "s"), qty(number(one, "t2"), "s")]),
      1 / 2,
    );
    const area = { ...directStripArea(PAIR), of: "treated" } as const;
    const { perArea } = handSprayRates({ used: qty(number(one, "catch"), "fl_oz"), area });
    return [
      { key: "mean_time", ours: mean.value, within: 0 },
      { key: "rate", ours: perArea?.value ?? Number.NaN, within: 1e-12 },
    ];
  });

  agrees("128_usu_area", () => [{ key: "area", ours: directStripArea(PAIR).value, within: 0.05 }]);
});
