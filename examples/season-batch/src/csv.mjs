// Rows as CSV text by RFC 4180, safe to open in a spreadsheet.
import { stringify } from "csv-stringify/sync";
import { NUMBER } from "./dose.mjs";

// A spreadsheet runs a cell that starts like this as a formula, quoted or not. A "'" before it makes it text. The wide forms are
// those of East Asian keyboards.
const FORMULA = /^[=+\-@\t\r\n\0\uFF1D\uFF0B\uFF0D\uFF20]/;

function safe(cell) {
  return typeof cell === "string" && FORMULA.test(cell) && !NUMBER.test(cell) ? `'${cell}` : cell;
}

export function csvOf(rows) {
  // The writer quotes its own line ends; a lone line feed or carriage return needs quotes too.
  return stringify(
    rows.map((row) => row.map(safe)),
    { record_delimiter: "windows", quoted_match: /[\r\n]/ },
  );
}
