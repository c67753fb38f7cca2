import { multipleOf } from "../units/multiples.js";
import { resolveUnit } from "../units/resolve.js";
import type { Unit } from "../units/types.js";
import type { WorkingLine } from "../units/working-line.js";
import { factorsOf } from "../worksheet/lines/factors.js";
import { type FormulaNode, formulaText, parseFormula } from "../worksheet/lines/formula.js";
import type { Writer } from "../worksheet/words/writer.js";
import type { PracticeMessages } from "./words.js";

/** The line of a formula with its units alone, and the units that cancel in it. */
export interface UnitsLine {
  readonly text: string;
  readonly cancelled: readonly string[];
}

const UNIT_FORMULA = /^[\w\s*/().]+$/;

/**
 * The units of a line, as they are multiplied and divided; nothing for sums, functions and numbers without units, in which
 * nothing cancels. A change of unit is shown with each factor as a fraction of two units.
 */
export function unitsOfLine(line: WorkingLine, writer: Writer<PracticeMessages>): UnitsLine | undefined {
  if (typeof line.result === "number") return undefined;
  const { value } = line.terms;
  if (line.id === "units.convert" && typeof value === "object")
    return unitsOfChange(value.unit, line.result.unit, writer);
  const { over, per } = resolveUnit(line.result.unit, "unit");
  if (!UNIT_FORMULA.test(line.formula) || over === per) return undefined;
  const node = parseFormula(line.formula);
  const unitOf = (leaf: string): Unit | undefined => {
    const term = line.terms[leaf];
    return typeof term === "object" && term.unit !== "1" ? term.unit : undefined;
  };
  const [above, below] = partsOf(node, unitOf);
  const text = formulaText(
    node,
    (leaf) => {
      const [unit, term] = [unitOf(leaf), line.terms[leaf]];
      if (unit !== undefined) return signOf(unit, writer);
      return term === undefined ? leaf : writer.long(term);
    },
    writer.messages.functions,
  );
  return withResult(text, above, below, line.result.unit, writer);
}

function unitsOfChange(from: Unit, to: Unit, writer: Writer<PracticeMessages>): UnitsLine {
  const [old, next] = [resolveUnit(from, "unit"), resolveUnit(to, "unit")];
  const fractions: [Unit, Unit][] = [[next.over, old.over] as [Unit, Unit]];
  if (old.per !== undefined && next.per !== undefined) fractions.push([old.per, next.per] as [Unit, Unit]);
  const used = fractions.filter(([top, bottom]) => top !== bottom);
  // As "acres per square foot": one of what is below the stroke.
  const one = (unit: Unit): string => writer.fill("{one.unit}", { one: { value: 1, unit } });
  const text = [
    signOf(from, writer),
    ...used.map(([top, bottom]) => `${signOf(top, writer)}/${one(bottom)}`),
  ].join(" × ");
  const above = [old.over, ...used.map(([top]) => top)] as Unit[];
  const below = [...(old.per === undefined ? [] : [old.per]), ...used.map(([, bottom]) => bottom)] as Unit[];
  return withResult(text, above, below, to, writer);
}

function withResult(
  text: string,
  above: readonly Unit[],
  below: readonly Unit[],
  result: Unit,
  writer: Writer<PracticeMessages>,
): UnitsLine {
  const left = [...below];
  const cancelled = above.filter((one) => {
    const at = left.indexOf(one);
    if (at >= 0) left.splice(at, 1);
    return at >= 0;
  });
  return {
    text: `${text} = ${signOf(result, writer)}`,
    cancelled: [...new Set(cancelled)].map((one) => signOf(one, writer)),
  };
}

/** A unit alone: 1,000 sq ft is a unit here, and no count of thousands. */
function signOf(unit: Unit, writer: Writer<PracticeMessages>): string {
  return multipleOf(unit) === undefined ? writer.unit(unit) : writer.unit(unit, 1);
}

/** The simple units over and under the stroke of a formula. */
function partsOf(
  node: FormulaNode,
  unitOf: (leaf: string) => Unit | undefined,
): readonly [above: readonly Unit[], below: readonly Unit[]] {
  if (node.kind === "group") return partsOf(node.inner, unitOf);
  if (node.kind === "operation") {
    const [a, b] = partsOf(node.left, unitOf);
    const [c, d] = partsOf(node.right, unitOf);
    return node.operator === "/"
      ? [
          [...a, ...d],
          [...b, ...c],
        ]
      : [
          [...a, ...c],
          [...b, ...d],
        ];
  }
  const unit = node.kind === "symbol" ? unitOf(node.name) : undefined;
  if (unit === undefined) return [[], []];
  const { over, per } = resolveUnit(unit, "unit");
  return [[over as Unit], per === undefined ? [] : [per as Unit]];
}

/** How the number in a change of a compound unit is made of its factors: `340.313 = 43,560 ÷ 128`; nothing for one factor. */
export function numberOfFactors(line: WorkingLine, { long }: Writer<PracticeMessages>): string | undefined {
  const factors = factorsOf(line);
  const { size } = line.terms;
  if (factors.length < 2 || size === undefined) return undefined;
  const isDivided = line.formula === "value / size";
  const above = factors
    .filter(({ multiplies }) => multiplies !== isDivided)
    .map(({ smaller }) => long(smaller.value));
  const below = factors
    .filter(({ multiplies }) => multiplies === isDivided)
    .map(({ smaller }) => long(smaller.value));
  return `${long(size)} = ${[above.join(" × ") || "1", ...below].join(" ÷ ")}`;
}
