import type { Side } from "../recording/index.js";
import { type Complete, fail } from "../units/index.js";
import type { SyntheticStance } from "./options.js";
import { outward, type Stance } from "./stance.js";

/** What turns shares of body weight into newtons. */
export interface Runner {
  readonly mass: number;
  readonly height: number;
  readonly gravity: number;
}

/** Impulse that a step is given beyond what the steady laws ask for, N·s. */
export interface ExtraImpulse {
  readonly forward: number;
  readonly up: number;
  readonly right: number;
}

/** None, as in a steady run. */
export const NO_EXTRA: ExtraImpulse = { forward: 0, up: 0, right: 0 };

/**
 * Makes one contact of the model from its quantities so that the laws hold.
 *
 * Formula: up, A₁ t₁ + A₂ t_c / 2 = m g T, T the step's own time; forward, propulsive impulse = braking impulse;
 * each with the extra impulse added, which the medial force takes on the right.
 * @throws GaitKineticsError `out-of-range`: quantities that no running contact has.
 */
export function buildStance(
  side: Side,
  quantities: Complete<SyntheticStance>,
  { mass, height, gravity }: Runner,
  extra: ExtraImpulse,
  where: string,
): Stance {
  const weight = mass * gravity;
  const { stepTime, contactTime, impactTime, lateralTime } = quantities;
  const impactAmplitude = quantities.impactAmplitude * weight;
  const crossTime = quantities.crossShare * contactTime;
  const brakingAmplitude = quantities.brakingAmplitude * weight;
  const braking = (2 * brakingAmplitude * crossTime) / Math.PI;
  const medialTime = contactTime - lateralTime;
  const stance: Stance = {
    side,
    stepTime,
    contactTime,
    impactAmplitude,
    impactTime,
    mainAmplitude: (weight * stepTime + extra.up - impactAmplitude * impactTime) / (contactTime / 2),
    brakingAmplitude,
    crossTime,
    propulsiveAmplitude: ((braking + extra.forward) * Math.PI) / (2 * (contactTime - crossTime)),
    lateralAmplitude: quantities.lateralAmplitude * weight,
    lateralTime,
    medialAmplitude:
      quantities.medialAmplitude * weight - (outward(side) * extra.right * Math.PI) / (2 * medialTime),
    copRoll: quantities.copRoll,
    copWidth: quantities.copWidth,
    freeMomentAmplitude: quantities.freeMomentAmplitude * weight * height,
  };
  refuseImpossible(stance, where);
  return stance;
}

function refuseImpossible(stance: Stance, where: string): void {
  const refuse = (argument: string, what: string, value: number, allowed: string): void =>
    fail(
      "out-of-range",
      `${where}: ${argument} ${what} ${Number(value.toPrecision(6))}; it must be ${allowed}`,
      {
        argument,
        where,
        values: { given: value },
      },
    );
  const { stepTime, contactTime, impactTime, crossTime, lateralTime } = stance;
  if (!(contactTime > 0)) refuse("contactTime", "is", contactTime, "above 0 s");
  if (!(contactTime < stepTime))
    refuse("contactTime", "is", contactTime, `below the step time of ${stepTime} s: running has a flight`);
  if (!(impactTime > 0 && impactTime <= contactTime / 2))
    refuse("impactTime", "is", impactTime, `above 0 and at most half the contact time of ${contactTime} s`);
  if (!(lateralTime > 0 && lateralTime < contactTime))
    refuse("lateralTime", "is", lateralTime, `above 0 and below the contact time of ${contactTime} s`);
  if (!(crossTime > 0 && crossTime < contactTime))
    refuse("crossShare", "is", crossTime / contactTime, "above 0 and below 1");
  if (!(stance.mainAmplitude > 0))
    refuse("impactAmplitude", "leaves a second peak of, in N,", stance.mainAmplitude, "above 0 N: lower it");
  const amplitudes = [
    "impactAmplitude",
    "brakingAmplitude",
    "propulsiveAmplitude",
    "lateralAmplitude",
    "medialAmplitude",
  ] as const;
  for (const name of amplitudes)
    if (!(stance[name] >= 0)) refuse(name, "is, in N,", stance[name], "at least 0");
}
