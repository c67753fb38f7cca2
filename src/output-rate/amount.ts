import { SprayMathError } from "../errors.js";
import { dimensionInWords } from "../units/dimensions.js";
import { inUnit } from "../units/guard.js";
import { resolveUnit } from "../units/resolve.js";
import { checkShape } from "../units/shape.js";
import type { Flow, Mass, Quantity, Unit, Volume, VolumeRate } from "../units/types.js";

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

/** Refuses what is neither a flow nor a volume per area, and gives its number in its own unit. */
export function flowOrRate(output: Flow | VolumeRate, path: string): number {
  checkShape(output, path);
  const { dimension } = resolveUnit(output.unit, `${path}.unit`);
  if (dimension !== "flow" && dimension !== "volumeRate") {
    throw new SprayMathError(
      "wrong-dimension",
      path,
      `Given ${output.value} ${output.unit}, ${dimensionInWords(dimension)}; wanted a flow or a volume per area, such as gal/min or gal/ac.`,
    );
  }
  return inUnit<Unit>(output as Quantity, output.unit, path);
}
