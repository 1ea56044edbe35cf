/**
 * Our side of the filter benchmark, of the built library on a plain Node: reads the samples once, then runs one case a
 * line and prints the seconds of processor time it took, that of the collector of garbage included.
 * `node filters.ours.mjs SAMPLES MODULE`
 */
import { readFileSync } from "node:fs";
import { createInterface } from "node:readline";
import { pathToFileURL } from "node:url";

const [samples, module] = process.argv.slice(2);
const { butterworth, derivative, lowPass, powerSpectralDensity, resample } = await import(
  pathToFileURL(module)
);

const bytes = readFileSync(samples);
const hour = bytes.length / 48;
const six = Array.from({ length: 6 }, (_, k) =>
  new Float64Array(bytes.buffer, bytes.byteOffset + 8 * hour * k, hour).slice(),
);
const [one] = six;
const mutable = six.map((channel) => channel.slice());
const sixty = six.flatMap((channel) =>
  Array.from({ length: 10 }, (_, k) => channel.slice(10_000 * k, 10_000 * (k + 1))),
);
const short = Array.from({ length: 10_000 }, (_, k) => one.slice(300 * k, 300 * (k + 1)));
const options = { cutoff: 50, sampleRate: 1000, order: 4 };

const cases = {
  copy: () => six.map((channel) => channel.slice()),
  six: () => lowPass(six, options),
  columns: () => lowPass(six, options),
  inPlace: () => lowPass(mutable, { ...options, inPlace: true }),
  one: () => lowPass(one, options),
  sixty: () => lowPass(sixty, options),
  short: () => lowPass(short, options),
  calls: () => short.map((channel) => lowPass(channel, options)),
  design: () =>
    Array.from({ length: 1000 }, (_, k) =>
      butterworth({ type: "low-pass", order: 4, cutoff: 20 + (k % 100), sampleRate: 1000 }),
    ),
  welch: () => powerSpectralDensity(one, 1000, { segmentLength: 1024 }),
  welch1000: () => powerSpectralDensity(one, 1000, { segmentLength: 1000 }),
  derivative: () => derivative(one, 1000),
  resample: () => resample(one, { from: 1000, to: 240 }),
};

console.log(JSON.stringify({ node: process.versions.node }));
for await (const line of createInterface({ input: process.stdin })) {
  const before = process.cpuUsage();
  cases[line]();
  const { user, system } = process.cpuUsage(before);
  console.log((user + system) / 1e6);
}
