import { describe, expect, it } from "vitest";
import { compareRunners, compareTrials } from "../../src/compare/index.js";
import { comparisonMarkdown, comparisonText, runnersText } from "../../src/report/index.js";
import { baseline, changed, trialOf, typicalStrides } from "../compare/trialOf.js";

const flat = (text: string) => text.replace(/\s+/g, " ");
const trial = (seed: number) => trialOf(typicalStrides(seed, 40));

describe("2026-11-25: what nobody knew, or what the rule does not do, was said", () => {
  const one = compareTrials(baseline(), changed());
  const again = compareTrials([baseline(), trial(3)], changed());
  const several = compareTrials([baseline(), trial(3)], [changed(), trial(4)]);
  it("three trials are said to be meant for a baseline before and after, not to be it", () => {
    for (const text of [comparisonText(again), comparisonMarkdown(again)].map(flat)) {
      expect(text).toContain(
        "two trials of the baseline, one of the change; meant for a baseline recorded before and after it",
      );
      expect(text).not.toContain("the baseline recorded again after the change (");
    }
  });
  it("the margin is 10 % or 0.8 standard deviations of strides, not the smallest detectable change", () => {
    for (const comparison of [one, again]) {
      expect(flat(comparisonText(comparison))).toContain(
        "the larger of 10 % of the baseline's mean and 0.8 of the standard deviation of strides (or of a smallest detectable change that was given), unless one was given",
      );
    }
    expect(flat(comparisonText(several))).toContain(
      "the larger of 10 % of the baseline's mean and the smallest detectable change, unless one was given",
    );
    const runners = compareRunners(
      Array.from({ length: 6 }, (_, k) => ({
        runner: `r${k}`,
        baseline: trial(10 + k),
        changed: trial(20 + k),
      })),
    );
    expect(flat(runnersText(runners))).not.toContain("larger of the smallest detectable change");
  });
});
