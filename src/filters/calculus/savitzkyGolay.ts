import {
  type Complete,
  fail,
  type Hertz,
  requireFiniteSamples,
  requireNumber,
  withDefaults,
} from "../../units/index.js";
import { savitzkyGolayWeights } from "./savitzkyGolayWeights.js";

/** What {@link savitzkyGolay} needs and may be told. */
export interface SavitzkyGolayOptions {
  /** Number of samples each polynomial is fitted to, odd, from 3 to the number of samples. */
  readonly window: number;
  /** Degree of the polynomial, from 0 and below the window. */
  readonly degree: number;
  /** Which derivative to give, from 0, the smoothed value, to the degree. */
  readonly derivative?: number | undefined;
  /** Samples per second, Hz; needed for derivatives. */
  readonly sampleRate?: Hertz | undefined;
}

/** The smoothed value; a rate of 1 gives derivatives per sample. */
export const SAVITZKY_GOLAY_DEFAULTS: Complete<Pick<SavitzkyGolayOptions, "derivative" | "sampleRate">> = {
  derivative: 0,
  sampleRate: 1,
};

/**
 * Smooths or differentiates by fitting a polynomial to the samples around each.
 *
 * Formula: value or derivative at the middle of the least-squares polynomial of a degree over a window; within half a
 * window of an end, that of the polynomial over the first or last window at that place.
 * Units: the unit of the samples, per second to the power of the derivative.
 * Limits: exact for polynomials up to the degree, ends included. For the same window a derivative is the noisier the
 * higher the degree.
 * Source: Savitzky A & Golay MJE 1964, Anal. Chem. 36:1627; agrees with SciPy's `savgol_filter` with mode `interp`.
 * @param samples - At least one window of them.
 * @param options - Window and degree, and what {@link SAVITZKY_GOLAY_DEFAULTS} holds where left out.
 * @throws GaitKineticsError `out-of-range`: window even or below 3, degree not below it, derivative above the degree,
 * rate not above 0; `too-short`: fewer samples than the window; `not-finite`; `wrong-type`; `unknown-option`.
 * @example
 * savitzkyGolay(new Float64Array([0, 1, 4, 9, 16]), { window: 5, degree: 2, derivative: 1 })[4] // 8
 */
export function savitzkyGolay(samples: Float64Array, options: SavitzkyGolayOptions): Float64Array {
  const { window, degree, ...rest } = { ...options };
  const { derivative, sampleRate } = withDefaults(SAVITZKY_GOLAY_DEFAULTS, rest);
  requireNumber("sampleRate", sampleRate, { above: 0, unit: "Hz" });
  requireFiniteSamples("samples", samples);
  const weights = (position: number) => savitzkyGolayWeights({ window, degree, derivative, position });
  const central = weights(0);
  const count = samples.length;
  if (count < window) {
    fail("too-short", `there are ${count} samples; at least ${window} are needed for this window`, {
      argument: "samples",
      values: { length: count, window },
    });
  }
  const half = (window - 1) / 2;
  const factor = sampleRate ** derivative;
  const smooth = new Float64Array(count);
  const weigh = (by: Float64Array, from: number) => {
    let sum = 0;
    for (let k = 0; k < window; k++) sum += (by[k] as number) * (samples[from + k] as number);
    return sum * factor;
  };
  for (let i = half; i < count - half; i++) smooth[i] = weigh(central, i - half);
  for (let i = 0; i < half; i++) {
    smooth[i] = weigh(weights(i - half), 0);
    smooth[count - 1 - i] = weigh(weights(half - i), count - window);
  }
  return smooth;
}
