import ts from "typescript";

/** How a function can fail. */
export interface Failures {
  /** Codes it or a function of its own room fails with. */
  readonly codes: readonly string[];
  /** Whether one of them hands an argument to a check of `units`. */
  readonly checksArguments: boolean;
}

/** Follows the calls of a function within its own folder of `src` and gathers the codes they fail with. */
export function failuresOf(
  functions: readonly ts.FunctionLikeDeclaration[],
  checker: ts.TypeChecker,
): Failures {
  const room = roomOf(functions[0]);
  const codes = new Set<string>();
  const seen = new Set<ts.Node>(functions);
  let checksArguments = false;
  const visit = (node: ts.Node): void => {
    if (ts.isCallExpression(node) && ts.isIdentifier(node.expression)) {
      const called = node.expression.text;
      const [first] = node.arguments;
      if (called === "fail" && first !== undefined && ts.isStringLiteral(first)) codes.add(first.text);
      if (/^require[A-Z]/.test(called)) checksArguments = true;
      for (const declaration of declarationsOf(node.expression, checker)) {
        if (roomOf(declaration) !== room || seen.has(declaration)) continue;
        seen.add(declaration);
        ts.forEachChild(declaration, visit);
      }
    }
    ts.forEachChild(node, visit);
  };
  for (const declaration of functions) if (declaration.body !== undefined) visit(declaration.body);
  return { codes: [...codes].sort(), checksArguments };
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
