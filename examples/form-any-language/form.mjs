// Makes a plain HTML form from a narrowed schema, and a job from what the form sends. Nothing here is about spraying.
import { MOST_ROWS, memberOf, namesOf } from "./narrow.mjs";

/** The form's fields with what was entered so far, and each error next to its field. */
export function fieldsOf(schema, job, faults) {
  const left = [...faults];
  const fields = field(schema, job, "", { needed: true });
  // An error of something that the form doesn't ask for goes on top, so none is missed.
  const others = left.map(
    ({ path, message }) => `<p class="fault">${escaped(words(path))}: ${escaped(message)}</p>`,
  );
  return [...others, fields].join("\n");

  function field(part, data, path, { needed }) {
    if (path === "") return members(part, data, path);
    const hint = notes(part);
    const name = `name="${escaped(path)}"`;
    if (part.const !== undefined) return `<input type="hidden" ${name} value="${escaped(part.const)}">`;
    if (part.type === "object") return group(part, path, hint, [members(part, data, path)]);
    if (part.type === "array") return group(part, path, hint, rows(part, data, path));
    const { html: faultHtml, bad } = faultBeside(path);
    const label = `<label for="${idOf(path)}">${escaped(words(path))}${needed ? "" : " (optional)"}</label>`;
    const attributes = `id="${idOf(path)}" ${name} ${bad ? 'aria-invalid="true"' : ""} aria-describedby="${idOf(path)}-hint"`;
    const options =
      (part.enum && namesOf(part.enum)) ?? (part.type === "boolean" ? [true, false] : undefined);
    const input = options ? select(options, data, attributes) : box(part, data, attributes);
    const way = part.ways ? ways(part, path) : "";
    return `<div class="field">${way}${label}${input}<span id="${idOf(path)}-hint">${hint}${faultHtml}</span></div>`;
  }

  function group(part, path, hint, content) {
    const legend = `<legend>${escaped(words(path))}</legend>`;
    const amount = part.properties?.value && part.properties?.unit ? ' class="amount"' : "";
    const { html } = faultBeside(path);
    return `<fieldset${amount} id="${idOf(path)}">${legend}${hint}${html}${part.ways ? ways(part, path) : ""}${content.join("\n")}</fieldset>`;
  }

  function members({ properties, required = [] }, data, path) {
    const shown = Object.entries(properties).filter(([, one]) => one !== false);
    const written = ([key, one]) =>
      field(one, data?.[key], memberOf(path, key), { needed: required.includes(key) });
    const first = shown.filter(([key]) => required.includes(key) || data?.[key] !== undefined);
    const more = shown.filter((entry) => !first.includes(entry)).map(written);
    // A closed section must not hide an error.
    const open = more.some((html) => html.includes('class="fault"')) ? " open" : "";
    const rest = more.length > 0 ? `<details${open}><summary>More</summary>${more.join("\n")}</details>` : "";
    return first.map(written).join("\n") + rest;
  }

  function rows(part, data, path) {
    const each = part.prefixItems.map((one, i) => field(one, data?.[i], memberOf(path, i), { needed: true }));
    if (!part.grows) return each;
    const count = `<input type="hidden" name="${escaped(path)}#" value="${each.length}">`;
    return [...each, count, `<button name="add" value="${escaped(path)}">Add another</button>`];
  }

  function faultBeside(path) {
    const here = left.filter((fault) => fault.path === path);
    for (const one of here) left.splice(left.indexOf(one), 1);
    return {
      bad: here.length > 0,
      html: here.map(({ message }) => `<strong class="fault">${escaped(message)}</strong>`).join(" "),
    };
  }
}

function notes({ description, default: usual }) {
  const text = [description, usual === undefined ? undefined : `If left blank: ${usual}.`]
    .filter(Boolean)
    .join(" ");
  return text === "" ? "" : `<small>${escaped(text)}</small>`;
}

function ways({ ways: names, way }, path) {
  const label = `${words(path)}: choose`;
  const options = names.map((one) => option(one, one === way));
  return `<p class="way"><label>${escaped(label)} <select name="${escaped(path)}#">${options.join("")}</select></label>
    <button name="show" value="${escaped(path)}">Show</button></p>`;
}

function select(options, data, attributes) {
  const all = ["", ...options].map((one) => option(one, data !== undefined && String(one) === String(data)));
  return `<select ${attributes}>${all.join("")}</select>`;
}

