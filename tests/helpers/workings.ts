import { planApplication, planSpreading } from "../../src/plan/index.ts";
import { qty } from "../../src/units/index.ts";
import type { WorkingLine } from "../../src/units/working-line.ts";
import * as working from "../../src/working/index.ts";
import { TWO_PRODUCTS } from "./jobs.ts";
import { SAMPLES } from "./samples.ts";

const lot = qty(9, "ft");
const plan = planApplication({
  ...TWO_PRODUCTS,
  plot: [
    { kind: "treated-area", treated: { value: 2000, unit: "m2", of: "treated" } },
    { kind: "rectangle", length: lot, width: lot },
  ],
});

const spreading = planSpreading({
  plot: { kind: "rectangle", length: qty(180, "ft"), width: qty(100, "ft") },
  spreader: { hopper: qty(20, "lb"), directions: 2 },
  test: { used: qty(5, "oz"), swath: qty(4, "ft"), distance: qty(25, "ft") },
  product: {
    name: "Product A",
    rate: { nutrient: "N", amount: qty(1, "lb/1000ft2"), contains: { N: 20, P2O5: 5 } },
    bag: qty(40, "lb"),
  },
});

const functions: Readonly<Record<string, unknown>> = { ...working };

/** Samples of what every function of `swath-to-spoon/working` gives, by its name. */
export const WORKINGS: Readonly<Record<string, readonly (readonly WorkingLine[])[]>> = {
  ...Object.fromEntries(
    Object.entries(SAMPLES).map(([name, samples]) => {
      const linesOf = functions[name] as (...given: readonly unknown[]) => WorkingLine[];
      return [name, samples.map((given) => linesOf(...given))];
    }),
  ),
  planApplication: [working.planApplication(plan).flatMap(({ lines }) => lines)],
  planSpreading: [working.planSpreading(spreading).flatMap(({ lines }) => lines)],
};
