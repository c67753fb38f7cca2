// Checks a job against its narrowed schema with a JSON Schema validator, and gives each error the path of its field.
import Ajv from "ajv/dist/2020.js";
import { memberOf, namesOf } from "./narrow.mjs";

const ajv = new Ajv({ allErrors: true, verbose: true, strict: false, validateFormats: false });

/** Returns every error as `{ path, message }`; none if the job fits the schema. */
export function faultsOf(schema, job) {
  const { $defs, ...rest } = asEntered(schema, job);
  const validate = ajv.compile(rest);
  validate(job);
  // The error of an `if` only repeats the errors inside it.
  const errors = (validate.errors ?? []).filter(({ keyword }) => keyword !== "if");
  return errors.map((error) => ({ path: pathOf(error), message: messageOf(error) }));
}

// A missing member needs no schema of its own: `required` reports it.
function asEntered(part, data) {
  if (part.type === "object" && typeof data === "object" && data !== null) {
    const properties = Object.entries(part.properties ?? {}).map(([key, one]) => [
      key,
      one === false || data[key] !== undefined ? asEntered(one, data[key]) : true,
    ]);
    return { ...part, properties: Object.fromEntries(properties) };
  }
  if (part.type === "array") {
    const { prefixItems, ...whole } = part;
    const each = (Array.isArray(data) ? data : []).map((one, i) => asEntered(prefixItems[i] ?? true, one));
    // The validator accepts no empty list of schemas.
    return each.length > 0 ? { ...whole, prefixItems: each } : whole;
  }
  return part;
}

function pathOf({ instancePath, params }) {
  const keys = instancePath.split("/").slice(1);
  const path = keys.reduce((at, key) => memberOf(at, /^\d+$/.test(key) ? Number(key) : key), "");
  const member = params.missingProperty ?? params.additionalProperty;
  return member === undefined ? path : memberOf(path, member);
}

const LIMITS = {
  minimum: (limit) => `Must be ${limit} or more.`,
  exclusiveMinimum: (limit) => `Must be more than ${limit}.`,
  maximum: (limit) => `Must be ${limit} or less.`,
  exclusiveMaximum: (limit) => `Must be less than ${limit}.`,
};

const sentence = (text) => `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;

function messageOf({ keyword, message, parentSchema, params }) {
  if (keyword === "required") return "Required.";
  if (keyword === "additionalProperties") return "Not used here. Remove it.";
  if (keyword === "not") return "Can't be combined with another field. Remove one of them.";
  if (keyword === "const" && params.allowedValue === null) return "Not used here. Remove it.";
  if (keyword === "enum") return `Choose one of: ${namesOf(params.allowedValues).join(", ")}.`;
  if (keyword === "pattern" && parentSchema.examples)
    return `Enter it like this: ${parentSchema.examples.join(", ")}.`;
  if (LIMITS[keyword]) return LIMITS[keyword](params.limit);
  return sentence(message);
}
