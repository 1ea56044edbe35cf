import { Worker } from "node:worker_threads";
import type { Outcome, TargetName } from "./target.js";

/** Longest an input may take, ms; a file of some hundred kilobytes is read in some milliseconds. */
export const TIME_LIMIT = 10_000;
/** Most memory an input may take: heap of the thread, and growth while one input is read; MB. */
export const MEMORY_LIMIT = 512;

/** What a thread begins with: it learns to read TypeScript before it loads any. */
const START = `import("tsx/esm/api").then(({ register }) => {
  register();
  return import(${JSON.stringify(new URL("./worker.ts", import.meta.url).href)});
});`;

/** An input that broke something. */
export interface Failure {
  readonly name: TargetName;
  readonly seed: number;
  readonly problem: string;
}

/** What came of a range of seeds. */
export interface TargetResult {
  readonly outcomes: ReadonlyMap<number, Outcome>;
  readonly failures: readonly Failure[];
}

interface Stretch {
  readonly ended: "whole" | Failure;
}

/** Reads the inputs of seeds from 0 to below `count`, each within the limits; an input beyond them ends its thread alone. */
export async function runTarget(name: TargetName, count: number): Promise<TargetResult> {
  const outcomes = new Map<number, Outcome>();
  const failures: Failure[] = [];
  for (let from = 0; from < count; ) {
    const { ended } = await runStretch(name, from, count, outcomes);
    if (ended === "whole") break;
    failures.push(ended);
    from = ended.seed + 1;
  }
  for (const [seed, { problem, growth }] of outcomes) {
    if (problem !== undefined) failures.push({ name, seed, problem });
    else if (growth > MEMORY_LIMIT * 2 ** 20)
      failures.push({ name, seed, problem: `memory grew by ${(growth / 2 ** 20).toFixed(0)} MB` });
  }
  return { outcomes, failures };
}

/** One thread, until it is through or an input ends it. */
function runStretch(
  name: TargetName,
  from: number,
  to: number,
  outcomes: Map<number, Outcome>,
): Promise<Stretch> {
  const place = new SharedArrayBuffer(8);
  const at = new Int32Array(place);
  let next = from;
  const worker = new Worker(START, {
    eval: true,
    workerData: { name, from, to, place },
    resourceLimits: { maxOldGenerationSizeMb: MEMORY_LIMIT },
  });
  return new Promise((resolve, reject) => {
    let seen = -1;
    let since = Date.now();
    let problem: string | null = null;
    const watch = setInterval(() => {
      const inputs = Atomics.load(at, 1);
      if (inputs !== seen) {
        seen = inputs;
        since = Date.now();
      } else if (seen > 0 && Date.now() - since > TIME_LIMIT) {
        problem = `does not end within ${TIME_LIMIT / 1000} s`;
        void worker.terminate();
      }
    }, 50);
    worker.on("message", (batch: readonly Outcome[]) => {
      for (const outcome of batch) outcomes.set(next++, outcome);
    });
    worker.on("error", (caught) => {
      problem = `ended its thread: ${caught.message}`;
    });
    worker.on("exit", () => {
      clearInterval(watch);
      if (next === to) resolve({ ended: "whole" });
      else if (Atomics.load(at, 1) === 0) reject(new Error(`${name}: no input was begun: ${problem}`));
      else
        resolve({
          ended: { name, seed: Atomics.load(at, 0), problem: problem ?? "ended its thread" },
        });
    });
  });
}
