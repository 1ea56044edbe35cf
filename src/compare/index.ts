export type {
  ComparedTrial,
  Comparison,
  ComparisonSettings,
  ComponentComparison,
  ComponentReading,
  Interval,
  MetricComparison,
  OverallReading,
  WorkReading,
} from "./comparison.js";
