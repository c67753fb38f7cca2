import { SprayMathError } from "../errors.js";
import { convertValue } from "../units/convert.js";
import { ceilDecided, decided } from "../units/decide.js";
import { areaIn, checkedNumber, checkedObject, inUnit } from "../units/guard.js";
import { resolveUnit } from "../units/resolve.js";
import { unitsLike } from "../units/systems.js";
import type { AreaUnit, Quantity, TreatedArea, Volume, VolumeRate, VolumeUnit } from "../units/types.js";
import { conversionLines, type WorkingLine } from "../units/working.js";

/**
 * How much more is mixed than the plot takes: a share of the sprayed volume, a volume, or whatever brings the total up
 * to the next multiple of a convenient volume.
 */
export type Reserve =
  | {
      /** Per cent of the sprayed volume, 0 to 100. */
      readonly percent: number;
    }
  | {
      /** A volume, 0 or more. */
      readonly volume: Volume;
    }
  | {
      /** The total goes up to the next multiple of this volume. */
      readonly roundUpTo: Volume;
    };

/** What {@link carrierFor} is given. */
export interface CarrierInput {
  /** What the sprayer puts out per treated area: the calibration's result. */
  readonly rate: VolumeRate;
  /** The area that spray lands on. */
  readonly area: TreatedArea;
  /** What hoses and boom hold: mixed, and not sprayed. None unless given. */
  readonly lineVolume?: Volume;
  /** What is mixed to spare. None unless given. */
  readonly reserve?: Reserve;
}

/** How much finished spray mix a job takes. */
export interface Carrier {
  /** What lands on the treated area. */
  readonly sprayed: Volume;
  /** What is mixed to spare. */
  readonly reserve: Volume;
  /** What stays in hoses and boom. */
  readonly lines: Volume;
  /** What is mixed in all. */
  readonly total: Volume;
}

interface Terms {
  readonly rate: number;
  readonly area: number;
  readonly areaUnit: AreaUnit;
  readonly rateVolume: VolumeUnit;
  readonly unit: "gal" | "imp_gal" | "L";
  readonly lines: number;
  readonly reserve: { readonly kind: "percent" | "volume" | "roundUpTo"; readonly value: number };
}

function termsOf(input: CarrierInput): Terms {
  const { rate, area, lineVolume, reserve } = checkedObject(input, "");
  inUnit(rate, "gal/ac", "rate");
  const { over, per } = resolveUnit(rate.unit, "rate.unit");
  const unit = unitsLike(rate.unit).volume;
  return {
    rate: rate.value,
    area: areaIn(area, "treated", per as AreaUnit, "area"),
    areaUnit: per as AreaUnit,
    rateVolume: over as VolumeUnit,
    unit,
    lines: lineVolume === undefined ? 0 : inUnit(lineVolume, unit, "lineVolume", "nonnegative") + 0,
    reserve: reserve === undefined ? { kind: "volume", value: 0 } : reserveTerm(reserve, unit),
  };
}

function reserveTerm(reserve: Reserve, unit: VolumeUnit): Terms["reserve"] {
  checkedObject(reserve, "reserve");
  const kinds = (["percent", "volume", "roundUpTo"] as const).filter((name) => name in reserve);
  const [kind] = kinds;
  if (kind === undefined || kinds.length > 1) {
    throw new SprayMathError(
      kind === undefined ? "missing" : "conflict",
      "reserve",
      `Given ${kind === undefined ? "none" : kinds.join(" and ")}; wanted one of: percent, volume, roundUpTo.`,
    );
  }
  const given = reserve as { percent: number; volume: Volume; roundUpTo: Volume };
  if (kind === "percent")
    return { kind, value: checkedNumber(given.percent, "reserve.percent", { min: 0, max: 100 }) + 0 };
  const range = kind === "volume" ? "nonnegative" : "positive";
  return { kind, value: inUnit(given[kind], unit, `reserve.${kind}`, range) + 0 };
}

