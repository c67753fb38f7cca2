import { type Check, checked } from "../units/check.js";
import { inUnit } from "../units/convert.js";
import { ceilDecided, decided } from "../units/decide.js";
import {
  about,
  byGiven,
  type EitherField,
  either,
  type Limits,
  named,
  number,
  type ObjectField,
  object,
  optional,
  type Partly,
} from "../units/fields.js";
import { formulaLines } from "../units/formula-lines.js";
import { type QuantityField, quantity, smallVolume, treatedArea } from "../units/quantity-field.js";
import { resolveUnit } from "../units/resolve.js";
import { positive } from "../units/result.js";
import { unitsLike } from "../units/systems.js";
import type { AreaUnit, Quantity, TreatedArea, Volume, VolumeRate, VolumeUnit } from "../units/types.js";
import { conversionLines, type WorkingLine } from "../units/working-line.js";

/** Extra mix, beyond what the job needs: percent of the sprayed volume, a volume, or up to the next multiple of a volume. */
export type Reserve =
  | {
      /** Percent of the sprayed volume, 0 to 100. */
      readonly percent: number;
      /** The most extra mix that the easiest split may make, in percent: from `percent` to 100. No limit unless given. */
      readonly upTo?: number | undefined;
    }
  | {
      /** A volume, 0 or more. */
      readonly volume: Volume;
    }
  | {
      /** The total goes up to the next multiple of this volume. */
      readonly roundUpTo: Volume;
    };

type PercentReserve = Extract<Reserve, { readonly percent: number }>;

function rangeFits({ percent, upTo }: Partly<PercentReserve>, check: Check): void {
  if (percent === undefined || upTo === undefined || upTo >= percent) return;
  check.fault("conflict", "reserve-range", "upTo", "The most can't be less than {given}%.", {
    given: percent,
  });
}

const PERCENT: Limits = { unit: "percent", min: 0, max: 100 };

const RESERVE_KIND = byGiven([["percent"], ["volume"], ["roundUpTo"]]);

/** Extra mix, beyond what the job needs. */
export const RESERVE: EitherField<Reserve> = named(
  "Reserve",
  either<Reserve>(
    "Extra mix, beyond what the job needs: percent of the sprayed volume, a volume, or up to the next multiple of a volume.",
    [
      object<PercentReserve>(
        {
          percent: number("Percent of the sprayed volume, 0 to 100.", PERCENT),
          upTo: optional(
            number(
              "The most extra mix that the easiest split may make, in percent: from `percent` to 100. No limit unless given.",
              PERCENT,
            ),
          ),
        },
        [rangeFits],
      ),
      object({ volume: quantity("A volume, 0 or more.", "volume", "nonnegative") }),
      object({ roundUpTo: quantity("The total goes up to the next multiple of this volume.", "volume") }),
    ],
    (input, check) =>
      typeof input === "object" && !Array.isArray(input)
        ? RESERVE_KIND(input, check)
        : check.fault(
            "not-a-quantity",
            "reserve-kind",
            "",
            "Percent or volume? Enter the extra mix as an object, such as {example}.",
            {
              example: "{ percent: 5 }",
            },
          ),
  ),
);

/** The input of {@link carrierFor}. */
export interface CarrierInput {
  /** What the sprayer puts out per treated area: the calibration's result. More than 0. */
  readonly rate: VolumeRate;
  /** The area that spray lands on. More than 0. */
  readonly area: TreatedArea;
  /** What hoses and boom hold: mixed, and not sprayed. None unless given. */
  readonly lineVolume?: Volume | undefined;
  /** Extra mix, beyond what the job needs. None unless given. */
  readonly reserve?: Reserve | undefined;
}

/** What hoses and boom hold. */
export const LINE_VOLUME: QuantityField<Volume> = smallVolume(
  quantity("What hoses and boom hold: mixed, and not sprayed. None unless given.", "volume", "nonnegative"),
);

const CARRIER: ObjectField<CarrierInput> = object<CarrierInput>({
  rate: quantity(
    "What the sprayer puts out per treated area: the calibration's result. More than 0.",
    "volumeRate",
  ),
  area: treatedArea("The area that spray lands on. More than 0."),
  lineVolume: optional(LINE_VOLUME),
  reserve: optional(about("Extra mix, beyond what the job needs. None unless given.", RESERVE)),
});

