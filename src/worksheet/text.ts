import type { Fact, Worksheet, WrittenDose } from "./worksheet.js";

const WIDTH = 80;

/**
 * Lays a worksheet out as plain text for a terminal, 80 columns wide.
 *
 * @param sheet - a written worksheet
 * @returns the text, with a line break at its end
 *
 * @example
 * ```ts
 * import { planApplication } from "swath-to-spoon/plan";
 * import { qty } from "swath-to-spoon/units";
 * import { renderText, worksheet } from "swath-to-spoon/worksheet";
 *
 * const plan = planApplication({
 *   plot: { kind: "rectangle", length: qty(40, "m"), width: qty(25, "m") },
 *   calibration: { kind: "strip", used: qty(3, "L"), swath: qty(1, "m"), distance: qty(100, "m") },
 *   sprayer: { tank: qty(15, "L") },
 *   products: [{ name: "Product A", form: "liquid", rate: qty(2, "L/ha") }],
 *   tools: "syringes",
 * });
 * console.log(renderText(worksheet(plan)).split("\n")[0]); // Spray job worksheet
 * ```
 */
export function renderText(sheet: Worksheet): string {
  const { headings } = sheet;
  const lines = [
    sheet.title,
    "=".repeat(sheet.title.length),
    ...section(
      headings.warnings,
      sheet.warnings.flatMap(({ name, value }) => wrapped(`${name}: ${value}`, "- ", "  ")),
    ),
    ...section(headings.summary, facts(sheet.summary)),
    ...(sheet.mixing ? ["", ...wrapped(sheet.mixing, "", "")] : []),
    ...sheet.loads.flatMap(({ title, fill, water, doses }) =>
      section(`${title}: ${fill}`, [...wrapped(water, "", ""), ...doses.flatMap(doseLines)]),
    ),
    ...section(headings.totals, facts(sheet.totals)),
    ...section(headings.working, wrapped(sheet.rounding, "", "")),
    ...sheet.steps.flatMap(({ title, lines: steps }, i) => [
      "",
      `${i + 1}. ${title}`,
      ...steps.flatMap(({ found, words, numbers, result, source }) => [
        ...wrapped(`${found} = ${words}`, "   ", "     "),
        ...wrapped(`= ${numbers}`, "     ", "       "),
        ...wrapped(`= ${result}   [${source}]`, "     ", "       "),
      ]),
    ]),
    ...section(
      headings.cautions,
      sheet.cautions.flatMap((caution) => wrapped(caution, "- ", "  ")),
    ),
  ];
  return `${lines.join("\n")}\n`;
}

function doseLines({ product, amount, measures, remark }: WrittenDose): string[] {
  const measured = measures.length === 0 ? remark : `${measures.join(" + ")}  (${remark})`;
  return [`${product}: ${amount}`, ...wrapped(measured, "    ", "    ")];
}

function section(heading: string, lines: readonly string[]): string[] {
  return lines.length === 0 ? [] : ["", heading, "-".repeat(heading.length), ...lines];
}

function facts(list: readonly Fact[]): string[] {
  const width = Math.max(0, ...list.map(({ name }) => name.length));
  return list.flatMap(({ name, value }) => wrapped(value, `${name.padEnd(width)}  `, " ".repeat(width + 2)));
}

function wrapped(text: string, first: string, rest: string): string[] {
  const lines: string[] = [];
  let line = first;
  for (const word of text.split(" ")) {
    const empty = line === first || line === rest;
    if (!empty && line.length + 1 + word.length > WIDTH) {
      lines.push(line);
      line = rest + word;
    } else line += empty ? word : ` ${word}`;
  }
  return [...lines, line];
}
