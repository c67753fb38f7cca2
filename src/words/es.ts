import { frozen } from "../frozen.js";
import { perNutrient } from "../worksheet/words/line-table.js";
import type { Messages, ToolNames } from "../worksheet/words/messages.js";

// Translated by the authors, not certified: the label's language decides. The terms and their sources: docs/words.md.

const MIX = "mezcla total por preparar";
const ALL_LOADS = "mezcla total";
const MARK_STEP = "volumen entre marcas";
// Each dimension, as a message asks for it.
const DIMENSIONS = {
  length: "un largo",
  area: "un área",
  volume: "un volumen",
  mass: "un peso",
  time: "un tiempo",
  pressure: "una presión",
  fraction: "una fracción",
  count: "un número de plantas",
  speed: "una velocidad",
  flow: "un volumen por tiempo",
  massFlow: "un peso por tiempo",
  volumeRate: "un volumen por área",
  massRate: "un peso por área",
  density: "un peso por volumen",
  volumeConcentration: "un volumen en un volumen",
  massFraction: "un peso en un peso",
  volumePerLength: "un volumen por largo",
  massPerLength: "un peso por largo",
  volumePerCount: "un volumen por planta",
  massPerCount: "un peso por planta",
};
const BESIDES = { lines: "mezcla que queda en las mangueras", reserve: "mezcla extra" };
const FULL_MARK = "tanque lleno (marca más alta)";
const LAST_LOAD = "lo que debe llevar la última carga";
const LOAD_HOLDS = "lo que debe llevar la carga";
const MARKED = "mezcla total, con cada carga en una marca";
const SPRAYED = "mezcla necesaria";
const RATE = "volumen de aplicación";
const TREATED = "área tratada";
const GROUND = "área del terreno";
const PART = "parte tratada del terreno";
const ROW_SPACING = "distancia entre hileras";
const ROW_LENGTH = "largo de la hilera";
const PLANT_SPACING = "distancia entre plantas";
const BAND = "ancho de la banda";
const SWATH = "ancho de la pasada";
const DISTANCE = "distancia recorrida";
const USED = "cantidad usada";
const SPEED = "velocidad";
const TOTAL_CATCH = "total recogido";
const CATCH_TIME = "tiempo en que se recogió";
const WIDTH = "ancho tratado";
const NOZZLE_SPACING = "distancia entre boquillas";
const NOZZLES = "número de boquillas";
const ROWS = "número de hileras";
const STRENGTH = "producto por unidad de mezcla";
const CONTENT = "ingrediente activo en el producto";
const DENSITY = "peso del producto por volumen";
const NEEDED = "cantidad necesaria";
const MEASURED = "cantidad medida";
const COMBINED = "incertidumbre estándar combinada, como fracción del volumen de aplicación";
const SPREADER_RATE = "dosis que echa la esparcidora";
const SPREAD = "cantidad esparcida";
const TARGET = "dosis buscada";
const DIRECTIONS = "número de direcciones";
const TO_CATCH = "cantidad por recoger";
const TO_SPREAD = "producto por esparcir";
const PRODUCT_RATE = "dosis del producto";
const PER_DIRECTION = "producto para una dirección";
const HOPPER = "una tolva";
const HOPPER_FILLS = "llenados de la tolva en una dirección";
const BAGS = "sacos por comprar";
const BAG = "un saco";
const FERTILIZER = "fertilizante";
const NUTRIENTS = {
  N: "nitrógeno (N)",
  P2O5: "fosfato (P2O5)",
  K2O: "potasa (K2O)",
  P: "fósforo (P)",
  K: "potasio (K)",
  S: "azufre (S)",
  SO3: "trióxido de azufre (SO3)",
  Mg: "magnesio (Mg)",
  MgO: "óxido de magnesio",
  Ca: "calcio (Ca)",
  CaO: "óxido de calcio",
};
const EACH = "mezcla por unidad";
const COUNT = "cuántas unidades son";
const PIECE = "mezcla por hilera o parcela";
const PIECES = "número de hileras o parcelas";
const MOST = "hileras o parcelas para las que alcanza un tanque lleno";
const PER_LOAD = "hileras o parcelas enteras por carga";
const PER_LENGTH = "mezcla por largo de hilera";
const PART_OF_MIX = "parte de la mezcla que es producto";
const RATIO = { parts: "partes de producto", whole: "partes de mezcla" };
const WHOLE_UNIT = "lo que sería el 100%";
const TOTAL_PRODUCT = "producto total";

const DILUTE = "volumen diluido por área";
const CONCENTRATE = "volumen concentrado por área";
const FACTOR = "factor de concentración";
const DILUTE_STRENGTH = "producto por unidad de mezcla diluida";
const STOCK = "solución madre";
const STOCK_STRENGTH = "producto por unidad de solución madre";
const PARTS = "partes de solución madre";
const WHOLE = "partes de solución final";

const injected = {
  strength: STOCK_STRENGTH,
  parts: PARTS,
  percent: "error del inyector, %",
  water: "partes de agua",
};
const drawn = { caught: "cantidad recogida", drawn: "solución madre inyectada" };
const rows = { rows: ROWS, rowLength: ROW_LENGTH, x: "largo de la hilera {n}" };
const beds = { beds: "número de camas", bedLength: "largo de la cama", x: "largo de la cama {n}" };
const strips = { stripWidth: "ancho de la franja de un lado", sides: "lados tratados de cada hilera" };
const treeRow = { used: USED, sides: "lados tratados", rowLength: ROW_LENGTH };

const words = <T extends string>(
  found: string,
  terms: Readonly<Record<T, string>>,
): { readonly found: string; readonly terms: Readonly<Record<T, string>> } => ({ found, terms });
const flow = { flow: "descarga", caught: "cantidad recogida", catchTime: CATCH_TIME };
const deviations = (what: string): Record<"x" | "mean" | "n", string> => ({
  x: what,
  mean: "promedio",
  n: "cuántos son",
});
/** A part of an uncertainty: `de` and `el` are one word. */
const part = (what: string): ReturnType<typeof words<"w" | "u" | "x">> =>
  words(`incertidumbre por ${what}, como fracción del volumen de aplicación`, {
    w: "influencia de la lectura {n} en el volumen de aplicación",
    u: `incertidumbre estándar de ${what}, lectura {n}`.replace("de el ", "del "),
    x: `${what}, lectura {n}`,
  });
const changed = (what: string): ReturnType<typeof words<"before" | "now">> =>
  words(`factor por ${what}`, { before: `${what} en la calibración`, now: `${what} ahora` });
const fraction = (name: string): ToolNames => ({ one: name, other: `medidas de ${name}` });
const plural = (one: string, other: string): ToolNames => ({ one, other });
/** A tool that is read at a mark, with its article: all of them are feminine. */
const marked = (one: string, other: string): ToolNames => ({ one, other, the: `la ${one}` });

/**
 * Worksheet, field card, warnings and errors in Spanish, as most farm workers in the United States read it.
 *
 * Translated by the authors of this library and not certified: the label's language decides. The terms are those of the
 * Spanish material of extension services and ministries; sources and choices are in the guide page about words.
 *
 * @example
 * ```ts
 * import { planApplication, qty } from "swath-to-spoon";
 * import { SPANISH_WORDS } from "swath-to-spoon/words/es";
 * import { fieldCard } from "swath-to-spoon/worksheet";
 *
 * const plan = planApplication({
 *   plot: { kind: "rectangle", length: qty(121, "ft"), width: qty(90, "ft") },
 *   calibration: { kind: "strip", used: qty(64, "fl_oz"), swath: qty(4, "ft"), distance: qty(272.25, "ft") },
 *   sprayer: { tank: qty(4, "gal") },
 *   products: [{ name: "Product A", form: "liquid", rate: qty(2, "pt/ac") }],
 *   tools: "us-cups-and-spoons",
 * });
 * const card = fieldCard(plan, { words: SPANISH_WORDS, locale: "es-US" });
 * console.log(card.loads[1]?.steps[1]); // Product A: 1.6 onzas líquidas. Mida 3 cucharadas + 1/2 cucharadita (1% de menos).
 * ```
 */
