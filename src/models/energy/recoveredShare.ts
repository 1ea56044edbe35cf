import type { Fraction } from "../../units/index.js";
import type { ExternalWork } from "../externalWork.js";

/**
 * Gives the share of the forward and vertical work that the two energies take from each other, as in a pendulum.
 *
 * Formula: (W_f + W_v − W_ext)/(W_f + W_v), sums of the positive increments over whole strides.
 * Units: J in; a share of one out.
 * Limits: `null` without a forward force or without any work. About 0.65 at most in walking, near 1.1 m/s; 0 to 0.04 in
 * running. It speaks of the energy of the centre of mass, not of oxygen.
 * Source: Cavagna, Thys & Zamboni 1976, J Physiol 262:639 (abstract).
 * @param work - From {@link externalWork}, over whole strides.
 * @example
 * const parts = (positive) => ({ positive, negative: -positive });
 * recoveredShare({ forward: parts(67.1), vertical: parts(30.1), external: parts(36.9), lateral: null }); // 0.62037
 */
export function recoveredShare(work: ExternalWork): Fraction | null {
  const { external, forward, vertical } = work;
  if (external === null || forward === null) return null;
  const apart = forward.positive + vertical.positive;
  return apart > 0 ? (apart - external.positive) / apart : null;
}
