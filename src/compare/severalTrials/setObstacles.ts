import type { Trial } from "../../trial/index.js";
import type { MetricPair } from "../compareMetric.js";
import { obstaclesBetween } from "../comparisonOf.js";
import type { Obstacle } from "../obstacles.js";
import type { Settings } from "../options.js";
import type { OfBoth } from "../strideSeries.js";

/** What stands between any trial of one condition and any of the other, or between trials of one condition, each kind once. */
export function setObstacles(
  sets: OfBoth<readonly Trial[]>,
  settings: Settings,
  pair: MetricPair | null,
): Obstacle[] {
  const across = sets.baseline.flatMap((one) =>
    sets.changed.flatMap((other) => obstaclesBetween(one, other, settings, pair)),
  );
  const found = [
    ...across,
    ...within("the baseline", sets.baseline, settings, pair),
    ...within("the changed condition", sets.changed, settings, pair),
  ].filter((obstacle) => obstacle !== null);
  return found.filter(({ brief }, i) => found.findIndex((other) => other.brief === brief) === i);
}

function within(
  name: string,
  [first, ...rest]: readonly Trial[],
  settings: Settings,
  pair: MetricPair | null,
): Obstacle[] {
  if (first === undefined) return [];
  return rest.flatMap((other) =>
    obstaclesBetween(first, other, settings, pair).flatMap((obstacle) =>
      obstacle === null
        ? []
        : [
            {
              brief: obstacle.brief,
              reason: `the trials of ${name} themselves do not belong together (${obstacle.brief})`,
              toSettle: obstacle.toSettle,
            },
          ],
    ),
  );
}
