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

const LETTERS = "ABCDEF";

/** The letter of a product, by its place in the list. */
export function letterOf(at: number): string {
  return LETTERS[at] as string;
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

/** The letters with those of some codes put first. */
function withFirst(given: Mixing, codes: readonly MixingKind[]): string {
  const letters = [...orderOf(given)];
  const isFirst = (letter: string): boolean =>
    codes.includes(given.products[LETTERS.indexOf(letter)] as MixingKind);
  return [...letters.filter(isFirst), ...letters.filter((letter) => !isFirst(letter))].join("");
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
    "adjuvant-first": { instead: withFirst(given, ["adjuvant"]) },
    "liquids-before-powders": { instead: withFirst(given, ["EC"]) },
    "conditioner-last": { instead: withFirst(given, ["WP", "WG", "SC", "EC", "adjuvant"]) },
    "powders-swapped": { instead: withFirst(given, ["WG"]) },
  }),
});
