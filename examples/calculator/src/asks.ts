import { type ToolSetName, usualTools } from "swath-to-spoon/household";
import type { Unit } from "swath-to-spoon/units";
import { type Ask, type BySystem, chosen, type Job, type JobKind, type KnownJob, type Step } from "./job.ts";
import type { Text } from "./words.ts";

const ask = (path: string, label: Text, rest: Omit<Ask, "path" | "label"> = {}): Ask => ({
  path,
  label,
  ...rest,
});

/** A question; the first choice is made already unless another is. */
const question = (
  path: string,
  label: Text,
  options: Readonly<Record<string, Text>>,
  usual = Object.keys(options)[0] ?? "",
): Ask => ask(path, label, { options, usual });

const SMALL = { us: "fl_oz", imperial: "imp_fl_oz", metric: "mL" } as const;
const NARROW = { us: "in", imperial: "in", metric: "cm" } as const;
const HEAVY = { us: "lb", imperial: "lb", metric: "kg" } as const;
/** A fertilizer's rate is many times a spray's. */
const SPREAD = { us: "lb/1000ft2", imperial: "lb/ac", metric: "kg/ha" } as const;
const PERCENT = { us: "%", imperial: "%", metric: "%" } as const;
const POTS = { us: "pot", imperial: "pot", metric: "pot" } as const;

const ORCHARD = question("orchard", ["What do you spray?", "¿Qué trata?"], {
  strip: ["A strip under the trees", "Una franja bajo los árboles"],
  canopy: ["The trees", "Los árboles"],
});
const GRANULES_ON = question("granulesOn", ["What do you spread on?", "¿Dónde esparce?"], {
  block: ["A whole block", "Una parcela completa"],
  area: ["An area I know", "Un área que conozco"],
});
const EACH = question("each", ["How much does each one get?", "¿Cuánto recibe cada una?"], {
  known: ["I know how much", "Sé cuánto"],
  measured: ["I measured it on several", "Lo medí en varias"],
  timed: ["I time the wand", "Mido el tiempo de la lanza"],
});
const PER_ROW = question("perRow", ["How much does the row get?", "¿Cuánto recibe la hilera?"], {
  known: ["I know the rate", "Sé cuánto"],
  measured: ["I measured it", "Lo medí"],
});
const sides = (path: string, label: Text): Ask =>
  question(path, label, { 1: ["One side", "Un lado"], 2: ["Both sides", "Los dos lados"] }, "2");

const ROWS = ask("plot.rows", ["Number of rows", "Número de hileras"]);
const ROW_LENGTH = ask("plot.rowLength", ["Row length", "Largo de la hilera"]);
const ROW_SPACING = ask("plot.rowSpacing", ["Row spacing", "Distancia entre hileras"], {
  hint: ["Center to center.", "De centro a centro."],
});
const BAND = ask("plot.bandWidth", ["Band width", "Ancho de la banda"], {
  hint: ["Width you spray on each row.", "Lo que trata en cada hilera."],
  first: NARROW,
});
const STRIP_WIDTH = ask("plot.stripWidth", ["Strip width on one side", "Ancho de la franja de un lado"], {
  hint: ["From the trunks out.", "Desde los troncos."],
});
const LENGTH = ask("plot.length", ["Block length", "Largo de la parcela"], {
  hint: ["The direction you walk.", "En el sentido en que camina."],
});
const BLOCK = [LENGTH, ask("plot.width", ["Block width", "Ancho de la parcela"])];
const TREATED = ask("plot.treated", ["Treated area", "Área tratada"], {
  hint: ["Only the ground you treat.", "Solo lo que trata."],
});
const TEST_ROW: Text = ["Length of the test row", "Largo de la hilera de prueba"];

type ByChoice = Readonly<Record<string, readonly Ask[]>>;

/** A question, and what its answer asks for. */
function withAnswer(job: Job, asked: Ask, by: ByChoice): Ask[] {
  return [asked, ...(by[chosen(job, asked)] ?? [])];
}

