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
export { comparisonHtml } from "./html/comparisonHtml.js";
export { trialHtml } from "./html/trialHtml.js";
export {
  COMPARISON_REPORT_DEFAULTS,
  type ComparisonReportOptions,
  TRIAL_REPORT_DEFAULTS,
  type TrialReportOptions,
} from "./options.js";
export { catalogueText } from "./text/catalogueText.js";
export { comparisonText } from "./text/comparisonText.js";
export { descriptionText } from "./text/descriptionText.js";
export { healthText } from "./text/healthText.js";
export { METRIC_TEXT_DEFAULTS, type MetricTextOptions, metricText } from "./text/metricText.js";
export { trialText } from "./text/trialText.js";
export { HEALTH_CAUTIONS } from "./wording/healthCautions.js";
