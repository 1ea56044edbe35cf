import type { Step } from "../../events/index.js";
import type { GroundReaction } from "../../force/index.js";
import {
  type LegGeometry,
  type SpringMass,
  type SpringMassMethod,
  springMassFromForce,
  springMassFromTimes,
} from "../../models/index.js";
import { requireOneOf } from "../../units/index.js";
import { massForStep } from "../common/massForStep.js";
import { requireContact } from "../common/requireContact.js";
import { sharedResult } from "../common/sharedResult.js";
import { aerialTime } from "../timing/aerialTime.js";
import { strideTime } from "../timing/strideTime.js";

/** `force`: peak and drop from the force itself; `sine-wave`: both from contact and flight times, after Morin et al. 2005. */
export type SpringMethod = SpringMassMethod["estimator"];

/** How a spring is come by. */
export interface SpringOptions {
  readonly method?: SpringMethod | undefined;
}

/**
 * Works out the spring of a step; `null` without the neighbours it needs, without a drop, and, from times, without a flight.
 *
 * The sine wave takes the mean of the flights before and after the contact. A step does not hold the contact before it, so
 * the flight before the next contact of the same foot stands in: in steady running it is the same one a stride later.
 *
 * @param ground - The recording.
 * @param step - The step.
 * @param method - Where peak and drop are from.
 * @param geometry - Of the leg, where more is known of it than speed and height.
 */
export function springOf(
  ground: GroundReaction,
  step: Step,
  method: SpringMethod,
  geometry: LegGeometry | null = null,
): SpringMass | null {
  requireOneOf("method", method, ["force", "sine-wave"]);
  const { initialContact, toeOff } = requireContact(ground, step);
  const stride = strideTime(ground, step);
  if (stride === null) return null;
  const { gravity, grade = 0, speed = null, subject } = ground;
  const compute = (): SpringMass | null => {
    const leg = { speed, height: subject.height ?? null, ...geometry };
    const mass = massForStep(ground, step);
    if (method === "force") {
      const end = initialContact + stride;
      return springMassFromForce(ground, initialContact, toeOff, end, { ...leg, mass, gravity, grade });
    }
    const { next } = step;
    const flightAfter = aerialTime(ground, step);
    const flightBefore = next === undefined ? -1 : initialContact + stride - next.toeOff;
    if (flightAfter === null || flightBefore < 0) return null;
    const times = { mass, contactTime: toeOff - initialContact, flightBefore, flightAfter };
    // Normal to a slope, body weight carries the runner by its cosine.
    return springMassFromTimes(times, { ...leg, gravity: gravity / Math.hypot(1, grade) });
  };
  return geometry === null ? sharedResult(ground, step, "spring", method, compute) : compute();
}
