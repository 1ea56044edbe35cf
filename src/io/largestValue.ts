import { fail } from "../units/index.js";

/**
 * Largest size of one sample that is taken for a recorded one, by SI unit: of a force 100 kN, some fifty times a runner's
 * peak; of a length, a moment and a voltage a million. What lies beyond is a wrong unit or a damaged number, and would only
 * be met later, without its place. Source: judgement of this library.
 */
const LARGEST: Readonly<Record<string, number>> = {
  N: 100_000,
  m: 1_000_000,
  "N m": 1_000_000,
  V: 1_000_000,
};

/** The largest size of a sample in a unit; infinite where nothing is known of it. */
export function largestValue(unit: string): number {
  return LARGEST[unit] ?? Number.POSITIVE_INFINITY;
}

/**
 * Refuses a series with a sample that no recording holds; NaN passes.
 *
 * @param samples - In SI units.
 * @param whereOf - Names the place of a sample in the file.
 * @throws GaitKineticsError `out-of-range`: a sample beyond what its unit allows.
 */
export function refuseAbsurd(
  samples: Float64Array,
  unit: string,
  argument: string,
  whereOf: (sample: number) => string,
): void {
  const most = largestValue(unit);
  for (let i = 0; i < samples.length; i++) {
    const value = samples[i] as number;
    if (value > most || value < -most) refuseSample(value, unit, argument, whereOf(i));
  }
}

function refuseSample(value: number, unit: string, argument: string, where: string): never {
  const allowed = largestValue(unit);
  fail(
    "out-of-range",
    `${where} holds ${Number(value.toPrecision(6))} ${unit}, and no recording goes beyond ${allowed} ${unit}: is its unit right, or is the number damaged?`,
    { argument, where, values: { given: value, allowed } },
  );
}
