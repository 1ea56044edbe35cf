import type { Surface } from "../recording/index.js";
import { type Caution, type MetresPerSecond, type Newtons, requireNumber } from "../units/index.js";

/** Speed over ground above which air drag is no longer left out in silence. Source: this library's choice; 3 N there. */
export const AIR_DRAG_SPEED: MetresPerSecond = 3.5;

/** What {@link airDragCaution} asks of a trial. */
export interface AirDragCase {
  readonly speed: MetresPerSecond;
  readonly surface: Surface;
  /** `null` where nobody stated it. */
  readonly drag: Newtons | null;
}

/**
 * Says that air drag was left out where it is a real force: over ground above 3.5 m/s, with no drag stated.
 *
 * Formula: speed > 3.5 m/s on the ground with no drag stated.
 * Units: m/s and N in.
 * Limits: `null` where nothing is to be said: on a belt, at lower speed, or with a drag stated, 0 N too.
 * Source: this library's choice; the size from {@link airDrag}.
 * @param trial - Speed, surface and drag of it.
 * @throws GaitKineticsError `out-of-range`, `wrong-type`, `not-finite`: a speed below 0 or no number.
 * @example
 * airDragCaution({ speed: 5, surface: "ground", drag: null })?.code // "air-drag"
 * airDragCaution({ speed: 5, surface: "belt", drag: null }) // null
 */
export function airDragCaution(trial: AirDragCase): Caution | null {
  const { speed, surface, drag } = trial;
  requireNumber("speed", speed, { from: 0, unit: "m/s" });
  if (surface !== "ground" || drag !== null || speed <= AIR_DRAG_SPEED) return null;
  return {
    code: "air-drag",
    message: `over ground at ${speed} m/s air drag is a real force (about 3 N at 3.5 m/s, growing with the square of the speed); it was left out, so forward work is too low`,
    values: { speed, limit: AIR_DRAG_SPEED },
  };
}
