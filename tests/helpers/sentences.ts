import { readdirSync } from "node:fs";
import { resolve } from "node:path";
import ts from "typescript";

/** A field of a list whose sentence is not the docstring of the property that it reads. */
export interface Mismatch {
  /** Where the field stands: `src/swath/widths.ts BoomWidthInput.nozzles`. */
  readonly place: string;
  readonly docstring: string;
  readonly sentence: string | undefined;
}

/** The library's own files, and others that stand beside them in memory only. */
export function libraryProgram(beside: Readonly<Record<string, string>> = {}): ts.Program {
  const { config } = ts.readConfigFile("tsconfig.json", ts.sys.readFile);
  const { options } = ts.parseJsonConfigFileContent(config, ts.sys, ".");
  const host = ts.createCompilerHost(options, true);
  const { fileExists, readFile, getSourceFile } = host;
  host.fileExists = (name) => Object.hasOwn(beside, name) || fileExists(name);
  host.readFile = (name) => beside[name] ?? readFile(name);
  host.getSourceFile = (name, version) =>
    Object.hasOwn(beside, name)
      ? ts.createSourceFile(name, beside[name] as string, version, true)
      : getSourceFile(name, version);
  const names = readdirSync("src", { recursive: true, encoding: "utf8" }).filter((name) =>
    name.endsWith(".ts"),
  );
  const files = [...names.map((name) => resolve("src", name)), ...Object.keys(beside)];
  return ts.createProgram(files, options, host);
}

/** Text in the source, and where it starts. */
interface Written {
  readonly text: string;
  readonly nodes: readonly ts.StringLiteralLike[];
}

/**
 * Compares every field of every `object<I>({ name: builder("sentence") })`, and of every list of type `FieldsOf<I>` that others are
 * put together from, with the docstring of `name` in `I`. Types without
 * any docstrings, such as the arguments of a function put together, have none to compare with. `held` are the texts that
 * are as they should be, with line and column: `20:11 How many bands.`
 */
export function mismatches(
  program: ts.Program,
  files: readonly ts.SourceFile[],
): { checked: number; wrong: Mismatch[]; held: string[] } {
  const checker = program.getTypeChecker();
  const wrong: Mismatch[] = [];
  const held: string[] = [];
  let checked = 0;
  const visit = (node: ts.Node): void => {
    ts.forEachChild(node, visit);
    const [fields, shape] = listOf(node, checker);
    if (shape === undefined || fields === undefined || !ts.isObjectLiteralExpression(fields)) return;
    if (checker.getPropertiesOfType(shape).every((property) => docstringOf(property, checker) === "")) return;
    for (const field of fields.properties) {
      if (!ts.isPropertyAssignment(field) && !ts.isShorthandPropertyAssignment(field)) continue;
      const name = field.name.getText().replaceAll('"', "");
      const property = checker.getPropertyOfType(shape, name);
      const docstring = property === undefined ? "" : docstringOf(property, checker);
      const written = sentenceOf(ts.isPropertyAssignment(field) ? field.initializer : field.name, checker);
      checked++;
      if (written?.text === docstring) {
        held.push(...written.nodes.map(withPlace));
        continue;
      }
      const file = node.getSourceFile().fileName.replace(/^.*?(?=src\/)/, "");
      const place = `${file} ${checker.typeToString(shape)}.${name}`;
      wrong.push({ place, docstring, sentence: written?.text });
    }
  };
  for (const file of files) visit(file);
  return { checked, wrong, held };
}

function withPlace(node: ts.StringLiteralLike): string {
  const { line, character } = node.getSourceFile().getLineAndCharacterOfPosition(node.getStart());
  return `${line + 1}:${character} ${node.text}`;
}

/** The list of fields at a node, with the type of what they make up. */
function listOf(
  node: ts.Node,
  checker: ts.TypeChecker,
): [fields?: ts.Expression | undefined, shape?: ts.Type | undefined] {
  if (ts.isCallExpression(node) && node.expression.getText() === "object") {
    const [shape] = checker.getTypeArguments(checker.getTypeAtLocation(node) as ts.TypeReference);
    return [node.arguments[0], shape];
  }
  if (!ts.isVariableDeclaration(node) || !node.type || !ts.isTypeReferenceNode(node.type)) return [];
  const [shape] = node.type.typeName.getText() === "FieldsOf" ? (node.type.typeArguments ?? []) : [];
  return [node.initializer, shape && checker.getTypeFromTypeNode(shape)];
}

function docstringOf(property: ts.Symbol, checker: ts.TypeChecker): string {
  return ts
    .displayPartsToString(property.getDocumentationComment(checker))
    .replace(/\{@link ([^}|]+?)\}/g, "$1")
    .replace(/\s+/g, " ")
    .trim();
}

/** The sentence that a field is made with; undefined where none can be found. */
function sentenceOf(field: ts.Expression, checker: ts.TypeChecker): Written | undefined {
  if (ts.isAsExpression(field)) return sentenceOf(field.expression, checker);
  if (ts.isIdentifier(field)) return sentenceOfConstant(field, checker);
  if (!ts.isCallExpression(field) && !ts.isNewExpression(field)) return undefined;
  const [first, second, third] = field.arguments ?? [];
  const builder = field.expression.getText();
  if (builder === "object") return third && literalOf(third);
  if (builder === "named") return second && sentenceOf(second, checker);
  if (first === undefined) return undefined;
  return ["optional", "called", "smallVolume"].includes(builder)
    ? sentenceOf(first, checker)
    : literalOf(first);
}

function sentenceOfConstant(name: ts.Identifier, checker: ts.TypeChecker): Written | undefined {
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
function literalOf(node: ts.Expression): Written | undefined {
  if (ts.isStringLiteralLike(node)) return { text: node.text, nodes: [node] };
  if (!ts.isBinaryExpression(node)) return undefined;
  const [left, right] = [literalOf(node.left), literalOf(node.right)];
  if (left === undefined || right === undefined) return undefined;
  return { text: left.text + right.text, nodes: [...left.nodes, ...right.nodes] };
}
