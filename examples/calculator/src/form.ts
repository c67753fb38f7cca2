import type { Issue } from "swath-to-spoon";
import type { Warning } from "swath-to-spoon/plan";
import type { Unit } from "swath-to-spoon/units";
import { issueText } from "swath-to-spoon/worksheet";
import { calibrationOf, JOBS, type JobKind, type Step } from "./asks.ts";
import { boundaryTools } from "./boundary.ts";
import { byId, el } from "./dom.ts";
import {
  chosen,
  entryOf,
  type Field,
  fieldOf,
  isChosen,
  isDry,
  type Job,
  type KnownJob,
  shapeOf,
  steps,
  withEntry,
  withoutProduct,
} from "./job.ts";
import { type Entry, sign, withTypedUnit } from "./units.ts";
import { say, W, writing } from "./words.ts";

/** What the form needs from the page around it. */
export interface Keeper {
  readonly job: () => Job;
  /** Takes the changed job. `rebuild` where other fields are to appear. */
  readonly change: (job: Job, rebuild?: boolean) => void;
  /** Puts an invented job in place of this one. */
  readonly example: () => void;
}

// The fields that a person has visited or was sent to. Only these say that they are required.
const visited = new Set<string>();

/** Forgets which fields a person has visited. */
export function unvisit(): void {
  visited.clear();
}

/** Builds the form for the job as it stands, and leaves open and in focus what was. */
export function buildForm(keeper: Keeper): void {
  const form = byId("form");
  const focused = document.activeElement?.id;
  const open = form.querySelector<HTMLElement>("details[name=step][open]")?.dataset.step;
  const job = keeper.job();
  const parts = isChosen(job) ? steps(job).map((step, i) => part(step, i + 2, keeper, job)) : [];
  form.replaceChildren(jobChoice(keeper), ...parts);
  const all = [...form.querySelectorAll<HTMLDetailsElement>("details[name=step]")];
  const at = all.find(({ dataset }) => dataset.step === open) ?? all[isChosen(job) ? 1 : 0];
  if (at) at.open = true;
  if (focused) document.getElementById(focused)?.focus();
}

function details(path: string, number: number, title: string, ...children: Node[]): HTMLDetailsElement {
  const name = el("span", { id: idOf(path, "title") }, `${number}. ${title}`);
  const summary = el("summary", {}, name, el("span", { class: "state", "data-state": path }));
  const group = el("div", { role: "group", "aria-labelledby": name.id }, ...children);
  return el("details", { name: "step", class: "step", "data-step": path }, summary, group);
}

function jobChoice(keeper: Keeper): HTMLElement {
  const buttons = Object.entries(JOBS).map(([kind, text]) => {
    const button = el(
      "button",
      { type: "button", id: `job-${kind}`, "aria-pressed": String(keeper.job().kind === kind) },
      say(text),
    );
    button.addEventListener("click", () => {
      byId<HTMLDetailsElement>("job-choice").open = false;
      keeper.change({ ...keeper.job(), kind: kind as JobKind }, true);
      document.querySelector<HTMLElement>("[data-step] :is(input, select)")?.focus();
    });
    return button;
  });
  const { kind } = keeper.job();
  const example = el("button", { type: "button", class: "quiet", id: "example" }, say(W.example));
  example.addEventListener("click", keeper.example);
  const choice = details("job", 1, say(W.whatJob), el("div", { class: "jobs" }, ...buttons), example);
  choice.id = "job-choice";
  if (kind) choice.querySelector(".state")?.append(say(JOBS[kind]));
  return choice;
}

function part(step: Step, number: number, keeper: Keeper, job: KnownJob): HTMLElement {
  const { path, title, hint, asks } = step;
  const fields = asks.map((ask) => ({ ask, row: fieldRow(fieldOf(job, ask), keeper) }));
  const more = fields.filter(({ ask }) => ask.more);
  const filled = more.some(({ ask }) => job.entries[ask.path]?.text);
  return details(
    path,
    number,
    say(title),
    ...(hint ? [el("p", { class: "hint" }, say(hint))] : []),
    ...(path === "plot" && job.kind === "boundary" ? [boundaryTools(keeper)] : []),
    ...fields.filter(({ ask }) => !ask.more).map(({ row }) => row),
    ...(more.length > 0
      ? [
          el(
            "details",
            { class: "more", open: filled },
            el("summary", {}, say(W.more1)),
            ...more.map(({ row }) => row),
          ),
        ]
      : []),
    ...actions(path, keeper, job),
    fault(path),
  );
}

