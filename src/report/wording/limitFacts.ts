import type { Comparison, SmallestDetectableChange } from "../../compare/index.js";
import type { Metric } from "../../metrics/index.js";
import type { Fact } from "./fact.js";
import { marginWords } from "./marginWords.js";
import { metricName } from "./metricName.js";
import { speakers } from "./speakers.js";

/**
 * Says where the smallest detectable change and the margin of each metric that speaks are from, per step, those of one source
 * together; nothing where no metric speaks.
 */
export function limitFacts(comparison: Comparison, metrics: readonly Metric[]): readonly Fact[] {
  const spoken = speakers(comparison).map(({ metric }) => metric);
  if (spoken.length === 0) return [];
  return [
    {
      label: "Smallest detectable change",
      text: sourceWords(spoken, metrics, ({ smallestDetectableChange }) => smallestDetectableChange),
    },
    {
      label: "Margin",
      text: `${sourceWords(spoken, metrics, ({ margin }) => margin)}. Within it a difference reads similar; it is ${marginWords(comparison.settings)}`,
    },
  ];
}

/**
 * Names metrics with the source of a limit, those of one source together.
 *
 * @param spoken - Metrics that speak.
 * @param of - The limit.
 */
export function sourceWords<T extends { readonly id: string }>(
  spoken: readonly T[],
  metrics: readonly Metric[],
  of: (metric: T) => SmallestDetectableChange,
): string {
  const all = [...new Set(spoken.map((metric) => of(metric).source))];
  return all
    .map((source) => {
      const those = spoken.filter((metric) => of(metric).source === source);
      const names = those.map(({ id }) => metricName(id, metrics)).join(", ");
      return `${names}: ${source.replace(/\.$/, "")}`;
    })
    .join("; ");
}
