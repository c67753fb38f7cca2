import { readFileSync } from "node:fs";
import ts from "typescript";
import { frozen } from "../../src/frozen.ts";
import { planApplication } from "../../src/plan/index.ts";
import { allExamples } from "./examples.ts";
import { everyObjectIn } from "./hostile.ts";
import { TWO_PRODUCTS } from "./jobs.ts";
import { MEASUREMENTS } from "./output-rate-samples.ts";

type Call = (...args: never[]) => unknown;
type Exports = Readonly<Record<string, unknown>>;

/** A function that the package exports, with arguments that it takes. */
export interface ExportedFunction {
  /** Its way in, and its name there: `swath-to-spoon/area rectangleArea`. */
  readonly name: string;
  readonly call: Call;
  /** Lists of arguments, as the examples of docstrings and pages pass them. Frozen: a call that writes into one fails. */
  readonly examples: readonly (readonly unknown[])[];
}

/** What is exported, by way in: what package.json says, read from src. */
export async function waysIn(): Promise<ReadonlyMap<string, Exports>> {
  const { exports } = JSON.parse(readFileSync("package.json", "utf8")) as {
    exports: Record<string, string | { import: { default: string } }>;
  };
  const ways = new Map<string, Exports>();
  for (const [way, target] of Object.entries(exports)) {
    if (typeof target === "string") continue;
    const file = target.import.default.replace(/^\.\/dist\/(.*)\.js$/, "../../src/$1.ts");
    ways.set(`swath-to-spoon${way.slice(1)}`, await import(file));
  }
  return ways;
}

/** What is exported and is no function. */
export function exportedValues(ways: ReadonlyMap<string, Exports>): { name: string; value: unknown }[] {
  return [...ways].flatMap(([way, exports]) =>
    Object.entries(exports)
      .filter(([, value]) => typeof value !== "function")
      .map(([name, value]) => ({ name: `${way} ${name}`, value })),
  );
}

/** Objects in the examples that the library made and froze itself, such as the parts of a plan: it may give them again. */
export const madeHere: ReadonlySet<object> = new Set<object>();

// Called by nobody: the class of everything that is thrown.
const CLASSES = new Set(["SprayMathError"]);

/** Every exported function once, whichever way in it is found by, with the arguments of its examples. */
export function exportedFunctions(ways: ReadonlyMap<string, Exports>): ExportedFunction[] {
  const recorded = recordedCalls(ways);
  const found = new Map<Call, ExportedFunction>();
  // A function has its own way in and the main one; the first is the better name, and the main one comes first.
  for (const [way, exports] of [...ways].reverse())
    for (const [name, value] of Object.entries(exports)) {
      if (typeof value !== "function" || found.has(value as Call) || CLASSES.has(name)) continue;
      const call = value as Call;
      const own = recorded.get(call) ?? [];
      const examples = [...own, ...(MORE[name] ?? []), ...(way.endsWith("/working") ? samename(name) : [])];
      found.set(call, { name: `${way} ${name}`, call, examples: frozen(examples) });
    }
  // The working of a function takes what the function takes.
  function samename(name: string): readonly (readonly unknown[])[] {
    const number = ways.get("swath-to-spoon")?.[name];
    return WORKING_OF_RESULTS.has(name) ? [] : (recorded.get(number as Call) ?? []);
  }
  return [...found.values()];
}

/** Workings that take a result of the function and not its input. */
const WORKING_OF_RESULTS = new Set(["planApplication", "planSpreading"]);

const PLAN = planApplication(TWO_PRODUCTS);

/** Arguments beside those of the examples: what no example has, and every kind of measurement. */
const MORE: Readonly<Record<string, readonly (readonly unknown[])[]>> = {
  rateOf: Object.values(MEASUREMENTS).map((one) => [one]),
  rateUncertainty: Object.values(MEASUREMENTS).map((one) => [one]),
  planApplication: [[TWO_PRODUCTS]],
  worksheet: [[PLAN, { units: "metric" }]],
};

/** Runs the examples of docstrings and pages, and keeps what they pass to each function. */
function recordedCalls(ways: ReadonlyMap<string, Exports>): Map<unknown, unknown[][]> {
  const calls = new Map<unknown, unknown[][]>();
  const watched = new Map<string, Exports>();
  for (const [way, exports] of ways)
    watched.set(
      way,
      Object.fromEntries(
        Object.entries(exports).map(([name, value]) => [
          name,
          typeof value === "function" ? watch(value as Call, calls) : value,
        ]),
      ),
    );
  const load = (name: string): Exports => {
    const exports = watched.get(name);
    if (exports === undefined) throw new Error(`${name} is not a way in`);
    return exports;
  };
  for (const { code } of allExamples()) {
    const { outputText } = ts.transpileModule(code, {
      compilerOptions: { module: ts.ModuleKind.CommonJS, target: ts.ScriptTarget.ES2022 },
    });
    try {
      new Function("require", "exports", "console", outputText)(load, {}, { log: () => {} });
    } catch {
      // Needs another package, or waits for something; the examples' own test runs it.
    }
  }
  return calls;
}

const MOST_RECORDED = 12;

function watch(call: Call, calls: Map<unknown, unknown[][]>): Call {
  return new Proxy(call, {
    apply: (target, self, args: never[]) => {
      const result = Reflect.apply(target, self, args);
      const list = calls.get(target) ?? [];
      for (const one of everyObjectIn(args)) if (Object.isFrozen(one)) (madeHere as Set<object>).add(one);
      if (list.length < MOST_RECORDED) list.push([...args]);
      calls.set(target, list);
      return result;
    },
  });
}
