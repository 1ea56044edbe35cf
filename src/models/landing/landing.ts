import type { GroundReaction } from "../../force/index.js";
import type { Metres, MetresPerSecond, Seconds } from "../../units/index.js";

/** Offset-corrected, unfiltered force and moment. A `GroundReaction` that was not filtered is one. */
export type LandingRecord = Pick<GroundReaction, "sampleRate" | "force" | "moment">;

/** A contact, as far as the models read it. */
export interface ContactSpan {
  readonly initialContact: Seconds;
  readonly toeOff: Seconds;
}

/** Where a foot lands and leaves, relative to the centre of mass, in the frame that moves with the ground. */
export interface Landing {
  readonly refused?: undefined;
  /** Centre of pressure ahead of the centre of mass at first touch. */
  readonly touchdown: Metres;
  /** Centre of mass ahead of the centre of pressure at last touch. */
  readonly takeOff: Metres;
  /** Travel of the centre of pressure under the foot. */
  readonly copTravel: Metres;
  /** Travel of the centre of mass over the ground from first to last touch: the sum of the three. */
  readonly bodyTravel: Metres;
  /** Centre of mass at first touch, in the frame of the centre of pressure. */
  readonly bodyPlace: Metres;
  /** From the first sample. */
  readonly firstTouch: Seconds;
  /** From the first sample. */
  readonly lastTouch: Seconds;
  /** From first touch to the foot level. */
  readonly loading: Seconds;
  /** From the foot level to last touch. */
  readonly unloading: Seconds;
}

/** How far touchdown and take-off distance may be off as a whole: half widths that no number of strides takes away. */
export interface LandingMargin {
  readonly touchdown: Metres;
  readonly takeOff: Metres;
}

/** What the laws over a stride tell beside. */
export interface LandingFromForce extends Landing {
  /** Mean forward velocity of the runner over the stride in the frame of the centre of pressure: drift on a belt. */
  readonly velocity: MetresPerSecond;
  /** Mean forward over mean vertical force of the stride, less the grade. */
  readonly forwardBalance: number;
  /** How far the distances may be off by the assumptions: 20 and 40 mm, and more with a forward force. */
  readonly margin: LandingMargin;
}

/** Why a contact has no such distance. */
export interface LandingRefused {
  readonly refused:
    | "missing-channel"
    | "missing-speed"
    | "foot-level"
    | "no-flight"
    | "forward-unbalanced"
    | "surface-disagrees";
  readonly message: string;
}

/** Tells a result from a reason. */
export function refuse(refused: LandingRefused["refused"], message: string): LandingRefused {
  return { refused, message };
}
