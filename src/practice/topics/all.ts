import { RECTANGLE_AREA, TRAPEZOID_AREA, TRIANGLE_AREA } from "./areas.js";
import { BAND } from "./band.js";
import { CATCH_CALIBRATION } from "./catch.js";
import { DILUTION } from "./dilution.js";
import { HOUSEHOLD_MEASURE } from "./household-measure.js";
import { PERCENT_MIX } from "./percent-mix.js";
import { PRODUCT_PER_TANK } from "./product-per-tank.js";
import { STRIP_CALIBRATION } from "./strip.js";
import { TANK_LOADS } from "./tank-loads.js";
import type { AnyTopic } from "./topic.js";
import { WHOLE_JOB } from "./whole-job.js";

/** What a practice problem is about. */
export type PracticeTopic =
  | "rectangle-area"
  | "triangle-area"
  | "trapezoid-area"
  | "household-measure"
  | "percent-mix"
  | "strip-calibration"
  | "catch-calibration"
  | "tank-loads"
  | "product-per-tank"
  | "dilution"
  | "band"
  | "whole-job";

/** The topics, from easy to hard. */
export const TOPICS: Readonly<Record<PracticeTopic, AnyTopic>> = {
  "rectangle-area": RECTANGLE_AREA,
  "triangle-area": TRIANGLE_AREA,
  "trapezoid-area": TRAPEZOID_AREA,
  "household-measure": HOUSEHOLD_MEASURE,
  "percent-mix": PERCENT_MIX,
  "strip-calibration": STRIP_CALIBRATION,
  "catch-calibration": CATCH_CALIBRATION,
  "tank-loads": TANK_LOADS,
  "product-per-tank": PRODUCT_PER_TANK,
  dilution: DILUTION,
  band: BAND,
  "whole-job": WHOLE_JOB,
};
