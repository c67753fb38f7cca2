import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { type PracticeSet, practiceSet, practiceSets, practiceTopics } from "../../../src/practice/index.ts";
import { SPANISH_PRACTICE_WORDS } from "../../../src/words/es-practice.ts";
import { expectRefused, refusal } from "../../helpers/refusal.ts";

const SYSTEMS = ["us", "metric", "imperial"] as const;

/** What a number promises: topics, figures, answers and wordings in their order, but not the words. */
function fingerprint({ problems }: PracticeSet): string {
  const held = problems.map(({ topic, given, answer, wording }) => [
    topic,
    given,
    typeof answer === "object" ? [Number(answer.value.toPrecision(9)), answer.unit] : answer,
    wording,
  ]);
  return createHash("sha256").update(JSON.stringify(held)).digest("hex").slice(0, 12);
}

describe("sets of one generation", () => {
  // Never write these anew: a change of them is a new generation, with another letter.
  const held = JSON.parse(readFileSync("tests/unit/practice/sets-of-generation-A.json", "utf8")) as Record<
    string,
    string
  >;

  it("give the same 200 sheets in every version", () => {
    const now = Object.fromEntries(
      Object.keys(held).map((name, i) => {
        // A third of the topics in each: that is every topic 66 times.
        const topics = practiceTopics.filter((_, at) => at % 3 === i % 3);
        const [set = "", units] = name.split(" ") as [string, (typeof SYSTEMS)[number]];
        return [name, fingerprint(practiceSet(set, { units, topics }))];
      }),
    );
    expect(now).toEqual(held);
    expect(Object.keys(held).length).toBe(200);
  });

  it("have their letter in the number, and take it back with the number or without", () => {
    const { set, problems } = practiceSet(7);
    expect(set).toBe("A-7");
    for (const name of ["A-7", "a-7", " 7 ", "7"]) expect(practiceSet(name)).toEqual({ set, problems });
    for (const other of ["B-7", " B-7 ", "AB-7"]) {
      expectRefused(() => practiceSet(other), "unknown-choice", "set", "generation A");
      expect(refusal(() => practiceSet(other)).issues[0]?.figures.given).toBe(other.trim());
    }
    for (const bad of ["seven", "A-", "A7", "7.5"])
      expectRefused(() => practiceSet(bad), "unreadable", "set", "A-7");
    for (const bad of [0, 100_000, 1.5, "A-0"]) expectRefused(() => practiceSet(bad), "out-of-range", "set");
    expectRefused(() => practiceSet(undefined as never), "missing", "set");
  });
});

describe("a set", () => {
  it("goes from easy to hard, with a problem of each topic", () => {
    const { problems } = practiceSet(3);
    expect(problems.map(({ topic }) => topic)).toEqual(practiceTopics);
    const hard = problems.map(({ difficulty }) => difficulty);
    expect(hard).toEqual([...hard].sort());
  });

  it("keeps to the topics taught, and to what is easy enough, with as many of each", () => {
    const topics = ["band", "percent-mix", "rectangle-area"] as const;
    expect(practiceSet(1, { topics, problems: 5 }).problems.map(({ topic }) => topic)).toEqual([
      "rectangle-area",
      "rectangle-area",
      "percent-mix",
      "percent-mix",
      "band",
    ]);
    expect(practiceSet(1, { difficulty: 1 }).problems.every(({ difficulty }) => difficulty === 1)).toBe(true);
    const eight = practiceSet(1, { problems: 8 }).problems.map(({ topic }) => practiceTopics.indexOf(topic));
    expect(eight).toEqual([0, 3, 7, 10, 14, 17, 21, 24]);
    expectRefused(
      () => practiceSet(1, { topics: ["band"], difficulty: 1 }),
      "conflict",
      "options.difficulty",
    );
    expectRefused(() => practiceSet(1, { topics: [] }), "too-few", "options.topics");
    expectRefused(() => practiceSet(1, { problems: 61 }), "out-of-range", "options.problems");
    expectRefused(
      () => practiceSet(1, { topic: "band" } as never),
      "unknown-field",
      "options.topic",
      "topics",
    );
    expectRefused(() => practiceSet(1, { first: 3 } as never), "unknown-field", "options.first");
  });

  it("asks nothing twice", () => {
    for (const topic of practiceTopics) {
      const { problems } = practiceSet(5, { topics: [topic], problems: 20 });
      expect(new Set(problems.map(({ given }) => JSON.stringify(given))).size, topic).toBe(20);
    }
  });

  it("has the same figures in every language", () => {
    const spanish = practiceSet(9, { words: SPANISH_PRACTICE_WORDS, locale: "es-US" });
    expect(fingerprint(spanish)).toBe(fingerprint(practiceSet(9)));
    expect(spanish.problems[0]?.problem).not.toBe(practiceSet(9).problems[0]?.problem);
  });
});

describe("the sets of a class", () => {
  it("are numbered in a row and all different, problem for problem nearly everywhere", () => {
    const sets = practiceSets(30, { problems: 8, first: 101 });
    expect(sets.map(({ set }) => set)).toEqual(Array.from({ length: 30 }, (_, i) => `A-${101 + i}`));
    expect(sets[4]).toEqual(practiceSet("A-105", { problems: 8 }));
    expect(new Set(sets.map(fingerprint)).size).toBe(30);
    for (let at = 0; at < 8; at++) {
      const same = new Set(sets.map(({ problems }) => JSON.stringify(problems[at]?.given)));
      expect(same.size).toBeGreaterThan(20);
    }
    // Of 232 pairs of neighbors hardly any ask the same.
    const shared = sets
      .slice(1)
      .flatMap(({ problems }, i) =>
        problems.filter(
          ({ given }, at) => JSON.stringify(given) === JSON.stringify(sets[i]?.problems[at]?.given),
        ),
      );
    expect(shared.length).toBeLessThan(6);
  });

  it("are refused in numbers that no class has", () => {
    expectRefused(() => practiceSets(0), "out-of-range", "students");
    expectRefused(() => practiceSets(101), "out-of-range", "students");
    expectRefused(() => practiceSets(3, { first: 99_901 }), "out-of-range", "options.first");
  });

  it("are refused where no topic is easy enough", () => {
    expectRefused(
      () => practiceSets(2, { topics: ["band"], difficulty: 1 }),
      "conflict",
      "options.difficulty",
    );
  });
});
