import {
  type Complete,
  type Fraction,
  requireNumber,
  requireOneOf,
  withDefaults,
} from "../../units/index.js";
import type { Interval } from "../meanInterval.js";
import { LARGEST } from "../requireValues.js";
import { studentTProbability } from "../studentTProbability.js";
import { studentTQuantile } from "../studentTQuantile.js";

/** What lies on the other side of "no difference": either side, or one of them alone. */
export type TestSide = "two-sided" | "less" | "greater";

/** What is tested, and how sure the interval is. */
export interface TTestOptions {
  /** Value of the mean, or of the difference of means, that is tested against. */
  readonly against?: number | undefined;
  /** `greater`: whether the mean lies above; `less`: below. */
  readonly side?: TestSide | undefined;
  /** Share of repeats the two-sided interval is meant to cover. */
  readonly level?: Fraction | undefined;
}

/** Against zero, both sides, 95 %: common practice. */
export const T_TEST_DEFAULTS: Complete<TTestOptions> = { against: 0, side: "two-sided", level: 0.95 };

/** A t test with its interval. */
export interface TTest {
  /** The mean, or mean of the first less mean of the second. */
  readonly estimate: number;
  readonly standardError: number;
  /** `null` where nothing spreads. */
  readonly t: number | null;
  readonly degreesOfFreedom: number;
  /** Of the side that was asked for; `null` where t is. */
  readonly p: number | null;
  /** Of the estimate, two-sided whatever the side tested. */
  readonly interval: Interval;
}

const SIDES: readonly TestSide[] = ["two-sided", "less", "greater"];

/** Checks the options. */
export function tTestSettings(options: TTestOptions): Complete<TTestOptions> {
  const settings = withDefaults<TTestOptions>(T_TEST_DEFAULTS, options);
  requireNumber("against", settings.against, { from: -LARGEST, to: LARGEST });
  requireOneOf("side", settings.side, SIDES);
  requireNumber("level", settings.level, { above: 0, below: 1 });
  return settings;
}

/** The test of an estimate by its standard error. */
export function tTestOf(
  estimate: number,
  standardError: number,
  degreesOfFreedom: number,
  { against, side, level }: Complete<TTestOptions>,
): TTest {
  const t = standardError === 0 ? null : (estimate - against) / standardError;
  const reach = standardError === 0 ? 0 : studentTQuantile((1 + level) / 2, degreesOfFreedom) * standardError;
  return {
    estimate,
    standardError,
    t,
    degreesOfFreedom,
    p: t === null ? null : probability(t, degreesOfFreedom, side),
    interval: { low: estimate - reach, high: estimate + reach, level },
  };
}

/** The probability of a t as far out, on the side asked for. */
function probability(t: number, df: number, side: TestSide): number {
  if (side === "less") return studentTProbability(t, df);
  if (side === "greater") return studentTProbability(-t, df);
  return Math.min(1, 2 * studentTProbability(-Math.abs(t), df));
}
