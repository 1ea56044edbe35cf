import { relative, resolve } from "node:path";
import ts from "typescript";
import { RESERVED_NAMES } from "../../src/exchange/findProblem.js";
import type { AnyShape } from "../../src/exchange/shape.js";

/** A JSON Schema, or a part of one. */
export type Schema = { readonly [keyword: string]: unknown };

/** Where the type of a result is declared. */
export interface Declared {
  readonly file: string;
  readonly type: string;
}

let program: ts.Program | undefined;

/**
 * The JSON Schema of a result: its form from the shape that the library checks by, its descriptions and the names of its
 * definitions from the doc comments of the types.
 */
export function schemaOf({ file, type: name }: Declared, shape: AnyShape, id: string): Schema {
  program ??= programOf();
  const checker = program.getTypeChecker();
  const source = program.getSourceFile(resolve(file));
  const symbol = source && checker.getSymbolAtLocation(source);
  const declared = symbol && checker.getExportsOfModule(symbol).find((entry) => entry.name === name);
  if (declared === undefined) throw new Error(`${file} exports no type ${name}`);
  const definitions: Record<string, Schema> = {};
  const root = partOf(checker, checker.getDeclaredTypeOfSymbol(declared), shape, definitions, name);
  const sorted = Object.entries(definitions).sort(([one], [two]) => (one < two ? -1 : 1));
  return {
    $schema: "https://json-schema.org/draft/2020-12/schema",
    $id: id,
    title: name,
    ...root,
    $defs: Object.fromEntries(sorted),
  };
}

function programOf(): ts.Program {
  const { config } = ts.readConfigFile("tsconfig.json", ts.sys.readFile);
  const { options, fileNames } = ts.parseJsonConfigFileContent(config, ts.sys, ".");
  return ts.createProgram(fileNames, options);
}

function partOf(
  checker: ts.TypeChecker,
  type: ts.Type,
  shape: AnyShape,
  definitions: Record<string, Schema>,
  root?: string,
): Schema {
  switch (shape.kind) {
    case "number":
      return {
        type: shape.whole ? "integer" : "number",
        ...(shape.from !== undefined && { minimum: shape.from }),
        ...(shape.to !== undefined && { maximum: shape.to }),
      };
    case "text":
      return { type: "string" };
    case "truth":
      return { type: "boolean" };
    case "scalar":
      return { type: ["number", "string"] };
    case "words": {
      const [first, ...others] = Object.keys(shape.words);
      return others.length === 0 ? { const: first } : { enum: [first, ...others] };
    }
    case "or null":
      return withNull(partOf(checker, checker.getNonNullableType(type), shape.value, definitions));
    case "list": {
      const element = checker.getIndexTypeOfType(type, ts.IndexKind.Number) as ts.Type;
      const { length } = shape;
      return {
        type: "array",
        items: partOf(checker, element, shape.of, definitions),
        ...(length !== undefined && { minItems: length, maxItems: length }),
      };
    }
    case "named": {
      const entry = checker.getIndexTypeOfType(type, ts.IndexKind.String) as ts.Type;
      const some = shape.of.kind === "or null" ? entry : checker.getNonNullableType(entry);
      return {
        type: "object",
        propertyNames: { not: { enum: RESERVED_NAMES } },
        additionalProperties: partOf(checker, some, shape.of, definitions),
      };
    }
    case "fields": {
      const name = nameOf(type);
      if (name === undefined || name === root) return fieldsOf(checker, type, shape, definitions);
      definitions[name] ??= fieldsOf(checker, type, shape, definitions);
      return { $ref: `#/$defs/${name}` };
    }
  }
}

function fieldsOf(
  checker: ts.TypeChecker,
  type: ts.Type,
  { always, maybe }: Extract<AnyShape, { readonly kind: "fields" }>,
  definitions: Record<string, Schema>,
): Schema {
  const shapes = { ...always, ...maybe };
  const properties: Record<string, Schema> = {};
  for (const property of checker.getPropertiesOfType(type)) {
    const { name } = property;
    const shape = shapes[name];
    if (shape === undefined) throw new Error(`${checker.typeToString(type)}: no shape of ${name}`);
    const ofType = checker.getTypeOfSymbol(property);
    const stated = shape.kind === "or null" ? ofType : checker.getNonNullableType(ofType);
    properties[name] = { ...described(checker, property), ...partOf(checker, stated, shape, definitions) };
  }
  const own = nameOf(type) === undefined ? {} : described(checker, type.symbol);
  const required = Object.keys(properties).filter((name) => name in always);
  return {
    ...own,
    type: "object",
    properties,
    ...(required.length > 0 && { required }),
    additionalProperties: false,
  };
}

/** The name of an interface; `undefined` where a type is written out on the spot. */
function nameOf(type: ts.Type): string | undefined {
  const symbol = type.aliasSymbol ?? type.symbol;
  const [declaration] = symbol?.declarations ?? [];
  if (declaration === undefined || !ts.isInterfaceDeclaration(declaration)) return undefined;
  return relative("src", declaration.getSourceFile().fileName).startsWith("..") ? undefined : symbol?.name;
}

function described(checker: ts.TypeChecker, symbol: ts.Symbol): { readonly description?: string } {
  const text = ts
    .displayPartsToString(symbol.getDocumentationComment(checker))
    .replace(/\{@link (\w+)\}/g, "$1")
    .replace(/\s+/g, " ")
    .trim();
  return text === "" ? {} : { description: text };
}

function withNull(schema: Schema): Schema {
  const { type, enum: words, const: word } = schema;
  if (word !== undefined) return { enum: [word, null] };
  if (Array.isArray(words)) return { ...schema, enum: [...words, null] };
  if (type === undefined || type === "object" || type === "array")
    return { anyOf: [schema, { type: "null" }] };
  return { ...schema, type: [type, "null"].flat() };
}
