/** The value of a pulse, its integral from the start, or the integral of that. */
export type IntegralOrder = 0 | 1 | 2;

/**
 * Gives a raised cosine that starts at `start`, A/2 [1 − cos(π s / C)] over 0 ≤ s ≤ 2 C, or one of its integrals.
 * Its impulse is A C, its centroid C.
 */
export function raisedCosine(
  order: IntegralOrder,
  time: number,
  start: number,
  halfWidth: number,
  amplitude: number,
): number {
  const s = time - start;
  const behind = s - 2 * halfWidth;
  if (s < 0 || amplitude === 0) return 0;
  if (behind > 0) return tail(order, amplitude * halfWidth, halfWidth, behind);
  const phase = (Math.PI * s) / halfWidth;
  const c = halfWidth / Math.PI;
  if (order === 0) return (amplitude / 2) * (1 - Math.cos(phase));
  if (order === 1) return (amplitude / 2) * (s - c * Math.sin(phase));
  return (amplitude / 2) * ((s * s) / 2 + c * c * (Math.cos(phase) - 1));
}

/**
 * Gives half a sine wave that starts at `start`, A sin(π s / L) over 0 ≤ s ≤ L, or one of its integrals.
 * Its impulse is 2 A L / π, its centroid L / 2.
 */
export function halfSine(
  order: IntegralOrder,
  time: number,
  start: number,
  length: number,
  amplitude: number,
): number {
  const s = time - start;
  const behind = s - length;
  if (s < 0 || amplitude === 0) return 0;
  if (behind > 0) return tail(order, (2 * amplitude * length) / Math.PI, length / 2, behind);
  const phase = (Math.PI * s) / length;
  const l = length / Math.PI;
  if (order === 0) return amplitude * Math.sin(phase);
  if (order === 1) return amplitude * l * (1 - Math.cos(phase));
  return amplitude * l * (s - l * Math.sin(phase));
}

/** Behind a pulse: nothing, its impulse, and the impulse times the time since its centroid. */
function tail(order: IntegralOrder, impulse: number, toCentroid: number, behind: number): number {
  if (order === 0) return 0;
  return order === 1 ? impulse : impulse * (toCentroid + behind);
}
