import {
  type Complete,
  type Kilograms,
  type MetresPerSecondSquared,
  requireNumber,
  type Seconds,
  STANDARD_GRAVITY,
  withDefaults,
} from "../../units/index.js";
import { startAxis } from "../axisState.js";
import type { ForceRecord } from "../forceRecord.js";
import { massFromForce } from "../massFromForce.js";
import { placeAfter } from "../placeAfter.js";
import { requireSpan } from "../requireSpan.js";
import { sampleAt } from "../sampleAt.js";
import { velocityAfter } from "../velocityAfter.js";
import { type LegGeometry, legOf } from "./legGeometry.js";
import type { SpringMass } from "./springMass.js";

/** What {@link springMassFromForce} needs beside the force. */
export interface SpringMassFromForceOptions extends LegGeometry {
  /** Mass to integrate with; `null` for the one by force over the same stride. */
  readonly mass?: Kilograms | null | undefined;
  readonly gravity?: MetresPerSecondSquared | undefined;
  /** Rise over run, uphill positive. */
  readonly grade?: number | undefined;
}

/** Mass by force, the vertical spring alone, standard gravity, level. */
export const SPRING_MASS_FROM_FORCE_DEFAULTS: Complete<SpringMassFromForceOptions> = {
  speed: null,
  legLength: null,
  height: null,
  copTravel: null,
  mass: null,
  gravity: STANDARD_GRAVITY,
  grade: 0,
};

/**
 * Gives the spring of a running contact from the vertical force of the stride that begins with it.
 *
 * Formula: k_vert = F_max/drop, the drop of the centre of mass from initial contact to its lowest point by integration as in
 * {@link centreOfMassMotion}; ΔL = L − √(L² − h²) + drop, h = (v t_c − travel)/2, k_leg = F_max/ΔL, L as stated or
 * 0.53 × height; stored energy F_max × drop/2.
 * Units: N, s, kg, m/s and m in; N, m, N/m, J and rad out.
 * Limits: `from` to `to` must be a whole stride of steady running. `null` where the centre of mass does not fall after
 * contact. Drop and contact time shrink with the threshold that `from` was read at. Without the travel of the centre of
 * pressure ΔL is too large: on one synthetic contact 143 mm, and with it 108 mm. The stored energy is that of a
 * perfect spring, an upper bound; nothing here measures what tendons give back.
 * Source: McMahon & Cheng 1990, J Biomech 23 suppl 1:65; leg length 0.53 × height: Morin et al. 2005, J Appl Biomech
 * 21:167, after Winter 1979.
 * @param record - Force in the library's frame.
 * @param from - Initial contact, from the first sample: the start of the stride.
 * @param toeOff - End of the contact, above `from`, not behind `to`.
 * @param to - End of the stride: the next contact of the same foot.
 * @param options - Speed, leg, mass; {@link SPRING_MASS_FROM_FORCE_DEFAULTS} where left out.
 * @throws GaitKineticsError `out-of-range`, `wrong-type`, `not-finite`: times that do not rise within the samples, an option
 * out of bounds.
 * @example
 * const force = { up: new Float64Array([700, 1400, 700, 0, 700, 1400, 700, 0, 700]) };
 * springMassFromForce({ sampleRate: 10, force }, 0, 0.2, 0.8, { mass: 70 })?.drop; // 0.033333
 */
export function springMassFromForce(
  record: ForceRecord,
  from: Seconds,
  toeOff: Seconds,
  to: Seconds,
  options: SpringMassFromForceOptions = SPRING_MASS_FROM_FORCE_DEFAULTS,
): SpringMass | null {
  const {
    mass: stated,
    gravity,
    grade,
    ...geometry
  } = withDefaults(SPRING_MASS_FROM_FORCE_DEFAULTS, options);
  const { sampleRate } = record;
  const { up } = record.force;
  requireSpan(up, sampleRate, from, to);
  requireNumber("toeOff", toeOff, { above: from, to, unit: "s" });
  const mass = stated ?? massFromForce(up, sampleRate, from, to, { gravity, grade });
  requireNumber("mass", mass, { above: 0, unit: "kg" });
  const axis = startAxis(up, sampleRate, from, to, mass, 0);
  const { meanForce, perMass } = axis;
  let { acceleration, velocity, position } = axis;
  const interval = 1 / sampleRate;
  const end = toeOff * sampleRate;
  let before = from * sampleRate;
  let lowest = 0;
  let peakForce = sampleAt(up, before);
  const atEnd = sampleAt(up, end);
  for (let i = Math.floor(before) + 1; before < end; i++) {
    const place = Math.min(i, end);
    const duration = (place - before) * interval;
    const force = i < end ? (up[i] as number) : atEnd;
    const after = (force - meanForce) * perMass;
    position = placeAfter(position, velocity, acceleration, after, duration);
    velocity = velocityAfter(velocity, acceleration, after, duration);
    acceleration = after;
    if (position < lowest) lowest = position;
    if (force > peakForce) peakForce = force;
    before = place;
  }
  if (lowest === 0 || peakForce <= 0) return null;
  const drop = -lowest;
  const { leg, method, cautions } = legOf(geometry, toeOff - from, peakForce, drop);
  return {
    method: { estimator: "force", ...method },
    mass,
    peakForce,
    drop,
    verticalStiffness: peakForce / drop,
    storedEnergy: (peakForce * drop) / 2,
    leg,
    cautions,
  };
}
