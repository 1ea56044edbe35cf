import {
  type Caution,
  type Complete,
  fail,
  type Hertz,
  requireFiniteSamples,
  withDefaults,
} from "../../units/index.js";
import { finiteResult } from "../finiteResult.js";
import { lowPass } from "../lowPass.js";
import { residualOf, trialCutoffs } from "./trialCutoffs.js";

/** What {@link residualAnalysis} may be told. */
export interface ResidualAnalysisOptions {
  /** Cutoffs to try, rising, Hz; by default forty steps from 0.5 % to 20 % of the sampling rate. */
  readonly cutoffs?: readonly Hertz[] | null | undefined;
  /** Range over which the residual is taken for noise alone, Hz; by default the upper half of the cutoffs. */
  readonly fitRange?: readonly [from: Hertz, to: Hertz] | null | undefined;
  /** Net order of the filter tried, even. */
  readonly order?: number | undefined;
}

/** Net fourth order; cutoffs and range follow the sampling rate. */
export const RESIDUAL_ANALYSIS_DEFAULTS: Complete<ResidualAnalysisOptions> = {
  cutoffs: null,
  fitRange: null,
  order: 4,
};

/** The curve of residuals, the line through its noise and what they say. */
export interface ResidualAnalysis {
  /** Where the residual has fallen to the noise, Hz; `null` where it never does. */
  readonly cutoff: number | null;
  /** Intercept of the line at 0 Hz: the estimate of the root mean square of the noise, in the unit of the samples. */
  readonly noise: number;
  /** Slope of the line, per Hz. */
  readonly slope: number;
  /** Share of the variance of the residuals in the range that the line explains. */
  readonly rSquared: number;
  readonly fitRange: readonly [from: number, to: number];
  readonly cutoffs: readonly number[];
  /** Root mean square of what each cutoff takes out. */
  readonly residuals: readonly number[];
  readonly cautions: readonly Caution[];
}

/** A line that explains less of the residuals than this does not show noise alone. A judgement. */
const STRAIGHT = 0.9;

/**
 * Chooses a cutoff at which the filter takes out as much as there is noise.
 *
 * Formula: R(fc) = √mean (x − x_fc)²; a straight line through R where only noise is taken out meets 0 Hz at the noise a;
 * the cutoff is where R first falls to a, linear between the cutoffs tried.
 * Units: Hz; noise and residuals in the unit of the samples.
 * Limits: takes signal below and noise above the cutoff for equal and opposite, and noise for white. It finds too low a
 * cutoff where the signal is smooth and the rate high. Ground reaction with impacts has signal up to 50 Hz and more.
 * Source: Winter DA 2009, Biomechanics and Motor Control of Human Movement, 4th ed. (residual analysis).
 * @param samples - One channel.
 * @param sampleRate - Samples per second, above 0, Hz.
 * @param options - {@link RESIDUAL_ANALYSIS_DEFAULTS} where left out.
 * @returns The cutoff with the curve and the line; a caution where the line is not straight, rises, or is never met.
 * @throws GaitKineticsError `out-of-range`: cutoffs that do not rise, a range with fewer than 3 of them; `too-short`;
 * `not-finite`; `wrong-type`; `unknown-option`.
 * @example
 * residualAnalysis(Float64Array.from({ length: 200 }, (_, i) => Math.sin(i / 9) + ((i * 7) % 5) / 50), 100).cutoffs.length // 40
 */
export function residualAnalysis(
  samples: Float64Array,
  sampleRate: Hertz,
  options: ResidualAnalysisOptions = {},
): ResidualAnalysis {
  const { cutoffs: wanted, fitRange: range, order } = withDefaults(RESIDUAL_ANALYSIS_DEFAULTS, options);
  requireFiniteSamples("samples", samples);
  const cutoffs = trialCutoffs(wanted, sampleRate);
  const fitRange = range ?? [cutoffs[cutoffs.length >> 1] as number, cutoffs[cutoffs.length - 1] as number];
  const inRange = cutoffs.map((cutoff) => cutoff >= fitRange[0] && cutoff <= fitRange[1]);
  if (inRange.filter(Boolean).length < 3) {
    fail("out-of-range", `fitRange is ${fitRange.join(" to ")} Hz; at least 3 cutoffs must lie in it`, {
      argument: "fitRange",
    });
  }
  const residuals = cutoffs.map((cutoff) => {
    const residual = residualOf(samples, lowPass(samples, { cutoff, sampleRate, order }));
    return Math.sqrt(residual.reduce((sum, value) => sum + value * value, 0) / residual.length);
  });
  finiteResult(Float64Array.from(residuals));
  const { intercept, slope, rSquared } = lineThrough(
    cutoffs.filter((_, i) => inRange[i]),
    residuals.filter((_, i) => inRange[i]),
  );
  finiteResult(Float64Array.of(intercept, slope, rSquared));
  const cutoff = crossing(cutoffs, residuals, intercept);
  const found = { cutoff, noise: intercept, slope, rSquared, fitRange, cutoffs, residuals };
  return { ...found, cautions: cautionsOf(found) };
}

/** Least-squares line. */
function lineThrough(
  x: readonly number[],
  y: readonly number[],
): { intercept: number; slope: number; rSquared: number } {
  const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
  const [meanX, meanY] = [mean(x), mean(y)];
  const dot = (a: readonly number[], meanA: number, b: readonly number[], meanB: number) =>
    a.reduce((sum, value, i) => sum + (value - meanA) * ((b[i] as number) - meanB), 0);
  const [xx, xy, yy] = [dot(x, meanX, x, meanX), dot(x, meanX, y, meanY), dot(y, meanY, y, meanY)];
  const slope = xy / xx;
  return { intercept: meanY - slope * meanX, slope, rSquared: yy === 0 ? 1 : (xy * xy) / (xx * yy) };
}

/** Where a falling curve first comes down to a level; `null` where it never does. */
function crossing(x: readonly number[], y: readonly number[], level: number): number | null {
  const i = y.findIndex((value) => value <= level);
  if (i < 0) return null;
  if (i === 0) return x[0] as number;
  const [x0, x1, y0, y1] = [x[i - 1], x[i], y[i - 1], y[i]] as [number, number, number, number];
  return x0 + ((y0 - level) / (y0 - y1)) * (x1 - x0);
}

function cautionsOf({
  cutoff,
  rSquared,
  slope,
  fitRange,
  cutoffs,
}: Omit<ResidualAnalysis, "cautions">): Caution[] {
  const weak = (message: string, values: Record<string, number | null>): Caution => ({
    code: "weak-evidence",
    message,
    where: "residual analysis",
    values,
  });
  const cautions: Caution[] = [];
  if (rSquared < STRAIGHT) {
    cautions.push(
      weak(
        `the line explains ${(100 * rSquared).toFixed(0)} % of the residuals in its range; it may not be noise alone`,
        { rSquared },
      ),
    );
  }
  if (slope > 0)
    cautions.push(weak("the residual rises with the cutoff; there is no noise to fit a line to", { slope }));
  if (cutoff === null)
    cautions.push(weak("the residual never falls to the noise; try higher cutoffs", { cutoff }));
  else if (cutoff >= fitRange[0]) {
    cautions.push(
      weak("the cutoff lies within the range taken for noise alone; try a higher range", { cutoff }),
    );
  } else if (cutoff === cutoffs[0]) {
    cautions.push(weak("the lowest cutoff tried already leaves the noise only; try lower ones", { cutoff }));
  }
  return cautions;
}
