import type { Issue } from "swath-to-spoon";
import type { ToolSetName } from "swath-to-spoon/household";
import type { Warning } from "swath-to-spoon/plan";
import type { Unit } from "swath-to-spoon/units";
import { byId, el } from "./dom.ts";
import {
  emptyProduct,
  type Field,
  type Form,
  type Job,
  limitFields,
  PLOT_FIELDS,
  PLOT_KINDS,
  type PlotKind,
  type ProductEntries,
  rateField,
  SPRAYER_FIELDS,
  STRIP_FIELDS,
  TOOLS,
} from "./job.ts";
import { type Entry, inUnit, quantityIn, shortNumber, sign, unitsFor, type Writing } from "./units.ts";

/** What the form needs from the page around it. */
export interface Keeper {
  readonly job: () => Job;
  readonly writing: () => Writing;
  /** Takes the changed job. `rebuild` puts other fields in place before their errors are shown. */
  readonly change: (job: Job, rebuild?: () => void) => void;
}

// The fields that a person has visited or was sent to. Only these say that they are required.
const visited = new Set<string>();

/** Forgets which fields a person has visited. */
export function unvisit(): void {
  visited.clear();
}

/** Builds the whole form for the job as it stands. */
export function buildForm(keeper: Keeper): void {
  byId("form").replaceChildren(
    plotSection(keeper),
    section("calibration", "2", "Test strip", [
      el(
        "p",
        { class: "hint" },
        "Fill to a mark with clean water, spray the strip at your normal pace, then measure how much it takes to refill to the mark.",
      ),
      ...STRIP_FIELDS.map((field) => jobField(field, keeper)),
    ]),
    section(
      "sprayer",
      "3",
      "Sprayer",
      SPRAYER_FIELDS.map((field) => jobField(field, keeper)),
    ),
    section("products", "4", "Products", [el("div", { id: "products" })]),
    toolsSection(keeper),
  );
  buildProducts(keeper);
}

function section(place: string, number: string, title: string, children: readonly Node[]): HTMLElement {
  return el(
    "fieldset",
    {},
    el("legend", {}, el("span", { class: "number", "aria-hidden": "true" }, number), title),
    ...children,
    fault(place),
  );
}

/** The line that shows the error of one place of the job. */
function fault(place: string): HTMLElement {
  return el("p", { class: "fault", id: idOf(place, "fault"), "data-fault": place, "aria-live": "polite" });
}

function idOf(place: string, part: string): string {
  return `${part}-${place.replace(/[^A-Za-z0-9]+/g, "-")}`;
}

function plotSection(keeper: Keeper): HTMLElement {
  const fields = el("div", {});
  const build = (): void =>
    fields.replaceChildren(...PLOT_FIELDS[keeper.job().plot].map((field) => jobField(field, keeper)));
  build();
  const kinds = choices(
    "plot-kind",
    "What do you spray?",
    PLOT_KINDS,
    keeper.job().plot,
    (kind: PlotKind) => {
      keeper.change({ ...keeper.job(), plot: kind }, build);
    },
  );
  return section("plot", "1", "Plot", [kinds, fields]);
}

function toolsSection(keeper: Keeper): HTMLElement {
  const { tools, scale } = keeper.job();
  const select = el("select", { id: "tools" });
  for (const [name, label] of Object.entries(TOOLS)) select.append(el("option", { value: name }, label));
  select.value = tools;
  select.addEventListener("change", () =>
    keeper.change({ ...keeper.job(), tools: select.value as ToolSetName }),
  );
  const box = el("input", { type: "checkbox", id: "scale", checked: scale });
  box.addEventListener("change", () => keeper.change({ ...keeper.job(), scale: box.checked }));
  return section("tools", "5", "Measuring tools", [
    el("div", { class: "field" }, el("label", { for: "tools" }, "What do you measure with?"), select),
    el("label", { class: "tick" }, box, "I have a scale that reads to 0.1 g"),
  ]);
}

/** A row of choices; one is chosen. */
export function choices<T extends string>(
  name: string,
  legend: string,
  options: Readonly<Record<T, string>>,
  chosen: T,
  change: (value: T) => void,
): HTMLElement {
  const buttons = Object.entries<string>(options).map(([value, label]) => {
    const input = el("input", { type: "radio", name, value, checked: value === chosen });
    input.addEventListener("change", () => change(value as T));
    return el("label", {}, input, el("span", {}, label));
  });
  return el("fieldset", { class: "choices" }, el("legend", {}, legend), ...buttons);
}

