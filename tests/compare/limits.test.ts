import { describe, expect, it } from "vitest";
import { type CompareTrialsOptions, compareTrials } from "../../src/compare/index.js";
import { metricById } from "../../src/metrics/index.js";
import { baseline, changed, PRIMARY_IDS, trialOf } from "./trialOf.js";

describe("the limits of a reading", () => {
  const spread = (centre: number, size: number, n = 40) =>
    Array.from({ length: n }, (_, i) => centre + (i % 2 === 0 ? size : -size));
  const vertical = (one: number[], other: number[], options: CompareTrialsOptions = {}) =>
    compareTrials(trialOf({ peakVerticalForce: one }), trialOf({ peakVerticalForce: other }), {
      metrics: [metricById("peakVerticalForce")],
      ...options,
    }).components[0]?.reading;
  it("0.8 of the pooled stride SD must be exceeded, however sure the difference is", () => {
    // SD 20 √(160/159) = 20.1 N, so 16.1 N; the 99 % interval is ±5.8 N wide.
    expect(vertical(spread(1600, 20, 160), spread(1600 - 15.5, 20, 160))).toBe("similar");
    expect(vertical(spread(1600, 20, 160), spread(1600 - 17, 20, 160))).toBe("lower");
    expect(vertical(spread(1600, 20, 160), spread(1600 + 17, 20, 160))).toBe("higher");
  });
  it("the 99 % interval must be clear of zero by 0.4 of the pooled stride SD", () => {
    // 40 strides: ±12.0 N and 8.1 N.
    expect(vertical(spread(1600, 20), spread(1600 - 19.5, 20))).toBe("similar");
    expect(vertical(spread(1600, 20), spread(1600 - 20.5, 20))).toBe("lower");
    const found = compareTrials(
      trialOf({ peakVerticalForce: spread(1600, 20) }),
      trialOf({ peakVerticalForce: spread(1580, 20) }),
    ).metrics.find(({ id }) => id === "peakVerticalForce");
    expect(found?.smallestDetectableChange.source).toBe(
      "the reach of the 99 % interval and 0.4 of the pooled standard deviation of strides",
    );
  });
  it("what thirds of the same trial differ by must be exceeded", () => {
    const steps = (centre: number, rise: number) =>
      spread(centre, 40, 60).map((value, i) => value + rise * Math.floor(i / 20));
    // Thirds 20 N apart: SD of their means 20 N, so 4.604 × 20 √(2/3) = 75.2 N.
    const found = (by: number) =>
      compareTrials(
        trialOf({ peakVerticalForce: steps(1600, 20) }),
        trialOf({ peakVerticalForce: steps(1600 - by, 20) }),
        { metrics: [metricById("peakVerticalForce")] },
      );
    const change = found(74).metrics[0]?.smallestDetectableChange;
    expect(change?.value).toBeCloseTo(4.604095 * 20 * Math.sqrt(2 / 3), 4);
    expect(change?.source).toBe("what thirds of the same trial differ by, at 99 %");
  });
  it("a straight drift of whatever size in both trials, from a common start, is never read by itself", () => {
    const line = (change: number) =>
      Array.from({ length: 60 }, (_, i) => 1600 + (change * i) / 59 + (i % 2 === 0 ? 1 : -1));
    for (const [one, other] of [
      [300, -300],
      [300, 0],
      [0, -200],
      [100, 400],
    ] as const) {
      expect(["similar", "unsettled"]).toContain(vertical(line(one), line(other)));
    }
  });
  it("a sourced smallest detectable change takes its place: in the metric's unit, in per cent, in body weights", () => {
    const sourced = (value: number, unit: string) => ({
      smallestDetectableChange: { peakVerticalForce: { value, unit, source: "an own repeat session" } },
    });
    expect(vertical(spread(1600, 20), spread(1585, 20), sourced(10, "N"))).toBe("lower");
    expect(vertical(spread(1600, 20), spread(1550, 20), sourced(60, "N"))).toBe("similar");
    expect(vertical(spread(1600, 20), spread(1550, 20), sourced(4, "%"))).toBe("similar");
    expect(vertical(spread(1600, 20), spread(1550, 20), sourced(3, "%"))).toBe("lower");
    // 0.1 BW of 70 kg is 68.6 N.
    expect(vertical(spread(1600, 20), spread(1540, 20), sourced(0.1, "BW"))).toBe("similar");
    expect(vertical(spread(1600, 20), spread(1525, 20), sourced(0.1, "BW"))).toBe("lower");
  });
  it("the source is printed beside the value, and the caution goes when every primary has one", () => {
    const change = { value: 5, unit: "%", source: "an own repeat session" };
    const all = Object.fromEntries(PRIMARY_IDS.map((id) => [id, change]));
    const result = compareTrials(baseline(), changed(), { smallestDetectableChange: all });
    expect(result.metrics.find(({ id }) => id === "peakVerticalForce")?.smallestDetectableChange.source).toBe(
      "an own repeat session",
    );
    expect(result.cautions.some(({ code }) => code === "only-two-recordings")).toBe(false);
    expect(
      compareTrials(baseline(), changed()).cautions.some(({ code }) => code === "only-two-recordings"),
    ).toBe(true);
  });
  it("per kilometre a sourced change is the same share of the mean", () => {
    const result = compareTrials(baseline(), changed(), {
      smallestDetectableChange: {
        brakingImpulse: { value: 2, unit: "N s", source: "an own repeat session" },
      },
    });
    const found = result.metrics.find(({ id }) => id === "brakingImpulse");
    expect(
      (found?.perKilometre?.smallestDetectableChange.value ?? 0) / (found?.perKilometre?.baseline.mean ?? 1),
    ).toBeCloseTo(2 / (found?.baseline.mean ?? 1), 12);
  });
  it("10 % of the baseline's mean decides `similar` and is no minimum for `lower`", () => {
    expect(vertical(spread(1600, 2), spread(1590, 2))).toBe("lower");
    expect(vertical(spread(1600, 20), spread(1600, 20), { similarMargin: 0 })).toBe("similar");
    // ±600 N: 99 % interval ±355 N, wider than 160 N and than 0.8 of the SD only where the margin is the smaller one.
    expect(vertical(spread(1600, 600), spread(1600, 600))).toBe("similar");
    const sourced = {
      smallestDetectableChange: { peakVerticalForce: { value: 0, unit: "N", source: "none" } },
    };
    expect(vertical(spread(1600, 600), spread(1600, 600), sourced)).toBe("unsettled");
    expect(vertical(spread(1600, 600), spread(1600, 600), { ...sourced, similarMargin: 0.25 })).toBe(
      "similar",
    );
  });
  it("where a lower value is more load, a fall reads `higher`, and the words say that the metric fell", () => {
    const metric = {
      ...metricById("peakVerticalForce"),
      name: "rise time",
      unit: "s",
      moreLoad: "lower" as const,
    };
    expect(vertical(spread(1600, 2), spread(1590, 2), { metrics: [metric] })).toBe("higher");
    const { overall, components } = compareTrials(
      trialOf({ peakVerticalForce: spread(0.23, 0.001) }),
      trialOf({ peakVerticalForce: spread(0.27, 0.001) }),
      { metrics: [metric] },
    );
    expect(overall.sentence).toContain(
      "the vertical force is lower (rise time +17.4 %, of which less is more load)",
    );
    expect(components[0]).toMatchObject({ reading: "lower", moreLoad: "lower" });
    expect(components[0]?.sentence).toMatch(
      /^Vertical lower: rise time goes from 0\.23 to 0\.27 s \(\+17\.4 %, .*\), of which less is more load\.$/,
    );
  });
});
