// Checked by the compiler only: each line marked as an error must be one, and everything else must compile.
import type * as z from "zod/mini";
import type {
  Calibration,
  CalibrationRecord,
  Measurement,
  TodaysConditions,
} from "../../src/output-rate/index.ts";
import type { PlanInput, Plot, Product, Sprayer } from "../../src/plan/index.ts";
import { about, choice, fields, kindOf, maybe, name, number, only, words } from "../../src/schema/fields.ts";
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
import type { Length, VolumeRate } from "../../src/units/index.ts";

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

// That the schemas are of these types is no mere claim: they are put together so that a gap does not compile.
interface Thing {
  readonly kind: "thing";
  readonly size: Length;
  readonly note?: string;
  readonly never?: never;
}
const kind = only("thing");
const size = quantitySchema("length");
fields<Thing>({ kind, size, note: maybe(words(), "a note") });
// @ts-expect-error a field that the type has is missing here
fields<Thing>({ kind, note: maybe(words(), "a note") });
// @ts-expect-error so is one that may be left out
fields<Thing>({ kind, size });
// @ts-expect-error a field that the type does not have
fields<Thing>({ kind, size, note: maybe(words(), "a note"), more: number() });
// @ts-expect-error a field of another type
fields<Thing>({ kind, size: quantitySchema("mass"), note: maybe(words(), "a note") });
// @ts-expect-error a field that may be left out is needed here
fields<Thing>({ kind, size, note: words() });
// @ts-expect-error a field that is needed may be left out here
fields<Thing>({ kind, size: maybe(size, "a size"), note: maybe(words(), "a note") });
fields<Thing>({ kind, size: about(size, "a size"), note: maybe(words(), "a note") });

choice<string | number>()([words(), number()], () => 0);
// @ts-expect-error an option is missing
choice<string | number>()([words()], () => 0);
// @ts-expect-error an option too many
choice<string>()([words(), number()], () => 0);

name<"a" | "b">({ a: 1, b: 1 });
// @ts-expect-error a name is missing
name<"a" | "b">({ a: 1 });
// @ts-expect-error a name too many
name<"a" | "b">({ a: 1, b: 1, c: 1 });

type Kinds = { readonly kind: "one" } | { readonly kind: "two"; readonly n: number };
const one = fields<Extract<Kinds, { kind: "one" }>>({ kind: only("one") });
const two = fields<Extract<Kinds, { kind: "two" }>>({ kind: only("two"), n: number() });
kindOf<Kinds>({ one, two });
// @ts-expect-error a kind is missing
kindOf<Kinds>({ one });
// @ts-expect-error kinds the wrong way round
kindOf<Kinds>({ one: two, two: one });

export { length, noLength, rate, same };
