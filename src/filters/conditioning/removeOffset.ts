import { fail, type Hertz, requireFiniteSamples, type Seconds } from "../../units/index.js";
import { positionOf } from "../calculus/valueAt.js";
import { finiteResult } from "../finiteResult.js";

/** Samples without their offset, and what it was. */
export interface OffsetRemoved<S extends Float64Array> {
  readonly samples: S;
  /** What was subtracted, in the unit of the samples. */
  readonly offset: number;
}

/**
 * Subtracts the mean over a stretch in which the true value is zero.
 *
 * Formula: x − mean of the samples from `from` to `to`, both included.
 * Units: those of the samples, which keep their unit in their type; Hz and s.
 * Limits: a stretch of n samples with noise σ leaves an offset of σ/√n.
 * Source: common practice.
 * @param samples - The first is at time 0.
 * @param sampleRate - Samples per second, above 0.
 * @param from - Start of the stretch, s, within the samples.
 * @param to - Its end, s, within the samples and not before `from`.
 * @throws GaitKineticsError `out-of-range`: a time outside the samples, a stretch without a sample, rate not above 0;
 * `not-finite`: NaN or infinity among samples or result; `wrong-type`.
 * @example
 * removeOffset(new Float64Array([2, 2, 702]), 100, 0, 0.01).samples[2] // 700
 */
export function removeOffset<S extends Float64Array>(
  samples: S,
  sampleRate: Hertz,
  from: Seconds,
  to: Seconds,
): OffsetRemoved<S> {
  requireFiniteSamples("samples", samples);
  const first = Math.ceil(positionOf(samples, sampleRate, from, "from") - 1e-6);
  const last = Math.floor(positionOf(samples, sampleRate, to, "to") + 1e-6);
  if (last < first) {
    fail("out-of-range", `no sample lies from ${from} to ${to} s; at least one is needed`, {
      argument: "to",
      values: { from, to },
    });
  }
  const stretch = samples.subarray(first, last + 1);
  const offset = stretch.reduce((sum, value) => sum + value, 0) / stretch.length;
  return { samples: finiteResult(samples.map((value) => value - offset) as S), offset };
}
