import type { Side } from "../recording/index.js";
import type { Metres, Seconds } from "../units/index.js";
import type { Stance } from "./stance.js";
import type { Motion } from "./stanceMotion.js";

/** True values of one contact, by metric id, in SI units; times and impulses between the zeros of the vertical force. */
export interface TrueValues {
  readonly contactTime: number;
  /** To the next contact, which a last one has too: where it would come. */
  readonly aerialTime: number;
  readonly stepTime: number;
  /** steps/min. */
  readonly cadence: number;
  readonly brakingTime: number;
  readonly propulsiveTime: number;
  readonly peakVerticalForce: number;
  /** `null` where the vertical force rises without a separate peak. */
  readonly impactPeak: number | null;
  /** From the zero of the vertical force; `null` with the impact peak. */
  readonly timeToImpactPeak: number | null;
  readonly verticalImpulse: number;
  readonly meanVerticalForce: number;
  readonly verticalOscillation: number;
  readonly brakingImpulse: number;
  readonly propulsiveImpulse: number;
  readonly netForwardImpulse: number;
  readonly peakBrakingForce: number;
  readonly peakPropulsiveForce: number;
  readonly mediolateralImpulse: number;
  readonly medialImpulse: number;
  readonly lateralImpulse: number;
  readonly peakMedialForce: number;
  readonly peakLateralForce: number;
  readonly peakResultantForce: number;
  readonly peakFreeMoment: number;
  readonly freeMomentImpulse: number;
  readonly touchdownDistance: number;
  readonly takeOffDistance: number;
  readonly stepLength: number;
  readonly positiveExternalWork: number;
}

/** One contact of the model as it truly was. */
export interface TrueContact {
  readonly side: Side;
  /** Where the vertical force leaves zero, s from the recording's first sample; negative where it began before. */
  readonly initialContact: Seconds;
  /** Where it is back at zero, s. */
  readonly toeOff: Seconds;
  readonly values: TrueValues;
  /** Parameters of the force in SI units. */
  readonly stance: Stance;
  /** Centre of mass at the contact, in the frame that moves with the ground: m, m/s. */
  readonly motion: Motion;
  /** Centre of pressure at the contact, in the frame that moves with the ground, m. */
  readonly foot: { readonly forward: Metres; readonly right: Metres };
}

/** What a synthetic recording was made from. */
export interface SyntheticTruth {
  readonly mass: number;
  readonly gravity: number;
  readonly speed: number;
  /** Contacts that lie wholly within the recording. */
  readonly contacts: readonly TrueContact[];
  /** Contacts that its ends cut. */
  readonly partialContacts: readonly TrueContact[];
}
