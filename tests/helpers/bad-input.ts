import { describe, expect, it } from "vitest";
import { refusal } from "./refusal.ts";

export { refusal as errorOf } from "./refusal.ts";

const JUNK: readonly unknown[] = [null, "5", Number.NaN, Number.POSITIVE_INFINITY, [], {}, true, () => 1];
const BAD_NUMBERS: readonly unknown[] = [Number.NaN, Number.POSITIVE_INFINITY, -1, "5", null];

function replaced(input: object, path: readonly string[], value: unknown): object {
  const [first = "", ...rest] = path;
  const copy = (Array.isArray(input) ? [...input] : { ...input }) as Record<string, unknown>;
  copy[first] = rest.length === 0 ? value : replaced(copy[first] as object, rest, value);
  return copy;
}

/** Where input is refused; nothing where it is accepted. */
function placeOf(work: () => unknown): string | undefined {
  try {
    work();
    return undefined;
  } catch {
    return refusal(work).path;
  }
}

/**
 * Plain JavaScript misuse of one argument after the other: each must be refused with the argument's own path, never with a
 * TypeError, and never answered with NaN. `fields` are paths into the valid input, such as `rate` or `loads.0.carrier`.
 */
export function refusesMisuse(
  name: string,
  call: (input: never) => unknown,
  valid: object,
  fields: readonly string[],
): void {
  describe(`${name}, misused from plain JavaScript`, () => {
    it.each(JUNK)("refuses %s for its whole input", (junk) => {
      if (typeof junk === "object" && junk !== null && !Array.isArray(junk)) return;
      expect(refusal(() => call(junk as never)).path).toBe("");
    });

    it("is called with valid input that it accepts", () => {
      expect(() => call(valid as never)).not.toThrow();
    });

    for (const field of fields) {
      const steps = field.split(".");
      const path = field.replace(/\.(\d+)/g, "[$1]");
      it(`refuses junk for ${path}, and says where it is`, () => {
        for (const junk of JUNK) {
          // Nothing is no junk where the field may be left out, or where leaving it out is a fault of the whole.
          const place = placeOf(() => call(replaced(valid, steps, junk) as never));
          const leftOut = placeOf(() => call(replaced(valid, steps, undefined) as never));
          if (junk === null && place === leftOut && !leftOut?.startsWith(path)) continue;
          const error = refusal(() => call(replaced(valid, steps, junk) as never));
          expect(error.path.startsWith(path), `${String(junk)}: ${error.path}: ${error.message}`).toBe(true);
        }
      });
      const value = steps.reduce<unknown>((at, step) => (at as Record<string, unknown>)[step], valid);
      if (typeof value !== "object" || value === null || !("value" in value)) continue;
      it(`refuses a bad number in ${path}, and says where it is`, () => {
        for (const bad of BAD_NUMBERS) {
          const error = refusal(() => call(replaced(valid, [...steps, "value"], bad) as never));
          expect(error.path.startsWith(path), `${String(bad)}: ${error.path}: ${error.message}`).toBe(true);
        }
      });
    }
  });
}
