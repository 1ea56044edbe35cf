import { describe, expect, it } from "vitest";
import { readJson, writeJson } from "../../../src/exchange/index.js";
import { seededRandom, twoSampleTTest } from "../../../src/statistics/index.js";
import { bodyWeights, drawnBy, found, groups } from "./drawn.js";

// Own draws in each file: what another file draws before must not move these.
const drawn = drawnBy(seededRandom(12));

describe("independent groups", () => {
  it("Welch's test of the runners' means, Hedges' g, no runner's own difference", () => {
    const runners = drawn({ runners: 20, strides: 60 });
    const result = groups(runners);
    const metric = found(result);
    const before = runners.slice(0, 10).map(({ baseline }) => bodyWeights(baseline));
    const after = runners.slice(10).map(({ changed }) => bodyWeights(changed));
    const t = twoSampleTTest(after, before);
    expect(result.settings.design).toBe("independent");
    expect(metric.difference).toBeCloseTo(t.estimate, 3);
    expect(metric.degreesOfFreedom).toBeCloseTo(t.degreesOfFreedom, 0);
    expect((metric.interval.high - metric.interval.low) / (t.interval.high - t.interval.low)).toBeCloseTo(
      1,
      2,
    );
    expect(metric.runners).toEqual([]);
    expect(result.overall.sentence).toContain("different runners");
    expect(readJson(writeJson(result))).toMatchObject({ runners: { baseline: 10, changed: 10 } });
  });
  it("needs six in each group", () =>
    expect(groups(drawn({ runners: 10 })).overall.toSettle).toContain("at least 6 runners of each group"));
});