function option(value, chosen) {
  return `<option value="${escaped(value)}"${chosen ? " selected" : ""}>${escaped(spaced(String(value)))}</option>`;
}

/** A name from code as words: "rowLength" is "row length", "row-bands" is "row bands", "fl_oz" is "fl oz". */
function spaced(name) {
  return name
    .replace(/([a-z])[-_](?=[a-z])/g, "$1 ")
    .replace(/([a-z])([A-Z])/g, (_, end, start) => `${end} ${start.toLowerCase()}`);
}

function box({ type, minimum, exclusiveMinimum, maximum, maxLength, examples }, data, attributes) {
  const value = data === undefined ? "" : ` value="${escaped(data)}"`;
  if (type !== "number" && type !== "integer") {
    const example = examples ? ` placeholder="${escaped(examples[0])}"` : "";
    return `<input type="text"${maxLength ? ` maxlength="${maxLength}"` : ""}${example} ${attributes}${value}>`;
  }
  const least = minimum ?? exclusiveMinimum;
  const range = `${least === undefined ? "" : ` min="${least}"`}${maximum === undefined ? "" : ` max="${maximum}"`}`;
  return `<input type="number" step="${type === "integer" ? 1 : "any"}"${range} ${attributes}${value}>`;
}

/** The last key as words: `sprayer.workingFill` is "Working fill", `products[0]` is "Products 1". */
function words(path) {
  const [key = ""] = /[^.]+$/.exec(path) ?? [];
  const text = spaced(key.replace(/\[(\d+)\]/g, (_, i) => ` ${Number(i) + 1}`));
  return text.charAt(0).toUpperCase() + text.slice(1);
}

const idOf = (path) => `f-${path.replace(/[^A-Za-z0-9]+/g, "-")}`;

export function escaped(text) {
  const signs = { "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;" };
  return String(text).replace(/[&<>"]/g, (sign) => signs[sign]);
}

/** What a form sent: the filled-in fields and the choices, by path. */
export function sent(text) {
  let job = {};
  const choices = {};
  for (const [name, value] of new URLSearchParams(text)) {
    if (name.endsWith("#")) choices[name.slice(0, -1)] = value;
    else if (name === "add") choices[value] = String(Number(choices[value] ?? 0) + 1);
    else if (name !== "show" && name !== "plan" && value.trim() !== "")
      job = put(job, keysOf(name), value.trim());
  }
  return { job, choices };
}

const keysOf = (path) =>
  (path.match(/[^.[\]]+/g) ?? []).map((key) => (/^\d+$/.test(key) ? Number(key) : key));

// Names come from outside, so nothing is set on a shared prototype and lists stay short.
function put(onto, [key, ...rest], value) {
  if (key === undefined) return value;
  if (typeof key !== "number") {
    const whole = { ...onto };
    return { ...whole, [key]: put(Object.hasOwn(whole, key) ? whole[key] : undefined, rest, value) };
  }
  const list = Array.isArray(onto) ? [...onto] : [];
  if (key < MOST_ROWS) list[key] = put(list[key], rest, value);
  return list;
}

/** Converts a form's texts to the schema's types, and leaves out what holds only constants. */
export function typed(part, data) {
  if (data === undefined) return undefined;
  const isWhole = typeof data === "object";
  if (part.type === "object" && isWhole) {
    const { properties, required = [] } = part;
    const known = Object.keys(data).map((key) => [
      key,
      properties[key] ? typed(properties[key], data[key]) : data[key],
    ]);
    const kept = known.filter(
      ([key, value]) => value !== undefined && (required.includes(key) || !hollow(properties[key], value)),
    );
    return Object.fromEntries(kept);
  }
  if (part.type === "array" && isWhole) {
    const rows = Array.from(data, (row, i) => typed(part.prefixItems[i], row ?? {}));
    while (rows.length > 0 && hollow(part.prefixItems[rows.length - 1], rows.at(-1))) rows.pop();
    return rows;
  }
  const isNumber = part.type === "number" || part.type === "integer";
  if (isNumber && !isWhole && !Number.isNaN(Number(data))) return Number(data);
  if (part.enum) return part.enum.find((one) => String(one) === data) ?? data;
  if (part.type === "boolean") return data === "true";
  return data;
}

function hollow(part, data) {
  if (!part || typeof data !== "object") return false;
  return Object.entries(data).every(
    ([key, value]) => part.properties?.[key]?.const !== undefined || hollow(part.properties?.[key], value),
  );
}
