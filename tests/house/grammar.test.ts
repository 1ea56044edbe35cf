import { mkdirSync, mkdtempSync, realpathSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { afterAll, beforeAll, expect, it } from "vitest";
import { type Grammar, readGrammar } from "../../scripts/docs/grammar.js";

/** Law: a doc comment that lacks a part is found, on a small project made for this test. */
const folder = realpathSync(mkdtempSync(join(tmpdir(), "grammar-")));
let grammar: Grammar;

const whole = `/**
 * Gives the load.
 *
 * Formula: a. Units: N in; N out. Limits: none. Source: definition.
 * @param a - Any.
 * @throws GaitKineticsError \`out-of-range\`: below zero.
 * @example
 * NAME(1) // 1
 */`;
const files: Readonly<Record<string, string>> = {
  "tsconfig.json":
    '{ "compilerOptions": { "target": "es2022", "module": "nodenext", "types": [] }, "include": ["src"] }',
  "src/units/index.ts": 'export { fail } from "./fail.js";',
  "src/units/fail.ts": `/**
 * Throws.
 * @throws always
 * @example fail("x") // throws x
 */
export function fail(code: string): never { throw new Error(code); }`,
  "src/metrics/index.ts": ["whole", "bare", "silent", "linked", "partial", "stale"]
    .map((name) => `export { ${name} } from "./vertical/${name}.js";`)
    .join("\n"),
  "src/metrics/vertical/helper.ts": `import { fail } from "../../units/index.js";
/** Checks. */
export function check(a: number): void { if (a < 0) fail("out-of-range"); }`,
  "src/metrics/vertical/whole.ts": `import { check } from "./helper.js";
${whole.replace("NAME", "whole")}
export function whole(a: number): number { check(a); return a; }`,
  "src/metrics/vertical/bare.ts": "export function bare(a: number): number { return a; }",
  "src/metrics/vertical/silent.ts": `import { check } from "./helper.js";
${whole.replace("NAME", "silent").replace(/ \* @throws.*\n/, "")}
export function silent(a: number): number { check(a); return a; }`,
  "src/metrics/vertical/linked.ts": `import { check } from "./helper.js";
${whole.replace("NAME", "linked").replace(/@throws.*/, "@throws GaitKineticsError as {@link whole}.")}
export function linked(a: number): number { check(a); return a; }`,
  "src/metrics/vertical/partial.ts": `import { fail } from "../../units/index.js";
${whole.replace("NAME", "partial").replace("Source: definition.", "")}
export function partial(a: number): number { return a === 0 ? fail("too-short") : a; }`,
  "src/metrics/vertical/stale.ts": `${whole.replace("NAME", "stale").replace("@param a", "@param b")}
export function stale(a: number): number { return a; }`,
};

beforeAll(() => {
  for (const [file, text] of Object.entries(files)) {
    mkdirSync(dirname(join(folder, file)), { recursive: true });
    writeFileSync(join(folder, file), text);
  }
  grammar = readGrammar(folder);
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const problemsOf = (name: string): readonly string[] =>
  grammar.problems.flatMap((problem) => new RegExp(`:\\d+ ${name} (.+)$`).exec(problem)?.[1] ?? []);

it.each([
  ["whole", []],
  ["linked", []],
  ["silent", ["can fail and has no @throws"]],
  ["partial", ['can fail with "too-short", which no @throws names', 'does not state "Source:"']],
  ["stale", ['documents a parameter "b" that it does not have']],
  [
    "bare",
    [
      "has no doc comment",
      "has no @example",
      ...["Formula", "Units", "Limits", "Source"].map((part) => `does not state "${part}:"`),
    ],
  ],
])("%s", (name, problems) => expect(problemsOf(name)).toEqual(problems));

it("gathers the examples with their place", () => {
  expect(grammar.examples.map(({ text }) => text)).toContain("whole(1) // 1");
  expect(grammar.examples.find(({ text }) => text === "whole(1) // 1")?.place).toBe(
    "src/metrics/vertical/whole.ts:11 whole",
  );
});
