import { mkdirSync, writeFileSync } from "node:fs";
import { afterAll, describe, expect, it } from "vitest";
import cases from "./cases.json" with { type: "json" };
import more from "./more.json" with { type: "json" };

/** A published value, with where it was published. */
export interface HandbookCase {
  readonly id: string;
  readonly topic: string;
  readonly inputs: Readonly<Record<string, readonly [number | string | readonly number[], string]>>;
  readonly expected: Readonly<Record<string, readonly [number | string | readonly number[], string]>>;
  readonly tolerance_note: string;
  readonly source: { title: string; publisher: string; number: string; year: string; url: string };
  readonly agrees: boolean | null;
  readonly note: string;
}

/** What the library answers to a published value: ours, and half a unit of the last place that was printed. */
export interface Check {
  /** The key in the case's `expected`. */
  readonly key: string;
  /** What the library gives, in the published unit. */
  readonly ours: number;
  /** How far the printed figure may be off through its own rounding. */
  readonly within: number;
  /** Which of several printed figures, where the case lists more than one. */
  readonly index?: number;
  /** The printed figure itself, where `expected` tells it in words or under inputs. */
  readonly printed?: number;
}

interface Outcome {
  readonly id: string;
  readonly verdict: "agrees" | "publication errs" | "not covered" | "rule";
  readonly checks: readonly { key: string; ours: number; printed: number; within: number }[];
  readonly why?: string;
}

const byId = new Map(([...cases, ...more] as unknown as HandbookCase[]).map((one) => [one.id, one]));
const outcomes: Outcome[] = [];

function caseOf(id: string): HandbookCase {
  const found = byId.get(id);
  if (found === undefined) throw new Error(`no handbook case ${id}`);
  return found;
}

function printedValue(one: HandbookCase, check: Check): number {
  if (check.printed !== undefined) return check.printed;
  const value = one.expected[check.key]?.[0];
  const printed = Array.isArray(value) ? value[check.index ?? 0] : value;
  if (typeof printed !== "number") throw new Error(`${one.id}: no printed number under ${check.key}`);
  return printed;
}

function title(one: HandbookCase): string {
  const { title: name, publisher, number, year } = one.source;
  return `${one.id} (${[name, publisher, number, year].filter((part) => part && !/not shown/.test(part)).join(", ")})`;
}

function measure(one: HandbookCase, checks: readonly Check[]): Outcome["checks"] {
  return checks.map((check) => ({
    key: check.key,
    ours: check.ours,
    printed: printedValue(one, check),
    within: check.within,
  }));
}

/** The library must give the printed value within the rounding of the print. */
export function agrees(id: string, compute: (one: HandbookCase) => readonly Check[]): void {
  const one = caseOf(id);
  it(`gives the printed value of ${title(one)}`, () => {
    outcomes.push({ id, verdict: "agrees", checks: expectPrinted(one, compute(one)) });
  });
}

/** The same published value, which another test answers for the conformance page, from a whole job in one call. */
export function planAgrees(id: string, compute: (one: HandbookCase) => readonly Check[]): void {
  const one = caseOf(id);
  it(`plans the printed value of ${title(one)}`, () => {
    expectPrinted(one, compute(one));
  });
}

function expectPrinted(one: HandbookCase, given: readonly Check[]): Outcome["checks"] {
  const checks = measure(one, given);
  expect(checks.length).toBeGreaterThan(0);
  for (const { key, ours, printed, within } of checks) {
    // A millionth of the rounding for the noise of the comparison itself.
    expect(Math.abs(ours - printed), `${key}: ours ${ours}, printed ${printed}`).toBeLessThanOrEqual(
      within * 1.000001,
    );
  }
  return checks;
}

/**
 * The publication is wrong, or rounds further than it prints: the library must NOT give its value but the one that
 * `right` works out by plain arithmetic beside it, and `why` says where the publication errs.
 */
export function publicationErrs(
  id: string,
  why: string,
  compute: (one: HandbookCase) => readonly (Check & { readonly right: number })[],
): void {
  const one = caseOf(id);
  it(`differs from ${title(one)}: ${why}`, () => {
    const given = compute(one);
    const checks = measure(one, given);
    expect(checks.some(({ ours, printed, within }) => Math.abs(ours - printed) > within)).toBe(true);
    for (const { key, ours, right } of given) expect(Math.abs(ours / right - 1), key).toBeLessThan(1e-9);
    outcomes.push({ id, verdict: "publication errs", checks, why });
  });
}

/** A rule, not a number: `test` shows how the library takes it (a cited default, a refusal, a parameter). */
export function rule(id: string, why: string, test: (one: HandbookCase) => void): void {
  const one = caseOf(id);
  it(`follows the rule of ${title(one)}: ${why}`, () => {
    test(one);
    outcomes.push({ id, verdict: "rule", checks: [], why });
  });
}

/** A case that the library does not answer, and why. */
export function notCovered(id: string, why: string): void {
  caseOf(id);
  outcomes.push({ id, verdict: "not covered", checks: [], why });
}

/** Groups the cases of one topic, and keeps what came out for the conformance page. */
export function topic(name: string, body: () => void): void {
  describe(`handbook: ${name}`, () => {
    // One topic a file; files share this module where they are not isolated.
    outcomes.length = 0;
    body();
    it("runs or explains every case of the topic", () => {
      const wanted = [...byId.values()].filter((one) => one.topic === name).map((one) => one.id);
      expect(outcomes.map((outcome) => outcome.id).sort()).toEqual(wanted.sort());
    });
    afterAll(() => {
      const folder = process.env.CONFORMANCE_OUT;
      if (folder === undefined) return;
      mkdirSync(folder, { recursive: true });
      writeFileSync(`${folder}/${name}.json`, `${JSON.stringify(outcomes, null, 1)}\n`);
    });
  });
}
