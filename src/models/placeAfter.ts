const SIXTH = 1 / 6;

/**
 * Gives the place at the end of one straight piece of acceleration, exact for it.
 *
 * Formula: x = x₀ + v₀ h + (2 a₀ + a₁) h²/6.
 *
 * @param place - At its start, m.
 * @param velocity - At its start, m/s.
 * @param before - Acceleration at its start, m/s².
 * @param after - Acceleration at its end.
 * @param duration - h, s.
 */
export function placeAfter(
  place: number,
  velocity: number,
  before: number,
  after: number,
  duration: number,
): number {
  return place + duration * (velocity + duration * (2 * before + after) * SIXTH);
}
