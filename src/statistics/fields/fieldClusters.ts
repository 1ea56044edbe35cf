import { requireNumber } from "../../units/index.js";
import { requireValues, type Values } from "../requireValues.js";

/** A stretch of a curve beyond a threshold; places in points from 0. */
export interface FieldCluster {
  /** Where it begins and ends, interpolated between points. */
  readonly from: number;
  readonly to: number;
  /** Its largest value by size, with its sign. */
  readonly peak: number;
  /** The point that has it. */
  readonly peakAt: number;
}

/**
 * Finds the stretches in which a curve lies above a threshold or below minus it.
 *
 * Formula: ends where the straight line between points crosses the threshold, or at the curve's own ends.
 * Units: those of the curve; places in points.
 * Limits: a curve that leaves the threshold between two points only is not seen.
 * Source: common practice.
 * @param statistic - Values along the curve, at least two.
 * @param threshold - Above 0.
 * @throws GaitKineticsError `too-short`, `not-finite`, `wrong-type`: no such curve; `out-of-range`: the threshold.
 * @example
 * fieldClusters([0, 2, 4, 2, 0], 3)[0].from // 1.5
 */
export function fieldClusters(statistic: Values, threshold: number): FieldCluster[] {
  requireValues("statistic", statistic, 2);
  requireNumber("threshold", threshold, { above: 0 });
  const value = (q: number) => statistic[q] as number;
  const sideOf = (q: number) => (Math.abs(value(q)) > threshold ? Math.sign(value(q)) : 0);
  const clusters: FieldCluster[] = [];
  const last = statistic.length - 1;
  for (let first = 0; first <= last; first++) {
    const side = sideOf(first);
    if (side === 0) continue;
    let end = first;
    let peakAt = first;
    while (end < last && sideOf(end + 1) === side) {
      end++;
      if (Math.abs(value(end)) > Math.abs(value(peakAt))) peakAt = end;
    }
    const crossing = (inside: number, outside: number) => {
      const rise = side * (value(inside) - value(outside));
      return inside + ((side * value(inside) - threshold) / rise) * (outside - inside);
    };
    clusters.push({
      from: first === 0 ? 0 : crossing(first, first - 1),
      to: end === last ? last : crossing(end, end + 1),
      peak: value(peakAt),
      peakAt,
    });
    first = end;
  }
  return clusters;
}
