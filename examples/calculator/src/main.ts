import type { ApplicationRecord } from "swath-to-spoon/plan";
import type { UnitSystem } from "swath-to-spoon/units";
import { isRefused, showAnswer, showMissing, showWorking } from "./answer.ts";
import { clearCard } from "./card.ts";
import { byId, el } from "./dom.ts";
import {
  buildForm,
  goOn,
  goTo,
  type Keeper,
  showDoubts,
  showFaults,
  showStates,
  unvisit,
  visitAll,
} from "./form.ts";
import { type Checked, check, type JobPlan } from "./input.ts";
import { emptyJob, exampleJob, isChosen, type Job, switchedJob } from "./job.ts";
import { recordForm, seasonList } from "./season.ts";
import { type Kept, keep, lastVisit, merged, read, saveFile } from "./store.ts";
import { wayChoice } from "./ways.ts";
import { count, type Language, locale, say, speak, W } from "./words.ts";

const firstSystem = /-US\b/.test(locale) ? "us" : "metric";

let kept: Kept = lastVisit() ?? {
  locale,
  language: locale.startsWith("es") ? "es" : "en",
  jobs: [],
  open: 0,
  records: [],
};
let checked: Checked = { faults: [] };
let faulty: readonly HTMLElement[] = [];
let seesAnswer = false;
/** Everything as it was before something was cleared or deleted, until the next change. */
let before: Kept | undefined;

const job = (): Job => kept.jobs[kept.open] as Job;

/** Puts something else in place of what is kept. `undo` lets the person take it back. */
function put(next: Partial<Kept>, undo = false): void {
  before = undo ? kept : undefined;
  kept = { ...kept, ...next };
  keep(kept);
  byId("undo").hidden = before === undefined;
}

function withJob(next: Job): Partial<Kept> {
  return { jobs: kept.jobs.map((one, i) => (i === kept.open ? next : one)) };
}

const keeper: Keeper = {
  job,
  change: (next, rebuild = false) => {
    put(withJob(next));
    if (rebuild) buildForm(keeper);
    refresh();
  },
  example: () => {
    put(withJob(exampleJob(job().system, job().name)), true);
    build();
  },
};

/** Plans the job again and shows it. It takes a few milliseconds, so it runs at each key. */
function refresh(): void {
  checked = check(job(), kept.records);
  faulty = showFaults(checked.faults ?? []);
  showStates(faulty, waitingText);
  const { plan } = checked;
  showDoubts(plan?.warnings ?? []);
  if (plan) {
    const ways = "hopper" in plan ? [] : wayChoice(checked.ways, plan.input.sprayer, keeper);
    showAnswer(plan, job(), ways, recordForm(plan, job(), addRecord));
    showMath();
  } else {
    showMissing(
      faulty.filter((field) => !isEmpty(field)),
      faulty.filter(isEmpty),
    );
    clearCard();
  }
  showStatus();
}

function showMath(): void {
  const { plan } = checked;
  if (plan && !("hopper" in plan) && byId<HTMLDetailsElement>("working").open) showWorking(plan, job());
}

function showStatus(): void {
  const { plan } = checked;
  byId("bar").classList.toggle("away", plan !== undefined && seesAnswer);
  byId("bar").classList.toggle("refused", plan !== undefined && isRefused(plan));
  if (!isChosen(job())) byId("status").textContent = say(W.chooseJob);
  else if (plan === undefined) byId("status").textContent = waitingText(faulty);
  else byId("status").textContent = isRefused(plan) ? say(W.refused) : readyText(plan);
  byId("go").textContent = say(plan === undefined ? W.next : isRefused(plan) ? W.seeWhy : W.seeAnswer);
}

function readyText(plan: JobPlan): string {
  return "hopper" in plan ? say(W.readyToSpread) : count(W.ready1, W.ready, plan.loads.length);
}

function isEmpty(field: HTMLElement): boolean {
  return field instanceof HTMLInputElement && field.value.trim() === "";
}

/** How many fields are wrong, and how many are empty: an empty one is not wrong. */
function waitingText(fields: readonly HTMLElement[]): string {
  const left = fields.filter(isEmpty).length;
  const wrong = fields.length - left;
  return [
    ...(wrong > 0 ? [count(W.fix1, W.fix, wrong)] : []),
    ...(left > 0 ? [count(W.left1, W.left, left)] : []),
  ].join(", ");
}

function addRecord(record: ApplicationRecord): void {
  put({ records: [...kept.records, record] });
  buildJobs();
}

/** Builds everything that has words in it. */
function build(): void {
  for (const place of document.querySelectorAll<HTMLElement>("[data-say]"))
    place.textContent = say(W[place.dataset.say as keyof typeof W]);
  buildSelects();
  buildJobs();
  buildForm(keeper);
  refresh();
}

