// The whole plan against the same job written by hand, without and with a general-purpose unit library; and how the cost
// grows with products, loads and plots.
import { all, create } from "mathjs";
import { planApplication } from "../../dist/plan/index.js";
import { qty } from "../../dist/units/index.js";
import { medians, printRatios } from "./measure.mjs";

const math = create(all);
let kept;
const keep = (value) => {
  kept = value;
};

const job = (used) => ({
  plot: {
    kind: "row-bands",
    rows: 14,
    rowLength: qty(160, "ft"),
    bandWidth: qty(30, "in"),
    rowSpacing: qty(5, "ft"),
  },
  calibration: { kind: "strip", used: qty(used, "fl_oz"), swath: qty(30, "in"), distance: qty(120, "ft") },
  sprayer: { tank: qty(4, "gal"), workingFill: qty(3.5, "gal"), lineVolume: qty(10, "fl_oz") },
  reserve: { percent: 5 },
  products: [
    { name: "Product A", form: "liquid", rate: qty(1.5, "pt/ac") },
    { name: "Product B", form: "dry", rate: qty(12, "oz/ac") },
  ],
  tools: "us-spoons",
});
const jobs = Array.from({ length: 256 }, (_, i) => job(30 + i / 16));

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

function byUnitLibrary(used) {
  const u = (value, unit) => math.unit(value, unit);
  const treated = math.multiply(math.multiply(14, u(160, "ft")), u(30, "in"));
  const rate = math.divide(u(used, "floz"), math.multiply(u(30, "in"), u(120, "ft")));
  const sprayed = math.multiply(rate, treated);
  const reserve = math.multiply(sprayed, 0.05);
  const total = math.add(math.add(sprayed, reserve), u(10, "floz"));
  const count = Math.ceil(math.divide(total, u(3.5, "gallon")));
  const loads = [];
  for (let i = 0; i < count; i++) {
    const full = u(3.5, "gallon");
    const carrier = i < count - 1 ? full : math.subtract(total, math.multiply(count - 1, full));
    const area = math.divide(carrier, rate);
    loads.push({
      carrier: carrier.toNumber("gallon"),
      products: [
        math.multiply(u(1.5, "pint / acre"), area).toNumber("floz"),
        math.multiply(u(12, "oz / acre"), area).toNumber("oz"),
      ],
    });
  }
  return { treated: treated.toNumber("sqft"), rate: rate.toNumber("gallon / acre"), loads };
}

const tools = [
  { name: "cylinder", capacity: qty(500, "mL"), graduation: qty(1, "mL") },
  { name: "scale", capacity: qty(5, "kg"), graduation: qty(0.1, "g") },
];
const marked = jobs.map((one) => ({ ...one, tools }));

const times = await medians(
  {
    "by hand, nothing checked or measured": (i) => keep(byHand(30 + (i & 255) / 16)),
    "mathjs units, nothing checked or measured": (i) => keep(byUnitLibrary(30 + (i & 255) / 16)),
    "planApplication, doses by spoons and scale": (i) => keep(planApplication(jobs[i & 255])),
    "planApplication, doses by cylinder and scale": (i) => keep(planApplication(marked[i & 255])),
  },
  20,
);
printRatios("one job: 2 products, 2 loads", times, "by hand, nothing checked or measured");

async function series(name, counts, make) {
  const functions = Object.fromEntries(
    counts.map((count) => {
      const input = make(count);
      return [String(count), () => keep(planApplication(input))];
    }),
  );
  const grown = await medians(functions, 1);
  console.log(`\n${name}, doubling (median µs; ratio to the one before: 2 is linear)`);
  counts.forEach((count, i) => {
    const before = i === 0 ? "" : (grown[count] / grown[counts[i - 1]]).toFixed(2);
    console.log(
      `  ${String(count).padStart(6)} ${(grown[count] / 1000).toFixed(1).padStart(12)} ${before.padStart(8)}`,
    );
  });
}

const product = (i) => ({ name: `Product ${i}`, form: "liquid", rate: qty(0.01 + i / 10_000, "pt/ac") });
await series("products", [8, 16, 32, 64], (count) => ({
  ...marked[0],
  products: Array.from({ length: count }, (_, i) => product(i)),
}));
await series("loads", [250, 500, 1000, 2000], (count) => ({
  ...marked[0],
  plot: { ...jobs[0].plot, rows: 14 * count },
  sprayer: { tank: qty(5.2, "gal") },
}));
await series("plots", [1000, 2000, 4000, 8000], (count) => ({
  ...marked[0],
  plot: Array.from({ length: count }, () => ({
    kind: "rectangle",
    length: qty(3, "ft"),
    width: qty(1, "ft"),
  })),
}));
if (kept === undefined) throw new Error("nothing was computed");
