export {
  ANALYSE_TRIAL_DEFAULTS,
  type AnalyseTrialOptions,
  analyseTrial,
  TRIAL_FILTER,
  type TrialEventsOptions,
  type TrialFilter,
} from "./analyseTrial.js";
export { analyseTrials } from "./analyseTrials.js";
export { massByForce } from "./massByForce.js";
export { type StridePair, stridePairs, strideValues } from "./strideValues.js";
export type {
  Curve,
  CurvesBySide,
  MetricSummary,
  NotComputed,
  Spread,
  StepRow,
  Trial,
  TrialSettings,
} from "./trial.js";
export {
  FEW_STRIDES,
  FORWARD_BALANCE_TOLERANCE,
  LOADING_RATE_SAMPLE_RATE,
  MASS_TOLERANCE,
  SIDEWAYS_BALANCE_TOLERANCE,
} from "./trialCautions.js";
