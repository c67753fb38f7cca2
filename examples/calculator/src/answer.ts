import type { AnyPlan, PlannedLoad } from "swath-to-spoon/plan";
import {
  type FieldCard,
  fieldCard,
  spreadingCard,
  type Worksheet,
  type WrittenDose,
  worksheet,
} from "swath-to-spoon/worksheet";
import { layCard } from "./card.ts";
import { byId, el } from "./dom.ts";
import { plotDrawing } from "./drawing.ts";
import { goTo, placeOf } from "./form.ts";
import type { JobPlan } from "./input.ts";
import type { Job } from "./job.ts";
import { partDrawing, tankDrawing } from "./vessels.ts";
import { count, locale, say, W, writing } from "./words.ts";

export function isRefused({ warnings }: JobPlan): boolean {
  return warnings.some(({ severity }) => severity === "refusal");
}

/** Shows the answer: what to mix first, then what to check, then the rest. What is refused has nothing to mix. */
export function showAnswer(plan: JobPlan, job: Job, ways: HTMLElement[], record: HTMLElement): void {
  const options = { ...writing(), units: job.system };
  const card = "hopper" in plan ? spreadingCard(plan, options) : fieldCard(plan, options);
  const refused = isRefused(plan);
  const shown =
    "hopper" in plan ? spreaderAnswer(card) : sprayerAnswer(plan, worksheet(plan, options), job, ways);
  const rest = [printButton(), record];
  const focused = document.activeElement?.id;
  byId("found").replaceChildren(...(refused ? refusals(plan, card) : [...shown, ...rest]));
  if (focused) document.getElementById(focused)?.focus({ preventScroll: true });
  byId("cautions").replaceChildren(
    el("h3", {}, card.headings.cautions),
    el("ul", { class: "cautions" }, ...card.cautions.map((caution) => el("li", {}, caution))),
  );
  byId("working").hidden = refused || "hopper" in plan;
  layCard(card);
}

function sprayerAnswer(plan: AnyPlan, sheet: Worksheet, { system }: Job, ways: HTMLElement[]): HTMLElement[] {
  const drawing = plotDrawing(plan, system);
  return [
    ...checkLine(sheet),
    ...sheet.loads.map((load) => loadCard(load, plan)),
    ...ways,
    ...(sheet.mixing ? [el("p", {}, sheet.mixing)] : []),
    ...alerts(sheet),
    facts(sheet.headings.totals, sheet.totals),
    facts(sheet.headings.summary, sheet.summary),
    ...(drawing ? [el("h3", {}, say(W.drawn)), drawing] : []),
  ];
}

function spreaderAnswer(card: FieldCard): HTMLElement[] {
  return [
    ...checkLine(card),
    ...card.loads.map(({ title, steps }) =>
      el(
        "section",
        { class: "load" },
        el("h3", {}, title),
        ...steps.map((step) => el("p", { class: "fill" }, step)),
      ),
    ),
    ...alerts(card),
    facts(card.headings.summary, card.facts),
  ];
}

/** Shows that there is no answer yet, with a link to each field that is still to be filled in or fixed. */
export function showMissing(wrong: readonly HTMLElement[], empty: readonly HTMLElement[]): void {
  byId("found").replaceChildren(
    el("p", {}, say(W.answerHere)),
    ...linksTo(say(W.fixFirst), wrong),
    ...linksTo(say(W.stillToFill), empty),
  );
  byId("cautions").replaceChildren();
  byId("working").hidden = true;
}

function linksTo(title: string, fields: readonly HTMLElement[]): HTMLElement[] {
  if (fields.length === 0) return [];
  const list = fields.map((field) => el("li", {}, linkTo(field)));
  return [el("p", {}, title), el("ul", { class: "missing" }, ...list)];
}

function linkTo(field: HTMLElement | undefined): HTMLElement | undefined {
  return (
    field &&
    el(
      "div",
      {},
      quietButton(nameOf(field), () => goTo(field)),
    )
  );
}

function quietButton(text: string, act: () => void): HTMLElement {
  const button = el("button", { type: "button", class: "quiet" }, text);
  button.addEventListener("click", act);
  return button;
}

function nameOf(field: HTMLElement): string {
  const label = document.querySelector(`label[for="${field.id}"]`)?.firstChild?.textContent;
  const step = field.closest(".step")?.querySelector("summary > span")?.textContent;
  return `${step}: ${label ?? say(W.thisSection)}`;
}

