import type { Dimension, UnitSystem, UnitsByDimension } from "../units/types.js";

type Offered = { readonly [D in Dimension]: readonly UnitsByDimension[D][] };

// In the order that growers and labels use them: common practice, no source.
const FOOT_POUND = {
  length: ["ft", "in", "yd", "mi"],
  area: ["ac", "ft2", "1000ft2", "yd2"],
  mass: ["oz", "lb"],
  time: ["s", "min", "h"],
  pressure: ["psi"],
  fraction: ["%", "ppm"],
  count: ["plant", "tree", "pot", "spot"],
  speed: ["mph", "ft/min", "ft/s"],
  massFlow: ["lb/min", "oz/min"],
  massRate: ["oz/ac", "lb/ac", "oz/1000ft2", "lb/1000ft2", "lb/100ft2"],
  massFraction: ["oz/lb"],
  massPerLength: ["oz/1000ft", "oz/100ft", "lb/1000ft", "lb/100ft"],
  massPerCount: ["oz/plant", "g/plant"],
} as const;

const OFFERED: { readonly [S in UnitSystem]: Offered } = {
  us: {
    ...FOOT_POUND,
    volume: ["gal", "qt", "pt", "cup", "fl_oz", "tbsp", "tsp"],
    flow: ["gal/min", "fl_oz/min"],
    volumeRate: ["gal/ac", "qt/ac", "pt/ac", "fl_oz/ac", "gal/1000ft2", "fl_oz/1000ft2"],
    density: ["lb/gal", "oz/gal", "lb/100gal", "oz/100gal"],
    volumeConcentration: ["fl_oz/gal", "tbsp/gal", "tsp/gal", "pt/100gal", "qt/100gal", "fl_oz/100gal"],
    volumePerLength: ["fl_oz/1000ft", "fl_oz/100ft", "gal/1000ft"],
    volumePerCount: ["fl_oz/plant", "mL/plant", "fl_oz/1000plant"],
  },
  imperial: {
    ...FOOT_POUND,
    volume: ["imp_gal", "imp_qt", "imp_pt", "imp_fl_oz"],
    flow: ["imp_gal/min", "imp_fl_oz/min"],
    volumeRate: ["imp_gal/ac", "imp_pt/ac", "imp_fl_oz/ac"],
    density: ["lb/imp_gal", "oz/imp_gal"],
    volumeConcentration: ["imp_fl_oz/imp_gal", "imp_pt/imp_gal"],
    volumePerLength: ["imp_fl_oz/1000ft", "imp_fl_oz/100ft"],
    volumePerCount: ["imp_fl_oz/plant", "mL/plant"],
  },
  metric: {
    length: ["m", "cm", "mm", "km"],
    area: ["ha", "m2"],
    volume: ["L", "mL", "metric_cup", "metric_tbsp", "metric_tsp"],
    mass: ["g", "kg", "mg"],
    time: ["s", "min", "h"],
    pressure: ["bar", "kPa"],
    fraction: ["%", "ppm"],
    count: ["plant", "tree", "pot", "spot"],
    speed: ["km/h", "m/min", "m/s"],
    flow: ["L/min", "mL/min"],
    massFlow: ["kg/min", "g/min"],
    volumeRate: ["L/ha", "mL/ha", "mL/m2"],
    massRate: ["kg/ha", "g/ha", "g/m2", "g/100m2"],
    density: ["kg/L", "g/L", "g/100L", "kg/100L", "g/hL"],
    volumeConcentration: ["mL/L", "mL/100L", "mL/hL", "L/100L"],
    massFraction: ["g/kg"],
    volumePerLength: ["mL/m", "mL/100m", "L/100m"],
    massPerLength: ["g/m", "g/100m", "kg/100m"],
    volumePerCount: ["mL/plant", "L/plant", "mL/1000plant"],
    massPerCount: ["g/plant", "mg/plant"],
  },
};

/** The units that a form offers for a dimension, the most usual first. */
export function offeredUnits(dimension: Dimension, system: UnitSystem): Offered[Dimension] {
  return OFFERED[system][dimension];
}
