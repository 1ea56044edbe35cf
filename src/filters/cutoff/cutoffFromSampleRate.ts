import { type Caution, type Hertz, requireNumber } from "../../units/index.js";

/** A cutoff that follows from the sampling rate alone. */
export interface SampleRateCutoff {
  /** Hz. */
  readonly cutoff: Hertz;
  readonly cautions: readonly Caution[];
}

/**
 * Gives the cutoff that a regression on the sampling rate found best for knee angles of walking.
 *
 * Formula: f = 0.071 fs − 0.00003 fs².
 * Units: Hz.
 * Limits: for marker trajectories of walking, not for force, and for no other movement; the same paper's better estimate
 * also needs the error of the raw data. The parabola turns down at 1183 Hz, where it is refused.
 * Source: Yu B, Gabriel D, Noble L & An KN 1999, J. Appl. Biomech. 15:318; the coefficients from memory.
 * @param sampleRate - Samples per second, above 0 and up to 1183 Hz.
 * @returns The cutoff, with a caution that says what it rests on.
 * @throws GaitKineticsError `out-of-range`, `wrong-type` or `not-finite`: the rate.
 * @example
 * cutoffFromSampleRate(100).cutoff // 6.8
 */
export function cutoffFromSampleRate(sampleRate: Hertz): SampleRateCutoff {
  requireNumber("sampleRate", sampleRate, {
    above: 0,
    to: 1183,
    unit: "Hz",
    hint: "the regression turns down beyond",
  });
  const cutoff = 0.071 * sampleRate - 0.00003 * sampleRate ** 2;
  const message =
    "this cutoff rests on the sampling rate alone and on knee angles of walking; it says nothing of the noise in these samples and is no rule for force";
  return {
    cutoff,
    cautions: [
      { code: "weak-evidence", message, where: "cutoff from sampling rate", values: { sampleRate } },
    ],
  };
}
