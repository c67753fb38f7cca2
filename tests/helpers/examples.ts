import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";

/** A block of TypeScript in a docstring or a page, with what it says it prints. */
export interface Example {
  /** File and line. */
  readonly place: string;
  readonly code: string;
  /** The printed text, white space folded. */
  readonly prints: string;
}

/** White space in a printed object depends on the width of the terminal, so it does not count. */
export function folded(text: string): string {
  return text.replace(/\s+/g, " ").trim();
}

// What a block prints stands behind `// ` at the end of a statement, on the comment lines that follow one or a console.log
// directly, or on the comment lines that end the block.
function printed(code: string): string {
  const lines = code.split("\n");
  const comment = lines.map((line) => /^\s*\/\/ ?(.*)$/.exec(line)?.[1]);
  let end = lines.length;
  while (end > 0 && comment[end - 1] !== undefined) end--;
  const found: string[] = [];
  let following = false;
  for (const [i, line] of lines.entries()) {
    const behind = /;\s*\/\/ (.*)$/.exec(line)?.[1];
    const logged = /console\.log\(.*\);$/.test(lines[i - 1] ?? "");
    following = behind !== undefined || (comment[i] !== undefined && (following || logged || i >= end));
    if (following) found.push(behind ?? comment[i] ?? "");
  }
  return folded(found.join(" "));
}

function examplesIn(file: string, strip: RegExp): Example[] {
  const lines = readFileSync(file, "utf8").split("\n");
  const found: Example[] = [];
  for (let i = 0; i < lines.length; i++) {
    if (!/^[\s*]*```ts\s*$/.test(lines[i] ?? "")) continue;
    const place = `${file}:${i + 1}`;
    const block: string[] = [];
    for (i++; !/^[\s*]*```\s*$/.test(lines[i] ?? "```"); i++) block.push((lines[i] ?? "").replace(strip, ""));
    const code = block.join("\n");
    found.push({ place, code, prints: printed(code) });
  }
  return found;
}

function filesUnder(folder: string, ending: string): string[] {
  return readdirSync(folder, { recursive: true, encoding: "utf8" })
    .filter((name) => name.endsWith(ending) && !name.startsWith("api/"))
    .sort()
    .map((name) => join(folder, name));
}

/** Every example of the docstrings, README.md and the guide pages. */
export function allExamples(): Example[] {
  return [
    ...filesUnder("src", ".ts").flatMap((file) => examplesIn(file, /^\s*\* ?/)),
    ...["README.md", ...filesUnder("docs", ".md")].flatMap((file) => examplesIn(file, /^$/)),
  ];
}
