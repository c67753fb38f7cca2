import { html } from "lit-html";
import type { AnyPlan, LoadChoice } from "swath-to-spoon/plan";
import { choices, type Shown } from "./html.ts";
import { textOf, WAY } from "./input.ts";
import { enter, job, state } from "./state.ts";
import { shown } from "./units.ts";
import { tankDrawing } from "./vessels.ts";
import { count, say, W } from "./words.ts";

/** The ways to split the job into loads, in pictures: full tanks and a rest, or what the library found easiest to measure. */
export function wayChoice({ input: { sprayer } }: AnyPlan): Shown {
  const { ways = [] } = state.checked;
  if (ways.length === 0) return "";
  const options = ways.map((way) => {
    const tanks = way.loads.map((load) => tankDrawing(load, sprayer));
    const { measures, notMeasurable } = way.cost;
    const measured = notMeasurable > 0 ? say(W.notMeasurable) : count(W.measure1, W.measures, measures);
    const text = `${fillsText(way)}: ${measured}`;
    return [textOf(way), html`<span class="small-tanks" aria-hidden="true">${tanks}</span>${text}`] as const;
  });
  const kept = job().entries[WAY]?.text ?? "";
  const chosen = options.some(([text]) => text === kept) ? kept : "";
  return html`<div class="ways">
    ${choices(WAY, say(W.ways), [["", say(W.fullTanks)], ...options], chosen, (text) => enter(WAY, text))}
  </div>`;
}

/** The fills, alike ones together: `2 × 3.25 gal + 1.5 gal`. */
function fillsText({ loads }: LoadChoice): string {
  const times = new Map<string, number>();
  for (const { mark, carrier } of loads) {
    const text = shown(mark ?? carrier);
    times.set(text, (times.get(text) ?? 0) + 1);
  }
  return [...times].map(([text, n]) => (n === 1 ? text : `${n} × ${text}`)).join(" + ");
}
