import { describe, expect, it } from "vitest";
import { solveOutput } from "../../../src/output-rate/index.ts";
import { qty } from "../../../src/units/index.ts";
import { refusesMisuse } from "../../helpers/bad-input.ts";
import { expectRefused } from "../../helpers/refusal.ts";

const all = {
  rate: qty(19.8, "gal/ac"),
  flow: qty(0.2, "gal/min"),
  speed: qty(3, "mph"),
  width: qty(20, "in"),
};
const without = (name: keyof typeof all) => ({ ...all, [name]: undefined }) as never;

describe("solveOutput", () => {
  it("finds each of the four from the other three", () => {
    // 5,940 × 0.2 / (3 × 20) = 19.8 (MontGuide MT 2000-14, 2000).
    expect(solveOutput(without("rate")).rate.value).toBeCloseTo(19.8, 12);
    expect(solveOutput(without("flow")).flow.value).toBeCloseTo(0.2, 14);
    expect(solveOutput(without("speed")).speed.value).toBeCloseTo(3, 12);
    const { width } = solveOutput(without("width"));
    expect(width.value).toBeCloseTo(20 / 12, 12);
    expect(width.unit).toBe("ft");
  });

  it("derives the constants 5,940, 495 and 600 from the units", () => {
    const us = { flow: qty(1, "gal/min"), speed: qty(1, "mph") };
    expect(solveOutput({ ...us, width: qty(1, "in") }).rate.value).toBeCloseTo(5940, 9);
    expect(solveOutput({ ...us, width: qty(1, "ft") }).rate.value).toBeCloseTo(495, 10);
    const { rate } = solveOutput({ flow: qty(1, "L/min"), speed: qty(1, "km/h"), width: qty(1, "m") });
    expect(rate.value).toBeCloseTo(600, 10);
    expect(rate.unit).toBe("L/ha");
  });

  it("gives back what it was given, and says what it found", () => {
    const solved = solveOutput(without("flow"));
    expect(solved).toMatchObject({ rate: all.rate, speed: all.speed, width: all.width, found: "flow" });
    expect(Object.keys(solved).sort()).toEqual(["flow", "found", "rate", "speed", "width"]);
  });

  it("takes a flow in any unit of volume and time", () => {
    const { rate } = solveOutput({ flow: qty(1536, "fl_oz/h"), speed: qty(3, "mph"), width: qty(20, "in") });
    expect(rate.value).toBeCloseTo(19.8, 12);
  });

  it("says which to leave out where nothing is missing", () => {
    expectRefused(
      () => solveOutput(all as never),
      "conflict",
      "",
      "Leave out one of these: rate, flow, speed, width",
    );
  });

  it("says what else is needed where more than one is missing", () => {
    const { rate, flow } = all;
    expectRefused(() => solveOutput({ rate, flow } as never), "missing", "", "speed, width");
    expectRefused(() => solveOutput({} as never), "missing", "");
  });

  const { rate: _rate, ...noRate } = all;
  const { flow: _flow, ...noFlow } = all;
  refusesMisuse("solveOutput for the rate", solveOutput, noRate, ["flow", "speed", "width"]);
  refusesMisuse("solveOutput for the flow", solveOutput, noFlow, ["rate", "speed", "width"]);
});
