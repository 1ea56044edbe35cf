import {
  type Caution,
  type Complete,
  fail,
  type Hertz,
  requireFiniteSamples,
  requireNumber,
  requireOneOf,
  withDefaults,
} from "../../units/index.js";
import { finiteResult } from "../finiteResult.js";
import { powerTransform } from "./powerTransform.js";

/** How a segment fades in and out. */
export type SpectrumWindow = "hann" | "hamming" | "blackman" | "rectangular";

/** What {@link powerSpectralDensity} may be told. */
export interface PowerSpectralDensityOptions {
  /** Samples in each segment, any whole number from 1; the frequencies lie at steps of the rate divided by it. */
  readonly segmentLength?: number | undefined;
  /** Share of a segment that overlaps the next, from 0 and below 1. */
  readonly overlap?: number | undefined;
  /** How a segment fades in and out. */
  readonly window?: SpectrumWindow | undefined;
  /** What is taken out of each segment first. */
  readonly detrend?: "constant" | "linear" | "none" | undefined;
  /** Length to which segments are filled up with zeros, for a finer grid of frequencies; that of the segment if `null`. */
  readonly transformLength?: number | null | undefined;
  /** `density`: power per hertz. `spectrum`: power of a sine at each frequency. */
  readonly scaling?: "density" | "spectrum" | undefined;
}

/** Hann windows of 256 samples that overlap by half, each without its mean: as SciPy's `welch`. */
export const POWER_SPECTRAL_DENSITY_DEFAULTS: Complete<PowerSpectralDensityOptions> = {
  segmentLength: 256,
  overlap: 0.5,
  window: "hann",
  detrend: "constant",
  transformLength: null,
  scaling: "density",
};

/** Power by frequency. */
export interface PowerSpectrum {
  /** From 0 to half the sampling rate, Hz. */
  readonly frequency: Float64Array;
  /** The unit of the samples squared, per Hz where scaled as density. */
  readonly density: Float64Array;
  /** How many segments were averaged. */
  readonly segments: number;
  readonly segmentLength: number;
  readonly cautions: readonly Caution[];
}

/**
 * Estimates the one-sided power spectral density by averaging over overlapping segments (Welch's method).
 *
 * Formula: mean over segments of |Σ w_i x_i exp(−2πj ik/n)|²/(fs Σ w²), or /(Σ w)² scaled as spectrum, doubled except at
 * 0 Hz and half the rate.
 * Units: Hz; the unit of the samples squared per Hz.
 * Limits: longer segments resolve finer and average less: the standard error is about 1/√segments of the value. Samples after the last
 * whole segment are left out. Lengths that are no power of two are transformed exactly (Bluestein), at some four times
 * the work.
 * Source: Welch PD 1967, IEEE Trans. Audio Electroacoust. 15:70 (from memory); agrees with SciPy's `welch`.
 * @param samples - One channel.
 * @param sampleRate - Samples per second, above 0, Hz.
 * @param options - {@link POWER_SPECTRAL_DENSITY_DEFAULTS} where left out.
 * @returns The spectrum; a caution where the samples are fewer than a segment, which is then as long as they are.
 * @throws GaitKineticsError `too-short`: no samples; `not-finite`; `out-of-range`; `wrong-type`; `unknown-option`.
 * @example
 * powerSpectralDensity(Float64Array.from({ length: 1000 }, (_, i) => Math.sin(i)), 1000, { segmentLength: 500 }).segments // 3
 */
export function powerSpectralDensity(
  samples: Float64Array,
  sampleRate: Hertz,
  options: PowerSpectralDensityOptions = {},
): PowerSpectrum {
  const settings = withDefaults(POWER_SPECTRAL_DENSITY_DEFAULTS, options);
  requireNumber("sampleRate", sampleRate, { above: 0, unit: "Hz" });
  requireFiniteSamples("samples", samples);
  if (samples.length === 0)
    fail("too-short", "there are no samples; at least 1 is needed", { argument: "samples" });
  requireOneOf("detrend", settings.detrend, ["constant", "linear", "none"]);
  requireOneOf("scaling", settings.scaling, ["density", "spectrum"]);
  const wanted = requireNumber("segmentLength", settings.segmentLength, { from: 1, whole: true });
  const segmentLength = Math.min(wanted, samples.length);
  const overlap = Math.floor(
    requireNumber("overlap", settings.overlap, { from: 0, below: 1 }) * segmentLength,
  );
  const transformLength = requireNumber("transformLength", settings.transformLength ?? segmentLength, {
    from: segmentLength,
    whole: true,
  });
  const window = windowOf(settings.window, segmentLength);
  const bins = Math.floor(transformLength / 2) + 1;
  const sums = new Float64Array(bins);
  const transform = powerTransform(transformLength);
  const pair = [new Float64Array(transformLength), new Float64Array(transformLength)] as const;
  const step = segmentLength - overlap;
  const segments = 1 + Math.floor((samples.length - segmentLength) / step);
  for (let s = 0; s < segments; s += 2) {
    pair.forEach((segment, i) => {
      if (s + i < segments) fillSegment(segment, samples, (s + i) * step, window, settings.detrend);
      else segment.fill(0);
    });
    transform(...pair, sums);
  }
  const sum = window.reduce((total, value) => total + value, 0);
  const squares = window.reduce((total, value) => total + value * value, 0);
  const scale = 1 / segments / (settings.scaling === "density" ? sampleRate * squares : sum * sum);
  const single = (k: number) => k === 0 || 2 * k === transformLength;
  const cautions: Caution[] = [];
  if (segmentLength < wanted) {
    cautions.push({
      code: "too-short",
      message: `there are ${samples.length} samples, fewer than a segment of ${wanted}; one segment of all of them was taken`,
      where: "segmentLength",
      values: { samples: samples.length, segmentLength: wanted },
    });
  }
  return {
    frequency: sums.map((_, k) => (k * sampleRate) / transformLength),
    density: finiteResult(sums.map((value, k) => value * scale * (single(k) ? 1 : 2))),
    segments,
    segmentLength,
    cautions,
  };
}

/** Fills a segment with samples from a place on, without their mean or line, under the window. */
function fillSegment(
  segment: Float64Array,
  samples: Float64Array,
  start: number,
  window: Float64Array,
  level: "constant" | "linear" | "none",
): void {
  const count = window.length;
  const middle = (count - 1) / 2;
  let sum = 0;
  let moment = 0;
  for (let i = 0; i < count; i++) sum += samples[start + i] as number;
  const mean = level === "none" ? 0 : sum / count;
  for (let i = 0; i < count; i++) moment += (i - middle) * ((samples[start + i] as number) - mean);
  const slope = level === "linear" && count > 1 ? moment / ((count * (count * count - 1)) / 12) : 0;
  for (let i = 0; i < count; i++) {
    segment[i] = ((samples[start + i] as number) - mean - slope * (i - middle)) * (window[i] as number);
  }
}

/** Sums of cosines over one period, the last point left out. */
function windowOf(name: SpectrumWindow, length: number): Float64Array {
  const terms = {
    rectangular: [1],
    hann: [0.5, 0.5],
    hamming: [0.54, 0.46],
    blackman: [0.42, 0.5, 0.08],
  }[requireOneOf("window", name, ["hann", "hamming", "blackman", "rectangular"])];
  if (length === 1) return Float64Array.of(1);
  return Float64Array.from({ length }, (_, i) =>
    terms.reduce(
      (sum, term, k) => sum + (k % 2 === 0 ? term : -term) * Math.cos((2 * Math.PI * k * i) / length),
      0,
    ),
  );
}
