export {
  type ActiveIngredientInput,
  activeIngredientRate,
  activeIngredientRateWorking,
  type ProductRate,
  type ProductRateInput,
  productRate,
  productRateWorking,
} from "./active-ingredient.js";
export { type Carrier, type CarrierInput, carrierFor, carrierForWorking, type Reserve } from "./carrier.js";
export type { ActiveContent, ProductForm } from "./content.js";
export {
  type Dilution,
  type DilutionInput,
  diluteMix,
  diluteMixWorking,
  type StockInput,
  stockFor,
  stockForWorking,
} from "./dilution.js";
export type { LabelFinding, LabelFindingCode } from "./findings.js";
export { type JarTest, type JarTestInput, jarTest, jarTestWorking } from "./jar-test.js";
export {
  checkLabel,
  type LabelInput,
  type LabelLimits,
  type SeasonSoFar,
} from "./label-limits.js";
export type {
  ActiveIngredientRate,
  AreaRate,
  LabelRate,
  PartsRate,
  RateArea,
  RateRange,
  SeasonRate,
  SingleRate,
  WeightRate,
} from "./label-rate.js";
export { type LeftoverInput, leftoverArea, leftoverAreaWorking } from "./leftover.js";
export {
  type Load,
  type LoadSplit,
  type Loads,
  type LoadsInput,
  splitLoads,
  splitLoadsWorking,
  type WholePieces,
} from "./loads.js";
export { type MixedLoad, type MixedLoads, type MixLoadsInput, mixLoads, waterWorking } from "./mix-loads.js";
export {
  FORMULATIONS,
  type Formulation,
  type FormulationCode,
  MIXING_STEPS,
  type MixingOrderInput,
  type MixingProduct,
  type MixingStep,
  type MixingTurn,
  mixingOrder,
} from "./mixing-order.js";
export {
  type JobSizes,
  type ProductAmount,
  type ProductInput,
  productAmount,
  productAmountWorking,
} from "./product.js";
export {
  type ProductInLoads,
  type ProductInLoadsInput,
  productInLoads,
  productInLoadsWorking,
} from "./product-in-loads.js";
export { type Rinse, type RinseInput, rinseTank, rinseTankWorking } from "./rinse.js";
export { type DilutedMix, type MixStrength, strengthOf, strengthOfWorking } from "./strength.js";
