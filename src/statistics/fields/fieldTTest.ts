import { type Complete, fail, requireNumber, withDefaults } from "../../units/index.js";
import { quantile } from "../quantile.js";
import { type EffectiveShare, effectiveShareOf, LOWEST_DECILE } from "./fieldEffectiveShare.js";
import { smoothnessOver } from "./fieldSmoothness.js";
import { type Curves, requireCurves } from "./requireCurves.js";

/** How {@link fieldTTest} is done. */
export interface FieldTTestOptions {
  /** Curve k of the first set belongs to curve k of the second. */
  readonly paired?: boolean | undefined;
  /** Curves follow one another in time and may resemble their neighbours. */
  readonly correlated?: boolean | undefined;
  /** Whether two sets are taken to spread alike; where not, Welch's form. */
  readonly pooled?: boolean | undefined;
  /** Share of the largest standard deviation along the curve below which no statistic is formed. */
  readonly leastSpread?: number | undefined;
}

/** Independent sets of independent curves; no statistic where the spread is below a hundredth of the largest. */
export const FIELD_T_TEST_DEFAULTS: Complete<FieldTTestOptions> = {
  paired: false,
  correlated: false,
  pooled: true,
  leastSpread: 0.01,
};

/** Student's t along a curve. */
export interface FieldTTest {
  readonly test: "one-sample" | "paired" | "two-sample";
  /** Curves in each set; the second is 0 of one sample. */
  readonly curves: readonly [number, number];
  /** Mean of the first set less that of the second, or that mean itself of one sample. */
  readonly difference: Float64Array;
  /** Student's t; 0 where none is formed. */
  readonly statistic: Float64Array;
  /** Whether the curves spread enough at a point for a statistic. */
  readonly formed: readonly boolean[];
  readonly degreesOfFreedom: number;
  /** Of the residuals, in points. */
  readonly fullWidthAtHalfMaximum: number;
  /** Independent curves over curves at each point; 1 where they are taken as independent. */
  readonly effectiveShare: Float64Array;
  /** The same as the correlation of each curve with the next alone gives it. */
  readonly neighbourShare: Float64Array;
  /** First decile of that over the points, which the degrees of freedom count. */
  readonly lowShare: number;
}

/**
 * Forms Student's t at each point of curves: of one set against zero, of pairs, or of two sets.
 *
 * Formula: one sample t = m √n / s with n − 1 degrees of freedom; pairs, the same of their differences; two sets t =
 * (m₁ − m₂) / (s √(1/n₁ + 1/n₂)), s the pooled standard deviation, n₁ + n₂ − 2, or where not `pooled` t = (m₁ − m₂) /
 * √(s₁²/n₁ + s₂²/n₂) with the first decile over the points of Welch's degrees of freedom. With `correlated` n is n (1
 * − r)/(1 + r), r the correlation of each curve with the next: at each point the larger of the point's own and that
 * of the whole curve, both freed of their bias in short series; less where the sets wander slowly: their power at half
 * waves j = 1 to n^0.65 over a set, as j^(−2d), is carried on to the mean itself (local Whittle, d up to 0.45, over
 * the whole curve and over the half about the point). The degrees of freedom take the first decile of these numbers
 * over the points, and are 2 at least.
 * Units: those of the curves; FWHM in points.
 * Limits: two curves of one sample, three with pairs, two in each set; five in each where `correlated`. The pooled
 * form wants spreads alike where sets differ in size: of 30 curves that spread half as much again as 60 others,
 * 11 in a hundred pairs without a true difference cross the threshold of 0.05, with Welch's form 4. Where curves
 * hardly spread, as at the ends of a stance, which all begin and end at the contact threshold, t would be a quotient
 * of two roundings: there it is 0 and not formed.
 * Source: definition; Pataky 2010, J. Biomech. 43:1976 for its use along curves, from memory; held to NumPy.
 * @param first - Curves, one a row, in order of time where `correlated`.
 * @param second - The other set; `null` for one sample.
 * @param options - {@link FIELD_T_TEST_DEFAULTS} where left out.
 * @throws GaitKineticsError `too-short`, `unequal-lengths`, `not-finite`, `wrong-type`: no such curves;
 *   `out-of-range`: curves that do not vary, or an option outside its range; `conflict`: pairs of one set;
 *   `unknown-option`.
 * @example
 * fieldTTest([[1, 2, 3], [2, 4, 4], [3, 3, 2]], null).statistic[0].toFixed(3) // "3.464"
 */
