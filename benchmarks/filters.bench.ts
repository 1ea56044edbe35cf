import { spawnSync } from "node:child_process";
import { existsSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { cpus, tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { Bench } from "tinybench";
import { type Side, side } from "./side.js";

/** One hour at 1 kHz. */
const HOUR = 3_600_000;

/** What both sides do, and how many samples it takes in. */
const CASES = {
  copy: ["6 × 3.6 M, plain copy", 6 * HOUR],
  six: ["6 × 3.6 M, zero-phase order 4", 6 * HOUR],
  columns: ["the same, SciPy on columns", 6 * HOUR],
  inPlace: ["the same, in place", 6 * HOUR],
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
const NAMES = Object.keys(CASES) as Case[];

const beside = (name: string): string => fileURLToPath(new URL(name, import.meta.url));
const nameOf = (one: Case, side: Side): string => `${CASES[one][0]}, ${side.name}`;

/** Writes running-like forces with noise, the same at every run, six channels one after the other. */
function writeSamples(file: string): void {
  let seed = 1;
  for (let channel = 0; channel < 6; channel++) {
    const samples = new Float64Array(HOUR);
    for (let i = 0; i < HOUR; i++) {
      seed = (Math.imul(seed, 1_664_525) + 1_013_904_223) >>> 0;
      const phase = ((i + 60 * channel) % 360) / 250;
      const force = phase < 1 ? 1650 * Math.sin(Math.PI * phase) : 0;
      samples[i] = force / (channel + 1) + 4 * (seed / 2 ** 31 - 1);
    }
    writeFileSync(file, new Uint8Array(samples.buffer), { flag: "a" });
  }
}

/** Runs a case once and gives its processor time, as the side itself measured it. */
async function timed({ ask }: Side, one: Case): Promise<{ overriddenDuration: number }> {
  return { overriddenDuration: 1000 * Number(await ask(one)) };
}

/**
 * The built filters and SciPy in turn on the same bytes. Prints medians and ratios and writes them to filters.json;
 * without python3 and SciPy it says so and runs ours alone.
 */
export function benchmark(): Bench {
  const built = beside("../dist/esm/filters/index.js");
  if (!existsSync(built)) throw new Error("the filters are measured as built; run `npm run build` first");
  const folder = mkdtempSync(join(tmpdir(), "filters-"));
  const samples = join(folder, "samples.f64");
  writeSamples(samples);
  const ours = side("ours", process.execPath, beside("filters.ours.mjs"), samples, built);
  const hasScipy = spawnSync("python3", ["-c", "import scipy.signal"]).status === 0;
  if (!hasScipy) console.log("\nSciPy is skipped: no python3 with SciPy was found");
  const scipy = hasScipy ? side("SciPy", "python3", beside("filters.py"), samples) : null;

  const bench = new Bench({
    name: "filters beside SciPy, processor time",
    iterations: 9,
    time: 0,
    warmupIterations: 3,
    warmupTime: 0,
  });
  for (const one of NAMES) {
    bench.add(nameOf(one, ours), () => timed(ours, one));
    if (scipy !== null && one !== "inPlace") bench.add(nameOf(one, scipy), () => timed(scipy, one));
  }
  bench.addEventListener("complete", () => {
    ours.end();
    scipy?.end();
    rmSync(folder, { recursive: true });
    const rows = NAMES.map((one) => rowOf(bench, one, ours, scipy));
    console.log(`\n${tableOf(rows).join("\n")}`);
    void Promise.all([ours.versions, scipy?.versions]).then((versions) => {
      const machine = { processor: cpus()[0]?.model, cores: cpus().length, ...versions[0], ...versions[1] };
      const result = { date: new Date().toISOString().slice(0, 10), machine, rows };
      writeFileSync(beside("filters.json"), `${JSON.stringify(result, null, 2)}\n`);
    });
  });
  return bench;
}

interface Row {
  readonly name: string;
  readonly samples: number;
  /** Median processor time, ms. */
  readonly ours: number;
  readonly scipy: number | null;
}

function rowOf(bench: Bench, one: Case, ours: Side, scipy: Side | null): Row {
  const median = (from: Side | null): number | null => {
    const result = from === null ? undefined : bench.getTask(nameOf(one, from))?.result;
    return result?.state === "completed" ? result.latency.p50 : null;
  };
  const [name, samples] = CASES[one];
  return { name, samples, ours: median(ours) ?? Number.NaN, scipy: median(scipy) };
}

function tableOf(rows: readonly Row[]): string[] {
  const perSample = ({ ours, samples }: Row) => (ours * 1e6) / samples;
  const copy = perSample(rows[0] as Row);
  return [
    "| case | ours, ms | SciPy, ms | SciPy ÷ ours | ours, ns a sample | ours ÷ plain copy |",
    "|---|---|---|---|---|---|",
    ...rows.map((row) => {
      const { name, ours, scipy } = row;
      const beside = scipy === null ? ["", ""] : [scipy.toFixed(1), (scipy / ours).toFixed(1)];
      const time =
        row.samples > 1000 ? [perSample(row).toFixed(1), (perSample(row) / copy).toFixed(1)] : ["", ""];
      return `| ${[name, ours.toFixed(1), ...beside, ...time].join(" | ")} |`;
    }),
  ];
}
