import type { Check } from "../units/check.js";
import { inUnit } from "../units/convert.js";
import { ceilDecided, compareDecided, decided, floorDecided, moreThan } from "../units/decide.js";
import { type EitherField, either, list, named, type Partly } from "../units/fields.js";
import { quantity } from "../units/quantity-field.js";
import type { Volume, VolumeUnit } from "../units/types.js";

/** The marks on a tank: how far apart they are, or each of them. */
export type TankMarks = Volume | readonly Volume[];

// More than anybody reads off a tank.
const MOST_LISTED = 200;
const MOST_MARKS = 1000;

/** The marks on a tank. */
export const TANK_MARKS: EitherField<TankMarks> = /* @__PURE__ */ named(
  "TankMarks",
  /* @__PURE__ */ either<TankMarks>(
    "The tank's marks: how far apart they are, or each of them. Every load then ends on a mark.",
    [
      quantity("How far apart the marks are. More than 0.", "volume"),
      /* @__PURE__ */ list(
        "Each mark, in any order.",
        quantity("A mark on the tank. More than 0.", "volume"),
        {
          most: MOST_LISTED,
        },
      ),
    ],
    (input) => (Array.isArray(input) ? 1 : 0),
  ),
);

// No tank or jug shows hundredths of a gallon.
export const FLUID_OUNCES: Partial<Record<VolumeUnit, VolumeUnit>> = { gal: "fl_oz", imp_gal: "imp_fl_oz" };

/** Mix in the tank's own unit, or in the jug's where it is less than the marks of a tank begin at: under half of it. */
export function onTank(volume: Volume, tank: Volume): Volume {
  const value = inUnit(volume, tank.unit);
  const small = tank.unit === "L" ? "mL" : FLUID_OUNCES[tank.unit];
  const unit = small === undefined || !moreThan(0.5, value) ? tank.unit : small;
  return { value: inUnit(volume, unit), unit };
}

/** A tank with its marks, and how far it may be filled. */
export interface MarkedTank {
  /** What the tank holds. */
  readonly tank: Volume;
  /** How far it is filled at most: its capacity unless given. */
  readonly workingFill?: Volume | undefined;
  /** How far it is filled at least. */
  readonly leastLoad?: Volume | undefined;
  /** Its marks. */
  readonly marks: TankMarks;
}

/** Notes marks that the tank can't have, and marks that no load can end on. */
export function marksFit(given: Partly<MarkedTank>, check: Check): void {
  const { tank, marks, workingFill, leastLoad } = given;
  if (tank === undefined || marks === undefined) return;
  const faults = check.issues.length;
  if (isList(marks)) listFits(marks, tank, check);
  else stepFits(marks, tank, check);
  if (check.issues.length > faults || check.hasFault("workingFill") || check.hasFault("leastLoad")) return;
  if (usableMarks({ tank, marks, workingFill, leastLoad }, tank.unit).length > 0) return;
  const fill = workingFill ?? tank;
  check.fault(
    "conflict",
    leastLoad === undefined ? "no-mark-to-fill-to" : "no-mark-for-a-load",
    "marks",
    leastLoad === undefined
      ? "The tank has no mark up to {fill}. Enter the marks that it has."
      : "The tank has no mark from {least}, the smallest load, up to {fill}. Enter the marks that it has.",
    { fill, ...(leastLoad !== undefined && { least: leastLoad }) },
  );
}

function isList(marks: TankMarks): marks is readonly Volume[] {
  return Array.isArray(marks);
}

function listFits(marks: readonly Volume[], tank: Volume, check: Check): void {
  const before: number[] = [];
  for (const [i, mark] of marks.entries()) {
    const value = inUnit(mark, tank.unit);
    if (moreThan(value, tank.value))
      check.fault(
        "conflict",
        "mark-over-tank",
        `marks[${i}]`,
        "A {tank} tank has no mark at {given}. Check the mark and its unit.",
        { tank, given: mark },
      );
    if (before.some((other) => compareDecided(other, value) === 0))
      check.fault(
        "conflict",
        "mark-twice",
        `marks[${i}]`,
        "There is a mark at {given} already. Enter each mark once.",
        { given: mark },
      );
    before.push(value);
  }
}

function stepFits(step: Volume, tank: Volume, check: Check): void {
  const count = inUnit(tank, step.unit) / step.value;
  if (count <= MOST_MARKS) return;
  check.fault(
    "out-of-range",
    "marks-too-many",
    "marks",
    "Marks {given} apart on a {tank} tank are more than {limit} marks. Check the units.",
    { given: step, tank, limit: MOST_MARKS },
  );
}

/** A mark that a load may end on. */
export interface UsableMark {
  /** The mark as the tank has it. */
  readonly mark: Volume;
  /** The same in the unit that was asked for. */
  readonly value: number;
}

/** The marks that a load may end on, the lowest first, also in another unit. Trusts its input. */
export function usableMarks(
  { tank, workingFill = tank, leastLoad, marks }: MarkedTank,
  unit: VolumeUnit,
): UsableMark[] {
  const inThat = (mark: Volume): UsableMark => ({ mark, value: inUnit(mark, unit) });
  if (!isList(marks)) {
    const least = leastLoad === undefined ? 1 : Math.max(1, ceilDecided(timesIn(leastLoad, marks)));
    const most = floorDecided(timesIn(workingFill, marks));
    return Array.from({ length: Math.max(0, most - least + 1) }, (_, i) =>
      inThat({ value: decided(marks.value * (least + i)).toNumber(), unit: marks.unit }),
    );
  }
  const most = inUnit(workingFill, unit);
  const least = leastLoad === undefined ? 0 : inUnit(leastLoad, unit);
  return marks
    .map(inThat)
    .filter(({ value }) => !moreThan(value, most) && !moreThan(least, value))
    .sort((a, b) => a.value - b.value);
}

/** How many times a step goes into a volume, noise and all. */
function timesIn(volume: Volume, step: Volume): number {
  return inUnit(volume, step.unit) / step.value;
}

/** The lowest of the marks that holds so much; they go up far enough. */
export function markFor(need: number, marks: readonly UsableMark[]): UsableMark {
  return marks.find(({ value }) => !moreThan(need, value)) ?? (marks[marks.length - 1] as UsableMark);
}