function fill(id: string, options: Readonly<Record<string, string>>, value: string): void {
  const select = byId<HTMLSelectElement>(id);
  select.replaceChildren(
    ...Object.entries(options).map(([name, text]) => el("option", { value: name }, text)),
  );
  select.value = value;
}

function buildSelects(): void {
  fill("system", { us: say(W.us), imperial: say(W.imperial), metric: say(W.metric) }, job().system);
  byId("system").setAttribute("aria-label", say(W.units));
  fill("language", { en: "English", es: "Español" }, kept.language);
}

function buildJobs(): void {
  fill("jobs", Object.fromEntries(kept.jobs.map(({ name }, i) => [String(i), name])), String(kept.open));
  byId<HTMLInputElement>("job-name").value = job().name;
  byId("season").replaceChildren(
    ...seasonList(job(), kept.records, (gone) => {
      put({ records: kept.records.filter((record) => record !== gone) }, true);
      build();
    }),
  );
}

/** A name that no job has yet. */
function newName(): string {
  const names = new Set(kept.jobs.map(({ name }) => name));
  for (let n = 1; ; n++) if (!names.has(say(W.job, { n }))) return say(W.job, { n });
}

function addJob(): void {
  const system = kept.jobs[kept.open]?.system ?? firstSystem;
  put({ jobs: [...kept.jobs, emptyJob(system, newName())], open: kept.jobs.length });
}

function onClick(id: string, act: () => void): void {
  byId(id).addEventListener("click", act);
}

function onChange(id: string, act: (value: string) => void): void {
  const field = byId<HTMLInputElement | HTMLSelectElement>(id);
  field.addEventListener("change", () => act(field.value));
}

onChange("system", (system) => {
  put(withJob(switchedJob(job(), system as UnitSystem)));
  build();
});
onChange("language", async (language) => {
  await speak(language as Language);
  put({ language: language as Language });
  build();
});
onChange("jobs", (open) => {
  unvisit();
  put({ open: Number(open) });
  build();
});
onChange("job-name", (typed) => {
  const name = typed.trim();
  const others = kept.jobs.filter((_, i) => i !== kept.open);
  if (name !== "" && others.every((other) => other.name !== name)) put(withJob({ ...job(), name }));
  build();
});
onClick("new-job", () => {
  unvisit();
  addJob();
  build();
});
onClick("delete-job", () => {
  put({ jobs: kept.jobs.filter((_, i) => i !== kept.open), open: Math.max(0, kept.open - 1) }, true);
  if (kept.jobs.length === 0) {
    const whole = before;
    addJob();
    before = whole;
    byId("undo").hidden = false;
  }
  build();
});
onClick("clear", () => {
  unvisit();
  put(withJob(emptyJob(job().system, job().name)), true);
  build();
});
onClick("undo", () => {
  if (before) put(before);
  build();
});
onClick("export", () => saveFile(kept));
byId("import").addEventListener("change", async (event) => {
  const text = await (event.target as HTMLInputElement).files?.[0]?.text();
  const added = read(text ?? "");
  if (added) put(merged(kept, added), true);
  build();
  byId("file-status").textContent = added
    ? say(W.imported, { jobs: added.jobs.length, records: added.records.length })
    : say(W.notOurs);
});

onClick("back", () => {
  const part = document.querySelector<HTMLElement>("details[name=step][open] > summary");
  part?.scrollIntoView();
  part?.focus({ preventScroll: true });
});
onClick("go", () => {
  const [first] = faulty;
  if (first) {
    visitAll(checked.faults ?? []);
    showFaults(checked.faults ?? []);
    goTo(first);
  } else if (checked.plan) {
    byId("answer").scrollIntoView();
    byId("answer").focus({ preventScroll: true });
  } else byId("job-choice").querySelector<HTMLElement>("summary")?.focus();
});

byId("form").addEventListener("keydown", (event) => {
  const at = event.target as HTMLElement;
  if (event.key !== "Enter" || !at.matches("input[type=text]")) return;
  event.preventDefault();
  // The change event of the field comes first, as if the person had left it.
  at.blur();
  if (!goOn(document.getElementById(at.id) ?? at)) byId("go").focus();
});
byId("form").addEventListener("submit", (event) => event.preventDefault());

byId("working").addEventListener("toggle", showMath);

// The browser keeps the page once it is loaded, so it opens without a signal.
async function keepPage(): Promise<void> {
  await navigator.serviceWorker.register("./sw.js");
  await navigator.serviceWorker.ready;
  byId("offline").hidden = false;
}

await speak(kept.language);
if (kept.jobs.length === 0) addJob();
build();

// On a phone the bar makes room once the answer is on the screen.
new IntersectionObserver(
  ([answer]) => {
    seesAnswer = answer?.isIntersecting === true;
    showStatus();
  },
  { rootMargin: "-40% 0px -40% 0px" },
).observe(byId("answer"));
if (import.meta.env.MODE === "production" && "serviceWorker" in navigator) keepPage().catch(() => undefined);
