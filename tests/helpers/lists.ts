import type { Check } from "../../src/units/check.ts";
import {
  byGiven,
  choice,
  count,
  either,
  flag,
  kinds,
  list,
  named,
  number,
  type ObjectField,
  object,
  optional,
  TextField,
  text,
  tuple,
} from "../../src/units/fields.ts";
import type {
  Area,
  BasedFraction,
  Density,
  GroundArea,
  Length,
  LengthUnit,
  Mass,
  Measured,
  Speed,
  TreatedArea,
  Volume,
  VolumeRate,
} from "../../src/units/index.ts";
import {
  basedOr,
  groundArea,
  measured,
  quantity,
  treatedArea,
  unitOf,
} from "../../src/units/quantity-field.ts";

/** A thing that has a field of every kind there is, for whatever is made from field lists. */
export interface Thing {
  readonly name: string;
  readonly day?: string;
  readonly rows: number;
  readonly share?: number;
  readonly sides?: 1 | 2;
  readonly color: "red" | "green";
  readonly wet?: boolean;
  readonly width: Length;
  readonly lines?: Volume;
  readonly offset?: Length;
  readonly reading?: Length;
  readonly used?: Measured<Volume | Mass>;
  readonly spot?: Area;
  readonly treated?: TreatedArea;
  readonly marked?: Measured<TreatedArea>;
  readonly ground?: GroundArea;
  readonly strength?: BasedFraction | VolumeRate | Density;
  readonly content?: BasedFraction;
  readonly speed?: Speed | Length;
  readonly unit?: LengthUnit;
  readonly corners?: readonly (readonly [number, number])[];
  readonly names?: readonly string[];
  readonly shape: Shape | readonly Shape[];
  readonly tools?: "spoons" | "cups" | readonly Tool[];
  readonly spare?: { readonly percent: number } | { readonly volume: Volume };
}

export type Shape =
  | { readonly kind: "circle"; readonly diameter: Length }
  | { readonly kind: "block"; readonly length: Length; readonly width: Length }
  | ({ readonly kind: "triangle" } & (
      | { readonly base: Length; readonly height: Length }
      | { readonly sides: readonly Length[] }
    ));

type ShapeOf<K extends Shape["kind"]> = Extract<Shape, { readonly kind: K }>;

export interface Tool {
  readonly name: string;
  readonly capacity: Volume;
}

const size = quantity("A size. More than 0.", "length");

const SHAPE = named(
  "Shape",
  kinds<Shape>("A shape on the ground.", {
    circle: object<ShapeOf<"circle">>({ kind: choice("A circle.", ["circle"]), diameter: size }),
    block: object<ShapeOf<"block">>({
      kind: choice("A block.", ["block"]),
      length: size,
      width: quantity("The side that meets it. More than 0.", "length"),
    }),
    triangle: either<ShapeOf<"triangle">>(
      "By its base and height, or by its sides.",
      [
        object<Extract<ShapeOf<"triangle">, { readonly base: Length }>>({
          kind: choice("A triangle.", ["triangle"]),
          base: size,
          height: size,
        }),
        object<Extract<ShapeOf<"triangle">, { readonly sides: readonly Length[] }>>({
          kind: choice("A triangle.", ["triangle"]),
          sides: list("The three sides.", size, { least: 3, most: 3 }),
        }),
      ],
      byGiven([["base", "height"], ["sides"]], 0),
    ),
  }),
);

const TOOL: ObjectField<Tool> = named(
  "Tool",
  object<Tool>(
    { name: text("What it is called."), capacity: quantity("What it holds.", "volume") },
    [],
    "A tool.",
  ),
);

const isDay = (given: string, check: Check): boolean => {
  if (/^\d{4}-\d{2}-\d{2}$/.test(given) && !Number.isNaN(Date.parse(given))) return true;
  check.fault("unreadable", "enter-date", "", "Enter a date.");
  return false;
};

