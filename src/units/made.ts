import { shortened, shown } from "../errors.js";
import { type Check, Field } from "./check.js";
import { type FieldsOf, isObject, ObjectField } from "./fields.js";
import { anyQuantity } from "./quantity-field.js";
import type { Quantity } from "./types.js";

/** Text that may be blank. */
export class WrittenField extends Field<string> {
  read(input: unknown, check: Check): string | undefined {
    if (typeof input === "string") return input;
    return check.fault("not-a-quantity", "text-expected", "", "Enter some text, not {given}.", {
      given: shown(input),
    });
  }

  missing(check: Check): undefined {
    return check.fault("missing", "enter-text", "", "Enter some text here.");
  }
}

/** Text that may be blank. */
/* @__NO_SIDE_EFFECTS__ */
export function written(): WrittenField {
  return new WrittenField("");
}

/** A table: names that are not known beforehand, each with a value of one kind. */
export class TableField<T> extends Field<Readonly<Record<string, T>>> {
  constructor(
    readonly item: Field<T>,
    /** Names that it must have. */
    readonly needed: readonly string[],
  ) {
    super("");
  }

  read(input: unknown, check: Check): Readonly<Record<string, T>> | undefined {
    if (!isObject(input, check)) return undefined;
    const before = check.issues.length;
    // The names that it needs as well as those that it has, in one go: a name that is missing is noted in its place.
    const names = new Set([...this.needed, ...Object.keys(input)]);
    const entries = [...names].map((name): [string, T] => {
      check.path.push(shortened(name));
      const value = this.item.readOrMissing((input as Record<string, unknown>)[name], check);
      check.path.pop();
      return [name, value as T];
    });
    return check.issues.length === before ? Object.fromEntries(entries) : undefined;
  }

  missing(check: Check): undefined {
    return check.fault("missing", "part-missing", "", "This part is missing.");
  }
}

/** A table of values of one kind, by name. */
/* @__NO_SIDE_EFFECTS__ */
export function table<T>(item: Field<T>, needed: readonly string[] = []): TableField<T> {
  return new TableField(item, needed);
}

/** A number, with or without a unit: a figure that another function found. */
export class FigureField extends Field<Quantity | number> {
  private readonly quantity: Field<Quantity> = anyQuantity("");

  read(input: unknown, check: Check): Quantity | number | undefined {
    if (typeof input !== "number") return this.quantity.read(input, check);
    if (Number.isFinite(input)) return input + 0;
    return check.fault("not-finite", "finite-number", "", "Enter a number here.", { given: String(input) });
  }

  missing(check: Check): undefined {
    return this.quantity.missing(check);
  }
}

/** A number, with or without a unit. */
/* @__NO_SIDE_EFFECTS__ */
export function figure(): FigureField {
  return new FigureField("");
}

/**
 * An object that another function of the library made and that comes in again, such as a sheet. Nobody fills in its fields, so
 * they have no sentences.
 */
/* @__NO_SIDE_EFFECTS__ */
export function made<T extends object>(fields: FieldsOf<T>): ObjectField<T> {
  return new ObjectField(fields, [], "");
}
