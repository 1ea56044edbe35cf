import { lowPass } from "../filters/index.js";
import { fail, type Hertz } from "../units/index.js";
import type { GroundReaction } from "./groundReaction.js";

/** Net cutoff and net order of a zero-phase low-pass filter. */
export interface LowPassGroundReactionOptions {
  /** Where the net response is −3 dB, Hz; below half the sampling rate. */
  readonly cutoff: Hertz;
  /** Net order, even. */
  readonly order?: number | undefined;
}

/**
 * Low-passes force and moment with zero phase; the centre of pressure follows from both. The unfiltered ones stay with it.
 *
 * Formula: Butterworth second-order sections run forward and backward; see `lowPass`.
 * Units: Hz in; N and N·m stay.
 * Limits: plates that are kept apart are filtered likewise; runs once: a ground reaction that is already
 * filtered is refused, since two passes lower the cutoff.
 * Source: as `lowPass`.
 * @param ground - Unfiltered force.
 * @param options - Cutoff and order (4 where left out).
 * @throws GaitKineticsError `out-of-range`: cutoff not below half the sampling rate, order odd; `conflict`:
 * filtered already.
 * @example
 * lowPassGroundReaction(ground, { cutoff: 50 }).settings.filter?.order // 4
 */
export function lowPassGroundReaction(
  ground: GroundReaction,
  options: LowPassGroundReactionOptions,
): GroundReaction {
  const { cutoff, order = 4 } = options;
  const done = ground.settings.filter;
  if (done !== null) {
    fail(
      "conflict",
      `the force is already low-passed at ${done.cutoff} Hz; filter the unfiltered ground reaction once`,
      {
        argument: "ground",
      },
    );
  }
  const { plates, sampleRate } = ground;
  const { forward, up, right } = ground.force;
  const { moment } = ground;
  const channels: (Float64Array | undefined)[] = [
    forward,
    up,
    right,
    moment?.forward,
    moment?.up,
    moment?.right,
  ];
  // All channels in one call: the filter runs them side by side.
  const filtered = lowPass(
    channels.filter((channel) => channel !== undefined),
    { cutoff, order, sampleRate },
  );
  let next = 0;
  const [newForward, newUp, newRight, momentForward, momentUp, momentRight] = channels.map((channel) =>
    channel === undefined ? undefined : filtered[next++],
  );
  return {
    ...ground,
    force: {
      ...(newForward && { forward: newForward }),
      up: newUp as Float64Array,
      ...(newRight && { right: newRight }),
    },
    ...(moment && {
      moment: {
        ...(momentForward && { forward: momentForward }),
        ...(momentUp && { up: momentUp }),
        ...(momentRight && { right: momentRight }),
      },
    }),
    unfiltered: { force: ground.force, ...(moment && { moment }) },
    ...(plates && { plates: plates.map((plate) => lowPassGroundReaction(plate, options)) }),
    settings: { ...ground.settings, filter: { cutoff, order } },
  };
}
