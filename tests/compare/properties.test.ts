import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Comparison, compareTrials, type MetricComparison } from "../../src/compare/index.js";
import { CATALOGUE } from "../../src/metrics/index.js";
import { type Strides, TYPICAL, trialOf, typicalStrides } from "./trialOf.js";

const metrics = CATALOGUE.filter(({ id }) => id in TYPICAL);
const settings = { metrics, resamples: 400 };

/** Two trials of 20 to 50 strides with changes of up to 15 % either way and a correlation of up to `most`. */
const trialsUpTo = (most: number) =>
  fc
    .record({
      seeds: fc.tuple(fc.nat(4294967295), fc.nat(4294967295)),
      counts: fc.tuple(fc.integer({ min: 20, max: 50 }), fc.integer({ min: 20, max: 50 })),
      factors: fc.tuple(...Object.keys(TYPICAL).map(() => fc.double({ min: 0.85, max: 1.15, noNaN: true }))),
      r: fc.double({ min: 0, max: most, noNaN: true }),
    })
    .map(({ seeds, counts, factors, r }) => ({
      baseline: typicalStrides(seeds[0], counts[0], {}, r),
      changed: typicalStrides(
        seeds[1],
        counts[1],
        Object.fromEntries(Object.keys(TYPICAL).map((id, i) => [id, factors[i] ?? 1])),
        r,
      ),
    }));
const trials = trialsUpTo(0.6);

const pooledDeviation = ({ baseline: one, changed: other }: MetricComparison) =>
  Math.sqrt(
    ((one.n - 1) * (one.sd ?? 0) ** 2 + (other.n - 1) * (other.sd ?? 0) ** 2) / (one.n + other.n - 2),
  );
const MIRRORED: Readonly<Record<string, string>> = { lower: "higher", higher: "lower" };
const compare = (baseline: Strides, changed: Strides) =>
  compareTrials(trialOf(baseline), trialOf(changed), settings);
const componentReadings = ({ components }: Comparison) =>
  components.flatMap(({ reading, perKilometre }) => [reading, perKilometre]);
const times = (strides: Strides, factor: number) =>
  Object.fromEntries(
    Object.entries(strides).map(([id, values]) => [id, values.map((value) => factor * value)]),
  );

it("swapping the trials mirrors: lower and higher, differences, intervals, effect sizes, more and less work", () =>
  fc.assert(
    fc.property(trials, ({ baseline, changed }) => {
      const there = compare(baseline, changed);
      const back = compare(changed, baseline);
      componentReadings(there).forEach((reading, k) => {
        const other = componentReadings(back)[k];
        // `similar` alone is measured against the baseline's mean, which another baseline moves.
        if (reading === "lower" || reading === "higher") expect(other).toBe(MIRRORED[reading]);
        else if (reading === null) expect(other).toBeNull();
        else expect(["similar", "unsettled"]).toContain(other);
      });
      expect(back.overall.lower).toEqual(there.overall.higher);
      expect(back.overall.higher).toEqual(there.overall.lower);
      expect(back.overall.reading === "shifted").toBe(there.overall.reading === "shifted");
      expect(back.work.reading === "more work").toBe(there.work.reading === "less work");
      there.metrics.forEach((metric, k) => {
        const other = back.metrics[k];
        const scale = Math.abs(metric.baseline.mean);
        expect(Math.abs(metric.difference + (other?.difference ?? 0)) / scale).toBeLessThan(1e-12);
        expect(
          Math.abs(metric.readingInterval.low + (other?.readingInterval.high ?? 0)) / scale,
        ).toBeLessThan(1e-12);
        expect(Math.abs(metric.interval.low + (other?.interval.high ?? 0)) / scale).toBeLessThan(1e-12);
        expect((metric.effectSize ?? 0) + (other?.effectSize ?? 0)).toBeCloseTo(0, 9);
        const smallest = metric.smallestDetectableChange.value;
        expect((other?.smallestDetectableChange.value ?? 0) / smallest).toBeCloseTo(1, 9);
        expect(other?.drift?.baseline).toEqual(metric.drift?.changed);
        expect(other?.drift?.changed).toEqual(metric.drift?.baseline);
        // Other blocks are drawn, so that the bootstrap's interval mirrors to a share of its width.
        const [there1, back1] = [metric.bootstrapInterval, other?.bootstrapInterval];
        if (there1 === undefined || back1 === undefined) throw new Error("no bootstrap interval");
        expect(there1.low).toBeLessThan(there1.high);
        expect(back1.low).toBeLessThanOrEqual(-metric.difference);
        expect(back1.high).toBeGreaterThanOrEqual(-metric.difference);
      });
    }),
    { numRuns: 150 },
  ));

