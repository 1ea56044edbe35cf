import { effectiveNumber } from "../effectiveNumber.js";
import { quantile } from "../quantile.js";
import type { Curves } from "./requireCurves.js";
import { ROUNDING, slowInflation } from "./slowInflation.js";

/** Closest to one that a correlation is taken: above it a set is worth less than a fortieth of its curves. */
const HIGHEST_CORRELATION = 0.95;
/** The degrees of freedom are those of the points that are worth least: this share of them lies below. */
export const LOWEST_DECILE = 0.1;

/** What sets of curves whose successive ones resemble each other are worth. */
export interface EffectiveShare {
  /** At each point: independent curves over curves. */
  readonly atPoints: Float64Array;
  /** The same from the correlation of each curve with the next alone. */
  readonly byNeighbours: Float64Array;
  /** First decile over the points, which the degrees of freedom are taken from. */
  readonly low: number;
}

/**
 * Gives what share of its curves a set is worth, at each point: the smaller of what the correlation of each curve with
 * the next and what slower change along the sets leave of them ({@link slowInflation}).
 *
 * Formula: by neighbours {@link effectiveNumber} of 1 and the larger of two correlations, each (n r₁ + 1)/(n − 4): at
 * the point, mean of both sets; over all points, the larger of both sets. One correlation for the whole curve would be
 * steadier, but where only the first third of a stance keeps its correlation of 0.6 it lets 18 to 24 in a hundred pairs of 30
 * or 60 curves through without any true difference; each point's own by itself is too uneven and lets 8 to 11 through
 * at a correlation of 0.6. With degrees of freedom by the first decile both cases stay below 4 (simulated with NumPy,
 * 1000 pairs each). Neighbours alone see nothing of curves that resemble the next but one, or that forget slowly:
 * of these they let 12 to 89 in a hundred pairs of 20 to 60 curves through.
 */
export function effectiveShareOf(
  sets: readonly Curves[],
  formed: readonly boolean[],
  fullWidthAtHalfMaximum: number,
): EffectiveShare {
  const ofSets = sets.map((residuals) => correlationsOf(residuals, formed));
  const whole = Math.max(...ofSets.map((r) => meanWhere(r, formed)));
  const slow = slowInflation(sets, formed, fullWidthAtHalfMaximum);
  const byNeighbours = new Float64Array(formed.length).fill(1);
  const atPoints = byNeighbours.slice();
  const shares: number[] = [];
  for (let q = 0; q < formed.length; q++) {
    if (!formed[q]) continue;
    let own = 0;
    for (const r of ofSets) own += (r[q] as number) / ofSets.length;
    const r = Math.max(-1, Math.min(HIGHEST_CORRELATION, Math.max(own, whole)));
    byNeighbours[q] = effectiveNumber(1, r);
    atPoints[q] = Math.min(byNeighbours[q] as number, 1 / (slow[q] as number));
    shares.push(atPoints[q] as number);
  }
  return { atPoints, byNeighbours, low: quantile(shares, LOWEST_DECILE) };
}

/** Lag-one correlation at each point, freed of its bias; 0 where the set does not vary. */
function correlationsOf(residuals: Curves, formed: readonly boolean[]): Float64Array {
  const n = residuals.length;
  const squares = new Float64Array(formed.length);
  const products = new Float64Array(formed.length);
  residuals.forEach((curve, k) => {
    const before = residuals[k - 1];
    for (let q = 0; q < formed.length; q++) {
      const here = curve[q] as number;
      squares[q] = (squares[q] as number) + here * here;
      if (before !== undefined) products[q] = (products[q] as number) + here * (before[q] as number);
    }
  });
  const least = ROUNDING * squares.reduce((a, b) => Math.max(a, b), 0);
  return squares.map((sum, q) => (sum > least ? ((n * (products[q] as number)) / sum + 1) / (n - 4) : 0));
}

function meanWhere(values: Float64Array, formed: readonly boolean[]): number {
  let sum = 0;
  let count = 0;
  values.forEach((value, q) => {
    if (!formed[q]) return;
    sum += value;
    count++;
  });
  return sum / count;
}
