export { type BedsInput, bedsArea, bedsAreaWorking } from "./beds.js";
export { groundArea, treatedArea } from "./kinds.js";
export type { TreatedRows } from "./lanes.js";
export { type RowBandsInput, rowBandsArea, rowBandsAreaWorking } from "./row-bands.js";
export {
  type CircleInput,
  circleArea,
  circleAreaWorking,
  type EllipseInput,
  ellipseArea,
  ellipseAreaWorking,
  type RectangleInput,
  type RingInput,
  rectangleArea,
  rectangleAreaWorking,
  ringArea,
  ringAreaWorking,
  type SectorInput,
  sectorArea,
  sectorAreaWorking,
  type TrapezoidInput,
  type TriangleInput,
  trapezoidArea,
  trapezoidAreaWorking,
  triangleArea,
  triangleAreaWorking,
} from "./shapes.js";
export {
  type TreatedFractionInput,
  type TreatPartInput,
  treatAll,
  treatedFraction,
  treatedFractionWorking,
  treatPart,
  treatPartWorking,
} from "./treated.js";
export { type TreeRowsInput, treeRowsArea, treeRowsAreaWorking } from "./tree-rows.js";
