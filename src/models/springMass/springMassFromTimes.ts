import {
  type Complete,
  type Kilograms,
  type MetresPerSecondSquared,
  requireNumber,
  type Seconds,
  STANDARD_GRAVITY,
  withDefaults,
} from "../../units/index.js";
import { type LegGeometry, legOf } from "./legGeometry.js";
import type { SpringMass } from "./springMass.js";

/** One contact and the flights on both sides of it. */
export interface ContactAndFlights {
  readonly mass: Kilograms;
  readonly contactTime: Seconds;
  /** From the toe-off before to this contact. */
  readonly flightBefore: Seconds;
  /** From this toe-off to the next contact. */
  readonly flightAfter: Seconds;
}

/** What {@link springMassFromTimes} may know beside the times. */
export interface SpringMassFromTimesOptions extends LegGeometry {
  readonly gravity?: MetresPerSecondSquared | undefined;
}

/** The vertical spring alone, standard gravity. */
export const SPRING_MASS_FROM_TIMES_DEFAULTS: Complete<SpringMassFromTimesOptions> = {
  speed: null,
  legLength: null,
  height: null,
  copTravel: null,
  gravity: STANDARD_GRAVITY,
};

/**
 * Estimates the spring of a running contact from contact and flight times: the sine-wave method.
 *
 * Formula: F(t) = F_max sin(π t/t_c), F_max = m g (π/2)(t_f/t_c + 1), t_f the mean of the flights before and after;
 * drop = F_max t_c²/(m π²) − g t_c²/8, k_vert = F_max/drop, ΔL = L − √(L² − h²) + drop, h = (v t_c − travel)/2,
 * k_leg = F_max/ΔL, L as stated or 0.53 × height; stored energy F_max × drop/2.
 * Units: kg, s, m/s and m in; N, m, N/m, J and rad out.
 * Limits: running with a flight. The times depend on the threshold they are read at: 50 N for 0 N raises F_max by 8 % and k_leg by
 * 17 % on one synthetic run. The mean speed overstates the speed in contact, so ΔL is too large and k_leg too small (Burns
 * et al. 2021, J Exp Biol 224:jeb242787). A stiffness belongs to its speed and cadence. The stored energy is that of a
 * perfect spring, an upper bound; nothing here measures what tendons give back.
 * Source: Morin et al. 2005, J Appl Biomech 21:167, whose Eq. 7 gives the drop with its sign reversed; its bias against a
 * force platform: F_max 3.2 to 6.9 %, k_vert 0.1 to 2.3 %, k_leg 2.5 to 6.1 %. Travel: McMahon & Cheng 1990, J Biomech
 * 23 suppl 1:65, for a point of contact that moves.
 * @param times - Mass and times, flights from 0, the others above it.
 * @param options - Speed, leg, gravity; {@link SPRING_MASS_FROM_TIMES_DEFAULTS} where left out.
 * @throws GaitKineticsError `out-of-range`, `wrong-type`, `not-finite`: a mass, time or option out of bounds.
 * @example
 * const times = { mass: 68, contactTime: 0.19, flightBefore: 0.14, flightAfter: 0.14 };
 * springMassFromTimes(times).peakForce; // 1819.323
 * springMassFromTimes(times, { speed: 5, legLength: 0.95 }).leg?.stiffness; // 10057.95
 */
export function springMassFromTimes(
  times: ContactAndFlights,
  options: SpringMassFromTimesOptions = SPRING_MASS_FROM_TIMES_DEFAULTS,
): SpringMass {
  const { gravity, ...geometry } = withDefaults(SPRING_MASS_FROM_TIMES_DEFAULTS, options);
  const mass = requireNumber("mass", times.mass, { above: 0, unit: "kg" });
  const contactTime = requireNumber("contactTime", times.contactTime, { above: 0, unit: "s" });
  const hint = "without a flight it is walking, which this model does not describe";
  const before = requireNumber("flightBefore", times.flightBefore, { from: 0, unit: "s", hint });
  const after = requireNumber("flightAfter", times.flightAfter, { from: 0, unit: "s", hint });
  requireNumber("gravity", gravity, { above: 0, unit: "m/s^2" });
  const square = contactTime * contactTime;
  const peakForce = mass * gravity * (Math.PI / 2) * ((before + after) / 2 / contactTime + 1);
  const drop = (peakForce * square) / (mass * Math.PI * Math.PI) - (gravity * square) / 8;
  const { leg, method, cautions } = legOf(geometry, contactTime, peakForce, drop);
  return {
    method: { estimator: "sine-wave", ...method },
    mass,
    peakForce,
    drop,
    verticalStiffness: peakForce / drop,
    storedEnergy: (peakForce * drop) / 2,
    leg,
    cautions,
  };
}
