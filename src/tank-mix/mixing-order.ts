import { SprayMathError, shown } from "../errors.js";
import { frozen } from "../frozen.js";
import { checkedList, checkedObject } from "../units/guard.js";

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
 * The order that {@link mixingOrder} follows unless told another: Utah State University Extension, Utah Pests News,
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
  /** Its formulation code, printed on many labels; or `adjuvant` or `fertilizer`, which have none. */
  readonly code: FormulationCode | "adjuvant" | "fertilizer";
  /** Whether it comes in a bag that dissolves in water (the catalogue's suffix `SB`). */
  readonly inSolubleBag?: boolean;
}

/** What {@link mixingOrder} is given. */
export interface MixingOrderInput {
  /** The products of one mix. */
  readonly products: readonly MixingProduct[];
  /** The label's own order of steps, or another guide's; steps that it leaves out follow in the usual order. */
  readonly steps?: readonly MixingStep[];
}

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
 * @throws SprayMathError `missing`, `not-a-quantity`, `too-few`, `unknown-choice` for a code that does not exist, or
 * `conflict` for one that does not go into water or a step told twice
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
  const { products, steps } = checkedObject(input, "");
  const order = stepsInOrder(steps);
  return checkedList(products, "products")
    .map((product, i) => ({ product: i, step: stepOf(product, `products[${i}]`) }))
    .sort((a, b) => order.indexOf(a.step) - order.indexOf(b.step));
}

function stepsInOrder(steps: readonly MixingStep[] | undefined): readonly MixingStep[] {
  if (steps === undefined) return MIXING_STEPS;
  checkedList(steps, "steps").forEach((step, i) => {
    if (!MIXING_STEPS.includes(step)) {
      throw new SprayMathError(
        "unknown-choice",
        `steps[${i}]`,
        `Given ${shown(step)}; wanted one of: ${MIXING_STEPS.join(", ")}.`,
      );
    }
    if (steps.indexOf(step) < i) {
      throw new SprayMathError(
        "conflict",
        `steps[${i}]`,
        `Given ${shown(step)} a second time; wanted each step once.`,
      );
    }
  });
  return [...steps, ...MIXING_STEPS.filter((step) => !steps.includes(step))];
}

function stepOf(product: MixingProduct, path: string): MixingStep {
  const { code, inSolubleBag } = checkedObject(product, path);
  if (code === undefined || code === null) {
    throw new SprayMathError(
      "missing",
      `${path}.code`,
      'Nothing given; wanted a formulation code such as "WG", or "adjuvant" or "fertilizer".',
    );
  }
  if (inSolubleBag !== undefined && typeof inSolubleBag !== "boolean") {
    throw new SprayMathError(
      "not-a-quantity",
      `${path}.inSolubleBag`,
      `Given ${shown(inSolubleBag)}; wanted true or false.`,
    );
  }
  if (code === "adjuvant" || code === "fertilizer") return inSolubleBag === true ? "soluble-bag" : code;
  if (NOT_FOR_WATER.includes(code)) {
    throw new SprayMathError(
      "conflict",
      `${path}.code`,
      `Given ${code}, a formulation that is not mixed into water by itself; wanted one that is. See how the label tells to use it.`,
    );
  }
  if (!Object.hasOwn(FORMULATIONS, code)) {
    throw new SprayMathError(
      "unknown-choice",
      `${path}.code`,
      `Given ${shown(code)}, which is not an international formulation code; wanted one of: ${Object.keys(FORMULATIONS).join(", ")}, ` +
        "adjuvant, fertilizer. Letters after a trade name can mean other things.",
    );
  }
  return inSolubleBag === true ? "soluble-bag" : FORMULATIONS[code].step;
}
