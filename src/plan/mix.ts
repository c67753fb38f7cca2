import { joinPath } from "../errors.js";
import { type Carrier, carrierOf, carrierUpTo, RESERVE, type Reserve } from "../tank-mix/carrier.js";
import { leftoverAreaOf } from "../tank-mix/leftover.js";
import {
  type FillList,
  isFillList,
  type LoadSplit,
  type Loads,
  type LoadsInput,
  loadsOf,
  PER_LOAD,
  PIECES,
  splitGiven,
} from "../tank-mix/loads.js";
import { mixOf } from "../tank-mix/mix-loads.js";
import { type MixingProduct, type MixingRules, mixingOrderOf } from "../tank-mix/mixing-order.js";
import {
  type JobSizes,
  type ProductAmount,
  type ProductInput,
  productAmountOf,
  sizesGiven,
} from "../tank-mix/product.js";
import { wholeMix } from "../tank-mix/product-in-loads.js";
import { checked } from "../units/check.js";
import {
  about,
  choice,
  type EitherField,
  either,
  list,
  type ObjectField,
  object,
  optional,
  type Partly,
} from "../units/fields.js";
import { sumOf } from "../units/quantity.js";
import { groundArea, quantity, treatedArea } from "../units/quantity-field.js";
import type { GroundArea, Length, Mass, TreatedArea, Volume, VolumeRate } from "../units/types.js";
import { sprayedFrom } from "./coverage.js";
import {
  FILL_LIST,
  fillsOfJobFit,
  MIX_PRODUCT,
  MIXING,
  type MixProduct,
  MOST_PRODUCTS,
  namesDiffer,
  SPRAYER,
  type Sprayer,
} from "./input.js";
import { known } from "./plot-areas.js";
import { rateIsNotCounted, singlesOf } from "./rates-fit.js";
import type { LoadAmount, Mix, MixOf } from "./result.js";

/** Whole rows, or plots of one size, to a load. */
export interface RowsOrPlots {
  /** How many rows or plots there are. A whole number, 1 or more. */
  readonly pieces: number;
  /** The most of them that go into one load. As many as fit unless given. A whole number, 1 or more. */
  readonly perLoad?: number | undefined;
}

/** How a mix is split into loads: full tanks and a part load, equal loads, whole rows or plots of one size, or fills as chosen. */
export type MixSplit = "full-then-part" | "equal" | RowsOrPlots | FillList;

/** The input of {@link planMix}. */
export interface MixInput {
  /** The area that the spray lands on. More than 0. */
  readonly area: TreatedArea;
  /** The ground that it lies on: needed for rates per ground area. */
  readonly ground?: GroundArea | undefined;
  /** The length of all treated rows together: needed for rates per row length. */
  readonly rowLength?: Length | undefined;
  /** What the sprayer puts out per treated area: the calibration's result. More than 0. */
  readonly rate: VolumeRate;
  /** The sprayer that does the job. */
  readonly sprayer: Sprayer;
  /** Extra mix, beyond what the job needs. None unless given. */
  readonly reserve?: Reserve | undefined;
  /** The products, at least one. */
  readonly products: readonly MixProduct[];
  /** How the mix is split: full tanks and a part load unless given. */
  readonly split?: MixSplit | undefined;
  /** What the order of mixing goes by besides the formulations: the label's own order, for one. */
  readonly mixing?: MixingRules | undefined;
}

const SPLIT: EitherField<MixSplit> = /* @__PURE__ */ either<MixSplit>(
  "How the mix is split: full tanks and a part load unless given.",
  [
    choice("Full tanks and a part load, or equal loads.", ["full-then-part", "equal"]),
    object<RowsOrPlots>({ pieces: PIECES, perLoad: optional(PER_LOAD) }),
    FILL_LIST,
  ],
  splitGiven,
);

