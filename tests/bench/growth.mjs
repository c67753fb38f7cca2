// How the time of a plan grows with its products, loads and plots: twice as many should take twice the time.
import { planApplication } from "../../dist/plan/index.js";
import { qty } from "../../dist/units/index.js";
import { leasts, rowJob } from "./measure.mjs";
import { report } from "./speed.mjs";

const tools = [
  { name: "cylinder", capacity: qty(500, "mL"), graduation: qty(1, "mL") },
  { name: "scale", capacity: qty(5, "kg"), graduation: qty(0.1, "g") },
];
const job = { ...rowJob(30), tools };
let kept;

async function series(name, counts, make) {
  const functions = Object.fromEntries(
    counts.map((count) => {
      const input = make(count);
      const plan = () => {
        kept = planApplication(input);
      };
      return [String(count), plan];
    }),
  );
  const grown = await leasts(functions);
  console.log(`\n${name}, doubling (least µs; ratio to the one before: 2 is linear)`);
  counts.forEach((count, i) => {
    const before = i === 0 ? "" : (grown[count] / grown[counts[i - 1]]).toFixed(2);
    console.log(
      `  ${String(count).padStart(6)} ${(grown[count] / 1000).toFixed(1).padStart(12)} ${before.padStart(8)}`,
    );
  });
  const [few, many] = [counts[0], counts.at(-1)];
  const shown = (count) => count.toLocaleString("en");
  return {
    what: `a plan with ${shown(many)} ${name}`,
    time: grown[many],
    against: [[grown[many] / grown[few], `times one with ${shown(few)}`]],
  };
}

const product = (i) => ({ name: `Product ${i}`, form: "liquid", rate: qty(0.01 + i / 10_000, "pt/ac") });
report([
  await series("products", [8, 16, 32, 64], (count) => ({
    ...job,
    products: Array.from({ length: count }, (_, i) => product(i)),
  })),
  await series("loads", [125, 250, 500, 1000], (count) => ({
    ...job,
    plot: { ...job.plot, rows: 14 * count },
    sprayer: { tank: qty(4.594, "gal") },
  })),
  await series("plots", [1000, 2000, 4000, 8000], (count) => ({
    ...job,
    plot: Array.from({ length: count }, () => ({
      kind: "rectangle",
      length: qty(3, "ft"),
      width: qty(1, "ft"),
    })),
  })),
]);
if (kept === undefined) throw new Error("nothing was computed");
