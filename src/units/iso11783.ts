import { checked } from "./check.js";
import { inUnit } from "./convert.js";
import { ceilDecided, decided, floorDecided } from "./decide.js";
import { dimensionOf } from "./dimensions.js";
import { choice, count, type ObjectField, object } from "./fields.js";
import { refusal } from "./message.js";
import { quantity } from "./quantity-field.js";
import type { MassRate, VolumeRate } from "./types.js";

/** What a rate on the bus is: asked for, measured, what holds where nothing is sent, or a limit of the machine. */
export type Iso11783Purpose = "setpoint" | "actual" | "default" | "minimum" | "maximum";

/** A process data value as it goes over the bus and into task files. */
export interface Iso11783Value {
  /** The data dictionary identifier (DDI). A task file writes it as four hexadecimal digits. */
  readonly ddi: number;
  /** The whole number that is sent. */
  readonly value: number;
}

/** A rate, as a process data value holds it. */
export interface Iso11783Rate<R extends VolumeRate | MassRate = VolumeRate | MassRate> {
  /** The rate: L/ha by volume, kg/ha by weight. */
  readonly rate: R;
  /** What the rate is. */
  readonly purpose: Iso11783Purpose;
}

/** What {@link toIso11783} gives: what to send, and the rate that a machine reads from it. */
export interface SentRate extends Iso11783Value {
  /** The rate that the number stands for, in L/ha or kg/ha: the rate given, rounded to what can be sent. */
  readonly rate: VolumeRate | MassRate;
}

// In the order of their identifiers.
const PURPOSES: readonly Iso11783Purpose[] = ["setpoint", "actual", "default", "minimum", "maximum"];

/** How a rate per area is sent: from DDI `first` on, one for each purpose, in steps of which `steps` make one `unit`. */
interface Scale {
  readonly first: number;
  readonly unit: "L/ha" | "kg/ha";
  readonly steps: number;
}

// 1 L/ha is 100 mm³/m² and sent in hundredths of one; 1 kg/ha is 100 mg/m².
const BY_VOLUME: Scale = { first: 1, unit: "L/ha", steps: 10_000 };
const BY_MASS: Scale = { first: 6, unit: "kg/ha", steps: 100 };

// The range of these entries in the data base: what 31 bits hold.
const MOST = 2_147_483_647;

const RATE: ObjectField<Iso11783Rate> = object<Iso11783Rate>({
  rate: quantity("The rate: L/ha by volume, kg/ha by weight.", ["volumeRate", "massRate"], "nonnegative"),
  purpose: choice("What the rate is.", PURPOSES),
});

const VALUE: ObjectField<Iso11783Value> = object<Iso11783Value>({
  ddi: choice(
    "The data dictionary identifier (DDI). A task file writes it as four hexadecimal digits.",
    [1, 2, 3, 4, 5, 6, 7, 8, 9, 10],
  ),
  value: count("The whole number that is sent.", 0, MOST),
});

/**
 * Returns a rate per area as the process data value that a task controller or a task file takes (ISO 11783-10, ISO 11783-11).
 *
 * Volume per area has DDI 1 (setpoint), 2 (actual), 3 (default), 4 (minimum) and 5 (maximum) in steps of 0.01 mm³/m², which is
 * 0.0001 L/ha. Mass per area has DDI 6 to 10 in the same order, in steps of 1 mg/m², which is 10 g/ha. That is too coarse for
 * many dry products, so look at the `rate` that comes back. Values go from 0 to 2³¹ − 1.
 *
 * Rounding: a setpoint, default or maximum goes down, so that it is never over the rate given; a minimum goes up; an actual
 * rate goes to the nearest. It is decided on 12 significant digits, so noise moves nothing. A rate that would become 0 is refused.
 *
 * Source: ISO 11783-11 online data base (isobus.net), entries 1 to 10, as in its snapshot `2024020502`.
 *
 * @param input - the rate, 0 or more, and what it is
 * @returns the identifier, the whole number, and the rate that it stands for
 * @throws SprayMathError `out-of-range` for a rate below 0, too small to be sent, or too large for 31 bits; `wrong-dimension`,
 * `unknown-choice`, `missing`, `not-a-quantity`, `not-finite` or `unknown-unit`
 *
 * @example
 * ```ts
 * import { qty, toIso11783 } from "swath-to-spoon/units";
 *
 * console.log(toIso11783({ rate: qty(200, "L/ha"), purpose: "setpoint" })); // { ddi: 1, value: 2000000, rate: { value: 200, unit: 'L/ha' } }
 * console.log(toIso11783({ rate: qty(24, "g/ha"), purpose: "setpoint" }).rate); // { value: 0.02, unit: 'kg/ha' }
 * ```
 */
export function toIso11783(input: Iso11783Rate): SentRate {
  const { rate, purpose } = checked(input, RATE);
  const scale = dimensionOf(rate.unit) === "volumeRate" ? BY_VOLUME : BY_MASS;
  const { first, unit, steps } = scale;
  const exact = inUnit(rate, unit) * steps;
  const limit = { value: (exact > MOST ? MOST : 1) / steps, unit };
  const figures = { given: rate, limit };
  if (exact > MOST)
    throw refusal(
      "out-of-range",
      "bus-rate-large",
      "rate",
      "{given} is too large to send. The most is {limit}.",
      figures,
    );
  const value = rounded(exact, purpose);
  if (value === 0 && rate.value > 0)
    throw refusal(
      "out-of-range",
      "bus-rate-small",
      "rate",
      "{given} is too small to send. The least is {limit}.",
      figures,
    );
  const sent = { ddi: first + PURPOSES.indexOf(purpose), value };
  return { ...sent, rate: rateOf(value, scale) };
}

function rateOf(value: number, { steps, unit }: Scale): VolumeRate | MassRate {
  return { value: value / steps, unit } as VolumeRate | MassRate;
}

function rounded(exact: number, purpose: Iso11783Purpose): number {
  if (purpose === "actual") return Math.round(decided(exact).toNumber());
  return purpose === "minimum" ? ceilDecided(exact) : floorDecided(exact);
}

/**
 * Returns the rate that a process data value stands for: the reverse of {@link toIso11783}.
 *
 * Formula: volume rate = value × 0.01 mm³/m² (DDI 1 to 5), mass rate = value × 1 mg/m² (DDI 6 to 10). Source: ISO 11783-11
 * online data base (isobus.net), entries 1 to 10, as in its snapshot `2024020502`.
 *
 * @param input - the identifier, and the whole number
 * @returns the rate in L/ha or kg/ha, and what it is
 * @throws SprayMathError `unknown-choice` for an identifier other than 1 to 10, `out-of-range` for a number that is not whole
 * or not within 0 to 2,147,483,647, `missing`, `not-a-quantity` or `not-finite`
 *
 * @example
 * ```ts
 * import { fromIso11783 } from "swath-to-spoon/units";
 *
 * console.log(fromIso11783({ ddi: 2, value: 1_873_500 })); // { rate: { value: 187.35, unit: 'L/ha' }, purpose: 'actual' }
 * ```
 */
export function fromIso11783(input: Iso11783Value): Iso11783Rate {
  const { ddi, value } = checked(input, VALUE);
  const scale = ddi >= BY_MASS.first ? BY_MASS : BY_VOLUME;
  const purpose = PURPOSES[ddi - scale.first] as Iso11783Purpose;
  return { rate: rateOf(value, scale), purpose };
}
