import { Bench } from "tinybench";
import { qty } from "../../dist/units/index.js";

/** Times each function and gives its median nanoseconds a call. One `batch` of calls is one sample, so that the clock's grain does not count. */
export function medians(functions, batch = 1000) {
  return timed(functions, batch, "p50");
}

/** The least nanoseconds a call: what the work itself takes, where a single call is long enough to meet a garbage collection. */
export function leasts(functions) {
  return timed(functions, 1, "min");
}

async function timed(functions, batch, statistic) {
  // The engine compiles what a plan runs for some seconds on a busy machine: what is measured before then is its compiler.
  const bench = new Bench({ time: 600, warmupTime: 4000, throws: true });
  for (const [name, work] of Object.entries(functions)) {
    bench.add(name, () => {
      for (let i = 0; i < batch; i++) work(i);
    });
  }
  await bench.run();
  return Object.fromEntries(
    bench.tasks.map((task) => [task.name, (task.result.latency[statistic] * 1e6) / batch]),
  );
}

/** Prints each median beside its ratio to a named baseline. */
export function printRatios(title, times, baseline) {
  console.log(`\n${title} (median ns a call; ratio to "${baseline}")`);
  for (const [name, time] of Object.entries(times)) {
    console.log(
      `  ${name.padEnd(48)} ${time.toFixed(1).padStart(10)}  ${(time / times[baseline]).toFixed(2).padStart(9)}x`,
    );
  }
}

/** A job in bands along rows: a liquid and a dry product, two loads. `used` is the water on the test strip, in fluid ounces. */
export function rowJob(used) {
  return {
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
  };
}
