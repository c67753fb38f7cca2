export { type StripRun, stripRate, stripRateWorking } from "./strip.js";
