import { inUnit } from "../../units/convert.js";
import { formulaLines } from "../../units/formula-lines.js";
import type { AreaUnit, MassUnit, Quantity, Unit, VolumeUnit } from "../../units/types.js";
import type { WorkingLine } from "../../units/working-line.js";

/** A rate per area, and the area it is for. */
interface OnArea {
  readonly rate: Quantity;
  readonly area: Quantity;
  /** The unit of area that is multiplied with. */
  readonly per: AreaUnit;
  /** The unit of what comes out. */
  readonly unit: VolumeUnit | MassUnit;
}

/** What a rate per area comes to. */
export function productOn({ rate, area, per, unit }: OnArea): number {
  return inUnit(rate, `${unit}/${per}` as Unit) * inUnit(area, per);
}

/** The working of {@link productOn}. */
export function linesOfProduct(
  on: OnArea,
  id: "practice.product" | "practice.productOnGround" | "practice.fertilizer" = "practice.product",
): WorkingLine[] {
  const { rate, area, per, unit } = on;
  return formulaLines({
    id,
    formula: "rate * area",
    terms: { rate: [rate, `${unit}/${per}` as Unit], area: [area, per] },
    result: { value: productOn(on), unit },
    source: "definition of a rate per area",
  });
}
