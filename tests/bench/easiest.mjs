// What marks and the easiest split do for doses, on 10,000 random jobs of small sprayers with the tools that a form offers
// first; and how long the search for loads takes.
// Prints the figures, and writes them into docs/measuring.md.
import { usualTools } from "../../dist/household/index.js";
import { loadChoices, planApplication } from "../../dist/plan/index.js";
import { qty } from "../../dist/units/index.js";
import { table, write } from "../helpers/written.mjs";
import { medians } from "./measure.mjs";
import { report, rounded } from "./speed.mjs";

const JOBS = 10_000;

// Park and Miller's generator: the same jobs on every machine.
let seed = 20_261_127;
const random = () => {
  seed = (seed * 48_271) % 2_147_483_647;
  return seed / 2_147_483_647;
};
const between = (least, most) => Number((least + random() * (most - least)).toPrecision(3));
const oneOf = (list) => list[Math.floor(random() * list.length)];

/** A job of a backpack or a small boom sprayer; every second one in metric units. */
function randomJob(i) {
  const us = i % 2 === 0;
  const tank = us ? oneOf([2, 4, 15, 25]) : oneOf([10, 16, 60, 100]);
  // Marks as such tanks have them: every quart or half liter on a backpack, every gallon or 5 liters on a boom sprayer.
  const marks = us ? qty(tank <= 4 ? 0.25 : 1, "gal") : qty(tank <= 16 ? 0.5 : 5, "L");
  const area = us ? between(0.05, 1) : between(200, 4000);
  const product = (name) => ({
    name,
    form: "liquid",
    rate: us ? qty(between(0.5, 4), "pt/ac") : qty(between(0.5, 4), "L/ha"),
  });
  return {
    plot: { kind: "treated-area", treated: { ...(us ? qty(area, "ac") : qty(area, "m2")), of: "treated" } },
    calibration: {
      kind: "known",
      rate: us ? qty(between(15, 60), "gal/ac") : qty(between(150, 600), "L/ha"),
    },
    sprayer: { tank: us ? qty(tank, "gal") : qty(tank, "L"), marks },
    reserve: { percent: 5 },
    products: random() < 0.5 ? [product("Product A")] : [product("Product A"), product("Product B")],
    tools: us ? usualTools.us : usualTools.metric,
  };
}

const median = (numbers) => [...numbers].sort((a, b) => a - b)[Math.floor(numbers.length / 2)];
const mean = (numbers) => numbers.reduce((sum, one) => sum + one, 0) / numbers.length;

/** What the doses of all jobs come to, split in one way. */
function figuresOf(plans) {
  const doses = plans.flatMap(({ loads }) =>
    loads.flatMap(({ products }) => products.map(({ measured }) => measured)),
  );
  const measured = doses.filter(({ ok }) => ok);
  const toolsOf = ({ loads }) =>
    new Set(
      loads.flatMap(({ products }) =>
        products.flatMap(({ measured }) => (measured.ok ? measured.parts.map(({ tool }) => tool.name) : [])),
      ),
    ).size;
  return {
    measurable: (100 * measured.length) / doses.length,
    median: median(measured.map(({ scoops }) => scoops)),
    mean: mean(measured.map(({ scoops }) => scoops)),
    tools: mean(plans.map(toolsOf)),
    different: mean(plans.map(({ loads }) => new Set(loads.map(({ carrier }) => carrier.value)).size)),
    loads: mean(plans.map(({ loads }) => loads.length)),
    left: mean(plans.map(({ carrier }) => (100 * carrier.reserve.value) / carrier.sprayed.value)),
  };
}

const jobs = Array.from({ length: JOBS }, (_, i) => randomJob(i));
const withoutMarks = ({ sprayer: { tank }, ...job }) => ({ ...job, sprayer: { tank } });
const ways = {
  "no marks, full tanks and a rest": (job) => planApplication(withoutMarks(job)),
  "on marks, full tanks and a rest": (job) => planApplication(job),
  "on marks, the easiest split": (job) => planApplication({ ...job, split: "easiest" }),
  "the same, extra mix from 0 to 10%": (job) =>
    planApplication({ ...job, split: "easiest", reserve: { percent: 0, upTo: 10 } }),
};
// Of jobs whose extra mix may be 10% at most.
let without = 0;
const rows = Object.entries(ways).flatMap(([name, planOf]) => {
  const plans = [];
  without = 0;
  for (const job of jobs) {
    try {
      plans.push(planOf(job));
    } catch {
      without++;
    }
  }
  const { measurable, median: middle, mean: average, tools, different, loads, left } = figuresOf(plans);
  console.log(
    `  ${name.padEnd(36)} ${measurable.toFixed(1)}% of doses measurable; measures a dose: median ${middle}, mean ${average.toFixed(2)}; ` +
      `tools a job ${tools.toFixed(2)}; different fills ${different.toFixed(2)}; loads ${loads.toFixed(2)}; extra ${left.toFixed(1)}%; refused ${without}`,
  );
  const figures = [average, tools, different].map((one) => one.toFixed(2));
  return [[name, `${measurable.toFixed(1)}%`, middle, ...figures, `${left.toFixed(1)}%`]];
});

const titles = [
  "Measurable doses",
  "Measures a dose, median",
  "mean",
  "Tools a job",
  "Different fills",
  "Extra mix",
];
write(
  "docs/measuring.md",
  "easiest",
  [
    table(["Loads", ...titles.map((title) => `${title}:`)], rows),
    `"Different fills" are those of one job. Where the extra mix may be 10% at most, ${rounded((100 * without) / JOBS)} jobs in 100 have no loads on their marks; they are left out.`,
  ].join("\n\n"),
);

const backpack = {
  ...jobs[0],
  plot: { kind: "row-bands", rows: 14, rowLength: qty(160, "ft"), bandWidth: qty(30, "in") },
  sprayer: { tank: qty(4, "gal"), marks: qty(0.25, "gal") },
  tools: usualTools.us,
};
let kept;
const times = await medians(
  {
    "loadChoices, backpack, marks every quart": () => {
      kept = loadChoices(backpack);
    },
    "planApplication, split: easiest, the same": () => {
      kept = planApplication({ ...backpack, split: "easiest" });
    },
    "planApplication, the same on its marks": () => {
      kept = planApplication(backpack);
    },
    "loadChoices, 100 gal with a mark every half gallon": () => {
      kept = loadChoices({
        ...backpack,
        plot: { ...backpack.plot, rows: 280 },
        sprayer: { tank: qty(100, "gal"), marks: qty(0.5, "gal") },
      });
    },
  },
  5,
);
for (const [name, time] of Object.entries(times))
  console.log(`  ${name.padEnd(52)} ${(time / 1e6).toFixed(3)} ms`);
const choices = times["loadChoices, backpack, marks every quart"];
const large = times["loadChoices, 100 gal with a mark every half gallon"];
report([
  {
    what: "`loadChoices`, a backpack with a mark every quart",
    time: choices,
    against: [
      [choices / times["planApplication, the same on its marks"], "times `planApplication` of the job"],
    ],
  },
  {
    what: "the same, 100 gal with a mark every half gallon",
    time: large,
    against: [[large / choices, "times the backpack"]],
  },
]);
if (kept === undefined) throw new Error("nothing was computed");
