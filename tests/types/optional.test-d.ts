import { planApplication, planMix, rectangleArea } from "../../src/index.ts";
import { checkLabel } from "../../src/tank-mix/index.ts";
import { qty } from "../../src/units/index.ts";

// A form has a key for each field, filled in or not: what may be left out may be undefined too, also where the compiler keeps
// the two apart (exactOptionalPropertyTypes, as here).
planApplication({
  plot: {
    kind: "rectangle",
    length: qty(40, "m"),
    width: qty(25, "m"),
    name: undefined,
    fraction: undefined,
  },
  calibration: { kind: "known", rate: qty(200, "L/ha") },
  sprayer: { tank: qty(15, "L"), workingFill: undefined, lineVolume: undefined },
  reserve: undefined,
  products: [{ name: "Product A", form: "liquid", rate: qty(2, "L/ha"), label: undefined, soFar: {} }],
  tools: "syringes",
  today: undefined,
});
planMix({
  area: { value: 1, unit: "ha", of: "treated" },
  ground: undefined,
  rate: qty(200, "L/ha"),
  sprayer: { tank: qty(15, "L") },
  products: [],
  split: undefined,
});
checkLabel({
  rate: qty(2, "L/ha"),
  form: "liquid",
  carrierRate: qty(200, "L/ha"),
  label: { min: undefined, max: qty(2, "L/ha") },
  soFar: undefined,
});
// What is needed may not.
// @ts-expect-error
rectangleArea({ length: qty(40, "m"), width: undefined });
