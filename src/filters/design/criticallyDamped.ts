import { type Hertz, requireNumber } from "../../units/index.js";
import { tangentOf } from "../netFilter.js";
import { criticallyDampedSections } from "./criticallyDampedSections.js";
import type { FilterDesign } from "./filterDesign.js";

/** What {@link criticallyDamped} needs and may be told. */
export interface CriticallyDampedOptions {
  /** Order of one pass, a whole number from 1 to 100. */
  readonly order: number;
  /** Where the net response of all passes is −3 dB, Hz; above 0 and below half the sampling rate. */
  readonly cutoff: Hertz;
  /** Samples per second, Hz; above 0. */
  readonly sampleRate: Hertz;
  /** How often the filter will run; 1 where left out, 2 for {@link filterZeroPhase}. */
  readonly passes?: number | undefined;
}

/**
 * Designs a low-pass that answers a step without overshoot: all its poles lie at one place on the real axis.
 *
 * Formula: net |H(f)| = (1 + (t/t′)²)^(−Nn/2), t = tan(π f/fs), n passes of order N; t′ = tan(π fc/fs)/C with
 * C = (2^(1/(Nn)) − 1)^(1/2), so that |H(fc)| = 1/√2.
 * Units: Hz.
 * Limits: falls off more slowly than a Butterworth filter of the same order and cutoff, and takes more from below it.
 * Source: Robertson DGE & Dowling JJ 2003, J. Electromyogr. Kinesiol. 13:569, who correct the frequency itself; here the
 * tangent is corrected, which is exact up to the Nyquist frequency.
 * @param options - Order, cutoff, sampling rate and passes.
 * @throws GaitKineticsError `out-of-range`, `wrong-type` or `not-finite`: order or passes no whole number in range,
 * cutoff not between 0 and half the sampling rate.
 * @example
 * criticallyDamped({ order: 2, cutoff: 10, sampleRate: 1000, passes: 2 }).sections.length // 1
 */
export function criticallyDamped(options: CriticallyDampedOptions): FilterDesign {
  const { cutoff, sampleRate } = { ...options };
  const order = requireNumber("order", options?.order, { from: 1, to: 100, whole: true });
  const passes = requireNumber("passes", options.passes ?? 1, { from: 1, whole: true });
  const tangent = tangentOf(cutoff, sampleRate) / Math.sqrt(2 ** (1 / (order * passes)) - 1);
  return {
    family: "critically-damped",
    type: "low-pass",
    order,
    passes,
    cutoff,
    designCutoff: (Math.atan(tangent) * sampleRate) / Math.PI,
    sampleRate,
    sections: criticallyDampedSections(order, tangent),
  };
}
