import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import ts from "typescript";

/** A sentence that the source can raise. */
export interface RaisedSentence {
  readonly key: string;
  /** The English template. */
  readonly template: string;
  /** Where it stands: `area/boundary.ts`. */
  readonly file: string;
}

/** Every sentence of errors and warnings in src, read from its syntax; and the calls whose sentence could not be read. */
export function raisedSentences(root: string): { sentences: RaisedSentence[]; unread: string[] } {
  const sentences: RaisedSentence[] = [];
  const unread: string[] = [];
  const src = join(root, "src");
  for (const file of readdirSync(src, { recursive: true, encoding: "utf8" }).sort()) {
    if (!file.endsWith(".ts")) continue;
    const source = ts.createSourceFile(
      file,
      readFileSync(join(src, file), "utf8"),
      ts.ScriptTarget.Latest,
      true,
    );
    const visit = (node: ts.Node): void => {
      ts.forEachChild(node, visit);
      if (raisesOtherwise(node) && !MAKERS.test(file))
        unread.push(`${file}: ${node.getText().replace(/\s+/g, " ").slice(0, 90)}`);
      for (const pair of pairsOf(node)) {
        const found = texts(pair, source);
        if (found.length === 0) unread.push(`${file}: ${node.getText().replace(/\s+/g, " ").slice(0, 90)}`);
        for (const [key, template] of found) sentences.push({ key, template, file });
      }
    };
    visit(source);
  }
  return { sentences, unread };
}

// Where errors are made of sentences, or of one another.
const MAKERS = /^(errors|units\/(check|message|resolve))\.ts$/;

/** Whether a node makes an error, or notes one, past the calls whose sentences are read here. */
function raisesOtherwise(node: ts.Node): boolean {
  if (ts.isNewExpression(node)) return node.expression.getText() === "SprayMathError";
  return ts.isCallExpression(node) && /\.note$/.test(node.expression.getText());
}

type Pair = readonly [
  key: ts.Expression | string,
  template: ts.Expression | string,
  prefixes?: readonly string[],
];

/** The key and the template that a node raises. */
function pairsOf(node: ts.Node): Pair[] {
  if (ts.isCallExpression(node)) {
    const [, key, , template] = node.arguments;
    const name = node.expression.getText();
    if (/(^|\.)fault$/.test(name) && node.arguments.length >= 4)
      return passedOn(key, template) ? [] : [[key as ts.Expression, template as ts.Expression]];
    if (/(^|\.)fault$/.test(name) && !name.includes("."))
      return [[node.arguments[0] as ts.Expression, node.arguments[1] as ts.Expression]];
    if (name === "refusal")
      return passedOn(key, template) ? [] : [[key as ts.Expression, template as ts.Expression]];
    if (name === "noStock") return [[node.arguments[0] as ts.Expression, node.arguments[1] as ts.Expression]];
    if (name === "warning" || name === "finding") {
      const [code, , , words, , own] = node.arguments;
      return passedOn(own, words) ? [] : [[(own ?? code) as ts.Expression, words as ts.Expression]];
    }
  }
  if (ts.isObjectLiteralExpression(node)) {
    const field = (name: string): ts.Expression | undefined =>
      node.properties.filter(ts.isPropertyAssignment).find((one) => one.name.getText() === name)?.initializer;
    const [key, template, advice] = [field("key"), field("template"), field("advice")];
    if (key !== undefined && template !== undefined) return [[key, template]];
    if (key !== undefined && advice !== undefined) {
      const { parent } = node;
      const by = ts.isCallExpression(parent) ? parent.expression.getText() : "";
      return [
        ...(by === "unreadable" ? [] : [[key, advice] as const]),
        ...(by === "incomplete" ? [] : [[key, advice, ["unread-", "Couldn't read {given}. "]] as const]),
      ];
    }
  }
  return [];
}

/** Whether both are the parts of a sentence that stands elsewhere as `{ key, template }` or `{ key, advice }`. */
function passedOn(key: ts.Expression | undefined, template: ts.Expression | undefined): boolean {
  const isPart = (node: ts.Expression | undefined, names: RegExp): boolean =>
    names.test(node?.getText() ?? "");
  return isPart(key, /^(key|`unread-\$\{key\}`)$/) && isPart(template, /^(template|`?.*\badvice\}?`?)$/);
}

/** What a key and its template come to, in each way that their conditions can fall. */
function texts([key, template, [before, start] = ["", ""]]: Pair, source: ts.SourceFile): [string, string][] {
  const conditions = new Set<string>();
  const found = new Map<string, [string, string]>();
  const evaluate = (
    node: ts.Expression | string,
    chosen: ReadonlyMap<string, boolean>,
  ): string | undefined => {
    if (typeof node === "string") return node;
    if (ts.isParenthesizedExpression(node) || ts.isAsExpression(node))
      return evaluate(node.expression, chosen);
    if (ts.isStringLiteralLike(node)) return node.text;
    if (ts.isBinaryExpression(node) && node.operatorToken.kind === ts.SyntaxKind.PlusToken) {
      const [left, right] = [evaluate(node.left, chosen), evaluate(node.right, chosen)];
      return left === undefined || right === undefined ? undefined : left + right;
    }
    if (ts.isConditionalExpression(node)) {
      const condition = node.condition.getText();
      conditions.add(condition);
      return evaluate(chosen.get(condition) === false ? node.whenFalse : node.whenTrue, chosen);
    }
    if (ts.isIdentifier(node)) return constant(node.text, source, (one) => evaluate(one, chosen));
    return undefined;
  };
  const tryAll = (chosen: Map<string, boolean>): void => {
    const before_ = conditions.size;
    const [one, other] = [evaluate(key, chosen), evaluate(template, chosen)];
    if (conditions.size > before_ || [...conditions].some((condition) => !chosen.has(condition))) {
      const open = [...conditions].find((condition) => !chosen.has(condition)) as string;
      for (const way of [true, false]) tryAll(new Map([...chosen, [open, way]]));
    } else if (one !== undefined && other !== undefined)
      found.set(`${one} ${other}`, [`${before}${one}`, `${start}${other}`]);
  };
  tryAll(new Map());
  return [...found.values()];
}

/** The text of a constant of the same file. */
function constant(
  name: string,
  source: ts.SourceFile,
  evaluate: (node: ts.Expression) => string | undefined,
): string | undefined {
  for (const statement of source.statements)
    if (ts.isVariableStatement(statement))
      for (const { name: own, initializer } of statement.declarationList.declarations)
        if (own.getText() === name && initializer) return evaluate(initializer);
  return undefined;
}
