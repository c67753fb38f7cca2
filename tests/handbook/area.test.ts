import { expect } from "vitest";
import { circleArea, ellipseArea, offsetsArea, rectangleArea, triangleArea } from "../../src/area/index.ts";
import { productAmount } from "../../src/tank-mix/index.ts";
import { type LengthUnit, type Mass, qty, valueIn } from "../../src/units/index.ts";
import { agrees, type HandbookCase, publicationErrs, rule, topic } from "./harness.ts";

// Whole square feet or metres are printed; the one exception says so.
const WHOLE = 0.5;

const number = (one: HandbookCase, key: string): number => one.inputs[key]?.[0] as number;
const length = (one: HandbookCase, key: string) => qty(number(one, key), one.inputs[key]?.[1] as LengthUnit);

topic("09_area", () => {
  for (const id of [
    "area_aknha_rect",
    "area_vaturf2_rect",
    "area_okcturf_rect",
    "area_wa_rect",
    "area_clem1220_rect",
  ]) {
    agrees(id, (one) => {
      const area = rectangleArea({ length: length(one, "L"), width: length(one, "W") });
      return [{ key: "area", ours: valueIn(area, id === "area_wa_rect" ? "m2" : "ft2"), within: WHOLE }];
    });
  }

  for (const id of ["area_aknha_tri", "area_vaturf2_tri", "area_okcturf_tri"]) {
    agrees(id, (one) => [
      {
        key: "area",
        ours: triangleArea({ base: length(one, "base"), height: length(one, "height") }).value,
        within: WHOLE,
      },
    ]);
  }

  agrees("area_tnpsep_circle20", (one) => [
    { key: "area", ours: circleArea({ diameter: length(one, "diameter") }).value, within: 0.0005 },
  ]);

  for (const id of ["area_aknha_circle", "area_okcturf_circle"]) {
    publicationErrs(id, "it takes pi as 3.14, which is 0.05% too little", (one) => [
      {
        key: "area",
        ours: circleArea({ diameter: length(one, "diameter") }).value,
        right: (Math.PI * number(one, "diameter") ** 2) / 4,
        within: WHOLE,
      },
    ]);
  }

  publicationErrs("area_grounds_circle08", "0.8 of the square is 1.9% more than the circle", (one) => [
    {
      key: "area",
      ours: circleArea({ diameter: length(one, "D") }).value,
      right: (Math.PI * number(one, "D") ** 2) / 4,
      within: WHOLE,
    },
  ]);

  publicationErrs("area_grounds_oval", "0.8 of length times width is 1.9% more than the ellipse", (one) => [
    {
      key: "area",
      ours: ellipseArea({ length: length(one, "L"), width: length(one, "W_mid") }).value,
      right: (Math.PI * number(one, "L") * number(one, "W_mid")) / 4,
      within: WHOLE,
    },
  ]);

  agrees("area_grounds_offsets", (one) => {
    const offsets = ((one.inputs.offsets?.[0] ?? []) as readonly number[]).map((offset) => qty(offset, "ft"));
    const area = offsetsArea({ offsets, spacing: length(one, "spacing"), rule: "mid-strip" });
    return [{ key: "area", ours: area.value, within: WHOLE }];
  });

  rule(
    "area_mu_offset_rule",
    "offsets at equal spacing along the longest axis, within 5% of the truth",
    () => {
      // A round lawn of 100 ft, measured every 10 ft from the middle of each strip on.
      const offsets = Array.from({ length: 10 }, (_, i) =>
        qty(2 * Math.sqrt(50 ** 2 - (10 * i - 45) ** 2), "ft"),
      );
      const measured = offsetsArea({ offsets, spacing: qty(10, "ft"), rule: "mid-strip" }).value;
      expect(Math.abs(measured / circleArea({ diameter: qty(100, "ft") }).value - 1)).toBeLessThan(0.05);
    },
  );

  // Ponds: their area, and what treats the water in them.
  agrees("area_osu_pond_rect", (one) => [
    {
      key: "area",
      ours: valueIn(rectangleArea({ length: length(one, "length"), width: length(one, "width") }), "ac"),
      within: 0.00005,
    },
  ]);
  const round = (one: HandbookCase): number => {
    const diameter = qty(number(one, "shoreline") / Math.PI, "ft");
    return valueIn(circleArea({ diameter }), "ac");
  };
  agrees("area_tpwd_round", (one) => [{ key: "area", ours: round(one), within: 0.005 }]);
  publicationErrs("area_osu_pond_round", "520² / 547,390 is 0.49398, cut to 0.4939", (one) => [
    { key: "area", ours: round(one), within: 0.00005, right: 520 ** 2 / (4 * Math.PI * 43_560) },
  ]);
  agrees("area_tx_acre_foot", (one) => {
    const whole = qty(number(one, "one"), "ac_ft");
    return [
      { key: "ft3", ours: valueIn(whole, "ft3"), within: 0.5 },
      { key: "gal", ours: valueIn(whole, "gal"), within: 500 },
    ];
  });
  agrees("area_tpwd_ppm", (one) => {
    const { amount } = productAmount({
      rate: { value: number(one, "strength"), unit: "ppm", basis: "w/v" },
      form: "dry",
      carrier: qty(number(one, "volume"), "ac_ft"),
    });
    return [{ key: "product", ours: valueIn(amount as Mass, "lb"), within: 0.05 }];
  });
});
