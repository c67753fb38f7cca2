// The same doses in a SQL engine, and a question for SQL: how much of each product does each farm need?
//   node sql.mjs [plots.csv]
import { fileURLToPath } from "node:url";
import { DuckDBInstance, DuckDBScalarFunction, VARCHAR } from "@duckdb/node-api";
import { sprayDose } from "./src/spray-dose.mjs";

const [file = fileURLToPath(new URL("plots.csv", import.meta.url))] = process.argv.slice(2);
const database = await DuckDBInstance.create(":memory:");
const connection = await database.connect();

connection.registerScalarFunction(
  DuckDBScalarFunction.create({
    name: "spray_dose",
    parameterTypes: [VARCHAR],
    returnType: VARCHAR,
    // The engine hands over a few thousand rows at a time.
    mainFunction(call, input, output) {
      const rows = input.getColumnVector(0);
      try {
        for (let i = 0; i < input.rowCount; i++) output.setItem(i, sprayDose(rows.getItem(i)));
        output.flush();
      } catch (error) {
        call.setError(error.message);
      }
    },
  }),
);

const print = async (query) => {
  const reader = await connection.runAndReadAll(query);
  for (const row of reader.getRowObjectsJson()) console.log(JSON.stringify(row));
};

// The engine's reader sets aside a row with too many cells.
await connection.run(
  `CREATE TABLE worked AS
   SELECT farm, plot, spray_dose(to_json(plots)::VARCHAR)::JSON AS result
   FROM read_csv($file, header = true, all_varchar = true, delim = ',', quote = '"', escape = '"',
     store_rejects = true) AS plots`,
  { file },
);
await print(
  `SELECT farm, result->>'$.dose.product' AS product, sum((result->>'$.dose.product_in_all')::DOUBLE) AS amount,
     result->>'$.dose.product_unit' AS unit, count(*)::INTEGER AS plots
   FROM worked WHERE (result->'$.dose') IS NOT NULL
   GROUP BY ALL ORDER BY farm, product`,
);
await print(
  `SELECT farm, plot, result->>'$.faults[0].column' AS "column", result->>'$.faults[0].message' AS fault
   FROM worked WHERE (result->'$.faults') IS NOT NULL`,
);
await print("SELECT csv_line AS refused, error_message AS fault FROM reject_errors");
