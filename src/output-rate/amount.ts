import { SprayMathError } from "../errors.js";
import { dimensionInWords } from "../units/dimensions.js";
import { resolveUnit } from "../units/resolve.js";
import { checkShape } from "../units/shape.js";
import type { Mass, Volume } from "../units/types.js";

/** Refuses what is neither a volume (spray) nor a mass (granules), and says which of the two it is. */
export function amountKind(amount: Volume | Mass, path: string): "volume" | "mass" {
  checkShape(amount, path);
  const { dimension } = resolveUnit(amount.unit, `${path}.unit`);
  if (dimension === "volume" || dimension === "mass") return dimension;
  throw new SprayMathError(
    "wrong-dimension",
    path,
    `Given ${amount.value} ${amount.unit}, ${dimensionInWords(dimension)}; wanted a volume or a weight, such as fl_oz or lb.`,
  );
}
