import {
  type CompareRunnersOptions,
  compareRunners,
  type PairedRunner,
  type RunnersComparison,
} from "../../../src/compare/index.js";
import { CATALOGUE } from "../../../src/metrics/index.js";
import { mean, type SeededRandom } from "../../../src/statistics/index.js";
import type { Trial } from "../../../src/trial/index.js";
import { PRIMARY_IDS, type TrialParts, TYPICAL, trialOf } from "../trialOf.js";

export const metrics = CATALOGUE.filter(({ id }) => id in TYPICAL);
export const primaries = CATALOGUE.filter(({ id }) => (PRIMARY_IDS as readonly string[]).includes(id));

/** By how much runners differ in level, as a share of the mean. */
const LEVELS = {
  peakVerticalForce: 0.1,
  brakingImpulse: 0.18,
  mediolateralImpulse: 0.25,
  positiveExternalWork: 0.1,
};

/** How runners are drawn. */
export interface Drawn {
  readonly runners?: number;
  readonly trials?: number;
  readonly strides?: number;
  /** Standard deviation of the change between runners, and of trials, in those of strides. */
  readonly change?: number;
  readonly trialSpread?: number;
  readonly factors?: Readonly<Record<string, number>>;
  readonly parts?: (runner: number, condition: "baseline" | "changed") => TrialParts;
}

/** Draws runners with trials under both conditions. */
export function drawnBy(random: SeededRandom): (of?: Drawn) => DrawnRunner[] {
  return (of = {}) => drawn(random, of);
}

type DrawnRunner = PairedRunner & { baseline: Trial[]; changed: Trial[] };

function drawn(random: SeededRandom, of: Drawn): DrawnRunner[] {
  const {
    runners = 8,
    trials = 1,
    strides = 30,
    change = 0.5,
    trialSpread = 0,
    factors = {},
    parts = () => ({}),
  } = of;
  return Array.from({ length: runners }, (_, k) => {
    const own = Object.fromEntries(
      Object.keys(TYPICAL).map((id) => [id, { level: random.normal(), change: change * random.normal() }]),
    );
    const trial = (condition: "baseline" | "changed") =>
      trialOf(
        Object.fromEntries(
          Object.entries(TYPICAL).map(([id, [centre, sd]]) => {
            const { level = 0, change: moved = 0 } = own[id] ?? {};
            const factor = condition === "changed" ? (factors[id] ?? 1) : 1;
            const at =
              centre * (1 + LEVELS[id as keyof typeof LEVELS] * level) * factor +
              sd * (trialSpread * random.normal() + (condition === "changed" ? moved : 0));
            return [id, Array.from({ length: strides }, () => at + sd * random.normal())];
          }),
        ),
        parts(k, condition),
      );
    return {
      runner: `runner ${k + 1}`,
      baseline: Array.from({ length: trials }, () => trial("baseline")),
      changed: Array.from({ length: trials }, () => trial("changed")),
    };
  });
}

export const compare = (runners: readonly PairedRunner[], options: CompareRunnersOptions = {}) =>
  compareRunners(runners, { metrics, ...options });
export const groups = (runners: readonly DrawnRunner[], options: CompareRunnersOptions = {}) => {
  const half = runners.length / 2;
  return compareRunners(
    {
      baseline: runners.slice(0, half).map(({ runner, baseline }) => ({ runner, trials: baseline })),
      changed: runners.slice(half).map(({ runner, changed }) => ({ runner, trials: changed })),
    },
    { metrics, ...options },
  );
};
export const found = ({ metrics: all }: RunnersComparison, id = "peakVerticalForce") => {
  const metric = all.find((one) => one.id === id);
  if (metric === undefined) throw new Error(`no ${id}`);
  return metric;
};
export const LESS = { peakVerticalForce: 0.93 };
/** Means of the strides of trialOf, over trials, in body weights. */
export const bodyWeights = (trials: readonly Trial[], mass = 70) =>
  mean(trials.map(({ steps }) => mean(steps.map(({ values }) => values.peakVerticalForce ?? 0)))) /
  (mass * 9.80665);
