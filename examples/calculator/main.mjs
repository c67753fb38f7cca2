// Builds the page and serves it on this computer only: node main.mjs [--build-only] [--port 8080]
import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";
import { build, preview } from "vite";
import { buildSingleFile } from "./single-file.mjs";

const { values } = parseArgs({
  options: { "build-only": { type: "boolean" }, port: { type: "string", default: "8080" } },
});
const root = fileURLToPath(new URL(".", import.meta.url));
const folder = join(root, "dist-page/");
const NAME = "swath-to-spoon.html";

// Libraries have builds for developers, which warn in the console.
process.env.NODE_ENV = "production";
console.log("Building the page");
await build({ root, logLevel: "warn" });
console.log("Building the same as one file");
const size = await buildSingleFile(root, folder, NAME);
console.log(`Built into ${folder}: the page, and ${NAME} (${Math.ceil(size / 1000)} kB zipped) by itself`);
if (!values["build-only"]) {
  // The policy of the page, plus what a meta element can't set: no other page may frame this one.
  const [, policy] = /content="(default-src[^"]*)"/.exec(await readFile(join(root, "index.html"), "utf8"));
  const headers = {
    "content-security-policy": `${policy}; frame-ancestors 'none'`,
    "x-content-type-options": "nosniff",
    "cache-control": "no-cache",
  };
  const server = { host: "127.0.0.1", port: Number(values.port), headers };
  const { httpServer } = await preview({ root, appType: "mpa", preview: server });
  console.log(`Open http://127.0.0.1:${httpServer.address().port}/ in a browser. Stop with Ctrl+C.`);
}
