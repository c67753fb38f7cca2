import Ajv, { type ValidateFunction } from "ajv";
import Ajv2020 from "ajv/dist/2020.js";

// Whatever a validator would print about a schema when a server starts is a fault.
const logger = {
  log: refuse,
  warn: refuse,
  error: refuse,
};
function refuse(...words: unknown[]): never {
  throw new Error(words.join(" "));
}

/** What Fastify 5 makes its validator with: @fastify/ajv-compiler 4, lib/default-ajv-options.js. */
const FASTIFY_OPTIONS = {
  coerceTypes: "array",
  useDefaults: true,
  removeAdditional: true,
  addUsedSchema: false,
  allErrors: false,
  logger,
} as const;

/** Fastify's validator as it is. */
export const FASTIFY = (json: object): ValidateFunction => new Ajv(FASTIFY_OPTIONS).compile(json);

/** The same, with the one setting that the recipe changes. */
export const NOT_TURNED = (json: object): ValidateFunction =>
  new Ajv({ ...FASTIFY_OPTIONS, coerceTypes: false }).compile(json);

/** The current draft, by the strictest rules. */
export const STRICT = (json: object): ValidateFunction => new Ajv2020({ strict: true, logger }).compile(json);
