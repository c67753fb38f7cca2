// Runs the recipes of docs/recipes.md that need more than this project installs, as they stand there, on the packed package.
//   npm run recipes
// What they need is installed into .tmp/recipes by a lock file of its own. The recipes for browsers run in `npm test`.
import { deepStrictEqual, strictEqual } from "node:assert";
import { execFileSync, spawn } from "node:child_process";
import { once } from "node:events";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { buildSync } from "esbuild";
import { root } from "../package/pack.mjs";
import { plotsOf, postgres, withDatabase } from "./postgres.mjs";
import { prepared } from "./prepared.mjs";

const { folder, recipe } = prepared(["fastify.mjs", "express.mjs", "serve.mjs", "dose.test.js", "lines.mjs"]);
buildSync({
  entryPoints: [join(root, "tests/recipes/jobs.ts")],
  bundle: true,
  format: "esm",
  platform: "node",
  outfile: join(folder, "jobs.mjs"),
  logLevel: "error",
});
const load = (name) => import(pathToFileURL(join(folder, name)).href);
const { jobs, verdict } = await load("jobs.mjs");

let passed = 0;
let failed = 0;
async function check(name, work) {
  const start = performance.now();
  let told = "passed";
  try {
    const more = await work();
    if (more !== undefined) told += `, ${more}`;
    passed++;
  } catch (error) {
    told = `FAILED: ${error.stack}`;
    failed++;
  }
  console.log(`${name}: ${told}  (${((performance.now() - start) / 1000).toFixed(1)} s)`);
}

/** Right and wrong jobs at random, each answered as the library answers it, and read as it was sent. */
async function answersAsTheLibrary(post, count) {
  const tally = { 200: 0, 400: 0 };
  for (const job of jobs(count)) {
    const sent = JSON.stringify(job) ?? "null";
    const { status, body } = await post(sent);
    const expected = verdict(JSON.parse(sent));
    strictEqual(status, expected.status, `${sent} was answered ${JSON.stringify(body)}`);
    if (status === 200) deepStrictEqual(body, expected.body);
    tally[status]++;
  }
  if (tally[200] < count / 20 || tally[400] < count / 20) throw new Error("too few of one kind");
  return `${tally[200]} right and ${tally[400]} wrong jobs`;
}

await check("Fastify", async () => {
  const { app } = await load("fastify.mjs");
  const post = async (payload) => {
    const response = await app.inject({
      method: "POST",
      url: "/plan",
      headers: { "content-type": "application/json" },
      payload,
    });
    return { status: response.statusCode, body: response.json() };
  };
  const misspelled = { ...jobs(1)[0], sprayer: { tank: "4 gal", workingFil: "3 gal" } };
  strictEqual((await post(JSON.stringify(misspelled))).status, 400);
  const told = await answersAsTheLibrary(post, 2000);
  await app.close();
  return told;
});

const postTo = (address) => async (body) => {
  const response = await fetch(address, {
    method: "POST",
    headers: { "content-type": "application/json" },
    body,
  });
  return { status: response.status, body: await response.json() };
};

await check("Express", async () => {
  const { app } = await load("express.mjs");
  const server = app.listen(0, "127.0.0.1");
  await once(server, "listening");
  const told = await answersAsTheLibrary(postTo(`http://127.0.0.1:${server.address().port}/plan`), 500);
  server.close();
  return told;
});

for (const [name, command] of [
  ["Deno", ["deno@2", "run", "--allow-net", "--allow-read", "serve.mjs"]],
  ["Bun", ["bun@1", "serve.mjs"]],
])
  await check(name, async () => {
    const server = spawn("npx", ["-y", ...command], { cwd: folder, stdio: "ignore", detached: true });
    try {
      const post = postTo("http://127.0.0.1:8080/");
      await answering(() => post("{}"));
      return await answersAsTheLibrary(post, 500);
    } finally {
      // npx and what it started.
      process.kill(-server.pid);
      await once(server, "exit");
    }
  });

async function answering(ask) {
  for (let tries = 0; ; tries++) {
    try {
      return await ask();
    } catch (error) {
      if (tries === 300) throw error;
      await new Promise((again) => setTimeout(again, 200));
    }
  }
}

await check("Jest", () => {
  execFileSync("npx", ["jest", "--rootDir", folder, "dose.test.js"], { cwd: folder, stdio: "pipe" });
});

const { programs, lacks } = postgres();
if (programs === undefined) {
  console.log(`PostgreSQL: skipped, ${lacks}`);
  if (process.env.CI) failed++;
} else
  await check("PostgreSQL", () =>
    withDatabase(programs, folder, (ask) => {
      ask(recipe("spray.sql"));
      ask(plotsOf(500));
      const helpers = "ALTER TABLE plots SET (parallel_workers = 1);";
      const plan = ask(`${helpers} EXPLAIN SELECT id, job, spray(job) FROM plots;`);
      if (!/Workers Planned: 1/.test(plan))
        throw new Error(`the rows are not worked out in parallel: ${plan}`);
      const rows = JSON.parse(ask("SELECT json_agg(json_build_array(job, spray(job))) FROM plots;"));
      for (const [job, answer] of rows) {
        const { status, body } = verdict({ ...job, split: "equal" });
        if (status === 400) strictEqual(answer.issues[0].path, "products[0].rate");
        else {
          strictEqual(answer.loads, body.loads.length);
          for (const { products } of body.loads)
            deepStrictEqual(
              answer.each,
              products.map(({ name, amount }) => ({ name, amount })),
            );
        }
      }
      return `${rows.length} rows`;
    }),
  );

console.log(`${passed} passed, ${failed} failed`);
process.exitCode = failed === 0 ? 0 : 1;
