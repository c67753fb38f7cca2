/** Units of length. `100ft`, `1000ft`, `100m` and `1000m` are for rates per length of row. */
export type LengthUnit =
  | "in"
  | "ft"
  | "yd"
  | "rod"
  | "chain"
  | "mi"
  | "100ft"
  | "1000ft"
  | "mm"
  | "cm"
  | "m"
  | "100m"
  | "1000m"
  | "km";

/** Units of area. `ac` is the international acre of 43,560 square feet, `are` the metric are of 100 square meters. */
export type AreaUnit =
  | "in2"
  | "ft2"
  | "yd2"
  | "rod2"
  | "ac"
  | "100ft2"
  | "1000ft2"
  | "cm2"
  | "m2"
  | "100m2"
  | "1000m2"
  | "are"
  | "ha"
  | "km2";

/**
 * Units of volume. US customary liquid measure has no prefix; imperial measure has `imp_`; the metric
 * kitchen measures have `metric_` (5 mL, 15 mL, 250 mL) and the Australian tablespoon (20 mL) `au_`. `1000ft3` and `100m3`
 * are for spray per volume of canopy.
 */
export type VolumeUnit =
  | "tsp"
  | "tbsp"
  | "fl_oz"
  | "cup"
  | "pt"
  | "qt"
  | "gal"
  | "100gal"
  | "in3"
  | "ft3"
  | "1000ft3"
  | "ac_ft"
  | "imp_fl_oz"
  | "imp_pt"
  | "imp_qt"
  | "imp_gal"
  | "mL"
  | "L"
  | "hL"
  | "100L"
  | "m3"
  | "100m3"
  | "metric_tsp"
  | "metric_tbsp"
  | "au_tbsp"
  | "metric_cup";

/** Units of mass. `oz` is the avoirdupois ounce of weight, never the fluid ounce. */
export type MassUnit = "oz" | "lb" | "mg" | "g" | "kg";

/** Units of time. */
export type TimeUnit = "s" | "min" | "h";

/** Units of pressure. */
export type PressureUnit = "psi" | "kPa" | "bar";

/** Units of a pure number: percent, parts per million, and one. */
export type FractionUnit = "%" | "ppm" | "1";

/** What is counted one by one: plants (seedlings, vines, bushes), trees, pots, and spots (holes, mounds, stumps). Each is one. */
export type CountUnit = "plant" | "tree" | "pot" | "spot" | "1000plant";

/** Units of speed: `mph`, or a length over a time. */
export type SpeedUnit = "mph" | `${LengthUnit}/${TimeUnit}`;

/** Units of flow: a volume over a time, such as `gal/min`. */
export type FlowUnit = `${VolumeUnit}/${TimeUnit}`;

/** Units of mass flow: a mass over a time, such as `lb/min`. */
export type MassFlowUnit = `${MassUnit}/${TimeUnit}`;

/** Units of volume per area, such as `gal/ac` or `fl_oz/1000ft2`. */
export type VolumeRateUnit = `${VolumeUnit}/${AreaUnit}`;

/** Units of mass per area, such as `lb/ac`. */
export type MassRateUnit = `${MassUnit}/${AreaUnit}`;

/** Units of mass per volume, such as `lb/gal`: a density, or a weight of product in a volume of carrier. */
export type DensityUnit = `${MassUnit}/${VolumeUnit}`;

/** Units of volume of product in a volume of carrier, such as `pt/100gal`. */
export type VolumeConcentrationUnit = `${VolumeUnit}/${VolumeUnit}`;

/** Units of mass in a mass, such as `g/kg` of active ingredient. */
export type MassFractionUnit = `${MassUnit}/${MassUnit}`;

/** Units of volume per length of row, such as `mL/m`. */
export type VolumePerLengthUnit = `${VolumeUnit}/${LengthUnit}`;

/** Units of mass per length of row, such as `g/m`. */
export type MassPerLengthUnit = `${MassUnit}/${LengthUnit}`;

/** Units of volume per plant, tree, pot or spot, such as `mL/plant`. */
export type VolumePerCountUnit = `${VolumeUnit}/${CountUnit}`;

/** Units of mass per plant, tree, pot or spot, such as `g/plant`. */
export type MassPerCountUnit = `${MassUnit}/${CountUnit}`;

/** The units of each dimension. */
export interface UnitsByDimension {
  /** {@link LengthUnit} */
  length: LengthUnit;
  /** {@link AreaUnit} */
  area: AreaUnit;
  /** {@link VolumeUnit} */
  volume: VolumeUnit;
  /** {@link MassUnit} */
  mass: MassUnit;
  /** {@link TimeUnit} */
  time: TimeUnit;
  /** {@link PressureUnit} */
  pressure: PressureUnit;
  /** {@link FractionUnit} */
  fraction: FractionUnit;
  /** {@link CountUnit} */
  count: CountUnit;
  /** {@link SpeedUnit} */
  speed: SpeedUnit;
  /** {@link FlowUnit} */
  flow: FlowUnit;
  /** {@link MassFlowUnit} */
  massFlow: MassFlowUnit;
  /** {@link VolumeRateUnit} */
  volumeRate: VolumeRateUnit;
  /** {@link MassRateUnit} */
  massRate: MassRateUnit;
  /** {@link DensityUnit} */
  density: DensityUnit;
  /** {@link VolumeConcentrationUnit} */
  volumeConcentration: VolumeConcentrationUnit;
  /** {@link MassFractionUnit} */
  massFraction: MassFractionUnit;
  /** {@link VolumePerLengthUnit} */
  volumePerLength: VolumePerLengthUnit;
  /** {@link MassPerLengthUnit} */
  massPerLength: MassPerLengthUnit;
  /** {@link VolumePerCountUnit} */
  volumePerCount: VolumePerCountUnit;
  /** {@link MassPerCountUnit} */
  massPerCount: MassPerCountUnit;
}

