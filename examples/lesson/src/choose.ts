import { type PracticeTopic, practiceProblem, practiceTopics } from "swath-to-spoon/practice";
import type { Choice } from "./choice.ts";
import { button, byId, el, radios, textField, tickBox } from "./dom.ts";
import { filled, LANGUAGES } from "./words.ts";

const LEVELS = ["1", "2", "3"] as const;

const topicsOf = (level: (typeof LEVELS)[number]): PracticeTopic[] =>
  practiceTopics.filter((topic) => String(practiceProblem(topic, 1).difficulty) === level);

/** Builds the form in which problems are chosen. */
export function buildChoose(choice: Choice, change: (next: Partial<Choice>) => void): void {
  const { page, words } = LANGUAGES[choice.language];
  const chosen = new Set(choice.topics);
  const count = el("summary");
  const showCount = (): void => {
    count.textContent = filled(page.topics, { number: chosen.size, all: practiceTopics.length });
  };
  const changeTopics = (): void => {
    showCount();
    change({ topics: practiceTopics.filter((topic) => chosen.has(topic)) });
  };
  const all = (isTicked: boolean) => (): void => {
    for (const box of byId("topics").querySelectorAll("input")) box.checked = isTicked;
    chosen.clear();
    if (isTicked) for (const topic of practiceTopics) chosen.add(topic);
    changeTopics();
  };
  const groups = LEVELS.map((level) =>
    el(
      "fieldset",
      { class: "choices" },
      el("legend", {}, page.levels[level]),
      ...topicsOf(level).map((topic) =>
        tickBox(words.topics[topic].name, chosen.has(topic), (isTicked) => {
          if (isTicked) chosen.add(topic);
          else chosen.delete(topic);
          changeTopics();
        }),
      ),
    ),
  );
  showCount();
  byId("choose").replaceChildren(
    el("h2", {}, page.choose),
    el(
      "details",
      { id: "topics" },
      count,
      el("p", { class: "actions" }, button(page.all, all(true)), button(page.none, all(false))),
      ...groups,
    ),
    el("p", { class: "fault", id: "topics-fault", role: "status" }),
    radios("difficulty", page.hardest, page.levels, String(choice.difficulty) as "1" | "2" | "3", (level) =>
      change({ difficulty: Number(level) as 1 | 2 | 3 }),
    ),
    radios("units", page.units, page.systems, choice.units, (units) => change({ units })),
    textField("problems", page.problems, choice.problems, {
      hint: page.problemsHint,
      onInput: (problems) => change({ problems }),
    }),
    textField("set", page.set, choice.set, { hint: page.setHint, onInput: (set) => change({ set }) }),
  );
}
