import type { MotionBidsColumn } from "./options.js";

/** How the standard writes a value that is not there. */
export const MISSING = "n/a";

/** Name of the object in a sidecar that holds what the standard has no field for. */
export const OWN_FIELD = "GaitKinetics";

/** Words of the column `quantity` that this library adds to a table of channels. */
export const QUANTITIES = [
  "force",
  "centre-of-pressure",
  "free-moment",
  "marker",
  "platform",
  "other",
] as const;

/** One of {@link QUANTITIES}. */
export type Quantity = (typeof QUANTITIES)[number];

/** Types of a channel that the standard knows. */
export const TYPES: readonly string[] = [
  "ACCEL",
  "ANGACCEL",
  "GYRO",
  "JNTANG",
  "LATENCY",
  "MAGN",
  "MISC",
  "ORNT",
  "POS",
  "VEL",
];

/** Words that a channel can be stated as. */
export const COLUMN_WORDS: readonly MotionBidsColumn[] = [
  "time",
  "forward",
  "up",
  "right",
  "cop_forward",
  "cop_right",
  "free_moment",
  "force",
  "cop",
  "other",
];

/** A text for a message: in quotes, on one line, cut where it is long. */
export function quoted(text: string): string {
  return JSON.stringify(text.length > 40 ? `${text.slice(0, 39)}…` : text);
}
