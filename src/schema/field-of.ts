import type * as z from "zod/mini";
import { Field } from "../units/check.js";
import { refusal } from "../units/message.js";

/** A schema that gives `T`. */
export type Schema<T> = z.ZodMiniType<T>;

/** The field list that a schema of this module reads by. */
export function fieldOf(schema: Schema<unknown>): Field<unknown> {
  const field = listOf(schema);
  if (field !== undefined) return field;
  throw refusal(
    "unknown-choice",
    "schema-unknown",
    "schema",
    "Use a schema of swath-to-spoon here, such as planInputSchema().",
  );
}

function listOf(schema: unknown): Field<unknown> | undefined {
  try {
    const { field } = (schema as Schema<unknown>)._zod.def as { readonly field?: unknown };
    return field instanceof Field ? field : undefined;
  } catch {
    // Nothing, something else, or what fails when it is looked at.
    return undefined;
  }
}
