export { brakingImpulse } from "./anteroposterior/brakingImpulse.js";
export {
  BRAKING_LOADING_RATE_DEFAULTS,
  type BrakingLoadingRateOptions,
  brakingLoadingRate,
} from "./anteroposterior/brakingLoadingRate.js";
export { netForwardImpulse } from "./anteroposterior/netForwardImpulse.js";
export { peakBrakingForce } from "./anteroposterior/peakBrakingForce.js";
export { peakPropulsiveForce } from "./anteroposterior/peakPropulsiveForce.js";
export { propulsiveImpulse } from "./anteroposterior/propulsiveImpulse.js";
export { CATALOGUE } from "./catalogue.js";
export { lateralImpulse } from "./mediolateral/lateralImpulse.js";
export { medialImpulse } from "./mediolateral/medialImpulse.js";
export { mediolateralExcursion } from "./mediolateral/mediolateralExcursion.js";
export { mediolateralImpulse } from "./mediolateral/mediolateralImpulse.js";
export { peakLateralForce } from "./mediolateral/peakLateralForce.js";
export { peakMedialForce } from "./mediolateral/peakMedialForce.js";
export type { Metric, MetricComponent, MetricFamily, MetricNeed, Normalisation } from "./metric.js";
export { metricById } from "./metricById.js";
export { stepLength } from "./placement/stepLength.js";
export { strideLength } from "./placement/strideLength.js";
export { aerialTime } from "./timing/aerialTime.js";
export { brakingTime } from "./timing/brakingTime.js";
export { cadence } from "./timing/cadence.js";
export { contactTime } from "./timing/contactTime.js";
export { dutyFactor } from "./timing/dutyFactor.js";
export { propulsiveTime } from "./timing/propulsiveTime.js";
export { stepTime } from "./timing/stepTime.js";
export { strideTime } from "./timing/strideTime.js";
export {
  AVERAGE_LOADING_RATE_DEFAULTS,
  type AverageLoadingRateOptions,
  averageLoadingRate,
} from "./vertical/averageLoadingRate.js";
export {
  EARLY_LOADING_RATE_DEFAULTS,
  type EarlyLoadingRateOptions,
  earlyLoadingRate,
} from "./vertical/earlyLoadingRate.js";
export { impactPeak } from "./vertical/impactPeak.js";
export { IMPACT_PEAK_DEFAULTS, type ImpactPeakOptions } from "./vertical/impactPeakRule.js";
export {
  INSTANTANEOUS_LOADING_RATE_DEFAULTS,
  type InstantaneousLoadingRateOptions,
  instantaneousLoadingRate,
} from "./vertical/instantaneousLoadingRate.js";
export { meanVerticalForce } from "./vertical/meanVerticalForce.js";
export { peakVerticalForce } from "./vertical/peakVerticalForce.js";
export { timeToImpactPeak } from "./vertical/timeToImpactPeak.js";
export { verticalImpulse } from "./vertical/verticalImpulse.js";
export { verticalOscillation } from "./vertical/verticalOscillation.js";
export { halfSineFit } from "./work/halfSineFit.js";
export { positiveExternalWork } from "./work/positiveExternalWork.js";
