import { join } from "node:path";
import { gzipSync } from "node:zlib";
import { build } from "esbuild";
import { root } from "../package/pack.mjs";

/** What a page that imports this from dist has to load: kB of 1,000 bytes, minified and gzipped, dependencies included. */
export async function bundleSize(code, plugins = []) {
  const { outputFiles } = await build({
    stdin: { contents: code, resolveDir: join(root, "dist") },
    bundle: true,
    minify: true,
    format: "esm",
    platform: "browser",
    write: false,
    logLevel: "error",
    logOverride: { "ignored-bare-import": "silent" },
    plugins,
  });
  return gzipSync(outputFiles[0].contents).length / 1000;
}
