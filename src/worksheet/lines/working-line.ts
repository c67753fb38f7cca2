import { type ObjectField, optional } from "../../units/fields.js";
import { figure, made, table, written } from "../../units/made.js";
import type { WorkingLine } from "../../units/working-line.js";

/** A line of working that comes in again, to be written out. */
export const WORKING_LINE: ObjectField<WorkingLine> = /* @__PURE__ */ (() =>
  made<WorkingLine>({
    id: written(),
    formula: written(),
    terms: table(figure()),
    result: figure(),
    source: written(),
    about: optional(written()),
    tools: optional(table(written())),
  }))();
