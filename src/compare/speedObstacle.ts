import type { Trial } from "../trial/index.js";
import type { MetricPair } from "./compareMetric.js";
import { type Obstacle, speedsApart } from "./obstacles.js";
import type { Settings } from "./options.js";

/**
 * Speeds too far apart for a reading of one metric: none where the effect of speed was taken off its difference.
 *
 * @param pair - The metric; `null` for work, of which no effect of speed is known.
 */
export function speedObstacle(
  baseline: Trial,
  changed: Trial,
  settings: Settings,
  pair: MetricPair | null,
): Obstacle | null {
  const apartBy = speedsApart(baseline, changed, settings);
  if (apartBy === null || settings.speedEffect === "kept") return apartBy;
  if (pair?.comparison?.speedAlone?.takenOff === true) return null;
  const name = pair?.metric.name ?? "external work per metre";
  return {
    brief: "speeds apart, effect unknown",
    reason: `${apartBy.reason}, and what it does to ${name} is not known, so that nothing was taken off`,
    toSettle: ["both recordings at one speed, or an effect of speed with its source for every component"],
  };
}
