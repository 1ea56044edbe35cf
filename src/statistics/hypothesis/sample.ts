import { requireNumber } from "../../units/index.js";
import { mean } from "../mean.js";
import { LARGEST, requireValues, type Values } from "../requireValues.js";
import { standardDeviation } from "../standardDeviation.js";

/** What a paper prints of a sample in place of its values. */
export interface SampleSummary {
  readonly n: number;
  readonly mean: number;
  /** Standard deviation with divisor n − 1. */
  readonly sd: number;
}

/** Values, or their summary. */
export type Sample = Values | SampleSummary;

/**
 * Gives a sample's summary: computed, or checked where it was given.
 *
 * @param argument - Its name, for messages.
 * @param sample - Two values or more, or a summary of as many.
 * @throws GaitKineticsError `too-short`, `not-finite`, `wrong-type`, `out-of-range`: no such sample.
 */
export function summaryOf(argument: string, sample: Sample): SampleSummary {
  if (isSummary(sample)) {
    return {
      n: requireNumber(`${argument}.n`, sample.n, { from: 2, to: LARGEST, whole: true }),
      mean: requireNumber(`${argument}.mean`, sample.mean, { from: -LARGEST, to: LARGEST }),
      sd: requireNumber(`${argument}.sd`, sample.sd, { from: 0, to: LARGEST }),
    };
  }
  requireValues(argument, sample, 2);
  return { n: sample.length, mean: mean(sample), sd: standardDeviation(sample) };
}

function isSummary(sample: Sample): sample is SampleSummary {
  return typeof sample === "object" && sample !== null && !("length" in sample);
}
