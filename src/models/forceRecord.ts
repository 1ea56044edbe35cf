import type { GroundReaction } from "../force/index.js";

/** Force of the ground on the runner with its rate: all that the models read. A `GroundReaction` is one. */
export type ForceRecord = Pick<GroundReaction, "sampleRate" | "force">;
