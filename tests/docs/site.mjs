// Follows every link of the built site, and looks for guide pages that it lacks: node tests/docs/site.mjs
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { dirname, join, normalize } from "node:path";
import { root } from "../package/pack.mjs";

const site = join(root, "docs/api");
const names = readdirSync(site, { recursive: true }).filter((name) => name.endsWith(".html"));
const pages = new Map(names.map((name) => [normalize(name), readFileSync(join(site, name), "utf8")]));

const faults = new Set();
let links = 0;
for (const [page, html] of pages) {
  for (const [, href] of html.matchAll(/<a\b[^>]*? href="([^"]+)"/g)) {
    if (/^[a-z]+:/.test(href)) continue;
    links++;
    const [path, place = ""] = href.split("#").map(decodeURIComponent);
    const target = path === "" ? page : normalize(join(dirname(page), path));
    const there =
      existsSync(join(site, target)) && (place === "" || pages.get(target)?.includes(` id="${place}"`));
    // A link to a file that is no page of the site gets a copy of the raw file.
    if (!there || !target.endsWith(".html")) faults.add(`${page}: ${href} leads nowhere`);
  }
}

for (const [page, html] of pages)
  if (page.startsWith("functions") && !html.includes('class="try-it"'))
    faults.add(`${page} has nothing to try`);

const { projectDocuments } = JSON.parse(readFileSync(join(root, "docs/typedoc.json"), "utf8"));
for (const name of readdirSync(join(root, "docs")).filter((one) => one.endsWith(".md")))
  if (!projectDocuments.includes(name)) faults.add(`docs/${name} is not in docs/typedoc.json`);

for (const fault of faults) console.log(fault);
console.log(`${pages.size} pages, ${links} links, ${faults.size} faults`);
if (faults.size > 0 || links === 0) process.exitCode = 1;