it("scaling every load of both trials by a constant changes no reading and no share", () =>
  fc.assert(
    fc.property(trials, fc.double({ min: -6, max: 6, noNaN: true }), ({ baseline, changed }, power) => {
      const one = compare(baseline, changed);
      const other = compare(times(baseline, 10 ** power), times(changed, 10 ** power));
      expect(componentReadings(other)).toEqual(componentReadings(one));
      expect(other.overall.reading).toBe(one.overall.reading);
      expect(other.overall.toSettle).toEqual(one.overall.toSettle);
      expect(other.work.reading).toBe(one.work.reading);
      one.metrics.forEach(({ percent, effectSize, noRiseBeyondMargin, drift, bootstrapInterval }, k) => {
        const scaled = other.metrics[k];
        expect(scaled?.noRiseBeyondMargin).toBe(noRiseBeyondMargin);
        expect(scaled?.drift?.baseline.counts).toBe(drift?.baseline.counts);
        expect(scaled?.drift?.changed.counts).toBe(drift?.changed.counts);
        expect(
          (scaled?.bootstrapInterval?.low ?? 0) / 10 ** power / (bootstrapInterval?.low ?? 1),
        ).toBeCloseTo(1, 6);
        expect(other.metrics[k]?.percent).toBeCloseTo(percent ?? Number.NaN, 6);
        expect(other.metrics[k]?.effectSize).toBeCloseTo(effectSize ?? Number.NaN, 6);
      });
    }),
    { numRuns: 150 },
  ));

it("the same strides twice over narrow every interval and move no mean (of strides without correlation: the seam adds some)", () =>
  fc.assert(
    fc.property(trialsUpTo(0), ({ baseline, changed }) => {
      const twice = (strides: Strides) =>
        Object.fromEntries(Object.entries(strides).map(([id, values]) => [id, [...values, ...values]]));
      const one = compare(baseline, changed);
      const other = compare(twice(baseline), twice(changed));
      one.metrics.forEach((metric, k) => {
        const more = other.metrics[k];
        if (more === undefined) throw new Error("a metric was lost");
        expect(Math.abs(more.difference - metric.difference)).toBeLessThan(
          1e-9 * Math.abs(metric.baseline.mean),
        );
        const width = ({ low, high }: { low: number; high: number }) => high - low;
        expect(width(more.interval)).toBeLessThan(width(metric.interval));
        expect(width(more.readingInterval)).toBeLessThan(width(metric.readingInterval));
      });
    }),
    { numRuns: 150 },
  ));

it("a reading keeps its rule: the 99 % interval's side, the smallest change, the margin", () =>
  fc.assert(
    fc.property(trials, ({ baseline, changed }) => {
      const { components, metrics: compared } = compare(baseline, changed);
      for (const { reading, metric, sentence } of components) {
        const found = compared.find(({ id }) => id === metric);
        if (found === undefined || sentence.includes("too few strides")) continue;
        const { low, high } = found.readingInterval;
        const smallest = found.smallestDetectableChange.value;
        const margin = found.margin.value;
        const floor = 0.8 * pooledDeviation(found);
        expect(margin / Math.max(floor, 0.1 * found.baseline.mean)).toBeCloseTo(1, 9);
        expect(smallest).toBeGreaterThanOrEqual(floor * (1 - 1e-12));
        expect(found.noRiseBeyondMargin).toBe(high < margin);
        if (reading === "lower") expect(high < 0 && -found.difference > smallest).toBe(true);
        if (reading === "higher") expect(low > 0 && found.difference > smallest).toBe(true);
        if (reading === "similar") expect(low > -margin && high < margin).toBe(true);
        if (reading === "unsettled") expect(low > -margin && high < margin).toBe(false);
      }
    }),
    { numRuns: 150 },
  ));

it("the arguments are left as they were", () => {
  const one = trialOf(typicalStrides(1, 30));
  const other = trialOf(typicalStrides(2, 30, { peakVerticalForce: 0.9 }));
  const before = JSON.stringify([one, other]);
  compareTrials(one, other);
  expect(JSON.stringify([one, other])).toBe(before);
});

describe("how many more strides, tried by repeating the strides as a whole: difference, spread and correlation stay", () => {
  const repeated = (strides: Strides, repeats: number) =>
    Object.fromEntries(
      Object.entries(strides).map(([id, values]) => [
        id,
        Array.from({ length: repeats }, () => values).flat(),
      ]),
    );
  const n = 20;
  /** Of pairs with advice, the share that is settled with `repeatsFor(advice)` repeats of the strides. */
  function shareSettled(repeatsFor: (more: number) => number): { advised: number; share: number } {
    let advised = 0;
    let settled = 0;
    for (let seed = 0; seed < 300; seed++) {
      const baseline = typicalStrides(2 * seed, n);
      const changed = typicalStrides(2 * seed + 1, n, { mediolateralImpulse: 1.05 });
      const advice = (compare(baseline, changed).overall.toSettle ?? []).flatMap(
        (text) =>
          /^about (\d+) or more further strides in each recording for the mediolateral force,/.exec(
            text,
          )?.[1] ?? [],
      );
      const repeats = repeatsFor(Number(advice[0]));
      if (!(repeats >= 2)) continue;
      advised++;
      const after = compare(repeated(baseline, repeats), repeated(changed, repeats)).components[2]?.reading;
      if (after !== "unsettled") settled++;
    }
    return { advised, share: settled / advised };
  }
  it("that many settle the component", () => {
    const { advised, share } = shareSettled((more) => Math.ceil(1 + more / n));
    expect(advised).toBeGreaterThan(100);
    expect(share).toBeGreaterThan(0.95);
  });
  it("half as many do not", () => {
    const { advised, share } = shareSettled((more) => Math.floor(1 + more / 2 / n));
    expect(advised).toBeGreaterThan(30);
    expect(share).toBeLessThan(0.1);
  });
});
