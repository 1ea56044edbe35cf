import { type Fraction, fail, requireNumber } from "../../units/index.js";
import { mean } from "../mean.js";
import type { Interval } from "../meanInterval.js";
import { requireSameLength } from "../requireSameLength.js";
import type { Values } from "../requireValues.js";
import { type TTest, tTestOf } from "./tTest.js";

/** A straight line through points. */
export interface LinearRegression {
  readonly n: number;
  /** Slope against zero. */
  readonly slope: TTest;
  readonly intercept: {
    readonly estimate: number;
    readonly standardError: number;
    readonly interval: Interval;
  };
  /** Pearson's correlation; `null` where y does not vary. */
  readonly correlation: number | null;
  /** Standard deviation about the line, n − 2 degrees of freedom. */
  readonly residualSd: number;
}

/**
 * Fits a straight line by least squares, with the t test of its slope.
 *
 * Formula: slope b = Sxy/Sxx, intercept m_y − b m_x, residual variance s² = (Syy − b Sxy)/(n − 2) taken from the residuals
 * themselves; standard error of the slope s/√Sxx, of the intercept s √(1/n + m_x²/Sxx); t = b/SE, n − 2 degrees of freedom.
 * Units: those of y per x, and of y.
 * Limits: at least three points, x not all equal; y independent about the line: of strides in their order the interval
 * is too narrow where they are correlated.
 * Source: definition of least squares; a published example gives the same.
 * @param x - Where.
 * @param y - What was measured there, as many.
 * @param level - Share of repeats the intervals are meant to cover.
 * @throws GaitKineticsError `too-short`, `not-finite`, `wrong-type`, `unequal-lengths`: no two lists of as many finite numbers;
 *   `out-of-range`: the level, or x without any spread.
 * @example
 * linearRegression([0, 1, 2, 3], [1, 3, 4, 8]).slope.estimate // 2.2
 */
export function linearRegression(x: Values, y: Values, level: Fraction = 0.95): LinearRegression {
  requireSameLength(x, y, 3);
  requireNumber("level", level, { above: 0, below: 1 });
  const n = x.length;
  const [mx, my] = [mean(x), mean(y)];
  const sxx = products(x, mx, x, mx);
  const sxy = products(x, mx, y, my);
  const syy = products(y, my, y, my);
  if (sxx === 0) fail("out-of-range", "x holds one value throughout; a line needs two", { argument: "x" });
  const slope = sxy / sxx;
  let squares = 0;
  for (let i = 0; i < n; i++) squares += ((y[i] as number) - my - slope * ((x[i] as number) - mx)) ** 2;
  const residualSd = Math.sqrt(squares / (n - 2));
  const settings = { against: 0, side: "two-sided", level } as const;
  const intercept = tTestOf(
    my - slope * mx,
    residualSd * Math.sqrt(1 / n + (mx * mx) / sxx),
    n - 2,
    settings,
  );
  return {
    n,
    slope: tTestOf(slope, residualSd / Math.sqrt(sxx), n - 2, settings),
    intercept: {
      estimate: intercept.estimate,
      standardError: intercept.standardError,
      interval: intercept.interval,
    },
    correlation: syy === 0 ? null : sxy / Math.sqrt(sxx * syy),
    residualSd,
  };
}

function products(a: Values, ma: number, b: Values, mb: number): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += ((a[i] as number) - ma) * ((b[i] as number) - mb);
  return sum;
}
