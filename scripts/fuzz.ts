/**
 * Feeds every reader inputs that are whole, changed or made up, in threads with a limit of time and memory for each, and
 * writes `docs/fuzz.md`: inputs, refusals by code, worst time, worst memory. Each input is read or refused by the
 * library's own error; one that is neither is kept in `tests/fixtures/fuzz`, and the exit code is 1.
 *
 * `npm run fuzz -- c3d 2000` runs one reader with as many inputs and writes no page.
 */
import { execFileSync } from "node:child_process";
import { mkdirSync, writeFileSync } from "node:fs";
import { cpus } from "node:os";
import { fileURLToPath } from "node:url";
import { loadTarget } from "./fuzz/loadTarget.js";
import { type Failure, MEMORY_LIMIT, runTarget, TIME_LIMIT } from "./fuzz/runTarget.js";
import { type Outcome, TARGET_NAMES, type TargetName } from "./fuzz/target.js";

process.chdir(fileURLToPath(new URL("..", import.meta.url)));

const COUNTS: Readonly<Record<TargetName, number>> = { c3d: 50_000, csv: 40_000, bids: 20_000, json: 10_000 };
const WORDS: Readonly<Record<TargetName, string>> = {
  c3d: "`readC3d`",
  csv: "`readCsv`",
  bids: "`readMotionBids`",
  json: "`readJson`",
};

const [only, count] = process.argv.slice(2);
if (only !== undefined && !TARGET_NAMES.some((name) => name === only)) {
  console.error(`no reader is called ${only}; there are ${TARGET_NAMES.join(", ")}`);
  process.exit(2);
}
if (count !== undefined && !(Number.isInteger(Number(count)) && Number(count) > 0)) {
  console.error(`${count} is no number of inputs; a whole number above 0 is needed`);
  process.exit(2);
}

/** Keeps the bytes of an input that broke something, what was stated of them, and what happened. */
async function keep({ name, seed, problem }: Failure): Promise<string> {
  mkdirSync("tests/fixtures/fuzz", { recursive: true });
  const { bytes, options } = (await loadTarget(name)).input(seed);
  const path = `tests/fixtures/fuzz/${name}-${seed}`;
  const oneFile = bytes instanceof Uint8Array;
  if (oneFile) writeFileSync(`${path}.bin`, bytes);
  const told = { reader: name, options, problem, ...(!oneFile && { files: bytes }) };
  writeFileSync(`${path}.json`, `${JSON.stringify(told, null, 2)}\n`);
  return path;
}

function worst(outcomes: readonly Outcome[], of: (outcome: Outcome) => number): Outcome | undefined {
  return outcomes.reduce<Outcome | undefined>(
    (most, outcome) => (most === undefined || of(outcome) > of(most) ? outcome : most),
    undefined,
  );
}

const start = Date.now();
const names = TARGET_NAMES.filter((name) => only === undefined || name === only);
const results = new Map<TargetName, readonly Outcome[]>();
const failures: Failure[] = [];
const waiting = [...names];
/** Runs readers one after the other, as long as there are any. */
async function runNext(): Promise<void> {
  for (let name = waiting.shift(); name !== undefined; name = waiting.shift()) {
    const result = await runTarget(name, Number(count ?? COUNTS[name]));
    results.set(name, [...result.outcomes.values()]);
    failures.push(...result.failures);
    console.log(`${name}: ${result.outcomes.size} inputs, ${result.failures.length} failures`);
  }
}
await Promise.all([runNext(), runNext()]);
const seconds = (Date.now() - start) / 1000;

const rows = names.map((name) => {
  const outcomes = results.get(name) ?? [];
  const slow = worst(outcomes, ({ milliseconds }) => milliseconds);
  const large = worst(outcomes, ({ growth }) => growth);
  const read = outcomes.filter(({ result }) => result === "read").length;
  const largest = worst(outcomes, ({ size }) => size)?.size ?? 0;
  const grown = (large?.growth ?? 0) / 2 ** 20;
  return `| ${WORDS[name]} | ${outcomes.length} | ${(largest / 1000).toFixed(0)} | ${read} | ${outcomes.length - read} | ${slow?.milliseconds.toFixed(0)} | ${grown.toFixed(1)} |`;
});
const codes = new Map<string, Map<TargetName, number>>();
for (const [name, outcomes] of results) {
  for (const { result } of outcomes) {
    if (result === "read") continue;
    const row = codes.get(result) ?? new Map<TargetName, number>();
    codes.set(result, row.set(name, (row.get(name) ?? 0) + 1));
  }
}
const codeRows = [...codes]
  .sort(([one], [two]) => one.localeCompare(two))
  .map(([code, row]) => `| \`${code}\` | ${names.map((name) => row.get(name) ?? 0).join(" | ")} |`);
const inputs = [...results.values()].reduce((sum, outcomes) => sum + outcomes.length, 0);
const commit = execFileSync("git", ["describe", "--always", "--dirty"], { encoding: "utf8" }).trim();
const page = `# Inputs that are no files

Every reader, and behind it the step to the force between foot and ground, is fed real files that were cut and changed, and
files made up by the rules of their format. Each input must be read or be refused by the library's own error, in one
line, within ${TIME_LIMIT / 1000} s and ${MEMORY_LIMIT} MB.

${inputs} inputs in ${seconds.toFixed(0)} s; ${failures.length === 0 ? "none broke anything" : `${failures.length} broke something`}. Memory is the growth of heap and typed arrays while one input is read,
garbage included; time is on ${cpus()[0]?.model ?? "an unknown processor"} with ${cpus().length} virtual cores that others used at the same time.

| reader | inputs | largest, kB | read | refused | worst time, ms | worst memory, MB |
|---|---|---|---|---|---|---|
${rows.join("\n")}

Refusals by code:

| code | ${names.map((name) => WORDS[name]).join(" | ")} |
|---|${names.map(() => "---|").join("")}
${codeRows.join("\n")}

A smaller set with fixed seeds runs in the tests. \`npm run fuzz\` wrote this page on ${new Date().toISOString().slice(0, 10)} at commit ${commit}.
`;
if (only === undefined && count === undefined) {
  writeFileSync("docs/fuzz.md", page);
  console.log("docs/fuzz.md written");
} else console.log(page);
for (const failure of failures) {
  console.error(`${await keep(failure)}: seed ${failure.seed}: ${failure.problem}`);
}
if (failures.length > 0) process.exitCode = 1;
