import { html } from "lit-html";
import type { AnyPlan } from "swath-to-spoon/plan";
import { choices, type Shown } from "./html.ts";
import { fillsText, textOf, WAY, type Way } from "./input.ts";
import { enter, job, state } from "./state.ts";
import { tankDrawing } from "./vessels.ts";
import { count, say, W } from "./words.ts";

/** The ways to split the job into loads, in pictures, where there are several. */
export function wayChoice({ input: { sprayer } }: AnyPlan): Shown {
  const { ways = [] } = state.checked;
  if (ways.length < 2) return "";
  const options = ways.map((way) => {
    const tanks = way.loads.map((load) => tankDrawing(load, sprayer));
    return [
      textOf(way),
      html`<span class="small-tanks" aria-hidden="true">${tanks}</span>${nameOf(way)}`,
    ] as const;
  });
  const kept = job().entries[WAY]?.text ?? "";
  const chosen = options.some(([text]) => text === kept) ? kept : "";
  return html`<div class="ways">${choices(WAY, say(W.ways), options, chosen, (text) => enter(WAY, text))}</div>`;
}

function nameOf(way: Way): string {
  const { split, cost } = way;
  const name = !split ? say(W.fullTanks) : split === "equal" ? say(W.equalLoads) : fillsText(way);
  if (cost === undefined) return name;
  const { measures, notMeasurable } = cost;
  return `${name}: ${notMeasurable > 0 ? say(W.notMeasurable) : count(W.measures, measures)}`;
}
