import { describe, expect, it } from "vitest";
import { compareTrials, LEAST_MEAN_FOR_PERCENT } from "../../src/compare/index.js";
import { metricsToCsv } from "../../src/exchange/index.js";
import { toGroundReaction } from "../../src/force/index.js";
import { metricById } from "../../src/metrics/index.js";
import { comparisonHtml, comparisonText } from "../../src/report/index.js";
import { demoRecordings } from "../../src/synthetic/index.js";
import { analyseTrials } from "../../src/trial/index.js";
import { trialOf } from "./trialOf.js";

describe("a share of the baseline's mean", () => {
  /** Strides that alternate about a mean with a standard deviation of exactly 1. */
  const strides = (mean: number) =>
    Array.from({ length: 40 }, (_, i) => mean + (i % 2 === 0 ? 1 : -1) * Math.sqrt(39 / 40));
  const percent = (before: number, after: number) =>
    compareTrials(
      trialOf({ peakVerticalForce: strides(before) }),
      trialOf({ peakVerticalForce: strides(after) }),
      {
        metrics: [metricById("peakVerticalForce")],
      },
    ).metrics[0];
  it("is given where the mean is more than three stride SDs from zero, either side of it", () => {
    expect(LEAST_MEAN_FOR_PERCENT).toBe(3);
    expect(percent(3.01, 4.01)?.percent).toBeCloseTo(100 / 3.01, 9);
    expect(percent(-3.01, -4.01)?.percent).toBeCloseTo(-100 / 3.01, 9);
  });
  it("is null nearer than that, per kilometre too, and the difference and its interval stay", () => {
    const found = percent(2.99, 4);
    expect(found?.percent).toBeNull();
    expect(found?.perKilometre?.percent).toBeNull();
    expect(found?.difference).toBeCloseTo(1.01, 9);
    expect(found?.interval.low).toBeGreaterThan(0);
    expect(percent(-2.99, 4)?.percent).toBeNull();
    expect(percent(0, 0)?.percent).toBeNull();
  });
  it("the sentences then give the change in the unit, per kilometre in the unit per kilometre", () => {
    const { overall, components } = compareTrials(
      trialOf({ peakVerticalForce: strides(2.5) }),
      trialOf({ peakVerticalForce: strides(4.5), stepTime: Array.from({ length: 40 }, () => 1.5) }),
      { metrics: [metricById("peakVerticalForce")] },
    );
    expect(overall.sentence).toContain("Raised per step: the vertical force is higher (+2 N)");
    expect(overall.sentence).toContain("the vertical force is lower (-1315 N/km)");
    expect(components[0]?.sentence).toContain("goes from 2.5 to 4.5 N (+2 N, 99 % interval +");
  });
});

describe("the net forward impulse of the demo, whose mean is near zero against its spread", () => {
  const { usual, furtherAhead } = demoRecordings();
  const [one, other] = analyseTrials([usual, furtherAhead].map((recording) => toGroundReaction(recording)));
  if (one === undefined || other === undefined) throw new Error("two trials are analysed");
  const comparison = compareTrials(one, other);
  it("has no share, and every other metric has one", () =>
    expect(comparison.metrics.filter(({ percent }) => percent === null).map(({ id }) => id)).toEqual([
      "netForwardImpulse",
    ]));
  it("text, page and CSV show nothing in its place", () => {
    const line = comparisonText(comparison)
      .split("\n")
      .find((text) => text.includes("Net forward impulse"));
    expect(line).toMatch(/ [-+]\d\.\d+ to [-+]\d\.\d+$/);
    const row = /Net forward impulse, N.s<\/th>(.*?)<\/tr>/.exec(comparisonHtml(comparison, one, other))?.[1];
    expect(row).toMatch(/data-label="%"><\/td>/);
    const [header = "", ...rows] = metricsToCsv(comparison).split(/\r?\n/);
    const cells = rows.find((text) => text.startsWith("netForwardImpulse,"))?.split(",") ?? [];
    expect(cells[header.split(",").indexOf("percent")]).toBe("");
    expect(cells[header.split(",").indexOf("difference")]).toMatch(/^-0\.\d+$/);
  });
});
