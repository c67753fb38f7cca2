// Checked by the compiler only: each line marked as an error must be one, and everything else must compile.
import type * as z from "zod/mini";
import type {
  Calibration,
  CalibrationRecord,
  Measurement,
  TodaysConditions,
} from "../../src/output-rate/index.ts";
import type { PlanInput, Plot, Product, Sprayer } from "../../src/plan/index.ts";
import {
  type calibrationRecordSchema,
  type calibrationSchema,
  type labelRateSchema,
  type measurementSchema,
  type parseCalibration,
  type parsePlanInput,
  type planInputSchema,
  type plotSchema,
  type productSchema,
  quantitySchema,
  type reserveSchema,
  type sprayerSchema,
  type todaySchema,
  type toolsSchema,
} from "../../src/schema/index.ts";
import type { LabelRate, Reserve } from "../../src/tank-mix/index.ts";
import { about, choice, kinds, object, optional, text } from "../../src/units/fields.ts";
import type { Length, VolumeRate } from "../../src/units/index.ts";
import { quantity } from "../../src/units/quantity-field.ts";

/** True where two types are the same, and not only such that one fits the other. */
type Same<A, B> = (<T>() => T extends A ? 1 : 2) extends <T>() => T extends B ? 1 : 2 ? true : false;
type Given<S extends () => z.ZodMiniType> = z.output<ReturnType<S>>;

// What each schema gives is the very type that the core functions take.
const same: [
  Same<Given<typeof planInputSchema>, PlanInput>,
  Same<Given<typeof plotSchema>, Plot>,
  Same<Given<typeof calibrationSchema>, Calibration>,
  Same<Given<typeof calibrationRecordSchema>, CalibrationRecord>,
  Same<Given<typeof measurementSchema>, Measurement>,
  Same<Given<typeof todaySchema>, TodaysConditions>,
  Same<Given<typeof productSchema>, Product>,
  Same<Given<typeof labelRateSchema>, LabelRate>,
  Same<Given<typeof sprayerSchema>, Sprayer>,
  Same<Given<typeof reserveSchema>, Reserve>,
  Same<Given<typeof toolsSchema>, PlanInput["tools"]>,
  Same<ReturnType<typeof parsePlanInput>, PlanInput>,
  Same<ReturnType<typeof parseCalibration>, Calibration>,
] = [true, true, true, true, true, true, true, true, true, true, true, true, true];

const length: z.ZodMiniType<Length> = quantitySchema("length");
const rate: z.ZodMiniType<VolumeRate> = quantitySchema("volumeRate");
// @ts-expect-error a weight is no length
const noLength: z.ZodMiniType<Length> = quantitySchema("mass");
// @ts-expect-error not the name of a dimension
quantitySchema("weight");

// That the schemas are of these types is no mere claim: their lists are put together so that a gap does not compile.
interface Thing {
  readonly kind: "thing";
  readonly size: Length;
  readonly note?: string;
  readonly never?: never;
}
const kind = choice("Says what it is.", ["thing"]);
const size = quantity("Its size.", "length");
const note = optional(text("A note."));
object<Thing>({ kind, size, note });
// @ts-expect-error a field that the type has is missing here
object<Thing>({ kind, note });
// @ts-expect-error so is one that may be left out
object<Thing>({ kind, size });
// @ts-expect-error a field that the type does not have
object<Thing>({ kind, size, note, more: note });
// @ts-expect-error a field of another type
object<Thing>({ kind, size: quantity("Its weight.", "mass"), note });
// @ts-expect-error a field that may be left out is needed here
object<Thing>({ kind, size, note: text("A note.") });
object<Thing>({ kind, size: about("Another size.", size), note });

type Kinds = { readonly kind: "one" } | { readonly kind: "two"; readonly n: Length };
const one = object<Extract<Kinds, { kind: "one" }>>({ kind: choice("One.", ["one"]) });
const two = object<Extract<Kinds, { kind: "two" }>>({ kind: choice("Two.", ["two"]), n: size });
kinds<Kinds>("One or two.", { one, two });
// @ts-expect-error a kind is missing
kinds<Kinds>("One or two.", { one });
// @ts-expect-error kinds the wrong way round
kinds<Kinds>("One or two.", { one: two, two: one });

export { length, noLength, rate, same };