/** The name of a dimension: what kind of thing a quantity is. */
export type Dimension = keyof UnitsByDimension;

/** Units that are not built from others. */
export type SimpleUnit =
  | LengthUnit
  | AreaUnit
  | VolumeUnit
  | MassUnit
  | TimeUnit
  | PressureUnit
  | FractionUnit
  | CountUnit
  | "mph";

/** Every unit. */
export type Unit = UnitsByDimension[Dimension];

/** The dimension that a unit belongs to. */
export type DimensionOf<U extends Unit> = {
  [D in Dimension]: U extends UnitsByDimension[D] ? D : never;
}[Dimension];

/** The units that a unit can be converted to. */
export type UnitLike<U extends Unit> = UnitsByDimension[DimensionOf<U>];

/** The systems of measure. Feet, acres, pounds and the like belong to both `us` and `imperial`. */
export type UnitSystem = "us" | "imperial" | "metric";

/**
 * A number with its unit: plain data, safe to send as JSON.
 *
 * @typeParam U - the unit, or the units that are allowed
 */
export interface Quantity<U extends Unit = Unit> {
  /** How many; always finite. */
  readonly value: number;
  /** Of what. */
  readonly unit: U;
}

/** A length. */
export type Length = Quantity<LengthUnit>;
/** An area that does not say what it is an area of, as in a plain conversion. */
export type Area = Quantity<AreaUnit>;
/** A volume. */
export type Volume = Quantity<VolumeUnit>;
/** A mass (in trade: a weight). */
export type Mass = Quantity<MassUnit>;
/** A time. */
export type Time = Quantity<TimeUnit>;
/** A pressure. */
export type Pressure = Quantity<PressureUnit>;
/** A pure number. */
export type Fraction = Quantity<FractionUnit>;
/** A speed. */
export type Speed = Quantity<SpeedUnit>;
/** A volume over a time. */
export type Flow = Quantity<FlowUnit>;
/** A mass over a time. */
export type MassFlow = Quantity<MassFlowUnit>;
/** A volume per area. */
export type VolumeRate = Quantity<VolumeRateUnit>;
/** A mass per area. */
export type MassRate = Quantity<MassRateUnit>;
/** A mass per volume. */
export type Density = Quantity<DensityUnit>;
/** An amount of product, by volume or by weight, in a volume of carrier. */
export type Concentration = Quantity<VolumeConcentrationUnit> | Quantity<DensityUnit>;
/** A mass in a mass. */
export type MassFraction = Quantity<MassFractionUnit>;
/** A volume per length of row. */
export type VolumePerLength = Quantity<VolumePerLengthUnit>;
/** A mass per length of row. */
export type MassPerLength = Quantity<MassPerLengthUnit>;
/** A number of plants, trees, pots or spots. */
export type Count = Quantity<CountUnit>;
/** A volume per plant, tree, pot or spot. */
export type VolumePerCount = Quantity<VolumePerCountUnit>;
/** A mass per plant, tree, pot or spot. */
export type MassPerCount = Quantity<MassPerCountUnit>;

/** What an area is an area of: the part that is sprayed, or the ground with everything on it. */
export type AreaKind = "treated" | "ground";

/** The area that spray really lands on. Rates per area multiply this one only. */
export interface TreatedArea extends Quantity<AreaUnit> {
  /** Marks the area as treated. */
  readonly of: "treated";
}

/** The area of the ground, sprayed or not. */
export interface GroundArea extends Quantity<AreaUnit> {
  /** Marks the area as ground. */
  readonly of: "ground";
}

/** What a percentage or a number of parts per million is a part of: by volume, by weight in a volume, or by weight. */
export type FractionBasis = "v/v" | "w/v" | "w/w";

/** A fraction that says whether it is by volume or by weight. */
export interface BasedFraction extends Quantity<FractionUnit> {
  /** `v/v` volume in volume, `w/v` weight in volume (1% is 1 kg in 100 L), `w/w` weight in weight. */
  readonly basis: FractionBasis;
}

/**
 * A quantity that was read off an instrument, with how finely it reads or how sure the reading is. Both are optional, and
 * only one of them may be given.
 *
 * @typeParam Q - the quantity: a `Length`, a `Volume` and so on
 */
export type Measured<Q extends Quantity> = Q & {
  /** The smallest step the instrument shows, such as the 1 s of a watch or the 10 mL between two marks of a jug. More than 0. */
  readonly resolution?: Quantity<Q["unit"]> | undefined;
  /** The standard uncertainty of the reading: one standard deviation. 0 or more; 0 says that it is exact. */
  readonly uncertainty?: Quantity<Q["unit"]> | undefined;
};

/** What a bare number may be a number of, where it is no count. */
export type NumberUnit = "hours" | "days" | "percent" | "degrees";
