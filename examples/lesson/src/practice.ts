import {
  type AnswerCheck,
  checkAnswer,
  type PracticeProblem,
  practiceSet,
  practiceSheet,
  workedExample,
} from "swath-to-spoon/practice";
import { renderHtml } from "swath-to-spoon/worksheet";
import { type Choice, setOptions } from "./choice.ts";
import { button, byId, el, textField } from "./dom.ts";
import { attempt } from "./faults.ts";
import { numberOf } from "./print.ts";
import { filled, LANGUAGES, type Language } from "./words.ts";

/** A set that is being practiced. */
interface Round {
  readonly problems: readonly PracticeProblem[];
  readonly language: Language;
  /** The verdict on the first answer to each problem: what comes after help does not count. */
  readonly first: Map<number, AnswerCheck["verdict"]>;
  readonly nextSet: () => void;
}

/** Builds the place where problems are answered. */
export function buildPractice(choice: () => Choice, goTo: (set: string) => void): void {
  const { page } = LANGUAGES[choice().language];
  byId("practice").replaceChildren(
    el("h2", { id: "practice-title" }, page.practice),
    button(page.start, () => start(choice, goTo), { id: "start", class: "strong" }),
    el("div", { id: "round" }),
  );
}

function start(choice: () => Choice, goTo: (set: string) => void): void {
  const chosen = choice();
  const { words, locale } = LANGUAGES[chosen.language];
  const made = attempt(chosen.language, () =>
    practiceSet(chosen.set, { ...setOptions(chosen), words, locale }),
  );
  if (made === undefined) return;
  const { set, problems } = made;
  const nextSet = (): void => {
    goTo(String(numberOf(set) + 1));
    start(choice, goTo);
  };
  showProblem({ problems, language: chosen.language, first: new Map(), nextSet }, 0);
}

function showProblem(round: Round, at: number): void {
  const { problems, language } = round;
  const problem = problems[at] as PracticeProblem;
  const { page } = LANGUAGES[language];
  const [, ...steps] = slidesOf(problem, language);
  const title = filled(page.problemOf, { number: at + 1, all: problems.length });
  const heading = el("h3", { tabindex: -1 }, title);
  const hints = { string: page.lettersHint, number: page.countHint, object: page.answerHint };
  const hint = hints[typeof problem.answer as keyof typeof hints];
  const form = el(
    "form",
    { novalidate: true, autocomplete: "off" },
    textField("answer", page.answer, "", { hint }),
    el("button", { class: "strong" }, page.check),
  );
  const isLast = at === problems.length - 1;
  const onward = button(isLast ? page.finish : page.next, () =>
    isLast ? showResult(round) : showProblem(round, at + 1),
  );
  const verdict = el("div", { id: "verdict", role: "status" });
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    const given = form.querySelector("input")?.value ?? "";
    const { locale, words } = LANGUAGES[language];
    const found = attempt(language, () => checkAnswer(problem, given, { locale, words }));
    verdict.replaceChildren(...(found === undefined ? [] : saidOf(found, language)));
    if (found === undefined) return;
    verdict.className = isRight(found.verdict) ? "right" : "wrong";
    if (!round.first.has(at)) round.first.set(at, found.verdict);
  });
  const shown = el("div", { class: "steps", "aria-live": "polite" });
  byId("round").replaceChildren(
    heading,
    ...askedIn(problem, language),
    form,
    verdict,
    shown,
    el(
      "p",
      { class: "actions" },
      stepButton(steps, shown, language, () => round.first.has(at) || round.first.set(at, "unknown")),
      onward,
    ),
  );
  heading.focus();
}

/** Shows the steps of a problem one by one. */
function stepButton(
  steps: HTMLElement[],
  shown: HTMLElement,
  language: Language,
  onHelp: () => void,
): HTMLButtonElement {
  const { page } = LANGUAGES[language];
  const next = button(page.firstStep, () => {
    onHelp();
    const step = steps.shift();
    if (step === undefined) return;
    shown.append(step);
    next.textContent = page.nextStep;
    if (steps.length > 0) return;
    shown.append(el("p", { class: "hint" }, page.lastStep));
    next.setAttribute("aria-disabled", "true");
  });
  return next;
}

const isRight = (verdict: AnswerCheck["verdict"]): boolean =>
  verdict === "right" || verdict === "rounded" || verdict === "other-unit";

/** What is said of an answer: the verdict, and of each mistake what happened, how to see it and what to do. */
function saidOf({ says, mistakes }: AnswerCheck, language: Language): HTMLElement[] {
  const { page, words } = LANGUAGES[language];
  if (mistakes.length === 0) return [el("p", {}, el("strong", {}, says))];
  const opening = mistakes.length === 2 ? words.practice.twoMistakes : words.practice.mistake;
  return [
    el("p", {}, el("strong", {}, opening)),
    ...mistakes.map(({ what, see, mend }) =>
      el(
        "dl",
        {},
        ...[
          [page.what, what],
          [page.see, see],
          [page.mend, mend],
        ].map(([name, text]) => el("div", {}, el("dt", {}, name), el("dd", {}, text))),
      ),
    ),
  ];
}

/** A problem as it stands on a sheet, with its drawing. */
function askedIn(problem: PracticeProblem, language: Language): HTMLElement[] {
  const { words, locale } = LANGUAGES[language];
  const [asked] = parts(renderHtml(practiceSheet([problem], { drawings: true, words, locale })), ".part");
  asked?.querySelector("h4")?.remove();
  return asked === undefined ? [] : [asked];
}

/** The slides of a problem's worked example: the problem once more, an estimate, the steps, the answer, and a check. */
function slidesOf(problem: PracticeProblem, language: Language): HTMLElement[] {
  const { words, locale } = LANGUAGES[language];
  return parts(renderHtml(workedExample(problem, { words, locale })), ".slide");
}

/** Parts of a page that the library wrote. It escapes what it writes, and this page's policy lets no script in it run. */
function parts(html: string, selector: string): HTMLElement[] {
  const { body } = new DOMParser().parseFromString(html, "text/html");
  // On this page they stand below the problem's own heading.
  for (const heading of body.querySelectorAll("h2"))
    heading.replaceWith(el("h4", {}, heading.textContent ?? ""));
  return [...body.querySelectorAll<HTMLElement>(selector)];
}

function showResult({ problems, language, first, nextSet }: Round): void {
  const { page } = LANGUAGES[language];
  const right = [...first.values()].filter(isRight).length;
  const heading = el("h3", { tabindex: -1 }, filled(page.finished, { right, all: problems.length }));
  byId("round").replaceChildren(heading, el("p", { class: "actions" }, button(page.nextSet, nextSet)));
  heading.focus();
}
