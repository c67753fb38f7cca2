// The table of speeds in docs/performance.md: its rows come from the benches, its figures from several runs of each.
import { table } from "../helpers/written.mjs";

/**
 * Hands rows of the table to tests/bench/run.mjs: `what`, its `time` in nanoseconds, and `against`, a ratio and what it is
 * a ratio to.
 */
export function report(rows) {
  process.send?.(rows);
}

/** Two digits, which the next run gives too. */
export function rounded(number) {
  return Number(number.toPrecision(2)).toLocaleString("en");
}

/** The least and the most of several runs. */
export function range(numbers) {
  const [least, most] = [rounded(Math.min(...numbers)), rounded(Math.max(...numbers))];
  return least === most ? least : `${least} to ${most}`;
}

function timeOf(nanoseconds) {
  const [unit, size] = Math.max(...nanoseconds) < 1e6 ? ["µs", 1e3] : ["ms", 1e6];
  return `${range(nanoseconds.map((one) => one / size))} ${unit}`;
}

/** The rows that one bench gave in each of its runs, as one table's. */
export function rowsOf(runs) {
  return runs[0].map(({ what, against }, i) => {
    const same = runs.map((rows) => rows[i]);
    const ratios = against.map(([, to], j) => `${range(same.map((row) => row.against[j][0]))} ${to}`);
    return [what, timeOf(same.map(({ time }) => time)), ratios.join("; ")];
  });
}

export function speedTable(rows) {
  return table(["What", "Time a call:", "Against"], rows);
}
