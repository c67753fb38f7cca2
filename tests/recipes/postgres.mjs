// A PostgreSQL of its own for the recipe in docs/recipes.md: made, filled, asked, and thrown away.
//   node tests/recipes/postgres.mjs [rows]    how fast a million rows are, by how many processes work on them: written into
//                                             docs/recipes.md, unless a number of rows is given
import { execFileSync } from "node:child_process";
import { chmodSync, existsSync, mkdtempSync, readdirSync, rmSync } from "node:fs";
import { availableParallelism, tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { rounded } from "../bench/speed.mjs";
import { table, write } from "../helpers/written.mjs";
import { prepared } from "./prepared.mjs";

/** The programs of a PostgreSQL that has the language of the recipe, or why there are none. */
export function postgres() {
  const folders = existsSync("/usr/lib/postgresql") ? readdirSync("/usr/lib/postgresql") : [];
  for (const version of folders.sort().reverse()) {
    const programs = `/usr/lib/postgresql/${version}/bin`;
    const language = `/usr/lib/postgresql/${version}/lib/plpython3.so`;
    if (existsSync(`${programs}/initdb`) && existsSync(language)) return { programs };
  }
  return {
    lacks:
      "no PostgreSQL with plpython3u; on Debian and Ubuntu: apt-get install postgresql, and the postgresql-plpython3 of its version",
  };
}

/** Runs the recipe in a new database, hands what asks it to `work`, and removes everything. */
export async function withDatabase(programs, folder, work) {
  const place = mkdtempSync(join(tmpdir(), "postgres-"));
  const data = join(place, "data");
  // The server refuses to run as root.
  const isRoot = process.getuid?.() === 0;
  if (isRoot) execFileSync("chown", ["postgres", place]);
  else chmodSync(place, 0o700);
  const as = (program, args, input) => {
    const command = [`${programs}/${program}`, ...args];
    const [first, ...rest] = isRoot ? ["runuser", "-u", "postgres", "--", ...command] : command;
    const env = { ...process.env, SPRAY: folder };
    return execFileSync(first, rest, {
      cwd: place,
      encoding: "utf8",
      input,
      env,
      stdio: ["pipe", "pipe", "pipe"],
    });
  };
  as("initdb", ["-D", data, "-U", "postgres", "-A", "trust", "--no-sync"]);
  const options = `-c listen_addresses= -c unix_socket_directories=${place} -c fsync=off`;
  as("pg_ctl", ["-D", data, "-l", join(place, "log"), "-o", options, "-w", "start"]);
  try {
    const ask = (sql) =>
      as("psql", ["-h", place, "-U", "postgres", "-v", "ON_ERROR_STOP=1", "-XqAt", "-f", "-"], sql).trim();
    return await work(ask);
  } finally {
    as("pg_ctl", ["-D", data, "-m", "immediate", "stop"]);
    rmSync(place, { recursive: true, force: true });
  }
}

/** Plots that all differ, a job each. */
export const plotsOf = (rows) => `
CREATE TABLE plots AS SELECT i AS id, jsonb_build_object(
  'plot', jsonb_build_object('kind', 'rectangle', 'length', 60 + i % 997 / 10.0 || ' ft', 'width', 40 + i % 1009 / 20.0 || ' ft'),
  'calibration', jsonb_build_object('kind', 'known', 'rate', 15 + i % 31 || ' gal/ac'),
  'sprayer', jsonb_build_object('tank', '4 gal'),
  'products', jsonb_build_array(jsonb_build_object(
    'name', 'Product A', 'form', 'liquid', 'rate', CASE WHEN i % 100 = 0 THEN '2 lb/ac' ELSE 1 + i % 8 / 4.0 || ' pt/ac' END)),
  'tools', 'us-household') AS job
FROM generate_series(1, ${rows}) AS i;
ANALYZE plots;`;

if (import.meta.url === pathToFileURL(process.argv[1] ?? "").href) {
  const rows = Number(process.argv[2] ?? 1_000_000);
  const { programs, lacks } = postgres();
  if (lacks !== undefined) throw new Error(lacks);
  const { folder, recipe } = prepared(["lines.mjs", "spray.sql"]);
  const measured = [];
  await withDatabase(programs, folder, (ask) => {
    ask(recipe("spray.sql"));
    ask(plotsOf(rows));
    for (let processes = 1; processes <= availableParallelism(); processes *= 2) {
      const helpers = processes - 1;
      const settings = `ALTER TABLE plots SET (parallel_workers = ${helpers}); SET max_parallel_workers_per_gather = ${helpers};`;
      const start = performance.now();
      const found = ask(`${settings} SELECT count(spray(job)->'loads') FROM plots;`);
      const seconds = (performance.now() - start) / 1000;
      console.log(
        `${processes} processes: ${rows} rows in ${seconds.toFixed(1)} s, ${Math.round(rows / seconds)} a second; ${found} planned`,
      );
      measured.push([processes, rows.toLocaleString("en"), rounded(rows / seconds)]);
    }
  });
  if (process.argv[2] === undefined)
    write(
      "docs/recipes.md",
      "postgres",
      `One run, on ${availableParallelism()} cores:\n\n${table(["Processes:", "Rows:", "Rows per second:"], measured)}`,
    );
}
