import { ENGLISH_PRACTICE_WORDS, type PracticeMessages } from "swath-to-spoon/practice";
import { SPANISH_PRACTICE_WORDS } from "swath-to-spoon/words/es-practice";

export type Language = "en" | "es";

/** Every word of the page itself. Those of the problems are the library's. */
export interface PageWords {
  readonly title: string;
  readonly lead: string;
  readonly language: string;
  readonly choose: string;
  readonly topics: string;
  readonly levels: Readonly<Record<"1" | "2" | "3", string>>;
  readonly all: string;
  readonly none: string;
  readonly hardest: string;
  readonly units: string;
  readonly systems: Readonly<Record<"us" | "metric" | "imperial", string>>;
  readonly problems: string;
  readonly problemsHint: string;
  readonly practice: string;
  readonly set: string;
  readonly setHint: string;
  readonly start: string;
  readonly problemOf: string;
  readonly answer: string;
  readonly answerHint: string;
  readonly countHint: string;
  readonly lettersHint: string;
  readonly check: string;
  readonly what: string;
  readonly see: string;
  readonly mend: string;
  readonly firstStep: string;
  readonly nextStep: string;
  readonly lastStep: string;
  readonly next: string;
  readonly finish: string;
  readonly finished: string;
  readonly nextSet: string;
  readonly print: string;
  readonly students: string;
  readonly studentsHint: string;
  readonly studentsFault: string;
  readonly className: string;
  readonly optional: string;
  readonly workLines: string;
  readonly cards: string;
  readonly key: string;
  readonly keys: Readonly<Record<"short" | "long", string>>;
  readonly printSheets: string;
  readonly printKeys: string;
  readonly progress: string;
  readonly ready: string;
  readonly note: string;
}

const ENGLISH: PageWords = {
  title: "Practice problems",
  lead: "Choose what was taught. Practice here, or print sheets for a class.",
  language: "Language",
  choose: "Choose the problems",
  topics: "Topics: {number} of {all}",
  levels: {
    1: "Easy: a short formula",
    2: "Medium: a longer formula, or two short ones",
    3: "Hard: several steps that build on each other",
  },
  all: "All topics",
  none: "No topics",
  hardest: "Hardest problems",
  units: "Units",
  systems: { us: "US", metric: "Metric", imperial: "Imperial" },
  problems: "Problems in a set",
  problemsHint: "Leave blank for one of each topic.",
  practice: "Practice",
  set: "Set number",
  setHint: "The same number and choices always give the same problems.",
  start: "Start",
  problemOf: "Problem {number} of {all}",
  answer: "Your answer",
  answerHint: "In the unit of the question, or with a unit of your own.",
  countHint: "A whole number.",
  lettersHint: "The letters in order, such as BAC.",
  check: "Check",
  what: "What happened",
  see: "How to see it",
  mend: "What to do",
  firstStep: "Show the first step",
  nextStep: "Show the next step",
  lastStep: "That was the last step.",
  next: "Next problem",
  finish: "Finish",
  finished: "You got {right} of {all} right.",
  nextSet: "Next set",
  print: "Print for a class",
  students: "Number of students",
  studentsHint: "Each student gets a different set. The first has the set number above.",
  studentsFault: "Enter a whole number from 1 to 100.",
  className: "Class",
  optional: "optional",
  workLines: "Lines to work on under each problem",
  cards: "Cards to cut out",
  key: "Key",
  keys: { short: "Answers and common wrong answers", long: "With the working" },
  printSheets: "Print sheets",
  printKeys: "Print keys",
  progress: "{number} of {all} sets",
  ready: "Ready to print: {all}.",
  note: "The farms and products are invented. On a real farm, follow the label and local rules.",
};

const SPANISH: PageWords = {
  title: "Problemas de práctica",
  lead: "Escoja lo que se enseñó. Practique aquí, o imprima hojas para un grupo.",
  language: "Idioma",
  choose: "Escoja los problemas",
  topics: "Temas: {number} de {all}",
  levels: {
    1: "Fácil: una fórmula corta",
    2: "Medio: una fórmula más larga o dos cortas",
    3: "Difícil: varios pasos que dependen uno de otro",
  },
  all: "Todos los temas",
  none: "Ningún tema",
  hardest: "Dificultad máxima",
  units: "Unidades",
  systems: { us: "EE. UU.", metric: "Métricas", imperial: "Imperiales" },
  problems: "Problemas por serie",
  problemsHint: "Déjelo en blanco para uno de cada tema.",
  practice: "Práctica",
  set: "Número de serie",
  setHint: "El mismo número con las mismas opciones da siempre los mismos problemas.",
  start: "Empezar",
  problemOf: "Problema {number} de {all}",
  answer: "Su respuesta",
  answerHint: "En la unidad de la pregunta, o con otra unidad.",
  countHint: "Un número entero.",
  lettersHint: "Las letras en orden, como BAC.",
  check: "Revisar",
  what: "Qué pasó",
  see: "Cómo se nota",
  mend: "Qué hacer",
  firstStep: "Mostrar el primer paso",
  nextStep: "Mostrar el paso siguiente",
  lastStep: "Ese fue el último paso.",
  next: "Problema siguiente",
  finish: "Terminar",
  finished: "Acertó {right} de {all}.",
  nextSet: "Serie siguiente",
  print: "Imprimir para un grupo",
  students: "Número de estudiantes",
  studentsHint: "Cada estudiante recibe otra serie. La primera lleva el número de arriba.",
  studentsFault: "Escriba un número entero de 1 a 100.",
  className: "Grupo",
  optional: "opcional",
  workLines: "Renglones para trabajar en cada problema",
  cards: "Tarjetas para recortar",
  key: "Clave",
  keys: { short: "Respuestas y errores comunes", long: "Con los cálculos" },
  printSheets: "Imprimir hojas",
  printKeys: "Imprimir claves",
  progress: "{number} de {all} series",
  ready: "Listo para imprimir: {all}.",
  note: "Las granjas y los productos son inventados. En una granja real, siga la etiqueta y las reglas locales.",
};

interface LanguageWords {
  readonly name: string;
  readonly locale: string;
  readonly page: PageWords;
  readonly words: PracticeMessages;
}

export const LANGUAGES: Readonly<Record<Language, LanguageWords>> = {
  en: { name: "English", locale: "en-US", page: ENGLISH, words: ENGLISH_PRACTICE_WORDS },
  es: { name: "Español", locale: "es-US", page: SPANISH, words: SPANISH_PRACTICE_WORDS },
};

/** A text with its places filled. */
export function filled(text: string, values: Readonly<Record<string, number>>): string {
  return text.replace(/\{(\w+)\}/g, (_, name: string) => String(values[name]));
}
