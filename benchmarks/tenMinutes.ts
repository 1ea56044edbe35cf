import type { Recording } from "../src/recording/index.js";
import { syntheticRun } from "../src/synthetic/index.js";

/** Ten minutes of a treadmill run: six channels at 1 kHz with noise, 600 000 samples each. */
export function tenMinutes(): Recording {
  return syntheticRun({
    duration: 600,
    noise: { force: 2, cop: 0.001, freeMoment: 0.3 },
    seed: 1,
  }).recording;
}
