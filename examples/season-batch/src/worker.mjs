// Runs in a worker thread: turns a batch of rows into the text of doses and of refused rows.
import { csvOf } from "./csv.mjs";
import { doseOf } from "./dose.mjs";
import { REFUSED_COLUMNS } from "./header.mjs";

export default function doBatch({ header, rows }) {
  const own = header.flatMap(({ name }, i) => (REFUSED_COLUMNS.includes(name) ? [] : [i]));
  const doses = [];
  const refused = [];
  const faults = [];
  for (const { line, cells } of rows) {
    const { dose, faults: found } = doseOf(header, cells);
    if (dose) {
      doses.push([line, ...dose]);
      continue;
    }
    faults.push(...found.map((fault) => ({ line, ...fault })));
    const why = found.map(({ column, message }) => (column ? `${column}: ${message}` : message)).join("\n");
    // Extra cells are kept too, so nothing of a refused row is lost.
    refused.push([line, why, ...own.map((i) => cells[i] ?? ""), ...cells.slice(header.length)]);
  }
  return {
    doses: csvOf(doses),
    refused: csvOf(refused),
    rows: rows.length,
    refusedRows: refused.length,
    faults,
  };
}
