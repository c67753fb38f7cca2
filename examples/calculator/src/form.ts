import { html, nothing, type TemplateResult } from "lit-html";
import { guard } from "lit-html/directives/guard.js";
import { live } from "lit-html/directives/live.js";
import type { Unit } from "swath-to-spoon/units";
import { calibrationOf, JOBS } from "./asks.ts";
import { boundaryTools } from "./boundary.ts";
import { entryOf, exampleJob, type Field, fieldOf, steps } from "./field.ts";
import { button, byId, choices, idOf, optionsOf, type Shown, valueIn } from "./html.ts";
import {
  chosen,
  isDry,
  type Job,
  type JobKind,
  type KnownJob,
  type Step,
  withEntry,
  withForm,
  withoutProduct,
} from "./job.ts";
import { focusOn, goTo, visit, waitingText } from "./places.ts";
import { change, enter, job, state } from "./state.ts";
import { type Entry, unitName, withTypedUnit } from "./units.ts";
import { say, W } from "./words.ts";

/** The form for the open job: the choice of the job, and its parts. */
export function jobForm(): TemplateResult {
  const now = job();
  return html`<form id="form" novalidate autocomplete="off" @keydown=${onEnter}
    @submit=${(event: Event) => event.preventDefault()}>
    ${jobChoice(now)}${steps(now).map((step, i) => part(step, i + 2, now as KnownJob))}
  </form>`;
}

/** Opens the part to go on with, which closes any other. */
export function openPart(): void {
  const [choice, first] = byId("form").querySelectorAll<HTMLDetailsElement>(".step");
  const next = first ?? choice;
  if (next) next.open = true;
}

function details(path: string, title: string, done: string, isOpen: boolean, content: Shown): TemplateResult {
  const id = idOf(path, "title");
  return html`<details name="step" class="step" data-step=${path}>
    <summary><span id=${id}>${title}</span><span class="state ${isOpen ? "open-state" : ""}">${done}</span></summary>
    <div role="group" aria-labelledby=${id}>${content}</div>
  </details>`;
}

function jobChoice(now: Job): TemplateResult {
  const choose = (kind: JobKind): void => {
    change({ ...job(), kind });
    openPart();
    byId("form").querySelector<HTMLElement>(":is(input, select)")?.focus();
  };
  const kinds = Object.entries(JOBS) as [JobKind, (typeof JOBS)[JobKind]][];
  const buttons = kinds.map(
    ([kind, { title }]) => html`<button type="button" aria-pressed=${now.kind === kind}
      @click=${() => choose(kind)}>${say(title)}</button>`,
  );
  const example = (): void => change(exampleJob(job().system, job().name), true);
  const content = html`<div class="jobs">${buttons}</div>
    <button type="button" class="quiet" @click=${example}>${say(W.example)}</button>`;
  return details("job", `1. ${say(W.whatJob)}`, now.kind ? say(JOBS[now.kind].title) : "", false, content);
}

function part({ path, title, hint, asks }: Step, number: number, now: KnownJob): TemplateResult {
  const rows = (isMore: boolean): TemplateResult[] =>
    asks.filter(({ more = false }) => more === isMore).map((ask) => row(fieldOf(now, ask), now));
  const more = rows(true);
  const open = state.marks.open.filter(({ step }) => step === path);
  const isBlank = asks.every(({ path: at, options }) => !options && !now.entries[at]?.text);
  const isFilled = (): boolean => asks.some((ask) => ask.more && now.entries[ask.path]?.text);
  return details(
    path,
    `${number}. ${say(title)}`,
    open.length > 0 ? waitingText(open) : say(isBlank ? W.optional : W.done),
    open.length > 0,
    html`${hint ? html`<p class="hint">${say(hint)}</p>` : ""}
      ${path === "plot" && now.kind === "boundary" ? boundaryTools() : ""}
      ${rows(false)}
      ${
        more.length === 0
          ? ""
          : html`<details class="more" ?open=${guard([now.name, now.kind], isFilled)}>
              <summary>${say(W.more)}</summary>
              ${more}
            </details>`
      }
      ${actions(path, now)}
      ${asks.some((ask) => ask.path === path) ? "" : mark(path)}`,
  );
}

