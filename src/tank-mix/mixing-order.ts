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
  type Partly,
} from "../units/fields.js";

/** What goes into the tank besides formulated pesticides; each is a step of its own. */
export type MixingAddition =
  | "water-conditioner"
  | "compatibility-agent"
  | "defoamer"
  | "adjuvant"
  | "drift-retardant"
  | "fertilizer";

/** A place in the order of mixing. */
export type MixingStep =
  | MixingAddition
  | "soluble-bag"
  | "soluble-solid"
  | "wettable-powder"
  | "dry-flowable"
  | "suspension"
  | "soluble-liquid"
  | "emulsion";

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
 * The order that {@link mixingOrder} follows unless given another. The guide followed is Oklahoma State University Extension,
 * "Herbicide Mixing Order": ammonium sulfate, water-dispersible products, suspensions and capsules, soluble liquids,
 * emulsifiable concentrates, surfactants. What it leaves open comes from others:
 *
 * - Water conditioners before compatibility agents and defoamers, drift retardants after the surfactants: South Dakota State
 *   University Extension, "Preparing Spray Solutions: Mixing Order". Oklahoma has the two agents before the ammonium sulfate.
 * - Soluble solids before all that only disperses: North Dakota Weed Control Guide, 2021 (A.P.P.L.E.S., as quoted by others).
 * - Fertilizers last: Utah State University Extension, Utah Pests News, winter 2012, "Using a Jar Test".
 *
 * Guides differ. Emulsifiable concentrates go in before soluble liquids in North Dakota and Utah (`emulsionsFirst`). In
 * South Dakota capsules go in after emulsifiable concentrates. In the Manitoba Guide to Crop Protection bags that dissolve go in
 * before any fertilizer, and fertilizers before all else. Kinds that no guide names stand with the nearest: common practice, no source.
 */
export const MIXING_STEPS: readonly MixingStep[] = /* @__PURE__ */ frozen<readonly MixingStep[]>([
  "water-conditioner",
  "compatibility-agent",
  "defoamer",
  "soluble-bag",
  "soluble-solid",
  "wettable-powder",
  "dry-flowable",
  "suspension",
  "soluble-liquid",
  "emulsion",
  "adjuvant",
  "drift-retardant",
  "fertilizer",
]);

const ADDITIONS: readonly MixingAddition[] = [
  "water-conditioner",
  "compatibility-agent",
  "defoamer",
  "adjuvant",
  "drift-retardant",
  "fertilizer",
];

/** A product to be put in order. */
export interface MixingProduct {
  /** The formulation code on the label, or what else it is, such as a water conditioner: for the order of mixing. */
  readonly code: FormulationCode | MixingAddition;
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
  "The formulation code on the label, or what else it is, such as a water conditioner: for the order of mixing.",
  /* @__PURE__ */ (() => [...(Object.keys(FORMULATIONS) as FormulationCode[]), ...ADDITIONS])(),
);

/** Whether a product comes in a bag that dissolves. */
export const IN_SOLUBLE_BAG: Optional<boolean> = optional(
  flag("Whether it comes in a bag that dissolves in water."),
);

/** What the order of mixing goes by besides the formulations. */
export interface MixingRules {
  /** The label's own order of steps, or another guide's; steps that it leaves out follow in the usual order. */
  readonly steps?: readonly MixingStep[] | undefined;
  /** Whether emulsions go in before soluble liquids, as some guides have it. After them unless given. */
  readonly emulsionsFirst?: boolean | undefined;
}

/** What the order of mixing goes by besides the formulations. */
export const MIXING_RULES: ObjectField<MixingRules> = /* @__PURE__ */ object<MixingRules>(
  {
    steps: optional(
      list(
        "The label's own order of steps, or another guide's; steps that it leaves out follow in the usual order.",
        choice("A step.", MIXING_STEPS),
      ),
    ),
    emulsionsFirst: optional(
      flag(
        "Whether emulsions go in before soluble liquids, as some guides have it. After them unless given.",
      ),
    ),
  },
  [stepsDiffer],
);

/** The input of {@link mixingOrder}. */
export interface MixingOrderInput extends MixingRules {
  /** The products of one mix, at least one. */
  readonly products: readonly MixingProduct[];
}

const MIXING_ORDER: ObjectField<MixingOrderInput> = /* @__PURE__ */ object<MixingOrderInput>(
  {
    products: list(
      "The products of one mix, at least one.",
      object<MixingProduct>({ code: FORMULATION_CODES, inSolubleBag: IN_SOLUBLE_BAG }),
    ),
    ...MIXING_RULES.fields,
  },
  [stepsDiffer],
);

/** Notes a step that is there twice. */
function stepsDiffer({ steps = [] }: Partly<MixingRules>, check: Check): void {
  steps.forEach((step, i) => {
    if (steps.indexOf(step) < i)
      check.fault(
        "conflict",
        "step-twice",
        `steps[${i}]`,
        "The step {given} is there twice. Enter each step once.",
        { given: step },
      );
  });
}

/** A product's turn. */
export interface MixingTurn {
  /** Which of the products, counted from 0 as they were given. */
  readonly product: number;
  /** The step that put it here. */
  readonly step: MixingStep;
}

/**
 * Returns the order in which products go into a partly filled tank, each stirred in before the next (common practice). The
 * label's own order takes precedence.
 *
 * Products of one step keep the order in which they were given. A product of ammonium sulfate and a surfactant in one is an
 * adjuvant: it goes in late (Oklahoma). Codes: CropLife International, Technical Monograph No. 2, 7th edition (2017). Order:
 * Oklahoma State University Extension, "Herbicide Mixing Order", and others; see {@link MIXING_STEPS}.
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
 * const turns = mixingOrder({ products: [{ code: "EC" }, { code: "WG" }, { code: "water-conditioner" }] });
 * console.log(turns.map((turn) => turn.product)); // [ 2, 1, 0 ]
 * ```
 */
export function mixingOrder(input: MixingOrderInput): MixingTurn[] {
  return mixingOrderOf(checked(input, MIXING_ORDER));
}

/** The products in the order of mixing. Trusts its input. */
export function mixingOrderOf({
  products,
  steps = [],
  emulsionsFirst = false,
}: MixingOrderInput): MixingTurn[] {
  const order = [...steps, ...usualSteps(emulsionsFirst)];
  return products
    .map((product, i) => ({ product: i, step: stepOf(product) }))
    .sort((a, b) => order.indexOf(a.step) - order.indexOf(b.step));
}

function usualSteps(emulsionsFirst: boolean): readonly MixingStep[] {
  if (!emulsionsFirst) return MIXING_STEPS;
  // The two are neighbors: they change places.
  return MIXING_STEPS.map((step) =>
    step === "soluble-liquid" ? "emulsion" : step === "emulsion" ? "soluble-liquid" : step,
  );
}

function stepOf({ code, inSolubleBag }: MixingProduct): MixingStep {
  // A water conditioner acts on the water that all others go into: first, in whatever it comes.
  if (inSolubleBag === true && code !== "water-conditioner") return "soluble-bag";
  return code in FORMULATIONS ? FORMULATIONS[code as FormulationCode].step : (code as MixingAddition);
}