const MIX_INPUT: ObjectField<MixInput> = /* @__PURE__ */ object<MixInput>(
  {
    area: treatedArea("The area that the spray lands on. More than 0."),
    ground: optional(groundArea("The ground that it lies on: needed for rates per ground area.")),
    rowLength: optional(
      quantity("The length of all treated rows together: needed for rates per row length.", "length"),
    ),
    rate: quantity(
      "What the sprayer puts out per treated area: the calibration's result. More than 0.",
      "volumeRate",
    ),
    sprayer: SPRAYER,
    reserve: optional(about("Extra mix, beyond what the job needs. None unless given.", RESERVE)),
    products: list("The products, at least one.", MIX_PRODUCT, { most: MOST_PRODUCTS }),
    split: optional(SPLIT),
    mixing: optional(MIXING),
  },
  [
    namesDiffer,
    fillsOfJobFit,
    ({ products = [], rate, area, ground, rowLength }, check) => {
      const sizes = { carrierRate: rate, area, ground, rowLength } as Partly<ProductInput>;
      products.forEach(({ rate: given }, i) => {
        const at = `products[${i}].rate`;
        for (const [end, single] of singlesOf(given))
          if (rateIsNotCounted(single, joinPath(at, end), check)) sizesGiven(single, sizes, check);
      });
    },
  ],
);

/**
 * Works out the tank mix where the treated area and the output rate are known: how much mix, in which loads, with how much
 * of each product. {@link planApplication} does the same from the plot and the calibration, measures the doses and checks
 * the job against the label.
 *
 * Formulas: sprayed = rate × area; total = sprayed + reserve + lines; loads = ceil(total / fill); product = label rate /
 * output rate × mix: those of `carrierFor`, `splitLoads`, `productAmount` and `mixLoads` of `swath-to-spoon/tank-mix`.
 *
 * @param input - what is sprayed, the output rate, the sprayer and the products
 * @returns the mix, its loads, each product in each load, the totals and what is left over. The strength is the same in every
 *   load, and the loads add up to the totals exactly
 * @throws SprayMathError `missing`, `not-a-quantity`, `not-finite`, `unknown-unit`, `unknown-field`, `unknown-choice`,
 * `wrong-dimension`, `wrong-area`, `out-of-range`, `too-few` or `conflict`, with the path of what is at fault
 *
 * @example
 * ```ts
 * import { planMix } from "swath-to-spoon/plan";
 * import { qty } from "swath-to-spoon/units";
 *
 * const mix = planMix({
 *   area: { value: 0.25, unit: "ac", of: "treated" },
 *   rate: qty(20, "gal/ac"),
 *   sprayer: { tank: qty(4, "gal") },
 *   products: [{ name: "Product A", form: "liquid", rate: qty(2, "pt/ac") }],
 * });
 * console.log(mix.loads.map((load) => load.carrier.value)); // [ 4, 1 ]
 * console.log(mix.loads.map((load) => load.products[0]?.amount.value)); // [ 6.4, 1.6 ]
 * ```
 */
export function planMix(input: MixInput): Mix {
  return mixFor(checked(input, MIX_INPUT), { area: "area", split: "split" });
}

/** Where a caller has what can be at fault: the size of the job, and the number of rows or plots. */
export interface MixPlaces {
  readonly size: string;
  readonly split: string;
}

/** A mix whose volume is known, and what else of the job a product's rate may need. */
export interface KnownMix {
  readonly carrier: Carrier;
  readonly sizes: Omit<JobSizes, "form" | "carrier">;
  readonly sprayer: Omit<Sprayer, "rowsPerPass">;
  readonly products: readonly MixProduct[];
  readonly split: MixSplit;
  readonly mixing?: MixingRules | undefined;
}

/** A job's mix, from its area and its output rate; `at` is the place of the area. Trusts its input. */
export function mixOnArea(job: MixInput, at: string): KnownMix {
  const { rate: carrierRate, area, ground, rowLength, sprayer, products, mixing } = job;
  const { split = "full-then-part" } = job;
  const carrier = carrierOf(carrierInput(job), at);
  return { carrier, sizes: { carrierRate, area, ground, rowLength }, sprayer, products, split, mixing };
}

/** The mix of a job on an area. Trusts its input. */
export function mixFor(job: MixInput, at: { readonly area: string; readonly split: string }): Mix {
  const { rate } = job;
  const covers = (volume: Volume) => ({ area: treatedBy(volume, rate) });
  return mixInLoads(mixOnArea(job, at.area), covers, { size: at.area, split: at.split });
}

/** What a volume of mix treats at the output rate. Trusts its input. */
export function treatedBy(volume: Volume, rate: VolumeRate): TreatedArea {
  return leftoverAreaOf({ volume, rate });
}

