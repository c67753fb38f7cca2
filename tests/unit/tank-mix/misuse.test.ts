import {
  activeIngredientRate,
  carrierFor,
  checkLabel,
  diluteMix,
  jarTest,
  leftoverArea,
  mixingOrder,
  mixLoads,
  productAmount,
  productInLoads,
  productRate,
  rinseTank,
  splitLoads,
  stockFor,
  strengthOf,
} from "../../../src/tank-mix/index.ts";
import { qty } from "../../../src/units/index.ts";
import { refusesMisuse } from "../../helpers/bad-input.ts";

const treated = { value: 1, unit: "ac", of: "treated" } as const;
const ground = { value: 2, unit: "ac", of: "ground" } as const;
const loads = [{ carrier: qty(4, "gal") }, { carrier: qty(2, "gal") }];

refusesMisuse(
  "carrierFor",
  carrierFor,
  { rate: qty(20, "gal/ac"), area: treated, lineVolume: qty(1, "gal"), reserve: { volume: qty(1, "gal") } },
  ["rate", "area", "lineVolume", "reserve", "reserve.volume"],
);
refusesMisuse(
  "carrierFor with a reserve to round up to",
  carrierFor,
  { rate: qty(20, "gal/ac"), area: treated, reserve: { roundUpTo: qty(1, "gal") } },
  ["reserve.roundUpTo"],
);
refusesMisuse(
  "carrierFor with a reserve in per cent",
  carrierFor,
  { rate: qty(20, "gal/ac"), area: treated, reserve: { percent: 5 } },
  ["reserve.percent"],
);
refusesMisuse(
  "splitLoads",
  splitLoads,
  {
    total: qty(10, "gal"),
    tank: qty(4, "gal"),
    workingFill: qty(3.5, "gal"),
    leastLoad: qty(0.5, "gal"),
    split: { pieces: 5, lines: qty(0.25, "gal"), reserve: qty(0.5, "gal") },
  },
  ["total", "tank", "workingFill", "leastLoad", "split", "split.pieces", "split.lines", "split.reserve"],
);
refusesMisuse(
  "productAmount per ground area",
  productAmount,
  {
    rate: { rate: qty(2, "pt/ac"), per: "ground" },
    form: "liquid",
    carrier: qty(10, "gal"),
    carrierRate: qty(20, "gal/ac"),
    area: treated,
    ground,
  },
  ["rate", "rate.rate", "rate.per", "form", "carrier", "carrierRate", "area", "ground"],
);
refusesMisuse(
  "productAmount per row length, in a range",
  productAmount,
  {
    rate: { low: qty(1, "mL/m"), high: qty(3, "mL/m"), chosen: qty(2, "mL/m") },
    form: "liquid",
    carrier: qty(10, "gal"),
    carrierRate: qty(20, "gal/ac"),
    area: treated,
    rowLength: qty(100, "ft"),
  },
  ["rate.low", "rate.high", "rate.chosen", "rowLength"],
);
refusesMisuse(
  "productAmount of active ingredient",
  productAmount,
  {
    rate: {
      activeIngredient: qty(1, "lb/ac"),
      contains: { value: 40, unit: "%", basis: "w/w" },
      density: qty(9, "lb/gal"),
    },
    form: "liquid",
    carrier: qty(10, "gal"),
    carrierRate: qty(20, "gal/ac"),
  },
  ["rate.activeIngredient", "rate.contains", "rate.density", "rate.contains.basis"],
);
refusesMisuse(
  "productAmount by ratio",
  productAmount,
  { rate: { parts: 1, to: 100, of: "mix" }, form: "liquid", carrier: qty(10, "gal") },
  ["rate.parts", "rate.to", "rate.of"],
);
refusesMisuse("productInLoads", productInLoads, { amount: qty(12, "fl_oz"), loads }, [
  "amount",
  "loads",
  "loads.1",
  "loads.1.carrier",
]);
refusesMisuse("mixLoads", mixLoads, { amounts: [qty(12, "fl_oz"), qty(3, "oz")], loads }, [
  "amounts.1",
  "loads",
  "loads.0",
  "loads.0.carrier",
]);
refusesMisuse(
  "productRate",
  productRate,
  { activeIngredient: qty(1, "lb/ac"), contains: qty(4, "lb/gal"), form: "liquid" },
  ["activeIngredient", "contains", "form"],
);
refusesMisuse(
  "activeIngredientRate",
  activeIngredientRate,
  { product: qty(1, "pt/ac"), contains: { value: 40, unit: "%", basis: "w/w" }, density: qty(9, "lb/gal") },
  ["product", "contains", "contains.basis", "density"],
);
refusesMisuse(
  "checkLabel",
  checkLabel,
  {
    rate: qty(1, "pt/ac"),
    form: "liquid",
    carrierRate: qty(20, "gal/ac"),
    area: treated,
    label: {
      min: qty(1, "pt/ac"),
      max: qty(2, "pt/ac"),
      leastCarrier: qty(10, "gal/ac"),
      mostCarrier: qty(50, "gal/ac"),
      seasonMax: qty(6, "pt/ac"),
      mostApplications: 3,
      daysBetween: 14,
    },
    soFar: { rate: qty(1, "pt/ac"), applications: 1, daysSinceLast: 20 },
    near: 5,
  },
  [
    "rate",
    "form",
    "carrierRate",
    "area",
    "label.min",
    "label.max",
    "label.leastCarrier",
    "label.mostCarrier",
    "label.seasonMax",
    "label.mostApplications",
    "label.daysBetween",
    "soFar.rate",
    "soFar.applications",
    "soFar.daysSinceLast",
    "near",
  ],
);
refusesMisuse(
  "mixingOrder",
  mixingOrder,
  { products: [{ code: "EC" }, { code: "WG", inSolubleBag: false }] },
  ["products", "products.0", "products.0.code"],
);
refusesMisuse(
  "jarTest",
  jarTest,
  { jar: qty(1, "L"), mix: qty(100, "L"), amounts: [qty(2, "L"), qty(1, "kg")], stand: qty(15, "min") },
  ["jar", "mix", "amounts", "amounts.0", "stand"],
);
refusesMisuse("diluteMix", diluteMix, { from: qty(50, "mL/L"), to: qty(5, "mL/L"), volume: qty(10, "L") }, [
  "from",
  "to",
  "volume",
]);
refusesMisuse("stockFor", stockFor, { amount: qty(10, "mL"), volume: qty(1, "L"), dose: qty(1, "mL") }, [
  "amount",
  "volume",
  "dose",
]);
refusesMisuse("rinse", rinseTank, { residual: qty(1, "L"), water: qty(5, "L"), rinses: 3 }, [
  "residual",
  "water",
  "rinses",
]);
refusesMisuse(
  "strengthOf",
  strengthOf,
  { mix: qty(3, "gal"), addedWater: qty(1, "gal"), product: qty(6, "fl_oz") },
  ["mix", "addedWater", "product"],
);
refusesMisuse("leftoverArea", leftoverArea, { volume: qty(1, "gal"), rate: qty(20, "gal/ac") }, [
  "volume",
  "rate",
]);
