export { compareTrials } from "./compareTrials.js";
export type {
  ComparedTrial,
  ComparedValues,
  Comparison,
  ComparisonSettings,
  ComponentComparison,
  ComponentName,
  ComponentReading,
  MetricComparison,
  OverallComparison,
  OverallReading,
  SmallestDetectableChange,
  WorkComparison,
  WorkReading,
} from "./comparison.js";
export {
  COMPARE_TRIALS_DEFAULTS,
  CORRELATED_ABOVE,
  type CompareTrialsOptions,
  LEAST_MEAN_FOR_PERCENT,
  MASS_RATIO_TOLERANCE,
  READING_CORRELATION,
  SIMILAR_MARGIN,
  SMALLEST_DETECTABLE_SHARE,
  type SourcedChange,
} from "./options.js";
