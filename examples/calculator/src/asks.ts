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
  readonly first?: Readonly<Record<UnitSystem, Unit>>;
  /** What to choose from, by the library's name. */
  readonly options?: Readonly<Record<string, Text>>;
  /** What is chosen at first. */
  readonly usual?: string | Readonly<Record<UnitSystem, string>>;
  /** The field that it takes its units from, where it is the page's own. */
  readonly like?: string;
  /** Whether it is shown with the label's limits, out of the way. */
  readonly more?: true;
}

/** A part of the form that is open at a time. */
export interface Step {
  /** The place in the input that all of it belongs to. */
  readonly path: string;
  readonly title: Text;
  readonly hint?: Text;
  readonly asks: readonly Ask[];
}

/** What the choice of steps goes by. */
export interface Shape {
  readonly kind: JobKind;
  readonly products: number;
  readonly runs: number;
  /** What is chosen at a place. */
  readonly chosen: (ask: Ask) => string;
}

const small = { us: "fl_oz", imperial: "imp_fl_oz", metric: "mL" } as const;
const PERCENT = { us: "%", imperial: "%", metric: "%" } as const;
const heavy = { us: "lb", imperial: "lb", metric: "kg" } as const;
const narrow = { us: "in", imperial: "in", metric: "cm" } as const;

const ROWS: Ask = { path: "plot.rows", label: ["Number of rows", "Número de hileras"] };
const ROW_LENGTH: Ask = { path: "plot.rowLength", label: ["Row length", "Largo de la hilera"] };
const ROW_SPACING: Ask = {
  path: "plot.rowSpacing",
  label: ["Row spacing", "Distancia entre hileras"],
  hint: ["Center to center.", "De centro a centro."],
};
const BAND: Ask = {
  path: "plot.bandWidth",
  label: ["Band width", "Ancho de la banda"],
  hint: ["Width you spray on each row.", "Lo que trata en cada hilera."],
  first: narrow,
};
const BLOCK: readonly Ask[] = [
  {
    path: "plot.length",
    label: ["Block length", "Largo del terreno"],
    hint: ["The direction you walk.", "En el sentido en que camina."],
  },
  { path: "plot.width", label: ["Block width", "Ancho del terreno"] },
];
const AREA: Ask = {
  path: "plot.treated",
  label: ["Treated area", "Área tratada"],
  hint: ["Only the ground you treat.", "Solo lo que trata."],
};
const GROUND: Ask = { path: "plot.ground", label: ["Area inside", "Área adentro"] };
const SPOTS: readonly Ask[] = [
  { path: "plot.spots[0].count", label: ["Number of spots", "Número de manchones"] },
  { path: "plot.spots[0].diameter", label: ["Distance across a spot", "Diámetro de un manchón"] },
];
const ORCHARD: Ask = {
  path: "orchard",
  label: ["What do you spray?", "¿Qué trata?"],
  options: {
    strip: ["A strip under the trees", "Una franja bajo los árboles"],
    canopy: ["The trees", "Los árboles"],
  },
  usual: "strip",
};
const STRIP_WIDTH: Ask = {
  path: "plot.stripWidth",
  label: ["Strip width on one side", "Ancho de la franja de un lado"],
  hint: ["From the trunks out.", "Desde los troncos."],
};
const SIDES: Ask = {
  path: "plot.sides",
  label: ["Sides of each row", "Lados de cada hilera"],
  options: { "2": ["Both sides", "Los dos lados"], "1": ["One side", "Un lado"] },
  usual: "2",
};
const EACH: Ask = {
  path: "each",
  label: ["How much does each one get?", "¿Cuánto recibe cada una?"],
  options: {
    known: ["I know how much", "Sé cuánto"],
    measured: ["I measured it on several", "Lo medí en varias"],
    timed: ["I time the wand", "Mido el tiempo de la lanza"],
  },
  usual: "known",
};
const PER_ROW: Ask = {
  path: "perRow",
  label: ["How much does the row get?", "¿Cuánto recibe la hilera?"],
  options: { known: ["I know the rate", "Sé la dosis"], measured: ["I measured it", "Lo medí"] },
  usual: "known",
};
export const GRANULES_ON: Ask = {
  path: "granulesOn",
  label: ["What do you spread on?", "¿Dónde esparce?"],
  options: { block: ["A whole block", "Un terreno entero"], area: ["An area I know", "Un área que conozco"] },
  usual: "block",
};

