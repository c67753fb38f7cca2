import * as z from "zod/mini";
import * as core from "zod/v4/core";
import { SprayMathError } from "../errors.js";
import { checkedChoice, checkedObject } from "../units/guard.js";
import { asRawIssue, told } from "./issues.js";

/** A schema that gives `T`. */
export type Schema<T> = z.ZodMiniType<T>;

/** A schema for a field that may be left out. */
export type Optional<T> = z.ZodMiniOptional<Schema<T>>;

/**
 * The schemas of every field of `T`, none missing and none more: a field that is added to a type and forgotten here does not
 * compile. Fields that only say that they are not there (`never`) need none.
 */
export type Shape<T> = {
  readonly [K in keyof T as Exclude<T[K], undefined> extends never ? never : K]-?: undefined extends T[K]
    ? Optional<Exclude<T[K], undefined>>
    : Schema<T[K]>;
};

/** What a person reads about a schema; it goes into the JSON Schema too. */
export interface About extends Record<string, unknown> {
  /** A short name, for a part that is used in several places. */
  readonly title?: string;
  /** What it means. */
  readonly description?: string;
  /** What holds where nothing is given. */
  readonly default?: unknown;
}

const ids: core.$ZodRegistry<{ readonly id?: string }> = /* @__PURE__ */ z.registry();

/** The schema's name among the parts of a JSON Schema, where it has one. */
export function idOf(schema: core.$ZodType): string | undefined {
  return ids.get(schema)?.id;
}

/** Names a schema, so that a JSON Schema tells it once. */
export function named<S extends core.$ZodType>(id: string, schema: S, description: string): S {
  ids.add(schema, { id });
  z.globalRegistry.add(schema, { title: id, description });
  return schema;
}

/** The same schema with what is said about it in this place. */
export function about<S extends Schema<unknown>>(schema: S, text: string | About): S {
  const copy = schema.clone();
  z.globalRegistry.add(copy, typeof text === "string" ? { description: text } : text);
  return copy;
}

/** A field that may be left out. */
export function maybe<T>(schema: Schema<T>, text: string | About): Optional<T> {
  return about(z.optional(schema), text);
}

/** Puts what a guard of the library throws among the issues; anything else is a fault of this code and goes on up. */
function guarded<T>(payload: core.ParsePayload, input: unknown, work: () => T): T | undefined {
  try {
    return work();
  } catch (error) {
    if (!(error instanceof SprayMathError)) throw error;
    payload.issues.push(asRawIssue(error, input));
    return undefined;
  }
}

// What a kind of schema is built upon. (Its own type asserts, which a call through a namespace cannot do.)
interface Parent {
  init(schema: unknown, def: unknown): void;
}

interface ReaderDef extends core.$ZodTransformDef {
  readonly json: () => object;
}

// A transform that is never asynchronous, refuses a missing value itself and knows its JSON Schema.
const Reader: core.$constructor<z.ZodMiniTransform, ReaderDef> = /* @__PURE__ */ core.$constructor(
  "SprayReader",
  (inst, def) => {
    const parent: Parent = z.ZodMiniTransform;
    parent.init(inst, def);
    inst._zod.optin = undefined;
    inst._zod.parse = (payload) => {
      payload.value = def.transform(payload.value, payload);
      return payload;
    };
    inst._zod.processJSONSchema = (_, json) => Object.assign(json, def.json());
  },
);

/** A schema made of a guard of the library: `read` gives the value clean, or throws. `json` says the same as far as it can. */
export function reader<T>(read: (input: unknown) => T, json: () => object): Schema<T> {
  return new Reader({
    type: "transform",
    transform: (input, payload) => guarded(payload, input, () => read(input)),
    json,
  }) as Schema<T>;
}

interface FieldsDef extends core.$ZodObjectDef {
  readonly agree: readonly ((output: never) => void)[];
}

// An object that refuses fields it does not know (a misspelt `label` would pass unseen) unless they are undefined, leaves
// undefined ones out, and looks at fields together also where another of them is at fault.
const Fields: core.$constructor<z.ZodMiniObject, FieldsDef> = /* @__PURE__ */ core.$constructor(
  "SprayFields",
  (inst, def) => {
    const parent: Parent = z.ZodMiniObject;
    parent.init(inst, def);
    let entries: [string, core.SomeType][] | undefined;
    inst._zod.parse = (payload, ctx) => {
      const input = payload.value;
      if (typeof input !== "object" || input === null || Array.isArray(input)) {
        payload.issues.push({ code: "invalid_type", expected: "object", input, inst });
        return payload;
      }
      entries ??= Object.entries(def.shape);
      const output: Record<string, unknown> = {};
      for (const [name, schema] of entries) {
        const found = schema._zod.run(
          { value: (input as Record<string, unknown>)[name], issues: [] },
          ctx,
        ) as core.ParsePayload;
        if (found.issues.length === 0) {
          if (found.value !== undefined) output[name] = found.value;
          continue;
        }
        // One by one: a million faults would not fit into the arguments of one call.
        for (const issue of found.issues)
          payload.issues.push({ ...issue, path: [name, ...(issue.path ?? [])] });
      }
      for (const name of Object.keys(input)) {
        if (Object.hasOwn(def.shape, name) || (input as Record<string, unknown>)[name] === undefined)
          continue;
        payload.issues.push(unknownField(name, entries, input));
      }
      for (const check of def.agree) guarded(payload, input, () => check(output as never));
      payload.value = output;
      return payload;
    };
  },
);

