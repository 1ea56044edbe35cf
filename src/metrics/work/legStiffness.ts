import type { Step } from "../../events/index.js";
import type { GroundReaction } from "../../force/index.js";
import { LEG_LENGTH_PER_HEIGHT } from "../../models/index.js";
import {
  type Complete,
  fail,
  type Metres,
  type Quantity,
  requireOneOf,
  withDefaults,
} from "../../units/index.js";
import { requireSpeed } from "../common/requireSpeed.js";
import { copTravelOf } from "./copTravelOf.js";
import { type SpringOptions, springOf } from "./springOf.js";

/** How the leg spring is come by. */
export interface LegStiffnessOptions extends SpringOptions {
  /** Greater trochanter to ground, standing; `null` for 0.53 × height. */
  readonly legLength?: Metres | null | undefined;
  /**
   * What the leg sweeps over: `speed`: speed × contact time, from a fixed point; `centre-of-pressure`: that less the forward travel of
   * the centre of pressure over the ground.
   */
  readonly sweep?: "speed" | "centre-of-pressure" | undefined;
}

/**
 * From the force, 0.53 × height, a fixed point of contact: one form for all recordings. Source: McMahon & Cheng 1990, J
 * Biomech 23 suppl 1:65; Morin et al. 2005, J Appl Biomech 21:167.
 */
export const LEG_STIFFNESS_DEFAULTS: Complete<LegStiffnessOptions> = {
  method: "force",
  legLength: null,
  sweep: "speed",
};

/**
 * Gives the stiffness of the straight spring from the foot to the centre of mass that the body would run on.
 *
 * Formula: F_max/ΔL, ΔL = L − √(L² − h²) + drop, h = (v t_c − travel)/2; F_max and drop as in {@link verticalStiffness}, L the leg's
 * length, travel 0 or that of the centre of pressure over the ground between the first and the last 250 N.
 * Units: N, s, kg, m/s and m in; N/m out.
 * Limits: `null` without a later contact of the same side, where the centre of mass does not fall after contact, the sweep
 * does not fit the leg, or by the sine wave without a flight. From a fixed point ΔL is too large: 143 mm, and 108 mm with the
 * travel, on one synthetic contact, so compare values of one form. The mean speed overstates that in contact (Burns et al.
 * 2021, J Exp Biol 224:jeb242787). A stiffness belongs to its speed and cadence; more is no load.
 * Source: McMahon & Cheng 1990, J Biomech 23 suppl 1:65; sine wave and 0.53 × height (after Winter 1979): Morin et al. 2005, J
 * Appl Biomech 21:167.
 * @param ground - Force in the library's frame, for the travel with the moment; speed, surface and the runner's height are read.
 * @param step - The step to measure; its contact and the next one of the same side are used, by the sine wave the next one too.
 * @param options - Method, leg, sweep; {@link LEG_STIFFNESS_DEFAULTS} where left out.
 * @throws GaitKineticsError `wrong-type`: no contact; `missing-value`: speed, surface, or both leg length and height not stated;
 * `missing-channel`: the travel is asked for and no centre of pressure was recorded; `out-of-range`: an option out of bounds, contacts not in
 * order within the recording.
 * @example
 * const force = { up: new Float64Array([700, 1400, 700, 0, 700, 1400, 700, 0, 700]) };
 * const stride = { contact: { ...contact, initialContact: 0, toeOff: 0.2 }, nextSameSide: { ...contact, initialContact: 0.8 } };
 * const belt = { ...ground, sampleRate: 10, massByForce: 70, force, speed: 3, surface: "belt" };
 * legStiffness(belt, stride, { legLength: 0.9 }); // 16508
 */
export function legStiffness(
  ground: GroundReaction,
  step: Step,
  options: LegStiffnessOptions = LEG_STIFFNESS_DEFAULTS,
): Quantity<"N/m"> | null {
  const { method, legLength, sweep } = withDefaults(LEG_STIFFNESS_DEFAULTS, options);
  requireOneOf("sweep", sweep, ["speed", "centre-of-pressure"]);
  requireSpeed(ground, "legStiffness");
  if (legLength === null && ground.subject.height === undefined) {
    fail(
      "missing-value",
      `legStiffness needs the runner's height, of which ${LEG_LENGTH_PER_HEIGHT} is taken for the leg, or the option legLength`,
      { argument: "legLength", values: { metric: "legStiffness" } },
    );
  }
  if (sweep === "speed" && legLength === null) return stiffnessOf(springOf(ground, step, method));
  const copTravel = sweep === "speed" ? null : copTravelOf(ground, step, "legStiffness");
  if (sweep !== "speed" && copTravel === null) return null;
  return stiffnessOf(springOf(ground, step, method, { legLength, copTravel }));
}

function stiffnessOf(spring: ReturnType<typeof springOf>): number | null {
  return spring?.leg?.stiffness ?? null;
}
