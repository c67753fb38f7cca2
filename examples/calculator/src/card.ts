import type { Plan } from "swath-to-spoon/plan";
import { fieldCard } from "swath-to-spoon/worksheet";
import { byId, el } from "./dom.ts";

/** Lays out the card to take to the tank. It shows on paper only. */
export function layCard(plan: Plan, locale: string): void {
  const { title, warnings, facts, order, loads, cautions, headings } = fieldCard(plan, { locale });
  byId("card").replaceChildren(
    el("h1", {}, title),
    el("p", { class: "by-hand" }, "Plot", el("span"), "Date", el("span"), "Mixed by", el("span")),
    ...(warnings.length > 0
      ? [
          el("h2", {}, headings.warnings),
          el(
            "ul",
            {},
            ...warnings.map(({ name, message }) => el("li", {}, el("b", {}, `${name}: `), message)),
          ),
        ]
      : []),
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
    el("h2", {}, headings.cautions),
    el("ul", {}, ...cautions.map((caution) => el("li", {}, caution))),
  );
}

/** Replaces the card if there is no plan. */
export function clearCard(): void {
  byId("card").replaceChildren(el("p", {}, "Nothing to print yet. Finish the form first."));
}
