import type { Issue } from "swath-to-spoon";
import { issueText } from "swath-to-spoon/worksheet";
import { fieldOf, steps } from "./field.ts";
import { byId, idOf } from "./html.ts";
import type { Checked } from "./input.ts";
import type { Job, KnownJob } from "./job.ts";
import { count, say, W, writing } from "./words.ts";

/** Where an error can stand: at a field, or at a part of the form as a whole. */
export interface Place {
  readonly path: string;
  /** The part that it is in. */
  readonly step: string;
  /** What a link to it says. */
  readonly name: string;
  /** An empty field is not wrong. */
  readonly isEmpty: boolean;
}

/** What stands at a place: an error, or what the plan refuses or questions there. */
export interface Mark {
  readonly text: string;
  readonly severity: "error" | "refusal" | "warning";
}

export interface Marks {
  readonly texts: ReadonlyMap<string, Mark>;
  /** The places with errors, in the order of the form. */
  readonly open: readonly Place[];
}

// The fields that a person has visited or was sent to. Only these say that they are required.
const visited = new Set<string>();

/** Has empty fields say that they are required. */
export function visit(...paths: string[]): void {
  for (const path of paths) visited.add(path);
}

/** Forgets which fields a person has visited. */
export function unvisit(): void {
  visited.clear();
}

function placesOf(job: Job): Place[] {
  return steps(job).flatMap(({ path: step, title, asks }, i) => {
    const place = (path: string, label: string, isEmpty: boolean): Place => ({
      path,
      step,
      name: `${i + 2}. ${say(title)}: ${label}`,
      isEmpty,
    });
    const fields = asks.map((ask) => {
      const { path, label, options } = fieldOf(job as KnownJob, ask);
      return place(path, label, !options && !job.entries[path]?.text.trim());
    });
    const isField = asks.some(({ path }) => path === step);
    return isField ? fields : [...fields, place(step, say(W.thisSection), false)];
  });
}

/** The place nearest to an error's path: its own field, else its part, else the last one of the form. */
function placeIn(places: readonly Place[], path: string): Place | undefined {
  const inside = places.filter(
    (place) => path === place.path || [".", "["].some((sign) => path.startsWith(place.path + sign)),
  );
  return inside.sort((a, b) => b.path.length - a.path.length)[0] ?? places.at(-1);
}

/** Where a refusal or a warning belongs: a dose is in doubt where its product is entered. */
export function placeOf(job: Job, { path }: Pick<Issue, "path">): Place | undefined {
  return placeIn(placesOf(job), path.replace(/^loads\[\d+\]\./, ""));
}

/** What stands at each place, one thing at most: an error first. */
export function marksOf(job: Job, { plan, faults = [] }: Checked): Marks {
  const places = placesOf(job);
  const texts = new Map<string, Mark>();
  const put = (place: Place | undefined, mark: Mark): void => {
    if (place && !texts.has(place.path)) texts.set(place.path, mark);
  };
  for (const issue of faults) {
    const place = placeIn(places, issue.path);
    // What is missing inside a filled field, such as what a percentage is of, has its own message.
    const isEmpty = issue.code === "missing" && issue.path === place?.path;
    const required = visited.has(issue.path) ? say(W.required) : "";
    put(place, { text: isEmpty ? required : issueText(issue, writing()), severity: "error" });
  }
  const open = places.filter(({ path }) => texts.has(path));
  for (const warning of plan?.warnings ?? []) {
    const { severity } = warning;
    if (severity !== "note") put(placeOf(job, warning), { text: issueText(warning, writing()), severity });
  }
  return { texts, open };
}

/** How many fields are wrong, and how many are empty. */
export function waitingText(places: readonly Place[]): string {
  const left = places.filter(({ isEmpty }) => isEmpty).length;
  const wrong = places.length - left;
  return [...(wrong > 0 ? [count(W.fix, wrong)] : []), ...(left > 0 ? [count(W.left, left)] : [])].join(", ");
}

/** Goes to a place, opens the part that it is in, and puts the cursor in it. */
export function goTo(path: string): void {
  focusOn(document.getElementById(idOf(path, "field")) ?? byId(idOf(path, "fault")));
}

/** Scrolls to a field or a part, opens what it is in, and puts the cursor in it. */
export function focusOn(field: HTMLElement, block: "center" | "start" = "center"): void {
  for (let at = field.closest("details"); at; at = at.parentElement?.closest("details") ?? null)
    at.open = true;
  field.scrollIntoView({ block });
  field.focus({ preventScroll: true });
}
