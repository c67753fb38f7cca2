import {
  convert,
  dimensionOf,
  formatQuantity,
  parseQuantity,
  type Quantity,
  qty,
  type Unit,
  type UnitSystem,
  valueIn,
} from "swath-to-spoon/units";
import { locale, writing } from "./words.ts";

/** The content of a field. */
export interface Entry {
  /** What was typed or chosen, or what the switch of units wrote. */
  readonly text: string;
  /** The unit chosen beside it; `1` for a field without units. */
  readonly unit: Unit;
  /** What was typed before the units were switched: the exact amount, and the text to restore. */
  readonly typed?: { readonly text: string; readonly quantity: Quantity };
}

/** A unit as it is written beside a number. A percentage chosen from the list is by volume, or of a dry product by weight. */
export function sign(unit: Unit, dry = false): string {
  if (unit === "%") return dry ? "% w/v" : "% v/v";
  return formatQuantity(qty(2, unit), { locale }).slice(1).trim();
}

/** A unit in a list: what is counted has a name in each language, the rest are symbols. */
export function unitName(unit: Unit, dry: boolean): string {
  const { units = {} } = writing().words ?? {};
  return sign(unit, dry).replace(/(plant|tree|pot|spot)(s?)$/, (word, one, several) => {
    const names = units[one];
    return typeof names === "object" ? ((several ? names.other : names.one) ?? word) : word;
  });
}

/** A quantity in another unit of its dimension. */
export function inUnit(quantity: Quantity, unit: Unit): Quantity {
  return convert(quantity, unit as never) as Quantity;
}

/** So many times a quantity. */
export function times<Q extends Quantity | undefined>(quantity: Q, n: number): Q {
  return quantity && { ...quantity, value: quantity.value * n };
}

/** An amount as it is printed. */
export function shown(quantity: Quantity): string {
  return formatQuantity(quantity, { locale, digits: 4 });
}

/** A number for a field: short, and as exact as a tape or a jug is. */
export function shortNumber(value: number): string {
  return new Intl.NumberFormat(locale, { maximumSignificantDigits: 6, useGrouping: false }).format(value);
}

// A trailing decimal sign is not an error: the next key is on its way.
export function numberText(text: string): string {
  return text.trim().replace(/(\d)[.,]$/, "$1");
}

/** What a person wrote, with the chosen unit after it unless they wrote one themselves. */
export function written({ text, unit }: Entry, dry = false): string {
  // A percent sign says no more than the list beside it.
  const number = unit === "%" ? numberText(text).replace(/\s*%$/, "") : numberText(text);
  return /[\p{L}%'"′″]/u.test(number) ? number : `${number} ${sign(unit, dry)}`;
}

/** The quantity in a field, if it can be read. */
export function quantityIn(entry: Entry, system: UnitSystem): Quantity | undefined {
  if (entry.typed) return inUnit(entry.typed.quantity, entry.unit);
  try {
    return parseQuantity(written(entry), { locale, system });
  } catch {
    return undefined;
  }
}

/** The entry with a unit that was typed moved to the list of units, so the two always agree. */
export function withTypedUnit(entry: Entry, system: UnitSystem, units: readonly Unit[]): Entry {
  if (entry.typed || !/\p{L}|%/u.test(entry.text)) return entry;
  const quantity = quantityIn(entry, system);
  // A percentage keeps its basis only as text. The library asks for one that is missing.
  if (quantity === undefined || (quantity.unit === "%" && !("basis" in quantity))) return entry;
  const { value, unit } = quantity;
  // A wrong kind of amount stays as it was typed: its error quotes it. So does a percentage of another kind than the list's.
  if (nearestUnit(unit, units) === undefined || (unit === "%" && !entry.text.includes("v/v"))) return entry;
  return { text: shortNumber(value), unit };
}

/** The unit of a list that is nearest in size to a unit; nothing where none measures the same. */
export function nearestUnit(unit: Unit, units: readonly Unit[]): Unit | undefined {
  if (units.includes(unit)) return unit;
  const distance = (other: Unit): number => Math.abs(Math.log(valueIn(qty(1, unit), other as never)));
  return units
    .filter((other) => dimensionOf(other) === dimensionOf(unit))
    .sort((a, b) => distance(a) - distance(b))[0];
}

/** The same amount in the units of another system. Text that can't be read stays as it is. */
export function switched(entry: Entry, from: UnitSystem, units: readonly Unit[]): Entry {
  const text = entry.typed?.text ?? entry.text;
  const quantity = entry.typed?.quantity ?? quantityIn(entry, from);
  const home = quantity?.unit ?? entry.unit;
  const unit = nearestUnit(home, units);
  if (home === "1" || unit === undefined) return entry;
  // Back in its first system: the text as it was typed.
  if (quantity === undefined || text.trim() === "" || unit === home) return { text, unit };
  return { text: shortNumber(inUnit(quantity, unit).value), unit, typed: { text, quantity } };
}