function unknownField(name: string, known: [string, unknown][], input: object): core.$ZodRawIssue {
  const message = `Given a field that is not known here; wanted one of: ${known.map(([field]) => field).join(", ")}.`;
  return { code: "custom", message, params: { code: "unknown-choice" }, path: [name], input };
}

/**
 * An object with these fields and no others. Each of `agree` looks at the fields that are right by themselves, and throws
 * where they do not go together.
 */
export function fields<T extends object>(
  shape: Shape<T>,
  ...agree: readonly ((given: Partial<T>) => void)[]
): Schema<T> {
  const def: FieldsDef = { type: "object", shape, catchall: z.never(), agree, error: told };
  return new Fields(def) as unknown as Schema<T>;
}

type Given<O extends readonly Schema<unknown>[]> = core.output<O[number]>;

interface ChoiceDef extends core.$ZodUnionDef {
  readonly pick: (input: unknown) => number;
}

// A union that knows which of its options is meant, so that it reports the faults of that one only.
const Choice: core.$constructor<z.ZodMiniUnion, ChoiceDef> = /* @__PURE__ */ core.$constructor(
  "SprayChoice",
  (inst, def) => {
    const parent: Parent = z.ZodMiniUnion;
    parent.init(inst, def);
    inst._zod.parse = (payload, ctx) => {
      const { value } = payload;
      const at = guarded(payload, value, () => def.pick(value));
      const option = at === undefined ? undefined : def.options[at];
      return option === undefined ? payload : option._zod.run(payload, ctx);
    };
  },
);

/**
 * One of several schemas, which together give the whole of `T`: leaving one out does not compile. `pick` says by its place
 * which of them an input is meant for, or throws.
 */
export function choice<T>(): <const O extends readonly Schema<T>[]>(
  options: O & ([T] extends [Given<O>] ? unknown : never),
  pick: (input: unknown) => number,
) => Schema<T> {
  return (options, pick) =>
    new Choice({ type: "union", options: [...options], pick }) as unknown as Schema<never>;
}

/** The schema of each kind, by the name that its field `kind` has. */
export type Kinds<T extends { readonly kind: string }> = {
  readonly [K in T["kind"]]: Schema<Extract<T, { readonly kind: K }>>;
};

/** One of several kinds of thing, distinguished by their field `kind`. */
export function kindOf<T extends { readonly kind: string }>(kinds: Kinds<T>): Schema<T> {
  const names = Object.keys(kinds);
  return choice<T>()(Object.values(kinds) as [Schema<T>], (input) => {
    const { kind } = checkedObject(input as T, "");
    return names.indexOf(checkedChoice(kind, names, "kind"));
  });
}

/** A list of at least `least`, and at most `most` where that is told. */
export function list<T>(item: Schema<T>, least = 1, most?: number): Schema<readonly T[]> {
  const checks = [z.minLength(least), ...(most === undefined ? [] : [z.maxLength(most)])];
  return z.array(item, { error: told }).check(...(checks as [])) as Schema<readonly T[]>;
}

/** A number. */
export function number(
  limits: { readonly above?: number; readonly min?: number; readonly max?: number } = {},
): Schema<number> {
  const { above, min, max } = limits;
  return z
    .number({ error: told })
    .check(
      ...(above === undefined ? [] : [z.gt(above)]),
      ...(min === undefined ? [] : [z.gte(min)]),
      ...(max === undefined ? [] : [z.lte(max)]),
    );
}

/** A whole number. */
export function count(min = 1, max?: number): Schema<number> {
  return z.int({ error: told }).check(z.gte(min), ...(max === undefined ? [] : [z.lte(max)]));
}

/** Some words: not blank. */
export function words(): Schema<string> {
  return z.string({ error: told }).check(z.regex(/\S/));
}

/** True or false. */
export function flag(): Schema<boolean> {
  return z.boolean({ error: told });
}

/** One of some names, each of them told. */
export function name<T extends string>(names: Readonly<Record<T, unknown>>): Schema<T> {
  return z.enum(Object.keys(names) as [T, ...T[]], { error: told }) as unknown as Schema<T>;
}

/** Just this value. */
export function only<const T extends string | number>(value: T): Schema<T> {
  return z.literal(value, { error: told }) as unknown as Schema<T>;
}

/** Two numbers. */
export function pair(): Schema<readonly [number, number]> {
  return z.tuple([number(), number()], { error: told });
}

/** Three of a kind. */
export function triple<T>(item: Schema<T>): Schema<readonly [T, T, T]> {
  return z.tuple([item, item, item], { error: told }) as unknown as Schema<readonly [T, T, T]>;
}

/** How many sides of a row are meant: 1 or 2. */
export function sides(): Schema<1 | 2> {
  return z.literal([1, 2], { error: told });
}

/** Text of any kind. */
export function text(): Schema<string> {
  return z.string({ error: told });
}
