import { fail, type Hertz, requireNumber, type Seconds } from "../../units/index.js";
import { positionOf, valueAtPosition } from "../calculus/valueAt.js";

/**
 * Samples a stretch anew at evenly spaced points, so that stances of different length lie on one axis.
 *
 * Formula: point k is the value on the straight line between samples at from + k (to − from)/(points − 1).
 * Units: s and Hz in; the unit of the samples out.
 * Limits: where points lie further apart than samples, detail between them is left out, not averaged: filter first.
 * Source: common practice, 101 points for 0 to 100 %.
 * @param samples - The first is at time 0.
 * @param sampleRate - Samples per second, above 0.
 * @param from - Start, s, within the samples: point 0.
 * @param to - End, s, within the samples and after `from`: the last point.
 * @param points - How many, a whole number from 2; 101 where left out.
 * @throws GaitKineticsError `out-of-range`: a time outside the samples, `to` not after `from`, fewer than 2 points, rate
 * not above 0; `not-finite`: NaN or infinity among the samples between.
 * @example
 * timeNormalise(new Float64Array([0, 10, 30]), 100, 0, 0.02, 5)[3] // 20
 */
export function timeNormalise<S extends Float64Array>(
  samples: S,
  sampleRate: Hertz,
  from: Seconds,
  to: Seconds,
  points = 101,
): S {
  requireNumber("points", points, { from: 2, whole: true });
  const start = positionOf(samples, sampleRate, from, "from");
  const end = positionOf(samples, sampleRate, to, "to");
  if (!(start < end)) {
    fail("out-of-range", `to is ${to} s; it must lie after from, ${from} s`, {
      argument: "to",
      values: { from, to },
    });
  }
  const curve = new Float64Array(points);
  for (let i = 0; i < points; i++) {
    const position = start + (i * (end - start)) / (points - 1);
    curve[i] = valueAtPosition(samples, Math.min(position, end));
  }
  return curve as S;
}
