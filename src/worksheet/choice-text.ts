import type { Measurable, NotMeasurable } from "../household/measure-out.js";
import type { LoadChoice } from "../plan/load-choices.js";
import type { LoadProduct } from "../plan/result.js";
import { checked, type Field } from "../units/check.js";
import { list, number, picked, text } from "../units/fields.js";
import { quantity } from "../units/quantity-field.js";
import type { Volume } from "../units/types.js";
import { offText } from "./job/amounts.js";
import { dosePhrase, type PhraseOptions, phraseWriter } from "./phrases.js";
import type { PhraseWords } from "./words/messages.js";
import type { Writer } from "./words/writer.js";

const CHOICE: Field<LoadChoice> = picked<LoadChoice>("A way to split a job, as `loadChoices` gives it.", [
  "loads",
]);
const LOADS = /* @__PURE__ */ list(
  "The loads.",
  picked<LoadChoice["loads"][number]>("A load.", ["mark", "products"]),
);
const MARK = quantity("The mark that the load is filled to.", "volume");
const PRODUCTS = /* @__PURE__ */ list(
  "The products.",
  picked<LoadProduct>("A product in a load.", ["name", "measured"]),
);
const NAME = text("What the product is called.");
const DOSE = picked<Measurable | NotMeasurable>("A dose as a plan gives it.", [
  "ok",
  "errorPercent",
  "refused",
  "issue",
  "parts",
]);
const ERROR = number("How far the dose is off, in percent.");

/**
 * Returns a way to split a job in words: what each load is filled to, and what each dose is measured with. Loads that are alike are said
 * once.
 *
 * @param choice - what `loadChoices` gave
 * @param options - see {@link PhraseOptions}
 * @returns the phrase
 * @throws SprayMathError `missing` or `not-a-quantity` for what is no choice, `unknown-choice` or `unknown-field` for an option
 *
 * @example
 * ```ts
 * import { loadChoices, qty } from "swath-to-spoon";
 * import { loadChoiceText } from "swath-to-spoon/worksheet";
 *
 * const ways = loadChoices({
 *   plot: { kind: "rectangle", length: qty(121, "ft"), width: qty(90, "ft") },
 *   calibration: { kind: "known", rate: qty(26, "gal/ac") },
 *   sprayer: { tank: qty(4, "gal"), marks: qty(0.25, "gal") },
 *   products: [{ name: "Product A", form: "liquid", rate: qty(1, "qt/ac") }],
 *   tools: "us-spoons",
 * });
 * for (const way of ways.slice(0, 2)) console.log(loadChoiceText(way));
 * // 2 loads of 3.25 gal: Product A 8 tablespoons (exact)
 * // 4 gal: Product A 9 tablespoons + 2 teaspoons (1.8% under); 2.5 gal: Product A 6 tablespoons + 1/4 teaspoon (1.1% under)
 * ```
 */
export function loadChoiceText(choice: LoadChoice, options: PhraseOptions = {}): string {
  const writer = phraseWriter(options);
  const { loads } = checked(choice, CHOICE, "choice");
  const alike = new Map<string, number>();
  for (const [i, { mark, products }] of checked(loads, LOADS, "choice.loads").entries()) {
    const at = `choice.loads[${i}]`;
    const doses = checked(products, PRODUCTS, `${at}.products`)
      .map((product, k) => productText(product, `${at}.products[${k}]`, writer))
      .join(", ");
    const load = `${writer.short(checked(mark as Volume, MARK, `${at}.mark`))}: ${doses}`;
    alike.set(load, (alike.get(load) ?? 0) + 1);
  }
  const { severalLoads } = writer.messages.text;
  return [...alike]
    .map(([load, loads]) => (loads === 1 ? load : writer.fill(severalLoads, { loads, load })))
    .join("; ");
}

/** A product and its dose: what it is measured with, and how far that is off. */
function productText({ name, measured }: LoadProduct, at: string, writer: Writer<PhraseWords>): string {
  const product = checked(name, NAME, `${at}.name`);
  const dose = checked(measured, DOSE, `${at}.measured`);
  if (!dose.ok) return `${product} ${writer.messages.text.doNotMeasure}`;
  const off = checked(dose.errorPercent, ERROR, `${at}.measured.errorPercent`);
  return `${product} ${dosePhrase(dose, writer)} (${offText(off, writer)})`;
}