function jobField(field: Field, keeper: Keeper): HTMLElement {
  return fieldRow(field, field.key, keeper, {
    get: () => keeper.job().entries[field.key] as Entry,
    set: (entry) => {
      const job = keeper.job();
      keeper.change({ ...job, entries: { ...job.entries, [field.key]: entry } });
    },
  });
}

interface Slot {
  readonly get: () => Entry;
  readonly set: (entry: Entry) => void;
}

function fieldRow(field: Field, place: string, keeper: Keeper, slot: Slot): HTMLElement {
  const { kind, label, whole, optional } = field;
  const { locale, system } = keeper.writing();
  const hint = typeof field.hint === "object" ? field.hint[system] : field.hint;
  const id = idOf(place, "field");
  const input = el("input", {
    id,
    type: "text",
    inputmode: whole ? "numeric" : "decimal",
    enterkeyhint: "next",
    value: slot.get().text,
    "data-place": place,
    "data-optional": optional,
    "aria-describedby": `${hint ? `${idOf(place, "hint")} ` : ""}${idOf(place, "fault")}`,
  });
  const units = kind === undefined ? [] : unitsFor(kind, system);
  const select =
    units.length > 1
      ? el("select", { id: idOf(place, "unit"), "aria-label": `Unit of: ${label}` })
      : undefined;
  select?.append(...units.map((unit) => el("option", { value: unit }, sign(unit, locale))));
  if (select) select.value = slot.get().unit;

  input.addEventListener("input", () => {
    visited.add(place);
    slot.set({ text: input.value, unit: slot.get().unit });
  });
  // When a person leaves the field, a typed unit moves to the list of units, so the two always agree.
  input.addEventListener("change", () => {
    const entry = withoutTypedUnit(slot.get(), units, keeper.writing());
    visited.add(place);
    input.value = entry.text;
    if (select) select.value = entry.unit;
    slot.set(entry);
  });
  select?.addEventListener("change", () => slot.set({ text: slot.get().text, unit: select.value as Unit }));
  return el(
    "div",
    { class: "field" },
    el("label", { for: id }, label, optional ? el("span", { class: "optional" }, " (optional)") : undefined),
    hint ? el("p", { class: "hint", id: idOf(place, "hint") }, hint) : undefined,
    el(
      "div",
      { class: "amount" },
      input,
      select ?? (units[0] ? el("span", { class: "unit" }, sign(units[0], locale)) : undefined),
    ),
    fault(place),
  );
}

function withoutTypedUnit(entry: Entry, units: readonly Unit[], writing: Writing): Entry {
  if (entry.typed || !/\p{L}|%/u.test(entry.text)) return entry;
  const quantity = quantityIn(entry, writing);
  // A percentage keeps its basis only as text. The library asks for one that is missing.
  if (quantity === undefined || quantity.unit === "%") return entry;
  const numberOf = (value: number): string => shortNumber(value, writing.locale);
  if (units.includes(quantity.unit)) return { text: numberOf(quantity.value), unit: quantity.unit };
  try {
    // Shown in the field's own unit, so that a slip such as 4 qt for 4 gal can be seen.
    const { value } = inUnit(quantity, entry.unit);
    return { text: numberOf(value), unit: entry.unit, typed: { text: entry.text, quantity } };
  } catch {
    // The wrong kind of amount. Its error says so.
    return entry;
  }
}

function buildProducts(keeper: Keeper): void {
  const { products } = keeper.job();
  const add = el("button", { type: "button", id: "add-product" }, "Add another product");
  add.addEventListener("click", () => {
    const job = keeper.job();
    const products = [...job.products, emptyProduct(job.system)];
    keeper.change({ ...job, products }, () => buildProducts(keeper));
    byId(idOf(`products[${job.products.length}].name`, "field")).focus();
  });
  byId("products").replaceChildren(...products.map((_, i) => productCard(i, keeper)), add);
}

