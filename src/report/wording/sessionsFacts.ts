import type { SessionSeries } from "../../compare/index.js";
import type { Fact } from "./fact.js";
import { levelWords } from "./intervalWords.js";

/** Says what makes the baseline of a series of sessions, and how its intervals are made. */
export function sessionsFacts({ settings }: SessionSeries): readonly Fact[] {
  const { baseline, baselineSessions, level, interval, version } = settings;
  return [
    {
      label: "Baseline",
      text:
        baseline === "first"
          ? `the first ${baselineSessions} sessions, for good`
          : `the last ${baselineSessions} sessions before each session`,
    },
    { label: "Intervals", text: `${levelWords(level)}; ${interval}` },
    { label: "Computed with", text: `gait-kinetics ${version}` },
  ];
}
