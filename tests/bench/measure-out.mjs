// measureOut with 12 tools over 10,000 random doses: how long the slowest answer takes, and whether each is as good as
// what brute force finds. Brute force here is a table of every total that up to 16 scoops make, by the fewest scoops.
import { measureOut, toolSet } from "../../dist/household/index.js";
import { report } from "./speed.mjs";

const DOSES = 10_000;
const SCOOPS = 16;
const CLOSE_ENOUGH = 0.02;
// In eighths of a teaspoon every US spoon, cup and jug is a whole number.
const EIGHTHS = { tsp: 8, tbsp: 24, cup: 384, pt: 768, qt: 1536, gal: 6144 };
const RULES = ["never-over", "never-under", "nearest"];

// Park and Miller's generator: the same doses on every machine.
let seed = 20_240_601;
const random = () => {
  seed = (seed * 48_271) % 2_147_483_647;
  return seed / 2_147_483_647;
};

const quantile = (sorted, q) => sorted[Math.min(sorted.length - 1, Math.floor(q * sorted.length))];
function show(title, times, more = "") {
  const sorted = Float64Array.from(times).sort();
  const ms = (value) => `${value.toFixed(3)} ms`;
  console.log(
    `  ${title.padEnd(34)} ${String(times.length).padStart(6)} doses: median ${ms(quantile(sorted, 0.5))}, ` +
      `99 % within ${ms(quantile(sorted, 0.99))}, slowest ${ms(sorted.at(-1))}${more}`,
  );
  return quantile(sorted, 0.5) * 1e6;
}

/** The fewest scoops that make each total up to `most`, and Infinity for one that they do not make. */
function fewestScoops(sizes, most) {
  const fewest = new Float64Array(most + 1).fill(Number.POSITIVE_INFINITY);
  fewest[0] = 0;
  for (let total = 1; total <= most; total++) {
    for (const size of sizes) {
      if (size <= total && fewest[total - size] + 1 < fewest[total]) fewest[total] = fewest[total - size] + 1;
    }
  }
  return fewest;
}

/** The fewest scoops that are close enough, and the least error with these; where none are, the closest. */
function bruteForce(fewest, amount, rule) {
  let best;
  for (let total = 0; total < fewest.length; total++) {
    const scoops = fewest[total];
    if (scoops > SCOOPS) continue;
    if ((rule === "never-over" && total > amount) || (rule === "never-under" && total < amount)) continue;
    const error = Math.abs(total - amount);
    const key = error / amount <= CLOSE_ENOUGH ? [0, scoops, error] : [1, error, scoops];
    const first = best ? key.findIndex((part, i) => part !== best.key[i]) : 0;
    if (!best || (first >= 0 && key[first] < best.key[first])) best = { key, total, scoops, error };
  }
  return best;
}

console.log(`measureOut, 12 tools, ${DOSES.toLocaleString("en")} random doses, ${RULES.join(", ")} in turn`);

const household = toolSet("us-household");
const sizes = household.map(({ capacity }) => capacity.value * EIGHTHS[capacity.unit]);
const fewest = fewestScoops(sizes, (SCOOPS + 1) * EIGHTHS.gal);
const doses = Array.from({ length: DOSES }, (_, i) => ({
  // From an eighth of a teaspoon to about eight gallons, evenly over the orders of size.
  amount: { value: 10 ** (4.7 * random() - 0.9), unit: "tsp" },
  rule: RULES[i % 3],
  tools: household,
}));

// The best of three, so that what else the machine does is not counted.
function run(inputs) {
  const answers = [];
  const [measured, refused] = [[], []];
  for (const input of inputs) {
    let best = Number.POSITIVE_INFINITY;
    let answer;
    for (let i = 0; i < 3; i++) {
      const start = performance.now();
      answer = measureOut(input);
      best = Math.min(best, performance.now() - start);
    }
    (answer.ok ? measured : refused).push(best);
    answers.push(answer);
  }
  return { answers, measured, refused };
}

run(doses.slice(0, 300));
const exact = run(doses);
let worse = 0;
let bruteTime = 0;
for (const [i, { amount, rule }] of doses.entries()) {
  const start = performance.now();
  const best = bruteForce(fewest, amount.value * 8, rule);
  bruteTime += performance.now() - start;
  const answer = exact.answers[i];
  const dose = answer.ok ? answer : answer.best;
  const same =
    dose === undefined
      ? best === undefined || best.scoops === 0
      : dose.scoops === best.scoops &&
        // Of those that are close enough, fewer tools count for more than a smaller error.
        (best.key[0] === 0
          ? Math.abs(dose.errorPercent) <= CLOSE_ENOUGH * 100
          : Math.abs(Math.abs(dose.error.value) * 8 - best.error) <= 1e-9 * best.total);
  if (!same) {
    worse++;
    console.log(`  differs: ${amount.value} tsp, ${rule}`, dose, best);
  }
}
const ours = show("US spoons, cups and jugs, measured", exact.measured);
show("the same, refused", exact.refused);
console.log(
  `  brute force over a table made beforehand: ${(bruteTime / DOSES).toFixed(3)} ms a dose; answers that differ: ${worse}`,
);

// Tools whose sizes have no common measure, for which there is no table to fill.
const mixed = [...toolSet("us-spoons"), ...toolSet("metric-cups-and-spoons").slice(0, 7)];
const mixedRun = run(doses.map((dose) => ({ ...dose, tools: mixed })));
const mixedTime = show("US and metric spoons mixed, measured", mixedRun.measured);
show("the same, refused", mixedRun.refused);

const marked = [...toolSet("syringes"), ...toolSet("cylinders")];
const markedRun = run(doses.map((dose) => ({ ...dose, tools: marked })));
show("syringes and cylinders, measured", markedRun.measured);
if (markedRun.refused.length > 0) show("the same, refused", markedRun.refused);

report([
  {
    what: "`measureOut`, 10,000 random doses by 12 US spoons, cups and jugs",
    time: ours,
    against: [
      [
        ((bruteTime / DOSES) * 1e6) / ours,
        "times as fast as a look at every choice, in a table made beforehand, with the same answers",
      ],
    ],
  },
  {
    what: "the same by 12 US and metric spoons",
    time: mixedTime,
    against: [[mixedTime / ours, "times the same by US tools"]],
  },
]);
if (worse > 0) process.exitCode = 1;
