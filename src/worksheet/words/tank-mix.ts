import type { Nutrient } from "../../tank-mix/nutrients.js";
import { type LineTable, perNutrient } from "./line-table.js";

type NutrientLines = Record<`tank-mix.fertilizer-${Nutrient}`, "nutrient" | "content"> &
  Record<`tank-mix.nutrient-${Nutrient}`, "product" | "content">;

/** The lines that the tank-mix module works out: each one's id, and the symbols of its terms. */
export interface TankMixLines extends NutrientLines {
  "tank-mix.sprayed": "rate" | "area";
  "tank-mix.each": "used" | "plants";
  "tank-mix.perLength": "used" | "length";
  "tank-mix.batchOfCount": "each" | "count";
  "tank-mix.batchOfRow": "rate" | "length";
  "tank-mix.reserve": "sprayed" | "percent";
  "tank-mix.carrier": "sprayed" | "lines" | "reserve";
  "tank-mix.carrierSteps": "sprayed" | "lines" | "step";
  "tank-mix.carrierRounded": "times" | "step";
  "tank-mix.fills": "total" | "fill" | "full";
  "tank-mix.loads": "fills";
  "tank-mix.piece": "total" | "lines" | "reserve" | "pieces";
  "tank-mix.most": "fill" | "full" | "lines" | "reserve" | "piece";
  "tank-mix.perLoad": "most" | "pieces" | "chosen";
  "tank-mix.loadsOfPieces": "pieces" | "perLoad";
  "tank-mix.fullMarkSteps": "fill" | "step";
  "tank-mix.fullMark": "times" | "step";
  "tank-mix.equalLoad": "total" | "loads";
  "tank-mix.rest": "total" | "full" | "loads";
  "tank-mix.lent": "full" | "rest" | "last";
  "tank-mix.loadOfPieces": "pieces" | "piece" | "lines" | "reserve";
  "tank-mix.markSteps": "load" | "step";
  "tank-mix.mark": "times" | "step";
  "tank-mix.markedTotal": "n" | "x";
  "tank-mix.toMark": "marked" | "total";
  "tank-mix.productRate": "activeIngredient" | "content" | "density";
  "tank-mix.activeIngredient": "product" | "content" | "density";
  "tank-mix.strength": "rate" | "carrierRate";
  "tank-mix.strengthOfCount": "rate" | "carrierRate";
  "tank-mix.strengthOfLength": "rate" | "carrierRate";
  "tank-mix.strengthByGround": "rate" | "ground" | "carrierRate" | "area";
  "tank-mix.strengthByRow": "rate" | "rowLength" | "carrierRate" | "area";
  "tank-mix.strengthOfPart": "part" | "size";
  "tank-mix.strengthOfRatio": "parts" | "whole" | "size";
  "tank-mix.amount": "strength" | "carrier";
  "tank-mix.amountOfPart": "part" | "carrier";
  "tank-mix.amountOfRatio": "carrier" | "parts" | "whole";
  "tank-mix.amountInLoad": "amount" | "carrier" | "total";
  "tank-mix.water": "mix" | "x";
  "tank-mix.lacking": "product" | "added" | "mix";
  "tank-mix.strengthLeft": "mix" | "added";
  "tank-mix.weakBy": "mix" | "added";
  "tank-mix.leftoverArea": "volume" | "rate";
  "tank-mix.take": "volume" | "to" | "from";
  "tank-mix.dilutionWater": "volume" | "take";
  "tank-mix.stock": "volume" | "dose" | "amount";
  "tank-mix.concentrateFactor": "dilute" | "concentrate";
  "tank-mix.concentrateRate": "dilute" | "factor";
  "tank-mix.concentratePerArea": "strength" | "dilute";
  "tank-mix.concentrateStrength": "strength" | "factor";
  "tank-mix.injectorFinished": "stock" | "whole" | "parts";
  "tank-mix.injectorStock": "finished" | "whole" | "parts";
  "tank-mix.stockStrength": "product" | "stock";
  "tank-mix.injectedStrength": "stock" | "whole" | "parts";
  "tank-mix.injectedLow": "strength" | "parts" | "percent" | "water";
  "tank-mix.injectedHigh": "strength" | "parts" | "percent" | "water";
  "tank-mix.injectorRatio": "caught" | "drawn";
  "tank-mix.injectorOff": "caught" | "drawn" | "whole" | "parts";
  "tank-mix.rinse": "residual" | "water" | "rinses";
  "tank-mix.jarAmount": "amount" | "jar" | "mix";
  "tank-mix.granules-area": "rate" | "area";
  "tank-mix.granules-rowLength": "rate" | "rowLength";
  "tank-mix.granules-plants": "rate" | "plants";
  "tank-mix.granules-cover": "amount" | "rate";
  "tank-mix.hopper-direction": "total" | "directions";
  "tank-mix.hopper-fills": "perDirection" | "hopper";
  "tank-mix.hopper-last": "perDirection" | "fills" | "hopper";
  "tank-mix.bags": "total" | "bag";
  "tank-mix.bags-left": "bags" | "bag" | "total";
  "tank-mix.nutrient-content": "content" | "parts" | "whole";
  "tank-mix.nutrient-convert": "amount" | "parts" | "whole";
}

