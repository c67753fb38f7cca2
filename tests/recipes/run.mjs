// Runs the recipes of docs/recipes.md that need more than this project installs, as they stand there, on the packed package.
//   npm run recipes
// What they need is installed into .tmp/recipes by a lock file of its own. The recipes for browsers run in `npm test`.
import { deepStrictEqual, strictEqual } from "node:assert";
import { once } from "node:events";
import { copyFileSync, existsSync, mkdirSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { buildSync } from "esbuild";
import { writeRecipes } from "../helpers/recipes.mjs";
import { changed, installInto, npm, root } from "../package/pack.mjs";

const HERE = join(root, "tests/recipes");
const folder = join(root, ".tmp/recipes");

mkdirSync(folder, { recursive: true });
const installed = join(folder, "node_modules/.package-lock.json");
if (!existsSync(installed) || changed(installed) < changed(join(HERE, "package-lock.json"))) {
  console.log("Installing what the recipes need into .tmp/recipes …");
  for (const name of ["package.json", "package-lock.json", ".npmrc"])
    copyFileSync(join(HERE, name), join(folder, name));
  npm(["ci"], folder);
}
installInto(folder);
writeRecipes(folder, ["fastify.mjs", "express.mjs"]);
buildSync({
  entryPoints: [join(HERE, "jobs.ts")],
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

await check("Express", async () => {
  const { app } = await load("express.mjs");
  const server = app.listen(0, "127.0.0.1");
  await once(server, "listening");
  const address = `http://127.0.0.1:${server.address().port}/plan`;
  const told = await answersAsTheLibrary(async (body) => {
    const response = await fetch(address, {
      method: "POST",
      headers: { "content-type": "application/json" },
      body,
    });
    return { status: response.status, body: await response.json() };
  }, 500);
  server.close();
  return told;
});

console.log(`${passed} passed, ${failed} failed`);
process.exitCode = failed === 0 ? 0 : 1;
