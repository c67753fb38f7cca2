import type { Plan } from "swath-to-spoon/plan";
import type { UnitSystem } from "swath-to-spoon/units";
import { goTo, showAnswer, showMissing, showWorking } from "./answer.ts";
import { clearCard, layCard } from "./card.ts";
import { type Checked, check } from "./check.ts";
import { byId, el } from "./dom.ts";
import { buildForm, choices, type Keeper, showDoubts, showFaults, unvisit, visitAll } from "./form.ts";
import { emptyJob, exampleJob, type Job, switchedJob } from "./job.ts";
import { keep, kept } from "./memory.ts";
import type { Writing } from "./units.ts";

// The words are English. Numbers are read and written as in the person's own country.
const locale = navigator.language || "en-US";

const SYSTEMS: Readonly<Record<UnitSystem, string>> = { us: "US", imperial: "Imperial", metric: "Metric" };

let job: Job = kept(locale) ?? emptyJob(/^en-US/.test(locale) ? "us" : "metric");
let checked: Checked = { faults: [] };
let faulty: readonly HTMLElement[] = [];
/** The job before it was cleared or replaced, until something new is typed. */
let cleared: Job | undefined;

function writing(): Writing {
  return { locale, system: job.system };
}

const keeper: Keeper = {
  job: () => job,
  writing,
  change: (next, rebuild) => {
    job = next;
    setCleared(undefined);
    keep(job, locale);
    rebuild?.();
    refresh();
  },
};

/** Plans the job again and shows it. It takes a millisecond, so it runs at each key. */
function refresh(): void {
  checked = check(job, writing());
  faulty = showFaults(checked.faults ?? []);
  showDoubts(checked.plan?.warnings ?? []);
  const { plan } = checked;
  if (plan) showPlan(plan);
  else {
    const empty = faulty.filter(isEmpty);
    const wrong = faulty.filter((field) => !isEmpty(field));
    showMissing(wrong, empty);
    clearCard();
  }
  byId("status").textContent = plan ? loadsText(plan) : waitingText(faulty);
  byId("go").textContent = plan ? "See your answer" : "Next field";
}

function showPlan(plan: Plan): void {
  showAnswer(plan, { system: job.system, locale });
  layCard(plan, locale);
  if (byId<HTMLDetailsElement>("working").open) showWorking(plan, locale);
}

function loadsText({ loads }: Plan): string {
  return loads.length === 1 ? "Ready: 1 tank load" : `Ready: ${loads.length} tank loads`;
}

function isEmpty(field: HTMLElement): boolean {
  return field instanceof HTMLInputElement && field.value.trim() === "";
}

function waitingText(fields: readonly HTMLElement[]): string {
  const left = fields.filter(isEmpty).length;
  const wrong = fields.length - left;
  if (wrong > 0) return left === 0 ? `${wrong} to fix` : `${wrong} to fix, ${left} left`;
  return left === 1 ? "1 field left" : `${left} fields left`;
}

/** Puts another job in place and builds its form. */
function replace(next: Job): void {
  job = next;
  keep(job, locale);
  buildSystems();
  buildForm(keeper);
  refresh();
}

function buildSystems(): void {
  const change = (system: UnitSystem): void => {
    const next = switchedJob(job, system, writing());
    job = next;
    keep(job, locale);
    buildForm(keeper);
    refresh();
  };
  const built = choices("system", "Units", SYSTEMS, job.system, change);
  built.id = "system";
  byId("system").replaceWith(built);
}

function setCleared(before: Job | undefined, undo = "Undo clear"): void {
  cleared = before;
  byId("clear").textContent = before ? undo : "Clear all";
}

byId("example").addEventListener("click", () => {
  const before = job;
  replace(exampleJob(writing()));
  setCleared(before, "Undo example");
});

byId("clear").addEventListener("click", () => {
  if (cleared) {
    replace(cleared);
    setCleared(undefined);
    return;
  }
  const before = job;
  unvisit();
  replace(emptyJob(job.system));
  setCleared(before);
});

byId("go").addEventListener("click", () => {
  const [first] = faulty;
  if (first) {
    visitAll(checked.faults ?? []);
    showFaults(checked.faults ?? []);
    goTo(first);
  } else {
    byId("answer").scrollIntoView();
    byId("answer").focus({ preventScroll: true });
  }
});

byId("working").addEventListener("toggle", () => {
  if (checked.plan && byId<HTMLDetailsElement>("working").open) showWorking(checked.plan, locale);
});

byId("form").addEventListener("submit", (event) => event.preventDefault());

// The browser keeps the page once it is loaded, so it opens without a signal.
async function keepPage(): Promise<void> {
  await navigator.serviceWorker.register("./sw.js");
  await navigator.serviceWorker.ready;
  byId("offline").append(el("span", {}, "Saved on this device. Works without a signal."));
}

replace(job);
if (import.meta.env.MODE === "production" && "serviceWorker" in navigator) keepPage().catch(() => undefined);
