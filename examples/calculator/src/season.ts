import { isSprayMathError } from "swath-to-spoon";
import { type ApplicationRecord, reconcile, reconcileSpreading, seasonSoFar } from "swath-to-spoon/plan";
import { parseQuantity, type Quantity, quantityRatio } from "swath-to-spoon/units";
import { issueText } from "swath-to-spoon/worksheet";
import { el } from "./dom.ts";
import { type JobPlan, now, recordsOf } from "./input.ts";
import type { Job } from "./job.ts";
import { numberText, shown } from "./units.ts";
import { locale, say, type Text, W, writing } from "./words.ts";

/** The form for what was really done, which `save` takes as a record. */
export function recordForm(plan: JobPlan, job: Job, save: (record: ApplicationRecord) => void): HTMLElement {
  const row = (
    name: string,
    text: Text,
    type: string,
    value?: string,
  ): [input: HTMLInputElement, row: HTMLElement] => {
    const input = el("input", { id: `record-${name}`, type, value });
    const optional =
      value === undefined ? el("span", { class: "optional" }, ` ${say(W.optional)}`) : undefined;
    return [input, el("div", { class: "field" }, el("label", { for: input.id }, say(text), optional), input)];
  };
  const isSpreading = "hopper" in plan;
  const { unit } = isSpreading ? plan.total : plan.carrier.total;
  const nothing = `0 ${shown({ value: 2, unit } as Quantity)
    .slice(1)
    .trim()}`;
  const [finished, finishedRow] = row("finished", W.finished, "datetime-local", now());
  const [left, leftRow] = row("left", isSpreading ? W.granulesLeft : W.leftOver, "text", nothing);
  const others = (
    ["started", "applicator", "certification", "location", "crop", "weather", "notes"] as const
  ).map((name) => ({ name, made: row(name, W[name], name === "started" ? "datetime-local" : "text") }));
  const outcome = el("div", { role: "status" });
  const button = el("button", { type: "button", id: "save-record" }, say(W.save));
  button.addEventListener("click", () => {
    try {
      const details = others.flatMap(({ name, made: [{ value }] }) =>
        value.trim() ? [[name, value.trim()]] : [],
      );
      const actual = { finished: finished.value, ...Object.fromEntries(details) };
      const reading = { locale, system: job.system };
      const text = numberText(left.value);
      const { record } = isSpreading
        ? reconcileSpreading(plan, {
            ...actual,
            left: parseQuantity(text, { ...reading, dimension: "mass" }),
          })
        : reconcile(plan, { ...actual, left: parseQuantity(text, { ...reading, dimension: "volume" }) });
      save(record);
      outcome.replaceChildren(
        el("p", {}, say(W.saved)),
        ...applied(plan, record).map((text) => el("p", {}, text)),
      );
    } catch (error) {
      if (!isSprayMathError(error)) throw error;
      outcome.replaceChildren(el("p", { class: "fault" }, issueText(error, writing())));
    }
  });
  return el(
    "details",
    { class: "record" },
    el("summary", {}, say(isSpreading ? W.spread : W.sprayed)),
    finishedRow,
    leftRow,
    ...others.map(({ made: [, made] }) => made),
    button,
    outcome,
  );
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
export function seasonList(
  { name }: Job,
  records: readonly ApplicationRecord[],
  remove: (record: ApplicationRecord) => void,
): HTMLElement[] {
  const here = recordsOf(name, records);
  if (here.length === 0) return [el("p", { class: "hint" }, say(W.noRecords))];
  const names = [...new Set(here.flatMap(({ products }) => products.map((product) => product.name)))];
  const rows = here.map((record) => {
    const button = el(
      "button",
      { type: "button", class: "quiet", "aria-label": say(W.deleteRecord, { date: record.date }) },
      "✕",
    );
    button.addEventListener("click", () => remove(record));
    const amounts = record.products.map((product) => `${product.name} ${shown(product.applied)}`);
    return el("li", {}, `${record.date}: ${amounts.join(", ")} `, button);
  });
  return [
    el("ul", { class: "records" }, ...rows),
    ...names.map((product) => el("p", {}, totalText(product, here))),
  ];
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
