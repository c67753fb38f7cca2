import { html, render, type TemplateResult } from "lit-html";
import type { UnitSystem } from "swath-to-spoon/units";
import { answer } from "./answer.ts";
import { cardOf, paperCard } from "./card.ts";
import { switchedJob } from "./field.ts";
import { jobForm, openPart } from "./form.ts";
import { byId, optionsOf, valueIn } from "./html.ts";
import { isRefused } from "./input.ts";
import { isChosen } from "./job.ts";
import { addJob, myJobs, undo } from "./jobs.ts";
import { focusOn, goTo, visit, waitingText } from "./places.ts";
import { change, job, put, refresh, showBy, state } from "./state.ts";
import { count, type Language, say, speak, W } from "./words.ts";

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
  const languages = Object.entries({ en: "English", es: "Español" } satisfies Record<Language, string>);
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
  </p>`;
}

/** The bar at the foot: how far the job is, and the way on. */
function bar(): TemplateResult {
  const { plan } = state.checked;
  const refused = plan !== undefined && isRefused(plan);
  return html`<div id="bar" class="${plan ? "ready" : ""} ${refused ? "refused" : ""}">
    <p id="status" role="status">${statusText()}</p>
    <button type="button" class="quiet" id="undo" ?hidden=${!state.before} @click=${undo}>${say(W.undo)}</button>
    <button type="button" id="go" @click=${goOn}>${say(!plan ? W.next : refused ? W.seeWhy : W.seeAnswer)}</button>
  </div>`;
}

function statusText(): string {
  const { plan } = state.checked;
  if (!isChosen(job())) return say(W.chooseJob);
  if (plan === undefined) return waitingText(state.marks.open);
  if (isRefused(plan)) return say(W.refused);
  return "hopper" in plan ? say(W.readyToSpread) : count(W.ready, plan.loads.length);
}

function goOn(): void {
  const [first] = state.marks.open;
  if (first) {
    visit(...state.marks.open.map(({ path }) => path));
    refresh();
    goTo(first.path);
  } else if (state.checked.plan) focusOn(byId("answer"), "start");
  else byId("form").querySelector<HTMLElement>("summary")?.focus();
}

function backToForm(): void {
  const part = byId("form").querySelector<HTMLElement>(".step[open] > summary");
  if (part) focusOn(part, "start");
}

// The browser keeps the page once it is loaded, so it opens without a signal.
async function keepPage(): Promise<void> {
  await navigator.serviceWorker.register("./sw.js");
  await navigator.serviceWorker.ready;
  byId("offline").hidden = false;
}

await speak(state.kept.language);
showBy(() => render(page(), document.body));
try {
  if (state.kept.jobs.length === 0) addJob();
  else refresh();
} catch (error) {
  // A job that an earlier page kept must not lock the person out of the others.
  console.error(error);
  addJob();
}
openPart();

// On a phone the bar makes room once the answer is on the screen.
new IntersectionObserver(
  ([seen]) => document.body.classList.toggle("sees-answer", seen?.isIntersecting === true),
  { rootMargin: "-40% 0px -40% 0px" },
).observe(byId("answer"));
if (import.meta.env.MODE === "production" && "serviceWorker" in navigator) keepPage().catch(() => undefined);
