import type {
  CurveComparison,
  RunnersComparison,
  RunnersMetric,
  SessionMetric,
  SessionSeries,
} from "../../../src/compare/index.js";

/** Whole curves set against each other by hand: t rises in a straight line from −5 at 0 % to 5 at 100 % of stance. */
export function exampleCurves(changes: Partial<CurveComparison> = {}): CurveComparison {
  const percent = Array.from({ length: 101 }, (_, i) => i);
  return {
    schema: "gait-kinetics/curves/1",
    component: "vertical",
    side: "left",
    unit: "BW",
    test: "two-sample",
    of: "contacts",
    curves: { baseline: 40, changed: 41 },
    degreesOfFreedom: 79,
    fullWidthAtHalfMaximum: 12,
    level: 0.05,
    percent,
    baseline: percent.map(() => 1),
    changed: percent.map((at) => 1 + (at - 50) / 100),
    difference: percent.map((at) => (at - 50) / 100),
    statistic: percent.map((at) => (at - 50) / 10),
    threshold: 3,
    thresholdRule: "random field",
    permutationThreshold: 3.5,
    clusters: [
      { from: 0, to: 15, fromTime: 0, toTime: 0.0375, peak: -5, peakAt: 0, difference: -0.425, p: 0.0004 },
      {
        from: 85,
        to: 100,
        fromTime: 0.2125,
        toTime: 0.25,
        peak: 5,
        peakAt: 100,
        difference: 0.425,
        p: 0.012,
      },
    ],
    cautions: [],
    ...changes,
  };
}

/** Runners whose differences are 0, 1, 2, …, each ± 0.5; the first without an interval. */
export function exampleRunners(
  names: readonly string[],
  changes: Partial<RunnersMetric> = {},
): RunnersComparison {
  const n = names.length;
  const metric: RunnersMetric = {
    id: "brakingImpulse",
    unit: "N s",
    baseline: { runners: n, mean: 16, sd: 2 },
    changed: { runners: n, mean: 17, sd: 2 },
    difference: 1.25,
    percent: 7.8,
    interval: { low: 0.5, high: 2, level: 0.95 },
    readingInterval: { low: 0.25, high: 2.25, level: 0.99 },
    degreesOfFreedom: n - 1,
    betweenRunners: 1,
    betweenTrials: null,
    effectSize: 0.6,
    margin: { value: 1.6, source: "10 % of the baseline's mean" },
    noRiseBeyondMargin: false,
    runners: names.map((runner, i) => ({
      runner,
      difference: i,
      interval: i === 0 ? null : { low: i - 0.5, high: i + 0.5, level: 0.95 },
    })),
    ...changes,
  };
  return {
    schema: "gait-kinetics/runners/1",
    settings: {
      version: "0.1.0",
      design: "paired",
      shownLevel: 0.95,
      readingLevel: 0.99,
      similarMargin: 0.1,
      minimumRunners: 6,
      interval: "Student's t over runners",
      speedTolerance: 0.02,
      filter: { cutoff: 50, order: 4 },
    },
    runners: { baseline: n, changed: n },
    metrics: [metric],
    notCompared: [],
    components: [],
    overall: { reading: "unsettled", sentence: "Unsettled.", lower: [], higher: [], unsettled: [] },
    cautions: [],
  };
}

/** Sessions whose means are given, held from the fourth on against a baseline of 100 ± 10. */
export function exampleSessions(
  sessions: readonly { readonly name: string; readonly mean: number }[],
): SessionSeries {
  const metric: SessionMetric = {
    id: "peakVerticalForce",
    unit: "N",
    moreLoad: "higher",
    sessions: sessions.map(({ name, mean }, i) => {
      const difference = mean - 100;
      return {
        name,
        session: { n: 40, mean, sd: 5, interval: { low: mean - 2, high: mean + 2, level: 0.95 } },
        against:
          i < 3
            ? null
            : {
                baseline: 100,
                sessions: 3,
                difference,
                interval: { low: difference - 3, high: difference + 3, level: 0.95 },
                smallestDetectableChange: { value: 10, source: "reliability of these sessions" },
                place: difference > 10 ? "above" : difference < -10 ? "below" : "within",
              },
      };
    }),
  };
  return {
    schema: "gait-kinetics/sessions/1",
    settings: {
      version: "0.1.0",
      level: 0.95,
      baseline: "first",
      baselineSessions: 3,
      interval: "Student's t over strides",
      speedTolerance: 0.02,
      filter: { cutoff: 50, order: 4 },
    },
    metrics: [metric],
    notCompared: [],
    sentences: [],
    cautions: [],
  };
}
