import { readdirSync } from "node:fs";
import { join, relative } from "node:path";
import ts from "typescript";
import { type Failures, failuresOf } from "./failures.js";

/** A doc comment's example and where it stands. */
export interface DocExample {
  readonly place: string;
  /** The source file, where it stands in one. */
  readonly file?: string;
  readonly text: string;
}

/** What reading all doc comments of the library gives. */
export interface Grammar {
  readonly examples: readonly DocExample[];
  readonly problems: readonly string[];
  readonly declarations: number;
}

/** An exported name with the nodes that declare it: several where a function has overloads. */
interface Exported {
  readonly name: string;
  /** The nodes that may carry the comment. */
  readonly nodes: readonly ts.Statement[];
  readonly declarations: readonly ts.Declaration[];
}

/**
 * Checks the doc comment of every exported declaration of the library and gathers the examples.
 *
 * @param root - Folder that holds `tsconfig.json` and `src`.
 */
export function readGrammar(root: string): Grammar {
  const program = libraryProgram(root);
  const checker = program.getTypeChecker();
  const isPublic = publicDeclarations(program, checker, root);
  const files = program
    .getSourceFiles()
    .filter(({ fileName }) => fileName.startsWith(`${slashed(root)}/src/`));
  const docs = new Map(files.flatMap(exportedOf).map(({ name, nodes }) => [name, throwsOf(nodes)]));
  const examples: DocExample[] = [];
  const problems: string[] = [];
  let declarations = 0;
  for (const file of files) {
    const path = slashed(relative(root, file.fileName));
    for (const exported of exportedOf(file)) {
      declarations += 1;
      const { name, nodes } = exported;
      const line = file.getLineAndCharacterOfPosition(nodes[0]?.getStart() ?? 0).line + 1;
      const place = `${path}:${line} ${name}`;
      const own = nodes.flatMap(examplesOf);
      examples.push(...own.map((text) => ({ place, file: file.fileName, text })));
      const functions = exported.declarations.flatMap((declaration) => functionOf(declaration) ?? []);
      const found = [...descriptionProblems(nodes), ...parameterProblems(nodes, functions)];
      if (functions.length > 0 && exported.declarations.some((declaration) => isPublic.has(declaration))) {
        if (own.length === 0) found.push("has no @example");
        found.push(
          ...throwsProblems(nodes, failuresOf(functions, checker, isPublic), docs),
          ...partProblems(path, nodes),
        );
      }
      problems.push(...found.map((problem) => `${place} ${problem}`));
    }
  }
  return { examples, problems, declarations };
}

/** The compiler writes paths with slashes on every system. */
const slashed = (path: string): string => path.replaceAll("\\", "/");

function libraryProgram(root: string): ts.Program {
  const { config, error } = ts.readConfigFile(join(root, "tsconfig.json"), ts.sys.readFile);
  if (error !== undefined) throw new Error(ts.flattenDiagnosticMessageText(error.messageText, "\n"));
  const { fileNames, options } = ts.parseJsonConfigFileContent(config, ts.sys, root);
  return ts.createProgram(fileNames, options);
}

/** Declarations that an entry of the package exports. */
function publicDeclarations(
  program: ts.Program,
  checker: ts.TypeChecker,
  root: string,
): ReadonlySet<ts.Node> {
  const indexes = readdirSync(join(root, "src"), { recursive: true, encoding: "utf8" })
    .filter((path) => path.endsWith("index.ts"))
    .map((path) => program.getSourceFile(slashed(join(root, "src", path))));
  return new Set(
    indexes.flatMap((file) => {
      const symbol = file && checker.getSymbolAtLocation(file);
      return (symbol ? checker.getExportsOfModule(symbol) : []).flatMap((exported) => {
        const target = exported.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(exported) : exported;
        return target.declarations ?? [];
      });
    }),
  );
}

/** The exported declarations of a file, overloads together. */
function exportedOf(file: ts.SourceFile): readonly Exported[] {
  const byName = new Map<string, Exported>();
  for (const node of file.statements) {
    const modifiers = ts.canHaveModifiers(node) ? (ts.getModifiers(node) ?? []) : [];
    if (!modifiers.some(({ kind }) => kind === ts.SyntaxKind.ExportKeyword)) continue;
    const declarations: readonly ts.NamedDeclaration[] = ts.isVariableStatement(node)
      ? node.declarationList.declarations
      : [node as ts.DeclarationStatement];
    for (const declaration of declarations) {
      const name = declaration.name?.getText() ?? "default";
      const before = byName.get(name);
      byName.set(name, {
        name,
        nodes: [...(before?.nodes ?? []), node],
        declarations: [...(before?.declarations ?? []), declaration],
      });
    }
  }
  return [...byName.values()];
}

