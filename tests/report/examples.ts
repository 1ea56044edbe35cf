import type { Alternative, Comparison, CurveComparison, MetricComparison } from "../../src/compare/index.js";
import type { Interval } from "../../src/statistics/index.js";
import type { Curve, MetricSummary, Spread, Trial } from "../../src/trial/index.js";

/** A spread of strides with round numbers. */
export function spread(mean: number, sd: number | null, n: number = 36): Spread {
  return {
    n,
    mean,
    sd,
    interval: sd === null ? null : { low: mean - sd / 3, high: mean + sd / 3, level: 0.95 },
  };
}

/** A summary with sides one per cent apart. */
export function summary(mean: number, sd: number | null, unit: string, normalised?: string): MetricSummary {
  return {
    ...spread(mean, sd),
    unit,
    ...(normalised !== undefined && {
      normalised: { ...spread(mean / 784.532, sd === null ? null : sd / 784.532), unit: normalised },
    }),
    left: spread(mean * 0.99, sd),
    right: spread(mean * 1.01, sd),
  };
}

/** A curve of 101 points: `peak` times a shape, the spread a twentieth of the peak. */
export function curve(shape: (part: number) => number, peak: number, n: number = 37): Curve {
  const parts = Array.from({ length: 101 }, (_, i) => i / 100);
  return { n, mean: parts.map((part) => peak * shape(part)), sd: parts.map(() => Math.abs(peak) / 20) };
}

const hump = (part: number): number => Math.sin(Math.PI * part);
const wave = (part: number): number => -Math.sin(2 * Math.PI * part);

/** A trial made by hand: numbers of the order of running at 2.5 m/s, 80 kg. */
export function exampleTrial(changes: Partial<Trial> = {}): Trial {
  const scale = 1;
  return {
    schema: "gait-kinetics/trial/1",
    settings: {
      version: "0.1.0",
      sampleRate: 300,
      duration: 30,
      mass: 80,
      massStated: true,
      massByForce: 77.1,
      gravity: 9.80665,
      speed: 2.5,
      surface: "belt",
      grade: 0,
      filter: { cutoff: 50, order: 4 },
      landing: {
        method: "force",
        footLevel: 250,
        toe: "curve",
        balance: 0,
        margin: { touchdown: 0.0204, takeOff: 0.0404 },
      },
      footwear: null,
      airDrag: null,
      gait: "running",
      gaitStated: false,
      events: {
        threshold: 20,
        thresholdRule: "default",
        thresholdShare: null,
        noiseFactor: null,
        fallLevel: 10,
        cutoff: null,
        shortestContact: 0.08,
        shortestFlight: 0.03,
        sides: "centre of pressure",
      },
      force: { offset: { forward: 0.12, up: 1.14, right: -0.2 }, driftRemoved: false, flights: 76 },
      level: 0.95,
      interval: "Student's t with the effective number of strides",
    },
    subject: { mass: 80, height: 1.83 },
    contacts: Array.from({ length: 74 }, (_, i) => ({
      side: i % 2 ? "left" : "right",
      initialContact: 0.24 + 0.4 * i,
      toeOff: 0.55 + 0.4 * i,
      threshold: 20,
    })),
    partialContacts: [{ side: "left", initialContact: 0, toeOff: 0.1, threshold: 20 }],
    steps: [],
    summary: {
      strides: 36,
      impactPeakShare: 0.5,
      metrics: {
        contactTime: summary(0.3141, 0.0061, "s"),
        cadence: summary(150.1, 1.2, "steps/min"),
        dutyFactor: summary(0.393, 0.0065, "1"),
        peakVerticalForce: summary(1658.4, 31.7, "N", "BW"),
        instantaneousLoadingRate: summary(45_678, 3_456, "N/s", "BW/s"),
        brakingImpulse: summary(16.28, 0.94, "N s", "BW s"),
        netForwardImpulse: summary(0.17, 1.21, "N s", "BW s"),
        mediolateralImpulse: summary(7.03, 0.81, "N s", "BW s"),
        positiveExternalWork: summary(95.2 * scale, 4.4, "J", "J/kg/m"),
      },
    },
    curves: {
      percent: Array.from({ length: 101 }, (_, i) => i),
      up: { left: curve(hump, 1650), right: curve(hump, 1670) },
      forward: { left: curve(wave, 180), right: curve(wave, 170) },
      right: { left: curve(hump, 70), right: curve(hump, -75) },
    },
    notComputed: [
      { id: "stepLength", code: "missing-speed", message: "the speed is not stated" },
      { id: "strideLength", code: "missing-speed", message: "the speed is not stated" },
    ],
    cautions: [
      {
        code: "low-sample-rate",
        message: "the sampling rate of 300 Hz is below 1000 Hz",
        where: "averageLoadingRate",
      },
    ],
    ...changes,
  };
}

