import type { Comparison, MetricComparison } from "../../compare/index.js";
import type { Interval } from "../../statistics/index.js";
import { formatPercent } from "./formatPercent.js";
import { intervalWords, levelWords } from "./intervalWords.js";

/** What two trials and many runners have alike. */
interface Answered {
  readonly settings: Pick<Comparison["settings"], "readingLevel">;
  readonly components: readonly Pick<Comparison["components"][number], "component" | "metric">[];
  readonly metrics: readonly (Pick<MetricComparison, "id" | "unit" | "percent" | "readingInterval"> & {
    readonly baseline: { readonly mean: number };
  })[];
}

/**
 * Says how sure the answer is: the interval that each component's reading is taken from, in per cent of the baseline, or in
 * the metric's unit where there is no such share. Empty where no component has one.
 */
export function uncertaintySentence({ components, metrics, settings }: Answered): string {
  const parts = components.flatMap(({ component, metric: id }) => {
    const metric = metrics.find((candidate) => candidate.id === id);
    return metric === undefined ? [] : [`${component} ${readingInterval(metric)}`];
  });
  if (parts.length === 0) return "";
  const [noun, verb] = parts.length === 1 ? ["interval", "is"] : ["intervals", "are"];
  return `The ${levelWords(settings.readingLevel)} ${noun} ${verb}: ${parts.join(", ")}.`;
}

function readingInterval({ percent, baseline, readingInterval, unit }: Answered["metrics"][number]): string {
  return percent === null
    ? `${intervalWords(readingInterval)} ${unit}`
    : percentInterval(readingInterval, baseline.mean);
}

/** An interval in per cent of the size of a mean. */
function percentInterval({ low, high }: Interval, mean: number): string {
  const scale = 100 / Math.abs(mean);
  return `${formatPercent(scale * low)} to ${formatPercent(scale * high)} %`;
}
