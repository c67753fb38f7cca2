import { describe, expect, it } from "vitest";
import {
  FORMULATIONS,
  type FormulationCode,
  type MixingProduct,
  type MixingStep,
  mixingOrder,
} from "../../../src/tank-mix/index.ts";
import { errorOf } from "../../helpers/bad-input.ts";

type Code = MixingProduct["code"];

const order = (codes: readonly Code[], rules: object = {}) =>
  mixingOrder({ products: codes.map((code) => ({ code })), ...rules }).map((turn) => codes[turn.product]);

describe("mixingOrder", () => {
  // Oklahoma State University Extension, "Herbicide Mixing Order" (A-W-A-M-L-E-S, year not shown): ammonium sulfate, wettable
  // powders and dry flowables, microcapsules and suspensions, soluble liquids, emulsifiable concentrates, surfactants.
  it("follows Oklahoma's guide", () => {
    const printed: Code[] = ["water-conditioner", "WP", "CS", "SL", "EC", "adjuvant"];
    expect(order([...printed].reverse())).toEqual(printed);
  });

  // South Dakota State University Extension, "Preparing Spray Solutions: Mixing Order" (year not shown): ammonium sulfate, a
  // compatibility agent, a defoamer, dry products, flowables, emulsifiable concentrates, surfactants, then drift control.
  it("puts agents where South Dakota has them", () => {
    const printed: Code[] = [
      "water-conditioner",
      "compatibility-agent",
      "defoamer",
      "WG",
      "SC",
      "EC",
      "adjuvant",
      "drift-retardant",
    ];
    expect(order([...printed].reverse())).toEqual(printed);
  });

  // North Dakota Weed Control Guide, 2021, as quoted in "Adjuvant 101: Proper Tank Mixing Order" (A.P.P.L.E.S.): soluble powders,
  // dry powders, liquid flowables and suspensions, emulsifiable concentrates, solutions.
  it("follows North Dakota's guide where emulsions go first", () => {
    const printed: Code[] = ["SG", "WP", "SC", "EC", "SL"];
    expect(order([...printed].reverse(), { emulsionsFirst: true })).toEqual(printed);
    expect(order([...printed].reverse())).toEqual(["SG", "WP", "SC", "SL", "EC"]);
    expect(order([...printed].reverse(), { emulsionsFirst: false })).toEqual(["SG", "WP", "SC", "SL", "EC"]);
  });

  // Manitoba Guide to Crop Protection, as reprinted by the Canola Council of Canada (2013): bags that dissolve before fertilizer,
  // fertilizer, powders, granules and flowables, solutions, emulsifiable concentrates, adjuvants.
  it("can be given another guide's steps", () => {
    const steps: MixingStep[] = ["soluble-bag", "fertilizer"];
    expect(order(["adjuvant", "EC", "SL", "SC", "fertilizer"], { steps })).toEqual([
      "fertilizer",
      "SC",
      "SL",
      "EC",
      "adjuvant",
    ]);
  });

  it("puts a water conditioner before every product, in a bag or not, and soluble solids before liquids", () => {
    for (const inSolubleBag of [true, false]) {
      const turns = mixingOrder({
        products: [
          { code: "WP", inSolubleBag: true },
          { code: "water-conditioner", inSolubleBag },
        ],
      });
      expect(turns[0]).toEqual({ product: 1, step: "water-conditioner" });
    }
    for (const solid of ["SG", "SP", "ST"] as const)
      for (const liquid of ["SL", "GW", "EC", "SC"] as const)
        expect(order([liquid, solid])).toEqual([solid, liquid]);
  });

  it("puts fertilizer last, and lets the label's order win over every guide", () => {
    expect(order(["fertilizer", "drift-retardant", "WP"])).toEqual(["WP", "drift-retardant", "fertilizer"]);
    expect(
      order(["EC", "SL", "water-conditioner"], { steps: ["soluble-liquid"], emulsionsFirst: true }),
    ).toEqual(["SL", "water-conditioner", "EC"]);
    expect(order(["SL", "EC", "WP"], { steps: ["emulsion", "wettable-powder"] })).toEqual(["EC", "WP", "SL"]);
  });

  it("keeps products of one step in the order given", () => {
    expect(mixingOrder({ products: [{ code: "CS" }, { code: "SC" }] }).map((turn) => turn.product)).toEqual([
      0, 1,
    ]);
    expect(mixingOrder({ products: [{ code: "SC" }, { code: "CS" }] }).map((turn) => turn.product)).toEqual([
      0, 1,
    ]);
  });

  it("puts whatever comes in a soluble bag before other products", () => {
    const turns = mixingOrder({ products: [{ code: "WP" }, { code: "SL", inSolubleBag: true }] });
    expect(turns).toEqual([
      { product: 1, step: "soluble-bag" },
      { product: 0, step: "wettable-powder" },
    ]);
  });

  it("puts a soluble bag before other products whatever is in it", () => {
    for (const code of ["adjuvant", "fertilizer", "drift-retardant"] as const) {
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
    const blank = { products, steps: null, emulsionsFirst: null } as never;
    expect(mixingOrder(blank).map(({ product }) => product)).toEqual([1, 0]);
  });

  it("refuses what is neither yes nor no", () => {
    const error = errorOf(() => mixingOrder({ products: [{ code: "EC" }], emulsionsFirst: "no" } as never));
    expect([error.code, error.path]).toEqual(["not-a-quantity", "emulsionsFirst"]);
  });

  it.each([
    [["powders"], "unknown-choice", "steps[0]"],
    [["emulsion", "emulsion"], "conflict", "steps[1]"],
  ] as const)("refuses the steps %o", (steps, code, path) => {
    const error = errorOf(() => mixingOrder({ products: [{ code: "EC" }], steps } as never));
    expect([error.code, error.path]).toEqual([code, path]);
  });
});
