import { fail } from "../units/index.js";

/**
 * Checks that a span of time rises and lies within the samples.
 *
 * @param samples - The samples it is taken from.
 * @param sampleRate - Their rate, Hz, above 0.
 * @param from - Its start, s from the first sample.
 * @param to - Its end, s, above `from`.
 * @throws GaitKineticsError `out-of-range`: not rising, or not within the samples.
 */
export function requireSpan(samples: Float64Array, sampleRate: number, from: number, to: number): void {
  // One millionth of a sample is rounding: a stride may end on the last sample.
  const last = (samples.length - 1 + 1e-6) / sampleRate;
  if (from >= 0 && from < to && to <= last) return;
  fail(
    "out-of-range",
    `the span is ${from} s to ${to} s; it must rise and lie within the ${samples.length} samples, 0 s to ${last} s`,
    { argument: from >= 0 && from < last ? "to" : "from", values: { from, to, last } },
  );
}
