export { cumulativeIntegral } from "./calculus/cumulativeIntegral.js";
export { DERIVATIVE_DEFAULTS, type DerivativeOptions, derivative } from "./calculus/derivative.js";
export {
  INTEGRAL_BETWEEN_DEFAULTS,
  type IntegralBetweenOptions,
  type IntegralPart,
  integralBetween,
} from "./calculus/integralBetween.js";
export { valueAt } from "./calculus/valueAt.js";
export { passCorrection } from "./design/passCorrection.js";
export { type LowPassOptions, lowPass } from "./lowPass.js";
export { ZERO_PHASE_DEFAULTS, type ZeroPhaseOptions } from "./netFilter.js";
export { timeNormalise } from "./resampling/timeNormalise.js";
export type { FilteredChannels } from "./run/channels.js";
export { gustafsson } from "./run/gustafsson.js";
export { END_DEFAULTS, type EndMethod, type EndOptions, type Ends } from "./run/zeroPhase.js";
