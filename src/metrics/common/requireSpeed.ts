import type { GroundReaction } from "../../force/index.js";
import { fail, type MetresPerSecond, requireNumber } from "../../units/index.js";

/**
 * Returns the mean speed of the runner over the surface.
 *
 * The surface is asked for as well, so that nobody's speed in the laboratory, 0 on a belt, is taken for it. On ground and
 * on a belt the number is the same: forward velocity of the centre of mass less that of the surface.
 *
 * @param ground - The recording.
 * @param metric - The metric that needs it, for the message.
 * @throws GaitKineticsError `missing-value`: speed or surface not stated; `out-of-range`: speed not above 0.
 */
export function requireSpeed(ground: GroundReaction, metric: string): MetresPerSecond {
  const { speed, surface } = ground;
  if (speed === undefined) {
    fail("missing-value", `${metric} needs the speed, which was not stated`, {
      argument: "speed",
      values: { metric },
    });
  }
  if (surface === undefined) {
    fail("missing-value", `${metric} needs the surface, "ground" or "belt", which was not stated`, {
      argument: "surface",
      values: { metric, allowed: ["ground", "belt"] },
    });
  }
  if (speed > 0 && speed < Number.POSITIVE_INFINITY) return speed;
  return requireNumber("speed", speed, { above: 0, unit: "m/s" });
}
