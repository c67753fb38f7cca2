// From one row of a file of plots to its dose. Pure: the same cells give the same dose, in any thread and on any machine.
import { SprayMathError } from "swath-to-spoon";
import { planApplication } from "swath-to-spoon/plan";
import { parsePlanInput } from "swath-to-spoon/schema";
import { formatQuantity } from "swath-to-spoon/units";
import { titleAt } from "./header.mjs";

export const DOSE_COLUMNS = [
  "farm",
  "plot",
  "product",
  "treated_area",
  "treated_area_unit",
  "output_rate",
  "output_rate_unit",
  "mix",
  "mix_unit",
  "loads",
  "mix_per_load",
  "product_in_all",
  "product_per_load",
  "product_unit",
  "measure_per_load",
  "warnings",
];

/** `{ dose }`, the values of DOSE_COLUMNS, or `{ faults }`, each with the title of its column. */
export function doseOf(header, cells) {
  if (cells.length !== header.length) {
    const message = `This row has ${cells.length} cells and the header has ${header.length}. Put quotes around text with a comma.`;
    return { faults: [{ column: "", message }] };
  }
  // The reader's replacement for bytes that aren't UTF-8.
  const garbled = cells.findIndex((cell) => cell.includes("\uFFFD"));
  if (garbled >= 0) {
    const message = `${JSON.stringify(cells[garbled])} is not in UTF-8. Save the file as UTF-8.`;
    return { faults: [{ column: header[garbled].title, message }] };
  }
  try {
    const plan = planApplication(parsePlanInput(jobOf(header, cells)));
    const refusals = plan.warnings.filter(({ severity }) => severity === "refusal");
    if (refusals.length > 0) return { faults: faultsOf(header, refusals) };
    return { dose: rowOf(plan, cells[header.findIndex(({ name }) => name === "farm")] ?? "") };
  } catch (error) {
    if (!(error instanceof SprayMathError)) throw error;
    return { faults: faultsOf(header, error.issues) };
  }
}

function faultsOf(header, issues) {
  return issues.map(({ path, message }) => ({ column: titleAt(header, path), message }));
}

// An empty cell is a missing field. The library reports what is missing.
function jobOf(header, cells) {
  // Equal loads, so one row holds for every tank of a plot.
  const job = { plot: {}, calibration: { kind: "strip" }, sprayer: {}, split: "equal", products: [{}] };
  for (const [i, { keys, unit, number }] of header.entries()) {
    const cell = cells[i].trim();
    if (keys === undefined || cell === "") continue;
    const last = keys.at(-1);
    let place = job;
    for (const key of keys.slice(0, -1)) place = place[key] ??= {};
    if (unit !== undefined) place[last] = { value: numberOr(cell), unit };
    else place[last] = number ? numberOr(cell) : cell;
  }
  return job;
}

export const NUMBER = /^[+-]?(\d+(\.\d*)?|\.\d+)(e[+-]?\d+)?$/i;

// Text that isn't a number stays text, and the library reports it. `Number` alone would accept "0x10".
function numberOr(cell) {
  return NUMBER.test(cell) ? Number(cell) : cell;
}

function rowOf({ area, rate, carrier, loads, totals, input, warnings }, farm) {
  const [load] = loads;
  const [product] = load.products;
  const [{ amount }] = totals.products;
  return [
    farm,
    input.plot.name,
    product.name,
    area.treated.value,
    area.treated.unit,
    rate.value,
    rate.unit,
    carrier.total.value,
    carrier.total.unit,
    loads.length,
    load.carrier.value,
    amount.value,
    product.amount.value,
    amount.unit,
    measureOf(product.measured),
    [...new Set(warnings.map(({ code }) => code))].join(" "),
  ];
}

function measureOf(measured) {
  if (!measured.ok) return "";
  return measured.parts
    .map(({ count, tool, each }) =>
      each ? `${count} x ${tool.name} to ${formatQuantity(each)}` : `${count} x ${tool.name}`,
    )
    .join(" + ");
}
