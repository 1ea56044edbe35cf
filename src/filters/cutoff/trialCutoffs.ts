import { fail, type Hertz, requireNumber } from "../../units/index.js";

/** Checks the cutoffs to try, or makes forty of them from 0.5 % to 20 % of the sampling rate. */
export function trialCutoffs(wanted: readonly Hertz[] | null, sampleRate: Hertz): readonly number[] {
  requireNumber("sampleRate", sampleRate, { above: 0, unit: "Hz" });
  const cutoffs = wanted ?? Array.from({ length: 40 }, (_, i) => ((i + 1) * sampleRate) / 200);
  if (!Array.isArray(cutoffs) || cutoffs.length < 3) {
    fail("wrong-type", "cutoffs must be an array of at least 3 frequencies in Hz", { argument: "cutoffs" });
  }
  cutoffs.forEach((cutoff, i) => {
    const below = sampleRate / 2;
    requireNumber(`cutoffs[${i}]`, cutoff, {
      above: i === 0 ? 0 : (cutoffs[i - 1] as number),
      below,
      unit: "Hz",
    });
  });
  return [...cutoffs];
}

/** What a filter has taken out. */
export function residualOf(samples: Float64Array, filtered: Float64Array): Float64Array {
  return samples.map((value, i) => value - (filtered[i] as number));
}
