import ts from "typescript";
import { expect, it } from "vitest";
import { libraryTexts, parse, place, type SourceText, sourceTexts } from "./source.js";

/** Names that only one kind of engine has. `TextDecoder` is the one that all of them share beyond the language. */
const engineNames: ReadonlySet<string> = new Set(
  "process Buffer require module exports global globalThis self __dirname __filename setTimeout setInterval setImmediate queueMicrotask structuredClone console performance fetch window document navigator localStorage location crypto URL Worker XMLHttpRequest".split(
    " ",
  ),
);

/** Law: a library file uses the language alone. Names that the file declares itself are its own. */
function engineUses(source: SourceText): string[] {
  const own = new Set<string>();
  const used: ts.Identifier[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isIdentifier(node)) {
      if (isDeclared(node)) own.add(node.text);
      else if (engineNames.has(node.text) && isValue(node)) used.push(node);
    }
    ts.forEachChild(node, visit);
  };
  visit(source.tree);
  return used.filter(({ text }) => !own.has(text)).map((name) => `${place(source, name)} ${name.text}`);
}

function isDeclared(name: ts.Identifier): boolean {
  const { parent } = name;
  return (
    (ts.isVariableDeclaration(parent) ||
      ts.isParameter(parent) ||
      ts.isFunctionDeclaration(parent) ||
      ts.isBindingElement(parent) ||
      ts.isImportSpecifier(parent)) &&
    parent.name === name
  );
}

/** Whether a name stands for a value: neither a property's name nor a type. */
function isValue(name: ts.Identifier): boolean {
  const { parent } = name;
  if (ts.isPropertyAccessExpression(parent)) return parent.name !== name;
  return !(
    (ts.isPropertyAssignment(parent) && parent.name === name) ||
    ts.isPropertySignature(parent) ||
    ts.isPropertyDeclaration(parent) ||
    ts.isMethodDeclaration(parent) ||
    ts.isTypeReferenceNode(parent) ||
    ts.isQualifiedName(parent) ||
    ts.isLiteralTypeNode(parent)
  );
}

it("no library file uses a name of Node or of a browser", () => {
  const files = libraryTexts();
  expect(files.length).toBeGreaterThan(10);
  expect(files.flatMap(engineUses)).toEqual([]);
});

it.each([
  "const a = process.env;",
  "console.log(1);",
  "const b = globalThis;",
  "export const f = () => Buffer.from([]);",
  "const later = () => setTimeout(g, 1);",
])("catches %s", (text) => expect(engineUses(parse("src/units/x.ts", text))).toHaveLength(1));

it.each([
  "export const f = (location: number) => location + 1;",
  "const a = { process: 1 }; export const b = a.process;",
  "export interface A { readonly location: string }",
  "const text = 'process.env';",
])("lets %s pass", (text) => expect(engineUses(parse("src/units/x.ts", text))).toEqual([]));

it.each(["src", "tests", "scripts", "benchmarks"])("no file of %s is longer than 400 lines", (folder) => {
  const long = sourceTexts(folder).map(({ path, text }) => ({ path, lines: text.split("\n").length - 1 }));
  expect(long.filter(({ lines }) => lines > 400)).toEqual([]);
});

it("a folder's index only re-exports", () => {
  const indexes = sourceTexts("src").filter(({ path }) => path.endsWith("/index.ts"));
  expect(indexes.length).toBeGreaterThan(5);
  const others = indexes.flatMap((source) =>
    source.tree.statements
      .filter((statement) => !(ts.isExportDeclaration(statement) && statement.moduleSpecifier !== undefined))
      .map((statement) => place(source, statement)),
  );
  expect(others).toEqual([]);
});
