import { detectEvents, type Step, stepsOf } from "../../../src/events/index.js";
import { type GroundReaction, lowPassGroundReaction, toGroundReaction } from "../../../src/force/index.js";
import type { SyntheticRunOptions, TrueContact } from "../../../src/synthetic/index.js";
import { syntheticRun } from "../../../src/synthetic/index.js";

/** A run whose speed is stated. */
export type PacedRun = SyntheticRunOptions & { readonly speed: number };

/** How a runner's contacts change from 8 to 18 km/h: shorter, harder, closer together. Within common practice. */
export function runAt(kilometresPerHour: number): PacedRun {
  const share = (kilometresPerHour - 8) / 10;
  return {
    speed: kilometresPerHour / 3.6,
    stance: {
      stepTime: 0.365 - 0.035 * share,
      contactTime: 0.3 - 0.1 * share,
      brakingAmplitude: 0.2 + 0.2 * share,
      impactAmplitude: 0.8 + 0.6 * share,
    },
    variability: {
      stepTime: 0.01,
      contactTime: 0.02,
      impactAmplitude: 0.05,
      brakingAmplitude: 0.05,
      medialAmplitude: 0.08,
      lateralAmplitude: 0.1,
    },
    duration: 30,
    seed: 5,
  };
}

/** How far before the plate's origin a run over ground begins, m; farther than 50 m from it nobody lands. */
const BEFORE_ORIGIN = 48;

/** A run over ground as far as one long plate reaches, from before its origin to behind it; a run on a belt as it is. */
export function onPlate(options: PacedRun): SyntheticRunOptions {
  if (options.surface !== "ground") return options;
  const duration = Math.min(options.duration ?? Infinity, (2 * BEFORE_ORIGIN - 1) / options.speed);
  return { ...options, duration, place: { forward: -BEFORE_ORIGIN } };
}

/** A run as the metrics get it: filtered at 50 Hz, with the contacts that the rule finds, and its truth. */
export function measuredRun(options: PacedRun): {
  readonly ground: GroundReaction;
  readonly steps: readonly Step[];
  readonly truth: readonly TrueContact[];
} {
  const { recording, truth } = syntheticRun(onPlate(options));
  const ground = lowPassGroundReaction(toGroundReaction(recording), { cutoff: 50 });
  return { ground, steps: stepsOf(detectEvents(ground).contacts), truth: truth.contacts };
}

/** The true contact that a found one is. */
export function truthOf(truth: readonly TrueContact[], { contact }: Step): TrueContact {
  const found = truth.find(({ initialContact }) => Math.abs(initialContact - contact.initialContact) < 0.05);
  if (found === undefined) throw new Error(`no true contact at ${contact.initialContact} s`);
  return found;
}

/** Mean and standard deviation. */
export function meanAndSd(values: readonly number[]): { n: number; mean: number; sd: number } {
  const n = values.length;
  const mean = values.reduce((sum, value) => sum + value, 0) / n;
  const squares = values.reduce((sum, value) => sum + (value - mean) ** 2, 0);
  return { n, mean, sd: Math.sqrt(squares / (n - 1)) };
}
