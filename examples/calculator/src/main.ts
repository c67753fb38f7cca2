import { html, render, type TemplateResult } from "lit-html";
import { live } from "lit-html/directives/live.js";
import type { UnitSystem } from "swath-to-spoon/units";
import { answer } from "./answer.ts";
import { cardOf, paperCard } from "./card.ts";
import { switchedJob } from "./field.ts";
import { jobForm, openPart } from "./form.ts";
import { byId, optionsOf, valueIn } from "./html.ts";
import { isRefused } from "./input.ts";
import { emptyJob, isChosen, type Job } from "./job.ts";
import { goTo, unvisit, visit, waitingText } from "./places.ts";
import { seasonList } from "./season.ts";
import { change, job, put, refresh, showBy, state } from "./state.ts";
import { type Kept, merged, read, saveFile } from "./store.ts";
import { count, type Language, locale, say, speak, type Text, W } from "./words.ts";

function page(): TemplateResult {
  const card = cardOf();
  return html`<header>
      <h1>Swath to spoon</h1>
      <p>${say(W.intro)}</p>
      ${settings()}
    </header>
    <main>
      <div>${jobForm()}${myJobs()}</div>
      <section id="answer" aria-labelledby="answer-title" tabindex="-1">
        <div class="title">
          <h2 id="answer-title">${say(W.answer)}</h2>
          <button type="button" class="quiet" id="back" @click=${backToForm}>${say(W.back)}</button>
        </div>
        ${answer(card)}
      </section>
      <article id="card">${paperCard(card)}</article>
    </main>
    <footer><p id="offline" hidden>${say(W.offline)}</p></footer>
    ${bar()}`;
}

function settings(): TemplateResult {
  const systems = (["us", "imperial", "metric"] as const).map((name) => [name, say(W[name])] as const);
  const languages = [
    ["en", "English"],
    ["es", "Español"],
  ] as const;
  const switchTo = (event: Event): void => change(switchedJob(job(), valueIn(event) as UnitSystem));
  const speakIn = async (event: Event): Promise<void> => {
    const language = valueIn(event) as Language;
    await speak(language);
    put({ language });
  };
  return html`<p class="settings">
    <select id="system" aria-label=${say(W.units)} @change=${switchTo}>${optionsOf(systems, job().system)}</select>
    <select id="language" aria-label="Language / Idioma" @change=${speakIn}>
      ${optionsOf(languages, state.kept.language)}
    </select>
    <button type="button" id="undo" ?hidden=${!state.before} @click=${undo}>${say(W.undo)}</button>
  </p>`;
}

/** Puts other jobs in place of these, or opens another. */
function putJobs(next: Partial<Kept>, canUndo = false): void {
  unvisit();
  put(next, canUndo);
  openPart();
}

function undo(): void {
  if (state.before) putJobs(state.before);
}

/** An empty job with a name that no other has. */
function newJob(): Job {
  const { jobs } = state.kept;
  const names = new Set(jobs.map(({ name }) => name));
  const system = state.kept.jobs[state.kept.open]?.system ?? (/-US\b/.test(locale) ? "us" : "metric");
  for (let n = 1; ; n++) if (!names.has(say(W.job, { n }))) return emptyJob(system, say(W.job, { n }));
}

function addJob(): void {
  const { jobs } = state.kept;
  putJobs({ jobs: [...jobs, newJob()], open: jobs.length });
}

function deleteJob(): void {
  const { jobs, open } = state.kept;
  const rest = jobs.filter((_, i) => i !== open);
  putJobs({ jobs: rest.length > 0 ? rest : [newJob()], open: Math.max(0, open - 1) }, true);
}

function clearJob(): void {
  unvisit();
  change(emptyJob(job().system, job().name), true);
  openPart();
}

function rename(event: Event): void {
  const name = valueIn(event).trim();
  const others = state.kept.jobs.filter((_, i) => i !== state.kept.open);
  const isFree = name !== "" && others.every((other) => other.name !== name);
  change(isFree ? { ...job(), name } : job());
}

