import type { GroundReaction } from "../../force/index.js";
import { fail, type Samples } from "../../units/index.js";

/**
 * Returns a horizontal component of force.
 *
 * @param ground - The recording.
 * @param direction - Which component.
 * @param metric - The metric that needs it, for the message.
 * @throws GaitKineticsError `missing-channel`: not recorded.
 */
export function requireForce(
  ground: GroundReaction,
  direction: "forward" | "right",
  metric: string,
): Samples<"N"> {
  const samples = ground.force[direction];
  if (samples !== undefined) return samples;
  fail("missing-channel", `${metric} needs the ${direction} component of force, which was not recorded`, {
    argument: `force.${direction}`,
    values: { metric },
  });
}
