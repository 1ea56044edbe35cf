import { type Contact, underFoot } from "../events/index.js";
import { type GroundReaction, meanCentreOfPressure } from "../force/index.js";
import { mean } from "../statistics/index.js";
import type { Caution } from "../units/index.js";

/** No belt and no roll of the foot is faster, m/s. Common practice. */
const FASTEST = 15;

/**
 * The ground reaction with its surface, inferred where it was not stated: on a belt the foot travels backward
 * under the runner, so the centre of pressure does within a contact; on the ground it rolls forward.
 */
export function inferSurface(
  ground: GroundReaction,
  contacts: readonly Contact[],
): { ground: GroundReaction; cautions: Caution[] } {
  if (ground.surface !== undefined || ground.moment?.right === undefined || contacts.length === 0) {
    return { ground, cautions: [] };
  }
  const speeds = contacts.flatMap((contact) => {
    const { initialContact, toeOff } = contact;
    const foot = underFoot(ground, contact);
    const part = (toeOff - initialContact) / 5;
    const early = meanCentreOfPressure(foot, "forward", initialContact + part, initialContact + 2 * part);
    const late = meanCentreOfPressure(foot, "forward", toeOff - 2 * part, toeOff - part);
    return early === null || late === null ? [] : [(late - early) / (2 * part)];
  });
  if (speeds.length === 0) return { ground, cautions: [] };
  const speed = mean(speeds);
  if (Math.abs(speed) > FASTEST) {
    return {
      ground,
      cautions: [
        {
          code: "centre-of-pressure-implausible",
          message: `the centre of pressure moves at ${Math.abs(speed).toFixed(0)} m/s within contacts, faster than any foot on the ground: check its unit; the surface was not inferred from it`,
          where: "centre of pressure",
          values: { speed },
        },
      ],
    };
  }
  const surface = speed < 0 ? "belt" : "ground";
  return {
    ground: { ...ground, surface },
    cautions: [
      {
        code: "surface-inferred",
        message: `the surface was not stated; the centre of pressure moves ${speed < 0 ? "backward" : "forward"} at ${Math.abs(speed).toFixed(1)} m/s within contacts, so it is taken to be ${surface === "belt" ? "a belt" : "standing ground"}`,
        values: { speed },
      },
    ],
  };
}
