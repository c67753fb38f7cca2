import { describe, expect, it } from "vitest";
import { type LoadsInput, splitLoads } from "../../../src/tank-mix/index.ts";
import { qty } from "../../../src/units/index.ts";
import { errorOf } from "../../helpers/bad-input.ts";

const gallons = (input: Partial<LoadsInput>): number[] =>
  splitLoads({
    total: qty(10, "gal"),
    tank: qty(4, "gal"),
    split: "full-then-part",
    ...input,
  } as LoadsInput).loads.map((load) => load.carrier.value);

describe("splitLoads", () => {
  it("fills the tank as often as it goes, and puts the rest in a part load", () => {
    expect(gallons({})).toEqual([4, 4, 2]);
  });

  it("fills to the working fill where one is given", () => {
    expect(gallons({ workingFill: qty(3, "gal") })).toEqual([3, 3, 3, 1]);
    expect(gallons({ workingFill: qty(4, "gal") })).toEqual([4, 4, 2]);
  });

  it("makes one load of what fits into the tank", () => {
    expect(gallons({ total: qty(4, "gal") })).toEqual([4]);
    expect(gallons({ total: qty(1.3, "gal") })).toEqual([1.3]);
  });

  it("makes equal loads that add up exactly, the last digit going where it must", () => {
    expect(gallons({ split: "equal" })).toEqual([3.3333333333, 3.3333333334, 3.3333333333]);
    expect(gallons({ split: "equal", total: qty(8, "gal") })).toEqual([4, 4]);
  });

  it("adds no load for a tank a hair short", () => {
    const tank = qty(3.9999999999999996, "gal");
    expect(gallons({ total: qty(8, "gal"), tank })).toEqual([4, 4]);
    expect(gallons({ total: qty(8, "gal"), tank, split: "equal" })).toEqual([4, 4]);
    expect(gallons({ total: qty(8.000000000000002, "gal") })).toEqual([4, 4]);
  });

  it("adds a load for what really does not fit", () => {
    expect(gallons({ total: qty(8.001, "gal") })).toEqual([4, 4, 0.001]);
  });

  it("lends to a part load that the pump could not draw, from the load before it", () => {
    expect(gallons({ total: qty(8.25, "gal"), leastLoad: qty(1, "gal") })).toEqual([4, 3.25, 1]);
    expect(gallons({ leastLoad: qty(1, "gal") })).toEqual([4, 4, 2]);
  });

  it("refuses a job whose loads the pump could not draw, and says what would do", () => {
    const one = errorOf(() => gallons({ total: qty(0.5, "gal"), leastLoad: qty(1, "gal") }));
    expect([one.code, one.path]).toEqual(["conflict", "leastLoad"]);
    expect(one.message).toContain("Mix more");
    // However much less it is.
    const drop = errorOf(() => gallons({ total: qty(0.001, "gal"), leastLoad: qty(1, "gal") }));
    expect([drop.code, drop.path]).toEqual(["conflict", "leastLoad"]);
    const lent = errorOf(() => gallons({ total: qty(5, "gal"), leastLoad: qty(3, "gal") }));
    expect(lent.message).toContain("equal loads");
    const equal = errorOf(() => gallons({ total: qty(5, "gal"), leastLoad: qty(3, "gal"), split: "equal" }));
    expect(equal.code).toBe("conflict");
  });

  it("takes a least load with more digits than the total is shared out in", () => {
    const total = qty(0.002587401091088938, "imp_gal");
    const leastLoad = qty(0.00022976289594038994, "imp_gal");
    const { loads } = splitLoads({
      total,
      tank: qty(0.001215782860626912, "imp_gal"),
      leastLoad,
      split: "full-then-part",
    });
    expect(loads[2]?.carrier.value).toBeGreaterThanOrEqual(leastLoad.value);
    expect(gallons({ split: "equal", leastLoad: qty(10 / 3, "gal") })).toHaveLength(3);
  });

  it("puts whole rows in each load, spread evenly, the more in the first", () => {
    const { loads, count } = splitLoads({
      total: qty(14, "gal"),
      tank: qty(6, "gal"),
      split: { pieces: 14 },
    });
    expect(count).toBe(3);
    expect(loads.map((load) => load.pieces)).toEqual([5, 5, 4]);
    expect(loads.map((load) => load.carrier.value)).toEqual([5, 5, 4]);
  });

  it("puts the lines' mix in with the first load and the reserve with the last, and keeps room for both in every load", () => {
    const split = { pieces: 10, lines: qty(0.5, "gal"), reserve: qty(1.5, "gal") };
    const { loads } = splitLoads({ total: qty(12, "gal"), tank: qty(6, "gal"), split });
    expect(loads.map((load) => load.pieces)).toEqual([4, 3, 3]);
    expect(loads.map((load) => load.carrier.value)).toEqual([4.5, 3, 4.5]);
    const one = splitLoads({ total: qty(6, "gal"), tank: qty(6, "gal"), split: { ...split, pieces: 4 } });
    expect(one.loads).toEqual([{ carrier: qty(6, "gal"), pieces: 4 }]);
  });

  it("takes all rows in one load where they fit", () => {
    const { loads } = splitLoads({ total: qty(3, "gal"), tank: qty(6, "gal"), split: { pieces: 7 } });
    expect(loads).toEqual([{ carrier: qty(3, "gal"), pieces: 7 }]);
  });

  it("refuses a row that is more than a load", () => {
    const error = errorOf(() => gallons({ split: { pieces: 2 } }));
    expect([error.code, error.path]).toEqual(["conflict", "split.pieces"]);
    expect(error.message).toContain("takes 5 gal");
    expect(error.message).toContain("a load of 4 gal");
    const full = errorOf(() => gallons({ split: { pieces: 100, lines: qty(4, "gal") } }));
    expect(full.path).toBe("split.pieces");
  });

  it("stays quick at the most loads, and refuses more of them", () => {
    const before = performance.now();
    const { loads } = splitLoads({ total: qty(1000, "gal"), tank: qty(1, "gal"), split: "equal" });
    expect(loads).toHaveLength(1000);
    expect(performance.now() - before).toBeLessThan(500);
    const error = errorOf(() => gallons({ total: qty(10_001, "gal"), tank: qty(1, "gal") }));
    expect([error.code, error.path]).toEqual(["out-of-range", "total"]);
    expect(error.message).toContain("10,001 loads");
    expect(errorOf(() => gallons({ total: qty(1e308, "gal"), tank: qty(1e-300, "gal") })).path).toBe("total");
    const pieces = { pieces: 20_000 };
    expect(
      errorOf(() => gallons({ total: qty(20_000, "gal"), tank: qty(1, "gal"), split: pieces })).path,
    ).toBe("total");
  });

  it("says why a row does not fit: alone, or because of what is kept for lines and reserve", () => {
    const said = (split: LoadsInput["split"]) => errorOf(() => gallons({ total: qty(10, "gal"), split }));
    expect(said({ pieces: 2 })).toMatchObject({
      key: "piece-over-fill",
      message: "One row or plot takes 5 gal, more than a load of 4 gal. Split the mix into equal loads.",
    });
    expect(said({ pieces: 3, lines: qty(1, "gal"), reserve: qty(1.5, "gal") })).toMatchObject({
      key: "piece-and-extra-over-fill",
      message:
        "One row or plot takes 2.5 gal, plus 2.5 gal for hose and extra mix: more than one 4 gal load. Split the mix into equal loads.",
    });
  });

  it("says whether the smallest load is the only one, or one of several", () => {
    const said = (total: number, split: LoadsInput["split"]) =>
      errorOf(() => gallons({ total: qty(total, "gal"), split, leastLoad: qty(3, "gal") })).key;
    expect(said(2, "full-then-part")).toBe("load-too-small");
    expect(said(5, "equal")).toBe("load-too-small");
    expect(said(5, "full-then-part")).toBe("part-load-too-small");
  });

  it("gives a load no number of rows where it is not split by them", () => {
    const { loads } = splitLoads({ total: qty(10, "gal"), tank: qty(4, "gal"), split: "equal" });
    for (const load of loads) expect(Object.keys(load)).toEqual(["carrier"]);
  });

  it("answers in the system of the total", () => {
    const input = { tank: qty(4, "gal"), split: "equal" } as const;
    expect(splitLoads({ ...input, total: qty(64, "fl_oz") }).total).toEqual(qty(0.5, "gal"));
    expect(splitLoads({ ...input, total: qty(500, "mL") }).total).toEqual(qty(0.5, "L"));
    expect(splitLoads({ ...input, total: qty(1, "imp_pt") }).total).toEqual(qty(0.125, "imp_gal"));
  });

  it.each([
    [{ total: qty(0, "gal") }, "out-of-range", "total"],
    [{ total: qty(10, "lb") }, "wrong-dimension", "total"],
    [{ tank: qty(0, "gal") }, "out-of-range", "tank"],
    [{ tank: qty(-4, "gal") }, "out-of-range", "tank"],
    [{ workingFill: qty(4.1, "gal") }, "conflict", "workingFill"],
    [{ workingFill: qty(0, "gal") }, "out-of-range", "workingFill"],
    [{ leastLoad: qty(-1, "gal") }, "out-of-range", "leastLoad"],
    [{ leastLoad: qty(4.1, "gal") }, "conflict", "leastLoad"],
    [{ split: "halves" }, "unknown-choice", "split"],
    [{ split: { pieces: 0 } }, "out-of-range", "split.pieces"],
    [{ split: { pieces: 2.5 } }, "out-of-range", "split.pieces"],
    [{ split: { pieces: 2, lines: qty(10, "gal") } }, "conflict", "split.lines"],
    [{ split: { pieces: 2, lines: qty(4, "gal"), reserve: qty(6, "gal") } }, "conflict", "split.reserve"],
    [{ split: { pieces: 2, reserve: qty(-1, "gal") } }, "out-of-range", "split.reserve"],
  ] as const)("refuses %o", (change, code, path) => {
    const error = errorOf(() => gallons(change as never));
    expect([error.code, error.path]).toEqual([code, path]);
  });
});
