// What the tool sets do for 10,000 random doses: how many can be measured, and how many tools that takes. Writes
// docs/measuring.md.
import { measureOut, toolSet } from "../../dist/household/index.js";
import { table, write } from "../helpers/written.mjs";

const DOSES = 10_000;
const SETS = ["us-spoons", "us-cups-and-spoons"];
const TEASPOONS_A_GALLON = 768;
const LEAST = 1 / 4;

// Park and Miller's generator: the same doses on every machine.
let seed = 20_261_128;
const random = () => {
  seed = (seed * 48_271) % 2_147_483_647;
  return seed / 2_147_483_647;
};
// Evenly over the orders of size.
const doses = Array.from({ length: DOSES }, () => ({
  value: LEAST * (TEASPOONS_A_GALLON / LEAST) ** random(),
  unit: "tsp",
}));

const median = (numbers) => [...numbers].sort((a, b) => a - b)[Math.floor(numbers.length / 2)];

function figuresOf(name) {
  const tools = toolSet(name);
  const measured = (more) =>
    doses.map((amount) => measureOut({ amount, tools, rule: "never-over", ...more })).filter(({ ok }) => ok);
  const fewest = measured({});
  const closest = measured({ closeEnoughPercent: 0 });
  const filled = (list) => median(list.map(({ scoops }) => scoops));
  const different = (list) => median(list.map(({ parts }) => parts.length));
  return [
    `${((100 * fewest.length) / DOSES).toFixed(1)}%`,
    filled(closest),
    filled(fewest),
    different(closest),
    different(fewest),
  ];
}

const columns = SETS.map(figuresOf);
const rows = [
  "can be measured within 5%",
  "tools filled per dose (median), if the closest is chosen",
  "tools filled per dose (median), if the fewest within 2% are chosen",
  "different tools per dose (median), if the closest is chosen",
  "different tools per dose (median), if the fewest within 2% are chosen",
].map((what, i) => [what, ...columns.map((figures) => figures[i])]);
const text = table(
  ["10,000 random doses, ¼ teaspoon to a gallon", ...SETS.map((name) => `\`${name}\`:`)],
  rows,
);
console.log(text);
write("docs/measuring.md", "tool sets", text);
