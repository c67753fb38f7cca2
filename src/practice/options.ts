import { choice, flag, type ObjectField, object, optional } from "../units/fields.js";
import type { UnitSystem } from "../units/types.js";
import { WRITING_OPTIONS, type WritingOptions } from "../worksheet/options.js";
import { PRACTICE_MESSAGES, type PracticeMessages } from "./words.js";

/** How a practice problem is made and written. */
export interface PracticeOptions extends WritingOptions {
  /** Every word of the problems; English unless given. */
  readonly messages?: PracticeMessages | undefined;
  /** The system of units that it is set in; `us` unless given. */
  readonly units?: UnitSystem | undefined;
}

/** How a practice sheet is written. */
export interface PracticeSheetOptions extends WritingOptions {
  /** Every word of the problems; English unless given. */
  readonly messages?: PracticeMessages | undefined;
  /** Whether answers, working and common wrong answers are on it, as a teacher needs it; not unless given. */
  readonly answers?: boolean | undefined;
}

/** The fields of {@link PracticeOptions}. */
export const PRACTICE_OPTIONS: ObjectField<PracticeOptions> = object<PracticeOptions>({
  ...WRITING_OPTIONS.fields,
  messages: optional(PRACTICE_MESSAGES),
  units: optional(
    choice("The system of units that it is set in; `us` unless given.", ["us", "metric", "imperial"]),
  ),
});

/** The fields of {@link PracticeSheetOptions}. */
export const PRACTICE_SHEET_OPTIONS: ObjectField<PracticeSheetOptions> = object<PracticeSheetOptions>({
  ...WRITING_OPTIONS.fields,
  messages: optional(PRACTICE_MESSAGES),
  answers: optional(
    flag(
      "Whether answers, working and common wrong answers are on it, as a teacher needs it; not unless given.",
    ),
  ),
});
