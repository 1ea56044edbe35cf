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
export { shareResults } from "./common/shareResults.js";
export type { MetricExplanation, MetricInfluence, MetricOption } from "./explanation.js";
export { METRIC_EXPLANATIONS } from "./explanations.js";
export { METRIC_INFLUENCES } from "./influences.js";
export { lateralImpulse } from "./mediolateral/lateralImpulse.js";
export { medialImpulse } from "./mediolateral/medialImpulse.js";
export { mediolateralExcursion } from "./mediolateral/mediolateralExcursion.js";
export { mediolateralImpulse } from "./mediolateral/mediolateralImpulse.js";
export { peakLateralForce } from "./mediolateral/peakLateralForce.js";
export { peakMedialForce } from "./mediolateral/peakMedialForce.js";
export type { Metric, MetricComponent, MetricFamily, MetricNeed, Normalisation } from "./metric.js";
export { metricById } from "./metricById.js";
export {
  ASSESS_LANDING_DEFAULTS,
  type AssessLandingOptions,
  assessLanding,
  LANDING_BALANCE_CAUTION,
  LANDING_MISSING_WEIGHT,
  type LandingAssessment,
} from "./placement/assessLanding.js";
export { LANDING_DISTANCE_DEFAULTS, type LandingDistanceOptions } from "./placement/landingOf.js";
export { stepLength } from "./placement/stepLength.js";
export { STEP_WIDTH_DEFAULTS, type StepWidthOptions, stepWidth } from "./placement/stepWidth.js";
export { strideLength } from "./placement/strideLength.js";
export {
  type FootLine,
  type GroundPlace,
  STRIKE_INDEX_DEFAULTS,
  type StrikeIndexOptions,
  strikeIndex,
} from "./placement/strikeIndex.js";
export { takeOffDistance } from "./placement/takeOffDistance.js";
export { touchdownDistance } from "./placement/touchdownDistance.js";
export { freeMomentImpulse } from "./resultant/freeMomentImpulse.js";
export { FREE_MOMENT_DEFAULTS, type FreeMomentOptions } from "./resultant/freeMomentOf.js";
export { peakFreeMoment } from "./resultant/peakFreeMoment.js";
export { peakResultantForce } from "./resultant/peakResultantForce.js";
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
export { doubleSupportTime } from "./walking/doubleSupportTime.js";
export { energyRecovery } from "./walking/energyRecovery.js";
export { firstVerticalPeak } from "./walking/firstVerticalPeak.js";
export { midstanceTrough } from "./walking/midstanceTrough.js";
export { secondVerticalPeak } from "./walking/secondVerticalPeak.js";
export { singleSupportTime } from "./walking/singleSupportTime.js";
export { stanceShare } from "./walking/stanceShare.js";
export { VERTICAL_PEAKS_DEFAULTS, type VerticalPeaksOptions } from "./walking/verticalPeaks.js";
export { ELASTIC_ENERGY_DEFAULTS, elasticEnergy } from "./work/elasticEnergy.js";
export {
  FORCE_GENERATION_COST_DEFAULTS,
  type ForceGenerationCostOptions,
  forceGenerationCost,
} from "./work/forceGenerationCost.js";
export { halfSineFit } from "./work/halfSineFit.js";
export { LEG_STIFFNESS_DEFAULTS, type LegStiffnessOptions, legStiffness } from "./work/legStiffness.js";
export { positiveExternalWork } from "./work/positiveExternalWork.js";
export { positiveWorkForward } from "./work/positiveWorkForward.js";
export { positiveWorkLateral } from "./work/positiveWorkLateral.js";
export { positiveWorkVertical } from "./work/positiveWorkVertical.js";
export { pushToBrakeTimeRatio } from "./work/pushToBrakeTimeRatio.js";
export type { SpringMethod, SpringOptions } from "./work/springOf.js";
export {
  VERTICAL_STIFFNESS_DEFAULTS,
  type VerticalStiffnessOptions,
  verticalStiffness,
} from "./work/verticalStiffness.js";
export { STEP_WORK_DEFAULTS, type StepWorkOptions } from "./work/workOfStep.js";
