import { resolve } from "node:path";
import { describe, expect, it } from "vitest";
import { libraryProgram, mismatches } from "../helpers/sentences.ts";

const FIXTURE = resolve("src/units/fixture-of-docstrings.ts");

const FIXTURE_TEXT = `
  import { about, choice, number, object, optional, text } from "./fields.js";
  import type { FieldsOf, ObjectField } from "./fields.js";
  interface Base {
    /** The name
     * of it. */
    readonly name: string;
  }
  interface Inner {
    /** How many. See {@link Base}. */
    readonly count: number;
  }
  interface Outer extends Base {
    /** The age. */
    readonly age?: number;
    /** The inner part. */
    readonly inner: Inner;
    /** The form. */
    readonly form: "a" | "b";
    /** The size. */
    readonly size: number;
    /** The weight. */
    readonly weight: number;
    readonly bare: number;
  }
  const INNER: ObjectField<Inner> = object({ count: number("How many. See Base.") });
  const form = choice("The form.", ["a", "b"]);
  export const RIGHT = object<Outer>({
    name: text("The name of it."), age: optional(number("The " + "age.")), inner: about("The inner part.", INNER),
    form, size: number("The size."), weight: number("The weight."), bare: number(""),
  });
  export const WRONG: ObjectField<Outer> = object({
    name: text("The name of it"), age: optional(number("The Age.")), inner: INNER,
    form: choice("Its form.", ["a", "b"]), size: number(sentence()), weight: number("The " + sentence()), bare: number("Bare."),
  });
  export const PART: FieldsOf<Inner> = { count: number("How few.") };
  function sentence(): string { return "The size."; }
  export const PLAIN = object<{ readonly a: number }>({ a: number("What it is.") });
`;
const program = libraryProgram({ [FIXTURE]: FIXTURE_TEXT });
const files = program.getSourceFiles().filter(({ fileName }) => fileName.startsWith(resolve("src")));

describe("the sentence of a field", () => {
  it("is the docstring of what it reads, letter for letter", () => {
    const { checked, wrong } = mismatches(
      program,
      files.filter(({ fileName }) => fileName !== FIXTURE),
    );
    expect(wrong).toEqual([]);
    expect(checked).toBeGreaterThan(20);
  });

  it("is found wherever it is written, and held to inherited docstrings too", () => {
    const { checked, wrong } = mismatches(
      program,
      files.filter(({ fileName }) => fileName === FIXTURE),
    );
    expect(checked).toBe(16);
    const place = "src/units/fixture-of-docstrings.ts Outer";
    expect(wrong).toEqual([
      { place: `${place}.name`, docstring: "The name of it.", sentence: "The name of it" },
      { place: `${place}.age`, docstring: "The age.", sentence: "The Age." },
      { place: `${place}.inner`, docstring: "The inner part.", sentence: undefined },
      { place: `${place}.form`, docstring: "The form.", sentence: "Its form." },
      { place: `${place}.size`, docstring: "The size.", sentence: undefined },
      { place: `${place}.weight`, docstring: "The weight.", sentence: undefined },
      { place: `${place}.bare`, docstring: "", sentence: "Bare." },
      {
        place: "src/units/fixture-of-docstrings.ts Inner.count",
        docstring: "How many. See Base.",
        sentence: "How few.",
      },
    ]);
  });
});
