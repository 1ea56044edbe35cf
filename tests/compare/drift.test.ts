import { describe, expect, it } from "vitest";
import { compareTrials } from "../../src/compare/index.js";
import { seededRandom } from "../../src/statistics/index.js";
import { baseline, changed, trialOf, typicalStrides } from "./trialOf.js";

const rising = (n: number, change: number) =>
  (typicalStrides(3, n).brakingImpulse ?? []).map((value, i) => value + (change * i) / (n - 1));
const entry = (comparison: ReturnType<typeof compareTrials>) =>
  comparison.metrics.find(({ id }) => id === "brakingImpulse");

it("by hand: a straight line under a pattern that has no slope is the drift, last stride less first", () => {
  const line = Array.from(
    { length: 40 },
    (_, i) => 15 + 0.05 * i + (i % 4 === 0 || i % 4 === 3 ? 0.5 : -0.5),
  );
  const drift = entry(
    compareTrials(trialOf({ ...typicalStrides(1, 40), brakingImpulse: line }), baseline()),
  )?.drift;
  expect(drift?.baseline.change).toBeCloseTo(0.05 * 39, 9);
  expect(drift?.baseline.counts).toBe(true);
});

describe("a drift that counts", () => {
  const one = trialOf({ ...typicalStrides(1, 60), brakingImpulse: rising(60, 3) });
  const comparison = compareTrials(one, changed({}, 60));
  it("is a caution with its numbers, and names order and fatigue", () => {
    const caution = comparison.cautions.find(({ code }) => code === "drift-within-trial");
    const drift = entry(comparison)?.drift?.baseline;
    const percent = ((100 * (drift?.change ?? 0)) / (entry(comparison)?.baseline.mean ?? 1)).toFixed(1);
    expect(caution?.message).toContain(
      `braking impulse rose by ${percent} % from the first to the last stride of the baseline`,
    );
    expect(caution?.message).toContain("warming up, fatigue");
    expect(caution?.where).toBe("brakingImpulse");
    expect(caution?.values).toEqual({ "brakingImpulse, baseline": drift?.change });
  });
  it("is none where nothing drifts", () =>
    expect(compareTrials(baseline(60), changed({}, 60)).cautions.map(({ code }) => code)).not.toContain(
      "drift-within-trial",
    ));
});

it("2026-11-25: one alarm in a hundred was claimed of correlated strides too: it is one of independent ones, two to three of those that correlate by 0.5 (seeded)", () => {
  const random = seededRandom(8);
  for (const r of [0, 0.5]) {
    let clear = 0;
    let all = 0;
    for (let pair = 0; pair < 300; pair++) {
      const { metrics } = compareTrials(
        trialOf(typicalStrides(random, 40, {}, r)),
        trialOf(typicalStrides(random, 40, {}, r)),
        { resamples: 100 },
      );
      for (const { drift } of metrics) {
        for (const one of [drift?.baseline, drift?.changed]) {
          const interval = one?.interval;
          if (interval != null) all++;
          if (interval != null && (interval.low > 0 || interval.high < 0)) clear++;
        }
      }
    }
    // Of some 2400: 1 and 2.5 %, and three standard errors.
    const share = r === 0 ? 0.01 : 0.025;
    expect(clear / all, `r ${r}`).toBeLessThanOrEqual(share + 3 * Math.sqrt((share * (1 - share)) / all));
  }
});

it("three strides have no interval", () => {
  const short = trialOf(typicalStrides(1, 3));
  expect(entry(compareTrials(short, short))?.drift?.baseline).toMatchObject({
    interval: null,
    counts: false,
  });
});
