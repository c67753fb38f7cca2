export * from "./errors.js";
export * from "./units/index.js";
