import type { Plan, PlannedLoad } from "swath-to-spoon/plan";
import { type Worksheet, type WrittenDose, type WrittenLoad, worksheet } from "swath-to-spoon/worksheet";
import { byId, el } from "./dom.ts";
import { plotDrawing, type Scale } from "./drawing.ts";
import { partDrawing, tankDrawing } from "./vessels.ts";

/** Shows the answer. */
export function showAnswer(plan: Plan, scale: Scale): void {
  const sheet = worksheet(plan, { locale: scale.locale });
  const drawing = plotDrawing(plan, scale);
  byId("found").replaceChildren(
    ...alerts(sheet),
    ...(sheet.refused === undefined ? [] : [el("p", {}, sheet.refused)]),
    ...sheet.loads.map((load) => loadCard(load, plan, scale)),
    ...(sheet.totals.length > 0 ? [facts(sheet.headings.totals, sheet.totals)] : []),
    facts(sheet.headings.summary, sheet.summary),
    ...(drawing ? [el("h3", {}, "Plot drawn to scale"), drawing] : []),
    printButton(),
  );
  byId("cautions").replaceChildren(
    el("h3", {}, sheet.headings.cautions),
    el("ul", { class: "cautions" }, ...sheet.cautions.map((caution) => el("li", {}, caution))),
  );
  byId("working").hidden = false;
}

/** Shows that there is no answer yet, with a link to each field that is still to be filled in or fixed. */
export function showMissing(wrong: readonly HTMLElement[], empty: readonly HTMLElement[]): void {
  byId("found").replaceChildren(
    el("p", {}, "Your answer shows up here."),
    ...linksTo("Fix first:", wrong),
    ...linksTo("Still to fill in:", empty),
  );
  byId("cautions").replaceChildren();
  byId("working").hidden = true;
}

function linksTo(title: string, fields: readonly HTMLElement[]): HTMLElement[] {
  if (fields.length === 0) return [];
  const list = fields.map((field) => {
    const button = el("button", { type: "button", class: "quiet" }, nameOf(field));
    button.addEventListener("click", () => goTo(field));
    return el("li", {}, button);
  });
  return [el("p", {}, title), el("ul", { class: "missing" }, ...list)];
}

function nameOf(field: HTMLElement): string {
  const label = document.querySelector(`label[for="${field.id}"]`)?.firstChild?.textContent;
  const product = field.closest(".product")?.querySelector("legend")?.textContent;
  return [product, label ?? "Check this section"].filter((part) => part !== undefined).join(": ");
}

/** Scrolls to a field and puts the cursor in it. */
export function goTo(field: HTMLElement): void {
  field.closest("details")?.setAttribute("open", "");
  field.scrollIntoView({ block: "center" });
  field.focus({ preventScroll: true });
}

/** Writes out the working. It is long, so only on request. */
export function showWorking(plan: Plan, locale: string): void {
  const { steps, rounding } = worksheet(plan, { locale });
  byId("steps").replaceChildren(
    el("p", { class: "hint" }, rounding),
    ...steps.map(({ title, lines }) =>
      el(
        "section",
        {},
        el("h3", {}, title),
        ...lines.map(({ found, words, numbers, result, source }) =>
          el(
            "p",
            { class: "line" },
            el("b", {}, found),
            el("span", {}, `= ${words}`),
            el("span", {}, `= ${numbers}`),
            el("span", {}, "= ", el("b", {}, result)),
            el("small", {}, source),
          ),
        ),
      ),
    ),
  );
}

function alerts({ warnings, headings }: Worksheet): HTMLElement[] {
  if (warnings.length === 0) return [];
  const items = warnings.map(({ severity, name, message }) =>
    el("li", { class: severity }, el("b", {}, `${name}: `), message),
  );
  return [el("h3", {}, headings.warnings), el("ul", { class: "alerts" }, ...items)];
}

function facts(title: string, list: Worksheet["summary"]): HTMLElement {
  const rows = list.map(({ name, value }) => el("div", {}, el("dt", {}, name), el("dd", {}, value)));
  return el("section", {}, el("h3", {}, title), el("dl", {}, ...rows));
}

// More tanks than this would push the doses off a phone's screen.
const MOST_TANKS = 8;

function loadCard(written: WrittenLoad, { loads, input }: Plan, { locale }: Scale): HTMLElement {
  const group = written.numbers.map((number) => loads[number - 1] as PlannedLoad);
  const tanks = group.slice(0, MOST_TANKS).map((load) => tankDrawing(load, input.sprayer.tank, locale));
  const more = group.length - tanks.length;
  return el(
    "section",
    { class: "load", "data-loads": group.length },
    el("h3", {}, written.title),
    el("div", { class: "tanks" }, ...tanks, more > 0 ? el("span", {}, `and ${more} more`) : undefined),
    el("p", { class: "fill" }, sentence(written.fill)),
    written.covers === undefined ? undefined : el("p", {}, written.covers),
    el(
      "ul",
      { class: "doses" },
      ...written.doses.map((dose, i) => doseItem(dose, group[0] as PlannedLoad, i)),
    ),
  );
}

function sentence(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

function doseItem(
  { product, amount, measures, remark }: WrittenDose,
  load: PlannedLoad,
  i: number,
): HTMLElement {
  const measured = load.products[i]?.measured;
  const parts = measured?.ok ? measured.parts : [];
  return el(
    "li",
    {},
    el("p", { class: "dose" }, el("b", {}, product), " ", el("span", { class: "amount-text" }, amount)),
    ...parts.map((part, at) =>
      el(
        "div",
        { class: "part" },
        el("span", { class: "drawn" }, ...partDrawing(part)),
        el("p", {}, measures[at]),
      ),
    ),
    el("p", { class: parts.length > 0 ? "hint" : "warning" }, sentence(remark)),
  );
}

function printButton(): HTMLElement {
  const button = el("button", { type: "button", class: "strong" }, "Print the field card");
  button.addEventListener("click", () => window.print());
  return button;
}