async function readFile({ target }: Event): Promise<void> {
  const text = await (target as HTMLInputElement).files?.[0]?.text();
  const added = read(text ?? "");
  if (added) putJobs(merged(state.kept, added), true);
  byId("file-status").textContent = added
    ? say(W.imported, { jobs: added.jobs.length, records: added.records.length })
    : say(W.notOurs);
}

function myJobs(): TemplateResult {
  const { jobs, open } = state.kept;
  const names = jobs.map(({ name }, i) => [String(i), name] as const);
  const button = (id: string, text: Text, act: () => void): TemplateResult =>
    html`<button type="button" id=${id} @click=${act}>${say(text)}</button>`;
  return html`<details id="my-jobs">
    <summary>${say(W.myJobs)}</summary>
    <div class="field">
      <label for="job-name">${say(W.jobName)}</label>
      <input id="job-name" type="text" .value=${live(job().name)} @change=${rename} />
    </div>
    <div class="field">
      <label for="jobs">${say(W.otherJob)}</label>
      <select id="jobs" @change=${(event: Event) => putJobs({ open: Number(valueIn(event)) })}>
        ${optionsOf(names, String(open))}
      </select>
    </div>
    <p class="actions">
      ${button("clear", W.clear, clearJob)}${button("new-job", W.newJob, addJob)}
      ${button("delete-job", W.deleteJob, deleteJob)}
    </p>
    <h2>${say(W.season)}</h2>
    <div id="season">${seasonList()}</div>
    <p class="actions">${button("export", W.export, () => saveFile(state.kept))}</p>
    <div class="field">
      <label for="import">${say(W.import)}</label>
      <input id="import" type="file" accept=".json" @change=${readFile} />
    </div>
    <p id="file-status" role="status"></p>
    <p class="hint">${say(W.stays)}</p>
  </details>`;
}

/** The bar at the foot: how far the job is, and the way on. */
function bar(): TemplateResult {
  const { checked, marks } = state;
  const { plan } = checked;
  const refused = plan !== undefined && isRefused(plan);
  const status = !isChosen(job())
    ? say(W.chooseJob)
    : !plan
      ? waitingText(marks.open)
      : refused
        ? say(W.refused)
        : "hopper" in plan
          ? say(W.readyToSpread)
          : count(W.ready1, W.ready, plan.loads.length);
  return html`<div id="bar" class="${plan ? "ready" : ""} ${refused ? "refused" : ""}">
    <p id="status" role="status">${status}</p>
    <button type="button" id="go" @click=${goOn}>${say(!plan ? W.next : refused ? W.seeWhy : W.seeAnswer)}</button>
  </div>`;
}

function goOn(): void {
  const [first] = state.marks.open;
  if (first) {
    visit(...state.marks.open.map(({ path }) => path));
    refresh();
    goTo(first.path);
  } else if (state.checked.plan) {
    byId("answer").scrollIntoView();
    byId("answer").focus({ preventScroll: true });
  } else byId("form").querySelector<HTMLElement>("summary")?.focus();
}

function backToForm(): void {
  const part = byId("form").querySelector<HTMLElement>(".step[open] > summary");
  part?.scrollIntoView();
  part?.focus({ preventScroll: true });
}

// The browser keeps the page once it is loaded, so it opens without a signal.
async function keepPage(): Promise<void> {
  await navigator.serviceWorker.register("./sw.js");
  await navigator.serviceWorker.ready;
  byId("offline").hidden = false;
}

await speak(state.kept.language);
showBy(() => render(page(), document.body));
if (state.kept.jobs.length === 0) addJob();
else refresh();
openPart();

// On a phone the bar makes room once the answer is on the screen.
new IntersectionObserver(
  ([seen]) => document.body.classList.toggle("sees-answer", seen?.isIntersecting === true),
  { rootMargin: "-40% 0px -40% 0px" },
).observe(byId("answer"));
if (import.meta.env.MODE === "production" && "serviceWorker" in navigator) keepPage().catch(() => undefined);
