import { describe, expect, it } from "vitest";
import {
  type CompareTrialsOptions,
  compareTrials,
  PUBLISHED_DETECTABLE_CHANGES,
} from "../../src/compare/index.js";
import { CATALOGUE, metricById } from "../../src/metrics/index.js";
import { bootstrapDifference, seededRandom } from "../../src/statistics/index.js";
import { baseline, changed, trialOf, typicalStrides } from "./trialOf.js";

describe("the studentised block bootstrap beside Student's t", () => {
  const one = typicalStrides(1, 40);
  const other = typicalStrides(2, 40, { brakingImpulse: 1.2 });
  const compare = (options: CompareTrialsOptions = {}) =>
    compareTrials(trialOf(one), trialOf(other), options);
  const braking = (comparison: ReturnType<typeof compare>) =>
    comparison.metrics.find(({ id }) => id === "brakingImpulse");
  it("is given of every metric that speaks, at the reading level, and of no other", () => {
    const { metrics, settings } = compare();
    for (const { id, bootstrapInterval } of metrics) {
      const speaks = metricById(id).primary === true;
      expect(bootstrapInterval?.level).toBe(speaks ? 0.99 : undefined);
    }
    expect(settings).toMatchObject({ method: "student", bootstrap: { resamples: 2000, seed: 1 } });
    expect(braking(compare())?.bootstrapInterval).toEqual(
      bootstrapDifference(other.brakingImpulse ?? [], one.brakingImpulse ?? [], { level: 0.99 }).interval,
    );
  });
  it("decides where it is asked for, per kilometre and of work too; both intervals stay in sight", () => {
    const found = compare({ method: "bootstrap", resamples: 500, seed: 3 });
    const vs = compare();
    expect(braking(found)?.readingInterval).toEqual(braking(found)?.bootstrapInterval);
    expect(braking(found)?.readingInterval).not.toEqual(braking(vs)?.readingInterval);
    expect(braking(found)?.perKilometre?.readingInterval).not.toEqual(
      braking(vs)?.perKilometre?.readingInterval,
    );
    expect(found.work.perMetre?.readingInterval).not.toEqual(vs.work.perMetre?.readingInterval);
    expect(braking(found)?.interval).toEqual(braking(vs)?.interval);
    expect(found.settings).toMatchObject({ method: "bootstrap", bootstrap: { resamples: 500, seed: 3 } });
    expect(found.settings.interval).toContain("block bootstrap");
    expect(found.overall.reading).toBe("raised");
  });
  it("twice the strides narrow it, on the average of 40 pairs by a quarter to a third", () => {
    const width = (n: number) => {
      let sum = 0;
      for (let seed = 0; seed < 40; seed++) {
        const pair = [typicalStrides(2 * seed, n), typicalStrides(2 * seed + 1, n)] as const;
        const found = braking(compareTrials(trialOf(pair[0]), trialOf(pair[1]), { resamples: 400 }));
        sum += (found?.bootstrapInterval?.high ?? 0) - (found?.bootstrapInterval?.low ?? 0);
      }
      return sum;
    };
    // 1/√2 of the root of the number, and less in quantiles where blocks are few.
    expect(width(80) / width(40)).toBeLessThan(0.77);
    expect(width(80) / width(40)).toBeGreaterThan(0.6);
  });
  it("the same seed gives the same comparison", () =>
    expect(compare({ method: "bootstrap", seed: 5 })).toEqual(compare({ method: "bootstrap", seed: 5 })));
  it("where one leaves zero and the other does not, a caution names both", () => {
    // Strides that hold a few large ones: the bootstrap sees how they are spread, Student's t their standard deviation alone.
    let found: ReturnType<typeof compare> | undefined;
    for (let seed = 0; seed < 200 && found === undefined; seed++) {
      const random = seededRandom(seed);
      const skewed = (shift: number) =>
        Array.from({ length: 24 }, () => 16 + shift + Math.exp(1.5 * random.normal()));
      const one = compareTrials(
        trialOf({ ...typicalStrides(1, 24), brakingImpulse: skewed(0) }),
        trialOf({ ...typicalStrides(2, 24), brakingImpulse: skewed(1.5) }),
      );
      if (one.cautions.some(({ code }) => code === "intervals-disagree")) found = one;
    }
    const entry = found?.metrics.find(({ id }) => id === "brakingImpulse");
    const clear = ({ low, high }: { low: number; high: number } = { low: 0, high: 0 }) => low > 0 || high < 0;
    expect(clear(entry?.readingInterval)).not.toBe(clear(entry?.bootstrapInterval));
    expect(found?.cautions.find(({ code }) => code === "intervals-disagree")).toMatchObject({
      where: "brakingImpulse",
    });
    expect(found?.cautions.find(({ code }) => code === "intervals-disagree")?.message).toMatch(
      /^by Student's t and by the block bootstrap .* braking impulse \(/,
    );
  });
  it.each([
    [{ method: "welch" }, "out-of-range"],
    [{ resamples: 50 }, "out-of-range"],
    [{ seed: 0.5 }, "out-of-range"],
    [{ speedEffect: "taken" }, "out-of-range"],
    [{ margins: { brakingImpulse: { value: -1, unit: "N s", source: "x" } } }, "out-of-range"],
    [{ margins: 10 }, "wrong-type"],
    [{ speedEffects: { brakingImpulse: { value: 1, unit: "N", source: "x" } } }, "unit-mismatch"],
    [{ speedEffects: { brakingImpulse: { value: Number.NaN, unit: "N s", source: "x" } } }, "not-finite"],
    [{ speedEffects: { brakingImpulse: { value: 1, unit: "N s", source: "" } } }, "missing-value"],
  ])("refuses %o: %s", (options, code) =>
    expect(() => compare(options as object)).toThrow(expect.objectContaining({ code })),
  );
});