function functionOf(declaration: ts.Node): ts.FunctionLikeDeclaration | null {
  if (ts.isFunctionDeclaration(declaration)) return declaration;
  if (!ts.isVariableDeclaration(declaration) || declaration.initializer === undefined) return null;
  const { initializer } = declaration;
  return ts.isArrowFunction(initializer) || ts.isFunctionExpression(initializer) ? initializer : null;
}

function docsOf(nodes: readonly ts.Node[]): readonly ts.JSDoc[] {
  return nodes.flatMap((node) => ts.getJSDocCommentsAndTags(node).filter(ts.isJSDoc));
}

function examplesOf(node: ts.Node): string[] {
  return ts
    .getJSDocTags(node)
    .filter(({ tagName }) => tagName.text === "example")
    .map(({ comment }) => (ts.getTextOfJSDocComment(comment) ?? "").replace(/^```\w*$/gm, "").trim());
}

function descriptionProblems(nodes: readonly ts.Node[]): string[] {
  const [doc] = docsOf(nodes);
  if (doc === undefined) return ["has no doc comment"];
  const text = (ts.getTextOfJSDocComment(doc.comment) ?? "").trim();
  return /^["`(\p{Lu}\d].*?[.:;]/su.test(text) ? [] : [`begins with no sentence: "${text.split("\n")[0]}"`];
}

/** Parameters that are documented and not there; a destructured one is named by its comment alone. */
function parameterProblems(
  nodes: readonly ts.Node[],
  functions: readonly ts.FunctionLikeDeclaration[],
): string[] {
  if (functions.length === 0) return [];
  const parameters = functions.flatMap((declaration) => [...declaration.parameters]);
  if (parameters.some(({ name }) => !ts.isIdentifier(name))) return [];
  const names = parameters.map(({ name }) => name.getText());
  return nodes
    .flatMap((node) => ts.getJSDocTags(node).filter(ts.isJSDocParameterTag))
    .map(({ name }) => name.getText())
    .filter((name) => !names.includes(name))
    .map((name) => `documents a parameter "${name}" that it does not have`);
}

/** Codes that can come and no `@throws` names; one may point to another function's: "as {@link lowPass}". */
function throwsProblems(
  nodes: readonly ts.Node[],
  { codes, checksArguments }: Failures,
  docs: ReadonlyMap<string, string>,
): string[] {
  const own = throwsOf(nodes);
  if (own === "") return codes.length > 0 || checksArguments ? ["can fail and has no @throws"] : [];
  const told = withLinked(own, docs);
  return codes
    .filter((code) => !told.includes(`\`${code}\``))
    .map((code) => `can fail with "${code}", which no @throws names`);
}

function throwsOf(nodes: readonly ts.Node[]): string {
  return nodes
    .flatMap((node) => ts.getJSDocTags(node).filter(({ tagName }) => tagName.text === "throws"))
    .map(({ comment }) => ts.getTextOfJSDocComment(comment) ?? "")
    .join("\n");
}

/** A `@throws` with those of the functions it links to. */
function withLinked(text: string, docs: ReadonlyMap<string, string>, seen: readonly string[] = []): string {
  const links = [...text.matchAll(/\{@link (\w+)\}/g)].map(([, name]) => name as string);
  return links
    .filter((name) => !seen.includes(name))
    .reduce((all, name) => `${all}\n${withLinked(docs.get(name) ?? "", docs, [...seen, name])}`, text);
}

/** Parts that the doc comment of a number must have. */
function partProblems(path: string, nodes: readonly ts.Node[]): string[] {
  if (!/^src\/metrics\/(?!common\/)[^/]+\/|^src\/models\//.test(path)) return [];
  const text = docsOf(nodes)
    .map((doc) => doc.getText())
    .join("\n");
  return ["Formula", "Units", "Limits", "Source"]
    .filter((part) => !new RegExp(`\\b${part}: `).test(text))
    .map((part) => `does not state "${part}:"`);
}
