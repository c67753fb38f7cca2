import * as z from "zod/mini";
import * as core from "zod/v4/core";
import type { Issue, SprayMathError } from "../errors.js";
import type { Field } from "../units/check.js";
import { EngineError } from "../units/engine.js";
import type { Schema } from "./field-of.js";
import { jsonSchemaInOne } from "./json-schema.js";
import { checkedOptions, type ReadingOptions, readBy } from "./reading.js";

interface FieldDef extends core.$ZodTransformDef {
  readonly field: Field<unknown>;
}

// What a kind of schema is built upon. (Its own type asserts, which a call through a namespace cannot do.)
interface Parent {
  init(schema: unknown, def: unknown): void;
}

// A transform that is never asynchronous, reports a missing value itself, and knows its JSON Schema.
const Reader: core.$constructor<z.ZodMiniTransform, FieldDef> = /* @__PURE__ */ core.$constructor(
  "SprayField",
  (inst, def) => {
    const parent: Parent = z.ZodMiniTransform;
    parent.init(inst, def);
    inst._zod.optin = undefined;
    inst._zod.parse = (payload) => {
      payload.value = def.transform(payload.value, payload);
      return payload;
    };
    inst._zod.processJSONSchema = (_, json) => Object.assign(json, jsonSchemaInOne(def.field));
  },
);

function made<T>(field: Field<T>, options: ReadingOptions): Schema<T> {
  const def: FieldDef = {
    type: "transform",
    field,
    transform: (input, payload) => {
      try {
        return readBy(field, input, options);
      } catch (error) {
        if (error instanceof EngineError) throw error;
        for (const issue of (error as SprayMathError).issues) payload.issues.push(asRawIssue(issue, input));
        return undefined;
      }
    },
  };
  return new Reader(def) as Schema<T>;
}

/** A fault as zod keeps it: the code, the key and the figures are its `params`. */
function asRawIssue({ code, key, figures, message, path }: Issue, input: unknown): core.$ZodRawIssue {
  const steps = path.match(/[^.[\]]+/g) ?? [];
  return {
    code: "custom",
    message,
    params: { code, key, figures },
    input,
    path: steps.map((step) => (/^\d+$/.test(step) ? Number(step) : step)),
  };
}

// An app has a few locales; whatever it asks for, no more schemas of a field than these are kept.
const MOST_KEPT = 16;

const kept = /* @__PURE__ */ new WeakMap<Field<unknown>, Map<string, Schema<unknown>>>();

/** The zod schema of a field: the same one each time for the same options. */
export function schemaOf<T>(field: Field<T>, options?: ReadingOptions): Schema<T> {
  const known = checkedOptions(options);
  const { locale, system, ounce } = known;
  const key = `${locale} ${system} ${ounce}`;
  const ofField = kept.get(field) ?? new Map<string, Schema<unknown>>();
  kept.set(field, ofField);
  const found = ofField.get(key);
  if (found !== undefined) return found as Schema<T>;
  if (ofField.size >= MOST_KEPT) ofField.clear();
  const fresh = made(field, known);
  ofField.set(key, fresh);
  return fresh;
}
