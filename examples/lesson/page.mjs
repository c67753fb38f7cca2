// Builds the page into dist-page: node main.mjs page
import { fileURLToPath } from "node:url";
import { build } from "vite";

await build({ root: fileURLToPath(new URL(".", import.meta.url)), logLevel: "warn" });
const page = fileURLToPath(new URL("dist-page/index.html", import.meta.url));
console.log(`Open ${page} in a browser. The folder works on a USB stick or on any web server as well.`);
