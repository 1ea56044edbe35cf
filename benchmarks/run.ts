/**
 * Runs the benchmarks named, or all, and prints a table of each with the machine and versions it was measured on:
 * `npm run bench -- trial`.
 */
import { execFileSync } from "node:child_process";
import { readdirSync } from "node:fs";
import { cpus } from "node:os";
import { fileURLToPath, pathToFileURL } from "node:url";
import type { Bench, Task } from "tinybench";

const folder = fileURLToPath(new URL(".", import.meta.url));
const all = readdirSync(folder)
  .filter((name) => name.endsWith(".bench.ts"))
  .map((name) => name.slice(0, -".bench.ts".length));
const wanted = process.argv.slice(2);
const unknown = wanted.filter((name) => !all.includes(name));
if (unknown.length > 0) {
  console.error(`no benchmark is called ${unknown.join(", ")}; there are ${all.join(", ")}`);
  process.exit(2);
}

function commit(): string {
  try {
    return execFileSync("git", ["describe", "--always", "--dirty"], { cwd: folder, encoding: "utf8" }).trim();
  } catch {
    return "unknown commit";
  }
}

const processor = cpus();
/** Median and spread over the runs, ms; an error of a task is an error of the benchmark. */
function lineOf({ name, result }: Task): string {
  if (result.state !== "completed") throw new Error(`${name} did not complete: ${result.state}`);
  const { p50, min, max, samplesCount } = result.latency;
  const ms = (value: number) => value.toFixed(value < 10 ? 3 : 0);
  return `  ${name.padEnd(30)} ${ms(p50).padStart(8)} ms  (${ms(min)} to ${ms(max)}, ${samplesCount} runs)`;
}

console.log(
  `${processor[0]?.model ?? "unknown processor"}, ${processor.length} cores; Node ${process.versions.node}; ${commit()}; ${new Date().toISOString().slice(0, 10)}`,
);
for (const name of wanted.length > 0 ? wanted : all) {
  const { benchmark } = (await import(pathToFileURL(`${folder}${name}.bench.ts`).href)) as {
    benchmark: () => Bench;
  };
  const bench = benchmark();
  await bench.run();
  console.log(`\n${name}: ${bench.name}\n`);
  for (const task of bench.tasks) console.log(lineOf(task));
}