const CALIBRATION: Ask = {
  path: "calibration.kind",
  label: ["How do you know what it puts out?", "¿Cómo sabe cuánto echa?"],
  options: {
    strip: ["A test strip", "Una franja de prueba"],
    known: ["I know the rate", "Sé el volumen de aplicación"],
  },
  usual: "strip",
};
const CANOPY_CALIBRATION: Ask = {
  ...CALIBRATION,
  path: "canopyCalibration",
  options: { row: ["A measured row", "Una hilera de prueba"], known: ["I know the rate", "Sé el volumen"] },
  usual: "row",
};
const USED: Ask = {
  path: "calibration.used",
  label: ["Water used (refill)", "Agua usada (rellenado)"],
  hint: ["How much it took to refill to the mark.", "Lo que hizo falta para volver a la marca."],
  first: small,
};
const JUG: Ask = {
  path: "calibration.jug",
  label: ["The jug has a mark every", "La jarra tiene una marca cada"],
  like: "calibration.used",
  first: small,
};
const STRIP: Ask = { path: "calibration.distance", label: ["Strip length", "Largo de la franja de prueba"] };
const SWATH: Ask = {
  path: "calibration.swath",
  label: ["Spray width in one pass", "Ancho de una pasada"],
  first: narrow,
};
const ROWS_PER_PASS: Ask = {
  path: "sprayer.rowsPerPass",
  label: ["Rows sprayed in one pass", "Hileras por pasada"],
  hint: ["Blank for one.", "En blanco si es una."],
};
const KNOWN: Ask = { path: "calibration.rate", label: ["Output rate", "Volumen de aplicación"] };

const SPRAYER: readonly Ask[] = [
  { path: "sprayer.tank", label: ["Tank size", "Tamaño del tanque"] },
  {
    path: "sprayer.workingFill",
    label: ["Fill the tank to", "Llenar el tanque hasta"],
    hint: ["Blank to fill it all the way.", "En blanco para llenarlo entero."],
  },
  {
    path: "sprayer.lineVolume",
    label: ["Held in hose, wand and boom", "Queda en manguera, lanza y aguilón"],
    hint: ["Mix that stays there and can't be sprayed out.", "Mezcla que no se puede sacar."],
    first: small,
  },
  {
    path: "reserve.percent",
    label: ["Extra mix to allow, %", "Mezcla de más, %"],
    hint: ["On top of what the job needs.", "Además de la necesaria."],
  },
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
export const TOOLS_ASK: Ask = {
  path: "tools",
  label: ["What do you measure with?", "¿Con qué mide?"],
  options: TOOLS as Readonly<Record<string, Text>>,
  usual: usualTools,
};

const RATE_HINT: Text = [
  "As printed on the label, per treated area or per volume of mix.",
  "Como está en la etiqueta, por área tratada o por volumen de mezcla.",
];

const BAG: Ask = { path: "product.bag", label: ["A bag holds", "Un saco trae"], first: heavy, more: true };

/** The fields of a product. */
function productAsks(at: string, { kind }: Shape): Ask[] {
  const name: Ask = { path: `${at}.name`, label: ["Product name", "Nombre del producto"] };
  const form: Ask = {
    path: `${at}.form`,
    label: ["How is it measured?", "¿Cómo se mide?"],
    options: {
      liquid: ["Liquid (by volume)", "Líquido (por volumen)"],
      dry: ["Dry (by weight)", "Seco (por peso)"],
    },
    usual: "liquid",
  };
  const rate: Ask = {
    path: `${at}.rate`,
    label: ["Label rate", "Dosis de la etiqueta"],
    hint: RATE_HINT,
    ...(kind === "tank" ? { first: PERCENT } : {}),
  };
  const onArea: Ask[] = [
    { path: `${at}.label.leastCarrier`, label: ["Minimum water", "Agua mínima"], more: true },
    { path: `${at}.label.seasonMax`, label: ["Maximum for the season", "Máximo por temporada"], more: true },
  ];
  return [
    name,
    ...(kind === "granules" ? [] : [form]),
    rate,
    { path: `${at}.label.max`, label: ["Maximum label rate", "Dosis máxima"], more: true },
    ...(BY_SIZE.has(kind) || kind === "granules" ? [] : onArea),
    ...(kind === "granules" ? [BAG] : []),
    { path: `${at}.registration`, label: ["Registration number", "Número de registro"], more: true },
    { path: `${at}.reEntryHours`, label: ["Hours to re-entry", "Horas para volver a entrar"], more: true },
    { path: `${at}.preHarvestDays`, label: ["Days to harvest", "Días a la cosecha"], more: true },
  ];
}

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

/** The fields that say how large the job is. */
function sizeAsks({ kind, chosen }: Shape): readonly Ask[] {
  switch (kind) {
    case "bands":
      return [ROWS, ROW_LENGTH, BAND, ROW_SPACING];
    case "block":
      return BLOCK;
    case "area":
      return [AREA];
    case "boundary":
      return [GROUND];
    case "spots":
      return SPOTS;
    case "tank":
      return [{ path: "size.volume", label: ["Mix to make", "Mezcla por preparar"] }];
    case "pots":
      return [
        {
          path: "size.count",
          label: ["How many", "Cuántas"],
          first: { us: "pot", imperial: "pot", metric: "pot" },
        },
        EACH,
        ...EACH_BY[chosen(EACH) as keyof typeof EACH_BY],
      ];
    case "drench":
      return [
        { path: "size.length", label: ["All rows together", "Todas las hileras juntas"] },
        PER_ROW,
        ...ROW_BY[chosen(PER_ROW) as keyof typeof ROW_BY],
      ];
    case "orchard":
      return [
        ORCHARD,
        ROWS,
        ROW_LENGTH,
        ROW_SPACING,
        ...(chosen(ORCHARD) === "strip" ? [STRIP_WIDTH, SIDES] : []),
      ];
    case "granules":
      return [GRANULES_ON, ...(chosen(GRANULES_ON) === "area" ? [AREA] : BLOCK)];
  }
}

const EACH_BY = {
  known: [{ path: "size.each", label: ["Mix for each one", "Mezcla para cada una"], first: small }],
  measured: [
    { path: "size.each.used", label: ["Water used on several", "Agua usada en varias"], first: small },
    { path: "size.each.plants", label: ["How many that was", "Cuántas fueron"] },
  ],
  timed: [
    { path: "size.each.flow.caught", label: ["Caught from the wand", "Recogido de la lanza"], first: small },
    { path: "size.each.flow.time", label: ["Time of the catch", "Tiempo de la recogida"] },
    { path: "size.each.time", label: ["Time on each one", "Tiempo en cada una"] },
  ],
} as const satisfies Readonly<Record<string, readonly Ask[]>>;

const ROW_BY = {
  known: [{ path: "size.rate", label: ["Mix per length of row", "Mezcla por largo de hilera"] }],
  measured: [
    {
      path: "size.rate.used",
      label: ["Water used on a test row", "Agua usada en una hilera de prueba"],
      first: small,
    },
    { path: "size.rate.length", label: ["Length of the test row", "Largo de la hilera de prueba"] },
  ],
} as const satisfies Readonly<Record<string, readonly Ask[]>>;

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
  const question = isCanopy(shape) ? CANOPY_CALIBRATION : CALIBRATION;
  if (how === "known") return [question, KNOWN];
  if (how === "row")
    return [
      question,
      { path: "calibration.rowLength", label: ["Length of the test row", "Largo de la hilera de prueba"] },
      {
        ...SIDES,
        path: "calibration.sides",
        label: ["Sides sprayed in the test", "Lados tratados en la prueba"],
      },
      USED,
      JUG,
    ];
  const runs = Array.from({ length: shape.runs - 1 }, (_, i): Ask => {
    const label: Text = [`Water used, run ${i + 2}`, `Agua usada, pasada ${i + 2}`];
    return { path: runPath(i + 1), label, like: USED.path, first: small };
  });
  const width = shape.kind === "bands" ? ROWS_PER_PASS : SWATH;
  return [question, STRIP, ...(shape.kind === "orchard" ? [] : [width]), USED, ...runs, JUG];
}