/** The buttons of a part, which change how many fields there are, and the ticks of the tools. */
function actions(path: string, now: KnownJob): Shown {
  if (path === "calibration" && calibrationOf(now) === "strip") {
    const set = (runs: number) => (): void => change({ ...now, runs });
    return html`${now.runs < 3 ? button("add-run", W.addRun, set(now.runs + 1)) : ""}
      ${now.runs > 1 ? button("remove-run", W.removeRun, set(now.runs - 1)) : ""}`;
  }
  if (path === "tools")
    return (["scales", "syringes"] as const).map(
      (name) => html`<label class="tick">
        <input type="checkbox" id=${name} .checked=${live(now.entries[name]?.text === "yes")}
          @change=${(event: Event) => enter(name, (event.target as HTMLInputElement).checked ? "yes" : "")} />
        ${say(W[name])}
      </label>`,
    );
  const at = Number(/^products\[(\d+)\]$/.exec(path)?.[1] ?? -1);
  if (at < 0) return "";
  const add = (): void => {
    change({ ...now, products: now.products + 1 });
    goTo(`products[${now.products}].name`);
  };
  const remove = (): void => change(withoutProduct(now, at));
  return html`${at === now.products - 1 ? button("add-product", W.addProduct, add) : ""}
    ${now.products > 1 ? button(`remove-${at}`, W.removeProduct, remove) : ""}`;
}

/** The line that shows what stands at a place. A link to a whole part leads to its line. */
function mark(place: string): TemplateResult {
  const { text = "", severity } = state.marks.texts.get(place) ?? {};
  return html`<p class="fault ${severity === "warning" ? "doubt" : ""}" id=${idOf(place, "fault")} data-fault=${place}
    aria-live="polite" tabindex="-1">${text}</p>`;
}

function row(field: Field, now: KnownJob): TemplateResult {
  return field.kind === "choice" ? choiceRow(field, now) : textRow(field, now);
}

function textRow(field: Field, now: KnownJob): TemplateResult {
  const { path, kind, whole, optional, units, hint, label } = field;
  const entry = entryOf(now, field);
  const set = (next: Entry): void => {
    visit(path);
    change(withEntry(job(), path, next));
  };
  // When a person leaves the field, a typed unit moves to the list of units, so the two always agree.
  const leave = (): void => set(kind === "quantity" ? withTypedUnit(entry, now.system, units) : entry);
  const found = state.marks.texts.get(path);
  const id = idOf(path, "field");
  const about = hint ? idOf(path, "hint") : "";
  return html`<div class="field">
    <label for=${id}>${label}${optional ? html`<span class="optional"> ${say(W.optional)}</span>` : ""}</label>
    ${hint ? html`<p class="hint" id=${about}>${say(hint)}</p>` : ""}
    <div class="amount">
      <input id=${id} type="text" inputmode=${kind === "text" ? nothing : whole ? "numeric" : "decimal"}
        enterkeyhint="next" data-place=${path} .value=${live(entry.text)}
        aria-invalid=${found?.severity === "error" && found.text ? "true" : nothing}
        aria-describedby="${about} ${idOf(path, "fault")}"
        @input=${(event: Event) => set({ text: valueIn(event), unit: entry.unit })} @change=${leave} />
      ${kind === "quantity" ? unitList(field, entry, now, set) : ""}
    </div>
    ${mark(path)}
  </div>`;
}

function unitList(
  { path, units, label }: Field,
  { text, unit }: Entry,
  now: KnownJob,
  set: (entry: Entry) => void,
): TemplateResult {
  // A unit that was typed is offered too.
  const offered = [...new Set([...units, unit])].filter((one) => one !== "1");
  const signs = offered.map((one) => [one, unitName(one, isDry(now, path))] as const);
  return html`<select aria-label=${say(W.unitOf, { label })}
    @change=${(event: Event) => set({ text, unit: valueIn(event) as Unit })}>${optionsOf(signs, unit)}</select>`;
}

// Two or three choices stand side by side; more are a list.
function choiceRow(field: Field, now: KnownJob): TemplateResult {
  const { path, label, options = {} } = field;
  const choose = (text: string): void =>
    change((path.endsWith(".form") ? withForm : withEntry)(job(), path, { text, unit: "1" }));
  const texts = Object.entries(options).map(([name, text]) => [name, say(text)] as const);
  const value = chosen(now, field);
  if (texts.length <= 3) return html`${choices(path, label, texts, value, choose)}${mark(path)}`;
  const id = idOf(path, "field");
  return html`<div class="field">
    <label for=${id}>${label}</label>
    <select id=${id} data-place=${path} @change=${(event: Event) => choose(valueIn(event))}>
      ${optionsOf(texts, value)}
    </select>
    ${mark(path)}
  </div>`;
}

/** Enter goes from a field to the next one, in the next part if need be, and from the last one to the bar. */
function onEnter(event: KeyboardEvent): void {
  const at = event.target as HTMLElement;
  if (event.key !== "Enter" || !at.matches("input[type=text]")) return;
  event.preventDefault();
  // The change event of the field comes first, as if the person had left it.
  at.blur();
  const all = [...byId("form").querySelectorAll<HTMLElement>("input[type=text]")];
  const next = all.slice(all.indexOf(at) + 1).find((one) => !one.closest(".more:not([open])"));
  if (next) focusOn(next);
  else byId("go").focus();
}
