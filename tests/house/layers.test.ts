import { execFileSync } from "node:child_process";
import { mkdirSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { afterAll, beforeAll, expect, it } from "vitest";

/** The rules the project is checked with, run on a small project made for this test: law "each wrong import is caught". */
const config = join(process.cwd(), ".dependency-cruiser.cjs");
const rules = createRequire(import.meta.url)(config) as {
  readonly forbidden: readonly { readonly name: string }[];
};
const order = rules.forbidden.flatMap(({ name }) => /^(.+)-imports-only-from-above$/.exec(name)?.[1] ?? []);

const allowed: Readonly<Record<string, string>> = {
  "src/index.ts": 'export * from "./units/index.js";',
  "src/units/index.ts": 'export type { T } from "./quantity.js";',
  "src/units/quantity.ts": "export type T = number;",
  "src/units/parse/index.ts": 'export { u } from "./mathUnits.js";',
  "src/units/parse/mathUnits.ts": 'import { unit } from "mathjs"; export const u = unit;',
  "src/filters/index.ts": 'export type { T } from "../units/index.js";',
  "src/statistics/random.ts": 'export * from "pure-rand/generator/xoroshiro128plus";',
  "src/io/readCsv.ts": 'import Papa from "papaparse"; export const p = Papa;',
  "src/metrics/index.ts": 'export { g } from "./vertical/deep.js";',
  "src/metrics/vertical/deep.ts": 'import type { T } from "../../filters/index.js"; export const g: T = 1;',
  "src/report/plot.ts": 'export { scaleLinear } from "d3-scale";',
  "src/report/figure.ts": 'import { scaleLinear } from "./plot.js"; export const s = scaleLinear;',
  "src/cli/main.ts": 'import "node:fs"; import "commander"; import "../units/parse/index.js";',
};

const forbidden: readonly (readonly [rule: string, file: string, text: string])[] = [
  ["filters-imports-only-from-above", "src/filters/upward.ts", 'export { g } from "../metrics/index.js";'],
  [
    "units-imports-only-from-above",
    "src/units/upward.ts",
    'import type { T } from "../filters/index.js"; export type U = T;',
  ],
  [
    "units-is-entered-through-its-index",
    "src/filters/past.ts",
    'import type { T } from "../units/quantity.js"; export type U = T;',
  ],
  [
    "metrics-is-entered-through-its-index",
    "src/trial/past.ts",
    'export { g } from "../metrics/vertical/deep.js";',
  ],
  ["io-imports-only-from-above", "src/io/readFile.ts", 'export { readFileSync } from "node:fs";'],
  ["io-imports-only-from-above", "src/io/join.ts", 'export { join } from "path";'],
  [
    "events-imports-only-from-above",
    "src/events/csv.ts",
    'import Papa from "papaparse"; export const p = Papa;',
  ],
  ["units-imports-only-from-above", "src/units/maths.ts", 'export { unit } from "mathjs";'],
  ["report-imports-only-from-above", "src/report/scale.ts", 'export { scaleLinear } from "d3-scale";'],
  ["report-imports-only-from-above", "src/report/missing.ts", 'import "no-such-package";'],
  ["no-reading-units-behind-the-root", "src/report/typed.ts", 'export { u } from "../units/parse/index.js";'],
  ["report-imports-only-from-above", "src/report/command.ts", 'import "../cli/main.js";'],
  ["every-folder-has-a-place", "src/novel/index.ts", 'export type { T } from "../units/index.js";'],
  ["cli-imports-only-from-above", "src/cli/novel.ts", 'import "../novel/index.js";'],
  ["only-the-root-stands-beside-the-folders", "src/stray.ts", 'export type { T } from "./units/index.js";'],
  ["no-cycles", "src/events/one.ts", 'import "./two.js"; export const one = 1;'],
];
const others: Readonly<Record<string, string>> = {
  "src/events/two.ts": 'import { one } from "./one.js"; export const two = one;',
};

interface Violation {
  readonly from: string;
  readonly rule: { readonly name: string };
}
let violations: readonly Violation[] = [];
const folder = mkdtempSync(join(tmpdir(), "layers-"));

beforeAll(() => {
  const files = {
    ...allowed,
    ...others,
    ...Object.fromEntries(forbidden.map(([, file, text]) => [file, text])),
  };
  for (const name of ["mathjs", "d3-scale", "papaparse", "commander", "pure-rand"]) {
    files[`node_modules/${name}/package.json`] = JSON.stringify({
      name,
      exports: { ".": "./index.js", "./generator/*": "./index.js" },
    });
    files[`node_modules/${name}/index.js`] = "export default 1;";
  }
  for (const [file, text] of Object.entries(files)) {
    mkdirSync(dirname(join(folder, file)), { recursive: true });
    writeFileSync(join(folder, file), `${text}\n`);
  }
  const script = join(process.cwd(), "node_modules", "dependency-cruiser", "bin", "dependency-cruise.mjs");
  const output = execFileSync(
    process.execPath,
    [script, "src", "--config", config, "--output-type", "json"],
    {
      cwd: folder,
      encoding: "utf8",
    },
  );
  violations = (JSON.parse(output) as { summary: { violations: readonly Violation[] } }).summary.violations;
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

it.each(forbidden)("%s catches %s", (rule, file) => {
  expect(violations.filter(({ from }) => from === file).map((found) => found.rule.name)).toContain(rule);
});

it.each(Object.keys(allowed))("lets %s pass", (file) => {
  expect(violations.filter(({ from }) => from === file)).toEqual([]);
});

it("every folder of src has a place in the order", () => {
  const folders = readdirSync("src", { withFileTypes: true }).filter((entry) => entry.isDirectory());
  expect(order.length).toBeGreaterThan(10);
  expect(folders.map(({ name }) => name).filter((name) => !order.includes(name))).toEqual([]);
});
