import { convertValue, inUnit } from "../../units/convert.js";
import { object } from "../../units/fields.js";
import { formulaLines } from "../../units/formula-lines.js";
import { quantity } from "../../units/quantity-field.js";
import type { Length, VolumePerLength } from "../../units/types.js";
import { EQUAL_ROWS, type EqualRows } from "./rows.js";
import { each, numbers, type Sizes } from "./sizes.js";
import { type AnyTopic, topic } from "./topic.js";

interface Furrows extends EqualRows {
  /** The label rate, per length of row. More than 0. */
  readonly rate: VolumePerLength;
}

const allRows = ({ rows, rowLength }: Furrows): Length => ({
  ...rowLength,
  value: rows * rowLength.value,
});

const rateUnit = ({ smallVolume, row }: Sizes): VolumePerLength["unit"] =>
  `${smallVolume}/${row}` as VolumePerLength["unit"];

function productFor(given: Furrows, sizes: Sizes): number {
  return inUnit(given.rate, rateUnit(sizes)) * inUnit(allRows(given), sizes.row);
}

/** The product for rows that are drenched or banded at a rate per length of row. */
export const ROW_LENGTH: AnyTopic = /* @__PURE__ */ topic<Furrows>({
  difficulty: 2,
  isDose: true,
  fields: object<Furrows>({
    ...EQUAL_ROWS,
    rate: quantity("The label rate, per length of row. More than 0.", "volumePerLength"),
  }),
  figures: (sizes) => ({
    rows: numbers(6, 30, 1),
    rowLength: each(sizes.length, sizes.system === "metric" ? numbers(30, 120, 10) : numbers(100, 400, 25)),
    rate: each(rateUnit(sizes), sizes.system === "metric" ? numbers(5, 60, 5) : numbers(0.5, 6, 0.25)),
  }),
  // Otherwise the amount for one length of the label's is the answer.
  fits: (given, { row }) => Math.abs(inUnit(allRows(given), row) - 1) > 0.1,
  unit: ({ smallVolume }) => smallVolume,
  answer: productFor,
  working: (given, sizes) => [
    {
      id: "practice.allRows",
      formula: "rows * rowLength",
      terms: { rows: given.rows, rowLength: given.rowLength },
      result: allRows(given),
      source: "by definition of the rate",
    },
    ...formulaLines({
      id: "practice.productOnRows",
      formula: "rate * rowLength",
      terms: { rate: [given.rate, rateUnit(sizes)], rowLength: [allRows(given), sizes.row] },
      result: { value: productFor(given, sizes), unit: sizes.smallVolume },
      source: "by definition of the rate",
    }),
  ],
  mistakes: (given, { row, length, perVolume }) => ({
    "one-row-only": { times: 1 / given.rows },
    "row-size-left-out": { times: convertValue(1, row, length) },
    "unscaled-row": { times: 1 / inUnit(allRows(given), row) },
    "row-ten-times": { times: 10 },
    "divided-by-rows": { times: 1 / inUnit(allRows(given), row) ** 2 },
    "volume-unit-left": { times: 1 / perVolume },
  }),
});
