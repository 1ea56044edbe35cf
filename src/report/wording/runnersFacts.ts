import type { RunnersComparison } from "../../compare/index.js";
import type { Fact } from "./fact.js";
import { filterSentence } from "./filterSentence.js";
import { levelWords } from "./intervalWords.js";
import { plainNumber } from "./plainNumber.js";

/** Says how many runners were compared, in which design, and what a reading rests on. */
export function runnersFacts({ settings, runners }: RunnersComparison): readonly Fact[] {
  const { design, shownLevel, readingLevel, interval, similarMargin, minimumRunners, version, filter } =
    settings;
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
    {
      label: "Margin",
      text: `the larger of the smallest detectable change and ${plainNumber(100 * similarMargin)} % of the baseline's mean`,
    },
    { label: "Filter", text: filterSentence(filter) },
    {
      label: "A reading needs",
      text: `${minimumRunners} runners, speeds within ${plainNumber(100 * speedTolerance)} %`,
    },
    { label: "Computed with", text: `gait-kinetics ${version}` },
  ];
}
