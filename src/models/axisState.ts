import { sampleAt } from "./sampleAt.js";

/** One axis of the centre of mass on its way through a span; changed in place, so that a step allocates nothing. */
export interface AxisState {
  /** Force along the axis, N. */
  readonly samples: Float64Array;
  readonly mass: number;
  /** Mean force over the span, which is taken off. */
  readonly meanForce: number;
  acceleration: number;
  velocity: number;
  position: number;
}

/**
 * Puts one axis at the start of a span in which velocity and, but for its mean velocity, position return.
 *
 * Formula: v₀ = v̄ − [∫(T − t) F dt − F̄ T²/2] / (m T), both integrals exact on the straight lines between samples.
 *
 * @param samples - Force along the axis, N.
 * @param sampleRate - Hz.
 * @param from - Start of the span, s.
 * @param to - End of the span, s.
 * @param mass - kg, above 0.
 * @param meanVelocity - Over the span, m/s.
 */
export function startAxis(
  samples: Float64Array,
  sampleRate: number,
  from: number,
  to: number,
  mass: number,
  meanVelocity: number,
): AxisState {
  const start = from * sampleRate;
  const end = to * sampleRate;
  const initial = sampleAt(samples, start);
  // In units of the sampling interval; the velocity gained so far, times mass, and the way gained with it.
  let before = start;
  let force = initial;
  let impulse = 0;
  let way = 0;
  for (let i = Math.floor(start) + 1; before < end; i++) {
    const inside = i < end;
    const next = inside ? (samples[i] as number) : sampleAt(samples, end);
    const width = inside ? i - before : end - before;
    way += width * (impulse + (width * (2 * force + next)) / 6);
    impulse += (width * (force + next)) / 2;
    force = next;
    before = i;
  }
  const total = to - from;
  const meanForce = impulse / (end - start);
  return {
    samples,
    mass,
    meanForce,
    acceleration: (initial - meanForce) / mass,
    velocity:
      meanVelocity - (way / (sampleRate * sampleRate) - (meanForce * total * total) / 2) / (mass * total),
    position: 0,
  };
}
