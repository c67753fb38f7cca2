// What the site needs beside typedoc's options: pages named by their headings, modules by the way they are imported, with the
// questions that their functions answer; words for the lines of working; search that finds those questions; a policy without inline
// scripts; source pages that need no network; and on each function's page its example, to try.
import { copyFileSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { buildSync } from "esbuild";
import {
  Comment,
  Converter,
  DocumentReflection,
  IndexEvent,
  PageEvent,
  ReflectionKind,
  RendererEvent,
} from "typedoc";
import { ENGLISH_PRACTICE_WORDS } from "../dist/practice/index.js";
import { callIn } from "./site/examples.mjs";

const here = dirname(fileURLToPath(import.meta.url));
const QUESTIONS = questions();

/** Each module's part of docs/which-function.md: its sentences, and its questions with their functions. */
function questions() {
  const page = readFileSync(join(here, "which-function.md"), "utf8");
  const parts = new Map();
  for (const part of page.split(/^## /m).slice(1)) {
    const [name, ...lines] = part.trim().split("\n");
    const rows = lines.filter((line) => line.startsWith("|")).slice(2);
    parts.set(name === "swath-to-spoon" ? name : `swath-to-spoon/${name}`, {
      sentences: lines
        .filter((line) => !line.startsWith("|"))
        .join("\n")
        .trim(),
      rows: rows.map((row) =>
        row
          .split("|")
          .slice(1, 3)
          .map((cell) => cell.trim()),
      ),
    });
  }
  return parts;
}

export function load(app) {
  app.converter.on(Converter.EVENT_CREATE_DOCUMENT, (_, page) => {
    const heading = /^# (.+)$/m.exec(page.content[0]?.text ?? "");
    if (heading) page.name = heading[1];
  });

  app.converter.on(Converter.EVENT_CREATE_DECLARATION, (_, module) => {
    if (!module.kindOf(ReflectionKind.Module)) return;
    const path = module.name.replace(/^src\/?/, "");
    module.name = path === "" ? "swath-to-spoon" : `swath-to-spoon/${path}`;
  });

  app.converter.on(Converter.EVENT_RESOLVE_BEGIN, ({ project }) => {
    // The site's front page has the project's name above it already.
    const [first] = project.readme ?? [];
    if (first) first.text = first.text.replace(/^# .*\n/, "");

    // What a line finds is told once, in the table of words.
    for (const property of project.getReflectionsByKind(ReflectionKind.Property)) {
      if (!/^(Known|Practice)Lines$/.test(property.parent?.name)) continue;
      const words = ENGLISH_PRACTICE_WORDS.lines[property.name];
      if (words) property.comment = new Comment([{ kind: "text", text: `Finds: ${words.found}.` }]);
    }

    const functions = project.getReflectionsByKind(ReflectionKind.Function);
    for (const module of project.getReflectionsByKind(ReflectionKind.Module))
      module.comment = introduction(module, functions);
  });

  // What the language itself declares has no page here.
  app.converter.on(Converter.EVENT_RESOLVE_END, ({ project }) => {
    for (const reflection of Object.values(project.reflections))
      reflection.sources = reflection.sources?.filter(({ fileName }) => !fileName.includes("node_modules"));
  });

  withSearch(app);
  withTrials(app);
  withPolicyAndSource(app);
}

/** Two sentences and a table from questions to functions, which links to them. */
function introduction(module, functions) {
  const { sentences, rows } =
    QUESTIONS.get(module.name) ?? missing(`${module.name} is not in docs/which-function.md`);
  const parts = [{ kind: "text", text: `${sentences}\n\n| Question | Function |\n| --- | --- |\n` }];
  for (const [question, cell] of rows) {
    parts.push({ kind: "text", text: `| ${question} | ` });
    for (const piece of cell.split(/(`\w+`)/)) {
      const name = /^`(\w+)`$/.exec(piece)?.[1];
      const target = name && (module.getChildByName([name]) ?? functions.find((one) => one.name === name));
      if (name && !target) missing(`docs/which-function.md names ${name}, which ${module.name} hasn't`);
      parts.push(
        target ? { kind: "inline-tag", tag: "@link", text: name, target } : { kind: "text", text: piece },
      );
    }
    parts.push({ kind: "text", text: " |\n" });
  }
  return new Comment(parts);
}

function missing(what) {
  throw new Error(what);
}

/** Search looks at questions too, and finds a word without its accents. */
function withSearch(app) {
  app.renderer.on(IndexEvent.PREPARE_INDEX, (event) => {
    // Heavy: what few entries have counts for little where most have nothing.
    event.searchFieldWeights.question = 60;
    event.searchResults.forEach((result, i) => {
      const rows = QUESTIONS.get(result.parent?.name)?.rows ?? [];
      const asked = rows
        .filter(([, cell]) => cell.includes(`\`${result.name}\``))
        .map(([question]) => question);
      const text =
        result instanceof DocumentReflection ? result.content.map((part) => part.text).join("") : "";
      const plain = (text.match(/[\w\u00c0-\u024f]*[\u00c0-\u024f][\w\u00c0-\u024f]*/g) ?? []).map((word) =>
        word.normalize("NFD").replace(/\p{M}/gu, ""),
      );
      event.searchFields[i].question = [...asked, ...new Set(plain)].join(" ");
    });
  });
}

/** On the page of a function, its example with the input to change, run by the library as built. */
function withTrials(app) {
  const calls = new Map();
  app.renderer.preRenderAsyncJobs.push(async ({ project }) => {
    for (const reflection of project.getReflectionsByKind(ReflectionKind.Function)) {
      const tags = (reflection.signatures ?? []).flatMap(({ comment }) => comment?.getTags("@example") ?? []);
      for (const { content } of tags) {
        const code = content
          .map(({ text }) => text)
          .join("")
          .replace(/^\s*```\w*\n|```\s*$/g, "");
        const call = await callIn(code, reflection.parent.name, reflection.name);
        if (call !== undefined && !calls.has(reflection)) calls.set(reflection, call);
      }
    }
  });
  app.renderer.on(PageEvent.END, (page) => {
    const call = calls.get(page.model);
    if (call === undefined) return;
    const rows = Math.min(18, Math.max(4, call.split("\n").length + 1));
    const form = `<section class="tsd-panel"><h2>Try it</h2><form class="try-it" data-module="${page.model.parent.name}">
<textarea rows="${rows}" spellcheck="false" autocapitalize="off" aria-label="A call of ${page.model.name}">${escaped(call)}</textarea>
<button type="submit">Run</button> <output></output></form></section>`;
    page.contents = page.contents.replace(
      '<div class="col-sidebar">',
      () => `${form}<div class="col-sidebar">`,
    );
    // Inside the column of the text.
    page.contents = page.contents.replace(
      /<\/div>\s*(<section class="tsd-panel"><h2>Try it[\s\S]*?<\/section>)/,
      "$1</div>\n",
    );
    page.contents = page.contents.replace("</head>", '<script defer src="../assets/try.js"></script></head>');
  });
  app.renderer.on(RendererEvent.END, ({ outputDirectory }) => {
    const assets = join(outputDirectory, "assets");
    copyFileSync(join(here, "site/try.js"), join(assets, "try.js"));
    const { exports } = JSON.parse(readFileSync(join(here, "../package.json"), "utf8"));
    const entries = Object.entries(exports).filter(([, to]) => to.import !== undefined);
    const imports = entries.map(
      ([, to], i) => `import * as m${i} from ".${to.import.default.replace("./dist", "/dist")}";`,
    );
    const names = entries.map(([from], i) => `${JSON.stringify(from.replace(".", "swath-to-spoon"))}: m${i}`);
    buildSync({
      stdin: {
        contents: `${imports.join("\n")}\nglobalThis.swathToSpoon = { ${names.join(", ")} };`,
        resolveDir: join(here, ".."),
      },
      outfile: join(assets, "library.js"),
      bundle: true,
      minify: true,
      format: "iife",
      logLevel: "error",
    });
  });
}

const POLICY =
  // The hash is that of a style without content, which typedoc's script adds to every page.
  "default-src 'none'; script-src 'self'; style-src 'self' 'sha256-47DEQpj8HBSa+/TImW+5JCeuQeRkm5NMpJWZG3hSuFU='; img-src 'self' data:; connect-src 'self'; base-uri 'none'; form-action 'none'";

/** No inline script and no inline style, so the policy needs no exception; and the sources as pages of the site. */
function withPolicyAndSource(app) {
  let inline;
  app.renderer.on(PageEvent.END, (page) => {
    page.contents = page.contents
      .replace("<head>", `<head><meta http-equiv="Content-Security-Policy" content="${POLICY}"/>`)
      .replaceAll('style="text-align:right"', 'class="right"')
      .replace(/<script>([^<]+)<\/script>/, (_, code) => {
        inline = code;
        return `<script src="${/data-base="([^"]*)"/.exec(page.contents)?.[1] ?? ""}assets/first.js"></script>`;
      });
  });
  app.renderer.on(RendererEvent.END, ({ outputDirectory }) => {
    writeFileSync(
      join(outputDirectory, "assets/first.js"),
      inline ?? missing("typedoc has no inline script any more"),
    );
    for (const name of readdirSync(join(here, "../src"), { recursive: true, encoding: "utf8" })) {
      if (!name.endsWith(".ts")) continue;
      const file = join(outputDirectory, "source", `${name}.html`);
      mkdirSync(dirname(file), { recursive: true });
      writeFileSync(file, sourcePage(`src/${name}`, readFileSync(join(here, "../src", name), "utf8")));
    }
  });
}

function sourcePage(name, source) {
  const up = "../".repeat(name.split("/").length - 1);
  const lines = source
    .trimEnd()
    .split("\n")
    .map((line, i) => `<li id="L${i + 1}">${escaped(line)}</li>`);
  return `<!DOCTYPE html><html lang="en"><head><meta http-equiv="Content-Security-Policy" content="${POLICY}"/><meta charset="utf-8"/><meta name="viewport" content="width=device-width, initial-scale=1"/><title>${name}</title><link rel="stylesheet" href="${up}assets/style.css"/><link rel="stylesheet" href="${up}assets/custom.css"/></head><body><h1>${name}</h1><p><a href="${up}index.html">swath-to-spoon</a></p><ol class="source">
${lines.join("\n")}
</ol></body></html>
`;
}

function escaped(text) {
  const signs = { "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;" };
  return text.replace(/[&<>"]/g, (sign) => signs[sign]);
}
