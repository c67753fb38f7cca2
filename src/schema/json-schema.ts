import * as z from "zod/mini";
import { idOf, type Schema } from "./fields.js";

/** A JSON Schema as plain data. */
export type JsonSchema = Readonly<Record<string, unknown>>;

/**
 * The JSON Schema (2020-12) of what a schema of this module accepts, for programs in other languages. The package ships it
 * for a whole job as `swath-to-spoon/schema/plan-input.schema.json`, and for a calibration record as
 * `swath-to-spoon/schema/calibration-record.schema.json`.
 *
 * It says all that JSON Schema can say. These rules it cannot, so a value that it accepts may still be refused here: text
 * must read as a quantity of the right dimension and range; a date must exist; a rate must go with its product's form; the
 * marks of a tool must lie within it; a number must not be so large or small that a conversion of it cannot be told.
 *
 * @param schema - such as `planInputSchema()`
 * @returns the JSON Schema, as plain data of its own
 *
 * @example
 * ```ts
 * import { planInputSchema, toJsonSchema } from "swath-to-spoon/schema";
 *
 * const json = toJsonSchema(planInputSchema());
 * console.log(json.required); // [ 'plot', 'calibration', 'sprayer', 'products', 'tools' ]
 * ```
 */
export function toJsonSchema(schema: Schema<unknown>): JsonSchema {
  // Zod asks no more of a registry than this. The names are kept out of its global one, where an app's own could be the same.
  const metadata = {
    get: (part: z.core.$ZodType) => {
      const id = part === schema ? undefined : idOf(part);
      return { ...z.globalRegistry.get(part), ...(id !== undefined && { id }) };
    },
  } as unknown as typeof z.globalRegistry;
  return z.toJSONSchema(schema, { target: "draft-2020-12", io: "input", metadata });
}
