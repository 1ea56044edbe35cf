export type { TrialAirDrag } from "./airDragOf.js";
export {
  ANALYSE_TRIAL_DEFAULTS,
  type AnalyseTrialOptions,
  analyseTrial,
  type TrialEventsOptions,
} from "./analyseTrial.js";
export { analyseTrials } from "./analyseTrials.js";
export { type ContactsWith, contactsWith, LEAST_SHARE_OF_CONTACTS } from "./contactsWith.js";
export { CUMULATIVE_LOAD_DEFAULTS, cumulativeLoad } from "./cumulative/cumulativeLoad.js";
export type { CumulativeLoad, CumulativeLoadOptions, LoadSum } from "./cumulative/load.js";
export {
  WEIGHTED_LOAD_DEFAULTS,
  type WeightedLoad,
  type WeightedLoadOptions,
  weightedLoad,
} from "./cumulative/weightedLoad.js";
export { TRIAL_FILTER, type TrialFilter } from "./filteredCopy.js";
export {
  HOF_NORMALISED_TRIAL_DEFAULTS,
  type HofNormalisedTrial,
  type HofNormalisedTrialOptions,
  hofNormalisedTrial,
} from "./hofNormalisedTrial.js";
export { massByForce } from "./massByForce.js";
export {
  STANCE_CURVES_DEFAULTS,
  type StanceComponent,
  type StanceCurves,
  type StanceCurvesOptions,
  stanceCurves,
} from "./stanceCurves.js";
export { type StrideContext, type StridePair, stridePairs, strideValues } from "./strideValues.js";
export {
  SYMMETRIES_DEFAULTS,
  type Symmetries,
  type SymmetriesOptions,
  symmetriesOf,
} from "./symmetry/symmetriesOf.js";
export {
  type BetweenFeet,
  SYMMETRY_DEFAULTS,
  type Symmetry,
  type SymmetryOptions,
} from "./symmetry/symmetry.js";
export { symmetryOf } from "./symmetry/symmetryOf.js";
export type {
  Curve,
  CurvesBySide,
  LandingSettings,
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
