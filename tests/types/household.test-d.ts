import {
  doseTable,
  evenSteps,
  type MeasuringTool,
  measureOut,
  stockDilution,
  toolSet,
  volumeOfWeight,
} from "../../src/household/index.ts";
import { type Quantity, qty, type TreatedArea } from "../../src/units/index.ts";

// The result is in the unit of the amount.
const dose = measureOut({ amount: qty(1.3, "fl_oz"), tools: "us-spoons", rule: "never-over" });
if (dose.ok) {
  const measured: Quantity<"fl_oz"> = dose.measured;
  void measured;
  // @ts-expect-error - not in another unit
  const other: Quantity<"mL"> = dose.measured;
  void other;
} else {
  // @ts-expect-error - what cannot be measured has no parts to measure
  void dose.parts;
}

// @ts-expect-error - not without a look at `ok`
void measureOut({ amount: qty(1, "tsp"), tools: "us-spoons", rule: "never-over" }).parts;

// @ts-expect-error - a length is not measured out
measureOut({ amount: qty(1, "ft"), tools: "us-spoons", rule: "never-over" });

// @ts-expect-error - a bare number has no unit
measureOut({ amount: 1.3, tools: "us-spoons", rule: "never-over" });

// @ts-expect-error - no such set of tools
measureOut({ amount: qty(1, "tsp"), tools: "spoons", rule: "never-over" });

// @ts-expect-error - no such rule
measureOut({ amount: qty(1, "tsp"), tools: "us-spoons", rule: "about" });

// @ts-expect-error - the rule is never taken for granted
measureOut({ amount: qty(1, "tsp"), tools: "us-spoons" });

const acre: TreatedArea = { value: 1, unit: "ac", of: "treated" };
measureOut({ amount: qty(1, "tsp"), tools: toolSet("us-spoons"), rule: "nearest", perArea: acre });
measureOut({
  amount: qty(1, "tsp"),
  tools: "us-spoons",
  rule: "nearest",
  // @ts-expect-error - an error per area is per treated area
  perArea: { ...acre, of: "ground" },
});

// @ts-expect-error - the label's permission is never taken for granted
stockDilution({ amount: qty(0.05, "tsp"), tools: "us-spoons", rule: "never-over" });

// @ts-expect-error - a weight, not a volume
volumeOfWeight({ mass: qty(1, "fl_oz"), bulkDensity: qty(0.6, "g/mL") });
// @ts-expect-error - not without the product's own bulk density
volumeOfWeight({ mass: qty(1, "oz") });

// @ts-expect-error - a tool holds a volume or a weight
const rod: MeasuringTool = { name: "rod", capacity: qty(1, "ft") };
void rod;

doseTable({ rates: [qty(1, "pt/ac")], sizes: [acre], tools: "us-spoons", rule: "never-over" });
doseTable({
  rates: [qty(1, "pt/ac")],
  // @ts-expect-error - ground area is not what a rate multiplies
  sizes: [{ ...acre, of: "ground" }],
  tools: "us-spoons",
  rule: "never-over",
});

// @ts-expect-error - steps of one dimension
evenSteps({ first: qty(1, "gal"), last: qty(2, "lb"), step: qty(1, "gal") });