const STRIP_HINT: Text = [
  "Fill to a mark with clean water, spray the strip at your normal pace, then refill to the mark.",
  "Llene hasta una marca con agua limpia, trate la franja a su paso normal y rellene hasta la marca.",
];

const SPREADER: readonly Ask[] = [
  {
    path: "spreader.hopper",
    label: ["The hopper holds", "La tolva lleva"],
    first: heavy,
  },
  {
    path: "spreader.directions",
    label: ["Directions", "Sentidos"],
    options: { "1": ["One", "Uno"], "2": ["Two, half each way", "Dos, la mitad en cada uno"] },
    usual: "1",
  },
];

const TEST_HINT: Text = [
  "Spread a measured strip and weigh what that took.",
  "Esparza una franja medida y pese lo que se usó.",
];

const SPREADER_TEST: readonly Ask[] = [
  { path: "test.used", label: ["Product used", "Producto usado"] },
  { path: "test.distance", label: ["Strip length", "Largo de la franja"] },
  { path: "test.swath", label: ["Width of one pass", "Ancho de una pasada"] },
];

/** The parts of the form for a job, in order. */
export function stepsOf(shape: Shape): Step[] {
  const { kind } = shape;
  const products = Array.from({ length: shape.products }, (_, i): Step => {
    const [english, spanish] = shape.products === 1 ? ["", ""] : [` ${i + 1}`, ` ${i + 1}`];
    const path = kind === "granules" ? "product" : `products[${i}]`;
    return { path, title: [`Product${english}`, `Producto${spanish}`], asks: productAsks(path, shape) };
  });
  const size: Step = {
    path: BY_SIZE.has(kind) ? "size" : "plot",
    title: BY_SIZE.has(kind) ? ["Size of the job", "Tamaño del trabajo"] : ["Plot", "Terreno"],
    asks: sizeAsks(shape),
  };
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
