import {
  type Complete,
  type MetresPerSecondSquared,
  type Newtons,
  STANDARD_GRAVITY,
} from "../units/index.js";

/** How a recording becomes a ground reaction. */
export interface ToGroundReactionOptions {
  /** Whether the mean force of the flight phases is taken off every force channel. */
  readonly offset?: "flights" | "none" | undefined;
  /** Whether drift is taken off linearly between flights: where the flights show it, always, or never. */
  readonly drift?: "auto" | "always" | "never" | undefined;
  /** Range of the flight levels in any channel above which `auto` removes drift, N; more where the noise is large. */
  readonly driftLimit?: Newtons | undefined;
  readonly gravity?: MetresPerSecondSquared | undefined;
}

/**
 * Offset from the flights; drift removed where the flights' levels range over more than 5 N and more than noise explains.
 * Source: rule of this library, tried on the open recording of Fukuchi, Fukuchi & Duarte (2017), PeerJ 5:e3298.
 */
export const TO_GROUND_REACTION_DEFAULTS: Complete<ToGroundReactionOptions> = {
  offset: "flights",
  drift: "auto",
  driftLimit: 5,
  gravity: STANDARD_GRAVITY,
};
