import type { GroundReaction } from "../../force/index.js";
import { fail, type Samples } from "../../units/index.js";

/** What each part of the moment is recorded as. */
const RECORDED = {
  forward: "the centre of pressure along `right`",
  up: "the free moment",
  right: "the centre of pressure along `forward`",
} as const;

/**
 * Returns a part of the moment about the frame's origin.
 *
 * @param ground - The recording.
 * @param direction - Which part.
 * @param metric - The metric that needs it, for the message.
 * @throws GaitKineticsError `missing-channel`: not recorded.
 */
export function requireMoment(
  ground: Pick<GroundReaction, "moment">,
  direction: "forward" | "up" | "right",
  metric: string,
): Samples<"N m"> {
  const samples = ground.moment?.[direction];
  if (samples !== undefined) return samples;
  fail("missing-channel", `${metric} needs ${RECORDED[direction]}, which was not recorded`, {
    argument: `moment.${direction}`,
    values: { metric },
  });
}
