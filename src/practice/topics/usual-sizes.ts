import type {
  AreaUnit,
  DensityUnit,
  LengthUnit,
  SpeedUnit,
  UnitSystem,
  VolumeRateUnit,
  VolumeUnit,
} from "../../units/types.js";

/** From, to, and in steps of. */
type Range = readonly [min: number, max: number, step: number];

/**
 * The units of a system, and the sizes that small farms and their sprayers have in it: common practice, no source. All
 * are round, so that a problem reads like one of the field.
 */
export interface UsualSizes {
  readonly length: LengthUnit;
  readonly width: LengthUnit;
  readonly area: AreaUnit;
  readonly land: AreaUnit;
  /** A divisor that is taken by mistake to come from `area` to `land`. */
  readonly wrongLand: number;
  readonly small: VolumeUnit;
  readonly volume: VolumeUnit;
  readonly rate: VolumeRateUnit;
  readonly product: VolumeRateUnit;
  readonly speed: SpeedUnit;
  readonly density: DensityUnit;
  /** Amounts by volume over the same number by weight, for a liquid of density one in `density`. */
  readonly weighed: number;
  readonly spoon: { readonly unit: VolumeUnit; readonly value: number; readonly shownIn: VolumeUnit };
  readonly sides: Range;
  readonly strip: Range;
  readonly rows: Range;
  readonly bands: Range;
  readonly spacings: readonly [number, ...number[]];
  readonly nozzles: readonly [number, ...number[]];
  readonly speeds: Range;
  readonly rates: Range;
  readonly products: Range;
  readonly densities: Range;
  readonly doses: Range;
  readonly fields: Range;
  readonly tanks: readonly [number, ...number[]];
  readonly largeTanks: readonly [number, ...number[]];
  readonly batches: Range;
}

const FOOT_POUND = {
  length: "ft",
  width: "in",
  area: "ft2",
  land: "ac",
  // Square yards to the acre.
  wrongLand: 4840,
  speed: "mph",
  sides: [60, 400, 10],
  strip: [200, 400, 20],
  rows: [100, 400, 20],
  bands: [18, 36, 6],
  spacings: [4, 5, 6, 8, 10],
  nozzles: [15, 20, 30, 40],
  speeds: [2, 4, 0.5],
  rates: [15, 60, 5],
  products: [0.5, 4, 0.25],
  fields: [1, 5, 0.5],
  batches: [1, 10, 0.5],
} as const;

/** What is usual in each system. */
export const USUAL_SIZES: Readonly<Record<UnitSystem, UsualSizes>> = {
  us: {
    ...FOOT_POUND,
    small: "fl_oz",
    volume: "gal",
    rate: "gal/ac",
    product: "pt/ac",
    density: "lb/gal",
    // 128 fluid ounces to the gallon, 16 ounces to the pound.
    weighed: 8,
    spoon: { unit: "tsp", value: 1, shownIn: "tsp" },
    densities: [8.8, 10.4, 0.1],
    doses: [0.6, 4, 0.1],
    tanks: [3, 4, 15, 25],
    largeTanks: [15, 25, 50, 60],
  },
  imperial: {
    ...FOOT_POUND,
    small: "imp_fl_oz",
    volume: "imp_gal",
    rate: "imp_gal/ac",
    product: "imp_pt/ac",
    density: "lb/imp_gal",
    // 160 imperial fluid ounces to the gallon, 16 ounces to the pound.
    weighed: 10,
    spoon: { unit: "metric_tsp", value: 5, shownIn: "mL" },
    densities: [10.5, 12.5, 0.5],
    doses: [0.5, 5, 0.1],
    tanks: [2.5, 3.5, 12, 20],
    largeTanks: [12, 20, 40, 50],
  },
  metric: {
    length: "m",
    width: "cm",
    area: "m2",
    land: "ha",
    wrongLand: 1000,
    small: "mL",
    volume: "L",
    rate: "L/ha",
    product: "L/ha",
    speed: "km/h",
    density: "kg/L",
    weighed: 1,
    spoon: { unit: "metric_tsp", value: 5, shownIn: "mL" },
    sides: [20, 120, 5],
    strip: [60, 120, 10],
    rows: [30, 120, 10],
    bands: [40, 100, 10],
    spacings: [1.2, 1.5, 2, 2.5, 3],
    nozzles: [40, 50, 75, 100],
    speeds: [3, 6, 0.5],
    rates: [150, 600, 50],
    products: [0.5, 4, 0.25],
    densities: [1.05, 1.25, 0.05],
    doses: [12, 90, 1],
    fields: [0.4, 2, 0.2],
    tanks: [12, 15, 50, 100],
    largeTanks: [50, 100, 200, 300],
    batches: [2, 20, 1],
  },
};
