import {
  type Complete,
  fail,
  requireFiniteSamples,
  requireOneOf,
  type Seconds,
  withDefaults,
} from "../../units/index.js";
import { finiteResult } from "../finiteResult.js";
import { monotoneSlopes } from "./monotoneSlopes.js";
import { splineSlopes } from "./splineSlopes.js";

/** By which curve points are joined. */
export type InterpolationMethod = "linear" | "cubic" | "pchip";

/** What {@link interpolate} may be told. */
export interface InterpolateOptions {
  /**
   * `linear`: straight lines. `cubic`: the smoothest, a cubic spline with two continuous derivatives, which may
   * overshoot. `pchip`: cubic pieces that rise and fall only where the points do.
   */
  readonly method?: InterpolationMethod | undefined;
}

/** Straight lines: they add nothing that the points do not hold. */
export const INTERPOLATE_DEFAULTS: Complete<InterpolateOptions> = { method: "linear" };

/**
 * Gives the value of a curve through points at other times.
 *
 * Formula: between two points the cubic with their values and slopes; slopes of the spline with not-a-knot ends, or of
 * Fritsch and Butland's harmonic mean for `pchip`.
 * Units: s; the unit of the values.
 * Limits: no time beyond the points. For a smooth curve sampled h apart the error falls as h² for lines and h⁴ for the spline.
 * Source: de Boor C 1978, A Practical Guide to Splines (not-a-knot; from memory); Fritsch FN & Butland J 1984, SIAM J. Sci.
 * Stat. Comput. 5:300 (from memory); agrees with NumPy's `interp` and SciPy's `CubicSpline` and `PchipInterpolator`.
 * @param times - Of the points, strictly rising, at least 2.
 * @param values - As many.
 * @param at - Times wanted, in any order, each within those of the points.
 * @param options - The method; {@link INTERPOLATE_DEFAULTS} where left out.
 * @throws GaitKineticsError `unequal-lengths`; `too-short`: fewer than 2 points; `uneven-time`: times that do not rise;
 * `out-of-range`: a time beyond the points, unknown method; `not-finite`; `wrong-type`; `unknown-option`.
 * @example
 * interpolate(new Float64Array([0, 1, 2]), new Float64Array([0, 1, 4]), new Float64Array([1.5]), { method: "cubic" })[0] // 2.25
 */
export function interpolate(
  times: Float64Array,
  values: Float64Array,
  at: ArrayLike<Seconds>,
  options: InterpolateOptions = {},
): Float64Array {
  const { method } = withDefaults(INTERPOLATE_DEFAULTS, options);
  requireOneOf("method", method, ["linear", "cubic", "pchip"]);
  checkPoints(times, values);
  const last = times.length - 1;
  const slopes =
    method === "linear"
      ? null
      : method === "cubic"
        ? splineSlopes(times, values)
        : monotoneSlopes(times, values);
  let piece = 0;
  const result = Float64Array.from(at, (time, i) => {
    if (!(time >= (times[0] as number) && time <= (times[last] as number))) {
      fail(
        "out-of-range",
        `at[${i}] is ${time} s; it must lie within the points, ${times[0]} to ${times[last]} s`,
        {
          argument: "at",
          where: `at[${i}]`,
          values: { given: time, from: times[0], to: times[last] },
        },
      );
    }
    piece = pieceOf(times, time, piece);
    return valueWithin(times, values, slopes, piece, time);
  });
  return finiteResult(result);
}

function checkPoints(times: Float64Array, values: Float64Array): void {
  requireFiniteSamples("times", times);
  requireFiniteSamples("values", values);
  if (times.length !== values.length) {
    fail(
      "unequal-lengths",
      `there are ${times.length} times and ${values.length} values; they must be equal in number`,
      {
        argument: "values",
      },
    );
  }
  if (times.length < 2)
    fail("too-short", `there are ${times.length} points; at least 2 are needed`, { argument: "times" });
  const back = times.findIndex((time, i) => i > 0 && time <= (times[i - 1] as number));
  if (back > 0) {
    fail("uneven-time", `times[${back}] is ${times[back]} s after ${times[back - 1]} s; times must rise`, {
      argument: "times",
      where: `times[${back}]`,
    });
  }
}

/** The piece a time lies in: the one of the last time or the next, else by halving. */
function pieceOf(times: Float64Array, time: number, guess: number): number {
  const within = (i: number) => (times[i] as number) <= time && time <= (times[i + 1] as number);
  if (within(guess)) return guess;
  if (within(guess + 1)) return guess + 1;
  let [low, high] = [0, times.length - 1];
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if ((times[middle] as number) <= time) low = middle;
    else high = middle;
  }
  return low;
}

function valueWithin(
  times: Float64Array,
  values: Float64Array,
  slopes: Float64Array | null,
  piece: number,
  time: number,
): number {
  const [t0, t1, x0, x1] = [times[piece], times[piece + 1], values[piece], values[piece + 1]] as [
    number,
    number,
    number,
    number,
  ];
  const width = t1 - t0;
  const part = (time - t0) / width;
  if (slopes === null) return x0 + part * (x1 - x0);
  const [d0, d1] = [slopes[piece], slopes[piece + 1]] as [number, number];
  const rise = (x1 - x0) / width;
  const bend = (d0 + d1 - 2 * rise) * part + (3 * rise - 2 * d0 - d1);
  return x0 + width * part * (d0 + part * bend);
}
