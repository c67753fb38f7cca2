import { createHash } from "node:crypto";
import { readdirSync, readFileSync } from "node:fs";
import { defineConfig } from "vite";

const here = (name) => new URL(name, import.meta.url);

/** Writes the service worker with the list of all built files and a version that changes when any of them does. */
function serviceWorker() {
  return {
    name: "service-worker",
    apply: "build",
    enforce: "post",
    generateBundle(_, bundle) {
      const built = Object.values(bundle).map((file) => [file.fileName, file.code ?? file.source]);
      const copied = readdirSync(here("public")).map((name) => [name, readFileSync(here(`public/${name}`))]);
      const files = [...built, ...copied];
      const hash = createHash("sha256");
      for (const [, content] of files) hash.update(content);
      // A browser asks for the folder, not for index.html.
      const list = ["./", ...files.map(([name]) => `./${name}`)];
      const source = readFileSync(here("src/service-worker.js"), "utf8")
        .replace("__FILES__", JSON.stringify(list))
        .replace("__VERSION__", JSON.stringify(hash.digest("hex").slice(0, 12)));
      this.emitFile({ type: "asset", fileName: "sw.js", source });
    },
  };
}

export default defineConfig({
  // Relative addresses, so any folder of any server can hold the page.
  base: "./",
  build: {
    outDir: "dist-page",
    // Nothing inline: a strict Content-Security-Policy allows only files.
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
  },
  plugins: [serviceWorker()],
});