const COUNT = ask("size.count", ["How many", "Cuántas"], { first: POTS });
const CATCH_TIME: Text = ["Time of the catch", "Tiempo en que se recogió"];
const EACH_BY: ByChoice = {
  known: [ask("size.each", ["Mix for each one", "Mezcla para cada una"], { first: SMALL })],
  measured: [
    ask("size.each.used", ["Water used on several", "Agua usada en varias"], { first: SMALL }),
    ask("size.each.plants", ["How many that was", "Cuántas fueron"]),
  ],
  timed: [
    ask("size.each.flow.caught", ["Caught from the wand", "Cantidad recogida de la lanza"], { first: SMALL }),
    ask("size.each.flow.time", CATCH_TIME),
    ask("size.each.time", ["Time on each one", "Tiempo en cada una"]),
  ],
};
const ALL_ROWS = ask("size.length", ["All rows together", "Todas las hileras juntas"]);
const ROW_USED: Text = ["Water used on a test row", "Agua usada en una hilera de prueba"];
const ROW_BY: ByChoice = {
  known: [ask("size.rate", ["Mix per length of row", "Mezcla por largo de hilera"])],
  measured: [ask("size.rate.used", ROW_USED, { first: SMALL }), ask("size.rate.length", TEST_ROW)],
};
const ORCHARD_BY: ByChoice = {
  strip: [STRIP_WIDTH, sides("plot.sides", ["Sides of each row", "Lados de cada hilera"])],
};

/** A kind of job: its name, what choosing it says already in the library's input, and the fields that say how large it is. */
interface Kind {
  readonly title: Text;
  readonly start: Readonly<Record<string, { readonly kind: string; readonly [more: string]: unknown }>>;
  readonly size: (job: KnownJob) => readonly Ask[];
}

/** The jobs, in the order of the page. */
export const JOBS: Readonly<Record<JobKind, Kind>> = {
  bands: {
    title: ["Bands along rows", "Bandas en hileras"],
    start: { plot: { kind: "row-bands" } },
    size: () => [ROWS, ROW_LENGTH, BAND, ROW_SPACING],
  },
  block: {
    title: ["Whole block", "Parcela completa"],
    // It says that all of the block is sprayed. Without this the library asks.
    start: { plot: { kind: "rectangle", fraction: 1 } },
    size: () => BLOCK,
  },
  area: {
    title: ["An area I know", "Un área que conozco"],
    start: { plot: { kind: "treated-area" } },
    size: () => [TREATED],
  },
  boundary: {
    title: ["A boundary I walk", "Un contorno que camino"],
    start: { plot: { kind: "ground-area", fraction: 1 } },
    size: () => [ask("plot.ground", ["Area inside", "Área de adentro"])],
  },
  spots: {
    title: ["Spots, by their size", "Manchones por tamaño"],
    start: { plot: { kind: "spots" } },
    size: () => [
      ask("plot.spots[0].count", ["Number of spots", "Número de manchones"]),
      ask("plot.spots[0].diameter", ["Distance across a spot", "Diámetro de un manchón"]),
    ],
  },
  tank: {
    title: ["A tank mixed by %", "Un tanque mezclado por %"],
    start: { size: { kind: "volume" } },
    size: () => [ask("size.volume", ["Mix to make", "Mezcla por preparar"])],
  },
  pots: {
    title: ["Pots or plants", "Macetas o plantas"],
    start: { size: { kind: "count" } },
    size: (job) => [COUNT, ...withAnswer(job, EACH, EACH_BY)],
  },
  drench: {
    title: ["Drench along a row", "Riego con producto en la hilera"],
    start: { size: { kind: "row-length" } },
    size: (job) => [ALL_ROWS, ...withAnswer(job, PER_ROW, ROW_BY)],
  },
  orchard: {
    title: ["Orchard rows", "Hileras de frutales"],
    start: { plot: { kind: "tree-rows", sides: 2 } },
    size: (job) => [
      ...withAnswer(job, ORCHARD, ORCHARD_BY),
      ROWS,
      ROW_LENGTH,
      { ...ROW_SPACING, needed: isCanopy(job) },
    ],
  },
  granules: {
    title: ["Granules", "Gránulos"],
    start: {},
    size: (job) => withAnswer(job, GRANULES_ON, { area: [TREATED], block: BLOCK }),
  },
};

