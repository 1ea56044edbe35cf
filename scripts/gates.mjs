/**
 * Every check of the project: a short name, what it proves, and the command. One that reads `dist` runs after `build`.
 *
 * @typedef {{ name: string, proves: string, command: string, after?: string }} Gate
 * @type {readonly Gate[]}
 */
export const GATES = [
  {
    name: "tests",
    proves: "unit, property, type and browser tests",
    command: "vitest run --reporter=default --reporter=json --outputFile.json=.cache/vitest.json",
  },
  { name: "build", proves: "ECMAScript modules, CommonJS, declarations", command: "tsx scripts/build.ts" },
  { name: "style", proves: "formatting and lint", command: "biome check --error-on-warnings ." },
  {
    name: "types",
    proves: "the library, without Node's or a browser's types",
    command: "tsc -p tsconfig.json",
  },
  { name: "types-cli", proves: "the command line", command: "tsc -p tsconfig.cli.json" },
  { name: "types-tests", proves: "tests, scripts and benchmarks", command: "tsc -p tsconfig.tests.json" },
  {
    name: "layers",
    proves: "folders import only from those above them",
    command: "depcruise src --config .dependency-cruiser.cjs",
  },
  { name: "unused", proves: "no unused file, export or package", command: "knip" },
  {
    name: "docs",
    proves: "the API pages build without a warning",
    command: "typedoc --treatWarningsAsErrors",
  },
  {
    name: "dist",
    proves: "what is built: both formats, every entry, export names, one error class",
    command: "tsx scripts/checkDist.ts",
    after: "build",
  },
  {
    name: "examples",
    proves: "doc comments are whole and each example prints what it says",
    command: "tsx scripts/checkDocs.ts",
    after: "build",
  },
  {
    name: "accuracy",
    proves: "docs/accuracy.md, against synthetic truth, is what the code gives",
    command: "tsx scripts/accuracy.ts --check",
  },
  { name: "publint", proves: "package.json against the files", command: "publint --strict", after: "build" },
  {
    name: "attw",
    proves: "types resolve in every module resolution",
    command:
      "rm -rf .cache/attw && mkdir -p .cache/attw && npm pack --ignore-scripts --silent --pack-destination .cache/attw && attw .cache/attw/*.tgz --profile strict",
    after: "build",
  },
  { name: "size", proves: "what one function costs in a bundle", command: "size-limit", after: "build" },
  {
    name: "consumers",
    proves: "the packed package in CommonJS, ES modules, ts-node, a bundle and npx",
    command: "tsx scripts/checkConsumers.ts",
    after: "build",
  },
];
