import type { Side } from "../recording/index.js";
import { type Complete, fail, requireNumber, requireOneOf, withDefaults } from "../units/index.js";
import {
  SYNTHETIC_DECIMALS_DEFAULTS,
  SYNTHETIC_LEVELS_DEFAULTS,
  SYNTHETIC_NOISE_DEFAULTS,
  SYNTHETIC_PLACE_DEFAULTS,
  SYNTHETIC_RUN_DEFAULTS,
  SYNTHETIC_STANCE_DEFAULTS,
  SYNTHETIC_VARIABILITY_DEFAULTS,
  type SyntheticDecimals,
  type SyntheticLevels,
  type SyntheticNoise,
  type SyntheticPlace,
  type SyntheticRunOptions,
  type SyntheticStance,
  type SyntheticVariability,
} from "./options.js";

/** A run's options, whole and checked. */
export interface RunSettings extends Omit<Complete<SyntheticRunOptions>, "contacts" | "decimals"> {
  readonly means: Readonly<Record<Side, Complete<SyntheticStance>>>;
  readonly variability: Complete<SyntheticVariability>;
  readonly noise: Complete<SyntheticNoise>;
  readonly offset: Complete<SyntheticLevels>;
  readonly drift: Complete<SyntheticLevels>;
  readonly decimals: Complete<SyntheticDecimals> | null;
  readonly place: Complete<SyntheticPlace>;
  /** `null` where the duration decides. */
  readonly contacts: number | null;
}

/** Longest recording, in samples; more is a mistake in a unit. */
const LARGEST_RECORDING = 1e8;

/**
 * Completes the options of a synthetic run and refuses those that no run can have.
 * @throws GaitKineticsError `unknown-option`, `wrong-type`, `not-finite`, `out-of-range`.
 */
export function completeOptions(options: SyntheticRunOptions): RunSettings {
  const run = withDefaults<SyntheticRunOptions>(SYNTHETIC_RUN_DEFAULTS, options);
  requireNumber("mass", run.mass, { above: 0, to: 500, unit: "kg", hint: "mass, not weight" });
  requireNumber("height", run.height, { above: 0, to: 3, unit: "m" });
  requireNumber("speed", run.speed, { from: 0, to: 15, unit: "m/s" });
  requireOneOf("surface", run.surface, ["ground", "belt"]);
  requireOneOf("firstFoot", run.firstFoot, ["left", "right"]);
  requireNumber("correlation", run.correlation, { above: -1, below: 1 });
  requireNumber("sampleRate", run.sampleRate, { from: 20, to: 100_000, unit: "Hz" });
  requireNumber("gravity", run.gravity, { above: 0, to: 30, unit: "m/s²" });
  requireNumber("tail", run.tail, { from: 0, unit: "s" });
  requireNumber("seed", run.seed, { from: 0, to: 4294967295, whole: true });
  const means = meansOf(run, options);
  const begins = run.firstFoot === "right" ? means.right : means.left;
  requireNumber("firstContact", run.firstContact, { above: -begins.contactTime, unit: "s" });
  const length = lengthOf(run, options, means);
  return {
    ...run,
    ...length,
    means,
    variability: numbers(SYNTHETIC_VARIABILITY_DEFAULTS, run.variability, "variability", {
      from: 0,
      to: 0.3,
    }),
    noise: numbers(SYNTHETIC_NOISE_DEFAULTS, run.noise, "noise", { from: 0 }),
    offset: numbers(SYNTHETIC_LEVELS_DEFAULTS, run.offset, "offset", {}),
    drift: numbers(SYNTHETIC_LEVELS_DEFAULTS, run.drift, "drift", {}),
    decimals:
      run.decimals === null
        ? null
        : numbers(SYNTHETIC_DECIMALS_DEFAULTS, run.decimals, "decimals", { from: 0, to: 12, whole: true }),
    place: numbers(SYNTHETIC_PLACE_DEFAULTS, run.place, "place", {}),
  };
}

/** A group of numbers with its defaults, each within the same bounds. */
function numbers<O extends object>(
  defaults: Complete<O>,
  group: O,
  name: string,
  bounds: { from?: number; to?: number; whole?: boolean },
): Complete<O> {
  const complete = withDefaults<O>(defaults, group);
  for (const [key, value] of Object.entries(complete)) requireNumber(`${name}.${key}`, value, bounds);
  return complete;
}

function meansOf(
  run: Complete<SyntheticRunOptions>,
  options: SyntheticRunOptions,
): Record<Side, Complete<SyntheticStance>> {
  const both = numbers(SYNTHETIC_STANCE_DEFAULTS, run.stance, "stance", {});
  let { stepTime } = both;
  if (run.cadence !== null) {
    if (options.stance?.stepTime !== undefined) {
      fail("out-of-range", "cadence and stance.stepTime are both stated; one of them is needed", {
        argument: "cadence",
        values: { cadence: run.cadence, stepTime },
      });
    }
    stepTime = 60 / requireNumber("cadence", run.cadence, { above: 0, to: 400, unit: "steps/min" });
  }
  const mean = { ...both, stepTime };
  return {
    left: numbers(mean, run.left, "left", {}),
    right: numbers(mean, run.right, "right", {}),
  };
}

/** Number of contacts or length of the recording: whichever is stated. */
function lengthOf(
  run: Complete<SyntheticRunOptions>,
  options: SyntheticRunOptions,
  means: Readonly<Record<Side, Complete<SyntheticStance>>>,
): { contacts: number | null; duration: number | null } {
  const longest = LARGEST_RECORDING / run.sampleRate;
  if (run.duration === null) {
    const stepTime = Math.max(means.left.stepTime, means.right.stepTime);
    const contacts = requireNumber("contacts", run.contacts, {
      from: 1,
      to: longest / stepTime,
      whole: true,
    });
    return { contacts, duration: null };
  }
  if (options.contacts !== undefined) {
    fail("out-of-range", "contacts and duration are both stated; one of them is needed", {
      argument: "duration",
      values: { contacts: run.contacts, duration: run.duration },
    });
  }
  const duration = requireNumber("duration", run.duration, {
    from: 2 / run.sampleRate,
    to: longest,
    unit: "s",
  });
  return { contacts: null, duration };
}
