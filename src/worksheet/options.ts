import { choice, count, flag, type ObjectField, object, optional } from "../units/fields.js";
import { locale } from "../units/locale-field.js";
import type { UnitSystem } from "../units/types.js";
import type { Messages } from "./words/messages.js";
import { MESSAGES } from "./words/messages-field.js";

/** Whose numbers and whose words a sheet is written in. */
export interface WritingOptions {
  /** Whose numbers are printed, as a language tag; `en-US` unless given. */
  readonly locale?: string | undefined;
  /** Every word of the sheet; English unless given. */
  readonly words?: Messages | undefined;
  /** The significant digits of the working, 3 to 12; 6 unless given. */
  readonly digits?: number | undefined;
}

/** How a worksheet is written. */
export interface WorksheetOptions extends WritingOptions {
  /** The system of units that everything is printed in; the units of the plan unless given. Tools keep their own. */
  readonly units?: UnitSystem | undefined;
  /** Whether a worksheet's working ends with how far each dose is off, in two figures. Not unless given. */
  readonly measuringErrors?: boolean | undefined;
}

/** The fields of {@link WritingOptions}. */
export const WRITING_OPTIONS: ObjectField<WritingOptions> = object({
  locale: optional(locale("Whose numbers are printed, as a language tag; `en-US` unless given.")),
  words: optional(MESSAGES),
  digits: optional(count("The significant digits of the working, 3 to 12; 6 unless given.", 3, 12)),
});

/** The fields of {@link WorksheetOptions}. */
export const WORKSHEET_OPTIONS: ObjectField<WorksheetOptions> = object<WorksheetOptions>({
  ...WRITING_OPTIONS.fields,
  units: optional(
    choice(
      "The system of units that everything is printed in; the units of the plan unless given. Tools keep their own.",
      ["us", "metric", "imperial"],
    ),
  ),
  measuringErrors: optional(
    flag(
      "Whether a worksheet's working ends with how far each dose is off, in two figures. Not unless given.",
    ),
  ),
});
