import { html, type TemplateResult } from "lit-html";
import { live } from "lit-html/directives/live.js";
import { say, type Text } from "./words.ts";

/** What a template may hold. Text goes in as text only, so nothing a person types is read as markup. */
export type Shown = TemplateResult | TemplateResult[] | string;

/** Returns an element that the page has. */
export function byId<E extends HTMLElement>(id: string): E {
  const found = document.getElementById(id);
  if (found === null) throw new Error(`The page has no #${id}`);
  return found as E;
}

export function button(id: string, text: Text, act: () => void): TemplateResult {
  return html`<button type="button" id=${id} @click=${act}>${say(text)}</button>`;
}

/** An id of the page for a part of a place in the input. */
export function idOf(place: string, part: string): string {
  return `${part}-${place.replace(/[^A-Za-z0-9]+/g, "-")}`;
}

/** What was typed or chosen where an event comes from. */
export function valueIn(event: Event): string {
  return (event.target as HTMLInputElement).value;
}

/** The options of a list, one of them chosen. */
export function optionsOf(texts: readonly (readonly [value: string, text: string])[], chosen: string): Shown {
  return texts.map(
    ([value, text]) => html`<option value=${value} .selected=${live(value === chosen)}>${text}</option>`,
  );
}

/** A row of choices; one is chosen. */
export function choices(
  name: string,
  legend: string,
  options: readonly (readonly [value: string, content: Shown])[],
  chosen: string,
  choose: (value: string) => void,
): TemplateResult {
  const rows = options.map(
    ([value, content]) => html`<label>
      <input type="radio" id=${idOf(`${name}-${value}`, "choice")} name=${name} value=${value}
        .checked=${live(value === chosen)} @change=${() => choose(value)} />
      <span>${content}</span>
    </label>`,
  );
  return html`<fieldset class="choices"><legend>${legend}</legend>${rows}</fieldset>`;
}

/** Names and what they stand for. */
export function facts(list: readonly { readonly name: string; readonly value: string }[]): TemplateResult {
  return html`<dl>${list.map(({ name, value }) => html`<div><dt>${name}</dt><dd>${value}</dd></div>`)}</dl>`;
}
