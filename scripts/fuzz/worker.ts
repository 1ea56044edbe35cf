/**
 * Reads the inputs of a range of seeds. Which one it is at, and since when, stands in shared memory, so that the
 * thread above can end an input that does not end by itself.
 */
import { getHeapStatistics } from "node:v8";
import { parentPort, workerData } from "node:worker_threads";
import { isGaitKineticsError } from "../../src/units/index.js";
import { loadTarget } from "./loadTarget.js";
import { sizeOf } from "./sizeOf.js";
import type { Outcome, TargetName } from "./target.js";

/** Outcomes that are sent together. */
const BATCH = 200;

const { name, from, to, place } = workerData as {
  readonly name: TargetName;
  readonly from: number;
  readonly to: number;
  readonly place: SharedArrayBuffer;
};
const at = new Int32Array(place);
const target = await loadTarget(name);

function memory(): number {
  const { used_heap_size, external_memory } = getHeapStatistics();
  return used_heap_size + external_memory;
}

/** An error's first lines: what and where. */
function problemOf(caught: unknown): string {
  return caught instanceof Error
    ? (caught.stack ?? caught.message).split("\n").slice(0, 4).join("\n")
    : String(caught);
}

function outcomeOf(seed: number): Outcome {
  const input = target.input(seed);
  const before = memory();
  const start = performance.now();
  let result = "read";
  let problem: string | undefined;
  try {
    target.read(input);
  } catch (caught) {
    result = isGaitKineticsError(caught) ? caught.code : "failed";
    if (result === "failed") problem = problemOf(caught);
    else if (/[\r\n]/.test((caught as Error).message)) {
      result = "failed";
      problem = `a message of more than one line: ${JSON.stringify((caught as Error).message)}`;
    }
  }
  const milliseconds = performance.now() - start;
  const growth = Math.max(0, memory() - before);
  return {
    result,
    milliseconds,
    growth,
    size: sizeOf(input.bytes),
    ...(problem !== undefined && { problem }),
  };
}

let batch: Outcome[] = [];
for (let seed = from; seed < to; seed++) {
  Atomics.store(at, 0, seed);
  Atomics.add(at, 1, 1);
  batch.push(outcomeOf(seed));
  if (batch.length === BATCH || seed === to - 1) {
    parentPort?.postMessage(batch);
    batch = [];
  }
}
