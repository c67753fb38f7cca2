// The two generated texts: docs/conformance.md, and the table of worst errors inside docs/accuracy.md.
import { readdirSync, readFileSync } from "node:fs";
import { table } from "../helpers/written.mjs";

const NOT_SHOWN = /not shown|^null$|^$/;

/** What one run of the tests has left in a folder. */
export function readRun(folder) {
  const outcomes = new Map();
  for (const file of readdirSync(folder).filter((name) => name.endsWith(".json"))) {
    for (const outcome of readJson(`${folder}/${file}`)) outcomes.set(outcome.id, outcome);
  }
  const ulp = readdirSync(`${folder}/ulp`).map((file) => readJson(`${folder}/ulp/${file}`));
  return { outcomes, ulp };
}

export function readJson(path) {
  return JSON.parse(readFileSync(path, "utf8"));
}

/** docs/conformance.md, before formatting. */
export function conformancePage({ cases, more, outcomes, scores }) {
  const all = [...cases, ...more];
  const lacking = all.filter(({ id }) => !outcomes.has(id)).map(({ id }) => id);
  if (lacking.length > 0) throw new Error(`neither run nor explained: ${lacking.join(", ")}`);
  return [
    "# Conformance",
    "",
    "Written by `npm run conformance` from a run of tests/handbook; not to be edited. `npm test` fails where this page and",
    "a fresh run differ.",
    "",
    "Published values, ours beside theirs. *Agrees*: ours, rounded as the publication rounds, is what it prints.",
    "*Publication errs*: it is not, and plain arithmetic beside the case shows who is right; the library never gives the",
    "printed value then. *Rule*: a rule of the trade that the library takes as a parameter, a default or a refusal.",
    "`±` is the rounding of the print, never wider.",
    "",
    ...counts(cases, more, outcomes),
    ...errors(all, outcomes),
    ...mutation(scores),
    "## Source by source",
    "",
    ...sources(all, outcomes),
  ].join("\n");
}

function counts(cases, more, outcomes) {
  const verdicts = ["agrees", "publication errs", "rule", "not covered"];
  const row = (name, list) => {
    const found = verdicts.map((v) => list.filter(({ id }) => outcomes.get(id).verdict === v).length);
    return [name, list.length, ...found];
  };
  const topics = [...new Set(cases.map(({ topic }) => topic))].sort();
  return [
    "## Counts",
    "",
    table(
      ["", "cases:", ...verdicts.map((v) => `${v}:`)],
      [
        ...topics.map((topic) =>
          row(
            topic.slice(3).replaceAll("_", " "),
            cases.filter((one) => one.topic === topic),
          ),
        ),
        row("**all of tests/handbook/cases.json**", cases),
        row("found since (tests/handbook/more.json)", more),
      ],
    ),
    "",
  ];
}

function errors(all, outcomes) {
  const explained = (verdict) =>
    all
      .filter(({ id }) => outcomes.get(id).verdict === verdict)
      .sort(by((one) => one.id))
      .map((one) => [one.id, cell(sourceName(one)), cell(outcomes.get(one.id).why)]);
  const section = (title, verdict) => {
    const rows = explained(verdict);
    return [`## ${title}`, "", rows.length === 0 ? "None." : table(["case", "publication", "why"], rows), ""];
  };
  return [...section("Where publications err", "publication errs"), ...section("Not covered", "not covered")];
}

function mutation(scores) {
  const folders = Object.keys(scores).sort();
  const rows = folders.map((name) => {
    const { score, killed, survived, notCovered, ignored, date } = scores[name];
    return [name, `${score.toFixed(2)}%`, killed, survived, notCovered, ignored, date];
  });
  return [
    "## Mutation testing",
    "",
    "Small faults put into the source one at a time; the score is how many of them a test notices. `npm run mutation`",
    "measures it and takes long, so it is not part of `npm test`. *Ignored* are changes with a reason beside them in the source,",
    "and those of a field's sentence, which is held to its docstring by a test that reads the source.",
    "",
    table(["folder", "score:", "noticed:", "survived:", "not reached:", "ignored:", "measured"], rows),
    "",
  ];
}

