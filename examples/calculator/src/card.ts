import { html, type TemplateResult } from "lit-html";
import {
  type FieldCard,
  fieldCard,
  spreadingCard,
  spreadingSheet,
  type Worksheet,
  worksheet,
} from "swath-to-spoon/worksheet";
import { facts, type Shown } from "./html.ts";
import { job, state } from "./state.ts";
import { say, W, writing } from "./words.ts";

/** What the card for the tank says, once there is a plan. */
export function cardOf(): FieldCard | undefined {
  const { plan } = state.checked;
  return plan && ("hopper" in plan ? spreadingCard(plan, options()) : fieldCard(plan, options()));
}

/** The whole sheet, with its working. */
export function sheetOf(): Worksheet | undefined {
  const { plan } = state.checked;
  return plan && ("hopper" in plan ? spreadingSheet(plan, options()) : worksheet(plan, options()));
}

function options() {
  return { ...writing(), units: job().system };
}

/** The card to take to the tank. It shows on paper only. */
export function paperCard(card: FieldCard | undefined): TemplateResult {
  if (card === undefined) return html`<p>${say(W.nothingToPrint)}</p>`;
  const { title, warnings, cautions, headings } = card;
  const alerts = warnings.map(({ name, message }) => html`<b>${name}: </b>${message}`);
  return html`<h1>${title}</h1>
    <p class="by-hand">${say(W.date)}<span></span>${say(W.mixedBy)}<span></span></p>
    ${alerts.length > 0 ? list(headings.warnings, alerts) : ""}
    ${facts(card.facts)}
    ${tankSteps(card)}${list(headings.cautions, cautions)}`;
}

/** What to do at the tank, in order. */
export function tankSteps({ order, loads }: FieldCard): TemplateResult {
  return html`${order.map((line) => html`<p>${line}</p>`)}
    ${loads.map((load) => html`<section>${list(load.title, load.steps, "boxes")}</section>`)}`;
}

function list(title: string, lines: readonly Shown[], name = ""): TemplateResult {
  return html`<h2>${title}</h2><ul class=${name}>${lines.map((line) => html`<li>${line}</li>`)}</ul>`;
}
