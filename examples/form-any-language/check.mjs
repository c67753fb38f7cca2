// Checks a job against its narrowed schema with a JSON Schema validator, and gives each fault the path of its field.
import Ajv from "ajv/dist/2020.js";
import { memberOf } from "./narrow.mjs";

const ajv = new Ajv({ allErrors: true, verbose: true, strict: false, validateFormats: false });

/** Every fault as `{ path, message }`; none where the job is as the schema asks. */
export function faultsOf(schema, job) {
  const { $defs, ...rest } = told(schema, job);
  const validate = ajv.compile(rest);
  validate(job);
  // That an `if` led to faults says nothing new.
  const errors = (validate.errors ?? []).filter(({ keyword }) => keyword !== "if");
  return errors.map((error) => ({ path: pathOf(error), message: messageOf(error) }));
}

// What is not told needs no schema of its own: that it is needed, `required` says.
function told(part, data) {
  if (part.type === "object" && typeof data === "object" && data !== null) {
    const properties = Object.entries(part.properties ?? {}).map(([key, one]) => [
      key,
      one === false || data[key] !== undefined ? told(one, data[key]) : true,
    ]);
    return { ...part, properties: Object.fromEntries(properties) };
  }
  if (part.type === "array") {
    const { prefixItems, ...whole } = part;
    const each = (Array.isArray(data) ? data : []).map((one, i) => told(prefixItems[i] ?? true, one));
    // A validator takes no empty list of schemas.
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

function messageOf({ keyword, message, parentSchema, params }) {
  if (keyword === "required") return "is needed";
  if (keyword === "additionalProperties") return "is not known here";
  if (keyword === "not") return "can't be given as well";
  if (keyword === "const" && params.allowedValue === null) return "is not known here";
  if (keyword === "enum") return `must be one of: ${params.allowedValues.join(", ")}`;
  if (keyword === "pattern" && parentSchema.examples)
    return `must be such as ${parentSchema.examples.join(", ")}`;
  return message;
}
