import type { Caution } from "../units/index.js";
import type { MetricPair } from "./compareMetric.js";
import { digits, listed } from "./wording.js";

/** What moved from the first stride to the last within a trial, where it counts. */
export function driftCautions(speaking: readonly MetricPair[]): Caution[] {
  const found = speaking.flatMap(({ metric, comparison }) => {
    const drift = comparison?.drift;
    if (comparison === null || drift === undefined) return [];
    return (["baseline", "changed"] as const)
      .filter((which) => drift[which].counts)
      .map((which) => {
        const { change } = drift[which];
        const { mean } = comparison[which];
        const size =
          comparison.percent === null
            ? `${digits(Math.abs(change))} ${metric.unit}`
            : `${Math.abs((100 * change) / mean).toFixed(1)} %`;
        const name = which === "baseline" ? "the baseline" : "the changed trial";
        return {
          id: metric.id,
          words: `${metric.name} ${change > 0 ? "rose" : "fell"} by ${size} from the first to the last stride of ${name}`,
          key: `${metric.id}, ${which}`,
          change,
        };
      });
  });
  if (found.length === 0) return [];
  return [
    {
      code: "drift-within-trial",
      message: `${listed(found.map(({ words }) => words))}, by a straight line: warming up, fatigue or settling in moves a load by itself, so that the order of the trials can pass for the change; record again after a warm-up, or the baseline again after the change`,
      where: [...new Set(found.map(({ id }) => id))].join(", "),
      values: Object.fromEntries(found.map(({ key, change }) => [key, change])),
    },
  ];
}
