// What scripts write into pages: a table, or more, between `<!-- name: written by … -->` and `<!-- end -->`.
import { execFileSync } from "node:child_process";
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { root } from "../package/pack.mjs";

const marks = (name) => new RegExp(`(<!-- ${name}: written by [^>]*-->\n)([\\s\\S]*?)(\n<!-- end -->)`);

/** What a page has between its marks. */
export function writtenIn(page, name) {
  const found = marks(name).exec(page)?.[2];
  if (found === undefined) throw new Error(`the page has no place for ${name}`);
  return found.trim();
}

/** The page with another text between its marks. */
export function withWritten(page, name, text) {
  writtenIn(page, name);
  return page.replace(marks(name), (_, start, __, end) => `${start}\n${text}\n${end}`);
}

/** Writes a text between the marks of a page of this repository. */
export function write(path, name, text) {
  const file = join(root, path);
  writeFileSync(file, formatted(path, withWritten(readFileSync(file, "utf8"), name, text)));
}

/** A page as `npm run format` leaves it. */
export function formatted(path, text) {
  return execFileSync(join(root, "node_modules/.bin/biome"), ["format", `--stdin-file-path=${path}`], {
    cwd: root,
    input: text,
    encoding: "utf8",
    maxBuffer: 1e8,
  });
}

/** A table in Markdown. A column whose title ends in a colon is flush right, as Markdown itself says it. */
export function table(titles, rows) {
  const line = (cells) => `| ${cells.join(" | ")} |`;
  return [
    line(titles.map((title) => title.replace(/:$/, ""))),
    line(titles.map((title) => (title.endsWith(":") ? "---:" : "---"))),
    ...rows.map(line),
  ].join("\n");
}
