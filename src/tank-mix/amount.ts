import { SprayMathError } from "../errors.js";
import { dimensionInWords } from "../units/dimensions.js";
import { inUnit } from "../units/guard.js";
import { resolveUnit } from "../units/resolve.js";
import { checkShape } from "../units/shape.js";
import type { Mass, Quantity, Unit, Volume } from "../units/types.js";

/** Refuses what is not an amount of product, a volume or a weight above 0, and says which of the two it is. */
export function checkedAmount(amount: Volume | Mass, path: string): "volume" | "mass" {
  checkShape(amount, path, "fl_oz");
  const { dimension } = resolveUnit(amount.unit, `${path}.unit`);
  if (dimension !== "volume" && dimension !== "mass") {
    throw new SprayMathError(
      "wrong-dimension",
      path,
      `Given ${amount.value} ${amount.unit}, ${dimensionInWords(dimension)}; wanted a volume or a weight of product.`,
    );
  }
  inUnit<Unit>(amount as Quantity, amount.unit, path);
  return dimension;
}
