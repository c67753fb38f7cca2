/** What this JavaScript engine lacks. That is no fault of any input, so it isn't a `SprayMathError`. */
export class EngineError extends Error {
  constructor(lacks: string) {
    super(
      `This JavaScript engine has no ${lacks}, which swath-to-spoon needs here. "What it needs" in docs/getting-started.md lists all.`,
    );
    // Not as a field: the class of an older engine's build would not have it before the message is made.
    this.name = "EngineError";
  }
}

// The youngest that are used everywhere (ECMAScript 2021 and 2022). What is younger in the language itself doesn't load.
const METHODS: readonly (readonly [name: string, holder: object, method: string])[] = [
  ["Object.hasOwn", Object, "hasOwn"],
  ["Array.prototype.at", Array.prototype, "at"],
  ["String.prototype.replaceAll", String.prototype, "replaceAll"],
];

let isSound = false;

/** Looks once, at the first use, whether the engine has what is used everywhere; throws an {@link EngineError} until it has. */
export function checkEngine(): void {
  if (isSound) return;
  const lacking = METHODS.filter(([, holder, method]) => !(method in holder)).map(([name]) => name);
  // Hermes 0.12 has 2.8e29 here: doses would come out wrong, without a word.
  if (Number(BigInt("123456789012345678901234567890")) !== 1.2345678901234568e29)
    lacking.push("correct Number(BigInt)");
  if (lacking.length > 0) throw new EngineError(lacking.join(" and no "));
  isSound = true;
}

/** A part of `Intl`: small engines have none of it, or not all. */
export function intl<K extends "DateTimeFormat" | "ListFormat" | "NumberFormat" | "PluralRules">(
  name: K,
): (typeof Intl)[K] {
  const { Intl: whole } = globalThis as { readonly Intl?: typeof Intl };
  const part = whole?.[name];
  if (part === undefined) throw new EngineError(whole === undefined ? "Intl" : `Intl.${name}`);
  return part;
}
