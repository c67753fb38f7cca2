import { type ToolSetName, usualTools } from "swath-to-spoon/household";
import { type Ask, chosen, type JobKind, type KnownJob, type Step } from "./job.ts";
import type { Text } from "./words.ts";

const SMALL = { us: "fl_oz", imperial: "imp_fl_oz", metric: "mL" } as const;
const NARROW = { us: "in", imperial: "in", metric: "cm" } as const;
const HEAVY = { us: "lb", imperial: "lb", metric: "kg" } as const;
/** A fertilizer's rate is many times a spray's. */
const SPREAD = { us: "lb/1000ft2", imperial: "lb/ac", metric: "kg/ha" } as const;
const PERCENT = { us: "%", imperial: "%", metric: "%" } as const;
const POTS = { us: "pot", imperial: "pot", metric: "pot" } as const;

const BLANK_FOR_ONE: Text = ["Blank for one.", "En blanco si es una."];
const KNOWN_RATE: Text = ["I know the rate", "Sé el volumen de aplicación"];
const HOW: Text = ["How do you know what it puts out?", "¿Cómo sabe cuánto echa?"];
const NOT_RECORDED: Text = [
  "Applied this season, not recorded here",
  "Aplicado esta temporada, sin registrar aquí",
];
const STRIP_HINT: Text = [
  "Fill to a mark with clean water, spray the strip at your normal pace, then refill to the mark.",
  "Llene hasta una marca con agua limpia, rocíe la franja a su paso normal y reponga el agua hasta la marca.",
];
const SIDES = { 1: ["One side", "Un lado"], 2: ["Both sides", "Los dos lados"] } as const;
const USED = "calibration.used";
const BAND = "plot.bandWidth";
const STRIP_WIDTH = "plot.stripWidth";

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

/** What this page adds to a field, by its place: a hint, the unit to begin with, what to choose from. The library has the rest. */
const MORE: Readonly<Record<string, Omit<Ask, "path">>> = {
  "plot.rowSpacing": { hint: ["Center to center.", "De centro a centro."] },
  [BAND]: { hint: ["Width you spray on each row.", "Lo que trata en cada hilera."], first: NARROW },
  [STRIP_WIDTH]: { hint: ["From the trunks out.", "Desde los troncos."] },
  "plot.length": { hint: ["The direction you walk.", "En el sentido en que camina."] },
  "plot.treated": { hint: ["Only the ground you treat.", "Solo lo que trata."] },
  "plot.sides": { options: SIDES, usual: "2" },
  orchard: {
    label: ["What do you spray?", "¿Qué trata?"],
    options: {
      strip: ["A strip under the trees", "Una franja bajo los árboles"],
      canopy: ["The trees", "Los árboles"],
    },
  },
  granulesOn: {
    label: ["What do you spread on?", "¿Dónde esparce?"],
    options: {
      block: ["A whole block", "Una parcela completa"],
      area: ["An area I know", "Un área que conozco"],
    },
  },
  each: {
    label: ["How much does each one get?", "¿Cuánto recibe cada una?"],
    options: {
      known: ["I know how much", "Sé cuánto"],
      measured: ["I measured it on several", "Lo medí en varias"],
      timed: ["I time the wand", "Mido el tiempo de la lanza"],
    },
  },
  perRow: {
    label: ["How much does the row get?", "¿Cuánto recibe la hilera?"],
    options: { known: ["I know the rate", "Sé cuánto"], measured: ["I measured it", "Lo medí"] },
  },
  "size.count": { first: POTS },
  "size.each": { first: SMALL },
  "size.each.used": { first: SMALL },
  "size.each.flow.caught": { first: SMALL },
  "size.rate.used": { first: SMALL },
  "calibration.kind": {
    label: HOW,
    options: {
      strip: ["A test strip", "Una franja de prueba"],
      catch: ["Water caught from the nozzles", "Agua recogida de las boquillas"],
      known: KNOWN_RATE,
    },
  },
  canopyCalibration: {
    label: HOW,
    options: { row: ["A test row", "Una hilera de prueba"], known: KNOWN_RATE },
  },
  [USED]: {
    hint: ["How much it took to refill to the mark.", "Lo que hizo falta para volver a la marca."],
    first: SMALL,
  },
  "calibration.jug": {
    label: ["The jug has a mark every", "La jarra tiene una marca cada"],
    like: USED,
    first: SMALL,
  },
  "calibration.swath": { first: NARROW },
  "calibration.sides": { options: SIDES, usual: "2" },
  "calibration.nozzlesPerRow": { hint: BLANK_FOR_ONE },
  "calibration.catches[0]": {
    hint: ["The average of all nozzles.", "El promedio de todas."],
    first: SMALL,
  },
  "calibration.width": {
    label: ["Nozzle spacing", "Distancia entre boquillas"],
    hint: ["One nozzle alone: the width it sprays.", "Con una sola boquilla: el ancho que rocía."],
    first: NARROW,
  },
  "sprayer.workingFill": { hint: ["Blank to fill it all the way.", "En blanco para llenarlo por completo."] },
  "sprayer.marks": { hint: ["Loads then end on a mark.", "Así cada carga llega a una marca."] },
  "sprayer.lineVolume": {
    hint: ["Mix that stays there and can't be sprayed out.", "Mezcla que queda ahí y no se puede aplicar."],
    first: SMALL,
  },
  "sprayer.rowsPerPass": { hint: BLANK_FOR_ONE },
  "reserve.percent": { hint: ["On top of what the job needs.", "Además de la mezcla necesaria."] },
  "spreader.hopper": { first: HEAVY },
  "spreader.directions": {
    options: {
      1: ["One", "Una"],
      2: ["Two, crosswise, half each way", "Dos, cruzadas, la mitad en cada una"],
    },
  },
  tools: {
    label: ["What do you measure with?", "¿Con qué mide?"],
    options: TOOLS as Readonly<Record<string, Text>>,
    usual: usualTools,
  },
};

