import { describe, expect, it } from "vitest";
import {
  FORMULATIONS,
  type FormulationCode,
  type MixingStep,
  mixingOrder,
} from "../../../src/tank-mix/index.ts";
import { errorOf } from "../../helpers/bad-input.ts";

const order = (...codes: readonly (FormulationCode | "adjuvant" | "fertilizer")[]) =>
  mixingOrder({ products: codes.map((code) => ({ code })) }).map((turn) => codes[turn.product]);

describe("mixingOrder", () => {
  it("puts powders and granules before suspensions, those before emulsions, and adjuvants late", () => {
    expect(order("adjuvant", "EC", "SC", "WG", "WP", "fertilizer", "SL")).toEqual([
      "WP",
      "WG",
      "SC",
      "EC",
      "SL",
      "adjuvant",
      "fertilizer",
    ]);
  });

  it("keeps products of one step in the order given", () => {
    expect(mixingOrder({ products: [{ code: "CS" }, { code: "SC" }] }).map((turn) => turn.product)).toEqual([
      0, 1,
    ]);
    expect(mixingOrder({ products: [{ code: "SC" }, { code: "CS" }] }).map((turn) => turn.product)).toEqual([
      0, 1,
    ]);
  });

  it("puts whatever comes in a soluble bag first", () => {
    const turns = mixingOrder({ products: [{ code: "WP" }, { code: "SL", inSolubleBag: true }] });
    expect(turns).toEqual([
      { product: 1, step: "soluble-bag" },
      { product: 0, step: "wettable-powder" },
    ]);
  });

  it("puts a soluble bag first whatever is in it", () => {
    for (const code of ["adjuvant", "fertilizer"] as const) {
      const turns = mixingOrder({ products: [{ code: "WP" }, { code, inSolubleBag: true }, { code }] });
      expect(
        turns.map(({ product }) => product),
        code,
      ).toEqual([1, 0, 2]);
    }
  });

  it("lets the label's own order go first, and the usual one follow", () => {
    const products = [{ code: "WP" }, { code: "SL" }, { code: "EC" }] as const;
    const turns = mixingOrder({ products, steps: ["soluble-liquid"] });
    expect(turns.map((turn) => turn.product)).toEqual([1, 0, 2]);
  });

  // Names: CropLife International, Technical Monograph No. 2, 7th edition, revised March 2017. Steps: common practice, no
  // source, by what a formulation becomes in water.
  it.each<[MixingStep, Partial<Record<FormulationCode, string>>]>([
    ["wettable-powder", { WP: "wettable powder" }],
    [
      "dry-flowable",
      {
        WG: "water dispersible granule",
        WT: "water dispersible tablet",
        EG: "emulsifiable granule",
        EP: "emulsifiable powder",
      },
    ],
    [
      "suspension",
      {
        SC: "suspension concentrate",
        CS: "capsule suspension",
        SE: "suspo-emulsion",
        ZC: "mixture of capsule suspension and suspension concentrate",
        ZE: "mixture of capsule suspension and suspo-emulsion",
        ZW: "mixture of capsule suspension and oil-in-water emulsion",
      },
    ],
    [
      "emulsion",
      {
        DC: "dispersible concentrate",
        EC: "emulsifiable concentrate",
        EW: "emulsion, oil in water",
        GL: "emulsifiable gel",
        ME: "micro-emulsion",
        OD: "oil dispersion",
      },
    ],
    ["soluble-liquid", { GW: "water soluble gel", SL: "soluble concentrate" }],
    [
      "soluble-solid",
      { SG: "water soluble granule", SP: "water soluble powder", ST: "water soluble tablet" },
    ],
  ])("puts at the step %s what belongs there, by the names of the international catalogue", (step, named) => {
    const here = Object.entries(FORMULATIONS).filter(([, formulation]) => formulation.step === step);
    expect(Object.fromEntries(here.map(([code, { name }]) => [code, name]))).toEqual(named);
    for (const code of Object.keys(named))
      expect(mixingOrder({ products: [{ code: code as FormulationCode }] })).toEqual([{ product: 0, step }]);
  });

  it.each([
    [[{ code: "XY" }], "unknown-choice", "products[0].code"],
    [[{ code: "ec" }], "unknown-choice", "products[0].code"],
    [[{ code: "toString" }], "unknown-choice", "products[0].code"],
    [[{ code: "GR" }], "conflict", "products[0].code"],
    [[{ code: "EC" }, { code: "KK" }], "conflict", "products[1].code"],
    [[{}], "missing", "products[0].code"],
    [[{ code: "EC", inSolubleBag: "yes" }], "not-a-quantity", "products[0].inSolubleBag"],
    [[], "too-few", "products"],
  ] as const)("refuses %o", (products, code, path) => {
    const error = errorOf(() => mixingOrder({ products } as never));
    expect([error.code, error.path]).toEqual([code, path]);
  });

  it("takes nothing for the usual order", () => {
    const products = [{ code: "EC", inSolubleBag: null }, { code: "WP" }] as never;
    expect(mixingOrder({ products, steps: null } as never).map(({ product }) => product)).toEqual([1, 0]);
  });

  it.each([
    [["powders"], "unknown-choice", "steps[0]"],
    [["emulsion", "emulsion"], "conflict", "steps[1]"],
  ] as const)("refuses the steps %o", (steps, code, path) => {
    const error = errorOf(() => mixingOrder({ products: [{ code: "EC" }], steps } as never));
    expect([error.code, error.path]).toEqual([code, path]);
  });
});
