import { type Kilograms, type Metres, type Quantity, requireNumber } from "../../units/index.js";
import type { ExternalWork, WorkParts } from "../externalWork.js";

/** Sums of the rises and of the falls of an energy, per kilogram and metre. */
export interface WorkPartsPerMetre {
  readonly positive: Quantity<"J/kg/m">;
  readonly negative: Quantity<"J/kg/m">;
}

/** External work per kilogram of body mass and metre of way. */
export interface ExternalWorkPerMetre {
  readonly external: WorkPartsPerMetre | null;
  readonly forward: WorkPartsPerMetre | null;
  readonly vertical: WorkPartsPerMetre;
  readonly lateral: WorkPartsPerMetre | null;
}

/**
 * Divides external work by body mass and by the way it was done over, so that steps of different length compare.
 *
 * Formula: W/(m d), d = speed × time counted.
 * Units: J, kg and m in; J/kg/m out.
 * Limits: the way is that over the surface in the time the work was counted over; on a belt speed × time as well.
 * Source: Cavagna & Kaneko 1977, J Physiol 268:467, for external work per mass and distance.
 * @param work - From {@link externalWork}.
 * @param mass - Above 0.
 * @param distance - Above 0.
 * @throws GaitKineticsError `out-of-range`, `wrong-type`, `not-finite`: mass or distance not above 0.
 * @example
 * const parts = { positive: 113.4, negative: -113.4 };
 * const work = { external: parts, forward: null, vertical: parts, lateral: null };
 * workPerMetre(work, 70, 1.08).external; // { positive: 1.5, negative: -1.5 }
 */
export function workPerMetre(work: ExternalWork, mass: Kilograms, distance: Metres): ExternalWorkPerMetre {
  requireNumber("mass", mass, { above: 0, unit: "kg" });
  requireNumber("distance", distance, { above: 0, unit: "m" });
  const share = ({ positive, negative }: WorkParts): WorkPartsPerMetre => ({
    positive: positive / (mass * distance),
    negative: negative / (mass * distance),
  });
  const { external, forward, vertical, lateral } = work;
  return {
    external: external && share(external),
    forward: forward && share(forward),
    vertical: share(vertical),
    lateral: lateral && share(lateral),
  };
}
