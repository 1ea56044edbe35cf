/**
 * Installs the package as `npm pack` makes it into an empty project and runs it there as its users do: CommonJS, ES
 * modules, ts-node on both TypeScript versions it runs with, a browser bundle in a bare context, and the command line.
 * All of them must compute the same bytes.
 */
import { execFileSync, spawnSync } from "node:child_process";
import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { runInNewContext } from "node:vm";

const root = fileURLToPath(new URL("..", import.meta.url));
const folder = mkdtempSync(join(tmpdir(), "consumers-"));
/** The last ts-node, with the last TypeScript of its own time and with the one this project is built with. */
const tools = {
  "ts-node": "10.9.2",
  typescript: "5.9.3",
  "typescript-6": "npm:typescript@6.0.3",
  esbuild: "0.28.2",
};

const problems: string[] = [];
let checks = 0;
function check(name: string, holds: boolean, problem: string): void {
  checks += 1;
  console.log(`  ${holds ? "ok    " : "FAILED"} ${name}`);
  if (!holds) problems.push(`${name}: ${problem}`);
}

interface Outcome {
  readonly code: number;
  readonly output: string;
  readonly complaint: string;
}

/** Runs a command in the user's project; what it prints, and what it complains of. */
function runCommand(command: string, parameters: readonly string[]): Outcome {
  const { status, stdout, stderr, error } = spawnSync(command, parameters, {
    cwd: folder,
    encoding: "utf8",
    maxBuffer: 2 ** 28,
    shell: command === "npx" && process.platform === "win32",
  });
  return { code: status ?? 1, output: stdout, complaint: error?.message ?? stderr };
}

const run = (script: string, ...parameters: string[]): Outcome =>
  runCommand(process.execPath, [script, ...parameters]);
const npx = (...parameters: string[]): Outcome => runCommand("npx", ["--no-install", ...parameters]);

function npm(cwd: string, ...parameters: string[]): string {
  return execFileSync("npm", parameters, { cwd, encoding: "utf8", shell: process.platform === "win32" });
}

function install(): void {
  npm(root, "pack", "--ignore-scripts", "--silent", "--pack-destination", folder);
  const tarball = readdirSync(folder).find((name) => name.endsWith(".tgz"));
  if (tarball === undefined) throw new Error("npm pack made no package");
  const dependencies = { "gait-kinetics": `file:${tarball}`, ...tools };
  writeFileSync(join(folder, "package.json"), JSON.stringify({ private: true, dependencies }));
  writeFileSync(join(folder, "tsconfig.json"), "{}\n");
  cpSync(join(root, "tests", "consumers"), folder, { recursive: true });
  npm(folder, "install", "--prefer-offline", "--no-audit", "--no-fund", "--loglevel=error");
}

/** The reading that the demo is made to show, from a program's output. */
function readingOf(output: string): string {
  try {
    const { verdict } = JSON.parse(output) as { verdict: { overall: { reading: string } } };
    return verdict.overall.reading;
  } catch {
    return `no JSON: ${output.slice(0, 200)}`;
  }
}

/** The bundle's output in a context that has the language and `console.log` alone, with what every engine adds. */
function runBundle(file: string): string {
  const lines: string[] = [];
  const context = { console: { log: (line: string) => lines.push(line) }, TextDecoder, TextEncoder };
  runInNewContext(readFileSync(file, "utf8"), context);
  return lines.join("\n");
}

function checkPrograms(): void {
  const first = run("commonjs.cjs");
  check("CommonJS: require", first.code === 0, first.complaint);
  check(
    "the demo's recordings read as shifted",
    readingOf(first.output) === "shifted",
    readingOf(first.output),
  );
  const same = (name: string, { code, output, complaint }: Outcome) => {
    check(name, code === 0, complaint);
    check(`${name}: the same bytes as CommonJS`, output.trim() === first.output.trim(), output.slice(0, 500));
  };
  same("ES module: import", run("module.mjs"));
  const tsNode = join("node_modules", "ts-node", "dist", "bin.js");
  for (const compiler of ["typescript", "typescript-6"]) {
    const { version } = JSON.parse(
      readFileSync(join(folder, "node_modules", compiler, "package.json"), "utf8"),
    ) as { version: string };
    same(`ts-node, TypeScript ${version}, tsconfig {}`, run(tsNode, "--compiler", compiler, "script.ts"));
  }
  for (const [resolution, module] of [
    ["node16", "node16"],
    ["nodenext", "nodenext"],
    ["bundler", "esnext"],
  ]) {
    const checked = run(
      join("node_modules", "typescript-6", "lib", "tsc.js"),
      ...["--ignoreConfig", "--noEmit", "--strict", "--exactOptionalPropertyTypes"],
      ...["--module", module as string, "--moduleResolution", resolution as string, "--lib", "es2022,dom"],
      ...["refused.ts", "script.ts"],
    );
    check(`types with moduleResolution ${resolution}`, checked.code === 0, checked.output);
  }
  const bundle = npx(
    ...["esbuild", "module.mjs", "--bundle", "--platform=browser", "--format=iife", "--target=es2022"],
    ...["--outfile=bundle.js", "--log-level=error"],
  );
  check("browser bundle", bundle.code === 0, bundle.complaint);
  if (bundle.code === 0) {
    const output = runBundle(join(folder, "bundle.js"));
    check(
      "bundle in a bare context: the same bytes",
      output.trim() === first.output.trim(),
      output.slice(0, 500),
    );
  }
}

function checkCommand(): void {
  const help = npx("gait-kinetics", "--help");
  check(
    "npx gait-kinetics --help",
    help.code === 0 && help.output.includes("compare"),
    help.complaint || help.output,
  );
  const { version } = JSON.parse(readFileSync(join(root, "package.json"), "utf8")) as { version: string };
  const told = npx("gait-kinetics", "--version");
  check("npx gait-kinetics --version", told.output.trim() === version, told.complaint || told.output);
  const missing = npx("gait-kinetics", "analyse", "no-such-file.csv");
  check(
    "a missing file: exit 1, one line on standard error, nothing on standard output",
    missing.code === 1 && missing.output === "" && missing.complaint.trim().split("\n").length === 1,
    `exit ${missing.code}: ${missing.output}${missing.complaint}`,
  );
}

try {
  install();
  checkPrograms();
  checkCommand();
} catch (error) {
  check("the package installs", false, String(error));
} finally {
  rmSync(folder, { recursive: true, force: true });
}
for (const problem of problems) console.error(problem);
console.log(`consumers: ${checks - problems.length} of ${checks} checks passed`);
process.exit(problems.length > 0 ? 1 : 0);
