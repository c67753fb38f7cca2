import { html, render, type TemplateResult } from "lit-html";
import { keyed } from "lit-html/directives/keyed.js";
import { isSprayMathError } from "swath-to-spoon";
import { type ApplicationRecord, reconcile, reconcileSpreading, seasonSoFar } from "swath-to-spoon/plan";
import { parseQuantity, quantityRatio } from "swath-to-spoon/units";
import { issueText } from "swath-to-spoon/worksheet";
import { byId, type Shown } from "./html.ts";
import { type JobPlan, now, recordsOf } from "./input.ts";
import { addRecord, job, put, state } from "./state.ts";
import { numberText, shown, sign } from "./units.ts";
import { locale, say, W, writing } from "./words.ts";

const OPTIONAL = ["started", "applicator", "certification", "location", "crop", "weather", "notes"] as const;

/** The form for what was really done. It is kept while the job is, whatever changes. */
export function recordForm(plan: JobPlan): unknown {
  const isSpreading = "hopper" in plan;
  const { unit } = isSpreading ? plan.total : plan.carrier.total;
  const row = (name: string, text: string, type: string, value?: string): TemplateResult =>
    html`<div class="field">
      <label for="record-${name}">${text}${value === undefined ? html`<span class="optional"> ${say(W.optional)}</span>` : ""}</label>
      <input id="record-${name}" name=${name} type=${type} value=${value ?? ""} />
    </div>`;
  const form = html`<form>
    ${row("finished", say(W.finished), "datetime-local", now())}
    ${row("left", say(isSpreading ? W.granulesLeft : W.leftOver), "text", `0 ${sign(unit)}`)}
    ${OPTIONAL.map((name) => row(name, say(W[name]), name === "started" ? "datetime-local" : "text"))}
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
  const typed = [...new FormData(form)].map(([name, text]) => [name, String(text).trim()] as const);
  const { finished = "", left = "", ...more } = Object.fromEntries(typed.filter(([, text]) => text !== ""));
  try {
    const record = recordOf(plan, { finished, ...more }, left);
    addRecord(record);
    const texts = [say(W.saved), ...applied(plan, record)];
    render(
      texts.map((text) => html`<p>${text}</p>`),
      byId("saved"),
    );
  } catch (error) {
    if (!isSprayMathError(error)) throw error;
    render(html`<p class="fault">${issueText(error, writing())}</p>`, byId("saved"));
  }
}

function recordOf(plan: JobPlan, done: { finished: string }, left: string): ApplicationRecord {
  const reading = { locale, system: job().system };
  const text = numberText(left);
  if ("hopper" in plan)
    return reconcileSpreading(plan, { ...done, left: parseQuantity(text, { ...reading, dimension: "mass" }) })
      .record;
  return reconcile(plan, { ...done, left: parseQuantity(text, { ...reading, dimension: "volume" }) }).record;
}

/** What was applied of each product, against the plan. */
function applied(plan: JobPlan, { products }: ApplicationRecord): string[] {
  const planned = "hopper" in plan ? [plan.total] : plan.totals.products.map(({ amount }) => amount);
  const percent = new Intl.NumberFormat(locale, { style: "percent" });
  return products.map(({ name, applied }, i) => {
    const part = quantityRatio(applied, planned[i] ?? applied);
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
    return rate && "value" in rate
      ? say(W.seasonTotal, { product, n: applications, rate: shown(rate) })
      : say(W.seasonTimes, { product, n: applications });
  } catch (error) {
    // A product recorded by volume once and by weight another time: the sentence says which to check.
    if (!isSprayMathError(error)) throw error;
    return issueText(error, writing());
  }
}