/** How much finished spray mix a job takes. */
export interface Carrier {
  /** What lands on the treated area. */
  readonly sprayed: Volume;
  /** Extra mix, beyond what the job needs. */
  readonly reserve: Volume;
  /** What stays in hoses and boom. */
  readonly lines: Volume;
  /** What is mixed in all. */
  readonly total: Volume;
}

/** What is mixed besides what is sprayed. */
export type Spare = Pick<CarrierInput, "lineVolume" | "reserve">;

/** What is sprayed, with the steps on the way to it. */
interface SprayedSteps {
  /** The area in the unit that the rate is per. */
  readonly area: Quantity;
  /** Rate times area, in the rate's own volume. */
  readonly product: Quantity;
  readonly sprayed: Volume;
}

function sprayedSteps({ rate, area }: CarrierInput, at: string): SprayedSteps {
  const { over, per } = resolveUnit(rate.unit);
  const unit = unitsLike(rate.unit).volume;
  const size = { value: inUnit(area, per as AreaUnit), unit: per as AreaUnit };
  const product = { value: rate.value * size.value, unit: over as VolumeUnit };
  return { area: size, product, sprayed: { value: positive(inUnit(product, unit), at), unit } };
}

/** A job's mix, with how many times the convenient volume is needed where the total is rounded up. */
interface TotalSteps {
  readonly times?: number | undefined;
  readonly carrier: Carrier;
}

function totalSteps(sprayed: Volume, { lineVolume, reserve }: Spare, at: string): TotalSteps {
  const { unit } = sprayed;
  const lines = lineVolume === undefined ? 0 : inUnit(lineVolume, unit);
  const needed = sprayed.value + lines;
  const inVolume = (value: number): Volume => ({ value, unit });
  const steps = (spare: number, total: number): TotalSteps => ({
    carrier: {
      sprayed,
      reserve: inVolume(spare),
      lines: inVolume(lines),
      total: inVolume(positive(total, at)),
    },
  });
  if (reserve === undefined) return steps(0, needed);
  if ("roundUpTo" in reserve) {
    const step = inUnit(reserve.roundUpTo, unit);
    const times = needed / step;
    const total = ceilDecided(times) * step;
    return { ...steps(Math.max(0, total - needed), total), times };
  }
  const spare = "percent" in reserve ? (sprayed.value * reserve.percent) / 100 : inUnit(reserve.volume, unit);
  return steps(spare, needed + spare);
}

/** How much mix a job takes whose sprayed volume is known, in that volume's unit; `at` is its place. Trusts its input. */
export function carrierOfVolume(sprayed: Volume, spare: Spare, at: string): Carrier {
  return totalSteps(sprayed, spare, at).carrier;
}

/** A job's mix where it goes up to what its loads come to: what is more is reserve. */
export function carrierUpTo({ sprayed, lines, reserve }: Carrier, total: Volume): Carrier {
  const needed = sprayed.value + lines.value + reserve.value;
  const more = Math.max(0, total.value - needed);
  return { sprayed, lines, reserve: { ...reserve, value: reserve.value + more }, total };
}

/** How much mix a job takes; `at` is the place of the area. Trusts its input. */
export function carrierOf(input: CarrierInput, at = "area"): Carrier {
  return carrierOfVolume(sprayedSteps(input, at).sprayed, input, at);
}

/**
 * Returns how much spray mix a job takes: what lands on the plot, what hoses and boom hold, and a reserve.
 *
 * "Carrier" is the finished mix in the tank, filled to the mark; the water in it is the mix less the products.
 *
 * Formula: sprayed = rate × area; total = sprayed + lines + reserve. The reserve is a share of the sprayed volume, a
 * volume, or what brings the total to the next multiple of a convenient volume (the multiple is decided on 12
 * significant digits, so that noise adds none). Source: volume = rate × area by definition; reserve and lines are common
 * practice, no source.
 *
 * @param input - rate and area more than 0; line volume and reserve 0 or more
 * @returns volumes in gal, `imp_gal` or L, by the rate's system; `sprayed` within 8 ulp of the exact value
 * @throws SprayMathError `missing`, `not-a-quantity`, `not-finite`, `unknown-unit`, `unknown-field`, `wrong-dimension`,
 * `wrong-area`, `out-of-range`, or `conflict` for a reserve given in two ways
 *
 * @example
 * ```ts
 * import { carrierFor } from "swath-to-spoon/tank-mix";
 * import { qty } from "swath-to-spoon/units";
 *
 * const carrier = carrierFor({
 *   rate: qty(20, "gal/ac"),
 *   area: { value: 0.5, unit: "ac", of: "treated" },
 *   reserve: { percent: 5 },
 * });
 * console.log(carrier.total); // { value: 10.5, unit: 'gal' }
 * ```
 */
