import type { Contact } from "../src/events/index.js";
import type { GroundReaction } from "../src/force/index.js";
import type { Surface } from "../src/recording/index.js";

/** What {@link groundOf} is made from; samples in N, everything else in SI units. */
export interface GroundParts {
  readonly up: ArrayLike<number>;
  readonly forward?: ArrayLike<number> | undefined;
  readonly right?: ArrayLike<number> | undefined;
  readonly sampleRate: number;
  /** Stated mass, 70 kg where left out; `null` for none. */
  readonly mass?: number | null | undefined;
  readonly massByForce?: number | undefined;
  readonly speed?: number | undefined;
  readonly surface?: Surface | undefined;
  readonly grade?: number | undefined;
  readonly gravity?: number | undefined;
}

/** Makes a ground reaction from samples. Standard gravity; what is left out is absent. */
export function groundOf(parts: GroundParts): GroundReaction {
  const { up, forward, right, sampleRate, mass = 70, massByForce, speed, surface, grade } = parts;
  return {
    sampleRate,
    startTime: 0,
    force: {
      up: Float64Array.from(up),
      ...(forward === undefined ? {} : { forward: Float64Array.from(forward) }),
      ...(right === undefined ? {} : { right: Float64Array.from(right) }),
    },
    subject: mass === null ? {} : { mass },
    ...(massByForce === undefined ? {} : { massByForce }),
    ...(speed === undefined ? {} : { speed }),
    ...(surface === undefined ? {} : { surface }),
    ...(grade === undefined ? {} : { grade }),
    gravity: parts.gravity ?? 9.80665,
    settings: { driftRemoved: false, flights: 0, filter: null },
    cautions: [],
  };
}

/** Makes a contact between two times, s from the first sample. */
export function contactOver(from: number, to: number, side: Contact["side"] = "unknown"): Contact {
  return { side, initialContact: from, toeOff: to, threshold: 20 };
}
