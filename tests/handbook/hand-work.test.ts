import { rectangleArea, treatedArea } from "../../src/area/index.ts";
import {
  averageFlow,
  flowFrom,
  handSprayRates,
  solveOutput,
  timePerPlant,
  timeToCover,
  volumePerPlant,
} from "../../src/output-rate/index.ts";
import { leftoverArea, productAmount } from "../../src/tank-mix/index.ts";
import { convert, qty, type VolumeRate, valueIn } from "../../src/units/index.ts";
import { agrees, type HandbookCase, publicationErrs, topic } from "./harness.ts";

const number = (one: HandbookCase, key: string): number => Number(one.inputs[key]?.[0]);
const list = (one: HandbookCase, key: string): readonly number[] =>
  [one.inputs[key]?.[0] ?? []].flat().map(Number);
const gallons = (one: HandbookCase, key: string) => qty(number(one, key), "gal");

topic("15_hand_work", () => {
  agrees("hand_psu_flow", (one) => [
    {
      key: "flow",
      ours: valueIn(
        flowFrom({ caught: qty(number(one, "caught"), "qt"), time: qty(number(one, "time"), "min") }),
        "gal/min",
      ),
      within: 0.005,
    },
  ]);
  const onEachTree = (one: HandbookCase) =>
    timePerPlant({ flow: qty(number(one, "flow"), "gal/min"), each: gallons(one, "per_tree") });
  agrees("hand_psu_seconds", (one) => [{ key: "seconds", ours: onEachTree(one).value, within: 0.5 }]);
  publicationErrs("hand_psu_minutes", "0.08 / 0.30 is 0.267, cut to 0.26", (one) => [
    { key: "minutes", ours: valueIn(onEachTree(one), "min"), within: 0.005, right: 0.08 / 0.3 },
  ]);
  agrees("hand_pes_tree", (one) => {
    const flow = { caught: qty(number(one, "caught"), "qt"), time: qty(number(one, "time"), "s") };
    const each = volumePerPlant({ flow, time: qty(number(one, "each"), "s") });
    return [
      { key: "per_tree", ours: valueIn(each, "qt"), within: 0.5 },
      { key: "total", ours: number(one, "trees") * valueIn(each, "gal"), within: 0.5 },
    ];
  });
  agrees("hand_cocoa_flow", (one) => [
    {
      key: "flow",
      ours: valueIn(
        flowFrom({ caught: qty(number(one, "caught"), "mL"), time: qty(number(one, "time"), "min") }),
        "mL/min",
      ),
      within: 0.5,
    },
  ]);
  // A third of the tank was used, so a tank goes round three times as many trees: at the same volume for each.
  agrees("trade_cocoa_x3", (one) => {
    const { perPlant } = handSprayRates({ used: qty(number(one, "used"), "L"), plants: 7 });
    const trees = number(one, "tank") / valueIn(perPlant as never, "L" as never);
    return [{ key: "factor", ours: trees / 7, within: 0.0005 }];
  });
  agrees("hand_blog_mean", (one) => {
    const time = qty(number(one, "time"), "min");
    const catches = list(one, "catches").map((liters) => ({
      caught: qty(liters, "L"),
      time,
    }));
    const area = rectangleArea({
      length: qty(number(one, "distance"), "m"),
      width: qty(number(one, "width"), "m"),
    });
    return [
      { key: "flow", ours: averageFlow({ catches }).value, within: 0.005 },
      { key: "area", ours: area.value, within: 0.005 },
    ];
  });

  const plots = [
    "40ft_6mph",
    "60ft_6mph",
    "60ft_12mph",
    "80ft_6mph",
    "80ft_12mph",
    "15ft_5mph",
    "30ft_6mph",
    "45ft_5mph",
  ];
  for (const plot of plots)
    agrees(`hand_isu_${plot}`, (one) => {
      const minutes = timeToCover({
        area: treatedArea(qty(1, "ac")),
        width: qty(number(one, "width"), "ft"),
        speed: qty(number(one, "speed"), "mph"),
        efficiencyPercent: number(one, "efficiency"),
      });
      return [{ key: "capacity", ours: 60 / minutes.value, within: 0.05 }];
    });

  const perGallon = (rate: number, carrierRate: VolumeRate) =>
    productAmount({ rate: qty(rate, "fl_oz/ac"), form: "liquid", carrier: qty(1, "gal"), carrierRate });
  publicationErrs("hand_ncsu_oz", "8 / 7.5 is 1.067, cut to 1.06", (one) => [
    {
      key: "strength",
      ours: perGallon(number(one, "rate"), qty(number(one, "carrier"), "gal/ac")).strength.value,
      within: 0.005,
      right: 8 / 7.5,
    },
  ]);
  agrees("hand_ncsu_load", (one) => {
    const rate = qty(number(one, "strength"), "fl_oz/gal");
    const { amount } = productAmount({ rate, form: "liquid", carrier: gallons(one, "load") });
    return [{ key: "product", ours: amount.value, within: 0.05 }];
  });
  agrees("hand_mesa_area", (one) => {
    const area = leftoverArea({ volume: gallons(one, "tank"), rate: qty(number(one, "rate"), "gal/ac") });
    return [{ key: "part", ours: valueIn(area, "ac"), within: 1e-9 }];
  });

  agrees("trade_nafex_gpa", (one) => {
    const area = treatedArea(qty(number(one, "area"), "ft2"));
    const { perArea } = handSprayRates({ used: gallons(one, "used"), area });
    return [{ key: "rate", ours: (perArea as VolumeRate).value, within: 0.5 }];
  });
  agrees("trade_indep_gal", (one) => [
    { key: "rate", ours: convert(qty(number(one, "one"), "imp_gal/ac"), "L/ha").value, within: 0.05 },
  ]);
  agrees("trade_indep_rate", (one) => {
    const { rate } = solveOutput({
      flow: qty(number(one, "flow"), "L/min"),
      speed: qty(number(one, "speed"), "km/h"),
      width: qty(number(one, "spacing"), "m"),
    });
    return [{ key: "rate", ours: rate.value, within: 0.5 }];
  });
  agrees("trade_who_25m2", (one) => {
    const area = leftoverArea({ volume: qty(1, "L"), rate: qty(number(one, "rate"), "mL/m2") });
    return [{ key: "area_per_L", ours: valueIn(area, "m2"), within: 0.005 }];
  });

  /** Grams of active ingredient in a liter, through the product that brings them. */
  const gramsInLiter = (one: HandbookCase, form: "liquid" | "dry"): number => {
    const content = number(one, "content");
    const { strength } = productAmount({
      rate: {
        activeIngredient: qty(number(one, "ai"), "g/m2"),
        contains: { value: content, unit: "%", basis: form === "liquid" ? "w/v" : "w/w" },
      },
      form,
      carrier: qty(1, "L"),
      carrierRate: qty(number(one, "rate"), "mL/m2"),
    });
    // A milliliter of 1% weight in volume holds 0.01 g, as a gram of 1% weight in weight does.
    return (strength.value * content) / 100;
  };
  agrees("hand_unhcr_ec50", (one) => {
    const grams = gramsInLiter(one, "liquid");
    return [
      { key: "per_L", ours: grams, within: 0.5 },
      { key: "percent", ours: grams / 10, within: 0.05 },
    ];
  });
  agrees("hand_unhcr_wp", (one) => {
    const grams = gramsInLiter(one, "dry");
    return [
      { key: "per_L", ours: grams, within: 0.0005 },
      { key: "percent", ours: grams / 10, within: 0.00005 },
    ];
  });
});
