// The page as one HTML file, for a web master to drop into any site or frame: nothing is loaded, not even Spanish.
import { createHash } from "node:crypto";
import { readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import { SPANISH_WORDS } from "swath-to-spoon/words/es";
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
  const script = lean(text(".js")).replaceAll("</script", "<\\/script");
  const style = text(".css");
  const icon = await readFile(join(root, "public/icon.svg"), "utf8");
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
        `<link rel="icon" href="data:image/svg+xml,${encodeURIComponent(icon)}">` +
        `<style>${style}</style></head>`,
    )
    .replace("</body>", () => `<script type="module">${script}</script></body>`);
  await writeFile(join(folder, name), html);
  return gzipSync(html).length;
}

/** The script without sentences that this page never shows. */
function lean(script) {
  // What the library says of each field: the page has labels of its own. A call takes it first, which it never does with a message.
  // One that holds a name as code stands in other quotes.
  let text = script.replace(/(?<![\w$.])([\w$]+\()(?:`[A-Z][^`$]*\.`|"[A-Z`][^"\\]*\.")(?=[,)])/g, "$1``");
  // Spanish for errors that nothing in the script raises: their keys stand nowhere else.
  for (const [key, sentence] of Object.entries(SPANISH_WORDS.issues))
    if (text.split(key).length === 2) text = text.replace(`"${key}":\`${sentence}\`,`, "");
  return text;
}
