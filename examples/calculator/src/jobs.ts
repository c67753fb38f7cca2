import { html, type TemplateResult } from "lit-html";
import { live } from "lit-html/directives/live.js";
import { openPart } from "./form.ts";
import { button, byId, optionsOf, valueIn } from "./html.ts";
import { emptyJob, type Job } from "./job.ts";
import { unvisit } from "./places.ts";
import { seasonList } from "./season.ts";
import { job, jobsWith, put, START, state } from "./state.ts";
import { type Kept, merged, read, saveFile } from "./store.ts";
import { say, W } from "./words.ts";

/** Puts other jobs in place of these, or opens another. */
function putJobs(next: Partial<Kept>, canUndo = false): void {
  unvisit();
  put(next, canUndo);
  openPart();
}

/** Brings back what was cleared or deleted. */
export function undo(): void {
  if (state.before) putJobs(state.before);
}

/** An empty job with a name that no other job or record has. */
function newJob(): Job {
  const { jobs, records } = state.kept;
  const names = new Set([...jobs.map(({ name }) => name), ...records.flatMap(({ plots = [] }) => plots)]);
  const system = jobs[state.kept.open]?.system ?? START.system;
  for (let n = 1; ; n++) if (!names.has(say(W.job, { n }))) return emptyJob(system, say(W.job, { n }));
}

/** Opens an empty job beside the others. */
export function addJob(): void {
  const { jobs } = state.kept;
  putJobs({ jobs: [...jobs, newJob()], open: jobs.length });
}

function deleteJob(): void {
  const { jobs, open } = state.kept;
  const rest = jobs.filter((_, i) => i !== open);
  putJobs({ jobs: rest.length > 0 ? rest : [newJob()], open: Math.max(0, open - 1) }, true);
}

function clearJob(): void {
  putJobs({ jobs: jobsWith(emptyJob(job().system, job().name)) }, true);
}

/** Gives the job a name that no other has. What was recorded of its place goes with it. */
function rename(event: Event): void {
  const { jobs, records } = state.kept;
  const [old, typed] = [job().name, valueIn(event).trim()];
  const name = typed === "" || jobs.some((one) => one.name === typed) ? old : typed;
  const moved = records.map((record) => ({
    ...record,
    plots: record.plots?.map((place) => (place === old ? name : place)),
  }));
  put({ jobs: jobsWith({ ...job(), name }), records: moved });
}

async function readFile({ target }: Event): Promise<void> {
  const text = await (target as HTMLInputElement).files?.[0]?.text();
  const added = read(text ?? "");
  if (added) putJobs(merged(state.kept, added), true);
  byId("file-status").textContent = added
    ? say(W.imported, { jobs: added.jobs.length, records: added.records.length })
    : say(W.notOurs);
}

/** The jobs that are kept, the season so far, and both as a file. */
export function myJobs(): TemplateResult {
  const { jobs, open } = state.kept;
  const names = jobs.map(({ name }, i) => [String(i), name] as const);
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
    <h2>${say(W.season, { place: job().name })}</h2>
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
