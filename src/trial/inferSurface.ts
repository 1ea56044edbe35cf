import { type Contact, underFoot } from "../events/index.js";
import { type GroundReaction, meanCentreOfPressure } from "../force/index.js";
import type { Surface } from "../recording/index.js";
import { mean } from "../statistics/index.js";
import type { Caution, MetresPerSecond } from "../units/index.js";
import { aloneOnPlate } from "./aloneOnPlate.js";
import type { Travel } from "./travelOf.js";

/** No belt and no roll of the foot is faster, m/s. Common practice. */
export const FASTEST: MetresPerSecond = 15;

/**
 * A centre of pressure that moves slower within contacts tells nothing, m/s: under a foot on the ground it rolls forward at
 * 0.1 to 0.4 m/s in walking (open recordings), and no treadmill that is walked on is slower. A judgement.
 */
const LEAST_SPEED = 0.3;
/** A belt carries the foot backward by more than this many times the speed at which the body drifts on it. */
const BELT_FACTOR = 2;

/**
 * The ground reaction with its surface, inferred where it was not stated: a body that travels through the frame of the force
 * is on the ground; else, on a belt the foot goes backward under the runner, so the centre of pressure does within a contact,
 * and on the ground it rolls forward. A centre of pressure too fast for either is said, whether the surface was stated or not.
 * @param travel - Which way the body goes; `null` where nothing shows it.
 */
export function inferSurface(
  ground: GroundReaction,
  contacts: readonly Contact[],
  travel: Travel | null,
): { ground: GroundReaction; cautions: Caution[] } {
  if (ground.moment?.right === undefined) return { ground, cautions: [] };
  const speeds = contacts.flatMap((contact) => rollOf(ground, contact) ?? []);
  if (speeds.length === 0) return { ground, cautions: [] };
  const speed = mean(speeds);
  const moves = `the centre of pressure moves ${speed < 0 ? "backward" : "forward"} at ${Math.abs(speed).toFixed(1)} m/s within contacts`;
  const values = { speed };
  if (Math.abs(speed) > FASTEST) {
    const caution = {
      code: "centre-of-pressure-implausible",
      message: `the centre of pressure moves at ${Math.abs(speed).toFixed(0)} m/s within contacts, faster than any foot on the ground: check its unit${ground.surface === undefined ? "; the surface was not inferred from it" : ""}`,
      where: "centre of pressure",
      values,
    };
    return { ground, cautions: [caution] };
  }
  if (ground.surface !== undefined) return { ground, cautions: [] };
  const taken = (surface: Surface, why: string) => {
    const message = `the surface was not stated; ${why}, so it is taken to be ${surface === "belt" ? "a belt" : "standing ground"}`;
    return { ground: { ...ground, surface }, cautions: [{ code: "surface-inferred", message, values }] };
  };
  if (travel !== null && speed > -BELT_FACTOR * travel.speed) {
    const what = travel.by === "markers" ? "the markers travel" : "the feet come down one ahead of the other";
    return taken("ground", `${what}, at ${travel.speed.toFixed(1)} m/s`);
  }
  if (Math.abs(speed) >= LEAST_SPEED) return taken(speed < 0 ? "belt" : "ground", moves);
  const message = `the surface was not stated, and ${moves}, too slowly to tell a belt from standing ground: it is not known; state surface if you know it`;
  return { ground, cautions: [{ code: "surface-unknown", message, values }] };
}

/** Speed of the centre of pressure along the surface in the middle of a contact, m/s; `null` where it is not known. */
function rollOf(ground: GroundReaction, contact: Contact): number | null {
  const { from, to } = aloneOnPlate(contact);
  const foot = underFoot(ground, contact);
  const part = (to - from) / 5;
  const early = meanCentreOfPressure(foot, "forward", from + part, from + 2 * part);
  const late = meanCentreOfPressure(foot, "forward", to - 2 * part, to - part);
  return early === null || late === null ? null : (late - early) / (2 * part);
}
