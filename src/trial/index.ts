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