describe("margins", () => {
  const given = (value: number) => ({
    margins: { peakVerticalForce: { value, unit: "%", source: "agreed before the trials" } },
  });
  const vertical = (options: CompareTrialsOptions, factor = 1) =>
    compareTrials(baseline(80), changed({ peakVerticalForce: factor }, 80), options).metrics.find(
      ({ id }) => id === "peakVerticalForce",
    );
  it("default: 10 % of the baseline's mean, or what strides cannot show where that is more", () => {
    const found = vertical({});
    expect(found?.margin.value).toBeCloseTo(0.1 * (found?.baseline.mean ?? 0), 9);
    const sourced = { peakVerticalForce: { value: 15, unit: "%", source: "an own repeat session" } };
    const wider = vertical({ smallestDetectableChange: sourced });
    expect(wider?.margin).toEqual(wider?.smallestDetectableChange);
  });
  it("a given one is taken as it is, per kilometre and for work as the same share of the mean", () => {
    const found = vertical(given(4));
    expect(found?.margin).toEqual({
      value: 0.04 * (found?.baseline.mean ?? 0),
      source: "agreed before the trials",
    });
    expect((found?.perKilometre?.margin.value ?? 0) / (found?.perKilometre?.baseline.mean ?? 1)).toBeCloseTo(
      0.04,
      12,
    );
    const work = compareTrials(baseline(), changed(), {
      margins: { positiveExternalWork: { value: 3, unit: "%", source: "agreed before the trials" } },
    }).work.perMetre;
    expect((work?.margin.value ?? 0) / (work?.baseline.mean ?? 1)).toBeCloseTo(0.03, 12);
  });
  it("non-inferiority by hand: the end of the 99 % interval on the side of more load within the margin", () => {
    for (const [margin, factor] of [
      [4, 1],
      [1, 1.03],
      [0.2, 1],
      [4, 0.9],
    ] as const) {
      const found = vertical(given(margin), factor);
      expect(found?.noRiseBeyondMargin).toBe(
        (found?.readingInterval.high ?? 0) < (margin / 100) * (found?.baseline.mean ?? 0),
      );
    }
    expect(vertical(given(1), 1.03)?.noRiseBeyondMargin).toBe(false);
    expect(vertical(given(4), 0.9)?.noRiseBeyondMargin).toBe(true);
  });
  it("has no sense where neither direction is more load; where less is more, the low end counts", () => {
    const metric = metricById("peakVerticalForce");
    const as = (moreLoad: "lower" | "none", factor: number) =>
      vertical({ metrics: [{ ...metric, moreLoad }], ...given(5) }, factor)?.noRiseBeyondMargin;
    expect(as("none", 1)).toBeNull();
    expect(as("lower", 1.1)).toBe(true);
    expect(as("lower", 0.9)).toBe(false);
  });
  it("is said of an unsettled component where true, and makes no reading", () => {
    const options = {
      margins: { mediolateralImpulse: { value: 4, unit: "%", source: "agreed before the trials" } },
    };
    const { components, overall } = compareTrials(
      baseline(),
      changed({ mediolateralImpulse: 0.93 }),
      options,
    );
    expect(components[2]?.reading).toBe("unsettled");
    expect(overall.sentence).toContain("its load is shown not to be more than 4 % higher");
    expect(overall.reading).toBe("no clear change");
  });
});

describe("smallest detectable changes from elsewhere", () => {
  it("those of `reliability` go in as they are, also of metrics that are not compared", () => {
    const change = { value: 3, unit: "N s", source: "six own trials" };
    const { metrics } = compareTrials(baseline(), changed(), {
      metrics: CATALOGUE.filter(({ id }) => id === "brakingImpulse"),
      smallestDetectableChange: {
        brakingImpulse: change,
        contactTime: { value: 0.01, unit: "s", source: "six own trials" },
      },
    });
    expect(metrics[0]?.smallestDetectableChange).toEqual({ value: 3, source: "six own trials" });
  });
  it("published ones are used only where the caller names them, and print their source", () => {
    const table = Object.fromEntries(
      PUBLISHED_DETECTABLE_CHANGES.map(({ metric, value, unit, source }) => [
        metric,
        { value, unit, source },
      ]),
    );
    const [named, plain] = [{ smallestDetectableChange: table }, {}].map((options) =>
      compareTrials(baseline(), changed({ peakVerticalForce: 0.9 }), options),
    );
    expect(named?.components[0]?.reading).toBe("similar");
    expect(plain?.components[0]?.reading).toBe("lower");
    expect(
      named?.metrics.find(({ id }) => id === "peakVerticalForce")?.smallestDetectableChange.source,
    ).toContain("Test-retest reliability");
    // 1.96 √2 times a standard error of 10 %.
    expect(PUBLISHED_DETECTABLE_CHANGES[0]?.value).toBeCloseTo(1.96 * Math.SQRT2 * 10, 1);
  });
});