/** The buttons of a part, which change how many fields there are, and the ticks of the tools. */
function actions(path: string, keeper: Keeper, job: KnownJob): HTMLElement[] {
  const button = (id: string, text: string, next: () => Job): HTMLElement => {
    const made = el("button", { type: "button", id }, text);
    made.addEventListener("click", () => keeper.change(next(), true));
    return made;
  };
  const now = keeper.job;
  if (path === "calibration" && calibrationOf(shapeOf(job)) === "strip")
    return [
      ...(job.runs < 3 ? [button("add-run", say(W.addRun), () => ({ ...now(), runs: now().runs + 1 }))] : []),
      ...(job.runs > 1
        ? [button("remove-run", say(W.removeRun), () => ({ ...now(), runs: now().runs - 1 }))]
        : []),
    ];
  if (path === "tools")
    return (["scales", "syringes"] as const).map((name) => {
      const box = el("input", { type: "checkbox", id: name, checked: job.entries[name]?.text === "yes" });
      box.addEventListener("change", () =>
        keeper.change(withEntry(now(), name, { text: box.checked ? "yes" : "", unit: "1" })),
      );
      return el("label", { class: "tick" }, box, say(W[name]));
    });
  const at = Number(/^products\[(\d+)\]$/.exec(path)?.[1] ?? -1);
  if (at < 0) return [];
  const remove = button(`remove-${at}`, say(W.removeProduct), () => withoutProduct(now(), at));
  const add = button("add-product", say(W.addProduct), () => ({ ...now(), products: now().products + 1 }));
  add.addEventListener("click", () => goTo(byId(idOf(`products[${job.products}].name`, "field"))));
  return [...(at === job.products - 1 ? [add] : []), ...(job.products > 1 ? [remove] : [])];
}

/** The line that shows the error of one place of the job. */
function fault(place: string): HTMLElement {
  const id = idOf(place, "fault");
  // A link to a whole part leads to its line.
  return el("p", { class: "fault", id, "data-fault": place, "aria-live": "polite", tabindex: -1 });
}

function idOf(place: string, part: string): string {
  return `${part}-${place.replace(/[^A-Za-z0-9]+/g, "-")}`;
}

function fieldRow(field: Field, keeper: Keeper): HTMLElement {
  if (field.kind === "choice") return choiceRow(field, keeper);
  const { path, kind, whole, optional, units, hint } = field;
  const get = (): Entry => entryOf(keeper.job(), field);
  const set = (entry: Entry): void => {
    visited.add(path);
    keeper.change(withEntry(keeper.job(), path, entry));
  };
  const id = idOf(path, "field");
  const input = el("input", {
    id,
    type: "text",
    inputmode: kind === "text" ? undefined : whole ? "numeric" : "decimal",
    enterkeyhint: "next",
    value: get().text,
    "data-place": path,
    "aria-describedby": `${hint ? `${idOf(path, "hint")} ` : ""}${idOf(path, "fault")}`,
  });
  const select = el("select", {
    id: idOf(path, "unit"),
    "aria-label": say(W.unitOf, { label: say(field.label) }),
  });
  const showUnit = (): void => {
    // A unit that was typed is offered too.
    const offered = [...new Set([...units, get().unit])].filter((unit) => unit !== "1");
    const dry = isDry(keeper.job(), path);
    select.replaceChildren(...offered.map((unit) => el("option", { value: unit }, sign(unit, dry))));
    select.value = get().unit;
  };
  showUnit();
  input.addEventListener("input", () => set({ text: input.value, unit: get().unit }));
  // When a person leaves the field, a typed unit moves to the list of units, so the two always agree.
  input.addEventListener("change", () => {
    const typed = get();
    const entry = kind === "quantity" ? withTypedUnit(typed, keeper.job().system, units) : typed;
    // Without a change nothing is built again: a button of the answer that the person is clicking stays.
    if (entry !== typed) set(entry);
    input.value = get().text;
    showUnit();
  });
  select.addEventListener("change", () => set({ text: get().text, unit: select.value as Unit }));
  return el(
    "div",
    { class: "field" },
    el(
      "label",
      { for: id },
      say(field.label),
      optional ? el("span", { class: "optional" }, ` ${say(W.optional)}`) : undefined,
    ),
    hint ? el("p", { class: "hint", id: idOf(path, "hint") }, say(hint)) : undefined,
    el("div", { class: "amount" }, input, kind === "quantity" ? select : undefined),
    fault(path),
  );
}

// Two or three choices stand side by side; more are a list.
function choiceRow(field: Field, keeper: Keeper): HTMLElement {
  const { path, label, options = {} } = field;
  const change = (text: string): void => {
    const job = withEntry(keeper.job(), path, { text, unit: "1" });
    // A volume says nothing about weight, and the two kinds of ounces are easy to mix up. So the rates are cleared.
    const stale = Object.keys(job.entries).filter(
      (name) => path.endsWith(".form") && name.startsWith(path.slice(0, -4)) && /rate$|max$/i.test(name),
    );
    const kept = Object.entries(job.entries).filter(([name]) => !stale.includes(name));
    keeper.change({ ...job, entries: Object.fromEntries(kept) }, true);
  };
  const value = chosen(keeper.job(), field);
  if (Object.keys(options).length > 3) {
    const select = el("select", { id: idOf(path, "field"), "data-place": path });
    for (const [name, text] of Object.entries(options))
      select.append(el("option", { value: name }, say(text)));
    select.value = value;
    select.addEventListener("change", () => change(select.value));
    return el("div", { class: "field" }, el("label", { for: select.id }, say(label)), select, fault(path));
  }
  return choices(path, say(label), options, value, change);
}

