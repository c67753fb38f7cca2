export {
  type BoomCoverage,
  type BoomCoverageInput,
  type BoomHeightInput,
  boomCoverage,
  boomHeight,
} from "./boom-height.js";
export { type Passes, type PassesInput, type PassesOver, passesOver } from "./passes.js";
export {
  type CaughtPattern,
  type PatternUniformity,
  type PatternUniformityInput,
  patternUniformity,
  type Travel,
  type WidestSwath,
  type WidestSwathInput,
  widestSwath,
} from "./uniformity.js";
export {
  type BandsWidth,
  type BandsWidthInput,
  type BoomWidthInput,
  bandsWidth,
  boomWidth,
  type EffectiveWidthInput,
  effectiveWidth,
  type TreeRowWidthInput,
  treeRowWidth,
  type WidthPerNozzleInput,
  widthPerNozzle,
} from "./widths.js";
