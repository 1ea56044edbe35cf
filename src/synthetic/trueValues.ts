import { largest } from "./largest.js";
import type { LaidStep } from "./layOutSteps.js";
import { copTravel, type Stance, stanceForce } from "./stance.js";
import { type Motion, travel, velocityChange } from "./stanceMotion.js";
import type { TrueValues } from "./truth.js";

/** Step of the sums over a contact, s. */
const GRID = 5e-4;

/**
 * Works out the true values of a laid step: closed forms where the model has them, and a dense evaluation for peaks of
 * sums, vertical oscillation and work.
 */
export function trueValues(
  { stance, motion, landing }: LaidStep,
  gravity: number,
  speed: number,
): TrueValues {
  const { contactTime, stepTime, crossTime, lateralTime } = stance;
  const lobe = (amplitude: number, length: number) => (2 * amplitude * length) / Math.PI;
  const brakingImpulse = lobe(stance.brakingAmplitude, crossTime);
  const propulsiveImpulse = lobe(stance.propulsiveAmplitude, contactTime - crossTime);
  const lateralImpulse = lobe(stance.lateralAmplitude, lateralTime);
  const medialImpulse = lobe(stance.medialAmplitude, contactTime - lateralTime);
  const verticalImpulse = stanceForce(stance, "up", contactTime, 1);
  const up = (time: number) => stanceForce(stance, "up", time);
  const resultant = (time: number) =>
    Math.hypot(up(time), stanceForce(stance, "forward", time), stanceForce(stance, "right", time));
  const height = (time: number) => travel(stance, motion, "up", time);
  const impact = impactPeakOf(stance, motion.mass * gravity);
  const advance = travel(stance, motion, "forward", contactTime);
  return {
    contactTime,
    aerialTime: stepTime - contactTime,
    stepTime,
    cadence: 60 / stepTime,
    brakingTime: crossTime,
    propulsiveTime: contactTime - crossTime,
    peakVerticalForce: largest(up, 0, contactTime).value,
    impactPeak: impact === null ? null : impact.value,
    timeToImpactPeak: impact === null ? null : impact.time,
    verticalImpulse,
    meanVerticalForce: verticalImpulse / contactTime,
    verticalOscillation:
      largest(height, 0, stepTime).value + largest((time) => -height(time), 0, stepTime).value,
    brakingImpulse,
    propulsiveImpulse,
    netForwardImpulse: propulsiveImpulse - brakingImpulse,
    peakBrakingForce: stance.brakingAmplitude,
    peakPropulsiveForce: stance.propulsiveAmplitude,
    mediolateralImpulse: lateralImpulse + medialImpulse,
    medialImpulse,
    lateralImpulse,
    peakMedialForce: stance.medialAmplitude,
    peakLateralForce: stance.lateralAmplitude,
    peakResultantForce: largest(resultant, 0, contactTime).value,
    peakFreeMoment: stance.freeMomentAmplitude,
    freeMomentImpulse: lobe(stance.freeMomentAmplitude, contactTime),
    touchdownDistance: landing,
    takeOffDistance: advance - landing - copTravel(stance, contactTime),
    stepLength: speed * stepTime,
    positiveExternalWork: positiveWork(stance, motion, gravity),
  };
}

/**
 * First local maximum of the vertical force later than 5 ms after the contact and before 35 % of it, from which the force
 * drops by at least 0.02 body weights before it next exceeds it.
 */
function impactPeakOf(stance: Stance, weight: number): { time: number; value: number } | null {
  const up = (time: number) => stanceForce(stance, "up", time);
  const end = 0.35 * stance.contactTime;
  for (let time = 5e-3; time < end; time += GRID) {
    if (!(up(time) > up(time - GRID) && up(time) >= up(time + GRID))) continue;
    const peak = largest(up, time - GRID, time + GRID);
    let least = peak.value;
    for (let later = time + GRID; later <= stance.contactTime && up(later) <= peak.value; later += GRID)
      least = Math.min(least, up(later));
    if (peak.value - least >= 0.02 * weight) return peak;
  }
  return null;
}

/** Sum of the rises of the centre of mass's kinetic and potential energy over the contact; in flight there are none. */
function positiveWork(stance: Stance, motion: Motion, gravity: number): number {
  const { mass, velocity } = motion;
  const energy = (time: number) => {
    const forward = velocity.forward + velocityChange(stance, motion, "forward", time);
    const up = velocity.up + velocityChange(stance, motion, "up", time);
    const right = velocity.right + velocityChange(stance, motion, "right", time);
    const kinetic = (mass * (forward * forward + up * up + right * right)) / 2;
    return kinetic + mass * gravity * travel(stance, motion, "up", time);
  };
  const count = Math.ceil(stance.contactTime / GRID);
  let work = 0;
  let before = energy(0);
  for (let i = 1; i <= count; i++) {
    const here = energy((i / count) * stance.contactTime);
    if (here > before) work += here - before;
    before = here;
  }
  return work;
}
