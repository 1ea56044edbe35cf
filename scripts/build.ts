/**
 * Builds `dist`: one tree a module format, each with a marker of its own type, declarations for both, and the notices
 * of the packages that went into it. With `--js` only what a program needs to run.
 */
import { spawnSync } from "node:child_process";
import { cpSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join, sep } from "node:path";
import { fileURLToPath } from "node:url";

const formats = ["esm", "cjs"] as const;

/** What the bundler writes about an output: the files that went into it. */
interface Metafile {
  readonly outputs: Readonly<Record<string, { readonly inputs: Readonly<Record<string, unknown>> }>>;
}

/** Runs one of the installed tools by its script, so that no shell is needed; ends with its exit code where it fails. */
function run(script: string, ...parameters: string[]): void {
  const { status } = spawnSync(process.execPath, [join("node_modules", script), ...parameters], {
    stdio: "inherit",
  });
  if (status !== 0) process.exit(status ?? 1);
}

/** Names of the packages that went into the build; takes the bundler's records away. */
function bundledPackages(): string[] {
  const names = new Set<string>();
  for (const format of formats) {
    const folder = join("dist", format);
    for (const file of readdirSync(folder).filter((name) => /^metafile-.*\.json$/.test(name))) {
      const { outputs } = JSON.parse(readFileSync(join(folder, file), "utf8")) as Metafile;
      for (const input of Object.values(outputs).flatMap((output) => Object.keys(output.inputs))) {
        const name = /^node_modules\/((?:@[^/]+\/)?[^/]+)\//.exec(input.split(sep).join("/"))?.[1];
        if (name !== undefined) names.add(name);
      }
      rmSync(join(folder, file));
    }
  }
  return [...names].sort();
}

/** Licence and, where there is one, notice of a package, in full. */
function noticeOf(name: string): string {
  const folder = join("node_modules", name);
  const { version, license } = JSON.parse(readFileSync(join(folder, "package.json"), "utf8")) as {
    version: string;
    license: string;
  };
  const texts = readdirSync(folder).filter((file) => /^(licen[cs]e|notice|copying)/i.test(file));
  if (texts.length === 0) throw new Error(`${name} goes into the build and ships no licence text`);
  return [
    `${name} ${version} (${license})`,
    ...texts.map((file) => readFileSync(join(folder, file), "utf8").trim()),
  ].join("\n\n");
}

function writeNotices(): void {
  const packages = bundledPackages();
  const rule = `\n\n${"-".repeat(80)}\n\n`;
  const heading =
    packages.length === 0
      ? "No other package is contained in these files."
      : "Parts of the packages named below are contained in these files; their licences follow.";
  writeFileSync(
    join("dist", "THIRD-PARTY-NOTICES.txt"),
    `${[heading, ...packages.map(noticeOf)].join(rule)}\n`,
  );
}

/**
 * Writes the declarations of both trees, which are one text: the marker beside them says which module format they
 * describe. Types are checked elsewhere, not here.
 */
function writeDeclarations(): void {
  run("typescript/bin/tsc", "-p", "tsconfig.build.json");
  // Files that hold packages are reached by none of the entries' declarations.
  for (const path of ["units/parse/mathUnits.d.ts", "report/plot.d.ts"])
    rmSync(join("dist", "esm", path), { force: true });
  for (const file of readdirSync(join("dist", "esm"), { recursive: true, encoding: "utf8" })) {
    if (file.endsWith(".d.ts")) cpSync(join("dist", "esm", file), join("dist", "cjs", file));
  }
}

process.chdir(fileURLToPath(new URL("..", import.meta.url)));
rmSync("dist", { recursive: true, force: true });
run("tsup/dist/cli-default.js");
writeFileSync(join("dist", "esm", "package.json"), '{ "type": "module", "sideEffects": false }\n');
writeFileSync(join("dist", "cjs", "package.json"), '{ "type": "commonjs", "sideEffects": false }\n');
writeNotices();
if (!process.argv.includes("--js")) writeDeclarations();
const files = readdirSync("dist", { recursive: true, withFileTypes: true }).filter((entry) => entry.isFile());
console.log(`dist: ${files.length} files`);
