import { rectangleArea, treatAll } from "../../src/area/index.ts";
import { solveOutput, speedFrom, stripRate } from "../../src/output-rate/index.ts";
import { productRate } from "../../src/tank-mix/index.ts";
import { qty, type Unit, valueIn } from "../../src/units/index.ts";
import { agrees, publicationErrs, topic } from "./harness.ts";

const one = (from: Unit, to: Unit): number => valueIn(qty(1, from), to as never);

topic("12_found_since", () => {
  agrees("more_hb44_cup", () => [
    { key: "floz", ours: one("cup", "fl_oz"), within: 0 },
    { key: "pt", ours: one("cup", "pt"), within: 0 },
    { key: "ml", ours: one("cup", "mL"), within: 0.5 },
  ]);
  agrees("more_hb44_in3", () => [
    { key: "floz", ours: one("in3", "fl_oz"), within: 0.0005 },
    { key: "ml", ours: one("in3", "mL"), within: 0.0005 },
  ]);
  publicationErrs("more_hb44_ft3", "28.3168 L is cut to 28.316, where it rounds to 28.317", () => [
    { key: "gal", ours: one("ft3", "gal"), within: 0.0005, right: 1728 / 231 },
    { key: "L", ours: one("ft3", "L"), within: 0.0005, right: 3.048 ** 3 },
  ]);
  agrees("more_exact_us", () => [
    { key: "floz_ml", ours: one("fl_oz", "mL"), within: 1e-14 },
    { key: "pt_ml", ours: one("pt", "mL"), within: 1e-12 },
    { key: "in3_ml", ours: one("in3", "mL"), within: 1e-14 },
  ]);
  agrees("more_exact_imperial", () => [{ key: "floz_ml", ours: one("imp_fl_oz", "mL"), within: 1e-14 }]);
  agrees("more_exact_mass", () => [
    { key: "oz_g", ours: one("oz", "g"), within: 1e-14 },
    { key: "lb_g", ours: one("lb", "g"), within: 1e-12 },
  ]);
  agrees("more_unl_acre_mile", () => [
    {
      key: "area",
      ours: valueIn(rectangleArea({ length: qty(1, "mi"), width: qty(8.25, "ft") }), "ac"),
      within: 1e-12,
    },
  ]);
  agrees("more_unl_acre_quarter", () => [
    {
      key: "area",
      ours: valueIn(rectangleArea({ length: qty(0.25, "mi"), width: qty(33, "ft") }), "ac"),
      within: 1e-12,
    },
  ]);
  agrees("more_unl_ha", () => [
    { key: "ha", ours: one("ac", "ha"), within: 0.0005 },
    { key: "ac_per_ha", ours: one("ha", "ac"), within: 0.0005 },
  ]);
  agrees("more_agro_wp80", () => {
    const contains = { ...qty(80, "%"), basis: "w/w" } as const;
    const product = productRate({ activeIngredient: qty(2, "lb/ac"), contains, form: "dry" });
    return [{ key: "product", ours: valueIn(product as never, "lb/ac" as never), within: 1e-12 }];
  });
  agrees("more_goodfruit_boom", () => [
    {
      key: "rate",
      ours: stripRate({ used: qty(4, "gal"), swath: qty(10, "ft"), distance: qty(436, "ft") }).value,
      within: 0.5,
    },
  ]);
  publicationErrs(
    "more_larimer_plot",
    "a plot of 18.5 ft by 18.5 ft is 342.25 ft², 0.6% more than the 1/128 acre that makes ounces gallons per acre",
    () => [
      {
        key: "area",
        ours: treatAll(rectangleArea({ length: qty(18.5, "ft"), width: qty(18.5, "ft") })).value,
        within: 0.00005,
        right: 342.25,
      },
    ],
  );
  agrees("more_countryco_boom", () => {
    const speed = speedFrom({ distance: qty(200, "m"), time: qty(1, "min") });
    const { rate } = solveOutput({ flow: qty(24, "L/min"), speed, width: qty(12, "m") });
    return [{ key: "rate", ours: rate.value, within: 1e-12 }];
  });
  agrees("more_turfai_walk", () => [
    { key: "speed", ours: speedFrom({ distance: qty(100, "m"), time: qty(90, "s") }).value, within: 1e-12 },
    { key: "area", ours: rectangleArea({ length: qty(30, "m"), width: qty(10, "m") }).value, within: 0 },
  ]);
  agrees("more_pesticidewise_walk", () => {
    const speed = speedFrom({ distance: qty(33.3, "m"), time: qty(50, "s") });
    return [
      {
        key: "area",
        ours: rectangleArea({ length: qty(33.3, "m"), width: qty(0.75, "m") }).value,
        within: 0.5,
      },
      { key: "speed_m_s", ours: valueIn(speed, "m/s"), within: 0.005 },
      { key: "speed_km_h", ours: valueIn(speed, "km/h"), within: 0.05 },
    ];
  });
});
