export { cropRateWorking as cropRate, treatedRateWorking as treatedRate } from "../area/band-rates.js";
export { bedsAreaWorking as bedsArea } from "../area/beds.js";
export { boundaryAreaWorking as boundaryArea } from "../area/boundary.js";
export { compositeAreaWorking as compositeArea } from "../area/composite.js";
export {
  offsetsAreaWorking as offsetsArea,
  unequalOffsetsAreaWorking as unequalOffsetsArea,
} from "../area/offsets.js";
export { rowBandsAreaWorking as rowBandsArea } from "../area/row-bands.js";
export {
  plantCountWorking as plantCount,
  plantedGroundWorking as plantedGround,
  rowLengthOnWorking as rowLengthOn,
} from "../area/row-length.js";
export {
  circleAreaWorking as circleArea,
  ellipseAreaWorking as ellipseArea,
  rectangleAreaWorking as rectangleArea,
  ringAreaWorking as ringArea,
  sectorAreaWorking as sectorArea,
  trapezoidAreaWorking as trapezoidArea,
  triangleAreaWorking as triangleArea,
} from "../area/shapes.js";
export { spotsAreaWorking as spotsArea } from "../area/spots.js";
export { treatedFractionWorking as treatedFraction, treatPartWorking as treatPart } from "../area/treated.js";
export { treeRowsAreaWorking as treeRowsArea } from "../area/tree-rows.js";
export { measureOutWorking as measureOut } from "../household/measure-out.js";
export { stockDilutionWorking as stockDilution } from "../household/stock-dilution.js";
export { volumeOfWeightWorking as volumeOfWeight } from "../household/volume-of-weight.js";
export { rateOfWorking as rateOf } from "../output-rate/calibration.js";
export { catchRateWorking as catchRate } from "../output-rate/catch.js";
export { timeToCoverWorking as timeToCover } from "../output-rate/cover-time.js";
export {
  densityFactorWorking as densityFactor,
  solutionForWaterWorking as solutionForWater,
  waterForSolutionWorking as waterForSolution,
} from "../output-rate/density.js";
export {
  directStripAreaWorking as directStripArea,
  directStripDistanceWorking as directStripDistance,
  directStripRateWorking as directStripRate,
} from "../output-rate/direct-strip.js";
export { handSprayRatesWorking as handSprayRates } from "../output-rate/hand-spray.js";
export { checkNozzlesWorking as checkNozzles } from "../output-rate/nozzle-check.js";
export { ratePerPlantWorking as ratePerPlant } from "../output-rate/per-plant.js";
export {
  outputAtPressureWorking as outputAtPressure,
  pressureForOutputWorking as pressureForOutput,
} from "../output-rate/pressure.js";
export { rateAtSpeedWorking as rateAtSpeed } from "../output-rate/rate-at-speed.js";
export { solveOutputWorking as solveOutput } from "../output-rate/solve-output.js";
export {
  averageSpeedWorking as averageSpeed,
  speedFromWorking as speedFrom,
  timeForWorking as timeFor,
} from "../output-rate/speed.js";
export {
  checkSpreaderWorking as checkSpreader,
  spreaderCatchWorking as spreaderCatch,
  spreaderRateWorking as spreaderRate,
} from "../output-rate/spreader.js";
export { stripRateWorking as stripRate } from "../output-rate/strip.js";
export {
  stripRunsSpreadWorking as stripRunsSpread,
  stripRunsWorking as stripRuns,
} from "../output-rate/strip-runs.js";
export { checkAgainstTargetWorking as checkAgainstTarget } from "../output-rate/target-check.js";
export {
  averageFlowWorking as averageFlow,
  flowFromWorking as flowFrom,
  timePerPlantWorking as timePerPlant,
  timeToSprayWorking as timeToSpray,
  volumePerPlantWorking as volumePerPlant,
} from "../output-rate/timing.js";
export { treeRowRateWorking as treeRowRate } from "../output-rate/tree-row.js";
export {
  diluteRateWorking as diluteRate,
  treeRowVolumeWorking as treeRowVolume,
} from "../output-rate/tree-row-volume.js";
export { rateUncertaintyWorking as rateUncertainty } from "../output-rate/uncertainty.js";
export { whatChangedWorking as whatChanged } from "../output-rate/what-changed.js";
export { planWorking as planApplication } from "../plan/plan-steps.js";
export { spreadingWorking as planSpreading } from "../plan/spreading-steps.js";
export {
  boomCoverageWorking as boomCoverage,
  boomHeightWorking as boomHeight,
} from "../swath/boom-height.js";
export { passesOverWorking as passesOver } from "../swath/passes.js";
export { patternUniformityWorking as patternUniformity } from "../swath/uniformity.js";
export {
  bandsWidthWorking as bandsWidth,
  boomWidthWorking as boomWidth,
  effectiveWidthWorking as effectiveWidth,
  treeRowWidthWorking as treeRowWidth,
  widthPerNozzleWorking as widthPerNozzle,
} from "../swath/widths.js";
export {
  activeIngredientRateWorking as activeIngredientRate,
  productRateWorking as productRate,
} from "../tank-mix/active-ingredient.js";
export { batchVolumeWorking as batchVolume } from "../tank-mix/batch-volume.js";
export { carrierForWorking as carrierFor } from "../tank-mix/carrier.js";
export { concentrateSprayWorking as concentrateSpray } from "../tank-mix/concentrate.js";
export { diluteMixWorking as diluteMix, stockForWorking as stockFor } from "../tank-mix/dilution.js";
export {
  bagsForWorking as bagsFor,
  granulesCoverWorking as granulesCover,
  granulesForWorking as granulesFor,
  hopperLoadsWorking as hopperLoads,
} from "../tank-mix/granules.js";
export {
  checkInjectorWorking as checkInjector,
  injectedStrengthWorking as injectedStrength,
  injectorStockWorking as injectorStock,
} from "../tank-mix/injector.js";
export { jarTestWorking as jarTest } from "../tank-mix/jar-test.js";
export { leftoverAreaWorking as leftoverArea } from "../tank-mix/leftover.js";
export { splitLoadsWorking as splitLoads } from "../tank-mix/loads.js";
export { waterWorking as loadWater } from "../tank-mix/mix-loads.js";
export {
  convertNutrientWorking as convertNutrient,
  fertilizerForWorking as fertilizerFor,
  nutrientsFromWorking as nutrientsFrom,
} from "../tank-mix/nutrients.js";
export { productAmountWorking as productAmount } from "../tank-mix/product.js";
export { productInLoadsWorking as productInLoads } from "../tank-mix/product-in-loads.js";
export { rinseTankWorking as rinseTank } from "../tank-mix/rinse.js";
export { strengthOfWorking as strengthOf } from "../tank-mix/strength.js";
