import { integralBetween } from "../filters/index.js";
import type { Fraction, Hertz, Samples, Seconds } from "../units/index.js";
import { requireSpan } from "./requireSpan.js";

/**
 * Says how closely a force follows a half sine of the same duration and the same impulse.
 *
 * Formula: R² = 1 − Σ(Fᵢ − Sᵢ)² / Σ(Fᵢ − F̄)² over the samples in contact, S(t) = (π/2) F̄_c sin(π (t − t₀)/t_c); F̄ the mean
 * of those samples, F̄_c the mean force over the contact.
 * Units: N and s in; a number without unit out, 1 for a perfect half sine. It is below 0 where a constant fits better.
 * Limits: `null` where no two samples differ. The half sine is the vertical force of a mass on a linear spring; a high
 * value says that the force has that shape, and not that a tendon stored or gave back energy.
 * Source: half sine and its peak, F_max = (π/2) × mean force over contact, from Morin et al. 2005, J Appl Biomech 21:167,
 * where it is written m g (π/2)(t_f/t_c + 1); R² is common practice.
 * @param samples - Force, N.
 * @param sampleRate - Above 0.
 * @param from - Initial contact, from the first sample.
 * @param to - Toe-off, above `from`, within the samples.
 * @throws GaitKineticsError `out-of-range`: the span does not rise within the samples.
 * @example
 * halfSineAgreement(new Float64Array([0, 1, 2, 1, 0]), 4, 0, 1) // 0.92545
 */
export function halfSineAgreement(
  samples: Samples<"N">,
  sampleRate: Hertz,
  from: Seconds,
  to: Seconds,
): Fraction | null {
  requireSpan(samples, sampleRate, from, to);
  const duration = to - from;
  const peak = ((Math.PI / 2) * integralBetween(samples, sampleRate, from, to)) / duration;
  const first = Math.ceil(from * sampleRate);
  const last = Math.floor(to * sampleRate);
  let sum = 0;
  for (let i = first; i <= last; i++) sum += samples[i] as number;
  const mean = sum / (last - first + 1);
  let unexplained = 0;
  let total = 0;
  for (let i = first; i <= last; i++) {
    const force = samples[i] as number;
    const miss = force - peak * Math.sin((Math.PI * (i / sampleRate - from)) / duration);
    unexplained += miss * miss;
    total += (force - mean) * (force - mean);
  }
  return total > 0 ? 1 - unexplained / total : null;
}
