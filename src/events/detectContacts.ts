import type { GroundReaction } from "../force/index.js";
import type { Contact } from "./contact.js";
import { type DetectEventsOptions, detectEvents } from "./detectEvents.js";

/**
 * Finds the complete contacts of a recording by a force threshold.
 *
 * Formula, units, limits and source: see {@link detectEvents}, which also gives partial contacts, settings and cautions.
 * @param ground - Force with offset and drift removed.
 * @param options - As {@link detectEvents}.
 * @throws GaitKineticsError `out-of-range`: as {@link detectEvents}.
 * @example
 * detectContacts(ground, { threshold: 20 })[0]?.threshold // 20
 */
export function detectContacts(ground: GroundReaction, options: DetectEventsOptions = {}): Contact[] {
  return [...detectEvents(ground, options).contacts];
}
