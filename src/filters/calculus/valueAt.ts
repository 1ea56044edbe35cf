import { fail, type Hertz, requireNumber, type Seconds } from "../../units/index.js";

/** How far outside the samples a time may lie and still be taken as their end, in samples: the rounding of a product. */
const ROUNDING = 1e-6;

/**
 * Gives the value of sampled data at a time, on the straight line between the samples before and after it.
 *
 * Formula: x = xᵢ + (p − i)(xᵢ₊₁ − xᵢ), p = t fs, i the whole part of p.
 * Units: s and Hz in; the unit of the samples out.
 * Limits: between two samples a curve of second derivative x″ is missed by at most |x″|/(8 fs²).
 * Source: common practice.
 * @param samples - The first is at time 0.
 * @param sampleRate - Samples per second, above 0.
 * @param time - From 0 to that of the last sample, s.
 * @throws GaitKineticsError `out-of-range`: time outside the samples or rate not above 0; `not-finite`: time or one of
 * the two samples.
 * @example
 * valueAt(new Float64Array([0, 10, 30]), 100, 0.015) // 20
 */
export function valueAt(samples: Float64Array, sampleRate: Hertz, time: Seconds): number {
  return valueAtPosition(samples, positionOf(samples, sampleRate, time, "time"));
}

/** Turns a time into a place among the samples, from 0 to their number less one. */
export function positionOf(
  samples: Float64Array,
  sampleRate: Hertz,
  time: Seconds,
  argument: string,
): number {
  requireNumber("sampleRate", sampleRate, { above: 0, unit: "Hz" });
  requireNumber(argument, time, { unit: "s" });
  const position = time * sampleRate;
  const last = samples.length - 1;
  if (!(position >= -ROUNDING && position <= last + ROUNDING)) {
    fail(
      "out-of-range",
      last < 0
        ? `${argument} is ${time} s, but there are no samples`
        : `${argument} is ${time} s; it must lie within the recording, from 0 to ${last / sampleRate} s`,
      { argument, values: { given: time, from: 0, to: last / sampleRate } },
    );
  }
  return Math.min(Math.max(position, 0), last);
}

/** The value at a place among the samples. */
export function valueAtPosition(samples: Float64Array, position: number): number {
  const before = Math.floor(position);
  const part = position - before;
  const value = samples[before] as number;
  const result = part === 0 ? value : value + part * ((samples[before + 1] as number) - value);
  if (!Number.isFinite(result)) {
    fail(
      "not-finite",
      `samples hold ${value} and ${samples[before + 1]} at samples ${before} and ${before + 1}; finite numbers are needed`,
      {
        argument: "samples",
        where: `sample ${before}`,
      },
    );
  }
  return result;
}
