import { type Choice, choiceIn, hashOf } from "./choice.ts";
import { buildChoose } from "./choose.ts";
import { byId, radios } from "./dom.ts";
import { buildPractice } from "./practice.ts";
import { buildPrint } from "./print.ts";
import { LANGUAGES, type Language } from "./words.ts";

let choice = choiceIn(location.hash, navigator.language.startsWith("es") ? "es" : "en");

function change(next: Partial<Choice>): void {
  choice = { ...choice, ...next };
  history.replaceState(null, "", hashOf(choice));
}

const NAMES = { en: LANGUAGES.en.name, es: LANGUAGES.es.name };

/** Builds the page in the language that was chosen. */
function build(): void {
  const { page } = LANGUAGES[choice.language];
  document.documentElement.lang = choice.language;
  document.title = page.title;
  byId("title").textContent = page.title;
  byId("lead").textContent = page.lead;
  byId("note").textContent = page.note;
  byId("languages").replaceChildren(
    radios("language", page.language, NAMES, choice.language, changeLanguage),
  );
  buildChoose(choice, change);
  buildPractice(() => choice, goTo);
  buildPrint(() => choice);
}

function changeLanguage(language: Language): void {
  change({ language });
  build();
  // The radio button that was pressed is a new one now.
  byId("languages").querySelector<HTMLInputElement>(":checked")?.focus();
}

function goTo(set: string): void {
  change({ set });
  byId<HTMLInputElement>("set").value = set;
}

for (const id of ["choose", "print"]) byId(id).addEventListener("submit", (event) => event.preventDefault());

build();
