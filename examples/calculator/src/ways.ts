import type { LoadChoice } from "swath-to-spoon/plan";
import { el } from "./dom.ts";
import type { Keeper } from "./form.ts";
import { withEntry } from "./job.ts";
import { shown } from "./units.ts";
import { tankDrawing } from "./vessels.ts";
import { count, say, W } from "./words.ts";

/** Where the chosen way to mix is kept: among the job's entries, as the library's `split`. */
export const WAY = "split";

type Sprayer = Parameters<typeof tankDrawing>[1];

/** The ways to split the job into loads, in pictures: full tanks and a rest, or what the library found easiest to measure. */
export function wayChoice(ways: readonly LoadChoice[], sprayer: Sprayer, keeper: Keeper): HTMLElement[] {
  if (ways.length === 0) return [];
  const chosen = keeper.job().entries[WAY]?.text;
  const isChosen = ways.some((way) => textOf(way) === chosen);
  const option = (text: string, checked: boolean, ...content: (Node | string)[]): HTMLElement => {
    const input = el("input", { type: "radio", name: WAY, id: `way-${text}`, checked });
    input.addEventListener("change", () => keeper.change(withEntry(keeper.job(), WAY, { text, unit: "1" })));
    return el("label", {}, input, el("span", { class: "option" }, ...content));
  };
  return [
    el(
      "fieldset",
      { class: "choices ways" },
      el("legend", {}, say(W.ways)),
      option("", !isChosen, say(W.fullTanks)),
      ...ways.map((way) =>
        option(
          textOf(way),
          textOf(way) === chosen,
          el(
            "span",
            { class: "small-tanks", "aria-hidden": "true" },
            ...way.loads.map((load) => tankDrawing(load, sprayer)),
          ),
          `${fillsText(way)}: ${count(W.measure1, W.measures, way.cost.measures)}`,
        ),
      ),
    ),
  ];
}

/** A way as it is kept. */
export function textOf({ split }: LoadChoice): string {
  return JSON.stringify(split);
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
