import { frozen } from "../frozen.js";
import { type Check, checked } from "../units/check.js";
import {
  ChoiceField,
  choice,
  flag,
  list,
  type ObjectField,
  type Optional,
  object,
  optional,
} from "../units/fields.js";

/** A place in the order of mixing. */
export type MixingStep =
  | "soluble-bag"
  | "wettable-powder"
  | "dry-flowable"
  | "suspension"
  | "emulsion"
  | "soluble-liquid"
  | "soluble-solid"
  | "adjuvant"
  | "fertilizer";

/** A two-letter formulation code of a product that goes into water. */
export type FormulationCode =
  | "WP"
  | "WG"
  | "WT"
  | "EG"
  | "EP"
  | "SC"
  | "CS"
  | "SE"
  | "ZC"
  | "ZE"
  | "ZW"
  | "DC"
  | "EC"
  | "EW"
  | "GL"
  | "ME"
  | "OD"
  | "GW"
  | "SL"
  | "SG"
  | "SP"
  | "ST";

/** A kind of formulation. */
export interface Formulation {
  /** What the code stands for. */
  readonly name: string;
  /** Its place in the order of mixing. */
  readonly step: MixingStep;
}

/**
 * The two-letter codes of formulations: CropLife International, Technical Monograph No. 2, "Catalogue of pesticide
 * formulation types and international coding system", 7th edition, revised March 2017; the FAO/WHO manual on pesticide
 * specifications uses the same. Only the codes of products that go into water stand here with their step.
 */
export const FORMULATIONS: Readonly<Record<FormulationCode, Formulation>> = /* @__PURE__ */ frozen<
  Readonly<Record<FormulationCode, Formulation>>
>({
  WP: { name: "wettable powder", step: "wettable-powder" },
  WG: { name: "water dispersible granule", step: "dry-flowable" },
  WT: { name: "water dispersible tablet", step: "dry-flowable" },
  EG: { name: "emulsifiable granule", step: "dry-flowable" },
  EP: { name: "emulsifiable powder", step: "dry-flowable" },
  SC: { name: "suspension concentrate", step: "suspension" },
  CS: { name: "capsule suspension", step: "suspension" },
  SE: { name: "suspo-emulsion", step: "suspension" },
  ZC: { name: "mixture of capsule suspension and suspension concentrate", step: "suspension" },
  ZE: { name: "mixture of capsule suspension and suspo-emulsion", step: "suspension" },
  ZW: { name: "mixture of capsule suspension and oil-in-water emulsion", step: "suspension" },
  DC: { name: "dispersible concentrate", step: "emulsion" },
  EC: { name: "emulsifiable concentrate", step: "emulsion" },
  EW: { name: "emulsion, oil in water", step: "emulsion" },
  GL: { name: "emulsifiable gel", step: "emulsion" },
  ME: { name: "micro-emulsion", step: "emulsion" },
  OD: { name: "oil dispersion", step: "emulsion" },
  GW: { name: "water soluble gel", step: "soluble-liquid" },
  SL: { name: "soluble concentrate", step: "soluble-liquid" },
  SG: { name: "water soluble granule", step: "soluble-solid" },
  SP: { name: "water soluble powder", step: "soluble-solid" },
  ST: { name: "water soluble tablet", step: "soluble-solid" },
});

// The other codes of the catalogue: products used as they are, on seed, in oil, as gas, smoke or bait, or in two packs.
const NOT_FOR_WATER =
  "AE AL AP BR CB CP DP DS DT EO ES FS FU GA GD GE GR GS HN KK KL KN LB LN LS MC MR OF OL OP PA PR RB SD SO SU TB TC TK UL VP WS XX".split(
    " ",
  );

/**
 * The order that {@link mixingOrder} follows unless given another: Utah State University Extension, Utah Pests News,
 * winter 2012, "Using a Jar Test". Suspension concentrates stand with the capsule suspensions, and what it does not
 * name with its nearest of kind: common practice, no source. Other guides put capsule suspensions after emulsifiable
 * concentrates (South Dakota State University Extension) or soluble liquids before them (Manitoba Guide to Crop
 * Protection).
 */
export const MIXING_STEPS: readonly MixingStep[] = /* @__PURE__ */ frozen<readonly MixingStep[]>([
  "soluble-bag",
  "wettable-powder",
  "dry-flowable",
  "suspension",
  "emulsion",
  "soluble-liquid",
  "soluble-solid",
  "adjuvant",
  "fertilizer",
]);

