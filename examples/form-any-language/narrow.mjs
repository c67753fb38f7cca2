// The schema of a job has many alternatives: kinds of plots, forms of a rate. Of each, one is meant. `narrowed` returns the
// schema with only that one, so a form shows only its fields and a validator reports only its errors. check.py does the
// same in Python.

/** The longest list that a form shows. */
export const MOST_ROWS = 50;

/** The path of a member: `products[0]` and `rate` give `products[0].rate`. */
export function memberOf(path, key) {
  if (typeof key === "number") return `${path}[${key}]`;
  return path === "" ? key : `${path}.${key}`;
}

/** The choices of an `enum`, each once: it may hold a number as text too, and a null for "not given". */
export function namesOf(choices) {
  return [...new Set(choices.filter((one) => one !== null).map(String))];
}

/**
 * The schema without `$ref`, `anyOf` and `if`, as it holds for this job.
 *
 * @param schema a JSON Schema
 * @param job the job as entered so far
 * @param choices the person's choices by path: the name of one of the `ways`, or the length of a list
 */
export function narrowed(schema, job, choices = {}) {
  return within(schema, job, "");

  function within(part, data, path) {
    const whole = resolved(part);
    if (!hasWays(whole)) return inside(whole, data, path);
    const branches = alternatives(whole).filter((one, _, all) => !isText(one) || isMeant(data, all));
    const names = branches.map((one) => nameOf(one, branches));
    const chosen = names.indexOf(choices[path]);
    const branch = branches[chosen >= 0 ? chosen : best(branches, data)];
    // A field's own description says more than that of its content.
    const { title = branch.title, description = branch.description } = whole;
    const usual = whole.anyOf?.find((one) => one.default !== undefined)?.default;
    const described = { ...branch, title, description, ...(usual !== undefined && { default: usual }) };
    return inside(
      names.length > 1 ? { ...described, ways: names, way: nameOf(branch, branches) } : described,
      data,
      path,
    );
  }

  function inside(part, data, path) {
    if (part.type === "object") {
      const properties = Object.entries(part.properties ?? {}).map(([key, one]) => [
        key,
        one === false ? false : within(one, data?.[key], memberOf(path, key)),
      ]);
      return { ...part, properties: Object.fromEntries(properties) };
    }
    if (part.type === "array" && part.items) {
      const given = Array.isArray(data) ? data : [];
      const least = Math.max(part.minItems ?? 0, given.length, Number(choices[path] ?? 0) || 0);
      const length = Math.min(least, MOST_ROWS);
      const each = Array.from({ length }, (_, i) => within(part.items, given[i], memberOf(path, i)));
      return { ...part, prefixItems: each, items: false, grows: true };
    }
    if (part.type === "array")
      return {
        ...part,
        prefixItems: part.prefixItems.map((one, i) => within(one, data?.[i], memberOf(path, i))),
      };
    return part;
  }

  function resolved({ $ref, ...own }) {
    return $ref === undefined ? own : { ...resolved(schema.$defs[$ref.replace("#/$defs/", "")]), ...own };
  }

  /** Whether a part has alternatives: `anyOf`, an `if` and `then` for each kind, or an `if` with `then` and `else`. */
  function hasWays({ anyOf, allOf, else: other }) {
    return anyOf !== undefined || allOf !== undefined || other !== undefined;
  }

  function alternatives(part) {
    const whole = resolved(part);
    if (!hasWays(whole)) return [whole];
    const { anyOf, allOf, then, else: other } = whole;
    const ways = anyOf ?? allOf?.map((kind) => kind.then) ?? [then, other];
    return ways.filter((way) => !isNothing(resolved(way))).flatMap(alternatives);
  }

  /** The alternative that fits what was entered; if nothing was, the one with the fewest fields. */
  function best(branches, data) {
    const scores = branches.map((one) => fit(one, data) - (data === undefined ? leaves(one) : 0));
    return scores.indexOf(Math.max(...scores));
  }

  function leaves(part) {
    const { type, required = [], properties, items, minItems = 0 } = resolved(part);
    const ways = alternatives(part);
    if (ways.length > 1) return Math.min(...ways.filter((one) => !isText(one)).map(leaves));
    if (type === "object") return required.reduce((sum, key) => sum + leaves(properties[key]), 0);
    return type === "array" && items ? 1 + minItems * leaves(items) : 1;
  }
}

/** Whether one of these ways is meant as text. A form sends numbers as text too. */
function isMeant(data, ways) {
  const isNumber = ({ type }) => type === "number" || type === "integer";
  return ways.every(isText) || (typeof data === "string" && !ways.some(isNumber));
}

/** Whether it stands for a field left out: a null, or blank text. */
const isNothing = (part) => part.const === null || part.pattern === "^\\s*$";

const isText = (part) => part.type === "string" && part.enum === undefined && part.const === undefined;

function constants(part) {
  return Object.entries(part.properties ?? {}).filter(([, one]) => one.const !== undefined);
}

function nameOf(part, others) {
  const [first] = constants(part);
  const shared = (one) => first && one.properties?.[first[0]]?.const === first[1].const;
  if (first && others.filter(shared).length === 1) return String(first[1].const);
  const asked = (part.required ?? []).filter((key) => part.properties[key].const === undefined).join(", ");
  if (first) return `${first[1].const}: ${asked}`;
  if (part.type === "object") return asked;
  return part.type === "array" ? "a list" : "by name";
}

function fit(part, data) {
  if (data === undefined) return 0;
  const type = Array.isArray(data) ? "array" : data === null ? "null" : typeof data;
  if (type !== "object") return type === part.type ? 1 : -1000;
  if (part.type !== "object") return -1000;
  const wrong = constants(part).filter(([key, one]) => data[key] !== one.const).length;
  const known = Object.keys(data).filter((key) => part.properties[key]).length;
  const missing = (part.required ?? []).filter((key) => data[key] === undefined).length;
  return known - missing - 100 * wrong;
}
