import {
  type Caution,
  type Complete,
  fail,
  type Hertz,
  requireFiniteSamples,
  requireNumber,
  withDefaults,
} from "../../units/index.js";
import { lowPass } from "../lowPass.js";
import { residualOf, trialCutoffs } from "./trialCutoffs.js";

/** What {@link whitenessAnalysis} may be told. */
export interface WhitenessAnalysisOptions {
  /** Cutoffs to try, rising, Hz; by default forty steps from 0.5 % to 20 % of the sampling rate. */
  readonly cutoffs?: readonly Hertz[] | null | undefined;
  /** How many lags of the autocorrelation count, from the first on. */
  readonly lags?: number | undefined;
  /** Net order of the filter tried, even. */
  readonly order?: number | undefined;
}

/** Ten lags, a choice of this library; net fourth order. */
export const WHITENESS_ANALYSIS_DEFAULTS: Complete<WhitenessAnalysisOptions> = {
  cutoffs: null,
  lags: 10,
  order: 4,
};

/** How far the residual of each cutoff is from white noise. */
export interface WhitenessAnalysis {
  /** The cutoff whose residual is nearest to white noise, Hz. */
  readonly cutoff: number;
  readonly cutoffs: readonly number[];
  /** Sum of the absolute autocorrelations of the residual over the lags, one a cutoff; 0 for ideal white noise. */
  readonly deviations: readonly number[];
  /** The deviation that white noise of this length stays below at each lag 95 times in 100: lags × 1.96/√n. */
  readonly whiteLevel: number;
  readonly cautions: readonly Caution[];
}

/**
 * Chooses the cutoff whose residual, what the filter takes out, is nearest to white noise.
 *
 * Formula: the least Σ |r_k| over lags k, r_k = Σ e_i e_{i+k}/Σ e_i² of the mean-free residual e.
 * Units: Hz.
 * Limits: takes noise for white. The choice lies on the cutoffs tried; noise that was filtered before it was recorded
 * is not white at any of them.
 * Source: Challis JH 1999, J. Appl. Biomech. 15:303 (criterion); the number of lags is this library's.
 * @param samples - One channel.
 * @param sampleRate - Samples per second, above 0, Hz.
 * @param options - {@link WHITENESS_ANALYSIS_DEFAULTS} where left out.
 * @returns The cutoff with the deviation of each; a caution where no residual is white, or the best cutoff is the first or
 * last tried.
 * @throws GaitKineticsError `out-of-range`: cutoffs that do not rise, lags not below the number of samples; `too-short`;
 * `not-finite`; `wrong-type`; `unknown-option`.
 * @example
 * whitenessAnalysis(Float64Array.from({ length: 200 }, (_, i) => Math.sin(i / 9) + ((i * 7) % 5) / 50), 100).deviations.length // 40
 */
export function whitenessAnalysis(
  samples: Float64Array,
  sampleRate: Hertz,
  options: WhitenessAnalysisOptions = {},
): WhitenessAnalysis {
  const { cutoffs: wanted, lags, order } = withDefaults(WHITENESS_ANALYSIS_DEFAULTS, options);
  requireFiniteSamples("samples", samples);
  const cutoffs = trialCutoffs(wanted, sampleRate);
  requireNumber("lags", lags, { from: 1, below: Math.max(samples.length, 2), whole: true });
  const deviations = cutoffs.map((cutoff) =>
    distanceFromWhite(residualOf(samples, lowPass(samples, { cutoff, sampleRate, order })), lags),
  );
  const least = Math.min(...deviations);
  if (!Number.isFinite(least)) {
    fail("out-of-range", "the filter takes nothing out; samples that never change hold no noise", {
      argument: "samples",
    });
  }
  const best = deviations.indexOf(least);
  const cutoff = cutoffs[best] as number;
  const whiteLevel = (lags * 1.96) / Math.sqrt(samples.length);
  const cautions: Caution[] = [];
  const weak = (message: string) =>
    cautions.push({
      code: "weak-evidence",
      message,
      where: "whiteness analysis",
      values: { cutoff, deviation: least, whiteLevel },
    });
  if (least > whiteLevel) weak("no cutoff leaves a residual like white noise");
  if (best === 0 || best === cutoffs.length - 1)
    weak(`the best cutoff is the ${best === 0 ? "lowest" : "highest"} tried`);
  return { cutoff, cutoffs, deviations, whiteLevel, cautions };
}

/** Sum of absolute autocorrelations of a residual; NaN for one that is zero throughout. */
function distanceFromWhite(residual: Float64Array, lags: number): number {
  const mean = residual.reduce((sum, value) => sum + value, 0) / residual.length;
  const free = residual.map((value) => value - mean);
  const product = (lag: number) => {
    let sum = 0;
    for (let i = lag; i < free.length; i++) sum += (free[i] as number) * (free[i - lag] as number);
    return sum;
  };
  const square = product(0);
  return Array.from({ length: lags }, (_, k) => Math.abs(product(k + 1)) / square).reduce(
    (sum, value) => sum + value,
    0,
  );
}
