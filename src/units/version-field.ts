import { shown } from "../errors.js";
import type { Check } from "./check.js";
import { ChoiceField } from "./fields.js";

/** The version of a layout that data were saved in; of the kind that this library reads. */
export class VersionField<V extends number> extends ChoiceField<V> {
  override read(input: unknown, check: Check): V | undefined {
    const known = this.chosen(input, check);
    if (known !== undefined) return known;
    return check.fault(
      "unknown-choice",
      "version-unknown",
      "",
      "Version {given} can't be read here. A later version of this library wrote it: update, or enter it again.",
      { given: shown(input), choices: this.choices.map(String) },
    );
  }
}

/** The version of a layout. */
/* @__NO_SIDE_EFFECTS__ */
export function version<const V extends number>(sentence: string, known: V): VersionField<V> {
  return new VersionField(sentence, [known]);
}
