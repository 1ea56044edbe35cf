import { inspect } from "node:util";
import ts from "typescript";
import { type Expected, isExpected, readExpected } from "./expected.js";

/** Everything an example may name, by entry of the package and merged. */
export interface Scope {
  readonly entries: ReadonlyMap<string, Readonly<Record<string, unknown>>>;
  readonly names: Readonly<Record<string, unknown>>;
}

/** What running an example showed. */
export interface ExampleResult {
  readonly lines: number;
  readonly problems: readonly string[];
}

/**
 * Runs one example, statement by statement. An expression with a comment behind it must give the value the comment
 * begins with; an import must name what the entry exports.
 */
export function runExample(text: string, scope: Scope): ExampleResult {
  const tree = ts.createSourceFile("example.ts", text, ts.ScriptTarget.ES2022, true);
  const expectations: { readonly source: string; readonly expected: Expected; readonly comment: string }[] =
    [];
  const problems: string[] = [];
  const code = tree.statements.map((statement) => {
    if (ts.isImportDeclaration(statement)) {
      problems.push(...missingImports(statement, scope));
      return "";
    }
    const comment = ts.isExpressionStatement(statement) ? commentBehind(text, statement) : null;
    if (comment === null || !ts.isExpressionStatement(statement)) return statement.getText();
    const expected = readExpected(comment);
    const source = statement.expression.getText();
    if (expected === null) {
      problems.push(`"${source}" states no value: "${comment}"`);
      return "";
    }
    expectations.push({ source, expected, comment });
    return `__check(${expectations.length - 1}, () => (${source}));`;
  });
  const check = (index: number, evaluate: () => unknown) => {
    const { source, expected, comment } = expectations[index] as (typeof expectations)[number];
    const problem = problemOf(evaluate, expected);
    if (problem !== null) problems.push(`"${source}" ${problem}, not "${comment}"`);
  };
  try {
    const script = ts.transpile(code.join("\n"), {
      target: ts.ScriptTarget.ES2022,
      module: ts.ModuleKind.ESNext,
    });
    const declared = new Set(declaredNames(tree));
    const names = Object.keys(scope.names).filter((name) => !declared.has(name));
    new Function("__check", ...names, `"use strict";\n${script}`)(
      check,
      ...names.map((name) => scope.names[name]),
    );
  } catch (error) {
    problems.push(`does not run: ${String(error)}`);
  }
  return { lines: expectations.length, problems };
}

function missingImports(statement: ts.ImportDeclaration, { entries }: Scope): string[] {
  const entry = (statement.moduleSpecifier as ts.StringLiteral).text;
  if (entry.startsWith("node:")) return [];
  const exports = entries.get(entry);
  if (exports === undefined) return [`imports "${entry}", which is no entry`];
  const bindings = statement.importClause?.namedBindings;
  if (bindings === undefined || !ts.isNamedImports(bindings)) return [];
  return bindings.elements
    .filter(({ isTypeOnly, name, propertyName }) => !isTypeOnly && !((propertyName ?? name).text in exports))
    .map(({ name }) => `imports "${name.text}", which "${entry}" does not export`);
}

function declaredNames(tree: ts.SourceFile): string[] {
  const bound = (name: ts.BindingName): string[] =>
    ts.isIdentifier(name)
      ? [name.text]
      : name.elements.flatMap((element) => (ts.isBindingElement(element) ? bound(element.name) : []));
  return tree.statements.flatMap((statement) => {
    if (ts.isVariableStatement(statement)) {
      return statement.declarationList.declarations.flatMap(({ name }) => bound(name));
    }
    return ts.isFunctionDeclaration(statement) && statement.name ? [statement.name.text] : [];
  });
}

/** The comment on the line that a statement ends on. */
function commentBehind(text: string, statement: ts.Statement): string | null {
  const [range] = ts.getTrailingCommentRanges(text, statement.end) ?? [];
  if (range === undefined || range.kind !== ts.SyntaxKind.SingleLineCommentTrivia) return null;
  return text.slice(range.pos + 2, range.end).trim();
}

function problemOf(evaluate: () => unknown, expected: Expected): string | null {
  const code = expected.kind === "throws" ? expected.code : null;
  let actual: unknown;
  try {
    actual = evaluate();
  } catch (error) {
    if (code !== null && (error as { code?: unknown }).code === code) return null;
    return `throws ${String(error)}`;
  }
  if (code !== null) return `throws no ${code}, it gives ${inspect(actual)}`;
  return isExpected(actual, expected)
    ? null
    : `gives ${inspect(actual, { depth: 2, maxArrayLength: 8, breakLength: 120 })}`;
}
