import { SHEET_STYLE_HASH } from "swath-to-spoon/worksheet";
import { defineConfig } from "vite";

/**
 * Makes the page open from a file as well, with a double click: a browser loads no module from a file. The policy names the
 * hash of the style that printed sheets have.
 */
function opensAsFile() {
  return {
    name: "opens-as-file",
    transformIndexHtml: {
      order: "post",
      handler: (html) =>
        html
          .replace("'sheet-style'", SHEET_STYLE_HASH)
          .replace(/<script type="module" crossorigin/, "<script defer")
          .replace(/<link rel="stylesheet" crossorigin/, '<link rel="stylesheet"'),
    },
  };
}

export default defineConfig({
  // Relative addresses, so any folder can hold the page.
  base: "./",
  build: {
    outDir: "dist-page",
    assetsInlineLimit: 0,
    modulePreload: false,
    cssCodeSplit: false,
    // All topics in two languages: 150 kB gzipped.
    chunkSizeWarningLimit: 600,
    rollupOptions: { output: { format: "iife" } },
  },
  plugins: [opensAsFile()],
});
