export {
  type BandSpacing,
  type CropRateInput,
  cropRate,
  type TreatedRateInput,
  treatedRate,
} from "./band-rates.js";
export { type BedsInput, bedsArea } from "./beds.js";
export { type BoundaryInput, boundaryArea } from "./boundary.js";
export { type CompositeInput, compositeArea } from "./composite.js";
export { groundArea, treatedArea } from "./marked-area.js";
export {
  type OffsetRule,
  type OffsetsInput,
  offsetsArea,
  type UnequalOffsetsInput,
  unequalOffsetsArea,
} from "./offsets.js";
export { type RowBandsInput, rowBandsArea } from "./row-bands.js";
export {
  type PlantCountInput,
  type PlantedGroundInput,
  plantCount,
  plantedGround,
  type RowLengthInput,
  rowLengthOn,
} from "./row-length.js";
export {
  type CircleInput,
  circleArea,
  type EllipseInput,
  ellipseArea,
  type RectangleInput,
  type RingInput,
  rectangleArea,
  ringArea,
  type SectorInput,
  sectorArea,
  type TrapezoidInput,
  type TriangleInput,
  trapezoidArea,
  triangleArea,
} from "./shapes.js";
export { type SpotGroup, type SpotsInput, spotsArea } from "./spots.js";
export type { TreatedRows } from "./strips.js";
export {
  type TreatedFractionInput,
  type TreatPartInput,
  treatAll,
  treatedFraction,
  treatPart,
} from "./treated.js";
export { type TreeRowsInput, treeRowsArea } from "./tree-rows.js";