export function carrierFor(input: CarrierInput): Carrier {
  return carrierOf(checked(input, CARRIER));
}

const COMMON_PRACTICE = "common practice, no source";

/**
 * The working of {@link carrierFor}.
 *
 * @param input - as for {@link carrierFor}
 * @returns the lines, in order, ending with the result
 * @throws SprayMathError what {@link carrierFor} throws
 *
 * @example
 * ```ts
 * import { qty } from "swath-to-spoon/units";
 * import { carrierFor } from "swath-to-spoon/working";
 *
 * const area = { value: 2, unit: "ac", of: "treated" } as const;
 * const lines = carrierFor({ rate: qty(20, "gal/ac"), area });
 * console.log(lines.map((line) => line.formula)); // [ 'rate * area', 'sprayed' ]
 * ```
 */
export function carrierForWorking(input: CarrierInput): WorkingLine[] {
  return linesOfCarrier(checked(input, CARRIER));
}

/** The working of {@link carrierOf}. Trusts its input. */
export function linesOfCarrier(job: CarrierInput): WorkingLine[] {
  const { area, product, sprayed } = sprayedSteps(job, "area");
  return [
    ...conversionLines("tank-mix.sprayed.area", job.area, area.unit),
    {
      id: "tank-mix.sprayed",
      formula: "rate * area",
      terms: { rate: job.rate, area },
      result: product,
      source: "volume = rate × area, by definition",
    },
    ...conversionLines("tank-mix.carrier.sprayed", product, sprayed.unit),
    ...linesOfTotal(sprayed, job),
  ];
}

/** The working of {@link carrierOfVolume}. Trusts its input. */
export function linesOfTotal(sprayed: Volume, spare: Spare): WorkingLine[] {
  const { unit } = sprayed;
  const { lineVolume, reserve } = spare;
  return [
    ...(lineVolume === undefined ? [] : conversionLines("tank-mix.carrier.lines", lineVolume, unit)),
    ...reserveLines(reserve, totalSteps(sprayed, spare, "")),
  ];
}

function reserveLines(given: Reserve | undefined, { carrier, times = 0 }: TotalSteps): WorkingLine[] {
  const { sprayed, lines, reserve, total } = carrier;
  const source = COMMON_PRACTICE;
  if (given !== undefined && "roundUpTo" in given) {
    const step = given.roundUpTo;
    return [
      ...formulaLines({
        id: "tank-mix.carrierSteps",
        formula: lines.value === 0 ? "sprayed / step" : "(sprayed + lines) / step",
        terms: {
          sprayed: [sprayed, total.unit],
          ...(lines.value !== 0 && { lines: [lines, total.unit] as const }),
          step: [step, total.unit],
        },
        result: times,
        source,
      }),
      {
        id: "tank-mix.carrierRounded",
        formula: "ceil(times) * step",
        terms: {
          times: decided(times).toNumber(),
          step: { value: inUnit(step, total.unit), unit: total.unit },
        },
        result: total,
        source,
      },
    ];
  }
  const before: WorkingLine[] = [];
  if (given !== undefined && "percent" in given)
    before.push({
      id: "tank-mix.reserve",
      formula: "sprayed * percent / 100",
      terms: { sprayed, percent: given.percent },
      result: reserve,
      source,
    });
  else if (given !== undefined)
    before.push(...conversionLines("tank-mix.carrier.reserve", given.volume, total.unit));
  // What is 0 is left out.
  const terms = {
    sprayed,
    ...(lines.value !== 0 && { lines }),
    ...(reserve.value !== 0 && { reserve }),
  };
  return [
    ...before,
    {
      id: "tank-mix.carrier",
      formula: Object.keys(terms).join(" + "),
      terms,
      result: total,
      source,
    },
  ];
}
