import { describe, expect, it } from "vitest";
import { remade } from "../../../src/units/marks.ts";

describe("remade", () => {
  it("keeps what an area is an area of and what a fraction is a part of, and nothing else", () => {
    expect(remade({ value: 1, unit: "ac", of: "treated" }, 43560, "ft2")).toEqual({
      value: 43560,
      unit: "ft2",
      of: "treated",
    });
    expect(remade({ value: 1, unit: "%", basis: "w/v" }, 0.01, "1")).toEqual({
      value: 0.01,
      unit: "1",
      basis: "w/v",
    });
    expect(remade({ value: 1, unit: "ft", note: "x" } as never, 12, "in")).toEqual({ value: 12, unit: "in" });
  });
});
