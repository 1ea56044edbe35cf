import { type SeededRandom, seededRandom } from "../../src/statistics/index.js";
import type { StepRow, Trial } from "../../src/trial/index.js";

/** Stride values by metric id. */
export type Strides = Readonly<Record<string, readonly number[]>>;

/** What {@link trialOf} puts into a trial beside the strides. */
export interface TrialParts {
  readonly speed?: number | null;
  readonly mass?: number | null;
  readonly massStated?: boolean;
  readonly massByForce?: number | null;
  readonly settings?: Partial<Trial["settings"]>;
  readonly cautions?: Trial["cautions"];
}

/**
 * Makes a trial from stride values: two contacts a stride, left and right apart by 6 % of the value, so that only the mean
 * of both gives the stride's value. Nothing in it comes from force. A component is recorded where its primary metric is among
 * the strides.
 */
export function trialOf(strides: Strides, parts: TrialParts = {}): Trial {
  const { speed = 3, mass = 70, massStated = true, massByForce = 70, settings = {}, cautions = [] } = parts;
  const count = Math.max(...Object.values(strides).map((values) => values.length));
  const steps = Array.from({ length: 2 * count }, (_, k): StepRow => {
    const left = k % 2 === 0;
    const values = Object.entries({ stepTime: Array.from({ length: count }, () => 0.36), ...strides }).map(
      ([id, of]) => {
        const value = of[Math.floor(k / 2)];
        const factor = id === "stepTime" ? 1 : left ? 0.97 : 1.03;
        return [id, value === undefined ? null : factor * value] as const;
      },
    );
    return {
      side: left ? "left" : "right",
      initialContact: 0.36 * k,
      toeOff: 0.36 * k + 0.25,
      values: Object.fromEntries(values),
    };
  });
  return {
    schema: "gait-kinetics/trial/1",
    settings: {
      version: "0.1.0",
      sampleRate: 1000,
      duration: 0.72 * count,
      mass,
      massStated,
      massByForce,
      gravity: 9.80665,
      speed,
      surface: "belt",
      footwear: null,
      grade: 0,
      filter: { cutoff: 50, order: 4 },
      landing: null,
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
        sides: "alternation",
      },
      force: { offset: {}, driftRemoved: false, flights: 2 * count },
      level: 0.95,
      interval: "Student's t with the effective number of strides",
      ...settings,
    },
    subject: mass === null ? {} : { mass },
    contacts: steps.map(({ side, initialContact, toeOff }) => ({
      side,
      initialContact,
      toeOff,
      threshold: 20,
    })),
    partialContacts: [],
    steps,
    summary: { strides: count, impactPeakShare: 0, metrics: {} },
    curves: {
      percent: [],
      up: {},
      ...("brakingImpulse" in strides && { forward: {} }),
      ...("mediolateralImpulse" in strides && { right: {} }),
    },
    notComputed: [],
    cautions,
  };
}

/** The metrics that speak for the three components. */
export const PRIMARY_IDS = ["peakVerticalForce", "brakingImpulse", "mediolateralImpulse"] as const;

/** Typical means and standard deviations between strides. */
export const TYPICAL: Readonly<Record<string, readonly [mean: number, sd: number]>> = {
  peakVerticalForce: [1650, 40],
  brakingImpulse: [16, 0.9],
  mediolateralImpulse: [6, 0.6],
  positiveExternalWork: [95, 3],
};

/** A first-order autoregression with standard deviation 1. */
function correlated(random: SeededRandom, n: number, r: number): number[] {
  let x = random.normal();
  return Array.from({ length: n }, () => {
    const here = x;
    x = r * x + Math.sqrt(1 - r * r) * random.normal();
    return here;
  });
}

/** Typical strides; each id in `factors` has its mean multiplied. */
export function typicalStrides(
  seed: number | SeededRandom,
  n: number,
  factors: Readonly<Record<string, number>> = {},
  r = 0,
): Record<string, number[]> {
  const random = typeof seed === "number" ? seededRandom(seed) : seed;
  return Object.fromEntries(
    Object.entries(TYPICAL).map(([id, [mean, sd]]) => [
      id,
      correlated(random, n, r).map((x) => mean * (factors[id] ?? 1) + sd * x),
    ]),
  );
}

/** Step times that are all the same. */
export function stepTimes(n: number, value: number): Strides {
  return { stepTime: Array.from({ length: n }, () => value) };
}

/** A first recording. */
export function baseline(n = 40, parts: TrialParts = {}): Trial {
  return trialOf(typicalStrides(1, n), parts);
}

/** A second recording, with the means of some metrics multiplied and some replaced. */
export function changed(
  factors: Readonly<Record<string, number>> = {},
  n = 40,
  parts: TrialParts = {},
  more: Strides = {},
): Trial {
  return trialOf({ ...typicalStrides(2, n, factors), ...more }, parts);
}
