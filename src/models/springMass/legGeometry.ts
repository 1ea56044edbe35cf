import { type Caution, type Metres, type MetresPerSecond, requireNumber } from "../../units/index.js";
import type { SpringLeg, SpringMassMethod } from "./springMass.js";

/** What the leg spring needs beside the vertical one. */
export interface LegGeometry {
  /** Mean forward speed over the surface. */
  readonly speed?: MetresPerSecond | null | undefined;
  /** Greater trochanter to ground, standing. */
  readonly legLength?: Metres | null | undefined;
  /** Body height; 0.53 of it stands in for a leg length that is not stated. */
  readonly height?: Metres | null | undefined;
  /** Forward travel of the centre of pressure over the ground in contact; `null` for a fixed point of contact. */
  readonly copTravel?: Metres | null | undefined;
}

/** Leg length over body height. Source: Winter 1979, as used by Morin et al. 2005, J Appl Biomech 21:167 (bias 1.94 %). */
export const LEG_LENGTH_PER_HEIGHT = 0.53;

type Geometry = { readonly [Name in keyof LegGeometry]-?: number | null };

/** The leg of a contact, how it was come by, and what is suspect of it. */
export interface Leg {
  readonly leg: SpringLeg | null;
  readonly method: Pick<SpringMassMethod, "legLength" | "sweep">;
  readonly cautions: readonly Caution[];
}

/**
 * Works out the leg spring from the vertical one.
 *
 * Formula: h = (v t_c − travel)/2; ΔL = L − √(L² − h²) + drop; k = F_max/ΔL; swept angle 2 asin(h/L).
 *
 * @param geometry - Completed; `null` where not known.
 * @param contactTime - s, above 0.
 * @param peakForce - N, above 0.
 * @param drop - m, above 0.
 */
export function legOf(geometry: Geometry, contactTime: number, peakForce: number, drop: number): Leg {
  const { speed, legLength, height, copTravel } = geometry;
  if (speed !== null) requireNumber("speed", speed, { from: 0, unit: "m/s" });
  if (legLength !== null) requireNumber("legLength", legLength, { above: 0, unit: "m" });
  if (height !== null) requireNumber("height", height, { above: 0, below: 3, unit: "m" });
  if (copTravel !== null) requireNumber("copTravel", copTravel, { above: -1, below: 1, unit: "m" });
  const length = legLength ?? (height === null ? null : LEG_LENGTH_PER_HEIGHT * height);
  const lengthFrom = legLength !== null ? "measured" : height !== null ? "height" : null;
  if (speed === null || length === null) {
    return { leg: null, method: { legLength: lengthFrom, sweep: null }, cautions: [] };
  }
  const sweep = speed * contactTime - (copTravel ?? 0);
  const method = {
    legLength: lengthFrom,
    sweep: copTravel === null ? "speed" : "centre-of-pressure",
  } as const;
  const half = sweep / 2;
  if (half < 0 || half >= length) {
    const caution = {
      code: "sweep-beyond-leg",
      message: `a sweep of ${sweep} m does not fit a leg of ${length} m; speed, contact time, leg length or the travel of the centre of pressure is wrong`,
      values: { sweep, legLength: length, speed, contactTime, copTravel },
    };
    return { leg: null, method, cautions: [caution] };
  }
  const compression = length - Math.sqrt(length * length - half * half) + drop;
  return {
    leg: {
      length,
      sweep,
      sweptAngle: 2 * Math.asin(half / length),
      compression,
      stiffness: peakForce / compression,
    },
    method,
    cautions: [],
  };
}
