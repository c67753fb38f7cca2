import ts from "typescript";

/** A field of a list whose sentence is not the docstring of the property that it reads. */
export interface Mismatch {
  /** Where the field stands: `src/swath/widths.ts BoomWidthInput.nozzles`. */
  readonly place: string;
  readonly docstring: string;
  readonly sentence: string | undefined;
}

/**
 * Compares every field of every `object<I>({ name: builder("sentence") })` with the docstring of `name` in `I`. Types without
 * any docstrings, such as the arguments of a function put together, have none to compare with.
 */
export function mismatches(
  program: ts.Program,
  files: readonly ts.SourceFile[],
): { checked: number; wrong: Mismatch[] } {
  const checker = program.getTypeChecker();
  const wrong: Mismatch[] = [];
  let checked = 0;
  const visit = (node: ts.Node): void => {
    ts.forEachChild(node, visit);
    if (!ts.isCallExpression(node) || node.expression.getText() !== "object") return;
    const [fields] = node.arguments;
    const [shape] = checker.getTypeArguments(checker.getTypeAtLocation(node) as ts.TypeReference);
    if (shape === undefined || fields === undefined || !ts.isObjectLiteralExpression(fields)) return;
    if (checker.getPropertiesOfType(shape).every((property) => docstringOf(property, checker) === "")) return;
    for (const field of fields.properties) {
      if (!ts.isPropertyAssignment(field) && !ts.isShorthandPropertyAssignment(field)) continue;
      const name = field.name.getText().replaceAll('"', "");
      const property = checker.getPropertyOfType(shape, name);
      const docstring = property === undefined ? "" : docstringOf(property, checker);
      const sentence = sentenceOf(ts.isPropertyAssignment(field) ? field.initializer : field.name, checker);
      checked++;
      if (sentence === docstring) continue;
      const file = node.getSourceFile().fileName.replace(/^.*?(?=src\/)/, "");
      wrong.push({ place: `${file} ${checker.typeToString(shape)}.${name}`, docstring, sentence });
    }
  };
  for (const file of files) visit(file);
  return { checked, wrong };
}

function docstringOf(property: ts.Symbol, checker: ts.TypeChecker): string {
  return ts
    .displayPartsToString(property.getDocumentationComment(checker))
    .replace(/\{@link ([^}|]+?)\}/g, "$1")
    .replace(/\s+/g, " ")
    .trim();
}

/** The sentence that a field is made with; undefined where none can be found. */
function sentenceOf(field: ts.Expression, checker: ts.TypeChecker): string | undefined {
  if (ts.isAsExpression(field)) return sentenceOf(field.expression, checker);
  if (ts.isIdentifier(field)) return sentenceOfConstant(field, checker);
  if (!ts.isCallExpression(field) && !ts.isNewExpression(field)) return undefined;
  const [first, second, third] = field.arguments ?? [];
  const builder = field.expression.getText();
  if (builder === "object") return third && literalOf(third);
  if (builder === "named") return second && sentenceOf(second, checker);
  if (first === undefined) return undefined;
  return ["optional", "called"].includes(builder) ? sentenceOf(first, checker) : literalOf(first);
}

function sentenceOfConstant(name: ts.Identifier, checker: ts.TypeChecker): string | undefined {
  let symbol = ts.isShorthandPropertyAssignment(name.parent)
    ? checker.getShorthandAssignmentValueSymbol(name.parent)
    : checker.getSymbolAtLocation(name);
  if (symbol !== undefined && (symbol.flags & ts.SymbolFlags.Alias) !== 0)
    symbol = checker.getAliasedSymbol(symbol);
  const declaration = symbol?.valueDeclaration;
  if (declaration === undefined || !ts.isVariableDeclaration(declaration)) return undefined;
  return declaration.initializer && sentenceOf(declaration.initializer, checker);
}

/** Text, written in one piece or in several that are added. */
function literalOf(node: ts.Expression): string | undefined {
  if (ts.isStringLiteralLike(node)) return node.text;
  if (!ts.isBinaryExpression(node)) return undefined;
  const [left, right] = [literalOf(node.left), literalOf(node.right)];
  return left === undefined || right === undefined ? undefined : left + right;
}