/** A product to be put in order. */
export interface MixingProduct {
  /** The formulation code on the label, adjuvant or fertilizer, for the order of mixing. */
  readonly code: FormulationCode | "adjuvant" | "fertilizer";
  /** Whether it comes in a bag that dissolves in water. */
  readonly inSolubleBag?: boolean | undefined;
}

/** A code, which may be one of those that do not go into water: that is a mistake of its own. */
class FormulationField extends ChoiceField<MixingProduct["code"]> {
  override read(input: unknown, check: Check): MixingProduct["code"] | undefined {
    if (!NOT_FOR_WATER.includes(input as string)) return super.read(input, check);
    return check.fault(
      "conflict",
      "formulation-not-for-water",
      "",
      "{given} is a formulation that isn't mixed into water. Check how the label says to use it.",
      { given: input as string },
    );
  }
}

/** The formulation of a product that goes into water. */
export const FORMULATION_CODES: ChoiceField<MixingProduct["code"]> = /* @__PURE__ */ new FormulationField(
  "The formulation code on the label, adjuvant or fertilizer, for the order of mixing.",
  /* @__PURE__ */ (() => [...(Object.keys(FORMULATIONS) as FormulationCode[]), "adjuvant", "fertilizer"])(),
);

/** Whether a product comes in a bag that dissolves. */
export const IN_SOLUBLE_BAG: Optional<boolean> = optional(
  flag("Whether it comes in a bag that dissolves in water."),
);

/** What {@link mixingOrder} is given. */
export interface MixingOrderInput {
  /** The products of one mix, at least one. */
  readonly products: readonly MixingProduct[];
  /** The label's own order of steps, or another guide's; steps that it leaves out follow in the usual order. */
  readonly steps?: readonly MixingStep[] | undefined;
}

const MIXING_ORDER: ObjectField<MixingOrderInput> = object<MixingOrderInput>(
  {
    products: list(
      "The products of one mix, at least one.",
      object<MixingProduct>({ code: FORMULATION_CODES, inSolubleBag: IN_SOLUBLE_BAG }),
    ),
    steps: optional(
      list(
        "The label's own order of steps, or another guide's; steps that it leaves out follow in the usual order.",
        choice("A step.", MIXING_STEPS),
      ),
    ),
  },
  [
    ({ steps = [] }, check) =>
      steps.forEach((step, i) => {
        if (steps.indexOf(step) < i)
          check.fault(
            "conflict",
            "step-twice",
            `steps[${i}]`,
            "The step {given} is there twice. Enter each step once.",
            {
              given: step,
            },
          );
      }),
  ],
);

/** A product's turn. */
export interface MixingTurn {
  /** Which of the products, counted from 0 as they were given. */
  readonly product: number;
  /** The step that put it here. */
  readonly step: MixingStep;
}

/**
 * The order in which products go into a partly filled tank, each stirred in before the next. Common practice: the label's
 * order goes before it.
 *
 * Products of one step keep the order in which they were given. Codes: CropLife International, Technical Monograph No. 2,
 * 7th edition (2017). Order: Utah Pests News, winter 2012; see {@link MIXING_STEPS}.
 *
 * @param input - the products, and the label's steps where it gives them
 * @returns the products in order, by their places in the list
 * @throws SprayMathError `missing`, `not-a-quantity`, `too-few`, `unknown-field`, `unknown-choice` for a code that does
 * not exist, or `conflict` for one that does not go into water or a step given twice
 *
 * @example
 * ```ts
 * import { mixingOrder } from "swath-to-spoon/tank-mix";
 *
 * const turns = mixingOrder({ products: [{ code: "EC" }, { code: "adjuvant" }, { code: "WG" }] });
 * console.log(turns.map((turn) => turn.product)); // [ 2, 0, 1 ]
 * ```
 */
export function mixingOrder(input: MixingOrderInput): MixingTurn[] {
  return mixingOrderOf(checked(input, MIXING_ORDER));
}

/** The products in the order of mixing. Trusts its input. */
export function mixingOrderOf({ products, steps = [] }: MixingOrderInput): MixingTurn[] {
  const order = [...steps, ...MIXING_STEPS];
  return products
    .map((product, i) => ({ product: i, step: stepOf(product) }))
    .sort((a, b) => order.indexOf(a.step) - order.indexOf(b.step));
}

function stepOf({ code, inSolubleBag }: MixingProduct): MixingStep {
  if (inSolubleBag === true) return "soluble-bag";
  return code === "adjuvant" || code === "fertilizer" ? code : FORMULATIONS[code].step;
}
