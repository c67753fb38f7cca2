import type { Dimension } from "./types.js";

/**
 * The names that figures of messages have in a language. Figures hold keys of these lists, and a sentence says them in words:
 * `{given.dimension}` is looked up in the list `dimension`.
 */
export interface IssueNames {
  /** Kinds of quantities, as in "5 gal is a volume". */
  readonly dimension: Readonly<Record<Dimension, string>>;
  /** What a field expects, as in "Enter a length". */
  readonly expected: Readonly<
    Record<
      | Dimension
      | "amount"
      | "ratePerArea"
      | "labelRate"
      | "productRate"
      | "activeRate"
      | "strength"
      | "content"
      | "caught"
      | "treeRowVolume"
      | "sprayPerCanopy"
      | "pair"
      | "place",
      string
    >
  >;
  /** What an area is an area of. */
  readonly area: Readonly<Record<"treated" | "ground" | "plain", string>>;
  /** What a fraction is a part of, where nothing says so. */
  readonly basis: Readonly<Record<"none", string>>;
  /** The conditions of a calibration, as in "Changed since calibration: the nozzle". */
  readonly condition: Readonly<
    Record<
      | "operator"
      | "nozzle"
      | "nozzleCount"
      | "nozzleSpacing"
      | "pressure"
      | "speed"
      | "gear"
      | "ground"
      | "liquid"
      | "density",
      string
    >
  >;
  /** Kinds of spraying, as in "more than usual for turf". */
  readonly application: Readonly<
    Record<"broadcast" | "band" | "tree-rows" | "hand" | "turf" | "drench", string>
  >;
  /** What is entered, by the name of its field: that name in words where it is missing. */
  readonly field: Readonly<Record<string, string>>;
  /** What is chosen, by the name of the choice: that name where it is missing. */
  readonly choice: Readonly<Record<string, string>>;
  /** Signs before decimals. */
  readonly sign: Readonly<Record<"." | ",", string>>;
  /** What a value is that can't be shown. */
  readonly kind: Readonly<Record<"a list" | "an object" | "a function", string>>;
}

/** What a field expects: a kind of quantity, or what its own name says better. */
export type ExpectedName = keyof IssueNames["expected"];

const DIMENSION: IssueNames["dimension"] = {
  length: "a length",
  area: "an area",
  volume: "a volume",
  mass: "a weight",
  time: "a time",
  pressure: "a pressure",
  fraction: "a fraction",
  count: "a number of plants",
  speed: "a speed",
  flow: "a volume over a time",
  massFlow: "a weight over a time",
  volumeRate: "a volume per area",
  massRate: "a weight per area",
  density: "a weight per volume",
  volumeConcentration: "a volume in a volume",
  massFraction: "a weight in a weight",
  volumePerLength: "a volume per length",
  massPerLength: "a weight per length",
  volumePerCount: "a volume per plant",
  massPerCount: "a weight per plant",
};

/** The English names. */
export const NAMES: IssueNames = {
  dimension: DIMENSION,
  expected: {
    ...DIMENSION,
    amount: "an amount",
    ratePerArea: "a rate per area",
    labelRate: "the label's rate",
    productRate: "the product's rate",
    activeRate: "the rate of active ingredient",
    strength: "a strength",
    content: "what the product contains",
    caught: "what was caught",
    treeRowVolume: "a tree-row volume",
    sprayPerCanopy: "the spray for so much canopy",
    pair: "two numbers, such as [0, 120]",
    place: "a place as [longitude, latitude]",
  },
  area: { treated: "treated area", ground: "ground area", plain: "plain area" },
  basis: { none: "without a basis" },
  condition: {
    operator: "the operator",
    nozzle: "the nozzle",
    nozzleCount: "the number of nozzles",
    nozzleSpacing: "the nozzle spacing",
    pressure: "the pressure",
    speed: "the speed",
    gear: "the gear",
    ground: "the ground",
    liquid: "the liquid",
    density: "the density",
  },
  application: {
    broadcast: "a broadcast spray",
    band: "a band spray",
    "tree-rows": "tree rows",
    hand: "a hand gun",
    turf: "turf",
    drench: "a drench",
  },
  field: {
    used: "amount used",
    swath: "spray width",
    caught: "amount caught",
  },
  choice: {},
  sign: { ".": "a point", ",": "a comma" },
  kind: { "a list": "a list", "an object": "an object", "a function": "a function" },
};
