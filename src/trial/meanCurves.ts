import type { Contact } from "../events/index.js";
import type { GroundReaction } from "../force/index.js";
import type { Direction } from "../recording/index.js";
import { CURVE_POINTS, stanceCurve } from "./stanceCurve.js";
import type { Curve, CurvesBySide } from "./trial.js";

/**
 * Mean and standard deviation between contacts of one component of the force under the foot over stance, by
 * side.
 */
export function meanCurves(
  ground: GroundReaction,
  direction: Direction,
  contacts: readonly Contact[],
): CurvesBySide {
  const curves: { left?: Curve; right?: Curve; unknown?: Curve } = {};
  for (const side of ["left", "right", "unknown"] as const) {
    const own = contacts.filter((contact) => contact.side === side);
    if (own.length > 0) curves[side] = curveOf(ground, direction, own);
  }
  return curves;
}

function curveOf(ground: GroundReaction, direction: Direction, contacts: readonly Contact[]): Curve {
  const mean = new Float64Array(CURVE_POINTS);
  const squares = new Float64Array(CURVE_POINTS);
  let n = 0;
  for (const contact of contacts) {
    const curve = stanceCurve(ground, direction, contact, CURVE_POINTS);
    n++;
    // Welford's recurrence: no loss of digits where the mean is large against the spread.
    for (let p = 0; p < CURVE_POINTS; p++) {
      const value = curve[p] as number;
      const delta = value - (mean[p] as number);
      mean[p] = (mean[p] as number) + delta / n;
      squares[p] = (squares[p] as number) + delta * (value - (mean[p] as number));
    }
  }
  const sd = n > 1 ? Array.from(squares, (sum) => Math.sqrt(sum / (n - 1))) : null;
  return { mean: Array.from(mean), sd, n };
}
