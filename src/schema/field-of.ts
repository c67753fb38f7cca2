import type * as z from "zod/mini";
import { Field } from "../units/check.js";
import { refusal } from "../units/message.js";

/** A schema that gives `T`. */
export type Schema<T> = z.ZodMiniType<T>;

/** The field list that a schema of this module reads by. */
export function fieldOf(schema: Schema<unknown>): Field<unknown> {
  const field = (schema as Partial<Schema<unknown>> | undefined)?._zod?.def as
    | { field?: unknown }
    | undefined;
  if (field?.field instanceof Field) return field.field;
  throw refusal(
    "unknown-choice",
    "schema-unknown",
    "schema",
    "Use a schema of swath-to-spoon here, such as planInputSchema().",
  );
}
