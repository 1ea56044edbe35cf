import { spawn, spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { cpus, tmpdir } from "node:os";
import { join } from "node:path";
import { createInterface } from "node:readline";
import { fileURLToPath } from "node:url";
import { Bench } from "tinybench";
import { butterworth, derivative, lowPass, powerSpectralDensity, resample } from "../src/filters/index.js";

/** One hour at 1 kHz. */
const HOUR = 3_600_000;

/** What both sides do, and how many samples it takes in. */
const CASES = {
  copy: ["6 × 3.6 M, plain copy", 6 * HOUR],
  six: ["6 × 3.6 M, zero-phase order 4", 6 * HOUR],
  columns: ["6 × 3.6 M, the same, SciPy on columns", 6 * HOUR],
  inPlace: ["6 × 3.6 M, the same, in place", 6 * HOUR],
  one: ["1 × 3.6 M, zero-phase order 4", HOUR],
  sixty: ["60 × 10 000, zero-phase order 4", 600_000],
  short: ["10 000 × 300, one call", 3_000_000],
  calls: ["10 000 × 300, a call each", 3_000_000],
  design: ["design of order 4, 1000 times", 1000],
  welch: ["Welch, 3.6 M, segments of 1024", HOUR],
  welch1000: ["Welch, 3.6 M, segments of 1000", HOUR],
  derivative: ["derivative, 3.6 M", HOUR],
  resample: ["resample 1000 to 240 Hz, 3.6 M", HOUR],
} as const satisfies Record<string, readonly [name: string, samples: number]>;
type Case = keyof typeof CASES;

/** Running-like forces with noise, the same at every run. */
function signals(): Float64Array[] {
  let seed = 1;
  const noise = () => {
    seed = (Math.imul(seed, 1_664_525) + 1_013_904_223) >>> 0;
    return seed / 2 ** 31 - 1;
  };
  return Array.from({ length: 6 }, (_, channel) =>
    Float64Array.from({ length: HOUR }, (_, i) => {
      const phase = ((i + 60 * channel) % 360) / 250;
      return (phase < 1 ? 1650 * Math.sin(Math.PI * phase) : 0) / (channel + 1) + 4 * noise();
    }),
  );
}

/** Starts SciPy on the same samples, or says why it is left out. */
function scipyOn(six: readonly Float64Array[]) {
  if (spawnSync("python3", ["-c", "import scipy.signal"]).status !== 0) {
    console.log("\nSciPy is skipped: no python3 with SciPy was found");
    return null;
  }
  const folder = mkdtempSync(join(tmpdir(), "filters-"));
  const file = join(folder, "samples.f64");
  six.forEach((channel) => {
    writeFileSync(file, new Uint8Array(channel.buffer), { flag: "a" });
  });
  const script = fileURLToPath(new URL("filters.py", import.meta.url));
  const python = spawn("python3", [script, file], { stdio: ["pipe", "pipe", "inherit"] });
  const lines = createInterface({ input: python.stdout })[Symbol.asyncIterator]();
  const next = async (): Promise<string> => {
    const { value, done } = await lines.next();
    if (done) throw new Error("python3 ended before it answered");
    return value;
  };
  const versions = next().then((line) => {
    rmSync(folder, { recursive: true });
    return JSON.parse(line) as Record<string, string>;
  });
  return {
    versions,
    /** Runs a case once and gives its time as SciPy's side measured it. */
    run: async (one: Case) => {
      await versions;
      python.stdin.write(`${one}\n`);
      return { overriddenDuration: 1000 * Number(await next()) };
    },
    end: () => python.stdin.end(),
  };
}

/** Processor time of one run, that of the collector of garbage included. */
function timed(run: () => unknown): { overriddenDuration: number } {
  const before = process.cpuUsage();
  run();
  const { user, system } = process.cpuUsage(before);
  return { overriddenDuration: (user + system) / 1000 };
}

/** Filters and their like beside SciPy, in turn, on the same bytes. Prints ratios and writes them to filters.json. */
export function benchmark(): Bench {
  const six = signals();
  const one = six[0] as Float64Array;
  const mutable = six.map((channel) => channel.slice());
  const sixty = Array.from({ length: 60 }, (_, k) =>
    (six[Math.floor(k / 10)] as Float64Array).slice((k % 10) * 10_000, ((k % 10) + 1) * 10_000),
  );
  const short = Array.from({ length: 10_000 }, (_, k) => one.slice(300 * k, 300 * (k + 1)));
  const options = { cutoff: 50, sampleRate: 1000, order: 4 };
  const ours: Record<Case, () => unknown> = {
    copy: () => six.map((channel) => channel.slice()),
    six: () => lowPass(six, options),
    columns: () => lowPass(six, options),
    inPlace: () => lowPass(mutable, { ...options, inPlace: true }),
    one: () => lowPass(one, options),
    sixty: () => lowPass(sixty, options),
    short: () => lowPass(short, options),
    calls: () => short.map((samples) => lowPass(samples, options)),
    design: () => {
      for (let k = 0; k < 1000; k++)
        butterworth({ type: "low-pass", order: 4, cutoff: 20 + (k % 100), sampleRate: 1000 });
    },
    welch: () => powerSpectralDensity(one, 1000, { segmentLength: 1024 }),
    welch1000: () => powerSpectralDensity(one, 1000, { segmentLength: 1000 }),
    derivative: () => derivative(one, 1000),
    resample: () => resample(one, { from: 1000, to: 240 }),
  };
  const scipy = scipyOn(six);
  const bench = new Bench({
    name: "filters beside SciPy, processor time",
    iterations: 9,
    time: 0,
    warmupIterations: 2,
    warmupTime: 0,
  });
  for (const name of Object.keys(CASES) as Case[]) {
    bench.add(CASES[name][0], () => timed(ours[name]));
    if (scipy !== null && name !== "inPlace") bench.add(`${CASES[name][0]}, SciPy`, () => scipy.run(name));
  }
  bench.addEventListener("complete", () => {
    scipy?.end();
    const rows = (Object.keys(CASES) as Case[]).map((name) => rowOf(bench, ...CASES[name]));
    console.log(tableOf(rows));
    void (scipy?.versions ?? Promise.resolve({})).then((versions) => {
      const machine = {
        processor: cpus()[0]?.model,
        cores: cpus().length,
        node: process.versions.node,
        ...versions,
      };
      const file = fileURLToPath(new URL("filters.json", import.meta.url));
      writeFileSync(
        file,
        `${JSON.stringify({ date: new Date().toISOString().slice(0, 10), machine, rows }, null, 2)}\n`,
      );
    });
  });
  return bench;
}

interface Row {
  readonly name: string;
  readonly samples: number;
  /** Medians, ms. */
  readonly ours: number;
  readonly scipy: number | null;
}

function rowOf(bench: Bench, name: string, samples: number): Row {
  const median = (task: string): number | null => {
    const result = bench.getTask(task)?.result;
    return result?.state === "completed" ? result.latency.p50 : null;
  };
  return { name, samples, ours: median(name) ?? Number.NaN, scipy: median(`${name}, SciPy`) };
}

function tableOf(rows: readonly Row[]): string {
  const copy = rows.find(({ name }) => name === CASES.copy[0]) as Row;
  const perSample = (ms: number, samples: number) => (ms * 1e6) / samples;
  const line = ({ name, samples, ours, scipy }: Row) => {
    const cells = [
      name,
      ours.toFixed(1),
      scipy?.toFixed(1) ?? "",
      perSample(ours, samples).toFixed(2),
      scipy === null ? "" : (scipy / ours).toFixed(1),
      (perSample(ours, samples) / perSample(copy.ours, copy.samples)).toFixed(1),
    ];
    return `| ${cells.join(" | ")} |`;
  };
  return [
    "",
    "| case | ours, ms | SciPy, ms | ours, ns a sample | SciPy ÷ ours | ours ÷ copy, a sample |",
    "|---|---|---|---|---|---|",
    ...rows.map(line),
  ].join("\n");
}
