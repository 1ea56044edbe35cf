import { Bench } from "tinybench";
import { parseC3d, readC3d, recordingToC3d, writeC3d } from "../src/io/index.js";
import { tenMinutes } from "./tenMinutes.js";

/** Axes of the file that is made. */
const AXES = { x: "forward", y: "up", z: "right" } as const;

/** Reading ten minutes as C3D, beside what the bytes alone cost: one copy and one sum over them. */
export function benchmark(): Bench {
  const file = recordingToC3d(tenMinutes());
  const floats = writeC3d(file, { storage: "float" });
  const integers = writeC3d(file, { storage: "integer" });
  const bench = new Bench({
    name: `10 min × 6 channels × 1 kHz as C3D: ${megabytes(floats)} MB of floating numbers, ${megabytes(integers)} MB of integers`,
    iterations: 10,
    time: 0,
    warmupIterations: 2,
    warmupTime: 0,
  });
  for (const [words, bytes] of [
    ["floats", floats],
    ["integers", integers],
  ] as const) {
    bench
      .add(`copy and sum, ${words}`, () => void copyAndSum(bytes))
      .add(`parseC3d, ${words}`, () => void parseC3d(bytes))
      .add(`readC3d, ${words}`, () => void readC3d(bytes, { axes: AXES }));
  }
  return bench.add("writeC3d, floats", () => void writeC3d(file, { storage: "float" }));
}

function megabytes(bytes: Uint8Array): number {
  return Math.round(bytes.length / 1e6);
}

/** What any reader must do at least: touch every byte, and hold as many samples as the file has. */
function copyAndSum(bytes: Uint8Array): number {
  const copy = bytes.slice();
  let sum = 0;
  for (let i = 0; i < copy.length; i++) sum += copy[i] as number;
  return sum;
}
