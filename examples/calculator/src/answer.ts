import { html, type TemplateResult } from "lit-html";
import type { AnyPlan, PlannedLoad } from "swath-to-spoon/plan";
import type { CardLoad, FieldCard, Worksheet, WrittenDose } from "swath-to-spoon/worksheet";
import { sheetOf, tankSteps } from "./card.ts";
import { plotDrawing } from "./drawing.ts";
import { byId, facts, type Shown } from "./html.ts";
import { isRefused, type JobPlan } from "./input.ts";
import { focusOn, goTo, type Place, placeOf } from "./places.ts";
import { recordForm } from "./season.ts";
import { job, showAgain, state } from "./state.ts";
import { partDrawing, tankDrawing } from "./vessels.ts";
import { wayChoice } from "./ways.ts";
import { count, locale, say, W } from "./words.ts";

/** The answer: what to mix first, then what to check, then the rest. What is refused has nothing to mix. */
export function answer(card: FieldCard | undefined): TemplateResult {
  const { plan } = state.checked;
  const sheet = sheetOf();
  const refused = plan !== undefined && isRefused(plan);
  const content =
    plan && card && sheet ? (refused ? refusals(plan, card) : found(plan, card, sheet)) : missing();
  return html`<div id="found">${content}</div>
    <details id="working" ?hidden=${!sheet || refused} @toggle=${showAgain}>
      <summary>${say(W.math)}</summary>
      <div id="steps">${sheet && isMathOpen() ? math(sheet) : ""}</div>
    </details>
    <div id="cautions">
      ${
        card &&
        html`<h3>${card.headings.cautions}</h3>
          <ul class="cautions">${card.cautions.map((caution) => html`<li>${caution}</li>`)}</ul>`
      }
    </div>`;
}

function found(plan: JobPlan, card: FieldCard, sheet: Worksheet): TemplateResult {
  return html`${checkLine(sheet)}
    ${"hopper" in plan ? card.loads.map(fillCard) : mixCards(plan, sheet, card)}
    ${alerts(sheet, say(W.toCheck))}
    ${"hopper" in plan ? "" : section(sheet.headings.totals, facts(sheet.totals))}
    ${section(sheet.headings.summary, facts(sheet.summary))}
    ${plotDrawing(plan, job().system)}
    <button type="button" class="strong" @click=${() => window.print()}>${say(W.print)}</button>
    ${recordForm(plan)}`;
}

function section(title: string, content: Shown): TemplateResult {
  return html`<section><h3>${title}</h3>${content}</section>`;
}

/** Shows that there is no answer yet, with a link to each field that is still to be filled in or fixed. */
function missing(): TemplateResult {
  const { open } = state.marks;
  if (open.length === 0) return html`<p>${say(W.answerHere)}</p>`;
  return html`<p>${say(W.answerHere)} ${say(W.stillToDo)}</p>
    <ul class="missing">${open.map((place) => html`<li>${link(place)}</li>`)}</ul>`;
}

function link({ path, name }: Place): TemplateResult {
  return html`<div><button type="button" class="quiet" @click=${() => goTo(path)}>${name}</button></div>`;
}

function isMathOpen(): boolean {
  return document.querySelector("#working[open]") !== null;
}

/** The working. It is long, so only on request. */
function math({ steps, rounding }: Worksheet): TemplateResult {
  const line = ({ found, words, numbers, result, source }: Worksheet["steps"][number]["lines"][number]) =>
    html`<p class="line"><b>${found}</b><span>= ${words}</span><span>= ${numbers}</span><span>= <b>${result}</b></span><small>${source}</small></p>`;
  return html`<p class="hint">${rounding}</p>
    ${steps.map(({ title, lines }) => section(title, lines.map(line)))}`;
}

/** One line that leads to what needs checking, so that the doses stay on the first screen. */
function checkLine({ warnings }: Worksheet): Shown {
  if (warnings.length === 0) return "";
  const go = (): void => focusOn(byId("alerts"), "start");
  return html`<button type="button" class="quiet" id="check" @click=${go}>⚠ ${count(W.check, warnings.length)}</button>`;
}

/** Why a job is refused, each refusal with a link to its field. */
function refusals(plan: JobPlan, card: FieldCard): Shown {
  // The card has the refusals first, in the order of the plan.
  const refused = plan.warnings.filter(({ severity }) => severity === "refusal");
  const places = refused.map((warning) => placeOf(job(), warning));
  return alerts(card, card.headings.warnings, places);
}

function alerts(
  { warnings }: Pick<FieldCard, "warnings">,
  title: string,
  places: readonly (Place | undefined)[] = [],
): Shown {
  if (warnings.length === 0) return "";
  const items = warnings.map(({ severity, name, message }, i) => {
    const place = places[i];
    return html`<li class=${severity}><b>${name}: </b>${message}${place && link(place)}</li>`;
  });
  return html`<h3 id="alerts" tabindex="-1">${title}</h3><ul class="alerts">${items}</ul>`;
}

function fillCard({ title, steps }: CardLoad): TemplateResult {
  return html`<section class="load">
    <h3>${title}</h3>
    ${steps.map((step) => html`<p class="fill">${step}</p>`)}
  </section>`;
}

function mixCards(plan: AnyPlan, { loads }: Worksheet, card: FieldCard): TemplateResult {
  return html`${loads.map((load) => mixCard(load, plan))}
    <details><summary>${say(W.mixing)}</summary>${tankSteps(card)}</details>
    ${wayChoice(plan)}`;
}

function mixCard({ title, numbers, fill, covers, doses }: Worksheet["loads"][number], plan: AnyPlan) {
  const load = plan.loads[(numbers[0] ?? 1) - 1] as PlannedLoad;
  return html`<section class="load">
    <div class="fill-row">
      ${tankDrawing(load, plan.input.sprayer)}
      <div class="fill-text">
        <h3>${title}</h3>
        <p class="fill">${sentence(fill)}</p>
        ${covers === undefined ? "" : html`<p class="hint">${covers}</p>`}
      </div>
    </div>
    <ul class="doses">${doses.map((dose) => doseItem(dose, load))}</ul>
  </section>`;
}

function sentence(text: string): string {
  return text.charAt(0).toLocaleUpperCase(locale) + text.slice(1);
}

function doseItem({ product, amount, measures, remark }: WrittenDose, { products }: PlannedLoad) {
  const measured = products.find(({ name }) => name === product)?.measured;
  const parts = measured?.ok ? measured.parts : [];
  const drawn = parts.map(
    (part, i) =>
      html`<div class="part"><span class="drawn">${partDrawing(part)}</span><p>${measures[i]}</p></div>`,
  );
  return html`<li>
    <p class="dose"><b>${product}</b> <span class="amount-text">${amount}</span></p>
    <div class="parts">${drawn}</div>
    <p class=${parts.length > 0 ? "hint" : "warning"}>${sentence(remark)}</p>
  </li>`;
}
