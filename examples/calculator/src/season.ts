import { html, render, type TemplateResult } from "lit-html";
import { keyed } from "lit-html/directives/keyed.js";
import { isSprayMathError } from "swath-to-spoon";
import { type ApplicationRecord, reconcile, reconcileSpreading, seasonSoFar } from "swath-to-spoon/plan";
import { parseQuantity } from "swath-to-spoon/units";
import { issueText } from "swath-to-spoon/worksheet";
import { byId, type Shown } from "./html.ts";
import { type JobPlan, now, recordsOf } from "./input.ts";
import { addRecord, job, put, state } from "./state.ts";
import { numberText, shown, sign } from "./units.ts";
import { count, locale, say, type Text, W, writing } from "./words.ts";

const OPTIONAL = ["started", "applicator", "certification", "location", "crop", "weather", "notes"] as const;

/** The form for what was really done. It is kept while the job is, whatever changes. */
export function recordForm(plan: JobPlan): unknown {
  const isSpreading = "hopper" in plan;
  const { unit } = isSpreading ? plan.total : plan.carrier.total;
  const row = (name: string, text: Text, type: string, value?: string): TemplateResult =>
    html`<div class="field">
      <label for="record-${name}">${say(text)}${value === undefined ? html`<span class="optional"> ${say(W.optional)}</span>` : ""}</label>
      <input id="record-${name}" name=${name} type=${type} value=${value ?? ""} ?required=${value !== undefined} />
    </div>`;
  const form = html`<form>
    ${row("finished", W.finished, "datetime-local", now())}
    ${row("left", isSpreading ? W.granulesLeft : W.leftOver, "text", `0 ${sign(unit)}`)}
    ${row("all", W.all, "text")}
    ${OPTIONAL.map((name) => row(name, W[name], name === "started" ? "datetime-local" : "text"))}
    <button type="button" id="save-record" @click=${(event: Event) => save(event, plan)}>${say(W.save)}</button>
    <div id="saved" role="status"></div>
  </form>`;
  return html`<details class="record">
    <summary>${say(isSpreading ? W.spread : W.sprayed)}</summary>
    ${keyed(state.kept.open, form)}
  </details>`;
}

/** Keeps what the form says as a record, and says what that comes to, or what is wrong. */
function save({ currentTarget }: Event, plan: JobPlan): void {
  const form = (currentTarget as HTMLButtonElement).form as HTMLFormElement;
  if (!form.reportValidity()) return;
  const typed = [...new FormData(form)].map(([name, text]) => [name, String(text).trim()] as const);
  const given = Object.fromEntries(typed.filter(([, text]) => text !== ""));
  const { finished = "", left = "", all, ...more } = given;
  try {
    const done = recordOf(plan, { finished, ...more }, left, all);
    addRecord(done.record);
    const texts = [say(W.saved), ...applied(done)];
    render(
      texts.map((text) => html`<p>${text}</p>`),
      byId("saved"),
    );
  } catch (error) {
    if (!isSprayMathError(error)) throw error;
    render(html`<p class="fault">${issueText(error, writing())}</p>`, byId("saved"));
  }
}

/** The record, and of each product how far it is from the plan, in percent. */
interface Done {
  readonly record: ApplicationRecord;
  readonly fromPlan: readonly number[];
}

function recordOf(plan: JobPlan, details: { finished: string }, left: string, all?: string): Done {
  const amount = <D extends "volume" | "mass">(text: string, dimension: D) =>
    parseQuantity(numberText(text), { locale, system: job().system, dimension });
  if ("hopper" in plan) {
    const filled = all && { filled: amount(all, "mass") };
    const done = reconcileSpreading(plan, { ...details, left: amount(left, "mass"), ...filled });
    return { record: done.record, fromPlan: [done.fromPlanPercent] };
  }
  const mixed = all && { mixed: amount(all, "volume") };
  const done = reconcile(plan, { ...details, left: amount(left, "volume"), ...mixed });
  const products = "plots" in done ? (done.plots[0]?.products ?? []) : done.products;
  return { record: done.record, fromPlan: products.map(({ fromPlanPercent }) => fromPlanPercent) };
}

/** What was applied of each product, against the rate that was planned. */
function applied({ record, fromPlan }: Done): string[] {
  const percent = new Intl.NumberFormat(locale, { style: "percent" });
  return record.products.map(({ name, applied }, i) => {
    const part = 1 + (fromPlan[i] ?? 0) / 100;
    return say(W.applied, { product: name, amount: shown(applied), percent: percent.format(part) });
  });
}

/** The records of this job's place this year, and what each product comes to. */
export function seasonList(): Shown {
  const here = recordsOf(job().name, state.kept.records);
  if (here.length === 0) return html`<p class="hint">${say(W.noRecords)}</p>`;
  const names = new Set(here.flatMap(({ products }) => products.map((product) => product.name)));
  const rows = here.map((record) => {
    const { date, products } = record;
    const remove = (): void => put({ records: state.kept.records.filter((one) => one !== record) }, true);
    const amounts = products.map(({ name, applied }) => `${name} ${shown(applied)}`).join(", ");
    return html`<li>${date}: ${amounts}
      <button type="button" class="quiet" aria-label=${say(W.deleteRecord, { date })} @click=${remove}>✕</button>
    </li>`;
  });
  return html`<ul class="records">${rows}</ul>${[...names].map((name) => html`<p>${totalText(name, here)}</p>`)}`;
}

function totalText(product: string, records: readonly ApplicationRecord[]): string {
  try {
    const { rate, applications = 0 } = seasonSoFar({ product, records });
    const total = rate && "value" in rate ? `, ${say(W.seasonTotal, { rate: shown(rate) })}` : "";
    return `${product}: ${count(W.applications, applications)}${total}`;
  } catch (error) {
    // A product recorded by volume once and by weight another time: the sentence says which to check.
    if (!isSprayMathError(error)) throw error;
    return issueText(error, writing());
  }
}