/** A field by its place in the input. */
export function ask(path: string, more: Omit<Ask, "path"> = {}): Ask {
  return { path, ...MORE[path], ...more };
}

/** Fields in order. */
const asks = (...paths: string[]): Ask[] => paths.map((path) => ask(path));

/** A question, and the fields that its answer asks for. */
function withAnswer(job: KnownJob, path: string, fields: Readonly<Record<string, readonly string[]>>): Ask[] {
  return asks(path, ...(fields[chosen(job, ask(path))] ?? []));
}

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
    size: () => asks("plot.rows", "plot.rowLength", BAND, "plot.rowSpacing"),
  },
  block: {
    title: ["Whole block", "Parcela completa"],
    // It says that all of the block is sprayed. Without this the library asks.
    start: { plot: { kind: "rectangle", fraction: 1 } },
    size: () => asks("plot.length", "plot.width"),
  },
  area: {
    title: ["An area I know", "Un área que conozco"],
    start: { plot: { kind: "treated-area" } },
    size: () => asks("plot.treated"),
  },
  boundary: {
    title: ["A boundary I walk", "Un contorno que camino"],
    start: { plot: { kind: "ground-area", fraction: 1 } },
    size: () => asks("plot.ground"),
  },
  spots: {
    title: ["Spots, by their size", "Manchones por tamaño"],
    start: { plot: { kind: "spots" } },
    size: () => asks("plot.spots[0].count", "plot.spots[0].diameter"),
  },
  tank: {
    title: ["A tank mixed by %", "Un tanque mezclado por %"],
    start: { size: { kind: "volume" } },
    size: () => asks("size.volume"),
  },
  pots: {
    title: ["Pots or plants", "Macetas o plantas"],
    start: { size: { kind: "count" } },
    size: (job) => [
      ask("size.count"),
      ...withAnswer(job, "each", {
        known: ["size.each"],
        measured: ["size.each.used", "size.each.plants"],
        timed: ["size.each.flow.caught", "size.each.flow.time", "size.each.time"],
      }),
    ],
  },
  drench: {
    title: ["Drench along a row", "Riego con producto en la hilera"],
    start: { size: { kind: "row-length" } },
    size: (job) => [
      ask("size.length"),
      ...withAnswer(job, "perRow", {
        known: ["size.rate"],
        measured: ["size.rate.used", "size.rate.length"],
      }),
    ],
  },
  orchard: {
    title: ["Orchard rows", "Hileras de frutales"],
    start: { plot: { kind: "tree-rows", sides: 2 } },
    size: (job) => [
      ...withAnswer(job, "orchard", { strip: [STRIP_WIDTH, "plot.sides"] }),
      ...asks("plot.rows", "plot.rowLength"),
      ask("plot.rowSpacing", { needed: isCanopy(job) }),
    ],
  },
  granules: {
    title: ["Granules", "Gránulos"],
    start: {},
    size: (job) =>
      withAnswer(job, "granulesOn", { area: ["plot.treated"], block: ["plot.length", "plot.width"] }),
  },
};

/** What the choice of a job says already: the start of the library's input. */
export function startOf(job: KnownJob): Kind["start"] {
  return JOBS[job.kind === "granules" ? (chosen(job, ask("granulesOn")) as JobKind) : job.kind].start;
}

/** Whether a job is sized by volume, count or length of row. */
export function isBySize({ kind }: KnownJob): boolean {
  return "size" in JOBS[kind].start;
}

/** Whether whole trees are sprayed, and not the ground. */
export function isCanopy(job: KnownJob): boolean {
  return job.kind === "orchard" && chosen(job, ask("orchard")) === "canopy";
}

/** Where the job's own width stands if it is that of a pass as well: it is entered once. */
export function sharedWidth(job: KnownJob): string | undefined {
  if (job.kind === "bands") return BAND;
  return job.kind === "orchard" && !isCanopy(job) ? STRIP_WIDTH : undefined;
}

