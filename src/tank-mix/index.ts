export {
  type ActiveIngredientInput,
  activeIngredientRate,
  type ProductRate,
  type ProductRateInput,
  productRate,
} from "./active-ingredient.js";
export {
  type BatchSize,
  type BatchVolume,
  batchVolume,
  type CountSize,
  type EachPlant,
  type RowSize,
  type UsedOnPlants,
  type UsedOnRow,
  type VolumeSize,
} from "./batch-volume.js";
export { type Carrier, type CarrierInput, carrierFor, type Reserve } from "./carrier.js";
export {
  type ConcentrateInput,
  type ConcentrateProduct,
  type ConcentrateSpray,
  concentrateSpray,
} from "./concentrate.js";
export type { ActiveContent, ProductForm } from "./content.js";
export { type Dilution, type DilutionInput, diluteMix, type StockInput, stockFor } from "./dilution.js";
export type { LabelFinding, LabelFindingCode } from "./findings.js";
export {
  type Bags,
  type BagsInput,
  bagsFor,
  type GranulesCoverInput,
  type GranulesInput,
  type GranulesOnArea,
  type GranulesOnPlants,
  type GranulesOnRow,
  granulesCover,
  granulesFor,
  type HopperInput,
  type HopperLoads,
  hopperLoads,
} from "./granules.js";
export {
  checkInjector,
  type InjectedInput,
  type InjectedStrength,
  type InjectorCheck,
  type InjectorCheckInput,
  type InjectorInput,
  type InjectorRatio,
  type InjectorStock,
  injectedStrength,
  injectorStock,
  type StrengthRange,
} from "./injector.js";
export { type JarTest, type JarTestInput, jarTest } from "./jar-test.js";
export { checkLabel, type LabelInput, type LabelLimits, type SeasonSoFar } from "./label-limits.js";
export type {
  ActiveIngredientRate,
  AreaRate,
  DryRate,
  LabelRate,
  LiquidRate,
  PartsRate,
  RateArea,
  RateRange,
  SeasonRate,
  SingleRate,
  WeightRate,
} from "./label-rate.js";
export { type LeftoverInput, leftoverArea } from "./leftover.js";
export {
  type FillList,
  type Load,
  type LoadSplit,
  type Loads,
  type LoadsInput,
  splitLoads,
  type WholePieces,
} from "./loads.js";
export { type MixedLoad, type MixedLoads, type MixLoadsInput, mixLoads } from "./mix-loads.js";
export {
  FORMULATIONS,
  type Formulation,
  type FormulationCode,
  MIXING_STEPS,
  type MixingAddition,
  type MixingOrderInput,
  type MixingProduct,
  type MixingRules,
  type MixingStep,
  type MixingTurn,
  mixingOrder,
} from "./mixing-order.js";
export {
  type ConvertNutrientInput,
  convertNutrient,
  type FertilizerContent,
  type FertilizerInput,
  type FertilizerRate,
  fertilizerFor,
  type GradeOptions,
  type Nutrient,
  type NutrientAmount,
  type NutrientsBrought,
  type NutrientsInput,
  nutrientsFrom,
  readGrade,
} from "./nutrients.js";
export { type JobSizes, type ProductAmount, type ProductInput, productAmount } from "./product.js";
export { type ProductInLoads, type ProductInLoadsInput, productInLoads } from "./product-in-loads.js";
export { type Rinse, type RinseInput, rinseTank } from "./rinse.js";
export { type DilutedMix, type MixStrength, strengthOf } from "./strength.js";
export type { TankMarks } from "./tank-marks.js";
