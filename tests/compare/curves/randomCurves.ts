import type { SeededRandom } from "../../../src/statistics/index.js";
import type { StanceCurves } from "../../../src/trial/index.js";

/** What {@link randomCurves} is made of. */
export interface RandomCurves {
  readonly curves: number;
  /** Full width at half maximum of the smoothing kernel, points. */
  readonly fullWidthAtHalfMaximum: number;
  /** Correlation of each curve with the next, at each point. */
  readonly correlation: (percent: number) => number;
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
  let before: Float64Array | null = null;
  for (let n = 0; n < of.curves; n++) {
    const noise = Float64Array.from({ length: 101 + 2 * reach }, () => random.normal());
    const state: Float64Array = Float64Array.from({ length: 101 }, (_, q) => {
      let fresh = 0;
      for (let k = 0; k < kernel.length; k++) fresh += (kernel[k] as number) * (noise[q + k] as number);
      const r = of.correlation(q);
      return before === null
        ? fresh / scale
        : r * (before[q] as number) + (Math.sqrt(1 - r * r) * fresh) / scale;
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
