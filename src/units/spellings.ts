import { simpleEntry, simpleUnits } from "./resolve.js";
import type { NumberUnit, SimpleUnit, UnitSystem } from "./types.js";

/** What a spelling stands for: one unit, or a measure that differs from one system to another. */
export type Meaning = { readonly unit: SimpleUnit } | { readonly bare: BareMeasure };

/** Measures whose name does not say which system they belong to. */
export type BareMeasure = "tsp" | "tbsp" | "fl_oz" | "cup" | "pt" | "qt" | "gal" | "oz" | "a";

/** What to ask about a spelling that means two things. */
export interface Question {
  readonly key: string;
  readonly template: string;
}

/** What to ask about a bare `a`. */
export const ACRE_OR_ARE: Question = {
  key: "acre-or-are",
  template: 'Is {given} an acre or an are (100 square meters)? Write "ac" or "are".',
};

/** What to ask about a bare ounce. */
export const WHICH_OUNCE: Question = {
  key: "which-ounce",
  template: 'Which ounce? Write "fl oz" (liquid) or "oz wt" (weight).',
};

/** What a bare measure is in each system; a question where that can't be known. */
export const BARE: Record<
  Exclude<BareMeasure, "oz">,
  Record<UnitSystem, { readonly unit: SimpleUnit } | Question>
> = {
  // No imperial spoon or cup has a legal size.
  tsp: {
    us: { unit: "tsp" },
    imperial: { key: "which-teaspoon", template: 'Which teaspoon? Write "US tsp" or "metric tsp".' },
    metric: { unit: "metric_tsp" },
  },
  tbsp: {
    us: { unit: "tbsp" },
    imperial: {
      key: "which-tablespoon",
      template: 'Which tablespoon? Write "US tbsp", "metric tbsp" or "Australian tbsp".',
    },
    metric: { unit: "metric_tbsp" },
  },
  cup: {
    us: { unit: "cup" },
    imperial: { key: "which-cup", template: 'Which cup? Write "US cup" or "metric cup".' },
    metric: { unit: "metric_cup" },
  },
  fl_oz: {
    us: { unit: "fl_oz" },
    imperial: { unit: "imp_fl_oz" },
    metric: { key: "which-fluid-ounce", template: 'Which fluid ounce? Write "US fl oz" or "imp fl oz".' },
  },
  pt: {
    us: { unit: "pt" },
    imperial: { unit: "imp_pt" },
    metric: { key: "which-pint", template: 'Which pint? Write "US pt" or "imp pt".' },
  },
  qt: {
    us: { unit: "qt" },
    imperial: { unit: "imp_qt" },
    metric: { key: "which-quart", template: 'Which quart? Write "US qt" or "imp qt".' },
  },
  gal: {
    us: { unit: "gal" },
    imperial: { unit: "imp_gal" },
    metric: { key: "which-gallon", template: 'Which gallon? Write "US gal" or "imp gal".' },
  },
  a: {
    us: { unit: "ac" },
    imperial: { unit: "ac" },
    metric: ACRE_OR_ARE,
  },
};

const MILLI_OR_MEGA: Question = {
  key: "milliliter-or-megaliter",
  template: 'Is {given} a milliliter or a megaliter? Write "mL", or the volume in "L".',
};

/** Letters that mean different things in capitals and small, or to different people: the question. */
export const AMBIGUOUS_LETTERS: Readonly<Record<string, Question>> = {
  M: {
    key: "meter-or-mile",
    template: 'Is {given} a meter, a mile or 1,000 square feet? Write "m", "mi" or "1,000 sq ft".',
  },
  G: {
    key: "gram-or-gallon",
    template: 'Is {given} a gram or a gallon? Write "g" or "gal".',
  },
  T: {
    key: "tablespoon-or-ton",
    template: 'Is {given} a tablespoon or a ton? Write "tbsp", or the weight in "lb" or "kg".',
  },
  t: {
    key: "teaspoon-or-tonne",
    template: 'Is {given} a teaspoon or a tonne? Write "tsp", or the weight in "kg".',
  },
  ML: MILLI_OR_MEGA,
  Ml: MILLI_OR_MEGA,
  MG: {
    key: "milligram-or-million-gallons",
    template: 'Is {given} a milligram or a million gallons? Write "mg", or the volume in "gal".',
  },
  Mg: {
    key: "milligram-or-megagram",
    template: 'Is {given} a milligram or a megagram? Write "mg", or the weight in "kg".',
  },
};

/** Trade terms that stand for two units and a stroke. */
export const TRADE_TERMS: Readonly<Record<string, readonly [over: string, per: string]>> = {
  gpa: ["gal", "ac"],
  gpm: ["gal", "min"],
  kph: ["km", "h"],
  kmh: ["km", "h"],
  kmph: ["km", "h"],
};