function calibrationQuestion(job: KnownJob): Ask {
  return ask(isCanopy(job) ? "canopyCalibration" : "calibration.kind");
}

/** How the sprayer's output is known. */
export function calibrationOf(job: KnownJob): "strip" | "catch" | "known" | "row" {
  return chosen(job, calibrationQuestion(job)) as ReturnType<typeof calibrationOf>;
}

export function runPath(i: number): string {
  return i === 0 ? USED : `calibration.runs[${i}].used`;
}

function calibrationAsks(job: KnownJob): Ask[] {
  const how = calibrationOf(job);
  const width = sharedWidth(job);
  if (how === "known") return asks("calibration.rate");
  if (how === "row") return asks("calibration.rowLength", "calibration.sides", USED, "calibration.jug");
  if (how === "catch")
    return asks(
      "calibration.catches[0]",
      "calibration.time",
      "calibration.speed.distance",
      "calibration.speed.time",
      width === undefined ? "calibration.width" : "calibration.nozzlesPerRow",
    );
  const runs = Array.from({ length: job.runs - 1 }, (_, i) =>
    ask(runPath(i + 1), {
      label: [`Water used, run ${i + 2}`, `Agua usada, prueba ${i + 2}`],
      like: USED,
      first: SMALL,
    }),
  );
  return [
    ask("calibration.distance", {
      ...(job.kind === "orchard" && { hint: ["Spray one side only.", "Rocíe un solo lado."] as const }),
    }),
    ...(width === undefined ? asks("calibration.swath") : []),
    ...(width === BAND ? asks("sprayer.rowsPerPass") : []),
    ask(USED),
    ...runs,
    ask("calibration.jug"),
  ];
}

/** The fields of a product. */
function productAsks(at: string, job: KnownJob): Ask[] {
  const isSpread = job.kind === "granules";
  const first = isSpread ? { first: SPREAD } : {};
  const more = (name: string, rest: Omit<Ask, "path"> = {}): Ask =>
    ask(`${at}.${name}`, { ...rest, more: true });
  const form = ask(`${at}.form`, {
    label: ["How is it measured?", "¿Cómo se mide?"],
    options: {
      liquid: ["By volume (liquid)", "Por volumen (líquido)"],
      dry: ["By weight (dry)", "Por peso (seco)"],
    },
  });
  return [
    ask(`${at}.name`),
    ...(isSpread ? [] : [form]),
    ask(`${at}.rate`, job.kind === "tank" ? { first: PERCENT } : first),
    more("label.max", first),
    ...(isSpread ? [more("bag", { first: HEAVY })] : []),
    ...(isSpread || isBySize(job) ? [] : [more("label.leastCarrier")]),
    ...(isBySize(job)
      ? []
      : [more("label.seasonMax", first), more("soFar.rate", { ...first, label: NOT_RECORDED })]),
    ...["registration", "reEntryHours", "preHarvestDays"].map((name) => more(name)),
  ];
}

/** The parts of the form for a job, in order. */
export function stepsOf(job: KnownJob): Step[] {
  const part = (path: string, title: Text, fields: readonly Ask[], hint?: Text): Step => ({
    path,
    title,
    asks: fields,
    hint,
  });
  const isSpread = job.kind === "granules";
  const products = Array.from({ length: job.products }, (_, i): Step => {
    const number = job.products === 1 ? "" : ` ${i + 1}`;
    const path = isSpread ? "product" : `products[${i}]`;
    return part(path, [`Product${number}`, `Producto${number}`], productAsks(path, job));
  });
  const size = JOBS[job.kind].size(job);
  const plot = part("plot", ["Plot", "Parcela"], size);
  if (isSpread)
    return [
      plot,
      part("spreader", ["Spreader", "Esparcidora"], asks("spreader.hopper", "spreader.directions")),
      ...products,
      part("test", ["Spreader test", "Prueba"], asks("test.used", "test.distance", "test.swath"), [
        "Spread a measured strip and weigh what that took.",
        "Esparza una franja medida y pese lo que se usó.",
      ]),
    ];
  const calibration = [calibrationQuestion(job), ...calibrationAsks(job)];
  const hint = calibrationOf(job) === "strip" ? STRIP_HINT : undefined;
  return [
    ...(isBySize(job)
      ? [part("size", ["Size of the job", "Tamaño del trabajo"], size)]
      : [plot, part("calibration", ["Calibration", "Calibración"], calibration, hint)]),
    part(
      "sprayer",
      ["Sprayer", "Aspersora"],
      asks("sprayer.tank", "sprayer.workingFill", "sprayer.marks", "sprayer.lineVolume", "reserve.percent"),
    ),
    ...products,
    part("tools", ["Measuring tools", "Utensilios de medir"], asks("tools")),
  ];
}
