// Checked by the compiler only (npx tsc -p tests): a line marked as an error must be one, everything else must compile.
import {
  type Area,
  type BasedFraction,
  convert,
  describeUnit,
  type Fraction,
  formatQuantity,
  type GroundArea,
  type Length,
  type Mass,
  parseQuantity,
  type Quantity,
  qty,
  quantityRatio,
  scaleQuantity,
  sumQuantities,
  type TreatedArea,
  type UnitDescription,
  unitsOf,
  type Volume,
  type VolumeRate,
  type VolumeRateUnit,
  valueIn,
} from "../../src/units/index.ts";

type Same<A, B> = (<T>() => T extends A ? 1 : 2) extends <T>() => T extends B ? 1 : 2 ? true : false;
function is<A, B>(_: Same<A, B>): void {}

// A weight is not a volume, a length not an area, a rate not an amount.
// @ts-expect-error oz is a weight
export const weightAsVolume: Volume = qty(5, "oz");
// @ts-expect-error fl_oz is a volume
export const volumeAsWeight: Mass = qty(5, "fl_oz");
// @ts-expect-error ft2 is an area
export const areaAsLength: Length = qty(5, "ft2");
// @ts-expect-error lb/ac is a weight per area
export const massRateAsVolumeRate: VolumeRate = qty(5, "lb/ac");
export const volume: Volume = qty(5, "fl_oz");
export const rate: VolumeRate = qty(5, "fl_oz/1000ft2");

// @ts-expect-error no such unit
qty(5, "gallon");
// @ts-expect-error no such compound: area per volume
qty(5, "ac/gal");
// @ts-expect-error a number as text
qty("5", "gal");
// @ts-expect-error no unit
qty(5);
// @ts-expect-error a quantity is not a bare number
convert(5, "gal");

// @ts-expect-error across dimensions
convert(qty(5, "oz"), "fl_oz");
// @ts-expect-error across dimensions
valueIn(qty(5, "gal/ac"), "gal");
// @ts-expect-error across dimensions
quantityRatio(qty(5, "gal"), qty(5, "lb"));
// @ts-expect-error across dimensions
sumQuantities([qty(5, "gal"), qty(5, "lb")]);
// @ts-expect-error no such dimension
unitsOf("weight");

declare const ground: GroundArea;
declare const treated: TreatedArea;
declare const bare: Area;
declare const based: BasedFraction;
// @ts-expect-error ground area is not treated area
export const groundAsTreated: TreatedArea = ground;
// @ts-expect-error treated area is not ground area
export const treatedAsGround: GroundArea = treated;
// @ts-expect-error a bare area does not say what it is an area of
export const bareAsTreated: TreatedArea = bare;
// @ts-expect-error neither does one that has just been made
export const madeAsTreated: TreatedArea = qty(1, "ac");
// @ts-expect-error two kinds of area do not add up
sumQuantities([treated, ground]) satisfies TreatedArea;
export const anyArea: Area = treated;

// What an editor shows on hover is short.
is<ReturnType<typeof converted>, Quantity<"mL">>(true);
function converted() {
  return convert(qty(1, "gal"), "mL");
}
is<typeof scaled, Quantity<"gal">>(true);
const scaled = scaleQuantity(qty(1, "gal"), 2);
is<typeof added, Quantity<"gal">>(true);
const added = sumQuantities([qty(1, "gal"), qty(2, "gal")]);
is<typeof addedAreas, TreatedArea>(true);
const addedAreas = sumQuantities([treated, treated]);
is<typeof scaledFraction, BasedFraction>(true);
const scaledFraction = scaleQuantity(based, 2);
export const convertedArea: TreatedArea = convert(treated, "ha");
export const addedAcross: Quantity<"gal" | "fl_oz"> = sumQuantities([qty(1, "gal"), qty(64, "fl_oz")]);

is<typeof parsed, Quantity | BasedFraction>(true);
const parsed = parseQuantity("5 gal");
is<typeof parsedHere, Quantity | BasedFraction>(true);
const parsedHere = parseQuantity("5 gal", { locale: "de" });
is<typeof parsedRate, Quantity<VolumeRateUnit>>(true);
const parsedRate = parseQuantity("5 gal/ac", { dimension: "volumeRate" });
is<typeof parsedFraction, Fraction | BasedFraction>(true);
const parsedFraction = parseQuantity("5% v/v", { dimension: "fraction" });
// @ts-expect-error a volume was asked for
export const parsedVolumeAsMass: Mass = parseQuantity("5 gal", { dimension: "volume" });
// @ts-expect-error no such option
parseQuantity("5 gal", { lang: "de" });
// @ts-expect-error no such denominator
formatQuantity(qty(1, "gal"), { fraction: 5 });
is<typeof described, UnitDescription<"gal">>(true);
const described = describeUnit("gal");
is<typeof masses, ("oz" | "lb" | "mg" | "g" | "kg")[]>(true);
const masses = unitsOf("mass");
