import {
  groundOfRectangle,
  groundOfTrapezoid,
  groundOfTriangle,
  linesOfRectangle,
  linesOfTrapezoid,
  linesOfTriangle,
} from "../../area/shapes.js";
import { inUnit } from "../../units/convert.js";
import { object } from "../../units/fields.js";
import { quantity } from "../../units/quantity-field.js";
import type { Length, Quantity } from "../../units/types.js";
import { conversionLines, type WorkingLine } from "../../units/working-line.js";
import { drawnRectangle, drawnTrapezoid, drawnTriangle } from "./drawing.js";
import { landMistakes } from "./routes.js";
import { each, type Sizes } from "./sizes.js";
import { type AnyTopic, type Routes, type Topic, topic } from "./topic.js";

/** What the topics of plots have in common: an area in the unit of land. */
function plotTopic<G extends object>(
  shape: Pick<Topic<G>, "fields" | "figures" | "fits" | "drawing"> & {
    readonly ground: (given: G) => Quantity;
    readonly lines: (given: G) => readonly WorkingLine[];
    /** Wrong areas, in square feet or meters. */
    readonly mistakes: (
      side: (name: keyof G) => number,
    ) => Readonly<Record<string, number | readonly number[]>>;
  },
): AnyTopic {
  const answer = (given: G, { landArea }: Sizes): number => inUnit(shape.ground(given), landArea);
  return topic<G>({
    ...shape,
    difficulty: 1,
    unit: ({ landArea }) => landArea,
    answer,
    working: (given, { landArea }) => {
      const lines = shape.lines(given);
      const { value, unit } = shape.ground(given);
      return [...lines, ...conversionLines(lines.at(-1)?.id ?? "", { value, unit }, landArea)];
    },
    mistakes: (given, sizes) => {
      const side = (name: keyof G): number => inUnit(given[name] as Quantity, sizes.length);
      const wrong = shape.mistakes(side);
      const { "land-unit-left": left, ...others } = landMistakes(sizes);
      return {
        // The unit is forgotten more often than the shape is taken for another.
        "land-unit-left": left,
        ...(Object.fromEntries(
          Object.entries(wrong).map(([code, areas]) => [
            code,
            [areas].flat().map((area) => ({ instead: area / sizes.perLand })),
          ]),
        ) as Routes<G>),
        ...others,
        "fraction-inverted": { isInverse: true },
      };
    },
  });
}

interface Rectangle {
  /** How long the plot is. More than 0. */
  readonly length: Length;
  /** How wide the plot is. More than 0. */
  readonly width: Length;
}

/** A plot with four right angles. */
export const RECTANGLE_AREA: AnyTopic = /* @__PURE__ */ plotTopic<Rectangle>({
  fields: object<Rectangle>({
    length: quantity("How long the plot is. More than 0.", "length"),
    width: quantity("How wide the plot is. More than 0.", "length"),
  }),
  figures: ({ sides, length }) => ({ length: each(length, sides), width: each(length, sides) }),
  fits: ({ length, width }) => length.value > width.value,
  drawing: ({ length, width }) => drawnRectangle(length, width),
  ground: groundOfRectangle,
  lines: linesOfRectangle,
  mistakes: (side) => ({
    "sides-added": side("length") + side("width"),
    "perimeter-taken": 2 * (side("length") + side("width")),
    halved: (side("length") * side("width")) / 2,
  }),
});

interface Triangle {
  /** One side of the plot. More than 0. */
  readonly base: Length;
  /** How far the opposite corner is from that side. More than 0. */
  readonly height: Length;
}

/** A plot with three corners. */
export const TRIANGLE_AREA: AnyTopic = /* @__PURE__ */ plotTopic<Triangle>({
  fields: object<Triangle>({
    base: quantity("One side of the plot. More than 0.", "length"),
    height: quantity("How far the opposite corner is from that side. More than 0.", "length"),
  }),
  figures: ({ sides, length }) => ({ base: each(length, sides), height: each(length, sides) }),
  drawing: ({ base, height }) => drawnTriangle(base, height),
  ground: groundOfTriangle,
  lines: linesOfTriangle,
  mistakes: (side) => ({
    "not-halved": side("base") * side("height"),
    "halved-twice": (side("base") * side("height")) / 4,
    "base-and-height-added": [(side("base") + side("height")) / 2, side("base") + side("height")],
  }),
});

interface Trapezoid {
  /** The longer of the two parallel sides. More than 0. */
  readonly base: Length;
  /** The shorter of the two parallel sides. More than 0. */
  readonly top: Length;
  /** How far apart the two parallel sides are. More than 0. */
  readonly height: Length;
}

/** A plot with two parallel sides. */
export const TRAPEZOID_AREA: AnyTopic = /* @__PURE__ */ plotTopic<Trapezoid>({
  fields: object<Trapezoid>({
    base: quantity("The longer of the two parallel sides. More than 0.", "length"),
    top: quantity("The shorter of the two parallel sides. More than 0.", "length"),
    height: quantity("How far apart the two parallel sides are. More than 0.", "length"),
  }),
  figures: ({ sides, length }) => ({
    base: each(length, sides),
    top: each(length, sides),
    height: each(length, sides),
  }),
  fits: ({ base, top }) => base.value > top.value,
  drawing: ({ base, top, height }) => drawnTrapezoid(base, top, height),
  ground: groundOfTrapezoid,
  lines: linesOfTrapezoid,
  mistakes: (side) => ({
    "mean-not-taken": (side("base") + side("top")) * side("height"),
    "long-side-only": side("base") * side("height"),
    "short-side-only": side("top") * side("height"),
    "all-multiplied": side("base") * side("top") * side("height"),
  }),
});
