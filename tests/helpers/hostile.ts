import { types } from "node:util";
import vm from "node:vm";

/** A source of numbers that goes by a seed: `below(n)` is a whole number from 0 to n − 1. */
export interface Dice {
  readonly below: (count: number) => number;
  readonly pick: <T>(list: readonly T[]) => T;
}

/** Draws by a seed (mulberry32, public domain), so a seed is enough to see a failure again. */
export function diceFrom(seed: number): Dice {
  let state = seed | 0;
  const below = (count: number): number => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return Math.floor((((t ^ (t >>> 14)) >>> 0) / 2 ** 32) * count);
  };
  return { below, pick: (list) => list[below(list.length)] as (typeof list)[number] };
}

type Place = object & Record<string, unknown>;

/** A change of one value somewhere in an input: what stands there instead. */
type Change = (value: unknown, dice: Dice) => unknown;

const inOtherRealm: (code: string) => unknown = (code) => vm.runInContext(code, otherRealm);
const otherRealm = vm.createContext();

class Holder {
  constructor(readonly held: unknown) {}
}

const LONG = "9".repeat(100_000);
const WORDS = [
  "",
  " ",
  "5",
  "12 oz",
  "1,5 gal",
  "__proto__",
  "constructor",
  "toString",
  "<b>",
  "{given}",
  LONG,
  "\ud800",
  "\0",
];
const UNITS = [
  "ft",
  "m",
  "ac",
  "m2",
  "gal",
  "L",
  "fl_oz",
  "oz",
  "kg",
  "s",
  "mph",
  "gal/ac",
  "L/ha",
  "g/ha",
  "psi",
  "%",
  "ppm",
  "lb/gal",
];
const NUMBERS = [
  Number.NaN,
  Infinity,
  -Infinity,
  0,
  -0,
  1e308,
  -1e308,
  1e200,
  1e75,
  1e76,
  5e-324,
  1e-76,
  1e-200,
  -1,
  1,
  0.1,
  2,
  3,
  1e9,
  2 ** 53,
  2 ** 31,
];

function throws(): never {
  throw new TypeError("a trap");
}

const TRAPS = ["get", "has", "ownKeys", "getOwnPropertyDescriptor", "getPrototypeOf"] as const;

const JUNK: readonly Change[] = [
  () => null,
  () => undefined,
  (_, dice) => dice.pick(NUMBERS),
  (_, dice) => dice.pick(WORDS),
  (_, dice) => dice.pick(UNITS),
  () => Symbol("s"),
  () => 10n ** 400n,
  () => 5n,
  () => true,
  () => () => 5,
  () => new Date(Number.NaN),
  () => new Date(0),
  () => new Map([["value", 5]]),
  () => [],
  () => ({}),
  () => Object.create(null),
  () => new Array(5),
  () => Object.assign(new Array(4), { 1: 1, 3: { value: 1, unit: "ft" } }),
  () => new Holder(5),
  () => Object(5),
  () => Object("gal"),
  () => Object(Symbol("s")),
  () => ({ toString: throws, valueOf: throws, [Symbol.toPrimitive]: throws }),
  () => ({ length: 2, 0: 1, 1: 2 }),
  () => new Proxy({}, { get: throws }),
  () => revoked({}),
  () => revoked([]),
  () => revoked(() => 1),
  () => new Proxy({}, { get: (_target, name) => (name === "length" ? 1e9 : undefined) }),
  () => inOtherRealm("[]"),
  () => inOtherRealm("({ value: 5, unit: 'gal' })"),
  () => inOtherRealm("new Map()"),
  () => new Float64Array(3),
  () => Promise.resolve(5),
  () => new Error("no"),
  () => /x/,
];

function revoked(target: object): unknown {
  const { proxy, revoke } = Proxy.revocable(target, {});
  revoke();
  return proxy;
}

function isPlace(value: unknown): value is Place {
  return typeof value === "object" && value !== null && !types.isProxy(value);
}

/** A copy of an object or a list, one level deep, holes and getters kept. */
function copied(value: Place): Place {
  const copy = Array.isArray(value) ? new Array(value.length) : Object.create(Object.getPrototypeOf(value));
  for (const [name, { value: held, get, enumerable }] of Object.entries(
    Object.getOwnPropertyDescriptors(value),
  )) {
    if (name === "length" && Array.isArray(value)) continue;
    Object.defineProperty(copy, name, {
      ...(get ? { get } : { value: held, writable: true }),
      enumerable: enumerable === true,
      configurable: true,
    });
  }
  return copy;
}

function changedCopy(value: unknown, change: (copy: Place) => void): unknown {
  if (!isPlace(value)) return value;
  const copy = copied(value);
  change(copy);
  return copy;
}

function aKey(value: Place, dice: Dice): string | undefined {
  const keys = Object.keys(value);
  return keys.length === 0 ? undefined : dice.pick(keys);
}

