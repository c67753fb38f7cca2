import type { Figures } from "../../errors.js";
import type { ObjectField } from "../../units/fields.js";
import type { BasedFraction, Quantity, Unit } from "../../units/types.js";
import type { WorkingLine } from "../../units/working-line.js";
import type { DrawingBlock, DrawingPoint } from "../../worksheet/render/sheets.js";
import type { MistakeCode } from "../mistakes.js";
import type { Draw } from "../random.js";
import type { Sizes } from "./sizes.js";

/** One figure that a problem gives. */
export type GivenFigure = Quantity | BasedFraction | number | readonly (Quantity | string)[];

/** What a problem gives, by name. */
export type Given = Readonly<Record<string, GivenFigure>>;

/** What a problem gives, with each amount changed; counts and products stay. */
export function everyAmount(given: Given, change: (quantity: Quantity, name: string) => Quantity): Given {
  const changed = (figure: GivenFigure, name: string): GivenFigure => {
    if (typeof figure === "number") return figure;
    return Array.isArray(figure)
      ? figure.map((one: Quantity | string) => (typeof one === "string" ? one : change(one, name)))
      : change(figure as Quantity, name);
  };
  return Object.fromEntries(Object.entries(given).map(([name, figure]) => [name, changed(figure, name)]));
}

/** Whether two problems give the same. */
export function sameFigures(a: Given, b: Given): boolean {
  return JSON.stringify(a) === JSON.stringify(b);
}

/** An answer: a quantity, a number, or letters in their order. */
export type PracticeAnswer = Quantity | number | string;

/**
 * A wrong way to an answer: the right way with something else put in, with something else come out, or both. Two of them go
 * together unless they change the same.
 */
export interface Route<G> {
  /** What is put in instead. */
  readonly given?: Partial<G> | undefined;
  /** How many times the answer comes out. */
  readonly times?: number | undefined;
  /** Whether the answer comes out upside down: 1 divided by it, with what other mistakes make of it. */
  readonly isInverse?: boolean | undefined;
  /** What comes out whatever is put in, where no formula leads there. */
  readonly instead?: number | string | undefined;
}

/** The wrong ways to an answer, the likelier ones first; some mistakes lead to several answers. */
export type Routes<G> = { readonly [Code in MistakeCode]?: Route<G> | readonly Route<G>[] | undefined };

/** From easy to hard: a short formula; a longer one, or two short ones; several steps that build on each other. */
export type Difficulty = 1 | 2 | 3;

/** Four ways to put a problem, in different scenes. Each figure has a place by its name, `{unit}` is the answer's unit. */
export type Wordings = readonly [string, string, string, string];

/** A drawing to scale, whose labels are lengths as given. */
export type Drawing = Pick<DrawingBlock, "width" | "height" | "areas"> & {
  readonly labels: readonly { readonly at: DrawingPoint; readonly length: Quantity }[];
};

/** A topic: its figures, its formula, and how it goes wrong. The wordings of each language are in its table of words. */
export interface Topic<G extends object> {
  readonly difficulty: Difficulty;
  /** What it gives. */
  readonly fields: ObjectField<G>;
  /** The figures that each of them is drawn from. */
  readonly figures: (sizes: Sizes) => { readonly [K in keyof G]-?: readonly NonNullable<G[K]>[] };
  /**
   * For figures that rarely come to a round answer: the answer is drawn, and this figure follows from it. The answer
   * goes with it, or goes down as it goes up (`inverse`).
   */
  readonly backwards?:
    | {
        readonly follows: keyof G;
        readonly inverse?: boolean | undefined;
        readonly answers: (sizes: Sizes) => readonly number[];
      }
    | undefined;
  /** Figures that a problem gives although the answer does not need them. */
  readonly notNeeded?: readonly (keyof G & string)[] | undefined;
  /** Whether such figures make a fair problem; they do unless given. */
  readonly fits?: ((given: G, sizes: Sizes) => boolean) | undefined;
  /** The unit of the answer; none for a number and for letters. */
  readonly unit?: ((sizes: Sizes) => Unit) | undefined;
  /** What one of the things holds that the answer counts, where that has a size. */
  readonly counted?: ((given: G) => Quantity) | undefined;
  /** The right answer, in its unit. */
  readonly answer: (given: G, sizes: Sizes) => number | string;
  /** The way to it. */
  readonly working: (given: G, sizes: Sizes) => readonly WorkingLine[];
  readonly mistakes: (given: G, sizes: Sizes, answer: number) => Routes<G>;
  /** The figures of the note to the answer, for a topic whose words have one. */
  readonly noteFigures?: ((given: G) => Figures) | undefined;
  /** The plot or the strip, to scale. */
  readonly drawing?: ((given: G) => Drawing | undefined) | undefined;
  /** Whether figures in other units would be another problem: where a catch is read as a rate. */
  readonly isReading?: boolean | undefined;
  /** Whether a minus before the answer is right too: where something is so much less than it should be. */
  readonly mayHaveMinus?: ((given: G) => boolean) | undefined;
  /** Whether the answer is an amount of product, which is never rounded up. */
  readonly isDose?: boolean | undefined;
}

/** A topic whose figures are known by name alone. */
export type AnyTopic = Topic<Given>;

/** A topic, for the table of topics. */
export function topic<G extends object>(one: Topic<G>): AnyTopic {
  return one as unknown as AnyTopic;
}

// As decisions are made on: the noise of the arithmetic is beyond them, so an answer of 12.5 is no 12.500000000000002.
const DIGITS = 12;

/** An answer with its unit. */
export function inAnswerUnit({ unit }: AnyTopic, answer: number | string, sizes: Sizes): PracticeAnswer {
  if (typeof answer === "string") return answer;
  const value = Number(answer.toPrecision(DIGITS));
  return unit === undefined ? value : { value, unit: unit(sizes) };
}

/** Draws figures of a topic, again and again; none where they do not come to a fair problem. */
export function figuresDrawer(one: AnyTopic, sizes: Sizes): (draw: Draw) => Given | undefined {
  const lists = one.figures(sizes);
  const { backwards, fits = () => true } = one;
  const answers = backwards?.answers(sizes) ?? [];
  return (draw) => {
    const drawn: Record<string, GivenFigure> = {};
    for (const [name, list] of Object.entries(lists)) drawn[name] = draw.pick(list);
    if (backwards !== undefined) {
      const { follows, inverse = false } = backwards;
      const times = draw.pick(answers) / (one.answer(drawn, sizes) as number);
      const value = (drawn[follows] as Quantity).value * (inverse ? 1 / times : times);
      const found = lists[follows]?.find((figure) => isNear((figure as Quantity).value, value));
      if (found === undefined) return undefined;
      drawn[follows] = found;
    }
    return fits(drawn, sizes) && ends(one.answer(drawn, sizes)) ? drawn : undefined;
  };
}

/** Whether an answer ends after three figures. */
function ends(answer: number | string): boolean {
  return typeof answer === "string" || isNear(answer, Number(answer.toPrecision(3)));
}

function isNear(a: number, b: number): boolean {
  return Math.abs(a - b) <= 1e-9 * Math.abs(b);
}
