import { longestCount } from "../household/measure-out.js";
import type { Carrier } from "../tank-mix/carrier.js";
import { mixStrengthOf } from "../tank-mix/strength.js";
import { onTank } from "../tank-mix/tank-marks.js";
import { inUnit } from "../units/convert.js";
import { moreThan } from "../units/decide.js";
import { orderOf, ratioOf } from "../units/quantity.js";
import { atLeast } from "../units/three-figures.js";
import type { Mass, Volume } from "../units/types.js";
import { isSpare } from "./coverage.js";
import type { PlanInput } from "./input.js";
import type { CoversBatch, LoadOf, LoadProduct } from "./result.js";
import type { Thresholds } from "./thresholds.js";
import { asPercent, type Warning, warning } from "./warnings.js";

/** What of a job's input its mix is checked by. */
type MixSource = Pick<PlanInput, "sprayer" | "addedWater" | "products">;
type Loads = readonly (LoadOf<LoadProduct> & CoversBatch)[];

/** What is mixed. */
interface Mixed {
  readonly carrier: Carrier;
  readonly loads: Loads;
  readonly toMark?: { readonly carrier: Volume } | undefined;
}

/** What a careful colleague would say of the mix and its loads. */
export function mixWarnings(
  input: MixSource,
  { carrier, loads, toMark }: Mixed,
  thresholds: Pick<Thresholds, "lastLoadPercent">,
): Warning[] {
  return [
    ...tankWarnings(input, carrier.total, loads),
    ...spareWarnings(input, carrier, toMark),
    ...lastLoadWarnings(input, loads, thresholds),
    ...waterWarnings(input, carrier.total),
    ...doseWarnings(input, loads),
  ];
}

function tankWarnings({ sprayer }: MixSource, total: Volume, loads: Loads): Warning[] {
  const { tank, workingFill = tank } = sprayer;
  if (orderOf(total, workingFill) !== 1) return [];
  const isFull = orderOf(workingFill, tank) === 0;
  return [
    warning(
      "mix-over-tank",
      "note",
      "sprayer.tank",
      isFull
        ? "You need {total} of mix and the tank holds {tank}: mix {loads} loads and measure product for each."
        : "You need {total} of mix and fill the tank to {tank}: mix {loads} loads and measure product for each.",
      // Up, in the tank's unit, as every sheet has it.
      {
        total: atLeast({ value: inUnit(total, tank.unit), unit: tank.unit }),
        tank: workingFill,
        loads: loads.length,
      },
      isFull ? "mix-over-tank" : "mix-over-fill",
    ),
  ];
}

// Past these a number or its unit is wrong, rather than the job unusual: common practice, no source.
const LARGE_RESERVE_PERCENT = 50;
const LARGE_LINES_PERCENT = 25;

/** Mix that isn't meant for the plot: a reserve out of proportion, lines that hold as much as a tank. */
function spareWarnings(
  { sprayer: { tank, marks } }: MixSource,
  { sprayed, reserve, lines }: Carrier,
  toMark: Mixed["toMark"],
): Warning[] {
  const warnings: Warning[] = [];
  const [spare, held] = [100 * ratioOf(reserve, sprayed), 100 * ratioOf(lines, tank)];
  // Nobody entered what the mix went up by to end on marks.
  const asked = spare - (toMark ? 100 * ratioOf(toMark.carrier, sprayed) : 0);
  const isAsked = moreThan(asked, LARGE_RESERVE_PERCENT);
  if (moreThan(spare, LARGE_RESERVE_PERCENT))
    warnings.push(
      warning(
        "reserve-large",
        "warning",
        isAsked ? "reserve" : marks === undefined ? "split" : "sprayer.marks",
        isAsked
          ? "The extra mix is {reserve} for a job that takes {sprayed}: all of it would be left over. " +
              "Check the extra mix and its unit."
          : "To reach the tank's mark, the extra mix is {reserve} for a job that takes {sprayed}. " +
              "Check the marks or fills, or use a smaller tank.",
        { reserve, sprayed, percent: asPercent(spare) },
        isAsked ? "reserve-large" : "reserve-large-marks",
      ),
    );
  if (moreThan(held, LARGE_LINES_PERCENT))
    warnings.push(
      warning(
        "lines-large",
        "warning",
        "sprayer.lineVolume",
        "The hose and boom hold {lines}, which is {percent} of the {tank} tank. Check that number and its unit.",
        { lines, tank, percent: asPercent(held) },
      ),
    );
  return warnings;
}

