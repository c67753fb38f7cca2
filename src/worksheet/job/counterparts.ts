import { resolveUnit } from "../../units/resolve.js";
import type { SimpleUnit, Unit, UnitSystem } from "../../units/types.js";

// What a unit's counterpart is in each system: of about its size, and one that people measure with. A unit that is not
// here belongs to every system (time, percent).
const FOOT_POUND_TO_METRIC: Partial<Record<SimpleUnit, SimpleUnit>> = {
  in: "cm",
  ft: "m",
  yd: "m",
  mi: "km",
  in2: "cm2",
  ft2: "m2",
  yd2: "m2",
  "100ft": "m",
  "1000ft": "100m",
  "100ft2": "m2",
  "1000ft2": "m2",
  ac: "ha",
  in3: "mL",
  ft3: "L",
  "1000ft3": "100m3",
  oz: "g",
  lb: "kg",
  psi: "bar",
};
const METRIC_TO_FOOT_POUND: Partial<Record<SimpleUnit, SimpleUnit>> = {
  mm: "in",
  cm: "in",
  m: "ft",
  "100m": "1000ft",
  km: "mi",
  cm2: "in2",
  m2: "ft2",
  "100m2": "1000ft2",
  ha: "ac",
  km2: "ac",
  mg: "oz",
  g: "oz",
  kg: "lb",
  kPa: "psi",
  bar: "psi",
};

// A function's result, which a bundler can leave out: it takes no spread for harmless.
const COUNTERPARTS: Record<UnitSystem, Partial<Record<SimpleUnit, SimpleUnit>>> = /* @__PURE__ */ (() => ({
  us: {
    ...METRIC_TO_FOOT_POUND,
    imp_fl_oz: "fl_oz",
    imp_pt: "pt",
    imp_qt: "qt",
    imp_gal: "gal",
    mL: "fl_oz",
    L: "gal",
    "100L": "100gal",
    m3: "gal",
    "100m3": "1000ft3",
    metric_tsp: "tsp",
    metric_tbsp: "tbsp",
    au_tbsp: "tbsp",
    metric_cup: "cup",
  },
  imperial: {
    ...METRIC_TO_FOOT_POUND,
    tsp: "imp_fl_oz",
    tbsp: "imp_fl_oz",
    fl_oz: "imp_fl_oz",
    cup: "imp_pt",
    pt: "imp_pt",
    qt: "imp_qt",
    gal: "imp_gal",
    "100gal": "imp_gal",
    mL: "imp_fl_oz",
    L: "imp_gal",
    "100L": "imp_gal",
    m3: "imp_gal",
    "100m3": "1000ft3",
    metric_tsp: "imp_fl_oz",
    metric_tbsp: "imp_fl_oz",
    au_tbsp: "imp_fl_oz",
    metric_cup: "imp_pt",
  },
  metric: {
    ...FOOT_POUND_TO_METRIC,
    tsp: "mL",
    tbsp: "mL",
    fl_oz: "mL",
    cup: "mL",
    pt: "L",
    qt: "L",
    gal: "L",
    "100gal": "100L",
    imp_fl_oz: "mL",
    imp_pt: "L",
    imp_qt: "L",
    imp_gal: "L",
  },
}))();

// Where the parts' counterparts would make a unit that nobody uses.
const COMPOUND_COUNTERPARTS: Record<UnitSystem, Readonly<Record<string, Unit>>> = {
  us: { "g/L": "lb/gal", "g/mL": "lb/gal", "km/h": "mph" },
  imperial: { "g/L": "lb/imp_gal", "g/mL": "lb/imp_gal", "km/h": "mph" },
  metric: { "lb/1000ft2": "kg/100m2", "lb/100ft2": "kg/100m2" },
};

/** The unit of a system that a quantity in `unit` has there; the same where the system has it. */
export function counterpart(unit: Unit, system: UnitSystem): Unit {
  const special = COMPOUND_COUNTERPARTS[system][unit];
  if (special !== undefined) return special;
  const { over, per } = resolveUnit(unit);
  const [top, bottom] = [over, per].map((one) => one && (COUNTERPARTS[system][one] ?? one));
  if (top === over && bottom === per) return unit;
  return (bottom === undefined ? top : `${top}/${bottom}`) as Unit;
}
