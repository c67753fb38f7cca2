import { Bench } from "tinybench";

/** Times each function and gives its median nanoseconds a call. One `batch` of calls is one sample, so that the clock's grain does not count. */
export async function medians(functions, batch = 1000) {
  const bench = new Bench({ time: 400, warmupTime: 100 });
  for (const [name, work] of Object.entries(functions)) {
    bench.add(name, () => {
      for (let i = 0; i < batch; i++) work(i);
    });
  }
  await bench.run();
  return Object.fromEntries(bench.tasks.map((task) => [task.name, (task.result.latency.p50 * 1e6) / batch]));
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
