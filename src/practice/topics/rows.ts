import { areasOfBands, linesOfBands } from "../../area/row-bands.js";
import { inUnit } from "../../units/convert.js";
import { count, type FieldsOf } from "../../units/fields.js";
import { quantity } from "../../units/quantity-field.js";
import type { Length, Quantity } from "../../units/types.js";
import type { WorkingLine } from "../../units/working-line.js";
import { readAs } from "./routes.js";
import { each, numbers, type Sizes } from "./sizes.js";
import type { Route, Topic } from "./topic.js";

/** Rows of one length. */
export interface EqualRows {
  /** How many rows there are. A whole number, 1 or more. */
  readonly rows: number;
  /** How long each row is. More than 0. */
  readonly rowLength: Length;
}

/** The fields of {@link EqualRows}. */
export const EQUAL_ROWS: FieldsOf<EqualRows> = {
  rows: count("How many rows there are. A whole number, 1 or more."),
  rowLength: quantity("How long each row is. More than 0.", "length"),
};

/** Bands sprayed along rows. */
export interface Rows extends EqualRows {
  /** The width that is sprayed on each row. More than 0. */
  readonly bandWidth: Length;
  /** From one row to the next. More than 0. */
  readonly rowSpacing: Length;
}

/** The fields of {@link Rows}. */
export const ROWS: FieldsOf<Rows> = {
  ...EQUAL_ROWS,
  bandWidth: quantity("The width that is sprayed on each row. More than 0.", "length"),
  rowSpacing: quantity("From one row to the next. More than 0.", "length"),
};

/** The figures that rows are drawn from. */
export function rowFigures({
  rowLengths,
  length,
  bands,
  width,
  spacings,
}: Sizes): ReturnType<Topic<Rows>["figures"]> {
  return {
    rows: numbers(6, 30, 1),
    rowLength: each(length, rowLengths),
    bandWidth: each(width, bands),
    rowSpacing: each(length, spacings),
  };
}

/** Whether the bands leave ground between them, as bands do. */
export function leavesGround({ bandWidth, rowSpacing }: Rows): boolean {
  return inUnit(bandWidth, rowSpacing.unit) <= 0.7 * rowSpacing.value;
}

/** The sprayed area. The spacing says nothing of it. */
export function sprayedArea({ rows, rowLength, bandWidth }: Rows): Quantity {
  const { value, unit } = areasOfBands({ rows, rowLength, bandWidth }).treated;
  return { value, unit };
}

/** The sprayed area in the unit of land. */
export function sprayedIn({ landArea }: Sizes, rows: Rows): number {
  return inUnit(sprayedArea(rows), landArea);
}

/** The working of the sprayed area. */
export function linesOfSprayed({ rows, rowLength, bandWidth }: Rows): WorkingLine[] {
  return linesOfBands({ rows, rowLength, bandWidth });
}

/** Mistakes with rows. */
export function rowMistakes(
  { rows, bandWidth, rowSpacing }: Rows,
  { length }: Sizes,
): Record<
  "ground-for-treated" | "one-row-too-few" | "one-row-only" | "length-and-spacing" | "width-in-small-unit",
  Route<Rows>
> {
  return {
    "ground-for-treated": { given: { bandWidth: rowSpacing } },
    "one-row-too-few": rows > 1 ? { given: { rows: rows - 1 } } : {},
    "one-row-only": { given: { rows: 1 } },
    "width-in-small-unit": { given: { bandWidth: readAs(bandWidth, length) } },
    "length-and-spacing": { given: { rowLength: rowSpacing } },
  };
}
