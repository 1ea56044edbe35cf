export { AIR_DRAG_DEFAULTS, type AirDragOptions, airDrag } from "./airDrag.js";
export { AIR_DRAG_SPEED, type AirDragCase, airDragCaution } from "./airDragCaution.js";
export {
  CENTRE_OF_MASS_EXCURSION_DEFAULTS,
  type CentreOfMassExcursionOptions,
  centreOfMassExcursion,
} from "./centreOfMassExcursion.js";
export {
  type AxisMotion,
  CENTRE_OF_MASS_MOTION_DEFAULTS,
  type CentreOfMassMotion,
  type CentreOfMassMotionOptions,
  centreOfMassMotion,
} from "./centreOfMassMotion.js";
export {
  INDIVIDUAL_LIMBS_WORK_DEFAULTS,
  type IndividualLimbsWork,
  type IndividualLimbsWorkOptions,
  individualLimbsWork,
  type LimbRecords,
} from "./energy/individualLimbsWork.js";
export {
  PUSH_AND_BRAKE_TIMES_DEFAULTS,
  type PushAndBrakeTimes,
  type PushAndBrakeTimesOptions,
  pushAndBrakeTimes,
} from "./energy/pushAndBrakeTimes.js";
export { recoveredShare } from "./energy/recoveredShare.js";
export { type ExternalWorkPerMetre, type WorkPartsPerMetre, workPerMetre } from "./energy/workPerMetre.js";
export {
  EXTERNAL_WORK_DEFAULTS,
  type ExternalWork,
  type ExternalWorkOptions,
  externalWork,
  type WorkParts,
} from "./externalWork.js";
export type { ForceRecord } from "./forceRecord.js";
export { halfSineAgreement } from "./halfSineAgreement.js";
export { type HofBody, type HofQuantity, hofNormalised } from "./hofNormalised.js";
export type {
  ContactSpan,
  Landing,
  LandingFromForce,
  LandingMargin,
  LandingRecord,
  LandingRefused,
} from "./landing/landing.js";
export { landingFromCentreOfMass } from "./landing/landingFromCentreOfMass.js";
export { LANDING_BALANCE_LIMIT, landingFromForce } from "./landing/landingFromForce.js";
export { LANDING_MARGIN, landingMargin } from "./landing/landingMargin.js";
export {
  type FootLevel,
  LANDING_DEFAULTS,
  type LandingOptions,
  TOUCH_DEFAULTS,
  type ToeShape,
  type TouchOptions,
} from "./landing/options.js";
export { MASS_FROM_FORCE_DEFAULTS, type MassFromForceOptions, massFromForce } from "./massFromForce.js";
export {
  ACSM_OXYGEN_UPTAKE_DEFAULTS,
  type AcsmOxygenUptake,
  type AcsmOxygenUptakeOptions,
  acsmOxygenUptake,
} from "./metabolic/acsmOxygenUptake.js";
export {
  APPARENT_EFFICIENCY_DEFAULTS,
  type ApparentEfficiency,
  type ApparentEfficiencyOptions,
  apparentEfficiency,
} from "./metabolic/apparentEfficiency.js";
export {
  FORCE_GENERATION_RATE_DEFAULTS,
  type ForceGenerationRate,
  type ForceGenerationRateOptions,
  forceGenerationRate,
} from "./metabolic/forceGenerationRate.js";
export type { MetabolicEstimate, MetabolicGait, ValidRange } from "./metabolic/metabolicEstimate.js";
export { type MinettiCost, minettiCost } from "./metabolic/minettiCost.js";
export { effectiveContactTime } from "./springMass/effectiveContactTime.js";
export { halfPeriodStiffness } from "./springMass/halfPeriodStiffness.js";
export { LEG_LENGTH_PER_HEIGHT, type LegGeometry } from "./springMass/legGeometry.js";
export type { SpringLeg, SpringMass, SpringMassMethod } from "./springMass/springMass.js";
export {
  SPRING_MASS_FROM_FORCE_DEFAULTS,
  type SpringMassFromForceOptions,
  springMassFromForce,
} from "./springMass/springMassFromForce.js";
export {
  type ContactAndFlights,
  SPRING_MASS_FROM_TIMES_DEFAULTS,
  type SpringMassFromTimesOptions,
  springMassFromTimes,
} from "./springMass/springMassFromTimes.js";
export {
  type ForcePulse,
  TWO_MASS_FORCE_DEFAULTS,
  type TwoMassForce,
  type TwoMassForceOptions,
  type TwoMassRunner,
  twoMassForce,
} from "./springMass/twoMassForce.js";
export {
  CADENCE_WHAT_IF_DEFAULTS,
  type CadenceChange,
  type CadenceQuantity,
  type CadenceRunner,
  type CadenceWhatIf,
  type CadenceWhatIfOptions,
  cadenceWhatIf,
  type WhatIfRange,
} from "./whatIf/cadenceWhatIf.js";
export { type PublishedCadenceChange, publishedCadenceChanges } from "./whatIf/publishedCadenceChanges.js";
export type { SpringMassStep } from "./whatIf/springMassStep.js";