/** What the choice of a job says already: the start of the library's input. */
export function startOf(job: KnownJob): Kind["start"] {
  return JOBS[job.kind === "granules" ? (chosen(job, GRANULES_ON) as JobKind) : job.kind].start;
}

/** Whether a job is sized by volume, count or length of row. */
export function isBySize({ kind }: KnownJob): boolean {
  return "size" in JOBS[kind].start;
}

/** Whether whole trees are sprayed, and not the ground. */
export function isCanopy(job: KnownJob): boolean {
  return job.kind === "orchard" && chosen(job, ORCHARD) === "canopy";
}

/** Whether the job's own width is that of a pass as well: it is entered once. */
export function sharedWidth(job: KnownJob): Ask | undefined {
  if (job.kind === "bands") return BAND;
  return job.kind === "orchard" && !isCanopy(job) ? STRIP_WIDTH : undefined;
}

const KNOWN_RATE: Text = ["I know the rate", "Sé el volumen de aplicación"];
const HOW: Text = ["How do you know what it puts out?", "¿Cómo sabe cuánto echa?"];
const CALIBRATION = question("calibration.kind", HOW, {
  strip: ["A test strip", "Una franja de prueba"],
  catch: ["Water caught from the nozzles", "Agua recogida de las boquillas"],
  known: KNOWN_RATE,
});
const CANOPY_CALIBRATION = question("canopyCalibration", HOW, {
  row: ["A test row", "Una hilera de prueba"],
  known: KNOWN_RATE,
});
const USED = ask("calibration.used", ["Water used (refill)", "Agua usada (la que repuso)"], {
  hint: ["How much it took to refill to the mark.", "Lo que hizo falta para volver a la marca."],
  first: SMALL,
});
/** A reading of the jug again: the same units, and no hint. */
const again = (path: string, label: Text): Ask => ask(path, label, { like: USED.path, first: SMALL });
const JUG = again("calibration.jug", ["The jug has a mark every", "La jarra tiene una marca cada"]);
const SWATH = ask("calibration.swath", ["Spray width in one pass", "Ancho de una pasada"], { first: NARROW });
const BLANK_FOR_ONE: Text = ["Blank for one.", "En blanco si es una."];
const ROWS_PER_PASS = ask("sprayer.rowsPerPass", ["Rows sprayed in one pass", "Hileras por pasada"], {
  hint: BLANK_FOR_ONE,
});
const NOZZLES: Text = ["Nozzles that spray one row", "Boquillas que rocían una hilera"];
const NOZZLES_PER_ROW = ask("calibration.nozzlesPerRow", NOZZLES, { hint: BLANK_FOR_ONE });
const STRIP_HINT: Text = [
  "Fill to a mark with clean water, spray the strip at your normal pace, then refill to the mark.",
  "Llene hasta una marca con agua limpia, rocíe la franja a su paso normal y reponga el agua hasta la marca.",
];

const CATCH = [
  ask("calibration.catches[0]", ["Caught from one nozzle", "Recogido de una boquilla"], {
    hint: ["The average of all nozzles.", "El promedio de todas."],
    first: SMALL,
  }),
  ask("calibration.time", CATCH_TIME),
  ask("calibration.speed.distance", ["Distance traveled", "Distancia recorrida"]),
  ask("calibration.speed.time", ["Time for that distance", "Tiempo en recorrerla"]),
];
const NOZZLE_WIDTH = ask("calibration.width", ["Nozzle spacing", "Distancia entre boquillas"], {
  hint: ["One nozzle alone: the width it sprays.", "Con una sola boquilla: el ancho que rocía."],
  first: NARROW,
});

/** How the sprayer's output is known. */
export function calibrationOf(job: KnownJob): "strip" | "catch" | "known" | "row" {
  return chosen(job, isCanopy(job) ? CANOPY_CALIBRATION : CALIBRATION) as ReturnType<typeof calibrationOf>;
}

