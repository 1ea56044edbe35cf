import { spawnSync } from "node:child_process";
import { existsSync, rmSync } from "node:fs";
import { loadavg } from "node:os";
import { fileURLToPath } from "node:url";
import { Bench } from "tinybench";
import { compareNumbers } from "./compareNumbers.js";
import { type Side, side } from "./side.js";
import { writeRun } from "./writeRun.js";

/** What a side says of one analysis: s, s, bytes. */
interface Answer {
  readonly processor: number;
  readonly wall: number;
  readonly memory: number;
}

const beside = (name: string): string => fileURLToPath(new URL(name, import.meta.url));

/**
 * One hour of six channels through the built `analyseTrial` and through NumPy in turn, on the same samples, every metric;
 * prints how far the numbers lie apart, both times of the processor, wall times and memory. Without python3 and SciPy it
 * says so and runs ours alone.
 */
export function benchmark(): Bench {
  const built = beside("../dist/esm/trial/index.js");
  if (!existsSync(built)) throw new Error("the analysis is measured as built; run `npm run build` first");
  const { folder, bytes } = writeRun(60);
  const ours = side("ours", process.execPath, beside("analyse.ours.mjs"), folder, built);
  const hasScipy = spawnSync("python3", ["-c", "import scipy.signal, scipy.stats"]).status === 0;
  if (!hasScipy) console.log("\nNumPy is skipped: no python3 with SciPy was found");
  const numpy = hasScipy ? side("NumPy", "python3", beside("numpy/run.py"), folder) : null;
  const answers = new Map<Side, Answer[]>();

  const bench = new Bench({
    name: `one hour × 6 channels × 1 kHz (${(bytes / 1e6).toFixed(0)} MB), processor time`,
    iterations: 5,
    time: 0,
    warmupIterations: 1,
    warmupTime: 0,
  });
  for (const one of numpy === null ? [ours] : [ours, numpy]) {
    answers.set(one, []);
    bench.add(`${one.name}, every metric`, async () => {
      // The first run of each side also writes what it found.
      const seen = answers.get(one) as Answer[];
      const answer = JSON.parse(await one.ask(seen.length === 0 ? "numbers" : "time")) as Answer;
      seen.push(answer);
      return { overriddenDuration: 1000 * answer.processor };
    });
  }
  bench.addEventListener("complete", () => {
    for (const [{ name, end }, seen] of answers) {
      end();
      const [first, ...rest] = seen as [Answer, ...Answer[]];
      const walls = rest.map(({ wall }) => wall.toFixed(1)).join(", ");
      console.log(
        `\n${name}: wall ${walls} s; memory of the process ${(first.memory / bytes).toFixed(1)} × the samples after one analysis, ${((rest.at(-1)?.memory ?? 0) / bytes).toFixed(1)} × after ${seen.length}`,
      );
    }
    if (numpy !== null) {
      const { metrics, values, worst, worstOf, worstSummary, worstCurve } = compareNumbers(folder);
      console.log(
        `numbers: ${values} values of ${metrics} metrics and both events, apart by at most ${worst.toExponential(1)} of themselves (${worstOf}); summary ${worstSummary.toExponential(1)}, curves ${worstCurve.toExponential(1)}`,
      );
    }
    console.log(
      `load of the machine over 1, 5 and 15 min: ${loadavg()
        .map((load) => load.toFixed(1))
        .join(", ")}`,
    );
    rmSync(folder, { recursive: true });
  });
  return bench;
}