/** Changes of an object or a list as a whole. */
const RESHAPED: readonly Change[] = [
  // A field removed, which leaves a hole in a list.
  (value, dice) => changedCopy(value, (copy) => delete copy[aKey(copy, dice) ?? ""]),
  // Renamed.
  (value, dice) =>
    changedCopy(value, (copy) => {
      const key = aKey(copy, dice);
      if (key === undefined) return;
      copy[`${key}s`] = copy[key];
      delete copy[key];
    }),
  // Added.
  (value, dice) =>
    changedCopy(value, (copy) =>
      Object.defineProperty(copy, dice.pick(["extra", "__proto__", "value", "kind", "of", "unit", LONG]), {
        value: dice.pick(JUNK)(undefined, dice),
        enumerable: true,
        configurable: true,
      }),
    ),
  (value) => changedCopy(value, (copy) => Object.assign(copy, { [Symbol("s")]: 1 })),
  // Lists: twice as long, very long, the wrong way round.
  (value) => (Array.isArray(value) ? [...value, ...value] : value),
  (value, dice) =>
    Array.isArray(value) && value.length > 0
      ? Array.from({ length: dice.pick([50, 500, 3000]) }, (_, i) => value[i % value.length])
      : value,
  (value) => (Array.isArray(value) ? value.slice(1).reverse() : value),
  // Getters that throw, and that give something else at each reading.
  (value, dice) =>
    changedCopy(value, (copy) => Object.defineProperty(copy, aKey(copy, dice) ?? "x", { get: throws })),
  (value, dice) =>
    changedCopy(value, (copy) => {
      const key = aKey(copy, dice) ?? "x";
      const right = copy[key];
      const wrong = dice.pick(JUNK)(right, dice);
      const first = dice.below(4);
      let reads = 0;
      Object.defineProperty(copy, key, { enumerable: true, get: () => (reads++ < first ? right : wrong) });
    }),
  // Proxies that throw in one of their traps, after a few times.
  (value, dice) => {
    if (!isPlace(value)) return value;
    const trap = dice.pick(TRAPS);
    const first = dice.below(4);
    let asked = 0;
    return new Proxy(value, {
      [trap]: (...args: never[]) =>
        asked++ < first ? (Reflect[trap] as (...a: never[]) => unknown)(...args) : throws(),
    });
  },
  (value) => (isPlace(value) ? new Proxy(value, {}) : value),
  // Of a foreign realm, without a prototype, of a class, frozen, cyclic.
  (value) => {
    try {
      return inOtherRealm(`(${JSON.stringify(value)})`);
    } catch {
      return value;
    }
  },
  (value) => (isPlace(value) ? Object.assign(Object.create(null), value) : value),
  (value) => (isPlace(value) ? Object.create(value) : value),
  (value) => (isPlace(value) ? Object.assign(new Holder(1), value) : value),
  (value) => changedCopy(value, Object.freeze),
  (value, dice) => changedCopy(value, (copy) => (copy[aKey(copy, dice) ?? "self"] = copy)),
];

// As many of one family as of the other, although there is more junk to choose from.
const change: Change = (value, dice) => {
  if (typeof value === "number" && dice.below(2) === 0)
    return value * dice.pick([1e-12, 1e-3, 0.5, 2, 7.3, 1e3, 1e12, -1, 1e150, 1e-150]);
  try {
    return dice.pick(isPlace(value) && dice.below(2) === 0 ? RESHAPED : JUNK)(value, dice);
  } catch {
    // A change before this one set a trap, and this one stepped into it.
    return value;
  }
};

/** An input with one change somewhere in it, at any depth. What is not on the way to the change stays the same object. */
export function hostile(value: unknown, dice: Dice): unknown {
  if (!isPlace(value)) return change(value, dice);
  const keys = Object.keys(value).filter(
    (key) => "value" in (Object.getOwnPropertyDescriptor(value, key) ?? {}),
  );
  const at = dice.below(keys.length + 1);
  const key = keys[at];
  if (key === undefined) return change(value, dice);
  const copy = copied(value);
  Object.defineProperty(copy, key, { value: hostile(value[key], dice) });
  return copy;
}

/** Arguments with a few changes in them. */
export function hostileArguments(args: readonly unknown[], changes: number, dice: Dice): readonly unknown[] {
  const changed = [...args];
  for (let i = 0; i < changes; i++) {
    const at = dice.below(changed.length + 1);
    // One more argument than there is, at times.
    if (at === changed.length) changed.push(dice.pick(JUNK)(undefined, dice));
    else changed[at] = hostile(changed[at], dice);
  }
  return changed;
}

/** Everything that can be looked at in a value without running any of its own code, as places: no getters, no proxies. */
export function everyObjectIn(value: unknown): Set<object> {
  const found = new Set<object>();
  const queue: unknown[] = [value];
  for (let at = 0; at < queue.length; at++) {
    const one = queue[at];
    if (!isPlace(one) || found.has(one)) continue;
    found.add(one);
    for (const { value: inner } of Object.values(Object.getOwnPropertyDescriptors(one))) queue.push(inner);
  }
  return found;
}

/** A picture of an input in which any change of it would show. */
export function pictureOf(value: unknown): readonly unknown[] {
  return [...everyObjectIn(value)].flatMap((one) =>
    Object.entries(Object.getOwnPropertyDescriptors(one)).flatMap(([name, { value: held, get }]) => [
      one,
      name,
      held,
      get,
    ]),
  );
}