export function runPath(i: number): string {
  return i === 0 ? USED.path : `calibration.runs[${i}].used`;
}

function calibrationAsks(job: KnownJob): Ask[] {
  const how = calibrationOf(job);
  const first = isCanopy(job) ? CANOPY_CALIBRATION : CALIBRATION;
  if (how === "known") return [first, ask("calibration.rate", ["Output rate", "Volumen de aplicación"])];
  if (how === "catch") return [first, ...CATCH, sharedWidth(job) ? NOZZLES_PER_ROW : NOZZLE_WIDTH];
  if (how === "row") {
    const tested = sides("calibration.sides", ["Sides sprayed in the test", "Lados tratados en la prueba"]);
    return [first, ask("calibration.rowLength", TEST_ROW), tested, USED, JUG];
  }
  const runs = Array.from({ length: job.runs - 1 }, (_, i) =>
    again(runPath(i + 1), [`Water used, run ${i + 2}`, `Agua usada, prueba ${i + 2}`]),
  );
  const strip = ask("calibration.distance", ["Strip length", "Largo de la franja de prueba"], {
    ...(job.kind === "orchard" && { hint: ["Spray one side only.", "Rocíe un solo lado."] as const }),
  });
  const width = job.kind === "bands" ? [ROWS_PER_PASS] : sharedWidth(job) ? [] : [SWATH];
  return [first, strip, ...width, USED, ...runs, JUG];
}

const SPRAYER = [
  ask("sprayer.tank", ["Tank size", "Tamaño del tanque"]),
  ask("sprayer.workingFill", ["Fill the tank to", "Llenar el tanque hasta"], {
    hint: ["Blank to fill it all the way.", "En blanco para llenarlo por completo."],
  }),
  ask("sprayer.marks", ["The tank has a mark every", "El tanque tiene una marca cada"], {
    hint: ["Loads then end on a mark.", "Así cada carga llega a una marca."],
  }),
  ask("sprayer.lineVolume", ["Held in hose, wand and boom", "Lo que cabe en manguera, lanza y aguilón"], {
    hint: [
      "Mix that stays there and can't be sprayed out.",
      "Mezcla que se queda ahí y no se puede aplicar.",
    ],
    first: SMALL,
  }),
  ask("reserve.percent", ["Extra mix to allow, %", "Mezcla extra, %"], {
    hint: ["On top of what the job needs.", "Además de la mezcla necesaria."],
  }),
];

const SPREADER = [
  ask("spreader.hopper", ["The hopper holds", "En la tolva caben"], { first: HEAVY }),
  question("spreader.directions", ["Directions", "Direcciones"], {
    1: ["One", "Una"],
    2: ["Two, crosswise, half each way", "Dos, cruzadas, la mitad en cada una"],
  }),
];
const SPREADER_TEST = [
  ask("test.used", ["Product used", "Producto usado"]),
  ask("test.distance", ["Strip length", "Largo de la franja"]),
  ask("test.swath", ["Width of one pass", "Ancho de una pasada"]),
];
const TEST_HINT: Text = [
  "Spread a measured strip and weigh what that took.",
  "Esparza una franja medida y pese lo que se usó.",
];

const TOOLS: Readonly<Partial<Record<ToolSetName, Text>>> = {
  "us-cups-and-spoons": ["US cups and spoons", "Tazas y cucharas de EE. UU."],
  "us-spoons": ["US spoons", "Cucharas de EE. UU."],
  "us-ounce-measures": ["US ounce measures, 1 to 16 fl oz", "Medidas de EE. UU., 1 a 16 fl oz"],
  "metric-spoons": ["Metric spoons, 5 and 15 mL", "Cucharas métricas, 5 y 15 mL"],
  "metric-cups-and-spoons": ["Metric cups and spoons", "Tazas y cucharas métricas"],
  "metric-measures": ["Metric measures, 10 to 1,000 mL", "Medidas métricas, 10 a 1,000 mL"],
  "australian-spoons": ["Australian spoons, 5 and 20 mL", "Cucharas australianas, 5 y 20 mL"],
  "imperial-measures": ["Imperial ounces and pints", "Onzas y pintas imperiales"],
  syringes: ["Syringes, 1 to 50 mL", "Jeringas, 1 a 50 mL"],
  cylinders: ["Graduated cylinders, 10 to 1,000 mL", "Probetas, 10 a 1,000 mL"],
};
export const TOOLS_ASK = ask("tools", ["What do you measure with?", "¿Con qué mide?"], {
  options: TOOLS as Readonly<Record<string, Text>>,
  usual: usualTools,
});

