import { springMassFromTimes } from "../springMass/springMassFromTimes.js";

/** The part of a runner that stays when the cadence changes. */
export interface SteadyRunner {
  readonly mass: number;
  readonly speed: number;
  readonly legLength: number;
  readonly copTravel: number;
  readonly gravity: number;
}

/** One step of the spring-mass runner; SI units. */
export interface SpringMassStep {
  readonly contactTime: number;
  readonly aerialTime: number;
  readonly peakVerticalForce: number;
  readonly verticalOscillation: number;
  readonly verticalStiffness: number;
  readonly legStiffness: number;
  readonly peakBrakingForce: number;
  readonly brakingImpulse: number;
}

/** Largest sin(π u) (1 − 2u) for u from 0 to ½. */
const PEAK_BRAKING_SHARE = 0.357205;

/**
 * Works out a step of a symmetric spring-mass runner from its times.
 *
 * Formula: sine-wave method; vertical oscillation = drop + g t_a²/8; braking from a force that points from a foot moving evenly under
 * the body at the centre of mass, whose height is that at contact: F_x = F_max sin(π u) h (1 − 2u)/√(L² − h²), u = t/t_c;
 * its impulse over the first half is F_max t_c h (1/π − 2/π²)/√(L² − h²), its peak 0.3572 F_max h/√(L² − h²).
 *
 * @param runner - What does not change.
 * @param stepTime - s.
 * @param contactTime - s, above 0, at most the step time.
 * @returns `null` where the sweep does not fit the leg.
 */
export function springMassStep(
  runner: SteadyRunner,
  stepTime: number,
  contactTime: number,
): SpringMassStep | null {
  const { mass, gravity, ...geometry } = runner;
  const aerialTime = Math.max(0, stepTime - contactTime);
  const times = { mass, contactTime, flightBefore: aerialTime, flightAfter: aerialTime };
  const { peakForce, drop, verticalStiffness, leg } = springMassFromTimes(times, { gravity, ...geometry });
  if (leg === null) return null;
  const lean = leg.sweep / 2 / Math.sqrt(leg.length * leg.length - (leg.sweep * leg.sweep) / 4);
  return {
    contactTime,
    aerialTime,
    peakVerticalForce: peakForce,
    verticalOscillation: drop + (gravity * aerialTime * aerialTime) / 8,
    verticalStiffness,
    legStiffness: leg.stiffness,
    peakBrakingForce: PEAK_BRAKING_SHARE * peakForce * lean,
    brakingImpulse: peakForce * contactTime * lean * (1 / Math.PI - 2 / (Math.PI * Math.PI)),
  };
}

/**
 * Finds the step whose leg stiffness is a stated one: stiffer legs have shorter contacts.
 *
 * @param runner - What does not change.
 * @param stepTime - s.
 * @param legStiffness - N/m, above 0.
 * @returns `null` where no contact that is shorter than the step and fits the leg has it.
 */
export function stepOfStiffness(
  runner: SteadyRunner,
  stepTime: number,
  legStiffness: number,
): SpringMassStep | null {
  // Shorter contacts than this would have the centre of pressure outrun the body.
  let short = Math.max(stepTime / 20, (runner.copTravel / runner.speed) * (1 + 1e-9));
  let long = stepTime;
  const stiffer = (contactTime: number): boolean => {
    const step = springMassStep(runner, stepTime, contactTime);
    return step !== null && step.legStiffness > legStiffness;
  };
  if (!stiffer(short) || stiffer(long)) return null;
  for (let halving = 0; halving < 60; halving++) {
    const middle = (short + long) / 2;
    if (stiffer(middle)) short = middle;
    else long = middle;
  }
  const step = springMassStep(runner, stepTime, short);
  // Halving ends at the longest contact that fits the leg where no contact is soft enough.
  return step !== null && Math.abs(step.legStiffness / legStiffness - 1) < 1e-6 ? step : null;
}
