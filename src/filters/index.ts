export { type BandOptions, bandPass } from "./bandPass.js";
export { bandStop } from "./bandStop.js";
export {
  cumulativeIntegral,
  INTEGRATION_DEFAULTS,
  type IntegrationOptions,
  type IntegrationRule,
} from "./calculus/cumulativeIntegral.js";
export { DERIVATIVE_DEFAULTS, type DerivativeOptions, derivative } from "./calculus/derivative.js";
export { integral } from "./calculus/integral.js";
export {
  INTEGRAL_BETWEEN_DEFAULTS,
  type IntegralBetweenOptions,
  type IntegralPart,
  integralBetween,
} from "./calculus/integralBetween.js";
export {
  SAVITZKY_GOLAY_DEFAULTS,
  type SavitzkyGolayOptions,
  savitzkyGolay,
} from "./calculus/savitzkyGolay.js";
export { type SavitzkyGolayWeightsOptions, savitzkyGolayWeights } from "./calculus/savitzkyGolayWeights.js";
export {
  SECOND_DERIVATIVE_DEFAULTS,
  type SecondDerivativeOptions,
  secondDerivative,
} from "./calculus/secondDerivative.js";
export { valueAt } from "./calculus/valueAt.js";
export { DETREND_DEFAULTS, type DetrendOptions, detrend } from "./conditioning/detrend.js";
export {
  FILL_GAPS_DEFAULTS,
  type FilledGaps,
  type FillGapsOptions,
  fillGaps,
  type Gap,
} from "./conditioning/fillGaps.js";
export { type OffsetRemoved, removeOffset } from "./conditioning/removeOffset.js";
export { cutoffFromSampleRate, type SampleRateCutoff } from "./cutoff/cutoffFromSampleRate.js";
export {
  RESIDUAL_ANALYSIS_DEFAULTS,
  type ResidualAnalysis,
  type ResidualAnalysisOptions,
  residualAnalysis,
} from "./cutoff/residualAnalysis.js";
export {
  WHITENESS_ANALYSIS_DEFAULTS,
  type WhitenessAnalysis,
  type WhitenessAnalysisOptions,
  whitenessAnalysis,
} from "./cutoff/whitenessAnalysis.js";
export { type ButterworthOptions, butterworth } from "./design/butterworth.js";
export { type CriticallyDampedOptions, criticallyDamped } from "./design/criticallyDamped.js";
export type { FilterDesign, FilterFamily, FilterType, Section } from "./design/filterDesign.js";
export {
  FREQUENCY_RESPONSE_DEFAULTS,
  type FrequencyResponse,
  type FrequencyResponseOptions,
  frequencyResponse,
} from "./design/frequencyResponse.js";
export { passCorrection } from "./design/passCorrection.js";
export { type Complex, type PolesAndZeros, polesAndZeros } from "./design/polesAndZeros.js";
export { type HighPassOptions, highPass } from "./highPass.js";
export { type LowPassOptions, lowPass } from "./lowPass.js";
export { ZERO_PHASE_DEFAULTS, type ZeroPhaseOptions } from "./netFilter.js";
export {
  INTERPOLATE_DEFAULTS,
  type InterpolateOptions,
  type InterpolationMethod,
  interpolate,
} from "./resampling/interpolate.js";
export { RESAMPLE_DEFAULTS, type ResampleOptions, resample } from "./resampling/resample.js";
export { timeNormalise } from "./resampling/timeNormalise.js";
export type { FilteredChannels } from "./run/channels.js";
export { filterCausal } from "./run/filterCausal.js";
export { filterZeroPhase } from "./run/filterZeroPhase.js";
export { gustafsson } from "./run/gustafsson.js";
export type { Lane } from "./run/lanes.js";
export {
  CAUSAL_DEFAULTS,
  type CausalOptions,
  type FilterState,
  type StreamingFilter,
  streamingFilter,
} from "./run/streamingFilter.js";
export { END_DEFAULTS, type EndMethod, type EndOptions, type Ends } from "./run/zeroPhase.js";
export { powerFrequency } from "./spectrum/powerFrequency.js";
export {
  POWER_SPECTRAL_DENSITY_DEFAULTS,
  type PowerSpectralDensityOptions,
  type PowerSpectrum,
  powerSpectralDensity,
  type SpectrumWindow,
} from "./spectrum/powerSpectralDensity.js";
