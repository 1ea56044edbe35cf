import {
  type Complete,
  fail,
  type Hertz,
  type MetresPerSecondSquared,
  requireFiniteSamples,
  requireNumber,
  type Samples,
  type Seconds,
  STANDARD_GRAVITY,
  withDefaults,
} from "../../units/index.js";

/** What is taken off, and what the acceleration is normalised by. */
export interface PeakTibialAccelerationOptions {
  /** What the sensor reads while the runner stands still, m/s²; taken off. */
  readonly standing?: MetresPerSecondSquared | undefined;
  /** What one g is, m/s². */
  readonly gravity?: MetresPerSecondSquared | undefined;
}

/** Nothing taken off, and standard gravity. */
export const PEAK_TIBIAL_ACCELERATION_DEFAULTS: Complete<PeakTibialAccelerationOptions> = {
  standing: 0,
  gravity: STANDARD_GRAVITY,
};

/** A peak of the axial acceleration of the tibia. */
export interface TibialPeak {
  /** Of the largest sample, s from the first. */
  readonly time: Seconds;
  readonly acceleration: MetresPerSecondSquared;
  /** The same in units of gravity. */
  readonly gravities: number;
}

/**
 * Gives the largest acceleration of the tibia along its axis between two times, and when it comes.
 *
 * Formula: max (a − a_standing) over the samples from `from` to `to`; ÷ g for units of gravity.
 * Units: m/s² and s in; m/s² and units of gravity out.
 * Limits: positive is towards the knee. `null` where the largest sample is the first or last of the window, so that there is no peak
 * in it. The number falls with a lower sampling rate or cutoff, with a softer fixation and towards the knee, and
 * includes the leg's rotation: compare only recordings made alike. It is an acceleration of the shank, not a force on the bone.
 * Source: definition; the peak follows initial contact by the time to the impact peak, 10 to 30 ms (common practice).
 * @param acceleration - Along the tibia, without gaps.
 * @param sampleRate - Samples per second, above 0.
 * @param from - Start of the window, such as initial contact, s from the first sample.
 * @param to - Its end, such as 0.1 s later.
 * @param options - {@link PEAK_TIBIAL_ACCELERATION_DEFAULTS} where left out.
 * @throws GaitKineticsError `out-of-range`: window outside the samples or not rising, rate or gravity not above 0; `not-finite`;
 * `wrong-type`; `unknown-option`.
 * @example
 * peakTibialAcceleration(new Float64Array([9.80665, 20, 58.8399, 15, 9]), 1000, 0, 0.004).gravities // 6
 * peakTibialAcceleration(new Float64Array([9, 20, 50, 15, 9]), 1000, 0, 0.004, { standing: 10 }).acceleration // 40
 */
export function peakTibialAcceleration(
  acceleration: Samples<"m/s^2">,
  sampleRate: Hertz,
  from: Seconds,
  to: Seconds,
  options: PeakTibialAccelerationOptions = {},
): TibialPeak | null {
  const settings = withDefaults<PeakTibialAccelerationOptions>(PEAK_TIBIAL_ACCELERATION_DEFAULTS, options);
  const standing = requireNumber("standing", settings.standing, { unit: "m/s²" });
  const gravity = requireNumber("gravity", settings.gravity, { above: 0, unit: "m/s²" });
  requireNumber("sampleRate", sampleRate, { above: 0, unit: "Hz" });
  requireFiniteSamples("acceleration", acceleration);
  const end = (acceleration.length - 1) / sampleRate;
  requireNumber("from", from, { from: 0, unit: "s" });
  requireNumber("to", to, { unit: "s" });
  if (!(to > from && to <= end + 1e-9)) {
    fail(
      "out-of-range",
      `the window is ${from} to ${to} s; it must rise within 0 to ${end} s, the acceleration's last sample`,
      { argument: "to", values: { from, to, end } },
    );
  }
  const first = Math.ceil(from * sampleRate - 1e-6);
  const last = Math.floor(to * sampleRate + 1e-6);
  let at = first;
  for (let i = first; i <= last; i++) if ((acceleration[i] as number) > (acceleration[at] as number)) at = i;
  if (at <= first || at >= last) return null;
  const peak = (acceleration[at] as number) - standing;
  return { time: at / sampleRate, acceleration: peak, gravities: peak / gravity };
}