// Beside the table's own names and their British spellings: what else people write, in Spanish too, all without accents.
const MORE: Partial<Record<SimpleUnit, string>> = {
  mm: "milimetro,milimetros",
  cm: "centimetro,centimetros",
  km: "kilometro,kilometros",
  in: '",pulg,pulgada,pulgadas',
  ft: "',lf,pie,pies",
  ft2: "sf",
  yd: "yds,yarda,yardas",
  rod: "rd,rds",
  chain: "cadena,cadenas",
  mi: "milla,millas",
  m: "mt,mts,mtr,mtrs,metro,metros",
  ha: "hectar,hac,hectarea,hectareas",
  ac_ft: "acre pie,acres pie",
  mL: "mls,mililitro,mililitros,cc,cm3,cubic centimeter,cubic centimetre,cubic centimeters,cubic centimetres",
  L: "lt,lts,ltr,ltrs,litro,litros",
  au_tbsp: "au tablespoon,au tablespoons,cucharada australiana,cucharadas australianas",
  oz: "oz weight,oz avdp,oz av,dry oz,dry ounce,dry ounces,weight oz,ounce wt,ounces wt,oz by weight,ounces by weight,onza de peso,onzas de peso",
  lb: "lbs,libra,libras",
  g: "gm,gms,gramo,gramos",
  kg: "kgs,kilo,kilos,kilogramo,kilogramos",
  s: "sec,secs,segundo,segundos",
  min: "mins,minuto,minutos",
  h: "hr,hrs,hora,horas",
  psi: "p s i",
  "%": "pct,per cent,por ciento",
  tree: "trunk,trunks,arbol,arboles,tronco,troncos",
  plant:
    "seedling,seedlings,transplant,transplants,vine,vines,bush,bushes,shrub,shrubs,planta,plantas,plantula,plantulas,mata,matas",
  pot: "container,containers,maceta,macetas",
  spot: "hole,holes,hill,hills,mound,mounds,stump,stumps,punto,puntos,manchon,manchones,hoyo,hoyos",
};

const BARE_NAMES: Record<BareMeasure, string> = {
  tsp: "tsp,tsps,teaspoon,teaspoons,cucharadita,cucharaditas,cdita,cditas,cdta,cdtas",
  tbsp: "tbsp,tbsps,tbs,tb,tablespoon,tablespoons,cucharada,cucharadas,cda,cdas",
  cup: "cup,cups,taza,tazas",
  fl_oz:
    "fl oz,fl ozs,floz,fluid oz,fluid ounce,fluid ounces,fl ounce,fl ounces,liquid oz,liquid ounce,liquid ounces,liq oz,onza liquida,onzas liquidas,onza fluida,onzas fluidas",
  pt: "pt,pts,pint,pints,pinta,pintas",
  qt: "qt,qts,quart,quarts,cuarto,cuartos,cuarto de galon,cuartos de galon",
  gal: "gal,gals,gallon,gallons,galon,galones",
  oz: "oz,ozs,ounce,ounces,onza,onzas",
  a: "a",
};

// In English they stand before a name, in Spanish behind it: cuartos de galón imperiales.
const SYSTEM_WORDS: readonly (readonly [UnitSystem, string])[] = [
  ["us", "us,u s,american"],
  ["imperial", "imp,imperial,uk,british,imperiales"],
  ["metric", "metric,metrica,metricas"],
];

// Of numbers whose unit is no unit of the library.
const NUMBER_NAMES = {
  days: "d,day,days,dia,dias",
  degrees: "°,º,deg,degs,degree,degrees,grado,grados",
};

/** How the unit of a bare number is spelled, as in a list of spellings. */
export function numberSpellings(unit: NumberUnit): readonly string[] {
  if (unit === "hours") return namesOf("h");
  return unit === "percent" ? namesOf("%") : NUMBER_NAMES[unit].split(",");
}

/** The longest spelling has so many words. */
export const MOST_WORDS = 5;

let spellings: ReadonlyMap<string, Meaning> | undefined;

/** Every spelling that is read, in small letters, words apart by one space and without accents and other signs. */
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
    if ("template" in meaning) continue;
    for (const word of words.split(",")) all.set(`${word} ${name}`, meaning).set(`${name} ${word}`, meaning);
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

const SQUARE = ["cuadrado", "cuadrados", "cuadrada", "cuadradas"];
const CUBIC = ["cubico", "cubicos", "cubica", "cubicas"];

// ft2 gives: sq ft, sqft, square ft, ft2, sq foot, ...
function powersOf(unit: SimpleUnit): string[] {
  const power = /^([a-z]+)([23])$/.exec(unit);
  if (power === null) return [];
  const [, root = "", exponent = ""] = power;
  const words = exponent === "2" ? ["sq ", "sq", "square "] : ["cu ", "cu", "cubic "];
  return namesOf(root as SimpleUnit)
    .filter((name) => /^[a-z]+$/.test(name))
    .flatMap((name) => [
      ...words.map((word) => word + name),
      name + exponent,
      ...(exponent === "2" ? SQUARE : CUBIC).map((word) => `${name} ${word}`),
    ]);
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
