/**
 * Our side of the benchmark of the whole analysis, of the built library on a plain Node: reads the samples of a run once,
 * then analyses it for every line of its input and prints the seconds of processor and of wall time and the largest
 * memory; for the line "numbers" it writes what it found. `node analyse.ours.mjs FOLDER MODULE`
 */
import { readFileSync, writeFileSync } from "node:fs";
import { createInterface } from "node:readline";
import { pathToFileURL } from "node:url";

const [folder, module] = process.argv.slice(2);
const { analyseTrial } = await import(pathToFileURL(module));

const { ground, threshold, firstFoot } = JSON.parse(readFileSync(`${folder}/run.json`, "utf8"));
const bytes = readFileSync(`${folder}/samples.f64`);
const length = bytes.length / 48;
const channel = (k) => new Float64Array(bytes.buffer, bytes.byteOffset + 8 * length * k, length);
const components = (k) => ({ forward: channel(k), up: channel(k + 1), right: channel(k + 2) });
const whole = { ...ground, force: components(0), moment: components(3) };
const options = { events: { threshold, firstFoot, gait: "running" } };

console.log(JSON.stringify({ node: process.versions.node }));
for await (const line of createInterface({ input: process.stdin })) {
  const before = process.cpuUsage();
  const start = performance.now();
  const trial = analyseTrial(whole, options);
  const wall = (performance.now() - start) / 1000;
  const { user, system } = process.cpuUsage(before);
  if (line === "numbers") writeFileSync(`${folder}/ours.json`, JSON.stringify(trial));
  const memory = process.resourceUsage().maxRSS * 1024;
  console.log(JSON.stringify({ processor: (user + system) / 1e6, wall, memory }));
}
