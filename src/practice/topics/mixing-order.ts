import { mixingOrderOf } from "../../tank-mix/mixing-order.js";
import { choice, list, object } from "../../units/fields.js";
import { type AnyTopic, topic } from "./topic.js";

/** A kind of product that a class meets, by its code. */
export type MixingKind = "water-conditioner" | "WP" | "WG" | "SC" | "EC" | "adjuvant";

interface Mixing {
  /** The kinds of the products, each once: 2 to 6 of them. */
  readonly products: readonly MixingKind[];
}

// In the order of mixing. Kinds that guides put in different places are left out: soluble liquids and fertilizers.
const KINDS: readonly MixingKind[] = ["water-conditioner", "WP", "WG", "SC", "EC", "adjuvant"];

/** The letters of a list of products. */
export const LETTERS = "ABCDEF";

/** The letter of a product, by its place in the list. */
export function letterOf(at: number): string {
  return LETTERS[at] as string;
}

/** The place in the list of the product that a letter stands for. */
export function placeOf(letter: string): number {
  return LETTERS.indexOf(letter);
}

/** Every way to list four kinds, those aside that are in order already. */
function listings(): (readonly MixingKind[])[] {
  const four = (chosen: readonly MixingKind[]): (readonly MixingKind[])[] =>
    chosen.length === 4
      ? [chosen]
      : KINDS.filter((kind) => !chosen.includes(kind)).flatMap((kind) => four([...chosen, kind]));
  return four([]).filter((products) => orderOf({ products }) !== "ABCD");
}

/** The letters of products in the order that they go in. */
function orderOf({ products }: Mixing): string {
  return mixingOrderOf({ products: products.map((code) => ({ code })) })
    .map(({ product }) => letterOf(product))
    .join("");
}

/** The orders with one kind moved to each place before its own, or after it. */
function moved(given: Mixing, kind: MixingKind, where: "earlier" | "later"): { readonly instead: string }[] {
  const letters = [...orderOf(given)];
  const from = letters.findIndex((letter) => given.products[placeOf(letter)] === kind);
  if (from < 0) return [];
  const others = letters.filter((_, at) => at !== from);
  return letters.flatMap((_, to) =>
    to === from || (where === "earlier") !== to < from
      ? []
      : [{ instead: [...others.slice(0, to), letters[from], ...others.slice(to)].join("") }],
  );
}

/** Which product goes into the tank first, second and so on. */
export const MIXING_ORDER: AnyTopic = /* @__PURE__ */ topic<Mixing>({
  difficulty: 1,
  fields: object<Mixing>(
    {
      products: list(
        "The kinds of the products, each once: 2 to 6 of them.",
        choice("A kind of product.", KINDS),
        {
          least: 2,
          most: 6,
        },
      ),
    },
    [
      ({ products = [] }, check) => {
        const twice = products.find((kind, i) => products.indexOf(kind) < i);
        if (twice !== undefined)
          check.fault(
            "conflict",
            "kind-twice",
            "products",
            "{given} is there twice, and either may go first. Enter it once.",
            {
              given: twice,
            },
          );
      },
    ],
  ),
  figures: () => ({ products: listings() }),
  answer: (given) => orderOf(given),
  working: () => [],
  mistakes: (given) => ({
    "order-as-listed": { instead: [...LETTERS].slice(0, given.products.length).join("") },
    "order-reversed": { instead: [...orderOf(given)].reverse().join("") },
    "adjuvant-first": moved(given, "adjuvant", "earlier"),
    "conditioner-last": moved(given, "water-conditioner", "later"),
    "liquids-before-powders": [...moved(given, "EC", "earlier"), ...moved(given, "SC", "earlier")],
    // Only a wettable powder shows that granules went in before it.
    "powders-swapped": given.products.includes("WP") ? moved(given, "WG", "earlier") : [],
  }),
});
