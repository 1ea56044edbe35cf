import type { SeriesPoint } from "./stepSeriesOf.js";

/** A run of successive contacts, drawn as one. */
export interface StepBin {
  readonly from: number;
  readonly to: number;
  readonly low: number;
  readonly high: number;
  /** Mean of each foot in the run, at the run's middle. */
  readonly means: readonly (SeriesPoint & { readonly n: number })[];
}

/**
 * Puts successive values into runs of equal number, the last one perhaps shorter.
 *
 * @param points - In order of time.
 * @param most - Number of runs.
 */
export function stepBins(points: readonly SeriesPoint[], most: number): readonly StepBin[] {
  const size = Math.ceil(points.length / most);
  return Array.from({ length: Math.ceil(points.length / size) }, (_, i) =>
    binOf(points.slice(i * size, (i + 1) * size)),
  );
}

function binOf(points: readonly SeriesPoint[]): StepBin {
  const from = points[0]?.time ?? 0;
  const to = points.at(-1)?.time ?? from;
  const values = points.map(({ value }) => value);
  const means = (["left", "right", "unknown"] as const).flatMap((side) => {
    const own = points.filter((point) => point.side === side);
    if (own.length === 0) return [];
    const value = own.reduce((sum, point) => sum + point.value / own.length, 0);
    return [{ side, time: (from + to) / 2, value, n: own.length }];
  });
  return { from, to, low: Math.min(...values), high: Math.max(...values), means };
}