export function fieldTTest(
  first: Curves,
  second: Curves | null,
  options: FieldTTestOptions = {},
): FieldTTest {
  const settings = withDefaults<FieldTTestOptions>(FIELD_T_TEST_DEFAULTS, options);
  const { paired, correlated, leastSpread } = settings;
  requireNumber("leastSpread", leastSpread, { from: 0, below: 1 });
  const sets = setsOf(first, second, paired, correlated ? 5 : 2);
  const nodes = (sets[0] as Curves)[0]?.length ?? 0;
  const means = sets.map((curves) => meanOf(curves, nodes));
  const residuals = sets.map((curves, k) => curves.map((curve) => less(curve, means[k] as Float64Array)));
  const numbers = sets.map(({ length }) => length);
  const total = numbers.reduce((sum, n) => sum + n, 0);
  const squares = residuals.map((set) => squaresOf(set, nodes));
  const variance = sumOf(squares).map((sum) => sum / (total - sets.length));
  const formed = whereSpread(variance, sets, leastSpread);
  const fullWidthAtHalfMaximum = smoothnessOver(residuals.flat(), nodes, formed);
  const share = correlated ? effectiveShareOf(residuals, formed, fullWidthAtHalfMaximum) : independent(nodes);
  const [one, other] = means as [Float64Array, Float64Array | undefined];
  const difference = other === undefined ? one : less(one, other);
  const pooled = settings.pooled || sets.length === 1;
  const ofMeans = squares.map((sums, k) => {
    const n = numbers[k] as number;
    return pooled ? variance.map((value) => value / n) : sums.map((sum) => sum / (n - 1) / n);
  });
  const ofDifference = sumOf(ofMeans).map((value, q) => value / (share.atPoints[q] as number));
  const statistic = difference.map((value, q) =>
    formed[q] ? value / Math.sqrt(ofDifference[q] as number) : 0,
  );
  const degreesOfFreedom = pooled
    ? share.low * total - sets.length
    : welchDegrees(ofMeans, numbers, share.atPoints, formed);
  return {
    test: second === null ? "one-sample" : paired ? "paired" : "two-sample",
    curves: [first.length, second?.length ?? 0],
    difference,
    statistic,
    formed,
    degreesOfFreedom: correlated || !pooled ? Math.max(2, degreesOfFreedom) : degreesOfFreedom,
    fullWidthAtHalfMaximum,
    effectiveShare: share.atPoints,
    neighbourShare: share.byNeighbours,
    lowShare: share.low,
  };
}

/** What is tested: one set, the differences of pairs, or two sets. */
export function setsOf(
  first: Curves,
  second: Curves | null,
  paired: boolean,
  least: number,
): readonly Curves[] {
  const nodes = requireCurves("first", first, paired ? Math.max(3, least) : least);
  if (second === null) {
    if (!paired) return [first];
    fail("conflict", "paired needs two sets; the second is null", { argument: "paired" });
  }
  requireCurves("second", second, paired ? Math.max(3, least) : least, nodes);
  if (!paired) return [first, second];
  if (second.length !== first.length) {
    fail(
      "unequal-lengths",
      `there are ${first.length} curves in the first set and ${second.length} in the second; pairs need as many`,
      { argument: "second", values: { first: first.length, second: second.length } },
    );
  }
  return [first.map((curve, k) => less(curve, second[k] as ArrayLike<number>))];
}

function independent(nodes: number): EffectiveShare {
  const ones = new Float64Array(nodes).fill(1);
  return { atPoints: ones, byNeighbours: ones, low: 1 };
}

function meanOf(curves: Curves, nodes: number): Float64Array {
  const sum = new Float64Array(nodes);
  for (const curve of curves)
    for (let q = 0; q < nodes; q++) sum[q] = (sum[q] as number) + (curve[q] as number);
  return sum.map((value) => value / curves.length);
}

function less(curve: ArrayLike<number>, other: ArrayLike<number>): Float64Array {
  return Float64Array.from(curve, (value, q) => value - (other[q] as number));
}

function sumOf(lists: readonly Float64Array[]): Float64Array {
  const [first = new Float64Array(0), second] = lists;
  return second === undefined ? first : first.map((value, q) => value + (second[q] as number));
}

function squaresOf(residuals: Curves, nodes: number): Float64Array {
  const squares = new Float64Array(nodes);
  for (const curve of residuals)
    for (let q = 0; q < nodes; q++) {
      const e = curve[q] as number;
      squares[q] = (squares[q] as number) + e * e;
    }
  return squares;
}

/** Welch's degrees of freedom, (v₁ + v₂)² ÷ Σ vᵢ²/(nᵢ − 1), v variances of means: first decile over the points. */
function welchDegrees(
  ofMeans: readonly Float64Array[],
  numbers: readonly number[],
  share: Float64Array,
  formed: readonly boolean[],
): number {
  const degrees: number[] = [];
  for (let q = 0; q < formed.length; q++) {
    if (!formed[q]) continue;
    let sum = 0;
    let parts = 0;
    ofMeans.forEach((variances, k) => {
      const v = variances[q] as number;
      sum += v;
      parts += (v * v) / Math.max(1e-9, (share[q] as number) * (numbers[k] as number) - 1);
    });
    degrees.push((sum * sum) / parts);
  }
  return quantile(degrees, LOWEST_DECILE);
}

/** Points whose standard deviation is neither a small share of the largest nor the rounding of large values. */
function whereSpread(variance: Float64Array, sets: readonly Curves[], leastSpread: number): boolean[] {
  let largest = 0;
  for (const curves of sets)
    for (const curve of curves)
      for (let q = 0; q < curve.length; q++) largest = Math.max(largest, Math.abs(curve[q] as number));
  const rounding = 1e-12 * largest;
  const most = Math.sqrt(variance.reduce((a, b) => Math.max(a, b), 0));
  if (!(most > rounding)) {
    fail("out-of-range", "the curves of each set are all alike: without a spread there is no statistic", {
      argument: "first",
    });
  }
  return Array.from(variance, (value) => Math.sqrt(value) > Math.max(rounding, leastSpread * most));
}
