// The page as one HTML file, for a web master to drop into any site or frame: nothing is loaded, not even Spanish.
import { createHash } from "node:crypto";
import { readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import { build } from "vite";

/** Builds the one file into a folder, and returns its size in bytes, zipped as a server sends it. */
export async function buildSingleFile(root, folder, name) {
  const { output } = await build({
    root,
    mode: "single",
    logLevel: "warn",
    build: { write: false, rollupOptions: { output: { codeSplitting: false } } },
  });
  const text = (ending) => {
    const file = output.find(({ fileName }) => fileName.endsWith(ending));
    return String(file.code ?? file.source);
  };
  // Inside a script element only its end has to be written otherwise.
  const script = text(".js").replaceAll("</script", "<\\/script");
  const style = text(".css");
  const icon = await readFile(join(root, "public/icon.svg"));
  const hash = (content) => `'sha256-${createHash("sha256").update(content).digest("base64")}'`;
  const policy =
    `default-src 'none'; script-src ${hash(script)}; style-src ${hash(style)}; ` +
    "img-src data:; base-uri 'none'; form-action 'none'";
  const html = text(".html")
    .replace(/ {4}<(?:script|link)[^>]*>(?:<\/script>)?\n/g, "")
    .replace(/content="default-src[^"]*"/, () => `content="${policy}"`)
    .replace(
      "</head>",
      () =>
        `<link rel="icon" href="data:image/svg+xml;base64,${icon.toString("base64")}">` +
        `<style>${style}</style></head>`,
    )
    .replace("</body>", () => `<script type="module">${script}</script></body>`);
  await writeFile(join(folder, name), html);
  return gzipSync(html).length;
}
