import { type PracticeTopic, practiceTopics } from "swath-to-spoon/practice";
import type { UnitSystem } from "swath-to-spoon/units";
import type { Language } from "./words.ts";

/** What was chosen on the page. The address has it after the `#`, so a link opens the page with the same problems. */
export interface Choice {
  readonly language: Language;
  readonly units: UnitSystem;
  readonly difficulty: 1 | 2 | 3;
  readonly topics: readonly PracticeTopic[];
  /** As typed; blank for one problem of each topic. */
  readonly problems: string;
  /** As typed. */
  readonly set: string;
}

function oneOf<T extends string>(value: string | null, choices: readonly T[], usual: T): T {
  return choices.find((choice) => choice === value) ?? usual;
}

/** The choice in an address. What it lacks, or has wrong, is as usual. */
export function choiceIn(hash: string, usual: Language): Choice {
  const found = new URLSearchParams(hash.replace(/^#/, ""));
  const topics = found.get("topics")?.split(",");
  return {
    language: oneOf(found.get("language"), ["en", "es"], usual),
    units: oneOf(found.get("units"), ["us", "metric", "imperial"], "us"),
    difficulty: Number(oneOf(found.get("difficulty"), ["1", "2", "3"], "3")) as 1 | 2 | 3,
    topics: topics === undefined ? practiceTopics : practiceTopics.filter((topic) => topics.includes(topic)),
    problems: found.get("problems") ?? "",
    set: found.get("set") ?? "1",
  };
}

/** An address for a choice, from the `#` on. */
export function hashOf({ topics, difficulty, ...others }: Choice): string {
  const all = topics.length === practiceTopics.length;
  return `#${new URLSearchParams({
    ...others,
    difficulty: String(difficulty),
    ...(!all && { topics: topics.join(",") }),
  })}`;
}

/** What is typed as the library takes it: a number where it is one. */
export function numberIn(text: string): number {
  return /^\s*\d+\s*$/.test(text) ? Number(text) : Number.NaN;
}

/** The options of the sets that were chosen. */
export function setOptions({ units, difficulty, topics, problems }: Choice) {
  return { units, difficulty, topics, ...(problems.trim() !== "" && { problems: numberIn(problems) }) };
}
