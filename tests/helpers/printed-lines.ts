import { compile, type EvalFunction } from "mathjs";
import { expect } from "vitest";
import type { Messages, WrittenLine } from "../../src/worksheet/index.ts";

/** Reads a number as a locale writes it, from what `Intl` says of its signs: nothing of the library's own reading. */
export function numberReader(locale: string): (text: string) => number {
  const format = new Intl.NumberFormat(locale, { useGrouping: true });
  const sign = (value: number, type: string) =>
    format.formatToParts(value).find((part) => part.type === type)?.value ?? "";
  const digits = [...new Intl.NumberFormat(locale, { useGrouping: false }).format(9876543210)].reverse();
  const [group, decimal, minus] = [sign(12345678, "group"), sign(0.5, "decimal"), sign(-1, "minusSign")];
  return (text) => {
    let plain = "";
    // Some locales put marks of direction before a minus sign.
    for (let rest = text.replace(/[\u061c\u200e\u200f]/g, ""); rest !== ""; ) {
      const digit = digits.findIndex((one) => rest.startsWith(one));
      if (digit >= 0) plain += digit;
      else if (rest.startsWith(decimal)) plain += ".";
      else if (minus !== "" && rest.startsWith(minus)) plain += "-";
      else if (group === "" || !rest.startsWith(group)) break;
      const read =
        digit >= 0
          ? digits[digit]
          : rest.startsWith(decimal)
            ? decimal
            : rest.startsWith(minus)
              ? minus
              : group;
      rest = rest.slice((read as string).length);
    }
    if (!/^-?\d+(\.\d*)?$/.test(plain)) throw new Error(`not a number in ${locale}: ${text}`);
    return Number(plain);
  };
}

const compiled = new Map<string, EvalFunction>();

/** What an evaluator that is not ours makes of a formula. */
export function evaluated(expression: string, scope: Readonly<Record<string, number>>): number {
  const known = compiled.get(expression) ?? compile(expression);
  compiled.set(expression, known);
  return known.evaluate({ ...scope });
}

const SIGNS: Readonly<Record<string, string>> = {
  "×": "*",
  "÷": "/",
  "−": "-",
  "√": "sqrt",
  π: "pi",
  ";": ",",
};

/**
 * The sum that a printed line shows, read back from its text: each printed number with its unit becomes a variable, the
 * signs and the functions' names what the evaluator calls them. Anything that is left over is a fault of the line.
 */
function sumOf(
  { numbers, terms }: WrittenLine,
  read: (text: string) => number,
  functions: Messages["functions"],
): { expression: string; printed: string[] } {
  const values = [...new Set(Object.values(terms).map(({ value }) => value))].sort(
    (a, b) => b.length - a.length,
  );
  const names = Object.entries(functions).map(([name, text]) => [text.replace("({x})", ""), name] as const);
  const printed: string[] = [];
  let expression = "";
  for (let rest = numbers; rest !== ""; ) {
    const value = values.find((one) => rest.startsWith(one));
    const name = names.find(([text]) => rest.startsWith(`${text}(`));
    if (value !== undefined) {
      // A power is the formula's own whole number, and not rounded.
      if (expression.endsWith("^")) expression += read(value);
      else {
        expression += `v${printed.length}`;
        printed.push(value);
      }
      rest = rest.slice(value.length);
    } else if (name !== undefined) {
      expression += name[1];
      rest = rest.slice(name[0].length);
    } else {
      expression += SIGNS[rest[0] as string] ?? rest[0];
      rest = rest.slice(1);
    }
  }
  if (!/^[\s\d.v+\-*/^(),a-z]*$/.test(expression)) throw new Error(`cannot read ${numbers}`);
  return { expression, printed };
}

/** How far a printed number may be from what it stands for, when it is rounded to so many significant digits. */
function half(value: number, digits: number): number {
  return value === 0 ? 0 : 0.5 * 10 ** (Math.floor(Math.log10(Math.abs(value))) - digits + 1) * 1.000001;
}

/** The line, as it is printed, must be true within what the rounding of its printed numbers allows. */
export function expectPrintedTrue(
  line: WrittenLine,
  {
    read,
    digits,
    functions,
  }: { read: (text: string) => number; digits: number; functions: Messages["functions"] },
): void {
  const { expression, printed } = sumOf(line, read, functions);
  const values = printed.map(read);
  const at = (changed: readonly number[]): number =>
    evaluated(expression, Object.fromEntries(changed.map((value, i) => [`v${i}`, value])));
  const found = at(values);
  const moved = (i: number, by: number) =>
    at(values.map((value, k) => (k === i ? value + by : value))) - found;
  const shifts = values.map((value, i) => [moved(i, half(value, digits)), moved(i, -half(value, digits))]);
  const up = shifts.reduce((sum, pair) => sum + Math.max(0, ...pair), 0);
  const down = shifts.reduce((sum, pair) => sum + Math.min(0, ...pair), 0);
  const result = read(line.result);
  const slack = half(result, digits) + 1e-12 * Math.abs(result);
  const said = `${line.id}: ${line.numbers} = ${line.result}, evaluated ${found}`;
  expect(result, said).toBeLessThanOrEqual(found + up + slack);
  expect(result, said).toBeGreaterThanOrEqual(found + down - slack);
}
