// A file of plots as a stream of rows. Only the current rows are in memory.
import { createReadStream } from "node:fs";
import { pipeline } from "node:stream";
import { parse } from "csv-parse";
import { BatchError } from "./header.mjs";

// Without a limit, a quote that is never closed takes in the rest of the file.
const MOST_IN_ROW = 100_000;

// From a place on: each record's cells, the line that it begins on, and the place behind it.
async function* recordsOf(file, { bytes, line }) {
  const parser = parse({
    bom: bytes === 0,
    info: true,
    // A quote inside an unquoted cell is plain text: 5" nozzle.
    relax_quotes: true,
    relax_column_count: true,
    max_record_size: MOST_IN_ROW,
    record_delimiter: ["\r\n", "\n"],
  });
  // With `pipeline`, file errors come out of the parser, and nothing stays open if the reader stops early.
  pipeline(createReadStream(file, { start: bytes }), parser, () => {});
  let at = line;
  try {
    for await (const { record, info } of parser) {
      if (parser.options.encoding !== "utf8") {
        throw new BatchError(`${file} is in ${parser.options.encoding}. Save it as UTF-8.`);
      }
      // The parser counts a CRLF inside quotes as two lines.
      const after = at + lineEnds(record) + 1;
      yield { cells: record, line: at, next: { bytes: bytes + info.bytes, line: after } };
      at = after;
    }
  } catch (error) {
    if (error.code !== "CSV_QUOTE_NOT_CLOSED" && error.code !== "CSV_MAX_RECORD_SIZE") throw error;
    const limit = MOST_IN_ROW.toLocaleString("en");
    throw new BatchError(
      `line ${at}: This row has no end or is over ${limit} characters. Add the closing quote.`,
    );
  }
}

function lineEnds(cells) {
  let found = 0;
  for (const cell of cells) if (cell.includes("\n")) found += cell.split("\n").length - 1;
  return found;
}

/** The titles of the columns, and the place where the rows begin. */
export async function titlesOf(file) {
  for await (const { cells, next } of recordsOf(file, { bytes: 0, line: 1 })) {
    return { titles: cells, start: next };
  }
  throw new BatchError(`${file} is empty. The first line must name the columns.`);
}

/** The rows from a place on, by the batch, each with the place behind it. Blank lines are skipped. */
export async function* batchesOf(file, start, size) {
  let rows = [];
  let place = start;
  for await (const { cells, line, next } of recordsOf(file, start)) {
    if (cells.length === 1 && cells[0] === "") continue;
    rows.push({ line, cells });
    place = next;
    if (rows.length === size) {
      yield { rows, next: place };
      rows = [];
    }
  }
  if (rows.length > 0) yield { rows, next: place };
}