/** A row of choices; one is chosen. */
export function choices(
  path: string,
  legend: string,
  options: NonNullable<Field["options"]>,
  value: string,
  change: (value: string) => void,
): HTMLElement {
  const buttons = Object.entries(options).map(([name, text]) => {
    const input = el("input", {
      type: "radio",
      id: idOf(`${path}-${name}`, "choice"),
      name: path,
      value: name,
      checked: name === value,
    });
    input.addEventListener("change", () => change(name));
    return el("label", {}, input, el("span", {}, say(text)));
  });
  return el("fieldset", { class: "choices" }, el("legend", {}, legend), ...buttons);
}

/** Scrolls to a field, opens the part that it is in, and puts the cursor in it. */
export function goTo(field: HTMLElement): void {
  for (let at = field.closest("details"); at; at = at.parentElement?.closest("details") ?? null)
    at.open = true;
  field.scrollIntoView({ block: "center" });
  field.focus({ preventScroll: true });
}

/** Goes from a field to the next one, in the next part if need be; false after the last. */
export function goOn(from: Element): boolean {
  const all = [...byId("form").querySelectorAll<HTMLElement>("input[type=text]")];
  const next = all
    .slice(all.indexOf(from as HTMLElement) + 1)
    .find((one) => !one.closest(".more:not([open])"));
  if (next) goTo(next);
  return next !== undefined;
}

/** Shows each error next to its field, and returns the fields with errors in the order of the form. */
export function showFaults(faults: readonly Issue[]): HTMLElement[] {
  const shown = new Map<HTMLElement, string>();
  for (const issue of faults) {
    const at = placeFor(issue.path);
    if (at === undefined || shown.has(at)) continue;
    const place = at.dataset.fault ?? "";
    // What is missing inside a filled field, such as what a percentage is of, has its own message.
    const empty = issue.code === "missing" && issue.path === place;
    shown.set(at, !empty ? issueText(issue, writing()) : visited.has(place) ? say(W.required) : "");
  }
  const found: HTMLElement[] = [];
  for (const line of faultLines()) {
    const text = shown.get(line);
    // Only a changed line is written, so a screen reader says it once.
    if (line.textContent !== (text ?? "")) line.textContent = text ?? "";
    line.classList.remove("doubt");
    const input = inputOf(line);
    if (text) input?.setAttribute("aria-invalid", "true");
    else input?.removeAttribute("aria-invalid");
    if (text !== undefined) found.push(input ?? line);
  }
  return found;
}

/** Shows each refusal and warning of a plan next to its field as well. */
export function showDoubts(warnings: readonly Warning[]): void {
  for (const warning of warnings) {
    const line = lineOf(warning);
    if (warning.severity === "note" || line === undefined || line.textContent !== "") continue;
    line.textContent = issueText(warning, writing());
    line.classList.toggle("doubt", warning.severity === "warning");
  }
}

/** The field that a warning is about, or the line of the part where it is about several. */
export function placeOf(warning: Warning): HTMLElement | undefined {
  const line = lineOf(warning);
  return line && (inputOf(line) ?? line);
}

// A dose is in doubt where its product is entered.
function lineOf({ path }: Warning): HTMLElement | undefined {
  return placeFor(path.replace(/^loads\[\d+\]\./, ""));
}

function inputOf(line: HTMLElement): HTMLElement | null {
  return document.querySelector<HTMLElement>(`[data-place="${line.dataset.fault}"]`);
}

/** Shows how far each part is. */
export function showStates(
  faulty: readonly HTMLElement[],
  text: (fields: readonly HTMLElement[]) => string,
): void {
  for (const state of document.querySelectorAll<HTMLElement>("[data-state]")) {
    const step = state.closest("details");
    const inside = faulty.filter((field) => step?.contains(field));
    if (step?.dataset.step !== "job") state.textContent = inside.length === 0 ? say(W.done) : text(inside);
    state.classList.toggle("open-state", inside.length > 0);
  }
}

function faultLines(): HTMLElement[] {
  return [...document.querySelectorAll<HTMLElement>("[data-fault]")];
}

/** The line nearest to an error's path: its own field's, else its section's, else the last one of the form. */
function placeFor(path: string): HTMLElement | undefined {
  const lines = faultLines();
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
