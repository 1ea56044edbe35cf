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
  let positive = 0;
  let negative = 0;
  let place = start;
  let value = valueAtPosition(samples, start);
  while (place < end) {
    const next = Math.min(Math.floor(place) + 1, end);
    const nextValue = next === end ? valueAtPosition(samples, end) : (samples[next] as number);
    const width = next - place;
    positive += width * meanAbove(value, nextValue);
    negative -= width * meanAbove(-value, -nextValue);
    place = next;
    value = nextValue;
  }
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
  const areas = { all: positive + negative, positive, negative, absolute: positive - negative };
  return areas[part] / sampleRate;
}

/** Mean over a straight line from a to b of what lies above zero. */
function meanAbove(a: number, b: number): number {
  if (a <= 0 && b <= 0) return 0;
  if (a >= 0 && b >= 0) return (a + b) / 2;
  const above = Math.max(a, b);
  return (above / Math.abs(a - b)) * (above / 2);
}
