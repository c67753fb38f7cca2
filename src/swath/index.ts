export {
  type BoomCoverage,
  type BoomCoverageInput,
  type BoomHeightInput,
  boomCoverage,
  boomCoverageWorking,
  boomHeight,
  boomHeightWorking,
} from "./boom-height.js";
export { type Passes, type PassesInput, type PassesOver, passesOver, passesOverWorking } from "./passes.js";
export {
  type CaughtPattern,
  type PatternUniformity,
  type PatternUniformityInput,
  patternUniformity,
  patternUniformityWorking,
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
  bandsWidthWorking,
  boomWidth,
  boomWidthWorking,
  type EffectiveWidthInput,
  effectiveWidth,
  effectiveWidthWorking,
  type TreeRowWidthInput,
  treeRowWidth,
  treeRowWidthWorking,
  type WidthPerNozzleInput,
  widthPerNozzle,
  widthPerNozzleWorking,
} from "./widths.js";
