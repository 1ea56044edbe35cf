import { fail, requireNumber, withDefaults } from "../units/index.js";
import { CORRELATION_DEFAULTS, type CorrelationOptions, effectiveNumberOf } from "./effectiveNumberOf.js";
import { mean } from "./mean.js";
import type { Interval } from "./meanInterval.js";
import { requireValues, type Values } from "./requireValues.js";
import { studentTQuantile } from "./studentTQuantile.js";

/** The ratio of two means and how sure it is. */
export interface RatioInterval {
  /** Number of pairs. */
  readonly n: number;
  /** Mean of the first ÷ mean of the second; `null` where the second is 0. */
  readonly ratio: number | null;
  /** Pairs that independent ones would be worth, less 1; `null` where that is less than 1. */
  readonly degreesOfFreedom: number | null;
  /** `null` where the degrees of freedom are, and where the second mean is not told from 0 at this level. */
  readonly interval: Interval | null;
}

/**
 * Gives the ratio of the means of two series of pairs, with Fieller's interval.
 *
 * Formula: all q for which the mean of xᵢ − q yᵢ is no farther from 0 than Student's t takes it by chance,
 * (mₓ − q m_y)² ≤ t² (sₓ² − 2 q sₓᵧ + q² s_y²) / nₑ, with nₑ the {@link effectiveNumberOf} of xᵢ − (mₓ/m_y) yᵢ and nₑ − 1
 * degrees of freedom. What moves both of a pair alike, such as a slow drift, cancels as it does in the ratio.
 * Units: those of the first per those of the second.
 * Limits: needs pairs, roughly normal; not symmetric about the ratio, but that of y to x is exactly its reciprocal. As
 * for every interval with an effective number, too narrow in short, correlated series unless `correctBias` is set.
 * Source: Fieller 1954, J. R. Stat. Soc. B 16:175, from memory; effective number after Zwiers & von Storch 1995, J.
 * Climate 8:336, from memory.
 * @param first - Finite numbers in their order of time, at least two.
 * @param second - As many; each belongs to the one of the first at its place.
 * @param level - Share of repeats the interval is meant to cover, above 0 and below 1.
 * @param options - {@link CORRELATION_DEFAULTS} where left out.
 * @throws GaitKineticsError `too-short`: fewer than two pairs; `unequal-lengths`; `out-of-range`: the level;
 *   `not-finite`, `wrong-type`: a value or level that is no finite number; `unknown-option`.
 * @example
 * ratioInterval([4, 6, 4, 6], [2, 3, 2, 3], 0.95).ratio // 2
 */
export function ratioInterval(
  first: Values,
  second: Values,
  level: number,
  options: CorrelationOptions = {},
): RatioInterval {
  requireValues("first", first, 2);
  requireValues("second", second, 2);
  const n = first.length;
  if (second.length !== n) {
    fail("unequal-lengths", `first holds ${n} values and second ${second.length}; they must be pairs`, {
      argument: "second",
      values: { first: n, second: second.length },
    });
  }
  requireNumber("level", level, { above: 0, below: 1 });
  const settings = withDefaults<CorrelationOptions>(CORRELATION_DEFAULTS, options);
  const my = mean(second);
  const ratio = my === 0 ? null : mean(first) / my;
  if (ratio === null || !Number.isFinite(ratio)) {
    return { n, ratio: null, degreesOfFreedom: null, interval: null };
  }
  const shares = Array.from(second, (y) => y / my);
  const rest = Array.from(first, (x, i) => x / my - ratio * (shares[i] as number));
  const effective = effectiveNumberOf(rest, settings);
  if (effective < 2) return { n, ratio, degreesOfFreedom: null, interval: null };
  const reach = studentTQuantile((1 + level) / 2, effective - 1) ** 2 / effective;
  const ends = fieller(shares, rest, ratio, reach);
  const interval = ends === null ? null : { low: ends[0], high: ends[1], level };
  return { n, ratio, degreesOfFreedom: effective - 1, interval };
}

/**
 * The two q at which the condition is an equality; `null` where they do not enclose an interval, since the second mean is
 * not told from 0. With y and e = x − r y in units of m_y, the mean of e 0, and k = t²/nₑ, d = q − r meets
 * d² (1 − k s_y²) + 2 k sₑᵧ d − k sₑ² = 0, in which nothing cancels where the interval is narrow.
 */
function fieller(y: Values, e: Values, ratio: number, k: number): readonly [number, number] | null {
  const syy = covariance(y, y);
  const see = covariance(e, e);
  const sey = covariance(e, y);
  const rest = 1 - k * syy;
  if (rest <= 0) return null;
  const root = Math.sqrt(Math.max(0, k * (see - k * (syy * see - sey * sey))));
  return [ratio + (-k * sey - root) / rest, ratio + (-k * sey + root) / rest];
}

function covariance(a: Values, b: Values): number {
  const ma = mean(a);
  const mb = mean(b);
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += ((a[i] as number) - ma) * ((b[i] as number) - mb);
  return sum / (a.length - 1);
}