export const SPANISH_WORDS: Messages = /* @__PURE__ */ frozen(
  (() => ({
    language: "es",
    lines: {
      "units.convert": words("la misma cantidad en otra unidad", {
        value: "cantidad",
        size: "factor de conversión",
      }),
      "area.rectangle": words(GROUND, { length: "largo", width: "ancho" }),
      "area.triangle": words(GROUND, { base: "base", height: "altura sobre la base" }),
      "area.triangle.sides": words(GROUND, { a: "lado más largo", b: "lado mediano", c: "lado más corto" }),
      "area.trapezoid": words(GROUND, {
        base: "un lado paralelo",
        top: "el otro lado paralelo",
        height: "distancia entre los dos",
      }),
      "area.circle": words(GROUND, { diameter: "diámetro" }),
      "area.ellipse": words(GROUND, { length: "largo total", width: "ancho en el centro" }),
      "area.ring": words(GROUND, { outerDiameter: "diámetro exterior", innerDiameter: "diámetro interior" }),
      "area.sector": words(GROUND, { angleDegrees: "ángulo en grados", radius: "radio" }),
      "area.composite": words(GROUND, { x: "figura {n}", y: "figura {n} que se descuenta" }),
      "area.boundary": words(GROUND, { x: "esquina {n}, a lo ancho", y: "esquina {n}, hacia adelante" }),
      "area.offsets": words(GROUND, {
        spacing: "distancia entre estaciones",
        x: "medida lateral en la estación {n}",
      }),
      "area.unequalOffsets": words(GROUND, {
        a: "estación {n} sobre la línea base",
        x: "medida lateral en la estación {n}",
      }),
      "area.treatPart": words(TREATED, { ground: GROUND, fraction: PART }),
      "area.treatedFraction": words(PART, { treated: TREATED, ground: GROUND }),
      "area.rowBands.ground": words(GROUND, { ...rows, rowSpacing: ROW_SPACING }),
      "area.rowBands.fraction": words(PART, { bandWidth: BAND, rowSpacing: ROW_SPACING }),
      "area.rowBands.treated": words(TREATED, { ...rows, bandWidth: BAND }),
      "area.beds.ground": words(GROUND, { ...beds, bedSpacing: "distancia entre camas" }),
      "area.beds.fraction": words(PART, {
        bedWidth: "ancho de la cama",
        bedSpacing: "distancia entre camas",
      }),
      "area.beds.treated": words(TREATED, { ...beds, bedWidth: "ancho de la cama" }),
      "area.treeRows.ground": words(GROUND, { ...rows, rowSpacing: ROW_SPACING }),
      "area.treeRows.fraction": words(PART, { ...strips, rowSpacing: ROW_SPACING }),
      "area.treeRows.treated": words(TREATED, { ...rows, ...strips }),
      "area.spots": words(TREATED, {
        n: "manchones del tamaño {n}",
        d: "diámetro del tamaño {n}",
        x: "área de un manchón del tamaño {n}",
        a: "largo del tamaño {n}",
        b: "ancho del tamaño {n}",
      }),
      "area.rowLength": words("largo de todas las hileras", { ground: GROUND, rowSpacing: ROW_SPACING }),
      "area.plantedGround": words(GROUND, {
        plants: "número de plantas",
        rowSpacing: ROW_SPACING,
        plantSpacing: PLANT_SPACING,
      }),
      "area.plantCount": words("número de plantas", {
        ground: GROUND,
        rowSpacing: ROW_SPACING,
        plantSpacing: "distancia entre plantas en la hilera",
      }),
      "area.cropRate": words("dosis por área del terreno", {
        treatedRate: "dosis por área tratada",
        bandWidth: BAND,
        rowSpacing: ROW_SPACING,
      }),
      "area.treatedRate": words("dosis por área tratada", {
        cropRate: "dosis por área del terreno",
        bandWidth: BAND,
        rowSpacing: ROW_SPACING,
      }),
      "swath.boom": words("ancho tratado por el aguilón", {
        nozzles: NOZZLES,
        nozzleSpacing: NOZZLE_SPACING,
      }),
      "swath.bands.ground": words("ancho de terreno de una pasada", {
        bands: "bandas en una pasada",
        rowSpacing: ROW_SPACING,
      }),
      "swath.bands.treated": words("ancho tratado de todas las bandas", {
        bands: "bandas en una pasada",
        bandWidth: BAND,
      }),
      "swath.perNozzle": words("ancho que cubre una boquilla", {
        width: "ancho que comparten las boquillas",
        nozzles: NOZZLES,
      }),
      "swath.treeRow": words("ancho de terreno de una pasada", {
        rowSpacing: ROW_SPACING,
        sides: "lados abiertos de la aspersora",
      }),
      "swath.effective": words("ancho efectivo de una pasada", {
        width: "ancho medido de una pasada",
        overlap: "traslape",
      }),
      "swath.passes.count": words("número de pasadas", {
        side: "lado de la parcela que cruza las pasadas",
        swath: SWATH,
        overlap: "traslape previsto",
      }),
      "swath.passes.lastOverlap": words("traslape de la última pasada", {
        side: "lado de la parcela que cruza las pasadas",
        swath: SWATH,
        overlap: "traslape previsto",
        passes: "número de pasadas",
      }),
      "swath.passes.pastEdge": words("ancho que se sale de la orilla de la parcela", {
        side: "lado de la parcela que cruza las pasadas",
        swath: SWATH,
      }),
      "swath.passes.distance": words("distancia recorrida aplicando", {
        passes: "número de pasadas",
        run: "largo de una pasada",
      }),
      "swath.passes.time": words("tiempo de aplicación", {
        distance: "distancia recorrida aplicando",
        speed: SPEED,
      }),
      "swath.boomHeight": words("altura del aguilón sobre el blanco", {
        nozzleSpacing: NOZZLE_SPACING,
        overlap: "traslape como fracción de la distancia entre boquillas",
        angleDegrees: "ángulo del abanico, en grados",
      }),
      "swath.fanWidth": words("ancho de un abanico en el blanco", {
        height: "altura del aguilón sobre el blanco",
        angleDegrees: "ángulo del abanico, en grados",
      }),
      "swath.overlap": words("traslape como fracción de la distancia entre boquillas", {
        fanWidth: "ancho de un abanico",
        nozzleSpacing: NOZZLE_SPACING,
      }),
      "swath.gap": words("franja sin aplicar entre dos abanicos", {
        fanWidth: "ancho de un abanico",
        nozzleSpacing: NOZZLE_SPACING,
      }),
      "swath.uniformity.mean": words("promedio de mezcla en el suelo", {
        w: "ancho de la franja {n} en distancias entre recipientes",
        x: "mezcla en la franja {n}",
      }),
      "swath.uniformity.cv": words("coeficiente de variación", {
        w: "ancho de la franja {n} en distancias entre recipientes",
        x: "mezcla en la franja {n}",
        mean: "promedio de mezcla en el suelo",
      }),
      "output-rate.strip": words("volumen de aplicación en la franja de prueba", {
        used: USED,
        swath: SWATH,
        distance: DISTANCE,
      }),
      "output-rate.strip-runs": words("promedio de las pruebas", {
        x: "volumen de aplicación de la prueba {n}",
        n: "número de pruebas",
      }),
      "output-rate.strip-runs-spread": words(
        "desviación estándar de las pruebas",
        deviations("volumen de aplicación de la prueba {n}"),
      ),
      "output-rate.strip-runs-cv": words("coeficiente de variación de las pruebas", {
        spread: "desviación estándar de las pruebas",
        mean: "promedio de las pruebas",
      }),
      "output-rate.catch-total": words(TOTAL_CATCH, { x: "lo recogido de la boquilla {n}" }),
      "output-rate.catch": words("volumen de aplicación según lo recogido", {
        total: TOTAL_CATCH,
        time: CATCH_TIME,
        rows: "número de boquillas o hileras",
        width: "ancho por boquilla o hilera",
        speed: SPEED,
        travelTime: "tiempo del recorrido",
        travelled: "distancia marcada",
      }),
      "output-rate.speed": words(SPEED, { distance: "distancia", time: "tiempo" }),
      "output-rate.time-for": words("tiempo para la distancia", { distance: "distancia", speed: SPEED }),
      "output-rate.average-speed-distance": words("distancia total de las pasadas", {
        x: "distancia de la pasada {n}",
      }),
      "output-rate.average-speed-time": words("tiempo total de las pasadas", {
        x: "tiempo de la pasada {n}",
      }),
      "output-rate.flow": words("descarga", { caught: "cantidad recogida", time: CATCH_TIME }),
      "output-rate.average-flow-caught": words(TOTAL_CATCH, { x: "lo recogido en la prueba {n}" }),
      "output-rate.average-flow-time": words("tiempo total de las pruebas", { x: "tiempo de la prueba {n}" }),
      "output-rate.plant-volume": words("volumen por planta", { ...flow, time: "tiempo en cada planta" }),
      "output-rate.plant-time": words("tiempo en cada planta", { ...flow, volume: "volumen por planta" }),
      "output-rate.spray-time": words("tiempo de aplicación", { ...flow, volume: "volumen por aplicar" }),
      "output-rate.cover-time": words("tiempo para la parcela", {
        area: TREATED,
        width: SWATH,
        speed: SPEED,
        travelTime: "tiempo del recorrido",
        travelled: "distancia marcada",
        efficiency: "tiempo en que se aplica, %",
      }),
      "output-rate.rate-at-speed": words("volumen de aplicación a la velocidad nueva", {
        rate: "volumen de aplicación a la velocidad anterior",
        speed: "velocidad anterior",
        newSpeed: "velocidad nueva",
      }),
      "output-rate.direct-strip-area": words(
        "área en que una unidad recogida es una unidad del volumen de aplicación",
        {
          caught: "una unidad recogida",
          rate: "una unidad de volumen de aplicación",
        },
      ),
      "output-rate.direct-strip": words("distancia en que lo recogido se lee como volumen de aplicación", {
        area: "área en que una unidad recogida es una unidad del volumen de aplicación",
        width: WIDTH,
      }),
      "output-rate.direct-strip-rate": words("volumen de aplicación leído de lo recogido", {
        caught: "lo recogido en el tiempo de la franja",
        reading: "volumen de aplicación por unidad recogida",
      }),
      "output-rate.tree-row-length": words("volumen por largo de hilera", treeRow),
      "output-rate.tree-row-plant": words("volumen por planta", { ...treeRow, plantSpacing: PLANT_SPACING }),
      "output-rate.tree-row": words("volumen por área", { ...treeRow, rowSpacing: ROW_SPACING }),
      "output-rate.tree-row-volume": words("volumen de copa por área", {
        height: "altura de la copa",
        width: "ancho de la copa",
        rowSpacing: ROW_SPACING,
      }),
      "output-rate.dilute-rate": words("volumen diluido por área", {
        canopy: "volumen de copa por área",
        spray: "mezcla por volumen de copa",
      }),
      "output-rate.per-plant": words("cantidad por planta", {
        rate: "cantidad por área",
        rowSpacing: ROW_SPACING,
        plantSpacing: PLANT_SPACING,
        ground: GROUND,
        plants: "número de plantas",
      }),
      "output-rate.hand-area": words("volumen por área", {
        used: USED,
        area: TREATED,
        rowLength: ROW_LENGTH,
        plants: "número de plantas",
        plantSpacing: PLANT_SPACING,
        rowSpacing: ROW_SPACING,
      }),
      "output-rate.hand-length": words("volumen por largo de hilera", {
        used: USED,
        rowLength: ROW_LENGTH,
        plants: "número de plantas",
        plantSpacing: PLANT_SPACING,
      }),
      "output-rate.hand-plant": words("volumen por planta", {
        used: USED,
        plants: "número de plantas",
        rowLength: ROW_LENGTH,
        plantSpacing: PLANT_SPACING,
      }),
      "output-rate.solve-rate": words(RATE, { flow: "descarga", speed: SPEED, width: WIDTH }),
      "output-rate.solve-flow": words("descarga", { rate: RATE, speed: SPEED, width: WIDTH }),
      "output-rate.solve-speed": words(SPEED, { flow: "descarga", rate: RATE, width: WIDTH }),
      "output-rate.solve-width": words(WIDTH, { flow: "descarga", rate: RATE, speed: SPEED }),
      "output-rate.output-at-pressure": words("descarga a la presión nueva", {
        output: "descarga a la presión anterior",
        newPressure: "presión nueva",
        pressure: "presión anterior",
      }),
      "output-rate.pressure-for-output": words("presión para la descarga nueva", {
        pressure: "presión actual",
        newOutput: "descarga nueva",
        output: "descarga actual",
      }),
      "output-rate.density-factor": words("factor de densidad", {
        density: "densidad del líquido",
        waterDensity: "densidad del agua",
      }),
      "output-rate.water-for-solution": words("descarga con agua", {
        solution: "descarga de la solución",
        factor: "factor de densidad",
      }),
      "output-rate.solution-for-water": words("descarga de la solución", {
        water: "descarga de agua",
        factor: "factor de densidad",
      }),
      "output-rate.nozzle-flow": words("descarga de la boquilla", {
        caught: "cantidad recogida",
        time: CATCH_TIME,
      }),
      "output-rate.nozzle-mean": words("descarga promedio por boquilla", {
        x: "descarga de la boquilla {n}",
        n: NOZZLES,
      }),
      "output-rate.nozzle-deviation": words("desviación de la boquilla", {
        flow: "descarga de la boquilla",
        reference: "descarga con que se compara",
      }),
      "output-rate.nozzle-spread": words(
        "desviación estándar de las boquillas",
        deviations("descarga de la boquilla {n}"),
      ),
      "output-rate.nozzle-cv": words("coeficiente de variación del aguilón", {
        spread: "desviación estándar de las boquillas",
        mean: "descarga promedio por boquilla",
      }),
      "output-rate.target-check": words("desviación de lo buscado", {
        rate: "lo medido en la prueba",
        target: "lo buscado",
      }),
      "output-rate.spreader-strip": words(SPREADER_RATE, {
        used: SPREAD,
        swath: SWATH,
        distance: DISTANCE,
      }),
      "output-rate.spreader-area": words(SPREADER_RATE, { used: SPREAD, area: "área de la prueba" }),
      "output-rate.spreader-row": words("dosis que echa la esparcidora por largo de hilera", {
        used: SPREAD,
        rowLength: ROW_LENGTH,
      }),
      "output-rate.spreader-pass": words("dosis buscada en una dirección", {
        target: TARGET,
        directions: DIRECTIONS,
      }),
      "output-rate.spreader-catch-strip": words(TO_CATCH, {
        target: TARGET,
        swath: SWATH,
        distance: DISTANCE,
        directions: DIRECTIONS,
      }),
      "output-rate.spreader-catch-area": words(TO_CATCH, {
        target: TARGET,
        area: "área de la prueba",
        directions: DIRECTIONS,
      }),
      "output-rate.spreader-catch-row": words(TO_CATCH, {
        target: TARGET,
        rowLength: ROW_LENGTH,
        directions: DIRECTIONS,
      }),
      "output-rate.resolution": words("incertidumbre estándar de una lectura", {
        resolution: "paso más chico que se puede leer",
      }),
      "output-rate.uncertainty-used": part("la cantidad usada"),
      "output-rate.uncertainty-swath": part("el ancho de la pasada"),
      "output-rate.uncertainty-distance": part("la distancia"),
      "output-rate.uncertainty-caught": part("la cantidad recogida"),
      "output-rate.uncertainty-catches": part("lo recogido de una boquilla"),
      "output-rate.uncertainty-time": part("el tiempo"),
      "output-rate.uncertainty-speed": part("la velocidad"),
      "output-rate.uncertainty-width": part("el ancho tratado"),
      "output-rate.uncertainty-area": part("el área tratada"),
      "output-rate.uncertainty-rowLength": part("el largo de la hilera"),
      "output-rate.uncertainty-rowSpacing": part("la distancia entre hileras"),
      "output-rate.uncertainty-plantSpacing": part("la distancia entre plantas"),
      "output-rate.uncertainty-flow": part("la descarga"),
      "output-rate.uncertainty-rate": part("el volumen de aplicación conocido"),
      "output-rate.uncertainty-scatter": words(
        "incertidumbre por la variación de las pruebas, como fracción del volumen de aplicación",
        {
          spread: "desviación estándar de las pruebas",
          mean: "promedio de las pruebas",
          n: "número de pruebas",
        },
      ),
      "output-rate.uncertainty-relative": words(COMBINED, { p: "incertidumbre por la fuente {n}" }),
      "output-rate.uncertainty": words("incertidumbre estándar combinada del volumen de aplicación", {
        rate: RATE,
        relative: COMBINED,
      }),
      "output-rate.changed-nozzleSpacing": changed("la distancia entre boquillas"),
      "output-rate.changed-pressure": changed("la presión"),
      "output-rate.changed-speed": changed("la velocidad"),
      "output-rate.changed-density": changed("la densidad del líquido"),
      "output-rate.changed": words("volumen de aplicación esperado", {
        rate: "volumen de aplicación medido",
        x: "factor {n}",
      }),
      "tank-mix.sprayed": words(SPRAYED, { rate: RATE, area: TREATED }),
      "tank-mix.each": words(EACH, {
        used: "agua usada en la prueba",
        plants: "unidades de la prueba",
      }),
      "tank-mix.perLength": words(PER_LENGTH, {
        used: "agua usada en la prueba",
        length: "largo de hilera de la prueba",
      }),
      "tank-mix.batchOfCount": words(SPRAYED, { each: EACH, count: COUNT }),
      "tank-mix.batchOfRow": words(SPRAYED, {
        rate: PER_LENGTH,
        length: "largo de todas las hileras",
      }),
      "tank-mix.reserve": words("mezcla extra", { sprayed: SPRAYED, percent: "porcentaje extra" }),
      "tank-mix.carrier": words(MIX, {
        sprayed: SPRAYED,
        lines: "mezcla que queda en las mangueras",
        reserve: "mezcla extra",
      }),
      "tank-mix.carrierSteps": words("número de pasos de redondeo", {
        sprayed: SPRAYED,
        lines: "mezcla que queda en las mangueras",
        step: "paso de redondeo",
      }),
      "tank-mix.carrierRounded": words(MIX, {
        times: "número de pasos de redondeo",
        step: "paso de redondeo",
      }),
      "tank-mix.fills": words("número de llenados del tanque", {
        total: MIX,
        fill: "llenado del tanque",
        full: FULL_MARK,
      }),
      "tank-mix.loads": words("número de cargas", { fills: "número de llenados del tanque" }),
      "tank-mix.piece": words(PIECE, { total: MIX, ...BESIDES, pieces: PIECES }),
      "tank-mix.most": words(MOST, { fill: "llenado del tanque", full: FULL_MARK, ...BESIDES, piece: PIECE }),
      "tank-mix.perLoad": words(PER_LOAD, {
        most: MOST,
        pieces: PIECES,
        chosen: "lo más que se escogió para una carga",
      }),
      "tank-mix.loadsOfPieces": words("número de cargas", { pieces: PIECES, perLoad: PER_LOAD }),
      "tank-mix.fullMarkSteps": words("marcas hasta el llenado del tanque", {
        fill: "llenado del tanque",
        step: MARK_STEP,
      }),
      "tank-mix.fullMark": words(FULL_MARK, {
        times: "marcas hasta el llenado del tanque",
        step: MARK_STEP,
      }),
      "tank-mix.equalLoad": words("lo que debe llevar cada carga", {
        total: MIX,
        loads: "número de cargas",
      }),
      "tank-mix.rest": words(LAST_LOAD, { total: MIX, full: FULL_MARK, loads: "número de cargas" }),
      "tank-mix.lent": words("lo que debe llevar la penúltima carga", {
        full: FULL_MARK,
        rest: LAST_LOAD,
        last: "última carga, hasta su marca",
      }),
      "tank-mix.loadOfPieces": words(LOAD_HOLDS, {
        pieces: "hileras o parcelas en la carga",
        piece: PIECE,
        ...BESIDES,
      }),
      "tank-mix.markSteps": words("marcas hasta la carga", { load: LOAD_HOLDS, step: MARK_STEP }),
      "tank-mix.mark": words("marca hasta donde se llena", {
        times: "marcas hasta la carga",
        step: MARK_STEP,
      }),
      "tank-mix.markedTotal": words(MARKED, {
        n: "número de cargas del tamaño {n}",
        x: "carga del tamaño {n}",
      }),
      "tank-mix.toMark": words("mezcla extra para llegar a las marcas", { marked: MARKED, total: MIX }),
      "tank-mix.productRate": words("dosis del producto", {
        activeIngredient: "dosis de ingrediente activo",
        content: CONTENT,
        density: DENSITY,
      }),
      "tank-mix.activeIngredient": words("dosis de ingrediente activo", {
        product: "dosis del producto",
        content: CONTENT,
        density: DENSITY,
      }),
      "tank-mix.strength": words(STRENGTH, { rate: PRODUCT_RATE, carrierRate: RATE }),
      "tank-mix.strengthOfCount": words(STRENGTH, { rate: "producto por unidad", carrierRate: EACH }),
      "tank-mix.strengthOfLength": words(STRENGTH, {
        rate: "producto por largo de hilera",
        carrierRate: PER_LENGTH,
      }),
      "tank-mix.strengthByGround": words(STRENGTH, {
        rate: "dosis del producto por área del terreno",
        ground: GROUND,
        carrierRate: RATE,
        area: TREATED,
      }),
      "tank-mix.strengthByRow": words(STRENGTH, {
        rate: "dosis del producto por largo de hilera",
        rowLength: "largo de todas las hileras",
        carrierRate: RATE,
        area: TREATED,
      }),
      "tank-mix.strengthOfPart": words(STRENGTH, { part: PART_OF_MIX, size: WHOLE_UNIT }),
      "tank-mix.strengthOfRatio": words(STRENGTH, { ...RATIO, size: WHOLE_UNIT }),
      "tank-mix.amount": words(TOTAL_PRODUCT, { strength: STRENGTH, carrier: ALL_LOADS }),
      "tank-mix.amountOfPart": words(TOTAL_PRODUCT, { part: PART_OF_MIX, carrier: ALL_LOADS }),
      "tank-mix.amountOfRatio": words(TOTAL_PRODUCT, { ...RATIO, carrier: ALL_LOADS }),
      "tank-mix.amountInLoad": words("producto en la carga", {
        amount: TOTAL_PRODUCT,
        carrier: "mezcla en la carga",
        total: ALL_LOADS,
      }),
      "tank-mix.water": words("agua en la carga", { mix: "mezcla en la carga", x: "producto líquido {n}" }),
      "tank-mix.lacking": words("producto que falta", {
        product: "producto en la mezcla",
        added: "agua agregada",
        mix: "mezcla a su concentración completa",
      }),
      "tank-mix.strengthLeft": words("concentración que queda", {
        mix: "mezcla a su concentración completa",
        added: "agua agregada",
      }),
      "tank-mix.weakBy": words("concentración perdida", {
        mix: "mezcla a su concentración completa",
        added: "agua agregada",
      }),
      "tank-mix.leftoverArea": words("área que alcanza a cubrir el sobrante", {
        volume: "mezcla sobrante",
        rate: RATE,
      }),
      "tank-mix.take": words("concentrado por medir", {
        volume: "volumen por preparar",
        to: "concentración final",
        from: "concentración del concentrado",
      }),
      "tank-mix.dilutionWater": words("agua por agregar", {
        volume: "volumen por preparar",
        take: "concentrado por medir",
      }),
      "tank-mix.stock": words("solución madre por medir", {
        volume: "solución madre total",
        dose: "producto necesario",
        amount: "producto en la solución madre",
      }),
      "tank-mix.concentrateFactor": words(FACTOR, { dilute: DILUTE, concentrate: CONCENTRATE }),
      "tank-mix.concentrateRate": words(CONCENTRATE, { dilute: DILUTE, factor: FACTOR }),
      "tank-mix.concentratePerArea": words("producto por área", {
        strength: DILUTE_STRENGTH,
        dilute: DILUTE,
      }),
      "tank-mix.concentrateStrength": words(STRENGTH, { strength: DILUTE_STRENGTH, factor: FACTOR }),
      "tank-mix.injectorFinished": words("solución final", { stock: STOCK, whole: WHOLE, parts: PARTS }),
      "tank-mix.injectorStock": words(STOCK, { finished: "solución final", whole: WHOLE, parts: PARTS }),
      "tank-mix.stockStrength": words(STOCK_STRENGTH, { product: TOTAL_PRODUCT, stock: STOCK }),
      "tank-mix.injectedStrength": words("producto por unidad de solución final", {
        stock: STOCK_STRENGTH,
        whole: WHOLE,
        parts: PARTS,
      }),
      "tank-mix.injectedLow": words("concentración si se inyecta de menos", injected),
      "tank-mix.injectedHigh": words("concentración si se inyecta de más", injected),
      "tank-mix.injectorRatio": words("partes por una parte de solución madre", drawn),
      "tank-mix.injectorOff": words("diferencia con la concentración fijada", {
        ...drawn,
        whole: WHOLE,
        parts: PARTS,
      }),
      "tank-mix.rinse": words("concentración que queda en la aspersora", {
        residual: "volumen que queda en la aspersora",
        water: "agua limpia por enjuague",
        rinses: "número de enjuagues",
      }),
      "tank-mix.jarAmount": words("producto en el frasco", {
        amount: "producto en la mezcla",
        jar: "mezcla en el frasco",
        mix: "mezcla en el tanque",
      }),
      "tank-mix.granules-area": words(TO_SPREAD, { rate: PRODUCT_RATE, area: TREATED }),
      "tank-mix.granules-rowLength": words(TO_SPREAD, {
        rate: PRODUCT_RATE,
        rowLength: "largo de todas las hileras",
      }),
      "tank-mix.granules-plants": words(TO_SPREAD, { rate: PRODUCT_RATE, plants: COUNT }),
      "tank-mix.granules-cover": words("área que alcanza a cubrir", {
        amount: "cantidad de producto",
        rate: PRODUCT_RATE,
      }),
      "tank-mix.hopper-direction": words(PER_DIRECTION, { total: TO_SPREAD, directions: DIRECTIONS }),
      "tank-mix.hopper-fills": words(HOPPER_FILLS, { perDirection: PER_DIRECTION, hopper: HOPPER }),
      "tank-mix.hopper-last": words("último llenado de la tolva", {
        perDirection: PER_DIRECTION,
        fills: HOPPER_FILLS,
        hopper: HOPPER,
      }),
      "tank-mix.bags": words(BAGS, { total: TO_SPREAD, bag: BAG }),
      "tank-mix.bags-left": words("sobrante en el último saco", { bags: BAGS, bag: BAG, total: TO_SPREAD }),
      "tank-mix.nutrient-content": words("contenido del nutriente que hace falta", {
        content: "contenido declarado",
        parts: "peso del elemento",
        whole: "peso del óxido",
      }),
      "tank-mix.nutrient-convert": words("el mismo nutriente, convertido", {
        amount: "cantidad del nutriente",
        parts: "peso del elemento",
        whole: "peso del óxido",
      }),
      ...perNutrient("tank-mix.fertilizer-", NUTRIENTS, (nutrient) =>
        words(FERTILIZER, {
          nutrient: `${nutrient} que hace falta`,
          content: `contenido de ${nutrient}`,
        }),
      ),
      ...perNutrient("tank-mix.nutrient-", NUTRIENTS, (nutrient) =>
        words(`${nutrient} que aporta el fertilizante`, {
          product: FERTILIZER,
          content: `contenido de ${nutrient}`,
        }),
      ),
      "household.measured": words(MEASURED, {
        n: "número de {tools}",
        x: "contenido de: {tool}",
        t: "veces que se usa: {tool}",
        m: "lectura en: {tool}",
      }),
      "household.error": words("error de medición", { measured: MEASURED, amount: NEEDED }),
      "household.errorPercent": words("error de medición, %", { error: "error de medición", amount: NEEDED }),
      "household.rateError": words("error de medición por área tratada", {
        error: "error de medición",
        area: TREATED,
      }),
      "household.volumeOfWeight": words("volumen del producto seco", {
        mass: "peso del producto",
        density: "densidad aparente del producto",
      }),
      "household.stock.strength": words("concentración de la solución madre", {
        product: "producto en la solución madre",
        stock: "volumen total de la solución madre",
      }),
      "household.stock.part": words("solución madre que contiene la dosis", {
        amount: NEEDED,
        strength: "concentración de la solución madre",
      }),
      "household.stock.measured": words("cantidad medida de la solución madre", {
        strength: "concentración de la solución madre",
        taken: "solución madre tomada",
      }),
      "plan.treated": words("área tratada total", { x: "parcela {n}" }),
    },
    functions: {
      sqrt: "√({x})",
      ceil: "redondear hacia arriba({x})",
      floor: "redondear hacia abajo({x})",
      min: "el menor de({x})",
      max: "el mayor de({x})",
      sin: "sen({x})",
      cos: "cos({x})",
      tan: "tan({x})",
    },
    steps: {
      area: "Área tratada",
      rate: "Volumen de aplicación",
      size: "Mezcla para el trabajo",
      carrier: "Mezcla de aspersión",
      loads: "Cargas del tanque",
      product: "{product}",
      dose: "{product}: medida para la carga {load}",
      error: "{product}, carga {load}: cuánto se aparta la medida",
      fertilizer: "Fertilizante para el nutriente",
      amount: "Producto para el trabajo",
      hopper: "Llenados de la tolva",
      bags: "Sacos por comprar",
      test: "Prueba de la esparcidora",
    },
    cautions: {
      label:
        "La etiqueta es la ley. Si esta hoja y la etiqueta no dicen lo mismo, siga la etiqueta. Esta traducción no está certificada.",
      "clean-water":
        "Calibre con agua limpia. Llene primero la manguera y el aguilón, mida el agua que repone, y use la misma persona, paso, presión y boquillas que el día de la aplicación.",
      protection: "Use el equipo de protección personal que indica la etiqueta al medir, mezclar y aplicar.",
      drift:
        "Revise el viento antes y durante la aplicación, y no aplique cuando pueda llevar la deriva a personas, casas, agua, abejas u otros cultivos.",
      rinse:
        "Enjuague tres veces cada envase vacío de producto líquido y eche cada enjuague al tanque antes de completarlo con agua.",
      tools:
        "Marque las cucharas, tazas y jeringas que use para pesticidas y nunca las vuelva a usar para alimentos.",
      recalibrate:
        "Calibre de nuevo si cambia la persona, el paso, la presión, las boquillas, el terreno o la aspersora.",
      "local-rules":
        "Siga las reglas locales sobre qué se puede aplicar, quién lo puede aplicar y adónde pueden ir la mezcla sobrante y el agua de enjuague.",
      spreader:
        "Calibre con el mismo producto, a su paso habitual. Hágalo de nuevo si cambia la persona, el paso, el producto, el clima o el terreno.",
      "protection-spreading":
        "Use el equipo de protección personal que indica la etiqueta al pesar, llenar, esparcir y limpiar.",
      sweep:
        "Barra los gránulos de las superficies duras de vuelta a la parcela. Que no lleguen a desagües, zanjas ni agua.",
      "local-rules-spreading":
        "Siga las reglas locales sobre qué se puede esparcir, quién, cuándo y qué tan cerca del agua, y qué hacer con lo que sobra.",
    },
    issues: {
      "set-unreadable": "Este no es el número de una serie. Escriba uno como {example}.",
      "set-generation":
        "La serie {given} es de otra generación: esta versión hace series de la generación {expected}.",
      "topics-too-hard": "Todos estos temas son más difíciles que {given}. Agregue un tema más fácil.",
      "season-used-up":
        "Después de {done} {done:one=aplicación;other=aplicaciones} de {rate}, el límite de {limit} ya no permite ninguna más. Escriba menos aplicaciones.",
      "kind-twice": "{given} está dos veces, y cualquiera puede ir primero. Escríbalo una vez.",
      "corners-alike":
        "Con {count} {count:one=esquina distinta;other=esquinas distintas} no se encierra terreno. Anote al menos {limit}.",
      "boundary-crosses":
        "El lado de la esquina {a} a la {b} toca el lado de la {c} a la {d} en ({x}, {y}) {unit.unit}. Anote las esquinas en el orden en que las camina.",
      "no-ground-left": "No se puede descontar {taken} de {added}. Debe quedar algo de terreno.",
      latitude: "La latitud va de -90 a 90 grados. En GeoJSON la longitud va primero.",
      "places-many": "Anote {limit} puntos o menos, no {given}.",
      "hole-outside":
        "Este hueco queda fuera de su parcela. Anote primero el contorno de la parcela y después sus huecos; otra parcela es otro polígono.",
      "holes-too-large":
        "Los huecos son tan grandes como la parcela o más. Anote primero el contorno de la parcela y después sus huecos.",
      "places-alike":
        "Con {count} {count:one=punto distinto;other=puntos distintos} no se encierra terreno. Anote al menos {limit}.",
      "ring-crosses":
        "El lado del punto {a} al {b} toca el del {c} al {d} (contados desde 0). Anote los puntos en el orden en que los camina.",
      "list-short": 'Anote al menos {limit} en "{list.field}".',
      "simpson-even":
        "La regla de Simpson necesita un número impar de medidas; hay {given}. Use la regla del trapecio o mida una más.",
      "offsets-zero": "Todas las medidas son 0. Anote los anchos de la parcela.",
      "station-not-farther": "Debe estar más adelante que la estación anterior, en {before}.",
      "sides-apart":
        "Lados de {longest}, {second} y {third} no se juntan. Cada lado debe ser más corto que los otros dos sumados.",
      "hole-too-wide": "Debe ser menos que el diámetro exterior de {outer}.",
      "spots-over-ground":
        "Los manchones suman {treated}, más que el terreno ({ground}). Revise cuántos son y su tamaño.",
      "lengths-counted":
        "El número es {given}, pero anotó {lengths} {lengths:one=largo;other=largos}. Anote un largo para cada uno.",
      "treated-over-ground":
        "El área tratada ({treated}) es más que el terreno ({ground}). Cuente la parcela una vez aunque la trate dos veces.",
      "table-too-large":
        "Una tabla de {given} dosis es demasiado grande. Quite renglones o columnas: hasta {limit} dosis.",
      "size-dimension":
        "{given} es {is.dimension}. Una dosis de {rate} necesita {expected.expected}, por ejemplo {example}.",
      "last-before-first": "El último, {last}, está antes del primero, {first}.",
      "too-many-steps": "Con pasos de {step} salen más de {limit} pasos. Anote un paso más grande.",
      "amount-too-large": "{amount} es demasiado para medir con estos utensilios. Use una medida más grande.",
      "amount-too-small":
        "{amount} es muy poco para medir con estos utensilios, que empiezan en {least}. Use utensilios más finos, o dilúyalo antes si la etiqueta lo permite.",
      "amount-too-small-other":
        "{amount} ({same}) es muy poco para medir con estos utensilios, que empiezan en {least}. Use otros más finos, o dilúyalo antes si la etiqueta lo permite.",
      "weight-too-small-other":
        "{amount} ({same}) es muy poco para pesar con estos utensilios: lo menos que pesan es {least}. Use una báscula que lea {marks}.",
      "weight-too-small":
        "{amount} es muy poco para pesar con estos utensilios: lo menos que pesan es {least}. Use una báscula que lea {marks}.",
      "closest-under":
        "Estos utensilios no miden {amount} con un error de hasta {limit} (lo más cercano: {off} de menos). Use utensilios más finos, o dilúyalo antes si la etiqueta lo permite.",
      "closest-over":
        "Estos utensilios no miden {amount} con un error de hasta {limit} (lo más cercano: {off} de más). Use utensilios más finos, o dilúyalo antes si la etiqueta lo permite.",
      "marks-missing":
        "Anotó la lectura más chica, {least}, pero no la distancia entre las marcas. Anótela también.",
      "marks-not-weight": "{given} es un volumen y la báscula pesa hasta {capacity}. Anote un peso.",
      "marks-not-volume": "{given} es un peso y la capacidad del utensilio es {capacity}. Anote un volumen.",
      "too-many-marks":
        "Con marcas cada {graduation} hasta {given} salen más de {limit} marcas. Revise las unidades.",
      "no-mark": "Un utensilio de {capacity} no puede tener marcas cada {graduation}.",
      "no-mark-from-least":
        "Un utensilio de {capacity} con marcas cada {graduation} no tiene ninguna marca en {least} o más.",
      "no-scale":
        "{amount} es un peso y ninguno de estos utensilios es una báscula: péselo, o anote la densidad aparente del producto. oz (peso) y fl oz (volumen) son distintas.",
      "no-volume-tool":
        "{amount} es un volumen y estos utensilios solo pesan: escoja cucharas, una jeringa o una probeta. oz (peso) y fl oz (volumen) son distintas.",
      "dilution-not-permitted":
        "La etiqueta debe permitir diluir primero este producto. Use un utensilio más fino o prepare más mezcla.",
      "no-stock":
        "Estos utensilios no miden {amount} con un error de hasta {limit}, ni diluido. Hace falta una medida mayor que {amount} y un recipiente diez veces mayor que esa medida.",
      "suggest-load": "Prepare {load} en vez de {given}.",
      "suggest-batch": "Prepare una mezcla que lleve {amount} de producto en vez de {given}.",
      "suggest-tool": "Use también este utensilio: {tool.tool}.",
      "suggest-stock":
        "Dilúyalo primero: ponga {product} de producto en una medida, complete con agua hasta {stock} y revuelva. De eso, su dosis es {taken}.",
      "set-in-list":
        "Una lista tiene utensilios, no nombres de juegos. Escriba {example} para los utensilios de un juego.",
      "tool-twice": "El utensilio {name.tool} está dos veces en la lista. Quite uno.",
      "tool-names-alike": "Dos utensilios se llaman {name.tool}. Dé a cada uno su propio nombre.",
      "bulk-density-missing":
        "Anote la densidad aparente de este producto, o pese el producto: una onza de peso llena de 2 a 6 cucharadas al ras.",
      "rows-incomplete":
        "{catches} {catches:one=medida no completa;other=medidas no completan} hileras de {nozzles} boquillas. Anote lo recogido de cada boquilla de cada hilera.",
      "plant-spacing": "Anote la distancia de planta a planta: hace falta para el volumen por área.",
      "row-spacing": "Anote la distancia de hilera a hilera: hace falta para el volumen por área.",
      "spreader-over-max":
        "La esparcidora echó {rate}{directions:one=;other= en las dos direcciones}, más que el máximo de {max} de la etiqueta. Cierre la compuerta hasta que la misma prueba dé {toCatch}.",
      "spreader-ounces-as-pounds":
        "La esparcidora echó {times} veces la dosis buscada. Si pesó en onzas, anote onzas y no libras.",
      "spreader-whole-rate":
        "La esparcidora echó {times} veces la dosis buscada para una pasada. En dos direcciones cada pasada lleva la mitad de la dosis: cierre la compuerta hasta que la misma prueba dé {toCatch}.",
      "spreader-far-over":
        "La esparcidora echó {times} veces la dosis buscada. Revise las unidades, y que esa dosis sea de producto y no del nutriente o ingrediente activo que contiene.",
      "spreader-heavy":
        "La esparcidora echó {off} de más. Cierre la compuerta hasta que la misma prueba dé {toCatch}.",
      "spreader-pounds-as-ounces":
        "La esparcidora echó solo 1/{times} de la dosis buscada. Si pesó en libras, anote libras y no onzas.",
      "spreader-far-under":
        "La esparcidora echó {off} de menos. Revise las unidades, y que la dosis y la prueba sean para una sola pasada.",
      "spreader-light":
        "La esparcidora echó {off} de menos. Abra la compuerta hasta que la misma prueba dé {toCatch}.",
      "rated-missing": "Anote la descarga que debe tener cada boquilla.",
      "rated-unused": "Aquí no se usa esta descarga. Quítela, o escoja comparar las boquillas con ella.",
      "rated-differs":
        "La descarga nominal de {given} no concuerda con medidas como {first}. Use volúmenes para las dos, o pesos para las dos.",
      "speed-and-width": "Para el volumen de aplicación del aguilón, anote la velocidad y el ancho.",
      "range-descends": "La presión más baja, {lowest}, es mayor que la más alta, {highest}. Intercámbielas.",
      "outputs-differ":
        "{given} y {first} son una descarga y un volumen por área. Anote dos descargas, o dos volúmenes por área.",
      "nothing-to-find": "Deje en blanco uno de estos: {choices.field}. Se calcula con los otros tres.",
      "three-needed": "Falta: {missing.field}. Deje en blanco solo el que se va a calcular.",
      "certainty-missing":
        "Nada indica qué tan seguras son las lecturas. Anote una resolución o una incertidumbre para uno de estos: {choices.field}.",
      "day-too-early": "{today} es antes de la calibración del {calibrated}. Revise las dos fechas.",
      "all-ground-treated":
        "Todo el terreno ({ground}) cuenta como tratado, pero su franja medía solo {width}, como una banda. Escoja bandas, camas o manchones, o parcela completa si la trata toda.",
      "bands-without-gap":
        "Bandas de {band} de ancho cada {spacing} no dejan espacio, así que se trata todo el terreno. Revise el ancho de la banda, o escoja parcela completa si la trata toda.",
      "swath-is-spacing-strong":
        "El ancho de la franja, {width}, es la distancia entre hileras o camas, pero una pasada trata {pass}. Si solo trató {pass}, anote eso: si no, la mezcla lleva {times} veces la concentración debida.",
      "swath-is-spacing-weak":
        "El ancho de la franja, {width}, es la distancia entre hileras o camas, pero una pasada trata {pass}. Si solo trató {pass}, anote eso: si no, la mezcla queda {times} veces menos concentrada.",
      "swath-is-spacings-strong":
        "La franja mide {width} de ancho, pero una pasada trata {pass}. Si solo trató {pass}, anote eso: si no, la mezcla lleva {times} veces la concentración debida.",
      "swath-is-spacings-weak":
        "La franja mide {width} de ancho, pero una pasada trata {pass}. Si solo trató {pass}, anote eso: si no, la mezcla queda {times} veces menos concentrada.",
      "nozzle-width-strong":
        "La calibración es para {width}, pero una pasada trata {pass}: la mezcla puede llevar {times} veces la concentración debida. Revise los dos anchos, y las hileras o camas por pasada.",
      "nozzle-width-weak":
        "La calibración es para {width}, pero una pasada trata {pass}: la mezcla puede quedar {times} veces menos concentrada. Revise los dos anchos, y las hileras o camas por pasada.",
      "nozzles-over-rows":
        "Sus {nozzles} boquillas cuentan como {boom}, pero una pasada trata {pass}: la mezcla puede llevar {times} veces lo debido. Anote boquillas por hilera, o hileras por pasada.",
      "boom-over-pass":
        "Sus {nozzles} boquillas rocían {boom}, pero una pasada trata {pass}. Lo demás cae a un lado y la mezcla se acaba antes: cierre boquillas, o anote lo que rocía.",
      "swath-is-not-band-strong":
        "Su franja de prueba medía {width}, pero una pasada trata {pass}: la mezcla puede llevar {times} veces la concentración debida. Revise los dos anchos y las hileras o camas por pasada.",
      "swath-is-not-band-weak":
        "Su franja de prueba medía {width}, pero una pasada trata {pass}: la mezcla puede quedar {times} veces menos concentrada. Revise los dos anchos y las hileras o camas por pasada.",
      "rate-low":
        "El volumen de aplicación es {rate}, menos de lo usual para aspersoras de mochila o de aguilón chico (desde {limit}). Revise las unidades de la franja y del agua que repuso, y calibre de nuevo.",
      "rate-high":
        "El volumen de aplicación es {rate}, más de lo usual para {application.application} (hasta {limit}). Revise las unidades de la calibración y el tipo de aplicación.",
      "speed-low":
        "La velocidad es {speed}, más lenta que un paso constante ({limit}). Tome de nuevo el tiempo del recorrido.",
      "speed-high":
        "La velocidad es {speed}, más rápida que un paso constante ({limit}). Tome de nuevo el tiempo del recorrido.",
      "strip-too-short-assumed":
        "Si su jarra tiene marcas cada {resolution}, una marca es el {percent} de lo usado ({used}). Use una franja más larga o una jarra con marcas más finas.",
      "strip-too-short":
        "Su jarra tiene marcas cada {resolution}: una marca es el {percent} de lo usado ({used}). Use una franja más larga o una jarra con marcas más finas.",
      "nozzle-low":
        "La boquilla {nozzle} dio {caught}, un {percent} menos que el promedio. Límpiela y vuelva a medir todas.",
      "nozzle-high":
        "La boquilla {nozzle} dio {caught}, un {percent} más que el promedio. Cámbiela y vuelva a medir todas.",
      "runs-disagree": "Las pruebas difieren en más de {limit}: de {lowest} a {highest}. Repita las pruebas.",
      "runs-disagree-one":
        "Las pruebas difieren en más de {limit}: de {lowest} a {highest}. Repita la prueba {run}, que se sale de las demás.",
      "runs-disagree-first":
        "Las pruebas difieren en más de {limit} (de {lowest} a {highest}), y la primera usó más. Si la manguera y el aguilón empezaron vacíos, llénelos y repítala.",
      "runs-disagree-lines":
        "Las pruebas difieren en más de {limit} (de {lowest} a {highest}). La primera usó {filled} más, como lo que cabe en la manguera y el aguilón: llénelos y repítala.",
      "lines-uncharged":
        "La manguera y el aguilón contienen {lines}, el {percent} de lo usado ({used}). Si empezaron vacíos, la mezcla quedará demasiado débil: llénelos y repita la franja.",
      "calibration-age-unknown":
        "Esta calibración es del {date} y falta la fecha de hoy. Anótela para revisar la antigüedad y las condiciones.",
      "calibration-stale": "Cambios desde la calibración: {changed.condition}. Calibre de nuevo.",
      "calibration-stale-rate":
        "Cambios desde la calibración: {changed.condition}. Calibre de nuevo: lo probable es {expected}, no {rate}.",
      "calibration-stale-part":
        "Cambios desde la calibración: {changed.condition}. Calibre de nuevo: contando solo {counted.condition}, lo probable es {expected}, no {rate}.",
      "calibration-old":
        "La calibración tiene {age} {age:one=día;other=días}, y las boquillas se desgastan. Calibre de nuevo.",
      "mix-over-tank":
        "Necesita {total} de mezcla y el tanque es de {tank}: prepare {loads} {loads:one=carga;other=cargas} y mida el producto para cada una.",
      "mix-over-fill":
        "Necesita {total} de mezcla y llena el tanque hasta {tank}: prepare {loads} {loads:one=carga;other=cargas} y mida el producto para cada una.",
      "reserve-large":
        "La mezcla extra es de {reserve} para un trabajo que lleva {sprayed}: sobraría toda. Revise la mezcla extra y su unidad.",
      "reserve-large-marks":
        "Para llegar a la marca del tanque, la mezcla extra es de {reserve} para un trabajo que lleva {sprayed}. Revise las marcas o los llenados, o use un tanque más pequeño.",
      "lines-large":
        "La manguera y el aguilón contienen {lines}, que es el {percent} del tanque de {tank}. Revise ese número y su unidad.",
      "last-load-small":
        "La última carga es de solo {last}: es difícil medir para ella, y la bomba quizá no la saque toda. Divida la mezcla en cargas iguales.",
      "last-load-extra":
        "La última carga es de solo {last}, y toda es mezcla extra. No la prepare, o planee menos mezcla extra.",
      "water-without-product":
        "Agregar {water} de agua sin producto baja la mezcla al {strength} de su concentración, y la parcela recibe menos dosis. Agregue producto también para esa agua, o no la agregue.",
      "long-count":
        "{product}: llenaría {count} veces un mismo utensilio ({tool.tool}). Es fácil perder la cuenta: use uno más grande.",
      "long-count-load":
        "{product}: la dosis de la carga {load} llenaría {count} veces un mismo utensilio ({tool.tool}). Es fácil perder la cuenta: use uno más grande.",
      "scale-needed":
        "{product} es un producto seco y no hay báscula en la lista. Péselo en una báscula con marcas de {marks}, no lo mida con cuchara.",
      "whole-bags":
        "{product} viene en bolsas solubles, y {bag} de él alcanza para {mix} de mezcla. Planee cargas que lleven bolsas enteras.",
      "rate-needs-ground":
        "Esta dosis es por área del terreno, y no se conoce el terreno de esta parcela. Anote la distancia entre hileras o el área del terreno.",
      "rate-needs-count":
        "{given} es una dosis por planta, y este trabajo es para un área. Anote una dosis por área, o planee el trabajo por número de plantas.",
      "rate-needs-plot":
        "Esta dosis es por área del terreno, y este trabajo no tiene parcela. Anote una dosis que le corresponda, o planee la parcela.",
      "rate-for-volume":
        "{given} es {is.dimension}, y este trabajo es un volumen de mezcla. Anote una dosis por volumen de mezcla, un porcentaje o una proporción, o planéelo por área.",
      "rate-for-count":
        "{given} es {is.dimension}, y este trabajo es un número de plantas. Anote una dosis por planta o por volumen de mezcla, o planéelo por área.",
      "rate-for-row":
        "{given} es {is.dimension}, y este trabajo es un largo de hilera. Anote una dosis por largo de hilera o por volumen de mezcla, o planéelo por área.",
      "limit-needs-area":
        "Este límite es por área, y este trabajo no tiene área. Anote el área tratada, o deje el límite sin anotar.",
      "plants-not-counted":
        "Para cargar por plantas enteras hace falta un trabajo por número de plantas. Escoja cargas iguales.",
      "whole-count": "Anote un número entero, 1 o más.",
      "rate-for-count-spreading":
        "{given} es {is.dimension}, y este trabajo es un número de plantas. Anote una dosis por planta, o planee la parcela.",
      "rate-for-row-spreading":
        "{given} es {is.dimension}, y este trabajo es un largo de hilera. Anote una dosis por largo de hilera, o planee la parcela.",
      "test-for-plants":
        "La dosis es por planta, y la prueba de una esparcidora es por área o por hilera. Quite la prueba, o pese lo de cada planta.",
      "test-along-row":
        "La dosis es por área, y la prueba es a lo largo de una hilera. Pruebe en una franja o un área, o anote una dosis por largo de hilera.",
      "test-over-area":
        "La dosis es por largo de hilera, y la prueba es en un área. Pruebe a lo largo de una hilera, o anote una dosis por área.",
      "nutrient-implausible":
        "{product}: {given} de nitrógeno es más de lo que reciben los cultivos en una temporada ({limit}). Revise si esta dosis es de producto.",
      "rate-high-spreading":
        "{product}: {given} de producto es más de lo usual ({limit}). Revise el número y la unidad.",
      "rate-near-max-spreading":
        "{product}: la dosis de {rate} está en el máximo de la etiqueta ({max}) o muy cerca. Con la compuerta un punto más abierta se pasaría.",
      "spreader-set-for-nutrient":
        "{product}: la esparcidora echó {rate}, cerca de la dosis de {nutrient}. Abra la compuerta hasta que la misma prueba dé {toCatch} de producto.",
      "fills-many":
        "Este trabajo lleva {total} de producto, que son {fills} llenados de una tolva de {hopper}. Revise el tamaño del trabajo, la dosis y sus unidades.",
      "each-implausible":
        "{given} para cada una es más de lo que lleva un árbol grande ({limit}). Revise el número y la unidad: es lo que recibe una, no todas.",
      "loads-many":
        "Este trabajo lleva {total} de mezcla, que son {loads} cargas de un tanque de {tank}. Revise el tamaño del trabajo y sus unidades.",
      "carrier-under-least-batch":
        "{product}: esto es {carrierRate} de mezcla en el área anotada, menos que el mínimo de la etiqueta, {least}. Use más agua con el mismo producto.",
      "carrier-near-least-batch":
        "{product}: esto es {carrierRate} de mezcla en el área anotada, en el mínimo de la etiqueta ({least}) o muy cerca. Revise el área y el volumen.",
      "carrier-over-most-batch":
        "{product}: esto es {carrierRate} de mezcla en el área anotada, más que el máximo de la etiqueta, {most}. Use menos agua con el mismo producto.",
      "rate-needs-rows":
        "Esta dosis es por largo de hilera, y esta parcela no está en hileras. Escoja una parcela en hileras, o una dosis por área.",
      "rate-uneven-more":
        "{product}: la dosis es por área del terreno, y con una sola mezcla {plot} recibe {percent} de más. Planee aparte las parcelas distintas.",
      "rate-uneven-less":
        "{product}: la dosis es por área del terreno, y con una sola mezcla {plot} recibe {percent} de menos. Planee aparte las parcelas distintas.",
      "rate-uneven-rows-more":
        "{product}: la dosis es por largo de hilera, y con una sola mezcla {plot} recibe {percent} de más. Planee aparte las parcelas distintas.",
      "rate-uneven-rows-less":
        "{product}: la dosis es por largo de hilera, y con una sola mezcla {plot} recibe {percent} de menos. Planee aparte las parcelas distintas.",
      "ounces-confusable-dry":
        "{product} tiene onzas en el nombre y el plan está en onzas de peso, no en onzas líquidas. Revise cuál indica la etiqueta.",
      "ounces-confusable-liquid":
        "{product} tiene onzas en el nombre y el plan está en onzas líquidas, no en onzas de peso. Revise cuál indica la etiqueta.",
      "bulk-density-of-liquid":
        "La densidad aparente es para un producto seco, y este es líquido. Quítela, o cambie el producto a seco.",
      "price-of-liquid": "Este producto es líquido. Anote lo que cuesta un volumen, no {given}.",
      "price-of-dry": "Este producto es seco. Anote lo que cuesta un peso, no {given}.",
      "product-twice": "Ya hay un producto llamado {given} en esta mezcla. Anote cada producto una vez.",
      "enter-time": "Anote una hora local, por ejemplo {example}.",
      "time-unreadable": "No se pudo leer {given}. Anote una hora local, por ejemplo {example}.",
      "zone-unknown": "No existe la zona horaria {given}. Anote una como America/Chicago.",
      "year-too-late": "Esta espera termina después del año 9999. Revise la fecha.",
      "rows-of-one-length":
        "Para cargar por hileras enteras hace falta una parcela con hileras del mismo largo. Escoja cargas iguales.",
      "plots-of-one-size":
        "Para cargar por parcelas enteras hacen falta parcelas con la misma área tratada. Escoja cargas iguales.",
      "rate-per-ground":
        "Este volumen de aplicación cuenta las calles entre hileras, pero solo se trata una parte de esta parcela. Anote todo el terreno como parcela, o calibre en la parte tratada.",
      "plan-for-job": "Esto es un plan terminado. Pase su entrada: plan.input.",
      "result-for-record": "Esto solo contiene un registro. Pase su registro: done.record.",
      "plan-expected": "Esto no es un plan terminado. Primero planee el trabajo.",
      "plan-changed":
        "Este plan no corresponde a sus propios datos: se cambió, o lo hizo otra versión de esta biblioteca. Planee el trabajo de nuevo.",
      "left-or-used": "Anote lo que sobró, o lo que se usó en cada parcela.",
      "left-and-used": "Anote lo que sobró o lo que se usó en cada parcela, no las dos cosas.",
      "used-of-each-plot":
        "El plan tiene {plots} {plots:one=parcela;other=parcelas}, no {given}. Anote una cantidad para cada una, en el orden del plan.",
      "used-over-mixed":
        "No se puede usar {given} de lo que se preparó ({mixed}). Si se preparó más, anote cuánto.",
      "left-over-mixed":
        "No puede sobrar {given} de lo que se preparó ({mixed}). Si se preparó más, anote cuánto.",
      "used-over-filled":
        "No se puede usar {given} de lo que entró en la tolva ({filled}). Si entró más, anote cuánto.",
      "left-over-filled":
        "No puede sobrar {given} de lo que entró en la tolva ({filled}). Si entró más, anote cuánto.",
      "start-after-end": "El inicio, {started}, es después del final, {finished}.",
      "volume-and-weight":
        "Este registro tiene {given} y otro tiene {first}: uno es por volumen y el otro por peso. Revise qué producto es.",
      "names-alike": "¿Son {given} y {meant} el mismo producto? Escriba los dos nombres igual.",
      "record-after-today": "Este registro es del {given}, después de {today}. Revise las dos fechas.",
      "seed-empty": "Con este número no sale ningún problema de práctica. Escoja otro.",
      "bands-overlap":
        "Bandas o camas de {width} de ancho cada {spacing} se traslapan: ahí cae doble dosis. Revise los dos números, o escoja parcela completa si la trata toda.",
      "sides-overlap":
        "Dos lados de {width} en hileras cada {spacing} se traslapan: ahí cae doble dosis. Revise los dos números, o escoja parcela completa si la trata toda.",
      "overlap-too-wide": "Debe ser menos que la pasada entera de {width}.",
      "passes-uncountable":
        "Un ancho de {swath} en un lado de {side} da demasiadas pasadas para contarlas. Revise las unidades.",
      "catches-zero": "Todas las medidas son 0. Anote lo que se recogió.",
      "swath-too-narrow": "Debe ser al menos la distancia entre los recipientes, {spacing}.",
      "swath-too-wide":
        "{given} es demasiado ancho para {count} {count:one=medida;other=medidas} cada {spacing}. Revise las unidades.",
      "step-too-fine": "Debe ser {limit} o más: las medidas no muestran pasos más finos.",
      "no-swath-so-even":
        "Ningún ancho es tan uniforme: el mejor tiene {best}. Revise las boquillas y la altura del aguilón, o permita más.",
      "content-of-dry": "Lo que contiene un producto seco va por peso. Anótelo en g/kg o % w/w.",
      "density-missing":
        "Un contenido por peso ({given}) necesita también la densidad del líquido. Anótela, por ejemplo {example}.",
      "content-over-product":
        "Un producto no puede contener {given}: es más de lo que pesa. Revise el número y su unidad.",
      "density-impossible": "Ningún producto pesa {given}. Está entre {least} y {most}: revise la unidad.",
      "strengths-differ":
        "Una concentración está en {from.unit} y la otra en {to.unit}. Anote las dos de la misma manera.",
      "canopy-over-row":
        "Árboles de {width} de ancho no caben en hileras a {rowSpacing}. ¿Están cambiadas las dos medidas?",
      "canopy-impossible":
        "{given} no puede ser un volumen de copa. Escriba altura × ancho × largo de hilera por área, como {example}.",
      "rate-not-of-canopy": "Escriba la dosis en la mezcla diluida, como {example}, o por área tratada.",
      "concentrate-over-dilute":
        "{concentrate} es más que el volumen diluido, {dilute}. ¿Están cambiados los dos?",
      "injector-upside-down": "Un ajuste de {parts}:{to} sería más solución madre que agua. ¿Está al revés?",
      "rate-not-in-mix": "Un inyector mezcla por volumen. Escriba la dosis en lo que sale, como {example}.",
      "stock-too-strong":
        "La solución madre tendría {product} de producto en {mix}, más de lo que admite. Revise la dosis o ajuste el inyector para que tome más.",
      "drawn-over-caught":
        "Lo que salió es {caught}, pero lo que se tomó de la solución madre es {drawn}. ¿Están cambiados los dos?",
      "stronger-than-source":
        "{to} es más fuerte que {from}, y el agua solo debilita una mezcla. Anote una concentración más baja.",
      "dose-over-stock":
        "Una solución madre hecha con {amount} no puede dar una dosis de {dose}. Anote una dosis menor o prepare más solución.",
      "stock-overfull":
        "{volume} es menos que el producto que lleva, {amount}. Anote el total ya con el agua.",
      "rate-over-max":
        "La dosis de {rate} pasa del máximo de la etiqueta, {max}. No use más de lo que permite la etiqueta.",
      "rate-near-max":
        "La dosis de {rate} está en el máximo de la etiqueta ({max}) o muy cerca. Con un paso lento o una boquilla gastada se pasaría.",
      "rate-near-max-by-measure":
        "La dosis de {rate} está en el máximo de la etiqueta ({max}) o muy cerca. Con una medida demasiado llena se pasaría.",
      "rate-under-min":
        "La dosis de {rate} está por debajo del mínimo de la etiqueta, {min}. Puede no funcionar: revise la etiqueta.",
      "carrier-under-least":
        "La aspersora aplica {carrierRate}, menos que el mínimo de la etiqueta, {least}. Camine más despacio o use boquillas más grandes, y calibre de nuevo.",
      "carrier-near-least":
        "La aspersora aplica {carrierRate}, en el mínimo de la etiqueta ({least}) o muy cerca. Si camina más rápido quedará por debajo.",
      "carrier-over-most":
        "La aspersora aplica {carrierRate}, más que el máximo de la etiqueta, {most}. Camine más rápido o use boquillas más chicas, y calibre de nuevo.",
      "season-over-max":
        "Ya se usó {used}, y con {rate} más se pasa del máximo de la etiqueta por temporada, {max}. Use menos, u otro producto.",
      "season-over-max-alone":
        "Esta aplicación de {rate} ya se pasa del máximo de la etiqueta por temporada, {max}. Use menos, u otro producto.",
      "season-nearly-used":
        "Después de esta aplicación {left:one=queda;other=quedan} {left} del máximo de la temporada ({max}), y no alcanza para otra con esta dosis.",
      "season-unknown":
        "La etiqueta permite {max} por temporada, y no ha anotado lo que ya recibió esta parcela. Revise su registro de aplicaciones.",
      "applications-over-most":
        "La etiqueta limita las aplicaciones a {most} por temporada, y esta parcela ya tuvo {made}. No use más este producto en esta temporada.",
      "applications-last": "Esta es la última aplicación de la temporada: la etiqueta permite {most}.",
      "applications-unknown":
        "La etiqueta limita las aplicaciones a {most} por temporada, y no ha anotado cuántas tuvo esta parcela. Revise su registro de aplicaciones.",
      "interval-too-short":
        "Días desde la última aplicación: {since}. La etiqueta exige {least} o más; espere.",
      "interval-unknown":
        "La etiqueta exige {least} {least:one=día;other=días} o más entre aplicaciones, y no ha anotado cuándo fue la última. Revise su registro de aplicaciones.",
      "strength-unusual":
        "La mezcla lleva {strength} de producto, y las etiquetas rara vez piden más de {limit}. Revise la dosis de la etiqueta, su unidad y el volumen de aplicación.",
      "parts-uncountable": "{part} cabe demasiadas veces en {whole} para contarlas. Revise las unidades.",
      "nutrient-twice": "Anote {element} o {oxide}, no los dos.",
      "nutrients-over-whole": "Un fertilizante no puede ser {given} nutrientes. Revise los números del saco.",
      "nutrients-missing": "Anote lo que contiene el fertilizante, por ejemplo 28-0-0.",
      "grade-unreadable": "Anote la fórmula del saco, por ejemplo 28-0-0.",
      "nutrient-absent":
        "Este fertilizante no tiene {nutrient}. Escoja uno que lo tenga, o revise su fórmula.",
      "nutrients-differ":
        "{from} y {to} no son el mismo nutriente. Escoja un elemento y su óxido, por ejemplo P y P2O5.",
      "strength-unusual-dry":
        "La mezcla lleva {strength} de producto, y las etiquetas rara vez piden más de {limit}. Revise la dosis de la etiqueta, su unidad y el volumen de aplicación.",
      "density-unusual":
        "Un producto líquido que pesa {given} no es usual. La mayoría pesa de {low} a {high}: revise el número y su unidad.",
      "bulk-density-unusual":
        "Un producto seco que pesa {given} no es usual. La mayoría pesa de {low} a {high}: revise el número y su unidad.",
      "content-unusual": "Un producto que contiene {given} no es usual. Revise el número y su unidad.",
      "jar-over-mix":
        "Un frasco de {jar} es más grande que la mezcla de {mix}. Use un frasco más chico, o revise las unidades.",
      "carrier-limits-upside-down":
        "El volumen de aplicación mínimo es mayor que el máximo. ¿Están al revés?",
      "used-without-application":
        "Anotó producto usado, pero 0 aplicaciones. Anote cuántas fueron, o quite la cantidad usada.",
      "limits-upside-down": "El mínimo de la etiqueta es mayor que el máximo. ¿Están al revés?",
      "ratio-upside-down": "Una proporción de {parts}:{to} sería más producto que mezcla. ¿Está al revés?",
      "active-not-by-weight": "Anote el ingrediente activo como peso, por ejemplo {example.typed}.",
      "ratio-for-dry":
        "Una proporción va por volumen, pero este producto es seco. Anote un peso, por ejemplo {example.typed}.",
      "basis-of-liquid":
        "Este producto es líquido, así que su porcentaje va por volumen (v/v), no {given}. Revise de qué es el porcentaje de la etiqueta.",
      "basis-of-dry":
        "Un peso en un volumen de mezcla es un porcentaje w/v, no {given}. Revise de qué es el porcentaje de la etiqueta.",
      "weight-for-liquid-ounces":
        "{given} es un peso, pero este producto es líquido. Revise si la etiqueta dice fl oz u oz.",
      "weight-for-liquid":
        "{given} es un peso, pero este producto es líquido. Revise la unidad de la etiqueta, o cambie el producto a seco.",
      "volume-for-dry-ounces":
        "{given} es un volumen, pero este producto es seco. Revise si la etiqueta dice fl oz u oz.",
      "volume-for-dry":
        "{given} es un volumen, pero este producto es seco. Anote la dosis por peso o, si la etiqueta lo mide por volumen, cámbielo a líquido.",
      "fill-over-tank":
        "No se puede llenar un tanque de {tank} hasta {fill}. Anote lo que cabe en el tanque o menos.",
      "no-mark-to-fill-to": "El tanque no tiene ninguna marca en {fill} o menos. Anote las marcas que tiene.",
      "no-mark-for-a-load":
        "El tanque no tiene ninguna marca de {least}, la carga más chica, a {fill}. Anote las marcas que tiene.",
      "mark-over-tank": "Un tanque de {tank} no tiene marca en {given}. Revise la marca y su unidad.",
      "mark-twice": "Ya hay una marca en {given}. Anote cada marca una sola vez.",
      "marks-too-many":
        "Con marcas cada {given}, un tanque de {tank} tiene más de {limit} marcas. Revise las unidades.",
      "fill-over-most": "Una carga no se puede llenar hasta {given}: {fill} es lo más.",
      "fill-under-least": "Una carga de {given} es muy chica: {least} es la menor.",
      "fill-off-mark": "El tanque no tiene marca en {given}. Escoja un llenado que la tenga.",
      "fills-too-little":
        "Estas cargas suman {sum}, y el trabajo lleva {total}. Agregue una carga, o llénelas más.",
      "marks-of-a-load": "Con las marcas del tanque, anote esto también, por ejemplo {example}.",
      "marks-needed": "Para esto hacen falta las marcas del tanque. Anótelas, por ejemplo cada {example}.",
      "reserve-too-narrow":
        "Para que cada carga llegue a una marca, la mezcla debe ser de {least}, y su mezcla extra solo permite {limit}. Permita más mezcla extra.",
      "reserve-kind": "¿Por ciento o volumen? Anote la mezcla extra como objeto, por ejemplo {example}.",
      "reserve-range": "Lo más no puede ser menos que {given} %.",
      "least-over-fill": "La carga más chica no puede ser mayor que una completa de {fill}.",
      "extra-over-total":
        "La manguera y la mezcla extra llevan {given}, y la mezcla total es de solo {total}. Revise los volúmenes.",
      "piece-and-extra-over-fill":
        "Una hilera o parcela lleva {each}, y con {extra} de mangueras y mezcla extra pasa de una carga de {fill}. Divida la mezcla en cargas iguales.",
      "piece-over-fill":
        "Una hilera o parcela lleva {each}, más que una carga de {fill}. Divida la mezcla en cargas iguales.",
      "loads-too-many":
        "Una mezcla de {total} en cargas de {fill} da {loads} cargas, más de {limit}. Revise las unidades de la dosis, del área y del tanque.",
      "load-too-small":
        "La carga más chica sería de {smallest}, tan poco que la bomba no la saca. Prepare más mezcla, o use una aspersora más chica.",
      "part-load-too-small":
        "La carga más chica sería de {smallest}, tan poco que la bomba no la saca. Divida la mezcla en cargas iguales, o prepare más.",
      "no-room-for-water":
        "Los productos líquidos suman {products}, y no queda lugar para el agua en {mix} de mezcla. Revise las unidades de las dosis.",
      "no-room-in-mix":
        "Con {product} de producto en {mix} de mezcla no queda lugar para el agua. Revise la unidad de la dosis y el volumen de aplicación.",
      "too-much-to-mix":
        "{product} de producto en {mix} de mezcla es más de lo que se puede mezclar. Revise la unidad de la dosis y el volumen de aplicación.",
      "formulation-not-for-water":
        "{given} es una formulación que no se mezcla con agua. Revise cómo dice la etiqueta que se usa.",
      "step-twice": "El paso {given} está dos veces. Anote cada paso una vez.",
      "size-carrierRate":
        "Una dosis por área o por largo de hilera necesita el volumen de aplicación. Anótelo, por ejemplo {example.typed}.",
      "size-area":
        "Una dosis por área del terreno o por largo de hilera necesita el área tratada de la parcela. Anótela, por ejemplo {example.typed}.",
      "size-ground":
        "Una dosis por área del terreno necesita el área del terreno de la parcela. Anótela, por ejemplo {example.typed}.",
      "size-carrierPerLength":
        "Una dosis por largo de hilera necesita la mezcla que recibe un largo de hilera. Anótela, por ejemplo {example}.",
      "size-carrierPerCount":
        "Una dosis por planta necesita la mezcla que recibe una planta. Anótela, por ejemplo {example}.",
      "size-rowLength":
        "Una dosis por largo de hilera necesita el largo de todas las hileras. Anótelo, por ejemplo {example.typed}.",
      "choose-rate": "Escoja la dosis, de {low} a {high}.",
      "range-upside-down": "La dosis más baja es mayor que la más alta. ¿Están al revés?",
      "chosen-over-high":
        "La dosis usada pasa de la más alta de la etiqueta. Escoja una que la etiqueta permita.",
      "amounts-differ":
        "{given} es {is.dimension}, pero {first} es {other.dimension}. Use solo volúmenes o solo pesos: oz (peso) y fl oz (volumen) son distintas.",
      "input-unreadable": "Esto no se puede leer: falla al abrirlo.",
      "too-large-in-unit":
        "{given} es demasiado grande para escribirlo en {unit.unit}. Escoja una unidad más grande.",
      "date-unreadable": "No existe la fecha {given}. Escriba año-mes-día, por ejemplo 2025-04-12.",
      "enter-number": "Anote un número aquí.",
      "letters-only": "Anote solo las letras, en su orden.",
      "one-count": "Anote un solo número: todo lo que se pide contar.",
      "number-not-text": "Anote un número, no texto.",
      "finite-number": "Anote un número aquí.",
      "whole-number": "Anote un número entero, {limit} o más.",
      "more-than": "Debe ser más de {limit}.",
      "at-least": "Debe ser {limit} o más.",
      "at-most": "Debe ser {limit} o menos.",
      "choice-unknown": "No existe la opción {given.kind}. Escoja una de estas: {choices}.",
      "choice-misspelled":
        "No existe la opción {given.kind}. ¿Quiso decir {meant}? Escoja una de estas: {choices}.",
      choose: "Escoja una de estas: {choices.choice}.",
      "text-expected": "Anote un texto, no {given.kind}.",
      "text-such-as": "Anote un texto como {example}, no {given.kind}.",
      "enter-text-such-as": "Anote un texto como {example}.",
      "enter-text": "Anote un texto aquí.",
      "yes-or-no-expected": "Anote true (sí) o false (no), no {given.kind}.",
      "yes-or-no": "Anote true (sí) o false (no).",
      "object-missing": "Falta esta parte. Anote: {fields}.",
      "json-text": "Esto es texto. Léalo primero con JSON.parse.",
      "object-expected": "Esto debe ser un objeto, no {given.kind}.",
      "fields-expected": "Anote un objeto, no {given.kind}: {fields}.",
      "field-unknown": "Aquí no hay ningún campo {given.kind}. Los campos son: {choices}.",
      "field-misspelled": "Aquí no hay ningún campo {given.kind}. ¿Quiso decir {meant}?",
      "part-missing": "Falta esta parte.",
      "list-expected": "Esto debe ser una lista, no {given.kind}.",
      "list-long": 'Anote cuando mucho {limit} en "{list.field}".',
      "list-missing": 'Anote al menos {limit} en "{list.field}".',
      "list-of-so-many": "Anote {expected.expected}, no una lista de {given}.",
      "list-of-expected": "Anote {expected.expected}, no {given.kind}.",
      "list-of": "Anote {expected.expected}.",
      "choose-fields": "Anote uno de estos: {choices.field}.",
      "fields-exclude": "Anote {first.field} o {second.field}, no los dos.",
      "bus-rate-large": "{given} es demasiado grande para enviarlo. Lo más es {limit}.",
      "bus-rate-small": "{given} es demasiado chico para enviarlo. Lo menos es {limit}.",
      "locale-unknown": 'Aquí no se conoce el idioma {given.kind}. Use una clave como "en-US" o "es".',
      "quantity-not-text": "Esto es texto. Anote {expected.expected} como objeto con value y unit.",
      "quantity-expected": "Anote {expected.expected} con su unidad, por ejemplo {example.typed}.",
      "unit-missing": "Falta la unidad. Anote {expected.expected}, por ejemplo {example.typed}.",
      "enter-quantity": "Anote {expected.expected}, por ejemplo {example.typed}.",
      "resolution-and-uncertainty":
        "Anote la resolución o la incertidumbre, no las dos. La incertidumbre ya cuenta la resolución.",
      "dimension-ounces":
        "{given} es {is.dimension}. Anote {expected.expected}, por ejemplo {example.typed}: oz (peso) y fl oz (volumen) son distintas.",
      dimension: "{given} es {is.dimension}. Anote {expected.expected}, por ejemplo {example.typed}.",
      "unit-dimension-ounces":
        '"{given}" es una unidad para {is.dimension}. Escoja una para {expected.expected}, por ejemplo "{example}": oz (peso) y fl oz (volumen) son distintas.',
      "unit-dimension":
        '"{given}" es una unidad para {is.dimension}. Escoja una para {expected.expected}, por ejemplo "{example}".',
      "too-large": "Esto es demasiado grande para calcular.",
      "too-small": "Esto es demasiado chico para calcular.",
      "area-unmarked":
        "¿Es área tratada (lo que de veras se trata) o área del terreno (toda la parcela)? Aquí solo va {expected.area}.",
      "area-is-ground":
        "Esta es área del terreno. Anote el área tratada: solo la parte que de veras se trata.",
      "area-is-treated":
        "Esta es área tratada. Anote el área del terreno: toda la parcela, con o sin aplicación.",
      "basis-unfit":
        "Anote este porcentaje como {choices.expected}, no {given}: v/v es por volumen, w/v peso en volumen, w/w por peso.",
      "basis-missing":
        "¿{given} de qué? Agregue {choices.expected}: v/v es por volumen, w/v peso en volumen, w/w por peso.",
      "choose-unit": 'Escoja una unidad, por ejemplo "{example}".',
      "areas-of-two-kinds": "No se puede sumar {given.area} con {first.area}. Use áreas de un solo tipo.",
      "bases-differ":
        "No se puede combinar {givenUnit.unit} {given.basis} con {firstUnit.unit} {first.basis}. Use un solo tipo: todo por volumen (v/v), o todo por peso (w/v o w/w).",
      "divided-by-zero": "No se puede dividir entre 0. Anote otra cantidad.",
      "text-long": "Esto es demasiado largo. Anote {limit} caracteres o menos.",
      "one-number": "Anote solo el número, en la unidad del campo.",
      "number-of-hours": "Anote el número de horas, por ejemplo {example}.",
      "number-of-days": "Anote el número de días, por ejemplo {example}.",
      "number-percent": "Anote el porcentaje, por ejemplo {example}.",
      "number-of-degrees": "Anote el número de grados, por ejemplo {example}.",
      "unread-one-number": "No se pudo leer {given}. Anote solo el número, en la unidad del campo.",
      "no-one-size": "{given.kind} no tiene un solo tamaño. Mida cuánto cabe, y anote eso.",
      "rate-of-active":
        "{given} es una dosis de ingrediente activo. Anote la dosis del producto, o el ingrediente activo y el contenido del producto.",
      "last-unit-not-typed": "Agregue la unidad del último número, por ejemplo {text} {example.typed}.",
      "one-amount": "Anote una cantidad con su unidad, por ejemplo {example.typed}.",
      "unread-one-amount":
        "No se pudo leer {given}. Anote una cantidad con su unidad, por ejemplo {example.typed}.",
      "text-unfinished": "Termine de escribir.",
      "range-of-rates": "{given} es un rango. Escoja una dosis dentro de él.",
      ratio: "{given} es una proporción. Anote sus dos partes, y si es en agua o en mezcla.",
      range: "{given} es un rango. Escoja una cantidad dentro de él.",
      "unread-sum-order":
        "No se pudo leer {given}. Anote una cantidad, o partes de mayor a menor, por ejemplo 3 ft 6 in.",
      "not-a-product": "Anote una sola cantidad, no {given}.",
      "not-two-lengths":
        "Anote una sola medida, no {given}. Cada lado, y el número de hileras, tiene su propio campo.",
      "not-two-sides":
        "Anote una sola área, no {given}. Multiplique los lados, o anote el largo y el ancho de un rectángulo.",
      "number-first": "Empiece con un número, por ejemplo {example.typed}.",
      "unread-number-first": "No se pudo leer {given}. Empiece con un número, por ejemplo {example.typed}.",
      "number-unfinished": "Termine el número.",
      "unread-unit-before-stroke":
        "No se pudo leer {given}. Escriba de qué son {part}, por ejemplo {part} fl oz/{whole} gal, o use decimales.",
      "space-lost": "¿Con {given} quiso decir {mixed} o {decimal}? Escriba lo que quiso decir.",
      "number-with-space": "¿Es {given} un solo número? Escríbalo sin el espacio: {meant}.",
      "number-signs": "Revise los signos entre los dígitos.",
      "unread-number-signs": "No se pudo leer {given}. Revise los signos entre los dígitos.",
      "decimal-sign": "Use {sign.sign} para los decimales: {meant}.",
      "unread-decimal-sign": "No se pudo leer {given}. Use {sign.sign} para los decimales: {meant}.",
      thousands: "¿Con {given} quiso decir {small} o {large}? Escriba lo que quiso decir.",
      "per-several": "Anote la cantidad para {one.typed}, no para {given.typed}.",
      "unit-not-typed": "Agregue la unidad en que midió o que da la etiqueta, por ejemplo {example.typed}.",
      "unread-unit-after-number":
        "No se pudo leer {given}. Escriba una unidad después del número, por ejemplo {example.typed}.",
      "unit-unfinished": "Termine la unidad {given}.",
      "unread-no-such-basis":
        "No se pudo leer {given}. Escriba v/v (por volumen), w/v (peso en volumen) o w/w (por peso).",
      "unit-unknown": 'Aquí no se conoce la unidad {given.kind}. Mida en una como "{example}".',
      "unit-either":
        'Aquí no se conoce la unidad {given.kind}. Anote "{meant}" o "{other}", la que se midió.',
      "per-unit-unknown":
        "Aquí no se conoce la unidad {given.kind}. Anote cuánto es por {one.unit} o por {other.unit}.",
      "per-unit-not-typed":
        'Agregue la unidad después de {given}, por ejemplo "{area.unit}" o "{volume.unit}".',
      "wait-before-end": "{wait} es antes del final, {finished}. Revise los dos.",
      "date-not-of-end": "La fecha, {given}, no es la del final, {finished}. Anote el mismo día.",
      "text-blank": "Está en blanco. Anote un texto, o no lo incluya.",
      "unit-misspelled": 'Aquí no se conoce la unidad {given.kind}. ¿Quiso decir "{meant}"?',
      "result-out-of-reach":
        "El resultado es demasiado grande o demasiado chico para calcular. Revise los números y sus unidades.",
      "acre-or-are": '¿{given} es un acre o un área (100 metros cuadrados)? Escriba "ac" o "are".',
      "which-ounce": '¿Cuál onza? Escriba "fl oz" (líquida) u "oz wt" (peso).',
      "which-teaspoon": '¿Cuál cucharadita? Escriba "US tsp" o "metric tsp".',
      "which-tablespoon": '¿Cuál cucharada? Escriba "US tbsp", "metric tbsp" o "Australian tbsp".',
      "which-cup": '¿Cuál taza? Escriba "US cup" o "metric cup".',
      "which-fluid-ounce": '¿Cuál onza líquida? Escriba "US fl oz" o "imp fl oz".',
      "which-pint": '¿Cuál pinta? Escriba "US pt" o "imp pt".',
      "which-quart": '¿Cuál cuarto de galón? Escriba "US qt" o "imp qt".',
      "which-gallon": '¿Cuál galón? Escriba "US gal" o "imp gal".',
      "milliliter-or-megaliter":
        '¿{given} es un mililitro o un megalitro? Escriba "mL", o el volumen en "L".',
      "meter-or-mile":
        '¿{given} es un metro, una milla o 1,000 pies cuadrados? Escriba "m", "mi" o "1,000 sq ft".',
      "gram-or-gallon": '¿{given} es un gramo o un galón? Escriba "g" o "gal".',
      "tablespoon-or-ton":
        '¿{given} es una cucharada o una tonelada? Escriba "tbsp", o el peso en "lb" o "kg".',
      "teaspoon-or-tonne":
        '¿{given} es una cucharadita o una tonelada métrica? Escriba "tsp", o el peso en "kg".',
      "milligram-or-million-gallons":
        '¿{given} es un miligramo o un millón de galones? Escriba "mg", o el volumen en "gal".',
      "milligram-or-megagram": '¿{given} es un miligramo o un megagramo? Escriba "mg", o el peso en "kg".',
      "unread-space-missing":
        "No se pudo leer {given}. Ponga un espacio entre la unidad y el número que sigue.",
      "ucum-other-acre":
        'El acre en {given} no está hecho de yardas internacionales. Escriba el acre como "{example}".',
      "ucum-unknown": 'Aquí no se conoce el código UCUM {given}. Use uno como "{example}".',
      "version-unknown":
        "Aquí no se puede leer la versión {given.kind}. La escribió una versión más nueva de esta biblioteca: actualice, o anote los datos de nuevo.",
      "schema-unknown": "Use aquí un esquema de swath-to-spoon, por ejemplo planInputSchema().",
      "sheet-expected": "Esto no es una hoja. Haga primero la hoja.",
      "choose-code": 'Anote un código UCUM, por ejemplo "{example}".',
      "figure-expected": "Un dato es un número, un texto, una lista de textos o un número con su unidad.",
      "formula-unreadable": "{given.kind} no es una fórmula.",
      "nonce-unreadable": "Esto no es un nonce en base64, por ejemplo c3ByYXk=.",
      "words-expected": "Pase una tabla de palabras, por ejemplo la española, no {given.kind}.",
      "words-missing": "Falta esta parte de la tabla de palabras.",
    },
    names: {
      dimension: DIMENSIONS,
      expected: {
        ...DIMENSIONS,
        amount: "una cantidad",
        ratePerArea: "una dosis por área",
        labelRate: "la dosis de la etiqueta",
        productRate: "la dosis del producto",
        activeRate: "la dosis de ingrediente activo",
        strength: "una concentración",
        content: "lo que contiene el producto",
        caught: "lo que se recogió",
        treeRowVolume: "un volumen de copa por área",
        sprayPerCanopy: "la mezcla para tanto volumen de copa",
        pair: "dos números, por ejemplo [0, 120]",
        place: "un punto como [longitud, latitud]",
      },
      area: { treated: "área tratada", ground: "área del terreno", plain: "área sin más" },
      basis: { none: "sin base" },
      condition: {
        operator: "el operador",
        nozzle: "la boquilla",
        nozzleCount: "el número de boquillas",
        nozzleSpacing: "la distancia entre boquillas",
        pressure: "la presión",
        speed: "la velocidad",
        gear: "la marcha",
        ground: "el terreno",
        liquid: "el líquido",
        density: "la densidad",
      },
      application: {
        broadcast: "una aplicación a todo el terreno",
        band: "una aplicación en bandas",
        "tree-rows": "hileras de árboles",
        hand: "una pistola de mano",
        turf: "césped",
        drench: "una aplicación al suelo con mucha agua",
      },
      field: {
        add: "figuras que se suman",
        subtract: "figuras que se descuentan",
        products: "productos",
        runs: "pasadas de prueba",
        passes: "pasadas",
        offsets: "anchos medidos",
        stations: "puntos de medición",
        corners: "esquinas",
        spots: "manchones",
        records: "registros",
        tools: "utensilios",
        rates: "dosis",
        sizes: "tamaños",
        marks: "marcas",
        fills: "llenados",
        loads: "cargas",
        steps: "pasos",
        plots: "parcelas",
        quantities: "cantidades",
        used: USED,
        swath: SWATH,
        distance: "distancia",
        caught: "cantidad recogida",
        catches: "cantidades recogidas",
        time: "tiempo",
        speed: SPEED,
        width: "ancho",
        area: "área",
        rowLength: ROW_LENGTH,
        rowSpacing: ROW_SPACING,
        plantSpacing: PLANT_SPACING,
        flow: "descarga",
        rate: RATE,
        activeIngredient: "ingrediente activo",
        amount: "cantidad",
        base: "base",
        bedLength: "largo de la cama",
        bedLengths: "largos de las camas",
        calibration: "calibración",
        chosen: "dosis escogida",
        concentrate: "volumen concentrado",
        contains: "contenido",
        diameter: "diámetro",
        each: "área de cada uno",
        factor: "factor",
        finished: "lo que sale",
        ground: "área del terreno",
        height: "altura",
        high: "dosis más alta",
        length: "largo",
        low: "dosis más baja",
        nutrient: "nutriente",
        parts: "partes",
        per: "por qué área",
        percent: "porcentaje",
        plants: "plantas",
        plot: "parcela",
        roundUpTo: "paso de redondeo",
        rowLengths: "largos de las hileras",
        sides: "lados",
        size: "tamaño",
        stock: "solución madre",
        to: "en cuántas partes",
        unit: "unidad",
        value: "número",
        volume: "volumen",
      },
      choice: {
        liquid: "líquido",
        dry: "seco",
        rectangle: "rectángulo",
        triangle: "triángulo",
        trapezoid: "trapecio",
        circle: "círculo",
        ellipse: "elipse",
        ring: "anillo",
        sector: "sector",
        offsets: "anchos medidos",
        "unequal-offsets": "anchos medidos a distancias desiguales",
        boundary: "esquinas",
        composite: "varias figuras",
        "row-bands": "bandas en hileras",
        beds: "camas",
        "tree-rows": "hileras de árboles",
        spots: "manchones",
        "ground-area": "área del terreno",
        "treated-area": "área tratada",
        strip: "franja de prueba",
        "strip-runs": "varias pasadas por la franja",
        "direct-strip": "franja de lectura directa",
        catch: "agua recogida de las boquillas",
        "tree-row": "una hilera de árboles",
        hand: "aplicación a mano",
        flow: "descarga, velocidad y ancho",
        known: "volumen de aplicación conocido",
        record: "calibración guardada",
        broadcast: "todo el terreno",
        band: "bandas",
        turf: "césped",
        drench: "aplicación al suelo con mucha agua",
        "full-then-part": "cargas llenas y una parcial",
        equal: "cargas iguales",
        "whole-rows": "hileras completas",
        "whole-plots": "parcelas completas",
        "whole-plants": "plantas completas",
        easiest: "cargas fáciles de medir",
        treated: "área tratada",
        ground: "área del terreno",
        mix: "mezcla",
        water: "agua",
        volume: "volumen de mezcla",
        count: "número de plantas",
        "row-length": "largo de hilera",
      },
      sign: { ".": "un punto", ",": "una coma" },
      kind: { "a list": "una lista", "an object": "un objeto", "a function": "una función" },
    },
    tools: {
      "1/8 teaspoon": fraction("1/8 de cucharadita"),
      "1/4 teaspoon": fraction("1/4 de cucharadita"),
      "1/2 teaspoon": fraction("1/2 cucharadita"),
      teaspoon: plural("cucharadita", "cucharaditas"),
      tablespoon: plural("cucharada", "cucharadas"),
      "1/4 cup": fraction("1/4 de taza"),
      "1/3 cup": fraction("1/3 de taza"),
      "1/2 cup": fraction("1/2 taza"),
      cup: plural("taza", "tazas"),
      "pint measure": plural("medida de una pinta", "medidas de una pinta"),
      "quart measure": plural("medida de un cuarto de galón", "medidas de un cuarto de galón"),
      "gallon measure": plural("medida de un galón", "medidas de un galón"),
      "1/4 teaspoon (1.25 mL)": fraction("1/4 de cucharadita (1.25 mL)"),
      "1/2 teaspoon (2.5 mL)": fraction("1/2 cucharadita (2.5 mL)"),
      "teaspoon (5 mL)": plural("cucharadita (5 mL)", "cucharaditas (5 mL)"),
      "tablespoon (15 mL)": plural("cucharada (15 mL)", "cucharadas (15 mL)"),
      "1/4 cup (60 mL)": fraction("1/4 de taza (60 mL)"),
      "1/3 cup (80 mL)": fraction("1/3 de taza (80 mL)"),
      "1/2 cup (120 mL)": fraction("1/2 taza (120 mL)"),
      "cup (240 mL)": plural("taza (240 mL)", "tazas (240 mL)"),
      "1/8 metric teaspoon": fraction("1/8 de cucharadita métrica"),
      "1/4 metric teaspoon": fraction("1/4 de cucharadita métrica"),
      "1/2 metric teaspoon": fraction("1/2 cucharadita métrica"),
      "metric teaspoon": plural("cucharadita métrica", "cucharaditas métricas"),
      "metric tablespoon": plural("cucharada métrica", "cucharadas métricas"),
      "1/4 metric cup": fraction("1/4 de taza métrica"),
      "1/2 metric cup": fraction("1/2 taza métrica"),
      "metric cup": plural("taza métrica", "tazas métricas"),
      "1/4 Australian teaspoon": fraction("1/4 de cucharadita australiana"),
      "1/2 Australian teaspoon": fraction("1/2 cucharadita australiana"),
      "Australian teaspoon": plural("cucharadita australiana", "cucharaditas australianas"),
      "1/2 Australian tablespoon": fraction("1/2 cucharada australiana"),
      "Australian tablespoon": plural("cucharada australiana", "cucharadas australianas"),
      "1 fl oz measure": plural("medida de 1 fl oz", "medidas de 1 fl oz"),
      "2 fl oz measure": plural("medida de 2 fl oz", "medidas de 2 fl oz"),
      "4 fl oz measure": plural("medida de 4 fl oz", "medidas de 4 fl oz"),
      "8 fl oz measure": plural("medida de 8 fl oz", "medidas de 8 fl oz"),
      "16 fl oz measure": plural("medida de 16 fl oz", "medidas de 16 fl oz"),
      "10 mL measure": plural("medida de 10 mL", "medidas de 10 mL"),
      "25 mL measure": plural("medida de 25 mL", "medidas de 25 mL"),
      "50 mL measure": plural("medida de 50 mL", "medidas de 50 mL"),
      "100 mL measure": plural("medida de 100 mL", "medidas de 100 mL"),
      "250 mL measure": plural("medida de 250 mL", "medidas de 250 mL"),
      "500 mL measure": plural("medida de 500 mL", "medidas de 500 mL"),
      "1000 mL measure": plural("medida de 1000 mL", "medidas de 1000 mL"),
      "imperial fluid ounce measure": plural(
        "medida de una onza líquida imperial",
        "medidas de una onza líquida imperial",
      ),
      "1/4 imperial pint measure": fraction("1/4 de pinta imperial"),
      "1/2 imperial pint measure": fraction("1/2 pinta imperial"),
      "imperial pint measure": plural("medida de una pinta imperial", "medidas de una pinta imperial"),
      "imperial quart measure": plural(
        "medida de un cuarto de galón imperial",
        "medidas de un cuarto de galón imperial",
      ),
      "imperial gallon measure": plural("medida de un galón imperial", "medidas de un galón imperial"),
      "1 mL syringe": marked("jeringa de 1 mL", "jeringas de 1 mL"),
      "5 mL syringe": marked("jeringa de 5 mL", "jeringas de 5 mL"),
      "10 mL syringe": marked("jeringa de 10 mL", "jeringas de 10 mL"),
      "20 mL syringe": marked("jeringa de 20 mL", "jeringas de 20 mL"),
      "50 mL syringe": marked("jeringa de 50 mL", "jeringas de 50 mL"),
      "10 mL cylinder": marked("probeta de 10 mL", "probetas de 10 mL"),
      "25 mL cylinder": marked("probeta de 25 mL", "probetas de 25 mL"),
      "50 mL cylinder": marked("probeta de 50 mL", "probetas de 50 mL"),
      "100 mL cylinder": marked("probeta de 100 mL", "probetas de 100 mL"),
      "250 mL cylinder": marked("probeta de 250 mL", "probetas de 250 mL"),
      "500 mL cylinder": marked("probeta de 500 mL", "probetas de 500 mL"),
      "1000 mL cylinder": marked("probeta de 1000 mL", "probetas de 1000 mL"),
      "200 g scale": marked("báscula de 200 g", "básculas de 200 g"),
      "0.01 g scale": marked("báscula de 0.01 g", "básculas de 0.01 g"),
      "5 kg scale": marked("báscula de 5 kg", "básculas de 5 kg"),
      "5 lb scale": marked("báscula de 5 libras", "básculas de 5 libras"),
      "50 lb scale": marked("báscula de 50 libras", "básculas de 50 libras"),
    },
    units: {
      in: plural("pulgada", "pulgadas"),
      ft: plural("pie", "pies"),
      yd: plural("yarda", "yardas"),
      rod: plural("rod (16.5 pies)", "rods (16.5 pies)"),
      chain: plural("cadena (66 pies)", "cadenas (66 pies)"),
      mi: plural("milla", "millas"),
      in2: plural("pulgada cuadrada", "pulgadas cuadradas"),
      ft2: plural("pie cuadrado", "pies cuadrados"),
      yd2: plural("yarda cuadrada", "yardas cuadradas"),
      rod2: plural("rod cuadrado", "rods cuadrados"),
      ac: plural("acre", "acres"),
      are: plural("área (100 m²)", "áreas (100 m²)"),
      tsp: plural("cucharadita", "cucharaditas"),
      tbsp: plural("cucharada", "cucharadas"),
      fl_oz: plural("onza líquida", "onzas líquidas"),
      cup: plural("taza", "tazas"),
      pt: plural("pinta", "pintas"),
      qt: plural("cuarto de galón", "cuartos de galón"),
      gal: plural("galón", "galones"),
      in3: plural("pulgada cúbica", "pulgadas cúbicas"),
      ft3: plural("pie cúbico", "pies cúbicos"),
      ac_ft: plural("acre-pie", "acres-pie"),
      imp_fl_oz: plural("onza líquida imperial", "onzas líquidas imperiales"),
      imp_pt: plural("pinta imperial", "pintas imperiales"),
      imp_qt: plural("cuarto de galón imperial", "cuartos de galón imperiales"),
      imp_gal: plural("galón imperial", "galones imperiales"),
      metric_tsp: plural("cucharadita métrica", "cucharaditas métricas"),
      metric_tbsp: plural("cucharada métrica", "cucharadas métricas"),
      au_tbsp: plural("cucharada australiana", "cucharadas australianas"),
      metric_cup: plural("taza métrica", "tazas métricas"),
      plant: plural("planta", "plantas"),
      tree: plural("árbol", "árboles"),
      pot: plural("maceta", "macetas"),
      spot: plural("punto", "puntos"),
      oz: plural("onza de peso", "onzas de peso"),
      lb: plural("libra", "libras"),
      mph: plural("milla por hora", "millas por hora"),
    },
    // Titles of publications stay as they are, so that they can be found.
    sources: {
      definition: "definición",
      "plane geometry": "geometría plana",
      "plane trigonometry": "trigonometría plana",
      counting: "conteo",
      "method of coordinates (shoelace formula)": "método de coordenadas (fórmula del cordón)",
      "trapezoidal rule": "regla del trapecio",
      "Simpson's one-third rule": "regla de Simpson de un tercio",
      "mid-ordinate rule": "regla de la ordenada media",
      "common practice, no source": "práctica común",
      "metric kitchen measure: common practice, no source": "medida métrica de cocina: práctica común",
      "rate = volume / area, by definition": "volumen de aplicación = volumen / área, por definición",
      "volume = rate × area, by definition": "volumen = volumen de aplicación × área, por definición",
      "definition of a speed": "definición de velocidad",
      "definition of speed": "definición de velocidad",
      "definition of an average flow": "definición de una descarga promedio",
      "definition of an average speed": "definición de velocidad promedio",
      "definition of a deviation in percent": "definición de diferencia en por ciento",
      "the same water, with more or less of the stock drawn into it":
        "la misma agua, con más o menos solución madre inyectada",
      "definition of a mean": "definición de promedio",
      "definition of a flow": "definición de descarga",
      "definition of a fraction": "definición de fracción",
      "definition of a rate per area": "definición de cantidad por área",
      "definition of bulk density": "definición de densidad aparente",
      "by definition of percent and parts per million": "por definición de por ciento y partes por millón",
      "by definition of the rate": "por definición",
      "by definition of what a product contains": "por definición de lo que contiene un producto",
      "the same strength in every load, by definition of the rate":
        "la misma concentración en cada carga, por definición de la dosis",
      "sum of what the tools hold": "suma de lo que miden los utensilios",
      "sum of the plots": "suma de las parcelas",
      "textbook statistics": "estadística de libro de texto",
      "the residual mixes with the water of each rinse, and the same volume stays":
        "el residuo se mezcla con el agua de cada enjuague, y queda el mismo volumen",
      "Heron's formula, as W. Kahan arranges it": "fórmula de Herón, en la forma de W. Kahan",
      "the product stays the same while the volume grows, by definition of strength":
        "el producto no cambia mientras el volumen crece, por definición de la concentración",
      "dilution, C1 V1 = C2 V2": "dilución, C1 V1 = C2 V2",
      "C1 * V1 = C2 * V2: the dissolved amount stays the same": "C1 * V1 = C2 * V2: lo disuelto no cambia",
      "law of flow through an orifice (Torricelli), from memory":
        "ley del flujo por un orificio (Torricelli), de memoria",
      "follows from rate = flow / (speed * width) and the law of flow through an orifice":
        "se deduce de volumen de aplicación = descarga / (velocidad * ancho) y de la ley del flujo por un orificio",
    },
    text: {
      title: "Hoja de trabajo de la aplicación",
      cardTitle: "Tarjeta de campo",
      summary: "El trabajo",
      what: "Qué",
      howMuch: "Cuánto",
      treatedArea: "Área tratada",
      groundArea: "Área del terreno",
      outputRate: "Volumen de aplicación",
      number: "Cantidad",
      eachGets: "Por unidad",
      eachTimed: "{time} de aplicación ({volume})",
      band: "Banda",
      strip: "Franja",
      onEachRow: "{width} en cada hilera",
      onOneSide: "{width} en un lado de cada hilera",
      onBothSides: "{width} en los dos lados de cada hilera",
      rowLength: "Largo de hilera",
      perLength: "Mezcla por largo de hilera",
      totalMix: "Mezcla total",
      totalOf: "{total} ({parts})",
      mixForPlot: "{volume} para la parcela",
      mixForJob: "{volume} para el trabajo",
      mixExtra: "{volume} de extra",
      mixInHose: "{volume} en la manguera",
      leftover: "Sobrante al terminar la parcela",
      leftoverJob: "Sobrante al terminar el trabajo",
      leftoverWithArea: "{leftover}; lo que queda en el tanque alcanza para {area} más",
      rateOf: "Dosis de {product}",
      rateOfActive: "{rate} de ingrediente activo",
      rateOfMix: "{parts} {parts:one=parte;other=partes} en {to} partes de mezcla",
      rateOfWater: "{parts} {parts:one=parte;other=partes} por cada {to} partes de agua",
      rateOnGround: "{rate} de terreno",
      load: "Carga {number} de {count}",
      loads: "Cargas del tanque",
      product: "Producto",
      amount: "Cantidad",
      measure: "Medir",
      fillTo: "{carrier} en el tanque, con los productos",
      areaWithRows: "{area} (más o menos {rows})",
      where: "Dónde",
      plotOrder: "Parcelas, en este orden",
      rowOrder: "Hileras, en este orden",
      plotNumber: "la parcela {number}",
      loadsAlike: "Cargas {loads} de {count}, cada una",
      loadsPair: "{from} y {to}",
      loadsFromTo: "{from} a {to}",
      byVolume: "{rate} (por volumen)",
      weightInVolume: "{rate} (peso en volumen)",
      about: "más o menos {area}",
      upTo: "hasta {area}",
      covers: "Cubre {area}.",
      rows: "{n} {count:one=hilera;other=hileras}",
      beds: "{n} {count:one=cama;other=camas}",
      passes: "{n} {count:one=pasada;other=pasadas}",
      lengthOfRow: "{length} de hilera",
      rowNumber: "la hilera {number}",
      bedNumber: "la cama {number}",
      passNumber: "la pasada {number}",
      passesAlong: "{passes} a lo largo del lado de {side}",
      partOfPlot: "{part} de la parcela",
      partOf: "{percent} de {plot}",
      bothSides: "los dos lados de {row}",
      endOf: "el final de {row}",
      plotEnd: "el final de la parcela",
      lastPassOf: "Última pasada",
      lastPass:
        "de solo {width} de ancho: no aplique donde ya aplicó. Si no puede rociar tan angosto, haga todas las pasadas de {even} y calibre de nuevo",
      lastPassRows: "solo {rows}: cierre lo que rociaría a un lado",
      lastPasses: "más angosta que las otras en algunas parcelas: no aplique donde ya aplicó",
      downRow: "{part} de {row}",
      halfDownRow: "la mitad de {row}",
      placeInPlot: "{place} en {plot}",
      sprayTo: "Aplique más o menos {covers}, hasta {place}.",
      sprayRest: "Aplique el resto, hasta {place}.",
      sprayAll: "Aplique. Esta carga alcanza para todo el trabajo.",
      runOut: "Revise dónde se acaba cada carga: {ends}.",
      loadRunsOut: "la carga {load} después de más o menos {done}",
      doesRest: "La carga {load} es la última: pare al final del trabajo.",
      stopBefore: "Si la carga {load} se acaba antes de {least}, pare y calibre de nuevo.",
      stopOutside:
        "Si la carga {load} se acaba antes de {least} o después de {most}, pare y calibre de nuevo.",
      sprayOut: "Aplique hasta vaciar el tanque{covers}. Marque dónde para y empiece ahí la próxima carga.",
      useOut:
        "Rocíe o riegue hasta vaciar el tanque{covers}. Marque dónde para y empiece ahí la próxima carga.",
      outCovers: ": {covers}",
      outTo: ": más o menos {covers}, hasta {place}",
      outEach: ": {covers} por carga",
      topUpFull: "Complete con agua hasta llenar el tanque.",
      fillAll: "el tanque lleno, con los productos",
      spareLoad: "Toda esta carga es extra. Prepárela solo si le falta mezcla.",
      spraySpare: "Siga desde donde se le acabó la mezcla, hasta el final del trabajo.",
      mixToMark: "{volume} para terminar en marcas",
      fillToMark: "hasta la marca de {carrier}, con los productos",
      topUpToMark: "Complete con agua hasta la marca de {carrier}.",
      leftInTankFor:
        "Lo que queda en el tanque al terminar el trabajo debe ser más o menos {left} (alcanza para {area}). No lo aplique donde ya aplicó.",
      leftInTank: "Lo que queda en el tanque al terminar el trabajo debe ser más o menos {left}.",
      mixingOrder:
        "Empiece con la mitad del agua. Agregue en este orden, mezclando bien cada uno antes del siguiente, salvo que la etiqueta diga otra cosa: {order}.",
      doNotMix: "No prepare esta mezcla. Corrija lo que dicen las advertencias e imprima de nuevo.",
      rinse: "Enjuague los utensilios de medir y cada envase vacío, y eche el agua al tanque.",
      halfFill: "Agregue {half} de agua limpia. Agite (mochila: cierre y agite).",
      pour: "{product}: {amount}. Mida {measures} ({remark}).",
      pourOtherwise:
        "{product}: {amount}. No se puede medir con estos utensilios. Consiga uno que sirva antes de preparar esta carga.",
      pourWithTool:
        "{product}: {amount}. Antes de mezclar, consiga un utensilio más: {tool}. Mida {measures} ({remark}).",
      pourBags:
        "{product}: {amount}, en bolsas solubles. No abra las bolsas. Use bolsas enteras; si no sale un número entero de bolsas, cambie la carga.",
      wholeBags: "bolsas enteras, sin abrir; si no sale un número entero de bolsas, cambie la carga",
      topUp: "Complete con agua hasta {carrier}.",
      waterByJug:
        "¿No hay marca en {carrier}? Mida {water} de agua en una jarra y use toda en los dos pasos que siguen.",
      spray: "Aplique. Esta carga cubre {area}.",
      use: "Aplique esta carga: rocíela o riéguela. Alcanza para {area}.",
      useAll: "Aplique esta carga: rocíela o riéguela.",
      severalLoads: "{loads} cargas de {load}",
      fillingOrder:
        "{products:one=;other=Mezcle bien cada producto antes de agregar el siguiente. }Si la etiqueta dice otra cosa, siga la etiqueta.",
      exactly: "exacto",
      under: "{percent} de menos",
      over: "{percent} de más",
      fills: "{count} {tools}",
      fillsOf: "medidas de {tool}",
      toMark: "{mark} en {tool}",
      toMarkTimes: "{count} veces {mark} en {tool}",
      weigh: "{mark} en {tool}",
      weighTimes: "{count} veces {mark} en {tool}",
      doNotMeasure: "no se puede medir con estos utensilios",
      totalProduct: "Producto total, todas las cargas",
      working: "Cálculos",
      unitsInOne: "{amount} en 1 {unit}",
      rounding:
        "Los números se redondean para mostrarlos; las cantidades de producto, hacia abajo. Cada paso usa el número sin redondear.",
      sources: "Fuentes",
      cautions: "Precauciones",
      warnings: "Revise antes de empezar",
      severityNote: "Nota",
      severityWarning: "Advertencia",
      severityRefusal: "No aplique",
      ofProduct: "{product}: {issue}",
      ofPlot: "En {plot}: {issue}",
      ofProductOnPlot: "{product} en {plot}: {issue}",
      perPass: "Dosis en cada dirección",
      testResult: "Salida de la esparcidora en la prueba",
      nutrient: "{nutrient} que aporta",
      totalOfProduct: "Total de {product}",
      bags: "Sacos por comprar",
      bagsAndRest: "{bags} (sobrante: {rest})",
      reEntry: "No entrar durante",
      beforeHarvest: "No cosechar durante",
      days: "{days} {days:one=día;other=días}",
      waitOrMore: "{wait}, o más según la etiqueta de {products}",
      fillsAndPlots: "Llenados y parcelas",
      spreadIt: "Llenar y esparcir",
      lengthwise: "A lo largo de todo: {perDirection}",
      crosswise: "A lo ancho de todo: {perDirection}",
      fillHopper: "Llene la tolva con {hopper} y espárzalo.",
      fillHopperTimes: "Llene la tolva con {hopper} y espárzalo. Hágalo {times} veces.",
      spreadPlot: "En {plot}: pese {amount} y espárzalo.",
      spreadPieces: "En {plot}: pese {each} para cada una de las {rows} y espárzalo ({amount} en total).",
      spreadRow: "Pese {amount} para {place} ({length}) y espárzalo.",
      spreadRun: "En {plot}: pese {each} por cada {length} de las {rows} y espárzalo ({amount} en total).",
      hopperHolds: "En la tolva caben {hopper}: llénela las veces que haga falta.",
      giveEach: "Dé a cada una {each}.",
      hopperFor: "Una tolva llena alcanza para más o menos {count}.",
      spreadRest:
        "Si sobra al terminar, no esparza nada dos veces. Si falta más de una décima parte, pare y pruebe la esparcidora de nuevo.",
      lastFill: "Para el último llenado, pese {lastFill} y espárzalo.",
      onlyFill: "Pese {lastFill}, llene la tolva y espárzalo.",
      doNotSpread: "No esparza",
      doNotFill: "No llene la tolva. Corrija lo que dicen las advertencias e imprima de nuevo.",
      spreadingTitle: "Hoja de trabajo de la esparcidora",
    },
  }))(),
);