/** Each product in the whole mix, unrounded. Trusts its input. */
export function amountsIn({ carrier, sizes, products }: KnownMix): ProductAmount[] {
  return products.map((product, i) =>
    productAmountOf(productInput(product, sizes, carrier), `products[${i}].rate`),
  );
}

/** A mix whose loads are known: where they end on marks, with what it went up to. */
export interface LoadedMix extends KnownMix {
  readonly loads: Loads;
}

/** The loads of a mix, and what it goes up to for them. Trusts its input. */
export function loadedMix(job: KnownMix, at: MixPlaces): LoadedMix {
  const loads = loadsOf(loadsInput(job), {
    total: at.size,
    leastLoad: "sprayer.leastLoad",
    pieces: at.split,
    fills: `${at.split}.fills`,
  });
  const isOnMarks = loads.loads.every(({ mark }) => mark !== undefined);
  return {
    ...job,
    carrier: isOnMarks ? carrierUpTo(job.carrier, wholeMix(loads.loads)) : job.carrier,
    loads,
  };
}

/** A mix split into its loads; `covers` says what a volume of it is enough for. Trusts its input. */
export function mixInLoads<C extends object>(
  job: KnownMix,
  covers: (volume: Volume) => C,
  at: MixPlaces,
): MixOf<LoadAmount, C> {
  const loaded = loadedMix(job, at);
  const { products, carrier, mixing } = loaded;
  const amounts = amountsIn(loaded);
  const { loads, total, toMark } = loaded.loads;
  const mixed = mixOf({ loads, amounts: amounts.map(({ amount }) => amount) }, "products");
  const order = orderOf(products, mixing);
  const { reserve, lines } = carrier;
  const sprayed = sprayedFrom(loads, carrier);
  return {
    carrier,
    loads: mixed.loads.map(({ carrier, water, pieces, mark, amounts }, i) => ({
      number: i + 1,
      carrier,
      water,
      ...(pieces !== undefined && { pieces }),
      ...(mark && { mark }),
      ...covers(sprayed[i] as Volume),
      products: products.map(({ name }, k) => ({ name, amount: amounts[k] as Volume | Mass })),
    })),
    ...(order && { mixingOrder: order }),
    totals: {
      carrier: total,
      products: products.map(({ name }, k) => ({
        name,
        amount: mixed.totals[k] as Volume | Mass,
        strength: (amounts[k] as ProductAmount).strength,
      })),
    },
    ...(toMark && { toMark: { carrier: toMark, ...covers(toMark) } }),
    leftover: {
      carrier: sumOf([reserve, lines]),
      ...((reserve.value > 0 ? covers(reserve) : {}) as Partial<C>),
    },
  };
}

/** What a job on an area asks of the carrier's formula. */
export function carrierInput({
  rate,
  area,
  sprayer: { lineVolume },
  reserve,
}: MixInput): Parameters<typeof carrierOf>[0] {
  return { rate, area, lineVolume, reserve };
}

/** What a product of a job asks of the product's formula. */
export function productInput(
  { rate, form }: MixProduct,
  sizes: KnownMix["sizes"],
  { total }: Carrier,
): ProductInput {
  return { rate, form, carrier: total, ...sizes };
}

/** What a job asks of the loads' formula. */
export function loadsInput({ sprayer, split, carrier }: KnownMix): LoadsInput {
  const { tank, workingFill, marks, leastLoad } = sprayer;
  return { total: carrier.total, tank, marks, split: loadSplit(split, carrier), workingFill, leastLoad };
}

function loadSplit(split: MixSplit, { reserve, lines }: Carrier): LoadSplit {
  if (typeof split === "string" || isFillList(split)) return split;
  return { ...split, lines, reserve };
}

function orderOf(products: readonly MixProduct[], rules: MixingRules = {}): string[] | undefined {
  const codes = known(products.map(({ formulation }) => formulation));
  if (codes === undefined) return undefined;
  const mixing = products.map(({ inSolubleBag = false }, i): MixingProduct => {
    return { code: codes[i] as MixingProduct["code"], inSolubleBag };
  });
  return mixingOrderOf({ ...rules, products: mixing }).map(
    ({ product }) => (products[product] as MixProduct).name,
  );
}
