import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import ts from "typescript";
import type { MetricExplanation, MetricOption } from "../../src/metrics/explanation.js";

/** What the files of the metrics declare. */
interface Declared {
  readonly functions: ReadonlyMap<string, ts.FunctionDeclaration>;
  readonly interfaces: ReadonlyMap<string, ts.InterfaceDeclaration>;
  readonly aliases: ReadonlyMap<string, ts.TypeAliasDeclaration>;
}

/**
 * Reads the doc comments of the metrics' functions: formula, limits, and the options with their defaults.
 *
 * @param root - Folder that holds `src`.
 * @param ids - Metrics, each the name of an exported function.
 * @param exported - What the metrics export, for the values of the defaults.
 */
export function readExplanations(
  root: string,
  ids: readonly string[],
  exported: Readonly<Record<string, unknown>>,
): Readonly<Record<string, MetricExplanation>> {
  const declared = declarationsIn(["src/metrics", "src/models"].map((folder) => join(root, folder)));
  return Object.fromEntries(ids.map((id) => [id, explanationOf(id, declared, exported)]));
}

function declarationsIn(folders: readonly string[]): Declared {
  const functions = new Map<string, ts.FunctionDeclaration>();
  const interfaces = new Map<string, ts.InterfaceDeclaration>();
  const aliases = new Map<string, ts.TypeAliasDeclaration>();
  for (const path of folders.flatMap(sourcesIn)) {
    const file = ts.createSourceFile(path, readFileSync(path, "utf8"), ts.ScriptTarget.ES2022, true);
    for (const node of file.statements) {
      if (ts.isFunctionDeclaration(node) && node.name !== undefined) functions.set(node.name.text, node);
      if (ts.isInterfaceDeclaration(node)) interfaces.set(node.name.text, node);
      if (ts.isTypeAliasDeclaration(node)) aliases.set(node.name.text, node);
    }
  }
  return { functions, interfaces, aliases };
}

function sourcesIn(folder: string): string[] {
  return readdirSync(folder, { recursive: true, encoding: "utf8" })
    .filter((path) => path.endsWith(".ts"))
    .map((path) => join(folder, path));
}

function explanationOf(
  id: string,
  declared: Declared,
  exported: Readonly<Record<string, unknown>>,
): MetricExplanation {
  const node = declared.functions.get(id);
  if (node === undefined) throw new Error(`no function ${id} is declared in the metrics`);
  const part = partsOf(node);
  return { formula: part("Formula"), limits: part("Limits"), ...optionsOf(node, declared, exported) };
}

/** Gives a part of a doc comment by its word; every metric has all four. */
function partsOf(node: ts.FunctionDeclaration): (name: string) => string {
  const pieces = docOf(node).split(/^(Formula|Units|Limits|Source): /m);
  return (name) => {
    const text = pieces[pieces.indexOf(name) + 1];
    if (!pieces.includes(name) || text === undefined) {
      throw new Error(`the doc comment of ${node.name?.text} does not state "${name}:"`);
    }
    return plain(text);
  };
}

function optionsOf(
  node: ts.FunctionDeclaration,
  declared: Declared,
  exported: Readonly<Record<string, unknown>>,
): Pick<MetricExplanation, "optionsOf" | "options"> {
  const parameter = node.parameters.find(({ name }) => name.getText() === "options");
  if (parameter === undefined) return { optionsOf: "", options: [] };
  const type = declared.interfaces.get(parameter.type?.getText() ?? "");
  const tag = ts.getJSDocParameterTags(parameter)[0];
  const name = /\{@link (\w+_DEFAULTS)\}/.exec(ts.getTextOfJSDocComment(tag?.comment) ?? "")?.[1] ?? "";
  const defaults = exported[name] as Readonly<Record<string, unknown>> | undefined;
  if (type === undefined || defaults === undefined) {
    throw new Error(`the options of ${node.name?.text} and their defaults were not found`);
  }
  const members = membersOf(type, declared);
  return {
    optionsOf: plain(docOf(type)),
    options: members.map((member): MetricOption => {
      const option = member.name.getText();
      if (!(option in defaults)) throw new Error(`${name} has no ${option}`);
      return {
        name: option,
        standard: written(defaults[option]),
        choices: choicesOf(member.type, declared),
        meaning: plain(docOf(member)),
      };
    }),
  };
}

/** The members of an interface, those of the interfaces it extends first. */
function membersOf(type: ts.InterfaceDeclaration, declared: Declared): ts.PropertySignature[] {
  const bases = (type.heritageClauses ?? [])
    .flatMap(({ types }) => [...types])
    .flatMap(({ expression }) => declared.interfaces.get(expression.getText()) ?? []);
  return [
    ...bases.flatMap((base) => membersOf(base, declared)),
    ...type.members.filter(ts.isPropertySignature),
  ];
}

/** The words of a type that is a union of them. */
function choicesOf(type: ts.TypeNode | undefined, declared: Declared): string[] {
  if (type === undefined) return [];
  if (ts.isUnionTypeNode(type)) return type.types.flatMap((one) => choicesOf(one, declared));
  if (ts.isLiteralTypeNode(type) && ts.isStringLiteral(type.literal)) return [type.literal.text];
  const alias = ts.isTypeReferenceNode(type) ? declared.aliases.get(type.typeName.getText()) : undefined;
  return alias === undefined ? [] : choicesOf(alias.type, declared);
}

function written(value: unknown): string {
  if (typeof value !== "object" || value === null) return JSON.stringify(value);
  const fields = Object.entries(value).map(([name, inner]) => `${name}: ${written(inner)}`);
  return `{ ${fields.join(", ")} }`;
}

function docOf(node: ts.Node): string {
  const doc = ts.getJSDocCommentsAndTags(node).find(ts.isJSDoc);
  return ts.getTextOfJSDocComment(doc?.comment) ?? "";
}

/** One line, without the marks of links. */
function plain(text: string): string {
  return text
    .replace(/\{@link (\w+)(?:\(\))?\}/g, "`$1`")
    .replace(/\s+/g, " ")
    .trim();
}
