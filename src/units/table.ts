import type {
  AreaUnit,
  CountUnit,
  Dimension,
  FractionUnit,
  LengthUnit,
  MassUnit,
  PressureUnit,
  SimpleUnit,
  TimeUnit,
  UnitSystem,
  VolumeUnit,
} from "./types.js";

/**
 * The unit table: the only place where a factor is written.
 *
 * Every factor is exact by definition and leads to the SI unit (or liter) that its dimension is anchored on:
 *
 * - are 100 m², inch 25.4 mm, pound `0.45359237 kg`, standard gravity 9.80665 m/s²: NIST SP 811 (2008), Appendix B
 * - rod 16.5 ft, chain 66 ft, acre 43,560 ft², acre-foot 43,560 ft³, US gallon 231 in³ and its parts, on the international foot: NIST Handbook 44 (2024), Appendix C
 * - imperial gallon 4.54609 L: Weights and Measures Act 1985 (UK), Schedule 1
 * - metric spoons and cup (5, 15 and 250 mL) and the Australian tablespoon (20 mL): metric kitchen measure as sold
 *   in the Commonwealth (common practice, no source)
 *
 * A factor changes only if its definition does; CHANGELOG.md would name it.
 */
export interface UnitEntry {
  /** As a label writes it after "1". */
  readonly singular: string;
  /** As a label writes it after "2". */
  readonly plural: string;
  /** The short form in the trade. */
  readonly symbol: string;
  /** The systems of measure that use it; the first is its home. */
  readonly systems: readonly [UnitSystem, ...UnitSystem[]];
  /** How many anchor units one of it is. */
  readonly factor: string | { readonly numerator: string; readonly denominator: string };
}

/** Dimensions that have simple units, besides `speed`, whose one simple unit (`mph`) is short for `mi/h`. */
export type SimpleDimension = Exclude<
  { [D in Dimension]: Extract<SimpleUnit, UnitsOf<D>> extends never ? never : D }[Dimension],
  "speed"
>;

type UnitsOf<D extends Dimension> = import("./types.js").UnitsByDimension[D];

const US = ["us"] as const;
const METRIC = ["metric"] as const;
const IMPERIAL = ["imperial"] as const;
const FOOT_POUND = ["us", "imperial"] as const;
const ALL = ["us", "imperial", "metric"] as const;

// Marked, as other tables are, so that a bundler leaves the table out of an app that takes nothing of it.
/* @__NO_SIDE_EFFECTS__ */
function entry(
  singular: string,
  plural: string,
  symbol: string,
  systems: UnitEntry["systems"],
  factor: UnitEntry["factor"],
): UnitEntry {
  return { singular, plural, symbol, systems, factor };
}

// Anchor: meter.
const length: Record<LengthUnit, UnitEntry> = {
  in: entry("inch", "inches", "in", FOOT_POUND, "0.0254"),
  ft: entry("foot", "feet", "ft", FOOT_POUND, "0.3048"),
  yd: entry("yard", "yards", "yd", FOOT_POUND, "0.9144"),
  rod: entry("rod", "rods", "rod", FOOT_POUND, "5.0292"),
  chain: entry("chain", "chains", "chain", FOOT_POUND, "20.1168"),
  mi: entry("mile", "miles", "mi", FOOT_POUND, "1609.344"),
  "100ft": entry("100 feet", "hundreds of feet", "100 ft", FOOT_POUND, "30.48"),
  "1000ft": entry("1,000 feet", "thousands of feet", "1,000 ft", FOOT_POUND, "304.8"),
  mm: entry("millimeter", "millimeters", "mm", METRIC, "0.001"),
  cm: entry("centimeter", "centimeters", "cm", METRIC, "0.01"),
  m: entry("meter", "meters", "m", METRIC, "1"),
  "100m": entry("100 meters", "hundreds of meters", "100 m", METRIC, "100"),
  "1000m": entry("1,000 meters", "thousands of meters", "1,000 m", METRIC, "1000"),
  km: entry("kilometer", "kilometers", "km", METRIC, "1000"),
};

// Anchor: square meter.
const area: Record<AreaUnit, UnitEntry> = {
  in2: entry("square inch", "square inches", "sq in", FOOT_POUND, "0.00064516"),
  ft2: entry("square foot", "square feet", "sq ft", FOOT_POUND, "0.09290304"),
  yd2: entry("square yard", "square yards", "sq yd", FOOT_POUND, "0.83612736"),
  rod2: entry("square rod", "square rods", "sq rod", FOOT_POUND, "25.29285264"),
  ac: entry("acre", "acres", "ac", FOOT_POUND, "4046.8564224"),
  "100ft2": entry("100 square feet", "hundreds of square feet", "100 sq ft", FOOT_POUND, "9.290304"),
  "1000ft2": entry("1,000 square feet", "thousands of square feet", "1,000 sq ft", FOOT_POUND, "92.90304"),
  cm2: entry("square centimeter", "square centimeters", "cm²", METRIC, "0.0001"),
  m2: entry("square meter", "square meters", "m²", METRIC, "1"),
  "100m2": entry("100 square meters", "hundreds of square meters", "100 m²", METRIC, "100"),
  "1000m2": entry("1,000 square meters", "thousands of square meters", "1,000 m²", METRIC, "1000"),
  are: entry("are", "ares", "are", METRIC, "100"),
  ha: entry("hectare", "hectares", "ha", METRIC, "10000"),
  km2: entry("square kilometer", "square kilometers", "km²", METRIC, "1000000"),
};

