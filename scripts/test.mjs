/**
 * Installs what is missing, runs every check two at a time, shows each failure in full and ends with the counts. Names
 * of checks as arguments run only those (and the build, where they need it).
 */
import { spawn } from "node:child_process";
import { existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { delimiter, join } from "node:path";
import { GATES } from "./gates.mjs";
import { root, setUp } from "./setUp.mjs";

const AT_ONCE = 2;
const cache = join(root, ".cache");
const testResults = join(cache, "vitest.json");
const counts = join(cache, "counts.txt");

/** Runs one check and gathers what it prints. */
function run(gate) {
  const begin = Date.now();
  const env = {
    ...process.env,
    PATH: `${join(root, "node_modules", ".bin")}${delimiter}${process.env.PATH ?? ""}`,
    FORCE_COLOR: "0",
    NO_COLOR: "1",
  };
  return new Promise((resolve) => {
    const child = spawn(gate.command, { cwd: root, shell: true, env, stdio: ["ignore", "pipe", "pipe"] });
    let output = "";
    child.stdout.on("data", (text) => (output += text));
    child.stderr.on("data", (text) => (output += text));
    child.on("error", (error) => resolve({ gate, passed: false, output: error.message, seconds: 0 }));
    child.on("close", (code) =>
      resolve({ gate, passed: code === 0, output, seconds: (Date.now() - begin) / 1000 }),
    );
  });
}

/** Runs the checks in their order, each as soon as a place is free and the build it needs is done. */
async function runAll(gates) {
  const waiting = [...gates];
  const running = new Map();
  const done = new Map();
  const begin = Date.now();
  const alive = setInterval(() => {
    const names = [...running.keys()].join(", ");
    console.log(
      `  …      ${String(Math.round((Date.now() - begin) / 1000)).padStart(4)} s  ${names} running`,
    );
  }, 20_000);
  while (waiting.length > 0 || running.size > 0) {
    const next = waiting.findIndex(({ after }) => after === undefined || done.has(after));
    if (next >= 0 && running.size < AT_ONCE) {
      const [gate] = waiting.splice(next, 1);
      const failed = gate.after !== undefined && !done.get(gate.after).passed;
      running.set(
        gate.name,
        failed
          ? Promise.resolve({ gate, passed: false, output: `not run: ${gate.after} failed`, seconds: 0 })
          : run(gate),
      );
      continue;
    }
    const result = await Promise.race(running.values());
    running.delete(result.gate.name);
    done.set(result.gate.name, result);
    const word = result.passed ? "ok    " : "FAILED";
    console.log(
      `  ${word} ${result.seconds.toFixed(1).padStart(6)} s  ${result.gate.name.padEnd(12)} ${result.gate.proves}`,
    );
    if (!result.passed) console.log(`${result.output.trimEnd().replace(/^/gm, "    | ")}`);
  }
  clearInterval(alive);
  return [...done.values()];
}

/** Counts of the test runner itself; `null` where it did not get as far as writing them. */
function testCounts() {
  if (!existsSync(testResults)) return null;
  const results = JSON.parse(readFileSync(testResults, "utf8"));
  return {
    passed: results.numPassedTests,
    failed: results.numFailedTests,
    skipped: results.numPendingTests + results.numTodoTests,
  };
}

const wanted = process.argv.slice(2);
const unknown = wanted.filter((name) => !GATES.some((gate) => gate.name === name));
if (unknown.length > 0) {
  console.error(
    `no check is called ${unknown.join(", ")}; there are ${GATES.map(({ name }) => name).join(", ")}`,
  );
  process.exit(2);
}
const begin = Date.now();
rmSync(testResults, { force: true });
rmSync(counts, { force: true });
await setUp();
mkdirSync(cache, { recursive: true });
const needed = new Set(
  GATES.filter(({ name }) => wanted.includes(name)).flatMap(({ name, after }) => [name, after ?? name]),
);
const gates = wanted.length === 0 ? GATES : GATES.filter(({ name }) => needed.has(name));
console.log(`${gates.length} checks, ${AT_ONCE} at a time:`);
const results = await runAll(gates);

const failed = results.filter(({ passed }) => !passed).map(({ gate }) => gate.name);
const tests = testCounts() ?? { passed: 0, failed: 0, skipped: 0 };
const total = {
  passed: tests.passed + results.length - failed.length,
  failed: tests.failed + failed.length,
};
const line = `${total.passed} passed, ${total.failed} failed${tests.skipped > 0 ? `, ${tests.skipped} skipped` : ""}`;
writeFileSync(counts, `${line}\n`);
console.log(
  `\n${results.length - failed.length} of ${results.length} checks passed in ${Math.round((Date.now() - begin) / 1000)} s.`,
);
if (gates.some(({ name }) => name === "tests"))
  console.log(`Tests in them: ${tests.passed} passed, ${tests.failed} failed.`);
if (failed.length > 0) console.log(`Failed: ${failed.join(", ")}; their output is above.`);
console.log(line);
process.exit(total.failed > 0 ? 1 : 0);
