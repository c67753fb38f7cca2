import type { FieldCard } from "swath-to-spoon/worksheet";
import { byId, el } from "./dom.ts";
import { say, W } from "./words.ts";

/** Lays out the card to take to the tank. It shows on paper only. */
export function layCard({ title, warnings, facts, order, loads, cautions, headings }: FieldCard): void {
  const list = (heading: string, lines: readonly (string | Node)[]): HTMLElement[] =>
    lines.length === 0
      ? []
      : [el("h2", {}, heading), el("ul", {}, ...lines.map((line) => el("li", {}, line)))];
  byId("card").replaceChildren(
    el("h1", {}, title),
    el("p", { class: "by-hand" }, say(W.date), el("span"), say(W.mixedBy), el("span")),
    ...list(
      headings.warnings,
      warnings.map(({ name, message }) => el("span", {}, el("b", {}, `${name}: `), message)),
    ),
    el("dl", {}, ...facts.map(({ name, value }) => el("div", {}, el("dt", {}, name), el("dd", {}, value)))),
    ...order.map((line) => el("p", {}, line)),
    ...loads.map(({ title, steps }) =>
      el(
        "section",
        {},
        el("h2", {}, title),
        el("ul", { class: "boxes" }, ...steps.map((step) => el("li", {}, step))),
      ),
    ),
    ...list(headings.cautions, cautions),
  );
}

/** Replaces the card if there is no plan. */
export function clearCard(): void {
  byId("card").replaceChildren(el("p", {}, say(W.nothingToPrint)));
}
