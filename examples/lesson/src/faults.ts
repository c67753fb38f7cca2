import { isSprayMathError } from "swath-to-spoon";
import { issueText } from "swath-to-spoon/worksheet";
import { byId, showFault } from "./dom.ts";
import { LANGUAGES, type Language } from "./words.ts";

/** The fields of the page, by the place in the library's error. */
const FIELDS: Readonly<Record<string, string>> = {
  set: "set",
  answer: "answer",
  students: "students",
  "options.first": "set",
  "options.problems": "problems",
  "options.topics": "topics",
  "options.difficulty": "topics",
  "options.workLines": "lines",
};

/** Does something with what was entered. Where the library refuses it, the reason is shown beside its field, which gets the focus. */
export function attempt<T>(language: Language, work: () => T): T | undefined {
  for (const id of Object.values(FIELDS)) if (document.getElementById(`${id}-fault`) !== null) showFault(id);
  try {
    return work();
  } catch (error) {
    if (!isSprayMathError(error)) throw error;
    const { words, locale } = LANGUAGES[language];
    for (const issue of error.issues) {
      const id = FIELDS[issue.path];
      // Anything else is a bug of this page.
      if (id === undefined) throw error;
      showFault(id, issueText(issue, { words, locale }));
    }
    const field = byId(FIELDS[error.path] as string);
    // The topics have to be open for one of them to be pressed.
    if (field instanceof HTMLDetailsElement) field.open = true;
    (field.querySelector("input") ?? field).focus();
    return undefined;
  }
}
