// The whole plan against the same job written by hand, without and with general-purpose unit libraries.
import Qty from "js-quantities";
import { all, create } from "mathjs";
import UnitMath from "unitmath";
import { planApplication } from "../../dist/plan/index.js";
import { parsePlanInput } from "../../dist/schema/index.js";
import { qty } from "../../dist/units/index.js";
import { medians, printRatios, rowJob } from "./measure.mjs";
import { report } from "./speed.mjs";

const math = create(all);
const LIBRARIES = {
  mathjs: {
    unit: (value, unit) => math.unit(value, unit),
    times: math.multiply,
    over: math.divide,
    plus: math.add,
    minus: math.subtract,
    in: (one, unit) => one.toNumber(unit),
    ratio: (a, b) => Number(math.divide(a, b)),
    units: { floz: "floz", pt: "pint", gal: "gallon", oz: "oz", area: "sqft", acre: "acre" },
  },
  unitmath: {
    unit: (value, unit) => UnitMath(value, unit),
    times: (a, b) => UnitMath.mul(a, b),
    over: (a, b) => UnitMath.div(a, b),
    plus: (a, b) => UnitMath.add(a, b),
    minus: (a, b) => UnitMath.sub(a, b),
    in: (one, unit) => one.to(unit).getValue(),
    ratio: (a, b) => UnitMath.div(a, b).toSI().getValue(),
    units: { floz: "floz", pt: "pint", gal: "gal", oz: "ounce", area: "ft^2", acre: "acre" },
  },
  "js-quantities": {
    unit: (value, unit) => new Qty(value, unit),
    times: (a, b) => a.mul(b),
    over: (a, b) => a.div(b),
    plus: (a, b) => a.add(b),
    minus: (a, b) => a.sub(b),
    in: (one, unit) => one.to(unit).scalar,
    ratio: (a, b) => a.div(b).toBase().scalar,
    units: { floz: "floz", pt: "pint", gal: "gallon", oz: "oz", area: "ft2", acre: "acre" },
  },
};
let kept;
const keep = (value) => {
  kept = value;
};

const jobs = Array.from({ length: 256 }, (_, i) => rowJob(30 + i / 16));

// The same figures without a check, a warning or a measured dose: area, rate, mix, loads, doses.
function byHand(used) {
  const treated = 14 * 160 * 2.5;
  const ground = 14 * 160 * 5;
  const rate = used / 128 / ((2.5 * 120) / 43_560);
  const sprayed = (rate * treated) / 43_560;
  const reserve = sprayed * 0.05;
  const total = sprayed + reserve + 10 / 128;
  const count = Math.ceil(total / 3.5);
  const loads = [];
  for (let i = 0; i < count; i++) {
    const carrier = i < count - 1 ? 3.5 : total - 3.5 * (count - 1);
    loads.push({ carrier, products: [(1.5 * 16 * carrier) / rate, (12 * carrier) / rate] });
  }
  return { treated, ground, rate, sprayed, reserve, total, loads };
}

// The same figures with quantities in place of numbers, and the doses as spoons (the largest first, until no more than 2 %
// is missing) and as marks of a scale: what a careful person would write with such a library. Still no check of an input and no warning but of the rate.
function byUnitLibrary({ unit, times, over, plus, minus, in: told, ratio, units }, used) {
  const treated = times(times(unit(160, "ft"), unit(30, "in")), 14);
  const ground = times(times(unit(160, "ft"), unit(5, "ft")), 14);
  const rate = over(unit(used, units.floz), times(unit(30, "in"), unit(120, "ft")));
  const sprayed = times(rate, treated);
  const reserve = times(sprayed, 0.05);
  const total = plus(plus(sprayed, reserve), unit(10, units.floz));
  const full = unit(3.5, units.gal);
  const count = Math.ceil(ratio(total, full));
  const acre = unit(1, units.acre);
  const loads = [];
  for (let i = 0; i < count; i++) {
    const carrier = i < count - 1 ? full : minus(total, times(full, count - 1));
    const area = over(carrier, rate);
    const liquid = times(over(unit(1.5, units.pt), acre), area);
    const dry = times(over(unit(12, units.oz), acre), area);
    const scoops = [];
    let rest = liquid;
    for (const size of [1 / 2, 1 / 6, 1 / 12, 1 / 24, 1 / 48]) {
      if (ratio(rest, liquid) <= 0.02) break;
      const spoon = unit(size, units.floz);
      const scoop = Math.floor(ratio(rest, spoon) * (1 + 1e-12));
      scoops.push(scoop);
      rest = minus(rest, times(spoon, scoop));
    }
    const mark = unit(0.1, "g");
    const marks = Math.floor(ratio(dry, mark) * (1 + 1e-12));
    loads.push({
      carrier: told(carrier, units.gal),
      area: told(area, units.area),
      liquid: told(liquid, units.floz),
      dry: told(dry, units.oz),
      scoops,
      error: ratio(rest, liquid),
      marks,
      off: ratio(minus(dry, times(mark, marks)), dry),
    });
  }
  const inAcres = over(unit(1, units.gal), acre);
  const plausible = ratio(rate, inAcres) > 3 && ratio(rate, inAcres) < 200;
  return {
    treated: told(treated, units.area),
    ground: told(ground, units.area),
    rate: ratio(rate, inAcres),
    sprayed: told(sprayed, units.gal),
    reserve: told(reserve, units.gal),
    total: told(total, units.gal),
    loads,
    plausible,
  };
}

