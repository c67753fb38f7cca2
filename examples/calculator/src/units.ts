import {
  convert,
  formatQuantity,
  parseQuantity,
  type Quantity,
  qty,
  type Unit,
  type UnitSystem,
} from "swath-to-spoon/units";

/** What a field holds. It decides which units the field offers. */
export type Kind =
  | "long"
  | "short"
  | "area"
  | "refill"
  | "tank"
  | "lines"
  | "liquid-rate"
  | "dry-rate"
  | "water-rate";

// One row per unit, in the three systems. Switching systems moves along the row.
type Row = readonly [us: Unit, imperial: Unit, metric: Unit];
const COLUMN: Record<UnitSystem, 0 | 1 | 2> = { us: 0, imperial: 1, metric: 2 };

const FEET: Row = ["ft", "ft", "m"];
const YARDS: Row = ["yd", "yd", "m"];
const INCHES: Row = ["in", "in", "cm"];
const OUNCES: Row = ["fl_oz", "imp_fl_oz", "mL"];
const GALLONS: Row = ["gal", "imp_gal", "L"];

const ROWS: Record<Kind, readonly Row[]> = {
  long: [FEET, YARDS],
  short: [INCHES, ["ft", "ft", "m"]],
  area: [
    ["ac", "ac", "ha"],
    ["ft2", "ft2", "m2"],
  ],
  refill: [OUNCES, ["qt", "imp_pt", "L"], GALLONS],
  tank: [GALLONS],
  lines: [OUNCES, GALLONS],
  "liquid-rate": [
    ["fl_oz/ac", "imp_fl_oz/ac", "mL/ha"],
    ["pt/ac", "imp_pt/ac", "L/ha"],
    ["qt/ac", "imp_pt/ac", "L/ha"],
    ["fl_oz/1000ft2", "imp_fl_oz/1000ft2", "mL/m2"],
    ["fl_oz/gal", "imp_fl_oz/imp_gal", "mL/L"],
    ["pt/100gal", "imp_fl_oz/imp_gal", "mL/100L"],
    ["%", "%", "%"],
  ],
  "dry-rate": [
    ["oz/ac", "oz/ac", "g/ha"],
    ["lb/ac", "lb/ac", "kg/ha"],
    ["oz/1000ft2", "oz/1000ft2", "g/m2"],
    ["oz/gal", "oz/imp_gal", "g/L"],
    ["lb/100gal", "lb/imp_gal", "g/100L"],
  ],
  "water-rate": [["gal/ac", "imp_gal/ac", "L/ha"]],
};

/** How the person writes numbers, and which gallons they use. */
export interface Writing {
  readonly locale: string;
  readonly system: UnitSystem;
}

/** The units that a field offers. */
export function unitsFor(kind: Kind, system: UnitSystem): Unit[] {
  return [...new Set(ROWS[kind].map((row) => row[COLUMN[system]]))];
}

/** The unit of another system in the place of this one. */
export function counterpart(kind: Kind, unit: Unit, from: UnitSystem, to: UnitSystem): Unit {
  const row = ROWS[kind].find((units) => units[COLUMN[from]] === unit) ?? ROWS[kind][0];
  return (row as Row)[COLUMN[to]];
}

/** A unit as it is written beside a number. A percentage chosen from the list is by volume. */
export function sign(unit: Unit, locale: string): string {
  if (unit === "%") return "% v/v";
  return formatQuantity(qty(2, unit), { locale }).slice(1).trim();
}

/** A quantity in another unit of its dimension. */
export function inUnit(quantity: Quantity, unit: Unit): Quantity {
  return convert(quantity, unit as never) as Quantity;
}

/** A number for a field: short, and as exact as a tape or a jug is. */
export function shortNumber(value: number, locale: string): string {
  return new Intl.NumberFormat(locale, { maximumSignificantDigits: 6, useGrouping: false }).format(value);
}

/** The content of a field that has a unit. */
export interface Entry {
  /** What was typed, or what the switch of units wrote. */
  readonly text: string;
  /** The unit chosen beside it. */
  readonly unit: Unit;
  /** What was typed before the units were switched: the exact amount, and the text to restore. */
  readonly typed?: { readonly text: string; readonly quantity: Quantity };
}

/** What a person wrote. A trailing decimal sign is not an error: the next key is on its way. */
export function numberText(text: string): string {
  return text.trim().replace(/(\d)[.,]$/, "$1");
}

/** What a person wrote, with the chosen unit after it unless they wrote one themselves. */
export function written({ text, unit }: Entry, locale: string): string {
  const number = numberText(text);
  return /[\p{L}%'"′″]/u.test(number) ? number : `${number} ${sign(unit, locale)}`;
}

/** The quantity in a field, if it can be read. */
export function quantityIn(entry: Entry, { locale, system }: Writing): Quantity | undefined {
  if (entry.typed) return inUnit(entry.typed.quantity, entry.unit);
  try {
    return parseQuantity(written(entry, locale), { locale, system });
  } catch {
    return undefined;
  }
}

/** The same amount in the units of another system. Text that can't be read stays as it is. */
export function switched(entry: Entry, kind: Kind, to: UnitSystem, from: Writing): Entry {
  const quantity = entry.typed?.quantity ?? quantityIn(entry, from);
  const unit = counterpart(kind, entry.unit, from.system, to);
  const text = entry.typed?.text ?? entry.text;
  // Percentages are the same in every system.
  if (quantity === undefined || quantity.unit === "%") return { text, unit };
  // Back in its first system: the text as it was typed.
  if (unitsFor(kind, to).includes(quantity.unit)) return { text, unit: quantity.unit };
  try {
    const { value } = inUnit(quantity, unit);
    return { text: shortNumber(value, from.locale), unit, typed: { text, quantity } };
  } catch {
    // The wrong kind of amount for this field. Its error says so in either system.
    return { text, unit };
  }
}
