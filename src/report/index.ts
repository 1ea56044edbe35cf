export { describeC3d } from "./description/describeC3d.js";
export { describeRecording } from "./description/describeRecording.js";
export type {
  DescribedChannel,
  DescribedColumn,
  DescribedMarker,
  DescribedMarkers,
  DescribedPlatform,
  DescribedPoint,
  PlatformPlace,
  RecordingDescription,
} from "./description/description.js";
export {
  CURVE_FIGURE_DEFAULTS,
  type CurveFigureOptions,
  curveFigure,
} from "./figures/curveFigure.js";
export {
  DIFFERENCE_FIGURE_DEFAULTS,
  type DifferenceFigureOptions,
  differenceFigure,
} from "./figures/differenceFigure.js";
export {
  LANDING_FIGURE_DEFAULTS,
  type LandingFigureOptions,
  landingFigure,
} from "./figures/landingFigure.js";
export {
  RUNNERS_FIGURE_DEFAULTS,
  type RunnersFigureOptions,
  runnersFigure,
} from "./figures/runnersFigure.js";
export {
  SESSIONS_FIGURE_DEFAULTS,
  type SessionsFigureOptions,
  sessionsFigure,
} from "./figures/sessionsFigure.js";
export {
  STATISTIC_FIGURE_DEFAULTS,
  type StatisticFigureOptions,
  statisticFigure,
} from "./figures/statisticFigure.js";
export {
  STEP_SERIES_FIGURE_DEFAULTS,
  type StepSeriesFigureOptions,
  stepSeriesFigure,
} from "./figures/stepSeriesFigure.js";
export {
  SYMMETRY_FIGURE_DEFAULTS,
  type SymmetryFigureOptions,
  symmetryFigure,
} from "./figures/symmetryFigure.js";
export {
  WORK_FIGURE_DEFAULTS,
  type WorkFigureOptions,
  workFigure,
} from "./figures/workFigure.js";
export { comparisonHtml } from "./html/comparisonHtml.js";
export { runnersHtml } from "./html/runnersHtml.js";
export { sessionsHtml } from "./html/sessionsHtml.js";
export { trialHtml } from "./html/trialHtml.js";
export {
  COMPARISON_REPORT_DEFAULTS,
  type ComparisonReportOptions,
  SERIES_REPORT_DEFAULTS,
  type SeriesReportOptions,
  TRIAL_REPORT_DEFAULTS,
  type TrialReportOptions,
} from "./options.js";
export { catalogueText } from "./text/catalogueText.js";
export { comparisonMarkdown } from "./text/comparisonMarkdown.js";
export { comparisonText } from "./text/comparisonText.js";
export { descriptionText } from "./text/descriptionText.js";
export { healthText } from "./text/healthText.js";
export { METRIC_TEXT_DEFAULTS, type MetricTextOptions, metricText } from "./text/metricText.js";
export { reliabilityText } from "./text/reliabilityText.js";
export { runnersText } from "./text/runnersText.js";
export { sessionsText } from "./text/sessionsText.js";
export { trialMarkdown } from "./text/trialMarkdown.js";
export { trialText } from "./text/trialText.js";
export { HEALTH_CAUTIONS } from "./wording/healthCautions.js";