/** A difference with an interval of a given half width. */
export function compared(
  id: string,
  unit: string,
  before: number,
  after: number,
  half: number,
): MetricComparison {
  const difference = after - before;
  const around = (width: number, level: number): Interval => ({
    low: difference - width,
    high: difference + width,
    level,
  });
  const part = {
    baseline: spread(before, 2 * half),
    changed: spread(after, 2 * half),
    difference,
    percent: before === 0 ? null : (100 * difference) / before,
    interval: around(half, 0.95),
    readingInterval: around(1.3 * half, 0.99),
    smallestDetectableChange: { value: half, source: "0.8 of the pooled standard deviation between strides" },
    margin: { value: 0.1 * Math.abs(before), source: "10 % of the baseline's mean" },
    noRiseBeyondMargin: difference + 1.3 * half < 0.1 * Math.abs(before),
  };
  return {
    ...part,
    id,
    unit,
    effectSize: difference / half / 2,
    normalised: {
      unit: "BW",
      difference: difference / 686,
      interval: { low: (difference - half) / 686, high: (difference + half) / 686, level: 0.95 },
    },
    perKilometre: part,
  };
}

/** A comparison made by hand that reads `shifted`. */
export function exampleComparison(changes: Partial<Comparison> = {}): Comparison {
  return {
    schema: "gait-kinetics/comparison/1",
    settings: {
      version: "0.1.0",
      design: {
        kind: "one trial each",
        baselineTrials: 1,
        changedTrials: 1,
        variation: "the strides of each recording alone",
      },
      method: "student",
      bootstrap: { resamples: 2000, seed: 1 },
      shownLevel: 0.95,
      readingLevel: 0.99,
      interval: "Student's t with the effective number of strides",
      readingCorrelation: { correctBias: true, shared: true },
      leastShareOfContacts: 0.9,
      minimumStrides: 20,
      minimumStridesCorrelated: 40,
      correlatedAbove: 0.5,
      smallestDetectableShare: 0.8,
      slowDriftShare: 0.1,
      thirdsLevel: 0.99,
      similarMargin: 0.1,
      speedTolerance: 0.02,
      speedEffect: "kept",
      massRatioTolerance: 0.01,
      leastMeanForPercent: 3,
      threshold: 20,
      filter: { cutoff: 50, order: 4 },
    },
    baseline: { strides: 60, effectiveStrides: 41.7, speed: 3, mass: 70, massByForce: 70.1, threshold: 20 },
    changed: { strides: 58, effectiveStrides: 44.2, speed: 3, mass: 70, massByForce: 69.9, threshold: 20 },
    metrics: [
      compared("peakVerticalForce", "N", 1710, 1603, 11),
      compared("brakingImpulse", "N s", 16.3, 19.1, 0.6),
      compared("mediolateralImpulse", "N s", 7.03, 8.12, 0.5),
      compared("instantaneousLoadingRate", "N/s", 45_678, 51_234, 12_345),
      compared("netForwardImpulse", "N s", 0, 0.2, 0.4),
      compared("contactTime", "s", 0.2512, 0.2633, 0.003),
      compared("positiveExternalWork", "J", 95, 104, 2),
    ],
    components: [
      {
        component: "vertical",
        metric: "peakVerticalForce",
        moreLoad: "higher",
        reading: "lower",
        perKilometre: "lower",
        missing: null,
        sentence: "Vertical: the peak vertical force is lower by 6.3 %.",
      },
      {
        component: "anteroposterior",
        metric: "brakingImpulse",
        moreLoad: "higher",
        reading: "higher",
        perKilometre: "higher",
        missing: null,
        sentence: "Anteroposterior: the braking impulse is higher by 17.2 %.",
      },
      {
        component: "mediolateral",
        metric: "mediolateralImpulse",
        moreLoad: "higher",
        reading: "higher",
        perKilometre: "unsettled",
        missing: null,
        sentence: "Mediolateral: the mediolateral impulse is higher by 15.5 %.",
      },
    ],
    notCompared: [{ id: "impactPeak", code: "few-values", message: "too few contacts have a value" }],
    overall: {
      reading: "shifted",
      sentence:
        "The load shifted: the vertical force went down, the braking and the mediolateral force went up.",
      lower: ["vertical"],
      higher: ["anteroposterior", "mediolateral"],
      unsettled: [],
      perKilometre: { lower: ["vertical"], higher: ["anteroposterior"], unsettled: ["mediolateral"] },
    },
    work: {
      reading: "more work",
      sentence:
        "More work: positive external work per metre is higher; mechanical work is not oxygen uptake.",
    },
    alternatives: [],
    cautions: [{ code: "two-recordings", message: "only these two recordings were compared" }],
    ...changes,
  };
}

