import type { Seconds } from "../../units/index.js";

/** How the body moves over the ground: with flights, with double support, off both feet at once, or not at all. */
export type Gait = "running" | "walking" | "jumping" | "standing";

/** Every {@link Gait}. */
export const GAITS: readonly Gait[] = ["running", "walking", "jumping", "standing"];

/**
 * A longer flight is a jump, s: it lifts the centre of mass by g t²/8 = 77 mm, where runners rise some 10 to 40 mm and fly
 * for 0.05 to 0.17 s. From memory; the limit is a judgement.
 */
export const LONGEST_RUNNING_FLIGHT: Seconds = 0.25;
/** Nobody flies longer, s (g t²/8 = 1.2 m): after more time the contacts are passes over a plate. */
export const LONGEST_FLIGHT: Seconds = 1;
/**
 * Contacts of running last less, of walking more, s: some 0.15 to 0.4 s and 0.5 to 1 s. Common practice; the limit between
 * them is a judgement.
 */
export const LEAST_WALKING_CONTACT: Seconds = 0.45;
/**
 * No foot of a walker stays longer on the ground, s: 2.3 s in an open recording of a very slow walker. A judgement.
 */
export const LONGEST_WALKING_CONTACT: Seconds = 3;
/**
 * Peak over mean of the vertical force of a contact: two humps with a trough (walking) lie below, one hump above (a half
 * sine has π/2 = 1.57). A judgement; two open recordings of walking have 1.35.
 */
export const WALKING_PEAK_TO_MEAN = 1.5;
/** Standard deviation of the vertical force over its mean below which somebody stands. A judgement: about 1 % in quiet standing. */
export const QUIET = 0.03;