function productCard(i: number, keeper: Keeper): HTMLElement {
  const place = `products[${i}]`;
  const get = (): ProductEntries => keeper.job().products[i] as ProductEntries;
  const set = (product: ProductEntries, rebuild?: () => void): void => {
    const job = keeper.job();
    keeper.change({ ...job, products: job.products.map((one, at) => (at === i ? product : one)) }, rebuild);
  };
  const name = el("input", {
    id: idOf(`${place}.name`, "field"),
    type: "text",
    enterkeyhint: "next",
    value: get().name,
    "data-place": `${place}.name`,
    "aria-describedby": idOf(`${place}.name`, "fault"),
  });
  name.addEventListener("input", () => {
    visited.add(`${place}.name`);
    set({ ...get(), name: name.value });
  });
  const row = (field: Field): HTMLElement =>
    fieldRow(field, `${place}.${field.key}`, keeper, {
      get: () => get().entries[field.key] as Entry,
      set: (entry) => set({ ...get(), entries: { ...get().entries, [field.key]: entry } }),
    });
  const fields = el("div", {});
  const build = (): void => {
    const limits = limitFields(get().form);
    const open = limits.some(({ key }) => get().entries[key]?.text !== "");
    fields.replaceChildren(
      row(rateField(get().form)),
      el(
        "details",
        { class: "limits", open },
        el("summary", {}, "Label limits (optional)"),
        ...limits.map(row),
      ),
    );
  };
  build();
  const forms = choices<Form>(
    `form-${i}`,
    "How is it measured?",
    { liquid: "Liquid (by volume)", dry: "Dry (by weight)" },
    get().form,
    (form) => {
      // A volume says nothing about weight, and the two kinds of ounces are easy to mix up. So the rate is cleared.
      const { entries } = emptyProduct(keeper.job().system, form);
      const water = get().entries["label.leastCarrier"] as Entry;
      set({ ...get(), form, entries: { ...entries, "label.leastCarrier": water } }, build);
    },
  );
  const several = keeper.job().products.length > 1;
  return el(
    "fieldset",
    { class: "product" },
    el("legend", {}, `Product ${i + 1}`),
    el(
      "div",
      { class: "field" },
      el("label", { for: idOf(`${place}.name`, "field") }, "Name"),
      name,
      fault(`${place}.name`),
    ),
    forms,
    fields,
    several ? removeButton(i, keeper) : undefined,
    fault(place),
  );
}

function removeButton(i: number, keeper: Keeper): HTMLElement {
  const button = el("button", { type: "button", class: "quiet" }, `Remove product ${i + 1}`);
  button.addEventListener("click", () => {
    const job = keeper.job();
    const products = job.products.filter((_, at) => at !== i);
    keeper.change({ ...job, products }, () => buildProducts(keeper));
    byId("add-product").focus();
  });
  return button;
}

/** Shows each error next to its field, and returns the fields with errors in the order of the form. */
export function showFaults(faults: readonly Issue[]): HTMLElement[] {
  const shown = new Map<HTMLElement, string>();
  for (const { path, message, code } of faults) {
    const at = placeFor(path);
    if (at === undefined || shown.has(at)) continue;
    const place = at.dataset.fault ?? "";
    // What is missing inside a filled field, such as what a percentage is of, has its own message.
    const empty = code === "missing" && path === place;
    shown.set(at, !empty ? message : visited.has(place) ? "Required." : "");
  }
  const found: HTMLElement[] = [];
  for (const line of document.querySelectorAll<HTMLElement>("[data-fault]")) {
    const text = shown.get(line);
    // Only a changed line is written, so a screen reader says it once.
    if (line.textContent !== (text ?? "")) line.textContent = text ?? "";
    line.classList.remove("doubt");
    const input = document.querySelector<HTMLElement>(`[data-place="${line.dataset.fault}"]`);
    if (text) input?.setAttribute("aria-invalid", "true");
    else input?.removeAttribute("aria-invalid");
    if (text !== undefined) found.push(input ?? line);
  }
  return found;
}

/** Shows each refusal and warning of a plan next to its field as well. */
export function showDoubts(warnings: readonly Warning[]): void {
  for (const { path, severity, message } of warnings) {
    // A dose is in doubt where its product is entered.
    const line = placeFor(path.replace(/^loads\[\d+\]\./, ""));
    if (severity === "note" || line === undefined || line.textContent !== "") continue;
    line.textContent = message;
    line.classList.toggle("doubt", severity === "warning");
  }
}

/** The line nearest to an error's path: its own field's, else its section's, else the last one of the form. */
function placeFor(path: string): HTMLElement | undefined {
  const lines = [...document.querySelectorAll<HTMLElement>("[data-fault]")];
  const inside = lines
    .filter(
      ({ dataset: { fault = "" } }) =>
        path === fault || (/^[.[]/.test(path.slice(fault.length)) && path.startsWith(fault)),
    )
    .sort((a, b) => (b.dataset.fault ?? "").length - (a.dataset.fault ?? "").length);
  return inside[0] ?? lines.at(-1);
}

/** Has every empty field say that it is required. */
export function visitAll(faults: readonly Issue[]): void {
  for (const { path } of faults) visited.add(path);
}
