/**
 * Gives the velocity at the end of one straight piece of acceleration, exact for it.
 *
 * Formula: v = v₀ + (a₀ + a₁) h/2.
 *
 * @param velocity - At its start, m/s.
 * @param before - Acceleration at its start, m/s².
 * @param after - Acceleration at its end.
 * @param duration - h, s.
 */
export function velocityAfter(velocity: number, before: number, after: number, duration: number): number {
  return velocity + (duration * (before + after)) / 2;
}
