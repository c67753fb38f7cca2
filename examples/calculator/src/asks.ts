import { type ToolSetName, usualTools } from "swath-to-spoon/household";
import type { Unit, UnitSystem } from "swath-to-spoon/units";
import type { Text } from "./words.ts";

/** A field: where it stands in the job that the library plans, and what it is called. The library's schema has the rest. */
export interface Ask {
  /** Its place in the input, such as `plot.rows`; an error finds its way to it by this. */
  readonly path: string;
  readonly label: Text;
  readonly hint?: Text;
  /** The unit that the trade uses for it, where that isn't the first that the library offers. */
  readonly first?: BySystem<Unit>;
  /** What to choose from, by the library's name. */
  readonly options?: Readonly<Record<string, Text>>;
  /** What is chosen at first. */
  readonly usual?: string | BySystem<string>;
  /** The field that it takes its units from, where it is the page's own. */
  readonly like?: string;
  /** Whether this job needs it, although the library could do without. */
  readonly needed?: boolean;
  /** Whether it is shown with the label's limits, out of the way. */
  readonly more?: true;
}

type BySystem<T> = Readonly<Record<UnitSystem, T>>;

/** A part of the form that is open at a time. */
export interface Step {
  /** The place in the input that all of it belongs to. */
  readonly path: string;
  readonly title: Text;
  readonly hint?: Text;
  readonly asks: readonly Ask[];
}

/** What the choice of fields goes by. */
export interface Shape {
  readonly kind: JobKind;
  readonly products: number;
  readonly runs: number;
  /** What is chosen at a place. */
  readonly chosen: (ask: Ask) => string;
}

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
const PERCENT = { us: "%", imperial: "%", metric: "%" } as const;
const POTS = { us: "pot", imperial: "pot", metric: "pot" } as const;

/** The jobs, in the order of the page. */
export const JOBS = {
  bands: ["Bands along rows", "Bandas en hileras"],
  block: ["Whole block", "Terreno entero"],
  area: ["An area I know", "Un área que conozco"],
  boundary: ["A boundary I walk", "Un contorno que camino"],
  spots: ["Spots, by their size", "Manchones, por tamaño"],
  tank: ["A tank mixed by %", "Un tanque por %"],
  pots: ["Pots or plants", "Macetas o plantas"],
  drench: ["Drench along a row", "Riego en la hilera"],
  orchard: ["Orchard rows", "Hileras de frutales"],
  granules: ["Granules", "Gránulos"],
} as const satisfies Readonly<Record<string, Text>>;

export type JobKind = keyof typeof JOBS;

/** Jobs sized by volume, count or length of row. */
export const BY_SIZE: ReadonlySet<JobKind> = new Set(["tank", "pots", "drench"]);

