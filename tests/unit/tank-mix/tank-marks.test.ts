import { describe, expect, it } from "vitest";
import type { ErrorCode } from "../../../src/errors.ts";
import { type LoadsInput, splitLoads } from "../../../src/tank-mix/index.ts";
import { qty, type Volume } from "../../../src/units/index.ts";
import { splitLoads as linesOf } from "../../../src/working/index.ts";
import { errorOf } from "../../helpers/bad-input.ts";
import { refusal } from "../../helpers/refusal.ts";
import { expectLinesTrue } from "../../helpers/working.ts";

const input = (change: Partial<LoadsInput>): LoadsInput => ({
  total: qty(10.1, "gal"),
  tank: qty(4, "gal"),
  marks: qty(0.25, "gal"),
  split: "full-then-part",
  ...change,
});
const split = (change: Partial<LoadsInput>) => splitLoads(input(change));
const gallons = (change: Partial<LoadsInput>): number[] =>
  split(change).loads.map(({ carrier }) => carrier.value);

describe("loads that end on a tank's marks", () => {
  it("are full ones, and a rest that goes up to the next mark", () => {
    const { loads, total, toMark } = split({});
    expect(loads.map(({ mark }) => mark)).toEqual([qty(4, "gal"), qty(4, "gal"), qty(2.25, "gal")]);
    expect(loads.map(({ carrier }) => carrier)).toEqual(loads.map(({ mark }) => mark));
    expect(total).toEqual(qty(10.25, "gal"));
    expect(toMark?.value).toBeCloseTo(0.15, 12);
  });

  it("are equal ones that all go up to the same mark", () => {
    expect(gallons({ split: "equal" })).toEqual([3.5, 3.5, 3.5]);
    expect(gallons({ split: "equal", total: qty(12, "gal") })).toEqual([4, 4, 4]);
  });

  it("go up by nothing where they end on marks anyway", () => {
    const { toMark, total } = split({ total: qty(10.25, "gal") });
    expect([toMark, total]).toEqual([undefined, qty(10.25, "gal")]);
    // A hair of noise is no reason for another mark.
    expect(gallons({ total: qty(10.250000000000002, "gal") })).toEqual([4, 4, 2.25]);
    expect(gallons({ total: qty(4.000000000016, "gal") })).toEqual([4]);
  });

  it("end on the last mark up to the working fill", () => {
    expect(gallons({ workingFill: qty(3.6, "gal") })).toEqual([3.5, 3.5, 3.25]);
    expect(gallons({ marks: qty(0.3, "gal"), total: qty(4, "gal") })).toEqual([3.9, 0.3]);
  });

  it("take the marks in any order and unit, and keep them as the tank has them", () => {
    const marks = [qty(3, "gal"), qty(4, "qt"), qty(15, "L"), qty(8, "qt")];
    const { loads } = split({ marks });
    expect(loads.map(({ mark }) => mark)).toEqual([qty(15, "L"), qty(15, "L"), qty(3, "gal")]);
    expect(loads[0]?.carrier.unit).toBe("gal");
    expect(loads[0]?.carrier.value).toBeCloseTo(15 / 3.785411784, 9);
  });

  it("count marks exactly: the tenth of 0.1 L is 1 L", () => {
    const { loads } = split({ total: qty(2.9, "L"), tank: qty(1, "L"), marks: qty(0.1, "L") });
    expect(loads.map(({ mark }) => mark?.value)).toEqual([1, 1, 0.9]);
  });

  it("are no smaller than the pump draws", () => {
    const leastLoad = qty(1, "gal");
    // The rest borrows from the load before it.
    expect(gallons({ total: qty(8.3, "gal"), leastLoad })).toEqual([4, 3.5, 1]);
    // Alone, it goes up to the mark that is enough.
    expect(gallons({ total: qty(0.3, "gal"), leastLoad })).toEqual([1]);
    expect(gallons({ total: qty(0.3, "gal"), leastLoad: qty(0.9, "gal") })).toEqual([1]);
    expect(gallons({ total: qty(8.3, "gal"), leastLoad, marks: [qty(0.5, "gal"), qty(4, "gal")] })).toEqual([
      4, 4, 4,
    ]);
    expect(gallons({ total: qty(4.4, "gal"), leastLoad: qty(2.25, "gal"), split: "equal" })).toEqual([
      2.25, 2.25,
    ]);
  });

  it("hold whole rows, each load by itself", () => {
    const { loads, toMark } = split({ total: qty(15.4, "gal"), split: { pieces: 14 } });
    expect(loads.map(({ pieces, carrier }) => [pieces, carrier.value])).toEqual([
      [3, 3.5],
      [3, 3.5],
      [3, 3.5],
      [3, 3.5],
      [2, 2.25],
    ]);
    expect(toMark?.value).toBeCloseTo(0.85, 12);
    // 11 gal for 10 rows, 1 qt for the lines and 3 to spare: two rows and the quart, two rows each, and two rows and the rest.
    const besides = { lines: qty(1, "qt"), reserve: qty(3, "qt") };
    const held = split({ total: qty(12, "gal"), split: { pieces: 10, ...besides } });
    expect(held.loads.map(({ pieces, carrier }) => [pieces, carrier.value])).toEqual([
      [2, 2.5],
      [2, 2.25],
      [2, 2.25],
      [2, 2.25],
      [2, 3],
    ]);
  });

  it("hold no more rows than were chosen", () => {
    const { loads } = split({ total: qty(14, "gal"), split: { pieces: 14, perLoad: 2 } });
    expect(loads).toHaveLength(7);
    expect(loads.every(({ carrier }) => carrier.value === 2)).toBe(true);
    const plain = splitLoads({
      total: qty(14, "gal"),
      tank: qty(4, "gal"),
      split: { pieces: 14, perLoad: 3 },
    });
    expect(plain.loads.map(({ pieces }) => pieces)).toEqual([3, 3, 3, 3, 2]);
  });

  it("are those that a person chose", () => {
    const fills = [qty(3.5, "gal"), qty(14, "qt"), qty(3.25, "gal")];
    const { loads, total, toMark } = split({ split: { fills } });
    expect(loads.map(({ mark }) => mark)).toEqual(fills);
    expect(total).toEqual(qty(10.25, "gal"));
    expect(toMark?.value).toBeCloseTo(0.15, 12);
    const { marks: _, ...unmarked } = input({});
    expect(splitLoads({ ...unmarked, total: qty(7, "gal"), split: { fills: fills.slice(0, 2) } })).toEqual({
      loads: [
        { carrier: qty(3.5, "gal"), mark: qty(3.5, "gal") },
        { carrier: qty(3.5, "gal"), mark: qty(14, "qt") },
      ],
      count: 2,
      total: qty(7, "gal"),
    });
  });

  it.each<Partial<LoadsInput>>([
    {},
    { split: "equal" },
    { total: qty(3.9, "gal") },
    { total: qty(3.9, "gal"), split: "equal" },
    { total: qty(8.3, "gal"), leastLoad: qty(1, "gal") },
    { marks: [qty(15, "L"), qty(1, "gal")] },
    { total: qty(38, "L"), split: { pieces: 11, lines: qty(1, "qt"), reserve: qty(1, "pt") } },
    { total: qty(38, "L"), split: { pieces: 11, perLoad: 3 } },
    { split: { fills: [qty(4, "gal"), qty(4, "gal"), qty(9, "qt")] } },
    { total: qty(12, "qt"), split: { fills: [qty(3, "gal")] } },
  ])("have a working of true lines: %j", (change) => {
    const lines = linesOf(input(change));
    expectLinesTrue(lines);
    const { total, toMark } = split(change);
    const found = (id: string) => lines.find((line) => line.id === id)?.result as Volume | undefined;
    expect(found("tank-mix.markedTotal")?.value).toBeCloseTo(total.value, 9);
    expect(found("tank-mix.toMark")?.value ?? 0).toBeCloseTo(toMark?.value ?? 0, 9);
  });

  const FULL = ["fill / step", "floor(times) * step"];
  const COUNTED = [...FULL, "total / full", "ceil(fills)"];
  const MARK = ["load / step", "ceil(times) * step"];
  const BESIDES = { lines: qty(0.25, "gal"), reserve: qty(0.75, "gal") };
  it.each<[string, Partial<LoadsInput>, readonly string[]]>([
    ["full ones and a rest", {}, [...COUNTED, "total - full * (loads - 1)", ...MARK]],
    ["equal ones", { split: "equal" }, [...COUNTED, "total / loads", ...MARK]],
    ["one", { total: qty(3.9, "gal") }, [...COUNTED, ...MARK]],
    ["a full one", { total: qty(4, "gal") }, COUNTED],
    [
      "a rest that the load before lends to",
      { total: qty(8.3, "gal"), leastLoad: qty(1, "gal") },
      [...COUNTED, "total - full * (loads - 1)", "full + rest - last", ...MARK, ...MARK],
    ],
    [
      "a rest that is just enough",
      { total: qty(9, "gal"), leastLoad: qty(1, "gal") },
      [...COUNTED, "total - full * (loads - 1)", ...MARK],
    ],
    [
      "marks in a list",
      { marks: [qty(4, "gal"), qty(2, "gal")], split: "equal" },
      [...COUNTED.slice(2), "total / loads"],
    ],
    [
      "rows, with lines in the first and the reserve in the last",
      { total: qty(12, "gal"), split: { pieces: 10, ...BESIDES } },
      [
        ...FULL,
        "(total - lines - reserve) / pieces",
        "(full - lines - reserve) / piece",
        "floor(min(most, pieces))",
        "ceil(pieces / perLoad)",
        "pieces * piece + lines",
        "pieces * piece",
        "pieces * piece + reserve",
        ...MARK,
        ...MARK,
        ...MARK,
      ],
    ],
    [
      "rows alone",
      { total: qty(12, "gal"), split: { pieces: 10 } },
      [
        ...FULL,
        "(total - lines - reserve) / pieces",
        "(full - lines - reserve) / piece",
        "floor(min(most, pieces))",
        "ceil(pieces / perLoad)",
        "pieces * piece",
        "pieces * piece",
        ...MARK,
        ...MARK,
      ],
    ],
  ])("have each step in their working: %s", (_, change, steps) => {
    const lines = linesOf(input(change));
    const before = lines.findIndex(({ id }) => id === "tank-mix.markedTotal");
    expect(lines.slice(0, before).map(({ formula }) => formula)).toEqual(steps);
    // What a load does not have isn't among its terms.
    for (const { id, formula, terms } of lines)
      if (id === "tank-mix.loadOfPieces")
        expect(Object.keys(terms).filter((term) => !formula.includes(term))).toEqual([]);
  });

  it.each<[Partial<LoadsInput>, ErrorCode, string, string]>([
    [{ marks: qty(0, "gal") }, "out-of-range", "marks", "Must be more than 0."],
    [{ marks: [] }, "too-few", "marks", 'Enter at least 1 under "marks".'],
    [
      { marks: Array.from({ length: 201 }, (_, i) => qty((i + 1) / 100, "gal")) },
      "out-of-range",
      "marks",
      'Enter at most 200 under "marks".',
    ],
    [
      { marks: [qty(1, "gal"), qty(5, "gal")] },
      "conflict",
      "marks[1]",
      "A 4 gal tank has no mark at 5 gal. Check the mark and its unit.",
    ],
    [
      { marks: [qty(1, "gal"), qty(4, "qt")] },
      "conflict",
      "marks[1]",
      "There is a mark at 4 qt already. Enter each mark once.",
    ],
    [
      { marks: qty(1, "mL") },
      "out-of-range",
      "marks",
      "Marks 1 mL apart on a 4 gal tank are more than 1,000 marks. Check the units.",
    ],
    [
      { marks: qty(5, "gal") },
      "conflict",
      "marks",
      "The tank has no mark up to 4 gal. Enter the marks that it has.",
    ],
    [
      { marks: [qty(4, "gal"), qty(1, "gal")], workingFill: qty(3, "gal"), leastLoad: qty(2, "gal") },
      "conflict",
      "marks",
      "The tank has no mark from 2 gal, the smallest load, up to 3 gal. Enter the marks that it has.",
    ],
    [{ split: { fills: [] } }, "too-few", "split.fills", 'Enter at least 1 under "fills".'],
    [
      { split: { fills: [qty(4, "gal"), qty(4.25, "gal")] } },
      "conflict",
      "split.fills[1]",
      "A load can't be filled to 4.25 gal: 4 gal is the most.",
    ],
    [
      { split: { fills: [qty(1, "qt")] }, leastLoad: qty(1, "gal") },
      "conflict",
      "split.fills[0]",
      "A load of 1 qt is too small: 1 gal is the smallest.",
    ],
    [
      { split: { fills: [qty(4, "gal"), qty(3.3, "gal")] } },
      "conflict",
      "split.fills[1]",
      "The tank has no mark at 3.3 gal. Choose a fill that has one.",
    ],
    [
      { split: { fills: [qty(4, "gal"), qty(4, "gal")] } },
      "conflict",
      "split.fills",
      "These loads come to 8 gal, and the job takes 10.1 gal. Add a load, or fill them higher.",
    ],
    [
      { total: qty(10_001, "gal"), tank: qty(1, "gal") },
      "out-of-range",
      "total",
      "A mix of 10,001 gal in loads of 1 gal makes 10,001 loads, more than 1,000. Check the units of the rate, the area and the tank.",
    ],
    [
      { split: { pieces: 2 } },
      "conflict",
      "split.pieces",
      "One row or plot takes 5.05 gal, more than a load of 4 gal. Split the mix into equal loads.",
    ],
  ])("are refused where they can't be: %j", (change, code, path, message) => {
    const error = refusal(() => split(change));
    expect({ code: error.code, path: error.path, message: error.message }).toEqual({ code, path, message });
  });

  it("are looked at no further where the tank itself is wrong", () => {
    const error = errorOf(() => split({ tank: qty(0, "gal"), marks: [qty(5, "gal")] }));
    expect(error.issues.map(({ path }) => path)).toEqual(["tank"]);
    const fill = errorOf(() => split({ workingFill: qty(9, "gal"), marks: qty(5, "gal") }));
    expect(fill.issues.map(({ path }) => path)).toEqual(["workingFill"]);
    const least = errorOf(() => split({ leastLoad: qty(9, "gal"), marks: qty(1, "gal") }));
    expect(least.issues.map(({ path }) => path)).toEqual(["leastLoad"]);
  });
});
