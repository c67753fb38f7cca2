import { inspect } from "node:util";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { SprayMathError } from "../../src/index.ts";
import { exportedFunctions, exportedValues, madeHere, waysIn } from "../helpers/every-export.ts";
import { diceFrom, everyObjectIn, hostileArguments, pictureOf } from "../helpers/hostile.ts";
import { faultsOfIssue } from "../helpers/plain-words.ts";
import { runs } from "../helpers/runs.ts";

// Whatever is passed to any function of the package, what comes back is a result or a SprayMathError, nothing else.

const ways = await waysIn();
const functions = exportedFunctions(ways);

/** How many calls all functions together get: in `npm run fuzz`, and in `npm test`. */
const CALLS = { full: 1_000_000, inTest: 20_000 };
const tries = runs(CALLS.full / functions.length, CALLS.inTest / functions.length);

// No call takes a tenth of it. Time of the processor, so a busy machine fails nothing.
const MOST_SECONDS = 5;

/** What is wrong with an error: it has to be the library's own, say where and what, and be short enough to show. */
function faultOfError(error: unknown): string | undefined {
  if (!(error instanceof SprayMathError)) return `threw ${inspect(error)}`;
  const { issues } = error;
  if (issues.length === 0 || issues.length > 1000) return `holds ${issues.length} issues`;
  for (const { code, key, path, message, figures } of [error, ...issues]) {
    if (!code || !key) return "has no code";
    if (typeof path !== "string" || path.length > 400) return `has the path ${inspect(path)}`;
    if (message.length < 8 || message.length > 800) return `has a message of ${message.length} letters`;
    if (/undefined|\[object/.test(message)) return `says: ${message}`;
    const [fault] = faultsOfIssue({ message, figures });
    if (fault !== undefined) return `says what isn't plain: ${fault}`;
    if (JSON.stringify(figures).length > 4000) return "has figures without end";
  }
  return undefined;
}

/** What is wrong with a value in a result. */
function faultOfValue(value: unknown): string | undefined {
  if (typeof value === "number" && (!Number.isFinite(value) || Object.is(value, -0))) return inspect(value);
  if (typeof value === "string" && /NaN|Infinity|∞|undefined|\[object/.test(value))
    return value.slice(0, 200);
  if (["function", "symbol", "bigint"].includes(typeof value)) return `a ${typeof value}`;
  return undefined;
}

/** What is wrong with a result: a number that is none, a text that says so, what is no plain data or still the caller's. */
function faultOfResult(result: unknown, given: ReadonlySet<object>): string | undefined {
  // A schema is zod's, which has functions; so has a JSON Schema that it wrote, out of sight.
  if (typeof result === "object" && result !== null && "~standard" in result) return undefined;
  const whole = faultOfValue(result);
  if (whole !== undefined) return `gives ${whole}`;
  for (const one of everyObjectIn(result)) {
    if (given.has(one)) return `gives back the caller's ${inspect(one, { depth: 1 })}`;
    if (!Array.isArray(one) && Object.getPrototypeOf(one) !== Object.prototype)
      return `gives ${inspect(one)}`;
    for (const [name, { value }] of Object.entries(Object.getOwnPropertyDescriptors(one))) {
      const found = faultOfValue(value);
      if (found !== undefined) return `gives ${found} as ${name}`;
    }
  }
  return undefined;
}

/** What is wrong with what a function does with these arguments. */
function faultOf(call: (...args: never[]) => unknown, args: readonly unknown[]): string | undefined {
  const before = pictureOf(args);
  const start = process.cpuUsage();
  let fault: string | undefined;
  try {
    const result = call(...(args as never[]));
    fault = faultOfResult(result, callersOwn(args));
  } catch (error) {
    fault = faultOfError(error);
  }
  const { user } = process.cpuUsage(start);
  if (user > MOST_SECONDS * 1e6) return `took ${user / 1e6} s`;
  const after = pictureOf(args);
  const isSame = before.length === after.length && before.every((one, i) => Object.is(one, after[i]));
  return fault ?? (isSame ? undefined : "changed what it was given");
}

/** The objects of an input that are the caller's, and not a part of what the library made and froze. */
function callersOwn(args: readonly unknown[]): ReadonlySet<object> {
  return new Set([...everyObjectIn(args)].filter((one) => !madeHere.has(one)));
}

function shownArguments(args: readonly unknown[]): string {
  return inspect(args, { depth: 8, showProxy: true, maxStringLength: 60, maxArrayLength: 6 }).slice(0, 3000);
}

describe.each(functions)("$name", ({ name, call, examples }) => {
  it("has an example, and takes it", () => {
    expect(examples.length, "needs an @example in its docstring that calls it").toBeGreaterThan(0);
    for (const args of examples) expect(faultOf(call, args), shownArguments(args)).toBe(undefined);
  });

  it("gives a result or a SprayMathError, nothing else", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 3 }), fc.nat(), (changes, seed) => {
        const dice = diceFrom(seed);
        const args = hostileArguments(dice.pick(examples), changes, dice);
        const fault = faultOf(call, args);
        if (fault !== undefined) throw new Error(`${name} ${fault}\nfor ${shownArguments(args)}`);
      }),
      tries,
    );
  });
});

describe("a value that is exported", () => {
  it.each(exportedValues(ways))("$name is plain data that nobody can change", ({ value }) => {
    expect(faultOfResult(value, new Set())).toBe(undefined);
    for (const one of everyObjectIn(value)) expect(Object.isFrozen(one)).toBe(true);
  });
});
