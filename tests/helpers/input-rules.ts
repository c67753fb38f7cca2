import { describe, expect, it } from "vitest";
import type { Quantity } from "../../src/units/index.ts";
import * as working from "../../src/working/index.ts";
import { refusal } from "./refusal.ts";
import { SAMPLES } from "./samples.ts";

/** A function and an input that it takes. */
export type Call = readonly [name: string, call: (input: never) => unknown, input: object];

const WORKING: Readonly<Record<string, unknown>> = { ...working };

/** What a folder exports and has samples for, with its working: each is called with one object. */
export function callsOf(folder: Readonly<Record<string, unknown>>): Call[] {
  return Object.entries(SAMPLES).flatMap(([name, samples]) =>
    folder[name] === undefined
      ? []
      : samples
          .filter((given) => given.length === 1)
          .flatMap(([input]): Call[] => [
            [name, folder[name] as Call[1], input],
            [`${name}Working`, WORKING[name] as Call[1], input],
          ]),
  );
}

/** Every object in an input, by its path. */
function objectsIn(input: unknown, path: readonly string[] = []): (readonly string[])[] {
  if (typeof input !== "object" || input === null) return [];
  const inner = Object.entries(input).flatMap(([name, value]) => objectsIn(value, [...path, name]));
  return Array.isArray(input) ? inner : [path, ...inner];
}

function at(input: object, path: readonly string[]): object {
  return path.reduce<object>((inner, name) => inner[name as never], input);
}

function changed(input: object, path: readonly string[], change: object): object {
  const [first, ...rest] = path;
  if (first === undefined) return { ...input, ...change };
  const copy = (Array.isArray(input) ? [...input] : { ...input }) as Record<string, object>;
  copy[first] = changed(copy[first] as object, rest, change);
  return copy;
}

function frozen<T>(input: T): T {
  if (typeof input === "object" && input !== null) Object.values(Object.freeze(input)).forEach(frozen);
  return input;
}

/** The rules that every function keeps for its input, tried on calls that are right. */
export function keepsInputRules(calls: readonly Call[]): void {
  describe.each(calls)("%s", (_, call, input) => {
    it("refuses a field that it does not know, at every depth", () => {
      for (const path of objectsIn(input)) {
        const error = refusal(() => call(changed(input, path, { lable: 1 }) as never));
        const place = [...path, "lable"].join(".").replace(/\.(\d+)/g, "[$1]");
        expect([error.code, error.path]).toEqual(["unknown-field", place]);
      }
    });

    it("takes a field that is undefined or null for one that is not there", () => {
      for (const path of objectsIn(input))
        for (const nothing of [undefined, null])
          expect(call(changed(input, path, { lable: nothing }) as never)).toEqual(call(input as never));
    });

    it("names a field at fault, and no other for what they have to do with one another", () => {
      for (const path of objectsIn(input)) {
        const inner = at(input, path);
        for (const [name, value] of Object.entries(inner)) {
          const wrong = typeof value === "boolean" ? "yes" : true;
          const error = refusal(() => call(changed(input, path, { [name]: wrong }) as never));
          const [first] = [...path, name];
          for (const issue of error.issues) expect(issue.path.split(/[.[]/)[0], issue.message).toBe(first);
        }
      }
    });

    it("says where it ran out of numbers, or that the whole of it did", () => {
      const places = objectsIn(input).filter((path) => "value" in at(input, path));
      const scaledBy = (factors: readonly number[]) =>
        places.reduce((one, path, i) => {
          const { value } = at(input, path) as Quantity;
          return changed(one, path, { value: value * (factors[i] as number) });
        }, input);
      for (const factor of [1e160, 1e-160, 1e300, 1e-300])
        for (const others of [1, 1 / factor, factor])
          for (const [k] of places.entries()) {
            const scaled = scaledBy(places.map((_, i) => (i === k ? factor : others)));
            try {
              call(scaled as never);
            } catch (error) {
              const { path } = refusal(() => {
                throw error;
              });
              expect(at(input, path.split(/[.[\]]+/).filter(Boolean)), path).toBeDefined();
            }
          }
    });

    it("works on a copy: the input stays as it was, and the result shares nothing with it", () => {
      const given = structuredClone(input);
      const result = call(frozen(given) as never);
      expect(given).toEqual(input);
      const parts = new Set(objectsIn(given).map((path) => at(given, path)));
      for (const path of objectsIn(result)) expect(parts.has(at(result as object, path))).toBe(false);
    });
  });
}