/** Something to try, with a load, a cost and no motion. */
export function exampleAlternative(): Alternative {
  return {
    id: "cadence",
    name: "a higher cadence at the same speed, about 5 % (168 to 176 steps/min)",
    sentence: "To try and to measure again: more steps a minute at the same speed.",
    effects: [
      {
        metric: null,
        quantity: "hip flexor moment",
        kind: "cost",
        direction: "higher",
        finding: "+5.8 % of itself (14 runners)",
        source: "another 2015",
      },
      {
        metric: "brakingImpulse",
        quantity: "braking impulse",
        kind: "load",
        direction: "lower",
        finding: "lower (45 runners)",
        source: "A study 2011",
        estimate: { unit: "N s", from: 16.3, low: 14.3, high: 15.1 },
      },
    ],
    sources: ["A study 2011", "another 2015"],
  };
}

/** Whole curves of the left foot's vertical force with one cluster. */
export function exampleCurves(changes: Partial<CurveComparison> = {}): CurveComparison {
  const percent = Array.from({ length: 101 }, (_, i) => i);
  const baseline = percent.map((at) => 2.1 * hump(at / 100));
  const changed = percent.map((at) => 1.98 * hump(at / 100));
  return {
    schema: "gait-kinetics/curves/1",
    component: "vertical",
    side: "left",
    unit: "BW",
    test: "two-sample",
    of: "contacts",
    curves: { baseline: 30, changed: 28 },
    degreesOfFreedom: 56,
    fullWidthAtHalfMaximum: 18,
    level: 0.99,
    percent,
    baseline,
    changed,
    difference: percent.map((_, i) => (changed[i] ?? 0) - (baseline[i] ?? 0)),
    statistic: percent.map((at) => -9.1 * hump(at / 100)),
    threshold: 3.4,
    thresholdRule: "random field",
    permutationThreshold: 3.5,
    clusters: [
      {
        from: 40.2,
        to: 61.7,
        fromTime: 0.1005,
        toTime: 0.1543,
        peak: -9.1,
        peakAt: 50,
        difference: -0.12,
        p: 0.0002,
      },
    ],
    cautions: [],
    ...changes,
  };
}