const ORCHARD = question("orchard", ["What do you spray?", "¿Qué trata?"], {
  strip: ["A strip under the trees", "Una franja bajo los árboles"],
  canopy: ["The trees", "Los árboles"],
});
const GRANULES_ON = question("granulesOn", ["What do you spread on?", "¿Dónde esparce?"], {
  block: ["A whole block", "Un terreno entero"],
  area: ["An area I know", "Un área que conozco"],
});
const EACH = question("each", ["How much does each one get?", "¿Cuánto recibe cada una?"], {
  known: ["I know how much", "Sé cuánto"],
  measured: ["I measured it on several", "Lo medí en varias"],
  timed: ["I time the wand", "Mido el tiempo de la lanza"],
});
const PER_ROW = question("perRow", ["How much does the row get?", "¿Cuánto recibe la hilera?"], {
  known: ["I know the rate", "Sé la dosis"],
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
const BLOCK = [
  ask("plot.length", ["Block length", "Largo del terreno"], {
    hint: ["The direction you walk.", "En el sentido en que camina."],
  }),
  ask("plot.width", ["Block width", "Ancho del terreno"]),
];
const AREA = [
  ask("plot.treated", ["Treated area", "Área tratada"], {
    hint: ["Only the ground you treat.", "Solo lo que trata."],
  }),
];
const TEST_ROW: Text = ["Length of the test row", "Largo de la hilera de prueba"];

/** The fields that say how large a job is. */
const SIZES: Readonly<Record<JobKind, (chosen: Shape["chosen"]) => readonly Ask[]>> = {
  bands: () => [ROWS, ROW_LENGTH, BAND, ROW_SPACING],
  block: () => BLOCK,
  area: () => AREA,
  boundary: () => [ask("plot.ground", ["Area inside", "Área adentro"])],
  spots: () => [
    ask("plot.spots[0].count", ["Number of spots", "Número de manchones"]),
    ask("plot.spots[0].diameter", ["Distance across a spot", "Diámetro de un manchón"]),
  ],
  tank: () => [ask("size.volume", ["Mix to make", "Mezcla por preparar"])],
  pots: (chosen) => [
    ask("size.count", ["How many", "Cuántas"], { first: POTS }),
    EACH,
    ...(EACH_BY[chosen(EACH)] ?? []),
  ],
  drench: (chosen) => [
    ask("size.length", ["All rows together", "Todas las hileras juntas"]),
    PER_ROW,
    ...(ROW_BY[chosen(PER_ROW)] ?? []),
  ],
  orchard: (chosen) => [
    ORCHARD,
    ROWS,
    ROW_LENGTH,
    { ...ROW_SPACING, needed: chosen(ORCHARD) === "canopy" },
    ...(ORCHARD_BY[chosen(ORCHARD)] ?? []),
  ],
  granules: (chosen) => [GRANULES_ON, ...(chosen(GRANULES_ON) === "area" ? AREA : BLOCK)],
};

type ByChoice = Readonly<Record<string, readonly Ask[]>>;

const EACH_BY: ByChoice = {
  known: [ask("size.each", ["Mix for each one", "Mezcla para cada una"], { first: SMALL })],
  measured: [
    ask("size.each.used", ["Water used on several", "Agua usada en varias"], { first: SMALL }),
    ask("size.each.plants", ["How many that was", "Cuántas fueron"]),
  ],
  timed: [
    ask("size.each.flow.caught", ["Caught from the wand", "Recogido de la lanza"], { first: SMALL }),
    ask("size.each.flow.time", ["Time of the catch", "Tiempo de la recogida"]),
    ask("size.each.time", ["Time on each one", "Tiempo en cada una"]),
  ],
};
const ROW_BY: ByChoice = {
  known: [ask("size.rate", ["Mix per length of row", "Mezcla por largo de hilera"])],
  measured: [
    ask("size.rate.used", ["Water used on a test row", "Agua usada en una hilera de prueba"], {
      first: SMALL,
    }),
    ask("size.rate.length", TEST_ROW),
  ],
};
const ORCHARD_BY: ByChoice = {
  strip: [STRIP_WIDTH, sides("plot.sides", ["Sides of each row", "Lados de cada hilera"])],
};

const KNOWN_RATE: Text = ["I know the rate", "Sé el volumen de aplicación"];
const HOW: Text = ["How do you know what it puts out?", "¿Cómo sabe cuánto echa?"];
const CALIBRATION = question("calibration.kind", HOW, {
  strip: ["A test strip", "Una franja de prueba"],
  known: KNOWN_RATE,
});
const CANOPY_CALIBRATION = question("canopyCalibration", HOW, {
  row: ["A test row", "Una hilera de prueba"],
  known: KNOWN_RATE,
});
const USED = ask("calibration.used", ["Water used (refill)", "Agua usada (rellenado)"], {
  hint: ["How much it took to refill to the mark.", "Lo que hizo falta para volver a la marca."],
  first: SMALL,
});
const JUG = ask("calibration.jug", ["The jug has a mark every", "La jarra tiene una marca cada"], {
  like: USED.path,
  first: SMALL,
});
const SWATH = ask("calibration.swath", ["Spray width in one pass", "Ancho de una pasada"], { first: NARROW });
const ROWS_PER_PASS = ask("sprayer.rowsPerPass", ["Rows sprayed in one pass", "Hileras por pasada"], {
  hint: ["Blank for one.", "En blanco si es una."],
});
const STRIP_HINT: Text = [
  "Fill to a mark with clean water, spray the strip at your normal pace, then refill to the mark.",
  "Llene hasta una marca con agua limpia, trate la franja a su paso normal y rellene hasta la marca.",
];

const SPRAYER = [
  ask("sprayer.tank", ["Tank size", "Tamaño del tanque"]),
  ask("sprayer.workingFill", ["Fill the tank to", "Llenar el tanque hasta"], {
    hint: ["Blank to fill it all the way.", "En blanco para llenarlo entero."],
  }),
  ask("sprayer.marks", ["The tank has a mark every", "El tanque tiene una marca cada"], {
    hint: ["Loads then end on a mark.", "Así cada carga llega a una marca."],
  }),
  ask("sprayer.lineVolume", ["Held in hose, wand and boom", "Queda en manguera, lanza y aguilón"], {
    hint: ["Mix that stays there and can't be sprayed out.", "Mezcla que no se puede sacar."],
    first: SMALL,
  }),
  ask("reserve.percent", ["Extra mix to allow, %", "Mezcla de más, %"], {
    hint: ["On top of what the job needs.", "Además de la necesaria."],
  }),
];

const SPREADER = [
  ask("spreader.hopper", ["The hopper holds", "La tolva lleva"], { first: HEAVY }),
  question("spreader.directions", ["Directions", "Sentidos"], {
    1: ["One", "Uno"],
    2: ["Two, half each way", "Dos, la mitad en cada uno"],
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
function productAsks(at: string, kind: JobKind): Ask[] {
  const form = question(`${at}.form`, ["How is it measured?", "¿Cómo se mide?"], {
    liquid: ["Liquid (by volume)", "Líquido (por volumen)"],
    dry: ["Dry (by weight)", "Seco (por peso)"],
  });
  const more = (name: string, label: Text, first?: BySystem<Unit>): Ask =>
    ask(`${at}.${name}`, label, { more: true, ...(first && { first }) });
  const isSprayedOnArea = !BY_SIZE.has(kind) && kind !== "granules";
  return [
    ask(`${at}.name`, ["Product name", "Nombre del producto"]),
    ...(kind === "granules" ? [] : [form]),
    ask(`${at}.rate`, ["Label rate", "Dosis de la etiqueta"], {
      hint: [
        "As printed on the label, per treated area or per volume of mix.",
        "Como está en la etiqueta, por área tratada o por volumen de mezcla.",
      ],
      ...(kind === "tank" && { first: PERCENT }),
    }),
    more("label.max", ["Maximum label rate", "Dosis máxima"]),
    ...(isSprayedOnArea
      ? [
          more("label.leastCarrier", ["Minimum water", "Agua mínima"]),
          more("label.seasonMax", ["Maximum for the season", "Máximo por temporada"]),
        ]
      : []),
    ...(kind === "granules" ? [more("bag", ["A bag holds", "Un saco trae"], HEAVY)] : []),
    more("registration", ["Registration number", "Número de registro"]),
    more("reEntryHours", ["Hours to re-entry", "Horas para volver a entrar"]),
    more("preHarvestDays", ["Days to harvest", "Días a la cosecha"]),
  ];
}

// Choosing the whole block says that all of it is sprayed. Without this the library asks.
const STARTS = {
  bands: { plot: { kind: "row-bands" } },
  block: { plot: { kind: "rectangle", fraction: 1 } },
  area: { plot: { kind: "treated-area" } },
  boundary: { plot: { kind: "ground-area", fraction: 1 } },
  spots: { plot: { kind: "spots" } },
  tank: { size: { kind: "volume" } },
  pots: { size: { kind: "count" } },
  drench: { size: { kind: "row-length" } },
  orchard: { plot: { kind: "tree-rows", sides: 2 } },
} as const;

/** What the choice of a job says already: the start of the library's input. */
export function startOf({ kind, chosen }: Shape): (typeof STARTS)[keyof typeof STARTS] {
  return STARTS[kind === "granules" ? (chosen(GRANULES_ON) as "block" | "area") : kind];
}

/** Whether the job's own width is that of a pass as well: it is entered once. */
export function sharedWidth({ kind, chosen }: Shape): Ask | undefined {
  if (kind === "bands") return BAND;
  return kind === "orchard" && chosen(ORCHARD) === "strip" ? STRIP_WIDTH : undefined;
}

/** Whether whole trees are sprayed, and not the ground. */
export function isCanopy({ kind, chosen }: Shape): boolean {
  return kind === "orchard" && chosen(ORCHARD) === "canopy";
}

/** How the sprayer's output is known. */
export function calibrationOf(shape: Shape): "strip" | "known" | "row" {
  return shape.chosen(isCanopy(shape) ? CANOPY_CALIBRATION : CALIBRATION) as "strip" | "known" | "row";
}

export function runPath(i: number): string {
  return i === 0 ? USED.path : `calibration.runs[${i}].used`;
}

function calibrationAsks(shape: Shape): Ask[] {
  const how = calibrationOf(shape);
  const first = isCanopy(shape) ? CANOPY_CALIBRATION : CALIBRATION;
  if (how === "known") return [first, ask("calibration.rate", ["Output rate", "Volumen de aplicación"])];
  if (how === "row") {
    const tested = sides("calibration.sides", ["Sides sprayed in the test", "Lados tratados en la prueba"]);
    return [first, ask("calibration.rowLength", TEST_ROW), tested, USED, JUG];
  }
  const runs = Array.from({ length: shape.runs - 1 }, (_, i) =>
    ask(runPath(i + 1), [`Water used, run ${i + 2}`, `Agua usada, pasada ${i + 2}`], {
      like: USED.path,
      first: SMALL,
    }),
  );
  const strip = ask("calibration.distance", ["Strip length", "Largo de la franja de prueba"]);
  const width = shape.kind === "bands" ? [ROWS_PER_PASS] : sharedWidth(shape) ? [] : [SWATH];
  return [first, strip, ...width, USED, ...runs, JUG];
}

/** The parts of the form for a job, in order. */
export function stepsOf(shape: Shape): Step[] {
  const { kind } = shape;
  const products = Array.from({ length: shape.products }, (_, i): Step => {
    const number = shape.products === 1 ? "" : ` ${i + 1}`;
    const path = kind === "granules" ? "product" : `products[${i}]`;
    return { path, title: [`Product${number}`, `Producto${number}`], asks: productAsks(path, kind) };
  });
  const asks = SIZES[kind](shape.chosen);
  const size: Step = BY_SIZE.has(kind)
    ? { path: "size", title: ["Size of the job", "Tamaño del trabajo"], asks }
    : { path: "plot", title: ["Plot", "Terreno"], asks };
  if (kind === "granules") {
    const spreader: Step = { path: "spreader", title: ["Spreader", "Esparcidora"], asks: SPREADER };
    const test: Step = {
      path: "test",
      title: ["Spreader test", "Prueba"],
      hint: TEST_HINT,
      asks: SPREADER_TEST,
    };
    return [size, spreader, ...products, test];
  }
  const calibration: Step = {
    path: "calibration",
    title: ["Calibration", "Calibración"],
    ...(calibrationOf(shape) === "strip" && { hint: STRIP_HINT }),
    asks: calibrationAsks(shape),
  };
  return [
    size,
    ...(BY_SIZE.has(kind) ? [] : [calibration]),
    { path: "sprayer", title: ["Sprayer", "Aspersora"], asks: SPRAYER },
    ...products,
    { path: "tools", title: ["Measuring tools", "Medidas"], asks: [TOOLS_ASK] },
  ];
}
