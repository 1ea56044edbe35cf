import { Bench } from "tinybench";
import { parseC3d, readC3d, recordingToC3d, writeC3d } from "../src/io/index.js";
import type { Recording } from "../src/recording/index.js";
import { tenMinutes } from "./tenMinutes.js";

/** Reading ten minutes as C3D, beside what its numbers alone cost: copied to 64 bits and summed once. */
export function benchmark(): Bench {
  const file = recordingToC3d(withoutGaps(tenMinutes()));
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
      .add(`copy and sum, ${words}`, () => void copyAndSum(bytes, words))
      .add(`parseC3d, ${words}`, () => void parseC3d(bytes))
      .add(`readC3d, ${words}`, () => void readC3d(bytes));
  }
  return bench.add("writeC3d, floats", () => void writeC3d(file, { storage: "float" }));
}

/** Files of integers cannot hold a gap, and both kinds should hold the same. */
function withoutGaps(recording: Recording): Recording {
  const filled = (samples: Float64Array): Float64Array =>
    samples.map((value) => (Number.isNaN(value) ? 0 : value));
  return {
    ...recording,
    channels: recording.channels.map((channel) => ({ ...channel, samples: filled(channel.samples) })),
  };
}

function megabytes(bytes: Uint8Array): number {
  return Math.round(bytes.length / 1e6);
}

/** What any reader must do at least: bring the stored numbers to 64 bits, and look at each once. */
function copyAndSum(bytes: Uint8Array, words: "floats" | "integers"): number {
  const { buffer, byteOffset, length } = bytes;
  const stored =
    words === "floats"
      ? new Float32Array(buffer, byteOffset, Math.floor(length / 4))
      : new Int16Array(buffer, byteOffset, Math.floor(length / 2));
  const copy = new Float64Array(stored);
  let sum = 0;
  for (let i = 0; i < copy.length; i++) sum += copy[i] as number;
  return sum;
}
