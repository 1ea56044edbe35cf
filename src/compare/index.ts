export type { Alternative, AlternativeEffect } from "./alternatives/alternative.js";
export { compareTrials } from "./compareTrials.js";
export type {
  ComparedTrial,
  ComparedValues,
  Comparison,
  ComparisonDesign,
  ComparisonSettings,
  ComponentComparison,
  ComponentName,
  ComponentReading,
  Drift,
  MetricComparison,
  OverallComparison,
  OverallReading,
  SmallestDetectableChange,
  SpeedAlone,
  WorkComparison,
  WorkReading,
} from "./comparison.js";
export { compareCurves } from "./curves/compareCurves.js";
export {
  COMPARE_MEAN_CURVES_DEFAULTS,
  type CompareMeanCurvesOptions,
  compareMeanCurves,
} from "./curves/compareMeanCurves.js";
export {
  compareStanceCurves,
  type RecordedTrial,
  type StanceCurveComparisons,
} from "./curves/compareStanceCurves.js";
export type { CurveCluster, CurveComparison } from "./curves/curveComparison.js";
export {
  CURVE_TEST_DEFAULTS,
  type CurveTestOptions,
  LEAST_MEAN_CURVES,
  LEAST_SUCCESSIVE_CURVES,
} from "./curves/options.js";
export {
  COMPARE_TRIALS_DEFAULTS,
  CORRELATED_ABOVE,
  type CompareTrialsOptions,
  LEAST_DEGREES_OF_FREEDOM,
  LEAST_MEAN_FOR_PERCENT,
  MASS_RATIO_TOLERANCE,
  READING_CORRELATION,
  SAME_SPEED,
  SIMILAR_MARGIN,
  SLOW_DRIFT_SHARE,
  SMALLEST_DETECTABLE_SHARE,
  type SourcedChange,
  THIRDS_LEVEL,
} from "./options.js";
export {
  PUBLISHED_DETECTABLE_CHANGES,
  type PublishedDetectableChange,
} from "./publishedDetectableChanges.js";
export { PUBLISHED_SPEED_EFFECTS, type PublishedSpeedEffect } from "./publishedSpeedEffects.js";
export { RELIABILITY_DEFAULTS, type ReliabilityOptions, type RunnerTrials } from "./reliability/options.js";
export { reliability } from "./reliability/reliability.js";
export type {
  MetricReliability,
  Reliability,
  ReliabilityCorrelation,
} from "./reliability/reliabilityResult.js";
export { compareRunners } from "./runners/compareRunners.js";
export {
  COMPARE_RUNNERS_DEFAULTS,
  type CompareRunnersOptions,
  type GroupRunner,
  MINIMUM_RUNNERS,
  type PairedRunner,
  type RunnerGroups,
} from "./runners/options.js";
export type {
  RunnerDifference,
  RunnersComparison,
  RunnersComponent,
  RunnersCondition,
  RunnersMetric,
  RunnersValues,
} from "./runners/runnersComparison.js";
export { compareSessions } from "./sessions/compareSessions.js";
export {
  COMPARE_SESSIONS_DEFAULTS,
  type CompareSessionsOptions,
  LEAST_SESSIONS_FOR_SPREAD,
  type Session,
} from "./sessions/options.js";
export type { SessionMetric, SessionSeries, SessionValue } from "./sessions/sessionSeries.js";
