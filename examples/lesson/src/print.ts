import { practiceSet, practiceSheet } from "swath-to-spoon/practice";
import { renderHtml, type SheetOfBlocks } from "swath-to-spoon/worksheet";
import { type Choice, numberIn, setOptions } from "./choice.ts";
import { button, byId, el, radios, showFault, textField, tickBox } from "./dom.ts";
import { attempt } from "./faults.ts";
import { filled, LANGUAGES } from "./words.ts";

type Key = "short" | "long";

interface Printing {
  readonly key: Key | undefined;
  readonly cards: boolean;
}

const MOST_STUDENTS = 100;

/** Builds the form that prints sheets and keys. */
export function buildPrint(choice: () => Choice): void {
  const { page } = LANGUAGES[choice().language];
  let key: Key = "short";
  let cards = false;
  const optional = (label: string): string => `${label} (${page.optional})`;
  byId("print").replaceChildren(
    el("h2", {}, page.print),
    textField("students", page.students, "1", { hint: page.studentsHint }),
    textField("class", optional(page.className), ""),
    textField("lines", optional(page.workLines), "6"),
    el(
      "p",
      { class: "choices" },
      tickBox(page.cards, cards, (isTicked) => {
        cards = isTicked;
      }),
    ),
    radios<Key>("key", page.key, page.keys, key, (next) => {
      key = next;
    }),
    el(
      "p",
      { class: "actions" },
      button(page.printSheets, () => printSheets(choice(), { key: undefined, cards }), { class: "strong" }),
      button(page.printKeys, () => printSheets(choice(), { key, cards })),
    ),
    el("p", { id: "progress", role: "status" }),
  );
}

const typed = (id: string): string => byId<HTMLInputElement>(id).value.trim();

/** Makes the sheets of a class one by one, says how far it is, and hands them to the browser's printing. */
async function printSheets(chosen: Choice, printing: Printing): Promise<void> {
  const { page } = LANGUAGES[chosen.language];
  const students = numberIn(typed("students"));
  if (!(students >= 1 && students <= MOST_STUDENTS)) {
    showFault("students", page.studentsFault);
    byId("students").focus();
    return;
  }
  const sheets: SheetOfBlocks[] = [];
  let set: string | number = chosen.set;
  while (sheets.length < students) {
    const made = attempt(chosen.language, () => sheetOf(set, chosen, printing));
    if (made === undefined) return;
    sheets.push(made.sheet);
    set = numberOf(made.set) + 1;
    byId("progress").textContent = filled(page.progress, { number: sheets.length, all: students });
    // The browser shows how far it is before the next one is made.
    await new Promise((shown) => setTimeout(shown));
  }
  printPage(renderHtml(sheets), page.print);
  byId("progress").textContent = filled(page.ready, { all: students });
}

/** The number of a set without its letter. */
export function numberOf(set: string): number {
  return Number(set.replace(/^\D+/, ""));
}

function sheetOf(
  number: string | number,
  chosen: Choice,
  { key, cards }: Printing,
): { readonly set: string; readonly sheet: SheetOfBlocks } {
  const { words, locale } = LANGUAGES[chosen.language];
  const { set, problems } = practiceSet(number, { ...setOptions(chosen), words, locale });
  const sheet = practiceSheet(problems, {
    set,
    words,
    locale,
    cards,
    drawings: true,
    ...(key !== undefined && { key }),
    ...(typed("class") !== "" && { className: typed("class") }),
    ...(typed("lines") !== "" && { workLines: numberIn(typed("lines")) }),
  });
  return { set, sheet };
}

/** Prints a page of its own, so that nothing of this one is on the paper. */
function printPage(html: string, title: string): void {
  document.getElementById("printed")?.remove();
  const frame = el("iframe", { id: "printed", title, srcdoc: html, "aria-hidden": "true", tabindex: -1 });
  frame.addEventListener("load", () => frame.contentWindow?.print());
  document.body.append(frame);
}
