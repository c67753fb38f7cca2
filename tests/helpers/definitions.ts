import { Rational } from "./rational.ts";

const d = Rational.fromDecimal;
const inch = d("0.0254");
const foot = inch.times(d("12"));
const yard = foot.times(d("3"));
const pound = d("0.45359237");
const gallon = d("231").times(inch).times(inch).times(inch).times(d("1000"));
const imperialGallon = d("4.54609");
const acre = yard.times(yard).times(d("4840"));

/**
 * Every simple unit's size in SI (litres for volume, kilopascals for pressure), built up from definitions as a chain
 * and not read from the library's table: an inch is 25.4 mm, a gallon 231 cubic inches, an acre 4,840 square yards
 * and 160 square rods, a chain 22 yards (NIST Handbook 44 (2024), Appendix C), the imperial gallon 4.54609 L (Weights and Measures Act 1985).
 */
export const DEFINITIONS: Record<string, Rational> = {
  in: inch,
  ft: foot,
  yd: yard,
  rod: yard.times(d("5.5")),
  chain: yard.times(d("22")),
  mi: yard.times(d("1760")),
  "100ft": foot.times(d("100")),
  "1000ft": foot.times(d("1000")),
  mm: d("0.001"),
  cm: d("0.01"),
  m: d("1"),
  "100m": d("100"),
  "1000m": d("1000"),
  km: d("1000"),
  in2: inch.times(inch),
  ft2: foot.times(foot),
  yd2: yard.times(yard),
  rod2: acre.over(d("160")),
  ac: acre,
  "100ft2": foot.times(foot).times(d("100")),
  "1000ft2": foot.times(foot).times(d("1000")),
  cm2: d("0.0001"),
  "100m2": d("100"),
  "1000m2": d("1000"),
  are: d("100"),
  m2: d("1"),
  ha: d("10000"),
  km2: d("1000000"),
  tsp: gallon.over(d("768")),
  tbsp: gallon.over(d("256")),
  fl_oz: gallon.over(d("128")),
  cup: gallon.over(d("16")),
  pt: gallon.over(d("8")),
  qt: gallon.over(d("4")),
  gal: gallon,
  "100gal": gallon.times(d("100")),
  in3: gallon.over(d("231")),
  ft3: foot.times(foot).times(foot).times(d("1000")),
  "1000ft3": foot.times(foot).times(foot).times(d("1000000")),
  ac_ft: acre.times(foot).times(d("1000")),
  imp_fl_oz: imperialGallon.over(d("160")),
  imp_pt: imperialGallon.over(d("8")),
  imp_qt: imperialGallon.over(d("4")),
  imp_gal: imperialGallon,
  mL: d("0.001"),
  L: d("1"),
  hL: d("100"),
  "100L": d("100"),
  m3: d("1000"),
  "100m3": d("100000"),
  metric_tsp: d("0.005"),
  metric_tbsp: d("0.015"),
  au_tbsp: d("0.02"),
  metric_cup: d("0.25"),
  oz: pound.over(d("16")),
  lb: pound,
  mg: d("0.000001"),
  g: d("0.001"),
  kg: d("1"),
  s: d("1"),
  min: d("60"),
  h: d("3600"),
  psi: pound.times(d("9.80665")).over(inch.times(inch)).over(d("1000")),
  kPa: d("1"),
  bar: d("100"),
  "%": d("0.01"),
  ppm: d("0.000001"),
  "1": d("1"),
  plant: d("1"),
  tree: d("1"),
  pot: d("1"),
  spot: d("1"),
  "1000plant": d("1000"),
};

/** The exact number of `to` in one `from`, for simple units and compounds. */
export function exactSize(unit: string): Rational {
  if (unit === "mph") return exactSize("mi/h");
  const [over = "", per] = unit.split("/");
  const size = DEFINITIONS[over];
  if (size === undefined) throw new Error(`no definition for ${over}`);
  return per === undefined ? size : size.over(exactSize(per));
}

/** The exact result of a conversion. */
export function exactly(value: number, from: string, to: string): Rational {
  return Rational.fromNumber(value).times(exactSize(from)).over(exactSize(to));
}
