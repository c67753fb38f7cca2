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
export {
  type Dilution,
  type DilutionInput,
  dilute,
  diluteWorking,
  type StockInput,
  stockFor,
  stockForWorking,
} from "./dilution.js";
export { type JarTest, type JarTestInput, jarTest, jarTestWorking } from "./jar-test.js";
export {
  checkLabel,
  type Finding,
  type FindingCode,
  type LabelInput,
  type LabelLimits,
  type SeasonRate,
  type SeasonSoFar,
} from "./label-limits.js";
export type {
  ActiveIngredientRate,
  AreaRate,
  Content,
  Form,
  LabelRate,
  PartsRate,
  RateArea,
  RateRange,
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
export { type ProductAmount, type ProductInput, productAmount, productAmountWorking } from "./product.js";
export {
  type ProductInLoads,
  type ProductInLoadsInput,
  productInLoads,
  productInLoadsWorking,
} from "./product-in-loads.js";
export { type Rinse, type RinseInput, rinse, rinseWorking } from "./rinse.js";
export { type DilutedMix, type MixStrength, strengthOf, strengthOfWorking } from "./strength.js";
