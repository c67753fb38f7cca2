import { Bench } from "tinybench";

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