// Anchor: liter.
const volume: Record<VolumeUnit, UnitEntry> = {
  tsp: entry("teaspoon", "teaspoons", "tsp", US, "0.00492892159375"),
  tbsp: entry("tablespoon", "tablespoons", "tbsp", US, "0.01478676478125"),
  fl_oz: entry("fluid ounce", "fluid ounces", "fl oz", US, "0.0295735295625"),
  cup: entry("cup", "cups", "cup", US, "0.2365882365"),
  pt: entry("pint", "pints", "pt", US, "0.473176473"),
  qt: entry("quart", "quarts", "qt", US, "0.946352946"),
  gal: entry("gallon", "gallons", "gal", US, "3.785411784"),
  "100gal": entry("100 gallons", "hundreds of gallons", "100 gal", US, "378.5411784"),
  in3: entry("cubic inch", "cubic inches", "cu in", FOOT_POUND, "0.016387064"),
  ft3: entry("cubic foot", "cubic feet", "cu ft", FOOT_POUND, "28.316846592"),
  "1000ft3": entry("1,000 cubic feet", "thousands of cubic feet", "1,000 cu ft", FOOT_POUND, "28316.846592"),
  ac_ft: entry("acre-foot", "acre-feet", "ac ft", FOOT_POUND, "1233481.83754752"),
  imp_fl_oz: entry("imperial fluid ounce", "imperial fluid ounces", "imp fl oz", IMPERIAL, "0.0284130625"),
  imp_pt: entry("imperial pint", "imperial pints", "imp pt", IMPERIAL, "0.56826125"),
  imp_qt: entry("imperial quart", "imperial quarts", "imp qt", IMPERIAL, "1.1365225"),
  imp_gal: entry("imperial gallon", "imperial gallons", "imp gal", IMPERIAL, "4.54609"),
  mL: entry("milliliter", "milliliters", "mL", METRIC, "0.001"),
  L: entry("liter", "liters", "L", METRIC, "1"),
  hL: entry("hectoliter", "hectoliters", "hL", METRIC, "100"),
  "100L": entry("100 liters", "hundreds of liters", "100 L", METRIC, "100"),
  m3: entry("cubic meter", "cubic meters", "m³", METRIC, "1000"),
  "100m3": entry("100 cubic meters", "hundreds of cubic meters", "100 m³", METRIC, "100000"),
  metric_tsp: entry("metric teaspoon", "metric teaspoons", "metric tsp", METRIC, "0.005"),
  metric_tbsp: entry("metric tablespoon", "metric tablespoons", "metric tbsp", METRIC, "0.015"),
  au_tbsp: entry("Australian tablespoon", "Australian tablespoons", "Australian tbsp", METRIC, "0.02"),
  metric_cup: entry("metric cup", "metric cups", "metric cup", METRIC, "0.25"),
};

// Anchor: kilogram.
const mass: Record<MassUnit, UnitEntry> = {
  oz: entry("ounce (weight)", "ounces (weight)", "oz wt", FOOT_POUND, "0.028349523125"),
  lb: entry("pound", "pounds", "lb", FOOT_POUND, "0.45359237"),
  mg: entry("milligram", "milligrams", "mg", METRIC, "0.000001"),
  g: entry("gram", "grams", "g", METRIC, "0.001"),
  kg: entry("kilogram", "kilograms", "kg", METRIC, "1"),
};

// Anchor: second.
const time: Record<TimeUnit, UnitEntry> = {
  s: entry("second", "seconds", "s", ALL, "1"),
  min: entry("minute", "minutes", "min", ALL, "60"),
  h: entry("hour", "hours", "h", ALL, "3600"),
};

// Anchor: kilopascal. A psi is one pound of force (0.45359237 kg × 9.80665 m/s²) on one square inch; its decimal does not end.
const pressure: Record<PressureUnit, UnitEntry> = {
  psi: entry("pound per square inch", "pounds per square inch", "psi", FOOT_POUND, {
    numerator: "4.4482216152605",
    denominator: "0.64516",
  }),
  kPa: entry("kilopascal", "kilopascals", "kPa", METRIC, "1"),
  bar: entry("bar", "bar", "bar", METRIC, "100"),
};

