import type { Messages } from "swath-to-spoon/worksheet";

type Spanish = typeof import("swath-to-spoon/words/es");

/** A text of the page in each of its languages. */
export type Text = readonly [english: string, spanish: string];

export type Language = "en" | "es";

/** Whose numbers are read and written: the person's own country, whatever the language of the words. */
export const locale = navigator.language || "en-US";

let language: Language = "en";
let spanish: Spanish | undefined;

/** Switches the page to a language. The library's Spanish is loaded when somebody asks for it. */
export async function speak(next: Language): Promise<void> {
  spanish = next === "es" ? await import("swath-to-spoon/words/es") : undefined;
  language = next;
  document.documentElement.lang = next;
}

/** How the library writes for this person. */
export function writing(): { readonly locale: string; readonly words?: Messages } {
  return spanish === undefined ? { locale } : { locale, words: spanish.SPANISH_WORDS };
}

/** What the library calls the fields of a form, in the language of the page; English where there is no other. */
export function labels(): Spanish["SPANISH_FORM_LABELS"] {
  return spanish?.SPANISH_FORM_LABELS ?? {};
}

/** A text in the language of the page, with its figures put in. */
export function say(text: Text, figures: Readonly<Record<string, string | number>> = {}): string {
  return text[language === "es" ? 1 : 0].replace(/\{(\w+)\}/g, (_, name) => String(figures[name]));
}

/** A text for one, then after a bar for several. */
export function count(text: Text, n: number): string {
  const [one = "", several = ""] = say(text, { n: new Intl.NumberFormat(locale).format(n) }).split("|");
  return n === 1 ? one : several;
}

