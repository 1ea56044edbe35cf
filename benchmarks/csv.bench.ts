import { Bench } from "tinybench";
import { readCsv, writeCsv } from "../src/io/index.js";
import { tenMinutes } from "./tenMinutes.js";

/** Reading and writing ten minutes as the library's own CSV. */
export function benchmark(): Bench {
  const recording = tenMinutes();
  const text = writeCsv(recording);
  return new Bench({
    name: `10 min × 6 channels × 1 kHz, ${Math.round(text.length / 1e6)} MB`,
    iterations: 10,
    time: 0,
    warmupIterations: 2,
    warmupTime: 0,
  })
    .add("readCsv", () => void readCsv(text))
    .add("writeCsv", () => void writeCsv(recording));
}