function lastLoadWarnings(
  { sprayer: { tank } }: MixSource,
  loads: Loads,
  { lastLoadPercent }: Pick<Thresholds, "lastLoadPercent">,
): Warning[] {
  const [first, last] = [loads[0], loads[loads.length - 1]];
  if (first === undefined || last === undefined || first === last) return [];
  const percent = 100 * ratioOf(last.carrier, first.carrier);
  if (!moreThan(lastLoadPercent, percent)) return [];
  const isExtra = isSpare(last);
  return [
    warning(
      "last-load-small",
      "warning",
      `loads[${loads.length - 1}]`,
      // Equal loads would have as much extra mix, or more.
      isExtra
        ? "The last load is only {last}, and all of it is extra mix. Leave it out, or plan less extra mix."
        : "The last load is only {last}: hard to measure for, and the pump may not pick it all up. Split the mix into equal loads.",
      {
        // As the sheets have it.
        last: last.mark ?? atLeast(onTank(last.carrier, tank)),
        full: first.carrier,
        percent: asPercent(percent),
      },
      isExtra ? "last-load-extra" : "last-load-small",
    ),
  ];
}

function waterWarnings({ addedWater }: MixSource, mix: Volume): Warning[] {
  if (addedWater === undefined) return [];
  const { strength, weakBy } = mixStrengthOf({ mix, addedWater });
  if (weakBy.value === 0) return [];
  return [
    warning(
      "water-without-product",
      "warning",
      "addedWater",
      "Adding {water} of water without product weakens the mix to {strength} strength: the plot is under-dosed. " +
        "Add product for that water too, or leave the water out.",
      { water: addedWater, strength, weakBy },
    ),
  ];
}

// An ounce or a pound is a bag that shops have; of grams and milliliters a hundred are.
const IN_HUNDREDS: readonly string[] = ["g", "mL"];

/** Whole bags make loads of a size of their own, and nobody should find that out with the water in the tank. */
function bagWarning(k: number, product: string, amount: Volume | Mass, carrier: Volume): Warning {
  const bag = { ...amount, value: IN_HUNDREDS.includes(amount.unit) ? 100 : 1 };
  return warning(
    "whole-bags",
    "warning",
    `products[${k}]`,
    "{product} comes in bags that dissolve, and {bag} of it makes {mix} of mix. Plan loads that take whole bags.",
    { product, bag, mix: atLeast({ ...carrier, value: (carrier.value * bag.value) / amount.value }) },
  );
}

/** The marks of the finest of the scales that a product's doses assume; none where no scale weighs any of them. */
function finestMarks(loads: Loads, k: number): Mass | undefined {
  const tools = loads.flatMap(({ products }) => {
    const { measured } = products[k] as LoadProduct;
    return measured.ok ? measured.parts.map(({ tool }) => tool.graduation as Mass) : [];
  });
  return tools.length === 0
    ? undefined
    : tools.reduce((least, one) => (orderOf(one, least) === -1 ? one : least));
}

/** What the doses give rise to; doses that are alike are reported once. */
function doseWarnings({ products }: MixSource, loads: Loads): Warning[] {
  const warnings = new Map<string, Warning>();
  for (const [i, load] of loads.entries())
    for (const [k, { name, amount, measured }] of load.products.entries()) {
      // Bags go in whole: nobody measures what is in them.
      if (products[k]?.inSolubleBag) {
        if (!warnings.has(`${k} bags`)) warnings.set(`${k} bags`, bagWarning(k, name, amount, load.carrier));
        continue;
      }
      if (!measured.ok) {
        const { key, message, figures } = measured.issue;
        // By what is said: like loads may differ in a last digit that nobody reads.
        warnings.set(`${k} ${message}`, {
          code: "dose-not-measurable",
          key,
          severity: "warning",
          message: `${name}: ${message}`,
          path: `loads[${i}].products[${k}]`,
          figures: { ...figures, product: name },
        });
      }
      const long = measured.ok ? longestCount(measured) : undefined;
      if (long !== undefined && !warnings.has(`${k} count`)) {
        const figures = { product: name, count: long.count, tool: long.tool.name };
        const isOnly = loads.length === 1;
        warnings.set(
          `${k} count`,
          warning(
            "long-count",
            "note",
            `loads[${i}].products[${k}]`,
            // "This dose" would be read as the one that the warning before it is about.
            isOnly
              ? "{product}: this dose fills the {tool.tool} {count} times. It's easy to lose count: use a larger tool."
              : "{product}: the dose of load {load} fills the {tool.tool} {count} times. It's easy to lose count: use a larger tool.",
            isOnly ? figures : { ...figures, load: load.number },
            isOnly ? "long-count" : "long-count-load",
          ),
        );
      }
      // Once a product, whatever the load.
      const isNew = measured.scaleAssumed && !warnings.has(`${k} scale`);
      const marks = isNew && finestMarks(loads, k);
      if (marks)
        warnings.set(
          `${k} scale`,
          warning(
            "scale-needed",
            "note",
            "tools",
            "{product} is a dry product and no scale is listed. Weigh it on a scale that reads {marks}, don't spoon it.",
            { product: name, marks },
          ),
        );
    }
  return [...warnings.values()];
}
