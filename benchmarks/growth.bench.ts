import { existsSync, rmSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { Bench } from "tinybench";
import { type Side, side } from "./side.js";
import { writeRun } from "./writeRun.js";

/** Minutes of running. */
const LENGTHS = [1, 10, 60, 240] as const;

const beside = (name: string): string => fileURLToPath(new URL(name, import.meta.url));

/** `analyseTrial` as built on recordings from a minute to four hours: processor time a minute and memory. */
export function benchmark(): Bench {
  const built = beside("../dist/esm/trial/index.js");
  if (!existsSync(built)) throw new Error("the analysis is measured as built; run `npm run build` first");
  const bench = new Bench({
    name: "6 channels × 1 kHz by length, processor time",
    iterations: 3,
    time: 0,
    warmupIterations: 1,
    warmupTime: 0,
  });
  const lines: string[] = [];
  for (const minutes of LENGTHS) {
    let run: { folder: string; bytes: number };
    let ours: Side;
    const times: number[] = [];
    let memory = 0;
    bench.add(
      `${minutes} min`,
      async () => {
        const answer = JSON.parse(await ours.ask("time")) as { processor: number; memory: number };
        if (times.length === 0) memory = answer.memory;
        times.push(answer.processor);
        return { overriddenDuration: 1000 * answer.processor };
      },
      {
        beforeAll: (mode) => {
          if (mode === "run") return;
          run = writeRun(minutes);
          ours = side("ours", process.execPath, beside("analyse.ours.mjs"), run.folder, built);
        },
        afterAll: (mode) => {
          if (mode === "warmup") return;
          ours.end();
          rmSync(run.folder, { recursive: true });
          const [median = Number.NaN] = times
            .slice(1)
            .sort((a, b) => a - b)
            .slice(1);
          lines.push(
            `${minutes} min: ${((1000 * median) / minutes).toFixed(0)} ms a minute, process ${(memory / run.bytes).toFixed(1)} × the samples after one analysis (${(memory / 1e6).toFixed(0)} of ${(run.bytes / 1e6).toFixed(0)} MB)`,
          );
        },
      },
    );
  }
  bench.addEventListener("complete", () => console.log(`\n${lines.join("\n")}`));
  return bench;
}
