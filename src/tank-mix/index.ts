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
export {
  type Load,
  type LoadSplit,
  type Loads,
  type LoadsInput,
  splitLoads,
  splitLoadsWorking,
  type WholePieces,
} from "./loads.js";
export { type ProductAmount, type ProductInput, productAmount, productAmountWorking } from "./product.js";
export {
  type ProductInLoads,
  type ProductInLoadsInput,
  productInLoads,
  productInLoadsWorking,
} from "./product-in-loads.js";
