import type { Comparison, MetricComparison } from "../../src/compare/index.js";
import type { Spread, Trial } from "../../src/trial/index.js";
import { COMPARISONS, TRIALS } from "./documents.js";

const spread = (n: number, mean: number): Spread => ({
  n,
  mean,
  sd: n > 1 ? mean / 8 : null,
  interval: n > 1 ? { low: 0.9 * mean, high: 1.1 * mean, level: 0.95 } : null,
});

/** A trial with invented numbers: large, small, absent, and a metric whose name a table program would run. */
export const TIDY_TRIAL: Trial = {
  ...TRIALS.whole,
  steps: [
    {
      side: "left",
      initialContact: 0.25,
      toeOff: 0.5,
      values: { contactTime: 0.25, averageLoadingRate: 1234567.25, "=own": -1 },
    },
    {
      side: "right",
      initialContact: 0.625,
      toeOff: 0.875,
      values: { contactTime: 1 / 3, averageLoadingRate: null, "=own": 1e-9 },
    },
    {
      side: "unknown",
      initialContact: 1,
      toeOff: 1.25,
      values: { contactTime: 0.25, averageLoadingRate: 70000, "=own": null },
    },
  ],
  summary: {
    ...TRIALS.whole.summary,
    metrics: {
      contactTime: { unit: "s", ...spread(2, 0.25), left: spread(1, 0.25), right: spread(2, 1 / 3) },
      averageLoadingRate: {
        unit: "N/s",
        ...spread(2, 1234567.25),
        normalised: { unit: "BW/s", ...spread(2, 80) },
      },
    },
  },
};

const values = (mean: number): Omit<MetricComparison, "id" | "unit" | "effectSize"> => ({
  baseline: spread(40, mean),
  changed: spread(39, 0.9 * mean),
  difference: -0.1 * mean,
  percent: mean === 0 ? null : -10,
  interval: { low: -0.15 * mean, high: -0.05 * mean, level: 0.95 },
  readingInterval: { low: -0.2 * mean, high: -0.01 * mean, level: 0.99 },
  smallestDetectableChange: { value: 0.02 * mean, source: 'own table, "day to day"; =SUM(A1)' },
  margin: { value: 0.1 * mean, source: "10 % of the baseline's mean, a judgement" },
  noRiseBeyondMargin: true,
});

/** A comparison with invented numbers, sources with commas and quotes, and one with a line end that begins a formula. */
export const TIDY_COMPARISON: Comparison = {
  ...COMPARISONS.whole,
  metrics: [
    {
      id: "peakVerticalForce",
      unit: "N",
      ...values(1700.5),
      effectSize: -1.25,
      normalised: { unit: "BW", difference: -0.25, interval: { low: -0.3, high: -0.2, level: 0.95 } },
      perKilometre: values(2_000_000),
    },
    {
      id: "contactTime",
      unit: "s",
      ...values(0.25),
      effectSize: null,
      smallestDetectableChange: { value: 0.005, source: "=1+1\nin two lines" },
    },
  ],
  components: COMPARISONS.whole.components.filter(({ metric }) => metric === "peakVerticalForce"),
  work: { reading: "unsettled", sentence: "" },
};
