import type { LaidStep } from "./layOutSteps.js";
import { copTravel, stanceForce, stanceFreeMoment } from "./stance.js";

/** True vertical force below which a recording has no centre of pressure, N. Common practice. */
const COP_BLANK_BELOW = 20;

/** The channels of a synthetic recording, by the names of their columns. */
export interface SampledChannels {
  readonly forward: Float64Array;
  readonly up: Float64Array;
  readonly right: Float64Array;
  readonly cop_forward: Float64Array;
  readonly cop_right: Float64Array;
  readonly free_moment: Float64Array;
}

/** How the steps are seen by the plate. */
export interface Sampling {
  readonly samples: number;
  readonly sampleRate: number;
  /** Of the surface under the plate's frame, m/s: the speed on a belt, 0 on the ground. */
  readonly beltSpeed: number;
  readonly place: { readonly forward: number; readonly right: number };
}

/**
 * Samples the steps' force, centre of pressure and free moment: exact values of the model, zero in flight, and no centre of
 * pressure (NaN) below {@link COP_BLANK_BELOW}.
 */
export function sampleSteps(steps: readonly LaidStep[], sampling: Sampling): SampledChannels {
  const { samples, sampleRate, beltSpeed, place } = sampling;
  const channels: SampledChannels = {
    forward: new Float64Array(samples),
    up: new Float64Array(samples),
    right: new Float64Array(samples),
    cop_forward: new Float64Array(samples).fill(Number.NaN),
    cop_right: new Float64Array(samples).fill(Number.NaN),
    free_moment: new Float64Array(samples),
  };
  const begin = steps[0]?.initialContact ?? 0;
  for (const { stance, initialContact, foot } of steps) {
    const from = Math.max(0, Math.ceil(initialContact * sampleRate));
    const to = Math.min(samples - 1, Math.floor((initialContact + stance.contactTime) * sampleRate));
    const ahead = place.forward + foot.forward;
    const beside = place.right + foot.right;
    for (let i = from; i <= to; i++) {
      const time = i / sampleRate;
      const since = time - initialContact;
      const up = stanceForce(stance, "up", since);
      channels.forward[i] = stanceForce(stance, "forward", since);
      channels.up[i] = up;
      channels.right[i] = stanceForce(stance, "right", since);
      channels.free_moment[i] = stanceFreeMoment(stance, since);
      if (up < COP_BLANK_BELOW) continue;
      channels.cop_forward[i] = ahead + copTravel(stance, since) - beltSpeed * (time - begin);
      channels.cop_right[i] = beside;
    }
  }
  return channels;
}
