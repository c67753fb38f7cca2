import { frozen } from "../../frozen.js";
import { RECTANGLE_AREA, TRAPEZOID_AREA, TRIANGLE_AREA } from "./areas.js";
import { BAND } from "./band.js";
import { BOOM_CATCH } from "./boom-catch.js";
import { CATCH_CALIBRATION } from "./catch.js";
import { DILUTION } from "./dilution.js";
import { DRY_PRODUCT } from "./dry-product.js";
import { FERTILIZER } from "./fertilizer.js";
import { HOUSEHOLD_MEASURE } from "./household-measure.js";
import { INJECTOR } from "./injector.js";
import { GRANULES, LAWN_RATE } from "./lawn.js";
import { MIXING_ORDER } from "./mixing-order.js";
import { NOZZLE_CHECK } from "./nozzle-check.js";
import { PERCENT_MIX } from "./percent-mix.js";
import { PLANT_TIMING } from "./plant-timing.js";
import { PRODUCT_PER_TANK } from "./product-per-tank.js";
import { RESERVE } from "./reserve.js";
import { ROW_LENGTH } from "./row-length.js";
import { SEASON_LIMIT } from "./season-limit.js";
import { SPOT_TANK } from "./spot-tank.js";
import { STRIP_CALIBRATION } from "./strip.js";
import { STRIP_READING } from "./strip-reading.js";
import { TANK_LOADS } from "./tank-loads.js";
import { TIMED_SPEED } from "./timed-speed.js";
import type { AnyTopic } from "./topic.js";
import { TREE_ROW_VOLUME } from "./tree-row-volume.js";
import { WHOLE_JOB } from "./whole-job.js";

/** What a practice problem is about. */
export type PracticeTopic =
  | "rectangle-area"
  | "triangle-area"
  | "trapezoid-area"
  | "timed-speed"
  | "household-measure"
  | "percent-mix"
  | "strip-reading"
  | "season-limit"
  | "mixing-order"
  | "strip-calibration"
  | "catch-calibration"
  | "boom-catch"
  | "nozzle-check"
  | "tank-loads"
  | "lawn-rate"
  | "granules"
  | "fertilizer"
  | "row-length"
  | "dry-product"
  | "product-per-tank"
  | "plant-timing"
  | "spot-tank"
  | "dilution"
  | "injector"
  | "reserve"
  | "tree-row-volume"
  | "band"
  | "whole-job";

/** The topics, from easy to hard. */
export const TOPICS: Readonly<Record<PracticeTopic, AnyTopic>> = {
  "rectangle-area": RECTANGLE_AREA,
  "triangle-area": TRIANGLE_AREA,
  "trapezoid-area": TRAPEZOID_AREA,
  "timed-speed": TIMED_SPEED,
  "household-measure": HOUSEHOLD_MEASURE,
  "percent-mix": PERCENT_MIX,
  "strip-reading": STRIP_READING,
  "season-limit": SEASON_LIMIT,
  "mixing-order": MIXING_ORDER,
  "strip-calibration": STRIP_CALIBRATION,
  "catch-calibration": CATCH_CALIBRATION,
  "boom-catch": BOOM_CATCH,
  "nozzle-check": NOZZLE_CHECK,
  "tank-loads": TANK_LOADS,
  "lawn-rate": LAWN_RATE,
  granules: GRANULES,
  fertilizer: FERTILIZER,
  "row-length": ROW_LENGTH,
  "dry-product": DRY_PRODUCT,
  "product-per-tank": PRODUCT_PER_TANK,
  "plant-timing": PLANT_TIMING,
  "spot-tank": SPOT_TANK,
  dilution: DILUTION,
  injector: INJECTOR,
  reserve: RESERVE,
  "tree-row-volume": TREE_ROW_VOLUME,
  band: BAND,
  "whole-job": WHOLE_JOB,
};

/** The topics of practice problems, from easy to hard. */
export const PRACTICE_TOPICS: readonly PracticeTopic[] = /* @__PURE__ */ frozen(
  /* @__PURE__ */ Object.keys(TOPICS) as PracticeTopic[],
);
