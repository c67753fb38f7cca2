// What a SQL engine or a queue worker calls: text in, text out, nothing kept between two calls.
import { DOSE_COLUMNS, doseOf } from "./dose.mjs";
import { headerOf } from "./header.mjs";

/** A row as JSON, `{ "plot": "Peppers", "tank (gal)": "4", … }`, to `{ "dose": { … } }` or `{ "faults": [ … ] }` as JSON. */
export function sprayDose(json) {
  const row = JSON.parse(json);
  const header = headerOf(Object.keys(row));
  const { dose, faults } = doseOf(
    header,
    header.map(({ title }) => row[title] ?? ""),
  );
  return JSON.stringify(
    faults ? { faults } : { dose: Object.fromEntries(DOSE_COLUMNS.map((name, i) => [name, dose[i]])) },
  );
}
