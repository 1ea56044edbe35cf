import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import ts from "typescript";

/** A file of `src` as text and as syntax. */
export interface SourceText {
  readonly path: string;
  readonly text: string;
  readonly tree: ts.SourceFile;
}

/** Parses a text as the file it would be. */
export function parse(path: string, text: string): SourceText {
  return { path, text, tree: ts.createSourceFile(path, text, ts.ScriptTarget.ES2022, true) };
}

/** Every TypeScript file below a folder. */
export function sourceTexts(folder: string): readonly SourceText[] {
  return readdirSync(folder, { recursive: true, encoding: "utf8" })
    .map((name) => join(folder, name).replaceAll("\\", "/"))
    .filter((path) => path.endsWith(".ts"))
    .sort()
    .map((path) => parse(path, readFileSync(path, "utf8")));
}

/** The files that run in Node, a browser and a mobile JavaScript engine: all but the command line. */
export function libraryTexts(): readonly SourceText[] {
  return sourceTexts("src").filter(({ path }) => !path.startsWith("src/cli/"));
}

/** Where a node stands, for a message. */
export function place({ path, tree }: SourceText, node: ts.Node): string {
  return `${path}:${tree.getLineAndCharacterOfPosition(node.getStart()).line + 1}`;
}