/** Every text that is not a field's or a job's own. */
export const W = {
  intro: [
    "Answer a few questions. You get what goes in each tank.",
    "Conteste unas preguntas. Verá qué va en cada tanque.",
  ],
  units: ["Units", "Unidades"],
  us: ["US units", "EE. UU."],
  imperial: ["Imperial", "Imperial"],
  metric: ["Metric", "Métrico"],
  example: ["Try an example", "Ver un ejemplo"],
  clear: ["Clear this job", "Borrar lo anotado"],
  undo: ["Undo", "Deshacer"],
  whatJob: ["What is the job?", "¿Qué va a hacer?"],
  optional: ["(optional)", "(opcional)"],
  unitOf: ["Unit of: {label}", "Unidad de: {label}"],
  required: ["Required.", "Obligatorio."],
  done: ["done", "listo"],
  left: ["1 field left|{n} fields left", "Falta 1 campo|Faltan {n} campos"],
  fix: ["1 to fix|{n} to fix", "1 por corregir|{n} por corregir"],
  chooseJob: ["Choose a job first", "Escoja primero un trabajo"],
  next: ["Next field", "Siguiente campo"],
  seeAnswer: ["See the answer", "Ver la respuesta"],
  seeWhy: ["See why", "Ver por qué"],
  ready: ["Ready: 1 tank load|Ready: {n} tank loads", "Listo: 1 carga|Listo: {n} cargas"],
  readyToSpread: ["Ready", "Listo"],
  refused: ["Do not do this job", "No haga este trabajo"],
  answer: ["Your answer", "Su respuesta"],
  answerHere: ["Your answer shows up here.", "Aquí aparece su respuesta."],
  stillToDo: ["Still to do:", "Falta:"],
  thisSection: ["Check this section", "Revise esta parte"],
  mixing: ["Step by step: half the water first", "Paso a paso: primero la mitad del agua"],
  ways: ["Ways to mix", "Formas de preparar"],
  fullTanks: ["Full tanks, then the rest", "Tanques llenos y luego el resto"],
  equalLoads: ["Equal loads", "Cargas iguales"],
  measures: ["1 measure in all|{n} measures in all", "1 medida en total|{n} medidas en total"],
  notMeasurable: ["can't be measured", "no se puede medir"],
  toCheck: ["To check", "Por revisar"],
  check: ["1 thing to check|{n} things to check", "1 cosa por revisar|{n} cosas por revisar"],
  tankAt: ["Tank {percent} full", "Tanque lleno al {percent}"],
  drawn: ["Plot drawn to scale", "Dibujo a escala"],
  print: ["Print the field card", "Imprimir la tarjeta de campo"],
  math: ["Show the math", "Ver los cálculos"],
  back: ["Edit the job", "Cambiar los datos"],
  date: ["Date", "Fecha"],
  mixedBy: ["Mixed by", "Preparó"],
  nothingToPrint: [
    "Nothing to print yet. Finish the form first.",
    "Todavía no hay nada que imprimir. Llene primero el formulario.",
  ],
  addProduct: ["Add another product", "Agregar otro producto"],
  removeProduct: ["Remove this product", "Quitar este producto"],
  addRun: ["Add another run", "Agregar otra prueba"],
  removeRun: ["Remove the last run", "Quitar la última prueba"],
  more: ["Label limits and record (optional)", "Límites de la etiqueta y registro (opcional)"],
  offline: ["Saved on this device. Works without a signal.", "Guardado en este aparato. Funciona sin señal."],
  rowsSize: ["{n} rows, each {length} long", "{n} hileras de {length} de largo"],
  bandSize: ["a band {width} wide on each row", "una banda de {width} de ancho en cada hilera"],
  apart: ["rows {width} apart", "hileras a {width}"],
  passes: ["{n} passes, {distance} to walk", "{n} pasadas, {distance} por caminar"],
  blockSize: ["{length} long, {width} wide", "{length} de largo, {width} de ancho"],
  passWidth: ["{n} passes, each {width} wide", "{n} pasadas de {width} de ancho"],
  pastEdge: ["the pass sprays {width} past the edge", "la pasada se sale {width} de la orilla"],
  overlap: [
    "the last pass overlaps by {width}: shut off over the part already sprayed",
    "la última pasada se traslapa {width}: no aplique otra vez sobre lo ya tratado",
  ],
  across: ["{width} across", "{width} de ancho"],
  shortened: [
    "Drawing shortened at the zigzag; otherwise to scale.",
    "Dibujo acortado en el zigzag; lo demás, a escala.",
  ],
  firstShown: ["Shows the first {n}.", "Muestra las primeras {n}."],
  boundaryFile: ["Open a GeoJSON file", "Abrir un archivo GeoJSON"],
  walk: ["Walk it with this phone", "Caminar con este teléfono"],
  walkStop: ["Stop: I am back at the start", "Parar: volví al inicio"],
  walking: [
    "{n} points, within {meters} m. Walk along the edge.",
    "{n} puntos, con un error de hasta {meters} m. Camine por la orilla.",
  ],
  walkWait: ["Waiting for the phone's position.", "Esperando la posición del teléfono."],
  noPosition: ["No position: {reason}", "Sin posición: {reason}"],
  notGeoJson: [
    "This file has no single plot as GeoJSON. Save one polygon and open that.",
    "Este archivo no tiene una sola parcela en GeoJSON. Guarde un polígono y ábralo.",
  ],
  myJobs: ["My jobs and season", "Mis trabajos y temporada"],
  jobName: ["Name of this job or place", "Nombre de este trabajo o lugar"],
  otherJob: ["Open a job", "Abrir un trabajo"],
  newJob: ["New job", "Trabajo nuevo"],
  deleteJob: ["Delete this job", "Borrar este trabajo"],
  job: ["Job {n}", "Trabajo {n}"],
  export: ["Save all to a file", "Guardar todo en un archivo"],
  import: ["Read a file", "Leer un archivo"],
  notOurs: ["This file has no jobs of this page.", "Este archivo no tiene trabajos de esta página."],
  imported: ["Jobs read: {jobs}, records: {records}.", "Trabajos leídos: {jobs}, registros: {records}."],
  stays: ["Nothing leaves this device.", "Nada sale de este aparato."],
  season: ["{place}: season so far", "{place}: la temporada hasta hoy"],
  noRecords: ["No applications recorded here yet.", "Todavía no hay aplicaciones registradas aquí."],
  deleteRecord: ["Delete the record of {date}", "Borrar el registro del {date}"],
  applications: ["1 application|{n} applications", "1 aplicación|{n} aplicaciones"],
  seasonTotal: ["{rate} total", "{rate} en total"],
  sprayed: ["Record it after spraying", "Registrar después de aplicar"],
  spread: ["Record it after spreading", "Registrar después de esparcir"],
  started: ["Started", "Empezó"],
  finished: ["Finished", "Terminó"],
  all: ["Made or loaded, if not all of it", "Lo preparado o cargado, si no fue todo"],
  leftOver: ["Mix left over, tank and hose", "Mezcla que sobró, en tanque y manguera"],
  granulesLeft: ["Granules left over", "Gránulos que sobraron"],
  applicator: ["Applied by", "Aplicó"],
  certification: ["Certification number", "Número de certificación"],
  location: ["Location", "Ubicación"],
  crop: ["Crop or site", "Cultivo o sitio"],
  weather: ["Wind and weather", "Viento y clima"],
  notes: ["Notes", "Notas"],
  save: ["Save the record", "Guardar el registro"],
  saved: ["Saved.", "Guardado."],
  applied: [
    "{product}: {amount} applied, {percent} of the planned rate",
    "{product}: se aplicó {amount}, {percent} de la dosis planeada",
  ],
  scales: [
    "I have scales: 200 g by 0.1 g, 5 kg by 1 g",
    "Tengo básculas de 200 g (marca 0.1 g) y 5 kg (1 g)",
  ],
  syringes: ["I have syringes, 1 to 50 mL", "Tengo jeringas de 1 a 50 mL"],
} as const satisfies Readonly<Record<string, Text>>;