function sources(all, outcomes) {
  const groups = new Map();
  for (const one of all) {
    const name = sourceName(one);
    if (!groups.has(name)) groups.set(name, []);
    groups.get(name).push(one);
  }
  return [...groups.keys()].sort(compareText).flatMap((name) => {
    const list = groups.get(name).sort(by((one) => one.id));
    const { url } = list[0].source;
    const kinds = [...new Set(list.map((one) => one.source_kind))].join(", ");
    const rows = list.flatMap((one) => rowsOf(one, outcomes.get(one.id)));
    return [
      `### ${name}`,
      "",
      `${kinds}; <${url}>`,
      "",
      table(["case", "given", "", "theirs:", "ours:", "±:", "verdict"], rows),
      "",
    ];
  });
}

function rowsOf(one, { verdict, checks, why }) {
  const given = cell(
    Object.entries(one.inputs)
      .map(
        ([name, [value, unit]]) =>
          `${name} ${withUnit(Array.isArray(value) ? value.join(", ") : value, unit)}`,
      )
      .join("; "),
  );
  const scan = one.verbatim_numbers_checked ? "" : " (read from a scan, or an input inferred)";
  if (checks.length === 0) return [[one.id, given, cell(why), "", "", "", verdict + scan]];
  return checks.map(({ key, ours, printed, within }, i) => {
    const unit = one.expected[key]?.[1] ?? "";
    const first = i === 0 ? [one.id, given] : ["", ""];
    const last = i === 0 ? verdict + scan : "";
    return [...first, cell(key), withUnit(shown(printed), unit), shown(ours), shown(within), last];
  });
}

/** The worst error of every formula, as a table. */
export function worstErrors(ulp) {
  return table(
    ["module", "function", "worst error seen, ulp:", "promised:", "random inputs:"],
    errorRows(ulp).map(({ name, error, promised, inputs }) => [name, error, promised, inputs]),
  );
}

/**
 * Where a run with fewer of the same inputs does not bear the table out: a function that only one of them has, or an error
 * beyond the worst that the table says.
 */
export function contradictions(table, ulp) {
  const stated = new Map(
    [...table.matchAll(/^\| (\S+ +\| .*?) +\| +([\d.]+) \| +(\d+) \|/gm)].map(([, name, error, promised]) => [
      name.replace(/ +/g, " "),
      { error: Number(error), promised: Number(promised) },
    ]),
  );
  const rows = errorRows(ulp);
  const seen = new Set(rows.map(({ name }) => name));
  const wrong = rows.filter(({ name, error, promised }) => {
    const row = stated.get(name);
    return row === undefined || Number(error) > row.error || promised !== row.promised;
  });
  return [...wrong.map(({ name }) => name), ...[...stated.keys()].filter((name) => !seen.has(name))];
}

function errorRows(ulp) {
  const rows = ulp.flatMap(({ folder, worst }) =>
    Object.entries(worst).map(([name, { ulp: error, promised, inputs }]) => ({
      name: `${folder.replace(/^(units|tank-mix|plan)-.*/, "$1")} | ${name}`,
      error: error.toFixed(2),
      promised,
      inputs,
    })),
  );
  return rows.sort(by(({ name }) => name));
}

function sourceName({ source: { title, publisher, number, year } }) {
  const known = [title, publisher, number, year].filter((part) => !NOT_SHOWN.test(String(part ?? "")));
  const dated = NOT_SHOWN.test(String(year ?? "")) ? "year not shown" : undefined;
  return [...known, ...(dated ? [dated] : [])].join(", ").replace(/\s+/g, " ");
}

/** Nine digits: more than any publication prints, fewer than floats disagree on. */
function shown(value) {
  return String(Number(value.toPrecision(9)));
}

/** A value with its unit, as English writes them: `4 gal`, `5%`. */
function withUnit(value, unit) {
  return `${value}${String(unit ?? "").startsWith("%") ? "" : " "}${unit}`.trim();
}

function cell(text) {
  return String(text ?? "")
    .replaceAll("|", "\\|")
    .replace(/\s+/g, " ");
}

function compareText(a, b) {
  return a < b ? -1 : a > b ? 1 : 0;
}

function by(key) {
  return (a, b) => compareText(key(a), key(b));
}
