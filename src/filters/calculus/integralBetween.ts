import {
  type Complete,
  fail,
  type Hertz,
  requireOneOf,
  type Seconds,
  withDefaults,
} from "../../units/index.js";
import { positionOf, valueAtPosition } from "./valueAt.js";

/** Which part of the curve {@link integralBetween} counts. */
export type IntegralPart = "all" | "positive" | "negative" | "absolute";

/** What {@link integralBetween} may be told. */
export interface IntegralBetweenOptions {
  /** `positive` counts what lies above zero, `negative` what lies below (a negative number), `absolute` both as positive. */
  readonly part?: IntegralPart | undefined;
}

/** The whole signed area. */
export const INTEGRAL_BETWEEN_DEFAULTS: Complete<IntegralBetweenOptions> = { part: "all" };

/**
 * Integrates sampled data between two times, which may lie between samples.
 *
 * Formula: the exact area under the straight lines that join the samples; where a line crosses zero, it is split there.
 * Units: the unit of the samples times seconds.
 * Limits: a curve of second derivative x″ is missed by at most T |x″|/(12 fs²) over a time T.
 * Source: trapezoid rule, common practice; the split follows from similar triangles.
 * @param samples - The first is at time 0.
 * @param sampleRate - Samples per second, above 0.
 * @param from - Start, s, within the samples.
 * @param to - End, s, within the samples and not before `from`.
 * @param options - Which part counts; {@link INTEGRAL_BETWEEN_DEFAULTS} where left out.
 * @throws GaitKineticsError `out-of-range`: a time outside the samples, `to` before `from`, rate not above 0, unknown
 * part; `not-finite`: NaN or infinity among the samples between.
 * @example
 * integralBetween(new Float64Array([1, -1]), 1, 0, 1, { part: "absolute" }) // 0.5
 */
export function integralBetween(
  samples: Float64Array,
  sampleRate: Hertz,
  from: Seconds,
  to: Seconds,
  options: IntegralBetweenOptions = {},
): number {
  const { part } = withDefaults(INTEGRAL_BETWEEN_DEFAULTS, options);
  requireOneOf("part", part, ["all", "positive", "negative", "absolute"]);
  const start = positionOf(samples, sampleRate, from, "from");
  const end = positionOf(samples, sampleRate, to, "to");
  if (start > end) {
    fail("out-of-range", `to is ${to} s; it must not lie before from, ${from} s`, {
      argument: "to",
      values: { from, to },
    });
  }
  const [positive, negative] = areasOf(samples, start, end);
  if (!Number.isFinite(positive - negative)) {
    fail(
      "not-finite",
      `samples hold NaN or infinity between ${from} and ${to} s; every sample must be a finite number`,
      {
        argument: "samples",
        where: `${from} to ${to} s`,
      },
    );
  }
  if (part === "positive") return positive / sampleRate;
  if (part === "negative") return negative / sampleRate;
  return (part === "all" ? positive + negative : positive - negative) / sampleRate;
}

/**
 * What lies above zero and what below it between two places, in samples. No closure, so that both sums stay in registers; whole
 * intervals, all but two, need no width.
 */
function areasOf(samples: Float64Array, start: number, end: number): readonly [number, number] {
  const first = Math.floor(start) + 1;
  const last = Math.ceil(end) - 1;
  const from = valueAtPosition(samples, start);
  const to = valueAtPosition(samples, end);
  if (first > last) {
    const width = end - start;
    return [width * meanAbove(from, to), 0 - width * meanAbove(-from, -to)];
  }
  let value = samples[first] as number;
  let positive = (first - start) * meanAbove(from, value);
  let negative = 0 - (first - start) * meanAbove(-from, -value);
  for (let i = first + 1; i <= last; i++) {
    const next = samples[i] as number;
    if (value >= 0 && next >= 0) positive += (value + next) / 2;
    else if (value <= 0 && next <= 0) negative += (value + next) / 2;
    else {
      positive += meanAbove(value, next);
      negative -= meanAbove(-value, -next);
    }
    value = next;
  }
  positive += (end - last) * meanAbove(value, to);
  negative -= (end - last) * meanAbove(-value, -to);
  return [positive, negative];
}

/** Mean over a straight line from a to b of what lies above zero. */
function meanAbove(a: number, b: number): number {
  if (a <= 0 && b <= 0) return 0;
  if (a >= 0 && b >= 0) return (a + b) / 2;
  const above = Math.max(a, b);
  return (above / Math.abs(a - b)) * (above / 2);
}
