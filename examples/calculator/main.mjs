// Builds the page and serves it on this computer only: node main.mjs [--build-only] [--port 8080]
import { readFile } from "node:fs/promises";
import { createServer } from "node:http";
import { extname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";
import { build } from "vite";
import { buildSingleFile } from "./single-file.mjs";

const { values } = parseArgs({
  options: { "build-only": { type: "boolean" }, port: { type: "string", default: "8080" } },
});
const folder = fileURLToPath(new URL("dist-page/", import.meta.url));

const TYPES = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".svg": "image/svg+xml",
  ".webmanifest": "application/manifest+json",
};

// The policy of index.html, plus what a meta element can't set: no other page may frame this one.
const POLICY =
  "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:; connect-src 'self'; " +
  "manifest-src 'self'; worker-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";

async function answer(request, response) {
  const { pathname } = new URL(request.url, "http://127.0.0.1");
  const name = pathname === "/" ? "index.html" : pathname.slice(1);
  try {
    // `join` removes "..", so nothing outside the folder is read.
    const file = join(folder, join("/", decodeURIComponent(name)));
    const content = await readFile(file);
    response.writeHead(200, {
      "content-type": TYPES[extname(file)] ?? "application/octet-stream",
      "content-security-policy": POLICY,
      "x-content-type-options": "nosniff",
      "cache-control": "no-cache",
    });
    response.end(content);
  } catch {
    response.writeHead(404).end();
  }
}

const NAME = "swath-to-spoon.html";
const root = fileURLToPath(new URL(".", import.meta.url));
console.log("Building the page");
await build({ root, logLevel: "warn" });
console.log("Building the same as one file");
const size = await buildSingleFile(root, folder, NAME);
console.log(`Built into ${folder}: the page, and ${NAME} (${Math.ceil(size / 1000)} kB zipped) by itself`);
if (!values["build-only"]) {
  const server = createServer(answer);
  server.listen(Number(values.port), "127.0.0.1", () => {
    const { port } = server.address();
    console.log(`Open http://127.0.0.1:${port}/ in a browser. Stop with Ctrl+C.`);
  });
}