export const THING: ObjectField<Thing> = named(
  "Thing",
  object<Thing>(
    {
      name: text("What it is called."),
      day: optional(new TextField("The day.", { name: "date", example: "2025-04-12", check: isDay })),
      rows: count("How many rows. A whole number, 1 or more."),
      share: optional(number("How much of it. More than 0, at most 1.", { above: 0, max: 1 })),
      sides: optional(choice("How many sides: 1 or 2.", [1, 2])),
      color: choice("Its color.", ["red", "green"]),
      wet: optional(flag("Whether it is wet.")),
      width: quantity("How wide. More than 0.", "length"),
      lines: optional(quantity("What the lines hold. 0 or more.", "volume", "nonnegative")),
      offset: optional(quantity("How far off, either way.", "length", "any")),
      reading: optional(quantity("A reading of any size.", "length", "finite")),
      used: optional(measured("What was used. More than 0.", ["volume", "mass"])),
      spot: optional(quantity("The area of one spot. More than 0.", "area")),
      treated: optional(treatedArea("What is treated. More than 0.", { unmarked: true })),
      marked: optional(treatedArea("What was treated. More than 0.", { measured: true })),
      ground: optional(groundArea("The ground. More than 0.", { unmarked: true })),
      strength: optional(basedOr("How strong. More than 0.", ["volumeRate", "density"])),
      content: optional(basedOr("What is in it. More than 0.", [], ["w/w"])),
      speed: optional(quantity("How fast, or how far. More than 0.", ["speed", "length"])),
      unit: optional(unitOf("The unit of the corners.", "length")),
      corners: optional(
        list(
          "The corners.",
          tuple<readonly [number, number]>("", "pair", [number("How far out."), number("How far along.")]),
          { least: 3, most: 5 },
        ),
      ),
      names: optional(list("Other names.", text("A name."), { least: 0 })),
      shape: either<Thing["shape"]>(
        "Its shape, or its shapes.",
        [list("Several shapes.", SHAPE), SHAPE],
        (input) => (Array.isArray(input) ? 0 : 1),
      ),
      tools: optional(
        either<NonNullable<Thing["tools"]>>(
          "The tools: the name of a set, or a list.",
          [list("The tools.", TOOL), choice("The name of a set.", ["spoons", "cups"])],
          (input) => (Array.isArray(input) ? 0 : 1),
        ),
      ),
      spare: optional(
        either<NonNullable<Thing["spare"]>>(
          "Extra mix, beyond what the job needs.",
          [
            object<{ readonly percent: number }>({ percent: number("Percent.", { min: 0, max: 100 }) }),
            object<{ readonly volume: Volume }>({ volume: quantity("A volume. More than 0.", "volume") }),
          ],
          byGiven([["percent"], ["volume"]]),
        ),
      ),
    },
    [
      ({ name, color }, check) => {
        if (name === "Rose" && color === "green")
          check.fault("conflict", "made-up-rose", "color", "There is no green rose.");
      },
    ],
    "A thing with a field of every kind.",
  ),
);

/** A right thing, with all it may have. */
export const FULL = {
  name: "Plot A",
  day: "2026-05-01",
  rows: 14,
  share: 0.5,
  sides: 2,
  color: "red",
  wet: false,
  width: { value: 30, unit: "in" },
  lines: { value: 0, unit: "fl_oz" },
  offset: { value: -3, unit: "ft" },
  reading: { value: -1e80, unit: "ft" },
  used: { value: 34, unit: "fl_oz", resolution: { value: 1, unit: "fl_oz" } },
  spot: { value: 2, unit: "m2" },
  treated: { value: 0.5, unit: "ac", of: "treated" },
  marked: { value: 0.5, unit: "ac", of: "treated" },
  ground: { value: 1, unit: "ac", of: "ground" },
  strength: { value: 1, unit: "%", basis: "v/v" },
  content: { value: 50, unit: "%", basis: "w/w" },
  speed: { value: 3, unit: "mph" },
  unit: "ft",
  corners: [
    [0, 0],
    [30, 0],
    [30, 20],
  ],
  names: ["Lot 1"],
  shape: [
    { kind: "circle", diameter: { value: 5, unit: "ft" } },
    { kind: "triangle", base: { value: 5, unit: "ft" }, height: { value: 2, unit: "ft" } },
  ],
  tools: [{ name: "jug", capacity: { value: 1, unit: "L" } }],
  spare: { percent: 5 },
} as const satisfies Thing;
