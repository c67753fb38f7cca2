import { count, number, type ObjectField, object, optional, text } from "../units/fields.js";
import { quantity } from "../units/quantity-field.js";
import type { AreaUnit, Mass, Volume } from "../units/types.js";

/** What a product costs. */
export interface Price {
  /** The money, 0 or more, in the currency of the job. */
  readonly amount: number;
  /** For how much of the product: one gallon, a 5 lb bag. More than 0. */
  readonly per: Volume | Mass;
}

/** The fields of a price. */
export const PRICE: ObjectField<Price> = object<Price>({
  amount: number("The money, 0 or more, in the currency of the job.", { min: 0 }),
  per: quantity("For how much of the product: one gallon, a 5 lb bag. More than 0.", ["volume", "mass"]),
});

/** The currency of a job's prices. */
export interface Currency {
  /** What it is called, such as its ISO 4217 code. It is printed and not read. */
  readonly code: string;
  /** How many decimals it has, 0 to 4; 2 unless given. */
  readonly decimals?: number | undefined;
}

/** How many decimals money has where nothing is said. */
export const DEFAULT_DECIMALS = 2;

/** The fields of a currency. */
export const CURRENCY: ObjectField<Currency> = object<Currency>({
  code: text("What it is called, such as its ISO 4217 code. It is printed and not read."),
  decimals: optional(count("How many decimals it has, 0 to 4; 2 unless given.", 0, 4), DEFAULT_DECIMALS),
});

/** Money for one product. */
export interface ProductCost {
  /** The product. */
  readonly name: string;
  /** The money. */
  readonly cost: number;
}

/**
 * What the products of a mix cost, of which the price is given. All amounts are decimals of the currency: each row and each
 * column adds up to its total exactly.
 */
export interface MixCost {
  /** The currency. */
  readonly currency: Currency;
  /** Each load's products, and what they come to. */
  readonly loads: readonly {
    /** What each product in it costs. */
    readonly products: readonly ProductCost[];
    /** What they come to. */
    readonly total: number;
  }[];
  /** Each product in all loads. */
  readonly products: readonly ProductCost[];
  /** Everything. */
  readonly total: number;
  /** The products without a price: what the total leaves out. */
  readonly notPriced: readonly string[];
}

/** What the products of a job on an area cost. */
export interface PlanCost extends MixCost {
  /** Each plot's part of the total, by treated area; reserve and lines are spread over all. */
  readonly plots: readonly number[];
  /** The total over the treated area, rounded: for reading, since a rounded quotient adds up to nothing. */
  readonly perArea: {
    /** The money. */
    readonly cost: number;
    /** The unit of area that it is for. */
    readonly per: AreaUnit;
  };
}
