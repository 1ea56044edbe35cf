import { type Fraction, fail, requireNumber } from "../../units/index.js";
import { normalProbability } from "../distributions/normalProbability.js";
import { normalQuantile } from "../distributions/normalQuantile.js";
import type { Interval } from "../meanInterval.js";
import { finite, requireStatistic } from "./statistic.js";

/** A statistic with the approximate bootstrap interval, and what corrects it. */
export interface AbcInterval {
  readonly estimate: number;
  readonly standardError: number;
  readonly interval: Interval;
  readonly acceleration: number;
  /** Correction of the bias, z₀. */
  readonly biasCorrection: number;
}

/** Step of the numerical derivatives, as a share of one item's weight. */
const STEP = 0.001;

/**
 * Gives the approximate bootstrap confidence (ABC) interval of a statistic, which needs no resamples.
 *
 * Formula: with T(p) the statistic under weights p, p₀ = 1/n each: first and second derivatives of T towards each item; σ =
 * √(Σ T′²)/n, a = Σ T′³/(6 n³ σ³), bias b = Σ T″/(2n²), curvature c along T′, z₀ = Φ⁻¹[2 Φ(a) Φ(c − b/σ)]; ends
 * T(p₀ + λ T′/(n² σ)) with λ = w/(1 − a w)², w = z₀ + z.
 * Units: those of the statistic.
 * Limits: for statistics that are smooth in the weights, such as means, variances and correlations; not for medians or
 * quantiles. Weights add up to one and may be slightly negative at the ends. Items independent of each other.
 * Source: Efron & Tibshirani 1993, An Introduction to the Bootstrap, chapters 14 and 22 (algorithm from memory); table 14.2 of the
 * book prints the interval of its example, which it gives.
 * @param n - Number of items, two to 1 000 000.
 * @param statistic - Takes the weights of the items, gives a finite number.
 * @param level - Share of repeats the interval is meant to cover.
 * @throws GaitKineticsError `out-of-range`: n, the level, or a statistic that no weight moves; `not-finite`, `wrong-type`.
 * @example
 * const values = [3, 5, 4, 8, 6, 5];
 * abcInterval(6, (p) => values.reduce((sum, x, i) => sum + p[i] * x, 0), 0.95).estimate.toFixed(4) // "5.1667"
 */
export function abcInterval(
  n: number,
  statistic: (weights: Float64Array) => number,
  level: Fraction = 0.95,
): AbcInterval {
  requireNumber("n", n, { from: 2, to: 1_000_000, whole: true });
  requireStatistic(statistic);
  requireNumber("level", level, { above: 0, below: 1 });
  const even = new Float64Array(n).fill(1 / n);
  const at = (direction: (i: number) => number, step: number) =>
    finite(statistic(even.map((weight, i) => weight + step * direction(i))));
  const estimate = at(() => 0, 0);
  const step = STEP / n;
  const slopes = new Float64Array(n);
  let curvatures = 0;
  for (let item = 0; item < n; item++) {
    const towards = (i: number) => (i === item ? 1 : 0) - 1 / n;
    const [ahead, behind] = [at(towards, step), at(towards, -step)];
    slopes[item] = (ahead - behind) / (2 * step);
    curvatures += (ahead - 2 * estimate + behind) / step ** 2;
  }
  const standardError = Math.sqrt(slopes.reduce((sum, slope) => sum + slope ** 2, 0)) / n;
  if (standardError === 0) {
    fail("out-of-range", "the statistic is the same whatever the weights; it has no interval", {
      argument: "statistic",
    });
  }
  const acceleration = slopes.reduce((sum, slope) => sum + slope ** 3, 0) / (6 * (n * standardError) ** 3);
  const steepest = (i: number) => (slopes[i] as number) / (n * n * standardError);
  const bend = (at(steepest, step) - 2 * estimate + at(steepest, -step)) / (2 * standardError * step ** 2);
  const tilt = curvatures / (2 * n * n) / standardError - bend;
  const biasCorrection = normalQuantile(2 * normalProbability(acceleration) * normalProbability(-tilt));
  const end = (z: number) => {
    const w = biasCorrection + z;
    return at(steepest, w / (1 - acceleration * w) ** 2);
  };
  const z = normalQuantile((1 + level) / 2);
  return {
    estimate,
    standardError,
    interval: { low: end(-z), high: end(z), level },
    acceleration,
    biasCorrection,
  };
}