/** The fields of a product. */
function productAsks(at: string, job: KnownJob): Ask[] {
  const form = question(`${at}.form`, ["How is it measured?", "¿Cómo se mide?"], {
    liquid: ["By volume (liquid)", "Por volumen (líquido)"],
    dry: ["By weight (dry)", "Por peso (seco)"],
  });
  const more = (name: string, label: Text, first?: BySystem<Unit>): Ask =>
    ask(`${at}.${name}`, label, { more: true, ...(first && { first }) });
  const isSpread = job.kind === "granules";
  const first = isSpread ? SPREAD : undefined;
  return [
    ask(`${at}.name`, ["Product name", "Nombre del producto"]),
    ...(isSpread ? [] : [form]),
    ask(`${at}.rate`, ["Label rate", "Dosis de la etiqueta"], {
      ...(first && { first }),
      ...(job.kind === "tank" && { first: PERCENT }),
    }),
    more("label.max", ["Maximum label rate", "Dosis máxima"], first),
    ...(isSpread ? [more("bag", ["A bag holds", "Un saco trae"], HEAVY)] : []),
    ...(isSpread || isBySize(job) ? [] : [more("label.leastCarrier", ["Minimum water", "Agua mínima"])]),
    ...(isBySize(job)
      ? []
      : [
          more("label.seasonMax", ["Maximum for the season", "Máximo por temporada"], first),
          more(
            "soFar.rate",
            ["Applied this season, not recorded here", "Aplicado esta temporada, sin registrar aquí"],
            first,
          ),
        ]),
    more("registration", ["Registration number", "Número de registro"]),
    more("reEntryHours", ["Re-entry wait (REI), hours", "Intervalo de entrada restringida (REI), horas"]),
    more("preHarvestDays", ["Wait before harvest (PHI), days", "Espera antes de cosechar (PHI), días"]),
  ];
}

/** The parts of the form for a job, in order. */
export function stepsOf(job: KnownJob): Step[] {
  const part = (path: string, title: Text, asks: readonly Ask[], hint?: Text): Step => ({
    path,
    title,
    asks,
    hint,
  });
  const isSpread = job.kind === "granules";
  const products = Array.from({ length: job.products }, (_, i): Step => {
    const number = job.products === 1 ? "" : ` ${i + 1}`;
    const path = isSpread ? "product" : `products[${i}]`;
    return part(path, [`Product${number}`, `Producto${number}`], productAsks(path, job));
  });
  const size = JOBS[job.kind].size(job);
  if (isSpread)
    return [
      part("plot", ["Plot", "Parcela"], size),
      part("spreader", ["Spreader", "Esparcidora"], SPREADER),
      ...products,
      part("test", ["Spreader test", "Prueba"], SPREADER_TEST, TEST_HINT),
    ];
  const hint = calibrationOf(job) === "strip" ? STRIP_HINT : undefined;
  return [
    ...(isBySize(job)
      ? [part("size", ["Size of the job", "Tamaño del trabajo"], size)]
      : [
          part("plot", ["Plot", "Parcela"], size),
          part("calibration", ["Calibration", "Calibración"], calibrationAsks(job), hint),
        ]),
    part("sprayer", ["Sprayer", "Aspersora"], SPRAYER),
    ...products,
    part("tools", ["Measuring tools", "Utensilios de medir"], [TOOLS_ASK]),
  ];
}
