// Turns a file of plots into a file of doses, in the same order and in constant memory, with a pool of workers. Continues
// a run that was stopped.
import { stat } from "node:fs/promises";
import { Piscina } from "piscina";
import { identityOf, readCheckpoint, removeCheckpoint, writeCheckpoint } from "./checkpoint.mjs";
import { csvOf } from "./csv.mjs";
import { DOSE_COLUMNS } from "./dose.mjs";
import { BatchError, headerOf, REFUSED_COLUMNS } from "./header.mjs";
import { openOutput, publish } from "./output.mjs";
import { batchesOf, titlesOf } from "./rows.mjs";

/**
 * Reads `input`, writes `doses` and `refused`, and returns the counts of all rows and of refused ones. Calls `report`
 * after every batch and when a run continues, with the counts so far, the batch's errors and the part of the input that is done.
 */
export async function runSeason({ input, doses, refused, workers, batch, restart, report }) {
  const files = [doses, refused];
  const checkpointFile = `${doses}.checkpoint.json`;
  const before = await stat(input);
  const identity = await identityOf(input);
  const { titles, start } = await titlesOf(input);
  const header = headerOf(titles);
  if (restart) await removeCheckpoint(checkpointFile);
  let at = await readCheckpoint(checkpointFile, identity);

  if (!at?.done) {
    const pool = poolOf(workers);
    const outputs = [];
    try {
      for (const [i, file] of files.entries()) outputs.push(await openOutput(file, at?.sizes[i] ?? 0));
      await work(outputs, pool);
    } finally {
      await pool.destroy();
      for (const output of outputs) await output.close();
    }
  }
  for (const [i, file] of files.entries()) await publish(file, at.sizes[i]);
  await removeCheckpoint(checkpointFile);
  return at.counts;

  async function work(outputs, pool) {
    if (at === undefined) {
      await outputs[0].write(csvOf([["line", ...DOSE_COLUMNS]]));
      const own = header.filter(({ name }) => !REFUSED_COLUMNS.includes(name)).map(({ title }) => title);
      await outputs[1].write(csvOf([[...REFUSED_COLUMNS, ...own]]));
      await keep(outputs, { place: start, counts: { rows: 0, refused: 0 } });
    }
    if (at.counts.rows > 0) report({ counts: at.counts, faults: [], part: at.place.bytes / before.size });
    // The oldest batch is written first, which keeps the order. Reading pauses while enough batches wait, so slow workers
    // or a slow disk hold it back.
    const running = [];
    for await (const { rows, next } of batchesOf(input, at.place, batch)) {
      const result = pool.run({ header, rows });
      // It is awaited in its turn. An error before that must not stop the process as one that nobody handles.
      result.catch(() => {});
      running.push({ next, result });
      if (running.length === 2 * workers) await settle(outputs, running.shift());
    }
    for (const one of running) await settle(outputs, one);
    const after = await stat(input);
    if (after.size !== before.size || after.mtimeMs !== before.mtimeMs) {
      throw new BatchError(`${input}: changed while it was read. Start over with --restart.`);
    }
    await keep(outputs, { ...at, done: true });
  }

  async function settle(outputs, { next, result }) {
    const found = await result;
    await outputs[0].write(found.doses);
    await outputs[1].write(found.refused);
    const counts = {
      rows: at.counts.rows + found.rows,
      refused: at.counts.refused + found.refusedRows,
    };
    await keep(outputs, { place: next, counts });
    report({ counts, faults: found.faults, part: next.bytes / before.size });
  }

  async function keep(outputs, state) {
    // The rows are on the disk before the checkpoint says so.
    const sizes = await Promise.all(outputs.map((output) => output.synced()));
    at = { identity, sizes, ...state };
    await writeCheckpoint(checkpointFile, at);
  }
}

function poolOf(workers) {
  const filename = new URL("worker.mjs", import.meta.url).href;
  return new Piscina({ filename, minThreads: workers, maxThreads: workers });
}
