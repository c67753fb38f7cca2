import { AREA_WORDS, type AreaLines } from "./area.js";
import { HOUSEHOLD_WORDS, type HouseholdLines } from "./household.js";
import type { LineTable } from "./line-table.js";
import { OUTPUT_RATE_WORDS, type OutputRateLines } from "./output-rate.js";
import { PLAN_WORDS, type PlanLines } from "./plan.js";
import { SWATH_WORDS, type SwathLines } from "./swath.js";
import { TANK_MIX_WORDS, type TankMixLines } from "./tank-mix.js";
import { UNITS_WORDS, type UnitsLines } from "./units.js";

/** Every line of working that the library writes: its id, and the symbols of its terms. */
export interface KnownLines
  extends UnitsLines,
    AreaLines,
    SwathLines,
    OutputRateLines,
    TankMixLines,
    HouseholdLines,
    PlanLines {}

/** The English words of every line of working. */
export const ENGLISH_LINES: LineTable<KnownLines> = /* @__PURE__ */ (() => ({
  ...UNITS_WORDS,
  ...AREA_WORDS,
  ...SWATH_WORDS,
  ...OUTPUT_RATE_WORDS,
  ...TANK_MIX_WORDS,
  ...HOUSEHOLD_WORDS,
  ...PLAN_WORDS,
}))();
