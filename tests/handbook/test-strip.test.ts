import { directStripArea, handSprayRates, stripRate } from "../../src/output-rate/index.ts";
import { convert, qty, quantityRatio, scaleQuantity, sumQuantities, valueIn } from "../../src/units/index.ts";
import { agrees, type HandbookCase, publicationErrs, topic } from "./harness.ts";

const list = (one: HandbookCase, key: string): readonly number[] =>
  [one.inputs[key]?.[0] ?? []].flat().map(Number);
const number = (one: HandbookCase, key: string): number => Number(one.inputs[key]?.[0]);
const plot = (squareFeet: number) => ({ value: squareFeet, unit: "ft2", of: "treated" }) as const;
const perArea = (gallons: number, squareFeet: number) => {
  const { perArea: rate } = handSprayRates({ used: qty(gallons, "gal"), area: plot(squareFeet) });
  if (rate === undefined) throw new Error("a plot always tells a rate per area");
  return rate;
};

topic("02_test_strip_refill", () => {
  agrees("strip_mesa", (one) => {
    // An acre (43,560 ft²) at the swath's width, and the tenth of it that is the course.
    const acre = qty(valueIn(qty(1, "ac"), "ft2") / number(one, "swath"), "ft");
    const distance = scaleQuantity(acre, number(one, "course_area"));
    const rate = stripRate({
      used: qty(number(one, "refill"), "gal"),
      swath: qty(number(one, "swath"), "ft"),
      distance,
    });
    return [
      { key: "full_acre_distance", ours: acre.value, within: 0.5 },
      { key: "course", ours: distance.value, within: 0.5 },
      { key: "rate", ours: rate.value, within: 0.5 },
    ];
  });

  publicationErrs(
    "strip_mt_15x15",
    "the acreage is cut to 0.00516 before the division, which makes the rate 19.38 for 19.36",
    (one) => {
      const rate = stripRate({
        used: qty(number(one, "volume"), "gal"),
        swath: qty(number(one, "width"), "ft"),
        distance: qty(number(one, "length"), "ft"),
      });
      const area = qty(number(one, "length") * number(one, "width"), "ft2");
      return [
        { key: "area", ours: area.value, within: 0, right: 225 },
        { key: "acres", ours: valueIn(area, "ac"), within: 0.000005, right: 225 / 43_560 },
        { key: "rate", ours: rate.value, within: 0.005, right: (0.1 * 43_560) / 225 },
      ];
    },
  );

  agrees("strip_mt_14x14", (one) => {
    const area = qty(number(one, "length") * number(one, "width"), "ft2");
    return [
      { key: "area", ours: area.value, within: 0 },
      { key: "acres", ours: valueIn(area, "ac"), within: 0.0005 },
    ];
  });

  agrees("strip_pes_gun", (one) => {
    const times = list(one, "times").map((seconds) => qty(seconds, "s"));
    const rate = perArea(number(one, "catch"), number(one, "area"));
    return [
      {
        key: "course",
        ours: quantityRatio(qty(number(one, "area"), "ft2"), qty(number(one, "swath"), "ft2")),
        within: 0,
      },
      { key: "mean_time", ours: scaleQuantity(sumQuantities(times), 1 / times.length).value, within: 1e-12 },
      { key: "rate_1000", ours: convert(rate, "gal/1000ft2").value, within: 1e-12 },
      { key: "rate", ours: rate.value, within: 0.05 },
    ];
  });

  agrees("strip_mesa_handgun", (one) => {
    // The plot is 1/128 acre, told to the half foot as 18.5 ft square.
    const area = directStripArea({ catchUnit: "fl_oz", rateUnit: "gal/ac" });
    const rate = perArea(number(one, "catch") / 128, area.value);
    return [
      { key: "plot_side", ours: Math.sqrt(area.value), within: 0.25, printed: number(one, "plot_side") },
      { key: "rate", ours: rate.value, within: 1e-12 },
      { key: "acres_per_tank", ours: number(one, "tank") / rate.value, within: 1e-12 },
    ];
  });

  agrees("strip_cepep_250", (one) => {
    const rate = perArea(1, number(one, "area"));
    return [{ key: "multiplier_to_1000", ours: convert(rate, "gal/1000ft2").value, within: 1e-12 }];
  });
});