/**
 * How much spray mix a job takes: what lands on the plot, what hoses and boom hold, and a reserve.
 *
 * "Carrier" is the finished mix in the tank, filled to the mark; the water in it is the mix less the products.
 *
 * Formula: sprayed = rate × area; total = sprayed + lines + reserve. The reserve is a share of the sprayed volume, a
 * volume, or what brings the total to the next multiple of a convenient volume (the multiple is decided on 12
 * significant digits, so that noise adds none). Source: volume = rate × area by definition; reserve and lines are common
 * practice, no source.
 *
 * @param input - rate and area more than 0; line volume and reserve 0 or more
 * @returns volumes in gal, imp_gal or L, by the rate's system; `sprayed` within 8 ulp of the exact value
 * @throws SprayMathError `missing`, `not-a-quantity`, `not-finite`, `unknown-unit`, `wrong-dimension`, `wrong-area`,
 * `out-of-range`, or `conflict` for a reserve told in two ways
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
  const terms = termsOf(input);
  const { unit, lines } = terms;
  const sprayed = convertValue(terms.rate * terms.area, terms.rateVolume, unit);
  const { reserve, total } = Number.isFinite(sprayed)
    ? totals(sprayed, terms)
    : { reserve: 0, total: sprayed };
  if (!Number.isFinite(total) || sprayed === 0) {
    throw new SprayMathError(
      "not-finite",
      "area",
      `Given ${input.rate.value} ${input.rate.unit} on ${input.area.value} ${input.area.unit}, which is too ` +
        `${sprayed === 0 ? "small" : "large"} to compute with.`,
    );
  }
  const volume = (value: number): Quantity<VolumeUnit> => ({ value, unit });
  return { sprayed: volume(sprayed), reserve: volume(reserve), lines: volume(lines), total: volume(total) };
}

function totals(sprayed: number, { lines, reserve }: Terms): { reserve: number; total: number } {
  const needed = sprayed + lines;
  if (reserve.kind === "roundUpTo") {
    const times = needed / reserve.value;
    const total = Number.isFinite(times) ? ceilDecided(times) * reserve.value : times;
    return { total, reserve: Math.max(0, total - needed) };
  }
  const spare = reserve.kind === "percent" ? (sprayed * reserve.value) / 100 : reserve.value;
  return { total: needed + spare, reserve: spare };
}

const BY_DEFINITION = "volume = rate x area, by definition";
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
 * console.log(lines.map((line) => line.formula)); // [ 'rate * area', 'sprayed + lines + reserve' ]
 * ```
 */
export function carrierForWorking(input: CarrierInput): WorkingLine[] {
  const terms = termsOf(input);
  const { sprayed, reserve, total, lines } = carrierFor(input);
  const { areaUnit, rateVolume, unit } = terms;
  const product: Quantity = { value: terms.rate * terms.area, unit: rateVolume };
  return [
    ...conversionLines("tank-mix.sprayed.area", input.area, areaUnit),
    {
      id: "tank-mix.sprayed",
      formula: "rate * area",
      terms: { rate: input.rate, area: { value: terms.area, unit: areaUnit } },
      result: product,
      source: BY_DEFINITION,
    },
    ...conversionLines("tank-mix.carrier.sprayed", product, unit),
    ...(input.lineVolume === undefined
      ? []
      : conversionLines("tank-mix.carrier.lines", input.lineVolume, unit)),
    ...reserveLines(terms, input, sprayed, lines, reserve, total),
  ];
}

function reserveLines(
  terms: Terms,
  input: CarrierInput,
  sprayed: Volume,
  lines: Volume,
  reserve: Volume,
  total: Volume,
): WorkingLine[] {
  const { kind, value } = terms.reserve;
  if (kind === "roundUpTo") {
    const step: Quantity = { value, unit: terms.unit };
    const times = (sprayed.value + lines.value) / value;
    return [
      ...conversionLines(
        "tank-mix.carrierRounded.step",
        (input.reserve as { roundUpTo: Volume }).roundUpTo,
        terms.unit,
      ),
      {
        id: "tank-mix.carrierSteps",
        formula: "(sprayed + lines) / step",
        terms: { sprayed, lines, step },
        result: times,
        source: COMMON_PRACTICE,
      },
      {
        id: "tank-mix.carrierRounded",
        formula: "ceil(times) * step",
        terms: { times: decided(times).toNumber(), step },
        result: total,
        source: COMMON_PRACTICE,
      },
    ];
  }
  const given = input.reserve as { readonly volume?: Volume } | undefined;
  const before: WorkingLine[] =
    kind === "percent"
      ? [
          {
            id: "tank-mix.reserve",
            formula: "sprayed * percent / 100",
            terms: { sprayed, percent: value },
            result: reserve,
            source: COMMON_PRACTICE,
          },
        ]
      : given?.volume === undefined
        ? []
        : conversionLines("tank-mix.carrier.reserve", given.volume, terms.unit);
  return [
    ...before,
    {
      id: "tank-mix.carrier",
      formula: "sprayed + lines + reserve",
      terms: { sprayed, lines, reserve },
      result: total,
      source: COMMON_PRACTICE,
    },
  ];
}
