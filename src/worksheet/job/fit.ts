import type { AnyPlan } from "../../plan/result.js";
import { FLUID_OUNCES, onTank, type UsableMark, usableMarks } from "../../tank-mix/tank-marks.js";
import { convert, inUnit } from "../../units/convert.js";
import { ceilDecided, compareDecided, moreThan } from "../../units/decide.js";
import { orderOf, scale } from "../../units/quantity.js";
import { atLeast, atMost } from "../../units/three-figures.js";
import type {
  AreaUnit,
  Quantity,
  TreatedArea,
  Volume,
  VolumePerCount,
  VolumeUnit,
} from "../../units/types.js";
import type { Writer } from "../words/writer.js";

// A tank of so few digits was typed by somebody, and is known by them.
const TYPED = 6;

/** Two figures, for what a person judges by eye. */
export function roughly<Q extends Quantity>(quantity: Q): Q {
  return { ...quantity, value: Number(quantity.value.toPrecision(2)) };
}

/** What somebody entered, as it is; what comes of a change of unit, before the job or in it, in three figures, not more than it is. */
export function asEntered<Q extends Quantity>(quantity: Q, { entered }: Pick<Writer, "entered">): Q {
  return entered?.has(quantity.value) && isTyped(quantity) ? quantity : atMost(quantity);
}

/** Every number of a job's input, however deep. */
export function numbersIn(input: unknown, found: Set<number> = new Set()): Set<number> {
  if (typeof input === "number") found.add(input);
  else if (typeof input === "object" && input !== null)
    for (const one of Object.values(input)) numbersIn(one, found);
  return found;
}

function isTyped({ value }: Quantity): boolean {
  return Number(value.toPrecision(TYPED)) === value;
}

/** A volume of less than a gallon in fluid ounces, unless it is so many quarters of one; any other as it is. */
export function inFluidOunces(volume: Volume): Volume {
  const unit = FLUID_OUNCES[volume.unit];
  const isQuarters = compareDecided(4 * volume.value, Math.round(4 * volume.value)) === 0;
  if (unit === undefined || isQuarters || moreThan(volume.value, 1)) return volume;
  return { value: inUnit(volume, unit), unit };
}

// Below so many, an ounce more would weaken the mix.
const FEW_OUNCES = 16;

/** Water as a jug has it, not less: of a tank in gallons whole gallons, and fluid ounces for the rest. */
export function byJug(water: Volume): Volume[] {
  const unit = FLUID_OUNCES[water.unit];
  if (unit === undefined) return [atLeast(water)];
  const many = inUnit({ value: 1, unit: water.unit }, unit);
  const few = inUnit(water, unit);
  if (few < FEW_OUNCES) return [atLeast({ value: few, unit })];
  const ounces = ceilDecided(few);
  const gallons = Math.floor(ounces / many);
  return [
    { value: gallons, unit: water.unit },
    { value: ounces - gallons * many, unit },
  ].filter(({ value }) => value > 0);
}

// So many of the one are one of the other.
const LARGER: Readonly<Record<string, readonly [many: number, unit: VolumeUnit]>> = {
  mL: [1000, "L"],
  fl_oz: [128, "gal"],
  imp_fl_oz: [160, "imp_gal"],
};

/** Mix for each plant in liters or gallons, where it is as much. */
export function inLargeUnits(each: VolumePerCount): VolumePerCount {
  const [over = "", per = ""] = each.unit.split("/");
  const [many, larger] = LARGER[over] ?? [];
  if (many === undefined || moreThan(many, each.value)) return each;
  return convert(each, `${larger}/${per}` as VolumePerCount["unit"]);
}

const LAND: Partial<Record<AreaUnit, AreaUnit>> = { ft2: "ac", m2: "ha" };

/** A treated area in acres or hectares, where it is half of one or more. */
export function inAcres(area: TreatedArea): TreatedArea {
  const unit = LAND[area.unit];
  if (unit === undefined) return area;
  const value = inUnit(area, unit);
  return moreThan(0.5, value) ? area : { ...area, value, unit };
}

/** A volume in the tank's own unit: its marks are in no other. */
export function inTank(volume: Volume, { input }: AnyPlan): Volume {
  const { unit } = input.sprayer.tank;
  return { value: inUnit(volume, unit), unit };
}

/**
 * How far to fill the tank with a load: its mark, the fill that was entered, or three figures of it. Nothing where the tank is filled
 * all the way, and has no figure that a person would know.
 */
export function fillOf({ carrier, mark }: AnyPlan["loads"][number], plan: AnyPlan): Volume | undefined {
  if (mark !== undefined) return mark;
  const { tank, workingFill = tank } = plan.input.sprayer;
  const mix = inTank(carrier, plan);
  const entered = [workingFill, tank].find(
    (full) => isTyped(full) && compareDecided(inTank(full, plan).value, mix.value) === 0,
  );
  if (entered !== undefined) return entered;
  const fill = atLeast(onTank(carrier, tank));
  return orderOf(fill, tank) === -1 ? fill : isTyped(tank) ? tank : undefined;
}

/** What one sees without marks: quarters of a gallon up to ten, or two figures. */
function byEye(half: Volume): Volume {
  const quarters = Math.round(4 * half.value);
  if (FLUID_OUNCES[half.unit] === undefined || quarters < 2 || quarters > 40)
    return roughly(inFluidOunces(half));
  return { ...half, value: quarters / 4 };
}

/** The water of a load in the tank's own unit; in milliliters where the fill is. */
export function waterOf({ carrier, water }: AnyPlan["loads"][number], plan: AnyPlan): Volume {
  const { unit } = onTank(carrier, plan.input.sprayer.tank);
  return unit === "mL" ? { value: inUnit(water, unit), unit } : inTank(water, plan);
}

/** Half of a load's water, which goes in first: the nearest mark of the tank, or what one sees without. */
export function halfOf(load: AnyPlan["loads"][number], plan: AnyPlan): Volume {
  const { tank, marks } = plan.input.sprayer;
  const all = waterOf(load, plan);
  const half = scale(all, 0.5);
  const below = marks === undefined ? [] : usableMarks({ tank, marks }, all.unit);
  const [first, ...others] = below.filter(({ value }) => moreThan(all.value, value));
  if (first === undefined) return byEye(half);
  const off = ({ value }: UsableMark): number => Math.abs(value - half.value);
  return others.reduce((best, one) => (off(one) < off(best) ? one : best), first).mark;
}