/** Writes out the working. It is long, so only on request. */
export function showWorking(plan: AnyPlan, { system }: Job): void {
  const { steps, rounding } = worksheet(plan, { ...writing(), units: system });
  byId("steps").replaceChildren(
    el("p", { class: "hint" }, rounding),
    ...steps.map(({ title, lines }) =>
      el(
        "section",
        {},
        el("h3", {}, title),
        ...lines.map(({ found, words, numbers, result, source }) =>
          el(
            "p",
            { class: "line" },
            el("b", {}, found),
            el("span", {}, `= ${words}`),
            el("span", {}, `= ${numbers}`),
            el("span", {}, "= ", el("b", {}, result)),
            el("small", {}, source),
          ),
        ),
      ),
    ),
  );
}

/** One line that leads to what needs checking, so that the doses stay on the first screen. */
function checkLine({ warnings }: Pick<FieldCard, "warnings">): HTMLElement[] {
  if (warnings.length === 0) return [];
  const text = count(W.check1, W.check, warnings.length);
  const button = quietButton(`⚠ ${text}`, () => {
    const title = byId("alerts");
    title.scrollIntoView();
    title.focus({ preventScroll: true });
  });
  button.id = "check";
  return [button];
}

/** Why a job is refused, each refusal with a link to its field. */
function refusals(plan: JobPlan, card: FieldCard): HTMLElement[] {
  // The card has the refusals first, in the order of the plan.
  const fields = plan.warnings.filter(({ severity }) => severity === "refusal").map(placeOf);
  return alerts(card, card.headings.warnings, fields);
}

function alerts(
  { warnings }: Pick<FieldCard, "warnings">,
  title = say(W.toCheck),
  fields: readonly (HTMLElement | undefined)[] = [],
): HTMLElement[] {
  if (warnings.length === 0) return [];
  const items = warnings.map(({ severity, name, message }, i) =>
    el("li", { class: severity }, el("b", {}, `${name}: `), message, linkTo(fields[i])),
  );
  return [el("h3", { id: "alerts", tabindex: -1 }, title), el("ul", { class: "alerts" }, ...items)];
}

function facts(title: string, list: Worksheet["summary"]): HTMLElement {
  const rows = list.map(({ name, value }) => el("div", {}, el("dt", {}, name), el("dd", {}, value)));
  return el("section", {}, el("h3", {}, title), el("dl", {}, ...rows));
}

function loadCard(written: Worksheet["loads"][number], plan: AnyPlan): HTMLElement {
  const load = plan.loads[(written.numbers[0] ?? 1) - 1] as PlannedLoad;
  return el(
    "section",
    { class: "load", "data-loads": written.numbers.length },
    el(
      "div",
      { class: "fill-row" },
      tankDrawing(load, plan.input.sprayer),
      el(
        "div",
        { class: "fill-text" },
        el("h3", {}, written.title),
        el("p", { class: "fill" }, sentence(written.fill)),
        written.covers === undefined ? undefined : el("p", { class: "hint" }, written.covers),
      ),
    ),
    el("ul", { class: "doses" }, ...written.doses.map((dose, i) => doseItem(dose, load.products[i]))),
  );
}

function sentence(text: string): string {
  return text.charAt(0).toLocaleUpperCase(locale) + text.slice(1);
}

function doseItem(
  { product, amount, measures, remark }: WrittenDose,
  load: PlannedLoad["products"][number] | undefined,
): HTMLElement {
  const measured = load?.measured;
  const parts = measured?.ok ? measured.parts : [];
  return el(
    "li",
    {},
    el("p", { class: "dose" }, el("b", {}, product), " ", el("span", { class: "amount-text" }, amount)),
    el(
      "div",
      { class: "parts" },
      ...parts.map((part, at) =>
        el(
          "div",
          { class: "part" },
          el("span", { class: "drawn" }, ...partDrawing(part)),
          el("p", {}, measures[at]),
        ),
      ),
    ),
    el("p", { class: parts.length > 0 ? "hint" : "warning" }, sentence(remark)),
  );
}

function printButton(): HTMLElement {
  const button = el("button", { type: "button", class: "strong" }, say(W.print));
  button.addEventListener("click", () => window.print());
  return button;
}
