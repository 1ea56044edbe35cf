import type { Trial } from "../../trial/index.js";

/** As stated, or by force where it was not: another scale of the force is told by the ratio of both. */
export function massOf({ settings: { mass, massStated, massByForce } }: Trial): number | null {
  return massStated ? mass : massByForce;
}
