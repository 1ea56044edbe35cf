import type { Contact } from "../events/index.js";
import type { GroundReaction } from "../force/index.js";
import type { Metres, MetresPerSecond } from "../units/index.js";
import { meanStep } from "./meanStep.js";

/** Markers that go slower drift on a belt, m/s. A judgement: 3 m in half a minute. */
const LEAST_SPEED: MetresPerSecond = 0.1;
/** From one contact to the next a foot goes at least this far where the body travels, m; farther than the other is no step. */
const LEAST_STEP: Metres = 0.3;
const FARTHEST_STEP: Metres = 3;

/** Where the body goes in the frame of the force. */
export interface Travel {
  /** What shows it. */
  readonly by: "markers" | "contacts";
  /** Over the recording by markers, per step by contacts. */
  readonly forward: Metres;
  readonly right: Metres;
  readonly speed: MetresPerSecond;
}

/**
 * Which way the body travels through the frame of the force: by its markers, else by the mean way of the centre of pressure
 * from one contact to the next; `null` where neither shows a way, as on a belt.
 */
export function travelOf(ground: GroundReaction, contacts: readonly Contact[]): Travel | null {
  const { markerTravel } = ground;
  if (markerTravel === undefined) return byContacts(ground, contacts);
  const { forward, right, duration } = markerTravel;
  const speed = Math.hypot(forward, right) / duration;
  return speed < LEAST_SPEED ? null : { by: "markers", forward, right, speed };
}

function byContacts(ground: GroundReaction, contacts: readonly Contact[]): Travel | null {
  const typical = meanStep(ground, contacts);
  if (typical === null) return null;
  const { forward, right, time } = typical;
  const step = Math.hypot(forward, right);
  if (step < LEAST_STEP || step > FARTHEST_STEP) return null;
  return { by: "contacts", forward, right, speed: step / time };
}