const MIX = "total mix to make";
const EACH = "mix for each";
const PER_LENGTH = "mix per length of row";
const COUNT = "how many in all";
// What a mix is split by.
const PIECE = "mix for one row or plot";
const PIECES = "number of rows or plots";
const MOST = "rows or plots a full tank can do";
const PER_LOAD = "whole rows or plots per load";
const ALL_LOADS = "total mix";
const SPRAYED = "mix needed";
const STEP = "volume to round up to";
const STRENGTH = "product per unit of mix";
const TOTAL_PRODUCT = "total product";
const PART = "part of the mix that is product";
const RATIO = { parts: "parts of product", whole: "parts of mix" };
const WHOLE_UNIT = "what 100% would be";
const MARK_STEP = "volume between marks";
// What is mixed besides what each one gets.
const BESIDES = { lines: "mix left in the lines", reserve: "extra mix" };
const FULL_MARK = "full tank (highest mark)";
const LAST_LOAD = "what the last load must hold";
const MARKED = "total mix, with every load on a mark";
const DILUTE = "dilute rate";
const FACTOR = "concentration factor";
const PARTS = "parts of stock solution";
const WHOLE = "parts of finished solution";
const STOCK_STRENGTH = "product per unit of stock solution";
const ERROR = {
  strength: STOCK_STRENGTH,
  parts: PARTS,
  percent: "injector error, %",
  water: "parts of water",
};
const CONTENT = "active ingredient in the product";
const DENSITY = "weight of the product per volume";

const TO_SPREAD = "product to spread";
const PRODUCT_RATE = "product rate";
const PER_DIRECTION = "product for one direction";
const HOPPER = "one hopper";
const HOPPER_FILLS = "hopper fills for one direction";
const BAGS = "bags to buy";
const BAG = "one bag";
const FERTILIZER = "fertilizer";

const NUTRIENTS: Readonly<Record<Nutrient, string>> = {
  N: "nitrogen (N)",
  P2O5: "phosphate (P2O5)",
  K2O: "potash (K2O)",
  P: "phosphorus (P)",
  K: "potassium (K)",
  S: "sulfur (S)",
  SO3: "sulfur trioxide (SO3)",
  Mg: "magnesium (Mg)",
  MgO: "magnesium oxide",
  Ca: "calcium (Ca)",
  CaO: "calcium oxide",
};

