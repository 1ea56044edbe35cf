import ts from "typescript";
import { expect, it } from "vitest";
import { libraryTexts, parse, place, type SourceText } from "./source.js";

/**
 * Law: the top level of a library file holds functions, literals and calls marked pure, so that a bundler may drop
 * whatever is not used.
 */
function impureAtTop(source: SourceText): string[] {
  return source.tree.statements.flatMap((statement) =>
    mayStand(source, statement) ? [] : `${place(source, statement)} ${statement.getText().split("\n")[0]}`,
  );
}

function mayStand(source: SourceText, statement: ts.Statement): boolean {
  if (ts.isImportDeclaration(statement)) return statement.importClause !== undefined;
  if (
    ts.isExportDeclaration(statement) ||
    ts.isFunctionDeclaration(statement) ||
    ts.isInterfaceDeclaration(statement) ||
    ts.isTypeAliasDeclaration(statement)
  ) {
    return true;
  }
  if (ts.isClassDeclaration(statement)) {
    return statement.members.every(
      (member) =>
        !ts.isClassStaticBlockDeclaration(member) &&
        !(ts.isPropertyDeclaration(member) && ts.getCombinedModifierFlags(member) & ts.ModifierFlags.Static),
    );
  }
  if (ts.isVariableStatement(statement)) {
    if (statement.modifiers?.some(({ kind }) => kind === ts.SyntaxKind.DeclareKeyword)) return true;
    const { flags, declarations } = statement.declarationList;
    return (
      (flags & ts.NodeFlags.Const) !== 0 &&
      declarations.every(({ initializer }) => initializer !== undefined && isPure(source, initializer))
    );
  }
  return false;
}

function isPure(source: SourceText, node: ts.Expression): boolean {
  const pure = (inner: ts.Expression) => isPure(source, inner);
  if (ts.isLiteralExpression(node) || ts.isIdentifier(node)) return true;
  if (
    [ts.SyntaxKind.TrueKeyword, ts.SyntaxKind.FalseKeyword, ts.SyntaxKind.NullKeyword].includes(node.kind)
  ) {
    return true;
  }
  if (ts.isArrowFunction(node) || ts.isFunctionExpression(node)) return true;
  if (ts.isAsExpression(node) || ts.isSatisfiesExpression(node) || ts.isParenthesizedExpression(node)) {
    return pure(node.expression);
  }
  if (ts.isPrefixUnaryExpression(node)) return pure(node.operand) && ts.isNumericLiteral(node.operand);
  if (ts.isBinaryExpression(node)) {
    const arithmetic = [
      ts.SyntaxKind.PlusToken,
      ts.SyntaxKind.MinusToken,
      ts.SyntaxKind.AsteriskToken,
      ts.SyntaxKind.SlashToken,
      ts.SyntaxKind.AsteriskAsteriskToken,
    ];
    return arithmetic.includes(node.operatorToken.kind) && isNumber(node.left) && isNumber(node.right);
  }
  if (ts.isArrayLiteralExpression(node))
    return node.elements.every((element) => !ts.isSpreadElement(element) && pure(element));
  if (ts.isObjectLiteralExpression(node)) {
    return node.properties.every(
      (property) =>
        ts.isShorthandPropertyAssignment(property) ||
        ts.isMethodDeclaration(property) ||
        (ts.isPropertyAssignment(property) &&
          !ts.isComputedPropertyName(property.name) &&
          pure(property.initializer)),
    );
  }
  if (ts.isCallExpression(node) || ts.isNewExpression(node)) {
    return /\/\* ?[@#]__PURE__ ?\*\//.test(source.text.slice(node.getFullStart(), node.getStart()));
  }
  return false;
}

/** Arithmetic of number literals folds away; an identifier could be an object with a `valueOf`. */
function isNumber(node: ts.Expression): boolean {
  if (ts.isParenthesizedExpression(node)) return isNumber(node.expression);
  if (ts.isPrefixUnaryExpression(node)) return isNumber(node.operand);
  if (ts.isBinaryExpression(node)) return isNumber(node.left) && isNumber(node.right);
  return ts.isNumericLiteral(node);
}

it("every library file keeps the law", () => {
  const files = libraryTexts();
  expect(files.length).toBeGreaterThan(10);
  expect(files.flatMap(impureAtTop)).toEqual([]);
});

it.each([
  "export const table = new Map();",
  "const frozen = Object.freeze({ a: 1 });",
  "const root = Math.sqrt(2);",
  "export const half = Math.PI / 2;",
  "const both = { ...other };",
  "const list = [1, make()];",
  "export let count = 0;",
  'import "./effect.js";',
  "register();",
  "if (a) b();",
  "class A { static table = make(); }",
  "class A { static { make(); } }",
  "const mixed = factor * 2;",
  "const item = table.first;",
])("catches %s", (text) => expect(impureAtTop(parse("src/units/x.ts", text))).toHaveLength(1));

it.each([
  "export const table = /* @__PURE__ */ new Map();",
  "const root = /* @__PURE__ */ Math.sqrt(2);",
  "export const D = { from: -0.2, to: 1609.344 / 3600, other: null, deep: [{ f: contactTime }], g: () => make() } as const;",
  "class A extends Error { readonly name = 'A'; }",
  "declare const unit: unique symbol;",
  "export function f() { return new Map(); }",
  'export * from "./a.js";',
])("lets %s pass", (text) => expect(impureAtTop(parse("src/units/x.ts", text))).toEqual([]));
