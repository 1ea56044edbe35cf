import { Bench } from "tinybench";
import { toGroundReaction } from "../src/force/index.js";
import { analyseTrial } from "../src/trial/index.js";
import { tenMinutes } from "./tenMinutes.js";

/** The whole analysis of ten minutes, stage by stage. */
export function benchmark(): Bench {
  const recording = tenMinutes();
  const ground = toGroundReaction(recording);
  return new Bench({
    name: "10 min × 6 channels × 1 kHz",
    iterations: 10,
    time: 0,
    warmupIterations: 2,
    warmupTime: 0,
  })
    .add("toGroundReaction", () => void toGroundReaction(recording))
    .add("analyseTrial, every metric", () => void analyseTrial(ground));
}
