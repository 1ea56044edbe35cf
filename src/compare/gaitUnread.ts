import type { Trial } from "../trial/index.js";
import type { Obstacle } from "./obstacles.js";

/** A gait whose readings have no measured rate of false alarms. */
export function gaitUnread(baseline: Trial, changed: Trial): Obstacle | null {
  const gaits = [baseline, changed].map(({ settings }) => settings.gait ?? "running");
  const [one, other] = gaits as [string, string];
  if (one === "running" && other === "running") return null;
  if (one !== other) {
    return {
      brief: "gaits differ",
      reason: `the baseline is ${one} and the changed trial is ${other}`,
      toSettle: ["two recordings of one gait"],
    };
  }
  return {
    brief: `no readings for ${one}`,
    reason: `there are no readings for ${one} until their rate of false alarms has been measured; the differences and their intervals stand`,
    toSettle: ["two recordings of running"],
  };
}
