import type { RunnersComparison } from "../../compare/index.js";
import type { Metric } from "../../metrics/index.js";
import type { Fact } from "./fact.js";
import { filterSentence } from "./filterSentence.js";
import { levelWords } from "./intervalWords.js";
import { sourceWords } from "./limitFacts.js";
import { plainNumber } from "./plainNumber.js";

/** Says how many runners were compared, in which design, and what a reading rests on. */
export function runnersFacts(
  { settings, runners, components, metrics }: RunnersComparison,
  entries: readonly Metric[],
): readonly Fact[] {
  const { design, shownLevel, readingLevel, interval, minimumRunners, version, filter } = settings;
  const spoken = metrics.filter(({ id }) => components.some(({ metric }) => metric === id));
  const { speedTolerance } = settings;
  return [
    {
      label: "Design",
      text:
        design === "paired"
          ? `paired: ${runners.baseline} runners in both conditions`
          : `independent: ${runners.baseline} runners in the baseline, ${runners.changed} others in the change`,
    },
    {
      label: "Intervals",
      text: `${levelWords(shownLevel)} shown, ${levelWords(readingLevel)} behind every reading; ${interval}`,
    },
    ...(spoken.length === 0
      ? []
      : [
          {
            label: "Margin",
            text: `${sourceWords(spoken, entries, ({ margin }) => margin)}. Within it a difference reads similar`,
          },
        ]),
    { label: "Filter", text: filterSentence(filter) },
    {
      label: "A reading needs",
      text: `${minimumRunners} runners, speeds within ${plainNumber(100 * speedTolerance)} %`,
    },
    { label: "Computed with", text: `gait-kinetics ${version}` },
  ];
}
