export {
  type BandSpacing,
  type CropRateInput,
  cropRate,
  cropRateWorking,
  type TreatedRateInput,
  treatedRate,
  treatedRateWorking,
} from "./band-rates.js";
export { type BedsInput, bedsArea, bedsAreaWorking } from "./beds.js";
export { type BoundaryInput, boundaryArea, boundaryAreaWorking } from "./boundary.js";
export { type CompositeInput, compositeArea, compositeAreaWorking } from "./composite.js";
export { groundArea, treatedArea } from "./marked-area.js";
export {
  type OffsetRule,
  type OffsetsInput,
  offsetsArea,
  offsetsAreaWorking,
  type UnequalOffsetsInput,
  unequalOffsetsArea,
  unequalOffsetsAreaWorking,
} from "./offsets.js";
export { type RowBandsInput, rowBandsArea, rowBandsAreaWorking } from "./row-bands.js";
export {
  type PlantCountInput,
  plantCount,
  plantCountWorking,
  type RowLengthInput,
  rowLengthOn,
  rowLengthOnWorking,
} from "./row-length.js";
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
export { type SpotGroup, type SpotsInput, spotsArea, spotsAreaWorking } from "./spots.js";
export type { TreatedRows } from "./strips.js";
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
