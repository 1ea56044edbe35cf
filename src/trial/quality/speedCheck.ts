import { type Contact, underFoot } from "../../events/index.js";
import { type GroundReaction, meanCentreOfPressure } from "../../force/index.js";
import { median } from "../../statistics/index.js";
import type { Caution, Fraction, Metres, MetresPerSecond } from "../../units/index.js";
import { aloneOnPlate } from "../aloneOnPlate.js";
import { FASTEST } from "../inferSurface.js";
import { meanStep } from "../meanStep.js";

/** Stated and found speed farther apart than this share of the stated one are said. */
export const SPEED_TOLERANCE: Fraction = 0.15;
/** Parts of a contact between which the centre of pressure is followed: the tenth that begins here, and its mirror at the end. */
const PART: Fraction = 0.1;
/**
 * How far the centre of pressure rolls along the foot between both parts, m, and how far that may be off. 0.16 m on the open
 * recording of a runner who lands on heel and midfoot (Fukuchi et al. 2017), 0.18 m on synthetic runs; a forefoot rolls
 * less, a long shoe more: a judgement.
 */
const ROLL: { readonly typical: Metres; readonly off: Metres } = { typical: 0.15, off: 0.1 };
/** Feet that move on more slowly than this stay where they are, m/s. */
const STANDING: MetresPerSecond = 0.1;
/** Kilometres per hour in a metre per second. */
const KILOMETRES_PER_HOUR = 3.6;

/** What the recording says of the stated speed. */
export interface SpeedCheck {
  /** How far the stated speed is from the one found; 0 where they agree or nothing is found. */
  readonly off: MetresPerSecond;
  readonly cautions: readonly Caution[];
}

interface FoundSpeed {
  readonly speed: MetresPerSecond;
  readonly off: MetresPerSecond;
  readonly how: string;
}

/**
 * Holds the stated speed against the centre of pressure. On a belt: how fast it goes backward under load, and what a foot's
 * roll takes from that, (d + 0.15 m) ÷ Δt, d its way from the second tenth of a contact to the ninth, Δt the time between,
 * the median over contacts; 0.10 m of the roll are left open. On the ground: way over time from one contact to the next.
 */
export function speedCheck(ground: GroundReaction, contacts: readonly Contact[]): SpeedCheck {
  const { speed: stated, surface } = ground;
  if (stated === undefined || surface === undefined) return AGREES;
  const found = surface === "belt" ? speedOfBelt(ground, contacts) : speedOverGround(ground, contacts);
  if (found === null) return AGREES;
  const agrees = (speed: MetresPerSecond) =>
    Math.abs(speed - found.speed) <= Math.max(SPEED_TOLERANCE * speed, found.off);
  if (agrees(stated)) return AGREES;
  const inKilometres = stated / KILOMETRES_PER_HOUR;
  const unit = agrees(inKilometres)
    ? `: ${shown(stated)} km/h are ${shown(inKilometres)} m/s`
    : "; check the speed, its unit, the surface and the unit of the centre of pressure";
  const message = `the stated speed of ${shown(stated)} m/s is not the recording's: ${found.how}${unit}. Lengths, forward work and leg stiffness are those of the stated speed`;
  return {
    off: Math.abs(stated - found.speed),
    cautions: [{ code: "speed-disagrees", message, where: "speed", values: { stated, found: found.speed } }],
  };
}

const AGREES: SpeedCheck = { off: 0, cautions: [] };

function speedOfBelt(ground: GroundReaction, contacts: readonly Contact[]): FoundSpeed | null {
  const ways = contacts.flatMap((contact) => {
    const { from, to } = aloneOnPlate(contact);
    const foot = underFoot(ground, contact);
    const part = PART * (to - from);
    const early = meanCentreOfPressure(foot, "forward", from + part, from + 2 * part);
    const late = meanCentreOfPressure(foot, "forward", to - 2 * part, to - part);
    if (early === null || late === null) return [];
    return [{ back: early - late, time: to - from - 3 * part }];
  });
  if (ways.length === 0) return null;
  const time = median(ways.map((way) => way.time));
  const back = median(ways.map((way) => way.back / way.time));
  if (Math.abs(back) > FASTEST) return null;
  const [speed, off] = [back + ROLL.typical / time, ROLL.off / time];
  return {
    speed,
    off,
    how: `on a belt the centre of pressure goes ${back < 0 ? "forward" : "backward"} at ${shown(Math.abs(back))} m/s under load, which with the roll of the foot makes ${shown(speed)} m/s, give or take ${shown(off)}`,
  };
}

function speedOverGround(ground: GroundReaction, contacts: readonly Contact[]): FoundSpeed | null {
  const typical = meanStep(ground, contacts);
  if (typical === null) return null;
  const { forward, right, time } = typical;
  const speed = Math.hypot(forward, right) / time;
  const how = `over ground the feet move on at ${shown(speed)} m/s from one contact to the next`;
  return { speed, off: STANDING, how };
}

function shown(speed: MetresPerSecond): string {
  return speed.toFixed(1);
}
