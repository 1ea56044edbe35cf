/**
 * Checks what was built. With `--write` it writes the names of all exports to `docs/exports.txt`; without, it compares
 * them: a name that goes away is a breaking change, a name that comes is a promise.
 */
import { spawnSync } from "node:child_process";
import { existsSync, readdirSync, readFileSync, statSync, writeFileSync } from "node:fs";
import { homedir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import ts from "typescript";

process.chdir(fileURLToPath(new URL("..", import.meta.url)));
const manifest = JSON.parse(readFileSync("package.json", "utf8")) as {
  readonly name: string;
  readonly exports: Readonly<Record<string, unknown>>;
  readonly dependencies: Readonly<Record<string, string>>;
};
const snapshotFile = "docs/exports.txt";
const entries = Object.keys(manifest.exports).filter(
  (path) => path !== "./package.json" && !path.includes("*"),
);
const specifier = (entry: string) => manifest.name + entry.slice(1);

const problems: string[] = [];
let checks = 0;
function check(holds: boolean, problem: () => string): void {
  checks += 1;
  if (!holds) problems.push(problem());
}

function files(folder: string, ending: string): string[] {
  return readdirSync(folder, { recursive: true, encoding: "utf8" })
    .map((name) => join(folder, name))
    .filter((path) => path.endsWith(ending) && statSync(path).isFile());
}

/** Texts that must not stand in a built file, and why. */
const forbiddenTexts: readonly (readonly [text: RegExp, why: string])[] = [
  [/_nullishCoalesce|_optionalChain/, "a helper in place of the language's own ?? or ?."],
  [/sourceMappingURL/, "a source map"],
];

function checkFiles(): void {
  const machinePaths = [process.cwd(), homedir()].filter((path) => path.length > 1);
  for (const file of [...files("dist", ".js"), ...files("dist", ".d.ts")]) {
    const text = readFileSync(file, "utf8");
    for (const [pattern, why] of forbiddenTexts) check(!pattern.test(text), () => `${file} holds ${why}`);
    for (const path of machinePaths) check(!text.includes(path), () => `${file} holds the path ${path}`);
  }
  check(files("dist", ".map").length === 0, () => "dist holds source maps, whose paths nobody checked");
}

/** A built file may import its neighbours and the packages a user installs, and a declaration only its neighbours. */
function checkImports(): void {
  for (const file of [...files("dist", ".js"), ...files("dist", ".d.ts")]) {
    if (file.startsWith(join("dist", "esm", "cli"))) continue;
    for (const { fileName } of ts.preProcessFile(readFileSync(file, "utf8"), true, true).importedFiles) {
      const isPackage = !fileName.startsWith(".");
      const name = fileName.split("/", fileName.startsWith("@") ? 2 : 1).join("/");
      const isDeclaration = file.endsWith(".d.ts");
      const neighbour = join(file, "..", isDeclaration ? fileName.replace(/\.js$/, ".d.ts") : fileName);
      check(
        isPackage ? !isDeclaration && name in manifest.dependencies : existsSync(neighbour),
        () => `${file} imports "${fileName}", which a user does not have`,
      );
    }
  }
}

/** The names of the exports with what they are, types included, as the declarations tell. */
function exportLines(): string {
  const roots = entries.map((entry) => `dist/esm/${entry.slice(2)}${entry === "." ? "" : "/"}index.d.ts`);
  const program = ts.createProgram(roots, {
    target: ts.ScriptTarget.ES2022,
    module: ts.ModuleKind.NodeNext,
    moduleResolution: ts.ModuleResolutionKind.NodeNext,
    types: [],
  });
  const checker = program.getTypeChecker();
  const blocks = roots.map((root, i) => {
    const file = program.getSourceFile(root);
    const symbol = file && checker.getSymbolAtLocation(file);
    check(symbol !== undefined, () => `${root} exports nothing`);
    if (symbol === undefined) return specifier(entries[i] as string);
    const lines = checker.getExportsOfModule(symbol).map((exported) => {
      const target = exported.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(exported) : exported;
      const isValue = (target.flags & ts.SymbolFlags.Value) !== 0;
      return `  ${exported.name}${isValue ? "" : " (type)"}`;
    });
    return [specifier(entries[i] as string), ...lines.sort()].join("\n");
  });
  return `${blocks.join("\n\n")}\n`;
}

function compareExports(): void {
  const now = exportLines();
  if (process.argv.includes("--write")) {
    writeFileSync(snapshotFile, now);
    console.log(`${snapshotFile} written`);
    return;
  }
  check(existsSync(snapshotFile), () => `${snapshotFile} is missing; npm run exports writes it`);
  if (!existsSync(snapshotFile)) return;
  const before = readFileSync(snapshotFile, "utf8");
  const missing = (of: string, than: string) => {
    const there = new Set(withEntry(than));
    return withEntry(of).filter((line) => !there.has(line));
  };
  check(
    now === before,
    () =>
      `exports differ from ${snapshotFile} (npm run exports writes it anew)\n  gone: ${missing(before, now).join(", ") || "none"}\n  new: ${missing(now, before).join(", ") || "none"}`,
  );
}

/** Each exported name with its entry before it. */
function withEntry(text: string): string[] {
  return text.split("\n\n").flatMap((block) => {
    const [entry, ...names] = block.trim().split("\n");
    return names.map((name) => `${entry}:${name.trim()}`);
  });
}

checkFiles();
checkImports();
compareExports();
for (const problem of problems) console.error(problem);
console.log(`dist: ${checks - problems.length} of ${checks} checks passed`);
const loaded = spawnSync(process.execPath, ["scripts/loadEntries.mjs"], { stdio: "inherit" });
process.exit(problems.length > 0 ? 1 : (loaded.status ?? 1));