// All say the same, within the rounding of their tables, or nothing is compared.
for (const [name, library] of Object.entries(LIBRARIES)) {
  const theirs = byUnitLibrary(library, 34.2);
  const ours = planApplication(rowJob(34.2));
  const pairs = [
    [theirs.treated, ours.area.treated.value],
    [theirs.rate, ours.rate.value],
    [theirs.total, ours.totals.carrier.value],
    ...ours.loads.flatMap(({ products }, i) => [
      [theirs.loads[i].liquid, products[0].amount.value],
      [theirs.loads[i].dry, products[1].amount.value],
      [theirs.loads[i].scoops.reduce((sum, n) => sum + n), products[0].measured.scoops],
    ]),
  ];
  for (const [one, other] of pairs)
    if (!(Math.abs(one / other - 1) < 1e-5)) throw new Error(`${name}: ${one} and ours ${other}`);
}

const tools = [
  { name: "cylinder", capacity: qty(500, "mL"), graduation: qty(1, "mL") },
  { name: "scale", capacity: qty(5, "kg"), graduation: qty(0.1, "g") },
];
const marked = jobs.map((one) => ({ ...one, tools }));

const times = await medians(
  {
    "by hand, nothing checked or measured": (i) => keep(byHand(30 + (i & 255) / 16)),
    ...Object.fromEntries(
      Object.entries(LIBRARIES).map(([name, library]) => [
        `${name}, nothing checked`,
        (i) => keep(byUnitLibrary(library, 30 + (i & 255) / 16)),
      ]),
    ),
    "planApplication, doses by spoons and scale": (i) => keep(planApplication(jobs[i & 255])),
    "planApplication, doses by cylinder and scale": (i) => keep(planApplication(marked[i & 255])),
    "parsePlanInput and planApplication": (i) => keep(planApplication(parsePlanInput(jobs[i & 255]))),
  },
  20,
);
printRatios("one job: 2 products, 2 loads", times, "by hand, nothing checked or measured");
const ours = times["planApplication, doses by spoons and scale"];
const byMarks = times["planApplication, doses by cylinder and scale"];
const readToo = times["parsePlanInput and planApplication"];
const byHandTime = times["by hand, nothing checked or measured"];
for (const name of Object.keys(LIBRARIES))
  console.log(
    `  planApplication is ${(times[`${name}, nothing checked`] / ours).toFixed(1)} times as fast as ${name}`,
  );
console.log(`  ${Math.round(1e9 / readToo)} jobs a second read and planned on one core`);

report([
  {
    what: "`planApplication`: 2 products, 2 loads, doses by spoons and a scale",
    time: ours,
    against: [
      [times["mathjs, nothing checked"] / ours, "times as fast as the same job in mathjs"],
      [times["unitmath, nothing checked"] / ours, "as in unitmath"],
      [times["js-quantities, nothing checked"] / ours, "as in js-quantities"],
      [ours / byHandTime, "times bare arithmetic"],
    ],
  },
  {
    what: "the same, doses by a cylinder and a scale of one's own",
    time: byMarks,
    against: [[byMarks / byHandTime, "times bare arithmetic"]],
  },
  {
    what: "the same, read by `parsePlanInput` first",
    time: readToo,
    against: [
      [readToo / ours, "times the plan alone"],
      [1e9 / readToo, "jobs a second on one core"],
    ],
  },
]);
if (kept === undefined) throw new Error("nothing was computed");