// Anchor: one.
const fraction: Record<FractionUnit, UnitEntry> = {
  "%": entry("percent", "percent", "%", ALL, "0.01"),
  ppm: entry("part per million", "parts per million", "ppm", ALL, "0.000001"),
  "1": entry("part of one", "parts of one", "", ALL, "1"),
};

// Anchor: one.
const count: Record<CountUnit, UnitEntry> = {
  plant: entry("plant", "plants", "plant", ALL, "1"),
  tree: entry("tree", "trees", "tree", ALL, "1"),
  pot: entry("pot", "pots", "pot", ALL, "1"),
  spot: entry("spot", "spots", "spot", ALL, "1"),
  "1000plant": entry("1,000 plants", "thousands of plants", "1,000 plants", ALL, "1000"),
};

/** The simple units, by dimension. */
export const TABLE: Record<SimpleDimension, Readonly<Record<string, UnitEntry>>> = {
  length,
  area,
  volume,
  mass,
  time,
  pressure,
  fraction,
  count,
};

/**
 * Each simple unit's code in UCUM, with international feet throughout. UCUM's two acres are made of other yards: `[acr_us]` of the
 * US survey yard, `[acr_br]` of an old British one. So the acre is spelled out. So are the rod and the chain, which it has of
 * other feet, and the metric cup: its `[cup_m]` is 240 mL.
 */
export const UCUM_CODES: Readonly<Record<Exclude<SimpleUnit, "mph">, string>> = {
  in: "[in_i]",
  ft: "[ft_i]",
  yd: "[yd_i]",
  rod: "198.[in_i]",
  chain: "66.[ft_i]",
  mi: "[mi_i]",
  "100ft": "100.[ft_i]",
  "1000ft": "1000.[ft_i]",
  mm: "mm",
  cm: "cm",
  m: "m",
  "100m": "100.m",
  "1000m": "1000.m",
  km: "km",
  in2: "[sin_i]",
  ft2: "[sft_i]",
  yd2: "[syd_i]",
  rod2: "39204.[sin_i]",
  ac: "4840.[syd_i]",
  "100ft2": "100.[sft_i]",
  "1000ft2": "1000.[sft_i]",
  cm2: "cm2",
  m2: "m2",
  "100m2": "100.m2",
  "1000m2": "1000.m2",
  are: "ar",
  ha: "har",
  km2: "km2",
  tsp: "[tsp_us]",
  tbsp: "[tbs_us]",
  fl_oz: "[foz_us]",
  cup: "[cup_us]",
  pt: "[pt_us]",
  qt: "[qt_us]",
  gal: "[gal_us]",
  "100gal": "100.[gal_us]",
  in3: "[cin_i]",
  ft3: "[cft_i]",
  "1000ft3": "1000.[cft_i]",
  ac_ft: "43560.[cft_i]",
  imp_fl_oz: "[foz_br]",
  imp_pt: "[pt_br]",
  imp_qt: "[qt_br]",
  imp_gal: "[gal_br]",
  mL: "mL",
  L: "L",
  hL: "hL",
  "100L": "100.L",
  m3: "m3",
  "100m3": "100.m3",
  metric_tsp: "[tsp_m]",
  metric_tbsp: "[tbs_m]",
  au_tbsp: "20.mL",
  metric_cup: "250.mL",
  oz: "[oz_av]",
  lb: "[lb_av]",
  mg: "mg",
  g: "g",
  kg: "kg",
  s: "s",
  min: "min",
  h: "h",
  psi: "[psi]",
  kPa: "kPa",
  bar: "bar",
  "%": "%",
  ppm: "[ppm]",
  "1": "1",
  plant: "{plant}",
  tree: "{tree}",
  pot: "{pot}",
  spot: "{spot}",
  "1000plant": "1000.{plant}",
};

/** Which dimensions may stand over and under the stroke of a compound, and what they make. */
export const COMPOUNDS: Readonly<
  Record<
    Exclude<Dimension, SimpleDimension>,
    { readonly over: SimpleDimension; readonly per: SimpleDimension }
  >
> = {
  speed: { over: "length", per: "time" },
  flow: { over: "volume", per: "time" },
  massFlow: { over: "mass", per: "time" },
  volumeRate: { over: "volume", per: "area" },
  massRate: { over: "mass", per: "area" },
  density: { over: "mass", per: "volume" },
  volumeConcentration: { over: "volume", per: "volume" },
  massFraction: { over: "mass", per: "mass" },
  volumePerLength: { over: "volume", per: "length" },
  massPerLength: { over: "mass", per: "length" },
  volumePerCount: { over: "volume", per: "count" },
  massPerCount: { over: "mass", per: "count" },
};
