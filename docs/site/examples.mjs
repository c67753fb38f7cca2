// The calls that the examples in docstrings make, as text: what a page of the site offers to try, with its input to change.
import { createRequire } from "node:module";
import { transformSync } from "esbuild";

const library = createRequire(import.meta.url);
const WIDTH = 76;

/** The call of a function in one of its examples, or undefined where it can't be written down. */
export async function callIn(example, module, name) {
  const calls = [];
  const written = new Map();
  const modules = {};

  /** A module whose functions note how they are called, and where each of their results comes from. */
  function watched(path) {
    modules[path] ??= Object.fromEntries(
      Object.entries(library(path)).map(([key, value]) => {
        if (typeof value === "function" && !/^class\b/.test(String(value)))
          return [key, noting(path, key, value)];
        // A table of the library is written by its name.
        if (typeof value === "object" && value !== null) written.set(value, key);
        return [key, value];
      }),
    );
    return modules[path];
  }

  function noting(path, key, work) {
    return (...args) => {
      const text = () => `${key}(${args.map(expression).join(", ")})`;
      // Before the call: what comes out may be what went in.
      let call;
      try {
        call = text();
      } catch {
        call = undefined;
      }
      calls.push({ path, key, call });
      const result = work(...args);
      if (call !== undefined) remember(result, call, 0);
      return result;
    };
  }

  function remember(value, place, depth) {
    if (typeof value !== "object" || value === null || written.has(value) || depth > 4) return;
    written.set(value, place);
    for (const [key, inner] of Object.entries(value))
      remember(inner, /^\d+$/.test(key) ? `${place}[${key}]` : `${place}.${key}`, depth + 1);
  }

  function expression(value) {
    if (value === undefined || value === null || typeof value === "boolean") return String(value);
    if (typeof value === "number" && Number.isFinite(value)) return String(value);
    if (typeof value === "string") return JSON.stringify(value);
    if (typeof value !== "object") throw new TypeError("not to be written down");
    const from = written.get(value);
    if (from !== undefined) return from;
    // An error is written as what it says.
    if (value instanceof Error && "toJSON" in value) {
      const { code, key, path, figures, message } = value;
      return expression({ code, key, path, figures, message });
    }
    if (Array.isArray(value)) return `[${value.map(expression).join(", ")}]`;
    if (Object.getPrototypeOf(value) !== Object.prototype) throw new TypeError("not to be written down");
    const members = Object.entries(value).map(
      ([key, inner]) => `${/^[A-Za-z_$][\w$]*$/.test(key) ? key : JSON.stringify(key)}: ${expression(inner)}`,
    );
    return members.length === 0 ? "{}" : `{ ${members.join(", ")} }`;
  }

  const { code } = transformSync(example, { loader: "ts" });
  const body = code
    .replace(/^import \* as (\w+) from "([^"]+)";$/gm, 'const $1 = modules("$2");')
    .replace(/^import \{([^}]*)\} from "([^"]+)";$/gm, (_, names, from) => {
      return `const {${names.replace(/ as /g, ": ")}} = modules(${JSON.stringify(from)});`;
    });
  const Run = Object.getPrototypeOf(async () => {}).constructor;
  try {
    const silent = { log() {} };
    await new Run("modules", "console", body)(
      (from) => (from.startsWith("swath-to-spoon") ? watched(from) : library(from)),
      silent,
    );
  } catch {
    // What it called until then counts.
  }
  const own = calls.filter(({ path, key, call }) => path === module && key === name && call !== undefined);
  return own[0] && laidOut(own[0].call, "");
}

/** A call on one line where it fits, else with a line for each member. */
function laidOut(text, indent) {
  if (indent.length + text.length <= WIDTH) return text;
  const open = /^([\w$]*\(|\{ |\[)/.exec(text)?.[0];
  if (open === undefined) return text;
  const end = closing(text, open.length - (open === "{ " ? 2 : 1));
  const tail = text.slice(end + 1);
  const inner = text.slice(open.length, end).trim();
  const parts = split(inner);
  // A call of one object opens and closes on the lines of the object.
  if (open.endsWith("(") && parts.length === 1 && /^[{[]/.test(inner))
    return `${open}${laidOut(inner, indent)}${text[end]}${tail}`;
  const deeper = `${indent}  `;
  const lines = parts.map((part) => {
    const [, key = "", value = part] = /^((?:[\w$]+|"[^"]*"): )([\s\S]*)$/.exec(part) ?? [];
    return `${deeper}${key}${laidOut(value, deeper)},`;
  });
  return `${open.trim()}\n${lines.join("\n")}\n${indent}${text[end]}${tail}`;
}

function* signs(text, from) {
  let quoted = false;
  for (let at = from; at < text.length; at++) {
    if (text[at] === "\\") at++;
    else if (text[at] === '"') quoted = !quoted;
    else if (!quoted) yield [at, text[at]];
  }
}

function closing(text, from) {
  let depth = 0;
  for (const [at, sign] of signs(text, from)) {
    if ("([{".includes(sign)) depth++;
    else if (")]}".includes(sign) && --depth === 0) return at;
  }
  return text.length - 1;
}

function split(text) {
  const parts = [];
  let depth = 0;
  let start = 0;
  for (const [at, sign] of signs(text, 0)) {
    if ("([{".includes(sign)) depth++;
    else if (")]}".includes(sign)) depth--;
    else if (sign === "," && depth === 0) {
      parts.push(text.slice(start, at).trim());
      start = at + 1;
    }
  }
  parts.push(text.slice(start).trim());
  return parts.filter((part) => part !== "");
}
