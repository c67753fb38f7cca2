import type { LineTable } from "./line-table.js";

/** The lines that the tank-mix module works out: each one's id, and the symbols of its terms. */
export interface TankMixLines {
  "tank-mix.sprayed": "rate" | "area";
  "tank-mix.reserve": "sprayed" | "percent";
  "tank-mix.carrier": "sprayed" | "lines" | "reserve";
  "tank-mix.carrierSteps": "sprayed" | "lines" | "step";
  "tank-mix.carrierRounded": "times" | "step";
  "tank-mix.fills": "total" | "fill";
  "tank-mix.loads": "fills";
  "tank-mix.piece": "total" | "extra" | "pieces";
  "tank-mix.most": "fill" | "extra" | "piece";
  "tank-mix.perLoad": "most" | "pieces";
  "tank-mix.loadsOfPieces": "pieces" | "perLoad";
  "tank-mix.productRate": "activeIngredient" | "content" | "density";
  "tank-mix.activeIngredient": "product" | "content" | "density";
  "tank-mix.strength": "rate" | "carrierRate";
  "tank-mix.strengthByGround": "rate" | "ground" | "carrierRate" | "area";
  "tank-mix.strengthByRow": "rate" | "rowLength" | "carrierRate" | "area";
  "tank-mix.strengthOfPart": "part" | "size";
  "tank-mix.strengthOfRatio": "parts" | "whole" | "size";
  "tank-mix.amount": "strength" | "carrier";
  "tank-mix.amountInLoad": "amount" | "carrier" | "total";
  "tank-mix.water": "mix" | "x";
  "tank-mix.lacking": "product" | "added" | "mix";
  "tank-mix.strengthLeft": "mix" | "added";
  "tank-mix.weakBy": "mix" | "added";
  "tank-mix.leftoverArea": "volume" | "rate";
  "tank-mix.take": "volume" | "to" | "from";
  "tank-mix.dilutionWater": "volume" | "take";
  "tank-mix.stock": "volume" | "dose" | "amount";
  "tank-mix.rinse": "residual" | "water" | "rinses";
  "tank-mix.jarAmount": "amount" | "jar" | "mix";
}

const MIX = "mix to be made";
const CONTENT = "active ingredient in the product";
const DENSITY = "what the product weighs";

/** The wording of every line that the tank-mix module works out. */
export const TANK_MIX_WORDS: LineTable<TankMixLines> = {
  "tank-mix.sprayed": {
    found: "mix that lands on the plot",
    terms: { rate: "output rate", area: "treated area" },
  },
  "tank-mix.reserve": {
    found: "reserve",
    terms: { sprayed: "mix that lands on the plot", percent: "percent to spare" },
  },
  "tank-mix.carrier": {
    found: MIX,
    terms: {
      sprayed: "mix that lands on the plot",
      lines: "mix that stays in the lines",
      reserve: "reserve",
    },
  },
  "tank-mix.carrierSteps": {
    found: "how many times the convenient volume is needed",
    terms: {
      sprayed: "mix that lands on the plot",
      lines: "mix that stays in the lines",
      step: "convenient volume",
    },
  },
  "tank-mix.carrierRounded": {
    found: MIX,
    terms: { times: "times that it is needed", step: "convenient volume" },
  },
  "tank-mix.fills": {
    found: "how many times the tank's fill is needed",
    terms: { total: MIX, fill: "fill of the tank" },
  },
  "tank-mix.loads": { found: "number of loads", terms: { fills: "times that the fill is needed" } },
  "tank-mix.piece": {
    found: "mix for one row or plot",
    terms: { total: MIX, extra: "mix for lines and reserve", pieces: "number of rows or plots" },
  },
  "tank-mix.most": {
    found: "how many rows or plots a fill is enough for",
    terms: {
      fill: "fill of the tank",
      extra: "mix for lines and reserve",
      piece: "mix for one row or plot",
    },
  },
  "tank-mix.perLoad": {
    found: "whole rows or plots to a load",
    terms: { most: "rows or plots that a fill is enough for", pieces: "number of rows or plots" },
  },
  "tank-mix.loadsOfPieces": {
    found: "number of loads",
    terms: { pieces: "number of rows or plots", perLoad: "whole rows or plots to a load" },
  },
  "tank-mix.productRate": {
    found: "rate of product",
    terms: { activeIngredient: "rate of active ingredient", content: CONTENT, density: DENSITY },
  },
  "tank-mix.activeIngredient": {
    found: "rate of active ingredient",
    terms: { product: "rate of product", content: CONTENT, density: DENSITY },
  },
  "tank-mix.strength": {
    found: "product in one unit of mix",
    terms: { rate: "rate of product", carrierRate: "output rate" },
  },
  "tank-mix.strengthByGround": {
    found: "product in one unit of mix",
    terms: {
      rate: "rate of product on the ground area",
      ground: "ground area",
      carrierRate: "output rate",
      area: "treated area",
    },
  },
  "tank-mix.strengthByRow": {
    found: "product in one unit of mix",
    terms: {
      rate: "rate of product along the row",
      rowLength: "length of all rows",
      carrierRate: "output rate",
      area: "treated area",
    },
  },
  "tank-mix.strengthOfPart": {
    found: "product in one unit of mix",
    terms: { part: "part of the mix that is product", size: "one unit of mix" },
  },
  "tank-mix.strengthOfRatio": {
    found: "product in one unit of mix",
    terms: { parts: "parts of product", whole: "parts of mix in all", size: "one unit of mix" },
  },
  "tank-mix.amount": {
    found: "product in the whole mix",
    terms: { strength: "product in one unit of mix", carrier: MIX },
  },
  "tank-mix.amountInLoad": {
    found: "product in the load",
    terms: { amount: "product in the whole mix", carrier: "mix in the load", total: "mix in all loads" },
  },
  "tank-mix.water": {
    found: "water in the load",
    terms: { mix: "mix in the load", x: "liquid product {n}" },
  },
  "tank-mix.lacking": {
    found: "product that is lacking",
    terms: { product: "product in the mix", added: "water added", mix: "mix as it should be" },
  },
  "tank-mix.strengthLeft": {
    found: "strength that is left",
    terms: { mix: "mix as it should be", added: "water added" },
  },
  "tank-mix.weakBy": {
    found: "how weak the mix is",
    terms: { mix: "mix as it should be", added: "water added" },
  },
  "tank-mix.leftoverArea": {
    found: "area that the leftover could still treat",
    terms: { volume: "what is left", rate: "output rate" },
  },
  "tank-mix.take": {
    found: "how much to take of what there is",
    terms: { volume: "volume wanted", to: "strength wanted", from: "strength that there is" },
  },
  "tank-mix.dilutionWater": {
    found: "water to make it up with",
    terms: { volume: "volume wanted", take: "how much is taken" },
  },
  "tank-mix.stock": {
    found: "stock solution to measure",
    terms: {
      volume: "stock solution made up",
      dose: "product wanted",
      amount: "product in the stock solution",
    },
  },
  "tank-mix.rinse": {
    found: "strength that stays in the sprayer",
    terms: {
      residual: "what stays in the sprayer",
      water: "clean water of one rinse",
      rinses: "number of rinses",
    },
  },
  "tank-mix.jarAmount": {
    found: "product in the jar",
    terms: { amount: "product in the mix", jar: "mix in the jar", mix: "mix in the tank" },
  },
};
