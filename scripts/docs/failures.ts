import ts from "typescript";

/** How a function can fail. */
export interface Failures {
  /** Codes it or a helper of its own folder fails with. */
  readonly codes: readonly string[];
  /** Whether one of them hands an argument to a check of `units`. */
  readonly checksArguments: boolean;
}

/**
 * Follows the calls of a function within its own folder of `src` and gathers the codes they fail with. It stops at other
 * public functions, which state their own, and at functions that are made and not called.
 */
export function failuresOf(
  functions: readonly ts.FunctionLikeDeclaration[],
  checker: ts.TypeChecker,
  isPublic: ReadonlySet<ts.Node>,
): Failures {
  const room = roomOf(functions[0]);
  const codes = new Set<string>();
  const seen = new Set<ts.Node>(functions);
  let checksArguments = false;
  const visit = (node: ts.Node): void => {
    if (isMadeOnly(node)) return;
    if (ts.isCallExpression(node) && ts.isIdentifier(node.expression)) {
      const called = node.expression.text;
      const [first] = node.arguments;
      if (called === "fail" && first !== undefined && ts.isStringLiteral(first)) codes.add(first.text);
      if (/^require[A-Z]/.test(called)) checksArguments = true;
      for (const declaration of declarationsOf(node.expression, checker)) {
        if (roomOf(declaration) !== room || isPublic.has(declaration) || seen.has(declaration)) continue;
        seen.add(declaration);
        visitBody(declaration);
      }
    }
    ts.forEachChild(node, visit);
  };
  const visitBody = (declaration: ts.Node): void => {
    const called = ts.isVariableDeclaration(declaration) ? declaration.initializer : declaration;
    if (called !== undefined) ts.forEachChild(called, visit);
  };
  for (const declaration of functions) if (declaration.body !== undefined) visit(declaration.body);
  return { codes: [...codes].sort(), checksArguments };
}

/** A function inside another that is no argument of a call: it runs where it is called, if at all. */
function isMadeOnly(node: ts.Node): boolean {
  if (ts.isFunctionDeclaration(node) || ts.isMethodDeclaration(node)) return true;
  return (ts.isArrowFunction(node) || ts.isFunctionExpression(node)) && !ts.isCallExpression(node.parent);
}

/** The folder of `src` that a node stands in. */
function roomOf(node: ts.Node | undefined): string | undefined {
  return node && /\/src\/([^/]+)\//.exec(node.getSourceFile().fileName)?.[1];
}

function declarationsOf(name: ts.Identifier, checker: ts.TypeChecker): readonly ts.Declaration[] {
  const symbol = checker.getSymbolAtLocation(name);
  if (symbol === undefined) return [];
  const target = symbol.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(symbol) : symbol;
  return target.declarations ?? [];
}
