import { sampleAt } from "./sampleAt.js";

/** One axis of the centre of mass on its way through a span; changed in place, so that a step allocates nothing. */
export interface AxisState {
  /** Force along the axis, N. */
  readonly samples: Float64Array;
  readonly mass: number;
  /** 1 ÷ mass, since a product takes less time than a quotient. */
  readonly perMass: number;
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
  const final = sampleAt(samples, end);
  const first = Math.floor(start) + 1;
  const last = Math.ceil(end) - 1;
  // In units of the sampling interval: ∫F dt and ∫(T − t) F dt. Between its neighbours every sample is the tip of a triangle.
  let impulse = 0;
  let way = 0;
  if (first > last) {
    impulse = ((end - start) * (initial + final)) / 2;
    way = ((end - start) * (end - start) * (2 * initial + final)) / 6;
  } else {
    for (let i = first; i <= last; i++) {
      const force = samples[i] as number;
      impulse += force;
      way += force * (end - i);
    }
    const [before, after, head, tail] = [
      first - start,
      end - last,
      samples[first] as number,
      samples[last] as number,
    ];
    impulse += (before * (initial + head) - head - tail + after * (tail + final)) / 2;
    way +=
      (before * ((before * (2 * initial + head)) / 3 + (end - first) * (initial + head))) / 2 -
      head * ((end - first) / 2 + 1 / 6) -
      tail * (after / 2 - 1 / 6) +
      (after * after * (2 * tail + final)) / 6;
  }
  const total = to - from;
  const perMass = 1 / mass;
  const meanForce = impulse / (end - start);
  return {
    samples,
    mass,
    meanForce,
    perMass,
    acceleration: (initial - meanForce) * perMass,
    velocity:
      meanVelocity - (way / (sampleRate * sampleRate) - (meanForce * total * total) / 2) / (mass * total),
    position: 0,
  };
}
