import { fail, requireNumber, type Samples } from "../../units/index.js";
import { requireSpan } from "../requireSpan.js";
import { sampleAt } from "../sampleAt.js";
import {
  type ContactSpan,
  type Landing,
  type LandingRecord,
  type LandingRefused,
  refuse,
} from "./landing.js";
import { landingAt } from "./landingAt.js";
import { landingSettings, type TouchOptions } from "./options.js";
import { touchesOf } from "./touchesOf.js";

/**
 * Gives where a foot lands and leaves relative to a centre of mass that was measured, by markers for one.
 *
 * Formula: as {@link landingFromForce}, with the centre of mass read at first and last touch.
 * Units: N, N·m, s and m in; m and s out.
 * Limits: the centre of mass must be in the frame of the centre of pressure; a marker on the pelvis is not the centre of
 * mass. Any gait with flights, steady or not, on any slope.
 * Source: definition.
 * @param record - Unfiltered force with offset taken off, and moment, in the library's frame.
 * @param contact - The contact to measure.
 * @param centreOfMass - Its place along `forward` on the record's own samples, m.
 * @param options - Surface, speed, levels in newtons; {@link TOUCH_DEFAULTS} where left out.
 * @returns The distances, or the reason why there are none.
 * @throws GaitKineticsError `unequal-lengths`: not as many places as samples of force; `out-of-range`, `wrong-type`,
 * `not-finite`: an option out of bounds, a foot level in body weights, a contact outside the recording, a place that is no
 * finite number.
 * @example
 * const still = new Float64Array(ground.force.up.length);
 * landingFromCentreOfMass(ground, contact, still, { surface: "belt", speed: 3 }).touchdown > 0 // true
 */
export function landingFromCentreOfMass(
  record: LandingRecord,
  contact: ContactSpan,
  centreOfMass: Samples<"m">,
  options: TouchOptions = {},
): Landing | LandingRefused {
  const { surface, speed, threshold, footLevel, toe } = landingSettings(options);
  const { sampleRate } = record;
  const { up } = record.force;
  requireSpan(up, sampleRate, contact.initialContact, contact.toeOff);
  if (typeof footLevel !== "number") {
    fail(
      "out-of-range",
      "footLevel is in body weights, which one contact does not tell; state it in newtons",
      {
        argument: "footLevel",
      },
    );
  }
  if (centreOfMass.length !== up.length) {
    fail(
      "unequal-lengths",
      `centreOfMass holds ${centreOfMass.length} samples; the force has ${up.length}, and each needs one`,
      { argument: "centreOfMass", values: { given: centreOfMass.length, needed: up.length } },
    );
  }
  if (record.moment?.right === undefined) {
    return refuse("missing-channel", "the centre of pressure was not recorded");
  }
  if (surface === "belt" && !(speed !== null && speed > 0)) {
    return refuse("missing-speed", "the speed of the belt is not stated");
  }
  if (!(footLevel > threshold)) {
    return refuse(
      "foot-level",
      `the foot level of ${footLevel} N is not above the threshold of ${threshold} N`,
    );
  }
  const touches = touchesOf(up, sampleRate, contact, threshold, footLevel, toe);
  if (touches.refused !== undefined) return touches;
  const placeAt = (time: number) =>
    requireNumber("centreOfMass", sampleAt(centreOfMass, time * sampleRate), { unit: "m" });
  return landingAt(
    record,
    touches,
    placeAt(touches.first),
    placeAt(touches.last),
    surface === "belt" ? (speed ?? 0) : 0,
  );
}
