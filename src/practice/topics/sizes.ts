import { convertValue } from "../../units/convert.js";
import { type SystemUnits, unitsIn } from "../../units/systems.js";
import type {
  AreaUnit,
  LengthUnit,
  Quantity,
  Unit,
  UnitSystem,
  VolumeRateUnit,
  VolumeUnit,
} from "../../units/types.js";

/** Amounts in one unit. */
export function each<U extends Unit>(unit: U, values: readonly number[]): readonly Quantity<U>[] {
  return values.map((value) => ({ value, unit }));
}

/** Amounts from `min` to `max`, in steps of `by`. */
export function steps<U extends Unit>(unit: U, min: number, max: number, by: number): readonly Quantity<U>[] {
  return each(unit, numbers(min, max, by));
}

/** Numbers from `min` to `max`, in steps of `by`. */
export function numbers(min: number, max: number, by: number): readonly number[] {
  const count = Math.round((max - min) / by) + 1;
  // A tenth is no binary fraction.
  return Array.from({ length: count }, (_, i) => Number((min + i * by).toPrecision(12)));
}

/**
 * The units of a system, and the sizes that small farms and their sprayers have in it: common practice, no source. Lengths
 * of rows and strips in feet are multiples of 5.5, the third part of a rod. An acre is 43,560 square feet, and with 121 in
 * it only such lengths come to round parts of an acre.
 */
export interface Sizes extends SystemUnits {
  readonly system: UnitSystem;
  /** The unit that a band or a nozzle spacing is measured in. */
  readonly width: "in" | "cm";
  /** The unit that a label gives a liquid in. */
  readonly label: VolumeUnit;
  /** How many of the smaller unit are one of the larger one. */
  readonly perVolume: number;
  readonly perLabel: number;
  readonly perLand: number;
  readonly perLength: number;
  readonly perMass: number;
  /** The area that lawn labels go by. */
  readonly lawn: AreaUnit;
  /** The length of row that labels go by. */
  readonly row: LengthUnit;
  /** The canopy that spray is given for. */
  readonly canopy: "1000ft3" | "100m3";
  /** The other system's unit of land. */
  readonly otherLand: AreaUnit;
  readonly rate: VolumeRateUnit;
  readonly product: VolumeRateUnit;
  /** The number of small units of volume that weigh as many small units of mass, over the density. */
  readonly weighed: number;
  /** What a liquid weighs that is as heavy as water. */
  readonly water: number;
  readonly sides: readonly number[];
  readonly strips: readonly number[];
  readonly rowLengths: readonly number[];
  readonly bands: readonly number[];
  readonly swaths: readonly number[];
  readonly spacings: readonly number[];
  readonly nozzles: readonly number[];
  readonly speeds: readonly number[];
  /** Walking pace. */
  readonly walking: number;
  readonly rates: readonly number[];
  /** Of product per unit of land, in the unit of the label. */
  readonly products: readonly number[];
  readonly densities: readonly number[];
  readonly fields: readonly number[];
  readonly tanks: readonly number[];
  readonly largeTanks: readonly number[];
  readonly batches: readonly number[];
  /** What a sprayer uses on a strip, or a nozzle gives in a catch. */
  readonly used: readonly number[];
}

type Own = Omit<
  Sizes,
  | keyof SystemUnits
  | "system"
  | "perVolume"
  | "perLabel"
  | "perLand"
  | "perLength"
  | "perMass"
  | "rate"
  | "product"
>;

const FOOT_POUND = {
  width: "in",
  lawn: "1000ft2",
  row: "1000ft",
  canopy: "1000ft3",
  otherLand: "ha",
  sides: numbers(66, 440, 11),
  strips: [121, 181.5, 242, 302.5, 363],
  rowLengths: numbers(99, 363, 16.5),
  bands: [18, 24, 30, 36],
  swaths: [18, 20, 24, 30, 36, 40, 48, 60, 72],
  spacings: [4, 5, 6, 8, 10, 12],
  nozzles: [15, 18, 20, 22, 30, 36],
  speeds: [2.2, 2.5, 2.75, 3, 3.3, 3.5, 4, 4.4],
  walking: 3,
  rates: [10, 12, 12.5, 15, 16, 18, 20, 22.5, 24, 25, 27.5, 30, 32, 35, 36, 40, 45, 48, 50, 60],
  products: numbers(0.5, 4, 0.25),
  fields: numbers(1, 5, 0.5),
  batches: numbers(1, 10, 0.5),
  used: numbers(8, 240, 1),
} as const;

const OWN: Readonly<Record<UnitSystem, Own>> = {
  us: {
    ...FOOT_POUND,
    label: "pt",
    // 128 fluid ounces to the gallon, 16 ounces to the pound.
    weighed: 8,
    // Pounds to the gallon at 20 °C, as the trade rounds it: common practice, no source.
    water: 8.34,
    densities: numbers(8.8, 10.4, 0.1),
    tanks: [3, 4, 15, 25],
    largeTanks: [15, 25, 50, 60],
  },
  imperial: {
    ...FOOT_POUND,
    label: "imp_pt",
    weighed: 10,
    water: 10,
    densities: numbers(10.5, 12.5, 0.5),
    tanks: [2.5, 3.5, 12, 20],
    largeTanks: [12, 20, 40, 50],
  },
  metric: {
    width: "cm",
    label: "L",
    lawn: "100m2",
    row: "100m",
    canopy: "100m3",
    otherLand: "ac",
    weighed: 1,
    water: 1,
    sides: numbers(20, 120, 5),
    strips: numbers(40, 120, 10),
    rowLengths: numbers(30, 120, 10),
    bands: numbers(40, 100, 10),
    swaths: numbers(50, 200, 25),
    spacings: [1.2, 1.5, 2, 2.5, 3],
    nozzles: [40, 50, 60, 75, 100],
    speeds: numbers(3, 6, 0.6),
    walking: 5,
    rates: numbers(120, 600, 20),
    products: numbers(0.5, 4, 0.25),
    densities: numbers(1.05, 1.25, 0.05),
    fields: numbers(0.4, 2, 0.2),
    tanks: [12, 15, 50, 100],
    largeTanks: [50, 100, 200, 300],
    batches: numbers(2, 20, 1),
    used: numbers(200, 8000, 20),
  },
};

/** The sizes of a system. */
export function sizesIn(system: UnitSystem): Sizes {
  const units = unitsIn(system);
  const own = OWN[system];
  return {
    ...units,
    ...own,
    system,
    perVolume: convertValue(1, units.volume, units.smallVolume),
    perLabel: convertValue(1, own.label, units.smallVolume),
    perLand: convertValue(1, units.landArea, units.area),
    perLength: convertValue(1, units.length, own.width),
    perMass: convertValue(1, units.mass, units.smallMass),
    rate: `${units.volume}/${units.landArea}`,
    product: `${own.label}/${units.landArea}`,
  };
}
