import type { SeededRandom } from "../../../src/statistics/index.js";
import type { StanceCurves } from "../../../src/trial/index.js";

/** What {@link randomCurves} is made of. */
export interface RandomCurves {
  readonly curves: number;
  /** Full width at half maximum of the smoothing kernel, points. */
  readonly fullWidthAtHalfMaximum: number;
  /** Correlation of each curve with the next, at each point. */
  readonly correlation: (percent: number) => number;
  /** In place of it: correlation of each curve with those after it, from lag 0, at every point. */
  readonly autocorrelation?: ((lags: number) => readonly number[]) | undefined;
  /** Added to every curve. */
  readonly mean?: ((percent: number) => number) | undefined;
  /** Standard deviation of the curves about their mean; 1 where left out. */
  readonly spread?: number | undefined;
}

/**
 * Smooth normal curves of 101 points, each correlated with the one before it: white noise under a Gaussian kernel, a
 * first-order autoregression from curve to curve. Nothing in it comes from force.
 */
export function randomCurves(random: SeededRandom, of: RandomCurves): StanceCurves {
  const { mean = () => 0, spread = 1 } = of;
  const sd = of.fullWidthAtHalfMaximum / Math.sqrt(8 * Math.log(2));
  const reach = Math.ceil(3.5 * sd);
  const kernel = Array.from({ length: 2 * reach + 1 }, (_, k) => Math.exp(-0.5 * ((k - reach) / sd) ** 2));
  const scale = Math.sqrt(kernel.reduce((sum, w) => sum + w * w, 0));
  const curves: Float64Array[] = [];
  const fresh: Float64Array[] = [];
  const weights = of.autocorrelation === undefined ? null : triangleOf(of.autocorrelation(of.curves));
  let before: Float64Array | null = null;
  for (let n = 0; n < of.curves; n++) {
    const noise = Float64Array.from({ length: 101 + 2 * reach }, () => random.normal());
    const smooth = Float64Array.from({ length: 101 }, (_, q) => {
      let sum = 0;
      for (let k = 0; k < kernel.length; k++) sum += (kernel[k] as number) * (noise[q + k] as number);
      return sum / scale;
    });
    fresh.push(smooth);
    const state: Float64Array = smooth.map((value, q) => {
      const own = weights?.[n];
      if (own !== undefined) return own.reduce((sum, w, k) => sum + w * (fresh[k]?.[q] as number), 0);
      const r = of.correlation(q);
      return before === null ? value : r * (before[q] as number) + Math.sqrt(1 - r * r) * value;
    });
    before = state;
    curves.push(state.map((value, q) => mean(q) + spread * value));
  }
  return {
    component: "vertical",
    side: "left",
    unit: "N",
    curves,
    contacts: curves.map((_, k) => ({
      side: "left" as const,
      initialContact: 0.7 * k,
      toeOff: 0.7 * k + 0.25,
      threshold: 20,
    })),
    filter: { cutoff: 50, order: 4 },
  };
}

/** Second-order autoregression, x = a x₋₁ + b x₋₂ + noise: r₁ = a ÷ (1 − b), then rₖ = a rₖ₋₁ + b rₖ₋₂. */
export function secondOrder(a: number, b: number): (lags: number) => number[] {
  return (lags) => {
    const r = [1, a / (1 - b)];
    while (r.length < lags) r.push(a * (r.at(-1) as number) + b * (r.at(-2) as number));
    return r;
  };
}

/** Fractional noise, which forgets as a power of time: rₖ = rₖ₋₁ (k − 1 + d) ÷ (k − d) (Hosking 1981, from memory). */
export function fractional(d: number): (lags: number) => number[] {
  return (lags) => {
    const r = [1];
    for (let k = 1; k < lags; k++) r.push(((r.at(-1) as number) * (k - 1 + d)) / (k - d));
    return r;
  };
}

/** Rows of the lower triangle whose product with its transpose is the matrix of the correlations (Cholesky). */
function triangleOf(r: readonly number[]): number[][] {
  const rows: number[][] = [];
  for (let i = 0; i < r.length; i++) {
    const row: number[] = [];
    for (let j = 0; j <= i; j++) {
      const known = rows[j] ?? row;
      let left = r[i - j] as number;
      for (let k = 0; k < j; k++) left -= (row[k] as number) * (known[k] as number);
      row.push(i === j ? Math.sqrt(left) : left / (known[j] as number));
    }
    rows.push(row);
  }
  return rows;
}