/**
 * What a form calls its fields in Spanish, for `formFields`.
 *
 * @example
 * ```ts
 * import { formFields } from "swath-to-spoon/schema";
 * import { SPANISH_FORM_LABELS } from "swath-to-spoon/words/es";
 *
 * const form = formFields("plan", { labels: SPANISH_FORM_LABELS });
 * console.log(form.find(({ path }) => path === "plot.rowLength")?.label); // Largo de la hilera
 * ```
 */
export const SPANISH_FORM_LABELS: Readonly<Record<string, string>> = /* @__PURE__ */ frozen({
  "plot.kind": "Forma de la parcela",
  "add.kind": "Figura que se suma",
  "subtract.kind": "Figura que se descuenta",
  "calibration.kind": "Cómo se calibró",
  "measurement.kind": "Cómo se calibró",
  "size.kind": "De qué depende el tamaño",
  kind: "Tipo",
  fraction: "Parte que se trata",
  name: "Nombre",
  "plot.name": "Nombre de la parcela",
  "products.name": "Nombre del producto",
  "product.name": "Nombre del producto",
  "tools.name": "Nombre del utensilio",
  length: "Largo",
  width: "Ancho",
  base: "Base",
  height: "Altura",
  top: "Lado paralelo a la base",
  "sides[]": "Largo de un lado",
  diameter: "Diámetro",
  outerDiameter: "Diámetro exterior",
  innerDiameter: "Diámetro interior",
  radius: "Radio",
  angleDegrees: "Ángulo en grados",
  "offsets[]": "Ancho medido",
  spacing: "Distancia entre anchos",
  rule: "Cómo se unen los anchos",
  "stations[][0]": "Distancia sobre la línea",
  "stations[][1]": "Distancia a la orilla",
  "corners[][0]": "Distancia a lo ancho",
  "corners[][1]": "Distancia a lo largo",
  unit: "Unidad",
  rows: "Número de hileras",
  rowLength: "Largo de la hilera",
  "rowLengths[]": "Largo de la hilera",
  rowSpacing: "Distancia entre hileras",
  bandWidth: "Ancho de la banda",
  beds: "Número de camas",
  bedLength: "Largo de la cama",
  "bedLengths[]": "Largo de la cama",
  bedWidth: "Ancho de la cama",
  bedSpacing: "Distancia entre camas",
  stripWidth: "Ancho de la franja de un lado",
  "plot.sides": "Lados de cada hilera",
  "spots.count": "Número de manchones",
  "spots.diameter": "Diámetro de un manchón",
  "spots.length": "Largo de un manchón",
  "spots.width": "Ancho de un manchón",
  "spots.each": "Área de un manchón",
  ground: "Área del terreno",
  treated: "Área tratada",
  used: "Agua usada (la que repuso)",
  swath: "Ancho de una pasada",
  distance: "Largo de la franja de prueba",
  limit: "Cuánto puede variar una prueba",
  catchUnit: "Unidad de lo recogido",
  rateUnit: "Unidad del volumen de aplicación",
  caught: "Recogido de una boquilla",
  "catches[]": "Recogido de una boquilla",
  time: "Tiempo en que se recogió",
  speed: "Velocidad de trabajo",
  "speed.distance": "Distancia recorrida",
  "speed.time": "Tiempo en recorrerla",
  "calibration.width": "Ancho de una boquilla o descarga",
  "measurement.width": "Ancho de una boquilla o descarga",
  nozzlesPerRow: "Boquillas que rocían una hilera",
  "calibration.sides": "Lados tratados en la prueba",
  "measurement.sides": "Lados tratados en la prueba",
  sides: "Lados de cada hilera",
  "calibration.rowLength": "Largo de la hilera de prueba",
  "measurement.rowLength": "Largo de la hilera de prueba",
  plantSpacing: "Distancia entre plantas",
  area: "Área tratada",
  "calibration.area": "Área de la prueba",
  "measurement.area": "Área de la prueba",
  plants: "Número de plantas",
  "calibration.plants": "Plantas de la prueba",
  "measurement.plants": "Plantas de la prueba",
  flow: "Descarga",
  rate: "Dosis",
  "calibration.rate": "Volumen de aplicación",
  "measurement.rate": "Volumen de aplicación",
  date: "Fecha",
  "record.date": "Fecha de la calibración",
  operator: "Operador",
  nozzle: "Tipo y tamaño de la boquilla",
  nozzleCount: "Número de boquillas",
  nozzleSpacing: "Distancia entre boquillas",
  pressure: "Presión",
  gear: "Marcha y acelerador",
  "conditions.ground": "Tipo de terreno",
  liquid: "Líquido aplicado",
  density: "Densidad",
  application: "Tipo de aplicación",
  tank: "Tamaño del tanque",
  workingFill: "Llenar el tanque hasta",
  marks: "El tanque tiene una marca cada",
  "marks[]": "Marca del tanque",
  lineVolume: "Lo que cabe en manguera, lanza y aguilón",
  leastLoad: "Carga mínima que la bomba puede aplicar",
  rowsPerPass: "Hileras por pasada",
  "reserve.percent": "Mezcla extra, %",
  percent: "Porcentaje",
  upTo: "Mezcla extra como máximo, %",
  volume: "Volumen",
  "reserve.volume": "Mezcla extra",
  roundUpTo: "Redondear la mezcla hacia arriba a múltiplos de",
  split: "Cómo se divide la mezcla",
  rowsPerLoad: "Hileras por carga como máximo",
  "fills[]": "Llenado de una carga",
  form: "Cómo se mide",
  "products.rate": "Dosis de la etiqueta",
  "product.rate": "Dosis de la etiqueta",
  low: "Dosis más baja de la etiqueta",
  high: "Dosis más alta de la etiqueta",
  chosen: "Dosis que escoge",
  activeIngredient: "Dosis de ingrediente activo",
  "products.activeIngredient": "Ingrediente activo",
  "product.activeIngredient": "Ingrediente activo",
  per: "Área de la dosis",
  contains: "Ingrediente activo en el producto",
  "contains.N": "Nitrógeno (N), %",
  "contains.P2O5": "Fosfato (P2O5), %",
  "contains.K2O": "Potasa (K2O), %",
  "contains.P": "Fósforo (P), %",
  "contains.K": "Potasio (K), %",
  "contains.S": "Azufre (S), %",
  "contains.SO3": "Azufre como SO3, %",
  "contains.Mg": "Magnesio (Mg), %",
  "contains.MgO": "Magnesio como MgO, %",
  "contains.Ca": "Calcio (Ca), %",
  "contains.CaO": "Calcio como CaO, %",
  nutrient: "Nutriente",
  amount: "Nutriente que hace falta",
  parts: "Partes de producto",
  to: "En cuántas partes",
  of: "Partes de mezcla o de agua",
  formulation: "Formulación",
  inSolubleBag: "Viene en bolsa que se disuelve",
  min: "Dosis mínima",
  max: "Dosis máxima",
  leastCarrier: "Agua mínima",
  mostCarrier: "Agua máxima",
  seasonMax: "Máximo por temporada",
  mostApplications: "Aplicaciones por temporada como máximo",
  daysBetween: "Días entre aplicaciones",
  "soFar.rate": "Aplicado esta temporada",
  applications: "Aplicaciones de esta temporada",
  daysSinceLast: "Días desde la última aplicación",
  bulkDensity: "Peso por volumen",
  registration: "Número de registro",
  reEntryHours: "Intervalo de entrada restringida (REI), horas",
  preHarvestDays: "Espera antes de cosechar (PHI), días",
  bag: "Un saco trae",
  "price.amount": "Precio",
  "price.per": "El precio es por",
  labelPermitsDilution: "La etiqueta permite diluirlo antes",
  "steps[]": "Paso de la preparación",
  emulsionsFirst: "Emulsiones antes que líquidos solubles",
  tools: "Utensilios de medir",
  capacity: "Capacidad del utensilio",
  graduation: "El utensilio tiene una marca cada",
  least: "Lo menos que lee el utensilio",
  longestAge: "Días que vale una calibración",
  addedWater: "Agua agregada sin producto",
  "currency.code": "Moneda",
  decimals: "Decimales",
  leastRate: "Volumen de aplicación más bajo de lo usual",
  mostRate: "Volumen de aplicación más alto de lo usual",
  slowest: "Velocidad pareja más lenta",
  fastest: "Velocidad pareja más rápida",
  readingPercent: "Lectura menos fina, %",
  nozzlePercent: "Cuánto puede variar una boquilla, %",
  calibrationDays: "Días que vale una calibración",
  lastLoadPercent: "Última carga más chica, %",
  bandSwath: "Más angosto que esto parece banda",
  "size.volume": "Mezcla por preparar",
  "size.count": "Cuántas",
  "size.each": "Mezcla para cada una",
  "each.used": "Agua usada en varias",
  "each.plants": "Cuántas fueron",
  "flow.caught": "Cantidad recogida de la lanza",
  "each.time": "Tiempo en cada una",
  "size.length": "Todas las hileras juntas",
  "size.rate": "Mezcla por largo de hilera",
  "rate.used": "Agua usada en una hilera de prueba",
  "rate.length": "Largo de la hilera de prueba",
  hopper: "En la tolva caben",
  directions: "Direcciones",
  "test.used": "Producto usado",
  "test.swath": "Ancho de una pasada",
  "test.distance": "Largo de la franja",
  "test.rowLength": "Largo de la hilera de prueba",
});