/** The wording of every line that the tank-mix module works out. */
export const TANK_MIX_WORDS: LineTable<TankMixLines> = /* @__PURE__ */ (() => ({
  "tank-mix.sprayed": {
    found: SPRAYED,
    terms: { rate: "output rate", area: "treated area" },
  },
  "tank-mix.each": {
    found: EACH,
    terms: { used: "water used in the test", plants: "how many in the test" },
  },
  "tank-mix.perLength": {
    found: PER_LENGTH,
    terms: { used: "water used in the test", length: "length of row in the test" },
  },
  "tank-mix.batchOfCount": {
    found: SPRAYED,
    terms: { each: EACH, count: COUNT },
  },
  "tank-mix.batchOfRow": {
    found: SPRAYED,
    terms: { rate: PER_LENGTH, length: "length of all rows" },
  },
  "tank-mix.reserve": {
    found: "extra mix",
    terms: { sprayed: SPRAYED, percent: "percent extra" },
  },
  "tank-mix.carrier": {
    found: MIX,
    terms: {
      sprayed: SPRAYED,
      lines: "mix left in the lines",
      reserve: "extra mix",
    },
  },
  "tank-mix.carrierSteps": {
    found: "number of steps",
    terms: {
      sprayed: SPRAYED,
      lines: "mix left in the lines",
      step: STEP,
    },
  },
  "tank-mix.carrierRounded": {
    found: MIX,
    terms: { times: "number of steps", step: STEP },
  },
  "tank-mix.fills": {
    found: "number of tank fills",
    terms: { total: MIX, fill: "tank fill", full: FULL_MARK },
  },
  "tank-mix.loads": { found: "number of loads", terms: { fills: "number of tank fills" } },
  "tank-mix.piece": {
    found: PIECE,
    terms: { total: MIX, ...BESIDES, pieces: PIECES },
  },
  "tank-mix.most": {
    found: MOST,
    terms: { fill: "tank fill", full: FULL_MARK, ...BESIDES, piece: PIECE },
  },
  "tank-mix.perLoad": {
    found: PER_LOAD,
    terms: { most: MOST, pieces: PIECES, chosen: "most chosen for a load" },
  },
  "tank-mix.loadsOfPieces": {
    found: "number of loads",
    terms: { pieces: PIECES, perLoad: PER_LOAD },
  },
  "tank-mix.fullMarkSteps": {
    found: "marks up to the tank fill",
    terms: { fill: "tank fill", step: MARK_STEP },
  },
  "tank-mix.fullMark": {
    found: FULL_MARK,
    terms: { times: "marks up to the tank fill", step: MARK_STEP },
  },
  "tank-mix.equalLoad": {
    found: "what each load must hold",
    terms: { total: MIX, loads: "number of loads" },
  },
  "tank-mix.rest": {
    found: LAST_LOAD,
    terms: { total: MIX, full: FULL_MARK, loads: "number of loads" },
  },
  "tank-mix.lent": {
    found: "what the load before the last must hold",
    terms: { full: FULL_MARK, rest: LAST_LOAD, last: "last load, to its mark" },
  },
  "tank-mix.loadOfPieces": {
    found: "what the load must hold",
    terms: { pieces: "rows or plots in the load", piece: PIECE, ...BESIDES },
  },
  "tank-mix.markSteps": {
    found: "marks up to the load",
    terms: { load: "what the load must hold", step: MARK_STEP },
  },
  "tank-mix.mark": {
    found: "mark to fill to",
    terms: { times: "marks up to the load", step: MARK_STEP },
  },
  "tank-mix.markedTotal": {
    found: MARKED,
    terms: { n: "number of loads of size {n}", x: "load of size {n}" },
  },
  "tank-mix.toMark": {
    found: "extra mix to reach the marks",
    terms: { marked: MARKED, total: MIX },
  },
  "tank-mix.productRate": {
    found: PRODUCT_RATE,
    terms: { activeIngredient: "active ingredient rate", content: CONTENT, density: DENSITY },
  },
  "tank-mix.activeIngredient": {
    found: "active ingredient rate",
    terms: { product: PRODUCT_RATE, content: CONTENT, density: DENSITY },
  },
  "tank-mix.strength": {
    found: STRENGTH,
    terms: { rate: PRODUCT_RATE, carrierRate: "output rate" },
  },
  "tank-mix.strengthOfCount": {
    found: STRENGTH,
    terms: { rate: "product for each", carrierRate: EACH },
  },
  "tank-mix.strengthOfLength": {
    found: STRENGTH,
    terms: { rate: "product per length of row", carrierRate: PER_LENGTH },
  },
  "tank-mix.strengthByGround": {
    found: STRENGTH,
    terms: {
      rate: "product rate on the ground area",
      ground: "ground area",
      carrierRate: "output rate",
      area: "treated area",
    },
  },
  "tank-mix.strengthByRow": {
    found: STRENGTH,
    terms: {
      rate: "product rate along the row",
      rowLength: "length of all rows",
      carrierRate: "output rate",
      area: "treated area",
    },
  },
  "tank-mix.strengthOfPart": {
    found: STRENGTH,
    terms: { part: PART, size: WHOLE_UNIT },
  },
  "tank-mix.strengthOfRatio": {
    found: STRENGTH,
    terms: { ...RATIO, size: WHOLE_UNIT },
  },
  "tank-mix.amount": {
    found: TOTAL_PRODUCT,
    terms: { strength: STRENGTH, carrier: ALL_LOADS },
  },
  "tank-mix.amountOfPart": {
    found: TOTAL_PRODUCT,
    terms: { part: PART, carrier: ALL_LOADS },
  },
  "tank-mix.amountOfRatio": {
    found: TOTAL_PRODUCT,
    terms: { ...RATIO, carrier: ALL_LOADS },
  },
  "tank-mix.amountInLoad": {
    found: "product in the load",
    terms: { amount: TOTAL_PRODUCT, carrier: "mix in the load", total: ALL_LOADS },
  },
  "tank-mix.water": {
    found: "water in the load",
    terms: { mix: "mix in the load", x: "liquid product {n}" },
  },
  "tank-mix.lacking": {
    found: "missing product",
    terms: { product: "product in the mix", added: "water added", mix: "mix at full strength" },
  },
  "tank-mix.strengthLeft": {
    found: "strength left",
    terms: { mix: "mix at full strength", added: "water added" },
  },
  "tank-mix.weakBy": {
    found: "loss of strength",
    terms: { mix: "mix at full strength", added: "water added" },
  },
  "tank-mix.leftoverArea": {
    found: "area that the leftover would cover",
    terms: { volume: "leftover mix", rate: "output rate" },
  },
  "tank-mix.take": {
    found: "concentrate to measure",
    terms: { volume: "volume to make", to: "final strength", from: "strength of the concentrate" },
  },
  "tank-mix.dilutionWater": {
    found: "water to add",
    terms: { volume: "volume to make", take: "concentrate to measure" },
  },
  "tank-mix.stock": {
    found: "stock solution to measure",
    terms: {
      volume: "total stock solution",
      dose: "product needed",
      amount: "product in the stock solution",
    },
  },
  "tank-mix.concentrateFactor": {
    found: FACTOR,
    terms: { dilute: DILUTE, concentrate: "concentrate rate" },
  },
  "tank-mix.concentrateRate": {
    found: "concentrate rate",
    terms: { dilute: DILUTE, factor: FACTOR },
  },
  "tank-mix.concentratePerArea": {
    found: "product per area",
    terms: { strength: "product per unit of dilute spray", dilute: DILUTE },
  },
  "tank-mix.concentrateStrength": {
    found: STRENGTH,
    terms: { strength: "product per unit of dilute spray", factor: FACTOR },
  },
  "tank-mix.injectorFinished": {
    found: "finished solution",
    terms: { stock: "stock solution", whole: WHOLE, parts: PARTS },
  },
  "tank-mix.injectorStock": {
    found: "stock solution",
    terms: { finished: "finished solution", whole: WHOLE, parts: PARTS },
  },
  "tank-mix.stockStrength": {
    found: STOCK_STRENGTH,
    terms: { product: TOTAL_PRODUCT, stock: "stock solution" },
  },
  "tank-mix.injectedStrength": {
    found: "product per unit of finished solution",
    terms: { stock: STOCK_STRENGTH, whole: WHOLE, parts: PARTS },
  },
  "tank-mix.injectedLow": { found: "strength with too little stock drawn", terms: ERROR },
  "tank-mix.injectedHigh": { found: "strength with too much stock drawn", terms: ERROR },
  "tank-mix.injectorRatio": {
    found: "parts to one part of stock solution",
    terms: { caught: "amount caught", drawn: "stock solution drawn" },
  },
  "tank-mix.injectorOff": {
    found: "deviation from the strength set",
    terms: { caught: "amount caught", drawn: "stock solution drawn", whole: WHOLE, parts: PARTS },
  },
  "tank-mix.rinse": {
    found: "strength left in the sprayer",
    terms: {
      residual: "volume left in the sprayer",
      water: "clean water per rinse",
      rinses: "number of rinses",
    },
  },
  "tank-mix.jarAmount": {
    found: "product in the jar",
    terms: { amount: "product in the mix", jar: "mix in the jar", mix: "mix in the tank" },
  },
  "tank-mix.granules-area": {
    found: TO_SPREAD,
    terms: { rate: PRODUCT_RATE, area: "treated area" },
  },
  "tank-mix.granules-rowLength": {
    found: TO_SPREAD,
    terms: { rate: PRODUCT_RATE, rowLength: "length of all rows" },
  },
  "tank-mix.granules-plants": {
    found: TO_SPREAD,
    terms: { rate: PRODUCT_RATE, plants: COUNT },
  },
  "tank-mix.granules-cover": {
    found: "area that it covers",
    terms: { amount: "amount of product", rate: PRODUCT_RATE },
  },
  "tank-mix.hopper-direction": {
    found: PER_DIRECTION,
    terms: { total: TO_SPREAD, directions: "number of directions" },
  },
  "tank-mix.hopper-fills": {
    found: HOPPER_FILLS,
    terms: { perDirection: PER_DIRECTION, hopper: HOPPER },
  },
  "tank-mix.hopper-last": {
    found: "last fill",
    terms: { perDirection: PER_DIRECTION, fills: HOPPER_FILLS, hopper: HOPPER },
  },
  "tank-mix.bags": {
    found: BAGS,
    terms: { total: TO_SPREAD, bag: BAG },
  },
  "tank-mix.bags-left": {
    found: "left over in the last bag",
    terms: { bags: BAGS, bag: BAG, total: TO_SPREAD },
  },
  "tank-mix.nutrient-content": {
    found: "content of the nutrient needed",
    terms: { content: "content as declared", parts: "weight of the element", whole: "weight of the oxide" },
  },
  "tank-mix.nutrient-convert": {
    found: "the same nutrient, converted",
    terms: { amount: "amount of the nutrient", parts: "weight of the element", whole: "weight of the oxide" },
  },
  ...perNutrient("tank-mix.fertilizer-", NUTRIENTS, (nutrient) => ({
    found: FERTILIZER,
    terms: { nutrient: `${nutrient} needed`, content: `content of ${nutrient}` },
  })),
  ...perNutrient("tank-mix.nutrient-", NUTRIENTS, (nutrient) => ({
    found: `${nutrient} that the fertilizer brings`,
    terms: { product: FERTILIZER, content: `content of ${nutrient}` },
  })),
}))();
