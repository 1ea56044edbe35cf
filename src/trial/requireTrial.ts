import { fail } from "../units/index.js";
import type { Trial } from "./trial.js";

/** Refuses what is no trial. */
export function requireTrial(trial: Trial): void {
  if (trial?.schema === "gait-kinetics/trial/1") return;
  fail("wrong-type", "trial is no trial; what analyseTrial returns is needed", { argument: "trial" });
}
