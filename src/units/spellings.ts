import { simpleEntry, simpleUnits } from "./resolve.js";
import type { SimpleUnit, UnitSystem } from "./types.js";

/** What a spelling stands for: one unit, or a measure that differs from one system to another. */
export type Meaning = { readonly unit: SimpleUnit } | { readonly bare: BareMeasure };

/** Measures whose name does not say which system they belong to. */
export type BareMeasure = "tsp" | "tbsp" | "fl_oz" | "cup" | "pt" | "qt" | "gal" | "oz" | "a";

/** What a bare measure is in each system; text where it can't be told, saying what to write. */
export const BARE: Record<
  Exclude<BareMeasure, "oz">,
  Record<UnitSystem, { readonly unit: SimpleUnit } | string>
> = {
  tsp: {
    us: { unit: "tsp" },
    imperial: "There is no imperial teaspoon of a legal size; write US tsp or metric tsp.",
    metric: { unit: "metric_tsp" },
  },
  tbsp: {
    us: { unit: "tbsp" },
    imperial:
      "There is no imperial tablespoon of a legal size; write US tbsp, metric tbsp or Australian tbsp.",
    metric: { unit: "metric_tbsp" },
  },
  cup: {
    us: { unit: "cup" },
    imperial: "There is no imperial cup of a legal size; write US cup or metric cup.",
    metric: { unit: "metric_cup" },
  },
  fl_oz: {
    us: { unit: "fl_oz" },
    imperial: { unit: "imp_fl_oz" },
    metric: "There is no metric fluid ounce; write US fl oz or imp fl oz.",
  },
  pt: {
    us: { unit: "pt" },
    imperial: { unit: "imp_pt" },
    metric: "There is no metric pint; write US pt or imp pt.",
  },
  qt: {
    us: { unit: "qt" },
    imperial: { unit: "imp_qt" },
    metric: "There is no metric quart; write US qt or imp qt.",
  },
  gal: {
    us: { unit: "gal" },
    imperial: { unit: "imp_gal" },
    metric: "There is no metric gallon; write US gal or imp gal.",
  },
  a: {
    us: { unit: "ac" },
    imperial: { unit: "ac" },
    metric: "It may be an acre or an are (100 square meters); write ac, ha or m2.",
  },
};

/** Letters that mean different things in capitals and small, or to different people, with what they may mean. */
export const AMBIGUOUS_LETTERS: Readonly<Record<string, string>> = {
  M: "It may be a meter, a mile or 1,000 square feet; write m, mi or 1,000 sq ft.",
  G: "It may be a gram or a gallon; write g or gal.",
  T: "It may be a tablespoon or a ton; write tbsp, lb or kg.",
  t: "It may be a teaspoon or a tonne; write tsp or kg.",
  ML: "It may be a milliliter or a megaliter; write mL.",
  Ml: "It may be a milliliter or a megaliter; write mL.",
  MG: "It may be a milligram or a million gallons; write mg or gal.",
  Mg: "It may be a milligram or a megagram; write mg or kg.",
};

/** Trade terms that stand for two units and a stroke. */
export const TRADE_TERMS: Readonly<Record<string, readonly [over: string, per: string]>> = {
  gpa: ["gal", "ac"],
  gpm: ["gal", "min"],
  kph: ["km", "h"],
};

// Beside the table's own names and their British spellings.
const MORE: Partial<Record<SimpleUnit, string>> = {
  in: '"',
  ft: "'",
  yd: "yds",
  ha: "hectar",
  mL: "mls,cc,cm3,cubic centimeter,cubic centimetre,cubic centimeters,cubic centimetres",
  L: "lt,ltr,ltrs",
  au_tbsp: "au tablespoon,au tablespoons",
  oz: "oz weight,oz avdp,oz av,dry oz,dry ounce,dry ounces,weight oz,ounce wt,ounces wt,oz by weight,ounces by weight",
  lb: "lbs",
  g: "gm,gms",
  kg: "kgs,kilo,kilos",
  s: "sec,secs",
  min: "mins",
  h: "hr,hrs",
  psi: "p s i",
  "%": "pct,per cent",
};

const BARE_NAMES: Record<BareMeasure, string> = {
  tsp: "tsp,tsps,teaspoon,teaspoons",
  tbsp: "tbsp,tbsps,tbs,tablespoon,tablespoons",
  cup: "cup,cups",
  fl_oz:
    "fl oz,fl ozs,floz,fluid oz,fluid ounce,fluid ounces,fl ounce,fl ounces,liquid oz,liquid ounce,liquid ounces,liq oz",
  pt: "pt,pts,pint,pints",
  qt: "qt,qts,quart,quarts",
  gal: "gal,gals,gallon,gallons",
  oz: "oz,ozs,ounce,ounces",
  a: "a",
};

const SYSTEM_WORDS: readonly (readonly [UnitSystem, string])[] = [
  ["us", "us,u s,american"],
  ["imperial", "imp,imperial,uk,british"],
  ["metric", "metric"],
];

/** The longest spelling has so many words. */
export const MOST_WORDS = 4;

let spellings: ReadonlyMap<string, Meaning> | undefined;

/** Every spelling that is read, in small letters, words apart by one space and without other signs. */
export function knownSpellings(): ReadonlyMap<string, Meaning> {
  spellings ??= gather();
  return spellings;
}

function gather(): Map<string, Meaning> {
  const all = new Map<string, Meaning>();
  for (const unit of simpleUnits()) {
    for (const name of namesOf(unit)) all.set(name, { unit });
  }
  for (const [measure, names] of Object.entries(BARE_NAMES) as [BareMeasure, string][]) {
    for (const name of names.split(",")) {
      all.set(name, { bare: measure });
      if (measure !== "oz" && measure !== "a") addWithSystem(all, BARE[measure], name);
    }
  }
  return all;
}

function addWithSystem(all: Map<string, Meaning>, meanings: (typeof BARE)["gal"], name: string): void {
  for (const [system, words] of SYSTEM_WORDS) {
    const meaning = meanings[system];
    if (typeof meaning === "string") continue;
    for (const word of words.split(",")) all.set(`${word} ${name}`, meaning);
  }
}

// Without "pounds per square inch": whether that is a pressure, parseQuantity decides as for any compound.
function namesOf(unit: SimpleUnit): string[] {
  const { singular, plural, symbol } = simpleEntry(unit)?.entry ?? { singular: "", plural: "", symbol: "" };
  const own = [unit, singular, plural, symbol]
    .map(asSpelling)
    .filter((name) => /^[^\d]/.test(name) && !/ per square /.test(name));
  const more = MORE[unit]?.split(",") ?? [];
  const british = own.map((name) => name.replace(/(met|lit)er/, "$1re").replace(/gram/, "gramme"));
  return [...own, ...british, ...more, ...powersOf(unit)];
}

// ft2 gives: sq ft, sqft, square ft, ft2, sq foot, ...
function powersOf(unit: SimpleUnit): string[] {
  const power = /^([a-z]+)([23])$/.exec(unit);
  if (power === null) return [];
  const [, root = "", exponent = ""] = power;
  const words = exponent === "2" ? ["sq ", "sq", "square "] : ["cu ", "cu", "cubic "];
  return namesOf(root as SimpleUnit)
    .filter((name) => /^[a-z]+$/.test(name))
    .flatMap((name) => [...words.map((word) => word + name), name + exponent]);
}

/** A name as the list of spellings has it. */
function asSpelling(name: string): string {
  return name
    .toLowerCase()
    .replace("²", "2")
    .replace("³", "3")
    .replace(/[^\p{L}\d%]+/gu, " ")
    .trim();
}
