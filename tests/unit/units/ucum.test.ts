import { UcumLhcUtils } from "@lhncbc/ucum-lhc";
import { describe, expect, it } from "vitest";
import { type Dimension, fromUcum, toUcum, type Unit, unitsOf } from "../../../src/units/index.ts";
import { COMPOUNDS, TABLE } from "../../../src/units/table.ts";
import { exactSize } from "../../helpers/definitions.ts";
import { expectRefused } from "../../helpers/refusal.ts";

const EVERY = ([...Object.keys(TABLE), ...Object.keys(COMPOUNDS)] as Dimension[]).flatMap(
  (dimension) => unitsOf(dimension) as Unit[],
);

// A general reader of UCUM codes (the US National Library of Medicine's), on UCUM's own definitions.
const ucum = UcumLhcUtils.getInstance();

function magnitude(code: string): number {
  const { unit } = ucum.getSpecifiedUnit(code, "validate");
  if (unit === null) throw new Error(`not a UCUM code: ${code}`);
  return unit.magnitude_;
}

// UCUM is anchored on metre, gram and second: what our anchors (metre, litre, kilogram, kilopascal) are in it.
const ANCHORS: Record<string, number> = {
  length: 1,
  area: 1,
  volume: magnitude("L"),
  mass: magnitude("kg"),
  time: 1,
  pressure: magnitude("kPa"),
  fraction: 1,
  count: 1,
};

function anchorOf(dimension: Dimension): number {
  if (Object.hasOwn(ANCHORS, dimension)) return ANCHORS[dimension] as number;
  const { over, per } = COMPOUNDS[dimension as keyof typeof COMPOUNDS];
  return (ANCHORS[over] as number) / (ANCHORS[per] as number);
}

describe("toUcum", () => {
  it("gives every unit a valid code of the very same size", () => {
    for (const dimension of [...Object.keys(TABLE), ...Object.keys(COMPOUNDS)] as Dimension[]) {
      for (const unit of unitsOf(dimension) as Unit[]) {
        const code = toUcum(unit);
        expect(ucum.validateUnitString(code).status, code).toBe("valid");
        const size = magnitude(code) / anchorOf(dimension);
        // The reader computes in floats, with an error of a few units in the 16th digit.
        expect(Math.abs(size / exactSize(unit).toNumber() - 1), `${unit} ${code}`).toBeLessThan(5e-15);
      }
    }
  });

  it.each([
    ["gal/ac", "[gal_us]/(4840.[syd_i])"],
    ["fl_oz/1000ft2", "[foz_us]/(1000.[sft_i])"],
    ["100gal", "100.[gal_us]"],
    ["L/ha", "L/har"],
    ["metric_cup", "250.mL"],
    ["au_tbsp", "20.mL"],
    ["mph", "[mi_i]/h"],
    ["mi/h", "[mi_i]/h"],
    ["psi", "[psi]"],
    ["%", "%"],
    ["1", "1"],
    ["mL/plant", "mL/{plant}"],
    ["fl_oz/1000plant", "[foz_us]/(1000.{plant})"],
  ] as const)("writes %s as %s", (unit, code) => {
    expect(toUcum(unit)).toBe(code);
  });

  it("spells the acre and the metric cup out, because UCUM's own are of other sizes", () => {
    const acre = exactSize("ac").toNumber();
    // 4,840 square yards of a British inch of 2.539998 cm, and of the US survey foot: 1.6 and 4 parts in a million off.
    expect(magnitude("[acr_br]") / acre - 1).toBeCloseTo(-1.575e-6, 8);
    expect(magnitude("[acr_us]") / acre - 1).toBeCloseTo(4e-6, 8);
    expect(magnitude("[cup_m]") / magnitude("mL")).toBeCloseTo(240, 9);
  });

  it("refuses what is no unit", () => {
    expectRefused(() => toUcum("gallon" as never), "unknown-unit", "unit");
  });
});

describe("fromUcum", () => {
  it("gives every unit back, mi/h as mph", () => {
    for (const unit of EVERY) expect(fromUcum(toUcum(unit))).toBe(unit === "mi/h" ? "mph" : unit);
  });

  it("reads the small letter that UCUM allows for the litre", () => {
    expect(fromUcum("l")).toBe("L");
    expect(fromUcum("ml/(100.l)")).toBe("mL/100L");
    expect(fromUcum("20.ml")).toBe("au_tbsp");
  });

  it("takes parentheses where they change nothing", () => {
    expect(fromUcum("[gal_us]/(min)")).toBe("gal/min");
  });

  it.each([
    "",
    "x",
    "[GAL_US]",
    "ML",
    "gal",
    "[cup_m]",
    "[foz_us]/1000.[sft_i]",
    "[gal_us]/min/h",
    "L/",
    "/L",
    "mph",
    "constructor",
  ])("refuses %j", (code) => {
    expectRefused(() => fromUcum(code), "unknown-unit", "code");
  });

  it("says what is the matter with UCUM's acres", () => {
    for (const code of ["[acr_us]", "[gal_us]/[acr_br]"]) {
      expectRefused(() => fromUcum(code), "unknown-unit", "code", "4840.[syd_i]");
    }
  });

  it.each([undefined, null, 5, {}])("refuses %j, which is no text", (code) => {
    const nothing = (code ?? null) === null;
    expectRefused(() => fromUcum(code as never), nothing ? "missing" : "unknown-unit", "code");
  });

  it("is quick with text of any length", () => {
    expectRefused(() => fromUcum("1.".repeat(100_000)), "unknown-unit", "code");
  });
});
