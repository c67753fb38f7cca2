import { html, type TemplateResult } from "lit-html";
import { type FieldCard, fieldCard, spreadingCard } from "swath-to-spoon/worksheet";
import { facts, type Shown } from "./html.ts";
import { job, state } from "./state.ts";
import { say, W, writing } from "./words.ts";

/** What the card for the tank says, once there is a plan. */
export function cardOf(): FieldCard | undefined {
  const { plan } = state.checked;
  const options = { ...writing(), units: job().system };
  return plan && ("hopper" in plan ? spreadingCard(plan, options) : fieldCard(plan, options));
}

/** The card to take to the tank. It shows on paper only. */
export function paperCard(card: FieldCard | undefined): TemplateResult {
  if (card === undefined) return html`<p>${say(W.nothingToPrint)}</p>`;
  const { title, warnings, order, loads, cautions, headings } = card;
  const alerts = warnings.map(({ name, message }) => html`<b>${name}: </b>${message}`);
  return html`<h1>${title}</h1>
    <p class="by-hand">${say(W.date)}<span></span>${say(W.mixedBy)}<span></span></p>
    ${alerts.length > 0 ? list(headings.warnings, alerts) : ""}
    ${facts(card.facts)}
    ${order.map((line) => html`<p>${line}</p>`)}
    ${loads.map((load) => html`<section>${list(load.title, load.steps, "boxes")}</section>`)}
    ${list(headings.cautions, cautions)}`;
}

function list(title: string, lines: readonly Shown[], name = ""): TemplateResult {
  return html`<h2>${title}</h2><ul class=${name}>${lines.map((line) => html`<li>${line}</li>`)}</ul>`;
}
