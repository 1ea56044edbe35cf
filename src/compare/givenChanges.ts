import type { Metric } from "../metrics/index.js";
import { changeIn } from "./changeIn.js";
import type { ChangeAt, Given } from "./detectableChange.js";
import type { Settings, SourcedChange } from "./options.js";
import type { OfBoth, PairedTrial } from "./strideSeries.js";

/** Takes what was given of a metric into its unit. */
export function givenChanges(
  metric: Metric,
  { baseline }: OfBoth<PairedTrial>,
  settings: Settings,
  takenOff: number,
): Given {
  const { mass, gravity } = baseline.trial.settings;
  const sourced = (option: "smallestDetectableChange" | "margins"): SourcedChange | null =>
    (Object.hasOwn(settings[option], metric.id) ? settings[option][metric.id] : null) ?? null;
  const at = (option: "smallestDetectableChange" | "margins"): ChangeAt | null => {
    const change = sourced(option);
    return change === null ? null : changeIn(metric, change, mass, gravity, option);
  };
  return {
    smallestChange: at("smallestDetectableChange"),
    degreesOfFreedom: sourced("smallestDetectableChange")?.degreesOfFreedom ?? null,
    margin: at("margins"),
    takenOff,
  };
}

/** Given changes as the same shares of another mean, of which nothing was taken off. */
export function sharesOf(given: Given, mean: number): Given {
  const share = (change: ChangeAt | null): ChangeAt | null =>
    change === null
      ? null
      : (other) => {
          const { value, source } = change(mean);
          return { value: mean === 0 ? 0 : value * Math.abs(other / mean), source };
        };
  return { ...given, smallestChange: share(given.smallestChange), margin: share(given.margin), takenOff: 0 };
}
